package whatif

import (
	"math"
	"slices"
)

// How finely a number is looked for.
const (
	scanned = 24 // values of each cell
	maxPair = 8  // measures that are changed two at a time
	paired  = 6  // values of each of the two
)

// scan looks for values of one measure, or else of two, that bring a wished number about: a formula works it out, so that
// values of each cell are tried, and between two of which one is too small and one too large the place is narrowed down.
func (x *seeker) scan() []*wayTo {
	var vars []*variable
	for _, row := range x.rows {
		r := x.s.rows[row]
		for _, axis := range x.t.Reads {
			if x.s.isOpen(r, axis) {
				if v := x.s.vars[x.s.variable(x.s.key(r, axis))]; !slices.Contains(vars, v) {
					vars = append(vars, v)
				}
			}
		}
	}
	var out []*wayTo
	for _, v := range vars {
		if y := x.one(v, values{}); y != nil {
			out = append(out, y)
		}
	}
	if out == nil {
		for i, v := range vars[:min(maxPair, len(vars))] {
			for _, p := range v.tries(paired) {
				for _, u := range vars[i+1 : min(maxPair, len(vars))] {
					if y := x.one(u, values{v.key: p}); y != nil {
						y.is[v.key], y.distance = v.line.Say(p.value), y.distance+v.away(p.value)
						out = append(out, y)
					}
				}
			}
		}
	}
	slices.SortStableFunc(out, func(a, b *wayTo) int {
		switch {
		case a.distance < b.distance:
			return -1
		case a.distance > b.distance:
			return 1
		}
		return 0
	})
	return out
}

// tries lists values of all cells, other than what is recorded now.
func (v *variable) tries(n int) (out []place) {
	for i, p := range v.cells {
		if !p.recorded || math.IsNaN(p.value) {
			continue
		}
		span, ok := v.span(p)
		if !ok || v.line.Step() > 0 {
			if i != v.now {
				out = append(out, p)
			}
			continue
		}
		for k := range n + 1 {
			at := round(v.measure, span.Lo+(span.Hi-span.Lo)*float64(k)/float64(n))
			if span.Holds(at) && (i != v.now || at != p.value) {
				out = append(out, place{at, true, p.cell})
			}
		}
	}
	return out
}

// away is how far a value lies from what is recorded now.
func (v *variable) away(at float64) float64 {
	if v.now < 0 || math.IsNaN(v.cells[v.now].value) || v.line.Cells != nil {
		return 1
	}
	return math.Abs(at-v.cells[v.now].value) / v.scale()
}

// one looks for the nearest value of a measure, with some others set.
func (x *seeker) one(v *variable, set values) *wayTo {
	number := func(p place) (float64, bool, bool) {
		set[v.key] = p
		got := x.q.with(set)
		delete(set, v.key)
		return got.Lo, got.Lo == got.Hi && got.Lo != 0 || x.wished(got), x.wished(got)
	}
	var best *place
	take := func(p place) {
		if best == nil || v.away(p.value) < v.away(best.value) {
			best = &p
		}
	}
	var before place
	var low, known = 0.0, false
	for _, p := range v.tries(scanned) {
		at, is, wished := number(p)
		if wished {
			take(p)
		}
		if is && known && before.cell == p.cell && v.line.Step() == 0 && (low-x.wish.Number)*(at-x.wish.Number) < 0 {
			a, b := before, p
			for range 40 {
				m := place{round(v.measure, a.value+(b.value-a.value)/2), true, p.cell}
				if m.value == a.value || m.value == b.value {
					break
				}
				y, ok, wished := number(m)
				if wished {
					take(m)
				}
				if !ok {
					break
				}
				if (y-x.wish.Number)*(low-x.wish.Number) > 0 {
					a = m
				} else {
					b = m
				}
			}
		}
		before, low, known = p, at, is
	}
	if best == nil {
		return nil
	}
	out := &wayTo{set: values{v.key: *best}, is: map[key]string{v.key: v.line.Say(best.value)}, distance: v.away(best.value)}
	for k, p := range set {
		out.set[k] = p
	}
	return out
}
