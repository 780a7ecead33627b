package biomech

// What is known of the foot in swing. The masses of the foot differ between tables by more than their
// last digit; the spread of the four that were seen is taken as the uncertainty.
func footMass() Constant {
	return Constant{Name: "mass of the foot for each kilogram of the body", Value: footShare, U: 0.00055, Unit: "kg/kg",
		Source: "Dempster and Winter; 0.0137 (de Leva), 0.0143 and 0.0133 (Plagenhoef, men and women) give the spread"}
}

const footShare = 0.0145

// FootMoment is the moment about the ankle with which the weight of the foot, and of what is on it, pulls
// into plantarflexion while the sole is level:
//
//	M = (0.0145 m + a) g l
//
// m is the mass of the body, kg; a the mass of shoe and device, kg, 0 or more; l the distance from the
// ankle forward to the centre of mass, mm (half way from malleolus to second metatarsal head for the bare
// foot); g = 9.80665 m/s²; M in N·m, positive where it plantarflexes. Holds for positive m and l. Read: the
// table of Dempster and Winter. It agrees with the dorsiflexing moment measured in swing, 0.006 to 0.017
// N·m/kg (Schwartz 2008, J Biomech 41:1639, supplement).
func FootMoment(bodyMass, addedMass, centreDistance float64) (float64, error) {
	return footMoment(footShare, bodyMass, addedMass, centreDistance)
}

func footMoment(share, bodyMass, addedMass, centreDistance float64) (float64, error) {
	const heavy = 20 // kg on one foot
	if err := first(positive("body mass", bodyMass, "kg"), between("mass of shoe and device", addedMass, 0, heavy, "kg"),
		positive("distance from ankle to centre of mass", centreDistance, "mm")); err != nil {
		return 0, err
	}
	return (share*bodyMass + addedMass) * Gravity * centreDistance / 1000, nil
}

// Moments with which a hinged device resisted plantarflexion, N·m for each kilogram of the body, that kept
// ankles in dorsiflexion and knees flexed after stroke, with their standard deviations: Kobayashi 2017,
// abstract read.
func resistance(name string, value, u float64) Constant {
	return Constant{Name: name, Value: value, U: u, Unit: "N·m/kg", Source: "Kobayashi 2017, moment of a hinged device after stroke: 0.029 (SD 0.011) to 0.062 (SD 0.019) N·m/kg"}
}

const leastResistance, mostResistance = 0.029, 0.062

// SwingResistanceLeast is the lower stiffness against plantarflexion that holds the foot up:
//
//	K = 0.029 m / Δθ
//
// m is the mass of the body, kg; Δθ how far the device may give into plantarflexion, deg, as a positive
// number; K in N·m/deg. Holds for positive m and 0° < Δθ ≤ 60°. Read: Kobayashi 2017, people after stroke,
// 0.029 N·m/kg, SD 0.011; that is three times the weight of the foot alone.
func SwingResistanceLeast(bodyMass, plantarflexion float64) (float64, error) {
	return swingResistance(leastResistance, bodyMass, plantarflexion)
}

// SwingResistanceMost is the upper one, in the same terms:
//
//	K = 0.062 m / Δθ
//
// Read: Kobayashi 2017, 0.062 N·m/kg, SD 0.019.
func SwingResistanceMost(bodyMass, plantarflexion float64) (float64, error) {
	return swingResistance(mostResistance, bodyMass, plantarflexion)
}

func swingResistance(forKilogram, bodyMass, plantarflexion float64) (float64, error) {
	if err := first(positive("body mass", bodyMass, "kg"), positive("plantarflexion that is given way", plantarflexion, "°"),
		between("plantarflexion that is given way", plantarflexion, 0, maxAnkle, "°")); err != nil {
		return 0, err
	}
	return forKilogram * bodyMass / plantarflexion, nil
}

// clearance holds what one radian at a joint does to the clearance under the toe, mm, ten able-bodied people.
// Their spread was not read; the uncertainty is that of the last digit alone.
const ankleClearance, hipClearance, kneeClearance = 171, 95, 25

func clearance(joint string, value float64) Constant {
	return Constant{Name: "clearance under the toe for each radian at the " + joint, Value: value, U: 0.3, Unit: "mm/rad",
		Source: "Moosabhoy and Gard 2006, n = 10: ankle 17.1, hip 9.5, knee 2.5 cm/rad; the uncertainty is that of the last digit"}
}

const maxSwing = 10 // deg; the slopes are taken at one point of swing

// ToeClearanceChange is what small changes of the joints do to the least clearance under the toe in swing:
//
//	Δc = 171 Δankle + 95 Δhip + 25 Δknee   (angles in rad)
//
// The changes go in in deg, dorsiflexion and flexion positive; Δc in mm, positive for more clearance. Holds
// for changes of up to 10° either way, near mid-swing, without hitching or circumduction. Read: Moosabhoy
// and Gard 2006, slopes 17.1, 9.5 and 2.5 cm/rad, ten able-bodied people.
func ToeClearanceChange(ankle, hip, knee float64) (float64, error) {
	return toeClearance(ankleClearance, hipClearance, kneeClearance, ankle, hip, knee)
}

