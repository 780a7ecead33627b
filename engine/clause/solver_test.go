package clause

import (
	"math/rand/v2"
	"testing"
)

// Clauses that are added between questions, and assumptions: the solver answers as trying all values does, on small
// problems that become impossible sooner or later.
func TestSolverAgreesWithTryingAll(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	yes, no := 0, 0
	for range 3000 {
		const n = 6
		g := newGates()
		vars := make([]Lit, n)
		for i := range vars {
			vars[i] = g.Var()
		}
		lit := func() Lit {
			if l := vars[r.IntN(n)]; r.IntN(2) == 0 {
				return l
			} else {
				return -l
			}
		}
		var clauses [][]Lit
		holds := func(at int, l Lit) bool {
			for i, v := range vars {
				if l == v || l == -v {
					return (at>>i&1 == 1) == (l > 0)
				}
			}
			return false
		}
		can := func(assume []Lit) bool {
			for at := range 1 << n {
				ok := true
				for _, l := range assume {
					ok = ok && holds(at, l)
				}
				for _, c := range clauses {
					some := false
					for _, l := range c {
						some = some || holds(at, l)
					}
					ok = ok && some
				}
				if ok {
					return true
				}
			}
			return false
		}
		for range 30 {
			for range r.IntN(3) {
				var c []Lit
				for range 1 + r.IntN(3) {
					c = append(c, lit())
				}
				clauses = append(clauses, c)
				g.Add(c...)
			}
			var assume []Lit
			for range r.IntN(3) {
				assume = append(assume, lit())
			}
			want := can(assume)
			if got := g.Solve(assume...); got != want {
				t.Fatalf("%v assuming %v: %v", clauses, assume, got)
			} else if got {
				yes++
				for _, c := range clauses {
					some := false
					for _, l := range c {
						some = some || g.Holds(l)
					}
					if !some {
						t.Fatalf("%v does not hold", c)
					}
				}
			} else {
				no++
			}
		}
	}
	if yes < 1000 || no < 1000 {
		t.Errorf("%d could hold, %d could not", yes, no)
	}
}
