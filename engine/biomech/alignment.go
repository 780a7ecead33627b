package biomech

import (
	"math"
	"slices"
)

const (
	maxSlope = 0.5 // the largest heel-sole differential for each unit of plate: beyond it a shoe is no shoe
	maxPitch = 30  // deg; asin of maxSlope
	maxLean  = 25  // deg either way; beyond it nobody stands
	maxAnkle = 60  // deg either way
)

// The lean of the shank to aim at in standing, deg, and the interval that is accepted. From memory: Owen
// 2010, Prosthet Orthot Int 34:254, a mean of tuned devices near 11° and a range of about 7° to 15°; its
// abstract was read, its figures were not. The normal shank in walking at 30 % of the gait cycle leans so
// much: at natural and slow speed, in adults and in the young, 11° lies within one standard deviation of it
// and 15° within two (Bovi 2011, Gait Posture 33:6, supplement). 7° lies beyond two but in slow adults: it is
// a choice for standing, not a copy of walking.
const (
	ShankTarget      = 11.0
	ShankTargetLeast = 7.0
	ShankTargetMost  = 15.0
)

const (
	cook   = "Cook and Cozzens 1976: the angle of foot to shank and the heel height alone set where the weight line falls"
	signs  = "Eddison 2017, JPO 29:161: shank to vertical, inclined forward positive"
	kerkum = "Kerkum, thesis, p. 57: a lean set in standing is larger in walking, at every heel height"
)

// PitchAlongPlate is the angle by which a heel-sole differential tilts the foot plate heel up:
//
//	φ = asin(H / L)
//
// H is heel height less forefoot height under the sole, mm; L is measured along the foot plate from the
// heel to the ball, mm; φ in deg, positive heel up. Holds for 0 ≤ H/L ≤ 0.5 and a sole that is rigid from
// heel to ball. Derived: right triangle.
func PitchAlongPlate(differential, plate float64) (float64, error) {
	if err := slope(differential, plate); err != nil {
		return 0, err
	}
	return degrees(math.Asin(differential / plate)), nil
}

// PitchHorizontal is the same tilt where the length is taken along the floor:
//
//	φ = atan(H / R)
//
// H is heel height less forefoot height, mm; R is the horizontal distance from the heel to the ball, mm; φ
// in deg. Holds for 0 ≤ H/R ≤ 0.5. Derived: right triangle.
func PitchHorizontal(differential, run float64) (float64, error) {
	if err := slope(differential, run); err != nil {
		return 0, err
	}
	return degrees(math.Atan(differential / run)), nil
}

func slope(differential, plate float64) error {
	if err := first(finite("heel-sole differential", differential), positive("length from heel to ball", plate, "mm")); err != nil {
		return err
	}
	if differential < 0 || differential/plate > maxSlope {
		return outside("A heel %s above the ball on %s of foot plate is outside of what this holds for: 0 to half of the plate.",
			shown(differential, "mm"), shown(plate, "mm"))
	}
	return nil
}

// ShankToVertical is the lean of the shank in standing in a device that does not give, sole flat on the floor:
//
//	SVA = φ + θ
//
// φ is the pitch of the device in the shoe, deg, heel up positive; θ the ankle angle that the device holds,
// deg, dorsiflexion positive. The result is positive leaning forward. Holds for 0° ≤ φ ≤ 30°, −60° ≤ θ ≤
// 60° and a lean of 25° at most either way, heel and ball both loaded; a device that gives leans further by
// the moment over its stiffness. Derived: the sole tilts the shank forward, plantarflexion takes it back.
func ShankToVertical(pitch, ankle float64) (float64, error) {
	if err := first(between("pitch", pitch, 0, maxPitch, "°"), between("ankle angle", ankle, -maxAnkle, maxAnkle, "°")); err != nil {
		return 0, err
	}
	if err := leans(pitch + ankle); err != nil {
		return 0, err
	}
	return pitch + ankle, nil
}

func leans(x float64) error { return between("lean of the shank", x, -maxLean, maxLean, "°") }

// AnkleAngleFor is the ankle angle that the device has to hold for a lean of the shank on a pitch:
//
//	θ = SVA − φ
//
// All in deg, with the signs and the domain of [ShankToVertical], whose inverse it is. Derived.
func AnkleAngleFor(shankToVertical, pitch float64) (float64, error) {
	if err := first(leans(shankToVertical), between("pitch", pitch, 0, maxPitch, "°")); err != nil {
		return 0, err
	}
	return shankToVertical - pitch, nil
}

