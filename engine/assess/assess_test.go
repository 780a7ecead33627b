package assess

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/google/cel-go/common/types"
	"github.com/google/go-cmp/cmp"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

var update = flag.Bool("update", false, "write the golden files")

const vocabularyText = `
vocabulary "small_limb" {
  title   = "A small vocabulary for tests"
  version = "1.2.0"
}
scale "ashworth" {
  grades = ["0", "1", "1+", "2", "3", "4"]
}
scale "muscle" {
  grades = ["3", "4-", "4", "4+", "5"]
}
measure "age" {
  of = "person"
  label = "Age"
  unit = "a"
  plausible = [0, 110]
  error_basis = "Counted."
}
measure "body_mass" {
  of = "person"
  label = "Body mass"
  unit = "kg"
  plausible = [2, 200]
  error = 1
}
measure "falls" {
  of = "person"
  label = "Falls in the last year"
  count = true
  plausible = [0, 100]
  error_basis = "None is published."
}
measure "drives" {
  of = "person"
  label = "Drives a car"
  yes_no = true
  error_basis = "None is published."
}
measure "last_injection" {
  of = "person"
  label = "Last injection"
  date = true
  never = true
}
measure "last_surgery" {
  of = "person"
  label = "Last operation"
  date = true
  never = true
}
measure "onset" {
  of = "person"
  label = "Onset"
  date = true
}
measure "remarks" {
  of = "person"
  label = "Remarks"
  text = true
}
measure "leg_length" {
  of = "limb"
  label = "Leg length"
  unit = "cm"
  plausible = [30, 120]
  error = 1
}
measure "dorsiflexion" {
  of = "limb"
  label = "Dorsiflexion"
  unit = "deg"
  plausible = [-60, 45]
  error = 5
}
measure "pressure_index" {
  of = "limb"
  label = "Ankle-brachial pressure index"
  unit = "1"
  plausible = [0, 2]
  error = 0.15
}
measure "tone" {
  of = "limb"
  label = "Tone"
  scale = "ashworth"
  error = 1
}
measure "strength" {
  of = "limb"
  label = "Strength"
  scale = "muscle"
  error = 1
}
measure "side_used" {
  of = "limb"
  label = "How it is put on"
  one_of = ["one_hand", "both_hands", "right_hand"]
  error_basis = "None is published."
}
measure "foot_posture" {
  of = "limb"
  label = "Foot posture"
  count = true
  plausible = [-12, 12]
  error = 2
}
measure "skin" {
  of = "limb"
  label = "Skin"
  one_of = ["intact", "broken"]
  error_basis = "None is published."
}
measure "device" {
  of = "limb"
  label = "The device so far"
  text = true
}
`

// vocabulary reads the vocabulary of the tests.
func vocabulary(t testing.TB) *vocab.Vocabulary {
	t.Helper()
	v, diags := vocab.Parse([]*source.File{source.NewFile("small_limb/vocabulary.hcl", []byte(vocabularyText))})
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	return v
}

// golden compares a text with testdata/name.golden.
func golden(t *testing.T, name, got string) {
	t.Helper()
	file := filepath.Join("testdata", name+".golden")
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got); diff != "" {
		t.Errorf("differs from %s (-want +got):\n%s", file, diff)
	}
}

// only gives the one assessment of a file that has no errors.
func only(t testing.TB, name, text string) *Assessment {
	t.Helper()
	list, diags := Read(source.NewFile(name, []byte(text)), vocabulary(t))
	if diags.HasErrors() || len(list) != 1 {
		t.Fatalf("%d assessments in %s\n%s\n%s", len(list), name, text, diags.Text())
	}
	return list[0]
}

