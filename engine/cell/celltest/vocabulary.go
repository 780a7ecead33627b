package celltest

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"crus/engine/clinical"
	"crus/engine/vocab"
)

// scale is a drawn scale.
type scale struct {
	name   string
	grades []string
}

// measure is a drawn measure.
type measure struct {
	name         string
	limb         bool
	kind         vocab.Kind
	unit         clinical.Unit // of a quantity
	scale        *scale
	options      []string
	lo, hi, step float64 // of a quantity or a count
	never        bool
	cuts         []cut // what conditions compare it with
}

// cut is a value that a condition compares a measure with: of a date the time since it.
type cut struct {
	at   float64
	unit clinical.Unit // the zero Unit of a count
}

// grid draws a value on the measure's grid, which may go so many steps beyond the plausible range.
func (m *measure) grid(d Dice, beyond int) float64 {
	n := int(math.Round((m.hi - m.lo) / m.step))
	return rounded(m.lo + float64(d.Int(n+1+2*beyond)-beyond)*m.step)
}

// rounded keeps sums of decimal steps decimal.
func rounded(x float64) float64 { return math.Round(x*1e9) / 1e9 }

// choice is a drawn choice.
type choice struct {
	name         string
	person       bool
	options      []string
	ordered      bool
	unit         clinical.Unit
	lo, hi, step float64
	fallback     string // its default, as HCL writes it
}

// span is a unit with a range that a measure in it can have.
type span struct {
	code         string
	lo, hi, step float64
}

// spans lists units, those that most formulas are made of first and several times.
func spans() []span {
	return []span{
		{"deg", -60, 45, 5}, {"mm", 0, 100, 5}, {"deg", -30, 30, 2.5}, {"cm", 0, 40, 0.5}, {"a", 0, 110, 1}, {"mm", 0, 300, 10},
		{"deg", -90, 20, 5}, {"kg", 2, 200, 2}, {"deg", -25, 25, 5}, {"mm", -20, 60, 2}, {"m", 0, 0.5, 0.01}, {"wk", 0, 104, 1},
		{"[in_i]", 0, 12, 0.5}, {"1", 0, 2, 0.1}, {"%", 0, 100, 5}, {"m/s", 0, 2, 0.1}, {"km/h", 0, 8, 0.5}, {"rad", -1, 1, 0.25},
		{"[lb_av]", 0, 300, 10}, {"kPa", 0, 40, 1}, {"mm[Hg]", 0, 250, 10}, {"N.m", 0, 150, 5}, {"N.m/deg", 0, 8, 0.2}, {"N", 0, 400, 20},
		{"cm2", 0, 100, 5}, {"s", 0, 120, 1}, {"mo", 0, 60, 1},
	}
}

// inexact reports whether the numbers of a unit, by its code, are no decimals in the base unit.
func inexact(code string) bool { return code == "rad" || code == "km/h" }

// unitOf finds a unit; only units of the table are asked for.
func unitOf(code string) clinical.Unit {
	u, ok := clinical.UnitByCode(code)
	if !ok {
		panic("celltest: no unit " + code)
	}
	return u
}

// wordsOf gives so many options.
func wordsOf(n int) []string {
	return []string{"none", "some", "more", "full", "gone", "mixed", "odd", "else"}[:n]
}

