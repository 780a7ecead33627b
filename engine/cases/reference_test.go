package cases

import (
	"encoding/csv"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/source"
)

// classes writes published cut-offs as findings of the language. The sources are those of the rows
// of testdata/reference/clinical_check_cases.csv that each is held against below.
const classes = `ruleset "classes" {
  title      = "Published cut-offs"
  version    = "1.0.0"
  status     = "draft"
  vocabulary = "lower_limb@1"
}
finding "household"         { holds = "person.walking_speed < m_per_s(0.4)" }
finding "limited_community" { holds = "person.walking_speed >= m_per_s(0.4) && person.walking_speed <= m_per_s(0.8)" }
finding "community"         { holds = "person.walking_speed > m_per_s(0.8)" }
finding "home_2017"         { holds = "person.walking_speed < m_per_s(0.49)" }

finding "pad_below_090"   { holds = "limb.ankle_brachial_pressure_index < ratio(0.9)" }
finding "abpi_borderline" { holds = "limb.ankle_brachial_pressure_index >= ratio(0.91) && limb.ankle_brachial_pressure_index <= ratio(0.99)" }
finding "abpi_normal"     { holds = "limb.ankle_brachial_pressure_index >= ratio(1) && limb.ankle_brachial_pressure_index <= ratio(1.4)" }
finding "abpi_severe"     { holds = "limb.ankle_brachial_pressure_index > ratio(0.3) && limb.ankle_brachial_pressure_index <= ratio(0.5)" }
finding "abpi_critical"   { holds = "limb.ankle_brachial_pressure_index <= ratio(0.3) || limb.ankle_systolic_pressure < mmHg(50)" }
finding "abpi_above"      { holds = "limb.ankle_brachial_pressure_index > ratio(1.4)" }

finding "lops"      { holds = "limb.protective_sensation == 'absent'" }
finding "pad"       { holds = "person.arterial_disease == 'confirmed'" }
finding "deformity" { holds = "limb.lesser_toe_position != 'straight'" }
finding "graver"    { holds = "limb.previous_foot_ulcer || limb.foot_amputation != 'none' || person.kidney_failure" }
finding "iwgdf_0"   { holds = "!finding.lops && !finding.pad && !finding.graver" }
finding "iwgdf_1"   { holds = "(finding.lops != finding.pad) && !finding.deformity && !finding.graver" }
finding "iwgdf_2"   { holds = "!finding.graver && (finding.lops && finding.pad || (finding.lops || finding.pad) && finding.deformity)" }
finding "iwgdf_3"   { holds = "(finding.lops || finding.pad) && finding.graver" }

finding "fpi_sides_normal" { holds = "limb.fpi6_total - other.fpi6_total >= -2 && limb.fpi6_total - other.fpi6_total <= 2" }
finding "fpi_sides_severe" { holds = "abs(limb.fpi6_total - other.fpi6_total) > 4" }

finding "gastrocnemius_5" {
  holds = "limb.ankle_dorsiflexion_knee_extended <= deg(5) && limb.ankle_dorsiflexion_knee_flexed > deg(10)"
}
finding "dorsiflexion_sides_normal" {
  holds = "abs(limb.ankle_dorsiflexion_knee_extended - other.ankle_dorsiflexion_knee_extended) < deg(6)"
}
finding "popliteal_abnormal" { holds = "limb.popliteal_angle > deg(50)" }
finding "power_4_or_more"    { holds = "limb.quadriceps_power >= muscle_power('4')" }
finding "power_below_3"      { holds = "limb.quadriceps_power < muscle_power('3')" }
`

