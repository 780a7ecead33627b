package biomech_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/cel-go/common/types"

	"crus/engine/biomech"
)

// loads are calls of the formulas of stiffness and forces as a condition makes them, with what must be true of the
// result; the numbers are those of testdata/reference/biomech_check_cases.csv where it has some.
var loads = map[string]string{
	"normal_stiffness(kg(70))":                                                              "it == Nm_per_deg(4.76)",
	"peak_ankle_moment(kg(70))":                                                             "it == Nm(85.12)",
	"peak_ankle_moment_at(kg(70), m_per_s(1.0691), mm(900))":                                "abs(it - Nm(81.963)) < Nm(0.01)",
	"residual_least(muscle_power('4-'))":                                                    "it == ratio(0.03)",
	"residual_most(muscle_power('3'))":                                                      "it == percent(15)",
	"residual_least_by_heel_rises(0, mm(125))":                                              "it == ratio(0)",
	"residual_most_by_heel_rises(3, mm(100))":                                               "it == ratio(1)",
	"heel_rise_moment(kg(70), mm(125))":                                                     "abs(it - Nm(85.8082)) < Nm(0.001)",
	"stiffness_demand(kg(70), residual_least(muscle_power('0')))":                           "it == normal_stiffness(kg(70))",
	"stiffness_demand(kg(70), residual_most(muscle_power('5')))":                            "it == Nm_per_deg(0)",
	"stiffness_from_deficit(Nm(92.05), Nm(56), deg(10))":                                    "it == Nm_per_deg(3.605)",
	"dorsiflexion_change(Nm_per_deg(2.8), Nm_per_deg(6.6))":                                 "it == deg(-4.18)",
	"power_change(Nm_per_deg(2.8), Nm_per_deg(6.6))":                                        "it == W_per_kg(-0.342)",
	"strut_stiffness(GPa(60), mm(40), mm(4), mm(200))":                                      "abs(it - Nm_per_deg(1.117011)) < Nm_per_deg(0.00001)",
	"strut_stiffness_at_height(GPa(60), mm(40), mm(4), cm(20), cm(10))":                     "abs(it - Nm_per_deg(1.675516)) < Nm_per_deg(0.00001)",
	"strut_strain(mm(4), mm(200), deg(10))":                                                 "abs(it - ratio(0.0017453)) < ratio(0.0000001)",
	"strut_stress(GPa(60), mm(4), mm(200), deg(-10))":                                       "abs(it - MPa(104.7198)) < MPa(0.001)",
	"layers_stiffness_ratio(8, 16)":                                                         "it == ratio(8)",
	"layers_for(10, Nm_per_deg(1.117), Nm_per_deg(2))":                                      "it == 13",
	"three_point_outer_force(Nm(6), mm(60))":                                                "it == N(100)",
	"three_point_middle_force(Nm(6), mm(250), mm(60))":                                      "it == N(124)",
	"bent_shank_force(Nm(45), mm(280))":                                                     "abs(it - N(160.714)) < N(0.01)",
	"bent_forefoot_force(Nm(4), mm(100))":                                                   "it == N(40)",
	"bent_ankle_force(Nm(10), mm(300), mm(120), deg(-10))":                                  "abs(it - N(94.975)) < N(0.01)",
	"bent_ankle_direction(Nm(10), mm(300), mm(120), deg(0))":                                "abs(it - deg(68.199)) < deg(0.01)",
	"lever_force_ratio(mm(250), mm(330))":                                                   "it > ratio(0.75) && it < ratio(0.76)",
	"strap_tension(N(90.4))":                                                                "it == N(45.2)",
	"strap_pressure(N(100), mm(40), mm(50))":                                                "it == kPa(25)",
	"shell_area(mm(50), mm(40), deg(90))":                                                   "it == cm2(40)",
	"mean_pressure(N(90.9), cm2(60))":                                                       "it == kPa(15.15)",
	"least_area(N(90.9), kPa(13.7))":                                                        "abs(it - cm2(66.35)) < cm2(0.01)",
	"mean_pressure(bent_shank_force(Nm(30), mm(330)), shell_area(mm(50), mm(60), deg(90)))": "it > kPa(15) && it < kPa(15.2)",
}

