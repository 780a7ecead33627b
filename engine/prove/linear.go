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
		added = t.excluded([]clause.Worked{w}, false) || added
	}
	if added {
		return true
	}
	for _, together := range t.components(all) {
		added = t.excluded(together, true) || added
	}
	return added
}

// sums lists the linear formulas that the last solution says are known, and that only numbers decide.
func (t *trial) sums() (out []clause.Worked) {
	for _, w := range t.Worked {
		a := t.Axes[w.X]
		if a.Linear == nil || t.frame.Exact(w.X) || t.Formula(w) == cell.NotRecorded {
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

// excluded looks for values for some formulas. Where there are none it adds a clause of as few bounds as can't hold together
// and reports true; where it finds some and may keep them, it does.
func (t *trial) excluded(together []clause.Worked, keep bool) bool {
	var bounds []clause.Bound
	var lines []int
	for _, w := range together {
		bounds = append(bounds, t.FormulaBounds(w, t.Formula(w))...)
		for _, i := range t.linesOf(w) {
			if !slices.Contains(lines, i) {
				lines = append(lines, i)
			}
		}
	}
	slices.Sort(lines)
	for _, i := range lines {
		bounds = append(bounds, t.LineBounds(i, t.Line(i).Cell)...)
	}
	p := t.program(together, lines, bounds)
	switch x, v := p.solve(); v {
	case possible:
		if keep {
			p.tidy(x, func(k int) *cell.Axis { return t.frame.Lines(t.Rows)[lines[k]].Axis })
			for k, i := range lines {
				t.values[i] = x[k]
			}
		}
		return false
	case unsure:
		return false
	}
	for k := 0; k < len(bounds); { // leave out what is not needed
		fewer := slices.Delete(slices.Clone(bounds), k, k+1)
		if _, v := t.program(together, lines, fewer).solve(); v == impossible {
			bounds = fewer
		} else {
			k++
		}
	}
	var not []clause.Lit
	for _, b := range bounds {
		not = append(not, -b.Lit)
	}
	for _, w := range together {
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
	return true
}

// program makes the linear program of some formulas over some lines, with some bounds.
func (t *trial) program(together []clause.Worked, lines []int, bounds []clause.Bound) *program {
	p := &program{}
	for _, i := range lines {
		l := t.frame.Lines(t.Rows)[i]
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
	for _, w := range together {
		a := t.Axes[w.X]
		s := sum{weight: a.Linear.Weight, plus: a.Linear.Constant, lo: limit{math.Inf(-1), true}, hi: limit{math.Inf(1), true}}
		for _, i := range t.linesOf(w) {
			s.of = append(s.of, slices.Index(lines, i))
		}
		bounded := false
		for _, b := range bounds {
			if b.Line < 0 && b.Of == w {
				span := a.Span(b.Cell)
				if bounded = true; b.Up {
					s.hi = limit{span.Hi, span.HiIn}
				} else {
					s.lo = limit{span.Lo, span.LoIn}
				}
			}
		}
		if bounded {
			p.sums = append(p.sums, s)
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

// tidy moves a solution to one with few digits, where there is one: each unknown in turn is fixed at the roundest number
// with which the rest still has a solution.
func (p *program) tidy(x []float64, axis func(i int) *cell.Axis) {
	fixed := slices.Clone(p.unknowns)
	for i := range fixed {
		if fixed[i].step > 0 {
			fixed[i].lo, fixed[i].hi = limit{x[i], true}, limit{x[i], true}
			continue
		}
		u := axis(i).Measure.Unit
		for _, grid := range []float64{10, 5, 1, 0.5, 0.1, 0.01, 0.001, 1e-6, 1e-9} {
			at := u.ToBase(math.Round(u.FromBase(x[i])/grid) * grid)
			try := slices.Clone(fixed)
			try[i].lo, try[i].hi = limit{at, true}, limit{at, true}
			if !fixed[i].holds(at) {
				continue
			}
			left := maxBranches
			if y, v := p.branch(try, &left); v == possible {
				fixed = try
				copy(x, y)
				x[i] = at
				break
			}
		}
	}
}

func (u unknown) holds(at float64) bool {
	return (at > u.lo.at || u.lo.in && at == u.lo.at) && (at < u.hi.at || u.hi.in && at == u.hi.at)
}