// HeelDifferentialFor is the heel-sole differential that leans the shank as asked for, or the block for a
// cast that is to stand so:
//
//	H = L · sin(SVA − θ)
//
// SVA is the lean, deg, forward positive; θ the ankle angle, deg, dorsiflexion positive; L the length from
// heel to ball along the foot plate, mm; H in mm. Holds for a lean of 25° at most either way and 0 ≤ H/L ≤
// 0.5: an ankle in more dorsiflexion than the lean needs no heel, and none can bring the shank back. Derived:
// [PitchAlongPlate] and [ShankToVertical] turned round.
func HeelDifferentialFor(shankToVertical, ankle, plate float64) (float64, error) {
	return heelFor(shankToVertical, ankle, plate, math.Sin)
}

// HeelDifferentialForHorizontal is [HeelDifferentialFor] with R, the distance from heel to ball along the
// floor, mm:
//
//	H = R · tan(SVA − θ)
//
// Holds for 0 ≤ H/R ≤ 0.5. Derived.
func HeelDifferentialForHorizontal(shankToVertical, ankle, run float64) (float64, error) {
	return heelFor(shankToVertical, ankle, run, math.Tan)
}

func heelFor(shankToVertical, ankle, length float64, rise func(float64) float64) (float64, error) {
	if err := first(leans(shankToVertical), between("ankle angle", ankle, -maxAnkle, maxAnkle, "°"),
		positive("length from heel to ball", length, "mm")); err != nil {
		return 0, err
	}
	pitch := shankToVertical - ankle
	switch {
	case pitch < 0:
		return 0, outside("With the ankle at %s the shank leans further than %s on a flat sole already; no heel height gives that.",
			shown(ankle, "°"), shown(shankToVertical, "°"))
	case pitch > maxPitch || rise(radians(pitch)) > maxSlope:
		return 0, outside("A lean of %s with the ankle at %s takes a heel higher than half of the foot plate; this holds up to there.",
			shown(shankToVertical, "°"), shown(ankle, "°"))
	}
	return length * rise(radians(pitch)), nil
}

func alignment() []*Formula { return slices.Concat(leaning(), casting(), raising()) }

func leaning() []*Formula {
	const ratio, lean = "0 ≤ H/L ≤ 0.5, sole rigid from heel to ball", "a lean of at most 25° either way, device that does not give, heel and ball loaded"
	return []*Formula{{
		Name: "pitch_along_plate", Topic: "alignment",
		Params: []Param{{"differential", length}, {"plate", length}}, Result: angle,
		Doc:    "the tilt of the foot plate that a heel-sole differential gives, with the length taken along the plate",
		Writes: "φ = asin(H/L)", Domain: ratio, Standing: Derived,
		of: two(PitchAlongPlate),
	}, {
		Name: "pitch_horizontal", Topic: "alignment",
		Params: []Param{{"differential", length}, {"run", length}}, Result: angle,
		Doc:    "the tilt of the foot plate that a heel-sole differential gives, with the length taken along the floor",
		Writes: "φ = atan(H/R)", Domain: "0 ≤ H/R ≤ 0.5, sole rigid from heel to ball", Standing: Derived,
		of: two(PitchHorizontal),
	}, {
		Name: "shank_to_vertical", Topic: "alignment",
		Params: []Param{{"pitch", angle}, {"ankle_angle", angle}}, Result: angle,
		Doc:    "the lean of the shank in standing, forward positive, that a pitch and an ankle angle give",
		Writes: "SVA = φ + θ", Domain: lean, Standing: Derived, Sources: []string{cook, signs, kerkum},
		of: two(ShankToVertical),
	}, {
		Name: "ankle_angle_for", Topic: "alignment",
		Params: []Param{{"shank_to_vertical", angle}, {"pitch", angle}}, Result: angle,
		Doc:    "the ankle angle, dorsiflexion positive, that gives a lean of the shank on a pitch",
		Writes: "θ = SVA − φ", Domain: lean, Standing: Derived, Sources: []string{cook, signs},
		of: two(AnkleAngleFor),
	}, {
		Name: "heel_differential_for", Topic: "alignment",
		Params: []Param{{"shank_to_vertical", angle}, {"ankle_angle", angle}, {"plate", length}}, Result: length,
		Doc:    "the heel-sole differential, or the block under a cast, that gives a lean of the shank, with the length taken along the plate",
		Writes: "H = L sin(SVA − θ)", Domain: lean + ", " + ratio, Standing: Derived, Sources: []string{cook, signs},
		of: three(HeelDifferentialFor),
	}, {
		Name: "heel_differential_for_horizontal", Topic: "alignment",
		Params: []Param{{"shank_to_vertical", angle}, {"ankle_angle", angle}, {"run", length}}, Result: length,
		Doc:    "the heel-sole differential that gives a lean of the shank, with the length taken along the floor",
		Writes: "H = R tan(SVA − θ)", Domain: lean + ", 0 ≤ H/R ≤ 0.5", Standing: Derived, Sources: []string{cook, signs},
		of: three(HeelDifferentialForHorizontal),
	}}
}
