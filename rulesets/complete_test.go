package rulesets_test

import (
	"maps"
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

// designed are the questions that composite_design answers completely.
var designed = []string{"alignment", "stiffness", "force_pattern"}

// forceNames are the quantities that the workshop's drawing shows.
var forceNames = strings.Fields(`force_at_calf force_at_shin force_at_instep force_at_heel force_under_forefoot
	force_at_ankle_lateral force_at_ankle_medial force_at_shank_frontal force_at_foot_frontal
	shank_lever forefoot_lever sole_pitch device_shank_to_vertical ankle_rise_of_heel_raise
	strap_mean_pressure shell_mean_pressure`)

func compositeDesign(t *testing.T) *ruleset.Ruleset {
	t.Helper()
	rs, diags := ruleset.Library{Embedded: rulesets.FS}.Ruleset("composite_design")
	if len(diags) > 0 {
		t.Fatalf("%s", diags.Text())
	}
	return rs
}

// designChoices lists the choices that the design has to decide.
func designChoices(t *testing.T, v *vocab.Vocabulary) []*vocab.Choice {
	t.Helper()
	var out []*vocab.Choice
	for _, c := range v.Choices {
		if slices.Contains(designed, c.Concerns) {
			out = append(out, c)
		}
	}
	if len(out) < 27 {
		t.Fatalf("only %d choices concern %v", len(out), designed)
	}
	return out
}

// advise carries composite_design out on an assessment of testdata after change has been at its text.
func advise(t *testing.T, rs *ruleset.Ruleset, name string, change func(string) string) *reason.Outcome {
	t.Helper()
	src, err := os.ReadFile(filepath.Join("..", "testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	read, diags := assess.Read(source.NewFile(name, []byte(change(string(src)))), rs.Vocabulary)
	if len(diags) > 0 || len(read) != 1 {
		t.Fatalf("%d assessments\n%s", len(read), diags.Text())
	}
	engine, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	return engine.Advise(read[0], time.Date(2026, 11, 1, 0, 0, 0, 0, time.UTC))
}

func same(s string) string { return s }

// Every choice of the design has a rule of composite_design's own that advises on it, or is declared to be
// the clinician's: none is forgotten.
func TestDesignSpeaksOfEveryChoice(t *testing.T) {
	rs := compositeDesign(t)
	spoken := map[string]bool{}
	for _, r := range rs.Rules {
		for _, a := range r.Advise {
			spoken[a.Choice.Name] = spoken[a.Choice.Name] || r.Part.Root
		}
	}
	for _, o := range rs.Open {
		spoken[o.Choice.Name] = spoken[o.Choice.Name] || o.Part.Root
	}
	for _, c := range designChoices(t, rs.Vocabulary) {
		if !spoken[c.Name] {
			t.Errorf("composite_design neither advises on %s nor leaves it to the clinician", c.Name)
		}
	}
}

// On a complete assessment nothing of the design is unanswered, contradicts itself or waits for more, and the
// forces of the drawing are known.
func TestCompleteAssessmentsGiveACompleteDesign(t *testing.T) {
	rs := compositeDesign(t)
	for _, name := range []string{"design_stroke.json", "design_child.json", "design_neuropathy.json"} {
		o := advise(t, rs, name, same)
		if o.Applies != "yes" || len(o.Limbs) == 0 {
			t.Fatalf("%s: applies %s, %d limbs", name, o.Applies, len(o.Limbs))
		}
		for side, limb := range o.Limbs {
			for _, c := range designChoices(t, rs.Vocabulary) {
				switch got := limb.Choices[c.Name]; {
				case got == nil || got.Status == reason.Unanswered || got.Status == reason.Conflict:
					t.Errorf("%s, %s: %s is not decided: %+v", name, side, c.Name, got)
				case got.Provisional:
					t.Errorf("%s, %s: %s is provisional", name, side, c.Name)
				}
			}
			for _, q := range forceNames {
				if limb.Quantities[q] == nil {
					t.Errorf("%s, %s: %s is not known", name, side, q)
				}
			}
		}
	}
}

// The same person in a wheelchair is outside of what the design is for.
func TestDesignIsForWalking(t *testing.T) {
	seated := func(s string) string {
		return strings.Replace(s, `"walking_aid": "one_stick"`, `"walking_aid": "wheelchair"`, 1)
	}
	if o := advise(t, compositeDesign(t), "design_stroke.json", seated); o.Applies != "no" {
		t.Errorf("applies: %s", o.Applies)
	}
}

// What decides the design of each invented person, worked out by hand from the assessment.
func TestDesignOfTheInventedPersons(t *testing.T) {
	rs := compositeDesign(t)
	for _, want := range []struct {
		name, side string
		options    map[string]string
		numbers    map[string]float64
	}{
		// Equinus of 4 deg: L sin 15 = 178 × 0.2588 = 46.1 mm, less 14 of the shoe.
		{"design_stroke.json", "left",
			map[string]string{"pressure_system": "against_equinus", "shell_side": "posterior", "closure": "anterior_shell", "pressure_system_frontal": "against_varus", "forefoot_posting": "first_ray_recess"},
			map[string]float64{"cast_ankle_angle": -4, "cast_block_height": 14, "heel_raise": 32, "shank_to_vertical_target": 11}},
		// 150 sin 11 = 28.6, less 10.
		{"design_child.json", "left",
			map[string]string{"pressure_system": "against_shank_advance", "shell_side": "anterior", "pressure_system_frontal": "against_valgus", "hindfoot_posting": "medial"},
			map[string]float64{"cast_ankle_angle": 0, "heel_raise": 19}},
		{"design_child.json", "right",
			map[string]string{"pressure_system": "against_shank_advance", "shell_side": "anterior", "pressure_system_frontal": "none", "hindfoot_posting": "none"},
			map[string]float64{"cast_ankle_angle": 0, "heel_raise": 19}},
		// 192 sin 11 = 36.6, less 12.
		{"design_neuropathy.json", "right",
			map[string]string{"closure": "wide_padded_strap", "padding": "whole_shell", "sole_profile": "bevelled_heel", "pressure_system_transverse": "against_forefoot_adduction"},
			map[string]float64{"cast_ankle_angle": 0, "cast_block_height": 12, "heel_raise": 25}},
	} {
		limb := advise(t, rs, want.name, same).Limbs[want.side]
		for _, name := range slices.Sorted(maps.Keys(want.options)) {
			if got := limb.Choices[name].Value; got != want.options[name] {
				t.Errorf("%s, %s: %s is %v, not %s", want.name, want.side, name, got, want.options[name])
			}
		}
		for _, name := range slices.Sorted(maps.Keys(want.numbers)) {
			if got := limb.Choices[name].Value; got != want.numbers[name] {
				t.Errorf("%s, %s: %s is %v, not %v", want.name, want.side, name, got, want.numbers[name])
			}
		}
	}
}