// scales are those of these tests, and then those of biomech's formulas.
func scales() []*scale {
	return []*scale{
		{"load_scale", []string{"low", "mid", "high"}},
		{"tone_scale", []string{"0", "1", "1+", "2", "3", "4"}},
		{"muscle_power", []string{"0", "1", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"}},
		{"short_calf", []string{"none", "gastrocnemius", "gastrocnemius_and_soleus"}},
		{"community_walking", []string{"none", "household", "limited_community", "community"}},
		{"pressure_index", []string{"critical", "severe", "moderate", "mild", "borderline", "normal", "raised"}},
		{"fpi_item", []string{"-2", "-1", "0", "+1", "+2"}},
		{"foot_posture", []string{"highly_supinated", "supinated", "neutral", "pronated", "highly_pronated"}},
	}
}

// vocabulary draws scales, measures and choices.
func (d *drawer) vocabulary() {
	d.scales = scales()[:2]
	if d.may(Biomech) && d.chance(40) { // those that formulas read and give
		d.scales = scales()[2:]
	}
	for i := range d.many(d.size.Measures, min(3, d.size.Measures)) {
		d.measures = append(d.measures, d.measure(i))
	}
	for i := range d.many(d.size.Choices, min(2, d.size.Choices)) {
		d.choices = append(d.choices, d.choice(i))
	}
}

func (d *drawer) measure(i int) *measure {
	if i > 0 && d.chance(30) { // one like another, so that the two can be compared
		m := *one(d, d.measures)
		m.name, m.limb = fmt.Sprintf("%s_%d", strings.Split(m.name, "_")[0], i), !d.chance(30)
		m.cuts = nil
		return &m
	}
	kinds := []vocab.Kind{vocab.YesNo, vocab.Quantity, vocab.Grade, vocab.Quantity, vocab.Option, vocab.Count, vocab.Quantity}
	if d.may(Dates) {
		kinds = append(kinds, vocab.Date)
	}
	if d.may(Text) && d.chance(50) {
		kinds = append(kinds, vocab.Text)
	}
	m := &measure{kind: one(d, kinds), limb: !d.chance(30)}
	short := map[vocab.Kind]string{vocab.YesNo: "sign", vocab.Grade: "grade", vocab.Option: "kind", vocab.Count: "count", vocab.Date: "day", vocab.Text: "note"}[m.kind]
	switch m.kind {
	case vocab.Quantity:
		all := slices.DeleteFunc(spans(), func(sp span) bool { return inexact(sp.code) && !d.may(Inexact) })
		sp := one(d, all[:[]int{3, 6, 12, len(all)}[d.Int(4)]])
		m.unit, m.lo, m.hi, m.step = unitOf(sp.code), sp.lo, sp.hi, sp.step
		short = string(m.unit.Dimension)
	case vocab.Grade:
		m.scale = one(d, d.scales)
	case vocab.Option:
		m.options = wordsOf(d.between(2, 5))
	case vocab.Count:
		m.lo, m.hi, m.step = one(d, []float64{0, -12, -3}), one(d, []float64{12, 5, 30}), 1
	case vocab.Date:
		m.never = d.chance(50)
	}
	m.name = fmt.Sprintf("%s_%d", strings.ReplaceAll(short, "_", ""), i)
	return m
}

func (d *drawer) choice(i int) *choice {
	c := &choice{name: fmt.Sprintf("options_%d", i), person: d.may(PersonChoices) && d.chance(25)}
	if !d.chance(40) {
		c.options = wordsOf(d.between(2, 5))
		c.ordered = d.chance(60)
		if d.chance(30) {
			c.fallback = quoted(`"`, one(d, c.options))
		}
		return c
	}
	sp := one(d, []span{{"mm", 0, 60, 1}, {"deg", -10, 10, 2}, {"wk", 1, 52, 1}, {"mm", 0, 30, 0.5}, {"deg", -30, 30, 5}, {"N.m/deg", 0, 8, 0.1}, {"cm", 0, 6, 0.1}})
	c.name = fmt.Sprintf("number_%d", i)
	c.unit, c.lo, c.hi, c.step = unitOf(sp.code), sp.lo, sp.hi, sp.step
	if d.chance(30) {
		c.fallback = number(c.at(d, 0))
	}
	return c
}

// at draws a number for the choice on a grid of ten steps, which may go beyond its range.
func (c *choice) at(d Dice, beyond int) float64 {
	step := (c.hi - c.lo) / 10
	return rounded(c.lo + float64(d.Int(11+2*beyond)-beyond)*step)
}

// vocabularyText writes the vocabulary.
func (d *drawer) vocabularyText() string {
	var b strings.Builder
	fmt.Fprintf(&b, "vocabulary %q {\n  title   = \"Drawn\"\n  version = \"1.0.0\"\n}\n", VocabularyName)
	for _, s := range d.scales {
		fmt.Fprintf(&b, "scale %q {\n  grades = [%s]\n}\n", s.name, quoted(`"`, s.grades...))
	}
	for _, m := range d.measures {
		fmt.Fprintf(&b, "measure %q {\n  of    = %q\n  label = %q\n  taken = %q\n", m.name, of(m.limb), "Measure "+m.name, one(d, vocab.Taken()))
		d.kindText(&b, m)
		fmt.Fprint(&b, "}\n")
	}
	for _, c := range d.choices {
		fmt.Fprintf(&b, "choice %q {\n  of       = %q\n  label    = %q\n  concerns = %q\n", c.name, of(!c.person), "Choice "+c.name, one(d, vocab.Concerns()))
		if c.options != nil {
			fmt.Fprintf(&b, "  options  = [%s]\n  ordered  = %t\n", quoted(`"`, c.options...), c.ordered)
		} else {
			fmt.Fprintf(&b, "  unit     = %q\n  between  = [%s, %s]\n  rounding = %s\n", c.unit.Code, number(c.lo), number(c.hi), number(c.step))
		}
		if c.fallback != "" {
			fmt.Fprintf(&b, "  default  = %s\n", c.fallback)
		}
		fmt.Fprint(&b, "}\n")
	}
	return b.String()
}

func of(limb bool) vocab.Of {
	if limb {
		return vocab.Limb
	}
	return vocab.Person
}

func (d *drawer) kindText(b *strings.Builder, m *measure) {
	switch m.kind {
	case vocab.Quantity:
		fmt.Fprintf(b, "  unit  = %q\n", m.unit.Code)
	case vocab.Grade:
		fmt.Fprintf(b, "  scale = %q\n", m.scale.name)
	case vocab.Option:
		fmt.Fprintf(b, "  one_of = [%s]\n", quoted(`"`, m.options...))
	default:
		fmt.Fprintf(b, "  %s = true\n", m.kind)
	}
	if m.never {
		fmt.Fprint(b, "  never = true\n")
	}
	if m.kind == vocab.Quantity || m.kind == vocab.Count {
		fmt.Fprintf(b, "  plausible = [%s, %s]\n", number(m.lo), number(m.hi))
	}
	switch {
	case m.kind == vocab.Date || m.kind == vocab.Text:
	case m.kind == vocab.Grade && d.chance(50):
		fmt.Fprint(b, "  error = 1\n")
	case (m.kind == vocab.Quantity || m.kind == vocab.Count) && d.chance(50):
		fmt.Fprintf(b, "  error = %s\n", number(rounded(m.step*float64(d.between(1, 2)))))
	default:
		fmt.Fprint(b, "  error_basis = \"None is published.\"\n")
	}
}
