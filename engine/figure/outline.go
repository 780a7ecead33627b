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
	f, b := s.depth(height / s.Leg.shank())
	if front {
		return s.shank(point{f, height})
	}
	return s.shank(point{-b, height})
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

// outline is the leg's contour from the front of the knee down, round the foot, and up the back.
func (s stance) outline() []point {
	knee := s.Leg.shank()
	out := s.edge(knee, 0.12*knee, true)
	toe := s.FootLength - s.AnkleToHeelBack
	thick := 0.10 * s.FootLength // of the foot at the ball
	out = append(out, s.foot(point{0.45 * s.ball(), 0.95 * s.AnkleHeight}), s.foot(point{s.ball(), thick}))
	ball := s.foot(point{s.ball(), 0})
	out = append(out, ball.plus(point{0.8 * (toe - s.ball()), 0.8 * thick}), ball.plus(point{toe - s.ball(), 0.35 * thick}), ball.plus(point{0.97 * (toe - s.ball()), 0}), ball)
	heel := -s.AnkleToHeelBack
	out = append(out, s.foot(point{0.6 * s.ball(), 0}), s.foot(point{0.2 * s.ball(), 0}), s.foot(point{0.45 * heel, 0}), s.foot(point{0.8 * heel, 0.01 * s.FootLength}),
		s.foot(point{0.97 * heel, 0.07 * s.FootLength}), s.foot(point{heel, 0.15 * s.FootLength}), s.foot(point{0.86 * heel, 0.30 * s.FootLength}))
	return append(out, s.edge(0.15*knee, knee, false)...)
}

// surface is how far the skin lies from the ankle along a line that rises from it by the angle of this sine
// and cosine, against the foot plate.
func (s stance) surface(sin, cos float64) float64 {
	for r := 0.3 * s.AnkleDepth; r < 3*s.AnkleDepth; r++ {
		p := point{r * cos, r * sin}.turned(s.pitch - s.lean) // in the shank's frame
		if front, _ := s.depth(p.z / s.Leg.shank()); p.z <= 0 || p.x >= front {
			return r
		}
	}
	return 0.5 * s.AnkleDepth
}
