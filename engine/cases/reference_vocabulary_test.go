package cases

import (
	"fmt"
	"io/fs"
	"os"
	"slices"
	"strings"
	"testing"

	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
	"crus/rulesets"
)

// wordingRow is a published meaning of a grade, or a way of measuring, that the vocabulary must give to whoever
// measures: beside a measure, or at the head of its file.
type wordingRow struct {
	row, expects string
	place        string // the name of a measure, or of a file
	words        string // of the vocabulary
}

func wordingRows() []wordingRow {
	return []wordingRow{
		{"T02", "MAS 1+", "tone.hcl", "1+ catch, then slight resistance through less than half of the rest"},
		{"T03", "MAS 1", "tone.hcl", "1 catch and release, or slight resistance at the end"},
		{"T04", "MAS 2", "tone.hcl", "2 marked through most of the range, part still moves easily"},
		{"T05", "MAS 3", "tone.hcl", "3 passive movement difficult"},
		{"T06", "MAS 4", "tone.hcl", "4 rigid"},
		{"T08", "quality 3", "gastrocnemius_tardieu_quality", "3 clonus under 10 seconds"},
		{"T09", "quality 4", "gastrocnemius_tardieu_quality", "4 clonus over 10 seconds"},
		{"T10", "quality 2", "gastrocnemius_tardieu_quality", "2 catch and release"},
		{"P02", "2", "power.hcl", "2 full range with gravity eliminated"},
		{"P03", "2-", "power.hcl", "2- part"},
		{"P04", "2+", "power.hcl", "2+ under half range against gravity"},
		{"P05", "3-", "power.hcl", "3- over half"},
		{"P06", "3", "power.hcl", "3 full range against gravity"},
		{"P07", "3+", "power.hcl", "3+ gives way to slight resistance"},
		{"P08", "1", "power.hcl", "1 a flicker without movement"},
		{"R05", "20 deg of knee flexion already removes gastrocnemius restraint", "ankle_dorsiflexion_knee_flexed", "at least 20 deg of bend frees the gastrocnemius"},
		{"G10", "FAC 1", "functional_ambulation", "1 steady contact"},
		{"G11", "FAC 2", "functional_ambulation", "2 light touch"},
		{"G12", "FAC 3", "functional_ambulation", "3 supervision"},
		{"G13", "FAC 4", "functional_ambulation", "4 alone on level ground"},
		{"S09", "present", "sensation.hcl", "felt where two of three answers are right"},
		{"A11", "ICC .477, mean error -5 mm, shorter side wrong in 7/20", "leg_length", "ICC 0.477, mean error -5 mm, wrong side in 7 of 20"},
		{"A11", "do not act on tape alone", "pelvis_levelling_block", "Preferred to the tape"},
	}
}

func TestPublishedWording(t *testing.T) {
	published, v := rows(t), lowerLimb(t)
	for _, x := range wordingRows() {
		if row := published[x.row]; !strings.Contains(row.expected, x.expects) {
			t.Errorf("%s is not published so: %+v", x.row, row)
		}
		var text string
		if m := v.Measure(x.place); m != nil {
			text = m.How + " " + m.ErrorBasis
		} else if data, err := fs.ReadFile(rulesets.FS, "lower_limb/"+x.place); err == nil {
			text = string(data)
		}
		if text = strings.Join(strings.Fields(strings.ReplaceAll(text, "\n#", "\n")), " "); !strings.Contains(text, x.words) {
			t.Errorf("%s: %s does not say %q", x.row, x.place, x.words)
		}
	}
}

// scaleRow is a published order of grades.
type scaleRow struct{ row, expected, scale, grades string }

func scaleRows() []scaleRow {
	return []scaleRow{
		{"T01", "0,1,2,3,4,5 (strictly increasing", "modified_ashworth", "0<1<1+<2<3<4"},
		{"P01", "0<1<2-<2<2+<3-<3<3+<4-<4<4+<5-<5", "muscle_power", "0<1<2-<2<2+<3-<3<3+<4-<4<4+<5-<5"},
	}
}

func TestPublishedScales(t *testing.T) {
	published, v := rows(t), lowerLimb(t)
	for _, x := range scaleRows() {
		s := v.Scale(x.scale)
		if !strings.HasPrefix(published[x.row].expected, x.expected) || s == nil || strings.Join(s.Grades, "<") != x.grades {
			t.Errorf("%s, %+v: %+v", x.row, published[x.row], s)
			continue
		}
		for i, label := range strings.Split(x.grades, "<") {
			if g, ok := s.Grade(label); !ok || g.Rank != i {
				t.Errorf("%s: %s has rank %v", x.row, label, g.Rank)
			}
		}
	}
}

// refusedRow is what a published scale does not have.
type refusedRow struct{ row, person, left string }

