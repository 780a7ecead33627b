package reason

import (
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// Said is one thing that a rule in force says of a choice.
type Said struct {
	Rule   int     // its place in Ruleset.Rules
	Advice int     // its place in the rule's Advise
	Value  float64 // of a number, in the choice's unit
}

// Decide gives the verdict on a choice from what the rules in force say of it, in the order of the rules. It is
// what Advise does where nothing is missing.
func (e *Engine) Decide(c *vocab.Choice, said []Said) Verdict {
	effects := make([]effect, len(said))
	for i, s := range said {
		effects[i] = effect{advice: e.rules[s.Rule].advise[s.Advice], value: s.Value}
	}
	return e.decideChoice(c, effects)
}

// Silent gives the verdict on a choice of which no rule in force speaks.
func (e *Engine) Silent(c *vocab.Choice) Verdict { return e.silent(c) }

// InUnit gives a base number in the unit of a choice with a number, rounded as Advise does.
func InUnit(base float64, c *vocab.Choice) float64 {
	return tidy(c.Unit.FromBase(base))
}

// Overriders lists the rules that override a rule, by their places in Ruleset.Rules.
func (e *Engine) Overriders(rule int) []int { return e.rules[rule].overriders }

// Down lists all rules, each after those that override it.
func (e *Engine) Down() []int { return e.down }

// Bears lists the rules that bear on a choice: those that advise on it and those that could set these aside,
// each after those that override it.
func (e *Engine) Bears(c *vocab.Choice) []int { return e.topics[c].bears }

// Guard gives what must hold for the rules and cautions of a part; nil where nothing must.
func Guard(p *ruleset.Part) *ruleset.Expr { return guard(p) }
