package replay_test

import (
	"fmt"
	"testing"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/cell"
)

// What replay is timed against. All of these work out the findings and the conditions of the 120 rules, and nothing more:
// no overriding, no cautions, no choices, nothing of what is provisional, all of which replay does in its time.

// bareCEL is cel-go over bare numbers: each name a typed variable, each condition one program that was made before, the
// values ready as cel-go's own types in an activation that finds them by their names.
type bareCEL struct {
	findings, when, unless []cel.Program
	values                 *valuesByName
	patterns               []*cel.AttributePatternType // of each measure, for partial evaluation
	unknown                []*cel.AttributePatternType // of each finding
}

// valuesByName is what names stand for.
type valuesByName struct {
	at     map[string]int
	values []ref.Val
}

// ResolveName finds a value.
func (v *valuesByName) ResolveName(name string) (any, bool) {
	i, ok := v.at[name]
	if !ok || v.values[i] == nil {
		return nil, false
	}
	return v.values[i], true
}

// Parent is nil.
func (v *valuesByName) Parent() cel.Activation { return nil }

func newBareCEL(t testing.TB, partial bool) *bareCEL {
	t.Helper()
	c := &bareCEL{values: &valuesByName{at: map[string]int{}}}
	var opts []cel.EnvOption
	declare := func(name string, typ *cel.Type) {
		c.values.at[name] = len(c.values.values)
		c.values.values = append(c.values.values, nil)
		opts = append(opts, cel.Variable(name, typ))
	}
	for _, m := range drawnMeasures() {
		declare("limb."+m.name, map[string]*cel.Type{"quantity": cel.DoubleType, "grade": cel.IntType, "count": cel.IntType, "option": cel.StringType, "yes_no": cel.BoolType}[m.kind])
		c.patterns = append(c.patterns, cel.AttributePattern("limb."+m.name))
	}
	for i := range drawnFindings {
		name := fmt.Sprintf("finding.f%02d", i)
		declare(name, cel.BoolType)
		c.unknown = append(c.unknown, cel.AttributePattern(name))
	}
	env, err := cel.NewEnv(opts...)
	if err != nil {
		t.Fatal(err)
	}
	programs := func(texts []string) (out []cel.Program) {
		for _, text := range texts {
			if text == "" {
				out = append(out, nil)
				continue
			}
			ast, issues := env.Compile(text)
			if issues.Err() != nil {
				t.Fatal(issues.Err())
			}
			how := cel.EvalOptions(cel.OptOptimize)
			if partial {
				how = cel.EvalOptions(cel.OptOptimize, cel.OptPartialEval)
			}
			p, err := env.Program(ast, how)
			if err != nil {
				t.Fatal(err)
			}
			out = append(out, p)
		}
		return out
	}
	c.findings, c.when, c.unless = programs(plainFindings()), programs(plainRules()), programs(plainUnless())
	return c
}

// boxed turns cases of an archive into cel-go's values, nil for what is missing.
func boxed(a *archive, cases int) [][]ref.Val {
	out := make([][]ref.Val, cases)
	for i := range out {
		for m, x := range drawnMeasures() {
			v, ok := a.value(m, i)
			var val ref.Val
			switch {
			case !ok:
			case x.kind == "quantity":
				val = types.Double(v)
			case x.kind == "option":
				val = types.String(x.words[int(v)])
			case x.kind == "yes_no":
				val = types.Bool(v == 1)
			default:
				val = types.Int(v)
			}
			out[i] = append(out[i], val)
		}
	}
	return out
}

// whole works one case out of which nothing is missing.
func (c *bareCEL) whole(t testing.TB, values []ref.Val, out *[drawnRules]truth) {
	copy(c.values.values, values)
	eval := func(p cel.Program) ref.Val {
		v, _, err := p.Eval(c.values)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	for i, p := range c.findings {
		c.values.values[len(values)+i] = eval(p)
	}
	for i, p := range c.when {
		own := truthOf(eval(p))
		if u := c.unless[i]; u != nil {
			own = and(own, not(truthOf(eval(u))))
		}
		out[i] = own
	}
}

// partial works one case out of which something is missing, by partial evaluation.
func (c *bareCEL) partial(t testing.TB, values []ref.Val, out *[drawnRules]truth) {
	copy(c.values.values, values)
	var unknowns []*cel.AttributePatternType
	for m, v := range values {
		if v == nil {
			unknowns = append(unknowns, c.patterns[m])
		}
	}
	vars, err := cel.PartialVars(c.values, unknowns...)
	if err != nil {
		t.Fatal(err)
	}
	eval := func(p cel.Program) ref.Val {
		v, _, err := p.Eval(vars)
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
	for i, p := range c.findings {
		v := eval(p)
		if types.IsUnknown(v) {
			v, unknowns = nil, append(unknowns, c.unknown[i])
		}
		c.values.values[len(values)+i] = v
	}
	if vars, err = cel.PartialVars(c.values, unknowns...); err != nil {
		t.Fatal(err)
	}
	for i, p := range c.when {
		own := truthOf(eval(p))
		if u := c.unless[i]; u != nil {
			own = and(own, not(truthOf(eval(u))))
		}
		out[i] = own
	}
}

func truthOf(v ref.Val) truth {
	switch v {
	case types.True:
		return yes
	case types.False:
		return no
	}
	return unknown
}

// limbs turns cases of an archive into structs, for the conditions that are written by hand.
func limbs(a *archive, cases int) []limb {
	out := make([]limb, cases)
	for i := range out {
		out[i] = blank()
		for m := range a.columns {
			if x, ok := a.value(m, i); ok {
				out[i].record(m, x)
			}
		}
	}
	return out
}

// The rivals do work the same conditions out.
func TestRivalsAgree(t *testing.T) {
	const cases = 300
	s := benchSpace(t)
	c := s.NewCase()
	for _, missing := range []int{0, 5, 40} {
		a := drawArchive(cases, missing)
		hand, values := limbs(a, cases), boxed(a, cases)
		bare := newBareCEL(t, missing > 0)
		for i := range cases {
			s.Work(c, a.row(s, i))
			var byHand, byCEL [drawnRules]truth
			hand[i].findings()
			hand[i].rules(&byHand)
			if missing > 0 {
				bare.partial(t, values[i], &byCEL)
			} else {
				bare.whole(t, values[i], &byCEL)
			}
			for k, r := range s.Rules {
				want := map[cell.Truth]truth{cell.No: no, cell.Unknown: unknown, cell.Yes: yes}[c.Truth[r.Own]]
				if byHand[k] != want || byCEL[k] != want {
					t.Fatalf("%d of 100 missing, case %d, rule %s: %v by hand, %v by cel-go, not %v", missing, i, r.Name, byHand[k], byCEL[k], want)
				}
			}
		}
	}
}