func toeClearance(ofAnkle, ofHip, ofKnee, ankle, hip, knee float64) (float64, error) {
	if err := first(between("change at the ankle", ankle, -maxSwing, maxSwing, "°"), between("change at the hip", hip, -maxSwing, maxSwing, "°"),
		between("change at the knee", knee, -maxSwing, maxSwing, "°")); err != nil {
		return 0, err
	}
	return ofAnkle*radians(ankle) + ofHip*radians(hip) + ofKnee*radians(knee), nil
}

// ClearanceLostAt is the plantarflexion in swing, beyond the usual, at which a clearance under the toe is gone:
//
//	Δθ = c / 171   (in rad)
//
// c is the clearance, mm; the result in deg, as a positive number of degrees of plantarflexion. Holds up to
// 10°, so for 0 ≤ c ≤ 29.8 mm, with hip and knee as they were. Read: the slope of [ToeClearanceChange], whose
// inverse it is. A usual clearance is 19 mm, SD 5 (same source), which is gone at 6.4°.
func ClearanceLostAt(clearance float64) (float64, error) { return lostAt(ankleClearance, clearance) }

func lostAt(ofAnkle, clearance float64) (float64, error) {
	if err := between("clearance under the toe", clearance, 0, ankleClearance*radians(maxSwing), "mm"); err != nil {
		return 0, err
	}
	return degrees(clearance / ofAnkle), nil
}

func swing() []*Formula {
	const tables = "table of Dempster and Winter: the foot has 0.0145 of the mass, its centre half way from malleolus to second metatarsal head"
	const kobayashi = "Kobayashi 2017: moment of a hinged device in people after stroke"
	const moosabhoy = "Moosabhoy and Gard 2006: toe clearance and the joints in swing, n = 10"
	return []*Formula{{
		Name: "foot_moment", Topic: "swing",
		Params: []Param{{"body_mass", mass}, {"added_mass", mass}, {"centre_distance", length}}, Result: moment,
		Doc:    "the moment with which the weight of foot, shoe and device pulls into plantarflexion",
		Writes: "M = (0.0145 m + a) g l", Domain: "positive mass and distance, at most 20 kg on the foot, sole level", Standing: Read,
		Sources: []string{tables}, Constants: []Constant{footMass()},
		of: func(in []Value, k []float64) (Value, error) {
			return number(footMoment(k[0], in[0].Number, in[1].Number, in[2].Number))
		},
	}, {
		Name: "swing_resistance_least", Topic: "swing",
		Params: []Param{{"body_mass", mass}, {"plantarflexion", angle}}, Result: stiffness,
		Doc:    "the lower stiffness against plantarflexion that holds the foot up within some degrees",
		Writes: "K = 0.029 m / Δθ", Domain: "0° < Δθ ≤ 60°; found in people after stroke", Standing: Read,
		Sources: []string{kobayashi}, Constants: []Constant{resistance("least resistance for each kilogram", leastResistance, 0.011)},
		of: resisting,
	}, {
		Name: "swing_resistance_most", Topic: "swing",
		Params: []Param{{"body_mass", mass}, {"plantarflexion", angle}}, Result: stiffness,
		Doc:    "the upper stiffness against plantarflexion that holds the foot up within some degrees",
		Writes: "K = 0.062 m / Δθ", Domain: "0° < Δθ ≤ 60°; found in people after stroke", Standing: Read,
		Sources: []string{kobayashi}, Constants: []Constant{resistance("most resistance for each kilogram", mostResistance, 0.019)},
		of: resisting,
	}, {
		Name: "toe_clearance_change", Topic: "swing",
		Params: []Param{{"ankle", angle}, {"hip", angle}, {"knee", angle}}, Result: length,
		Doc:    "what small changes of the joints in swing do to the clearance under the toe",
		Writes: "Δc = 171 Δankle + 95 Δhip + 25 Δknee", Domain: "changes of up to 10° either way; able-bodied swing", Standing: Read,
		Sources: []string{moosabhoy}, Constants: []Constant{clearance("ankle", ankleClearance), clearance("hip", hipClearance), clearance("knee", kneeClearance)},
		of: func(in []Value, k []float64) (Value, error) {
			return number(toeClearance(k[0], k[1], k[2], in[0].Number, in[1].Number, in[2].Number))
		},
	}, {
		Name: "clearance_lost_at", Topic: "swing",
		Params: []Param{{"clearance", length}}, Result: angle,
		Doc:    "the degrees of plantarflexion in swing, as a positive number, at which a clearance under the toe is gone",
		Writes: "Δθ = c / 171", Domain: "0 ≤ c ≤ 29.8 mm, hip and knee as they were; able-bodied swing", Standing: Read,
		Sources: []string{moosabhoy}, Constants: []Constant{clearance("ankle", ankleClearance)},
		of: func(in []Value, k []float64) (Value, error) { return number(lostAt(k[0], in[0].Number)) },
	}}
}

func resisting(in []Value, k []float64) (Value, error) {
	return number(swingResistance(k[0], in[0].Number, in[1].Number))
}
