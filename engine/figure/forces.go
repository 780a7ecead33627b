package figure

import "math"

// The places at which a force meets the leg, from the side: all are pushes of the device on the limb but the
// floor's, which pushes on the foot plate.
const (
	Calf     = "calf"     // pushes the shank forward
	Shin     = "shin"     // pushes the shank back
	Instep   = "instep"   // pushes the ankle back and down: closes the triangle of calf and forefoot
	Heel     = "heel"     // pushes the ankle forward and up: answers shin and floor
	Forefoot = "forefoot" // pushes the forefoot up
	Floor    = "floor"    // pushes the foot plate up under the ball
)

// The places at which a force meets the leg, seen from behind. Shank and foot are pushed from the side away from
// the ankle's force.
const (
	AnkleLateral = "lateral ankle"
	AnkleMedial  = "medial ankle"
	Shank        = "shank"
	Foot         = "foot"
)

// Force is one force of a three-point system.
type Force struct {
	At        string
	Newtons   float64
	PlusMinus float64 // 0: not known
}

func (f Force) words() string {
	w := whole(f.Newtons) + " N"
	if f.PlusMinus > 0 && !math.IsInf(f.PlusMinus, 1) {
		w += " ± " + whole(f.PlusMinus)
	}
	if f.At == Floor {
		w = "floor " + w
	}
	return w
}

// drawable tells forces from what is none.
func (f Force) drawable() bool { return f.Newtons > 0 && !math.IsInf(f.Newtons, 1) }

// sideForces draws the forces that are seen from the side. The closing force runs through the ankle on the line of the
// sum of the other two: Bent in package biomech.
func (s *sheet) sideForces(st stance, v View, contour []point) {
	n := map[string]float64{}
	for _, f := range v.Forces {
		if f.drawable() {
			n[f.At] = f.Newtons / s.newtons
		}
	}
	height := 0.62 * st.shank()
	if d := v.Device; d != nil {
		switch {
		case d.Contact > 0:
			height = min(max(d.Contact-st.AnkleHeight, 0.1*st.shank()), 0.97*st.shank())
		case d.ShellTop > 0:
			height = max(st.top(*d)-0.08*st.shank(), 0.1*st.shank())
		}
	}
	forward, up := point{1, 0}.turned(st.lean), point{0, 1}.turned(st.pitch)
	sum := func(shank, foot float64) point {
		greater := max(shank, foot)
		if greater == 0 {
			return forward
		}
		v := forward.times(shank / greater).plus(up.times(foot / greater))
		if v == (point{}) { // they are opposite: nothing is left to hold against
			return forward
		}
		return v
	}
	type arrow struct {
		Force
		tail, away point
	}
	var arrows []arrow
	for _, f := range v.Forces {
		if !f.drawable() {
			continue
		}
		var tip, toward point
		switch f.At {
		case Calf:
			tip, toward = st.skin(height, false), forward
		case Shin:
			tip, toward = st.skin(height, true), forward.times(-1)
		case Instep:
			toward = sum(n[Calf], n[Forefoot]).times(-1)
			tip = onto(contour, st.ankle(), toward.times(-1))
		case Heel:
			toward = sum(n[Shin], n[Floor])
			tip = onto(contour, st.ankle(), toward.times(-1))
		case Forefoot, Floor:
			tip, toward = st.foot(point{st.ball(), 0}), up
		default:
			continue
		}
		tail, away := s.arrow(tip, toward, f)
		arrows = append(arrows, arrow{f, tail, away})
	}
	for _, a := range arrows {
		s.forceLabel(a.Force, a.tail, a.away)
	}
}

// forceLabel writes a force at the tail of its arrow: behind it, or beside it where it stands upright, which takes
// less paper.
func (s *sheet) forceLabel(f Force, tail, away point) {
	deg := math.Atan2(-away.z, away.x) * 180 / math.Pi
	if math.Abs(away.z) > math.Abs(away.x) {
		s.label("newtons", forceSize, tail, f.words(), 0, 180, -15, 195, deg+45, deg-45, deg)
		return
	}
	s.label("newtons", forceSize, tail, f.words(), deg, deg+30, deg-30, deg+60, deg-60, deg+90, deg-90)
}

func (p point) times(k float64) point { return point{p.x * k, p.z * k} }
