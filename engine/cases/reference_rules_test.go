package cases

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"crus/engine/reason"
	"crus/engine/ruleset"
)

// ruleRow is a published case as an assessment, and the findings of classes that hold in it.
type ruleRow struct {
	row, expects        string // the row, and words that its published result must have
	person, left, right string
	of, holds           string // beginnings of the findings that are looked at, and those that hold
}

func ruleRows() []ruleRow {
	foot := `"previous_foot_ulcer": false, "foot_amputation": "none", "protective_sensation": "present", "lesser_toe_position": "straight"`
	with := func(pairs ...string) string { return strings.NewReplacer(pairs...).Replace(foot) }
	lops := []string{`"present"`, `"absent"`}
	toes := []string{`"straight"`, `"clawed_fixed"`}
	ulcer := []string{`ulcer": false`, `ulcer": true`}
	well := `"arterial_disease": "none_known", "kidney_failure": false`
	pad := `"arterial_disease": "confirmed", "kidney_failure": false`
	iwgdf, abpi, speed := "iwgdf_", "abpi_ pad_", "household limited community home"
	return []ruleRow{
		{"G01", "household", `"walking_speed": 0.39`, "", "", speed, "home_2017 household"},
		{"G02", "limited community", `"walking_speed": 0.40`, "", "", speed, "home_2017 limited_community"},
		{"G03", "limited community", `"walking_speed": 0.80`, "", "", speed, "limited_community"},
		{"G04", "community", `"walking_speed": 0.81`, "", "", speed, "community"},
		{"G05", "limited community", `"walking_speed": "0.5 m/s"`, "", "", speed, "limited_community"},
		{"G06", "household (<0.49), while Perry says limited community", `"walking_speed": 0.45`, "", "", speed, "home_2017 limited_community"},
		{"S11", "borderline", "", `"ankle_brachial_pressure_index": 0.95, "ankle_systolic_pressure": 120`, "", abpi, "abpi_borderline"},
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
		{"G09", "reaches", "", "", "", "gait_speed", "gait_speed_change_reached"},
		{"G15", "at risk by >=12 s (CDC); not by >=13.5 s", `"timed_up_and_go": 12.5`, "", "", "risk_", "risk_12_s"},
		{"G16", "group I", "", `"gait_swing_ankle": "hangs", "gait_midstance_ankle": "moves_forward_steadily", "gait_swing_knee": "bends_enough", "gait_terminal_stance_hip": "extends"`, "", "group_", "group_1"},
		{"G17", "group II", "", `"gait_swing_ankle": "hangs", "gait_midstance_ankle": "held_back", "gait_swing_knee": "bends_enough", "gait_terminal_stance_hip": "extends"`, "", "group_", "group_2"},
		{"G18", "III; IV", "", `"gait_swing_ankle": "hangs", "gait_midstance_ankle": "held_back", "gait_swing_knee": "stiff", "gait_terminal_stance_hip": "extends"`, "", "group_", "group_3"},
		{"G18", "III; IV", "", `"gait_swing_ankle": "hangs", "gait_midstance_ankle": "held_back", "gait_swing_knee": "stiff", "gait_terminal_stance_hip": "does_not_extend"`, "", "group_", "group_4"},
		{"G19", "jump gait", "", `"gait_midstance_ankle": "early_heel_rise", "gait_midstance_knee": "too_flexed", "gait_terminal_stance_hip": "does_not_extend"`, "", "pattern_", "pattern_jump"},
		{"G20", "apparent equinus", "", `"gait_midstance_ankle": "moves_forward_steadily", "gait_midstance_knee": "too_flexed", "gait_terminal_stance_hip": "does_not_extend"`, "", "pattern_", "pattern_apparent_equinus"},
		{"G21", "crouch", "", `"gait_midstance_ankle": "too_far_forward", "gait_midstance_knee": "too_flexed", "gait_terminal_stance_hip": "does_not_extend"`, "", "pattern_", "pattern_crouch"},
		{"G22", "GMFCS III", `"walking_aid": "rollator"`, "", "", "hand_held", "hand_held"},
		{"T14", "abnormal but unsustained", "", `"clonus_beats": 4`, "", "clonus_abnormal clonus_sustained_10", "clonus_abnormal"},
		{"T15", "unsustained by the 10-beat rule, 'sustained' by the >=5-beat rule", "", `"clonus_beats": 6`, "", "clonus_", "clonus_abnormal clonus_sustained_5"},
		{"P12", "5 under the >=20 convention (Jan 2005), 4 under the >=25 rule", "", `"heel_rises": 22`, "", "full_by", "full_by_20"},
		{"R06", "abnormal", "", `"ankle_dorsiflexion_lunge": 34, "ankle_dorsiflexion_loaded_knee_extended": 20`, "", "lunge", "lunge_gain"},
		{"R07", "= 13.0", "", `"ankle_dorsiflexion_lunge": 33, "ankle_dorsiflexion_loaded_knee_extended": 20`, "", "lunge", ""},
		{"R07", "= 13.0", "", `"ankle_dorsiflexion_lunge": 33.1, "ankle_dorsiflexion_loaded_knee_extended": 20`, "", "lunge", "lunge_gain"},
		{"R10", "beyond borderline", `"sex": "female", "age": 7`, `"popliteal_angle": 48`, "", "tight_girl popliteal_abnormal", "tight_girl_6_to_14"},
		{"R11", "below borderline", `"age": 10`, `"ankle_dorsiflexion_knee_extended": 9`, "", "borderline_", "borderline_5_to_13"},
		{"R12", "not below borderline", `"age": 16`, `"ankle_dorsiflexion_knee_extended": 6`, "", "borderline_", ""},
		{"R18", "must NOT be flagged abnormal", `"sex": "female", "age": 30`, `"ankle_dorsiflexion_knee_extended": 10`, "", "z_unusual", ""},
		{"R18", "must NOT be flagged abnormal", `"sex": "male", "age": 50`, `"ankle_dorsiflexion_knee_extended": 10`, "", "z_unusual", ""},
		{"R19", "hamstring short", `"sex": "male", "age": 20`, `"popliteal_angle": 33`, "", "tight_man tight_woman", "tight_man_18_to_24"},
		{"R20", "not short", `"sex": "female", "age": 20`, `"popliteal_angle": 18`, "", "tight_man tight_woman", ""},
		{"F08", "both 'normal 0 to +6' and 'pronated >=+6'", "", `"fpi6_total": 6`, "", "child_", "child_normal child_pronated"},
		{"F09", "above 85th percentile", `"age": 8`, `"fpi6_total": 7`, "", "above_85th", "above_85th_6_to_11"},
		{"F12", "flexible hindfoot", "", `"block_test": "corrects"`, "", "hindfoot_", "hindfoot_flexible"},
		{"F13", "rigid hindfoot", "", `"block_test": "does_not_correct"`, "", "hindfoot_", "hindfoot_rigid"},
		{"F14", "arch index 0.25", "", "", "", "arch_index", "arch_index_is_a_quarter"},
		{"F16", "typical", "", `"calcaneal_angle": 6`, "", "heel_angle", "heel_angle_typical"},
		{"A10", "significant under >20 mm", "", `"leg_length": 822`, `"leg_length": 800`, "legs", "legs_differ"},
	}
}

