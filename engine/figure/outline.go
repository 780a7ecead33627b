package figure

// depth is how far skin lies in front of and behind the shank's axis at a height of the shank, 0 at the
// ankle and 1 at the knee. The shape is for drawing; its widths are the leg's.
func (l Leg) depth(h float64) (front, back float64) {
	type station struct{ at, front, back float64 }
	ankle, calf := l.AnkleDepth, l.CalfDepth
	shape := []station{
		{0, 0.50 * ankle, 0.50 * ankle}, {0.15, 0.42 * ankle, 0.50 * ankle}, {0.45, 0.40 * calf, 0.44 * calf},
		{0.68, 0.42 * calf, 0.58 * calf}, {0.88, 0.45 * calf, 0.50 * calf}, {1, 0.50 * calf, 0.47 * calf},
	}
	for i := 1; i < len(shape); i++ {
		if a, b := shape[i-1], shape[i]; h <= b.at {
			t := max(h-a.at, 0) / (b.at - a.at)
			return a.front + t*(b.front-a.front), a.back + t*(b.back-a.back)
		}
	}
	last := shape[len(shape)-1]
	return last.front, last.back
}

// skin gives a place on the front (or the back) of the shank at a height above the ankle, mm.
func (s stance) skin(height float64, front bool) point {
	f, b := s.depth(height / s.shank())
	if front {
		return s.onShank(point{f, height})
	}
	return s.onShank(point{-b, height})
}

// edge follows the skin of the shank between two heights above the ankle.
func (s stance) edge(from, to float64, front bool) []point {
	const parts = 12
	var out []point
	for i := range parts + 1 {
		out = append(out, s.skin(from+(to-from)*float64(i)/parts, front))
	}
	return out
}

// outline is the leg's contour from the front of the knee down, round the foot, and up the back. A place named
// twice is a corner.
func (s stance) outline() []point {
	knee := s.shank()
	out := s.edge(knee, 0.12*knee, true)
	toes := s.FootLength - s.HeelToBall // in front of the ball; they stay on the ground
	thick := 0.10 * s.FootLength        // of the foot at the ball
	ball, tip := s.foot(point{s.ball(), 0}), point{0.97 * toes, 0}
	out = append(out, s.foot(point{0.45 * s.ball(), 0.95 * s.AnkleHeight}), s.foot(point{s.ball(), thick}),
		point{0.8 * toes, 0.8 * thick}, point{toes, 0.35 * thick}, tip, tip, ball, ball)
	heel := -s.AnkleToHeelBack
	out = append(out, s.foot(point{0.6 * s.ball(), 0}), s.foot(point{0.2 * s.ball(), 0}), s.foot(point{0.45 * heel, 0}), s.foot(point{0.45 * heel, 0}), s.foot(point{0.8 * heel, 0.015 * s.FootLength}),
		s.foot(point{0.97 * heel, 0.07 * s.FootLength}), s.foot(point{heel, 0.15 * s.FootLength}), s.foot(point{0.86 * heel, 0.30 * s.FootLength}))
	return append(out, s.edge(0.15*knee, knee, false)...)
}

// onto is where a force through a place inside of a contour, from a direction, meets the skin. One that would come
// down through the open knee is turned to the front until it meets any.
func onto(contour []point, through, from point) point {
	for range 12 {
		if p := hit(contour, through, from); p != through {
			return p
		}
		from = from.turned(15)
	}
	return contour[len(contour)/2]
}

// hit is where a ray from a place inside of a contour leaves it for good; the place itself if it does not.
func hit(contour []point, from, toward point) point {
	far := 0.0
	for i := 1; i < len(contour); i++ {
		a, b := contour[i-1], contour[i]
		dx, dz := b.x-a.x, b.z-a.z
		cross := toward.x*dz - toward.z*dx
		if cross == 0 {
			continue
		}
		along := ((a.x-from.x)*dz - (a.z-from.z)*dx) / cross
		share := ((a.x-from.x)*toward.z - (a.z-from.z)*toward.x) / cross
		if share >= 0 && share <= 1 {
			far = max(far, along)
		}
	}
	return point{from.x + far*toward.x, from.z + far*toward.z}
}
