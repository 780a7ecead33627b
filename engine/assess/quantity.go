package assess

import (
	"strconv"
	"strings"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// quantity reads a number in the measure's unit or the one that is written, or a text such as "82 kg".
func (r *recorded) quantity() (ref.Val, bool) {
	unit := r.m.Unit
	if r.unit != nil {
		if r.bad[r.unit.Where] {
			return nil, false
		}
		if r.unit.Kind != source.TextKind {
			r.fail(source.Errorf(r.unit.Where, "kind", "A unit is a text, and this is %s.", r.unit.Kind).Hinting("For example %s", r.notation.field("unit", r.notation.text(unit.Code))))
			return nil, false
		}
		u, d := unitOf(r.m, r.path, strings.TrimSpace(r.unit.Text.S), r.unit.Where)
		if d != nil {
			r.fail(*d)
			return nil, false
		}
		unit = u
	}
	var q clinical.Quantity
	var err error
	switch {
	case r.value.Kind == source.NumberKind:
		q, err = clinical.NewQuantity(r.value.Number, unit)
	case r.value.Kind == source.TextKind && r.unit != nil:
		if d, ok := r.slip(); ok {
			r.fail(d)
			return nil, false
		}
		d := r.wrong("unit", "has a unit beside its value, and the value is a text").Hinting("Write the value as a number alone.")
		if r.notation == csvNotation {
			d = r.wrong("unit", "has a unit in the first line, and this cell is no number alone").Hinting("Write the number alone, or take the unit out of the first line.")
		}
		r.fail(d)
		return nil, false
	case r.value.Kind == source.TextKind:
		s := strings.TrimSpace(r.value.Text.S)
		if q, err = clinical.ParseQuantity(s); err != nil || q.Dimension() != r.m.Unit.Dimension {
			return r.noQuantity(s, err)
		}
	default:
		r.fail(r.wrong("kind", "is a number, and this is %s", r.value.Kind).Hinting("For example %s", r.notation.field(r.m.Name, r.example())))
		return nil, false
	}
	if err != nil {
		r.fail(tooLarge(r.value.Where))
		return nil, false
	}
	unit, q = q.Unit(), q.WithUnit(r.m.Unit)
	if lo, hi := r.bound(r.m.Plausible.Lo), r.bound(r.m.Plausible.Hi); !r.confirmed && (q.Compare(lo) == types.IntNegOne || q.Compare(hi) == types.IntOne) {
		at, _ := q.In(unit)
		r.implausible(amount(at, unit), amount(r.m.Plausible.Lo, clinical.Unit{Code: "1"}), amount(r.m.Plausible.Hi, r.m.Unit))
		return nil, false
	}
	return q, true
}

// bound gives an end of the plausible range.
func (r *recorded) bound(x float64) clinical.Quantity {
	q, _ := clinical.NewQuantity(x, r.m.Unit)
	return q
}

// noQuantity says why a text is not a quantity of the measure's dimension.
func (r *recorded) noQuantity(s string, err error) (ref.Val, bool) {
	if d, ok := r.slip(); ok {
		r.fail(d)
		return nil, false
	}
	number := numberForm.FindStringSubmatch(s)
	unit := ""
	if number != nil {
		unit = strings.TrimSpace(number[5])
	}
	switch {
	case number != nil && twoMarks(unit):
		r.fail(r.wrong("decimal", "has more than one decimal mark").Hinting("Write the number with one point and nothing between its thousands, for example 1234.5."))
	case number == nil:
		r.fail(r.wrong("number", "is a number, and %s is not one", quoted(s)).Hinting("For example %s", r.notation.field(r.m.Name, r.example())))
	case unit == "":
		r.fail(r.wrong("unit", "is written as a text, which needs its unit").
			Hinting("Write the number without quotes, if it is in the measure's own unit: %s", r.notation.field(r.m.Name, short(s))))
	default:
		if _, d := unitOf(r.m, r.path, unit, r.value.Where); d != nil {
			r.fail(*d)
		} else {
			r.fail(r.wrong("number", "can't be read: %s", err).Hinting("For example %s", r.notation.field(r.m.Name, r.example())))
		}
	}
	return nil, false
}

// unitOf finds a unit that a measure can be written in.
func unitOf(m *vocab.Measure, path, code string, where source.Range) (clinical.Unit, *source.Diagnostic) {
	if m.Kind != vocab.Quantity {
		d := source.Errorf(where, "unit", "%s has no unit.", path).Hinting("Leave the unit out.")
		return clinical.Unit{}, &d
	}
	u, known := clinical.UnitByCode(code)
	if known && u.Dimension == m.Unit.Dimension {
		return u, nil
	}
	var same []string
	for _, u := range clinical.Units() {
		if u.Dimension == m.Unit.Dimension {
			same = append(same, u.Code)
		}
	}
	d := source.Errorf(where, "dimension", "%s is %s, and %s is a unit of %s.", path, withArticle(m.Unit.Dimension.String()), code, u.Dimension).
		Hinting("It is written in %s.", source.Or(same))
	if !known {
		d = source.Errorf(where, "unit", "%s is not a unit that is known here.", quoted(code)).
			Hinting("%s is written in %s.", path, source.Or(same))
	}
	return u, &d
}

func withArticle(word string) string {
	if strings.ContainsRune("aeiou", rune(word[0])) {
		return "an " + word
	}
	return "a " + word
}

// amount writes a number with the code of its unit.
func amount(x float64, u clinical.Unit) string {
	s := strconv.FormatFloat(x, 'g', -1, 64)
	if u.Code == "1" {
		return s
	}
	return s + " " + u.Code
}
