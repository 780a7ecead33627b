package biomech

import "math"

// slender is how many times its thickness a strut must be long at least, to bend as a beam without shear.
const slender = 10

// maxBend is the largest rotation of a strut, deg: its shells would stand at right angles.
const maxBend = 90

// maxLayers is more layers than any strut has.
const maxLayers = 1000

// Beam is a straight strut that is held at one end: a beam of constant section, linearly elastic, without shear.
type Beam struct {
	Length  float64 // free length between the shells, mm
	Bending float64 // bending stiffness E·I along the strut, N·mm²
}

// NewBeam makes the beam of a strut of rectangular section that bends across its thickness:
//
//	I = b · t³ / 12
//
// The flexural modulus E along the strut in kPa, width b, thickness t and free length L in mm. Holds for L > 10 t.
// The true stiffness is lower, because the ends are not held fully. Derived: bending theory.
func NewBeam(modulus, width, thickness, length float64) (Beam, error) {
	if err := first(positive("modulus", modulus, "kPa"), positive("width of the strut", width, "mm"), slim(thickness, length)); err != nil {
		return Beam{}, err
	}
	const newton = 1e-3 // kPa is 10⁻³ N/mm²
	bending, err := small(modulus * newton * width * thickness * thickness * thickness / 12)
	return Beam{length, bending}, err
}

func slim(thickness, length float64) error {
	if err := first(positive("thickness of the strut", thickness, "mm"), positive("free length of the strut", length, "mm")); err != nil {
		return err
	}
	if length <= slender*thickness {
		return outside("A strut %s long and %s thick is not slender; this holds for more than %d times as long as thick.",
			shown(length, "mm"), shown(thickness, "mm"), slender)
	}
	return nil
}

// UnderCouple is how a couple, N·mm, turns (rad) and shifts (mm) the free end:
//
//	θ = M L/(E I)    δ = M L²/(2 E I)
//
// Exact in θ for any rotation, as the curve is a circle. From the published tables of beams (read).
func (b Beam) UnderCouple(couple float64) (rotation, shift float64) {
	rotation = couple * b.Length / b.Bending
	return rotation, rotation * b.Length / 2
}

// UnderForce is how a force across the free end, N, turns (rad) and shifts (mm) it:
//
//	θ = F L²/(2 E I)    δ = F L³/(3 E I)
//
// For small rotations, up to about 15°. From the published tables of beams (read).
func (b Beam) UnderForce(force float64) (rotation, shift float64) {
	rotation = force * b.Length * b.Length / (2 * b.Bending)
	return rotation, rotation * b.Length * 2 / 3
}

// StrutStiffness is the rotational stiffness of a strut between two rigid shells that carries a pure couple:
//
//	K = E · I / L
//
// Inputs and domain of [NewBeam]; K in N·m/deg; holds for any rotation. Derived.
func StrutStiffness(modulus, width, thickness, length float64) (float64, error) {
	b, err := NewBeam(modulus, width, thickness, length)
	if err != nil {
		return 0, err
	}
	const couple = 1000 // N·mm, a newton metre
	rotation, _ := b.UnderCouple(couple)
	return small(1 / degrees(rotation))
}

// StrutStiffnessAtHeight is the stiffness of a strut that a force on the calf bends, at a height h above the
// upper end of its free length: the moment at its foot over the rotation of its upper end,
//
//	K = E · I · (L + h) / (L · (L/2 + h))
//
// Inputs and domain of [NewBeam]; h in mm, 0 or more; K in N·m/deg. Falls from 2 E I/L at h = 0 to E I/L far up. For
// rotations of up to about 15° either way. Derived: the force at the upper end and its couple F·h, added.
func StrutStiffnessAtHeight(modulus, width, thickness, length, height float64) (float64, error) {
	b, err := NewBeam(modulus, width, thickness, length)
	if err := first(err, notNegative("height of the calf's force above the strut", height, "mm")); err != nil {
		return 0, err
	}
	byForce, _ := b.UnderForce(1)
	byCouple, _ := b.UnderCouple(height)
	return small((length + height) / 1000 / degrees(byForce+byCouple))
}

// StrutStrain is the strain of a strut's outer fibres when a couple bends it by a rotation:
//
//	ε = t · |θ| / (2 L)
//
// Thickness t and free length L in mm, L > 10 t; θ in deg, up to 90° either way; ε a ratio, tension on one side
// and compression on the other. Derived: the strut bends to a circle.
func StrutStrain(thickness, length, rotation float64) (float64, error) {
	if err := first(slim(thickness, length), between("rotation of the strut", rotation, -maxBend, maxBend, "°")); err != nil {
		return 0, err
	}
	return small(thickness * math.Abs(radians(rotation)) / (2 * length))
}

// StrutStress is the stress of a strut's outer fibres when a couple bends it by a rotation:
//
//	σ = E · t · |θ| / (2 L)
//
// E in kPa, σ in kPa, all else as in [StrutStrain]; linearly elastic. Derived.
func StrutStress(modulus, thickness, length, rotation float64) (float64, error) {
	strain, err := StrutStrain(thickness, length, rotation)
	if err := first(err, positive("modulus", modulus, "kPa")); err != nil {
		return 0, err
	}
	return small(modulus * strain)
}

