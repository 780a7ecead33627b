package biomech

import "slices"

// Figures that the formulas of stiffness rest on, each with its standard uncertainty.
const (
	// NormalStiffness1 is the slope of the ankle's moment over its angle while a healthy person rolls over the
	// foot, for each kilogram of body mass, N·m/(kg·deg): the mean over eleven groups of children and adults, whose
	// slopes differ by 0.005 (standard deviation). Walkers differ more than groups; a fifth is taken for one walker.
	NormalStiffness1  = 0.068
	uNormalStiffness1 = 0.2 * NormalStiffness1

	// PeakMoment1 is the greatest internal plantarflexion moment at the speed that children choose, for each
	// kilogram, N·m/kg, with its standard deviation between them.
	PeakMoment1  = 1.216
	uPeakMoment1 = 0.226

	// DorsiflexionSlope and PowerSlope say how the greatest dorsiflexion, deg, and the ankle's peak power,
	// W/kg, change with each N·m/deg of a device, between doseLeast and doseMost, N·m/deg.
	DorsiflexionSlope, uDorsiflexionSlope = -1.1, 0.1
	PowerSlope, uPowerSlope               = -0.09, 0.01
	doseLeast, doseMost                   = 2.8, 6.6
)

const (
	schwartz = "Schwartz 2008, J Biomech 41:1639, electronic addendum: 83 children of 4 to 17 years, barefoot, at five speeds"
	bovi     = "Bovi 2011, Gait Posture 33:6, electronic addendum: 20 adults and 20 children, barefoot, at several speeds"
	waterval = "Waterval 2019, J Neuroeng Rehabil 16:120: 37 adults with weak calves without spasticity, dorsal leaf of 2.8 to 6.6 N·m/°"
	arch     = "Arch 2016, J Prosthet Orthot 28:60 (abstract): a device's moment adds to the wearer's own; the exact formula was not seen"
)

// NormalStiffness is the ankle's quasi-stiffness in normal stance, by body mass:
//
//	K = k · M
//
// M is body mass, kg; k the stiffness for each kilogram, N·m/(kg·deg), [NormalStiffness1] for a walker of whom no
// more is known; K in N·m/deg. It is a slope of a healthy gait, barefoot, from 4 years on, at slow to chosen
// speed: not the stiffness of any material. The true course is steeper late than early (0.107 against 0.030).
// Derived: ordinary least squares on the mean curves of Schwartz 2008 and Bovi 2011.
func NormalStiffness(perKilogram, bodyMass float64) (float64, error) {
	return forMass("stiffness for each kilogram", perKilogram, bodyMass)
}

// PeakAnkleMoment is the greatest internal plantarflexion moment in stance, by body mass:
//
//	m = m₁ · M
//
// M is body mass, kg; m₁ the moment for each kilogram, N·m/kg, [PeakMoment1] at the speed a walker chooses; m in
// N·m, plantarflexing, without sign. Healthy walkers, barefoot. Read: Schwartz 2008.
func PeakAnkleMoment(perKilogram, bodyMass float64) (float64, error) {
	return forMass("moment for each kilogram", perKilogram, bodyMass)
}

func forMass(what string, perKilogram, bodyMass float64) (float64, error) {
	if err := first(positive(what, perKilogram, ""), positive("body mass", bodyMass, "kg")); err != nil {
		return 0, err
	}
	return small(perKilogram * bodyMass)
}

// StiffnessDemand is the stiffness that a device owes to an ankle that has lost some of its own moment:
//
//	K = k · M · (1 − r)
//
// k and M as in [NormalStiffness]; r is what is left of the plantarflexors' normal moment, a ratio from 0 to 1,
// known at best as an [Interval]; K in N·m/deg. Derived: the device bears the share that the muscle does not.
func StiffnessDemand(perKilogram, bodyMass, residual float64) (float64, error) {
	normal, err := NormalStiffness(perKilogram, bodyMass)
	if err := first(err, between("share of the normal moment that is left", residual, 0, 1, "")); err != nil {
		return 0, err
	}
	return normal * (1 - residual), nil
}