func TestPublishedCutOffs(t *testing.T) {
	published := rows(t)
	dir := t.TempDir() + "/classes"
	if err := os.Mkdir(dir, 0o777); err != nil {
		t.Fatal(err)
	}
	text := strings.NewReplacer("{ holds", "{\n  holds", "\" }\n", "\"\n}\n").Replace(classes)
	if err := os.WriteFile(dir+"/classes.hcl", []byte(text), 0o666); err != nil {
		t.Fatal(err)
	}
	rs, diags := ruleset.Library{Embedded: os.DirFS("../../rulesets")}.Ruleset(dir)
	if rs == nil {
		t.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	foot := `"previous_foot_ulcer": false, "foot_amputation": "none", "protective_sensation": "present", "lesser_toe_position": "straight"`
	with := func(pairs ...string) string { return strings.NewReplacer(pairs...).Replace(foot) }
	lops := []string{`"present"`, `"absent"`}
	toes := []string{`"straight"`, `"clawed_fixed"`}
	ulcer := []string{`ulcer": false`, `ulcer": true`}
	well := `"arterial_disease": "none_known", "kidney_failure": false`
	pad := `"arterial_disease": "confirmed", "kidney_failure": false`
	iwgdf, abpi, speed := "iwgdf_", "abpi_ pad_", "household limited community home"
	for _, x := range []struct {
		row, expects        string // the row, and words that its published result must have
		person, left, right string
		of, holds           string // beginnings of the findings that are looked at, and those that hold
	}{
		{"G01", "household", `"walking_speed": 0.39`, "", "", speed, "home_2017 household"},
		{"G02", "limited community", `"walking_speed": 0.40`, "", "", speed, "home_2017 limited_community"},
		{"G03", "limited community", `"walking_speed": 0.80`, "", "", speed, "limited_community"},
		{"G04", "community", `"walking_speed": 0.81`, "", "", speed, "community"},
		{"G05", "limited community", `"walking_speed": "0.5 m/s"`, "", "", speed, "limited_community"},
		{"G06", "household (<0.49), while Perry says limited community", `"walking_speed": 0.45`, "", "", speed, "home_2017 limited_community"},
		{"S11", "borderline", "", `"ankle_brachial_pressure_index": 0.95`, "", abpi, "abpi_borderline"},
		{"S12", "critical", "", `"ankle_brachial_pressure_index": 0.28`, "", abpi, "abpi_critical pad_below_090"},
		{"S12", "critical", "", `"ankle_brachial_pressure_index": 1.1, "ankle_systolic_pressure": 45`, "", abpi, "abpi_critical abpi_normal"},
		{"S13", "severe", "", `"ankle_brachial_pressure_index": 0.40, "ankle_systolic_pressure": 60`, "", abpi, "abpi_severe pad_below_090"},
		{"S14", "above normal", "", `"ankle_brachial_pressure_index": 1.45, "ankle_systolic_pressure": 160`, "", abpi, "abpi_above"},
		{"S01", "0", well, with(), "", iwgdf, "iwgdf_0"},
		{"S02", "0", well, with(toes...), "", iwgdf, "iwgdf_0"},
		{"S03", "1; 1", well, with(lops...), "", iwgdf, "iwgdf_1"},
		{"S03", "1; 1", pad, with(), "", iwgdf, "iwgdf_1"},
		{"S04", "2; 2; 2", well, with(append(toes, lops...)...), "", iwgdf, "iwgdf_2"},
		{"S04", "2; 2; 2", pad, with(toes...), "", iwgdf, "iwgdf_2"},
		{"S04", "2; 2; 2", pad, with(lops...), "", iwgdf, "iwgdf_2"},
		{"S05", "3", well, with(append(ulcer, lops...)...), "", iwgdf, "iwgdf_3"},
		{"S06", "not classifiable", well, with(ulcer...), "", iwgdf, ""},
		{"S07", "3", strings.Replace(pad, "false", "true", 1), with(), "", iwgdf, "iwgdf_3"},
		{"F10", "within normal", "", `"fpi6_total": 3`, `"fpi6_total": 5`, "fpi_", "fpi_sides_normal"},
		{"F11", "severe asymmetry", "", `"fpi6_total": 1`, `"fpi6_total": 6`, "fpi_", "fpi_sides_severe"},
		{"R01", "tightness by <=5 rule", "", `"ankle_dorsiflexion_knee_extended": 5, "ankle_dorsiflexion_knee_flexed": 18`, "", "gastrocnemius", "gastrocnemius_5"},
		{"R02", "not tight by <=5 rule", "", `"ankle_dorsiflexion_knee_extended": 6, "ankle_dorsiflexion_knee_flexed": 18`, "", "gastrocnemius", ""},
		{"R13", "within physiological", "", `"ankle_dorsiflexion_knee_extended": 12`, `"ankle_dorsiflexion_knee_extended": 17`, "dorsiflexion", "dorsiflexion_sides_normal"},
		{"R14", "exceeds physiological", "", `"ankle_dorsiflexion_knee_extended": 10`, `"ankle_dorsiflexion_knee_extended": 17`, "dorsiflexion", ""},
		{"R08", "abnormal", "", `"popliteal_angle": 55`, "", "popliteal", "popliteal_abnormal"},
		{"R09", "within range", "", `"popliteal_angle": 45`, "", "popliteal", ""},
		{"P09", "false", "", `"quadriceps_power": "4-"`, "", "power_4", ""},
		{"P10", "true", "", `"quadriceps_power": "3-"`, "", "power_below", "power_below_3"},
	} {
		row, ok := published[x.row]
		if !ok || !slices.Contains([]string{"V", "V2", "D"}, row.status) || !strings.Contains(row.expected, x.expects) {
			t.Errorf("%s is not published so: %+v", x.row, row)
			continue
		}
		a := assessment(t, rs, x.person, x.left, x.right)
		o := e.Advise(a, today)
		var held []string
		for _, r := range []*reason.Result{o.Person, o.Limbs["left"]} {
			for name, b := range r.Findings {
				looked := slices.ContainsFunc(strings.Fields(x.of), func(begin string) bool { return strings.HasPrefix(name, begin) })
				if looked && b != nil && *b {
					held = append(held, name)
				}
			}
		}
		slices.Sort(held)
		if got := strings.Join(held, " "); got != x.holds {
			t.Errorf("%s, %s (%s): holds %q, want %q", x.row, row.input, row.source, got, x.holds)
		}
	}
}

// What the published scales do not have is refused, never recoded.
func TestPublishedScalesRefuse(t *testing.T) {
	published := rows(t)
	v, diags := ruleset.Library{Embedded: os.DirFS("../../rulesets")}.Vocabulary("lower_limb")
	if v == nil {
		t.Fatal(diags.Text())
	}
	for _, x := range []struct{ row, person, left string }{
		{"T07", "", `"plantarflexor_tone": "1.5"`},
		{"T07", "", `"plantarflexor_tone": 5`},
		{"F07", "", `"fpi_talar_head": "+3"`},
		{"G14", `"functional_ambulation": "6"`, ""},
	} {
		if row, ok := published[x.row]; !ok || !strings.Contains(row.expected, "re") {
			t.Errorf("%s is not published", x.row)
		}
		text := fmt.Sprintf(`{"format": "crus-assessment/1", "id": "x", "vocabulary": "lower_limb@1", "device_for": ["left"], "person": {%s}, "left": {%s}}`, x.person, x.left)
		if list, diags := assess.Read(source.NewFile("a.json", []byte(text)), v); len(list) != 0 || !diags.HasErrors() {
			t.Errorf("%s: %s %s is read", x.row, x.person, x.left)
		}
	}
}

type row struct{ input, expected, source, status string }

// rows reads the published check cases.
func rows(t *testing.T) map[string]row {
	t.Helper()
	f, err := os.Open("../../testdata/reference/clinical_check_cases.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.FieldsPerRecord, r.LazyQuotes = -1, true
	lines, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]row{}
	for _, l := range lines[1:] {
		n := len(l) // a comma in the published result that is not quoted shifts what follows
		out[l[0]] = row{l[2], strings.Join(l[3:n-2], ","), l[n-2], l[n-1]}
	}
	return out
}

func assessment(t *testing.T, rs *ruleset.Ruleset, person, left, right string) *assess.Assessment {
	t.Helper()
	text := fmt.Sprintf(`{"format": "crus-assessment/1", "id": "x", "vocabulary": "lower_limb@1", "date": "2026-10-02", "device_for": ["left"],
 "person": {%s}, "left": {%s}, "right": {%s}}`, person, left, right)
	list, diags := assess.Read(source.NewFile("a.json", []byte(text)), rs.Vocabulary)
	if len(list) != 1 {
		t.Fatal(diags.Text())
	}
	return list[0]
}
