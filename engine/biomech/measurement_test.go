package biomech

import (
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Each edge of a band, and what lies just beside it.
func TestBands(t *testing.T) {
	posture := func(x float64) (string, error) { return FootPostureBand(int(x)) }
	for name, x := range map[string]struct {
		band func(float64) (string, error)
		of   []any // value, band, value, band …
	}{
		"walking": {WalkingClass, []any{0.01, "household", 0.399, "household", 0.4, "limited_community", 0.8, "limited_community", 0.801, "community", 1.5, "community"}},
		"pressure": {PressureIndexBand, []any{0., "critical", 0.3, "critical", 0.301, "severe", 0.5, "severe", 0.501, "moderate", 0.7, "moderate", 0.701, "mild", 0.9, "mild", 0.909, "mild",
			0.91, "borderline", 0.99, "borderline", 0.999, "borderline", 1., "normal", 1.4, "normal", 1.401, "raised", 2., "raised"}},
		"posture":               {posture, []any{-12., "highly_supinated", -5., "highly_supinated", -4., "supinated", -1., "supinated", 0., "neutral", 5., "neutral", 6., "pronated", 9., "pronated", 10., "highly_pronated", 12., "highly_pronated"}},
		"calf, knee flexed 18":  {func(x float64) (string, error) { return CalfShortness(x, 18) }, []any{-20., "gastrocnemius", 5., "gastrocnemius", 5.1, "none", 15., "none"}},
		"calf, knee extended 0": {func(x float64) (string, error) { return CalfShortness(0, x) }, []any{-7., "gastrocnemius_and_soleus", 10., "gastrocnemius_and_soleus", 10.1, "gastrocnemius"}},
	} {
		for i := 0; i < len(x.of); i += 2 {
			if got, err := x.band(x.of[i].(float64)); err != nil || got != x.of[i+1] {
				t.Errorf("%s at %v: %s, %v, want %v", name, x.of[i], got, err, x.of[i+1])
			}
		}
	}
}

// A larger value is never in a lower band.
func TestBandsAreInOrder(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		a := rapid.Float64Range(0.001, 5).Draw(r, "a")
		b := rapid.Float64Range(a, 5).Draw(r, "b")
		for name, x := range map[string]struct {
			band  func(float64) (string, error)
			order []string
		}{
			"walking":  {WalkingClass, []string{"household", "limited_community", "community"}},
			"pressure": {PressureIndexBand, PressureIndexBands()},
			"posture":  {func(x float64) (string, error) { return FootPostureBand(int(4.8*x) - 12) }, FootPostureBands()},
		} {
			low, err := x.band(a)
			high, err2 := x.band(b)
			if err != nil || err2 != nil || slices.Index(x.order, low) < 0 || slices.Index(x.order, low) > slices.Index(x.order, high) {
				r.Errorf("%s: %v is %s, %v is %s (%v, %v)", name, a, low, b, high, err, err2)
			}
		}
	})
}

func TestFootPostureTotal(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		var items, turned [6]int
		sum := 0
		for i := range items {
			items[i] = rapid.IntRange(-2, 2).Draw(r, "item")
			turned[5-i] = -items[i]
			sum += items[i]
		}
		total, err := FootPostureTotal(items)
		mirror, _ := FootPostureTotal(turned)
		if err != nil || total != sum || mirror != -sum {
			r.Errorf("%v: %v, %v, turned over %v", items, total, err, mirror)
		}
	})
	f := Named("foot_posture_total")
	for _, label := range []string{"x", "+3", "-3", ""} {
		zero := Value{Word: "0"}
		if v, err := f.Of(zero, zero, zero, zero, zero, Value{Word: label}); err == nil || !strings.Contains(err.Error(), "each runs from −2 to +2") {
			t.Errorf("an item of %q gives %v, %v", label, v, err)
		}
	}
}

func TestDynamicRange(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		ok := drawn(r)
		fast, gap := rapid.Float64Range(-60, 60).Draw(r, "fast"), rapid.Float64Range(0, 60).Draw(r, "gap")
		if got := ok(DynamicRange(fast+gap, fast)); got < 0 || !near(got, gap) {
			r.Errorf("%v between %v and %v", got, fast, fast+gap)
		}
	})
}

func TestRealChange(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		ok := drawn(r)
		sem, from := rapid.Float64Range(0, 10).Draw(r, "sem"), rapid.Float64Range(-60, 60).Draw(r, "from")
		smallest := ok(SmallestRealChange(sem))
		for _, x := range []struct {
			by   float64
			real bool
		}{{smallest + 0.001, true}, {-smallest - 0.001, true}, {0, false}, {smallest / 2, false}} {
			if got, err := RealChange(from, from+x.by, smallest); err != nil || got != x.real {
				r.Errorf("from %v by %v with %v: %v, %v", from, x.by, smallest, got, err)
			}
		}
	})
	for _, sem := range []float64{-1, math.NaN(), math.Inf(1)} {
		if x, err := SmallestRealChange(sem); err == nil {
			t.Errorf("a standard error of %v gives %v", sem, x)
		}
		if x, err := RealChange(0, 1, sem); err == nil {
			t.Errorf("a smallest change of %v gives %v", sem, x)
		}
	}
}

func TestBodyRefuses(t *testing.T) {
	for _, bad := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		for what, of := range map[string]func() (float64, error){
			"stature": func() (float64, error) { return OfStature(FootLengthOfStature, bad) },
			"part":    func() (float64, error) { return OfStature(bad, 1750) },
			"mass":    func() (float64, error) { return Shank().Inertia(bad, 430) },
			"length":  func() (float64, error) { return Shank().Inertia(75, bad) },
		} {
			if x, err := of(); err == nil || x != 0 {
				t.Errorf("a %s of %v gives %v", what, bad, x)
			}
		}
	}
	if _, err := OfStature(1.1, 1750); err == nil {
		t.Error("more than the stature is a part of it")
	}
}
