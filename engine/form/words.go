package form

import (
	"strconv"
	"strings"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/vocab"
)

// stageTitle is the heading of a stage.
func stageTitle(taken string) string {
	switch taken {
	case "person":
		return "Person"
	case "lying":
		return "Lying"
	case "standing":
		return "Standing"
	case "walking":
		return "Walking"
	case "shoe":
		return "Shoe"
	case "workshop":
		return "Workshop"
	}
	return "At any time"
}

// number writes a number as it can be typed.
func number(n float64) string { return strconv.FormatFloat(n, 'f', -1, 64) }

// unit is how a measure's unit stands beside a number: "mm", "°", "years"; "" where there is none.
func unit(m *vocab.Measure) string {
	if word := clinical.LiteralFor(m.Unit); m.Unit.Dimension == clinical.Time && word != "s" {
		return word // single letters would be unclear on paper
	}
	return m.Unit.Symbol
}

// amount writes a size with the measure's unit: "5°", "20 mm", "1 grade".
func amount(m *vocab.Measure, n float64) string {
	s := number(n)
	switch u := unit(m); {
	case m.Kind == vocab.Grade && n == 1:
		return s + " grade"
	case m.Kind == vocab.Grade:
		return s + " grades"
	case u == "" || u == "°" || u == "%":
		return s + u
	default:
		return s + " " + u
	}
}

// answers says what can be recorded: "in mm, plausible 0 to 60", "one of 0, 1, 1+".
func answers(m *vocab.Measure) string {
	switch m.Kind {
	case vocab.Quantity:
		in := "a ratio"
		if u := unit(m); u != "" {
			in = "in " + u
		}
		return in + ", plausible " + plausible(m)
	case vocab.Count:
		return "a whole number, plausible " + plausible(m)
	case vocab.Grade:
		return "one of the grades " + strings.Join(m.Scale.Grades, ", ")
	case vocab.Option:
		return "one of " + strings.Join(m.Options, ", ")
	case vocab.YesNo:
		return "true or false"
	case vocab.Date:
		if m.Never {
			return "a date, as 2027-01-31, or " + clinical.NeverWord + " if it never was"
		}
		return "a date, as 2027-01-31"
	}
	return "free text"
}

// plausible is the range of a quantity or count: "-60 to 45".
func plausible(m *vocab.Measure) string {
	return number(m.Plausible.Lo) + " to " + number(m.Plausible.Hi)
}

// precision says how exact the measure is, or "" where it is no measurement.
func precision(m *vocab.Measure) string {
	switch {
	case m.Kind != vocab.Quantity && m.Kind != vocab.Grade && m.Kind != vocab.Count:
		return ""
	case m.Error > 0 && m.ErrorBasis != "":
		return "±" + amount(m, m.Error) + ": " + m.ErrorBasis
	case m.Error > 0:
		return "±" + amount(m, m.Error)
	}
	return m.ErrorBasis
}

// sideNames writes limbs as words.
func sideNames(sides []assess.Side) []string {
	var out []string
	for _, s := range sides {
		out = append(out, string(s))
	}
	return out
}

// spoken writes a word of the vocabulary as people read it.
func spoken(word string) string { return strings.ReplaceAll(word, "_", " ") }
