package biomech

import "math"

// sameRange is how far two readings of ankle dorsiflexion may differ without the difference being real, deg:
// BMR-170862 (abstract read), goniometer, children with cerebral palsy, test and retest.
const sameRange = 7.94

// BlockForEquinus is the height under the heel that stands the shank of a fixed equinus upright:
//
//	h = L · sin(−θ)
//
// θ is the ankle angle, deg, dorsiflexion positive, so negative in equinus; L the length from heel to ball
// along the foot plate, mm; h in mm. Holds for −30° ≤ θ ≤ 0° (h/L ≤ 0.5), the ball taken as the pivot. Derived:
// [HeelDifferentialFor] with the shank vertical.
func BlockForEquinus(ankle, plate float64) (float64, error) {
	if err := equinus(ankle); err != nil {
		return 0, err
	}
	return HeelDifferentialFor(0, ankle, plate)
}

// BlockForEquinusHorizontal is [BlockForEquinus] with R, the distance from heel to ball along the floor, mm:
//
//	h = R · tan(−θ)
//
// Holds for −26.57° ≤ θ ≤ 0° (h/R ≤ 0.5). Derived.
func BlockForEquinusHorizontal(ankle, run float64) (float64, error) {
	if err := equinus(ankle); err != nil {
		return 0, err
	}
	return HeelDifferentialForHorizontal(0, ankle, run)
}

func equinus(ankle float64) error {
	if ankle > 0 {
		return outside("An ankle at %s is past plantigrade; a block under the heel is for one that is short of it or just there.", shown(ankle, "°"))
	}
	return nil
}

// FeasibleAnkleAngle is the ankle angle that a device can stand in: the one that is wanted, or the range with
// the knee extended where that is less:
//
//	θ = min(θ wanted, R extended)
//
// Both in deg, dorsiflexion positive. R is taken slowly, knee straight, hindfoot held. Holds from −60° to 60°
// and where the knee is meant to extend in stance; the lean that is lost is made up under the heel
// ([HeelDifferentialFor]). Derived: the gastrocnemius crosses the knee, so more dorsiflexion would bend the
// knee or break the midfoot.
func FeasibleAnkleAngle(wanted, kneeExtended float64) (float64, error) {
	if err := first(between("ankle angle that is wanted", wanted, -maxAnkle, maxAnkle, "°"), ankleRange("extended", kneeExtended)); err != nil {
		return 0, err
	}
	return math.Min(wanted, kneeExtended), nil
}

func ankleRange(knee string, x float64) error {
	return between("dorsiflexion with the knee "+knee, x, -maxAnkle, maxAnkle, "°")
}

// GastrocnemiusOverrun says whether only the bent knee lets the ankle get to an angle: the range with the
// knee extended ends before it, the range with the knee flexed does not.
//
//	R extended < θ ≤ R flexed
//
// All in deg, dorsiflexion positive, from −60° to 60°. A flexed range that is smaller than the extended one by
// more than 7.94°, what two readings may differ by, is a contradiction and an error. Derived; 20° of knee
// bend already frees the gastrocnemius (Baumbach 2014, BMC Musculoskelet Disord 15:246, read).
func GastrocnemiusOverrun(ankle, kneeExtended, kneeFlexed float64) (bool, error) {
	if err := first(between("ankle angle", ankle, -maxAnkle, maxAnkle, "°"), ankleRanges(kneeExtended, kneeFlexed)); err != nil {
		return false, err
	}
	return kneeExtended < ankle && ankle <= kneeFlexed, nil
}

// ankleRanges refuses ranges that contradict each other: bending the knee only slackens the calf.
func ankleRanges(kneeExtended, kneeFlexed float64) error {
	if err := first(ankleRange("extended", kneeExtended), ankleRange("flexed", kneeFlexed)); err != nil {
		return err
	}
	if kneeExtended-kneeFlexed > sameRange {
		return outside("Dorsiflexion of %s with the knee flexed and %s with it extended contradict each other: bending the knee frees the calf. Measure both again.",
			shown(kneeFlexed, "°"), shown(kneeExtended, "°"))
	}
	return nil
}

func casting() []*Formula {
	const (
		baumbach   = "Baumbach 2014, BMC Musculoskelet Disord 15:246: 20° of knee bend frees the gastrocnemius"
		repeatable = "BMR-170862: two readings of ankle dorsiflexion differ by up to 7.94° without a real change"
		both       = "ranges from −60° to 60°; the flexed one not smaller by more than 7.94°, what two readings may differ by"
	)
	return []*Formula{{
		Name: "block_for_equinus", Topic: "alignment",
		Params: []Param{{"ankle_angle", angle}, {"plate", length}}, Result: length,
		Doc:    "the height under the heel that stands the shank of an ankle in equinus upright, with the length taken along the plate",
		Writes: "h = L sin(−θ)", Domain: "−30° ≤ θ ≤ 0°, pivot at the ball", Standing: Derived,
		of: two(BlockForEquinus),
	}, {
		Name: "block_for_equinus_horizontal", Topic: "alignment",
		Params: []Param{{"ankle_angle", angle}, {"run", length}}, Result: length,
		Doc:    "the height under the heel that stands the shank of an ankle in equinus upright, with the length taken along the floor",
		Writes: "h = R tan(−θ)", Domain: "−26.57° ≤ θ ≤ 0°, pivot at the ball", Standing: Derived,
		of: two(BlockForEquinusHorizontal),
	}, {
		Name: "feasible_ankle_angle", Topic: "alignment",
		Params: []Param{{"wanted", angle}, {"knee_extended", angle}}, Result: angle,
		Doc:    "the ankle angle that is wanted, but no more dorsiflexion than the range with the knee extended",
		Writes: "θ = min(θ wanted, R extended)", Domain: "−60° to 60°, knee meant to extend in stance", Standing: Derived, Sources: []string{baumbach},
		of: two(FeasibleAnkleAngle),
	}, {
		Name: "gastrocnemius_overrun", Topic: "alignment",
		Params: []Param{{"ankle_angle", angle}, {"knee_extended", angle}, {"knee_flexed", angle}}, Result: YesNo,
		Doc:    "whether only the bent knee lets the ankle get to an angle",
		Writes: "R extended < θ ≤ R flexed", Domain: both, Standing: Derived, Sources: []string{baumbach, repeatable},
		of: func(in []Value, _ []float64) (Value, error) {
			return yesNo(GastrocnemiusOverrun(in[0].Number, in[1].Number, in[2].Number))
		},
	}}
}

func yesNo(yes bool, err error) (Value, error) {
	if yes {
		return Value{Number: 1}, err
	}
	return Value{}, err
}
