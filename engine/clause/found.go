package clause

import "crus/engine/cell"

// Value is what was found of a line: its cell, or cell.NotRecorded.
type Value struct {
	Cell  int
	Never bool // it is a date that never was
}

// Line gives what the last solution says of a line that was asked for.
func (c *Clauses) Line(i int) Value {
	s := c.lines[i]
	if !c.Holds(s.known) {
		return Value{Cell: cell.NotRecorded}
	}
	return Value{c.place(s), s.never != 0 && c.Holds(s.never)}
}

// Formula gives the cell that the last solution says a formula's axis is in.
func (c *Clauses) Formula(w Worked) int {
	s := c.formulas[w.Row][w.X]
	if !c.Holds(s.known) {
		return cell.NotRecorded
	}
	return c.place(s)
}

// Unclear gives what the last solution says of an unclear part.
func (c *Clauses) Unclear(w Worked) cell.Truth {
	switch r := c.unclear[w.Row][w.X]; {
	case c.Holds(r.yes):
		return cell.Yes
	case c.Holds(r.no):
		return cell.No
	}
	return cell.Unknown
}

func (c *Clauses) place(s *stretch) int {
	n := 0
	for i, l := range s.cells {
		if c.Holds(l) {
			n = i
		}
	}
	for _, l := range s.above {
		if c.Holds(l) {
			n++
		}
	}
	return n
}

// Bound is one thing that a solution says, and the literal for it.
type Bound struct {
	Lit  Lit
	Line int    // -1 of a formula's axis
	Of   Worked // of a formula's axis
	Cell int
	Up   bool // at most the cell, or else at least
}

// LineBounds gives the two bounds of a line that is in a cell.
func (c *Clauses) LineBounds(i, n int) []Bound {
	s := c.lines[i]
	return c.bounds(s, n, Bound{Line: i})
}

// FormulaBounds gives the two bounds of a formula's axis that is in a cell.
func (c *Clauses) FormulaBounds(w Worked, n int) []Bound {
	return c.bounds(c.formulas[w.Row][w.X], n, Bound{Line: -1, Of: w})
}

func (c *Clauses) bounds(s *stretch, n int, b Bound) (out []Bound) {
	b.Cell = n
	if l := s.from(c, n); l != c.yes {
		b.Lit = l
		out = append(out, b)
	}
	if l := s.upTo(c, n); l != c.yes {
		b.Lit, b.Up = l, true
		out = append(out, b)
	}
	return out
}

// Never gives the literal for a date never having been; 0 where that is not told apart.
func (c *Clauses) Never(line int) Lit { return c.lines[line].never }

// LineIs gives literals that together say what the last solution says of a line.
func (c *Clauses) LineIs(i int) []Lit {
	s := c.lines[i]
	v := c.Line(i)
	if v.Cell == cell.NotRecorded {
		return []Lit{-s.known}
	}
	out := []Lit{s.known, c.in(s, func(n int) bool { return n == v.Cell })}
	if s.never != 0 && v.Never {
		out = append(out, s.never)
	} else if s.never != 0 {
		out = append(out, -s.never)
	}
	return out
}

// FormulaIs gives literals that together say that a formula's axis is in a cell, or not known.
func (c *Clauses) FormulaIs(w Worked, n int) []Lit {
	s := c.formulas[w.Row][w.X]
	if n == cell.NotRecorded {
		return []Lit{-s.known}
	}
	return []Lit{s.known, c.in(s, func(m int) bool { return m == n })}
}

// UnclearIs gives literals that together say what an unclear part is.
func (c *Clauses) UnclearIs(w Worked, t cell.Truth) []Lit {
	r := c.unclear[w.Row][w.X]
	switch t {
	case cell.Yes:
		return []Lit{r.yes}
	case cell.No:
		return []Lit{r.no}
	}
	return []Lit{-r.yes, -r.no}
}

// LineKnown gives the literal for a line being recorded.
func (c *Clauses) LineKnown(i int) Lit { return c.lines[i].known }

// FormulaKnown gives the literal for a formula being known.
func (c *Clauses) FormulaKnown(w Worked) Lit { return c.formulas[w.Row][w.X].known }

// Look makes a solution say where a measure lies, though no clause asks.
func (c *Clauses) Look(row, axis int) { c.line(c.frame.at[c.Rows][row][axis]) }
