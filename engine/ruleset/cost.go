package ruleset

import (
	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/checker"

	"crus/engine/source"
)

// MaxCost is the most that one condition may cost to work out, in cel-go's units (about one for
// each name, comparison and list item). Real conditions cost some tens.
const MaxCost = 20_000

// cost refuses a condition whose worst case is too dear. Measures hold no lists and no long texts,
// so the estimate rests on the lists written in the condition and is a true upper bound.
func (s *scope) cost(e *Expr, checked *cel.Ast) {
	est, err := s.env.EstimateCost(checked, sizes{})
	if err != nil || est.Max > MaxCost {
		s.fail(source.Errorf(e.Text.All(), "too_costly", "The condition would take too long to work out.").
			Hinting("Shorten its lists, or divide it into findings that each say one thing."))
	}
}

// sizes tells the estimator that everything recorded is short.
type sizes struct{}

func (sizes) EstimateSize(checker.AstNode) *checker.SizeEstimate {
	return &checker.SizeEstimate{Min: 0, Max: 64}
}

func (sizes) EstimateCallCost(function, overloadID string, target *checker.AstNode, args []checker.AstNode) *checker.CallEstimate {
	return nil
}
