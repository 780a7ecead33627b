package ruleset

import (
	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/types"

	"crus/engine/clinical"
	"crus/engine/source"
)

// meaningless refuses what cel-go's types allow and nobody means: a division of whole numbers, which
// cuts off what is behind the point, and dates that are read in any way but by since.
func (s *scope) meaningless(e *Expr, checked *cel.Ast) {
	tree := checked.NativeRep()
	ast.PreOrderVisit(tree.Expr(), ast.NewExprVisitor(func(x ast.Expr) {
		if x.Kind() != ast.CallKind {
			return
		}
		args := x.AsCall().Args()
		switch x.AsCall().FunctionName() {
		case operators.Divide:
			if whole(tree.GetType(args[0].ID())) && whole(tree.GetType(args[1].ID())) {
				s.fail(source.Errorf(e.Where(x.ID()), "whole_numbers", "Dividing two whole numbers cuts off what is behind the point.").
					Hinting("Write them with a point: %s / %s.", pointed(e, args[0]), pointed(e, args[1])))
			}
		case operators.Equals, operators.NotEquals, operators.In:
			if tree.GetType(args[0].ID()).IsExactType(clinical.DateType()) {
				s.fail(source.Errorf(e.Where(x.ID()), "date", "A date is read by since(...) only.").
					Hinting("Ask how long ago it was: since(%s) > weeks(12).", written(e, args[0], "person.x")))
			}
		}
	}))
}

func whole(t *cel.Type) bool { return t.IsExactType(cel.IntType) || t.IsExactType(cel.UintType) }

// pointed writes a whole number so that it keeps what is behind the point when it is divided.
func pointed(e *Expr, x ast.Expr) string {
	text := written(e, x, "x")
	if x.Kind() == ast.LiteralKind {
		if _, ok := x.AsLiteral().(types.Int); ok {
			return text + ".0"
		}
	}
	return "double(" + text + ")"
}

// written gives the text of a node, or other where it is too long to repeat.
func written(e *Expr, x ast.Expr, other string) string {
	if text := e.Written(x.ID()); text != "" && len([]rune(text)) <= maxRepeat {
		return text
	}
	return other
}
