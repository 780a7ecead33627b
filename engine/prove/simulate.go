package prove

import (
	"math"
	"math/rand/v2"

	"crus/engine/cell"
)

// The assessments that are drawn before anything is asked: as many as bring news, and this many more.
const (
	atLeast = 200
	atMost  = 3000
)

// simulate draws full assessments and notes what they show: most of what can happen happens soon.
func (p *prover) simulate() {
	dice := rand.New(rand.NewPCG(4, 2))
	lines := p.frame.Lines(2)
	values := make([]float64, len(lines))
	rows := []cell.Row{p.Blank(), p.Blank()}
	for n, idle := 0, 0; n < atMost && idle < atLeast && p.ctx.Err() == nil; n++ {
		for i, l := range lines {
			values[i] = p.usual[2][i]
			if l.Missing && dice.IntN(6) == 0 {
				values[i] = math.NaN()
				continue
			}
			c := dice.IntN(l.Count())
			if !l.Possible(c) {
				continue
			}
			values[i], _ = l.Value(c)
			if s, ok := l.Plausible(c); ok && l.Cells == nil && dice.IntN(2) == 0 {
				values[i] = within(l.Axis, s, dice.Float64())
			}
			if x, may := l.Never(); may && l.Cell(x) == c && dice.IntN(2) == 0 {
				values[i] = x
			}
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
