package reason

import (
	"sort"

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

func newCompleter(e *Engine, a *assess.Assessment) *completer {
	return &completer{e: e, a: a, index: map[key]int{}}
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
	c.index[k] = len(c.vars)
	c.vars = append(c.vars, v)
	return c.index[k]
}

// missing lists the missing measures that some expressions read, directly or through facts, and
// whether any of them asks if one is recorded, which completing it would turn around.
func (c *completer) missing(f *frame, exprs ...*ruleset.Expr) (vars []int, asks bool) {
	seen := map[int]bool{}
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
			i, ok := f.layout.measure[slotKey{r.Measure.Name, r.Other, false}]
			if !ok || !types.IsUnknown(f.values[i]) {
				continue
			}
			asks = asks || r.Recorded
			seen[c.variable(f.layout.slots[i], f.side)] = true
		}
	}
	for _, x := range exprs {
		visit(x)
	}
	for v := range seen {
		vars = append(vars, v)
	}
	sort.Ints(vars)
	return vars, asks
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

func (c *completer) table(f *frame, vars []int) *table {
	t := &table{vars: vars}
	n := 1
	for _, v := range vars {
		k := len(c.vars[v].values)
		t.size = append(t.size, k)
		t.inexact = t.inexact || c.vars[v].inexact
		if n *= k; n == 0 || n > maxTable {
			return t
		}
	}
	t.whole = true
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

// each calls do for every completion of the table, with a frame in which it is recorded and the
// needed facts are worked out.
func (c *completer) each(t *table, f *frame, needs []int, do func(f *frame)) {
	g := &frame{layout: f.layout, values: append([]ref.Val(nil), f.values...), texts: f.texts, side: f.side}
	cell := make([]int, len(t.vars))
	for {
		for d, v := range t.vars {
			x := c.vars[v]
			for _, other := range []bool{false, true} {
				i, ok := f.layout.measure[slotKey{x.name, other, false}]
				if ok && keyOf(f.layout.slots[i], f.side) == x.key {
					g.values[i] = x.values[cell[d]]
					g.values[f.layout.slots[i].recorded] = types.True
				}
			}
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

// ruleTable tabulates a rule's own truth; nil where completing the assessment can't change it.
func (c *completer) ruleTable(x *rule, f *frame, own truth) *table {
	exprs := []*ruleset.Expr{x.When, x.Unless}
	if x.applies != nil {
		exprs = append(exprs, x.Part.Applies)
	}
	vars, asks := c.missing(f, exprs...)
	if own != unknown && !asks {
		return nil
	}
	t := c.table(f, vars)
	if t.whole {
		c.each(t, f, x.needs, func(g *frame) { t.truth = append(t.truth, x.own(g)) })
	}
	return t
}

// cautionTable does the same for a caution.
func (c *completer) cautionTable(x *caution, f *frame, own truth) *table {
	exprs := []*ruleset.Expr{x.When}
	if x.applies != nil {
		exprs = append(exprs, x.Part.Applies)
	}
	vars, asks := c.missing(f, exprs...)
	if own != unknown && !asks {
		return nil
	}
	t := c.table(f, vars)
	if t.whole {
		c.each(t, f, x.needs, func(g *frame) { t.truth = append(t.truth, both(tryTruth(x.applies, g), tryTruth(x.when, g))) })
	}
	return t
}

// formulaTable tabulates a formula; nil where it is known.
func (c *completer) formulaTable(a *advice, f *frame) *table {
	vars, asks := c.missing(f, a.Formula)
	if _, ok := number(a.formula.try(f), a.Choice.Unit); ok && !asks {
		return nil
	}
	t := c.table(f, vars)
	if t.whole {
		c.each(t, f, a.rule.needs, func(g *frame) {
			v, ok := number(a.formula.try(g), a.Choice.Unit)
			t.value, t.known = append(t.value, v), append(t.known, ok)
		})
	}
	return t
}

// own works out a rule's truth, without steps.
func (x *rule) own(f *frame) truth {
	return both(both(tryTruth(x.applies, f), tryTruth(x.when, f)), not(tryTruth(x.unless, f), x.unless == nil))
}

func tryTruth(p *program, f *frame) truth {
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
