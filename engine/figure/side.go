package figure

import (
	"fmt"
	"math"
	"strings"
)

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
	Strut     string  // Anterior, Posterior; others lie beside the leg and are drawn along its axis
	Plate     float64 // of the stiff foot plate, from the heel
	FootShell float64 // height of the foot shell above the plate, at the midfoot
	Dorsal    bool    // the foot shell closes over the midfoot
}

// The places at which a force meets the leg.
const (
	Calf     = "calf"     // pushes the shank forward
	Shin     = "shin"     // pushes the shank back
	Instep   = "instep"   // pushes the ankle back and down
	Heel     = "heel"     // pushes the ankle forward and down
	Forefoot = "forefoot" // pushes the forefoot up
)

// Force is one force on the leg.
type Force struct {
	At        string
	Newtons   float64
	PlusMinus float64 // 0: not known
}

// Layer is one thing under the heel.
type Layer struct {
	Name   string
	Height float64
}

// View is one picture of the leg.
type View struct {
	Title   string
	Angle   float64 // of the ankle
	Under   []Layer // under the heel, the lowest first; together they are the rise of the heel
	Block   bool    // a block under the heel alone, as while casting; otherwise a wedge that runs out at the ball
	Lean    *float64
	Device  *Device
	Forces  []Force
	Caption []string
}

func (v View) rise() (h float64) {
	for _, l := range v.Under {
		h += l.Height
	}
	return h
}

// Room on paper around a leg, mm.
const (
	left, right, above, below = 24, 14, 13, 9
	lineHeight                = 3.9
)

