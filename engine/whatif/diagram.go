package whatif

import (
	"cmp"
	"encoding/binary"
	"slices"
)

// diagram is what comes of a question for every way in which the open measures can be: from the top, the cells of one
// variable after the other lead on, up to a kind of result. A variable that makes no difference is left out.
type diagram struct {
	q       *question
	order   []int // the variables, in the order in which they are looked at
	level   []int // of each variable: its place in order, len(order) where it is not in it
	nodes   []node
	at      map[string]int
	known   map[string]int // nodes by the roots
	done    map[step]form  // what becomes of a form in a cell of its topmost variable
	tops    []int32        // of each form: the level of its topmost variable; -1: not worked out
	top     int
	left    int      // steps that may still be taken
	sampled []string // formulas that the roots hang on and that were only sampled
}

// node is a variable with what each of its cells leads to, or a kind of result (level is len(order)).
type node struct {
	level int
	kids  []int
	kind  int
}

type step struct {
	f    form
	cell int
}

// maxNodes is how many different situations are told apart for one result; twenty-five times as many where somebody asks for it.
const maxNodes = 4000

// diagram works a question out; nil where too much hangs together.
func (q *question) diagram() *diagram {
	d := &diagram{q: q, at: map[string]int{}, known: map[string]int{}, done: map[step]form{}, left: maxNodes}
	if q.s.mode == changing {
		d.left *= 25
	}
	d.arrange()
	top, ok := d.build(slices.Clone(q.roots))
	if !ok {
		return nil
	}
	d.top = top
	return d
}

// arrange puts the variables that the roots hang on into an order: those of one rule after the other, formulas last.
func (d *diagram) arrange() {
	s := d.q.s
	seen, has := make([]bool, len(s.forms.list)), make([]bool, len(s.vars))
	take := func(v int) {
		if !has[v] {
			has[v] = true
			d.order = append(d.order, v)
		}
	}
	var visit func(f form)
	visit = func(f form) {
		if seen[f] {
			return
		}
		seen[f] = true
		switch m := &s.forms.list[f]; m.op {
		case switchOn:
			take(m.v)
			for _, k := range m.kids {
				visit(k)
			}
		case guess:
			d.sampled = append(d.sampled, m.text)
			take(m.v)
			visit(m.a)
		case not:
			visit(m.a)
		case and, or:
			visit(m.a)
			visit(m.b)
		case choose:
			visit(m.a)
			visit(m.b)
			visit(m.c)
		}
	}
	for _, f := range d.q.first() {
		visit(f)
	}
	slices.SortStableFunc(d.order, func(a, b int) int { // formulas last
		switch x, y := s.vars[a].measured(), s.vars[b].measured(); {
		case x == y:
			return 0
		case x:
			return -1
		}
		return 1
	})
	d.level = make([]int, len(s.vars))
	for i := range d.level {
		d.level[i] = len(d.order)
	}
	for i, v := range d.order {
		d.level[v] = i
	}
}

// compare orders variables.
func (s *scene) compare(a, b *variable) int {
	switch {
	case a.measured() != b.measured():
		if a.measured() {
			return -1
		}
		return 1
	case !a.measured():
		return cmp.Or(a.part.axis-b.part.axis, a.part.x-b.part.x, a.part.row-b.part.row)
	}
	return cmp.Or(s.w.rank[a.measure]-s.w.rank[b.measure], sideRank(a.side)-sideRank(b.side))
}

// level of a form's topmost variable.
func (d *diagram) topOf(f form) int {
	s := d.q.s.forms
	for len(d.tops) <= int(f) {
		d.tops = append(d.tops, -1)
	}
	if d.tops[f] >= 0 {
		return int(d.tops[f])
	}
	out := len(d.order)
	m := s.list[f]
	switch m.op {
	case switchOn:
		out = d.level[m.v]
		for _, k := range m.kids {
			out = min(out, d.topOf(k))
		}
	case guess:
		out = min(d.level[m.v], d.topOf(m.a))
	case not:
		out = d.topOf(m.a)
	case and, or:
		out = min(d.topOf(m.a), d.topOf(m.b))
	case choose:
		out = min(d.topOf(m.a), d.topOf(m.b), d.topOf(m.c))
	}
	d.tops[f] = int32(out)
	return out
}

