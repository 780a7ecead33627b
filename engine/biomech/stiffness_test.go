package biomech

import (
	"math"
	"slices"
	"strconv"
	"testing"

	"gonum.org/v1/gonum/stat"
	"pgregory.net/rapid"
)

// curve is the mean course of a group: share of the gait cycle, ankle angle, moment for each kilogram.
type curve struct{ cycle, angle, moment []float64 }

func ankleCurves(t *testing.T) map[string]*curve {
	t.Helper()
	out := map[string]*curve{}
	for _, row := range csvRows(t, "biomech_ankle_curves.csv") {
		c := out[row[0]]
		if c == nil {
			c = &curve{}
			out[row[0]] = c
		}
		c.cycle = append(c.cycle, leading(t, row[0], row[1]))
		c.angle = append(c.angle, leading(t, row[0], row[2]))
		c.moment = append(c.moment, leading(t, row[0], row[3]))
	}
	return out
}

// rollover is the stretch of a curve from the least angle in the first fifth of the cycle to the largest one
// between a fifth and three fifths.
func (c *curve) rollover() (angle, moment []float64) {
	from, to := -1, -1
	for i, at := range c.cycle {
		if at <= 0.20 && (from < 0 || c.angle[i] < c.angle[from]) {
			from = i
		}
		if at >= 0.20 && at <= 0.60 && (to < 0 || c.angle[i] > c.angle[to]) {
			to = i
		}
	}
	return c.angle[from : to+1], c.moment[from : to+1]
}

// TestNormalStiffnessIsThatOfTheCurves works the stiffness for each kilogram out anew, by ordinary least squares of
// moment on angle in each group that does not walk fast.
func TestNormalStiffnessIsThatOfTheCurves(t *testing.T) {
	curves := ankleCurves(t)
	var slopes []float64
	for _, row := range csvRows(t, "biomech_ankle_quasistiffness.csv") {
		c := curves[row[0]]
		if c == nil {
			t.Fatalf("%s has no curve", row[0])
		}
		angle, moment := c.rollover()
		intercept, slope := stat.LinearRegression(angle, moment, nil, false)
		fit := stat.RSquared(angle, moment, nil, intercept, slope)
		for _, v := range []struct {
			what        string
			got         float64
			column      int
			uncertainty float64
		}{{"slope", slope, 9, 1e-5}, {"intercept", intercept, 10, 2e-4}, {"R²", fit, 11, 2e-4}, {"least angle", angle[0], 2, 1e-4}, {"largest angle", angle[len(angle)-1], 4, 1e-4}} {
			if want := leading(t, row[0], row[v.column]); !(math.Abs(v.got-want) <= v.uncertainty) {
				t.Errorf("%s of %s is %v, tabled %v", v.what, row[0], v.got, want)
			}
		}
		if !slices.Contains([]string{"Schwartz2008_Fast", "Schwartz2008_VeryFast", "Bovi2011_Young_L", "Bovi2011_Adult_L"}, row[0]) {
			slopes = append(slopes, slope)
		}
	}
	mean, sd := stat.MeanStdDev(slopes, nil)
	if len(slopes) != 11 || strconv.FormatFloat(mean, 'f', 3, 64) != "0.068" || strconv.FormatFloat(sd, 'f', 3, 64) != "0.005" {
		t.Errorf("%d slopes of mean %v and standard deviation %v, want 11, 0.068 and 0.005", len(slopes), mean, sd)
	}
	if NormalStiffness1 != math.Round(mean*1000)/1000 {
		t.Errorf("the constant is %v, the mean of the curves %v", NormalStiffness1, mean)
	}
	if uNormalStiffness1 < sd {
		t.Error("one walker is better known than the groups")
	}
}

// TestSpeedGroupsAreThePublishedOnes holds the groups against the table of Schwartz 2008.
func TestSpeedGroupsAreThePublishedOnes(t *testing.T) {
	var speeds, moments, spread []float64
	for _, row := range csvRows(t, "biomech_schwartz_ankle_by_speed.csv") {
		mean, sd := leading(t, row[1], row[3]), leading(t, row[1], row[4])
		switch row[0] {
		case "Dimensionless Speed":
			speeds = append(speeds, mean)
		case "Max Plantarflex Mom  [N-m/kg]":
			moments, spread = append(moments, mean), append(spread, sd/mean)
			if row[1] == "Free" && (math.Abs(PeakMoment1-mean) > 5e-4 || math.Abs(uPeakMoment1-sd) > 5e-4) {
				t.Errorf("the peak moment is %v (%v), published %v (%v)", PeakMoment1, uPeakMoment1, mean, sd)
			}
		}
	}
	groups := speedGroups()
	if len(speeds) != len(groups) || len(moments) != len(groups) {
		t.Fatalf("%d speeds and %d moments", len(speeds), len(moments))
	}
	for i, g := range groups {
		if g.speed != speeds[i] || g.moment != moments[i] {
			t.Errorf("group %d is %+v, published %v and %v", i, g, speeds[i], moments[i])
		}
		if got := must(t)(PeakMomentAt(speeds[i])); math.Abs(got-moments[i]) > 1e-12 {
			t.Errorf("at %v the moment is %v, published %v", speeds[i], got, moments[i])
		}
	}
	if mean := stat.Mean(spread, nil); math.Abs(mean-walkerSpread) > 5e-3 {
		t.Errorf("walkers spread by %v of the mean, here %v", mean, walkerSpread)
	}
	for _, v := range []float64{0.1720, 0.6939, -1, math.NaN(), math.Inf(1)} {
		if got, err := PeakMomentAt(v); err == nil {
			t.Errorf("at %v: %v", v, got)
		}
	}
}

