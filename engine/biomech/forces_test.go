package biomech

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// system draws one of the systems, with levers of a limb.
func system(t *testing.T, rt *rapid.T) System {
	t.Helper()
	m := amount(0.1, 150).Draw(rt, "moment")
	upper, lower := amount(50, 450).Draw(rt, "upper lever"), amount(20, 250).Draw(rt, "lower lever")
	ankle := amount(-60, 60).Draw(rt, "ankle")
	makers := map[string]func() (System, error){
		"equinus":                 func() (System, error) { return Equinus(m, upper, lower, ankle) },
		"recurvatum with equinus": func() (System, error) { return RecurvatumWithEquinus(m, upper, lower, ankle) },
		"crouch":                  func() (System, error) { return Crouch(m, upper, lower, ankle) },
		"varus":                   func() (System, error) { return Varus(m, upper, lower) },
		"valgus":                  func() (System, error) { return Valgus(m, upper, lower) },
	}
	name := rapid.SampledFrom([]string{"equinus", "recurvatum with equinus", "crouch", "varus", "valgus"}).Draw(rt, "system")
	s, err := makers[name]()
	if err != nil || s.Name != name || len(s.Forces) != 3 || s.Moment != m {
		rt.Fatalf("%s: %+v, %v", name, s, err)
	}
	return s
}

// TestSystemsBalance: forces and moments on the device are nothing; each outer force holds the moment.
func TestSystemsBalance(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		s := system(t, rt)
		var size, turn float64
		for i, f := range s.Forces {
			size += f.N
			turn += math.Abs(f.N*f.about()) / 1000
			if !(f.N > 0) || f.Where == "" || math.Abs(math.Hypot(f.Toward[0], f.Toward[1])-1) > 1e-12 {
				rt.Fatalf("force %d: %+v", i, f)
			}
		}
		sum, moment := s.Imbalance()
		if math.Hypot(sum[0], sum[1]) > 1e-9*size || math.Abs(moment) > 1e-9*turn {
			rt.Fatalf("%s is out of balance by %v N and %v N·m: %+v", s.Name, sum, moment, s.Forces)
		}
		for _, f := range s.Forces[:2] {
			if held := math.Abs(f.N*f.about()) / 1000; math.Abs(held-s.Moment) > 1e-9*s.Moment {
				rt.Fatalf("%s: %+v holds %v of %v N·m", s.Name, f, held, s.Moment)
			}
		}
	})
}

// TestSystemsPushTheRightWay pins where each force stands and which way it points, with the foot at a right angle.
func TestSystemsPushTheRightWay(t *testing.T) {
	bent := func(f func(m, shank, foot, ankle float64) (System, error)) System {
		s, err := f(10, 300, 120, 0)
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
	flat := func(f func(m, shank, foot float64) (System, error)) System {
		s, err := f(6, 250, 60)
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
	type arrow struct {
		where    string
		at, goes [2]float64 // goes: only the signs count
		floor    bool
	}
	for _, c := range []struct {
		s    System
		want [3]arrow
	}{
		{bent(Equinus), [3]arrow{{"calf", [2]float64{0, 300}, [2]float64{1, 0}, false}, {"forefoot", [2]float64{120, 0}, [2]float64{0, 1}, false}, {"instep", [2]float64{}, [2]float64{-1, -1}, false}}},
		{bent(RecurvatumWithEquinus), [3]arrow{{"calf", [2]float64{0, 300}, [2]float64{1, 0}, false}, {"forefoot", [2]float64{120, 0}, [2]float64{0, 1}, false}, {"instep", [2]float64{}, [2]float64{-1, -1}, false}}},
		{bent(Crouch), [3]arrow{{"shin", [2]float64{0, 300}, [2]float64{-1, 0}, false}, {"forefoot", [2]float64{120, 0}, [2]float64{0, 1}, true}, {"heel", [2]float64{}, [2]float64{1, 1}, false}}},
		{flat(Varus), [3]arrow{{"medial shank", [2]float64{0, 250}, [2]float64{1, 0}, false}, {"medial foot", [2]float64{0, -60}, [2]float64{1, 0}, false}, {"lateral ankle", [2]float64{}, [2]float64{-1, 0}, false}}},
		{flat(Valgus), [3]arrow{{"lateral shank", [2]float64{0, 250}, [2]float64{-1, 0}, false}, {"lateral foot", [2]float64{0, -60}, [2]float64{-1, 0}, false}, {"medial ankle", [2]float64{}, [2]float64{1, 0}, false}}},
	} {
		for i, want := range c.want {
			f := c.s.Forces[i]
			if f.Where != want.where || f.At != want.at || f.Floor != want.floor || sign(f.Toward[0]) != want.goes[0] || sign(f.Toward[1]) != want.goes[1] {
				t.Errorf("%s, force %d: %+v, want %+v", c.s.Name, i, f, want)
			}
		}
		if c.s.Frontal != (c.s.Name == "varus" || c.s.Name == "valgus") {
			t.Errorf("%s stands in the other plane", c.s.Name)
		}
	}
	// A foot that points down carries its plate forward and down, and pushes it up and forward.
	s, err := Equinus(10, 300, 120, -30)
	if f := s.Forces[1]; err != nil || !(f.At[0] > 0 && f.At[1] < 0 && f.Toward[0] > 0 && f.Toward[1] > 0) {
		t.Errorf("in equinus: %+v, %v", f, err)
	}
}

func sign(x float64) float64 {
	switch {
	case x > 1e-12:
		return 1
	case x < -1e-12:
		return -1
	}
	return 0
}

// TestMirror: valgus is varus with the lateral side for the medial one, crouch pushes against equinus.
func TestMirror(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		m, a, b := amount(0.1, 50).Draw(rt, "m"), amount(50, 400).Draw(rt, "a"), amount(20, 120).Draw(rt, "b")
		varus, err := Varus(m, a, b)
		valgus, err2 := Valgus(m, a, b)
		if err != nil || err2 != nil {
			rt.Fatal(err, err2)
		}
		for i, f := range varus.Forces {
			g := valgus.Forces[i]
			if g.N != f.N || g.At != [2]float64{-f.At[0], f.At[1]} || g.Toward != [2]float64{-f.Toward[0], f.Toward[1]} {
				rt.Fatalf("%+v is not the mirror of %+v", g, f)
			}
		}
	})
}

