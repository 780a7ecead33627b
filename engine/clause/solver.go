package clause

import (
	"github.com/go-air/gini"
	"github.com/go-air/gini/z"
)

// Lit is a variable, or with a minus its negation.
type Lit int

// Solver decides whether clauses can all hold.
type Solver interface {
	Var() Lit                   // a new variable
	Add(clause ...Lit)          // one of these holds
	Solve(assuming ...Lit) bool // whether all clauses can hold, and these
	Holds(l Lit) bool           // in what Solve found last; what was added since does not change it
	Failed() []Lit              // of what was assumed last, some that can't hold together
}

// solver is gini. Of the solvers that were tried it is the one that answered every question right and was the
// fastest; docs/cells.md has the numbers.
type solver struct {
	gini   *gini.Gini
	count  Lit
	found  []bool // of each variable
	failed []Lit
	never  bool // the clauses can't hold, whatever is assumed; gini must not be asked again then
}

func newSolver() *solver { return &solver{gini: gini.New()} }

func (s *solver) Var() Lit {
	s.count++
	s.gini.Lit()
	return s.count
}

func (s *solver) Add(clause ...Lit) {
	for _, l := range clause {
		s.gini.Add(z.Dimacs2Lit(int(l)))
	}
	s.gini.Add(z.LitNull)
}

func (s *solver) Solve(assuming ...Lit) bool {
	s.failed = nil
	if s.never {
		return false
	}
	if s.count > 0 { // a clause of no weight has it forget how the last question ended, which it does not always undo rightly
		s.Add(1, -1)
	}
	for _, l := range assuming {
		s.gini.Assume(z.Dimacs2Lit(int(l)))
	}
	if s.gini.Solve() != 1 {
		for _, l := range s.gini.Why(nil) {
			s.failed = append(s.failed, Lit(l.Dimacs()))
		}
		s.never = s.failed == nil
		return false
	}
	s.found = s.found[:0]
	for v := Lit(1); v <= s.count; v++ {
		s.found = append(s.found, s.gini.Value(z.Dimacs2Lit(int(v))))
	}
	return true
}

func (s *solver) Holds(l Lit) bool {
	switch {
	case l < 0:
		return !s.Holds(-l)
	case int(l) > len(s.found):
		return false
	}
	return s.found[l-1]
}

func (s *solver) Failed() []Lit { return s.failed }
