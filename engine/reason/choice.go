package reason

import (
	"fmt"
	"math/bits"
	"slices"

	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// decideChoice gives the verdict on a choice from what the rules in force say of it.
func (e *Engine) decideChoice(c *vocab.Choice, effects []effect) verdict {
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
	out := &Choice{Status: v.status, Value: value(c, v)}
	if c.Numeric() {
		r.numbers(c, v, effects, out)
	} else {
		r.options(c, v, effects, out)
	}
	if o := r.e.open[c]; o != nil && (v.status == LeftToClinician || v.status == IsOpen) {
		out.Because = s.fill(o.Part, o.Because)
		for _, t := range o.Consider {
			out.Consider = append(out.Consider, s.fill(o.Part, t))
		}
	}
	if q := r.question(scopes, c, v); q != nil {
		found := q.explore(s.side)
		out.Provisional, out.Explored = found.provisional, found.explored
		out.CouldBecome = r.could(found, s.side, func(w verdict) (string, any) { return w.status, describeValue(c, w) })
		m.note(c.Name, 1, found)
	}
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
func (r *run) question(scopes []*scope, c *vocab.Choice, base verdict) *question {
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
	q.answer = q.decide(c)
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
func value(c *vocab.Choice, v verdict) any {
	if v.status != Settled && v.status != Default {
		return nil
	}
	if c.Numeric() {
		return v.lo
	}
	return c.Options[bits.TrailingZeros64(v.mask)]
}

// describeValue gives what a possible verdict would be: the value, the level options, or the range.
func describeValue(c *vocab.Choice, v verdict) any {
	if v.status != IsOpen {
		return value(c, v)
	}
	if c.Numeric() {
		return [2]float64{v.lo, v.hi}
	}
	return named(c, v.mask)
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

// options says of every option why it was or was not picked.
func (r *run) options(c *vocab.Choice, v verdict, effects []effect, out *Choice) {
	if v.status == IsOpen {
		out.Among = named(c, v.mask)
	}
	if v.status == Conflict {
		out.Conflict = conflictOptions(c, effects)
	}
	weights := weigh(c, effects)
	best := weight{}
	for i := range c.Options {
		if v.mask>>i&1 == 1 {
			best = weights[i]
		}
	}
	out.Options = make([]Option, 0, len(c.Options))
	for i, name := range c.Options {
		o := Option{Option: name, By: []string{}}
		var removed, favoured []string
		for _, f := range effects {
			if f.removes>>i&1 == 1 {
				removed = addName(removed, f.rule.Name)
			}
			if f.favours>>i&1 == 1 {
				favoured = addName(favoured, f.rule.Name)
			}
		}
		picked := v.mask>>i&1 == 1
		switch {
		case removed != nil:
			o.State, o.By, o.Favoured = Removed, removed, favoured
			o.Why = "Removed by " + list(removed, "and") + "."
			if favoured != nil {
				o.Why = fmt.Sprintf("Favoured by %s, but removed by %s.", list(favoured, "and"), list(removed, "and"))
			}
		case picked && v.status == IsOpen:
			o.State, o.By = Level, orEmpty(favoured)
			o.Why = "Level with the others: " + favourWords(weights[i], favoured) + "."
		case picked:
			o.State, o.By = Picked, orEmpty(favoured)
			o.Why = pickedWhy(v, weights[i], favoured)
		case v.status == Default:
			o.State, o.Why = Outweighed, silentWhy(v)
		case v.status == Unanswered || v.status == LeftToClinician:
			o.State, o.Why = Level, silentWhy(v)
		default:
			o.State, o.By = Outweighed, orEmpty(favoured)
			o.Why = fmt.Sprintf("Still possible, but %s; the one ahead has %s.", favourWords(weights[i], favoured), countWords(best))
		}
		out.Options = append(out.Options, o)
	}
}

func addName(names []string, name string) []string {
	for _, n := range names {
		if n == name {
			return names
		}
	}
	return append(names, name)
}

func silentWhy(v verdict) string {
	switch v.status {
	case Default:
		return "No rule spoke, and it is not the default."
	case LeftToClinician:
		return "The protocol leaves this to the clinician."
	}
	return "No rule spoke."
}

func pickedWhy(v verdict, w weight, favoured []string) string {
	switch {
	case v.status == Default:
		return "No rule spoke: this is the default."
	case favoured == nil:
		return "The only one that the limits leave."
	}
	return "Ahead: " + favourWords(w, favoured) + "."
}

func favourWords(w weight, by []string) string {
	if by == nil {
		return "no rule favours it"
	}
	return fmt.Sprintf("favoured by %s (%s)", list(by, "and"), countWords(w))
}

func countWords(w weight) string {
	switch {
	case w.strong == 0 && w.conditional == 0:
		return "none"
	case w.conditional == 0:
		return fmt.Sprintf("%d strong", w.strong)
	case w.strong == 0:
		return fmt.Sprintf("%d conditional", w.conditional)
	}
	return fmt.Sprintf("%d strong, %d conditional", w.strong, w.conditional)
}

// numbers says of every limit and aim what it did.
func (r *run) numbers(c *vocab.Choice, v verdict, effects []effect, out *Choice) {
	out.Unit = c.Unit.Code
	b := bound(c, effects)
	if !b.empty() {
		out.Interval = &[2]float64{b.lo, b.hi}
	}
	if v.status == IsOpen {
		out.Range = &[2]float64{v.lo, v.hi}
	}
	if v.status == Conflict {
		out.Conflict = conflictNumbers(c, effects)
	}
	deciding := map[*advice]bool{}
	for _, f := range aims(effects) {
		deciding[f.advice] = true
	}
	for _, f := range effects {
		n := Number{Rule: f.rule.Name, Verb: string(f.Verb), Value: f.value, Strength: string(f.rule.Strength), State: "limit"}
		if f.Verb == ruleset.Aim {
			n.State = Outweighed
			if deciding[f.advice] && v.status != Conflict {
				n.State = "decides"
			}
			if at := b.near(f.value); !b.empty() && at != f.value {
				n.Moved = &at
			}
		}
		out.Numbers = append(out.Numbers, n)
	}
}

// did says in a sentence what one advice of a rule did.
func (r *run) did(s *scope, x *rule, a *advice, out *Result) string {
	if s.state[x.index] != fired {
		return [...]string{didNotFire: "Nothing: the rule did not fire.", pending: "Nothing: the rule is pending.", setAside: "Nothing: the rule is set aside."}[s.state[x.index]]
	}
	f := s.form(a)
	if !f.known {
		return "Nothing yet: its number can't be worked out."
	}
	c := a.Choice
	unit := ""
	if c.Numeric() {
		unit = measuredWords(f.value, c.Unit)
	}
	switch a.Verb {
	case ruleset.Favour:
		return "Favoured " + list(plain(a.Options), "and") + "."
	case ruleset.Aim:
		return "Aimed at " + unit + r.moved(x, f.value, c, out) + "."
	case ruleset.AtLeast, ruleset.AtMost:
		if c.Numeric() {
			return map[ruleset.Verb]string{ruleset.AtLeast: "Not below ", ruleset.AtMost: "Not above "}[a.Verb] + unit + "."
		}
	}
	gone := named(c, a.removes)
	if len(gone) == 0 {
		return "Removed nothing."
	}
	return "Removed " + list(plain(gone), "and") + "."
}

// moved says where the limits moved an aim, if they did. A rule that runs for the person and advises
// on the limbs can be moved differently on each; the choices there say it.
func (r *run) moved(x *rule, aim float64, c *vocab.Choice, out *Result) string {
	decided := out.Choices[c.Name]
	if decided == nil && c.Of == vocab.Person {
		decided = r.outcome.Person.Choices[c.Name]
	}
	if decided != nil {
		for _, n := range decided.Numbers {
			if n.Rule == x.Name && n.Verb == string(ruleset.Aim) && n.Value == aim && n.Moved != nil {
				return ", which the limits move to " + measuredWords(*n.Moved, c.Unit)
			}
		}
	}
	return ""
}

func plain(options []string) []string {
	out := make([]string, len(options))
	for i, o := range options {
		out[i] = words(o)
	}
	return out
}
