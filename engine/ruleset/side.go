package ruleset

import (
	"strings"

	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/types"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// side is one side of an operator, or one argument of a function, as messages speak of it.
type side struct {
	node    ast.Expr // may be nil
	text    string   // as written; "" where that is too long to repeat
	typ     string   // cel-go's name of its type
	kind    string   // "an angle", "a count", "one of a few words"
	measure *vocab.Measure
	number  bool // a plain number is written
}

// maxRepeat is how much of a condition a message repeats.
const maxRepeat = 44

func (m *mismatcher) side(node ast.Expr, typ string) side {
	s := side{node: node, typ: typ, kind: m.describe(typ)}
	if node == nil {
		return s
	}
	if text := m.e.Written(node.ID()); len([]rune(text)) <= maxRepeat && !strings.Contains(text, "\n") {
		s.text = text
	}
	switch Constant(m.vocab, node).(type) {
	case types.Int, types.Double:
		s.number = true
	}
	if path, ok := dotted(node); ok {
		if s.measure = measureAt(m.vocab, path); s.measure != nil {
			switch s.measure.Kind {
			case vocab.Count:
				s.kind = "a count"
			case vocab.Option:
				s.kind = "one of a few words"
			}
		}
	}
	return s
}

// phrase names the side at the end of a sentence: "5, a bare number".
func (s side) phrase() string {
	if s.text == "" {
		return s.kind
	}
	return s.text + ", " + s.kind
}

// amid names the side amid a sentence.
func (s side) amid() string {
	if s.text == "" {
		return s.kind
	}
	return s.phrase() + ","
}

// is says what the side is: "5 is a bare number".
func (s side) is() string {
	if s.text == "" {
		return "this is " + s.kind
	}
	return s.text + " is " + s.kind
}

func (s *scope) describe(celType string) string {
	if t, ok := s.types[celType]; ok {
		return clinical.Describe(t)
	}
	if strings.HasPrefix(celType, "list(") {
		return "a list"
	}
	return "something else"
}

// plural names many things of a type.
func (m *mismatcher) plural(celType string) string {
	if d, ok := clinical.DimensionOf(m.types[celType]); ok {
		switch d {
		case clinical.Mass, clinical.Stiffness:
			return d.String() + "es"
		}
		return d.String() + "s"
	}
	if sc := m.scaleOf(celType); sc != nil {
		return "grades of " + sc.Name
	}
	switch celType {
	case "int", "double", "uint":
		return "bare numbers"
	case "string":
		return "words"
	}
	return "other things"
}

// scaleOf gives the scale whose grades have a type, or nil.
func (s *scope) scaleOf(celType string) *clinical.Scale {
	for _, sc := range s.vocab.Scales {
		if sc.CELType().String() == celType {
			return sc
		}
	}
	return nil
}

// literal gives the function that writes a quantity: in the unit of the measure where there is one.
func (m *mismatcher) literal(a side, d clinical.Dimension) string {
	if a.measure != nil {
		if name := clinical.LiteralFor(a.measure.Unit); name != "" {
			return name
		}
	}
	return clinical.LiteralFor(d.Base())
}

// wayOut says how side b is written so that it goes with side a, or "".
func (m *mismatcher) wayOut(sign string, a, b side) string {
	calculates := strings.Contains("+-*/", sign)
	if d, ok := clinical.DimensionOf(m.types[a.typ]); ok {
		_, other := clinical.DimensionOf(m.types[b.typ])
		switch {
		case b.typ == "string" && b.text != "" && !calculates:
			return "A quantity is written without quotes, for example " + m.literal(a, d) + "(5)."
		case b.number && sign != "*" && sign != "/":
			return "Write its unit: " + m.literal(a, d) + "(" + b.text + ")."
		case other && (sign == "+" || sign == "-"):
			return "Only like quantities are added and subtracted: " + m.plural(a.typ) + " with " + m.plural(a.typ) + "."
		case other && calculates:
			return "Products are force by length (a moment), length by length (an area), and stiffness by angle; anything can be multiplied or divided by a number or a ratio."
		case other:
			return "Compare it with " + a.kind + ", for example " + m.literal(a, d) + "(5)."
		}
	}
	if sc := m.scaleOf(a.typ); sc != nil {
		if calculates {
			return "Grades have an order and no distance: they are compared, and nothing else."
		}
		label := sc.Grades[len(sc.Grades)/2]
		if written := strings.Trim(b.text, "'\""); contains(sc.Grades, written) {
			label = written
		}
		return "A grade is written " + sc.Name + "('" + label + "')."
	}
	counted := a.measure != nil && a.measure.Kind == vocab.Count || b.measure != nil && b.measure.Kind == vocab.Count
	if (a.typ == "int" && b.typ == "double" || a.typ == "double" && b.typ == "int") && (calculates || !counted) {
		return "A whole number and one with a point do not go with each other: write " + withPoint(a, b) + "."
	}
	if a.measure != nil {
		switch a.measure.Kind {
		case vocab.Date:
			return "How long ago it was is asked with since: since(" + a.text + ") > weeks(12)."
		case vocab.Option:
			return "Its options are " + source.And(a.measure.Options) + ": " + a.text + " == '" + a.measure.Options[0] + "'."
		case vocab.Count:
			return "A count is compared with a whole number, for example " + a.text + " >= 2."
		}
	}
	if a.typ == "bool" && !calculates && a.text != "" {
		return "A finding or yes/no measure is a condition by itself: write it alone, or with ! before it."
	}
	return ""
}

// withPoint writes the side that is a whole number so that it goes with one with a point.
func withPoint(a, b side) string {
	if a.typ != "int" {
		a = b
	}
	switch {
	case a.text == "":
		return "double(...) around the whole number"
	case a.number:
		return a.text + ".0"
	}
	return "double(" + a.text + ")"
}
