package biomech_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/biomech"
	"crus/engine/clinical"
	"crus/engine/ruleset"
	"crus/rulesets"
)

// conditions are calls of each formula as a condition makes them, with what must be true of the result.
var conditions = map[string]string{
	"pitch_along_plate(mm(20), mm(180))":                            "abs(it - deg(6.3794)) < deg(0.001)",
	"pitch_along_plate(cm(2), mm(180))":                             "it == pitch_along_plate(mm(20), mm(180))",
	"pitch_horizontal(mm(20), mm(180))":                             "abs(it - deg(6.3402)) < deg(0.001)",
	"shank_to_vertical(deg(9.5), deg(-5))":                          "it == deg(4.5)",
	"ankle_angle_for(deg(4.5), deg(9.5))":                           "it == deg(-5)",
	"heel_differential_for(deg(11), deg(-5), mm(180))":              "abs(it - mm(49.6147)) < mm(0.001)",
	"heel_differential_for_horizontal(deg(0), deg(-10), mm(180))":   "abs(it - mm(31.7389)) < mm(0.001)",
	"block_for_equinus(deg(-10), mm(180))":                          "abs(it - mm(31.2567)) < mm(0.001)",
	"block_for_equinus_horizontal(deg(-10), mm(180))":               "abs(it - mm(31.7389)) < mm(0.001)",
	"block_for_equinus(deg(0), mm(180))":                            "it == mm(0)",
	"feasible_ankle_angle(deg(0), deg(-8))":                         "it == deg(-8)",
	"feasible_ankle_angle(deg(0), deg(5))":                          "it == deg(0)",
	"gastrocnemius_overrun(deg(5), deg(0), deg(12))":                "it",
	"gastrocnemius_overrun(deg(0), deg(0), deg(12))":                "!it",
	"gastrocnemius_overrun(deg(12), deg(0), deg(12))":               "it",
	"gastrocnemius_overrun(deg(13), deg(0), deg(12))":               "!it",
	"ankle_rise(mm(20), mm(180), mm(130), mm(70))":                  "abs(it - mm(14.011)) < mm(0.001)",
	"opposite_raise(mm(28), mm(8), mm(12), mm(5))":                  "it == mm(19)",
	"opposite_raise(mm(0), mm(5), mm(12), mm(0))":                   "it == mm(-7)",
	"foot_moment(kg(70), kg(0.4), mm(70))":                          "abs(it - Nm(0.9713)) < Nm(0.001)",
	"swing_resistance_least(kg(70), deg(10))":                       "it == Nm_per_deg(0.203)",
	"swing_resistance_most(kg(70), deg(5))":                         "it == Nm_per_deg(0.868)",
	"toe_clearance_change(deg(-10), deg(0), deg(0))":                "abs(it - mm(-29.845)) < mm(0.01)",
	"toe_clearance_change(deg(0), deg(10), deg(0))":                 "abs(it - mm(16.581)) < mm(0.01)",
	"toe_clearance_change(deg(0), deg(0), deg(10))":                 "abs(it - mm(4.363)) < mm(0.01)",
	"clearance_lost_at(mm(19))":                                     "abs(it - deg(6.3662)) < deg(0.001)",
	"walking_class(m_per_s(0.4))":                                   "it == community_walking('limited_community')",
	"walking_class(km_per_h(1.4))":                                  "it == community_walking('household')",
	"foot_posture_band(6)":                                          "it == foot_posture('pronated')",
	"pressure_index_band(ratio(0.95))":                              "it == pressure_index('borderline')",
	"calf_shortness(deg(5), deg(18))":                               "it == short_calf('gastrocnemius')",
	"dynamic_range(deg(12), deg(-8))":                               "it == deg(20)",
	"hip_extension_z(deg(28.3), years(5), 'male')":                  "it == ratio(0)",
	"hip_flexion_z(deg(131.1), months(107), 'male')":                "it == ratio(0)",
	"knee_extension_z(deg(-10), years(30), 'female')":               "it < ratio(-3)",
	"knee_flexion_z(deg(141.9), years(44.9), 'female')":             "it == ratio(0)",
	"ankle_dorsiflexion_z(deg(10), years(30), 'female')":            "it > ratio(-1)",
	"ankle_plantarflexion_z(deg(49.4), years(69), 'male')":          "it == ratio(0)",
	"foot_posture_total(" + items("+1", "+1", "+1", "0", "-2", "0"): "it == 1",
}

