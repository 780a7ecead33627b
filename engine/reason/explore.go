package reason

import (
	"fmt"
	"math/big"

	"crus/engine/vocab"
)

// maxCompletions is how many completions of the measures that bear on one result are tried.
const maxCompletions = 1 << 16

// maxFree is how many undecided rules are combined freely where completions can't be tried.
const maxFree = 12

// instance is a rule as one limb (or the person) sees it, with what completing can make of it.
type instance struct {
	rule  *rule
	frame *frame
	own   truth
	table *table // nil: fixed
	forms []form // of the advice on the choice in question
}

// form is one advice with a number, and what completing can make of it.
type form struct {
	*advice
	value float64
	known bool
	table *table
}

// question is one result (a choice or caution) with all that bears on it.
type question struct {
	c         *completer
	instances []*instance
	vars      []int                    // the variables that bear on it
	classes   [][]int                  // of each variable: a cell of each class of cells that behave alike
	member    [][]int                  // of each variable: the class of each cell
	answer    func(cell []int) verdict // for cell numbers indexed by variable
	base      verdict
}

// answers is what exploring a question gave.
type answers struct {
	provisional bool
	could       []possibility
	explored    *Explored
	matter      []int           // the variables that can change the result
	settles     map[int]float64 // of each: the share of its cells that settle the result alone
}

// possibility is another verdict and the smallest set of cells found that brings it about.
type possibility struct {
	verdict
	when []bracket
}

// bracket is a run of neighbouring cells of one variable.
type bracket struct{ variable, from, to int }

func (q *question) tables() []*table {
	var out []*table
	for _, in := range q.instances {
		if in.table != nil {
			out = append(out, in.table)
		}
		for _, f := range in.forms {
			if f.table != nil {
				out = append(out, f.table)
			}
		}
	}
	return out
}

// explore tries the completions.
func (q *question) explore() answers {
	ts := q.tables()
	if len(ts) == 0 {
		return answers{}
	}
	exact, whole := true, true
	seen := map[int]bool{}
	for _, t := range ts {
		exact, whole = exact && !t.inexact, whole && t.whole
		for _, v := range t.vars {
			if !seen[v] {
				seen[v] = true
				q.vars = append(q.vars, v)
			}
		}
	}
	sortInts(q.vars)
	stuck := len(q.vars) == 0 || q.undecidable()
	out := answers{settles: map[int]float64{}}
	total := new(big.Int).SetInt64(1)
	if whole {
		q.alike(ts)
		for i := range q.vars {
			total.Mul(total, big.NewInt(int64(len(q.classes[i]))))
		}
	} else {
		for _, v := range q.vars {
			total.Mul(total, big.NewInt(int64(max(1, len(q.c.vars[v].values)))))
		}
	}
	tried := 0
	all := whole && total.IsInt64() && total.Int64() <= maxCompletions
	switch {
	case all:
		tried = int(total.Int64())
		q.every(&out)
	case whole:
		tried = maxCompletions
		q.some(&out, total)
	}
	if !all || !exact || stuck {
		if may := q.may(); may && !out.provisional {
			out.provisional = true
			out.matter = q.vars
		} else if !may && !out.provisional {
			out.matter = nil
		}
	}
	if !exact && len(q.vars) > 1 { // samples don't show that a measure settles a result alone
		out.settles = map[int]float64{}
	}
	if out.provisional || !all {
		out.explored = &Explored{Tried: tried, Of: total.String(), Complete: all && exact && !stuck}
	}
	return out
}

// undecidable reports whether some rule can't be worked out whatever is recorded.
func (q *question) undecidable() bool {
	for _, t := range q.tables() {
		for _, x := range t.truth {
			if x == unknown {
				return true
			}
		}
		for _, ok := range t.known {
			if !ok {
				return true
			}
		}
	}
	return false
}

// alike groups, for each variable, the cells that make no difference to any table.
func (q *question) alike(ts []*table) {
	for _, v := range q.vars {
		n := len(q.c.vars[v].values)
		class := make([]int, n)
		var reps []int
		for k := range n {
			class[k] = -1
			for g, r := range reps {
				if q.equal(ts, v, k, r) {
					class[k] = g
					break
				}
			}
			if class[k] < 0 {
				class[k] = len(reps)
				reps = append(reps, k)
			}
		}
		q.classes = append(q.classes, reps)
		q.member = append(q.member, class)
	}
}

// equal reports whether two cells of a variable give the same entries in every table.
func (q *question) equal(ts []*table, v, a, b int) bool {
	for _, t := range ts {
		stride, at := 1, -1
		for d := len(t.vars) - 1; d >= 0; d-- {
			if t.vars[d] == v {
				at = d
				break
			}
			stride *= t.size[d]
		}
		if at < 0 {
			continue
		}
		block := stride * t.size[at]
		for from := 0; from < t.entries(); from += block {
			for i := range stride {
				x, y := from+a*stride+i, from+b*stride+i
				if t.truth != nil && t.truth[x] != t.truth[y] || t.value != nil && (t.value[x] != t.value[y] || t.known[x] != t.known[y]) {
					return false
				}
			}
		}
	}
	return true
}

