package cell

import (
	"cmp"
	"fmt"
	"maps"
	"math"
	"slices"

	"github.com/google/cel-go/common/types"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/vocab"
)

// Blank gives a row in which nothing is recorded.
func (s *Space) Blank() Row {
	r := Row{Value: make([]float64, s.Measures), Recorded: make([]bool, s.Measures)}
	for i := range r.Value {
		r.Value[i] = math.NaN()
	}
	return r
}

// Row gives an assessment as one limb sees it, or as the person alone for the side "".
func (s *Space) Row(a *assess.Assessment, side assess.Side) Row {
	r := s.Blank()
	r.Alone = side == ""
	s.Fill(r, a, side)
	return r
}

// Fill writes an assessment into a row, as Row gives it.
func (s *Space) Fill(r Row, a *assess.Assessment, side assess.Side) {
	for i, axis := range s.Axes[:s.Measures] {
		r.Value[i], r.Recorded[i] = math.NaN(), false
		if e := entries(a, axis, side)[axis.Measure.Name]; e != nil && e.Value != nil {
			r.Value[i], r.Recorded[i] = axis.number(e), true
		}
	}
}

// entries gives the part of an assessment in which an axis is recorded; nil where there is none.
func entries(a *assess.Assessment, axis *Axis, side assess.Side) map[string]*assess.Entry {
	switch {
	case !axis.Limb:
		return a.Person
	case side == "":
		return nil
	case axis.Other:
		return a.Limb(side.Opposite())
	}
	return a.Limb(side)
}

// number gives the value of an entry on the axis; NaN for a date that is not seen from any day.
func (a *Axis) number(e *assess.Entry) float64 {
	switch v := e.Value.(type) {
	case types.String:
		if a.Measure.Kind == vocab.Text {
			return 0
		}
		return float64(slices.Index(a.Measure.Options, string(v)))
	case clinical.Date:
		if q, ok := v.Since(); ok {
			return q.Base()
		}
		return math.NaN()
	default:
		x, _ := onAxis(v)
		return x
	}
}

// Assessment turns rows back into an assessment, with a device for the limbs that have a row. What a limb's row says of
// the opposite limb must agree with that limb's own row, if there is one, and all rows must agree on the person. date is
// the day that dates are counted back from, as 2026-10-02.
func (s *Space) Assessment(id, date string, rows map[assess.Side]Row) (*assess.Assessment, error) {
	day, err := clinical.ParseDate(date)
	if err != nil {
		return nil, err
	}
	out := &assess.Assessment{ID: id, Vocabulary: s.Ruleset.Vocabulary.Name + "@" + major(s.Ruleset.Vocabulary.Version), Date: date,
		Person: map[string]*assess.Entry{}, Left: map[string]*assess.Entry{}, Right: map[string]*assess.Entry{}}
	for _, side := range assess.Sides() {
		row, ok := rows[side]
		if !ok {
			continue
		}
		out.DeviceFor = append(out.DeviceFor, side)
		for i, axis := range s.Axes[:s.Measures] {
			if !row.Recorded[i] {
				continue
			}
			e, err := axis.entry(row.Value[i], day)
			if err != nil {
				return nil, err
			}
			in := entries(out, axis, side)
			if old := in[axis.Measure.Name]; old != nil && old.Value.Equal(e.Value) != types.True {
				return nil, fmt.Errorf("%s has two values in one assessment: %v and %v", axis.Path, old.Value, e.Value)
			}
			in[axis.Measure.Name] = e
		}
	}
	if row, ok := rows[""]; ok {
		for i, axis := range s.Axes[:s.Measures] {
			if row.Recorded[i] && !axis.Limb {
				if out.Person[axis.Measure.Name], err = axis.entry(row.Value[i], day); err != nil {
					return nil, err
				}
			}
		}
	}
	return out, nil
}

func major(version string) string {
	for i, c := range version {
		if c == '.' {
			return version[:i]
		}
	}
	return version
}

// entry gives a value of the axis as an assessment records it.
func (a *Axis) entry(x float64, day clinical.Date) (*assess.Entry, error) {
	e := &assess.Entry{Measure: a.Measure}
	switch m := a.Measure; m.Kind {
	case vocab.Text:
		e.Value = types.String("recorded")
	case vocab.Date:
		if math.IsNaN(x) {
			return nil, fmt.Errorf("%s has no date", a.Path)
		}
		e.Value = dateBefore(day, x)
	default:
		v := a.celValue(x)
		if v == nil {
			return nil, fmt.Errorf("%s can't be %v", a.Path, x)
		}
		e.Value = v
		if m.Kind == vocab.Quantity {
			at := m.Unit.FromBase(x)
			e.Confirmed = at < m.Plausible.Lo || at > m.Plausible.Hi
		}
		if m.Kind == vocab.Count {
			e.Confirmed = x < m.Plausible.Lo || x > m.Plausible.Hi
		}
	}
	return e, nil
}

// Changed gives an assessment in which the limb on a side (or the person, for "") has the values of a row; what the row
// does not read is left as it was. date is the day that dates are counted back from where the assessment has none.
func (s *Space) Changed(a *assess.Assessment, side assess.Side, row Row, date string) (*assess.Assessment, error) {
	out := *a
	out.Person, out.Left, out.Right = maps.Clone(a.Person), maps.Clone(a.Left), maps.Clone(a.Right)
	before := s.Row(a, side)
	for i, axis := range s.Axes[:s.Measures] {
		in := entries(&out, axis, side)
		same := row.Value[i] == before.Value[i] || math.IsNaN(row.Value[i]) && math.IsNaN(before.Value[i])
		switch {
		case in == nil || same && row.Recorded[i] == before.Recorded[i]:
			continue
		case !row.Recorded[i]:
			delete(in, axis.Measure.Name)
			continue
		}
		if out.Date == "" && axis.Measure.Kind == vocab.Date {
			out.Date = date
		}
		day, err := clinical.ParseDate(cmp.Or(out.Date, date))
		if err != nil {
			return nil, err
		}
		if in[axis.Measure.Name], err = axis.entry(row.Value[i], day); err != nil {
			return nil, err
		}
	}
	return &out, nil
}
