package smtlib

import (
	"crus/engine/cell"
	"crus/engine/ruleset"
)

// decision is what becomes of a choice, as conditions over the measures.
type decision struct {
	spoken   expr // a rule in force advises on it
	decided  expr // every rule that advises on it is in force, or known not to be
	prefers  expr // a rule in force prefers an option, or aims at a number
	conflict expr // limits leave nothing
	several  expr // several options are level, or a range is open

	options []expr // which is picked or level, where it has options
	settled expr   // of a number: it is one
	lo, hi  expr   // of a number: from, to
}

// forces gives what makes each rule in force: by its place among the rules.
type forces func(rule int) form

// decide defines what becomes of a choice where rules are in force as given; prefix begins the names of what it defines.
func (w *writer) decide(t *cell.Topic, force forces, prefix string) decision {
	var d decision
	var spoken, decided, prefers []expr
	for _, s := range t.Says {
		f := force(s.Rule.Index)
		speaks := f.yes
		if s.Advice.Term != nil { // a formula that fails says nothing
			v := w.term(s.Advice.Term).known
			speaks = and(speaks, v)
			decided = append(decided, or(v, f.no))
		}
		if !f.total() {
			decided = append(decided, or(f.yes, f.no))
		}
		spoken = append(spoken, speaks)
		if !s.Advice.Verb.Limit() {
			prefers = append(prefers, speaks)
		}
	}
	d.spoken = w.named(prefix+"/advised_on", or(spoken...))
	d.decided = w.named(prefix+"/decided", and(decided...))
	d.prefers = w.named(prefix+"/preferred", or(prefers...))
	if t.Numeric() {
		w.decideNumber(t, force, prefix, &d)
	} else {
		w.decideOptions(t, force, prefix, &d)
	}
	return d
}

// named defines a name for a condition, unless it is as short as a name.
func (w *writer) named(name string, e expr) expr {
	if e.list == nil {
		return e
	}
	return w.defined(name, "Bool", e)
}

// decideOptions defines which options limits leave, how much each of these is favoured, and which are level. A strong
// rule weighs more than all conditional ones together.
func (w *writer) decideOptions(t *cell.Topic, force forces, prefix string, d *decision) {
	conditional := 0
	for _, s := range t.Says {
		if s.Advice.Favours != 0 && s.Rule.Strength == ruleset.Conditional {
			conditional++
		}
	}
	var left, weights, level []expr
	for i, option := range t.Options {
		var removed, favoured []expr
		for _, s := range t.Says {
			f := force(s.Rule.Index).yes
			if s.Advice.Removes>>i&1 == 1 {
				removed = append(removed, f)
			}
			if s.Advice.Favours>>i&1 == 1 {
				by := 1
				if s.Rule.Strength == ruleset.Strong {
					by = conditional + 1
				}
				favoured = append(favoured, either(f, whole(float64(by)), whole(0)))
			}
		}
		left = append(left, w.named(prefix+"/"+option+"=left", not(or(removed...))))
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
	var count []expr
	for i, option := range t.Options {
		level = append(level, w.named(prefix+"/"+option+"=level", and(left[i], call("=", weights[i], best))))
		count = append(count, either(level[i], whole(1), whole(0)))
		d.options = append(d.options, either(d.spoken, level[i], truth(t.HasDefault && t.Default == option, yes())))
	}
	d.conflict = not(or(left...))
	d.several = and(d.spoken, call(">=", sum(whole(0), count...), whole(2)))
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
	case a.word == "" || b.word == "":
	case a.is("false"):
		return b
	case b.is("false"):
		return a
	}
	return call("xor", a, b)
}
