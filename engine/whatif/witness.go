package whatif

import (
	"math"
	"math/rand/v2"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"

	"crus/engine/cell"
	"crus/engine/reason"
)

// How much is tried to find values for a way.
const (
	maxWays  = 60
	maxDraws = 300
)

// evidence says whether there are values for a way.
type evidence int8

const (
	notSeen evidence = iota // no values were seen, which proves nothing
	ruledOut
	seen
)

// witness looks for values of the open measures that bring a kind of result about.
func (d *diagram) witness(kind int) (way []int, set values, f evidence) {
	tried, all := 0, true
	d.paths(kind, func(w []int) bool {
		got, how := d.values(w)
		switch {
		case how == seen && d.q.gives(got, kind):
			way, set, f = append([]int(nil), w...), got, seen
			return false
		case how != ruledOut:
			all = false
		}
		tried++
		return tried < maxWays
	})
	if f != seen && all && tried < maxWays {
		f = ruledOut
	}
	return way, set, f
}

// values gives values for a way.
func (d *diagram) values(way []int) (values, evidence) {
	s := d.q.s
	set := values{}
	var asked []int // levels of formulas
	for l, c := range way {
		v := s.vars[d.order[l]]
		switch {
		case !v.measured():
			if c >= 0 {
				asked = append(asked, l)
			}
		case c >= 0:
			set[v.key] = v.cells[c]
		}
	}
	for _, v := range s.vars { // what makes no difference stays as it is, or has a value from its first cell
		if _, ok := set[v.key]; v.measured() && !ok && len(v.cells) > 0 {
			c := 0
			if v.now >= 0 {
				c = v.now
			}
			set[v.key] = v.cells[c]
		}
	}
	if asked == nil || d.fits(way, asked, set) {
		return set, seen
	}
	return d.search(way, asked, set)
}

// fits reports whether formulas lie in the cells that a way asks for.
func (d *diagram) fits(way, asked []int, set values) bool {
	for _, l := range asked {
		v := d.q.s.vars[d.order[l]]
		if d.q.s.eval(v.part, set) != v.cells[way[l]].cell {
			return false
		}
	}
	return true
}

// room is an input of formulas with the cells in which it may lie.
type room struct {
	v     *variable
	cells []place
}

// search looks for values of the inputs of formulas: by a linear program where they are sums, or else by trying.
func (d *diagram) search(way, asked []int, set values) (values, evidence) {
	s := d.q.s
	var in []room
	done := map[int]bool{}
	exact := true
	for _, l := range asked {
		v := s.vars[d.order[l]]
		exact = exact && v.exact
		for _, i := range v.inputs {
			if done[i] {
				continue
			}
			done[i] = true
			x := s.vars[i]
			cells := x.cells
			if l := d.level[i]; l < len(way) && way[l] >= 0 {
				cells = cells[way[l] : way[l]+1]
			}
			in = append(in, room{x, cells})
		}
	}
	if exact {
		if got, how := d.combine(way, asked, in, set); how != notSeen {
			return got, how
		}
	}
	r := rand.New(rand.NewPCG(1, 1))
	for range maxDraws {
		for _, x := range in {
			p := x.cells[r.IntN(len(x.cells))]
			if span, ok := x.v.span(p); ok {
				y := []float64{span.Lo, span.Hi, span.Lo + r.Float64()*(span.Hi-span.Lo)}[r.IntN(3)]
				if step := x.v.line.Step(); step > 0 {
					y = math.Round(y/step) * step
				} else {
					y = math.Round(y*1e6) / 1e6
				}
				if span.Holds(y) {
					p.value = y
				}
			}
			set[x.v.key] = p
		}
		if d.fits(way, asked, set) {
			return set, seen
		}
	}
	return nil, notSeen
}

// maxCombined is how many combinations of cells of inputs are given to the linear program.
const maxCombined = 300

// combine tries the combinations of the inputs' cells, each as a linear program.
func (d *diagram) combine(way, asked []int, in []room, set values) (values, evidence) {
	n := 1
	for _, x := range in {
		if n *= len(x.cells); n > maxCombined {
			return nil, notSeen
		}
	}
	at := make([]int, len(in))
	how := ruledOut
	for range n {
		for i, x := range in {
			set[x.v.key] = x.cells[at[i]]
		}
		switch d.program(way, asked, in, set) {
		case seen:
			if d.fits(way, asked, set) {
				return set, seen
			}
			how = notSeen
		case notSeen:
			how = notSeen
		}
		for i := range at {
			if at[i]++; at[i] < len(in[i].cells) {
				break
			}
			at[i] = 0
		}
	}
	return nil, how
}