// grid walks the product of the classes. Entries are numbered with the last variable fastest.
type grid struct {
	q      *question
	size   []int
	stride []int
	kinds  []verdict // distinct verdicts
	of     []int     // the verdict of each entry
}

func (q *question) grid() *grid {
	g := &grid{q: q}
	n := 1
	for i := range q.vars {
		g.size = append(g.size, len(q.classes[i]))
		n *= g.size[i]
	}
	g.stride = make([]int, len(g.size))
	s := 1
	for i := len(g.size) - 1; i >= 0; i-- {
		g.stride[i] = s
		s *= g.size[i]
	}
	g.of = make([]int, n)
	cell := make([]int, len(q.c.vars))
	for e := range g.of {
		for i, v := range q.vars {
			cell[v] = q.classes[i][e/g.stride[i]%g.size[i]]
		}
		g.of[e] = g.kind(q.answer(cell))
	}
	return g
}

func (g *grid) kind(v verdict) int {
	for i, k := range g.kinds {
		if k.same(v) {
			return i
		}
	}
	g.kinds = append(g.kinds, v)
	return len(g.kinds) - 1
}

// every tries all completions.
func (q *question) every(out *answers) {
	g := q.grid()
	for i := range q.vars {
		if share := g.share(i); share >= 0 {
			out.matter = append(out.matter, q.vars[i])
			out.settles[q.vars[i]] = share
		}
	}
	for k, v := range g.kinds {
		if !v.same(q.base) {
			out.provisional = true
			out.could = append(out.could, possibility{v, g.smallest(k)})
		}
	}
	if !out.provisional {
		out.matter = nil
	}
	sortPossibilities(out.could)
}

// share gives the share of a variable's cells that settle the result whatever the others are, or
// -1 where the variable makes no difference.
func (g *grid) share(i int) float64 {
	matters := false
	settled := make([]int, g.size[i]) // verdict+1 of each class so far; -1: several
	for e, k := range g.of {
		c := e / g.stride[i] % g.size[i]
		if c > 0 && g.of[e-g.stride[i]] != k {
			matters = true
		}
		switch settled[c] {
		case 0:
			settled[c] = k + 1
		case k + 1:
		default:
			settled[c] = -1
		}
	}
	if !matters {
		return -1
	}
	cellsSettled := 0
	for _, class := range g.q.member[i] {
		if settled[class] > 0 {
			cellsSettled++
		}
	}
	return float64(cellsSettled) / float64(len(g.q.member[i]))
}

// smallest finds few cells that bring a verdict about whatever the other measures are: from some
// completions with that verdict, every measure is let go that can be.
func (g *grid) smallest(kind int) []bracket {
	const starts = 24
	var best []int
	bestLeft := len(g.size) + 1
	seen := 0
	for e, k := range g.of {
		if k != kind {
			continue
		}
		if seen++; seen > starts {
			break
		}
		fixed := make([]int, len(g.size))
		for i := range fixed {
			fixed[i] = e / g.stride[i] % g.size[i]
		}
		left := len(fixed)
		for i := range fixed {
			old := fixed[i]
			fixed[i] = -1
			if g.all(fixed, kind) {
				left--
			} else {
				fixed[i] = old
			}
		}
		if left < bestLeft {
			best, bestLeft = fixed, left
		}
		if bestLeft <= 1 {
			break
		}
	}
	var out []bracket
	for i, class := range best {
		if class >= 0 {
			out = append(out, g.widen(best, i, kind))
		}
	}
	return out
}

// widen takes in the neighbouring cells that bring the same about.
func (g *grid) widen(fixed []int, i, kind int) bracket {
	v := g.q.vars[i]
	member := g.q.member[i]
	old := fixed[i]
	defer func() { fixed[i] = old }()
	good := map[int]bool{old: true}
	for class := range g.size[i] {
		fixed[i] = class
		good[class] = g.all(fixed, kind)
	}
	b := bracket{variable: v}
	for member[b.from] != old {
		b.from++
	}
	b.to = b.from
	if g.q.c.vars[v].ordered {
		for b.from > 0 && good[member[b.from-1]] {
			b.from--
		}
		for b.to+1 < len(member) && good[member[b.to+1]] {
			b.to++
		}
	}
	return b
}

// all reports whether every entry in which the fixed classes hold has a verdict.
func (g *grid) all(fixed []int, kind int) bool {
	at := 0
	var free []int
	for i, f := range fixed {
		if f >= 0 {
			at += f * g.stride[i]
		} else {
			free = append(free, i)
		}
	}
	digits := make([]int, len(free))
	for {
		if g.of[at] != kind {
			return false
		}
		d := len(free) - 1
		for ; d >= 0; d-- {
			i := free[d]
			digits[d]++
			at += g.stride[i]
			if digits[d] < g.size[i] {
				break
			}
			at -= digits[d] * g.stride[i]
			digits[d] = 0
		}
		if d < 0 {
			return true
		}
	}
}

