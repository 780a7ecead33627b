package celltest

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"crus/engine/clinical"
	"crus/engine/vocab"
)

// drawer draws one sample.
type drawer struct {
	Dice
	size     Size
	scales   []*scale
	measures []*measure
	choices  []*choice
	facts    []*fact
	rules    []written // of the parts that are drawn already
	cautions []written

	part    string // the ruleset that is drawn
	person  bool   // only what is of the person may be read
	limb    bool   // something of a limb was read
	listing bool   // within a list: no other list
}

// fact is a finding or a quantity that was drawn.
type fact struct {
	part, name string
	dimension  clinical.Dimension // of a quantity
	limb       bool
}

// written is a rule or a caution that was drawn.
type written struct{ part, name string }

// from gives the name as another part, or its own, writes it.
func (w written) from(part string) string {
	if w.part == part {
		return w.name
	}
	return w.part + "." + w.name
}

// may reports whether a feature can occur.
func (d *drawer) may(f Features) bool { return d.size.Features&f != 0 }

// chance is true in so many of a hundred cases, in steps of five. The low numbers are false.
func (d *drawer) chance(percent int) bool { return d.Int(20) >= 20-percent/5 }

// between draws a number; the low ones are the simple ones.
func (d *drawer) between(lo, hi int) int { return lo + d.Int(hi-lo+1) }

// many draws how many there are of something of which there are most, and at least some.
func (d *drawer) many(most, least int) int {
	if !d.size.Vary || most <= least {
		return most
	}
	return d.between(least, most)
}

// one draws one of some things.
func one[X any](d Dice, of []X) X { return of[d.Int(len(of))] }

// some draws a number of different things.
func some[X any](d Dice, n int, of []X) []X {
	rest := slices.Clone(of)
	var out []X
	for range min(n, len(rest)) {
		i := d.Int(len(rest))
		out, rest = append(out, rest[i]), slices.Delete(rest, i, i+1)
	}
	return out
}

// number writes a number so that CEL, HCL and JSON read it.
func number(x float64) string { return strconv.FormatFloat(x, 'f', -1, 64) }

// quoted writes words as CEL's or HCL's texts.
func quoted(mark string, words ...string) string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = mark + w + mark
	}
	return strings.Join(out, ", ")
}

// readable lists the measures that can be read where the drawer is.
func (d *drawer) readable(ok func(*measure) bool) (out []*measure) {
	for _, m := range d.measures {
		if (!d.person || !m.limb) && ok(m) {
			out = append(out, m)
		}
	}
	return out
}

// path writes the name of a measure.
func (d *drawer) path(m *measure) string {
	if !m.limb {
		return "person." + m.name
	}
	d.limb = true
	if d.may(OtherLimb) && d.chance(20) {
		return "other." + m.name
	}
	return "limb." + m.name
}

// known lists the facts that can be read where the drawer is.
func (d *drawer) known(ok func(*fact) bool) (out []*fact) {
	for _, f := range d.facts {
		if (!d.person || !f.limb) && ok(f) {
			out = append(out, f)
		}
	}
	return out
}

// factPath writes the name of a fact.
func (d *drawer) factPath(f *fact) string {
	d.limb = d.limb || f.limb
	root := "finding."
	if f.dimension != "" {
		root = "quantity."
	}
	return root + written{f.part, f.name}.from(d.part)
}

func isFinding(f *fact) bool { return f.dimension == "" }

func ofDimension(dim clinical.Dimension) func(*fact) bool {
	return func(f *fact) bool { return f.dimension == dim }
}

func ofKind(kinds ...vocab.Kind) func(*measure) bool {
	return func(m *measure) bool { return slices.Contains(kinds, m.kind) }
}

// term writes a measure as a condition compares it: a date by the time since it.
func (d *drawer) term(m *measure) string { return m.asked(d.path(m)) }

func (m *measure) asked(path string) string {
	if m.kind == vocab.Date {
		return "since(" + path + ")"
	}
	return path
}

// value writes a constant that a measure can be compared with. Numbers are noted as cuts of the measure, and
// often drawn again, so that a measure has few cells and conditions have to do with each other.
func (d *drawer) value(m *measure) string {
	switch m.kind {
	case vocab.Grade:
		return fmt.Sprintf("%s('%s')", m.scale.name, one(d, m.scale.grades))
	case vocab.Option:
		return quoted("'", one(d, m.options))
	case vocab.YesNo:
		return one(d, []string{"true", "false"})
	}
	if len(m.cuts) > 0 && d.chance(50) {
		return one(d, m.cuts).text()
	}
	c := d.cut(m)
	m.cuts = append(m.cuts, c)
	return c.text()
}

// cut draws a number that a measure is compared with: mostly within the plausible range, sometimes at an end or
// beyond it, sometimes in another unit.
func (d *drawer) cut(m *measure) cut {
	switch m.kind {
	case vocab.Date:
		x := one(d, []span{{"wk", 0, 60, 1}, {"d", 0, 90, 1}, {"mo", 0, 30, 1}, {"a", 0, 8, 1}})
		return cut{float64(d.between(0, int(x.hi))), unitOf(x.code)}
	case vocab.Count:
		return cut{at: m.grid(d, 1)}
	}
	c := cut{m.grid(d, 1), m.unit}
	if d.chance(20) {
		c.at, c.unit = d.otherUnit(c.at, m.unit)
	}
	return c
}

// text writes the cut as a constant of CEL.
func (c cut) text() string {
	if literal := clinical.LiteralFor(c.unit); literal != "" {
		return fmt.Sprintf("%s(%s)", literal, number(c.at))
	}
	return number(c.at)
}

// otherUnit writes a number in another unit of the dimension, to three digits.
func (d *drawer) otherUnit(at float64, u clinical.Unit) (float64, clinical.Unit) {
	var units []clinical.Unit
	for _, v := range clinical.Units() {
		if v.Dimension == u.Dimension && clinical.LiteralFor(v) != "" && (d.may(Inexact) || !inexact(v.Code)) {
			units = append(units, v)
		}
	}
	v := one(d, units)
	x, _ := quantity(at, u).In(v)
	x, err := strconv.ParseFloat(strconv.FormatFloat(x, 'g', 3, 64), 64)
	if err != nil {
		panic("celltest: " + err.Error())
	}
	return x, v
}
