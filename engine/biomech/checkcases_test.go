package biomech

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"strings"
	"testing"
)

// checkCase is one row of testdata/reference/biomech_check_cases.csv.
type checkCase struct {
	id, function, inputs, expected, tolerance string
}

// checker holds one row against the package.
type checker func(t *testing.T, c checkCase)

// in gives a named input: "HSD_mm=10;L_plate_mm=180".
func (c checkCase) in(t *testing.T, name string) float64 {
	t.Helper()
	for _, part := range strings.Split(c.inputs, ";") {
		if key, value, ok := strings.Cut(part, "="); ok && strings.TrimSpace(key) == name {
			return leading(t, c.id, value)
		}
	}
	t.Fatalf("%s has no input %s: %s", c.id, name, c.inputs)
	return 0
}

// wants holds results against the published numbers, in order; there may not be more of either.
func (c checkCase) wants(t *testing.T, got ...float64) {
	t.Helper()
	c.close(t, strings.Split(c.expected, ";"), got...)
}

func (c checkCase) close(t *testing.T, published []string, got ...float64) {
	t.Helper()
	if len(published) != len(got) {
		t.Fatalf("%s publishes %d numbers, %d were worked out", c.id, len(published), len(got))
	}
	tolerance := leading(t, c.id, c.tolerance)
	for i, text := range published {
		if want := leading(t, c.id, text); !(math.Abs(got[i]-want) <= tolerance) {
			t.Errorf("%s, %s of %s: %v, published %v ± %v", c.id, c.function, c.inputs, got[i], want, tolerance)
		}
	}
}

// leading reads the number that a text begins with: "60.0GPa", "14.0110 (linear …)".
func leading(t *testing.T, id, text string) float64 {
	t.Helper()
	text = strings.TrimSpace(text)
	for n := len(text); n > 0; n-- {
		if x, err := strconv.ParseFloat(text[:n], 64); err == nil {
			return x
		}
	}
	t.Fatalf("%s: no number in %q", id, text)
	return 0
}

