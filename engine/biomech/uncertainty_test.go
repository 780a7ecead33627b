package biomech

import (
	"errors"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/stat"
)

// gumRaw are the readings of JCGM 100:2008, H.2: voltage V, current mA, phase rad.
func gumRaw() [3][]float64 {
	return [3][]float64{
		{5.007, 4.994, 5.005, 4.990, 4.999},
		{19.663, 19.639, 19.640, 19.685, 19.678},
		{1.0456, 1.0438, 1.0468, 1.0428, 1.0433},
	}
}

// gumMeans gives the means of the readings, current in A, and their correlations.
func gumMeans() ([]Input, Correlation) {
	raw := gumRaw()
	var in []Input
	for i, name := range []string{"voltage", "current", "phase"} {
		mean, sd := stat.MeanStdDev(raw[i], nil)
		in = append(in, Input{Name: name, Value: mean, U: sd / math.Sqrt(5)})
	}
	in[1].Value, in[1].U = in[1].Value/1000, in[1].U/1000
	return in, func(i, j int) float64 { return stat.Correlation(raw[i], raw[j], nil) }
}

// impedance is resistance, reactance and impedance of a voltage, a current and their phase.
func impedance(x []float64) ([]float64, error) {
	z := x[0] / x[1]
	return []float64{z * math.Cos(x[2]), z * math.Sin(x[2]), z}, nil
}

// gauge is the end gauge of JCGM 100:2008, H.1, nm and °C, in the order of gaugeInputs.
func gauge(x []float64) (float64, error) {
	ls, d, alpha, dAlpha, dTheta, theta := x[0], x[1]+x[2]+x[3], x[4], x[5], x[6], x[7]+x[8]
	return ls + d - ls*(dAlpha*theta+alpha*dTheta), nil
}

func gaugeInputs() []Input {
	return []Input{
		{Name: "standard", Value: 50000623, U: 25, Freedom: 18},
		{Name: "difference", Value: 215, U: 5.8, Freedom: 24},
		{Name: "comparator, random", U: 3.9, Freedom: 5},
		{Name: "comparator, systematic", U: 6.7, Freedom: 8},
		{Name: "expansion", Value: 11.5e-6, U: 2e-6 / math.Sqrt(3)},
		{Name: "difference of expansion", U: 1e-6 / math.Sqrt(3), Freedom: 50},
		{Name: "difference of temperature", U: 0.05 / math.Sqrt(3), Freedom: 2},
		{Name: "temperature", Value: -0.1, U: 0.2},
		{Name: "cycle of temperature", U: 0.5 / math.Sqrt2},
	}
}

// expansion is the coefficient of NIST TN 1900, example 13, of its four readings.
func expansion(x []float64) (float64, error) {
	l0, t0, l1, t1 := x[0], x[1], x[2], x[3]
	return (l1 - l0) / (l0 * (t1 - t0)), nil
}

func expansionInputs(times float64) []Input {
	return []Input{{Name: "L0", Value: 1.4999, U: times * 1e-4}, {Name: "T0", Value: 288.15, U: times * 0.02},
		{Name: "L1", Value: 1.5021, U: times * 2e-4}, {Name: "T1", Value: 373.10, U: times * 0.05}}
}

// assigned are the numbers behind the equals signs of a text, and those of a list in brackets.
func assigned(t *testing.T, text string) []float64 {
	t.Helper()
	var out []float64
	for _, m := range regexp.MustCompile(`[=\[,]\s*(-?[0-9.]+(?:e[+-]?[0-9]+)?)`).FindAllStringSubmatch(text, -1) {
		x, err := strconv.ParseFloat(m[1], 64)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, x)
	}
	return out
}

// within holds results against published ones, each to half of a unit of its last place or more.
func within(t *testing.T, published []float64, tolerance []float64, got ...float64) {
	t.Helper()
	if len(published) != len(got) || len(tolerance) != len(got) {
		t.Fatalf("%d published, %d worked out, %d tolerances", len(published), len(got), len(tolerance))
	}
	for i := range got {
		if !(math.Abs(got[i]-published[i]) <= tolerance[i]) {
			t.Errorf("number %d is %v, published %v ± %v", i, got[i], published[i], tolerance[i])
		}
	}
}

