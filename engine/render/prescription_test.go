package render

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"time"

	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
	"crus/rulesets"
)

// engineOf makes an engine of a ruleset that comes with the program.
func engineOf(t testing.TB, name string) *reason.Engine {
	t.Helper()
	rs, diags := ruleset.Library{Embedded: rulesets.FS}.Ruleset(name)
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

// prescriptions carries a ruleset out on an assessment of testdata.
func prescriptions(t testing.TB, e *reason.Engine, path string) []*Prescription {
	t.Helper()
	b, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	as, diags := assess.Read(source.NewFile(filepath.Base(path), b), e.Ruleset().Vocabulary)
	if diags.HasErrors() || len(as) != 1 {
		t.Fatalf("%s: %d assessments\n%s", path, len(as), diags.Text())
	}
	day, err := time.Parse(time.DateOnly, as[0].Date)
	if err != nil {
		t.Fatal(err)
	}
	return Prescriptions(e.Advise(as[0], day), as[0], e.Ruleset().Vocabulary)
}

// assessmentsOf lists the single assessments of testdata whose names match.
func assessmentsOf(t testing.TB, patterns ...string) []string {
	t.Helper()
	var out []string
	for _, p := range patterns {
		paths, err := filepath.Glob(filepath.Join("../../testdata", p))
		if err != nil || len(paths) == 0 {
			t.Fatalf("no %s: %v", p, err)
		}
		out = append(out, paths...)
	}
	return out
}

func pageOf(t testing.TB, ps []*Prescription) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := PrescriptionPage(&b, ps, "Prescription"); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestPrescriptionGolden(t *testing.T) {
	e := engineOf(t, "demo_clinic")
	for _, name := range []string{"spastic_equinovarus", "child_crouch", "sparse"} {
		ps := prescriptions(t, e, "../../testdata/"+name+".json")
		for _, p := range ps {
			p.Digest = "sha256:000000000000" // it changes with every word of the ruleset
		}
		golden(t, "prescription_"+name+".html", pageOf(t, ps))
	}
}

// written is a small outcome of one leg for the tests of what a state looks like on the sheet.
func written(t *testing.T, set func(*reason.Result)) (*Prescription, string) {
	t.Helper()
	v, diags := ruleset.Library{Embedded: rulesets.FS}.Vocabulary("lower_limb")
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	o := header("yes")
	r := emptyResult()
	set(r)
	o.Assessment.DeviceFor = []string{"left"}
	o.Limbs, o.Person = map[string]*reason.Result{"left": r}, emptyResult()
	ps := Prescriptions(o, &assess.Assessment{ID: "x", DeviceFor: []assess.Side{assess.Left}}, v)
	if len(ps) != 1 {
		t.Fatalf("%d legs", len(ps))
	}
	return ps[0], string(pageOf(t, ps))
}

// What is not decided is never shown as decided: neither bold, nor in the drawing, and it has a word and a mark.
func TestPrescriptionStates(t *testing.T) {
	for _, test := range []struct {
		name, choice string
		c            reason.Choice
		firm         bool
		row          string // as it stands on the page
		drawn        string // is in the drawing if it is decided
	}{
		{"settled", "cast_ankle_angle", reason.Choice{Status: reason.Settled, Value: -4.0, Unit: "deg", PlusMinus: ptr(6.0)}, true, "<b>−4° ± 6</b>", "ankle −4°"},
		{"provisional", "cast_ankle_angle", reason.Choice{Status: reason.Settled, Value: -4.0, Unit: "deg", Provisional: true}, false, `−4° <span class="status">◌ settled, provisional</span>`, "ankle −4°"},
		{"open", "cast_ankle_angle", reason.Choice{Status: reason.IsOpen, Unit: "deg", Range: &[2]float64{-4, 0}}, false, `−4° to 0° <span class="status">◐ open</span>`, ""},
		{"conflict", "cast_ankle_angle", reason.Choice{Status: reason.Conflict, Unit: "deg", Conflict: []string{"a", "b"}}, false, `conflict <span class="status">⊠ nothing is picked</span>`, ""},
		{"clinician", "strut_place", reason.Choice{Status: reason.LeftToClinician, Because: "so"}, false, `<td><span class="status">◇ the clinician decides</span>`, ""},
		{"clinician, provisional", "strut_place", reason.Choice{Status: reason.LeftToClinician, Because: "so", Provisional: true}, false, `<td><span class="status">◌ the clinician decides, provisional</span>`, ""},
		{"default", "shell_trimline", reason.Choice{Status: reason.Default, Value: "through_malleoli"}, true, "<b>through malleoli (by default)</b>", ""},
		{"default, provisional", "shell_trimline", reason.Choice{Status: reason.Default, Value: "through_malleoli", Provisional: true}, false, `through malleoli <span class="status">◌ default, provisional</span>`, ""},
		{"stop", articulation, reason.Choice{Status: reason.Settled, Value: "plantarflexion_stop"}, true, "<b>stop plantarflexion</b>", ""},
		{"resist or assist", articulation, reason.Choice{Status: reason.IsOpen, Among: []string{"plantarflexion_resist", "dorsiflexion_assist"}}, false, "resist plantarflexion or assist dorsiflexion", ""},
		{"most are open", articulation, reason.Choice{Status: reason.IsOpen, Among: []string{"none", "plantarflexion_stop", "plantarflexion_resist", "dorsiflexion_assist", "dorsiflexion_stop", "both_stops"}}, false, "any but free", ""},
	} {
		t.Run(test.name, func(t *testing.T) {
			p, page := written(t, func(r *reason.Result) { r.Choices[test.choice] = &test.c })
			row := p.Groups[0].Rows[0]
			if row.Firm != test.firm {
				t.Errorf("firm %v, want %v", row.Firm, test.firm)
			}
			if !strings.Contains(page, test.row) {
				t.Errorf("the page lacks %s:\n%s", test.row, between(page, "<table>", "</table>"))
			}
			if (len(p.Open) > 1) == test.firm { // the shoe, which is not recorded, is always one
				t.Errorf("to be decided: %v", p.Open)
			}
			if test.choice == "cast_ankle_angle" && (test.drawn != "") != strings.Contains(p.Drawing, ">ankle ") {
				t.Errorf("the drawing shows the ankle's angle: %v", test.drawn == "")
			}
			if !strings.Contains(p.Drawing, test.drawn) {
				t.Errorf("the drawing lacks %s", test.drawn)
			}
			if test.c.Provisional && test.drawn != "" && !strings.Contains(p.Drawing, "provisional: cast ankle angle") {
				t.Error("the drawing does not say that it is provisional")
			}
		})
	}
}

func between(s, from, to string) string {
	_, s, _ = strings.Cut(s, from)
	s, _, _ = strings.Cut(s, to)
	return s
}

// What a custom-made prescription carries, and what a composite device can't be made or judged without.
func TestPrescriptionCarries(t *testing.T) {
	_, page := written(t, func(r *reason.Result) {
		r.Choices["review_interval"] = &reason.Choice{Status: reason.Unanswered}
		r.Choices["hindfoot_posting"] = &reason.Choice{Status: reason.Unanswered}
	})
	for _, want := range []string{
		"For the sole use of (name or code)", "Prescriber<", "Registration, clinic", "Why custom-made", "Device number", "Maker, place of manufacture",
		"Safety and performance requirements not met, and why", "Medicinal substance or tissue", "EU 2017/745, Annex XIII", // Regulation (EU) 2017/745, Annex XIII
		"Material, lay-up, thickness", "Stiffness, how tested", "Finished: ankle angle, how measured", "Shank to vertical as tuned, in which shoe", // a published review missed them in reports
		"Prescriber, signature", "Made by, signature", "Fitted and skin seen, signature",
		"Not recorded: write in heel height", "a licensed clinician decides", "Cautions", "None in force",
		"<th>Review after</th>", "no rule speaks of it", // follow-up has its rows whatever is answered
		"write in, because no rule speaks of it: Hindfoot posting; The shoe that it is made for",
	} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %q", want)
		}
	}
}

