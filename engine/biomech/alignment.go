package biomech

import "math"

// maxSlope is the largest heel-sole differential for each unit of plate: beyond it a shoe is no shoe.
const maxSlope = 0.5

// PitchAlongPlate is the angle by which a heel-sole differential tilts the foot plate heel up:
//
//	φ = asin(H / L)
//
// H is heel height less forefoot height under the sole, mm; L is measured along the foot plate from the
// heel to the ball, mm; φ in deg. Holds for 0 ≤ H/L ≤ 0.5 and a sole that is rigid from heel to ball.
// Derived: right triangle.
func PitchAlongPlate(differential, plate float64) (float64, error) {
	if err := slope(differential, plate); err != nil {
		return 0, err
	}
	return degrees(math.Asin(differential / plate)), nil
}

func slope(differential, plate float64) error {
	switch {
	case plate <= 0:
		return outside("The length from heel to ball is %s mm; it must be more than nothing.", show(plate))
	case differential < 0 || differential/plate > maxSlope:
		return outside("A heel %s mm above the ball on %s mm of plate is outside of what the pitch holds for: 0 to half of the plate.", show(differential), show(plate))
	}
	return nil
}

func alignment() []*Formula {
	return []*Formula{{
		Name: "pitch_along_plate", Topic: "alignment",
		Params: []Param{{"differential", length}, {"plate", length}}, Result: angle,
		Doc:    "the tilt of the foot plate that a heel-sole differential gives, with the length taken along the plate",
		Writes: "φ = asin(H/L)", Domain: "0 ≤ H/L ≤ 0.5, sole rigid from heel to ball",
		Standing: Derived,
		of: func(in []Value, _ []float64) (Value, error) {
			return number(PitchAlongPlate(in[0].Number, in[1].Number))
		},
	}}
}