func refusedRows() []refusedRow {
	return []refusedRow{
		{"T07", "", `"plantarflexor_tone": "1.5"`},
		{"T07", "", `"plantarflexor_tone": 5`},
		{"F07", "", `"fpi_talar_head": "+3"`},
		{"G14", `"functional_ambulation": "6"`, ""},
	}
}

// What the published scales do not have is refused, never recoded.
func TestPublishedScalesRefuse(t *testing.T) {
	published, v := rows(t), lowerLimb(t)
	for _, x := range refusedRows() {
		if row, ok := published[x.row]; !ok || !strings.Contains(row.expected, "re") {
			t.Errorf("%s is not published", x.row)
		}
		text := fmt.Sprintf(`{"format": "crus-assessment/1", "id": "x", "vocabulary": "lower_limb@1", "device_for": ["left"], "person": {%s}, "left": {%s}}`, x.person, x.left)
		if list, diags := assess.Read(source.NewFile("a.json", []byte(text)), v); len(list) != 0 || !diags.HasErrors() {
			t.Errorf("%s: %s %s is read", x.row, x.person, x.left)
		}
	}
}

func lowerLimb(t *testing.T) *vocab.Vocabulary {
	t.Helper()
	v, diags := ruleset.Library{Embedded: os.DirFS("../../rulesets")}.Vocabulary("lower_limb")
	if v == nil {
		t.Fatal(diags.Text())
	}
	return v
}

// ward is a vocabulary with what the one for the lower limb leaves out, and its published cut-offs.
const ward = `vocabulary "ward" {
  title   = "Bedside"
  version = "1.0.0"
}
measure "braden" {
  of          = "person"
  label       = "Braden, total"
  count       = true
  plausible   = [6, 23]
  taken       = "person"
  error_basis = "none is published that we know of"
  how         = "Sum of six."
}
measure "friction" {
  of          = "person"
  label       = "Braden, friction and shear"
  count       = true
  plausible   = [1, 3]
  taken       = "person"
  error_basis = "none is published that we know of"
  how         = "1 to 3."
}
measure "site_answers" {
  of          = "person"
  label       = "Right answers at a site, of three"
  count       = true
  plausible   = [0, 3]
  taken       = "person"
  error_basis = "none is published that we know of"
  how         = "10 g monofilament."
}
`

const wardClasses = `ruleset "bedside" {
  title      = "Published cut-offs at the bedside"
  version    = "1.0.0"
  status     = "draft"
  vocabulary = "ward@1"
}
finding "very_high" {
  holds = "person.braden <= 9"
}
finding "high" {
  holds = "person.braden >= 10 && person.braden <= 12"
}
finding "moderate" {
  holds = "person.braden >= 13 && person.braden <= 14"
}
finding "mild" {
  holds = "person.braden >= 15 && person.braden <= 18"
}
finding "none" {
  holds = "person.braden >= 19"
}
finding "present" {
  holds = "person.site_answers >= 2"
}
finding "absent" {
  holds = "person.site_answers < 2"
}
`

type wardRow struct{ row, expects, person, holds string }

func wardRows() []wardRow {
	return []wardRow{
		{"S15", "moderate; ", `"braden": 14`, "moderate"},
		{"S15", "; mild; ", `"braden": 18`, "mild"},
		{"S15", "; very high; ", `"braden": 9`, "very_high"},
		{"S15", "; none", `"braden": 19`, "none"},
		{"S16", "reject (1..3)", `"friction": 4`, "refused"},
		{"S09", "present", `"site_answers": 2`, "present"},
		{"S10", "absent", `"site_answers": 1`, "absent"}, // two of three wrong
	}
}

func TestPublishedBedside(t *testing.T) {
	dir := t.TempDir()
	for name, text := range map[string]string{"ward": ward, "bedside": wardClasses} {
		if err := os.Mkdir(dir+"/"+name, 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(dir+"/"+name+"/"+name+".hcl", []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	rs, diags := ruleset.Library{Dirs: []string{dir}}.Ruleset("bedside")
	if rs == nil {
		t.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	published := rows(t)
	for _, x := range wardRows() {
		if row := published[x.row]; !strings.Contains(row.expected, x.expects) {
			t.Errorf("%s is not published so: %+v", x.row, row)
		}
		text := fmt.Sprintf(`{"format": "crus-assessment/1", "id": "x", "vocabulary": "ward@1", "date": "2026-10-02", "device_for": ["left"], "person": {%s}}`, x.person)
		list, diags := assess.Read(source.NewFile("a.json", []byte(text)), rs.Vocabulary)
		got := "refused"
		if len(list) == 1 {
			var held []string
			for name, b := range e.Advise(list[0], today).Person.Findings {
				if b != nil && *b {
					held = append(held, name)
				}
			}
			slices.Sort(held)
			got = strings.Join(held, " ")
		}
		if got != x.holds || (got == "refused") != diags.HasErrors() {
			t.Errorf("%s, %s: %s, want %s (%s)", x.row, x.person, got, x.holds, diags.Text())
		}
	}
}