// program puts values that fit into set, each input staying in the cell that it has there: as far from the ends of
// cells that don't belong to them as can be.
func (d *diagram) program(way, asked []int, in []room, set values) evidence {
	s := d.q.s
	column := map[key]int{}
	lo, width := []float64{}, []float64{}
	var g []([]float64)
	var h []float64
	var slack []float64
	add := func(row []float64, limit float64, closed bool) {
		g, h = append(g, row), append(h, limit)
		if closed {
			slack = append(slack, 0)
		} else {
			slack = append(slack, 1)
		}
	}
	for _, x := range in {
		p := set[x.v.key]
		if math.IsNaN(p.value) {
			return ruledOut
		}
		if x.v.few() || x.v.now >= 0 && x.v.cells[x.v.now].cell == p.cell { // as it is
			continue
		}
		span, ok := x.v.span(p)
		if !ok {
			continue
		}
		i := len(lo)
		column[x.v.key] = i
		lo, width = append(lo, span.Lo), append(width, span.Hi-span.Lo)
		row := make([]float64, len(in)+1)
		row[i] = 1
		add(row, span.Hi-span.Lo, span.HiIn)
		row = make([]float64, len(in)+1)
		row[i] = -1
		add(row, 0, span.LoIn)
	}
	for _, l := range asked {
		v := s.vars[d.order[l]]
		a, r := s.w.Axes[v.part.axis], s.rows[v.part.row]
		c := v.cells[way[l]].cell
		if c == cell.NotRecorded {
			return ruledOut
		}
		rest := v.pieces[0].constant
		up, down := make([]float64, len(in)+1), make([]float64, len(in)+1)
		for of, w := range v.pieces[0].weight {
			k := s.key(r, of)
			if j, open := column[k]; open {
				up[j] += w
				down[j] -= w
				rest += w * lo[j]
			} else {
				rest += w * set[k].value
			}
		}
		span := a.Span(c)
		if !math.IsInf(span.Hi, 1) {
			add(up, span.Hi-rest, span.HiIn)
		}
		if !math.IsInf(span.Lo, -1) {
			add(down, rest-span.Lo, span.LoIn)
		}
	}
	x, how := solve(g, h, slack, len(in))
	if how != seen {
		return how
	}
	for k, i := range column {
		p := set[k]
		p.value = lo[i] + x[i]
		if y := math.Round(p.value*1e6) / 1e6; y >= lo[i] && y <= lo[i]+width[i] {
			p.value = y
		}
		set[k] = p
	}
	return seen
}

// solve finds x >= 0 with g·x <= h, where what slack marks must lie below its limit: the distance, the last column, is
// made as great as can be, up to 1.
func solve(g [][]float64, h, slack []float64, n int) ([]float64, evidence) {
	m := len(g)
	a := mat.NewDense(m+1, n+1+m+1, nil)
	b := make([]float64, m+1)
	for i := range g {
		sign := 1.0
		if h[i] < 0 {
			sign = -1
		}
		for j := range n {
			a.Set(i, j, sign*g[i][j])
		}
		a.Set(i, n, sign*slack[i])
		a.Set(i, n+1+i, sign)
		b[i] = sign * h[i]
	}
	a.Set(m, n, 1)
	a.Set(m, n+1+m, 1)
	b[m] = 1
	c := make([]float64, n+1+m+1)
	c[n] = -1
	_, x, err := lp.Simplex(c, a, b, 1e-10, nil)
	switch {
	case err == lp.ErrInfeasible:
		return nil, ruledOut
	case err != nil:
		return nil, notSeen
	}
	strict := false
	for _, s := range slack {
		strict = strict || s > 0
	}
	if strict && x[n] < 1e-9 {
		return nil, ruledOut
	}
	return x[:n], seen
}

// gives reports whether with some open measures set a result comes out as a kind says, worked out on the rows.
func (q *question) gives(set values, kind int) bool {
	v := q.with(set)
	return v.Same(q.kinds[kind].Verdict) || q.kinds[kind].stuck || q.kinds[kind].varies
}

// with gives the verdict with some open measures set.
func (q *question) with(set values) reason.Verdict {
	var cases []*cell.Case
	for _, row := range q.rows {
		c := q.s.rows[row].spare(q.s.w)
		q.s.w.Work(c, q.s.rowWith(row, set))
		cases = append(cases, c)
	}
	if q.topic == nil {
		return cautionVerdict(cases[0].Truth[q.s.w.Cautions[q.caution].Node])
	}
	return q.s.w.Decide(q.topic.Index, cases...)
}
