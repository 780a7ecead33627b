package reason

import (
	"cmp"
	"math"
	"slices"

	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"github.com/google/cel-go/interpreter"

	"crus/engine/biomech"
	"crus/engine/clinical"
	"crus/engine/ruleset"
)

// coverage turns a standard uncertainty into the half-width of a band of about 95 %, and back (JCGM 100:2008,
// 6.3.3: a factor of 2). A measure's error is such a half-width.
const coverage = 2

// Uncertainty says how far a number that was worked out could be off, by the law of propagation of
// uncertainty at first order (JCGM 100:2008, 5.1.2), inputs taken as independent; more where a limit lies
// within the band of an input.
type Uncertainty struct {
	PlusMinus  float64  `json:"plus_minus"`            // half-width of a band of about 95 %, in the number's unit
	From       []Share  `json:"from"`                  // the largest first
	NotCounted []string `json:"not_counted,omitempty"` // quantities whose measure states no error
}

// Share is what one input does to a number's uncertainty.
type Share struct {
	Input     string  `json:"input"`      // limb.x, or a figure that a formula rests on
	PlusMinus float64 `json:"plus_minus"` // of the input itself
	Unit      string  `json:"unit"`
	Adds      float64 `json:"adds"`  // plus or minus, in the number's unit, if it were the only one
	Share     float64 `json:"share"` // of the number's variance, 0 to 1
}

// spread is how a formula's uncertainty is found: what it rests on, directly or through other facts.
type spread struct {
	prog    *program
	unit    clinical.Unit
	slots   []int    // measures
	figures []figure // of the formulas of biomech that it calls
	needs   []int    // facts, in working order
}

// figure is one uncertain constant of a formula.
type figure struct {
	formula *biomech.Formula
	index   int
}

// shift moves a figure while a formula is worked out.
type shift struct {
	figure
	by float64
}

func (e *Engine) spread(p *program, u clinical.Unit) *spread {
	if p == nil {
		return nil
	}
	s := &spread{prog: p, unit: u, needs: e.needs(p.expr)}
	facts := map[*ruleset.Fact]bool{}
	var visit func(x *ruleset.Expr)
	visit = func(x *ruleset.Expr) {
		for _, f := range figures(x) {
			if !slices.Contains(s.figures, f) {
				s.figures = append(s.figures, f)
			}
		}
		for _, r := range x.Reads {
			switch {
			case r.Fact != nil:
				if !facts[r.Fact] {
					facts[r.Fact] = true
					visit(r.Fact.Expr)
				}
			case !r.Recorded:
				if slot := e.layout.measure[slotKey{r.Measure.Name, r.Other, false}]; !slices.Contains(s.slots, slot) {
					s.slots = append(s.slots, slot)
				}
			}
		}
	}
	visit(p.expr)
	slices.Sort(s.slots)
	if len(s.slots)+len(s.figures) == 0 {
		return nil
	}
	return s
}

func figures(x *ruleset.Expr) (out []figure) {
	ast.PreOrderVisit(x.AST.NativeRep().Expr(), ast.NewExprVisitor(func(n ast.Expr) {
		if n.Kind() != ast.CallKind {
			return
		}
		if f := biomech.Named(n.AsCall().FunctionName()); f != nil {
			for i := range f.Constants {
				out = append(out, figure{f, i})
			}
		}
	}))
	return out
}

// input is one uncertain input of a formula.
type input struct {
	biomech.Input
	unit string
	set  func(*frame, float64)
}

// inputs lists what is uncertain of what a formula rests on in a frame, and the quantities whose measure
// states no error.
func (s *spread) inputs(e *Engine, f *frame) (in []input, notCounted []string) {
	for _, slot := range s.slots {
		m, path := e.layout.slots[slot].measure, e.layout.slots[slot].path
		q, ok := f.values[slot].(clinical.Quantity)
		switch {
		case !ok: // a grade, option or count moves by steps: that is a matter of boundaries
			continue
		case m.Error == 0:
			notCounted = append(notCounted, path)
			continue
		}
		at, _ := q.In(m.Unit)
		in = append(in, input{biomech.Input{Name: path, Value: at, U: m.Error / coverage}, m.Unit.Code, func(g *frame, x float64) {
			if q, err := clinical.NewQuantity(x, m.Unit); err == nil {
				g.values[slot] = q
			}
		}})
	}
	for _, k := range s.figures {
		c := k.formula.Constants[k.index]
		in = append(in, input{biomech.Input{Name: c.Name, Value: c.Value, U: c.U}, c.Unit, func(g *frame, x float64) {
			if by := x - c.Value; by != 0 {
				g.shift = &shift{k, by}
			}
		}})
	}
	return in, notCounted
}