func uncertaintyCheckers() map[string]checker {
	propagated := func(t *testing.T, f func([]float64) (float64, error), in []Input) Uncertainty {
		t.Helper()
		u, err := Propagate(f, in, nil)
		if err != nil {
			t.Fatal(err)
		}
		return u
	}
	return map[string]checker{
		"type A means,u,r": func(t *testing.T, c checkCase) {
			in, r := gumMeans()
			within(t, assigned(t, c.expected), []float64{5e-5, 5e-8, 5e-9, 5e-11, 5e-6, 5e-9, 5e-5, 5e-5, 5e-5},
				in[0].Value, in[0].U, in[1].Value, in[1].U, in[2].Value, in[2].U, r(0, 1), r(0, 2), r(1, 2))
		},
		"R,X,Z and u": func(t *testing.T, c checkCase) {
			in, r := gumMeans()
			y, between, err := PropagateAll(impedance, in, r)
			if err != nil {
				t.Fatal(err)
			}
			tolerance := leading(t, c.id, c.tolerance)
			within(t, assigned(t, c.expected), []float64{tolerance, tolerance, tolerance, tolerance, tolerance, tolerance, tolerance, tolerance, tolerance},
				y[0].Value, y[0].U, y[1].Value, y[1].U, y[2].Value, y[2].U, between[0][1], between[0][2], between[1][2])
			for k := range between {
				if between[k][k] != 1 || between[k][0] != between[0][k] {
					t.Errorf("the correlations are no table: %v", between)
				}
			}
			// As printed in Table H.4 of the guide.
			within(t, []float64{127.732, 0.071, 219.847, 0.295, 254.260, 0.236, -0.588, -0.485, 0.993}, []float64{5e-4, 5e-4, 5e-4, 1e-3, 5e-4, 5e-4, 5e-4, 5e-4, 5e-4},
				y[0].Value, y[0].U, y[1].Value, y[1].U, y[2].Value, y[2].U, between[0][1], between[0][2], between[1][2])
		},
		"H1 end gauge": func(t *testing.T, c checkCase) {
			u := propagated(t, gauge, gaugeInputs())
			abs := func(i int) float64 { return math.Abs(u.Parts[i].U) }
			published := assigned(t, c.expected)
			for i, x := range published {
				published[i] = math.Abs(x)
			}
			within(t, published, []float64{0.5, 5e-4, 5e-3, 5e-5, 5e-5, 5e-5, 5e-5, 5e-4, 5e-5},
				u.Value, u.U, u.Freedom, abs(0), abs(1), abs(2), abs(3), abs(6), abs(5))
			// As printed in the guide: 32 nm, and 16 degrees of freedom, which it cuts off.
			if math.Round(u.U) != 32 || math.Floor(u.Freedom) != 16 {
				t.Errorf("u is %v with %v degrees of freedom, printed 32 and 16", u.U, u.Freedom)
			}
			// The terms of second order that H.1.7 adds come from these.
			if got := strings.Join(u.Flat, "; "); got != "expansion; temperature; cycle of temperature" {
				t.Errorf("flat are %s", got)
			}
		},
		"H1 d": func(t *testing.T, c checkCase) {
			u := propagated(t, func(x []float64) (float64, error) { return x[0] + x[1] + x[2], nil }, gaugeInputs()[1:4])
			within(t, []float64{9.682, 25.45}, []float64{5e-4, 5e-3}, u.U, u.Freedom)
			tolerance := leading(t, c.id, c.tolerance)
			text := strings.ReplaceAll(c.expected, "u(d)=", "d=")
			within(t, assigned(t, text), []float64{tolerance, tolerance}, u.U, u.Freedom)
		},
		"TN1900 E13 sd=unc": func(t *testing.T, c checkCase) {
			u := propagated(t, expansion, expansionInputs(1))
			within(t, assigned(t, c.expected), []float64{5e-11, 5e-10}, u.Value, u.U)
			within(t, []float64{1.7266e-5, 1.76e-6}, []float64{5e-10, 1e-8}, u.Value, u.U) // as TN 1900 prints them
		},
		"TN1900 E13 sd=unc*sqrt3 (t,dof3)": func(t *testing.T, c checkCase) {
			u := propagated(t, expansion, expansionInputs(math.Sqrt(3)))
			within(t, assigned(t, c.expected), []float64{5e-11, 1e-9}, u.Value, u.U)
		},
	}
}

// TestShankToVerticalUncertainty is A7.1 of the check cases through Propagate: 2.43°, mostly of the ankle angle.
func TestShankToVerticalUncertainty(t *testing.T) {
	u, err := Propagate(func(x []float64) (float64, error) {
		pitch, err := PitchAlongPlate(x[1], x[2])
		if err != nil {
			return 0, err
		}
		return ShankToVertical(pitch, x[0])
	}, []Input{{Name: "ankle angle", Value: -5, U: 2.4}, {Name: "differential", Value: 30, U: 1}, {Name: "plate", Value: 180, U: 3}}, nil)
	if err != nil {
		t.Fatal(err)
	}
	within(t, []float64{2.4270, 2.400, 0.3228, -0.1614, 4.5941}, []float64{1e-3, 1e-9, 1e-3, 1e-3, 1e-3}, u.U, u.Parts[0].U, u.Parts[1].U, u.Parts[2].U, u.Value)
}