// StiffnessFromDeficit is the stiffness that makes up what is missing of a moment over the dorsiflexion that
// loads the device:
//
//	K = (m needed − m own) / Δθ
//
// Moments in N·m, plantarflexing, without sign; Δθ the dorsiflexion from where the device is unloaded to the
// greatest load, deg; K in N·m/deg. Holds for 0 ≤ m own ≤ m needed and Δθ > 0. Derived; the idea that the
// device's moment adds to the wearer's is of Arch 2016 (abstract read).
func StiffnessFromDeficit(needed, own, dorsiflexion float64) (float64, error) {
	if err := first(positive("moment that is needed", needed, "N·m"), notNegative("wearer's own moment", own, "N·m"),
		positive("dorsiflexion that loads the device", dorsiflexion, "°")); err != nil {
		return 0, err
	}
	if own > needed {
		return 0, outside("The wearer's own %s are more than the %s that are needed: nothing is missing that a device could make up.",
			shown(own, "N·m"), shown(needed, "N·m"))
	}
	return small((needed - own) / dorsiflexion)
}

// DorsiflexionChange is how the greatest dorsiflexion in stance changes from a device of one stiffness to
// another:
//
//	Δθ = s · (K₂ − K₁)
//
// K in N·m/deg, both from 2.8 to 6.6; s the slope, deg for each N·m/deg, [DorsiflexionSlope]; Δθ in deg,
// positive towards dorsiflexion. Adults with weak calves without spasticity, dorsal leaf. Read: Waterval 2019.
func DorsiflexionChange(slope, from, to float64) (float64, error) { return dose(slope, from, to) }

// PowerChange is how the ankle's peak power at push-off changes from a device of one stiffness to another:
//
//	ΔP = s · (K₂ − K₁)
//
// with s in W/kg for each N·m/deg, [PowerSlope], ΔP in W/kg, and all else as in [DorsiflexionChange].
// Read: Waterval 2019.
func PowerChange(slope, from, to float64) (float64, error) { return dose(slope, from, to) }

func dose(slope, from, to float64) (float64, error) {
	if err := first(finite("slope", slope), between("first stiffness", from, doseLeast, doseMost, "N·m/°"),
		between("second stiffness", to, doseLeast, doseMost, "N·m/°")); err != nil {
		return 0, err
	}
	return small(slope * (to - from))
}

func stiffnesses() []*Formula {
	return slices.Concat(normal(), capacity(), demand(), strut())
}

func normal() []*Formula {
	return []*Formula{{
		Name: "normal_stiffness", Topic: "stiffness",
		Params: []Param{{"body_mass", mass}}, Result: stiffness,
		Doc:    "the stiffness of a normal ankle that rolls over its foot, by body mass",
		Writes: "K = k M, k = 0.068 N·m/(kg·°)", Domain: "healthy gait from 4 years on, barefoot, slow to chosen speed; a slope, not the stiffness of a material",
		Standing: Derived, Sources: []string{schwartz, bovi}, Constants: []Constant{stiffness1()},
		of: func(in []Value, k []float64) (Value, error) { return number(NormalStiffness(k[0], in[0].Number)) },
	}, {
		Name: "peak_ankle_moment", Topic: "stiffness",
		Params: []Param{{"body_mass", mass}}, Result: moment,
		Doc:    "the greatest plantarflexion moment of a normal ankle in stance, by body mass",
		Writes: "m = m₁ M, m₁ = 1.216 N·m/kg", Domain: "healthy gait, barefoot, at the speed that is chosen",
		Standing: Read, Sources: []string{schwartz}, Constants: []Constant{moment1()},
		of: func(in []Value, k []float64) (Value, error) { return number(PeakAnkleMoment(k[0], in[0].Number)) },
	}, {
		Name: "peak_ankle_moment_at", Topic: "stiffness",
		Params: []Param{{"body_mass", mass}, {"speed", speed}, {"leg_length", length}}, Result: moment,
		Doc:    "the greatest plantarflexion moment of a normal ankle in stance, by body mass, at a walking speed for the length of the leg",
		Writes: "m = w m₁(v*) M, v* = v/√(g l), m₁ straight between the groups' means", Domain: "0.1721 ≤ v* ≤ 0.6938; healthy gait, barefoot",
		Standing: Read, Sources: []string{schwartz}, Constants: []Constant{walker()},
		of: func(in []Value, k []float64) (Value, error) {
			return number(PeakAnkleMomentAt(k[0], in[0].Number, in[1].Number, in[2].Number))
		},
	}}
}