// Forces are drawn with their errors, on the side that they come from; a floor that pushes is said to.
func TestPrescriptionForces(t *testing.T) {
	newtons := func(x float64, off *float64) *reason.Measured {
		return &reason.Measured{Value: x, Unit: "N", PlusMinus: off}
	}
	p, _ := written(t, func(r *reason.Result) {
		r.Quantities["own.force_at_shin"], r.Quantities["force_at_heel"] = newtons(146.2, ptr(71.3)), newtons(313.4, nil)
		r.Quantities["force_under_forefoot"], r.Quantities["force_at_calf"] = newtons(277.1, nil), newtons(0, nil)
		r.Quantities["force_at_ankle_lateral"], r.Quantities["force_at_shank_frontal"], r.Quantities["force_at_foot_frontal"] = newtons(124.4, nil), newtons(24, nil), newtons(100.4, nil)
		r.Quantities["force_at_ankle_medial"] = nil // can't be worked out
	})
	for _, want := range []string{">146 N ± 71<", ">313 N<", ">floor 277 N<", ">From behind, left<", ">124 N<", ">24 N<", ">100 N<", ">lateral<", ">medial<"} {
		if !strings.Contains(p.Drawing, want) {
			t.Errorf("the drawing lacks %s", want)
		}
	}
	want := []prescribedField{{"on the shin, back", "146 N ± 71"}, {"on the heel, forward and up", "313 N"}, {"of the floor under the ball of the foot plate, up", "277 N"},
		{"on the ankle from the lateral side", "124 N"}, {"on the shank, against the ankle's", "24 N"}, {"on the foot, against the ankle's", "100 N"}}
	if !slices.Equal(p.Forces, want) {
		t.Errorf("%v\nwant %v", p.Forces, want)
	}
}

