package form

import (
	_ "embed"
	"html/template"
	"io"
	"slices"
	"strings"

	"crus/engine/assess"
	"crus/engine/vocab"
)

//go:embed sheet.html
var sheetHTML string

// HTML writes the form as one self-contained page that prints on A4 and is filled in by hand: a row
// a measure, a column a limb, in the order of the examination. An error is one of w.
func (f *Form) HTML(w io.Writer) error {
	t, err := template.New("sheet").Funcs(template.FuncMap{
		"stage": stageTitle, "spoken": spoken, "bounds": bounds, "unit": unit, "upper": capital, "how": howOnPaper, "words": gradesAreWords,
		"has": func(field Field, s assess.Side) bool { return slices.Contains(field.Sides, s) },
		"cell": func(m *vocab.Measure) cell {
			return cell{m, string(m.Kind)}
		},
	}).Parse(sheetHTML)
	if err != nil {
		return err
	}
	return t.Execute(w, f)
}

// cell is where one value is written.
type cell struct {
	*vocab.Measure
	As string
}

// howOnPaper says how a measure is taken, with its options as the sheet writes them.
func howOnPaper(m *vocab.Measure) string {
	how := m.How
	for _, o := range m.Options {
		how = strings.ReplaceAll(how, o, spoken(o))
	}
	return how
}

// bounds says between what a value is plausible and how exact it is, or "" where neither is known.
func bounds(m *vocab.Measure) string {
	var said []string
	if m.Kind == vocab.Quantity || m.Kind == vocab.Count {
		said = append(said, "plausible "+plausible(m))
	}
	if m.Error > 0 {
		said = append(said, "measurement error ±"+amount(m, m.Error))
	}
	if said == nil {
		return ""
	}
	return capital(strings.ReplaceAll(strings.Join(said, "; "), "-", "−")) + "."
}

// gradesAreWords reports whether a scale's grades are too long to stand beside each other.
func gradesAreWords(m *vocab.Measure) bool {
	return slices.ContainsFunc(m.Scale.Grades, func(g string) bool { return len(g) > 3 })
}

func capital(s string) string { return strings.ToUpper(s[:1]) + s[1:] }
