package cell

import (
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/types"

	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// compiler turns the checked expressions of a ruleset into nodes and terms.
type compiler struct {
	*Space
	*nodes
	terms    map[termKey]*Term
	formulas map[*Term]int // axes
	measures map[measureKey]int
	unclears map[unclearKey]int
	asked    map[string]int // questions, by what they ask
	asks     []asking       // what each question asks
	facts    map[*ruleset.Fact]int
	vocab    *vocab.Vocabulary
	failure  error
}

type unclearKey struct {
	x  *ruleset.Expr
	id int64
}

type measureKey struct {
	name  string
	other bool
}

// place is a part of an expression: the node, with what the names of a list's items stand for.
type place struct {
	x     *ruleset.Expr
	e     ast.Expr
	items map[string]ast.Expr
}

func (p place) at(e ast.Expr) place { p.e = e; return p }

func (p place) typ() *cel.Type { return p.x.AST.NativeRep().GetType(p.e.ID()) }

// condition gives the node of a condition; True for one that was never written.
func (c *compiler) condition(x *ruleset.Expr, absent int) int {
	if x == nil {
		return absent
	}
	n, _ := c.node(place{x: x, e: x.AST.NativeRep().Expr()})
	return n
}

// node gives the node of a yes/no part. It is false where only cel-go can answer it and the part reads an item of a
// list, so that it can't be asked by itself.
func (c *compiler) node(p place) (int, bool) {
	if n, ok := c.form(p); ok {
		return n, true
	}
	if len(p.items) > 0 {
		return 0, false
	}
	return c.unclear(p), true
}

// form gives the node of a yes/no part within the fragment; false where it lies outside.
func (c *compiler) form(p place) (int, bool) {
	switch p.e.Kind() {
	case ast.LiteralKind:
		if p.e.AsLiteral() == types.True {
			return True, true
		}
		return False, p.e.AsLiteral() == types.False
	case ast.IdentKind, ast.SelectKind:
		return c.named(p)
	case ast.CallKind:
		return c.call(p)
	case ast.ComprehensionKind:
		return c.listed(p)
	}
	return 0, false
}

// named gives the node of a yes/no measure, of a finding, or of whether a measure is recorded.
func (c *compiler) named(p place) (int, bool) {
	if p.e.Kind() == ast.IdentKind {
		if item, ok := p.items[p.e.AsIdent()]; ok {
			return c.node(place{x: p.x, e: item})
		}
	}
	r, ok := c.ref(p)
	switch {
	case !ok:
		return 0, false
	case r.Fact != nil:
		return c.Facts[c.facts[r.Fact]].Node, r.Fact.Quantity == nil
	case r.Recorded:
		return c.add(Node{Op: Recorded, X: c.axis(r.Measure, r.Other)}), true
	}
	return c.ask(asking{axis: c.axis(r.Measure, r.Other), op: operators.Equals, at: 1}), r.Measure.Kind == vocab.YesNo
}

// ref finds what a name stands for.
func (c *compiler) ref(p place) (ruleset.Ref, bool) {
	r, ok := p.x.AST.NativeRep().ReferenceMap()[p.e.ID()]
	if !ok || len(r.OverloadIDs) > 0 {
		return ruleset.Ref{}, false
	}
	path, recorded := strings.CutPrefix(r.Name, "recorded.")
	for _, read := range p.x.Reads {
		if read.Path == path && read.Recorded == recorded {
			return read, true
		}
	}
	return ruleset.Ref{}, false
}

func (c *compiler) call(p place) (int, bool) {
	call := p.e.AsCall()
	args := call.Args()
	if call.IsMemberFunction() {
		return 0, false
	}
	switch call.FunctionName() {
	case operators.LogicalAnd, operators.LogicalOr:
		a, ok := c.node(p.at(args[0]))
		b, also := c.node(p.at(args[1]))
		if call.FunctionName() == operators.LogicalAnd {
			return c.and(a, b), ok && also
		}
		return c.or(a, b), ok && also
	case operators.LogicalNot:
		a, ok := c.node(p.at(args[0]))
		return c.not(a), ok
	case operators.Conditional:
		a, ok := c.node(p.at(args[0]))
		b, second := c.node(p.at(args[1]))
		d, third := c.node(p.at(args[2]))
		return c.choose(a, b, d), ok && second && third
	case operators.Equals, operators.NotEquals, operators.Less, operators.LessEquals, operators.Greater, operators.GreaterEquals:
		return c.compare(p.at(args[0]), p.at(args[1]), call.FunctionName(), p)
	case operators.In:
		return c.in(p.at(args[0]), p.at(args[1]), p)
	}
	if t, ok := c.term(p); ok && p.typ() == cel.BoolType { // a formula that answers yes or no
		return c.ask(asking{axis: c.formula(t, p), op: operators.Equals, at: 1}), true
	}
	return 0, false
}

// in gives the node of x in [a, b]: x == a || x == b.
func (c *compiler) in(item, list, whole place) (int, bool) {
	if list.e.Kind() != ast.ListKind {
		return 0, false
	}
	if set, ok := c.set(item, list); ok {
		return c.ask(set), true
	}
	out, elements := False, list.e.AsList().Elements()
	for _, x := range elements {
		n, ok := c.compare(item, list.at(x), operators.Equals, whole)
		if !ok {
			return 0, false
		}
		out = c.or(out, n)
	}
	return out, len(elements) > 0
}

// listed gives the node of exists and all over a list that is written out: its items joined by || or &&.
func (c *compiler) listed(p place) (int, bool) {
	k := p.e.AsComprehension()
	start, step := k.AccuInit(), k.LoopStep()
	if len(p.items) > 0 || k.IterVar2() != "" || k.IterRange().Kind() != ast.ListKind || start.Kind() != ast.LiteralKind || start.AsLiteral().Type() != types.BoolType ||
		step.Kind() != ast.CallKind || len(step.AsCall().Args()) != 2 {
		return 0, false
	}
	if r := k.Result(); r.Kind() != ast.IdentKind || r.AsIdent() != k.AccuVar() {
		return 0, false
	}
	join, out := c.or, False
	switch step.AsCall().FunctionName() {
	case operators.LogicalOr:
	case operators.LogicalAnd:
		join, out = c.and, True
	default:
		return 0, false
	}
	for _, item := range k.IterRange().AsList().Elements() {
		n, ok := c.node(place{x: p.x, e: step.AsCall().Args()[1], items: map[string]ast.Expr{k.IterVar(): item}})
		if !ok {
			return 0, false
		}
		out = join(out, n)
	}
	return out, true
}

// unclear makes a node of what cel-go has to answer. What reads one measure with few values is asked of each of them
// now, and is clear then.
func (c *compiler) unclear(p place) int {
	key := unclearKey{p.x, p.e.ID()}
	n, ok := c.unclears[key]
	if !ok {
		n = c.newlyUnclear(p)
		c.unclears[key] = n
	}
	return n
}

func (c *compiler) newlyUnclear(p place) int {
	u := c.newUnclear(p)
	if u == nil {
		return False
	}
	if set, ok := c.tabulate(u); ok {
		return c.ask(set)
	}
	return c.add(Node{Op: Opaque, X: c.keep(u)})
}