// LayersStiffnessRatio is how many times as stiff a strut gets with another number of the same layers:
//
//	K₂/K₁ = (n₂/n₁)³
//
// n counts layers, 1 to 1000. Not where the added layers change the mix of directions, or lie near the middle
// only. Derived: thickness goes with the number of layers, stiffness with its cube; no experiment was found.
func LayersStiffnessRatio(layers, newLayers float64) (float64, error) {
	if err := first(plies("number of layers", layers), plies("new number of layers", newLayers)); err != nil {
		return 0, err
	}
	return small(math.Pow(newLayers/layers, 3))
}

// plies refuses what is no number of layers.
func plies(what string, n float64) error {
	return first(wholeNumber(what, n, 1), between(what, n, 1, maxLayers, ""))
}

// LayersExact is the number of layers for a stiffness, not rounded:
//
//	n₂ = n₁ · ∛(K₂/K₁)
//
// n₁ counts layers, 1 to 1000; K₁ is the stiffness with them and K₂ the one that is wanted, both in N·m/deg. As
// [LayersStiffnessRatio]. Derived.
func LayersExact(layers, from, target float64) (float64, error) {
	if err := first(plies("number of layers", layers), positive("stiffness with these layers", from, "N·m/°"),
		positive("stiffness that is wanted", target, "N·m/°")); err != nil {
		return 0, err
	}
	return small(layers * math.Cbrt(target/from))
}

// LayersFor is [LayersExact] rounded up, so that the strut is at least as stiff as wanted, but for what the nine
// decimals of a quantity cannot tell.
func LayersFor(layers, from, target float64) (float64, error) {
	n, err := LayersExact(layers, from, target)
	return math.Ceil(n * (1 - 1e-8)), err
}

func strut() []*Formula {
	const (
		tables  = "Published tables of beams: end slopes P L²/2EI and M L/EI"
		section = "rectangular section, L > 10 t, linearly elastic, ends held; the true stiffness is lower"
		lay     = "the same layers again, in the same mix of directions"
	)
	return []*Formula{{
		Name: "strut_stiffness", Topic: "stiffness",
		Params: []Param{{"modulus", pressure}, {"width", length}, {"thickness", length}, {"length", length}}, Result: stiffness,
		Doc:    "the stiffness of a strut between two shells that carries a couple",
		Writes: "K = E I/L, I = b t³/12", Domain: section, Standing: Derived, Sources: []string{tables},
		of: four(StrutStiffness),
	}, {
		Name: "strut_stiffness_at_height", Topic: "stiffness",
		Params: []Param{{"modulus", pressure}, {"width", length}, {"thickness", length}, {"length", length}, {"height", length}}, Result: stiffness,
		Doc:    "the stiffness of a strut that is bent by a force on the calf, at a height above the strut's upper end",
		Writes: "K = E I (L + h)/(L (L/2 + h))", Domain: section + "; h ≥ 0, rotations to about 15°", Standing: Derived, Sources: []string{tables},
		of: func(in []Value, _ []float64) (Value, error) {
			return number(StrutStiffnessAtHeight(in[0].Number, in[1].Number, in[2].Number, in[3].Number, in[4].Number))
		},
	}, {
		Name: "strut_strain", Topic: "stiffness",
		Params: []Param{{"thickness", length}, {"length", length}, {"rotation", angle}}, Result: ratio,
		Doc:    "the strain of a strut's outer fibres at a rotation, without sign",
		Writes: "ε = t |θ|/(2 L)", Domain: "L > 10 t, |θ| ≤ 90°, bent by a couple", Standing: Derived,
		of: three(StrutStrain),
	}, {
		Name: "strut_stress", Topic: "stiffness",
		Params: []Param{{"modulus", pressure}, {"thickness", length}, {"length", length}, {"rotation", angle}}, Result: pressure,
		Doc:    "the stress of a strut's outer fibres at a rotation, without sign",
		Writes: "σ = E t |θ|/(2 L)", Domain: "L > 10 t, |θ| ≤ 90°, bent by a couple, linearly elastic", Standing: Derived,
		of: four(StrutStress),
	}, {
		Name: "layers_stiffness_ratio", Topic: "stiffness",
		Params: []Param{{"layers", Count}, {"new_layers", Count}}, Result: ratio,
		Doc:    "how many times as stiff a strut gets with another number of the same layers",
		Writes: "K₂/K₁ = (n₂/n₁)³", Domain: lay, Standing: Derived,
		of: two(LayersStiffnessRatio),
	}, {
		Name: "layers_for", Topic: "stiffness",
		Params: []Param{{"layers", Count}, {"stiffness", stiffness}, {"target", stiffness}}, Result: Count,
		Doc:    "how many of the same layers give a strut the stiffness that is wanted, rounded up",
		Writes: "n₂ = ⌈n₁ ∛(K₂/K₁)⌉", Domain: lay, Standing: Derived,
		of: three(LayersFor),
	}}
}