// TestPropagateAtTheEdge: where f fails on one side, the other tells the slope; where on both, nothing does.
func TestPropagateAtTheEdge(t *testing.T) {
	edge := errors.New("outside")
	root := func(x []float64) (float64, error) {
		if x[0] < 0 || x[0] > 10 {
			return 0, edge
		}
		return 3 * x[0], nil
	}
	for _, at := range []float64{0, 5, 10} {
		u, err := Propagate(root, []Input{{Name: "x", Value: at, U: 0.5}}, nil)
		if err != nil || math.Abs(u.U-1.5) > 1e-12 || u.Value != 3*at {
			t.Errorf("at %v: %+v, %v", at, u, err)
		}
	}
	for _, c := range []Input{{Name: "x", Value: 5, U: 11}, {Name: "x", Value: -1, U: 0.5}} {
		if _, err := Propagate(root, []Input{c}, nil); !errors.Is(err, edge) {
			t.Errorf("%+v: %v", c, err)
		}
	}
}

func TestPropagateRefuses(t *testing.T) {
	sum := func(x []float64) (float64, error) { return x[0] + x[1], nil }
	ok := Input{Name: "a", Value: 1, U: 1}
	for name, c := range map[string]struct {
		in []Input
		r  Correlation
	}{
		"no number":      {[]Input{ok, {Name: "b", Value: math.NaN(), U: 1}}, nil},
		"infinite":       {[]Input{ok, {Name: "b", Value: 1, U: math.Inf(1)}}, nil},
		"below nothing":  {[]Input{ok, {Name: "b", Value: 1, U: -1}}, nil},
		"few freedoms":   {[]Input{ok, {Name: "b", Value: 1, U: 1, Freedom: -2}}, nil},
		"overflow":       {[]Input{ok, {Name: "b", Value: 1, U: 1e300}}, nil},
		"correlation 2":  {[]Input{ok, {Name: "b", Value: 1, U: 1}}, func(int, int) float64 { return 2 }},
		"no correlation": {[]Input{ok, {Name: "b", Value: 1, U: 1}}, func(int, int) float64 { return math.NaN() }},
	} {
		if u, err := Propagate(sum, c.in, c.r); err == nil {
			t.Errorf("%s: %+v", name, u)
		}
	}
	three := func(x []float64) (float64, error) { return x[0] + x[1] + x[2], nil }
	if u, err := Propagate(three, []Input{ok, ok, ok}, func(int, int) float64 { return -1 }); err == nil {
		t.Errorf("three that are each other's opposite: %+v", u)
	}
	if u, err := Propagate(func([]float64) (float64, error) { return math.Inf(1), nil }, []Input{ok}, nil); err == nil {
		t.Errorf("a result that is no number: %+v", u)
	}
	if _, _, err := PropagateAll(func(x []float64) ([]float64, error) { return make([]float64, int(x[0])), nil }, []Input{{Name: "a", Value: 3, U: 1}}, nil); err == nil {
		t.Error("a number of results that changes")
	}
}

// TestPropagateCorrelated: opposite inputs cancel, equal ones add, and exact ones add nothing.
func TestPropagateCorrelated(t *testing.T) {
	sum := func(x []float64) (float64, error) { return x[0] + x[1], nil }
	in := []Input{{Name: "a", Value: 1, U: 0.5, Freedom: 4}, {Name: "b", Value: 2, U: 0.5}}
	for r, want := range map[float64]float64{-1: 0, 0: math.Sqrt(0.5), 0.28: 0.8, 1: 1} {
		u, err := Propagate(sum, in, func(i, j int) float64 { return r })
		if err != nil || math.Abs(u.U-want) > 1e-8 || u.Freedom != 0 {
			t.Errorf("r = %v: %+v, %v, want %v", r, u, err, want)
		}
	}
	u, err := Propagate(sum, []Input{{Name: "a", Value: 1}, {Name: "b", Value: 2}}, nil)
	if err != nil || u.U != 0 || u.Flat != nil || len(u.Parts) != 2 {
		t.Errorf("exact inputs: %+v, %v", u, err)
	}
	u, err = Propagate(sum, in, nil)
	if err != nil || math.Abs(u.Freedom-16) > 1e-9 { // u⁴ = 1/4, (1/2)⁴/4 = 1/64
		t.Errorf("degrees of freedom: %+v, %v", u, err)
	}
}
