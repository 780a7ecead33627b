package ruleset

import (
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/vocab"
)

// Constant gives the value of a plain constant in a condition: a word, a number, true, deg(5),
// muscle_power('3+'), or the negative of one. It is nil for everything else.
func Constant(v *vocab.Vocabulary, e ast.Expr) ref.Val {
	switch e.Kind() {
	case ast.LiteralKind:
		return e.AsLiteral()
	case ast.CallKind:
		call := e.AsCall()
		if call.IsMemberFunction() || len(call.Args()) != 1 {
			return nil
		}
		if inner := Constant(v, call.Args()[0]); inner != nil {
			return applied(v, call.FunctionName(), inner)
		}
	}
	return nil
}

// applied gives the value of a sign, unit or scale before a constant, or nil.
func applied(v *vocab.Vocabulary, function string, inner ref.Val) ref.Val {
	if function == operators.Negate {
		switch n := inner.(type) {
		case types.Int:
			return n.Negate()
		case types.Double:
			return n.Negate()
		case clinical.Quantity:
			return n.Negate()
		}
		return nil
	}
	if s := v.Scale(function); s != nil {
		if label, ok := inner.(types.String); ok {
			if g, ok := s.Grade(string(label)); ok {
				return g
			}
		}
		return nil
	}
	var number float64
	switch n := inner.(type) {
	case types.Int:
		number = float64(n)
	case types.Double:
		number = float64(n)
	default:
		return nil
	}
	for _, u := range clinical.Units() {
		if name := clinical.LiteralFor(u); name != "" && name == function {
			if q, err := clinical.NewQuantity(number, u); err == nil {
				return q
			}
		}
	}
	return nil
}
