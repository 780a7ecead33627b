package reason

import (
	"fmt"
	"strings"

	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"github.com/google/cel-go/interpreter"

	"crus/engine/ruleset"
)

// Piece is a part of a checked expression, carried out by itself. It may be used by several goroutines.
type Piece struct {
	Names []string // what it reads, as the expression writes it; "recorded.limb.x" asks whether limb.x is recorded
	names map[string]int
	plan  interpreter.InterpretableV2
	blank []ref.Val
}

// NewPiece makes the part of an expression below one node runnable.
func NewPiece(x *ruleset.Expr, node ast.Expr) (*Piece, error) {
	tree := x.AST.NativeRep()
	p := &Piece{names: map[string]int{}}
	ast.PreOrderVisit(node, ast.NewExprVisitor(func(e ast.Expr) {
		r, ok := tree.ReferenceMap()[e.ID()]
		if !ok || len(r.OverloadIDs) > 0 || r.Value != nil || !strings.Contains(r.Name, ".") { // the item of a list has a plain name
			return
		}
		if _, seen := p.names[r.Name]; seen {
			return
		}
		p.names[r.Name] = len(p.Names)
		p.Names = append(p.Names, r.Name)
	}))
	planner, err := newPlanner(x.Env, p.names)
	if err != nil {
		return nil, err
	}
	part := ast.NewCheckedAST(ast.NewAST(node, tree.SourceInfo()), tree.TypeMap(), tree.ReferenceMap())
	if p.plan, err = planner.NewInterpretable(part, interpreter.CustomDecoratorV2(planner.replace(part)), interpreter.Optimize()); err != nil {
		return nil, fmt.Errorf("%s: %w", x.Where(node.ID()), err)
	}
	for i, name := range p.Names {
		p.blank = append(p.blank, types.NewUnknown(int64(i), types.NewAttributeTrail(name)))
	}
	return p, nil
}

// Run works the piece out on values in the order of Names; nil stands for what is not known. The result may be
// unknown, or an error that says what can't be worked out.
func (p *Piece) Run(values []ref.Val) ref.Val {
	in := make([]ref.Val, len(values))
	for i, v := range values {
		if in[i] = v; v == nil {
			in[i] = p.blank[i]
		}
	}
	return execute(p.plan, &view{frame: &frame{values: in}, names: p.names})
}