// Every name that the sheet reads is one of the vocabulary that comes with the program; so a name that changes
// there is not silently left out here. The list stands in docs/language.md.
func TestPrescriptionNames(t *testing.T) {
	v, diags := ruleset.Library{Embedded: rulesets.FS}.Vocabulary("lower_limb")
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	doc, err := os.ReadFile("../../docs/language.md")
	if err != nil {
		t.Fatal(err)
	}
	_, section, _ := strings.Cut(string(doc), "\n## What the workshop sheet draws\n")
	for _, name := range drawnMeasures(t) {
		if measureOf(v, name) == nil {
			t.Errorf("no measure %s", name)
		}
		if !strings.Contains(section, "`"+name+"`") {
			t.Errorf("docs/language.md does not name %s", name)
		}
	}
	for _, name := range drawnChoices(t) {
		if v.Choice(name) == nil {
			t.Errorf("no choice %s", name)
		}
		if !strings.Contains(section, "`"+name+"`") {
			t.Errorf("docs/language.md does not name %s", name)
		}
	}
	for _, f := range slices.Concat(drawnForces, drawnForcesBehind) {
		if !strings.Contains(section, "`"+f.quantity+"`") {
			t.Errorf("docs/language.md does not name %s", f.quantity)
		}
	}
}

func measureOf(v *vocab.Vocabulary, name string) *vocab.Measure {
	for _, m := range v.Measures {
		if m.Name == name {
			return m
		}
	}
	return nil
}

// drawnMeasures and drawnChoices are what the files of the prescription read, by their own text: a name in quotes
// behind one of these words.
func drawnMeasures(t *testing.T) []string {
	return slices.Concat(readIn(t, `measured("`, `edge("`), []string{"height"}, shoeFields, madeFields)
}

func drawnChoices(t *testing.T) []string {
	return slices.Concat(readIn(t, `picked(r, "`, `pickedWord(r, "`), []string{articulation})
}

func readIn(t *testing.T, before ...string) []string {
	t.Helper()
	src, err := os.ReadFile("prescription_leg.go")
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, b := range before {
		for _, piece := range strings.Split(string(src), b)[1:] {
			name, _, _ := strings.Cut(piece, `"`)
			out = append(out, name)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}
