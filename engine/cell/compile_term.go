package cell

import (
	"slices"
	"strconv"
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"

	"crus/engine/biomech"
	"crus/engine/clinical"
	"crus/engine/vocab"
)

// termKey tells terms apart.
type termKey struct {
	op          TermOp
	x, num, den float64
	axis, node  int
	a, b        *Term
	of          string
	formula     *biomech.Formula
	kept        bool
}

// make gives a term, each once.
func (c *compiler) make(t Term) *Term {
	key := termKey{op: t.Op, x: t.X, num: t.Num, den: t.Den, axis: t.Axis, node: t.Node, a: t.A, b: t.B, formula: t.Formula, kept: t.Kept}
	for _, x := range t.Of {
		key.of += " " + strconv.Itoa(x.Index)
	}
	if old := c.terms[key]; old != nil {
		return old
	}
	t.Index = len(c.Terms)
	made := &t
	c.terms[key], c.Terms = made, append(c.Terms, made)
	return made
}

// term gives the term of a part that is a number, a quantity, a grade or an option; false where it lies outside of
// the fragment.
func (c *compiler) term(p place) (*Term, bool) {
	if v := p.constant(c.vocab); v != nil {
		x, ok := onAxis(v)
		return c.make(Term{Op: Number, X: x}), ok
	}
	switch p.e.Kind() {
	case ast.IdentKind, ast.SelectKind:
		if p.e.Kind() == ast.IdentKind {
			if item, ok := p.items[p.e.AsIdent()]; ok {
				return c.term(place{x: p.x, e: item})
			}
		}
		r, ok := c.ref(p)
		switch {
		case !ok || r.Recorded:
			return nil, false
		case r.Fact != nil:
			t := c.Facts[c.facts[r.Fact]].Term
			return t, t != nil
		}
		return c.make(Term{Op: Read, Axis: c.axis(r.Measure, r.Other)}), r.Measure.Kind != vocab.Date && r.Measure.Kind != vocab.YesNo
	case ast.CallKind:
		return c.function(p)
	}
	return nil, false
}

// whole reports whether a type is that of whole numbers, and bare whether it is one of numbers without a unit.
func whole(t *cel.Type) bool { return t.IsExactType(cel.IntType) }
func bare(t *cel.Type) bool  { return whole(t) || t.IsExactType(cel.DoubleType) }

func (c *compiler) function(p place) (*Term, bool) {
	call := p.e.AsCall()
	if call.IsMemberFunction() {
		return nil, false
	}
	args := call.Args()
	if call.FunctionName() == operators.Conditional {
		cond, ok := c.node(p.at(args[0]))
		a, second := c.term(p.at(args[1]))
		b, third := c.term(p.at(args[2]))
		if !ok || !second || !third || p.typ() == cel.StringType {
			return nil, false
		}
		return c.make(Term{Op: Choose, Node: cond, A: a, B: b}), true
	}
	if f := biomech.Named(call.FunctionName()); f != nil {
		return c.biomech(p, f)
	}
	if call.FunctionName() == "since" {
		return c.since(p.at(args[0]))
	}
	var in []*Term
	for _, a := range args {
		t, ok := c.term(p.at(a))
		if !ok {
			return nil, false
		}
		in = append(in, t)
	}
	typ := p.typ()
	_, kept := clinical.DimensionOf(typ)
	switch call.FunctionName() {
	case operators.Add, operators.Subtract:
		if !kept && !bare(typ) {
			return nil, false
		}
		op := map[string]TermOp{operators.Add: Sum, operators.Subtract: Less}[call.FunctionName()]
		return c.make(Term{Op: op, A: in[0], B: in[1], Kept: kept}), true
	case operators.Negate:
		return c.make(Term{Op: Minus, A: in[0], Kept: kept}), kept || bare(typ)
	case "abs":
		return c.make(Term{Op: Size, A: in[0]}), kept || bare(typ)
	case "least":
		return c.make(Term{Op: Least, Of: in}), kept || bare(typ)
	case "greatest":
		return c.make(Term{Op: Most, Of: in}), kept || bare(typ)
	case operators.Multiply, operators.Divide:
		return c.product(p, in, kept)
	}
	return nil, false
}

