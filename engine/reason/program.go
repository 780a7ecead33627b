package reason

import (
	"slices"
	"strings"

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
	shown  interpreter.InterpretableV2 // writes the value of every sub-expression to its step
	plain  interpreter.InterpretableV2
	nodes  []*node // as the steps are laid out: the root, then level by level, so that siblings stand together
	layout *layout
	names  map[string]int
}

// node is the fixed part of a Step.
type node struct {
	id       int64
	written  Written
	slot     int // for a name: its slot; otherwise -1
	kids     []*node
	branches []*node // of a ?: b : c, these three; nil for a constant
	from     int     // where its kids begin among the nodes
}

func newProgram(x *ruleset.Expr, l *layout, plan *planner) (*program, error) {
	p := &program{expr: x, layout: l, names: l.names[x.Part]}
	root := p.node(x.AST.NativeRep().Expr())
	if root == nil { // a constant: shown as it is
		root = &node{id: x.AST.NativeRep().Expr().ID(), written: Written{oneLine(x.Text.S), x.Text.All().String()}, slot: -1}
	}
	p.nodes = []*node{root}
	steps := map[int64]int{}
	for i := 0; i < len(p.nodes); i++ {
		n := p.nodes[i]
		if n.slot < 0 {
			steps[n.id] = i
		}
		n.from = len(p.nodes)
		p.nodes = append(p.nodes, n.kids...)
	}
	var err error
	if p.plain, err = plan.plain(x); err != nil {
		return nil, err
	}
	if p.shown, err = plan.shown(x, steps); err != nil {
		return nil, err
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
			before := len(n.kids)
			p.below(n, a)
			if c.FunctionName() == operators.Conditional {
				n.branches = append(n.branches, append(n.kids[before:len(n.kids):len(n.kids)], nil)[0])
			}
		}
		if n.kids == nil && constant(e) {
			return nil
		}
	case ast.ComprehensionKind: // the steps inside hold the last item's values only; the names read are shown instead
		seen := map[int]bool{}
		ast.PreOrderVisit(e, ast.NewExprVisitor(func(x ast.Expr) {
			if r, ok := p.expr.AST.NativeRep().ReferenceMap()[x.ID()]; ok && x.Kind() != ast.CallKind {
				if i, ok := p.names[r.Name]; ok && !seen[i] {
					seen[i] = true
					n.kids = append(n.kids, &node{id: x.ID(), slot: i, written: Written{r.Name, p.expr.Where(x.ID()).String()}})
				}
			}
		}))
	}
	n.written = Written{oneLine(p.expr.Written(n.id)), p.expr.Where(n.id).String()}
	return n
}

// below adds the steps of an argument; those of the items of a list are shown without the list.
func (p *program) below(n *node, e ast.Expr) {
	if e.Kind() == ast.ListKind {
		for _, item := range e.AsList().Elements() {
			p.below(n, item)
		}
		return
	}
	kid := p.node(e)
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
	steps, links := f.room.take(len(p.nodes))
	value := execute(p.shown, &view{frame: f, names: p.names, steps: steps})
	for i, n := range p.nodes {
		steps[i].Written = &n.written
		if n.slot >= 0 {
			steps[i].Value.V = f.values[n.slot]
		}
		if k := len(n.kids); k > 0 {
			steps[i].Steps = links[n.from : n.from+k : n.from+k]
		}
	}
	steps[0].Value.V = value
	return value, &steps[0]
}

// room is memory for the steps of many programs, made at once.
type room struct {
	steps []Step
	links []*Step
}

func newRoom(n int) *room {
	r := &room{make([]Step, n), make([]*Step, n)}
	for i := range r.steps {
		r.links[i] = &r.steps[i]
	}
	return r
}

// take gives n steps and a pointer to each.
func (r *room) take(n int) ([]Step, []*Step) {
	if n > len(r.steps) {
		r = newRoom(n)
	}
	steps, links := r.steps[:n:n], r.links[:n:n]
	r.steps, r.links = r.steps[n:], r.links[n:]
	return steps, links
}

// try works the program out without steps.
func (p *program) try(f *frame) ref.Val { return execute(p.plain, &view{frame: f, names: p.names}) }

// waits adds the slots that an unknown program waits for to some others, in no order: those of every
// unknown part that can still decide it. A failed part waits for nothing.
func (p *program) waits(step *Step, slots []int) []int {
	if p == nil {
		return slots
	}
	return p.nodes[0].waits(step, slots)
}

func (n *node) waits(step *Step, slots []int) []int {
	u, ok := step.Value.V.(*types.Unknown)
	if !ok {
		return slots
	}
	before := len(slots)
	for i, kid := range n.kids {
		if n.decides(kid, step) {
			slots = kid.waits(step.Steps[i], slots)
		}
	}
	if len(slots) == before {
		for _, id := range u.IDs() {
			slots = append(slots, int(id))
		}
	}
	return slots
}

// decides reports whether a part can decide: the branch that a known condition passes by can't.
func (n *node) decides(kid *node, step *Step) bool {
	if n.branches == nil || n.branches[0] == nil || kid == n.branches[0] {
		return true
	}
	switch truthOf(step.Steps[0].Value.V) {
	case yes:
		return kid == n.branches[1]
	case no:
		return kid == n.branches[2]
	}
	return true
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

// paths names some slots, each once and in their order.
func (l *layout) paths(slots []int) []string {
	slices.Sort(slots)
	slots = slices.Compact(slots)
	out := make([]string, len(slots))
	for i, at := range slots {
		out[i] = l.slots[at].path
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