const fullJSON = `{ "format": "crus-assessment/1", "id": "demo-017", "vocabulary": "small_limb@1",
  "date": "2026-10-02", "assessor": "orthotist A", "device_for": ["right", "left"],
  "person": { "age": 61, "body_mass": "82000 g", "falls": 3, "drives": false,
              "last_injection": "2026-07-01", "last_surgery": "never", "remarks": " walks with a stick\n" },
  "left":  { "tone": "1+", "dorsiflexion": -5, "leg_length": {"value": 865, "unit": "mm"}, "skin": "broken",
             "pressure_index": "90 %", "foot_posture": {"value": 13, "confirmed": true} },
  "right": { "leg_length": {"value": 150, "confirmed": true}, "tone": {"not_recorded": "pain on movement"},
             "device": "leather boot" } }
`

const fullHCL = `
# the same
format     = "crus-assessment/1"
id         = "demo-017"
vocabulary = "small_limb@1"
date       = "2026-10-02"
assessor   = "orthotist A"
device_for = ["left", "right"]
person {
  age = 61
  body_mass = { value = 82, unit = "kg" }
  falls = 3
  drives = false
  last_injection = "2026-07-01"
  last_surgery = { value = "never" }
  remarks = <<-EOT
    walks with a stick
  EOT
}
left {
  tone           = "1+"
  dorsiflexion   = -5
  leg_length     = 86.5
  skin           = "broken"
  pressure_index = 0.9
  foot_posture   = { value = 13, confirmed = true }
}
right {
  leg_length = { value = "1.5 m", confirmed = true }
  tone       = { not_recorded = "pain on movement" }
  device     = "leather boot"
}
`

const fullCSV = `id,date,assessor,side,device,age,body_mass,falls,drives,last_injection,last_surgery,remarks,tone,dorsiflexion,leg_length [mm],skin,pressure_index,foot_posture,limb.device
demo-017,2026-10-02,orthotist A,left,yes,61,82 kg,3,no,2026-07-01,,walks with a stick,1+,-5,865,broken,90 %,13 (confirmed),
demo-017,2026-10-02,,right,Yes,,82 kg,,,,Never,,Not recorded: pain on movement,,1500 (confirmed),,,,leather boot
`

func TestReadsTheSameFromEveryFormat(t *testing.T) {
	from := map[string]*Assessment{"json": only(t, "demo.json", fullJSON), "hcl": only(t, "demo.HCL", fullHCL), "csv": only(t, "demo.csv", fullCSV)}
	for format, a := range from {
		t.Run(format, func(t *testing.T) {
			if a.ID != "demo-017" || a.Date != "2026-10-02" || a.Assessor != "orthotist A" || a.Vocabulary != "small_limb@1" {
				t.Errorf("header: %+v", a)
			}
			if diff := cmp.Diff([]Side{Left, Right}, a.DeviceFor); diff != "" {
				t.Error(diff)
			}
			if got := a.Where.Text(); got != `"demo-017"` && got != "demo-017" {
				t.Errorf("Where is %q", got)
			}
			wantQuantity(t, a.Person["age"], 61*365.25*86400)
			wantQuantity(t, a.Person["body_mass"], 82)
			wantQuantity(t, a.Left["leg_length"], 865)
			wantQuantity(t, a.Left["dorsiflexion"], -5)
			wantQuantity(t, a.Left["pressure_index"], 0.9)
			wantQuantity(t, a.Right["leg_length"], 1500)
			for _, e := range []struct {
				entry *Entry
				want  any
			}{
				{a.Person["falls"], types.Int(3)}, {a.Person["drives"], types.False}, {a.Person["remarks"], types.String("walks with a stick")},
				{a.Left["skin"], types.String("broken")}, {a.Left["foot_posture"], types.Int(13)}, {a.Right["device"], types.String("leather boot")},
			} {
				if e.entry == nil || e.entry.Value != e.want {
					t.Errorf("%+v, want %v", e.entry, e.want)
				}
			}
			if g, ok := a.Left["tone"].Value.(clinical.Grade); !ok || g.String() != "1+" || g.Rank != 2 {
				t.Errorf("tone is %v", a.Left["tone"].Value)
			}
			if e := a.Right["tone"]; e.Value != nil || e.NotRecorded != "pain on movement" {
				t.Errorf("right tone: %+v", e)
			}
			if !a.Right["leg_length"].Confirmed || !a.Left["foot_posture"].Confirmed || a.Left["leg_length"].Confirmed {
				t.Error("confirmed is not kept as it was written")
			}
			day := func(s string) clinical.Date {
				d, err := clinical.ParseDate(s)
				if err != nil {
					t.Fatal(err)
				}
				return d
			}
			if got, want := a.Person["last_injection"].Value, day("2026-07-01").AsOf(day("2026-10-02")); got.Equal(want) != types.True {
				t.Errorf("last_injection is %v and does not know the assessment's date", got)
			}
			if got := a.Person["last_surgery"]; got == nil || got.Value != clinical.Never() || got.NotRecorded != "" {
				t.Errorf("last_surgery is %+v", got)
			}
			if _, there := a.Right["skin"]; there {
				t.Error("a measure that nobody mentioned has an entry")
			}
			if got, want := a.Digest(), from["json"].Digest(); got != want || len(got) != len("sha256:")+64 {
				t.Errorf("digest %s, want %s", got, want)
			}
		})
	}
}

