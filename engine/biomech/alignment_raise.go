package biomech

import "math"

// AnkleRise is how far a raise under the heel alone lifts the ankle, the forefoot staying on the ground:
//
//	Δz = x sin φ + z (cos φ − 1), φ = asin(h / L)
//
// h is the raise, mm; L the length from heel to ball along the foot plate, mm; x how far the ankle is behind
// the ball, mm, at most L; z how high it is over the sole, mm, at most x; Δz in mm, about h·x/L and so
// nearer to seven tenths of the raise than to all of it. Holds for 0 ≤ h/L ≤ 0.5; within this domain a higher
// heel always lifts the ankle more. Derived: the foot turns rigidly about the ball.
func AnkleRise(heelRaise, plate, ankleToBall, ankleHeight float64) (float64, error) {
	pitch, err := PitchAlongPlate(heelRaise, plate)
	if err := first(err, positive("distance from ankle to ball", ankleToBall, "mm"), positive("height of the ankle", ankleHeight, "mm")); err != nil {
		return 0, err
	}
	switch {
	case ankleToBall > plate:
		return 0, outside("The ankle is %s behind the ball and the heel %s; the ankle lies in front of the heel.", shown(ankleToBall, "mm"), shown(plate, "mm"))
	case ankleHeight > ankleToBall:
		return 0, outside("The ankle is %s high and %s behind the ball; this holds up to as high as it is behind.", shown(ankleHeight, "mm"), shown(ankleToBall, "mm"))
	}
	s, c := math.Sincos(radians(pitch))
	return ankleToBall*s + ankleHeight*(c-1), nil
}

// OppositeRaise is what levels the other side after a device and a heel raise on this one:
//
//	raise = Δz + t − s − d
//
// Δz is the rise of the ankle on the braced side ([AnkleRise]), mm, 0 or more; t the thickness of device and
// sole under its ball, mm; s that of the sole on the other side, mm; d how much shorter the braced leg is,
// mm, negative where it is the longer. The result in mm is negative where it is the braced side that still
// stands lower. Clearance in swing is not in it. Leg lengths agree poorly between observers (Jarvis 2012, J
// Foot Ankle Res 5:14, read): no more than whole millimetres mean anything. Derived: a sum.
func OppositeRaise(ankleRise, deviceAndSole, oppositeSole, thisSideShort float64) (float64, error) {
	const sole, leg = 200, 300 // mm; no raise and no difference in length is so large
	if err := first(between("rise of the ankle", ankleRise, 0, sole, "mm"), between("thickness under the ball", deviceAndSole, 0, sole, "mm"),
		between("sole on the opposite side", oppositeSole, 0, sole, "mm"), between("shortness of this side", thisSideShort, -leg, leg, "mm")); err != nil {
		return 0, err
	}
	return ankleRise + deviceAndSole - oppositeSole - thisSideShort, nil
}

func raising() []*Formula {
	return []*Formula{{
		Name: "ankle_rise", Topic: "alignment",
		Params: []Param{{"heel_raise", length}, {"plate", length}, {"ankle_to_ball", length}, {"ankle_height", length}}, Result: length,
		Doc:    "how far a raise under the heel lifts the ankle while the forefoot stays on the ground",
		Writes: "Δz = x sin φ + z (cos φ − 1), φ = asin(h/L)", Domain: "0 ≤ h/L ≤ 0.5, z ≤ x ≤ L", Standing: Derived,
		of: four(AnkleRise),
	}, {
		Name: "opposite_raise", Topic: "alignment",
		Params: []Param{{"ankle_rise", length}, {"device_and_sole", length}, {"opposite_sole", length}, {"this_side_short", length}}, Result: length,
		Doc:    "the raise that levels the other side; negative where the braced side still stands lower",
		Writes: "raise = Δz + t − s − d", Domain: "thicknesses of 0 to 200 mm, legs that differ by at most 300 mm; clearance in swing is not in it", Standing: Derived,
		Sources: []string{"Mohapatra 2012, n = 11, as reported by homeafterstroke.blogspot.com: an insert on the sound side as thick as the device improved speed and symmetry",
			"Jarvis 2012, J Foot Ankle Res 5:14: observers agree poorly on limb length"},
		of: four(OppositeRaise),
	}}
}
