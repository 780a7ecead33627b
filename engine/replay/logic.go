package replay

import (
	"math/bits"

	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/ruleset"
)

// given are the inputs of a circuit that looks at rows: for each axis the bits of its cell's number, lowest first, which
// are 0 where the axis is not known, and whether it is known; of each unclear part whether it is true, and whether it is
// known. A circuit of completed rows takes known and recorded for granted and has no such inputs.
type given struct {
	bits     [][]ref
	known    []ref
	recorded []ref
	unclear  []ref
	clear    []ref
	undated  ref // the assessment has no date
	alone    ref // the row is the person alone
}

// width is how many bits the number of a cell of an axis has.
func width(a *cell.Axis) int { return bits.Len(uint(a.Count() - 1)) }

// rows adds the inputs of a circuit that looks at rows as they are.
func (b *builder) rows(s *cell.Space) *given {
	g := b.completed(s)
	for range s.Axes {
		g.known = append(g.known, b.input())
	}
	for range s.Axes[:s.Measures] {
		g.recorded = append(g.recorded, b.input())
	}
	for range s.Unclear {
		g.clear = append(g.clear, b.input())
	}
	g.undated = b.input()
	return g
}

// completed adds the inputs of a circuit that looks at completed rows.
func (b *builder) completed(s *cell.Space) *given {
	g := &given{}
	for _, a := range s.Axes {
		var of []ref
		for range width(a) {
			of = append(of, b.input())
		}
		g.bits = append(g.bits, of)
	}
	for range s.Unclear {
		g.unclear = append(g.unclear, b.input())
	}
	g.alone = b.input()
	return g
}

// within gives where the number of a cell, as bits, is that of one of the cells that say yes. Numbers beyond them do
// not occur.
func (b *builder) within(yes []bool, of []ref) ref {
	same := true
	for _, y := range yes {
		same = same && y == yes[0]
	}
	switch {
	case same && yes[0]:
		return always
	case same:
		return never
	}
	top := len(of) - 1
	half := 1 << top
	if half >= len(yes) {
		return b.within(yes, of[:top])
	}
	low := b.within(yes[:half], of[:top])
	high := append([]bool(nil), yes[half:]...)
	for len(high) < half { // these do not occur: whatever makes it simple
		high = append(high, high[len(high)-1])
	}
	return b.choose(of[top], b.within(high, of[:top]), low)
}

// crisp makes planes of nodes for completed rows, which have two truths.
type crisp struct {
	*builder
	*given
	s    *cell.Space
	done map[int]ref
}

func (b *builder) crisp(s *cell.Space, g *given) *crisp {
	return &crisp{b, g, s, map[int]ref{}}
}

func (l *crisp) of(n int) ref {
	if r, ok := l.done[n]; ok {
		return r
	}
	var out ref
	switch x := l.s.Nodes[n]; x.Op {
	case cell.Always, cell.Recorded:
		out = always
	case cell.Ask:
		q := l.s.Questions[x.X]
		out = l.within(q.Yes, l.bits[q.Axis])
	case cell.Opaque:
		out = l.unclear[x.X]
	case cell.Not:
		out = l.of(x.A).not()
	case cell.And:
		out = l.and(l.of(x.A), l.of(x.B))
	case cell.Or:
		out = l.or(l.of(x.A), l.of(x.B))
	case cell.If:
		out = l.choose(l.of(x.A), l.of(x.B), l.of(x.C))
	}
	l.done[n] = out
	return out
}

// two are the planes of a truth in Kleene's logic: known to be true, known to be false.
type two struct{ t, f ref }

func (x two) not() two { return two{x.f, x.t} }

func (b *builder) unknown(x two) ref { return b.or(x.t, x.f).not() }

func (b *builder) both(x, y two) two { return two{b.and(x.t, y.t), b.or(x.f, y.f)} }

// kleene makes planes of nodes for rows as they are.
type kleene struct {
	*builder
	*given
	s    *cell.Space
	done map[int]two
}

func (b *builder) kleene(s *cell.Space, g *given) *kleene {
	return &kleene{b, g, s, map[int]two{}}
}

func (l *kleene) of(n int) two {
	if r, ok := l.done[n]; ok {
		return r
	}
	var out two
	switch x := l.s.Nodes[n]; x.Op {
	case cell.Always:
		out = two{always, never}
	case cell.Ask:
		q := l.s.Questions[x.X]
		yes := l.within(q.Yes, l.bits[q.Axis])
		out = two{l.and(l.known[q.Axis], yes), l.and(l.known[q.Axis], yes.not())}
	case cell.Recorded:
		out = two{l.recorded[x.X], l.recorded[x.X].not()}
	case cell.Opaque:
		out = two{l.and(l.clear[x.X], l.unclear[x.X]), l.and(l.clear[x.X], l.unclear[x.X].not())}
	case cell.Not:
		out = l.of(x.A).not()
	case cell.And:
		out = l.both(l.of(x.A), l.of(x.B))
	case cell.Or:
		out = l.both(l.of(x.A).not(), l.of(x.B).not()).not()
	case cell.If:
		a, b, c := l.of(x.A), l.of(x.B), l.of(x.C)
		out = two{l.or(l.and(a.t, b.t), l.and(a.f, c.t)), l.or(l.and(a.t, b.f), l.and(a.f, c.f))}
	}
	l.done[n] = out
	return out
}

