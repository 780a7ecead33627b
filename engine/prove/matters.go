package prove

import (
	"math"
	"slices"
	"strings"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/reason"
)

// Reading is one measure of a witness.
type Reading struct {
	Of      string `json:"of"`      // left, right or person
	Measure string `json:"measure"` // its name
	Label   string `json:"label"`
	Value   string `json:"value"` // for people: "−5°", "broken", "not recorded"
}

// Matters lists the measures of a verdict's witness that bring it about: whatever the others were, it would be so. None can
// be left out, in the order of the vocabulary. It is empty where there is no witness.
func Matters(s *cell.Space, v *Verdict) []Reading {
	m := newMatter(s, v)
	if m == nil || !m.so() {
		return nil
	}
	var out []Reading
	for i, a := range s.Axes[:s.Measures] {
		for k := range m.rows {
			if a.Limb || k == 0 {
				if x, needed := m.needs(k, i); needed {
					out = append(out, x)
				}
			}
		}
	}
	return out
}

// matter is the work on one verdict.
type matter struct {
	*cell.Space
	v      *Verdict
	sides  []assess.Side // of each row
	rows   []cell.Row
	cases  []*cell.Case
	whole  *reason.Verdict // of the choice, with everything recorded
	topic  int             // -1: it is about no choice
	tested func() bool
}

func newMatter(s *cell.Space, v *Verdict) *matter {
	if v.Assessment == nil {
		return nil
	}
	m := &matter{Space: s, v: v, topic: slices.IndexFunc(s.Topics, func(t *cell.Topic) bool { return t.Name == v.Name })}
	for _, side := range v.Assessment.DeviceFor {
		m.sides = append(m.sides, side)
		m.rows = append(m.rows, s.Row(v.Assessment, side))
		m.cases = append(m.cases, s.NewCase())
	}
	if m.tested = m.test(); m.tested == nil || len(m.rows) == 0 {
		return nil
	}
	m.work()
	if m.topic >= 0 {
		d := s.Decide(m.topic, m.seen()...)
		m.whole = &d
	}
	return m
}

func (m *matter) work() {
	for i, r := range m.rows {
		m.Work(m.cases[i], r)
	}
}

// so reports whether what was found is so with what is left of the witness.
func (m *matter) so() bool {
	m.work()
	return m.tested()
}

// needs reports whether it is no longer so without a measure of a row; else the measure is left out from here on.
func (m *matter) needs(row, axis int) (Reading, bool) {
	a := m.Axes[axis]
	side := m.sides[row]
	if a.Other {
		side = side.Opposite()
	}
	type place struct {
		row, axis int
		at        float64
		recorded  bool
	}
	var out []place
	for k := range m.rows {
		for i, b := range m.Axes[:m.Measures] {
			of := m.sides[k]
			if b.Other {
				of = of.Opposite()
			}
			if b.Measure == a.Measure && (!a.Limb || of == side) {
				out = append(out, place{k, i, m.rows[k].Value[i], m.rows[k].Recorded[i]})
			}
		}
	}
	was := m.rows[row].Value[axis]
	set := func(recorded bool) bool { // it is so, whatever the value
		for _, p := range out {
			m.rows[p.row].Value[p.axis], m.rows[p.row].Recorded[p.axis] = math.NaN(), recorded
		}
		return m.so()
	}
	if set(true) && set(false) {
		return Reading{}, false
	}
	for _, p := range out {
		m.rows[p.row].Value[p.axis], m.rows[p.row].Recorded[p.axis] = p.at, p.recorded
	}
	of := string(side)
	if !a.Limb {
		of = "person"
	}
	value := "not recorded"
	if was == was {
		value = a.Say(was)
	}
	return Reading{Of: of, Measure: a.Measure.Name, Label: a.Measure.Label, Value: value}, true
}

// seen gives the cases on which the verdict rests: that of its limb, or all for the person.
func (m *matter) seen() []*cell.Case {
	if i := slices.Index(m.sides, assess.Side(m.v.Limb)); i >= 0 {
		return m.cases[i : i+1]
	}
	return m.cases
}

// test gives the test of whether it is so; nil for what needs no witness.
func (m *matter) test() func() bool {
	_, name, _ := strings.Cut(m.v.Name, ".")
	rule := slices.IndexFunc(m.Rules, func(r *cell.Rule) bool { return m.v.Name == "rule."+r.Name })
	node := func(of string) int {
		if i := slices.IndexFunc(m.Cautions, func(c cell.Caution) bool { return of == "caution."+c.Name }); i >= 0 {
			return m.Cautions[i].Node
		}
		if i := slices.IndexFunc(m.Facts, func(f cell.Fact) bool { return f.Name == name && f.Term == nil }); i >= 0 {
			return m.Facts[i].Node
		}
		return cell.True
	}
	is := func(n int, want cell.Truth) bool { return m.seen()[0].Truth[n] == want }
	switch m.v.Kind {
	case Contradiction, Gap, Tie, Open:
		return m.choice
	case AlwaysSetAside:
		return func() bool { return is(m.Rules[rule].Own, cell.Yes) && is(m.Rules[rule].Force, cell.No) }
	case AddsNothing:
		return func() bool { return is(m.Rules[rule].Force, cell.Yes) }
	case AlwaysTrue:
		return func() bool { return is(node(m.v.Name), cell.Yes) }
	case AlwaysFalse:
		return func() bool { return is(node(m.v.Name), cell.No) }
	case Hides:
		return func() bool { return is(node(m.v.Name), cell.Yes) && is(node(m.v.Other), cell.Yes) }
	}
	return nil
}

// choice reports whether the choice comes out as with everything recorded: limits that leave nothing do so whatever else
// is said; else everything that could be said of it must be known.
func (m *matter) choice() bool {
	cases := m.seen()
	if m.v.Kind != Contradiction {
		for _, s := range m.Topics[m.topic].Says {
			for _, c := range cases {
				f := c.Truth[s.Rule.Force]
				if f == cell.Unknown || f == cell.Yes && s.Advice.Term != nil && math.IsNaN(c.Of(s.Advice.Term)) {
					return false
				}
			}
		}
	}
	d := m.Decide(m.topic, cases...)
	return m.whole == nil || d.Same(*m.whole)
}
