package clinical

import (
	"math"
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/env"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/stdlib"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"github.com/google/cel-go/common/types/traits"
)

var orderings = [...]string{operators.Less, operators.LessEquals, operators.Greater, operators.GreaterEquals}

// maxArgs is how many arguments least and greatest take; the least is two.
const maxArgs = 6

// EnvOptions gives the standard library of CEL and all that this package adds to it, for
// cel.NewCustomEnv (cel.NewEnv brings a standard library of its own, whose multiplication has no place
// for a number before a quantity). Bare numbers calculate and overflow as in CEL.
func EnvOptions() []cel.EnvOption {
	multiply := env.NewFunction(operators.Multiply)
	out := []cel.EnvOption{
		cel.StdLib(cel.StdLibSubset(env.NewLibrarySubset().AddExcludedFunctions(multiply))),
		multiplication(),
		cel.Function("since", cel.Overload("since_date", []*cel.Type{dateType}, Time.CELType(), cel.UnaryBinding(since))),
		choosing("least", least), choosing("greatest", greatest),
	}
	absolutes := []cel.FunctionOpt{cel.SingletonUnaryBinding(abs)}
	for _, t := range numeric() {
		absolutes = append(absolutes, cel.Overload("abs_"+t.String(), []*cel.Type{t}, t))
	}
	out = append(out, cel.Function("abs", absolutes...))
	for _, u := range units[1:] {
		if u.literal != "" {
			out = append(out, literal(u))
		}
	}
	return append(out, operations()...)
}

// numeric lists the types that abs, least and greatest take.
func numeric() []*cel.Type {
	out := []*cel.Type{cel.IntType, cel.DoubleType}
	for _, d := range Dimensions() {
		out = append(out, d.CELType())
	}
	return out
}

// operations declares the operators with a quantity on the left, but for * . The standard library's
// bindings reach Quantity's methods through its traits.
func operations() []cel.EnvOption {
	ops := append(orderings[:], operators.Add, operators.Subtract, operators.Negate, operators.Divide)
	overloads := map[string][]cel.FunctionOpt{}
	declare := func(op string, result *cel.Type, args ...*cel.Type) {
		id := strings.Trim(op, "_")
		for _, t := range args {
			id += "_" + t.String()
		}
		overloads[op] = append(overloads[op], cel.Overload(id, args, result))
	}
	for _, d := range Dimensions() {
		t := d.CELType()
		for _, op := range orderings {
			declare(op, cel.BoolType, t, t)
		}
		declare(operators.Add, t, t, t)
		declare(operators.Subtract, t, t, t)
		declare(operators.Negate, t, t)
		declare(operators.Divide, t, t, cel.IntType)
		declare(operators.Divide, t, t, cel.DoubleType)
		for _, by := range Dimensions() {
			if of, _, _, ok := over(d, by); ok {
				declare(operators.Divide, of.CELType(), t, by.CELType())
			}
		}
	}
	var out []cel.EnvOption
	for _, op := range ops {
		out = append(out, cel.Function(op, overloads[op]...))
	}
	return out
}

// multiplication declares * in place of the standard library's: with the same overloads for bare
// numbers, and those for quantities, a number on either side.
func multiplication() cel.EnvOption {
	opts := []cel.FunctionOpt{cel.SingletonBinaryBinding(multiply, traits.MultiplierType)}
	for _, f := range stdlib.Functions() {
		if f.Name() == operators.Multiply {
			for _, o := range f.OverloadDecls() {
				opts = append(opts, cel.Overload(o.ID(), o.ArgTypes(), o.ResultType()))
			}
		}
	}
	declare := func(a, b, of *cel.Type) {
		opts = append(opts, cel.Overload("*_"+a.String()+"_"+b.String(), []*cel.Type{a, b}, of))
	}
	for _, d := range Dimensions() {
		t := d.CELType()
		for _, n := range []*cel.Type{cel.IntType, cel.DoubleType} {
			declare(t, n, t)
			declare(n, t, t)
		}
		for _, by := range Dimensions() {
			if of, _, _, ok := times(d, by); ok {
				declare(t, by.CELType(), of.CELType())
			}
		}
	}
	return cel.Function(operators.Multiply, opts...)
}

func multiply(a, b ref.Val) ref.Val {
	if q, ok := b.(Quantity); ok {
		if _, both := a.(Quantity); !both {
			return q.Multiply(a)
		}
	}
	return a.(traits.Multiplier).Multiply(b)
}

// literal declares the function that writes a quantity in u.
func literal(u Unit) cel.EnvOption {
	t := u.Dimension.CELType()
	return cel.Function(u.literal,
		cel.Overload(u.literal+"_int", []*cel.Type{cel.IntType}, t),
		cel.Overload(u.literal+"_double", []*cel.Type{cel.DoubleType}, t),
		cel.SingletonUnaryBinding(func(v ref.Val) ref.Val {
			var q Quantity
			var err error
			switch n := v.(type) {
			case types.Int:
				q, err = NewQuantity(float64(n), u)
			case types.Double:
				q, err = NewQuantity(float64(n), u)
			default:
				return types.MaybeNoSuchOverloadErr(v)
			}
			if err != nil {
				return types.NewErr("%s(%v) can't be a quantity: %w.", u.literal, v.Value(), err)
			}
			return q
		}))
}

// choosing declares least or greatest, on two to maxArgs values of one type.
func choosing(name string, binding func(...ref.Val) ref.Val) cel.EnvOption {
	opts := []cel.FunctionOpt{cel.SingletonFunctionBinding(binding)}
	for _, t := range numeric() {
		args := []*cel.Type{t}
		for len(args) < maxArgs {
			args = append(args, t)
			id := strings.Repeat("_"+t.String(), len(args))
			opts = append(opts, cel.Overload(name+id, append([]*cel.Type(nil), args...), t))
		}
	}
	return cel.Function(name, opts...)
}

func least(args ...ref.Val) ref.Val    { return furthest(types.IntNegOne, args) }
func greatest(args ...ref.Val) ref.Val { return furthest(types.IntOne, args) }

// furthest gives the argument that all others lie on one side of; of equal ones, the first.
func furthest(side types.Int, args []ref.Val) ref.Val {
	best := args[0]
	for _, v := range args[1:] {
		c, ok := v.(traits.Comparer)
		if !ok {
			return types.MaybeNoSuchOverloadErr(v)
		}
		switch order := c.Compare(best); order.(type) {
		case types.Int:
			if order == side {
				best = v
			}
		default:
			return order // why the two can't be compared
		}
	}
	return best
}

func abs(v ref.Val) ref.Val {
	switch n := v.(type) {
	case Quantity:
		return Quantity{math.Abs(n.base), n.unit}
	case types.Double:
		return types.Double(math.Abs(float64(n)))
	case types.Int:
		if n < 0 {
			return n.Negate() // an error where that overflows
		}
		return n
	}
	return types.MaybeNoSuchOverloadErr(v)
}
