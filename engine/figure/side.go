package figure

import "math"

// The sides on which a shank shell can lie.
const (
	Anterior        = "anterior"
	Posterior       = "posterior"
	Circumferential = "circumferential"
)

// Device is where the parts of a device lie. What is not decided is left zero, and not drawn.
type Device struct {
	Shell     string  // Anterior, Posterior, Circumferential
	ShellTop  float64 // height above the sole
	Contact   float64 // height above the sole at which the shank is pressed; 0: below the shell's upper edge
	Strut     string  // Anterior, Posterior; others lie beside the leg and are drawn along its axis
	Plate     float64 // of the stiff foot plate, from the heel
	FootShell float64 // height of the foot shell above the plate, at the midfoot
	Dorsal    bool    // the foot shell closes over the midfoot
}

// Layer is one thing under the heel.
type Layer struct {
	Name   string
	Height float64
}

// View is one picture of the leg from the side.
type View struct {
	Title       string
	Notes       []string // lines below the title
	Angle       float64  // of the ankle
	Square      bool     // the angle is not known: drawn square, and no angle is written
	Unsupported bool     // what stands under the heel is not all known: no lean is written
	Under       []Layer  // under the heel, the lowest first; together they are the rise of the heel
	Block       bool     // a block under the heel alone, as while casting; otherwise a wedge that runs out at the ball
	Lean        *float64
	Device      *Device
	Forces      []Force
}

// drawn is the layer's height; nothing where it has none.
func (l Layer) drawn() float64 {
	if math.IsNaN(l.Height) {
		return 0
	}
	return min(max(l.Height, 0), most)
}

// heightOf is the rise of what stands under a heel.
func heightOf(under []Layer) (h float64) {
	for _, l := range under {
		h += l.drawn()
	}
	return h
}

// side draws the leg from the side; the ball stands on the ground below the origin.
func (s *sheet) side(leg Leg, v View) {
	if v.Square {
		v.Angle, v.Under, v.Lean, v.Unsupported = 0, nil, nil, true
	}
	st := leg.stand(Pose{heightOf(v.Under), v.Angle})
	back, front := min(st.foot(point{-leg.AnkleToHeelBack, 0}).x, -leg.HeelToBall), leg.FootLength-leg.HeelToBall
	s.line("ground", point{back - 20, 0}, point{front + 20, 0})
	under := s.under(st, v)
	contour := st.outline()
	s.smooth("skin", contour)
	if v.Device != nil {
		s.device(st, *v.Device)
	}
	angles := s.angles(st, v)
	s.sideForces(st, v, flat(contour))
	angles()
	under()
}

// under draws what stands under the heel; what it gives writes the heights.
func (s *sheet) under(st stance, v View) (write func()) {
	heel, rise := st.foot(point{-st.AnkleToHeelBack, 0}), heightOf(v.Under)
	front := st.foot(point{st.ball(), 0})
	if v.Block {
		front = st.foot(point{0.25 * st.ball(), 0})
	}
	z, x := 0.0, s.at(point{min(heel.x, -st.HeelToBall), 0}).x-3
	var writes []func()
	for i, l := range v.Under {
		h := l.drawn()
		if h == 0 {
			continue
		}
		low, high := z/rise, min((z+h)/rise, 1)
		s.area(map[bool]string{true: "under", false: "raise"}[i == 0],
			point{heel.x, heel.z * low}, point{heel.x, heel.z * high}, point{front.x, front.z * high}, point{front.x, front.z * low})
		a, b := s.at(point{0, heel.z * low}).z, s.at(point{0, heel.z * high}).z
		s.lineOnPaper("measure", false, point{x - 1, a}, point{x + 1, a})
		s.lineOnPaper("measure", false, point{x - 1, b}, point{x + 1, b})
		s.lineOnPaper("measure", false, point{x, a}, point{x, b})
		writes = append(writes, func() {
			s.label("small", smallSize, point{x - 1, (a + b) / 2}, l.Name+" "+whole(l.Height)+" mm", 180, 165, 150, 135, 195, 210)
		})
		z += h
	}
	return func() {
		for _, w := range writes {
			w()
		}
	}
}

// top is how high above the ankle the shank shell reaches.
func (s stance) top(d Device) float64 { return min(max(d.ShellTop-s.AnkleHeight, 0), 0.97*s.shank()) }

