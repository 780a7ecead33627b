package whatif

import (
	"math"

	"crus/engine/cell"
)

// sum is a weighted sum of open measures: weight by axis, and a constant.
type sum struct {
	weight   map[int]float64
	constant float64
}

// maxPieces is how many sums a formula may be put together from.
const maxPieces = 16

// pieces gives weighted sums of the open measures of a row, one of which a formula is wherever they are: one of a sum,
// two of an absolute value. It gives nil where a formula is not put together like that. What rounding to nine decimals
// adds is left out of account.
func (s *scene) pieces(row int, t *cell.Term) []sum {
	r := s.rows[row]
	switch t.Op {
	case cell.Number:
		return constant(t.X)
	case cell.Read:
		if s.isOpen(r, t.Axis) {
			if a := s.w.Axes[t.Axis]; a.Cells != nil {
				return nil
			}
			return []sum{{map[int]float64{t.Axis: 1}, 0}}
		}
		return constant(r.Value[t.Axis])
	case cell.Sum:
		return both(s.pieces(row, t.A), s.pieces(row, t.B), 1)
	case cell.Less, cell.Differ:
		return both(s.pieces(row, t.A), s.pieces(row, t.B), -1)
	case cell.Minus:
		return times(s.pieces(row, t.A), -1)
	case cell.Size:
		a := s.pieces(row, t.A)
		return few(a, times(a, -1))
	case cell.Least, cell.Most:
		var out []sum
		for i, x := range t.Of {
			a := s.pieces(row, x)
			if i == 0 {
				out = a
			} else {
				out = few(out, a)
			}
		}
		return out
	case cell.Times:
		a, b := s.pieces(row, t.A), s.pieces(row, t.B)
		if len(a) == 1 && len(a[0].weight) == 0 {
			a, b = b, a
		}
		if len(b) == 1 && len(b[0].weight) == 0 {
			return times(a, b[0].constant*t.Num/t.Den)
		}
	case cell.Over:
		if b := s.pieces(row, t.B); len(b) == 1 && len(b[0].weight) == 0 && b[0].constant != 0 {
			return times(s.pieces(row, t.A), t.Num/t.Den/b[0].constant)
		}
	case cell.Choose:
		if s.stands(row, t.Node) {
			switch r.c.Truth[t.Node] {
			case cell.Yes:
				return s.pieces(row, t.A)
			case cell.No:
				return s.pieces(row, t.B)
			}
		}
		return few(s.pieces(row, t.A), s.pieces(row, t.B))
	}
	return nil
}

func constant(x float64) []sum {
	if math.IsNaN(x) {
		return nil
	}
	return []sum{{nil, x}}
}

func few(a, b []sum) []sum {
	if a == nil || b == nil || len(a)+len(b) > maxPieces {
		return nil
	}
	return append(append([]sum{}, a...), b...)
}

func times(a []sum, by float64) []sum {
	out := make([]sum, 0, len(a))
	for _, x := range a {
		out = append(out, sum{}.plus(x, by))
	}
	if len(out) == 0 {
		return nil
	}
	return out
}

func both(a, b []sum, sign float64) []sum {
	if a == nil || b == nil || len(a)*len(b) > maxPieces {
		return nil
	}
	var out []sum
	for _, x := range a {
		for _, y := range b {
			out = append(out, x.plus(y, sign))
		}
	}
	return out
}

// plus adds so many times another sum.
func (s sum) plus(t sum, by float64) sum {
	out := sum{map[int]float64{}, s.constant + by*t.constant}
	for i, w := range s.weight {
		out.weight[i] = w
	}
	for i, w := range t.weight {
		if out.weight[i] += by * w; out.weight[i] == 0 {
			delete(out.weight, i)
		}
	}
	return out
}

// meet gives where two sums that hang on one measure, by its axis, are equal.
func (s sum) meet(t sum, axis int) (float64, bool) {
	w := s.weight[axis] - t.weight[axis]
	if w == 0 {
		return 0, false
	}
	return (t.constant - s.constant) / w, true
}

// stands reports whether what is known of a node now stays so whatever is open is set to.
func (s *scene) stands(row, n int) bool {
	if s.mode == completing && !s.w.asking[n] { // only what is missing is open
		return true
	}
	x := s.w.reader()
	x.node(n)
	return len(s.openOf(s.rows[row], marked(x.in))) == 0
}
