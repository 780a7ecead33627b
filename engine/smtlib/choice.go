package smtlib

import (
	"crus/engine/cell"
	"crus/engine/ruleset"
)

// decision is what becomes of a choice, as conditions over the measures.
type decision struct {
	spoken   expr // a rule in force advises on it
	decided  expr // every rule that advises on it is in force or known not to be, or all that bears on it is recorded
	conflict expr // limits leave nothing
	several  expr // several options are level, or a range is open
	prefers  expr // of what is level or open: a rule in force prefers some of it

	options []expr // which is picked or level, where it has options
	settled expr   // of a number: it is one
	lo, hi  expr   // of a number: from, to
}

// view is what one limb sees, with what makes each rule in force there.
type view struct {
	*row
	force func(rule int) form
}

// said is one thing that is said of a choice.
type said struct {
	*cell.Say
	speaks expr
	at     expr // of a number, in the choice's unit
}

// decide defines what becomes of a choice, of one limb or of all that are seen; prefix begins the names of what it defines.
func (w *writer) decide(t *cell.Topic, views []view, prefix string) decision {
	var d decision
	var all []said
	var decided, spoken, recorded []expr
	for i := range t.Says {
		s := &t.Says[i]
		computed := s.Advice.Term != nil && !s.Advice.Fixed
		var once []expr
		for _, v := range views {
			f := v.force(s.Rule.Index)
			if !f.total() {
				decided = append(decided, or(f.yes, f.no))
			}
			if computed { // what a formula gives counts for each limb, unless it fails
				n := v.term(s.Advice.Term)
				decided = append(decided, or(n.known, f.no))
				all = append(all, said{s, and(f.yes, n.known), inUnit(n.value, t)})
			} else {
				once = append(once, f.yes)
			}
			if !s.Rule.Limb {
				break
			}
		}
		if !computed {
			x := said{Say: s, speaks: w.named(prefix+"/"+s.Rule.Name+"."+string(s.Advice.Verb), or(once...), len(once) > 1)}
			if s.Advice.Term != nil {
				x.at = real(s.Advice.At)
			}
			all = append(all, x)
		}
	}
	for _, s := range all {
		spoken = append(spoken, s.speaks)
	}
	for _, v := range views {
		for _, axis := range t.Reads {
			recorded = append(recorded, v.measures[axis].known)
		}
	}
	d.spoken = w.named(prefix+"/advised_on", or(spoken...), true)
	d.decided = w.named(prefix+"/decided", or(and(decided...), and(recorded...)), true)
	if t.Numeric() {
		w.decideNumber(t, all, prefix, &d)
	} else {
		w.decideOptions(t, all, prefix, &d)
	}
	return d
}

// named defines a name for a condition, unless it is not wanted, or as short as a name.
func (w *writer) named(name string, e expr, wanted bool) expr {
	if e.list == nil || !wanted {
		return e
	}
	return w.defined(name, "Bool", e)
}

// decideOptions defines which options limits leave, how much each of these is favoured, and which are level. A strong
// rule weighs more than all conditional ones together.
func (w *writer) decideOptions(t *cell.Topic, all []said, prefix string, d *decision) {
	conditional := 0
	for _, s := range all {
		if s.Advice.Favours != 0 && s.Rule.Strength == ruleset.Conditional {
			conditional++
		}
	}
	var left, weights, count []expr
	for i, option := range t.Options {
		var removed, favoured []expr
		for _, s := range all {
			if s.Advice.Removes>>i&1 == 1 {
				removed = append(removed, s.speaks)
			}
			if s.Advice.Favours>>i&1 == 1 {
				by := 1
				if s.Rule.Strength == ruleset.Strong {
					by = conditional + 1
				}
				favoured = append(favoured, either(s.speaks, whole(float64(by)), whole(0)))
			}
		}
		left = append(left, w.named(prefix+"/"+option+"=left", not(or(removed...)), true))
		weight := either(left[i], sum(whole(0), favoured...), whole(-1))
		if weight.list != nil {
			weight = w.defined(prefix+"/"+option+"=weight", "Int", weight)
		}
		weights = append(weights, weight)
	}
	best := weights[0]
	for _, x := range weights[1:] {
		best = call("more", best, x)
	}
	best = w.defined(prefix+"/best", "Int", best)
	for i, option := range t.Options {
		level := w.named(prefix+"/"+option+"=level", and(left[i], call("=", weights[i], best)), true)
		count = append(count, either(level, whole(1), whole(0)))
		d.options = append(d.options, either(d.spoken, level, truth(t.HasDefault && t.Default == option, yes())))
	}
	d.conflict = not(or(left...))
	d.several = and(d.spoken, call(">=", sum(whole(0), count...), whole(2)))
	d.prefers = call(">", best, whole(0))
}

// differs says that two decisions on a choice advise something else. Picking an option by default or by a rule makes no
// difference.
func (d decision) differs(e decision, t *cell.Topic) expr {
	out := []expr{differ(d.conflict, e.conflict)}
	if !t.HasDefault {
		out = append(out, differ(d.spoken, e.spoken))
	}
	for i := range d.options {
		out = append(out, differ(d.options[i], e.options[i]))
	}
	if t.Numeric() {
		out = append(out, differ(d.settled, e.settled), differ(d.several, e.several),
			and(or(d.settled, d.several), or(not(call("=", d.lo, e.lo)), not(call("=", d.hi, e.hi)))))
	}
	return or(out...)
}

// differ says that one of two conditions holds and the other does not.
func differ(a, b expr) expr {
	switch {
	case a.equal(b):
		return no()
	case a.is("false"):
		return b
	case b.is("false"):
		return a
	}
	return call("xor", a, b)
}