func items(labels ...string) string {
	var out []string
	for _, l := range labels {
		out = append(out, "fpi_item('"+l+"')")
	}
	return strings.Join(out, ", ") + ")"
}

// refused are calls outside of a formula's domain, with words of the sentence that says so.
var refused = map[string]string{
	"pitch_along_plate(mm(120), mm(180))":                            "A heel 120 mm above the ball on 180 mm of foot plate",
	"pitch_along_plate(mm(-1), mm(180))":                             "A heel −1 mm above the ball",
	"pitch_along_plate(mm(20), mm(0))":                               "The length from heel to ball is 0 mm; it must be more than nothing.",
	"pitch_horizontal(mm(20), mm(-180))":                             "The length from heel to ball is −180 mm",
	"shank_to_vertical(deg(20), deg(10))":                            "The lean of the shank is 30°; this holds from −25° to 25°.",
	"shank_to_vertical(deg(31), deg(-10))":                           "The pitch is 31°; this holds from 0° to 30°.",
	"ankle_angle_for(deg(26), deg(5))":                               "The lean of the shank is 26°",
	"heel_differential_for(deg(11), deg(12), mm(180))":               "With the ankle at 12° the shank leans further than 11° on a flat sole already; no heel height gives that.",
	"heel_differential_for(deg(11), deg(-20), mm(180))":              "A lean of 11° with the ankle at −20° takes a heel higher than half of the foot plate",
	"heel_differential_for_horizontal(deg(11), deg(-16), mm(180))":   "takes a heel higher than half of the foot plate",
	"block_for_equinus(deg(5), mm(180))":                             "An ankle at 5° is past plantigrade",
	"block_for_equinus(deg(-31), mm(180))":                           "A lean of 0° with the ankle at −31°",
	"block_for_equinus_horizontal(deg(-27), mm(180))":                "takes a heel higher than half of the foot plate",
	"feasible_ankle_angle(deg(0), deg(70))":                          "The dorsiflexion with the knee extended is 70°; this holds from −60° to 60°.",
	"gastrocnemius_overrun(deg(5), deg(20), deg(-5))":                "Dorsiflexion of −5° with the knee flexed and 20° with it extended contradict each other",
	"ankle_rise(mm(20), mm(180), mm(190), mm(70))":                   "The ankle is 190 mm behind the ball and the heel 180 mm",
	"ankle_rise(mm(20), mm(180), mm(60), mm(70))":                    "The ankle is 70 mm high and 60 mm behind the ball",
	"ankle_rise(mm(100), mm(180), mm(130), mm(70))":                  "A heel 100 mm above the ball",
	"opposite_raise(mm(-1), mm(8), mm(12), mm(5))":                   "The rise of the ankle is −1 mm; this holds from 0 mm to 200 mm.",
	"foot_moment(kg(0), kg(0.4), mm(70))":                            "The body mass is 0 kg",
	"foot_moment(kg(70), kg(-0.4), mm(70))":                          "The mass of shoe and device is −0.4 kg",
	"swing_resistance_least(kg(70), deg(0))":                         "The plantarflexion that is given way is 0°; it must be more than nothing.",
	"swing_resistance_most(kg(70), deg(-5))":                         "The plantarflexion that is given way is −5°",
	"toe_clearance_change(deg(-11), deg(0), deg(0))":                 "The change at the ankle is −11°; this holds from −10° to 10°.",
	"toe_clearance_change(deg(0), deg(11), deg(0))":                  "The change at the hip is 11°",
	"toe_clearance_change(deg(0), deg(0), deg(11))":                  "The change at the knee is 11°",
	"clearance_lost_at(mm(31))":                                      "The clearance under the toe is 31 mm; this holds from 0 mm to 29.85 mm.",
	"walking_class(m_per_s(0))":                                      "The walking speed is 0 m/s; it must be more than nothing.",
	"foot_posture_band(13)":                                          "The total of the Foot Posture Index is 13; this holds from −12 to 12.",
	"pressure_index_band(ratio(-0.1))":                               "The pressure index is −0.1; this holds from 0 to 5.",
	"calf_shortness(deg(20), deg(-5))":                               "contradict each other",
	"dynamic_range(deg(3), deg(9))":                                  "The catch on the fast stretch is at 9°, beyond the slow range of 3°",
	"hip_extension_z(deg(10), years(70), 'male')":                    "The norms of hip extension are for 2 to 69 years; there are none at 70 years.",
	"hip_flexion_z(deg(10), months(23), 'male')":                     "there are none at 1.92 years",
	"knee_extension_z(deg(0), years(30), 'other')":                   "The norms of knee extension are of women and of men apart; there are none for the sex \"other\".",
	"knee_flexion_z(deg(190), years(30), 'male')":                    "The knee flexion is 190°; this holds from −180° to 180°.",
	"ankle_dorsiflexion_z(deg(10), years(-1), 'male')":               "there are none at −1 years",
	"ankle_plantarflexion_z(deg(10), years(30), '')":                 "there are none for the sex \"\"",
	"foot_posture_total(" + items("+1", "+1", "+1", "0", "-2", "+3"): "has no grade",
}

