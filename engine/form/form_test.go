package form

import (
	"bytes"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"crus/engine/assess"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
	"crus/rulesets"
)

var update = flag.Bool("update", false, "write the golden files anew")

func small(t *testing.T) *ruleset.Ruleset {
	t.Helper()
	rs, diags := ruleset.Library{}.Ruleset("testdata/small")
	if rs == nil {
		t.Fatal(diags)
	}
	return rs
}

// forms are the forms that the tests look at: of a small vocabulary and ruleset, and of everything
// that comes with the program, for each limb.
func forms(t *testing.T) map[string]*Form {
	t.Helper()
	out := map[string]*Form{}
	add := func(name string, of func([]assess.Side) *Form) {
		out[name+" left"], out[name+" right"], out[name+" both"] = of([]assess.Side{assess.Left}), of([]assess.Side{assess.Right}), of(assess.Sides())
	}
	addRuleset := func(name string, rs *ruleset.Ruleset) {
		add(name, func(sides []assess.Side) *Form { return ForRuleset(rs, sides) })
	}
	addVocabulary := func(name string, v *vocab.Vocabulary) {
		add(name, func(sides []assess.Side) *Form { return ForVocabulary(v, sides) })
	}
	addRuleset("small", small(t))
	addVocabulary("small_vocabulary", small(t).Vocabulary)
	lib := ruleset.Library{Embedded: rulesets.FS}
	for _, l := range lib.List() {
		switch l.Kind {
		case "ruleset":
			rs, diags := lib.Ruleset(l.Name)
			if rs == nil {
				t.Fatal(diags)
			}
			addRuleset(l.Name, rs)
		case "vocabulary":
			v, diags := lib.Vocabulary(l.Name)
			if v == nil {
				t.Fatal(diags)
			}
			addVocabulary(l.Name, v)
		}
	}
	if len(out) < 9 {
		t.Fatalf("only %d forms", len(out))
	}
	return out
}

