package biomech

import "math"

// walkerSpread is the standard deviation of the peak moment between walkers of one group of speed, relative to
// the group's mean: 0.17 to 0.24, 0.20 on average over the five groups of Schwartz 2008.
const walkerSpread = 0.20

// speedGroup is a group of walkers: its mean dimensionless speed and its mean peak moment for each kilogram.
type speedGroup struct{ speed, moment float64 }

// speedGroups are the groups of Schwartz 2008 from very slow to very fast, N·m/kg.
func speedGroups() [5]speedGroup {
	return [...]speedGroup{{0.1721, 1.0548}, {0.2902, 1.1253}, {0.4294, 1.2162}, {0.5599, 1.2808}, {0.6938, 1.2842}}
}

// DimensionlessSpeed is walking speed for the length of the leg, by which walkers of different size compare:
//
//	v* = v / √(g · l)
//
// v in m/s, not negative; l the length of the leg, mm; g is [Gravity]; v* a ratio. By definition (Schwartz 2008).
func DimensionlessSpeed(walking, leg float64) (float64, error) {
	if err := first(notNegative("walking speed", walking, "m/s"), positive("length of the leg", leg, "mm")); err != nil {
		return 0, err
	}
	return small(walking / math.Sqrt(Gravity*leg/1000))
}

// PeakMomentAt is the greatest internal plantarflexion moment for each kilogram at a dimensionless speed, N·m/kg:
// straight between the means of the five groups of Schwartz 2008 (read), so it holds from 0.1721 to 0.6938.
func PeakMomentAt(dimensionless float64) (float64, error) {
	groups := speedGroups()
	lo, hi := groups[0].speed, groups[len(groups)-1].speed
	if err := finite("walking speed", dimensionless); err != nil {
		return 0, err
	}
	if dimensionless < lo || dimensionless > hi {
		return 0, outside("The walking speed for the length of the leg is %.4f (v/√(g·leg)); the groups that were measured walked at means of %.4f to %.4f.", dimensionless, lo, hi)
	}
	i := 1
	for dimensionless > groups[i].speed {
		i++
	}
	a, b := groups[i-1], groups[i]
	return a.moment + (dimensionless-a.speed)/(b.speed-a.speed)*(b.moment-a.moment), nil
}

// PeakAnkleMomentAt is the greatest internal plantarflexion moment in stance at a walking speed:
//
//	m = w · m₁(v*) · M
//
// M is body mass, kg; v the speed, m/s, and l the length of the leg, mm, that make v* ([DimensionlessSpeed]); m₁
// is [PeakMomentAt]; w is this walker against the mean of the group, 1 where no more is known; m in N·m, without
// sign. Holds for 0.1721 ≤ v* ≤ 0.6938. Read: Schwartz 2008, 83 children; interpolated.
func PeakAnkleMomentAt(walker, bodyMass, walking, leg float64) (float64, error) {
	v, err := DimensionlessSpeed(walking, leg)
	if err := first(err, positive("walker's share of the mean", walker, ""), positive("body mass", bodyMass, "kg")); err != nil {
		return 0, err
	}
	perKilogram, err := PeakMomentAt(v)
	if err != nil {
		return 0, err
	}
	return small(walker * perKilogram * bodyMass)
}

func walker() Constant {
	return Constant{"this walker against the mean of the group", 1, walkerSpread, "", schwartz}
}
