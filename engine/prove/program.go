package prove

import (
	"errors"
	"math"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"
)

// program is a linear program: unknowns within their spans, and weighted sums of them within theirs. Each unknown is
// scaled to its widest span, so that numbers of every unit are of one size.
type program struct {
	unknowns []unknown
	sums     []sum
}

// unknown is a number to be found.
type unknown struct {
	wide float64 // the size of its widest span
	step float64 // between two values it can have; 0: any
	lo   limit
	hi   limit
}

// limit is the end of a span; not In: the end itself does not belong to it.
type limit struct {
	at float64
	in bool
}

// sum is a weighted sum of unknowns, and where it has to lie. An end may be infinite.
type sum struct {
	of     []int
	weight []float64
	plus   float64
	lo, hi limit
}

// verdict is what a program comes to.
type verdict int

const (
	impossible verdict = iota
	possible
	unsure // what is left is narrower than numbers of this kind tell apart
)

// Below narrow a span is taken for empty, above wide for one that holds a number; parts of a whole range.
const (
	narrow = 1e-11
	wide   = 1e-8
)

// maxBranches is how many programs are tried to find whole steps.
const maxBranches = 60

// solve finds unknowns, as far from open ends as can be.
func (p *program) solve() ([]float64, verdict) {
	left := maxBranches
	return p.branch(p.unknowns, &left)
}

// hopeless reports whether one of the sums can't lie where it has to, looked at by itself. It is quick, and is sure of what
// it reports.
func (p *program) hopeless() bool {
	for _, s := range p.sums {
		least, most := limit{s.plus, true}, limit{s.plus, true}
		size := math.Abs(s.plus)
		for k, i := range s.of {
			u, w := p.unknowns[i], s.weight[k]
			lo, hi := u.lo, u.hi
			if lo.at > hi.at {
				return true
			}
			if w < 0 {
				lo, hi = hi, lo
			}
			if w != 0 {
				least, most = limit{least.at + w*lo.at, least.in && lo.in}, limit{most.at + w*hi.at, most.in && hi.in}
				size += math.Abs(w) * u.wide
			}
		}
		if over(s.lo, most, size) || over(least, s.hi, size) {
			return true
		}
	}
	return false
}

// over reports whether nothing lies from one limit to another, for numbers of some size.
func over(from, to limit, size float64) bool {
	if math.IsInf(from.at, 0) || math.IsInf(to.at, 0) {
		return false
	}
	if math.Abs(from.at-to.at) <= narrow*size {
		return !from.in || !to.in
	}
	return from.at > to.at
}

// branch finds unknowns of which those that have steps are whole ones: where one is not, both sides are tried.
func (p *program) branch(u []unknown, left *int) ([]float64, verdict) {
	if *left--; *left < 0 {
		return nil, unsure
	}
	x, v := p.relaxed(u)
	if v != possible {
		return nil, v
	}
	for i := range u {
		if u[i].step == 0 {
			continue
		}
		n := x[i] / u[i].step
		if math.Abs(n-math.Round(n)) < 1e-6 {
			x[i] = math.Round(n) * u[i].step
			continue
		}
		doubt := impossible
		for _, up := range []bool{n-math.Floor(n) > 0.5, n-math.Floor(n) <= 0.5} {
			side := append([]unknown(nil), u...)
			if up {
				side[i].lo = limit{math.Ceil(n) * u[i].step, true}
			} else {
				side[i].hi = limit{math.Floor(n) * u[i].step, true}
			}
			switch y, v := p.branch(side, left); v {
			case possible:
				return y, possible
			case unsure:
				doubt = unsure
			}
		}
		return nil, doubt
	}
	return x, possible
}

// relaxed finds unknowns without regard to steps. The unknown numbers are how far each is above its least value, and the
// margin that open ends are kept from, which is made as great as can be.
func (p *program) relaxed(u []unknown) ([]float64, verdict) {
	n := len(u)
	var rows [][]float64
	var most []float64
	open := false
	add := func(row []float64, at float64, in bool) {
		if !in {
			row[n], open = 1, true
		}
		rows, most = append(rows, row), append(most, at)
	}
	for i, x := range u {
		if x.lo.at > x.hi.at {
			return nil, impossible
		}
		if !x.lo.in {
			row := make([]float64, n+1)
			row[i] = -1
			add(row, 0, false)
		}
		row := make([]float64, n+1)
		row[i] = 1
		add(row, (x.hi.at-x.lo.at)/x.wide, x.hi.in)
	}
	for _, s := range p.sums {
		plus, size := s.plus, 0.0
		for k, i := range s.of {
			plus += s.weight[k] * u[i].lo.at
			size = max(size, math.Abs(s.weight[k]*u[i].wide))
		}
		if size == 0 {
			if plus < s.lo.at || plus > s.hi.at || plus == s.lo.at && !s.lo.in || plus == s.hi.at && !s.hi.in {
				return nil, impossible
			}
			continue
		}
		for _, sign := range []float64{1, -1} {
			end := s.hi
			if sign < 0 {
				end = s.lo
			}
			if math.IsInf(end.at, 0) {
				continue
			}
			row := make([]float64, n+1)
			for k, i := range s.of {
				row[i] += sign * s.weight[k] * u[i].wide / size
			}
			add(row, sign*(end.at-plus)/size, end.in)
		}
	}
	row := make([]float64, n+1)
	row[n] = 1
	rows, most = append(rows, row), append(most, 1)
	y, ok, v := simplex(rows, most)
	if !ok {
		return nil, v
	}
	switch margin := y[n]; {
	case open && margin < narrow:
		return nil, impossible
	case open && margin < wide:
		return nil, unsure
	}
	x := make([]float64, n)
	for i := range x {
		x[i] = u[i].lo.at + y[i]*u[i].wide
	}
	return x, possible
}

// simplex finds numbers from 0 upwards with rows·y ≤ most, the last of them as great as can be.
func simplex(rows [][]float64, most []float64) ([]float64, bool, verdict) {
	m, n := len(rows), len(rows[0])
	a := mat.NewDense(m, n+m, nil)
	for i, row := range rows {
		for j, w := range row {
			a.Set(i, j, w)
		}
		a.Set(i, n+i, 1)
	}
	cost := make([]float64, n+m)
	cost[n-1] = -1
	_, y, err := lp.Simplex(cost, a, most, 1e-12, nil)
	switch {
	case err == nil:
		return y[:n], true, possible
	case errors.Is(err, lp.ErrInfeasible):
		return nil, false, impossible
	}
	return nil, false, unsure
}
