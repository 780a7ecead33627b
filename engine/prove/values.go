package prove

import (
	"math"

	"crus/engine/cell"
)

// plain gives every line a plain value from the cell that the last solution puts it in.
func (t *trial) plain() {
	copy(t.values, t.usual[t.Rows])
	for _, i := range t.Asked {
		l, v := t.frame.Lines(t.Rows)[i], t.Line(i)
		if v.Cell == cell.NotRecorded {
			t.values[i] = math.NaN()
			continue
		}
		t.values[i], _ = l.Value(v.Cell)
		if v.Never {
			t.values[i], _ = l.Never()
		}
	}
}

// maxClimb is how many sets of values are tried to bring formulas into their cells.
const maxClimb = 300

// climb looks for values, within the cells of the last solution, with which what is amiss comes right: it changes one
// value at a time and keeps what does not make it worse.
func (t *trial) climb(amiss []fault) bool {
	moves := t.movable(func(yield func(line int)) {
		for _, f := range amiss {
			for _, i := range t.inputs(f) {
				yield(i)
			}
		}
	})
	if len(moves) == 0 {
		return false
	}
	start := append([]float64(nil), t.values...)
	best := t.far()
	for n := 0; n < maxClimb && t.spent < maxWork; n++ {
		if n%60 == 59 { // from elsewhere
			for _, i := range moves {
				t.values[i] = t.draw(i)
			}
			best = math.Inf(1)
		}
		i := moves[t.dice.IntN(len(moves))]
		old := t.values[i]
		t.values[i] = t.moved(i, n)
		if t.works() {
			return true
		}
		if far := t.far(); far <= best {
			best = far
			continue
		}
		t.values[i] = old
	}
	copy(t.values, start)
	t.work()
	return false
}

// vary tries other values within the same cells, for what hangs on the numbers that are advised.
func (t *trial) vary() bool {
	moves := t.movable(func(yield func(line int)) {
		for _, i := range t.Asked {
			yield(i)
		}
		for k, s := range t.says {
			if t.Holds(t.hangs[k]) && s.Advice.Term != nil {
				for row := range t.Rows {
					for _, axis := range reads(s.Advice.Term) {
						yield(t.frame.Line(t.Rows, row, axis))
					}
				}
			}
		}
	})
	if len(moves) == 0 {
		return false
	}
	for n := 0; n < maxClimb && t.spent < maxWork; n++ {
		if n%3 == 0 {
			for _, i := range moves {
				t.values[i] = t.draw(i)
			}
		} else {
			i := moves[t.dice.IntN(len(moves))]
			t.values[i] = t.draw(i)
		}
		if t.works() && len(t.amiss()) == 0 {
			return true
		}
	}
	return false
}

// reads lists the measures' axes that a term reads itself.
func reads(x *cell.Term) (out []int) {
	if x == nil {
		return nil
	}
	if x.Op == cell.Read {
		return []int{x.Axis}
	}
	for _, part := range append([]*cell.Term{x.A, x.B}, x.Of...) {
		out = append(out, reads(part)...)
	}
	return out
}

// movable lists the lines, each once, that have more than one value where they are.
func (t *trial) movable(all func(yield func(line int))) (out []int) {
	seen := map[int]bool{}
	all(func(i int) {
		if seen[i] {
			return
		}
		seen[i] = true
		l := t.frame.Lines(t.Rows)[i]
		if x := t.values[i]; x != x || l.Cells != nil {
			return
		}
		if s, ok := l.Plausible(t.cellOf(i)); ok && s.Lo < s.Hi {
			out = append(out, i)
		}
	})
	return out
}

// cellOf gives the cell in which a line's value is.
func (t *trial) cellOf(i int) int { return t.frame.Lines(t.Rows)[i].Cell(t.values[i]) }

// draw gives a value of a line's cell: an end, or one in between.
func (t *trial) draw(i int) float64 {
	l := t.frame.Lines(t.Rows)[i]
	s, ok := l.Plausible(t.cellOf(i))
	if !ok {
		return t.values[i]
	}
	return within(l.Axis, s, [...]float64{0, 1, t.dice.Float64(), t.dice.Float64()}[t.dice.IntN(4)])
}

// moved gives a value of a line's cell near the one it has, the nearer the later.
func (t *trial) moved(i, n int) float64 {
	if n%4 == 0 {
		return t.draw(i)
	}
	l := t.frame.Lines(t.Rows)[i]
	s, ok := l.Plausible(t.cellOf(i))
	if !ok {
		return t.values[i]
	}
	at := (t.values[i] - s.Lo) / (s.Hi - s.Lo)
	return within(l.Axis, s, min(max(at+t.dice.NormFloat64()*math.Pow(0.5, float64(n%60)/5), 0), 1))
}

// within gives the value at some part of the way through a span, with few digits and in the span.
func within(a *cell.Axis, s cell.Span, part float64) float64 {
	x := s.Lo + part*(s.Hi-s.Lo)
	if step := a.Step(); step > 0 {
		return min(max(math.Round(x/step)*step, s.Lo), s.Hi)
	}
	u := a.Measure.Unit
	for _, grid := range []float64{0.001, 1e-6, 1e-9} {
		if y := u.ToBase(math.Round(u.FromBase(x)/grid) * grid); s.Holds(y) {
			return y
		}
	}
	return a.Nice(s)
}

// far measures how far formulas are from the cells in which the last solution puts them; 0 where all are.
func (t *trial) far() (sum float64) {
	for _, f := range t.amiss() {
		sum++
		if f.unclear || f.cell == cell.NotRecorded {
			continue
		}
		a, c := t.Axes[f.X], t.cases[f.Row]
		x := c.Of(a.Term)
		if math.IsNaN(x) {
			sum++
			continue
		}
		s := a.Span(f.cell)
		gap := max(s.Lo-x, x-s.Hi, 0)
		sum += gap / (1 + gap)
	}
	return sum
}
