package biomech

import "math"

// maxHalfArc is half of a shell that reaches half around the limb, deg.
const maxHalfArc = 90

// StrapTension is the pull in each leg of a strap that goes half around the limb, its legs parallel:
//
//	T = F / 2
//
// F is the force on the limb, N, not negative; T in N. Derived.
func StrapTension(force float64) (float64, error) {
	if err := notNegative("force", force, "N"); err != nil {
		return 0, err
	}
	return force / 2, nil
}

// StrapPressure is the mean pressure under a strap that goes half around the limb, its legs parallel:
//
//	p = T/(w · r) = F/(2 · r · w)
//
// F in N, not negative; w the strap's width and r the limb's radius, mm; p in kPa. Peaks at edges and over bone
// are higher, and no factor for them is published. Derived: Laplace's law of a stretched band.
func StrapPressure(force, width, limbRadius float64) (float64, error) {
	tension, err := StrapTension(force)
	if err := first(err, positive("width of the strap", width, "mm"), positive("radius of the limb", limbRadius, "mm")); err != nil {
		return 0, err
	}
	return small(tension / width / limbRadius * 1000)
}

// ShellArea is the area that a shell in full contact shows to a force at its middle, its projection:
//
//	A = 2 · r · h · sin β
//
// r is the limb's radius and h the shell's height, mm; β half of the arc that it covers, deg, up to 90°; A in
// mm². Derived.
func ShellArea(limbRadius, height, halfArc float64) (float64, error) {
	if err := first(positive("radius of the limb", limbRadius, "mm"), positive("height of the shell", height, "mm"),
		positive("half arc of the shell", halfArc, "°"), between("half arc of the shell", halfArc, 0, maxHalfArc, "°")); err != nil {
		return 0, err
	}
	return small(2 * limbRadius * height * math.Sin(radians(halfArc)))
}

// MeanPressure is a force spread over an area:
//
//	p = F / A
//
// F in N, not negative; A in mm²; p in kPa. Peaks at edges and over bone are higher. Derived.
func MeanPressure(force, area float64) (float64, error) {
	if err := first(notNegative("force", force, "N"), positive("area", area, "mm²")); err != nil {
		return 0, err
	}
	return small(force / area * 1000)
}

// LeastArea is the area that keeps the mean pressure of a force down to a figure:
//
//	A = F / p
//
// F in N, not negative; p in kPa, the clinician's own figure: for skin without sensation there is none; A in
// mm². Derived.
func LeastArea(force, pressure float64) (float64, error) {
	if err := first(notNegative("force", force, "N"), positive("pressure", pressure, "kPa")); err != nil {
		return 0, err
	}
	return small(force / pressure * 1000)
}

func pressures() []*Formula {
	const half = "F ≥ 0; the strap goes half around, its legs parallel"
	return []*Formula{{
		Name: "strap_tension", Topic: "forces",
		Params: []Param{{"force", force}}, Result: force,
		Doc:    "the pull in each leg of a strap that goes half around the limb",
		Writes: "T = F/2", Domain: half, Standing: Derived,
		of: one(StrapTension),
	}, {
		Name: "strap_pressure", Topic: "forces",
		Params: []Param{{"force", force}, {"width", length}, {"limb_radius", length}}, Result: pressure,
		Doc:    "the mean pressure under a strap that goes half around the limb; peaks are higher",
		Writes: "p = F/(2 r w)", Domain: half, Standing: Derived,
		of: three(StrapPressure),
	}, {
		Name: "shell_area", Topic: "forces",
		Params: []Param{{"limb_radius", length}, {"height", length}, {"half_arc", angle}}, Result: area,
		Doc:    "the area that a shell in full contact shows to a force at its middle",
		Writes: "A = 2 r h sin β", Domain: "r, h > 0, 0° < β ≤ 90°", Standing: Derived,
		of: three(ShellArea),
	}, {
		Name: "mean_pressure", Topic: "forces",
		Params: []Param{{"force", force}, {"area", area}}, Result: pressure,
		Doc:    "the mean pressure of a force on an area; peaks are higher",
		Writes: "p = F/A", Domain: "F ≥ 0, A > 0", Standing: Derived,
		of: two(MeanPressure),
	}, {
		Name: "least_area", Topic: "forces",
		Params: []Param{{"force", force}, {"pressure", pressure}}, Result: area,
		Doc:    "the least area that keeps the mean pressure of a force down to a figure; for skin without sensation no figure is known to be safe",
		Writes: "A = F/p", Domain: "F ≥ 0, p > 0", Standing: Derived,
		of: two(LeastArea),
	}}
}
