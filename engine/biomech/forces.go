package biomech

import (
	"math"
	"slices"
)

// LeverForce is the force that gives a moment at a lever:
//
//	F = M / L
//
// M is the moment about the joint, N·m, without sign; L the distance from the joint's centre to the line of the
// force, mm, more than 0; F in N. Derived.
func LeverForce(moment, lever float64) (float64, error) {
	if err := first(notNegative("moment", moment, "N·m"), positive("lever", lever, "mm")); err != nil {
		return 0, err
	}
	return small(moment / (lever / 1000))
}

// LeverForceRatio is how many times as large the force gets with another lever, for the same moment:
//
//	F₂/F₁ = L₁/L₂
//
// Levers in mm, more than 0; a ratio. Derived.
func LeverForceRatio(lever, newLever float64) (float64, error) {
	if err := first(positive("lever", lever, "mm"), positive("new lever", newLever, "mm")); err != nil {
		return 0, err
	}
	return small(lever / newLever)
}

// Parallel is a three-point system of parallel forces, N: two outer ones one way, the middle one at the joint
// the other way.
type Parallel struct{ Outer, OtherOuter, Middle float64 }

// ThreePointParallel holds a moment at a joint between straight segments by three parallel forces:
//
//	F₁ = M/a    F₃ = M/b    F₂ = F₁ + F₃
//
// M in N·m, without sign; a and b the distances of the outer forces from the joint, mm; forces in N. Holds in the
// frontal plane (varus, valgus), the forces across the limb. Derived: the sums of forces and moments are nothing.
func ThreePointParallel(moment, arm, otherArm float64) (Parallel, error) {
	outer, err := LeverForce(moment, arm)
	other, err2 := LeverForce(moment, otherArm)
	middle, err3 := small(outer + other)
	if err := first(err, err2, err3); err != nil {
		return Parallel{}, err
	}
	return Parallel{outer, other, middle}, nil
}

// Bent is a three-point system whose outer forces stand across the shank and across the foot, N.
type Bent struct {
	Shank, Forefoot float64
	Ankle           float64 // the closing force, through the ankle's centre
	Direction       float64 // of the closing force's line, deg above the floor when the shank is upright
}

// ThreePointBent holds a moment at the ankle by a force across the shank, one across the foot plate, and one
// through the ankle's centre that closes the triangle:
//
//	F_s = M/L_s    F_f = M/L_f    F_a² = F_s² + F_f² − 2 F_s F_f sin θ
//	direction = atan(F_f cos θ / (F_s − F_f sin θ))
//
// M in N·m, more than 0, without sign; L_s from the ankle's centre up the shank, L_f along the foot plate to where
// the force meets it, mm; θ the ankle angle, deg, dorsiflexion positive, from −60° to 60°; forces in N. A closing
// force whose line misses the centre by e adds F_a·e to M. Derived: the sums of forces and moments are nothing; at
// −90° it would be [ThreePointParallel].
func ThreePointBent(moment, shankLever, forefootLever, ankle float64) (Bent, error) {
	shank, err := LeverForce(moment, shankLever)
	forefoot, err2 := LeverForce(moment, forefootLever)
	if err := first(positive("moment", moment, "N·m"), err, err2, between("ankle angle", ankle, -maxAnkle, maxAnkle, "°")); err != nil {
		return Bent{}, err
	}
	sin, cos := math.Sincos(radians(ankle))
	forward, up := shank-forefoot*sin, forefoot*cos
	closing, err := small(math.Hypot(forward, up))
	return Bent{shank, forefoot, closing, degrees(math.Atan2(up, forward))}, err
}

func forces() []*Formula { return slices.Concat(threePoint(), pressures()) }

