package reason

import (
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// usage is how conditions look at one measure: the constants that they compare it with, and
// whether any of them looks in another way, so that its cells can't be known from constants alone.
type usage struct {
	cuts  []ref.Val
	other bool
}

// add takes in another usage.
func (u *usage) add(v *usage) {
	u.cuts = append(u.cuts, v.cuts...)
	u.other = u.other || v.other
}

// cutter collects the usage of every measure over some expressions. A limb measure has one usage,
// whether it is read of the limb or of the other one.
type cutter struct {
	uses  map[string]*usage // by measure name
	vocab *vocab.Vocabulary
	expr  *ruleset.Expr
}

// take collects from one more expression.
func (c *cutter) take(x *ruleset.Expr) {
	c.expr = x
	c.visit(x.AST.NativeRep().Expr())
}

func (c *cutter) use(name string) *usage {
	u := c.uses[name]
	if u == nil {
		u = &usage{}
		c.uses[name] = u
	}
	return u
}

// measure gives the measure that an expression names, or nil.
func (c *cutter) measure(e ast.Expr) *vocab.Measure {
	r, ok := c.expr.AST.NativeRep().ReferenceMap()[e.ID()]
	if !ok {
		return nil
	}
	for _, read := range c.expr.Reads {
		if read.Path == r.Name && !read.Recorded {
			return read.Measure
		}
	}
	return nil
}

func (c *cutter) visit(e ast.Expr) {
	if m := c.measure(e); m != nil {
		if m.Kind != vocab.YesNo {
			c.use(m.Name).other = true
		}
		return
	}
	switch e.Kind() {
	case ast.CallKind:
		call := e.AsCall()
		args := call.Args()
		switch call.FunctionName() {
		case operators.Equals, operators.NotEquals, operators.Less, operators.LessEquals, operators.Greater, operators.GreaterEquals:
			if c.compared(args[0], args[1]) || c.compared(args[1], args[0]) {
				return
			}
		case operators.In:
			if m := c.measure(args[0]); m != nil && args[1].Kind() == ast.ListKind {
				items := args[1].AsList().Elements()
				plain := true
				for _, item := range items {
					v := ruleset.Constant(c.vocab, item)
					plain = plain && v != nil
					if v != nil {
						c.use(m.Name).cuts = append(c.use(m.Name).cuts, v)
					}
				}
				if plain {
					return
				}
			}
		}
		if call.IsMemberFunction() {
			c.visit(call.Target())
		}
		for _, a := range args {
			c.visit(a)
		}
	case ast.ListKind:
		for _, item := range e.AsList().Elements() {
			c.visit(item)
		}
	case ast.MapKind:
		for _, en := range e.AsMap().Entries() {
			c.visit(en.AsMapEntry().Key())
			c.visit(en.AsMapEntry().Value())
		}
	case ast.ComprehensionKind:
		k := e.AsComprehension()
		for _, x := range []ast.Expr{k.IterRange(), k.AccuInit(), k.LoopCondition(), k.LoopStep(), k.Result()} {
			c.visit(x)
		}
	}
}

// compared notes a comparison of a measure, or of the time since a date, with a constant.
func (c *cutter) compared(a, b ast.Expr) bool {
	m := c.measure(a)
	if m == nil && a.Kind() == ast.CallKind && a.AsCall().FunctionName() == "since" && len(a.AsCall().Args()) == 1 {
		m = c.measure(a.AsCall().Args()[0])
	}
	v := ruleset.Constant(c.vocab, b)
	if m == nil || v == nil {
		return false
	}
	c.use(m.Name).cuts = append(c.use(m.Name).cuts, v)
	return true
}
