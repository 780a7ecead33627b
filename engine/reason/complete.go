package reason

import (
	"slices"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// maxTable is how many completions of the measures that one rule reads are tried.
const maxTable = 4096

// variable is one missing measure of one bearer.
type variable struct {
	key
	measure *vocab.Measure
	entry   *assess.Entry // says why it is not recorded; may be nil
	cells
}

// key names a measure of the person ("") or of a side, however a limb calls it.
type key struct{ side, name string }

// completer tries what completing an assessment could change.
type completer struct {
	e     *Engine
	a     *assess.Assessment
	index map[key]int
	vars  []*variable
}

// reading is one measure that a rule, caution or formula reads, directly or through facts.
type reading struct {
	slot int    // of its value; of free text, of whether it is recorded
	asks bool   // it is asked whether it is recorded, which completing it turns around
	use  *usage // how it is looked at
}

// readings lists what some expressions read, each slot once and in order.
func (e *Engine) readings(exprs ...*ruleset.Expr) []reading {
	cuts := &cutter{uses: map[string]*usage{}, vocab: e.rs.Vocabulary}
	asks := map[int]bool{}
	done := map[*ruleset.Fact]bool{}
	var visit func(x *ruleset.Expr)
	visit = func(x *ruleset.Expr) {
		if x == nil {
			return
		}
		cuts.take(x)
		for _, r := range x.Reads {
			if r.Fact != nil {
				if !done[r.Fact] {
					done[r.Fact] = true
					visit(r.Fact.Expr)
				}
				continue
			}
			slot, readable := e.layout.measure[slotKey{r.Measure.Name, r.Other, false}]
			if !readable {
				slot = e.layout.measure[slotKey{r.Measure.Name, r.Other, true}]
			}
			asks[slot] = asks[slot] || r.Recorded
		}
	}
	for _, x := range exprs {
		visit(x)
	}
	out := make([]reading, 0, len(asks))
	for slot, a := range asks {
		out = append(out, reading{slot, a, cuts.use(e.layout.slots[slot].measure.Name)})
	}
	slices.SortFunc(out, func(a, b reading) int { return a.slot - b.slot })
	for name, u := range cuts.uses {
		if e.uses[name] == nil {
			e.uses[name] = &usage{}
		}
		e.uses[name].add(u)
	}
	return out
}

// missing reports whether the measure of a slot is not recorded.
func (f *frame) missing(slot int) bool { return f.values[f.layout.slots[slot].recorded] == types.False }

// lacking narrows readings to those that are missing, and reports whether any of them asks if its
// measure is recorded.
func (f *frame) lacking(rs []reading) (lacks []reading, asks bool) {
	for _, r := range rs {
		if f.missing(r.slot) {
			lacks = append(lacks, r)
			asks = asks || r.asks
		}
	}
	return lacks, asks
}

// keyOf says whose measure a slot of a frame is.
func keyOf(s slot, side string) key {
	switch {
	case s.measure.Of == vocab.Person:
		return key{"", s.measure.Name}
	case s.other:
		return key{string(assess.Side(side).Opposite()), s.measure.Name}
	}
	return key{side, s.measure.Name}
}

// variable gives the number of a missing measure, noting it when it is new.
func (c *completer) variable(s slot, side string) int {
	k := keyOf(s, side)
	if i, ok := c.index[k]; ok {
		return i
	}
	v := &variable{key: k, measure: s.measure}
	entries := c.a.Person
	if k.side != "" {
		entries = c.a.Limb(assess.Side(k.side))
	}
	v.entry = entries[k.name]
	var asOf *clinical.Date
	if d, err := clinical.ParseDate(c.a.Date); err == nil {
		asOf = &d
	}
	v.cells = cellsOf(s.measure, c.e.uses[k.name], asOf)
	if c.index == nil {
		c.index = map[key]int{}
	}
	c.index[k] = len(c.vars)
	c.vars = append(c.vars, v)
	return c.index[k]
}

// table holds what an expression gives for every completion of the measures that it waits for. Cells
// that the expression's own constants don't part stand in it as one group.
type table struct {
	vars    []int
	group   [][]int   // of each variable: the group of each cell
	size    []int     // groups of each
	sampled []bool    // of each: the expression looks at it in ways that its cells don't show
	truth   []truth   // of a condition
	value   []float64 // of a formula, in its choice's unit
	known   []bool    // of a formula
	whole   bool      // false: there were too many completions to try, and nothing above is filled
	asks    bool      // it is asked whether one of them is recorded
}

// table makes room for the completions of what is missing.
func (c *completer) table(f *frame, lacks []reading) *table {
	t := &table{}
	n := 1
	for _, r := range lacks {
		i := c.variable(f.layout.slots[r.slot], f.side)
		v := c.vars[i]
		group, size := v.groups(r.use)
		t.vars, t.group, t.size, t.sampled = append(t.vars, i), append(t.group, group), append(t.size, size), append(t.sampled, v.inexact && r.use.other)
		n = min(n*size, maxTable+1)
	}
	t.whole = n > 0 && n <= maxTable
	return t
}

// groups numbers the cells that a usage tells apart.
func (c *cells) groups(u *usage) (group []int, size int) {
	group = make([]int, len(c.values))
	var first []int
	for i := range group {
		g := slices.IndexFunc(first, func(j int) bool {
			return c.lies != nil && !u.other && !slices.ContainsFunc(u.cuts, func(cut ref.Val) bool { return c.lies(i, cut) != c.lies(j, cut) })
		})
		if g < 0 {
			g = len(first)
			first = append(first, i)
		}
		group[i] = g
	}
	return group, len(first)
}

// entries is how many completions the table holds.
func (t *table) entries() int {
	n := 1
	for _, k := range t.size {
		n *= k
	}
	return n
}

// at gives the entry for some cell numbers, indexed by variable.
func (t *table) at(cell []int) int {
	i := 0
	for d, v := range t.vars {
		i = i*t.size[d] + t.group[d][cell[v]]
	}
	return i
}

// each calls do for every completion in a table, with a frame in which it is recorded and the needed
// facts are worked out.
func (c *completer) each(t *table, f *frame, lacks []reading, needs []int, do func(f *frame)) {
	g := &frame{layout: f.layout, values: append([]ref.Val(nil), f.values...), texts: f.texts, side: f.side}
	at := make([]int, len(lacks))
	for {
		for d, r := range lacks {
			g.values[r.slot] = c.vars[t.vars[d]].values[slices.Index(t.group[d], at[d])]
			g.values[f.layout.slots[r.slot].recorded] = types.True
		}
		for _, n := range needs {
			fact := c.e.facts[n]
			g.values[fact.slot] = fact.prog.try(g)
		}
		do(g)
		d := len(at) - 1
		for ; d >= 0; d-- {
			if at[d]++; at[d] < t.size[d] {
				break
			}
			at[d] = 0
		}
		if d < 0 {
			return
		}
	}
}

// truths tabulates a condition whose truth is own as things stand; nil where completing the
// assessment can't change it.
func (c *completer) truths(f *frame, own truth, reads []reading, needs []int, work func(f *frame) truth) *table {
	lacks, asks := f.lacking(reads)
	if own != unknown && !asks {
		return nil
	}
	t := c.table(f, lacks)
	t.asks = asks
	if t.whole {
		c.each(t, f, lacks, needs, func(g *frame) { t.truth = append(t.truth, work(g)) })
	}
	return t
}

// numbers tabulates a formula; nil where it is known whatever is recorded.
func (c *completer) numbers(f *frame, known bool, a *advice) *table {
	lacks, asks := f.lacking(a.reads)
	if known && !asks {
		return nil
	}
	t := c.table(f, lacks)
	t.asks = asks
	if t.whole {
		c.each(t, f, lacks, a.rule.needs, func(g *frame) {
			v, ok := number(a.formula.try(g), a.Choice.Unit)
			t.value, t.known = append(t.value, v), append(t.known, ok)
		})
	}
	return t
}

// truth works out a rule's own truth, without steps.
func (x *rule) truth(f *frame) truth {
	return both(both(x.applies.truth(f), x.when.truth(f)), not(x.unless.truth(f), x.unless == nil))
}

// truth works out a caution's truth, without steps.
func (x *caution) truth(f *frame) truth { return both(x.applies.truth(f), x.when.truth(f)) }

// truth works out a condition; what was never written is true.
func (p *program) truth(f *frame) truth {
	if p == nil {
		return yes
	}
	return truthOf(p.try(f))
}

// both is Kleene's and.
func both(a, b truth) truth { return min(a, b) }

// not is Kleene's not; absent is yes, for what was never written.
func not(a truth, absent bool) truth {
	if absent {
		return yes
	}
	return yes - a
}
