package prove

import (
	"math"
	"math/rand/v2"

	"crus/engine/cell"
	"crus/engine/clause"
)

// The assessments that are drawn before anything is asked: as many as bring news, and this many more.
const (
	atLeast = 60
	atMost  = 400
)

// simulate draws full assessments and notes what they show: most of what can happen happens soon.
func (p *prover) simulate() {
	dice := rand.New(rand.NewPCG(4, 2))
	lines := p.frame.Lines(2)
	values := make([]float64, len(lines))
	rows := []cell.Row{p.Blank(), p.Blank()}
	for n, idle := 0, 0; n < atMost && idle < atLeast && p.ctx.Err() == nil; n++ {
		for i, l := range lines {
			values[i] = drawn(l, dice, n%3 == 2)
		}
		for r := range rows {
			for axis := range p.Measures {
				x := values[p.frame.Line(2, r, axis)]
				rows[r].Value[axis], rows[r].Recorded[axis] = x, x == x
			}
		}
		idle++
		if p.observe(rows) {
			idle = 0
		}
	}
}

// drawn draws a plausible value of a line; NaN, for not recorded, only where it may be missing.
func drawn(l *clause.Line, dice *rand.Rand, missing bool) float64 {
	if l.Missing && missing && dice.IntN(6) == 0 {
		return math.NaN()
	}
	c := dice.IntN(l.Count())
	for n := 0; !l.Possible(c) && n < l.Count(); n++ {
		c = (c + 1) % l.Count()
	}
	if x, may := l.Never(); may && l.Cell(x) == c && dice.IntN(2) == 0 {
		return x
	}
	x, _ := l.Value(c)
	if s, ok := l.Plausible(c); ok && dice.IntN(2) == 0 {
		return within(l.Axis, s, dice.Float64())
	}
	return x
}
