package reason

import (
	"math/bits"
	"slices"

	"crus/engine/vocab"
)

// decideChoice gives the verdict on a choice from what the rules in force say of it.
func (e *Engine) decideChoice(c *vocab.Choice, effects []effect) Verdict {
	if c.Numeric() {
		return e.decideNumber(c, effects)
	}
	return e.decideOptions(c, effects)
}

// choice works out one choice: its verdict, every option's or number's part in it, and what
// completing the assessment could change.
func (r *run) choice(s *scope, c *vocab.Choice, m *missing) *Choice {
	scopes := []*scope{s}
	if c.Of == vocab.Person {
		scopes = r.limbs
		if len(scopes) == 0 {
			scopes = []*scope{r.person}
		}
	}
	effects := pooled(scopes, r.e.topics[c])
	v := r.e.decideChoice(c, effects)
	var found answers
	if q := r.question(scopes, c, v); q != nil {
		if found = q.explore(s.side); found.agreed != nil { // it stands, although data are missing
			v, effects = found.agreed.Verdict, found.agreed.effects
		}
	}
	out := &Choice{Status: v.Status, Value: value(c, v), Provisional: found.provisional, Explored: found.explored, Whatever: found.agreed != nil}
	if c.Numeric() {
		r.numbers(c, v, effects, out)
	} else {
		r.options(c, v, effects, out)
	}
	if o := r.e.open[c]; o != nil && (v.Status == LeftToClinician || v.Status == IsOpen) {
		out.Because = s.fill(o.Part, o.Because)
		for _, t := range o.Consider {
			out.Consider = append(out.Consider, s.fill(o.Part, t))
		}
	}
	if found.provisional {
		for _, x := range scopes {
			for _, a := range r.e.topics[c].advice {
				if why := x.failure(a.rule.index); why != "" && !slices.Contains(out.Failed, Failure{a.rule.Name, why}) {
					out.Failed = append(out.Failed, Failure{a.rule.Name, why})
				}
			}
		}
	}
	out.CouldBecome = r.could(found, s.side, func(w Verdict) (string, any) { return w.Status, describeValue(c, w) })
	m.note(c.Name, ChoiceWeight(c), found)
	return out
}

// pooled gathers the effects on a choice in the order of the rules.
func pooled(scopes []*scope, t *topic) []effect {
	if len(scopes) == 1 {
		return scopes[0].effects(t)
	}
	var out []effect
	for _, s := range scopes {
		for _, f := range s.effects(t) {
			out = alsoSays(out, f)
		}
	}
	slices.SortStableFunc(out, func(a, b effect) int { return a.rule.index - b.rule.index })
	return out
}

// question gathers every rule that bears on a choice: those that advise on it, and those that
// could set these aside. It is nil where nothing that is missing bears on it.
func (r *run) question(scopes []*scope, c *vocab.Choice, base Verdict) *question {
	t := r.e.topics[c]
	if !slices.ContainsFunc(scopes, func(s *scope) bool { return s.undecided(t) }) {
		return nil
	}
	q := &question{c: r.completer, base: base}
	for _, s := range scopes {
		at := map[int]int{} // instance by rule
		could := make([]force, len(r.e.rules))
		for _, i := range t.bears {
			x := r.e.rules[i]
			if s.rules[i] == nil { // no limb to run on
				continue
			}
			in := &instance{rule: x, own: s.rules[i].own, table: s.rules[i].table}
			own := in.own
			if in.table != nil {
				own = unknown
			}
			if could[i] = overridden(own, x.overriders, could); could[i] == setAside || could[i] == didNotFire { // whatever is missing
				in.own, in.table = no, nil
			}
			for _, o := range x.overriders {
				in.over = append(in.over, at[o])
			}
			for _, a := range x.advise {
				if a.Choice == c && (in.own != no || in.table != nil) {
					in.forms = append(in.forms, s.form(a))
				}
			}
			at[i] = len(q.instances)
			q.instances = append(q.instances, in)
		}
	}
	q.decide(c)
	return q
}

// undecided reports whether something that is missing bears on a choice.
func (s *scope) undecided(t *topic) bool {
	for _, i := range t.bears {
		if w := s.rules[i]; w != nil && w.table != nil {
			return true
		}
	}
	for _, a := range t.advice {
		if s.form(a).table != nil {
			return true
		}
	}
	return false
}

// value gives the value of a verdict: an option, a number, or nil.
func value(c *vocab.Choice, v Verdict) any {
	if v.Status != Settled && v.Status != Default {
		return nil
	}
	if c.Numeric() {
		return v.Lo
	}
	return c.Options[bits.TrailingZeros64(v.Mask)]
}

// describeValue gives what a possible verdict would be: the value, the level options, or the range.
func describeValue(c *vocab.Choice, v Verdict) any {
	if v.Status != IsOpen {
		return value(c, v)
	}
	if c.Numeric() {
		return [2]float64{v.Lo, v.Hi}
	}
	return named(c, v.Mask)
}

func named(c *vocab.Choice, mask uint64) []string {
	out := []string{}
	for i, o := range c.Options {
		if mask>>i&1 == 1 {
			out = append(out, o)
		}
	}
	return out
}
