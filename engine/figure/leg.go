// Package figure draws a leg in its device to scale, as SVG: from the side with the angles of ankle and shank,
// the block and heel heights, where shells and strut lie, and the forces as arrows in newtons; and from behind
// with the forces against varus or valgus. It knows numbers only; what they mean and where they come from is the
// business of whoever fills in a [Drawing].
//
// Lengths are in millimetres of the leg, angles in degrees, forces in newtons. Dorsiflexion and a shank that
// leans forward are positive. From the side the toes point to the right, whichever leg it is.
package figure

import (
	"math"

	"crus/engine/biomech"
)

// Leg is the size of a leg and foot.
type Leg struct {
	FootLength      float64  // heel to the longest toe
	HeelToBall      float64  // along the foot plate
	AnkleToHeelBack float64  // from below the ankle's axis back to the heel
	AnkleHeight     float64  // of the axis above the sole
	KneeHeight      float64  // of the joint line above the sole
	AnkleDepth      float64  // front to back, at the narrowest
	CalfDepth       float64  // front to back, at the widest
	Assumed         []string // what of these was not recorded, in words
}

// What biomech's parts of the stature leave open of a usual leg: from memory, and for drawing only.
const (
	usualHeight = 1700 // mm; where not even the body's height is recorded
	ballOfFoot  = 0.72
	heelOfFoot  = 0.25
	ankleOfFoot = 0.32
	calfOfFoot  = 0.43
)

// Complete fills in what is 0 from the body's height (mm; 0 where it is not recorded either), and says so in
// Assumed.
func (l Leg) Complete(height float64) Leg {
	from := "body height"
	if height <= 0 {
		height, from = usualHeight, "a usual leg"
	}
	l.Assumed = nil
	fill := func(x *float64, usual float64, name string) {
		if *x <= 0 {
			*x = usual
			l.Assumed = append(l.Assumed, name+" (from "+from+")")
		}
	}
	fill(&l.FootLength, biomech.FootLengthOfStature*height, "foot length")
	fill(&l.HeelToBall, ballOfFoot*l.FootLength, "heel to ball")
	fill(&l.AnkleToHeelBack, heelOfFoot*l.FootLength, "ankle to heel")
	fill(&l.AnkleHeight, biomech.AnkleHeightOfStature*height, "ankle height")
	fill(&l.KneeHeight, biomech.KneeHeightOfStature*height, "knee height")
	fill(&l.AnkleDepth, ankleOfFoot*l.FootLength, "ankle depth")
	fill(&l.CalfDepth, calfOfFoot*l.FootLength, "calf depth")
	return l
}

// The lengths that are drawn, mm; one that is beyond them is drawn as the nearest.
const least, most = 10, 2000

// usable is a leg that can be drawn whatever was put in: what is no length is a usual one.
func (l Leg) usable() Leg {
	assumed := l.Assumed
	for _, x := range []*float64{&l.FootLength, &l.HeelToBall, &l.AnkleToHeelBack, &l.AnkleHeight, &l.KneeHeight, &l.AnkleDepth, &l.CalfDepth} {
		if math.IsNaN(*x) || *x <= 0 {
			*x = 0
			continue
		}
		*x = min(max(*x, least), most)
	}
	l = l.Complete(0)
	l.Assumed = assumed
	return l
}

// ball is how far the ball lies in front of the ankle.
func (l Leg) ball() float64 { return l.HeelToBall - l.AnkleToHeelBack }

// shank is the length from the ankle's axis to the joint line.
func (l Leg) shank() float64 { return max(l.KneeHeight-l.AnkleHeight, l.AnkleHeight) }

// Pose is how the leg stands: the foot plate tilted heel up about the ball, the ankle at its angle.
type Pose struct {
	Rise       float64 // of the heel above the ball
	AnkleAngle float64
}

// steepest is the most of its length to heel and ball that a foot is drawn raised at the heel.
const steepest = 0.9

// Pitch is the tilt of the foot plate; a rise of more than 0.9 of the length from heel to ball counts as that.
func (l Leg) Pitch(p Pose) float64 {
	return math.Asin(min(max(p.Rise/l.HeelToBall, -steepest), steepest)) * 180 / math.Pi
}

// ShankToVertical is how far the shank leans forward in a pose.
func (l Leg) ShankToVertical(p Pose) float64 { return l.Pitch(p) + p.AnkleAngle }

// point is a place in millimetres: x forward, z up. In the foot's frame the origin is on the plate below the
// ankle; in the shank's it is the ankle, z along the shank; in the room it is the ball on the ground.
type point struct{ x, z float64 }

func (p point) plus(q point) point { return point{p.x + q.x, p.z + q.z} }

// turned rotates a point forward (clockwise as drawn) about the origin.
func (p point) turned(deg float64) point {
	s, c := sincos(deg)
	return point{p.x*c + p.z*s, p.z*c - p.x*s}
}

// sincos is that of an angle in degrees, however large.
func sincos(deg float64) (sin, cos float64) {
	return math.Sincos(math.Mod(deg, 360) * math.Pi / 180)
}

// stance places a leg in a pose in the room.
type stance struct {
	Leg
	pitch, lean float64
}

func (l Leg) stand(p Pose) stance { return stance{l, l.Pitch(p), l.ShankToVertical(p)} }

// foot takes a point of the foot's frame into the room.
func (s stance) foot(p point) point { return point{p.x - s.ball(), p.z}.turned(s.pitch) }

// ankle is the ankle's axis in the room.
func (s stance) ankle() point { return s.foot(point{0, s.AnkleHeight}) }

// onShank takes a point of the shank's frame into the room.
func (s stance) onShank(p point) point { return p.turned(s.lean).plus(s.ankle()) }