// must takes the result of a formula that may not fail here.
func must(t *testing.T) func(float64, error) float64 {
	return func(x float64, err error) float64 {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
}

// TestCheckCases runs every row; one that nobody handles is a failure, and so is a checker without a row.
func TestCheckCases(t *testing.T) {
	checkers := mechanicsCheckers()
	for function, check := range geometryCheckers() {
		if _, twice := checkers[function]; twice {
			t.Errorf("%s has two checkers", function)
		}
		if checkers == nil {
			checkers = map[string]checker{}
		}
		checkers[function] = check
	}
	used := map[string]bool{}
	for _, row := range csvRows(t, "biomech_check_cases.csv") {
		c := checkCase{row[0], row[1], row[2], row[3], row[4]}
		check := checkers[c.function]
		if check == nil {
			t.Errorf("%s, %s: no test handles it", c.id, c.function)
			continue
		}
		used[c.function] = true
		t.Run(c.id, func(t *testing.T) { check(t, c) })
	}
	for function := range checkers {
		if !used[function] {
			t.Errorf("no row is of %s", function)
		}
	}
}

// csvRows reads a table of testdata/reference without its head.
func csvRows(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := os.Open("../../testdata/reference/" + name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.FieldsPerRecord = -1
	rows, err := r.ReadAll()
	if err != nil || len(rows) < 2 {
		t.Fatalf("%s: %d rows, %v", name, len(rows), err)
	}
	return rows[1:]
}

// geometryCheckers are those of alignment, swing and the normal shank.
func geometryCheckers() map[string]checker {
	return map[string]checker{
		"pitch_asin_deg": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(PitchAlongPlate(c.in(t, "HSD_mm"), c.in(t, "L_plate_mm"))))
		},
		"pitch_atan_deg": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(PitchHorizontal(c.in(t, "HSD_mm"), c.in(t, "L_horizontal_mm"))))
		},
		"sva_deg": func(t *testing.T, c checkCase) {
			c.wants(t, lean(t, c.in(t, "AAAFO_PFpos_deg"), c.in(t, "HSD_mm"), c.in(t, "L_plate_mm")))
		},
		"required_HSD_mm": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(HeelDifferentialFor(c.in(t, "SVA_target_deg"), -c.in(t, "AAAFO_PFpos_deg"), c.in(t, "L_plate_mm"))))
		},
		"equinus_block_mm(tan,sin)": func(t *testing.T, c checkCase) {
			ankle, lever := -c.in(t, "alpha_deg"), c.in(t, "lever_mm")
			c.wants(t, must(t)(BlockForEquinusHorizontal(ankle, lever)), must(t)(BlockForEquinus(ankle, lever)))
		},
		"dPitch_dHSD_deg_per_mm": func(t *testing.T, c checkCase) {
			c.wants(t, sensitivity(func(h float64) float64 { return must(t)(PitchAlongPlate(h, c.in(t, "L_plate_mm"))) }, c.in(t, "HSD_mm")))
		},
		"u_SVA_deg": func(t *testing.T, c checkCase) {
			a, h, l := c.in(t, "A"), c.in(t, "H"), c.in(t, "L")
			terms := []float64{
				c.in(t, "uA") * sensitivity(func(a float64) float64 { return lean(t, a, h, l) }, a),
				c.in(t, "uH") * sensitivity(func(h float64) float64 { return lean(t, a, h, l) }, h),
				c.in(t, "uL") * sensitivity(func(l float64) float64 { return lean(t, a, h, l) }, l),
			}
			all, parts, _ := strings.Cut(c.expected, "(terms")
			c.close(t, append([]string{all}, strings.Split(parts, ",")...),
				math.Hypot(math.Hypot(terms[0], terms[1]), terms[2]), math.Abs(terms[0]), math.Abs(terms[1]), math.Abs(terms[2]))
		},
		"ankle_rise_mm": func(t *testing.T, c checkCase) {
			h, l, x := c.in(t, "h"), c.in(t, "L_plate"), c.in(t, "xa")
			got := must(t)(AnkleRise(h, l, x, c.in(t, "za")))
			c.wants(t, got)
			_, linear, _ := strings.Cut(c.expected, "L=")
			c.close(t, []string{linear}, h*x/l)
			if !(got < h*x/l) {
				t.Errorf("%s: the ankle rises by more than in proportion", c.id)
			}
		},
		"contralateral_raise_mm": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(OppositeRaise(c.in(t, "ankle_rise"), c.in(t, "ipsi_shell+sole"), c.in(t, "contra_sole"), c.in(t, "pre_existing_ipsi_short"))))
		},
		"foot_gravity_moment_Nm": func(t *testing.T, c checkCase) {
			if c.in(t, "frac") != footShare {
				t.Errorf("%s takes another mass of the foot", c.id)
			}
			c.wants(t, must(t)(FootMoment(c.in(t, "M"), c.in(t, "m_shoe_device"), 1000*c.in(t, "l_com"))))
		},
		"dMTC_cm for extra PF": func(t *testing.T, c checkCase) {
			c.wants(t, must(t)(ToeClearanceChange(-c.in(t, "dPF_deg"), 0, 0))/10)
		},
		"zero_clearance_PF_deg": func(t *testing.T, c checkCase) {
			if c.in(t, "s") != ankleClearance/10. {
				t.Errorf("%s takes another slope", c.id)
			}
			c.wants(t, must(t)(ClearanceLostAt(10*c.in(t, "MTC"))))
		},
		"K_PF_Nm_per_deg = m_needed*M/dtheta": func(t *testing.T, c checkCase) {
			resist := map[float64]func(float64, float64) (float64, error){leastResistance: SwingResistanceLeast, mostResistance: SwingResistanceMost}[c.in(t, "m")]
			c.wants(t, must(t)(resist(c.in(t, "M"), c.in(t, "dtheta"))))
		},
		"normal_SVA_deg": func(t *testing.T, c checkCase) {
			words := strings.Fields(strings.ReplaceAll(c.inputs, "very slow", "very_slow"))
			mean, sd := normalShank(t, words[0], words[1], 0.30)
			expected, sdText, _ := strings.Cut(c.expected, "(sd")
			c.close(t, []string{expected, sdText}, mean, sd)
		},
	}
}

// lean is the shank to vertical of an ankle in some plantarflexion.
func lean(t *testing.T, plantarflexion, differential, plate float64) float64 {
	t.Helper()
	return must(t)(ShankToVertical(must(t)(PitchAlongPlate(differential, plate)), -plantarflexion))
}

// sensitivity is the slope of f at x.
func sensitivity(f func(float64) float64, x float64) float64 {
	const step = 1e-4
	return (f(x+step) - f(x-step)) / (2 * step)
}