// some tries as many completions as are allowed, spread evenly; what they show is true, but more is
// possible.
func (q *question) some(out *answers, total *big.Int) {
	step := new(big.Int).Div(total, big.NewInt(maxCompletions))
	at := new(big.Int)
	cell := make([]int, len(q.c.vars))
	var kinds []verdict
	mod, rest := new(big.Int), new(big.Int)
	for range maxCompletions {
		rest.Set(at)
		var when []bracket
		for i := len(q.vars) - 1; i >= 0; i-- {
			rest.QuoRem(rest, big.NewInt(int64(len(q.classes[i]))), mod)
			k := q.classes[i][mod.Int64()]
			cell[q.vars[i]] = k
			when = append(when, bracket{q.vars[i], k, k})
		}
		v := q.answer(cell)
		known := v.same(q.base)
		for _, k := range kinds {
			known = known || k.same(v)
		}
		if !known {
			kinds = append(kinds, v)
			for i, j := 0, len(when)-1; i < j; i, j = i+1, j-1 {
				when[i], when[j] = when[j], when[i]
			}
			out.could = append(out.could, possibility{v, when})
			out.provisional = true
			out.matter = q.vars
		}
		at.Add(at, step)
	}
	sortPossibilities(out.could)
}

// may reports whether the result could change if every undecided rule were free to hold or not: an
// upper bound on what completions can do, since real rules hang together through their measures.
func (q *question) may() bool {
	var free []*instance
	for _, in := range q.instances {
		if in.table != nil {
			free = append(free, in)
		}
		for _, f := range in.forms {
			if f.table != nil {
				return true // a number that is not known can be any
			}
		}
	}
	if len(free) > maxFree {
		return true
	}
	old := make([]*table, len(free))
	for i, in := range free {
		old[i] = in.table
		in.table = nil
	}
	owns := make([]truth, len(free))
	for i, in := range free {
		owns[i] = in.own
	}
	defer func() {
		for i, in := range free {
			in.table, in.own = old[i], owns[i]
		}
	}()
	for bits := range 1 << len(free) {
		for i, in := range free {
			in.own = no
			if bits>>i&1 == 1 {
				in.own = yes
			}
		}
		if !q.answer(nil).same(q.base) {
			return true
		}
	}
	return false
}

// rules gives the verdict on a choice with every rule's truth and every formula's value taken from
// its table.
func (q *question) decide(c *vocab.Choice, order []int) func(cell []int) verdict {
	n := len(q.instances)
	state := make([]string, n)
	own := make([]truth, n)
	at := map[string]map[int]int{} // instance by frame and rule
	for i, in := range q.instances {
		if at[in.frame.side] == nil {
			at[in.frame.side] = map[int]int{}
		}
		at[in.frame.side][in.rule.index] = i
	}
	over := make([][]int, n)
	for i, in := range q.instances {
		for _, o := range in.rule.overriders {
			over[i] = append(over[i], at[in.frame.side][o])
		}
	}
	return func(cell []int) verdict {
		var effects []effect
		once := map[*advice]bool{}
		for _, i := range order {
			in := q.instances[i]
			own[i] = in.own
			if in.table != nil {
				own[i] = unknown
				if in.table.whole {
					own[i] = in.table.truth[in.table.at(cell)]
				}
			}
			state[i] = overridden(own[i], over[i], state)
			if state[i] != Fired {
				continue
			}
			for _, f := range in.forms {
				if v, ok := f.at(cell); ok && !once[f.advice] {
					effects = append(effects, effect{f.advice, v})
					once[f.advice] = f.formula == nil // the same words from both limbs count once
				}
			}
		}
		return q.c.e.decideChoice(c, effects)
	}
}

func (f form) at(cell []int) (float64, bool) {
	if f.table == nil {
		return f.value, f.known
	}
	if !f.table.whole {
		return 0, false
	}
	i := f.table.at(cell)
	return f.table.value[i], f.table.known[i]
}

// describe writes possibilities as data and words.
func (c *completer) describe(p possibility, side string) ([]Cell, string) {
	var cells []Cell
	var parts []string
	for _, b := range p.when {
		v := c.vars[b.variable]
		is := v.show(b.from, b.to)
		cells = append(cells, Cell{Measure: v.path(side), Is: is})
		parts = append(parts, fmt.Sprintf("%s is %s", v.label(side), is))
	}
	return cells, list(parts, "and")
}

// path names a variable as the limb on a side sees it; side "" is the person's view.
func (v *variable) path(side string) string {
	switch {
	case v.side == "":
		return "person." + v.name
	case side == "":
		return v.side + "." + v.name
	case v.side == side:
		return "limb." + v.name
	}
	return "other." + v.name
}

// label is the same for people.
func (v *variable) label(side string) string {
	if v.side == "" || v.side == side {
		return v.measure.Label
	}
	return v.measure.Label + " (" + v.side + ")"
}
