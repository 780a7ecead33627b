package cell

import (
	"fmt"

	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// New makes the cells of the ruleset of an engine. An error means that a checked condition can't be carried out,
// which is a fault of the program, not of the ruleset.
func New(e *reason.Engine) (*Space, error) {
	rs := e.Ruleset()
	c := &compiler{Space: &Space{Engine: e, Ruleset: rs, Down: e.Down()}, nodes: newNodes(), vocab: rs.Vocabulary, terms: map[termKey]*Term{}, formulas: map[*Term]int{},
		measures: map[measureKey]int{}, unclears: map[unclearKey]int{}, asked: map[string]int{}, facts: map[*ruleset.Fact]int{}}
	c.addMeasures()
	for i, f := range rs.Facts {
		c.facts[f] = i
		c.Facts = append(c.Facts, c.fact(f))
	}
	for _, p := range rs.Parts {
		if p.Root {
			c.Applies = c.condition(p.Applies, True)
		}
	}
	for i, r := range rs.Rules {
		c.Rules = append(c.Rules, c.rule(i, r))
	}
	for _, i := range c.Down { // an overrider's form is there before those of the rules that it overrides
		x := c.Rules[i]
		x.Force = x.Own
		for _, o := range x.Overriders {
			x.Force = c.and(x.Force, c.not(c.Rules[o].Force))
		}
	}
	for _, x := range rs.Cautions {
		when := c.condition(x.When, True)
		c.Cautions = append(c.Cautions, Caution{x, c.and(c.condition(reason.Guard(x.Part), True), when), when})
	}
	for i, x := range rs.Vocabulary.Choices {
		c.Topics = append(c.Topics, c.topic(i, x))
	}
	c.conditions()
	c.Nodes = c.list
	c.cut()
	for _, t := range c.Topics {
		t.Reads = c.readsOf(t)
	}
	if c.failure != nil {
		return nil, fmt.Errorf("a condition can't be asked part by part: %w", c.failure)
	}
	return c.Space, nil
}

// addMeasures gives every measure that is read, or named in a text, an axis.
func (c *compiler) addMeasures() {
	used := map[string]bool{}
	expr := func(xs ...*ruleset.Expr) {
		for _, x := range xs {
			if x != nil {
				for _, r := range x.Reads {
					used[r.Path] = true
				}
			}
		}
	}
	for _, p := range c.Ruleset.Parts {
		expr(p.Applies)
	}
	for _, f := range c.Ruleset.Facts {
		expr(f.Expr)
	}
	for _, r := range c.Ruleset.Rules {
		expr(r.When, r.Unless)
		for _, a := range r.Advise {
			expr(a.Formula)
		}
	}
	for _, x := range c.Ruleset.Cautions {
		expr(x.When)
	}
	for _, m := range c.vocab.Measures {
		for _, root := range map[vocab.Of][]string{vocab.Person: {"person"}, vocab.Limb: {"limb", "other"}}[m.Of] {
			if path := root + "." + m.Name; used[path] {
				c.measures[measureKey{m.Name, root == "other"}] = len(c.Axes)
				c.Axes = append(c.Axes, &Axis{Index: len(c.Axes), Path: path, Measure: m, Other: root == "other", Limb: m.Of == vocab.Limb})
			}
		}
	}
	c.Measures = len(c.Axes)
}

func (c *compiler) fact(f *ruleset.Fact) Fact {
	if f.Quantity == nil {
		return Fact{f, c.condition(f.Expr, True), nil}
	}
	return Fact{f, -1, c.value(f.Expr)}
}

// value gives the term of a formula. Where it lies outside of the fragment, cel-go works it out.
func (c *compiler) value(x *ruleset.Expr) *Term {
	p := place{x: x, e: x.AST.NativeRep().Expr()}
	if t, ok := c.term(p); ok {
		return t
	}
	return c.unclearTerm(p)
}

func (c *compiler) rule(i int, r *ruleset.Rule) *Rule {
	x := &Rule{Rule: r, Index: i, Overriders: c.Engine.Overriders(i)}
	x.Guard = c.condition(reason.Guard(r.Part), True)
	x.When, x.Unless = c.condition(r.When, True), c.condition(r.Unless, False)
	x.Own = c.and(c.and(x.Guard, x.When), c.not(x.Unless))
	for _, a := range r.Advise {
		y := Advice{Advice: a}
		if a.Formula == nil {
			y.Removes, y.Favours = reason.Removes(a), reason.Favours(a)
		} else {
			y.Term = c.value(a.Formula)
			if y.Term.Op == Number {
				y.Fixed, y.At = true, reason.InUnit(y.Term.X, a.Choice)
			}
		}
		x.Advice = append(x.Advice, y)
	}
	return x
}

func (c *compiler) topic(i int, x *vocab.Choice) *Topic {
	t := &Topic{Choice: x, Index: i, Bears: c.Engine.Bears(x), Silent: c.Engine.Silent(x)}
	for _, r := range c.Rules {
		for j := range r.Advice {
			if r.Advice[j].Choice == x {
				t.Says = append(t.Says, Say{r, &r.Advice[j], j})
			}
		}
	}
	return t
}

// readsOf lists the measures' axes that bear on a topic.
func (c *compiler) readsOf(t *Topic) []int {
	out := map[int]bool{}
	for _, i := range t.Bears {
		c.inputsOfNode(c.Rules[i].Own, out)
	}
	for _, s := range t.Says {
		c.inputs(s.Advice.Term, out)
	}
	return sorted(out)
}
