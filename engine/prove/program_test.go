package prove

import (
	"math"
	"math/rand/v2"
	"testing"
)

func TestProgram(t *testing.T) {
	ten := func() unknown { return unknown{wide: 10, lo: limit{0, true}, hi: limit{10, true}} }
	inf := math.Inf(1)
	for name, c := range map[string]struct {
		p    program
		want verdict
	}{
		"free":                {program{unknowns: []unknown{ten()}}, possible},
		"x > y, y > x":        {program{[]unknown{ten(), ten()}, []sum{{[]int{0, 1}, []float64{1, -1}, 0, limit{0, false}, limit{inf, true}}, {[]int{0, 1}, []float64{1, -1}, 0, limit{-inf, true}, limit{0, false}}}}, impossible},
		"x >= y, y >= x":      {program{[]unknown{ten(), ten()}, []sum{{[]int{0, 1}, []float64{1, -1}, 0, limit{0, true}, limit{inf, true}}, {[]int{0, 1}, []float64{1, -1}, 0, limit{-inf, true}, limit{0, true}}}}, possible},
		"x + y > 20":          {program{[]unknown{ten(), ten()}, []sum{{[]int{0, 1}, []float64{1, 1}, 0, limit{20, false}, limit{inf, true}}}}, impossible},
		"x + y >= 20":         {program{[]unknown{ten(), ten()}, []sum{{[]int{0, 1}, []float64{1, 1}, 0, limit{20, true}, limit{inf, true}}}}, possible},
		"nothing above 1":     {program{nil, []sum{{nil, nil, 0, limit{1, true}, limit{inf, true}}}}, impossible},
		"2 x = 5, whole":      {program{[]unknown{{10, 1, limit{0, true}, limit{10, true}}}, []sum{{[]int{0}, []float64{2}, 0, limit{5, true}, limit{5, true}}}}, impossible},
		"2 x + 3 y = 7 whole": {program{[]unknown{{10, 1, limit{0, true}, limit{10, true}}, {10, 1, limit{0, true}, limit{10, true}}}, []sum{{[]int{0, 1}, []float64{2, 3}, 0, limit{7, true}, limit{7, true}}}}, possible},
	} {
		x, got := c.p.solve()
		if got != c.want {
			t.Errorf("%s: %v (%v), not %v", name, got, x, c.want)
		}
		if got == possible {
			c.p.holds(t, name, x)
		}
	}
}

func (p *program) holds(t *testing.T, name string, x []float64) {
	t.Helper()
	near := func(at float64, l limit, sign float64) bool {
		return sign*(at-l.at) > -1e-9
	}
	for i, u := range p.unknowns {
		if !near(x[i], u.lo, 1) || !near(x[i], u.hi, -1) || u.step > 0 && x[i] != math.Round(x[i]) {
			t.Errorf("%s: %v is outside of %v", name, x[i], u)
		}
	}
	for _, s := range p.sums {
		at := s.plus
		for k, i := range s.of {
			at += s.weight[k] * x[i]
		}
		if !near(at, s.lo, 1) || !near(at, s.hi, -1) {
			t.Errorf("%s: sum %v is outside of %v", name, at, s)
		}
	}
}

// Differences of whole numbers: what is found holds, and what is said to be impossible is so for all of them.
func TestProgramOnDrawnDifferences(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	count := map[verdict]int{}
	for n := range 2000 {
		p := program{}
		whole := n%2 == 0
		for range 3 {
			u := unknown{4, 0, limit{0, true}, limit{4, true}}
			if whole {
				u.step = 1
			}
			p.unknowns = append(p.unknowns, u)
		}
		for range 2 + r.IntN(4) {
			i := r.IntN(3)
			s := sum{of: []int{i, (i + 1 + r.IntN(2)) % 3}, weight: []float64{1, -1}, lo: limit{float64(r.IntN(7) - 3), r.IntN(2) == 0}, hi: limit{math.Inf(1), true}}
			if r.IntN(3) == 0 {
				s.hi = limit{s.lo.at + float64(r.IntN(2)), true}
			}
			p.sums = append(p.sums, s)
		}
		x, got := p.solve()
		count[got]++
		if got == possible {
			p.holds(t, "drawn", x)
			continue
		}
		// halves decide for numbers, for all ends are whole and all sums differences
		step := 0.25
		if whole {
			step = 1
		}
		for a := 0.0; a <= 4; a += step {
			for b := 0.0; b <= 4; b += step {
				for c := 0.0; c <= 4; c += step {
					ok := true
					for _, s := range p.sums {
						at := 0.0
						for k, i := range s.of {
							at += s.weight[k] * []float64{a, b, c}[i]
						}
						ok = ok && (at > s.lo.at || s.lo.in && at == s.lo.at) && (at < s.hi.at || s.hi.in && at == s.hi.at)
					}
					if ok {
						t.Fatalf("%v %v: %v %v %v does it", got, p, a, b, c)
					}
				}
			}
		}
	}
	if count[possible] < 300 || count[impossible] < 300 || count[unsure] > 0 {
		t.Errorf("drawn: %v", count)
	}
}