// product gives the term of a product or quotient; of bare numbers only that of whole ones with a product, since what
// is divided or has a point can be no number.
func (c *compiler) product(p place, in []*Term, kept bool) (*Term, bool) {
	args := p.e.AsCall().Args()
	a, left := clinical.DimensionOf(p.at(args[0]).typ())
	b, right := clinical.DimensionOf(p.at(args[1]).typ())
	t := Term{A: in[0], B: in[1], Num: 1, Den: 1, Kept: kept}
	if p.e.AsCall().FunctionName() == operators.Multiply {
		t.Op = Times
		if left && right {
			_, t.Num, t.Den, _ = clinical.Product(a, b)
		}
		return c.make(t), kept
	}
	t.Op = Over
	if left && right {
		_, t.Num, t.Den, _ = clinical.Quotient(a, b)
	}
	return c.make(t), kept && left
}

// since gives the term of the time since a date: the axis of a date has that time for its value.
func (c *compiler) since(p place) (*Term, bool) {
	r, ok := c.ref(p)
	if !ok || r.Measure == nil || r.Recorded {
		return nil, false
	}
	return c.make(Term{Op: Read, Axis: c.axis(r.Measure, r.Other)}), true
}

// biomech gives the term of a formula.
func (c *compiler) biomech(p place, f *biomech.Formula) (*Term, bool) {
	t := Term{Op: Call, Formula: f}
	for i, a := range p.e.AsCall().Args() {
		kind, at := f.Params[i].Kind, p.at(a)
		var in *Term
		var words []string
		ok := true
		scale, graded := strings.CutPrefix(string(kind), "scale ")
		switch {
		case kind == biomech.YesNo:
			var n int
			if n, ok = c.node(at); ok {
				in = c.make(Term{Op: Holds, Node: n})
			}
		case kind == biomech.Word:
			in, ok = c.term(at)
			if ok = ok && in.Op == Read; ok {
				words = c.Axes[in.Axis].Measure.Options
			}
		default:
			if in, ok = c.term(at); graded {
				words = c.vocab.Scale(scale).Grades
			}
		}
		if !ok {
			return nil, false
		}
		t.Of, t.Grades = append(t.Of, in), append(t.Grades, words)
	}
	if scale, graded := strings.CutPrefix(string(f.Result), "scale "); graded {
		t.Result = map[string]float64{}
		for i, label := range c.vocab.Scale(scale).Grades {
			t.Result[label] = float64(i)
		}
	}
	return c.make(t), f.Result != biomech.Word
}

// axis gives the axis of a measure. All measures that the ruleset reads have one.
func (c *compiler) axis(m *vocab.Measure, other bool) int {
	return c.measures[measureKey{m.Name, other}]
}

// formula gives the axis of a term: that of the measure that it is, or one of its own.
func (c *compiler) formula(t *Term, p place) int {
	if t.Op == Read {
		return t.Axis
	}
	if i, ok := c.formulas[t]; ok {
		return i
	}
	a := &Axis{Index: len(c.Axes), Path: strings.Join(strings.Fields(p.x.Written(p.e.ID())), " "), Term: t, Expr: p.x, ID: p.e.ID(), Linear: c.linear(t)}
	if d, ok := clinical.DimensionOf(p.typ()); ok {
		a.Unit = d.Base()
	}
	inputs := map[int]bool{}
	c.inputs(t, inputs)
	a.Inputs = sorted(inputs)
	for _, i := range a.Inputs {
		a.Limb = a.Limb || c.Axes[i].Limb
	}
	c.formulas[t], c.Axes = a.Index, append(c.Axes, a)
	return a.Index
}

// inputs gathers the measures' axes that a term reads.
func (c *compiler) inputs(t *Term, out map[int]bool) {
	switch {
	case t == nil:
	case t.Op == Read:
		out[t.Axis] = true
	case t.Op == Choose || t.Op == Holds:
		c.inputsOfNode(t.Node, out)
	}
	if t == nil {
		return
	}
	c.inputs(t.A, out)
	c.inputs(t.B, out)
	for _, x := range t.Of {
		c.inputs(x, out)
	}
}

func sorted(set map[int]bool) []int {
	out := make([]int, 0, len(set))
	for i := range set {
		out = append(out, i)
	}
	slices.Sort(out)
	return out
}
