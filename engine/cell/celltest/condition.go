package celltest

import (
	"fmt"
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

// part draws a condition that can stand beside an operator.
func (d *drawer) inner(depth int) string { return closed(d.condition(depth)) }

// closed puts parentheses around what an operator could tear apart.
func closed(text string) string {
	if strings.ContainsAny(text, " !") && !strings.HasPrefix(text, "(") || strings.HasPrefix(text, "(") {
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
		return d.pair(m, like)
	}
	return d.asked(m)
}

// orders are the comparisons, those of an order first.
func orders() []string { return []string{"<", ">=", "<=", ">", "==", "!="} }

// flipped compares from the other side.
func flipped(order string) string {
	return strings.Map(func(c rune) rune {
		switch c {
		case '<':
			return '>'
		case '>':
			return '<'
		}
		return c
	}, order)
}

// asked compares a measure with constants.
func (d *drawer) asked(m *measure) string {
	switch m.kind {
	case vocab.YesNo:
		return d.asked2(m)
	case vocab.Date:
		return fmt.Sprintf("since(%s) %s %s", d.path(m), one(d, orders()), d.time(m))
	}
	path := d.path(m)
	switch {
	case m.kind == vocab.Option && d.chance(50):
		return fmt.Sprintf("%s %s %s", path, one(d, []string{"==", "!="}), d.value(m))
	case m.kind == vocab.Option || d.chance(15):
		return fmt.Sprintf("%s in [%s]", path, strings.Join(d.values(m), ", "))
	case d.chance(10):
		return fmt.Sprintf("%s %s %s", d.value(m), flipped(one(d, orders())), path)
	case d.chance(15) && d.may(Piecewise) && m.kind != vocab.Quantity:
		return fmt.Sprintf("(%s ? %s : %s) %s %s", d.shallow(), path, d.value(m), one(d, orders()), d.value(m))
	}
	return fmt.Sprintf("%s %s %s", path, one(d, orders()), d.value(m))
}

// asked2 asks a yes/no measure.
func (d *drawer) asked2(m *measure) string {
	path := d.path(m)
	switch d.Int(6) {
	case 4:
		return path + one(d, []string{" == ", " != "}) + one(d, []string{"true", "false"})
	case 5:
		return "!" + path
	}
	return path
}

// shallow draws a short condition for within something else.
func (d *drawer) shallow() string {
	if yes := d.readable(ofKind(vocab.YesNo)); len(yes) > 0 {
		return d.path(one(d, yes))
	}
	if all := d.readable(ofKind(vocab.Quantity, vocab.Grade, vocab.Count)); len(all) > 0 {
		m := one(d, all)
		return fmt.Sprintf("%s %s %s", d.path(m), one(d, orders()), d.value(m))
	}
	return "true"
}

// value writes a constant of a measure.
func (d *drawer) value(m *measure) string {
	switch m.kind {
	case vocab.Quantity:
		return d.constant(m)
	case vocab.Grade:
		return fmt.Sprintf("%s('%s')", m.scale.name, one(d, m.scale.grades))
	case vocab.Option:
		return quoted("'", one(d, m.options))
	case vocab.YesNo:
		return one(d, []string{"true", "false"})
	case vocab.Date:
		return d.time(m)
	}
	at := m.grid(d, 1)
	m.cuts = append(m.cuts, cut{at: at})
	return number(at)
}

// values writes a few constants of a measure.
func (d *drawer) values(m *measure) []string {
	out := []string{d.value(m)}
	for range d.between(0, 2) {
		out = append(out, d.value(m))
	}
	return out
}

// time writes a time since a date, and notes it as a cut.
func (d *drawer) time(m *measure) string {
	x := one(d, []span{{"wk", 0, 60, 1}, {"d", 0, 90, 1}, {"mo", 0, 30, 1}, {"a", 0, 8, 1}})
	at := float64(d.between(0, int(x.hi)))
	m.cuts = append(m.cuts, cut{at, unitOf(x.code)})
	return fmt.Sprintf("%s(%s)", map[string]string{"wk": "weeks", "d": "days", "mo": "months", "a": "years"}[x.code], number(at))
}

// like gives the path of a measure that can be compared with another: a second one of its kind, or the same
// of the other limb. It is empty where there is none.
func (d *drawer) like(m *measure) string {
	all := d.readable(func(x *measure) bool { return x != m && x.comparable(m) })
	if m.limb && d.may(OtherLimb) && (len(all) == 0 || d.chance(50)) {
		d.limb = true
		return "other." + m.name
	}
	if len(all) == 0 {
		return ""
	}
	return d.path(one(d, all))
}

// comparable reports whether two measures have values of one type.
func (m *measure) comparable(x *measure) bool {
	switch {
	case m.kind != x.kind:
		return false
	case m.kind == vocab.Quantity:
		return m.unit.Dimension == x.unit.Dimension
	case m.kind == vocab.Grade:
		return m.scale == x.scale
	case m.kind == vocab.Option:
		return strings.Join(m.options, " ") == strings.Join(x.options, " ")
	}
	return true
}

// pair compares a measure with one like it.
func (d *drawer) pair(m *measure, like string) string {
	path := d.path(m)
	switch {
	case m.kind == vocab.YesNo || m.kind == vocab.Option:
		return path + one(d, []string{" == ", " != "}) + like
	case m.kind == vocab.Date:
		return fmt.Sprintf("since(%s) %s since(%s)", path, one(d, orders()), like)
	}
	return fmt.Sprintf("%s %s %s", path, one(d, orders()), like)
}

// quantified looks through a list: of conditions, of measures, or of constants. Only one list stands in
// another's reach at a time.
func (d *drawer) quantified(depth int) string {
	d.listing = true
	defer func() { d.listing = false }()
	word := one(d, []string{"exists", "all"})
	measures := d.readable(func(m *measure) bool {
		return m.kind == vocab.Quantity || m.kind == vocab.Grade || m.kind == vocab.Count || m.kind == vocab.YesNo
	})
	form := d.Int(4)
	if form == 0 || len(measures) == 0 {
		return fmt.Sprintf("[%s, %s].%s(x, %s)", d.condition(depth), d.condition(depth), word, one(d, []string{"x", "!x"}))
	}
	m := one(d, measures)
	path, like := d.path(m), d.like(m)
	if like == "" {
		like = d.value(m)
	}
	switch {
	case form == 1: // a list of constants
		return fmt.Sprintf("[%s, %s].%s(x, %s %s x)", d.value(m), d.value(m), word, path, d.ordering(m))
	case form == 2: // a measure in a list that is not constant
		return fmt.Sprintf("%s in [%s, %s]", path, like, d.value(m))
	case m.kind == vocab.YesNo:
		return fmt.Sprintf("[%s, %s].%s(x, x && %s)", path, like, word, d.shallow())
	}
	return fmt.Sprintf("[%s, %s, %s].%s(x, x %s %s)", path, like, d.value(m), word, d.ordering(m), d.value(m))
}

// ordering draws a comparison that a measure's values have.
func (d *drawer) ordering(m *measure) string {
	if m.kind == vocab.YesNo || m.kind == vocab.Option {
		return one(d, []string{"==", "!="})
	}
	return one(d, orders())
}