// TestResidualByGrade holds each grade against the five intervals and their hulls, written by hand.
func TestResidualByGrade(t *testing.T) {
	for grade, want := range map[string]Interval{
		"0": {0, 0.02}, "1": {0, 0.02}, "2-": {0, 0.05}, "2": {0, 0.05}, "2+": {0, 0.15}, "3-": {0, 0.15}, "3": {0.03, 0.15},
		"3+": {0.03, 0.75}, "4-": {0.03, 0.75}, "4": {0.1, 0.75}, "4+": {0.1, 1}, "5-": {0.1, 1}, "5": {0.4, 1},
	} {
		if got, err := ResidualByGrade(grade); err != nil || got != want {
			t.Errorf("%s leaves %v, %v, want %v", grade, got, err, want)
		}
	}
	for _, grade := range []string{"", "6", "0-", "1+", "5+", "3--", "33", "-", "trace", "½"} {
		if got, err := ResidualByGrade(grade); err == nil {
			t.Errorf("%q leaves %v", grade, got)
		}
	}
}

// TestResidualByHeelRises: an adult's heel rise takes the walking moment, a short foot's less; more of them tell no more.
func TestResidualByHeelRises(t *testing.T) {
	const child = 9.80665 * 0.1 / 1.216 // 0.8065, of a foot of 100 mm from ankle to ball
	for _, c := range []struct {
		rises int
		lever float64
		want  Interval
	}{
		{0, 125, Interval{0, 1}}, {1, 125, Interval{1, 1}}, {0, 100, Interval{0, child}}, {1, 100, Interval{child, 1}}, {25, 100, Interval{child, 1}},
	} {
		got, err := ResidualByHeelRises(PeakMoment1, c.rises, c.lever)
		if err != nil || math.Abs(got.Least-c.want.Least) > 1e-9 || math.Abs(got.Most-c.want.Most) > 1e-9 {
			t.Errorf("%+v: %v, %v", c, got, err)
		}
	}
	if got, err := ResidualByHeelRises(PeakMoment1, -1, 125); err == nil {
		t.Errorf("−1 heel rises: %v", got)
	}
	for _, name := range []string{"residual_least_by_heel_rises", "residual_most_by_heel_rises"} {
		for _, rises := range []float64{0.5, -3} {
			if v, err := Named(name).Of(Value{Number: rises}, Value{Number: 125}); err == nil {
				t.Errorf("%s of %v: %v", name, rises, v)
			}
		}
		if v, err := Named(name).Of(Value{Number: 1e18}, Value{Number: 125}); err != nil || v.Number != 1 {
			t.Errorf("%s of very many: %v, %v", name, v, err)
		}
	}
}

// amount draws a positive quantity.
func amount(lo, hi float64) *rapid.Generator[float64] { return rapid.Float64Range(lo, hi) }

// TestStiffnessIsMonotone: heavier walkers and weaker muscles ask for more, a stiffer device lets less happen.
func TestStiffnessIsMonotone(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		ok := must(t)
		m, more := amount(10, 150).Draw(rt, "mass"), amount(0.01, 50).Draw(rt, "more")
		r := rapid.Float64Range(0, 0.9).Draw(rt, "residual")
		d := rapid.Float64Range(0.001, 0.1).Draw(rt, "step")
		k := ok(StiffnessDemand(NormalStiffness1, m, r))
		if !(ok(StiffnessDemand(NormalStiffness1, m, r+d)) < k) || !(ok(StiffnessDemand(NormalStiffness1, m+more, r)) > k) {
			rt.Fatal("demand must fall with what is left and rise with body mass")
		}
		if full := ok(StiffnessDemand(NormalStiffness1, m, 0)); full != ok(NormalStiffness(NormalStiffness1, m)) || ok(StiffnessDemand(NormalStiffness1, m, 1)) != 0 {
			rt.Fatal("demand must run from the normal stiffness to nothing")
		}
		own := amount(1, 80).Draw(rt, "own")
		if !(ok(StiffnessFromDeficit(100, own, 10)) > ok(StiffnessFromDeficit(100, own+d, 10))) || !(ok(StiffnessFromDeficit(100, own, 10)) > ok(StiffnessFromDeficit(100, own, 10+more))) {
			rt.Fatal("a deficit must fall with the wearer's own moment and spread over the angle")
		}
		from, to := amount(2.8, 6.6).Draw(rt, "from"), amount(2.8, 6.6).Draw(rt, "to")
		if got := ok(DorsiflexionChange(DorsiflexionSlope, from, to)); got*(to-from) > 0 || got != -ok(DorsiflexionChange(DorsiflexionSlope, to, from)) {
			rt.Fatal("a stiffer device must lessen dorsiflexion, and back")
		}
		v, leg := amount(0.6, 1.7).Draw(rt, "speed"), amount(700, 1000).Draw(rt, "leg")
		if !(ok(PeakAnkleMomentAt(1, m, v+0.01, leg)) > ok(PeakAnkleMomentAt(1, m, v, leg))) {
			rt.Fatal("the moment must rise with speed")
		}
	})
}

