package reason

import (
	"sort"
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"github.com/google/cel-go/interpreter"

	"crus/engine/clinical"
	"crus/engine/ruleset"
)

// program is one condition or formula made ready: once to be shown with every step, once to be
// tried many times.
type program struct {
	expr   *ruleset.Expr
	shown  cel.Program // keeps the value of every sub-expression
	plain  cel.Program
	root   *node
	nodes  int
	layout *layout
	names  map[string]int
}

// node is the fixed part of a Step.
type node struct {
	id    int64
	text  string
	place string
	slot  int // for a name: its slot; otherwise -1
	kids  []*node
}

func newProgram(x *ruleset.Expr, l *layout) (*program, error) {
	p := &program{expr: x, layout: l, names: l.names[x.Part]}
	var err error
	if p.plain, err = x.Env.Program(x.AST); err != nil {
		return nil, err
	}
	if p.shown, err = x.Env.Program(x.AST, cel.EvalOptions(cel.OptExhaustiveEval)); err != nil {
		return nil, err
	}
	p.root = p.node(x.AST.NativeRep().Expr())
	if p.root == nil { // a constant: shown as it is
		id := x.AST.NativeRep().Expr().ID()
		p.nodes++
		p.root = &node{id: id, text: strings.TrimSpace(x.Text.S), place: x.Text.All().String(), slot: -1}
	}
	return p, nil
}

// node builds the steps that are worth showing below an expression; nil for a constant.
func (p *program) node(e ast.Expr) *node {
	n := &node{id: e.ID(), slot: -1}
	switch e.Kind() {
	case ast.LiteralKind:
		return nil
	case ast.IdentKind, ast.SelectKind:
		if r, ok := p.expr.AST.NativeRep().ReferenceMap()[e.ID()]; ok {
			if i, ok := p.names[r.Name]; ok {
				n.slot = i
			}
		}
		if n.slot < 0 {
			return nil // the item of a list
		}
	case ast.CallKind:
		c := e.AsCall()
		var args []ast.Expr
		if c.IsMemberFunction() {
			args = append(args, c.Target())
		}
		args = append(args, c.Args()...)
		if f := c.FunctionName(); f == operators.LogicalAnd || f == operators.LogicalOr {
			args = chain(e, f, nil)
		}
		for _, a := range args {
			n.add(p.node(a))
		}
		if n.kids == nil && constant(e) {
			return nil
		}
	case ast.ListKind:
		for _, item := range e.AsList().Elements() {
			n.add(p.node(item))
		}
		if n.kids == nil {
			return nil
		}
	case ast.ComprehensionKind: // the steps inside hold the last item's values only; the names read are shown instead
		seen := map[int]bool{}
		ast.PreOrderVisit(e, ast.NewExprVisitor(func(x ast.Expr) {
			if r, ok := p.expr.AST.NativeRep().ReferenceMap()[x.ID()]; ok && x.Kind() != ast.CallKind {
				if i, ok := p.names[r.Name]; ok && !seen[i] {
					seen[i] = true
					p.nodes++
					n.add(&node{id: x.ID(), slot: i, text: r.Name, place: p.expr.Where(x.ID()).String()})
				}
			}
		}))
	}
	n.text = oneLine(p.expr.Written(n.id))
	n.place = p.expr.Where(n.id).String()
	p.nodes++
	return n
}

func (n *node) add(kid *node) {
	if kid != nil {
		n.kids = append(n.kids, kid)
	}
}

// chain flattens a && b && c, which the parser balances into a tree, back to its terms in order.
func chain(e ast.Expr, operator string, out []ast.Expr) []ast.Expr {
	if e.Kind() == ast.CallKind && e.AsCall().FunctionName() == operator {
		for _, a := range e.AsCall().Args() {
			out = chain(a, operator, out)
		}
		return out
	}
	return append(out, e)
}

// constant reports whether an expression reads no name.
func constant(e ast.Expr) bool {
	plain := true
	ast.PreOrderVisit(e, ast.NewExprVisitor(func(x ast.Expr) {
		if k := x.Kind(); k == ast.IdentKind || k == ast.ComprehensionKind {
			plain = false
		}
	}))
	return plain
}

func oneLine(s string) string { return strings.Join(strings.Fields(s), " ") }

// show works the program out and keeps every step.
func (p *program) show(f *frame) (ref.Val, *Step) {
	value, details, err := p.shown.Eval(&view{f, p.names})
	value = settled(value, err)
	var state interpreter.EvalState
	if details != nil {
		state = details.State()
	}
	s := &stepper{frame: f, state: state, steps: make([]Step, p.nodes), links: make([]*Step, p.nodes)}
	step := s.step(p.root)
	step.Value = Value{value}
	return value, step
}

// try works the program out without steps.
func (p *program) try(f *frame) ref.Val {
	value, _, err := p.plain.Eval(&view{f, p.names})
	return settled(value, err)
}

// settled makes a failure a value like any other.
func settled(v ref.Val, err error) ref.Val {
	if err == nil {
		return v
	}
	if e, ok := v.(*types.Err); ok {
		return e
	}
	return types.WrapErr(err)
}

// stepper fills steps from two blocks of memory made at once.
type stepper struct {
	*frame
	state interpreter.EvalState
	steps []Step
	links []*Step
}

func (s *stepper) step(n *node) *Step {
	out := &s.steps[0]
	s.steps = s.steps[1:]
	out.Text, out.Place = n.text, n.place
	switch {
	case n.slot >= 0:
		out.Value.V = s.values[n.slot]
	case s.state != nil:
		if v, ok := s.state.Value(n.id); ok {
			out.Value.V = v
		}
	}
	if k := len(n.kids); k > 0 {
		out.Steps = s.links[:k:k]
		s.links = s.links[k:]
		for i, kid := range n.kids {
			out.Steps[i] = s.step(kid)
		}
	}
	return out
}

// truth is Kleene's third value between the two.
type truth int8

const (
	no truth = iota
	unknown
	yes
)

func truthOf(v ref.Val) truth {
	switch v {
	case types.True:
		return yes
	case types.False:
		return no
	}
	return unknown // unknown, or failed
}

// waits lists the slots that an unknown value waits for, in order.
func waits(v ref.Val, into map[int]bool) {
	if u, ok := v.(*types.Unknown); ok {
		for _, id := range u.IDs() {
			into[int(id)] = true
		}
	}
}

func (l *layout) paths(slots map[int]bool) []string {
	order := make([]int, 0, len(slots))
	for i := range slots {
		order = append(order, i)
	}
	sort.Ints(order)
	out := make([]string, 0, len(order))
	for _, i := range order {
		out = append(out, l.slots[i].path)
	}
	return out
}

// number gives a formula's value in a unit; false where it is unknown or failed.
func number(v ref.Val, u clinical.Unit) (float64, bool) {
	q, ok := v.(clinical.Quantity)
	if !ok {
		return 0, false
	}
	at, ok := q.In(u)
	return tidy(at), ok
}