// TestForcesAreMonotone: a longer lever takes less force, a larger moment more, a foot that points down more to
// close, a larger area less pressure.
func TestForcesAreMonotone(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		ok := must(t)
		bent := func(m, shank, foot, ankle float64) Bent {
			b, err := ThreePointBent(m, shank, foot, ankle)
			if err != nil {
				rt.Fatal(err)
			}
			return b
		}
		m, more := amount(0.5, 100).Draw(rt, "moment"), amount(1.001, 3).Draw(rt, "more")
		shank, foot := amount(100, 400).Draw(rt, "shank"), amount(60, 200).Draw(rt, "foot")
		ankle := amount(-50, 30).Draw(rt, "ankle")
		b := bent(m, shank, foot, ankle)
		if !(bent(m, shank*more, foot, ankle).Shank < b.Shank) || !(bent(m, shank, foot*more, ankle).Forefoot < b.Forefoot) ||
			!(bent(m*more, shank, foot, ankle).Ankle > b.Ankle) || !(bent(m, shank, foot, ankle-1).Ankle > b.Ankle) {
			rt.Fatalf("%+v", b)
		}
		if got := ok(LeverForce(m, shank*more)); math.Abs(got/b.Shank-ok(LeverForceRatio(shank, shank*more))) > 1e-12 {
			rt.Fatal("the ratio is not that of the forces")
		}
		// The closing force is at least the difference and at most the sum of the two; at −90° it would be the sum.
		if b.Ankle > b.Shank+b.Forefoot || b.Ankle < math.Abs(b.Shank-b.Forefoot) {
			rt.Fatalf("no triangle: %+v", b)
		}
		p, err := ThreePointParallel(m, shank, foot)
		if err != nil || math.Abs(p.Middle-(b.Shank+b.Forefoot)) > 1e-9*p.Middle {
			rt.Fatalf("%+v, %v", p, err)
		}
		f := b.Shank
		area := amount(100, 20000).Draw(rt, "area")
		if !(ok(MeanPressure(f, area*more)) < ok(MeanPressure(f, area))) || math.Abs(ok(LeastArea(f, ok(MeanPressure(f, area))))/area-1) > 1e-12 {
			rt.Fatal("pressure and area")
		}
	})
}

// TestStrapIsAShell: the pressure of a strap half around by Laplace's law is the force over the area that it shows.
func TestStrapIsAShell(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		ok := must(t)
		f, w, r := amount(0, 500).Draw(rt, "f"), amount(10, 80).Draw(rt, "w"), amount(15, 90).Draw(rt, "r")
		strap, shell := ok(StrapPressure(f, w, r)), ok(MeanPressure(f, ok(ShellArea(r, w, 90))))
		if math.Abs(strap-shell) > 1e-9*shell {
			rt.Fatalf("%v and %v kPa", strap, shell)
		}
		arc := amount(1, 89).Draw(rt, "arc")
		if !(ok(ShellArea(r, w, arc)) < ok(ShellArea(r, w, arc+1))) {
			rt.Fatal("a wider shell shows no more area")
		}
	})
}