// reach is what a node rests on.
type reach struct {
	measures []int   // axes of measures that are asked
	asked    [][]int // of each: the questions
	formulas []int   // axes of formulas
	unclear  []int
}

// reachOf finds what a node rests on directly: not through formulas and unclear parts.
func reachOf(s *cell.Space, n int) *reach {
	r := &reach{}
	at := map[int]int{} // places of measures
	seen := map[int]bool{}
	formulas := map[int]bool{}
	var visit func(n int)
	visit = func(n int) {
		if seen[n] {
			return
		}
		seen[n] = true
		switch x := s.Nodes[n]; x.Op {
		case cell.Ask:
			axis := s.Questions[x.X].Axis
			if axis >= s.Measures {
				if !formulas[axis] {
					formulas[axis] = true
					r.formulas = append(r.formulas, axis)
				}
				return
			}
			i, ok := at[axis]
			if !ok {
				i = len(r.measures)
				at[axis] = i
				r.measures, r.asked = append(r.measures, axis), append(r.asked, nil)
			}
			r.asked[i] = append(r.asked[i], x.X)
		case cell.Opaque:
			r.unclear = append(r.unclear, x.X)
		case cell.Not:
			visit(x.A)
		case cell.And, cell.Or:
			visit(x.A)
			visit(x.B)
		case cell.If:
			visit(x.A)
			visit(x.B)
			visit(x.C)
		}
	}
	visit(n)
	return r
}

// asks lists the measures' axes of which some expressions ask whether they are recorded, directly or through facts.
func asks(s *cell.Space, exprs ...*ruleset.Expr) []int {
	var out []int
	done := map[*ruleset.Fact]bool{}
	noted := map[int]bool{}
	var visit func(x *ruleset.Expr)
	visit = func(x *ruleset.Expr) {
		if x == nil {
			return
		}
		for _, r := range x.Reads {
			switch {
			case r.Fact != nil && !done[r.Fact]:
				done[r.Fact] = true
				visit(r.Fact.Expr)
			case r.Recorded:
				for i, a := range s.Axes[:s.Measures] {
					if a.Measure == r.Measure && a.Other == r.Other && !noted[i] {
						noted[i] = true
						out = append(out, i)
					}
				}
			}
		}
	}
	for _, x := range exprs {
		visit(x)
	}
	return out
}

// asksOf lists what a rule's own condition asks of what is recorded.
func asksOf(s *cell.Space, r *cell.Rule) []int {
	return asks(s, r.Rule.When, r.Rule.Unless, reason.Guard(r.Part))
}

func asksOfCaution(s *cell.Space, c *cell.Caution) []int {
	return asks(s, c.Caution.When, reason.Guard(c.Part))
}

// termInputs is what a term rests on, directly or through formulas.
type termInputs struct {
	read    []int // the measures' axes whose values it works with
	asked   []int // those of which it asks questions in its conditions
	nodes   []int // its conditions
	unclear bool  // cel-go works a part of it out
}

func termReach(s *cell.Space, t *cell.Term) *termInputs {
	out := &termInputs{}
	read, asked := map[int]bool{}, map[int]bool{}
	seen := map[*cell.Term]bool{}
	note := func(to *[]int, noted map[int]bool, axes []int) {
		for _, a := range axes {
			if !noted[a] {
				noted[a] = true
				*to = append(*to, a)
			}
		}
	}
	var visit func(t *cell.Term)
	visit = func(t *cell.Term) {
		if t == nil || seen[t] {
			return
		}
		seen[t] = true
		switch t.Op {
		case cell.Read:
			note(&out.read, read, []int{t.Axis})
		case cell.Choose, cell.Holds:
			out.nodes = append(out.nodes, t.Node)
			r := reachOf(s, t.Node)
			note(&out.asked, asked, r.measures)
			for _, f := range r.formulas {
				visit(s.Axes[f].Term)
			}
			for _, u := range r.unclear {
				note(&out.read, read, s.Unclear[u].Inputs)
			}
		case cell.Asked:
			out.unclear = true
			note(&out.read, read, s.Unclear[int(t.X)].Inputs)
		}
		visit(t.A)
		visit(t.B)
		for _, x := range t.Of {
			visit(x)
		}
	}
	visit(t)
	return out
}
