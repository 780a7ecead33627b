package celltest

import (
	"fmt"
	"slices"
	"strings"

	"crus/engine/vocab"
)

// condition draws a condition with at most so many levels of logic above its questions.
func (d *drawer) condition(depth int) string {
	if depth == 0 || !d.chance(70) {
		return d.question()
	}
	forms := []func(int) string{d.and, d.or, d.and, d.or, d.not}
	if d.may(Ternaries) {
		forms = append(forms, d.ternary, d.equality)
	}
	if d.may(Lists) && !d.listing {
		forms = append(forms, d.quantified)
	}
	return one(d, forms)(depth - 1)
}

// inner draws a condition that can stand beside an operator.
func (d *drawer) inner(depth int) string { return closed(d.condition(depth)) }

// closed puts parentheses around a condition or formula that an operator beside it could tear apart.
func closed(text string) string {
	if strings.ContainsAny(text, " !") || strings.HasPrefix(text, "(") || strings.HasPrefix(text, "-") {
		return "(" + text + ")"
	}
	return text
}

func (d *drawer) and(depth int) string { return d.joined(" && ", depth) }
func (d *drawer) or(depth int) string  { return d.joined(" || ", depth) }

func (d *drawer) joined(by string, depth int) string {
	parts := []string{d.inner(depth), d.inner(depth)}
	if d.chance(25) {
		parts = append(parts, d.inner(depth))
	}
	return strings.Join(parts, by)
}

func (d *drawer) not(depth int) string { return "!" + d.inner(depth) }

func (d *drawer) ternary(depth int) string {
	return fmt.Sprintf("%s ? %s : %s", d.inner(depth), d.inner(depth), d.inner(depth))
}

func (d *drawer) equality(depth int) string {
	return d.inner(depth) + one(d, []string{" == ", " != "}) + d.inner(depth)
}

// question draws a condition that asks something once.
func (d *drawer) question() string {
	if f := d.known(isFinding); len(f) > 0 && d.chance(20) {
		return d.factPath(one(d, f))
	}
	if d.may(Opaque) && d.chance(10) {
		if text := d.opaque(); text != "" {
			return text
		}
	}
	if d.chance(25) {
		if text := d.ofFormula(); text != "" {
			return text
		}
	}
	measures := d.readable(func(m *measure) bool {
		return (m.kind != vocab.Text || d.may(Recorded)) && (m.kind != vocab.Date || d.may(Dates))
	})
	if len(measures) == 0 {
		return one(d, []string{"true", "false"})
	}
	if d.chance(5) && d.chance(20) {
		return one(d, []string{"true", "false"})
	}
	m := one(d, measures)
	if m.kind == vocab.Text || d.may(Recorded) && d.chance(10) {
		return "recorded(" + d.path(m) + ")"
	}
	if like := d.like(m); like != "" && d.may(Pairs) && d.chance(20) {
		return fmt.Sprintf("%s %s %s", d.term(m), one(d, m.orders()), like)
	}
	if m.kind == vocab.YesNo {
		return d.sign(m)
	}
	return d.compared(m)
}

// sign asks a yes/no measure.
func (d *drawer) sign(m *measure) string {
	switch d.Int(6) {
	case 4:
		return d.path(m) + one(d, []string{" == ", " != "}) + one(d, []string{"true", "false"})
	case 5:
		return "!" + d.path(m)
	}
	return d.path(m)
}

// compared compares a measure with constants.
func (d *drawer) compared(m *measure) string {
	term := d.term(m)
	switch {
	case d.chance(map[bool]int{true: 50, false: 15}[m.kind == vocab.Option]):
		values := []string{d.value(m)}
		for range d.between(0, 2) {
			values = append(values, d.value(m))
		}
		return fmt.Sprintf("%s in [%s]", term, strings.Join(values, ", "))
	case d.chance(15):
		return fmt.Sprintf("%s %s %s", d.value(m), one(d, m.orders()), term)
	case d.may(Piecewise) && m.kind != vocab.Option && d.chance(15):
		return fmt.Sprintf("(%s ? %s : %s) %s %s", d.shallow(), term, d.value(m), one(d, m.orders()), d.value(m))
	}
	return fmt.Sprintf("%s %s %s", term, one(d, m.orders()), d.value(m))
}

// orders are the comparisons of numbers.
func orders() []string { return []string{"<", ">=", "<=", ">", "==", "!="} }

// orders are the comparisons that the measure's values have.
func (m *measure) orders() []string {
	if m.kind == vocab.YesNo || m.kind == vocab.Option {
		return orders()[4:]
	}
	return orders()
}

// shallow draws a short condition for within something else.
func (d *drawer) shallow() string {
	if yes := d.readable(ofKind(vocab.YesNo)); len(yes) > 0 {
		return d.path(one(d, yes))
	}
	if all := d.readable(ofKind(vocab.Quantity, vocab.Grade, vocab.Count)); len(all) > 0 {
		m := one(d, all)
		return fmt.Sprintf("%s %s %s", d.path(m), one(d, m.orders()), d.value(m))
	}
	return "true"
}

// like writes a measure that can be compared with another: a second one of its kind, or the same of the other
// limb. It is empty where there is none.
func (d *drawer) like(m *measure) string {
	all := d.readable(func(x *measure) bool { return x != m && x.comparable(m) })
	if m.limb && d.may(OtherLimb) && (len(all) == 0 || d.chance(50)) {
		d.limb = true
		return m.asked("other." + m.name)
	}
	if len(all) == 0 {
		return ""
	}
	return d.term(one(d, all))
}

// comparable reports whether two measures have values of one type.
func (m *measure) comparable(x *measure) bool {
	return m.kind == x.kind && m.unit.Dimension == x.unit.Dimension && m.scale == x.scale && slices.Equal(m.options, x.options)
}

// quantified looks through a list: of conditions, of measures, or of constants. Only one list stands within
// another's reach.
func (d *drawer) quantified(depth int) string {
	d.listing = true
	defer func() { d.listing = false }()
	word := one(d, []string{"exists", "all"})
	kinds := []vocab.Kind{vocab.Quantity, vocab.Grade, vocab.Count, vocab.YesNo}
	if d.may(Dates) {
		kinds = append(kinds, vocab.Date)
	}
	measures := d.readable(ofKind(kinds...))
	form := d.Int(4)
	if form == 0 || len(measures) == 0 {
		return fmt.Sprintf("[%s, %s].%s(x, %s)", d.condition(depth), d.condition(depth), word, one(d, []string{"x", "!x"}))
	}
	m := one(d, measures)
	term, like := d.term(m), d.like(m)
	if like == "" {
		like = d.value(m)
	}
	switch {
	case form == 1: // a list of constants
		return fmt.Sprintf("[%s, %s].%s(x, %s %s x)", d.value(m), d.value(m), word, term, one(d, m.orders()))
	case form == 2: // a list that is not constant
		return fmt.Sprintf("%s in [%s, %s]", term, like, d.value(m))
	case m.kind == vocab.YesNo:
		return fmt.Sprintf("[%s, %s].%s(x, x && %s)", term, like, word, d.shallow())
	}
	return fmt.Sprintf("[%s, %s, %s].%s(x, x %s %s)", term, like, d.value(m), word, one(d, m.orders()), d.value(m))
}
