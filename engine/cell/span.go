package cell

import (
	"math"

	"crus/engine/clinical"
	"crus/engine/vocab"
)

// longestDays is the longest plausible time since a date, longer than any life.
const longestDays = 120 * 365

// Range gives the plausible values of a measure's axis: from lo to hi, both plausible. Where a date may never have been,
// that value lies beyond hi: see [Axis.Never].
func (a *Axis) Range() (lo, hi float64) {
	switch m := a.Measure; m.Kind {
	case vocab.Quantity:
		return m.Unit.ToBase(m.Plausible.Lo), m.Unit.ToBase(m.Plausible.Hi)
	case vocab.Count, vocab.Grade:
		return a.steps()
	case vocab.Date:
		return 0, longestDays * secondsADay
	case vocab.Option:
		return 0, float64(len(m.Options) - 1)
	case vocab.YesNo:
		return 0, 1
	}
	return 0, 0
}

// Never gives the value of what never was; false where the measure is no date that may never have been.
func (a *Axis) Never() (float64, bool) {
	return clinical.Forever().Base(), a.Measure != nil && a.Measure.Kind == vocab.Date && a.Measure.Never
}

// Span is a stretch of an axis.
type Span struct {
	Lo, Hi     float64
	LoIn, HiIn bool // the ends belong to it
}

// Holds reports whether a value lies in the span.
func (s Span) Holds(x float64) bool {
	return (x > s.Lo || s.LoIn && x == s.Lo) && (x < s.Hi || s.HiIn && x == s.Hi)
}

// Span gives a cell of a line of numbers, without regard to what is plausible: its ends may be infinite. It means
// nothing of an axis with options.
func (a *Axis) Span(cell int) Span {
	out := Span{Lo: math.Inf(-1), Hi: math.Inf(1)}
	if cell > 0 {
		c := a.Cuts[cell-1]
		out.Lo, out.LoIn = c.At, !c.Below
	}
	if cell < len(a.Cuts) {
		c := a.Cuts[cell]
		out.Hi, out.HiIn = c.At, c.Below
	}
	return out
}

// Plausible gives the plausible part of a cell of a measure's line of numbers; false where nothing plausible lies in it.
// What never was is left out of account.
func (a *Axis) Plausible(cell int) (Span, bool) {
	out := a.Span(cell)
	lo, hi := a.Range()
	if lo > out.Lo {
		out.Lo, out.LoIn = lo, true
	}
	if hi < out.Hi {
		out.Hi, out.HiIn = hi, true
	}
	if step := a.Step(); step > 0 { // whole steps only
		first, last := math.Ceil(out.Lo/step)*step, math.Floor(out.Hi/step)*step
		if first == out.Lo && !out.LoIn {
			first += step
		}
		if last == out.Hi && !out.HiIn {
			last -= step
		}
		return Span{first, last, true, true}, first <= last
	}
	return out, out.Lo < out.Hi || out.Lo == out.Hi && out.LoIn && out.HiIn
}

// Step gives the step between two values of an axis that has no values between: 1 of grades, options and counts, a day of
// dates; 0 of quantities and formulas.
func (a *Axis) Step() float64 {
	switch {
	case a.Measure == nil || a.Measure.Kind == vocab.Quantity:
		return 0
	case a.Measure.Kind == vocab.Date:
		return secondsADay
	}
	return 1
}

// Possible reports whether a plausible value of a measure, or never, lies in a cell.
func (a *Axis) Possible(cell int) bool {
	if a.Cells != nil {
		return cell >= 0 && cell < a.Count()
	}
	if never, ok := a.Never(); ok && a.Cell(never) == cell {
		return true
	}
	_, ok := a.Plausible(cell)
	return ok
}

// Value gives a plausible value of a measure from a cell, one that a person would write: near the middle, with few
// digits; false where there is none.
func (a *Axis) Value(cell int) (float64, bool) {
	if a.Cells != nil {
		return a.inside(cell), cell >= 0 && cell < a.Count()
	}
	span, ok := a.Plausible(cell)
	if !ok {
		never, may := a.Never()
		return never, may && a.Cell(never) == cell
	}
	return a.Nice(span), true
}

// Near gives a plausible value of a measure from a cell, one that a person would write, not far from x where the cell is
// wide; false where there is none.
func (a *Axis) Near(cell int, x float64) (float64, bool) {
	if a.Cells != nil {
		return a.Value(cell)
	}
	span, ok := a.Plausible(cell)
	if !ok {
		return a.Value(cell)
	}
	lo, hi := a.Range()
	switch near := (hi - lo) / 10; {
	case x < span.Lo && span.Lo+near < span.Hi:
		span.Hi, span.HiIn = span.Lo+near, true
	case x > span.Hi && span.Hi-near > span.Lo:
		span.Lo, span.LoIn = span.Hi-near, true
	}
	return a.Nice(span), true
}

// Nice gives a value near the middle of a plausible span of a measure with as few digits, in the measure's unit, as still
// lie in it.
func (a *Axis) Nice(s Span) float64 {
	middle := s.Lo + (s.Hi-s.Lo)/2
	if step := a.Step(); step > 0 {
		return min(max(math.Round(middle/step)*step, s.Lo), s.Hi)
	}
	if s.Lo == s.Hi {
		return s.Lo
	}
	u := a.Measure.Unit
	at := u.FromBase(middle)
	wide := u.FromBase(s.Hi) - u.FromBase(s.Lo)
	for _, grid := range []float64{10, 5, 1, 0.5, 0.1, 0.05, 0.01, 0.001, 1e-4, 1e-5, 1e-6} {
		if grid > wide/2 { // it would give an end
			continue
		}
		if x := u.ToBase(math.Round(at/grid) * grid); s.Holds(x) {
			return x
		}
	}
	return u.ToBase(at)
}
