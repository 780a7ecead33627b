package reason

import (
	"slices"

	"github.com/google/cel-go/common/types"

	"crus/engine/clinical"
	"github.com/google/cel-go/common/types/ref"
)

// scope is everything worked out for one limb, or for the person alone: facts, then each rule's
// own truth, then which rules are in force.
type scope struct {
	*frame
	e        *Engine
	person   *scope  // nil where this is the person
	own      []truth // by rule; of rules that run in this scope
	state    []force
	waits    [][]string
	aside    [][]string
	traces   []*Trace // by rule
	forms    []form   // by advice
	tables   []*table // by rule; nil where completing the assessment can't change its own truth
	facts    []*Trace
	cautions []cautioned
}

// cautioned is a caution as worked out.
type cautioned struct {
	truth truth
	waits []string
	trace *Trace
}

// newScope works out the facts of a scope. Those that read no limb are taken from person, which is
// nil when the person itself is worked out.
func (e *Engine) newScope(f *frame, person *scope) *scope {
	s := &scope{frame: f, e: e, person: person, facts: make([]*Trace, len(e.facts))}
	for i, x := range e.facts {
		switch {
		case s.runs(x.Limb):
			v, step := x.prog.show(f)
			if types.IsUnknown(v) {
				v = e.layout.waitFor(x.prog.waits(step, nil))
			}
			if q, ok := v.(clinical.Quantity); ok { // shown in the unit that the author gave it
				v = q.WithUnit(*x.Quantity)
				step.Value = Value{v}
			}
			f.values[x.slot] = v
			s.facts[i] = &Trace{Place: x.place, When: step, Cites: x.Cites}
		case person != nil:
			f.values[x.slot] = person.values[x.slot]
		}
	}
	for i, x := range e.facts { // a text may name any fact, so all are worked out before
		if t := s.facts[i]; t != nil {
			t.Because = f.fill(x.Part, x.Because)
		}
	}
	return s
}

// runs reports whether what reads a limb, or reads none, runs in this scope.
func (s *scope) runs(limb bool) bool { return limb == (s.person != nil) }

// work works out the rules and cautions of a scope, and what completing the assessment could make
// of the rules.
func (s *scope) work(c *completer) {
	n := len(s.e.rules)
	s.own, s.state, s.waits, s.aside = make([]truth, n), make([]force, n), make([][]string, n), make([][]string, n)
	s.tables = make([]*table, n)
	s.traces, s.forms, s.cautions = make([]*Trace, n), make([]form, s.e.advices), make([]cautioned, len(s.e.cautions))
	for i, x := range s.e.rules {
		switch {
		case s.runs(x.Limb):
			s.rule(i, x)
			s.tables[i] = c.truths(s.frame, s.own[i], x.reads, x.needs, x.truth)
			for _, a := range x.advise {
				if f := &s.forms[a.index]; a.formula != nil {
					f.table = c.numbers(s.frame, f.known, a)
				}
			}
		case s.person != nil:
			s.own[i], s.waits[i], s.traces[i], s.tables[i] = s.person.own[i], s.person.waits[i], s.person.traces[i], s.person.tables[i]
			for _, a := range x.advise {
				s.forms[a.index] = s.person.forms[a.index]
			}
		}
	}
	s.override()
	for i, x := range s.e.cautions {
		if s.runs(x.Limb) {
			s.caution(i, x)
		}
	}
}

// condition works out one part of a rule's condition.
func (s *scope) condition(p *program) (truth, *Step) {
	if p == nil {
		return yes, nil
	}
	v, step := p.show(s.frame)
	return truthOf(v), step
}

func (s *scope) rule(i int, x *rule) {
	t := &Trace{Place: x.place, Because: s.fill(x.Part, x.Because), Cites: x.Cites}
	var applies, when, unless truth
	applies, t.Applies = s.condition(x.applies)
	when, t.When = s.condition(x.when)
	unless, t.Unless = s.condition(x.unless)
	s.own[i] = both(both(applies, when), not(unless, x.unless == nil))
	if s.own[i] == unknown {
		slots := x.applies.waits(t.Applies, nil)
		slots = x.when.waits(t.When, slots)
		s.waits[i] = s.layout.paths(x.unless.waits(t.Unless, slots))
	}
	t.Advises = make([]Effect, len(x.advise))
	for j, a := range x.advise {
		t.Advises[j] = Effect{Choice: a.Choice.Name, Verb: string(a.Verb), Options: a.Options}
		f := form{advice: a, known: true}
		if a.formula != nil {
			var v ref.Val
			v, t.Advises[j].Formula = a.formula.show(s.frame)
			f.value, f.known = number(v, a.Choice.Unit)
		}
		s.forms[a.index] = f
	}
	s.traces[i] = t
}

// override settles which rules are in force. In the person's scope, rules that a limb's rule could
// set aside are not there (they run per limb).
func (s *scope) override() {
	for _, i := range s.e.down {
		x := s.e.rules[i]
		if s.person == nil && x.Limb {
			s.state[i] = didNotFire
			continue
		}
		s.state[i] = overridden(s.own[i], x.overriders, s.state)
		switch s.state[i] {
		case setAside:
			for _, o := range x.overriders {
				if s.state[o] == fired {
					s.aside[i] = append(s.aside[i], s.e.rules[o].Name)
				}
			}
			s.waits[i] = nil
		case pending:
			for _, o := range x.overriders {
				if s.state[o] == pending {
					for _, w := range s.waits[o] {
						if !slices.Contains(s.waits[i], w) {
							s.waits[i] = append(s.waits[i][:len(s.waits[i]):len(s.waits[i])], w)
						}
					}
				}
			}
		}
	}
}

func (s *scope) caution(i int, x *caution) {
	t := &Trace{Place: x.place, Cites: x.Cites}
	var applies, when truth
	applies, t.Applies = s.condition(x.applies)
	when, t.When = s.condition(x.when)
	c := cautioned{truth: both(applies, when), trace: t}
	if c.truth == unknown {
		c.waits = s.layout.paths(x.when.waits(t.When, x.applies.waits(t.Applies, nil)))
	}
	s.cautions[i] = c
}

// effects lists what the rules in force say of a choice, in the order of the rules.
func (s *scope) effects(t *topic) (out []effect) {
	for _, a := range t.advice {
		if s.state[a.rule.index] == fired {
			if f := s.forms[a.index]; f.known {
				out = append(out, effect{a, f.value})
			}
		}
	}
	return out
}
