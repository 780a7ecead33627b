package cell

import (
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// Space is a ruleset as cells. It is not changed after New and may be used by several goroutines.
type Space struct {
	Engine    *reason.Engine // the reference meaning
	Ruleset   *ruleset.Ruleset
	Axes      []*Axis // the measures' first, in the order of the vocabulary; then formulas, each after those that it reads
	Measures  int     // how many of the axes are measures
	Questions []*Question
	Unclear   []*Unclear
	Terms     []*Term // each after its parts
	Nodes     []Node  // each after its parts and after what its axis reads; the first two are True and False
	Applies   int     // the node that says whether the ruleset applies
	Facts     []Fact  // as Ruleset.Facts
	Rules     []*Rule
	Cautions  []Caution
	Topics    []*Topic // as Ruleset.Vocabulary.Choices
	Down      []int    // the rules, each after those that override it

	Conditions []Condition // the ruleset's own, as their authors joined them
}

// Fact is a finding, whose truth is Node, or a quantity, whose value is Term.
type Fact struct {
	*ruleset.Fact
	Node int // -1 of a quantity
	Term *Term
}

// Rule is a rule with its forms.
type Rule struct {
	*ruleset.Rule
	Index      int
	Own        int // its own truth: the guard of its part, its condition, and not what unless says
	Force      int // whether it is in force: its own truth, and no rule in force overrides it
	When       int
	Unless     int // False where there is none
	Guard      int // True for the ruleset's own
	Overriders []int
	Advice     []Advice
}

// Advice is one piece of advice.
type Advice struct {
	*ruleset.Advice
	Removes, Favours uint64 // options, by their places
	Term             *Term  // of a number: its formula, in base units
	Fixed            bool   // the formula is a constant, At in the choice's unit
	At               float64
}

// Caution is a caution with its form.
type Caution struct {
	*ruleset.Caution
	Node int // the guard of its part, and its condition
	When int
}

// Topic is what the ruleset says of one choice.
type Topic struct {
	*vocab.Choice
	Index  int
	Says   []Say // in the order of the rules
	Bears  []int // the rules that advise on it, and those that could set these aside; each after those that override it
	Reads  []int // the measures' axes that bear on it, in order
	Silent reason.Verdict
}

// Say is one piece of advice in a topic.
type Say struct {
	Rule   *Rule
	Advice *Advice
	Place  int // among the rule's pieces of advice
}
