package cell

import (
	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"

	"crus/engine/ruleset"
)

// Part is a yes/no part of a condition as its author joined it: with && or ||, !, c ? a : b, or == of two yes/no
// parts. What is not joined is a question of the author: a comparison, a yes/no measure, a finding, whether something is
// recorded, something of a list.
type Part struct {
	ID   int64 // of the node in the condition
	Node int   // its form
	Join Join
	Of   []*Part // what is joined; nil of a question
}

// Join is how parts of a condition are joined.
type Join uint8

// The joins.
const (
	Alone   Join = iota // a question
	AllOf               // &&
	AnyOf               // ||
	NotOf               // !
	IfOf                // c ? a : b
	EqualOf             // ==
)

// Answer gives the truth of a part from those of its questions, by their nodes.
func (p *Part) Answer(truth map[int]Truth) Truth {
	switch p.Join {
	case AllOf:
		return min(p.Of[0].Answer(truth), p.Of[1].Answer(truth))
	case AnyOf:
		return max(p.Of[0].Answer(truth), p.Of[1].Answer(truth))
	case NotOf:
		return Yes - p.Of[0].Answer(truth)
	case IfOf:
		switch p.Of[0].Answer(truth) {
		case Yes:
			return p.Of[1].Answer(truth)
		case No:
			return p.Of[2].Answer(truth)
		}
		return Unknown
	case EqualOf:
		a, b := p.Of[0].Answer(truth), p.Of[1].Answer(truth)
		switch {
		case a == Unknown || b == Unknown:
			return Unknown
		case a == b:
			return Yes
		}
		return No
	}
	return truth[p.Node]
}

// Questions lists the questions of a part in the order of the text, equal ones once.
func (p *Part) Questions() []*Part {
	var out []*Part
	seen := map[int]bool{}
	var visit func(p *Part)
	visit = func(p *Part) {
		if p.Join == Alone && !seen[p.Node] {
			seen[p.Node] = true
			out = append(out, p)
		}
		for _, x := range p.Of {
			visit(x)
		}
	}
	visit(p)
	return out
}

// part notes how a condition is joined. All its nodes are there already.
func (c *compiler) part(p place) *Part {
	n, _ := c.node(p)
	out := &Part{ID: p.e.ID(), Node: n}
	if p.e.Kind() != ast.CallKind || p.e.AsCall().IsMemberFunction() {
		return out
	}
	args := p.e.AsCall().Args()
	switch p.e.AsCall().FunctionName() {
	case operators.LogicalAnd:
		out.Join = AllOf
	case operators.LogicalOr:
		out.Join = AnyOf
	case operators.LogicalNot:
		out.Join = NotOf
	case operators.Conditional:
		out.Join = IfOf
	case operators.Equals, operators.NotEquals:
		if p.at(args[0]).typ() != cel.BoolType {
			return out
		}
		out.Join = EqualOf
	default:
		return out
	}
	for _, a := range args {
		out.Of = append(out.Of, c.part(p.at(a)))
	}
	if p.e.AsCall().FunctionName() == operators.NotEquals {
		out = &Part{ID: out.ID, Node: n, Join: NotOf, Of: []*Part{{ID: out.ID, Node: c.not(n), Join: EqualOf, Of: out.Of}}}
	}
	return out
}

// Condition is one condition of a ruleset with its parts.
type Condition struct {
	Of     string // finding.x, rule.x, caution.x or applies
	Unless bool   // of a rule
	Expr   *ruleset.Expr
	Limb   bool // what it belongs to runs for each limb
	*Part
}

// conditions notes every condition of the ruleset's own, in the order of the blocks.
func (c *compiler) conditions() {
	add := func(of string, limb, unless bool, x *ruleset.Expr) {
		if x != nil && x.Part.Root {
			c.Conditions = append(c.Conditions, Condition{of, unless, x, limb, c.part(place{x: x, e: x.AST.NativeRep().Expr()})})
		}
	}
	for _, p := range c.Ruleset.Parts {
		add("applies", false, false, p.Applies)
	}
	for _, f := range c.Ruleset.Facts {
		if f.Quantity == nil {
			add(f.Path(), f.Limb, false, f.Expr)
		}
	}
	for _, r := range c.Ruleset.Rules {
		add("rule."+r.Name, r.Limb, false, r.When)
		add("rule."+r.Name, r.Limb, true, r.Unless)
	}
	for _, x := range c.Ruleset.Cautions {
		add("caution."+x.Name, x.Limb, false, x.When)
	}
}