func TestPublishedCutOffs(t *testing.T) {
	published, e := rows(t), classesEngine(t)
	for _, x := range ruleRows() {
		row := published[x.row]
		if !strings.Contains(row.expected, x.expects) {
			t.Errorf("%s is not published so: %+v", x.row, row)
			continue
		}
		o := e.Advise(assessment(t, e.Ruleset, x.person, x.left, x.right), today)
		var held []string
		for _, r := range []*reason.Result{o.Person, o.Limbs["left"]} {
			for name, b := range r.Findings {
				switch looked := slices.ContainsFunc(strings.Fields(x.of), func(begin string) bool { return strings.HasPrefix(name, begin) }); {
				case looked && b == nil:
					held = append(held, name+"?")
				case looked && *b:
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

// The published interval of screening by risk category, as quantities of the language.
func TestPublishedScreening(t *testing.T) {
	e := classesEngine(t)
	var got []string
	for _, risk := range []string{"0", "1", "2", "3"} {
		o := e.Advise(assessment(t, e.Ruleset, "", `"foot_risk": "`+risk+`"`, ""), today)
		from, to := o.Limbs["left"].Quantities["screened_from"], o.Limbs["left"].Quantities["screened_to"]
		if from == nil || to == nil || from.Unit != "mo" || to.Unit != "mo" {
			t.Fatalf("category %s: %v, %v", risk, from, to)
		}
		text := fmt.Sprintf("%v-%v", from.Value, to.Value)
		if from.Value == to.Value {
			text = fmt.Sprint(to.Value)
		}
		got = append(got, text)
	}
	if text := strings.Join(got, ", ") + " months"; text != rows(t)["S08"].expected {
		t.Errorf("%s, published %s", text, rows(t)["S08"].expected)
	}
}

type classesReasoner struct {
	*reason.Engine
	*ruleset.Ruleset
}

func classesEngine(t *testing.T) classesReasoner {
	t.Helper()
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
	return classesReasoner{e, rs}
}
