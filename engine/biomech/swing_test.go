package biomech

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestFootMomentRisesWithMass(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		ok := drawn(r)
		body, added := rapid.Float64Range(10, 150).Draw(r, "body"), rapid.Float64Range(0, 2).Draw(r, "added")
		distance := rapid.Float64Range(20, 120).Draw(r, "distance")
		at := ok(FootMoment(body, added, distance))
		for name, more := range map[string]float64{
			"body": ok(FootMoment(body+1, added, distance)), "added": ok(FootMoment(body, added+0.1, distance)), "distance": ok(FootMoment(body, added, distance+1)),
		} {
			if !(more > at) {
				r.Errorf("more %s gives %v after %v", name, more, at)
			}
		}
		if twice := ok(FootMoment(2*body, 2*added, distance)); !near(twice, 2*at) {
			r.Errorf("twice the mass gives %v after %v", twice, at)
		}
	})
}

// The weight of the foot agrees with the moment that was measured in swing, and a device must resist more.
func TestFootMomentInSwing(t *testing.T) {
	forKilogram := must(t)(FootMoment(70, 0, 70)) / 70
	if forKilogram < 0.006 || forKilogram > 0.017 { // Schwartz 2008, 74 to 88 % of the cycle, five speeds
		t.Errorf("the foot weighs %v N·m/kg in swing", forKilogram)
	}
	for _, resist := range []func(float64, float64) (float64, error){SwingResistanceLeast, SwingResistanceMost} {
		if times := must(t)(resist(70, 1)) / 70 / forKilogram; times < 2.5 || times > 6.5 {
			t.Errorf("a device resists %v times the weight of the foot", times)
		}
	}
}

func TestSwingResistance(t *testing.T) {
	rapid.Check(t, func(r *rapid.T) {
		ok := drawn(r)
		body, angle := rapid.Float64Range(10, 150).Draw(r, "body"), rapid.Float64Range(1, 30).Draw(r, "angle")
		least, most := ok(SwingResistanceLeast(body, angle)), ok(SwingResistanceMost(body, angle))
		if least >= most || !near(ok(SwingResistanceLeast(body, 2*angle)), least/2) || !near(ok(SwingResistanceMost(2*body, angle)), 2*most) {
			r.Errorf("%v to %v for %v kg in %v°", least, most, body, angle)
		}
	})
}

func TestToeClearance(t *testing.T) {
	for cm, change := range map[float64][3]float64{17.1: {1, 0, 0}, 9.5: {0, 1, 0}, 2.5: {0, 0, 1}} { // Moosabhoy and Gard 2006, cm/rad
		if got := must(t)(ToeClearanceChange(change[0], change[1], change[2])); !near(got, cm*10*math.Pi/180) {
			t.Errorf("%v gives %v mm", change, got)
		}
	}
	rapid.Check(t, func(r *rapid.T) {
		ok := drawn(r)
		deg := func(name string) float64 { return rapid.Float64Range(-10, 10).Draw(r, name) }
		ankle, hip, knee := deg("ankle"), deg("hip"), deg("knee")
		all := ok(ToeClearanceChange(ankle, hip, knee))
		if sum := ok(ToeClearanceChange(ankle, 0, 0)) + ok(ToeClearanceChange(0, hip, 0)) + ok(ToeClearanceChange(0, 0, knee)); !near(all, sum) {
			r.Errorf("%v together, %v one by one", all, sum)
		}
		if back := ok(ToeClearanceChange(-ankle, -hip, -knee)); !near(all, -back) {
			r.Errorf("%v, and %v back", all, back)
		}
		clearance := rapid.Float64Range(0, 29).Draw(r, "clearance")
		if gone := clearance + ok(ToeClearanceChange(-ok(ClearanceLostAt(clearance)), 0, 0)); math.Abs(gone) > 1e-9 {
			r.Errorf("of %v mm, %v are left", clearance, gone)
		}
	})
}
