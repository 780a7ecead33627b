package whatif

import (
	"math"
	"slices"

	"crus/engine/cell"
	"crus/engine/vocab"
)

// refine cuts the line of a measure where a formula that reads no other open measure changes its cell.
func (s *scene) refine(v *variable) {
	if s.mode == changing { // all else as it is
		open := s.open
		s.open = func(k key) bool { return k == v.key }
		defer func() { s.open = open }()
	}
	for i, r := range s.rows {
		if v.at[i] < 0 {
			continue
		}
		for _, a := range s.w.Axes[s.w.Measures:] {
			if open := s.openOf(r, s.w.inputs[a.Index]); len(open) != 1 || open[0] != v.at[i] {
				continue
			}
			p := part{row: i, axis: a.Index}
			if !s.worksWith(p, v) {
				continue
			}
			if pieces := s.pieces(i, a.Term); pieces != nil {
				v.line.Cuts = append(v.line.Cuts, pieceCuts(v, pieces, v.at[i], a)...)
			} else {
				v.line.Cuts = append(v.line.Cuts, s.sampledCuts(v, p)...)
			}
		}
		for n, x := range s.w.Nodes {
			if x.Op != cell.Opaque {
				continue
			}
			if open := s.openOf(r, s.w.Unclear[x.X].Inputs); len(open) == 1 && open[0] == v.at[i] {
				v.line.Cuts = append(v.line.Cuts, s.sampledCuts(v, part{row: i, axis: -1, x: n})...)
			}
		}
	}
}

// pieceCuts gives where sums that a formula is put together from pass its cuts, or meet each other.
func pieceCuts(v *variable, pieces []sum, axis int, a *cell.Axis) []cell.Cut {
	var out []cell.Cut
	for i, x := range pieces {
		for _, c := range a.Cuts {
			if at, ok := x.meet(sum{nil, c.At}, axis); ok {
				out = append(out, around(v, at)...)
			}
		}
		for _, y := range pieces[:i] {
			if at, ok := x.meet(y, axis); ok {
				out = append(out, around(v, at)...)
			}
		}
	}
	return out
}

// around cuts before and behind a value: of a quantity as finely as values are kept, so that what rounding leaves
// uncertain is a cell of its own.
func around(v *variable, at float64) []cell.Cut {
	if v.measure.Kind == vocab.Quantity {
		at = math.Round(at*1e9) / 1e9
	}
	return []cell.Cut{{At: at}, {At: at, Below: true}}
}

// samples is how many values of a stretch are tried where a formula is not linear.
const (
	samples    = 12
	samplesNow = 4 // within the error of what is recorded
)

// sampledCuts looks for where a formula that is not linear changes its cell: values of each stretch are tried, and
// between two that differ the place is narrowed down.
func (s *scene) sampledCuts(v *variable, p part) []cell.Cut {
	lo, hi := v.line.Range()
	n := samples
	if s.mode == moving {
		lo, hi, n = s.band[0], s.band[1], samplesNow
	}
	points := []float64{lo, hi}
	for _, c := range v.line.Cuts {
		if c.At > lo && c.At < hi {
			points = append(points, c.At)
		}
	}
	slices.Sort(points)
	points = slices.Compact(points)
	at := func(x float64) int { return s.evalAt(p, v.at[p.row], x) }
	step := v.line.Step()
	var out []cell.Cut
	for i, from := range points[:len(points)-1] {
		x, cx := from, at(from)
		for k := 1; k <= n; k++ {
			y := from + (points[i+1]-from)*float64(k)/float64(n)
			if step > 0 {
				y = math.Round(y/step) * step
			}
			if y <= x {
				continue
			}
			cy := at(y)
			if cx != cy {
				low, high, cl := x, y, cx
				for range 60 {
					m := low + (high-low)/2
					if step > 0 {
						m = math.Floor(m/step) * step
					}
					if m <= low || m >= high {
						break
					}
					if at(m) == cl {
						low = m
					} else {
						high = m
					}
				}
				out = append(out, around(v, round(v.measure, high))...)
			}
			x, cx = y, cy
		}
	}
	return out
}

// round drops what narrowing down leaves of a boundary that was meant as a plain number.
func round(m *vocab.Measure, x float64) float64 {
	if m.Kind != vocab.Quantity {
		return x
	}
	u := m.Unit
	return u.ToBase(math.Round(u.FromBase(x)*1e6) / 1e6)
}

// bounds gives bounds of a formula with the open measures anywhere within their plausible ranges, and whether it can
// fail there. They may be wider than need be.
func (s *scene) bounds(row int, t *cell.Term) (lo, hi float64, fails bool) {
	switch t.Op {
	case cell.Number:
		return t.X, t.X, math.IsNaN(t.X)
	case cell.Read:
		r := s.rows[row]
		if !s.isOpen(r, t.Axis) {
			x := r.Value[t.Axis]
			return x, x, math.IsNaN(x)
		}
		a := s.w.Axes[t.Axis]
		lo, hi = a.Range()
		if never, may := a.Never(); may {
			return lo, never, true
		}
		v := s.vars[s.variable(s.key(r, t.Axis))]
		for _, p := range v.cells { // what is recorded now can lie beyond
			if p.recorded && !math.IsNaN(p.value) {
				lo, hi = min(lo, p.value), max(hi, p.value)
			}
		}
		return lo, hi, v.now >= 0 && math.IsNaN(v.cells[v.now].value)
	case cell.Sum, cell.Less, cell.Differ:
		a, b, f := s.bounds(row, t.A)
		c, d, g := s.bounds(row, t.B)
		if t.Op != cell.Sum {
			c, d = -d, -c
		}
		return kept(a+c, b+d, f || g)
	case cell.Minus:
		a, b, f := s.bounds(row, t.A)
		return -b, -a, f
	case cell.Size:
		a, b, f := s.bounds(row, t.A)
		if a <= 0 && b >= 0 {
			return 0, max(-a, b), f
		}
		return min(math.Abs(a), math.Abs(b)), max(math.Abs(a), math.Abs(b)), f
	case cell.Least, cell.Most:
		for i, x := range t.Of {
			a, b, f := s.bounds(row, x)
			fails = fails || f
			switch {
			case i == 0:
				lo, hi = a, b
			case t.Op == cell.Least:
				lo, hi = min(lo, a), min(hi, b)
			default:
				lo, hi = max(lo, a), max(hi, b)
			}
		}
		return lo, hi, fails
	case cell.Times:
		a, b, f := s.bounds(row, t.A)
		c, d, g := s.bounds(row, t.B)
		k := t.Num / t.Den
		all := []float64{a * c * k, a * d * k, b * c * k, b * d * k}
		return kept(slices.Min(all), slices.Max(all), f || g)
	case cell.Same:
		return 0, 1, false
	case cell.Choose:
		a, b, f := s.bounds(row, t.A)
		c, d, g := s.bounds(row, t.B)
		return min(a, c), max(b, d), f || g || s.lift(row, t.Node) == unknown
	}
	return math.Inf(-1), math.Inf(1), true
}

// kept rounds bounds as quantities are rounded.
func kept(lo, hi float64, fails bool) (float64, float64, bool) {
	if math.IsNaN(lo) || math.IsNaN(hi) {
		return math.Inf(-1), math.Inf(1), true
	}
	const decimals = 1e9
	if math.Abs(lo) < 1e6 && math.Abs(hi) < 1e6 {
		lo, hi = math.Round(lo*decimals)/decimals, math.Round(hi*decimals)/decimals
	}
	return lo, hi, fails
}