// in gives what becomes of a form in a cell of the variable at a level, above which it hangs on nothing.
func (d *diagram) in(f form, level, cell int) form {
	if d.topOf(f) > level {
		return f
	}
	k := step{f, cell}
	if g, ok := d.done[k]; ok {
		return g
	}
	s := d.q.s.forms
	m := s.list[f]
	var g form
	switch m.op {
	case switchOn:
		if d.level[m.v] == level {
			g = d.in(m.kids[cell], level, cell)
			break
		}
		kids := make([]form, len(m.kids))
		for i, x := range m.kids {
			kids[i] = d.in(x, level, cell)
		}
		g = s.switchOn(m.v, kids)
	case guess:
		if g = d.in(m.a, level, cell); d.level[m.v] != level {
			g = s.sampled(g, m.v, m.text)
		}
	case not:
		g = s.not(d.in(m.a, level, cell))
	case and:
		a := d.in(m.a, level, cell)
		if g = no; a != no {
			g = s.and(a, d.in(m.b, level, cell))
		}
	case or:
		a := d.in(m.a, level, cell)
		if g = yes; a != yes {
			g = s.or(a, d.in(m.b, level, cell))
		}
	case choose:
		g = s.choose(d.in(m.a, level, cell), d.in(m.b, level, cell), d.in(m.c, level, cell))
	}
	d.done[k] = g
	return g
}

// build gives the node of some roots; false where there are too many.
func (d *diagram) build(roots []form) (int, bool) {
	id := d.q.summary(roots)
	if n, ok := d.known[id]; ok {
		return n, true
	}
	if d.left--; d.left < 0 {
		return 0, false
	}
	var n int
	if k, ok := d.q.certain(roots); ok {
		n = d.add(node{level: len(d.order), kind: k})
	} else {
		level := len(d.order)
		for _, f := range roots {
			level = min(level, d.topOf(f))
		}
		v := d.q.s.vars[d.order[level]]
		x := node{level: level, kids: make([]int, len(v.cells))}
		next := make([]form, len(roots))
		for c := range v.cells {
			for i, f := range roots {
				next[i] = d.in(f, level, c)
			}
			var ok bool
			if x.kids[c], ok = d.build(slices.Clone(next)); !ok {
				return 0, false
			}
		}
		n = d.add(x)
	}
	d.known[id] = n
	return n, true
}

// add gives a node, each once, and none where all cells lead to the same.
func (d *diagram) add(x node) int {
	if len(x.kids) > 0 && !slices.ContainsFunc(x.kids, func(k int) bool { return k != x.kids[0] }) {
		return x.kids[0]
	}
	id := binary.AppendUvarint(binary.AppendUvarint(nil, uint64(x.level)), uint64(x.kind))
	for _, k := range x.kids {
		id = binary.AppendUvarint(id, uint64(k))
	}
	if n, ok := d.at[string(id)]; ok {
		return n
	}
	d.nodes = append(d.nodes, x)
	d.at[string(id)] = len(d.nodes) - 1
	return len(d.nodes) - 1
}

// end reports whether a node is a kind of result.
func (d *diagram) end(n int) bool { return d.nodes[n].kids == nil }

// variable gives the variable of a node.
func (d *diagram) variable(n int) *variable { return d.q.s.vars[d.order[d.nodes[n].level]] }

// walk visits the nodes that can be reached with some variables held in some of their cells: held is indexed by level,
// nil entries hold nothing. visit answers whether to go on.
func (d *diagram) walk(held [][]bool, visit func(n int) bool) {
	seen := make([]bool, len(d.nodes))
	var down func(n int) bool
	down = func(n int) bool {
		if seen[n] {
			return true
		}
		seen[n] = true
		if !visit(n) {
			return false
		}
		x := &d.nodes[n]
		for c, k := range x.kids {
			if h := held[x.level]; (h == nil || h[c]) && !down(k) {
				return false
			}
		}
		return true
	}
	down(d.top)
}

// reach lists the kinds that are possible with some variables held.
func (d *diagram) reach(held [][]bool) []bool {
	out := make([]bool, len(d.q.kinds))
	d.walk(held, func(n int) bool {
		if d.end(n) {
			out[d.nodes[n].kind] = true
		}
		return true
	})
	return out
}

// only reports whether with some variables held nothing but one kind is possible.
func (d *diagram) only(held [][]bool, kind int) bool {
	ok := true
	d.walk(held, func(n int) bool {
		ok = ok && (!d.end(n) || d.nodes[n].kind == kind)
		return ok
	})
	return ok
}

// uses reports which levels make a difference.
func (d *diagram) uses() []bool {
	out := make([]bool, len(d.order)+1)
	d.walk(make([][]bool, len(d.order)+1), func(n int) bool { out[d.nodes[n].level] = true; return true })
	return out[:len(d.order)]
}

// plain reports whether no formula is left open, so that every way down is possible.
func (d *diagram) plain() bool {
	for i, used := range d.uses() {
		if used && !d.q.s.vars[d.order[i]].measured() {
			return false
		}
	}
	return true
}
