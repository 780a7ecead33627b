package prove

import (
	"math"
	"slices"

	"crus/engine/cell"
	"crus/engine/clause"
)

// linear finds values with which the linear formulas lie where the last solution puts them, and keeps them as
// the values to try. Where there are none it adds clauses that say so, and reports true.
func (t *trial) linear() (added bool) {
	all := t.sums()
	for _, w := range all {
		s := t.system([]clause.Worked{w})
		if s.program(s.bounds).hopeless() {
			t.forbid(s, (*program).hopeless)
			added = true
		}
	}
	if added {
		return true
	}
	for _, together := range t.components(all) {
		if !slices.ContainsFunc(together, func(w clause.Worked) bool { return t.cases[w.Row].Cell[w.X] != t.Formula(w) }) {
			continue
		}
		s := t.system(together)
		p := s.program(s.bounds)
		switch x, v := p.solve(); v {
		case possible:
			p.tidy(x, func(k int) *cell.Axis { return t.frame.Lines(t.Rows)[s.lines[k]].Axis })
			for k, i := range s.lines {
				t.values[i] = x[k]
			}
		case impossible:
			t.forbid(s, func(p *program) bool {
				_, v := p.solve()
				return v == impossible
			})
			added = true
		}
	}
	return added
}

// sums lists the linear formulas that the last solution says are known, and that only numbers decide.
func (t *trial) sums() (out []clause.Worked) {
	for _, w := range t.Worked {
		a := t.Axes[w.X]
		if !t.formulas[w] || a.Linear == nil || t.frame.Exact(w.X) || t.Formula(w) == cell.NotRecorded {
			continue
		}
		if !slices.ContainsFunc(a.Inputs, func(axis int) bool {
			v := t.Line(t.frame.Line(t.Rows, w.Row, axis))
			return v.Never || v.Cell == cell.NotRecorded
		}) {
			out = append(out, w)
		}
	}
	return out
}

// components puts formulas together that read the same lines.
func (t *trial) components(all []clause.Worked) (out [][]clause.Worked) {
	of := map[int]int{} // component of each line
	parts := map[int][]clause.Worked{}
	for k, w := range all {
		part := []clause.Worked{w}
		for _, i := range t.linesOf(w) {
			old, seen := of[i]
			if !seen || old == k {
				continue
			}
			part = append(parts[old], part...)
			delete(parts, old)
			for line, p := range of {
				if p == old {
					of[line] = k
				}
			}
		}
		for _, i := range t.linesOf(w) {
			of[i] = k
		}
		parts[k] = part
	}
	for k := range all {
		if p := parts[k]; p != nil {
			out = append(out, p)
		}
	}
	return out
}

// linesOf lists the lines that a linear formula adds up.
func (t *trial) linesOf(w clause.Worked) (out []int) {
	for _, axis := range t.Axes[w.X].Linear.Of {
		out = append(out, t.frame.Line(t.Rows, w.Row, axis))
	}
	return out
}

// system is some linear formulas, the lines that they add up, and the bounds that the last solution sets to all of these.
type system struct {
	*trial
	formulas []clause.Worked
	lines    []int
	bounds   []clause.Bound
}

func (t *trial) system(formulas []clause.Worked) *system {
	s := &system{trial: t, formulas: formulas}
	for _, w := range formulas {
		s.bounds = append(s.bounds, t.FormulaBounds(w, t.Formula(w))...)
		for _, i := range t.linesOf(w) {
			if !slices.Contains(s.lines, i) {
				s.lines = append(s.lines, i)
			}
		}
	}
	slices.Sort(s.lines)
	for _, i := range s.lines {
		s.bounds = append(s.bounds, t.LineBounds(i, t.Line(i).Cell)...)
	}
	return s
}

// forbid adds a clause of as few bounds as can't hold together.
func (t *trial) forbid(s *system, cannot func(*program) bool) {
	bounds := slices.Clone(s.bounds)
	for size := (len(bounds) + 3) / 4; size > 0; size /= 2 { // leave out what is not needed, several at a time first
		for k := 0; k < len(bounds); {
			fewer := slices.Delete(slices.Clone(bounds), k, min(k+size, len(bounds)))
			if cannot(s.program(fewer)) {
				bounds = fewer
			} else {
				k += size
			}
		}
	}
	var not []clause.Lit
	for _, b := range bounds {
		not = append(not, -b.Lit)
	}
	for _, w := range s.formulas {
		if !slices.ContainsFunc(bounds, func(b clause.Bound) bool { return b.Line < 0 && b.Of == w }) {
			continue
		}
		not = append(not, -t.FormulaKnown(w))
		for _, i := range t.linesOf(w) {
			not = append(not, -t.LineKnown(i))
			if never := t.Never(i); never != 0 {
				not = append(not, never)
			}
		}
	}
	t.Add(not...)
}

