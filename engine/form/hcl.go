package form

import (
	"bytes"
	"fmt"
	"slices"
	"strings"

	"crus/engine/assess"
	"crus/engine/source"
	"crus/engine/vocab"
)

// hclWidth is how wide the notes are set.
const hclWidth = 96

// HCL writes the form as an assessment in which every measure is a line behind a #, to be freed
// and filled in. Lines behind // are notes on how it is taken; they stand at the first place of a
// measure.
func (f *Form) HCL() []byte {
	w := &hclWriter{form: f, explained: map[*vocab.Measure]bool{}}
	measures := "measures"
	if f.Count() == 1 {
		measures = "measure"
	}
	w.note("", fmt.Sprintf("%s: a blank assessment with %d %s of %s %s.", f.Title(), f.Count(), measures, f.Vocabulary.Name, f.Vocabulary.Version))
	w.note("", "Write a value behind its equal sign, and take away the # before the line. A line that keeps its # is not recorded.")
	w.note("", `A bare number is in the unit that is shown; one in another unit says so: "86.5 cm"`)
	w.note("", `What could not be taken says why: { not_recorded = "pain on movement" }`)
	w.note("", "A value beyond its plausible range is confirmed: { value = 48, confirmed = true }")
	fmt.Fprintf(w, "\nformat     = %q\nvocabulary = %q\n", assess.Format, f.usual())
	fmt.Fprintf(w, "id         = \"\" // of the assessment; neither a name nor a date of birth\n")
	fmt.Fprintf(w, "# date     = \"\" // as 2027-01-31\n# assessor = \"\" // role or initials\n")
	fmt.Fprintf(w, "device_for = [\"%s\"]\n", strings.Join(sideNames(f.DeviceFor), `", "`))
	w.group("person", func(field Field) bool { return field.Sides == nil })
	for _, s := range f.Sides() {
		w.group(string(s), func(field Field) bool { return slices.Contains(field.Sides, s) })
	}
	return w.Bytes()
}

type hclWriter struct {
	bytes.Buffer
	form      *Form
	explained map[*vocab.Measure]bool
}

// note writes a paragraph of notes.
func (w *hclWriter) note(indent, text string) {
	for i, line := range source.Wrap(text, hclWidth-len(indent)-5) {
		if i > 0 {
			line = "  " + line
		}
		fmt.Fprintf(w, "%s// %s\n", indent, line)
	}
}

// group writes the block of the person or of a limb with the fields that belong there.
func (w *hclWriter) group(name string, mine func(Field) bool) {
	fmt.Fprintf(w, "\n%s {\n", name)
	empty := true
	for _, st := range w.form.Stages {
		titled := false
		for _, field := range st.Fields {
			if !mine(field) {
				continue
			}
			if !empty {
				w.WriteByte('\n')
			}
			if !titled && st.Taken != name {
				fmt.Fprintf(w, "  // --- %s ---\n\n", stageTitle(st.Taken))
			}
			titled, empty = true, false
			w.field(field.Measure)
		}
	}
	w.WriteString("}\n")
}

func (w *hclWriter) field(m *vocab.Measure) {
	if w.explained[m] {
		w.note("  ", m.Label+": "+answers(m)+".")
	} else {
		w.explained[m] = true
		w.note("  ", strings.TrimSpace(m.Label+". "+m.How))
		w.note("  ", "Record "+answers(m)+".")
		if p := precision(m); p != "" {
			w.note("  ", "Error: "+p)
		}
	}
	fmt.Fprintf(w, "  # %s =", m.Name)
	if m.Kind == vocab.Grade || m.Kind == vocab.Option || m.Kind == vocab.Date || m.Kind == vocab.Text {
		w.WriteString(` ""`)
	}
	w.WriteByte('\n')
}
