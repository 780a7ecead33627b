package reason

import (
	"slices"

	"github.com/google/cel-go/common/types/ref"
)

// scope is everything worked out for one limb, or for the person alone: facts, then each rule's
// own truth, then which rules are in force.
type scope struct {
	*frame
	e        *Engine
	own      []truth // by rule; of rules that run in this scope
	state    []string
	waits    [][]string
	aside    [][]string
	traces   []*Trace // by rule
	forms    map[*advice]form
	facts    []*Trace
	cautions []cautioned
}

// cautioned is a caution as worked out.
type cautioned struct {
	truth truth
	waits []string
	trace *Trace
}

// work works one scope out. Facts, rules and cautions that read no limb are taken from person,
// which is nil when the person itself is worked out.
func (e *Engine) work(f *frame, person *scope) *scope {
	s := &scope{frame: f, e: e, own: make([]truth, len(e.rules)), state: make([]string, len(e.rules)),
		waits: make([][]string, len(e.rules)), aside: make([][]string, len(e.rules)), traces: make([]*Trace, len(e.rules)),
		forms: map[*advice]form{}, facts: make([]*Trace, len(e.facts)), cautions: make([]cautioned, len(e.cautions))}
	for i, x := range e.facts {
		switch {
		case x.Limb == (person != nil):
			v, step := x.prog.show(f)
			f.values[x.slot] = v
			s.facts[i] = &Trace{Place: x.place, When: step, Because: f.fill(x.Part, x.Because), Cites: x.Cites}
		case person != nil:
			f.values[x.slot] = person.values[x.slot]
		}
	}
	for i, x := range e.rules {
		switch {
		case x.Limb == (person != nil):
			s.rule(i, x)
		case person != nil:
			s.own[i], s.waits[i], s.traces[i] = person.own[i], person.waits[i], person.traces[i]
			for _, a := range x.advise {
				s.forms[a] = person.forms[a]
			}
		}
	}
	s.override(person != nil)
	for i, x := range e.cautions {
		if x.Limb == (person != nil) {
			s.caution(i, x)
		}
	}
	return s
}

// condition works out one part of a rule's condition and notes what it waits for.
func (s *scope) condition(p *program, into map[int]bool) (truth, *Step) {
	if p == nil {
		return yes, nil
	}
	v, step := p.show(s.frame)
	t := truthOf(v)
	if t == unknown {
		waits(v, into)
	}
	return t, step
}

func (s *scope) rule(i int, x *rule) {
	slots := map[int]bool{}
	t := &Trace{Place: x.place, Because: s.fill(x.Part, x.Because), Cites: x.Cites}
	applies, step := s.condition(x.applies, slots)
	t.Applies = step
	when, step := s.condition(x.when, slots)
	t.When = step
	unless, step := s.condition(x.unless, slots)
	t.Unless = step
	s.own[i] = both(both(applies, when), not(unless, x.unless == nil))
	if s.own[i] == unknown {
		s.waits[i] = s.layout.paths(slots)
	}
	for _, a := range x.advise {
		effect := Effect{Choice: a.Choice.Name, Verb: string(a.Verb), Options: a.Options}
		f := form{advice: a, known: true}
		if a.formula != nil {
			var v ref.Val
			v, effect.Formula = a.formula.show(s.frame)
			f.value, f.known = number(v, a.Choice.Unit)
		}
		s.forms[a] = f
		t.Advises = append(t.Advises, effect)
	}
	s.traces[i] = t
}

// override settles which rules are in force. In the person's scope, rules that a limb's rule could
// set aside are not there (they run per limb).
func (s *scope) override(limb bool) {
	for _, i := range topDown(s.e.rules) {
		x := s.e.rules[i]
		if !limb && x.Limb {
			s.state[i] = DidNotFire
			continue
		}
		s.state[i] = overridden(s.own[i], x.overriders, s.state)
		switch s.state[i] {
		case SetAside:
			for _, o := range x.overriders {
				if s.state[o] == Fired {
					s.aside[i] = append(s.aside[i], s.e.rules[o].Name)
				}
			}
			s.waits[i] = nil
		case Pending:
			for _, o := range x.overriders {
				if s.state[o] == Pending {
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
	slots := map[int]bool{}
	c := cautioned{trace: &Trace{Place: x.place, Cites: x.Cites}}
	applies, step := s.condition(x.applies, slots)
	c.trace.Applies = step
	when, step := s.condition(x.when, slots)
	c.trace.When = step
	if c.truth = both(applies, when); c.truth == unknown {
		c.waits = s.layout.paths(slots)
	}
	s.cautions[i] = c
}

// effects lists what the rules in force say of a choice, in the order of the rules.
func (s *scope) effects(choice string) (out []effect) {
	for _, x := range s.e.rules {
		if s.state[x.index] != Fired {
			continue
		}
		for _, a := range x.advise {
			if f := s.forms[a]; a.Choice.Name == choice && f.known {
				out = append(out, effect{a, f.value})
			}
		}
	}
	return out
}
