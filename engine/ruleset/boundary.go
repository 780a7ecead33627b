package ruleset

import (
	"fmt"
	"math"

	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/source"
)

// Boundary is a comparison of one measure, one quantity or the time since one date with a constant. It
// tells a value on the constant from those below and above it.
type Boundary struct {
	Of    string // finding.x, rule.x or caution.x: whose condition it stands in
	Read  Ref    // the measure or quantity
	Since bool   // the time since the measure, a date
	Op    string // as read from the measure on the left: "<", "<=", ">", ">=", "==", "!="
	At    ref.Val
	Where source.Range
}

// String writes a boundary for people: "limb.knee_extension <= −15°".
func (b Boundary) String() string {
	path := b.Read.Path
	if b.Since {
		path = "since(" + path + ")"
	}
	return fmt.Sprint(path, " ", b.Op, " ", b.At)
}

// Side says where a value of the measure or quantity stands: −1 below the boundary, 0 on it, 1 above it;
// false for a value that can't be compared with it.
func (b Boundary) Side(v ref.Val) (int, bool) {
	x, ok := onLine(v)
	at, _ := onLine(b.At)
	switch {
	case !ok || v.Type().TypeName() != b.At.Type().TypeName():
		return 0, false
	case x < at:
		return -1, true
	case x > at:
		return 1, true
	}
	return 0, true
}

// Room says on which sides plausible values of the measure stand: below the boundary, on it, above it. A
// quantity can have any value, and the time since a date any but a negative one.
func (b Boundary) Room() (below, on, above bool) {
	at, _ := onLine(b.At)
	lo, hi := math.Inf(-1), math.Inf(1)
	switch {
	case b.Since:
		lo = 0
	case b.Read.Measure != nil:
		_, lo, hi, _ = bounds(b.Read.Measure, b.At)
	}
	return lo < at, lo <= at && at <= hi, at < hi
}

// onLine gives a value's place on one line of numbers: base units, counts or ranks.
func onLine(v ref.Val) (float64, bool) {
	switch v := v.(type) {
	case clinical.Quantity:
		return v.Base(), true
	case clinical.Grade:
		return float64(v.Rank), true
	case types.Int:
		return float64(v), true
	}
	return 0, false
}

// Boundaries lists the boundaries in the ruleset's own findings, rules and cautions (not in what it builds
// on), in the order of Facts, Rules and Cautions. What is compared with one and the same constant twice is
// listed once, as it is met first. Options and yes or no have no boundary, and neither has what a formula or a difference gives.
func Boundaries(rs *Ruleset) []Boundary {
	f := &boundaryFinder{rs: rs, seen: map[string]bool{}}
	for _, x := range rs.Facts {
		if x.Quantity == nil {
			f.take(x.Path(), x.Expr)
		}
	}
	for _, r := range rs.Rules {
		f.take("rule."+r.Name, r.When)
		f.take("rule."+r.Name, r.Unless)
	}
	for _, c := range rs.Cautions {
		f.take("caution."+c.Name, c.When)
	}
	return f.out
}

type boundaryFinder struct {
	rs   *Ruleset
	seen map[string]bool
	out  []Boundary
}

func (f *boundaryFinder) take(of string, e *Expr) {
	if e == nil || !e.Part.Root {
		return
	}
	ast.PreOrderVisit(e.AST.NativeRep().Expr(), ast.NewExprVisitor(func(x ast.Expr) {
		if x.Kind() != ast.CallKind {
			return
		}
		op, args := x.AsCall().FunctionName(), x.AsCall().Args()
		if mirrored, ok := mirror(op); ok {
			f.compared(Boundary{Of: of, Op: sign(op), Where: e.Where(x.ID())}, e, args[0], args[1])
			f.compared(Boundary{Of: of, Op: sign(mirrored), Where: e.Where(x.ID())}, e, args[1], args[0])
		}
		if op == operators.In && args[1].Kind() == ast.ListKind {
			for _, item := range args[1].AsList().Elements() {
				f.compared(Boundary{Of: of, Op: sign(operators.Equals), Where: e.Where(x.ID())}, e, args[0], item)
			}
		}
	}))
}

// sign writes a comparison as a condition does.
func sign(op string) string {
	written, _ := operators.FindReverseBinaryOperator(op)
	return written
}

// compared notes a boundary where left is what can have one and right is a constant.
func (f *boundaryFinder) compared(b Boundary, e *Expr, left, right ast.Expr) {
	if left.Kind() == ast.CallKind && left.AsCall().FunctionName() == "since" && len(left.AsCall().Args()) == 1 {
		b.Since, left = true, left.AsCall().Args()[0]
	}
	path, ok := dotted(left)
	if !ok {
		return
	}
	for _, r := range e.Reads {
		if r.Path == path && !r.Recorded {
			b.Read = r
		}
	}
	b.At = Constant(f.rs.Vocabulary, right)
	if b.Read.Path == "" || b.At == nil {
		return
	}
	at, ok := onLine(b.At)
	if key := fmt.Sprint(b.Since, path, " ", at); ok && !f.seen[key] {
		f.seen[key] = true
		f.out = append(f.out, b)
	}
}
