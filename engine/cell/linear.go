package cell

import "slices"

// linear gives a term as a weighted sum of measures, or nil where it is none. What rounding to nine decimals adds is
// left out of account.
func (s *Space) linear(t *Term) *Linear {
	switch t.Op {
	case Number:
		return &Linear{Constant: t.X}
	case Read:
		if a := s.Axes[t.Axis]; a.Measure == nil || a.Cells != nil {
			return nil
		}
		return &Linear{Of: []int{t.Axis}, Weight: []float64{1}}
	case Sum:
		return s.linear(t.A).plus(s.linear(t.B), 1)
	case Less, Differ:
		return s.linear(t.A).plus(s.linear(t.B), -1)
	case Minus:
		return (&Linear{}).plus(s.linear(t.A), -1)
	case Times:
		a, b := s.linear(t.A), s.linear(t.B)
		if a != nil && len(a.Of) == 0 {
			a, b = b, a
		}
		if a != nil && b != nil && len(b.Of) == 0 {
			return (&Linear{}).plus(a, b.Constant*t.Num/t.Den)
		}
	case Over:
		if a, b := s.linear(t.A), s.linear(t.B); a != nil && b != nil && len(b.Of) == 0 && b.Constant != 0 {
			return (&Linear{}).plus(a, t.Num/t.Den/b.Constant)
		}
	}
	return nil
}

// plus adds so many times another sum; nil where one of the two is.
func (l *Linear) plus(m *Linear, times float64) *Linear {
	if l == nil || m == nil {
		return nil
	}
	out := &Linear{Of: slices.Clone(l.Of), Weight: slices.Clone(l.Weight), Constant: l.Constant + times*m.Constant}
	for i, axis := range m.Of {
		at := slices.Index(out.Of, axis)
		if at < 0 {
			at = len(out.Of)
			out.Of, out.Weight = append(out.Of, axis), append(out.Weight, 0)
		}
		out.Weight[at] += times * m.Weight[i]
	}
	return out
}
