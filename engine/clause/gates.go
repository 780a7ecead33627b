package clause

// gates makes variables that stand for combinations of others, each once.
type gates struct {
	Solver
	yes  Lit // always holds
	ands map[[2]Lit]Lit
}

func newGates() *gates {
	g := &gates{Solver: newSolver(), ands: map[[2]Lit]Lit{}}
	g.yes = g.Var()
	g.Solver.Add(g.yes)
	return g
}

// Add adds a clause.
func (g *gates) Add(clause ...Lit) {
	kept := make([]Lit, 0, len(clause))
	for i, l := range clause {
		if l == g.yes {
			return
		}
		again := l == -g.yes
		for _, m := range clause[:i] {
			if l == -m {
				return
			}
			again = again || l == m
		}
		if !again {
			kept = append(kept, l)
		}
	}
	if len(kept) == 0 { // it can't hold
		kept = append(kept, -g.yes)
	}
	g.Solver.Add(kept...)
}

// And gives a literal that holds where all do.
func (g *gates) And(all ...Lit) Lit {
	out := g.yes
	for _, l := range all {
		out = g.both(out, l)
	}
	return out
}

// Or gives a literal that holds where one does.
func (g *gates) Or(any ...Lit) Lit {
	out := g.yes
	for _, l := range any {
		out = g.both(out, -l)
	}
	return -out
}

func (g *gates) both(a, b Lit) Lit {
	switch {
	case a == -g.yes || b == -g.yes || a == -b:
		return -g.yes
	case a == g.yes || a == b:
		return b
	case b == g.yes:
		return a
	}
	key := [2]Lit{min(a, b), max(a, b)}
	if l, ok := g.ands[key]; ok {
		return l
	}
	l := g.Var()
	g.ands[key] = l
	g.Solver.Add(-l, a)
	g.Solver.Add(-l, b)
	g.Solver.Add(l, -a, -b)
	return l
}

// Differ gives a literal that holds where one does and the other does not.
func (g *gates) Differ(a, b Lit) Lit {
	switch {
	case a == b:
		return -g.yes
	case a == -b:
		return g.yes
	}
	return g.Or(g.And(a, -b), g.And(-a, b))
}

// Count gives literals of which the one at i holds where more than i of some hold: a totalizer, which adds
// counts of halves (O. Bailleux and Y. Boufkhad, CP 2003; from memory).
func (g *gates) Count(of []Lit) []Lit {
	if len(of) <= 1 {
		return of
	}
	a, b := g.Count(of[:len(of)/2]), g.Count(of[len(of)/2:])
	out := make([]Lit, len(a)+len(b))
	for n := range out { // more than n: i of one half and the rest of the other, for some i
		var ways []Lit
		for i := max(0, n+1-len(b)); i <= min(len(a), n+1); i++ {
			ways = append(ways, g.And(atLeast(g, a, i), atLeast(g, b, n+1-i)))
		}
		out[n] = g.Or(ways...)
	}
	return out
}

func atLeast(g *gates, count []Lit, n int) Lit {
	switch {
	case n == 0:
		return g.yes
	case n > len(count):
		return -g.yes
	}
	return count[n-1]
}

// notLess gives a literal that holds where one count is as great as another, or greater.
func (g *gates) notLess(a, b []Lit) Lit {
	var all []Lit
	for n := range b {
		all = append(all, g.Or(-b[n], atLeast(g, a, n+1)))
	}
	return g.And(all...)
}