// wantQuantity checks an entry against a number of base units, kept in the measure's own unit.
func wantQuantity(t *testing.T, e *Entry, base float64) {
	t.Helper()
	if e == nil {
		t.Error("no entry")
		return
	}
	q, ok := e.Value.(clinical.Quantity)
	if !ok || q.Base() != base || q.Unit() != e.Measure.Unit {
		t.Errorf("%s is %v, want %g of the base unit in %s", e.Measure.Name, e.Value, base, e.Measure.Unit.Code)
	}
}

func TestGiven(t *testing.T) {
	f := source.NewFile("cases.hcl", []byte(`
given {
  device_for = ["left"]
  person { body_mass = "82 kg" }
  left   { tone = "3" }
}`))
	root, diags := source.ReadHCL(f)
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	a, diags := Given(root.Blocks[0], vocabulary(t))
	if len(diags) > 0 {
		t.Fatal(diags.Text())
	}
	wantQuantity(t, a.Person["body_mass"], 82)
	if a.Vocabulary != "small_limb@1" || a.ID != "" || a.Where != root.Blocks[0].Where || a.Limb(Left.Opposite()) == nil {
		t.Errorf("%+v", a)
	}
}

func TestADateWithoutTheAssessmentsDateIsAWarning(t *testing.T) {
	text := minimal(`"date": "2026-10-02"`, `"assessor": "A"`, `"person": {}`, `"person": {"last_injection": "2026-07-01"}`)
	list, diags := Read(source.NewFile("a.json", []byte(text)), vocabulary(t))
	if len(list) != 1 || diags.HasErrors() || len(diags) != 1 {
		t.Fatalf("%d assessments, %s", len(list), diags.Text())
	}
	golden(t, "json_no_date", diags.Text())
}

// minimal gives a small assessment with some of its parts replaced, given in pairs.
func minimal(pairs ...string) string {
	text := `{ "format": "crus-assessment/1", "id": "demo-017", "vocabulary": "small_limb@1",
  "date": "2026-10-02", "device_for": ["left"],
  "person": {},
  "left": {} }
`
	for i := 0; i < len(pairs); i += 2 {
		text = replaceOnce(text, pairs[i], pairs[i+1])
	}
	return text
}

func replaceOnce(text, old, new string) string {
	for i := 0; i+len(old) <= len(text); i++ {
		if text[i:i+len(old)] == old {
			return text[:i] + new + text[i+len(old):]
		}
	}
	panic(fmt.Sprintf("%q is not in the text", old))
}

func TestAByteOrderMarkIsSkipped(t *testing.T) {
	want := only(t, "a.json", fullJSON).Digest()
	for _, x := range [][2]string{{"a.json", fullJSON}, {"a.hcl", fullHCL}, {"a.csv", fullCSV}} {
		if got := only(t, x[0], "\ufeff"+x[1]).Digest(); got != want {
			t.Errorf("%s: another assessment with a byte order mark", x[0])
		}
	}
}
