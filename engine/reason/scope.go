package reason

import (
	"slices"

	"github.com/google/cel-go/common/types"

	"crus/engine/clinical"
)

// scope is everything worked out for one limb, or for the person alone: facts, then each rule's
// own truth, then which rules are in force.
type scope struct {
	*frame
	e        *Engine
	person   *scope // nil where this is the person
	facts    []*Trace
	rules    []*ruling // nil for a rule of the limbs where this is the person
	state    []force   // of each rule
	forms    []form    // of each formula that is advised
	cautions []cautioned
}

// ruling is a rule as worked out.
type ruling struct {
	own   truth
	waits []string
	aside []string
	trace *Trace
	table *table // nil where completing the assessment can't change its own truth
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
// of the rules. A rule that runs for the person is the same for each limb: whatever overrides it
// runs for the person too.
func (s *scope) work(c *completer) {
	s.rules, s.state = make([]*ruling, len(s.e.rules)), make([]force, len(s.e.rules))
	s.forms, s.cautions = make([]form, s.e.formulas), make([]cautioned, len(s.e.cautions))
	for i, x := range s.e.rules {
		switch {
		case s.runs(x.Limb):
			s.rules[i] = s.rule(x)
			s.rules[i].table = c.truths(s.frame, s.rules[i].own, x.reads, x.needs, x.truth)
			for _, a := range x.advise {
				if a.formula != nil {
					s.forms[a.index].table = c.numbers(s.frame, s.forms[a.index].known, a)
				}
			}
		case s.person != nil:
			s.rules[i], s.state[i] = s.person.rules[i], s.person.state[i]
			for _, a := range x.advise {
				if a.formula != nil {
					s.forms[a.index] = s.person.forms[a.index]
				}
			}
		}
	}
	for _, i := range s.e.down {
		if x := s.e.rules[i]; s.runs(x.Limb) {
			s.override(x, s.rules[i])
		}
	}
	s.doubt()
	for i, x := range s.e.cautions {
		if s.runs(x.Limb) {
			s.caution(i, x)
		}
	}
}

// doubt works out how far the numbers of the rules in force could be off.
func (s *scope) doubt() {
	for i, x := range s.e.rules {
		if s.state[i] != fired {
			continue
		}
		for _, a := range x.advise {
			if a.off == nil || !s.forms[a.index].known {
				continue
			}
			if s.runs(x.Limb) {
				s.forms[a.index].off = a.off.of(s.e, s.frame)
			} else {
				s.forms[a.index].off = s.person.forms[a.index].off
			}
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

func (s *scope) rule(x *rule) *ruling {
	t := &Trace{Place: x.place, Because: s.fill(x.Part, x.Because), Cites: x.Cites}
	var applies, when, unless truth
	applies, t.Applies = s.condition(x.applies)
	when, t.When = s.condition(x.when)
	unless, t.Unless = s.condition(x.unless)
	out := &ruling{own: both(both(applies, when), not(unless, x.unless == nil)), trace: t}
	if out.own == unknown {
		slots := x.applies.waits(t.Applies, nil)
		slots = x.when.waits(t.When, slots)
		out.waits = s.layout.paths(x.unless.waits(t.Unless, slots))
	}
	t.Advises = make([]Effect, len(x.advise))
	for j, a := range x.advise {
		t.Advises[j] = Effect{Choice: a.Choice.Name, Verb: string(a.Verb), Options: a.Options}
		if a.formula != nil {
			v, step := a.formula.show(s.frame)
			t.Advises[j].Formula = step
			at, known := number(v, a.Choice.Unit)
			s.forms[a.index] = form{advice: a, value: at, known: known}
		}
	}
	return out
}

// form gives an advice with its number, if it has one.
func (s *scope) form(a *advice) form {
	if a.formula == nil {
		return form{advice: a, known: true}
	}
	return s.forms[a.index]
}

// override settles whether a rule is in force, once that is settled of those that override it.
func (s *scope) override(x *rule, r *ruling) {
	s.state[x.index] = overridden(r.own, x.overriders, s.state)
	for _, o := range x.overriders {
		switch {
		case s.state[x.index] == setAside && s.state[o] == fired:
			r.aside = append(r.aside, s.e.rules[o].Name)
		case s.state[x.index] == pending && s.state[o] == pending:
			for _, w := range s.rules[o].waits {
				if !slices.Contains(r.waits, w) {
					r.waits = append(slices.Clip(r.waits), w)
				}
			}
		}
	}
	if s.state[x.index] == setAside {
		r.waits = nil
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
func (s *scope) effects(t *topic) []effect {
	out := make([]effect, 0, len(t.advice))
	for _, a := range t.advice {
		if s.state[a.rule.index] == fired {
			if f := s.form(a); f.known {
				out = append(out, effect{a, f.value, f.off})
			}
		}
	}
	return out
}

// failure says why a rule that waits, or a number of one in force, can't be worked out; "" where it can.
func (s *scope) failure(i int) string {
	w := s.rules[i]
	switch {
	case w == nil:
	case w.own == unknown:
		return w.trace.failure()
	case s.state[i] == fired:
		for j, a := range s.e.rules[i].advise {
			if a.formula != nil && !s.form(a).known {
				if why := w.trace.Advises[j].Formula.failure(); why != "" {
					return why
				}
			}
		}
	}
	return ""
}