// overloads are calls outside of a formula's domain, with words of the sentence that says so.
var overloads = map[string]string{
	"normal_stiffness(kg(0))":                                            "The body mass is 0 kg; it must be more than nothing.",
	"peak_ankle_moment(kg(-70))":                                         "The body mass is −70 kg",
	"peak_ankle_moment_at(kg(70), m_per_s(0.5), mm(900))":                "The walking speed for the length of the leg is 0.1683 (v/√(g·leg)); the groups that were measured walked at means of 0.1721 to 0.6938.",
	"peak_ankle_moment_at(kg(70), m_per_s(2.1), mm(900))":                "is 0.7069",
	"peak_ankle_moment_at(kg(70), m_per_s(1), mm(0))":                    "The length of the leg is 0 mm",
	"residual_least_by_heel_rises(-1, mm(125))":                          "The number of heel rises is −1; it must be 0 or more.",
	"residual_most_by_heel_rises(1, mm(0))":                              "The distance from ankle to ball is 0 mm",
	"heel_rise_moment(kg(70), mm(0))":                                    "The distance from ankle to ball is 0 mm",
	"stiffness_demand(kg(70), ratio(1.2))":                               "The share of the normal moment that is left is 1.2; this holds from 0 to 1.",
	"stiffness_from_deficit(Nm(80), Nm(90), deg(10))":                    "The wearer's own 90 N·m are more than the 80 N·m that are needed: nothing is missing that a device could make up.",
	"stiffness_from_deficit(Nm(80), Nm(40), deg(0))":                     "The dorsiflexion that loads the device is 0°",
	"dorsiflexion_change(Nm_per_deg(2.7), Nm_per_deg(4))":                "The first stiffness is 2.7 N·m/°; this holds from 2.8 N·m/° to 6.6 N·m/°.",
	"power_change(Nm_per_deg(3), Nm_per_deg(6.7))":                       "The second stiffness is 6.7 N·m/°",
	"strut_stiffness(GPa(60), mm(40), mm(4), mm(40))":                    "A strut 40 mm long and 4 mm thick is not slender; this holds for more than 10 times as long as thick.",
	"strut_stiffness_at_height(GPa(60), mm(40), mm(4), mm(200), mm(-1))": "The height of the calf's force above the strut is −1 mm; it cannot be less than nothing.",
	"strut_strain(mm(4), mm(200), deg(91))":                              "The rotation of the strut is 91°; this holds from −90° to 90°.",
	"strut_stress(GPa(0), mm(4), mm(200), deg(10))":                      "The modulus is 0 kPa",
	"layers_stiffness_ratio(0, 16)":                                      "The number of layers is 0; it must be 1 or more.",
	"layers_for(2000, Nm_per_deg(1), Nm_per_deg(2))":                     "The number of layers is 2000; this holds from 1 to 1000.",
	"three_point_outer_force(Nm(6), mm(0))":                              "The lever is 0 mm",
	"three_point_middle_force(Nm(-6), mm(250), mm(60))":                  "The moment is −6 N·m; it cannot be less than nothing.",
	"bent_shank_force(Nm(6), mm(-280))":                                  "The lever is −280 mm",
	"bent_forefoot_force(Nm(-4), mm(100))":                               "The moment is −4 N·m",
	"bent_ankle_force(Nm(10), mm(300), mm(120), deg(-61))":               "The ankle angle is −61°; this holds from −60° to 60°.",
	"bent_ankle_direction(Nm(0), mm(300), mm(120), deg(0))":              "The moment is 0 N·m; it must be more than nothing.",
	"lever_force_ratio(mm(250), mm(0))":                                  "The new lever is 0 mm",
	"strap_tension(N(-1))":                                               "The force is −1 N",
	"strap_pressure(N(100), mm(0), mm(50))":                              "The width of the strap is 0 mm",
	"shell_area(mm(50), mm(40), deg(91))":                                "The half arc of the shell is 91°; this holds from 0° to 90°.",
	"shell_area(mm(50), mm(40), deg(0))":                                 "The half arc of the shell is 0°; it must be more than nothing.",
	"mean_pressure(N(90.9), cm2(0))":                                     "The area is 0 mm²",
	"least_area(N(90.9), kPa(0))":                                        "The pressure is 0 kPa",
	"residual_least(muscle_power('6'))":                                  "has no grade",
	"residual_most(muscle_power('1+'))":                                  "has no grade",
}

// misfits do not compile: a wrong dimension, a bare number, a grade of another scale.
var misfits = []string{
	"normal_stiffness(70) > Nm_per_deg(1)", "normal_stiffness(kg(70)) > Nm(1)", "residual_least('4') > ratio(0)", "residual_least(4) > ratio(0)",
	"residual_least(community_walking('none')) > ratio(0)", "residual_least_by_heel_rises(0.5, mm(125)) > ratio(0)", "power_change(Nm_per_deg(3), Nm_per_deg(4)) < ratio(1)",
	"strut_stiffness(GPa(60), mm(40), mm(4)) > Nm_per_deg(1)", "layers_for(10, Nm_per_deg(1), Nm_per_deg(2)) > ratio(1)", "mean_pressure(N(5), kPa(5)) > kPa(5)",
}

func TestConditionsOfLoads(t *testing.T) {
	env := environment(t)
	for call, holds := range loads {
		if got := evaluate(t, env, result.ReplaceAllLiteralString(holds, "("+call+")"), call); got != types.True {
			t.Errorf("%s: %s is %v", call, holds, got)
		}
	}
	for call, sentence := range overloads {
		if got := evaluate(t, env, call, call); !types.IsError(got) || !strings.Contains(got.(*types.Err).Error(), sentence) {
			t.Errorf("%s is %v, want %q", call, got, sentence)
		}
	}
	for _, expr := range misfits {
		if _, iss := env.Compile(expr); iss.Err() == nil {
			t.Errorf("%s compiles", expr)
		}
	}
}

// Every formula of these topics is called and refused above.
func TestConditionsCallEveryLoad(t *testing.T) {
	for _, f := range biomech.Formulas() {
		if !slices.Contains([]string{"stiffness", "forces"}, f.Topic) {
			continue
		}
		for kind, of := range map[string]map[string]string{"no call": loads, "no call that is refused": overloads} {
			found := false
			for call := range of {
				found = found || strings.HasPrefix(call, f.Name+"(")
			}
			if !found {
				t.Errorf("%s has %s", f.Name, kind)
			}
		}
	}
}

// Every grade of muscle power in the vocabulary that comes with the program leaves an interval.
func TestEveryPowerGradeLeavesAnInterval(t *testing.T) {
	found := false
	for _, s := range scales(t) {
		if s.Name != "muscle_power" {
			continue
		}
		found = true
		before := biomech.Interval{}
		for _, grade := range s.Grades {
			got, err := biomech.ResidualByGrade(grade)
			if err != nil || got.Least < before.Least || got.Most < before.Most || !(got.Least < got.Most) || got.Least < 0 || got.Most > 1 {
				t.Errorf("%s leaves %v after %v, %v", grade, got, before, err)
			}
			before = got
		}
	}
	if !found {
		t.Error("the vocabulary has no muscle_power")
	}
}
