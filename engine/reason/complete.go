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
	slot int  // of its value; of free text, of whether it is recorded
	asks bool // it is asked whether it is recorded, which completing it turns around
}

// readings lists what some expressions read, each slot once and in order.
func (e *Engine) readings(exprs ...*ruleset.Expr) []reading {
	asks := map[int]bool{}
	done := map[*ruleset.Fact]bool{}
	var visit func(x *ruleset.Expr)
	visit = func(x *ruleset.Expr) {
		if x == nil {
			return
		}
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
		out = append(out, reading{slot, a})
	}
	slices.SortFunc(out, func(a, b reading) int { return a.slot - b.slot })
	return out
}

// missing reports whether the measure of a slot is not recorded.
func (f *frame) missing(slot int) bool { return f.values[f.layout.slots[slot].recorded] == types.False }

// lacking narrows readings to those that are missing, and reports whether any of them asks if its
// measure is recorded.
func (f *frame) lacking(rs []reading) (slots []int, asks bool) {
	for _, r := range rs {
		if f.missing(r.slot) {
			slots = append(slots, r.slot)
			asks = asks || r.asks
		}
	}
	return slots, asks
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

// table holds what an expression gives for every completion of the measures that it waits for.
type table struct {
	vars    []int
	size    []int     // cells of each
	truth   []truth   // of a condition
	value   []float64 // of a formula, in its choice's unit
	known   []bool    // of a formula
	whole   bool      // false: there were too many completions to try, and nothing above is filled
	inexact bool
}

// table makes room for the completions of some slots.
func (c *completer) table(f *frame, slots []int) *table {
	t := &table{}
	n := 1
	for _, i := range slots {
		v := c.variable(f.layout.slots[i], f.side)
		k := len(c.vars[v].values)
		t.vars, t.size = append(t.vars, v), append(t.size, k)
		t.inexact = t.inexact || c.vars[v].inexact
		n = min(n*k, maxTable+1)
	}
	t.whole = n > 0 && n <= maxTable
	return t
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
		i = i*t.size[d] + cell[v]
	}
	return i
}

// each calls do for every completion of some slots, with a frame in which it is recorded and the
// needed facts are worked out.
func (c *completer) each(t *table, f *frame, slots, needs []int, do func(f *frame)) {
	g := &frame{layout: f.layout, values: append([]ref.Val(nil), f.values...), texts: f.texts, side: f.side}
	cell := make([]int, len(slots))
	for {
		for d, at := range slots {
			g.values[at] = c.vars[t.vars[d]].values[cell[d]]
			g.values[f.layout.slots[at].recorded] = types.True
		}
		for _, n := range needs {
			fact := c.e.facts[n]
			g.values[fact.slot] = fact.prog.try(g)
		}
		do(g)
		d := len(cell) - 1
		for ; d >= 0; d-- {
			if cell[d]++; cell[d] < t.size[d] {
				break
			}
			cell[d] = 0
		}
		if d < 0 {
			return
		}
	}
}

// truths tabulates a condition whose truth is own as things stand; nil where completing the
// assessment can't change it.
func (c *completer) truths(f *frame, own truth, reads []reading, needs []int, work func(f *frame) truth) *table {
	slots, asks := f.lacking(reads)
	if own != unknown && !asks {
		return nil
	}
	t := c.table(f, slots)
	if t.whole {
		c.each(t, f, slots, needs, func(g *frame) { t.truth = append(t.truth, work(g)) })
	}
	return t
}

// numbers tabulates a formula; nil where it is known whatever is recorded.
func (c *completer) numbers(f *frame, known bool, a *advice) *table {
	slots, asks := f.lacking(a.reads)
	if known && !asks {
		return nil
	}
	t := c.table(f, slots)
	if t.whole {
		c.each(t, f, slots, a.rule.needs, func(g *frame) {
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
