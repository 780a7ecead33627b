package figure

// Behind is a picture of the leg from behind, with the forces against varus or valgus.
type Behind struct {
	Title   string
	Notes   []string // lines below the title
	Right   bool     // a right leg: its lateral side is on the right; that of a left leg on the left
	Under   []Layer  // under the heel, as from the side
	Contact float64  // height above the sole at which the shank is pressed; 0: at its upper third
	Forces  []Force
}

// behind draws the leg from behind, upright; the ground is below the origin, and so is the ankle.
func (s *sheet) behind(leg Leg, v Behind) {
	lateral := -1.0
	if v.Right {
		lateral = 1
	}
	rise := min(heightOf(v.Under), steepest*leg.HeelToBall)
	foot := leg.FootLength
	s.line("ground", point{-0.32 * foot, 0}, point{0.32 * foot, 0})
	// the forefoot, which turns out a little, stands on the ground; its shape is for drawing
	s.smooth("skin", []point{{0, 0}, {lateral * 0.19 * foot, 0}, {lateral * 0.205 * foot, 0.03 * foot}, {lateral * 0.15 * foot, 0.08 * foot}, {0, 0.12 * foot}})
	z := 0.0
	for i, l := range v.Under {
		h := l.drawn()
		if h == 0 {
			continue
		}
		low, high := rise*z/heightOf(v.Under), rise*(z+h)/heightOf(v.Under)
		s.area(map[bool]string{true: "under", false: "raise"}[i == 0], point{-0.13 * foot, low}, point{-0.13 * foot, high}, point{0.13 * foot, high}, point{0.13 * foot, low})
		z += h
	}
	contour := leg.contourBehind(rise, lateral)
	s.smooth("skin", contour)
	ankle := rise + leg.AnkleHeight
	s.line("axis", point{0, rise}, point{0, ankle + 1.05*leg.shank()})
	s.forcesBehind(leg, v, lateral, rise, flat(contour))
	s.label("small", smallSize, s.at(point{lateral * 0.28 * foot, 0}), "lateral", 270, 255, 285, 240, 300)
	s.label("small", smallSize, s.at(point{-lateral * 0.28 * foot, 0}), "medial", 270, 255, 285, 240, 300)
}

// contourBehind goes from the lateral side of the knee down, under the heel, and up the medial side. Widths are
// those of a round limb; the malleoli and the heel are for drawing, from memory: the lateral malleolus lower, the heel a
// quarter of the foot's length wide.
func (l Leg) contourBehind(rise, lateral float64) []point {
	ankle, knee, calf, narrow, heel := rise+l.AnkleHeight, l.shank(), l.CalfDepth/2, l.AnkleDepth/2, 0.125*l.FootLength
	half := func(side, malleolus float64) []point {
		at := func(x, z float64) point { return point{side * lateral * x, z} }
		return []point{at(0.98*calf, ankle+knee), at(0.93*calf, ankle+0.88*knee), at(calf, ankle+0.68*knee), at(0.8*calf, ankle+0.45*knee), at(0.8*narrow, ankle+0.2*knee),
			at(narrow, ankle+malleolus), at(heel, rise+0.55*l.AnkleHeight), at(1.05*heel, rise+0.25*l.AnkleHeight), at(0.95*heel, rise+0.06*l.AnkleHeight), at(0.75*heel, rise), at(0.75*heel, rise)}
	}
	out := half(1, -0.1*l.AnkleHeight)
	medial := half(-1, 0.1*l.AnkleHeight)
	for i := range medial {
		out = append(out, medial[len(medial)-1-i])
	}
	return out
}

func (s *sheet) forcesBehind(leg Leg, v Behind, lateral, rise float64, contour []point) {
	from := lateral // where the ankle is pushed from
	for _, f := range v.Forces {
		if f.At == AnkleMedial && f.drawable() {
			from = -lateral
		}
	}
	ankle := rise + leg.AnkleHeight
	height := ankle + 0.62*leg.shank()
	if v.Contact > 0 {
		height = min(max(rise+v.Contact, ankle+0.1*leg.shank()), ankle+0.97*leg.shank())
	}
	type arrow struct {
		Force
		tail, away point
	}
	var arrows []arrow
	for _, f := range v.Forces {
		side, z := -from, 0.0
		switch f.At {
		case AnkleLateral:
			side, z = lateral, ankle
		case AnkleMedial:
			side, z = -lateral, ankle
		case Shank:
			z = height
		case Foot:
			z = rise + 0.12*leg.AnkleHeight
		default:
			continue
		}
		if !f.drawable() {
			continue
		}
		tip := hit(contour, point{0, z}, point{side, 0})
		tail, away := s.arrow(tip, point{-side, 0}, f)
		arrows = append(arrows, arrow{f, tail, away})
	}
	for _, a := range arrows {
		s.forceLabel(a.Force, a.tail, a.away)
	}
}
