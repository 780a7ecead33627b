package reason

import (
	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/overloads"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"github.com/google/cel-go/interpreter"

	"crus/engine/biomech"
	"crus/engine/ruleset"
)

// planner makes checked expressions of one part runnable with cel-go's interpreter. It differs
// from cel.Program in where values are kept: names are read from the slots of a frame instead of
// by their text, and the values of sub-expressions are written to their steps instead of to a map.
// It also looks through a list as it does through && and ||, so that
// [limb.a, limb.b].exists(x, x > deg(5)) is known as soon as one of the two is large enough.
type planner struct {
	interpreter.Interpreter
	names map[string]int // slots
}

// newPlanner takes the functions that the part's environment declares.
func newPlanner(env *cel.Env, names map[string]int) (*planner, error) {
	d := interpreter.NewDispatcher()
	for _, f := range env.Functions() {
		bindings, err := f.Bindings()
		if err != nil {
			return nil, err
		}
		if err := d.Add(bindings...); err != nil {
			return nil, err
		}
	}
	adapter, provider := env.CELTypeAdapter(), env.CELTypeProvider()
	attributes := interpreter.NewAttributeFactory(env.Container, adapter, provider)
	return &planner{interpreter.NewInterpreter(d, env.Container, provider, adapter, attributes), names}, nil
}

// plain plans an expression to give its value only.
func (p *planner) plain(x *ruleset.Expr) (interpreter.InterpretableV2, error) {
	return p.NewInterpretable(x.AST.NativeRep(), interpreter.CustomDecoratorV2(p.replace(x.AST.NativeRep())), interpreter.Optimize())
}

// shown plans an expression so that both sides of && and || are worked out, and that the value of
// each sub-expression in steps is written to that step of the view.
func (p *planner) shown(x *ruleset.Expr, steps map[int64]int) (interpreter.InterpretableV2, error) {
	return p.NewInterpretable(x.AST.NativeRep(), interpreter.ExhaustiveEval(), interpreter.CustomDecoratorV2(p.replace(x.AST.NativeRep())),
		interpreter.Optimize(), interpreter.CustomDecoratorV2(func(i interpreter.InterpretableV2) (interpreter.InterpretableV2, error) {
			if at, ok := steps[i.ID()]; ok {
				return &watch{i, at}, nil
			}
			return i, nil
		}))
}

// replace puts this package's own parts into a plan.
func (p *planner) replace(a *ast.AST) interpreter.InterpretableDecoratorV2 {
	slots, lists := p.slots(a), looked(a)
	return func(i interpreter.InterpretableV2) (interpreter.InterpretableV2, error) {
		switch x := i.(type) {
		case interpreter.InterpretableAttribute:
			if at, ok := slots[x.ID()]; ok {
				return &read{id: x.ID(), slot: at.slot, name: at.text}, nil
			}
		case interpreter.InterpretableConstructor:
			if lists[x.ID()] {
				return &openList{x}, nil
			}
		case interpreter.InterpretableCall:
			if args := x.Args(); len(args) == 2 && x.OverloadID() == overloads.InList {
				if l, ok := args[1].(*openList); ok {
					return &member{id: x.ID(), item: args[0], list: l}, nil
				}
			}
			if f := biomech.Named(x.Function()); f != nil && len(f.Constants) > 0 {
				return &shifting{x, f}, nil
			}
			return folded(x), nil
		}
		return i, nil
	}
}

type name struct {
	text string
	slot int
}

// slots finds the names that an expression reads.
func (p *planner) slots(a *ast.AST) map[int64]name {
	out := map[int64]name{}
	for id, r := range a.ReferenceMap() {
		if slot, ok := p.names[r.Name]; ok && len(r.OverloadIDs) == 0 {
			out[id] = name{r.Name, slot}
		}
	}
	return out
}