// TestStrutScaling: stiffness goes with modulus and width, with the cube of thickness, and against length; strain
// with thickness and rotation; all like a beam.
func TestStrutScaling(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		ok := must(t)
		e, b := amount(1e6, 2e8).Draw(rt, "modulus"), amount(5, 80).Draw(rt, "width")
		h, l := amount(1, 8).Draw(rt, "thickness"), amount(200, 400).Draw(rt, "length")
		times := amount(1.001, 2).Draw(rt, "times")
		k := ok(StrutStiffness(e, b, h, l))
		for what, ratio := range map[string][2]float64{
			"modulus":   {ok(StrutStiffness(e*times, b, h, l)) / k, times},
			"width":     {ok(StrutStiffness(e, b*times, h, l)) / k, times},
			"thickness": {ok(StrutStiffness(e, b, h*times, l)) / k, times * times * times},
			"length":    {ok(StrutStiffness(e, b, h, l*times)) / k, 1 / times},
		} {
			if math.Abs(ratio[0]/ratio[1]-1) > 1e-9 {
				rt.Fatalf("%s: %v times as stiff, want %v", what, ratio[0], ratio[1])
			}
		}
		height := amount(0, 500).Draw(rt, "height")
		at := ok(StrutStiffnessAtHeight(e, b, h, l, height))
		if math.Abs(at/k-(l+height)/(l/2+height)) > 1e-9 || !(at > k) || !(ok(StrutStiffnessAtHeight(e, b, h, l, height+1)) < at) {
			rt.Fatalf("a force at %v: %v against %v for a couple", height, at, k)
		}
		turn := amount(0.1, 40).Draw(rt, "turn")
		strain := ok(StrutStrain(h, l, turn))
		if math.Abs(ok(StrutStrain(h, l, -turn))-strain) > 0 || math.Abs(ok(StrutStrain(h, l, times*turn))/strain-times) > 1e-9 {
			rt.Fatal("strain must go with the rotation, either way")
		}
		// The couple that bends the strut, K·θ, stresses a rectangular section by 6 M/(b t²).
		if stress := 6 * k * turn * 1000 / (b * h * h) * 1000; math.Abs(ok(StrutStress(e, h, l, turn))/stress-1) > 1e-9 {
			rt.Fatal("stress must be that of the couple")
		}
	})
}

// TestLayersFor: the layers are enough and none of them is one too many; a ratio that is a whole cube adds none.
func TestLayersFor(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		ok := must(t)
		n := float64(rapid.IntRange(1, 40).Draw(rt, "layers"))
		k, target := amount(0.1, 10).Draw(rt, "k"), amount(0.1, 10).Draw(rt, "target")
		got := ok(LayersFor(n, k, target))
		if k*ok(LayersStiffnessRatio(n, got)) < target*(1-1e-7) {
			rt.Fatalf("%v layers are too few", got)
		}
		if got > 1 && k*ok(LayersStiffnessRatio(n, got-1)) > target*(1+1e-9) {
			rt.Fatalf("%v layers are too many", got)
		}
		m := float64(rapid.IntRange(1, 40).Draw(rt, "new"))
		if back := ok(LayersFor(n, k, k*ok(LayersStiffnessRatio(n, m)))); back != m {
			rt.Fatalf("%v layers, want %v", back, m)
		}
	})
	// Stiffnesses for 1 of 3, 2 of 3 and 27 layers of 1, as quantities keep them: a little more than the exact ones.
	for _, c := range [][4]float64{{3, 0.7, 0.025925926, 1}, {3, 1.1, 0.325925926, 2}, {1, 2.3, 45270.9, 27}} {
		if n := must(t)(LayersFor(c[0], c[1], c[2])); n != c[3] {
			t.Errorf("%v: %v layers", c, n)
		}
	}
	for _, c := range [][3]float64{{0, 1, 2}, {8.5, 1, 2}, {1001, 1, 2}, {8, 0, 2}, {8, 1, -2}} {
		if n, err := LayersFor(c[0], c[1], c[2]); err == nil {
			t.Errorf("%v: %v layers", c, n)
		}
	}
}
