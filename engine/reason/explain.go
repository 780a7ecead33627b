package reason

import (
	"slices"
	"strconv"

	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// options says of every option why it was or was not picked.
func (r *run) options(c *vocab.Choice, v Verdict, effects []effect, out *Choice) {
	if v.Status == IsOpen {
		out.Among = named(c, v.Mask)
	}
	if v.Status == Conflict {
		out.Conflict = conflictOptions(c, effects)
	}
	weights := weigh(effects)
	best := weight{}
	for i := range c.Options {
		if v.Mask>>i&1 == 1 {
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
		picked := v.Mask>>i&1 == 1
		switch {
		case removed != nil:
			o.State, o.By, o.Favoured = Removed, removed, favoured
			o.Why = "Removed by " + list(removed, "and") + "."
			if favoured != nil {
				o.Why = "Favoured by " + list(favoured, "and") + ", but removed by " + list(removed, "and") + "."
			}
		case picked && v.Status == IsOpen:
			o.State, o.By = Level, orEmpty(favoured)
			o.Why = "Level with the others: " + favourWords(weights[i], favoured) + "."
		case picked:
			o.State, o.By = Picked, orEmpty(favoured)
			o.Why = pickedWhy(v, weights[i], favoured)
		case v.Status == Default:
			o.State, o.Why = Outweighed, silentWhy(v)
		case v.Status == Unanswered || v.Status == LeftToClinician:
			o.State, o.Why = Level, silentWhy(v)
		default:
			o.State, o.By = Outweighed, orEmpty(favoured)
			o.Why = "Still possible, but " + favourWords(weights[i], favoured) + "; the one ahead has " + countWords(best) + "."
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

func silentWhy(v Verdict) string {
	switch v.Status {
	case Default:
		return "No rule spoke, and it is not the default."
	case LeftToClinician:
		return "The protocol leaves this to the clinician."
	}
	return "No rule spoke."
}

func pickedWhy(v Verdict, w weight, favoured []string) string {
	switch {
	case v.Status == Default:
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
	return "favoured by " + list(by, "and") + " (" + countWords(w) + ")"
}

func countWords(w weight) string {
	switch {
	case w.strong == 0 && w.conditional == 0:
		return "none"
	case w.conditional == 0:
		return strconv.Itoa(w.strong) + " strong"
	case w.strong == 0:
		return strconv.Itoa(w.conditional) + " conditional"
	}
	return strconv.Itoa(w.strong) + " strong, " + strconv.Itoa(w.conditional) + " conditional"
}

// numbers says of every limit and aim what it did.
func (r *run) numbers(c *vocab.Choice, v Verdict, effects []effect, out *Choice) {
	out.Unit = c.Unit.Code
	b := bound(c, effects)
	if !b.empty() {
		out.Interval = &[2]float64{b.lo, b.hi}
	}
	if v.Status == IsOpen {
		out.Range = &[2]float64{v.Lo, v.Hi}
	}
	if v.Status == Conflict {
		out.Conflict = conflictNumbers(c, effects)
	}
	deciding := map[*advice]bool{}
	for _, f := range aims(effects) {
		deciding[f.advice] = true
	}
	for _, f := range effects {
		n := Number{Rule: f.rule.Name, Verb: string(f.Verb), Value: f.value, Off: f.off, Strength: string(f.rule.Strength), State: "limit"}
		if f.Verb == ruleset.Aim {
			n.State = Outweighed
			if deciding[f.advice] && v.Status != Conflict {
				n.State = "decides"
			}
			if at := b.near(f.value); !b.empty() && at != f.value {
				n.Moved = &at
			}
		}
		out.Numbers = append(out.Numbers, n)
	}
	if v.Status == Settled || v.Status == IsOpen {
		out.PlusMinus = b.off(v, effects)
	}
}

// off gives how far the result could be off: the widest band of the aims that decide, and of the limits that
// move an aim or are themselves an end of what is left. nil where none is known.
func (b bounds) off(v Verdict, effects []effect) (widest *float64) {
	decide := aims(effects)
	counts := func(f effect) bool {
		if f.Verb == ruleset.Aim {
			return b.near(f.value) == f.value && slices.ContainsFunc(decide, func(g effect) bool { return g.advice == f.advice })
		}
		moves := slices.ContainsFunc(decide, func(g effect) bool { return b.near(g.value) == f.value && g.value != f.value })
		return moves || decide == nil && (f.value == v.Lo || f.value == v.Hi)
	}
	for _, f := range effects {
		if f.off != nil && counts(f) && (widest == nil || f.off.PlusMinus > *widest) {
			widest = &f.off.PlusMinus
		}
	}
	return widest
}

// did says in a sentence what one advice of a rule did.
func (r *run) did(s *scope, x *rule, a *advice, out *Result) string {
	if s.state[x.index] != fired {
		return [...]string{didNotFire: "Nothing: the rule did not fire.", pending: "Nothing: the rule is pending.", setAside: "Nothing: the rule is set aside."}[s.state[x.index]]
	}
	if a.formula == nil {
		return a.does
	}
	f := s.form(a)
	if !f.known {
		return "Nothing yet: its number can't be worked out."
	}
	at := measuredWords(f.value, a.Choice.Unit)
	switch a.Verb {
	case ruleset.AtLeast:
		return "Not below " + at + "."
	case ruleset.AtMost:
		return "Not above " + at + "."
	}
	return "Aimed at " + at + r.moved(x, f.value, a.Choice, out) + "."
}

// does says in a sentence what an advice on options does where its rule fires.
func does(a *ruleset.Advice) string {
	if a.Verb == ruleset.Favour {
		return "Favoured " + list(plain(a.Options), "and") + "."
	}
	gone := named(a.Choice, Removes(a))
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
