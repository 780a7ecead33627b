package ruleset

import (
	"fmt"

	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/vocab"
)

// comparisons looks in one condition for comparisons that come out alike for every plausible value.
func (l *linter) comparisons(e *Expr) {
	if len(e.Reads) == 0 && e.AST.OutputType().String() == "bool" && e.Text.S != "true" {
		l.warn(e.Text.All(), "constant", "This condition reads nothing of the assessment, so it is the same in every case.",
			"Name what it depends on, or write just true.")
		return
	}
	ast.PreOrderVisit(e.AST.NativeRep().Expr(), ast.NewExprVisitor(func(x ast.Expr) {
		if x.Kind() != ast.CallKind {
			return
		}
		call := x.AsCall()
		op, args := call.FunctionName(), call.Args()
		if op == operators.In {
			l.listed(e, x, args[0], args[1])
			return
		}
		mirrored, ok := mirror(op)
		if !ok {
			return
		}
		if a, b := e.Written(args[0].ID()), e.Written(args[1].ID()); a == b && a != "" {
			l.warn(e.Where(x.ID()), "constant", "This compares "+a+" with itself.", "Name what it should be compared with.")
			return
		}
		if word, alone, ok := answered(e, op, args); ok {
			l.warn(e.Where(x.ID()), "answered", "A yes or no is compared with "+word+".", "Write it alone: "+alone+".")
			return
		}
		l.compared(e, x, op, args[0], args[1])
		l.compared(e, x, mirrored, args[1], args[0])
	}))
}

// answered finds a yes or no that is compared with true or false, and says how it is written alone.
func answered(e *Expr, op string, args []ast.Expr) (word, alone string, ok bool) {
	if op != operators.Equals && op != operators.NotEquals {
		return "", "", false
	}
	for i, side := range args {
		if side.Kind() != ast.LiteralKind {
			continue
		}
		if answer, yes := side.AsLiteral().(types.Bool); yes {
			other := args[1-i]
			alone = e.Written(other.ID())
			if _, plain := dotted(other); !plain {
				alone = "(" + alone + ")"
			}
			if bool(answer) != (op == operators.Equals) {
				alone = "!" + alone
			}
			return fmt.Sprint(bool(answer)), alone, true
		}
	}
	return "", "", false
}

// mirror gives a comparison with its sides exchanged; false for any other operator.
func mirror(op string) (string, bool) {
	switch op {
	case operators.Less:
		return operators.Greater, true
	case operators.LessEquals:
		return operators.GreaterEquals, true
	case operators.Greater:
		return operators.Less, true
	case operators.GreaterEquals:
		return operators.LessEquals, true
	case operators.Equals, operators.NotEquals:
		return op, true
	}
	return "", false
}

// compared looks at the comparison x of a measure on the left with a constant on the right.
func (l *linter) compared(e *Expr, x ast.Expr, op string, left, right ast.Expr) {
	path, m := l.measure(left)
	c := Constant(l.rs.Vocabulary, right)
	if m == nil || c == nil {
		return
	}
	at, lo, hi, ok := bounds(m, c)
	if !ok {
		return
	}
	var never, always bool
	switch op {
	case operators.Less:
		never, always = at <= lo, at > hi
	case operators.LessEquals:
		never, always = at < lo, at >= hi
	case operators.Greater:
		never, always = at >= hi, at < lo
	case operators.GreaterEquals:
		never, always = at > hi, at <= lo
	case operators.Equals:
		never = at < lo || at > hi
	case operators.NotEquals:
		always = at < lo || at > hi
	}
	if never {
		l.warn(e.Where(x.ID()), "never", "This holds for no "+extent(path, m)+".", "Check what it is compared with, and the sign.")
	}
	if always {
		l.warn(e.Where(x.ID()), "always", "This holds for every "+extent(path, m)+".",
			"Check what it is compared with, and the sign. Whether it is recorded is asked with recorded("+path+").")
	}
}

// listed looks at a measure that is looked for in a list.
func (l *linter) listed(e *Expr, x, left, list ast.Expr) {
	path, m := l.measure(left)
	if m == nil || list.Kind() != ast.ListKind {
		return
	}
	words := map[string]bool{}
	for _, item := range list.AsList().Elements() {
		c := Constant(l.rs.Vocabulary, item)
		if c == nil {
			return
		}
		if at, lo, hi, ok := bounds(m, c); ok && (at < lo || at > hi) {
			l.warn(e.Where(item.ID()), "never", "This item fits no "+extent(path, m)+".", "Check the number and its unit.")
		}
		if word, ok := c.(types.String); ok {
			words[string(word)] = true
		}
	}
	if m.Kind == vocab.Option && len(words) == len(m.Options) {
		l.warn(e.Where(x.ID()), "always", "This holds whenever "+path+" is recorded: the list has all its options.",
			"Take out those that are not meant. Whether it is recorded is asked with recorded("+path+").")
	}
}

// measure gives the measure that an expression names, with its path as written, or nil.
func (l *linter) measure(e ast.Expr) (string, *vocab.Measure) {
	path, ok := dotted(e)
	if !ok {
		return "", nil
	}
	return path, measureAt(l.rs.Vocabulary, path)
}

// bounds gives a constant and the range of the measure on one line of numbers: base units, counts
// or ranks. A measure without a range has none.
func bounds(m *vocab.Measure, c ref.Val) (at, lo, hi float64, ok bool) {
	switch c := c.(type) {
	case clinical.Quantity:
		lo, errLo := clinical.NewQuantity(m.Plausible.Lo, m.Unit)
		hi, errHi := clinical.NewQuantity(m.Plausible.Hi, m.Unit)
		return c.Base(), lo.Base(), hi.Base(), m.Kind == vocab.Quantity && errLo == nil && errHi == nil
	case clinical.Grade:
		return float64(c.Rank), 0, float64(len(c.Scale.Grades) - 1), true
	case types.Int:
		return float64(c), m.Plausible.Lo, m.Plausible.Hi, m.Kind == vocab.Count
	}
	return 0, 0, 0, false
}

// extent says what a measure can be, behind "no" or "every".
func extent(path string, m *vocab.Measure) string {
	if m.Kind == vocab.Grade {
		g := m.Scale.Grades
		return "grade: those of " + m.Scale.Name + " go from " + g[0] + " to " + g[len(g)-1]
	}
	lo, hi := fmt.Sprint(m.Plausible.Lo), fmt.Sprint(m.Plausible.Hi)
	if m.Kind == vocab.Quantity {
		a, _ := clinical.NewQuantity(m.Plausible.Lo, m.Unit)
		b, _ := clinical.NewQuantity(m.Plausible.Hi, m.Unit)
		lo, hi = a.String(), b.String()
	}
	return "plausible value: " + path + " goes from " + lo + " to " + hi
}
