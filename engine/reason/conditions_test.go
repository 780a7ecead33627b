package reason_test

import (
	"fmt"
	"math"
	"math/rand/v2"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/vocab"
)

// conditions draws conditions and assessments over a vocabulary.
type conditions struct {
	*rand.Rand
	v      *vocab.Vocabulary
	byKind map[vocab.Kind][]*vocab.Measure
}

func newConditions(r *rand.Rand, v *vocab.Vocabulary) *conditions {
	g := &conditions{Rand: r, v: v, byKind: map[vocab.Kind][]*vocab.Measure{}}
	for _, m := range v.Measures {
		g.byKind[m.Kind] = append(g.byKind[m.Kind], m)
	}
	return g
}

func (g *conditions) pick(s ...string) string { return s[g.IntN(len(s))] }

func (g *conditions) measure(k vocab.Kind) *vocab.Measure {
	return g.byKind[k][g.IntN(len(g.byKind[k]))]
}

func (g *conditions) path(m *vocab.Measure) string {
	if m.Of == vocab.Person {
		return "person." + m.Name
	}
	return g.pick("limb.", "limb.", "other.") + m.Name
}

// literal writes a value of a measure's plausible range: halves only, which both sides hold exactly.
func (g *conditions) literal(m *vocab.Measure) string {
	x := g.half(m)
	if x < 0 && g.IntN(2) == 0 {
		return fmt.Sprintf("-%s(%v)", clinical.LiteralFor(m.Unit), -x)
	}
	return fmt.Sprintf("%s(%v)", clinical.LiteralFor(m.Unit), x)
}

func (g *conditions) half(m *vocab.Measure) float64 {
	lo, hi := math.Ceil(m.Plausible.Lo*2), math.Floor(m.Plausible.Hi*2)
	if hi <= lo {
		return m.Plausible.Lo
	}
	return (lo + float64(g.IntN(int(hi-lo)+1))) / 2
}

func (g *conditions) compare() string { return g.pick(" < ", " <= ", " > ", " >= ", " == ", " != ") }

func (g *conditions) condition(depth int) string {
	if depth == 0 || g.IntN(5) == 0 {
		return g.atom()
	}
	switch g.IntN(5) {
	case 0:
		return "(" + g.condition(depth-1) + " && " + g.condition(depth-1) + ")"
	case 1:
		return "(" + g.condition(depth-1) + " || " + g.condition(depth-1) + ")"
	case 2:
		return "!(" + g.condition(depth-1) + ")"
	case 3:
		return "(" + g.condition(depth-1) + " ? " + g.condition(depth-1) + " : " + g.condition(depth-1) + ")"
	}
	return g.condition(depth-1) + g.pick(" && ", " || ") + g.condition(depth-1) + g.pick(" && ", " || ") + g.condition(depth-1)
}

func (g *conditions) atom() string {
	switch g.IntN(12) {
	case 0, 1:
		m := g.measure(vocab.Quantity)
		return g.path(m) + g.compare() + g.literal(m)
	case 2:
		m := g.measure(vocab.Quantity)
		if m.Of == vocab.Person {
			return "person." + m.Name + g.compare() + g.literal(m)
		}
		return "limb." + m.Name + " - other." + m.Name + g.compare() + g.literal(m)
	case 3:
		m := g.measure(vocab.Quantity)
		return g.pick("abs(", "-(", "(") + g.path(m) + ")" + g.compare() + g.literal(m)
	case 4:
		m := g.measure(vocab.Quantity)
		return g.path(m) + " * 2" + g.compare() + g.pick("least(", "greatest(") + g.literal(m) + ", " + g.literal(m) + ")"
	case 5, 6:
		m := g.measure(vocab.Grade)
		return g.path(m) + g.compare() + g.grade(m)
	case 7:
		m := g.measure(vocab.Count)
		return g.path(m) + g.pick(" + 1", " * 2", "") + g.compare() + fmt.Sprint(g.IntN(20))
	case 8:
		m := g.measure(vocab.Option)
		return g.path(m) + g.pick(" == ", " != ") + "'" + g.pick(m.Options...) + "'"
	case 9:
		m := g.measure(vocab.Option)
		return g.path(m) + " in ['" + g.pick(m.Options...) + "', '" + g.pick(m.Options...) + "']"
	case 10:
		return g.pick("", "!") + "recorded(" + g.path(g.v.Measures[g.IntN(len(g.v.Measures))]) + ")"
	}
	if g.IntN(2) == 0 {
		m := g.measure(vocab.Quantity)
		return "[" + g.literal(m) + ", " + g.literal(m) + "]." + g.pick("exists", "all", "exists_one") + "(x, " + g.path(m) + g.compare() + "x)"
	}
	return g.path(g.measure(vocab.YesNo))
}

func (g *conditions) grade(m *vocab.Measure) string {
	return m.Scale.Name + "('" + g.pick(m.Scale.Grades...) + "')"
}

// assessment records about four of five measures.
func (g *conditions) assessment() *assess.Assessment {
	a := &assess.Assessment{ID: "oracle", Date: "2026-10-02", DeviceFor: []assess.Side{assess.Left},
		Person: map[string]*assess.Entry{}, Left: map[string]*assess.Entry{}, Right: map[string]*assess.Entry{}}
	for _, m := range g.v.Measures {
		if m.Of == vocab.Person {
			g.record(a.Person, m)
			continue
		}
		g.record(a.Left, m)
		g.record(a.Right, m)
	}
	return a
}

func (g *conditions) record(to map[string]*assess.Entry, m *vocab.Measure) {
	if v := g.value(m); v != nil && g.IntN(5) > 0 {
		to[m.Name] = &assess.Entry{Measure: m, Value: v}
	}
}

func (g *conditions) value(m *vocab.Measure) ref.Val {
	switch m.Kind {
	case vocab.Quantity:
		q, err := clinical.NewQuantity(g.half(m), m.Unit)
		if err != nil {
			return nil
		}
		return q
	case vocab.Grade:
		x, _ := m.Scale.At(g.IntN(len(m.Scale.Grades)))
		return x
	case vocab.Option:
		return types.String(g.pick(m.Options...))
	case vocab.YesNo:
		return types.Bool(g.IntN(2) == 0)
	case vocab.Count:
		return types.Int(int(m.Plausible.Lo) + g.IntN(int(m.Plausible.Hi-m.Plausible.Lo)+1))
	}
	return nil
}

// header tells the other CEL the units and scales.
func (g *conditions) header() map[string]any {
	units, scales := map[string][2]float64{}, map[string][]string{}
	for _, u := range clinical.Units() {
		if name := clinical.LiteralFor(u); name != "" {
			one, _ := clinical.NewQuantity(1, u)
			units[name] = [2]float64{one.Base(), 1}
		}
	}
	for _, s := range g.v.Scales {
		scales[s.Name] = s.Grades
	}
	return map[string]any{"units": units, "scales": scales}
}
