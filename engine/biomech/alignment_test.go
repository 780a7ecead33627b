package biomech

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// formulas worked out on drawn numbers may not fail.
func drawn(t *rapid.T) func(float64, error) float64 {
	return func(x float64, err error) float64 {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
}

func near(a, b float64) bool { return math.Abs(a-b) <= 1e-9*(1+math.Abs(a)+math.Abs(b)) }

func TestPitchInverts(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		ok := drawn(r)
		plate := rapid.Float64Range(40, 300).Draw(r, "plate")
		pitch := rapid.Float64Range(0, 24.9).Draw(r, "pitch") // horizontally, half of the run is 26.6°
		ankle := rapid.Float64Range(-20, 0).Draw(r, "ankle")
		lean := pitch + ankle
		along, level := ok(HeelDifferentialFor(lean, ankle, plate)), ok(HeelDifferentialForHorizontal(lean, ankle, plate))
		if got := ok(PitchAlongPlate(along, plate)); !near(got, pitch) {
			r.Errorf("%v along the plate comes back as %v", pitch, got)
		}
		if got := ok(PitchHorizontal(level, plate)); !near(got, pitch) {
			r.Errorf("%v along the floor comes back as %v", pitch, got)
		}
		if got := ok(ShankToVertical(ok(PitchAlongPlate(along, plate)), ankle)); !near(got, lean) {
			r.Errorf("a lean of %v comes back as %v", lean, got)
		}
		if got := ok(AnkleAngleFor(ok(ShankToVertical(pitch, ankle)), pitch)); !near(got, ankle) {
			r.Errorf("an ankle at %v comes back as %v", ankle, got)
		}
		if level < along {
			r.Errorf("a shorter run needs more heel, not less: %v, %v", level, along)
		}
	})
}

func TestAlignmentIsMonotone(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		ok := drawn(r)
		plate := rapid.Float64Range(40, 300).Draw(r, "plate")
		share := rapid.Float64Range(0, 0.49).Draw(r, "share")
		more := share + rapid.Float64Range(0.001, 0.01).Draw(r, "more")
		x := plate * rapid.Float64Range(0.4, 1).Draw(r, "x")
		z := x * rapid.Float64Range(0.1, 1).Draw(r, "z")
		for name, rises := range map[string]func(share float64) float64{
			"pitch":            func(s float64) float64 { return ok(PitchAlongPlate(s*plate, plate)) },
			"horizontal pitch": func(s float64) float64 { return ok(PitchHorizontal(s*plate, plate)) },
			"ankle rise":       func(s float64) float64 { return ok(AnkleRise(s*plate, plate, x, z)) },
			"block":            func(s float64) float64 { return ok(BlockForEquinus(-50*s, plate)) },
			"horizontal block": func(s float64) float64 { return ok(BlockForEquinusHorizontal(-50*s, plate)) },
			"lean":             func(s float64) float64 { return ok(ShankToVertical(50*s, -10)) },
		} {
			if !(rises(more) > rises(share)) {
				r.Errorf("%s does not rise from %v to %v of a plate of %v", name, share, more, plate)
			}
		}
		if rise := ok(AnkleRise(share*plate, plate, x, z)); rise < 0 || rise > share*plate && !near(rise, share*plate) {
			r.Errorf("a heel raised by %v lifts the ankle by %v", share*plate, rise)
		}
		if level := ok(PitchHorizontal(share*plate, plate)); level > ok(PitchAlongPlate(share*plate, plate)) {
			r.Errorf("the pitch along the floor is the larger: %v", level)
		}
	})
}

// The device never stands in more dorsiflexion than either allows, and overrun is where it would.
func TestFeasibleAnkle(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		ok := drawn(r)
		wanted, extended := rapid.Float64Range(-30, 20).Draw(r, "wanted"), rapid.Float64Range(-30, 30).Draw(r, "extended")
		flexed := extended + rapid.Float64Range(0, 25).Draw(r, "gain")
		stands := ok(FeasibleAnkleAngle(wanted, extended))
		if stands > wanted || stands > extended || stands != wanted && stands != extended {
			r.Errorf("wanted %v with %v: %v", wanted, extended, stands)
		}
		for _, x := range []struct {
			ankle float64
			yes   bool
		}{{stands, false}, {wanted, extended < wanted && wanted <= flexed}} {
			if overrun, err := GastrocnemiusOverrun(x.ankle, extended, flexed); err != nil || overrun != x.yes {
				r.Errorf("%v within %v and %v: %v, %v", x.ankle, extended, flexed, overrun, err)
			}
		}
	})
}

// A raise that levels the other side is the same seen from there.
func TestOppositeRaise(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		ok := drawn(r)
		mm := func(name string) float64 { return rapid.Float64Range(0, 60).Draw(r, name) }
		rise, device, sole, short := mm("rise"), mm("device"), mm("sole"), mm("short")-30
		got := ok(OppositeRaise(rise, device, sole, short))
		if back := ok(OppositeRaise(0, sole, device, -short)) - rise; !near(back, -got) {
			r.Errorf("%v, and %v from the other side", got, back)
		}
		if braced, other := rise+device-short, sole+got; !near(braced, other) {
			r.Errorf("the sides stand %v and %v high", braced, other)
		}
	})
}
