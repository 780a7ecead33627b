package biomech

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"gonum.org/v1/gonum/stat"
)

// notDrawn are the formulas that the law of propagation is not for, and why.
var notDrawn = map[string]string{
	"feasible_ankle_angle":         "the smaller of two: its slope jumps",
	"gastrocnemius_overrun":        "answers yes or no",
	"residual_least":               "takes a grade",
	"residual_most":                "takes a grade",
	"residual_least_by_heel_rises": "takes a count, and stops at 1",
	"residual_most_by_heel_rises":  "takes a count, and stops at 1",
	"layers_stiffness_ratio":       "takes counts, which are exact",
	"layers_for":                   "gives a count, rounded up",
	"walking_class":                "gives a grade",
	"pressure_index_band":          "gives a grade",
	"calf_shortness":               "gives a grade",
	"foot_posture_total":           "takes grades",
	"foot_posture_band":            "gives a grade",
}

// usual are values well within the domains, in base units, by the name of an input.
var usual = map[string][2]float64{
	"differential": {15, 40}, "plate": {160, 200}, "run": {160, 200}, "pitch": {6, 12}, "ankle_angle": {-12, -4}, "shank_to_vertical": {9, 12},
	"heel_raise": {15, 30}, "ankle_to_ball": {110, 135}, "ankle_height": {55, 80}, "ankle_rise": {12, 30}, "device_and_sole": {6, 12}, "opposite_sole": {8, 15}, "this_side_short": {4, 9},
	"body_mass": {40, 100}, "speed": {1, 1.05}, "leg_length": {850, 870}, // amid two groups of speed
	"residual": {0.2, 0.6}, "needed": {80, 110}, "own": {20, 50}, "dorsiflexion": {8, 14}, "from": {3.4, 4}, "to": {4.6, 5.4},
	"modulus": {5e7, 1.2e8}, "width": {30, 50}, "thickness": {3, 6}, "length": {160, 240}, "height": {60, 150}, "rotation": {6, 14},
	"moment": {5, 60}, "arm": {200, 320}, "other_arm": {50, 90}, "shank_lever": {250, 350}, "forefoot_lever": {100, 150}, "lever": {220, 280}, "new_lever": {280, 340},
	"force": {40, 200}, "limb_radius": {40, 60}, "half_arc": {30, 70}, "area": {2000, 8000}, "pressure": {10, 30},
	"added_mass": {0.2, 0.6}, "centre_distance": {55, 80}, "plantarflexion": {4, 10}, "ankle": {-7, -3}, "hip": {2, 7}, "knee": {2, 7}, "clearance": {12, 20},
	"slow": {10, 20}, "fast": {-9, -4}, "range": {20, 35}, "age": {8.2e8, 1.1e9}, // 26 to 35 years: amid a band of the norms
}

// inputsOf takes each input of a formula somewhere within its usual values, and a standard uncertainty of 1 to 3 % of
// it; the constants, too, as if they were as well known.
func inputsOf(t *testing.T, f *Formula, random *rand.Rand) (in []Input, words []Value) {
	t.Helper()
	share := func() float64 { return 0.01 + 0.02*random.Float64() }
	for _, p := range f.Params {
		if p.Kind == Word {
			in, words = append(in, Input{Name: p.Name}), append(words, Value{Word: "female"})
			continue
		}
		span, ok := usual[p.Name]
		if !ok {
			t.Fatalf("%s: there are no usual values of %s", f.Name, p.Name)
		}
		x := span[0] + random.Float64()*(span[1]-span[0])
		in, words = append(in, Input{Name: p.Name, Value: x, U: share() * math.Abs(x)}), append(words, Value{})
	}
	for _, k := range f.Constants {
		in = append(in, Input{Name: k.Name, Value: k.Value, U: share() * math.Abs(k.Value)})
	}
	return in, words
}

// TestPropagationIsThatOfDraws compares the uncertainty at first order of every formula with the standard deviation
// of 100,000 draws of its inputs, each normally distributed.
func TestPropagationIsThatOfDraws(t *testing.T) {
	const draws = 100_000
	for _, f := range Formulas() {
		if notDrawn[f.Name] != "" {
			continue
		}
		t.Run(f.Name, func(t *testing.T) {
			random := rand.New(rand.NewPCG(1, uint64(len(f.Name))))
			in, words := inputsOf(t, f, random)
			values := make([]Value, len(f.Params))
			work := func(x []float64) (float64, error) {
				for i := range values {
					values[i] = Value{Number: x[i], Word: words[i].Word}
				}
				v, err := f.of(values, x[len(values):])
				return v.Number, err
			}
			u, err := Propagate(work, in, nil)
			if err != nil {
				t.Fatal(err)
			}
			results, x := make([]float64, draws), make([]float64, len(in))
			for d := range results {
				for i, input := range in {
					x[i] = input.Value + input.U*random.NormFloat64()
				}
				if results[d], err = work(x); err != nil {
					t.Fatalf("%v is not well within the domain: %v", x, err)
				}
			}
			if sd := stat.StdDev(results, nil); !(sd > 0) || math.Abs(u.U-sd) > 0.05*sd {
				t.Errorf("the uncertainty is %v at first order and %v of the draws, inputs %+v", u.U, sd, in)
			}
		})
	}
}

// TestEveryFormulaIsDrawnOrSaysWhyNot: the list has no name of a formula that is gone, or that could be drawn.
func TestEveryFormulaIsDrawnOrSaysWhyNot(t *testing.T) {
	for name, why := range notDrawn {
		if Named(name) == nil || why == "" {
			t.Errorf("%s is no formula, or is left out for no reason: %q", name, why)
		}
	}
	for _, f := range Formulas() {
		whole := f.Result == Count || f.Result == YesNo || strings.HasPrefix(string(f.Result), "scale ")
		for _, p := range f.Params {
			whole = whole || p.Kind == Count || strings.HasPrefix(string(p.Kind), "scale ")
		}
		if left := notDrawn[f.Name] != ""; left != whole && f.Name != "feasible_ankle_angle" {
			t.Errorf("%s is left out of the draws: %v; has counts or grades: %v", f.Name, left, whole)
		}
	}
	used := map[string]bool{}
	for _, f := range Formulas() {
		for _, p := range f.Params {
			used[p.Name] = used[p.Name] || notDrawn[f.Name] == ""
		}
	}
	for name := range usual {
		if !used[name] {
			t.Errorf("no formula that is drawn takes %s", name)
		}
	}
}