// with works the formula out, with what it reads, for some values of its inputs.
func (s *spread) with(e *Engine, f *frame, in []input, x []float64) (float64, error) {
	g := &frame{layout: f.layout, values: slices.Clone(f.values), texts: f.texts, side: f.side}
	for i := range in {
		in[i].set(g, x[i])
	}
	for _, n := range s.needs {
		g.values[e.facts[n].slot] = e.facts[n].prog.try(g)
	}
	at, ok := number(s.prog.try(g), s.unit)
	if !ok {
		return 0, errNoNumber
	}
	return at, nil
}

// of works the uncertainty out in a frame where the formula has a value; nil where nothing that it rests
// on states an error.
//
// An input adds what the law of propagation gives, or what its whole band does where that is more: where a
// limit lies within the band (a shoe's heel that is only built up below plantigrade), the slope at the
// value itself would hide it.
func (s *spread) of(e *Engine, f *frame) *Uncertainty {
	if s == nil {
		return nil
	}
	in, notCounted := s.inputs(e, f)
	if in == nil {
		return nil
	}
	plain := make([]biomech.Input, len(in))
	for i := range in {
		plain[i] = in[i].Input
	}
	work := func(x []float64) (float64, error) { return s.with(e, f, in, x) }
	u, err := biomech.Propagate(work, plain, nil)
	if err != nil {
		return nil
	}
	out := &Uncertainty{NotCounted: notCounted}
	for i, x := range in {
		if adds := tidy(max(coverage*math.Abs(u.Parts[i].U), furthest(work, plain, i, u.Value))); adds > 0 {
			out.From = append(out.From, Share{Input: x.Name, PlusMinus: tidy(coverage * x.U), Unit: x.unit, Adds: adds})
			out.PlusMinus = math.Hypot(out.PlusMinus, adds)
		}
	}
	if out.From == nil {
		return nil
	}
	for i := range out.From {
		out.From[i].Share = tidy(out.From[i].Adds * out.From[i].Adds / (out.PlusMinus * out.PlusMinus))
	}
	out.PlusMinus = tidy(out.PlusMinus)
	slices.SortStableFunc(out.From, func(a, b Share) int { return cmp.Compare(b.Adds, a.Adds) })
	return out
}

// furthest gives how far the result moves from its value over the whole band of one input.
func furthest(work func([]float64) (float64, error), in []biomech.Input, i int, value float64) (change float64) {
	x := make([]float64, len(in))
	for j := range in {
		x[j] = in[j].Value
	}
	for _, by := range []float64{-coverage, coverage} {
		x[i] = in[i].Value + by*in[i].U
		if y, err := work(x); err == nil {
			change = max(change, math.Abs(y-value))
		}
	}
	return change
}

type noNumber struct{}

func (noNumber) Error() string { return "no number" }

var errNoNumber = noNumber{}

// shifting is a call of a formula that rests on uncertain figures: it can be worked out with one moved.
type shifting struct {
	interpreter.InterpretableCall
	formula *biomech.Formula
}

func (c *shifting) Eval(a interpreter.Activation) ref.Val { return c.Exec(interpreter.AsFrame(a)) }

func (c *shifting) Exec(f *interpreter.ExecutionFrame) ref.Val {
	out := c.InterpretableCall.Exec(f)
	v, ok := f.Activation.(*view)
	if !ok || v.shift == nil || v.shift.formula != c.formula || types.IsUnknownOrError(out) {
		return out
	}
	args := make([]ref.Val, len(c.Args()))
	for i, a := range c.Args() {
		args[i] = a.Exec(f)
	}
	return c.formula.Call(v.shift.index, v.shift.by, args, out)
}

// quantity gives a quantity's value, and notes in its trace how far it could be off.
func (s *scope) quantity(x *fact, t *Trace) *Measured {
	m := measured(s.values[x.slot], *x.Quantity)
	if m == nil {
		return nil
	}
	if t.Off = x.off.of(s.e, s.frame); t.Off != nil {
		m.PlusMinus = &t.Off.PlusMinus
	}
	return m
}