func threePoint() []*Formula {
	const (
		across   = "M ≥ 0, levers > 0; forces across straight segments, in the frontal plane"
		alone    = "M ≥ 0, lever > 0; force across the segment"
		bent     = "M > 0, levers > 0, −60° ≤ θ ≤ 60°; the closing force goes through the ankle's centre"
		statics  = "Three-point force systems: a force between two counter-forces, their sums nothing; a longer lever takes less force"
		shank    = "for equinus and recurvatum the calf forward, for crouch the shin back"
		closes   = "F_a² = F_s² + F_f² − 2 F_s F_f sin θ"
		closing  = "on the instep for equinus and recurvatum, on the heel for crouch"
		readings = "A cadaver study of heel rise found 56 to 90 N on the dorsum by where the strap lay (Prosthet Orthot Int, 10.1177/0309364614532864, abstract read)"
	)
	system := []Param{{"moment", moment}, {"shank_lever", length}, {"forefoot_lever", length}, {"ankle_angle", angle}}
	sources := []string{statics}
	return []*Formula{{
		Name: "three_point_outer_force", Topic: "forces",
		Params: []Param{{"moment", moment}, {"arm", length}}, Result: force,
		Doc:    "an outer force of a parallel three-point system, for varus or valgus",
		Writes: "F = M/a", Domain: across, Standing: Derived, Sources: sources,
		of: two(LeverForce),
	}, {
		Name: "three_point_middle_force", Topic: "forces",
		Params: []Param{{"moment", moment}, {"arm", length}, {"other_arm", length}}, Result: force,
		Doc:    "the force at the joint of a parallel three-point system, for varus or valgus",
		Writes: "F = M/a + M/b", Domain: across, Standing: Derived, Sources: sources,
		of: three(func(moment, arm, otherArm float64) (float64, error) {
			s, err := ThreePointParallel(moment, arm, otherArm)
			return s.Middle, err
		}),
	}, {
		Name: "bent_shank_force", Topic: "forces",
		Params: []Param{{"moment", moment}, {"shank_lever", length}}, Result: force,
		Doc:    "the force on the shank of a three-point system about the ankle: " + shank,
		Writes: "F_s = M/L_s", Domain: alone, Standing: Derived, Sources: sources,
		of: two(LeverForce),
	}, {
		Name: "bent_forefoot_force", Topic: "forces",
		Params: []Param{{"moment", moment}, {"forefoot_lever", length}}, Result: force,
		Doc:    "the force up on the foot plate under the forefoot of a three-point system about the ankle",
		Writes: "F_f = M/L_f", Domain: alone, Standing: Derived, Sources: sources,
		of: two(LeverForce),
	}, {
		Name: "bent_ankle_force", Topic: "forces", Params: system, Result: force,
		Doc:    "the force that closes a three-point system about the ankle, " + closing,
		Writes: closes, Domain: bent, Standing: Derived, Sources: []string{statics, readings},
		of: four(func(moment, shankLever, forefootLever, ankle float64) (float64, error) {
			s, err := ThreePointBent(moment, shankLever, forefootLever, ankle)
			return s.Ankle, err
		}),
	}, {
		Name: "bent_ankle_direction", Topic: "forces", Params: system, Result: angle,
		Doc:    "the slope above the floor, with the shank upright, of the force that closes a three-point system about the ankle",
		Writes: "atan(F_f cos θ/(F_s − F_f sin θ))", Domain: bent, Standing: Derived, Sources: sources,
		of: four(func(moment, shankLever, forefootLever, ankle float64) (float64, error) {
			s, err := ThreePointBent(moment, shankLever, forefootLever, ankle)
			return s.Direction, err
		}),
	}, {
		Name: "lever_force_ratio", Topic: "forces",
		Params: []Param{{"lever", length}, {"new_lever", length}}, Result: ratio,
		Doc:    "how many times as large a force gets with another lever for the same moment",
		Writes: "F₂/F₁ = L₁/L₂", Domain: "levers > 0, the same moment", Standing: Derived, Sources: sources,
		of: two(LeverForceRatio),
	}}
}
