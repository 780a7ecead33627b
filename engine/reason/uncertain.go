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
// uncertainty at first order (JCGM 100:2008, 5.1.2), inputs taken as independent.
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

// of works the uncertainty out in a frame where the formula has a value; nil where nothing that it rests
// on states an error.
func (s *spread) of(e *Engine, f *frame) *Uncertainty {
	if s == nil {
		return nil
	}
	var in []biomech.Input
	var set []func(*frame, float64)
	var shares []Share
	out := &Uncertainty{}
	for _, slot := range s.slots {
		m, path := e.layout.slots[slot].measure, e.layout.slots[slot].path
		q, ok := f.values[slot].(clinical.Quantity)
		switch {
		case !ok: // a grade, option or count moves by steps: that is a matter of boundaries
			continue
		case m.Error == 0:
			out.NotCounted = append(out.NotCounted, path)
			continue
		}
		at, _ := q.In(m.Unit)
		in = append(in, biomech.Input{Name: path, Value: at, U: m.Error / coverage})
		set = append(set, func(g *frame, x float64) {
			if q, err := clinical.NewQuantity(x, m.Unit); err == nil {
				g.values[slot] = q
			}
		})
		shares = append(shares, Share{Input: path, PlusMinus: m.Error, Unit: m.Unit.Code})
	}
	for _, k := range s.figures {
		c := k.formula.Constants[k.index]
		in = append(in, biomech.Input{Name: c.Name, Value: c.Value, U: c.U})
		set = append(set, func(g *frame, x float64) {
			if by := x - c.Value; by != 0 {
				g.shift = &shift{k, by}
			}
		})
		shares = append(shares, Share{Input: c.Name, PlusMinus: tidy(coverage * c.U), Unit: c.Unit})
	}
	if in == nil {
		return nil
	}
	u, err := biomech.Propagate(func(x []float64) (float64, error) {
		g := &frame{layout: f.layout, values: slices.Clone(f.values), texts: f.texts, side: f.side}
		for i, set := range set {
			set(g, x[i])
		}
		for _, n := range s.needs {
			g.values[e.facts[n].slot] = e.facts[n].prog.try(g)
		}
		v := s.prog.try(g)
		at, ok := number(v, s.unit)
		if !ok {
			return 0, errNoNumber
		}
		return at, nil
	}, in, nil)
	if err != nil {
		return nil
	}
	for i, p := range u.Parts {
		if p.U == 0 {
			continue
		}
		shares[i].Adds = tidy(coverage * math.Abs(p.U))
		shares[i].Share = tidy(p.U * p.U / (u.U * u.U))
		out.From = append(out.From, shares[i])
	}
	if out.From == nil {
		return nil
	}
	out.PlusMinus = tidy(coverage * u.U)
	slices.SortStableFunc(out.From, func(a, b Share) int { return cmp.Compare(b.Adds, a.Adds) })
	return out
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