func (s *sheet) device(st stance, d Device) {
	if d.Plate > 0 {
		end := min(d.Plate, st.HeelToBall) - st.AnkleToHeelBack
		line := []point{st.foot(point{-st.AnkleToHeelBack, 12}), st.foot(point{-st.AnkleToHeelBack, 0}), st.foot(point{end, 0})}
		if more := min(d.Plate, st.FootLength) - st.HeelToBall; more > 0 {
			line = append(line, point{more, 0})
		}
		s.line("shell", line...)
	}
	if d.FootShell > 0 {
		h := min(d.FootShell, st.AnkleHeight)
		s.smooth("shell", []point{st.foot(point{-st.AnkleToHeelBack, 0}), st.foot(point{-0.95 * st.AnkleToHeelBack, h}), st.foot(point{0.45 * st.ball(), h}), st.foot(point{0.9 * st.ball(), 0.3 * h})})
	}
	if d.Dorsal {
		s.smooth("shell", []point{st.foot(point{0.36 * st.ball(), 1.0 * st.AnkleHeight}), st.foot(point{0.66 * st.ball(), 0.72 * st.AnkleHeight}), st.foot(point{0.9 * st.ball(), 0.45 * st.AnkleHeight})})
	}
	if !(d.ShellTop > 0) || d.Shell == "" {
		return
	}
	top := st.top(d)
	low := max(top-0.42*st.shank(), 0.2*st.shank())
	if d.Shell != Posterior {
		s.smooth("shell", st.edge(top, low, true))
	}
	if d.Shell != Anterior {
		s.smooth("shell", st.edge(top, low, false))
	}
	switch {
	case d.Strut == Anterior:
		s.smooth("strut", []point{st.skin(low, true), st.foot(point{0.4 * st.ball(), 1.05 * st.AnkleHeight}), st.foot(point{0.6 * st.ball(), 0})})
	case d.Strut == Posterior:
		s.smooth("strut", []point{st.skin(low, false), st.foot(point{-1.02 * st.AnkleToHeelBack, st.AnkleHeight}), st.foot(point{-st.AnkleToHeelBack, 8})})
	case d.Strut != "":
		s.line("strut", st.onShank(point{0, low}), st.onShank(point{0, 0.12 * low}), st.foot(point{0, 0}))
	}
}

// angles draws the axis of the shank, the vertical and the square to the foot plate, with what lies between
// them; what it gives writes the angles.
func (s *sheet) angles(st stance, v View) (write func()) {
	ankle, long := st.ankle(), st.shank()
	up := func(deg, length float64) point { return point{0, length}.turned(deg).plus(ankle) }
	s.line("vertical", ankle, up(0, 1.12*long))
	s.line("axis shank", ankle, up(st.lean, 1.12*long))
	s.line("axis square", ankle, up(st.pitch, 0.5*long))
	if math.Abs(v.Angle) >= 1 {
		s.arc("arc", ankle, 0.42*long*s.scale, st.pitch, st.lean)
	}
	if math.Abs(st.lean) >= 1 && !v.Unsupported {
		s.arc("arc", ankle, 1.05*long*s.scale, 0, st.lean)
	}
	aimed := v.Lean != nil && math.Abs(*v.Lean-st.lean) >= 1
	if aimed {
		s.line("target", ankle, up(*v.Lean, 1.08*long))
	}
	c := s.at(ankle)
	s.tag("circle", `class="joint" cx="`+mm(c.x)+`" cy="`+mm(c.z)+`" r=".9"`)
	return func() {
		if !v.Unsupported {
			s.label("small", smallSize, s.at(up(st.lean/2, 1.13*long)), "shank to vertical "+degrees(st.lean), 90, 60, 120, 30, 150)
		}
		if aimed {
			s.label("small aimed", smallSize, s.at(up(*v.Lean, 1.08*long)), "target "+degrees(*v.Lean), 0, 180, 60, 120, -20, 200)
		}
		if v.Square {
			return
		}
		s.label("small", smallSize, s.at(up((st.pitch+st.lean)/2, 0.42*long)), "ankle "+degrees(v.Angle), 0, 180, 12, 168, -12, 192, 25, 155, -25, 205)
	}
}
