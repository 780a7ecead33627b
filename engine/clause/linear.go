package clause

import (
	"math"
	"slices"

	"crus/engine/cell"
)

// end is a bound that a literal sets to what one measure adds to a sum.
type end struct {
	lit Lit
	at  float64
	in  bool // the bound itself can be reached
}

// linear binds a sum of one or two measures to their cells: wherever bounds of the measures put it above a cut, or
// below, a clause says so. Sums of more are left to package prove.
func (c *Clauses) linear(row int, a *cell.Axis, x *stretch) {
	var lines []int
	var weights []float64
	size := math.Abs(a.Linear.Constant)
	not := []Lit{-x.known}
	for k, axis := range a.Linear.Of {
		i := c.frame.at[c.Rows][row][axis]
		s := c.line(i)
		not = append(not, -s.known)
		if s.never != 0 {
			not = append(not, s.never)
		}
		if w := a.Linear.Weight[k]; w != 0 {
			lines, weights = append(lines, i), append(weights, w)
			lo, hi := c.frame.lines[c.Rows][i].Range()
			size += math.Abs(w) * max(math.Abs(lo), math.Abs(hi))
		}
	}
	if len(lines) > 2 {
		return
	}
	for k, cut := range a.Cuts {
		for _, up := range []bool{true, false} {
			then := x.above[k]
			if !up {
				then = -then
			}
			first, second := []end{{c.yes, a.Linear.Constant, true}}, []end{{c.yes, 0, true}}
			if len(lines) > 0 {
				first = c.ends(lines[0], weights[0], up)
				for i := range first {
					first[i].at += a.Linear.Constant
				}
			}
			if len(lines) > 1 {
				second = c.ends(lines[1], weights[1], up)
			}
			last := len(second) // from the weakest of the first on, ever weaker ones of the second do
			for _, e := range first {
				n := slices.IndexFunc(second[:last], func(f end) bool {
					return decides(cut, up, e.at+f.at, e.in && f.in, size)
				})
				if n >= 0 {
					c.Add(append(slices.Clone(not), -e.lit, -second[n].lit, then)...)
					last = n
				}
			}
		}
	}
}

// ends lists the bounds from below, or from above, that the cells of a line set to what it adds, the weakest first.
func (c *Clauses) ends(i int, weight float64, below bool) (out []end) {
	l, s := c.frame.lines[c.Rows][i], c.lines[i]
	for n := range l.Count() {
		span, ok := l.Plausible(n)
		switch {
		case !ok:
		case below == (weight > 0):
			out = append(out, end{s.from(c, n), weight * span.Lo, span.LoIn})
		default:
			out = append(out, end{s.upTo(c, n), weight * span.Hi, span.HiIn})
		}
	}
	if below != (weight > 0) {
		slices.Reverse(out)
	}
	return out
}

// decides reports whether all that is at least, or at most, so much lies above a cut, or below it. Numbers that differ by
// no more than rounding are taken for equal.
func decides(cut cell.Cut, up bool, at float64, in bool, size float64) bool {
	near := math.Abs(at-cut.At) <= 1e-12*size
	if up {
		return near && (!in || !cut.Below) || !near && at > cut.At
	}
	return near && (!in || cut.Below) || !near && at < cut.At
}
