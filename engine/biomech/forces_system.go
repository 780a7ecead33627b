package biomech

import "math"

// Force is one arrow of a three-point system, in a plane whose origin is the ankle's centre, the second axis up
// the shank. The first axis points forward in the sagittal plane and laterally in the frontal plane.
type Force struct {
	At     [2]float64 // a point on its line, mm: for the foot, on the line through the ankle's centre along the sole
	Toward [2]float64 // which way it pushes, a vector of length 1
	N      float64    // its size, N
	Where  string     // what it pushes on, for people: "calf", "instep"
	Floor  bool       // the floor pushes on the device; all others are pushes of the device on the limb
}

// System is the forces by which a device holds a moment at the ankle. They balance, as seen by the device.
type System struct {
	Name    string // "equinus"
	Frontal bool   // in the frontal plane, the first axis lateral; else in the sagittal plane, the first axis forward
	Moment  float64
	Forces  []Force
}

// Imbalance is the sum of the forces on the device, N, and of their moments about the ankle's centre, N·m: both
// nothing, but for rounding. What the device does to the limb, the limb does to the device the other way.
func (s System) Imbalance() (force [2]float64, moment float64) {
	for _, f := range s.Forces {
		n := -f.N
		if f.Floor {
			n = f.N
		}
		force[0] += n * f.Toward[0]
		force[1] += n * f.Toward[1]
		moment += n * f.about() / 1000
	}
	return force, moment
}

// about is the moment of a newton of f about the ankle's centre, N·mm, positive from the first axis to the second.
func (f Force) about() float64 { return f.At[0]*f.Toward[1] - f.At[1]*f.Toward[0] }

// Equinus holds a foot that is drawn down: calf forward, forefoot up, instep back and down. Inputs, domain and
// standing of [ThreePointBent].
func Equinus(moment, shankLever, forefootLever, ankle float64) (System, error) {
	return bentSystem("equinus", moment, shankLever, forefootLever, ankle, false)
}

// RecurvatumWithEquinus holds a knee that a foot drawn down pushes back: as [Equinus], the calf pushed forward.
func RecurvatumWithEquinus(moment, shankLever, forefootLever, ankle float64) (System, error) {
	return bentSystem("recurvatum with equinus", moment, shankLever, forefootLever, ankle, false)
}

// Crouch holds a shank that falls forward over a loaded forefoot: shin back, the heel forward and up, and
// the floor up on the foot plate under the forefoot, which is the force that the shin's push answers. The same
// moment extends the knee, inertia apart. Inputs, domain and standing of [ThreePointBent].
func Crouch(moment, shankLever, forefootLever, ankle float64) (System, error) {
	return bentSystem("crouch", moment, shankLever, forefootLever, ankle, true)
}

// bentSystem sets the forces of a bent system; crouch turns those on the limb the other way, and its forefoot
// force is the floor's.
func bentSystem(name string, moment, shankLever, forefootLever, ankle float64, crouch bool) (System, error) {
	b, err := ThreePointBent(moment, shankLever, forefootLever, ankle)
	if err != nil {
		return System{}, err
	}
	sin, cos := math.Sincos(radians(ankle))
	up, forward := math.Sincos(radians(b.Direction)) // against the calf's and the forefoot's push together
	sign, shank, closing := 1.0, "calf", "instep"
	if crouch {
		sign, shank, closing = -1, "shin", "heel"
	}
	return System{Name: name, Moment: moment, Forces: []Force{
		{At: [2]float64{0, shankLever}, Toward: [2]float64{sign, 0}, N: b.Shank, Where: shank},
		{At: [2]float64{forefootLever * cos, forefootLever * sin}, Toward: [2]float64{-sin, cos}, N: b.Forefoot, Where: "forefoot", Floor: crouch},
		{Toward: [2]float64{-sign * forward, -sign * up}, N: b.Ankle, Where: closing},
	}}, nil
}

// Varus holds a hindfoot that tips inward: the lateral ankle pushed medially, the medial shank and the medial
// foot pushed laterally. The arms reach from the ankle's centre up the shank and down to the foot, mm. Inputs,
// domain and standing of [ThreePointParallel].
func Varus(moment, shankArm, footArm float64) (System, error) {
	return parallelSystem("varus", moment, shankArm, footArm, 1, "medial", "lateral")
}

// Valgus is the mirror image of [Varus].
func Valgus(moment, shankArm, footArm float64) (System, error) {
	return parallelSystem("valgus", moment, shankArm, footArm, -1, "lateral", "medial")
}

func parallelSystem(name string, moment, shankArm, footArm, sign float64, outer, middle string) (System, error) {
	p, err := ThreePointParallel(moment, shankArm, footArm)
	if err != nil {
		return System{}, err
	}
	return System{Name: name, Frontal: true, Moment: moment, Forces: []Force{
		{At: [2]float64{0, shankArm}, Toward: [2]float64{sign, 0}, N: p.Outer, Where: outer + " shank"},
		{At: [2]float64{0, -footArm}, Toward: [2]float64{sign, 0}, N: p.OtherOuter, Where: outer + " foot"},
		{Toward: [2]float64{-sign, 0}, N: p.Middle, Where: middle + " ankle"},
	}}, nil
}
