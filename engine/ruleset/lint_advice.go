package ruleset

import (
	"math"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// advice looks at what one rule says of each choice.
func (l *linter) advice(r *Rule) {
	seen := map[*vocab.Choice]bool{}
	for _, a := range r.Advise {
		if seen[a.Choice] {
			continue
		}
		seen[a.Choice] = true
		if a.Choice.Numeric() {
			l.numberAdvice(r, a.Choice)
		} else {
			l.optionAdvice(r, a.Choice)
		}
	}
}

func (l *linter) optionAdvice(r *Rule, c *vocab.Choice) {
	left := len(c.Options)
	kept := make([]bool, left)
	for i := range kept {
		kept[i] = true
	}
	for _, a := range r.Advise {
		if a.Choice != c || !a.Verb.Limit() {
			continue
		}
		removed := 0
		for i, o := range c.Options {
			if a.removes(o) {
				removed++
				if kept[i] {
					kept[i] = false
					left--
				}
			}
		}
		switch {
		case left == 0:
			l.warn(a.Where, "removes_all", "With this the rule "+r.Name+" leaves no option of "+c.Name+".",
				"Where it fires the choice is in conflict with itself: take a limit back.")
			return
		case removed == 0:
			l.warn(a.Where, "no_effect", "This limit removes no option of "+c.Name+".", "The options are "+source.And(c.Options)+".")
		}
	}
	for _, a := range r.Advise {
		if a.Choice != c || a.Verb != Favour {
			continue
		}
		if len(a.Options) == len(c.Options) {
			l.warn(a.Where, "no_effect", "This favours every option of "+c.Name+", and so none.", "Name those that are better than the others.")
			continue
		}
		for _, o := range a.Options {
			if !kept[c.Rank(o)] {
				l.warn(a.Where, "no_effect", "This favours "+o+", which the rule "+r.Name+" itself removes.", "Keep one of the two.")
			}
		}
	}
}

// removes reports whether a limit takes an option away.
func (a *Advice) removes(option string) bool {
	switch a.Verb {
	case Only:
		return !contains(a.Options, option)
	case Never:
		return contains(a.Options, option)
	case AtLeast:
		return a.Choice.Rank(option) < a.Choice.Rank(a.Options[0])
	case AtMost:
		return a.Choice.Rank(option) > a.Choice.Rank(a.Options[0])
	}
	return false
}

// numberAdvice looks at limits and aims that are plain numbers.
func (l *linter) numberAdvice(r *Rule, c *vocab.Choice) {
	lo, hi := c.Between.Lo, c.Between.Hi
	span := func() string { return amount(lo, c.Unit) + " to " + amount(hi, c.Unit) }
	for _, a := range r.Advise {
		at, constant := l.number(a)
		if a.Choice != c || !a.Verb.Limit() || !constant {
			continue
		}
		whole := span()
		switch a.Verb {
		case AtLeast:
			if at <= c.Between.Lo {
				l.warn(a.Where, "no_effect", "This limit takes nothing away: "+c.Name+" goes from "+whole+" anyway.", "Check the number and its unit.")
			}
			lo = math.Max(lo, at)
		case AtMost:
			if at >= c.Between.Hi {
				l.warn(a.Where, "no_effect", "This limit takes nothing away: "+c.Name+" goes from "+whole+" anyway.", "Check the number and its unit.")
			}
			hi = math.Min(hi, at)
		}
		if lo > hi {
			l.warn(a.Where, "removes_all", "With this the rule "+r.Name+" leaves no value of "+c.Name+", which could be "+whole+" without it.",
				"Where it fires the choice is in conflict with itself: check the numbers and their units.")
			return
		}
	}
	for _, a := range r.Advise {
		if at, constant := l.number(a); a.Choice == c && a.Verb == Aim && constant && (at < lo || at > hi) {
			l.warn(a.Where, "no_effect", "This aim lies outside of what is possible for "+c.Name+": "+span()+".",
				"It would be moved to the nearer end: aim at a value between the two.")
		}
	}
}

// number gives the value of a formula that is a plain number, in the unit of its choice.
func (l *linter) number(a *Advice) (float64, bool) {
	if a.Formula == nil {
		return 0, false
	}
	q, ok := Constant(l.rs.Vocabulary, a.Formula.AST.NativeRep().Expr()).(clinical.Quantity)
	if !ok {
		return 0, false
	}
	return q.In(a.Choice.Unit)
}

func amount(v float64, u clinical.Unit) string {
	q, err := clinical.NewQuantity(v, u)
	if err != nil {
		return ""
	}
	return q.String()
}

// overriding looks for rules that set aside a rule which speaks of other things.
func (l *linter) overriding(r *Rule) {
	for _, t := range r.overrides {
		over := l.rs.Rule(r.Part.overridden(t.S))
		if over == nil { // left out by except
			l.warn(t.All(), "no_effect", t.S+" is left out with except, so nothing is left to override.", "Take it out of overrides.")
			continue
		}
		if len(r.Advise) > 0 && len(over.Advise) > 0 && !shareChoice(r, over) {
			l.warn(t.All(), "no_shared_choice", r.Name+" overrides "+over.Name+", and the two advise on different choices.",
				"Where it fires, the advice of the other is lost without another in its place: check that this is meant.")
		}
	}
}

func shareChoice(a, b *Rule) bool {
	for _, x := range a.Advise {
		for _, y := range b.Advise {
			if x.Choice == y.Choice {
				return true
			}
		}
	}
	return false
}