func TestGolden(t *testing.T) {
	f := ForRuleset(small(t), []assess.Side{assess.Left})
	var page bytes.Buffer
	if err := f.HTML(&page); err != nil {
		t.Fatal(err)
	}
	whole := ForVocabulary(small(t).Vocabulary, assess.Sides())
	for name, got := range map[string][]byte{
		"small_left.hcl": f.HCL(), "small_left.json": f.JSON(), "small_left.csv": f.CSV(), "small_left.html": page.Bytes(),
		"whole_both.hcl": whole.HCL(), "whole_both.csv": whole.CSV(),
	} {
		golden := filepath.Join("testdata", name+".golden")
		if *update {
			if err := os.WriteFile(golden, got, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(golden)
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(string(want), string(got)); diff != "" {
			t.Errorf("%s: %s", name, diff)
		}
	}
}

// A form of a ruleset asks for just what is read in conditions, formulas and shown texts, of the
// limb where it is read, with what it builds on.
func TestForRuleset(t *testing.T) {
	rs := small(t)
	const person = "age falls injected walking_class"
	for _, test := range []struct {
		sides       []assess.Side
		left, right string
	}{
		{[]assess.Side{assess.Left}, "calf_power heel_down skin remarks", "dorsiflexion"},
		{[]assess.Side{assess.Right}, "dorsiflexion", "calf_power heel_down skin remarks"},
		{assess.Sides(), "dorsiflexion calf_power heel_down skin remarks", "dorsiflexion calf_power heel_down skin remarks"},
	} {
		f := ForRuleset(rs, test.sides)
		for name, want := range map[string]string{"person": person, "left": test.left, "right": test.right} {
			if got := strings.Join(names(f, name), " "); got != want {
				t.Errorf("%v, %s: %s, want %s", test.sides, name, got, want)
			}
		}
	}
}

// names lists the measures that a form asks for of the person or of a limb.
func names(f *Form, of string) []string {
	var out []string
	for _, st := range f.Stages {
		for _, field := range st.Fields {
			if of == "person" && field.Sides == nil || slices.Contains(field.Sides, assess.Side(of)) {
				out = append(out, field.Measure.Name)
			}
		}
	}
	return out
}

// Every measure of a vocabulary is on its form once, in the order of an examination.
func TestForVocabulary(t *testing.T) {
	for name, f := range forms(t) {
		if f.Ruleset != nil {
			continue
		}
		seen := map[*vocab.Measure]bool{}
		order := append(vocab.Taken(), "")
		last := 0
		for _, st := range f.Stages {
			at := slices.Index(order, st.Taken)
			if at < last || len(st.Fields) == 0 {
				t.Errorf("%s: stage %q is out of order or empty", name, st.Taken)
			}
			last = at
			for _, field := range st.Fields {
				if seen[field.Measure] || field.Measure.Taken != st.Taken || (field.Measure.Of == vocab.Person) != (field.Sides == nil) {
					t.Errorf("%s: %s", name, field.Measure.Name)
				}
				seen[field.Measure] = true
			}
		}
		if len(seen) != len(f.Vocabulary.Measures) || f.Count() != len(seen) {
			t.Errorf("%s: %d of %d measures, counted %d", name, len(seen), len(f.Vocabulary.Measures), f.Count())
		}
	}
}

// A blank form, with nothing but an id filled in, is an assessment in which nothing is recorded.
func TestBlankReadsBack(t *testing.T) {
	for name, f := range forms(t) {
		for format, text := range map[string]string{
			"hcl":  strings.Replace(string(f.HCL()), `id         = ""`, `id = "x"`, 1),
			"json": strings.Replace(string(f.JSON()), `"id": ""`, `"id": "x"`, 1),
			"csv":  strings.ReplaceAll(string(f.CSV()), "\n,", "\nx,"),
		} {
			a := read(t, f, name, format, text)
			recorded := 0
			for _, group := range []map[string]*assess.Entry{a.Person, a.Left, a.Right} {
				for _, e := range group {
					recorded++
					if e.Value != nil || format != "json" || e.NotRecorded != "left blank" {
						t.Errorf("%s, %s: %s is recorded", name, format, e.Measure.Name)
					}
				}
			}
			if want := len(names(f, "person")) + len(names(f, "left")) + len(names(f, "right")); format == "json" && recorded != want {
				t.Errorf("%s: JSON has %d measures, want %d", name, recorded, want)
			}
		}
	}
}

// A form that is filled in everywhere, just where it has its blanks, is read back in full.
func TestFilledReadsBack(t *testing.T) {
	for name, f := range forms(t) {
		for format, text := range map[string]string{"hcl": fillHCL(f), "csv": fillCSV(f)} {
			a := read(t, f, name, format, text)
			for of, entries := range map[string]map[string]*assess.Entry{"person": a.Person, "left": a.Left, "right": a.Right} {
				for _, m := range names(f, of) {
					if e := entries[m]; e == nil || e.Value == nil {
						t.Errorf("%s, %s: %s.%s is not recorded", name, format, of, m)
					}
				}
			}
		}
	}
}

func read(t *testing.T, f *Form, name, format, text string) *assess.Assessment {
	t.Helper()
	list, diags := assess.Read(source.NewFile("form."+format, []byte(text)), f.Vocabulary)
	if len(diags) > 0 || len(list) != 1 {
		t.Fatalf("%s, %s: %d assessments\n%s", name, format, len(list), diags.Text())
	}
	if !slices.Equal(list[0].DeviceFor, f.DeviceFor) {
		t.Errorf("%s, %s: device for %v", name, format, list[0].DeviceFor)
	}
	return list[0]
}

// value is something that can be recorded, as CSV has it and as HCL has it.
func value(m *vocab.Measure) (plain, quoted string) {
	switch m.Kind {
	case vocab.Quantity, vocab.Count:
		plain = number(m.Plausible.Lo)
		return plain, plain
	case vocab.YesNo:
		return "yes", "true"
	case vocab.Grade:
		plain = m.Scale.Grades[0]
	case vocab.Option:
		plain = m.Options[0]
	case vocab.Date:
		plain = "2026-01-31"
		if m.Never {
			plain = "never"
		}
	default:
		plain = "a remark"
	}
	return plain, fmt.Sprintf("%q", plain)
}

// fillHCL frees and fills in every line behind a #, and changes nothing else.
func fillHCL(f *Form) string {
	blank := regexp.MustCompile(`(?m)^( *)# (\w+) *=( "")?( //.*)?$`)
	return blank.ReplaceAllStringFunc(strings.Replace(string(f.HCL()), `id         = ""`, `id = "x"`, 1), func(line string) string {
		part := blank.FindStringSubmatch(line)
		filled := map[string]string{"date": `"2026-10-02"`, "assessor": `"initials"`}[part[2]]
		if part[1] != "" {
			_, filled = value(f.Vocabulary.Measure(part[2]))
		}
		return part[1] + part[2] + " = " + filled + part[4]
	})
}

// fillCSV fills in every cell that the form asks for.
func fillCSV(f *Form) string {
	var b strings.Builder
	lines := strings.Split(strings.TrimSpace(string(f.CSV())), "\n")
	columns := strings.Split(lines[0], ",")
	b.WriteString(lines[0] + "\n")
	for _, line := range lines[1:] {
		cells := strings.Split(line, ",")
		cells[0], cells[1] = "x", "2026-10-02"
		for i := 5; i < len(cells); i++ {
			column, _, _ := strings.Cut(columns[i], " [")
			m := f.Vocabulary.Measure(column[strings.LastIndexByte(column, '.')+1:])
			if m.Of == vocab.Person || slices.Contains(names(f, cells[3]), m.Name) {
				cells[i], _ = value(m)
			}
		}
		b.WriteString(strings.Join(cells, ",") + "\n")
	}
	return b.String()
}

// The page asks for every measure once, and for each limb where it is to be taken.
func TestHTMLHasEveryField(t *testing.T) {
	for name, f := range forms(t) {
		var b bytes.Buffer
		if err := f.HTML(&b); err != nil {
			t.Fatal(err)
		}
		page := b.String()
		if got := strings.Count(page, `<th scope="row">`); got != f.Count() {
			t.Errorf("%s: %d rows, want %d", name, got, f.Count())
		}
		cells, nevers := 0, 0
		for _, st := range f.Stages {
			for _, field := range st.Fields {
				cells += max(1, len(field.Sides))
				if field.Measure.Never {
					nevers += max(1, len(field.Sides))
				}
			}
		}
		if got := strings.Count(page, "<td") - strings.Count(page, "not needed"); got != cells {
			t.Errorf("%s: %d cells, want %d", name, got, cells)
		}
		if got := strings.Count(page, "</span>never</span>"); got != nevers {
			t.Errorf("%s: never can be ticked %d times, want %d", name, got, nevers)
		}
		if strings.Contains(page, "<script") || strings.Contains(page, "http") || strings.Contains(page, "<knee") {
			t.Errorf("%s: the page is not self-contained, or a label was not escaped", name)
		}
	}
	if err := ForVocabulary(small(t).Vocabulary, assess.Sides()).HTML(failing{}); err == nil {
		t.Error("an error of the writer is lost")
	}
}

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, io.ErrShortWrite }

// On paper nobody reads words with underscores.
func TestHowOnPaper(t *testing.T) {
	m := &vocab.Measure{Kind: vocab.Option, Options: []string{"full", "only_under_load"}, How: "only_under_load: comes down under full weight."}
	if got, want := howOnPaper(m), "only under load: comes down under full weight."; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}
