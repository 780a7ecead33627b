package whatif

import (
	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/vocab"
)

// scene is one assessment as rows: that of the person alone, then one for each limb that is advised on.
type scene struct {
	w    *Advisor
	a    *assess.Assessment
	rows []*row
	open func(k key) bool // whether a measure is left open
	mode mode
	band [2]float64 // where the one measure that is open is looked at, while moving

	forms  *store
	vars   []*variable
	byKey  map[key]int
	byPart map[part]int
}

// row is an assessment as one limb sees it, or the person alone, worked out.
type row struct {
	side assess.Side
	cell.Row
	c      *cell.Case
	lifted []form        // of each node; unset where it was not asked for
	asks   []bool        // of each node: it asks whether something open is recorded
	room   [3]*cell.Case // to work the row out with other values
	trial  cell.Row      // the row with other values
	moving bool          // the second holds the row as it is, but for what a walker changed
}

// key names a measure of the person ("") or of a side, however a limb calls it.
type key struct {
	side    assess.Side
	measure *vocab.Measure
}

// part is a formula's axis, or an unclear part by its node, in a row.
type part struct {
	row  int
	axis int // -1 of an unclear part
	x    int // the node of an unclear part
}

// newScene works the rows of an assessment out.
func (w *Advisor) newScene(a *assess.Assessment) *scene {
	s := &scene{w: w, a: a}
	s.add("")
	for _, side := range assess.Sides() {
		for _, x := range a.DeviceFor {
			if x == side {
				s.add(side)
				break
			}
		}
	}
	return s
}

func (s *scene) add(side assess.Side) {
	r := &row{side: side, Row: s.w.Row(s.a, side), c: s.w.NewCase()}
	s.w.Work(r.c, r.Row)
	s.rows = append(s.rows, r)
}

// mode says what measures are left open for.
type mode uint8

const (
	completing mode = iota // what is missing, to be recorded: what is known stays
	moving                 // what is recorded, to have another value
	changing               // both, and either may stay as it is
)

// leave leaves some measures open, and forgets what was lifted before.
func (s *scene) leave(m mode, open func(k key) bool) {
	s.open, s.mode, s.forms = open, m, newStore()
	s.vars, s.byKey, s.byPart = nil, map[key]int{}, map[part]int{}
	for _, r := range s.rows {
		r.lifted, r.asks = nil, nil
	}
}

// key says whose measure an axis of a row is.
func (s *scene) key(r *row, axis int) key {
	switch a := s.w.Axes[axis]; {
	case !a.Limb:
		return key{"", a.Measure}
	case a.Other:
		return key{r.side.Opposite(), a.Measure}
	default:
		return key{r.side, a.Measure}
	}
}

// isOpen reports whether the measure of an axis is left open in a row; of the person alone no limb is.
func (s *scene) isOpen(r *row, axis int) bool {
	if r.side == "" && s.w.Axes[axis].Limb {
		return false
	}
	return s.open(s.key(r, axis))
}

// openOf lists the open ones among some measures' axes of a row.
func (s *scene) openOf(r *row, axes []int) []int {
	var out []int
	for _, i := range axes {
		if s.isOpen(r, i) {
			out = append(out, i)
		}
	}
	return out
}

// on lists the rows that a choice looks at: one limb's, or for a choice of the person all limbs'.
func (s *scene) on(side assess.Side, t *cell.Topic) []int {
	if t != nil && t.Of == vocab.Person {
		if len(s.rows) == 1 {
			return []int{0}
		}
		out := make([]int, 0, 2)
		for i := 1; i < len(s.rows); i++ {
			out = append(out, i)
		}
		return out
	}
	for i, r := range s.rows {
		if r.side == side {
			return []int{i}
		}
	}
	return nil
}

// missing reports whether a measure is not recorded.
func (s *scene) missing(k key) bool {
	entries := s.a.Person
	if k.side != "" {
		entries = s.a.Limb(k.side)
	}
	e := entries[k.measure.Name]
	return e == nil || e.Value == nil
}

// scratch gives room to work a part of a row out, and spare room for all of it.
func (r *row) scratch(w *Advisor) *cell.Case { return r.place(w, 0) }
func (r *row) spare(w *Advisor) *cell.Case   { return r.place(w, 2) }

func (r *row) place(w *Advisor, i int) *cell.Case {
	if r.room[i] == nil {
		r.room[i] = w.NewCase()
	}
	return r.room[i]
}
