package prove

import (
	"math"

	"crus/engine/cell"
	"crus/engine/clause"
	"crus/engine/reason"
	"crus/engine/ruleset"
)

// bounds gives where the number of a piece of advice lies over all full assessments, in the choice's unit: never too
// narrow, sometimes too wide.
func (a *asker) bounds(s cell.Say) (lo, hi float64) {
	if s.Advice.Fixed {
		return s.Advice.At, s.Advice.At
	}
	all := box{}
	for i, l := range a.frame.Lines(1) {
		lo, hi := l.Range()
		if never, may := l.Never(); may {
			hi = never
		}
		all[i] = reach{lo, hi, l.Missing}
	}
	r := (&trial{asker: a, query: a.begin(1)}).enclose(all, 0, s.Advice.Term)
	for _, x := range []*float64{&r.lo, &r.hi} {
		if !math.IsInf(*x, 0) {
			*x = reason.InUnit(*x, s.Advice.Choice)
		}
	}
	return r.lo, r.hi
}

// leaves reports whether a limit, whatever number it gives, leaves something of its choice; with another limit: of what
// that one leaves.
func (a *asker) leaves(s cell.Say, other *cell.Say) bool {
	lo, hi := a.bounds(s)
	least, most := s.Advice.Choice.Between.Lo, s.Advice.Choice.Between.Hi
	switch {
	case other == nil:
	case other.Advice.Verb == ruleset.AtLeast:
		_, least = a.bounds(*other)
	default:
		most, _ = a.bounds(*other)
	}
	if s.Advice.Verb == ruleset.AtLeast {
		return hi <= most
	}
	return lo >= least
}

// sure reports whether everything that is advised on a choice can be worked out on every full assessment.
func (a *asker) sure(topic int) bool {
	t := a.Topics[topic]
	for _, i := range t.Reads {
		if _, never := a.Axes[i].Never(); never || a.frame.Missing[i] {
			return false
		}
	}
	for _, s := range t.Says {
		if s.Advice.Term != nil && !a.frame.Surely(s.Advice.Term) {
			return false
		}
	}
	return true
}

// beyond gives a literal that holds at least where a rule in force says a number of a choice that its other end rules out: where
// the rule asks how large that number is, its answer says whether it can be.
func (q *query) beyond(a *asker, says clause.Lit, s cell.Say) clause.Lit {
	for _, w := range q.Worked {
		x := a.Axes[w.X]
		if x.Term != s.Advice.Term || q.Rows > 1 {
			continue
		}
		var in []clause.Lit
		for c := range x.Count() {
			span := x.Span(c)
			lo, hi := s.Advice.Choice.Unit.FromBase(span.Lo), s.Advice.Choice.Unit.FromBase(span.Hi)
			if s.Advice.Verb == ruleset.AtLeast && hi > s.Advice.Choice.Between.Hi || s.Advice.Verb == ruleset.AtMost && lo < s.Advice.Choice.Between.Lo {
				in = append(in, q.And(q.FormulaIs(w, c)...))
			}
		}
		return q.And(says, q.Or(in...))
	}
	return says
}