// program makes the linear program of the formulas that have one of some bounds.
func (s *system) program(bounds []clause.Bound) *program {
	p := &program{}
	for _, i := range s.lines {
		l := s.frame.Lines(s.Rows)[i]
		lo, hi := l.Range()
		u := unknown{wide: hi - lo, step: l.Step(), lo: limit{lo, true}, hi: limit{hi, true}}
		if u.wide <= 0 {
			u.wide = 1
		}
		for _, b := range bounds {
			if b.Line == i {
				u.bound(l.Span(b.Cell), b.Up)
			}
		}
		p.unknowns = append(p.unknowns, u)
	}
	for _, w := range s.formulas {
		a := s.Axes[w.X]
		x := sum{weight: a.Linear.Weight, plus: a.Linear.Constant, lo: limit{math.Inf(-1), true}, hi: limit{math.Inf(1), true}}
		for _, i := range s.linesOf(w) {
			x.of = append(x.of, slices.Index(s.lines, i))
		}
		bounded := false
		for _, b := range bounds {
			if b.Line < 0 && b.Of == w {
				span := a.Span(b.Cell)
				if bounded = true; b.Up {
					x.hi = limit{span.Hi, span.HiIn}
				} else {
					x.lo = limit{span.Lo, span.LoIn}
				}
			}
		}
		if bounded {
			p.sums = append(p.sums, x)
		}
	}
	return p
}

// bound narrows an unknown to at least, or at most, what a cell spans.
func (u *unknown) bound(s cell.Span, up bool) {
	if up {
		if s.Hi < u.hi.at || s.Hi == u.hi.at && !s.HiIn {
			u.hi = limit{s.Hi, s.HiIn}
		}
		if n := math.Floor(u.hi.at / u.step); u.step > 0 {
			if n*u.step == u.hi.at && !u.hi.in {
				n--
			}
			u.hi = limit{n * u.step, true}
		}
		return
	}
	if s.Lo > u.lo.at || s.Lo == u.lo.at && !s.LoIn {
		u.lo = limit{s.Lo, s.LoIn}
	}
	if n := math.Ceil(u.lo.at / u.step); u.step > 0 {
		if n*u.step == u.lo.at && !u.lo.in {
			n++
		}
		u.lo = limit{n * u.step, true}
	}
}

// tidy moves a solution to one with few digits, as far as it stays one: all numbers are rounded together, then each as far as
// the others allow.
func (p *program) tidy(x []float64, axis func(i int) *cell.Axis) {
	round := func(i int, grid float64) float64 {
		if p.unknowns[i].step > 0 {
			return x[i]
		}
		u := axis(i).Measure.Unit
		return u.ToBase(math.Round(u.FromBase(x[i])/grid) * grid)
	}
	grids := []float64{10, 5, 1, 0.5, 0.1, 0.01, 0.001, 1e-6, 1e-9}
	for _, grid := range grids {
		y := slices.Clone(x)
		for i := range y {
			y[i] = round(i, grid)
		}
		if p.solved(y) {
			copy(x, y)
			break
		}
	}
	for i, old := range x {
		for _, grid := range grids {
			if x[i] = round(i, grid); p.solved(x) {
				break
			}
			x[i] = old
		}
	}
}

// solved reports whether numbers are a solution.
func (p *program) solved(x []float64) bool {
	for i, u := range p.unknowns {
		if !u.holds(x[i]) {
			return false
		}
	}
	for _, s := range p.sums {
		at, size := s.plus, math.Abs(s.plus)
		for k, i := range s.of {
			at += s.weight[k] * x[i]
			size += math.Abs(s.weight[k] * x[i])
		}
		here := limit{at, true}
		if over(s.lo, here, size) || over(here, s.hi, size) {
			return false
		}
	}
	return true
}

func (u unknown) holds(at float64) bool {
	return (at > u.lo.at || u.lo.in && at == u.lo.at) && (at < u.hi.at || u.hi.in && at == u.hi.at)
}