// Side draws views of one leg beside each other, at one to scale (5: a fifth of life size). The SVG measures
// itself in millimetres of paper.
func Side(leg Leg, scale float64, views ...View) string {
	k := 1 / scale
	lines := 0
	for _, v := range views {
		lines = max(lines, len(v.Caption))
	}
	width, height := size(leg, k, lines)
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="leg" width="%smm" height="%smm" viewBox="0 0 %s %s" role="img" aria-label="%s">`+"\n",
		mm(width*float64(len(views))), mm(height), mm(width*float64(len(views))), mm(height), "Side view of the leg, to scale")
	b.WriteString("<style>" + style + "</style>\n")
	for i, v := range views {
		s := &sheet{scale: k}
		s.origin = point{width*float64(i) + left + leg.HeelToBall*k, height - below - lineHeight*float64(lines)}
		s.view(leg, v)
		s.caption(v, point{width*float64(i) + 2, height - lineHeight*float64(lines) - 1})
		s.text("title", "start", point{width*float64(i) + 2, 5}, v.Title)
		b.WriteString(s.String())
	}
	s := &sheet{scale: k}
	end := width*float64(len(views)) - 4
	s.tag("path", fmt.Sprintf(`class="measure" d="M%s 6V8H%sV6"`, mm(end-100*k), mm(end)))
	s.text("small", "end", point{end, 5}, fmt.Sprintf("100 mm at 1:%s", mm(scale)))
	b.WriteString(s.String() + "</svg>\n")
	return b.String()
}

// size is what one view takes on paper.
func size(leg Leg, k float64, lines int) (width, height float64) {
	return (leg.FootLength+0.2*leg.shank())*k + left + right, (1.12*leg.KneeHeight+40)*k + above + below + lineHeight*float64(lines)
}

// Scale gives the largest of the usual scales at which some views beside each other fit on paper of a width
// and height in millimetres: 5 for one to five. lines is how many the longest caption has.
func Scale(leg Leg, views, lines int, width, height float64) float64 {
	for _, scale := range []float64{4, 5, 6, 7, 8, 10} {
		if w, h := size(leg, 1/scale, lines); w*float64(views) <= width && h <= height {
			return scale
		}
	}
	return 12
}

const style = `.leg{font-family:"Liberation Sans",Arial,sans-serif;color:#1c1c1c}
.leg .skin{fill:#f3ece4;stroke:#6b5f55;stroke-width:.3}.leg .ground{stroke:#1c1c1c;stroke-width:.5}
.leg .under{fill:#d9d9d9;stroke:#444;stroke-width:.25}.leg .raise{fill:#fff;stroke:#444;stroke-width:.25;stroke-dasharray:.8 .5}
.leg .shell{fill:none;stroke:#154a6b;stroke-width:1.5;stroke-linecap:round;stroke-linejoin:round}.leg .strut{fill:none;stroke:#154a6b;stroke-width:.9;stroke-dasharray:2.2 .9}
.leg .axis{stroke:#1c1c1c;stroke-width:.25;stroke-dasharray:3 .8 .6 .8;fill:none}.leg .vertical{stroke:#1c1c1c;stroke-width:.2;fill:none}.leg .target{stroke:#7a3b00;stroke-width:.35;stroke-dasharray:1.4 .9;fill:none}
.leg .arc{stroke:#1c1c1c;stroke-width:.3;fill:none}.leg .measure{stroke:#1c1c1c;stroke-width:.25;fill:none}
.leg .force{stroke:#8c1c13;stroke-width:.7}.leg .head{fill:#8c1c13}.leg .joint{fill:#fff;stroke:#1c1c1c;stroke-width:.3}
.leg text{fill:#1c1c1c;font-size:2.9px}.leg .halo{paint-order:stroke;stroke:#f3ece4;stroke-width:1.1px;stroke-linejoin:round}.leg .title{font-size:3.4px;font-weight:bold}.leg .small{font-size:2.5px}.leg .newtons{fill:#8c1c13;font-weight:bold}.leg .aimed{fill:#7a3b00}`

func (s *sheet) view(leg Leg, v View) {
	st := leg.stand(Pose{v.rise(), v.Angle}, 0)
	s.line("ground", point{-leg.HeelToBall - 30, 0}, point{leg.FootLength - leg.HeelToBall + 40, 0})
	s.under(st, v)
	s.smooth("skin", st.outline())
	if v.Device != nil {
		s.device(st, *v.Device)
	}
	s.angles(st, v)
	s.forces(st, v)
}

// under draws what stands under the heel, with its heights.
func (s *sheet) under(st stance, v View) {
	heel, rise := st.foot(point{-st.AnkleToHeelBack, 0}), v.rise()
	if rise <= 0 {
		return
	}
	front := st.foot(point{st.ball(), 0})
	if v.Block {
		front = st.foot(point{0.25 * st.ball(), 0})
	}
	z := 0.0
	x := s.at(heel).x - 3
	for i, l := range v.Under {
		if l.Height <= 0 {
			continue
		}
		low, high := z/rise, (z+l.Height)/rise
		quad := []point{{heel.x, heel.z * low}, {heel.x, heel.z * high}, {front.x, front.z * high}, {front.x, front.z * low}}
		s.path(map[bool]string{true: "under", false: "raise"}[i == 0], quad, true)
		a, b := s.at(point{0, heel.z * low}).z, s.at(point{0, heel.z * high}).z
		s.tag("path", fmt.Sprintf(`class="measure" d="M%s %sH%sM%s %sH%sM%s %sV%s"`, mm(x+2), mm(a), mm(x-1), mm(x+2), mm(b), mm(x-1), mm(x), mm(a), mm(b)))
		s.text("small", "end", point{x - 1.6, (a+b)/2 + 0.9}, fmt.Sprintf("%s %s mm", l.Name, mm(math.Round(l.Height))))
		z += l.Height
	}
}

func (s *sheet) device(st stance, d Device) {
	if d.Plate > 0 {
		end := min(d.Plate, st.HeelToBall) - st.AnkleToHeelBack
		line := []point{st.foot(point{-st.AnkleToHeelBack, 12}), st.foot(point{-st.AnkleToHeelBack, 0}), st.foot(point{end, 0})}
		if more := d.Plate - st.HeelToBall; more > 0 {
			line = append(line, st.foot(point{st.ball(), 0}).plus(point{more, 0}))
		}
		s.path("shell", line, false)
	}
	if d.FootShell > 0 {
		h := min(d.FootShell, st.AnkleHeight)
		s.smooth("shell", []point{st.foot(point{-st.AnkleToHeelBack, 0}), st.foot(point{-0.95 * st.AnkleToHeelBack, h}), st.foot(point{0.45 * st.ball(), h}), st.foot(point{0.9 * st.ball(), 0.3 * h})})
	}
	if d.Dorsal {
		s.smooth("shell", []point{st.foot(point{0.36 * st.ball(), 1.0 * st.AnkleHeight}), st.foot(point{0.66 * st.ball(), 0.72 * st.AnkleHeight}), st.foot(point{0.9 * st.ball(), 0.45 * st.AnkleHeight})})
	}
	if d.ShellTop <= 0 || d.Shell == "" {
		return
	}
	top := min(d.ShellTop-st.AnkleHeight, 0.97*st.shankLength())
	low := max(top-0.42*st.shankLength(), 0.2*st.shankLength())
	if d.Shell != Posterior {
		s.smooth("shell", st.edge(top, low, true))
	}
	if d.Shell != Anterior {
		s.smooth("shell", st.edge(top, low, false))
	}
	var from point
	switch {
	case d.Strut == Anterior:
		from = st.skin(low, true)
		s.smooth("strut", []point{from, st.foot(point{0.4 * st.ball(), 1.05 * st.AnkleHeight}), st.foot(point{0.6 * st.ball(), 0})})
	case d.Strut == Posterior:
		from = st.skin(low, false)
		s.smooth("strut", []point{from, st.foot(point{-1.02 * st.AnkleToHeelBack, st.AnkleHeight}), st.foot(point{-st.AnkleToHeelBack, 8})})
	case d.Strut != "":
		s.line("strut", st.shank(point{0, low}), st.shank(point{0, 0.12 * low}), st.foot(point{0, 0}))
	}
}

// shankLength is the length from the ankle's axis to the joint line.
func (s stance) shankLength() float64 { return s.Leg.shank() }

// angles draws the axis of the shank, the vertical and the foot plate's square, with what lies between them.
func (s *sheet) angles(st stance, v View) {
	ankle, long := st.ankle(), st.shankLength()
	up := func(deg, length float64) point { return point{0, length}.turned(deg).plus(ankle) }
	s.line("vertical", ankle, up(0, 1.12*long))
	s.line("axis", ankle, up(st.lean, 1.12*long))
	s.line("axis", ankle, up(st.pitch, 0.5*long))
	if math.Abs(v.Angle) >= 1 {
		s.arc("arc", ankle, 0.42*long*s.scale, st.pitch, st.lean)
	}
	if math.Abs(st.lean) >= 1 {
		s.arc("arc", ankle, 1.05*long*s.scale, 0, st.lean)
	}
	top := s.at(up(st.lean, 1.12*long))
	s.text("small", "middle", point{top.x, s.at(up(0, 1.12*long)).z - 2}, "shank to vertical "+degrees(st.lean))
	if v.Lean != nil && math.Abs(*v.Lean-st.lean) >= 1 {
		s.line("target", ankle, up(*v.Lean, 1.08*long))
		q := s.at(up(*v.Lean, 1.08*long))
		s.text("small aimed", "start", point{max(q.x, top.x) + 1.5, q.z + 3.5}, "target "+degrees(*v.Lean))
	}
	at := s.at(up((st.pitch+st.lean)/2, 0.5*long))
	s.text("small halo", "middle", point{at.x, at.z}, "ankle "+degrees(v.Angle))
	c := s.at(ankle)
	s.tag("circle", fmt.Sprintf(`class="joint" cx="%s" cy="%s" r=".9"`, mm(c.x), mm(c.z)))
}

func (s *sheet) forces(st stance, v View) {
	most := 0.0
	n := map[string]float64{}
	for _, f := range v.Forces {
		most = max(most, f.Newtons)
		n[f.At] = f.Newtons
	}
	height := 0.62 * st.shankLength()
	if d := v.Device; d != nil && d.ShellTop > 0 {
		height = min(d.ShellTop-st.AnkleHeight, 0.97*st.shankLength()) - 0.08*st.shankLength()
	}
	slope := math.Atan2(n[Forefoot], max(n[Calf], n[Shin])) // the closing force lies on the other two's sum
	sin, cos := math.Sincos(slope)
	r := st.surface(sin, cos)
	for _, f := range v.Forces {
		if f.Newtons <= 0 {
			continue
		}
		length := 8 + 9*f.Newtons/most
		var tip, toward point
		side := "start"
		switch f.At {
		case Calf:
			tip, toward, side = st.skin(height, false), point{1, 0}.turned(st.lean), "end"
		case Shin:
			tip, toward = st.skin(height, true), point{-1, 0}.turned(st.lean)
		case Instep:
			tip, toward = st.ankle().plus(point{r * cos, r * sin}.turned(st.pitch)), point{-cos, -sin}.turned(st.pitch)
		case Heel:
			tip, toward, side = st.ankle().plus(point{-r * cos, r * sin}.turned(st.pitch)), point{cos, -sin}.turned(st.pitch), "end"
		case Forefoot:
			tip, toward = st.foot(point{0.95 * st.ball(), -2}), point{0, 1}.turned(st.pitch)
			length = min(length, 8)
		default:
			continue
		}
		tail := s.arrow(tip, toward, length)
		words := fmt.Sprintf("%.0f N", f.Newtons)
		if f.PlusMinus > 0 {
			words += fmt.Sprintf(" ± %.0f", f.PlusMinus)
		}
		at := point{tail.x + 1, tail.z - 1}
		if side == "end" {
			at = point{tail.x + 3, tail.z - 1.6}
		}
		if f.At == Forefoot {
			at = point{tail.x + 1.5, tail.z}
		}
		s.text("newtons", side, at, words)
	}
}

func (s *sheet) caption(v View, at point) {
	for i, line := range v.Caption {
		s.text("small", "start", point{at.x, at.z + lineHeight*float64(i)}, line)
	}
}
