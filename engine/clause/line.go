package clause

import (
	"fmt"
	"slices"

	"crus/engine/cell"
	"crus/engine/vocab"
)

// Line is one measure of an assessment: of the person, of the first limb or of the other. With two rows both
// may look at it, as their limb and as the opposite one, each with cuts of its own.
type Line struct {
	*cell.Axis      // with the cuts of all views
	Missing    bool // it may be missing
	Views      []View
	Read       bool // by a formula
}

// View is how one row sees a line.
type View struct {
	Row, Axis int
	cell      []int // of the axis, for each cell of the line
}

// divide makes the lines of so many rows.
func (f *Frame) divide(rows int) {
	type key struct {
		m    *vocab.Measure
		limb int // 0: of the person
	}
	at := map[key]int{}
	read := map[int]bool{}
	for _, a := range f.Space.Axes[f.Space.Measures:] {
		for _, i := range a.Inputs {
			read[i] = true
		}
	}
	for row := range rows {
		f.at[rows][row] = make([]int, f.Space.Measures)
		for i, a := range f.Space.Axes[:f.Space.Measures] {
			k := key{m: a.Measure}
			if a.Limb {
				k.limb = 1 + row
				if a.Other {
					k.limb = 2 - row
				}
			}
			n, ok := at[k]
			if !ok {
				n = len(f.lines[rows])
				at[k] = n
				f.lines[rows] = append(f.lines[rows], &Line{Missing: f.Missing[i]})
			}
			l := f.lines[rows][n]
			f.at[rows][row][i] = n
			l.Read = l.Read || read[i]
			if !a.Limb && row > 0 {
				continue
			}
			l.Views = append(l.Views, View{Row: row, Axis: i})
		}
	}
	for _, l := range f.lines[rows] {
		f.join(l)
	}
}

// join gives a line the cuts of all its views.
func (f *Frame) join(l *Line) {
	first := *f.Space.Axes[l.Views[0].Axis]
	l.Axis = &first
	if len(l.Views) > 1 {
		second := f.Space.Axes[l.Views[1].Axis]
		if first.Cells != nil {
			both := map[string]int{}
			cells := make([]int, len(first.Cells))
			for option := range cells {
				k := fmt.Sprint(first.Cells[option], second.Cells[option])
				if _, ok := both[k]; !ok {
					both[k] = len(both)
				}
				cells[option] = both[k]
			}
			l.Cells = cells
		} else {
			l.Cuts = slices.Concat(first.Cuts, second.Cuts)
			slices.SortFunc(l.Cuts, func(a, b cell.Cut) int {
				switch {
				case a == b:
					return 0
				case a.At < b.At || a.At == b.At && b.Below:
					return -1
				}
				return 1
			})
			l.Cuts = slices.Compact(l.Cuts)
		}
	}
	for i := range l.Views {
		v := &l.Views[i]
		a := f.Space.Axes[v.Axis]
		v.cell = make([]int, l.Count())
		if l.Cells != nil {
			for option, c := range l.Cells {
				v.cell[c] = a.Cells[option]
			}
			continue
		}
		for c := 1; c < len(v.cell); c++ {
			v.cell[c] = v.cell[c-1]
			if slices.Contains(a.Cuts, l.Cuts[c-1]) {
				v.cell[c]++
			}
		}
	}
}

// Lines lists the lines of so many rows.
func (f *Frame) Lines(rows int) []*Line { return f.lines[rows] }

// Line gives the place among the lines of what a row sees on a measure's axis.
func (f *Frame) Line(rows, row, axis int) int { return f.at[rows][row][axis] }

// never reports whether never is told apart from the other values: a formula may read it.
func (l *Line) never() bool {
	_, may := l.Never()
	return may && l.Read
}

// Plausible gives the plausible part of a cell without never; false where there is none, or where the line has options.
func (l *Line) Plausible(c int) (cell.Span, bool) {
	if l.Cells != nil {
		return cell.Span{}, false
	}
	return l.Axis.Plausible(c)
}

// dated reports whether a cell holds a plausible value that is not never.
func (l *Line) dated(c int) bool {
	_, ok := l.Plausible(c)
	return ok
}

// stretch holds the variables of a line of values.
type stretch struct {
	known Lit
	above []Lit // of each cut
	cells []Lit // of each cell, where it has options
	never Lit   // 0: not told apart
}

// in gives a literal that holds where the value, if it is known, lies in some of the cells.
func (c *Clauses) in(s *stretch, yes func(cell int) bool) Lit {
	var ways []Lit
	if s.cells != nil {
		for i, l := range s.cells {
			if yes(i) {
				ways = append(ways, l)
			}
		}
		return c.Or(ways...)
	}
	n := len(s.above) + 1
	for i := 0; i < n; i++ {
		if !yes(i) {
			continue
		}
		from := i
		for i+1 < n && yes(i+1) {
			i++
		}
		ways = append(ways, c.And(s.from(c, from), s.upTo(c, i)))
	}
	return c.Or(ways...)
}

// from gives a literal that holds where the value lies in a cell or above.
func (s *stretch) from(c *Clauses, cell int) Lit {
	if cell == 0 {
		return c.yes
	}
	return s.above[cell-1]
}

// upTo gives a literal that holds where the value lies in a cell or below.
func (s *stretch) upTo(c *Clauses, cell int) Lit {
	if cell == len(s.above) {
		return c.yes
	}
	return -s.above[cell]
}

// order makes the variables of so many cuts.
func (c *Clauses) order(cuts int) (above []Lit) {
	for i := range cuts {
		above = append(above, c.Var())
		if i > 0 {
			c.Add(-above[i], above[i-1])
		}
	}
	return above
}

// line makes the variables of a line, once.
func (c *Clauses) line(i int) *stretch {
	if s := c.lines[i]; s != nil {
		return s
	}
	l := c.frame.lines[c.Rows][i]
	s := &stretch{known: c.yes}
	c.lines[i] = s
	c.Asked = append(c.Asked, i)
	if l.Missing {
		s.known = c.Var()
	}
	if l.Cells != nil {
		for n := range l.Count() {
			s.cells = append(s.cells, c.Var())
			for _, other := range s.cells[:n] {
				c.Add(-other, -s.cells[n])
			}
		}
		c.Add(s.cells...)
		return s
	}
	s.above = c.order(len(l.Cuts))
	for n := range l.Count() {
		if !l.Possible(n) {
			c.Add(-s.from(c, n), -s.upTo(c, n))
		}
	}
	if l.never() {
		s.never = c.Var()
		at, _ := l.Never()
		n := l.Cell(at)
		c.Add(-s.never, s.from(c, n))
		c.Add(-s.never, s.upTo(c, n))
		for n := range l.Count() {
			if !l.dated(n) {
				c.Add(s.never, -s.from(c, n), -s.upTo(c, n))
			}
		}
	}
	return s
}