func demand() []*Formula {
	const dosed = "both from 2.8 to 6.6 N·m/°; weak calf without spasticity, dorsal leaf"
	return []*Formula{{
		Name: "stiffness_demand", Topic: "stiffness",
		Params: []Param{{"body_mass", mass}, {"residual", ratio}}, Result: stiffness,
		Doc:    "the stiffness that a device owes to an ankle of which a share of the normal moment is left",
		Writes: "K = k M (1 − r), k = 0.068 N·m/(kg·°)", Domain: "0 ≤ r ≤ 1; what normal_stiffness holds for",
		Standing: Derived, Sources: []string{schwartz, bovi}, Constants: []Constant{stiffness1()},
		of: func(in []Value, k []float64) (Value, error) {
			return number(StiffnessDemand(k[0], in[0].Number, in[1].Number))
		},
	}, {
		Name: "stiffness_from_deficit", Topic: "stiffness",
		Params: []Param{{"needed", moment}, {"own", moment}, {"dorsiflexion", angle}}, Result: stiffness,
		Doc:    "the stiffness that makes up the missing part of a moment over the dorsiflexion that loads the device",
		Writes: "K = (m needed − m own)/Δθ", Domain: "0 ≤ m own ≤ m needed, Δθ > 0", Standing: Derived, Sources: []string{arch},
		of: three(StiffnessFromDeficit),
	}, {
		Name: "dorsiflexion_change", Topic: "stiffness",
		Params: []Param{{"from", stiffness}, {"to", stiffness}}, Result: angle,
		Doc:    "the change of the greatest dorsiflexion in stance from a device of one stiffness to another",
		Writes: "Δθ = −1.1° (K₂ − K₁)/(N·m/°)", Domain: dosed, Standing: Read, Sources: []string{waterval},
		Constants: []Constant{{"dorsiflexion for each N·m/°", DorsiflexionSlope, uDorsiflexionSlope, "°/(N·m/°)", waterval}},
		of: func(in []Value, k []float64) (Value, error) {
			return number(DorsiflexionChange(k[0], in[0].Number, in[1].Number))
		},
	}, {
		Name: "power_change", Topic: "stiffness",
		Params: []Param{{"from", stiffness}, {"to", stiffness}}, Result: power,
		Doc:    "the change of the ankle's peak power at push-off from a device of one stiffness to another",
		Writes: "ΔP = −0.09 W/kg (K₂ − K₁)/(N·m/°)", Domain: dosed, Standing: Read, Sources: []string{waterval},
		Constants: []Constant{{"power for each N·m/°", PowerSlope, uPowerSlope, "(W/kg)/(N·m/°)", waterval}},
		of: func(in []Value, k []float64) (Value, error) {
			return number(PowerChange(k[0], in[0].Number, in[1].Number))
		},
	}}
}

func stiffness1() Constant {
	return Constant{"stiffness for each kilogram", NormalStiffness1, uNormalStiffness1, "N·m/(kg·°)", schwartz + "; " + bovi}
}

func moment1() Constant {
	return Constant{"peak moment for each kilogram", PeakMoment1, uPeakMoment1, "N·m/kg", schwartz}
}
