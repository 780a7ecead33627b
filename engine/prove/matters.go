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
	seen := map[key]bool{}
	for i, a := range s.Axes[:s.Measures] {
		for row := range m.rows {
			k := key{m.of(row, i), a.Measure.Name}
			if !seen[k] && m.needs(k) {
				out = append(out, m.reading(k, row, i))
			}
			seen[k] = true
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
	asked  map[string]bool // measures of which it is asked whether they are recorded
	out    map[key]bool    // what is left out
	tested func() bool
}

func newMatter(s *cell.Space, v *Verdict) *matter {
	if v.Assessment == nil {
		return nil
	}
	m := &matter{Space: s, v: v, asked: map[string]bool{}, out: map[key]bool{}, topic: slices.IndexFunc(s.Topics, func(t *cell.Topic) bool { return t.Name == v.Name })}
	for _, n := range s.Nodes {
		if n.Op == cell.Recorded {
			m.asked[s.Axes[n.X].Measure.Name] = true
		}
	}
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

// so reports whether what was found is so with what is left of the witness, whether what is left out is recorded or not
// where that is asked.
func (m *matter) so() bool {
	var open []key
	for k := range m.out {
		if m.asked[k.measure] {
			open = append(open, k)
		}
	}
	if len(open) > maxOpen {
		return false
	}
	for n := range 1 << len(open) {
		for i, k := range open {
			m.each(k, func(r cell.Row, axis int) { r.Recorded[axis] = n>>i&1 == 1 })
		}
		if m.work(); !m.tested() {
			return false
		}
	}
	return true
}

// maxOpen is how many measures of which it is asked whether they are recorded may be left out together.
const maxOpen = 8

// key is one measure of one limb, or of the person.
type key struct{ of, measure string }

// each does something with a measure wherever a row sees it.
func (m *matter) each(k key, do func(r cell.Row, axis int)) {
	for row, r := range m.rows {
		for i, a := range m.Axes[:m.Measures] {
			if a.Measure.Name == k.measure && m.of(row, i) == k.of {
				do(r, i)
			}
		}
	}
}

// of says whose measure an axis of a row is: left, right or person.
func (m *matter) of(row, axis int) string {
	side := m.sides[row]
	switch a := m.Axes[axis]; {
	case !a.Limb:
		return "person"
	case a.Other:
		side = side.Opposite()
	}
	return string(side)
}

// needs reports whether it is no longer so without a measure; else the measure is left out from here on.
func (m *matter) needs(k key) bool {
	var at float64
	var recorded bool
	m.each(k, func(r cell.Row, axis int) {
		at, recorded = r.Value[axis], r.Recorded[axis]
		r.Value[axis], r.Recorded[axis] = math.NaN(), false
	})
	m.out[k] = true
	if m.so() {
		return false
	}
	delete(m.out, k)
	m.each(k, func(r cell.Row, axis int) { r.Value[axis], r.Recorded[axis] = at, recorded })
	return true
}

// reading says what was recorded.
func (m *matter) reading(k key, row, axis int) Reading {
	a := m.Axes[axis]
	value := "not recorded"
	if x := m.rows[row].Value[axis]; x == x {
		value = a.Say(x)
	}
	return Reading{Of: k.of, Measure: k.measure, Label: a.Measure.Label, Value: value}
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