// looked finds the lists that are only looked through: those of exists, all and in. Lists of
// constants are left to cel-go, which makes them once.
func looked(a *ast.AST) map[int64]bool {
	out := map[int64]bool{}
	note := func(list ast.Expr) {
		if list.Kind() == ast.ListKind && !constant(list) {
			out[list.ID()] = true
		}
	}
	ast.PreOrderVisit(a.Expr(), ast.NewExprVisitor(func(e ast.Expr) {
		switch e.Kind() {
		case ast.CallKind:
			if c := e.AsCall(); c.FunctionName() == operators.In {
				note(c.Args()[1])
			}
		case ast.ComprehensionKind: // exists and all are the ones that gather a yes or no
			c := e.AsComprehension()
			if start := c.AccuInit(); start.Kind() == ast.LiteralKind && start.AsLiteral().Type() == types.BoolType {
				note(c.IterRange())
			}
		}
	}))
	return out
}

// folded works out a call of constants once and for all: functions have no effect but their value.
func folded(c interpreter.InterpretableCall) interpreter.InterpretableV2 {
	for _, a := range c.Args() {
		if _, ok := a.(interpreter.InterpretableConst); !ok {
			return c
		}
	}
	v := c.Eval(interpreter.EmptyActivation())
	if types.IsUnknownOrError(v) {
		return c
	}
	return interpreter.NewConstValue(c.ID(), v)
}

// execute works a planned expression out. What goes wrong is a failure of the expression.
func execute(i interpreter.InterpretableV2, v *view) (out ref.Val) {
	defer func() {
		if r := recover(); r != nil {
			out = types.NewErr("it can't be worked out: %v", r)
		}
	}()
	f, err := interpreter.NewExecutionFrame(v)
	if err != nil {
		return types.WrapErr(err)
	}
	defer f.Close()
	return i.Exec(f)
}

// read gives the value in a slot.
type read struct {
	id   int64
	slot int
	name string
}

func (r *read) ID() int64                             { return r.id }
func (r *read) Eval(a interpreter.Activation) ref.Val { return r.Exec(interpreter.AsFrame(a)) }

func (r *read) Exec(f *interpreter.ExecutionFrame) ref.Val {
	if v, ok := f.Activation.(*view); ok {
		return v.values[r.slot]
	}
	if v, ok := f.ResolveName(r.name); ok { // inside of a list's exists or all
		if v, ok := v.(ref.Val); ok {
			return v
		}
	}
	return types.NewErr("there is no %s", r.name)
}

// watch notes the value of a sub-expression in its step.
type watch struct {
	interpreter.InterpretableV2
	step int
}

func (w *watch) Eval(a interpreter.Activation) ref.Val { return w.Exec(interpreter.AsFrame(a)) }

func (w *watch) Exec(f *interpreter.ExecutionFrame) ref.Val {
	out := w.InterpretableV2.Exec(f)
	if v, ok := f.Activation.(*view); ok {
		v.steps[w.step].Value.V = out
	}
	return out
}

// openList is a list that is itself known even where its items are not.
type openList struct {
	interpreter.InterpretableConstructor
}

func (l *openList) Eval(a interpreter.Activation) ref.Val { return l.Exec(interpreter.AsFrame(a)) }

func (l *openList) Exec(f *interpreter.ExecutionFrame) ref.Val {
	items := make([]ref.Val, 0, len(l.InitVals()))
	for _, i := range l.InitVals() {
		items = append(items, i.Exec(f))
	}
	return types.NewRefValList(types.DefaultTypeAdapter, items)
}

// member is in, on an open list: x in [a, b] is x == a || x == b.
type member struct {
	id   int64
	item interpreter.InterpretableV2
	list *openList
}

func (m *member) ID() int64                             { return m.id }
func (m *member) Eval(a interpreter.Activation) ref.Val { return m.Exec(interpreter.AsFrame(a)) }

func (m *member) Exec(f *interpreter.ExecutionFrame) ref.Val {
	item := m.item.Exec(f)
	var failed ref.Val
	var unknown *types.Unknown
	if types.IsUnknownOrError(item) {
		return item
	}
	for _, i := range m.list.InitVals() {
		x := i.Exec(f)
		switch {
		case types.IsError(x):
			failed = x
		case types.IsUnknown(x):
			unknown, _ = types.MaybeMergeUnknowns(x, unknown)
		case types.Equal(item, x) == types.True:
			return types.True
		}
	}
	switch {
	case unknown != nil:
		return unknown
	case failed != nil:
		return failed
	}
	return types.False
}
