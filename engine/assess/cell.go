package assess

import (
	"regexp"
	"strconv"
	"strings"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// field makes the tree of one cell of a measure's column that is not blank. A cell holds
//
//	82, 82 kg        a number in the measure's own unit or the column's, or one with its unit
//	90 (confirmed)   a number beyond the plausible range that is right all the same
//	3+, broken       a grade, an option, a date as 2026-10-02, a free text
//	yes, no, never   the last of what has a date and never was
//	not recorded: …  with the reason
//
// In a table separated by semicolons a decimal comma is read like a point. There 1,234 and 1.234
// are refused, since they may have been meant as one thousand and so on.
func (r *record) field(t *table, c column, cell string, where source.Range) source.Field {
	return source.Field{Name: c.name, NameWhere: where, Value: r.cell(t, c, cell, where)}
}

func (r *record) cell(t *table, c column, cell string, where source.Range) source.Value {
	part := func(name string, v source.Value) source.Field {
		return source.Field{Name: name, NameWhere: where, Value: v}
	}
	object := source.Value{Kind: source.ObjectKind, Where: where}
	if reason, ok := cutFold(cell, "not recorded"); ok {
		reason, ok = strings.CutPrefix(strings.TrimSpace(reason), ":")
		if !ok {
			reason = ""
		}
		object.Fields = append(object.Fields, part("not_recorded", textValue(where, strings.TrimSpace(reason))))
		return object
	}
	switch c.measure.Kind {
	case vocab.YesNo:
		switch strings.ToLower(cell) {
		case "yes":
			return source.Value{Kind: source.BoolKind, Where: where, Bool: true}
		case "no":
			return source.Value{Kind: source.BoolKind, Where: where}
		}
		return textValue(where, cell)
	case vocab.Quantity, vocab.Count:
	case vocab.Date:
		if strings.EqualFold(cell, clinical.NeverWord) {
			cell = clinical.NeverWord
		}
		return textValue(where, cell)
	default:
		return textValue(where, cell)
	}
	confirmed := false
	if n := len(cell) - len("(confirmed)"); n > 0 && strings.EqualFold(cell[n:], "(confirmed)") {
		cell, confirmed = strings.TrimSpace(cell[:n]), true
	}
	v := r.number(t, cell, where)
	if c.unit == nil && !confirmed || r.bad[where] {
		return v
	}
	object.Fields = append(object.Fields, part("value", v))
	if c.unit != nil {
		object.Fields = append(object.Fields, part("unit", *c.unit))
	}
	if confirmed {
		object.Fields = append(object.Fields, part("confirmed", source.Value{Kind: source.BoolKind, Where: where, Bool: true}))
	}
	return object
}

// numberForm is a number with what stands behind it: sign and whole part, mark, decimals,
// exponent, the rest.
var numberForm = regexp.MustCompile(`^([+-]?[0-9]+)(?:([.,])([0-9]+))?([eE][+-]?[0-9]+)?(.*)$`)

// number makes a number, or a text if something stands behind it.
func (r *record) number(t *table, cell string, where source.Range) source.Value {
	m := numberForm.FindStringSubmatch(cell)
	if m == nil {
		return textValue(where, cell)
	}
	whole, mark, decimals, exponent, rest := m[1], m[2], m[3], m[4], m[5]
	digits := strings.TrimLeft(whole, "+-")
	written := whole
	if mark != "" {
		written += "." + decimals
	}
	written += exponent
	switch {
	case twoMarks(rest):
		r.refuse(source.Errorf(where, "decimal", "%s has more than one decimal mark.", quoted(cell)).
			Hinting("Write the number with one point and nothing between its thousands, for example 1234.5."))
	case mark == "," && t.separator != ';':
		r.refuse(source.Errorf(where, "decimal", "%s has a decimal comma.", quoted(cell)).
			Hinting("Write %s. A comma is a decimal mark only in a table that is separated by semicolons.", written))
	case mark != "" && t.separator == ';' && len(decimals) == 3 && len(digits) <= 3 && digits[0] != '0' && exponent == "":
		r.refuse(source.Errorf(where, "decimal", "%s can be read in two ways: as %s and as %s.", quoted(cell), written, whole+decimals).
			Hinting("Write %s%s%s0, or %s.", whole, mark, decimals, whole+decimals))
	case strings.TrimSpace(rest) != "":
		return textValue(where, written+rest)
	default:
		n, err := strconv.ParseFloat(written, 64)
		if err == nil {
			return source.Value{Kind: source.NumberKind, Where: where, Number: n}
		}
		r.refuse(tooLarge(where))
	}
	return source.Value{Kind: source.NumberKind, Where: where}
}

// twoMarks reports whether a further decimal mark stands behind a number that has been read.
func twoMarks(rest string) bool {
	return len(rest) > 1 && (rest[0] == '.' || rest[0] == ',') && digit(rest[1])
}

// cutFold is strings.CutPrefix without regard to capital letters.
func cutFold(s, prefix string) (string, bool) {
	if len(s) < len(prefix) || !strings.EqualFold(s[:len(prefix)], prefix) {
		return s, false
	}
	return s[len(prefix):], true
}