// slips do not compile: a wrong dimension, a bare number, too few items.
var slips = []string{
	"pitch_along_plate(mm(20), deg(180)) < deg(5)", "pitch_along_plate(20, 180) < deg(5)", "shank_to_vertical(mm(5), deg(5)) < deg(5)", "block_for_equinus(deg(-5), mm(180)) < deg(5)",
	"walking_class(m_per_s(0.4)) == 'household'", "foot_posture_band(6.5) == 'pronated'", "hip_extension_z(deg(28), 5, 'male') < ratio(1)",
	"foot_posture_total(" + items("0", "0", "0", "0", "0") + " == 0", // five items only are no total
}

var result = regexp.MustCompile(`\bit\b`)

func TestConditions(t *testing.T) {
	env := environment(t)
	for call, holds := range conditions {
		if got := evaluate(t, env, result.ReplaceAllLiteralString(holds, "("+call+")"), call); got != types.True {
			t.Errorf("%s: %s is %v", call, holds, got)
		}
	}
	for call, sentence := range refused {
		if got := evaluate(t, env, call, call); !types.IsError(got) || !strings.Contains(got.(*types.Err).Error(), sentence) {
			t.Errorf("%s is %v, want %q", call, got, sentence)
		}
	}
	for _, expr := range slips {
		if _, iss := env.Compile(expr); iss.Err() == nil {
			t.Errorf("%s compiles", expr)
		}
	}
}

// Every formula of these topics is called and refused above.
func TestConditionsCallEveryFormula(t *testing.T) {
	for _, f := range biomech.Formulas() {
		if !slices.Contains([]string{"alignment", "swing", "measurement"}, f.Topic) {
			continue
		}
		calls := func(of map[string]string) bool {
			for call := range of {
				if strings.HasPrefix(call, f.Name+"(") {
					return true
				}
			}
			return false
		}
		if !calls(conditions) || !calls(refused) {
			t.Errorf("%s has no call, or none that is refused", f.Name)
		}
	}
}

// The scales of the vocabulary have the grades that the formulas give.
func TestScalesHoldTheGrades(t *testing.T) {
	for _, s := range scales(t) {
		want := map[string][]string{"foot_posture": biomech.FootPostureBands(), "pressure_index": biomech.PressureIndexBands(), "short_calf": biomech.CalfShortnesses(),
			"community_walking": {"none", "household", "limited_community", "community"}, "fpi_item": {"-2", "-1", "0", "+1", "+2"}}[s.Name]
		if want != nil && !slices.Equal(s.Grades, want) {
			t.Errorf("%s has %v, the formulas %v", s.Name, s.Grades, want)
		}
	}
}

// evaluate gives the value of an expression; a failed one is its error value. it stands for the call.
func evaluate(t *testing.T, env *cel.Env, expr, call string) ref.Val {
	t.Helper()
	ast, iss := env.Compile(expr)
	if iss.Err() != nil {
		t.Errorf("%s does not compile: %v", call, iss.Err())
		return types.NullValue
	}
	p, err := env.Program(ast)
	if err != nil {
		t.Fatal(err)
	}
	v, _, err := p.Eval(cel.NoVars())
	if err != nil {
		return types.NewErrFromString(err.Error())
	}
	return v
}

func environment(t *testing.T) *cel.Env {
	t.Helper()
	opts := clinical.EnvOptions()
	scales := scales(t)
	for _, s := range scales {
		opts = append(opts, s.EnvOptions()...)
	}
	env, err := cel.NewCustomEnv(append(opts, biomech.EnvOptions(scales)...)...)
	if err != nil {
		t.Fatal(err)
	}
	return env
}

// scales are those of the vocabulary that comes with the program.
func scales(t *testing.T) []*clinical.Scale {
	t.Helper()
	v, diags := ruleset.Library{Embedded: rulesets.FS}.Vocabulary("lower_limb")
	if v == nil {
		t.Fatal(diags.Text())
	}
	return v.Scales
}
