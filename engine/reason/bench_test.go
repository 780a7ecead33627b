package reason_test

import (
	"fmt"
	"io/fs"
	"math/rand/v2"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/cel-go/cel"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
	"crus/rulesets"
)

// bench is a ruleset of 20 findings and 100 rules over 40 measures of the lower_limb vocabulary, each
// rule of three to seven terms with one or two pieces of advice; and an assessment with all of them.
type bench struct {
	*rand.Rand
	v        *vocab.Vocabulary
	measures []*vocab.Measure
}

func newBench(t testing.TB) (*bench, *ruleset.Ruleset) {
	t.Helper()
	m := fstest.MapFS{}
	err := fs.WalkDir(rulesets.FS, "lower_limb", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		src, err := fs.ReadFile(rulesets.FS, path)
		m[path] = &fstest.MapFile{Data: src}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	lib := ruleset.Library{Embedded: m}
	v, diags := lib.Vocabulary("lower_limb")
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	b := &bench{Rand: rand.New(rand.NewPCG(3, 5)), v: v}
	for _, i := range b.Perm(len(v.Measures)) {
		if x := v.Measures[i]; x.Of == vocab.Limb && x.Kind != vocab.Text && x.Kind != vocab.Date && len(b.measures) < 40 {
			b.measures = append(b.measures, x)
		}
	}
	m["bench/rules.hcl"] = &fstest.MapFile{Data: []byte(b.text())}
	rs, diags := lib.Ruleset("bench")
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	return b, rs
}

func (b *bench) text() string {
	var out strings.Builder
	out.WriteString("ruleset \"bench\" {\n title = \"Bench\"\n version = \"1.0.0\"\n status = \"active\"\n vocabulary = \"lower_limb@1\"\n}\n")
	for i := range 20 {
		out.WriteString(finding(fmt.Sprintf("f%d", i), b.condition(2, 0)))
	}
	for i := range 100 {
		var parts []string
		if b.IntN(2) == 0 {
			parts = append(parts, "strong")
		}
		if b.IntN(5) == 0 {
			parts = append(parts, "unless "+b.condition(1, 20))
		}
		if i < 90 && b.IntN(5) == 0 {
			parts = append(parts, fmt.Sprintf("overrides r%02d", i+1+b.IntN(9)))
		}
		parts = append(parts, fmt.Sprintf("because With ${limb.%s} it is so.", b.measures[b.IntN(40)].Name))
		for _, k := range b.Perm(len(b.v.Choices))[:1+b.IntN(2)] {
			c := b.v.Choices[k]
			switch {
			case c.Numeric():
				parts = append(parts, fmt.Sprintf("%s aim %s(%g)", c.Name, literal(c.Unit.Code), c.Between.Lo))
			case b.IntN(3) == 0:
				parts = append(parts, fmt.Sprintf("%s never %s", c.Name, c.Options[b.IntN(len(c.Options))]))
			default:
				parts = append(parts, fmt.Sprintf("%s favour %s", c.Name, c.Options[b.IntN(len(c.Options))]))
			}
		}
		out.WriteString(rule(fmt.Sprintf("r%02d", i), b.condition(3+b.IntN(5), 20), parts...))
	}
	return out.String()
}

func literal(unit string) string {
	u, _ := clinical.UnitByCode(unit)
	return clinical.LiteralFor(u)
}

// condition draws a condition of some terms.
func (b *bench) condition(terms, findings int) string {
	if terms > 1 {
		k := 1 + b.IntN(terms-1)
		return "(" + b.condition(k, findings) + []string{" && ", " || "}[b.IntN(2)] + b.condition(terms-k, findings) + ")"
	}
	if findings > 0 && b.IntN(5) == 0 {
		return fmt.Sprintf("finding.f%d", b.IntN(findings))
	}
	m := b.measures[b.IntN(len(b.measures))]
	path := "limb." + m.Name
	op := []string{"<", "<=", ">", ">="}[b.IntN(4)]
	at := m.Plausible.Lo + float64(1+b.IntN(7))*(m.Plausible.Hi-m.Plausible.Lo)/8
	switch m.Kind {
	case vocab.YesNo:
		return []string{"", "!"}[b.IntN(2)] + path
	case vocab.Option:
		if b.IntN(2) == 0 {
			return fmt.Sprintf("%s in ['%s', '%s']", path, m.Options[0], m.Options[len(m.Options)-1])
		}
		return fmt.Sprintf("%s == '%s'", path, m.Options[b.IntN(len(m.Options))])
	case vocab.Grade:
		return fmt.Sprintf("%s %s %s('%s')", path, op, m.Scale.Name, m.Scale.Grades[b.IntN(len(m.Scale.Grades))])
	case vocab.Count:
		return fmt.Sprintf("%s %s %d", path, op, int(at))
	}
	return fmt.Sprintf("%s %s %s(%g)", path, op, literal(m.Unit.Code), float64(int(at)))
}

// assessment records the measures but for the first missing ones.
func (b *bench) assessment(t testing.TB, missing int) *assess.Assessment {
	t.Helper()
	var words []string
	for i, m := range b.measures {
		var x string
		switch m.Kind {
		case vocab.YesNo:
			x = fmt.Sprint(b.IntN(2) == 0)
		case vocab.Option:
			x = m.Options[b.IntN(len(m.Options))]
		case vocab.Grade:
			x = m.Scale.Grades[b.IntN(len(m.Scale.Grades))]
		default:
			x = fmt.Sprint(int(m.Plausible.Lo + b.Float64()*(m.Plausible.Hi-m.Plausible.Lo)))
		}
		if i >= missing {
			words = append(words, m.Name+"="+x)
		}
	}
	return given(t, b.v, strings.Join(words, " "))
}

// prepared makes the engine and an assessment on which it is carried out.
func prepared(b *testing.B, missing int) (*reason.Engine, *assess.Assessment) {
	b.Helper()
	x, rs := newBench(b)
	e, err := reason.New(rs)
	if err != nil {
		b.Fatal(err)
	}
	return e, x.assessment(b, missing)
}

// BenchmarkAdvise carries the ruleset out with the full trace. BenchmarkBareCEL is what to hold it
// against, which BenchmarkAdviseToBareCEL does in one go.
func BenchmarkAdvise(b *testing.B) {
	for _, missing := range []int{0, 10, 40} {
		b.Run(fmt.Sprintf("missing=%d", missing), func(b *testing.B) {
			e, a := prepared(b, missing)
			b.ReportAllocs()
			for b.Loop() {
				e.Advise(a, today())
			}
		})
	}
}

// bareCEL prepares the same conditions and formulas as Advise works out, with nothing missing, for
// cel-go alone: each as a program that tracks its state, with the values in a map.
func bareCEL(b *testing.B) (run func()) {
	b.Helper()
	x, rs := newBench(b)
	values := map[string]any{}
	for name, entry := range x.assessment(b, 0).Left {
		values["limb."+name] = entry.Value
	}
	var programs []cel.Program
	program := func(e *ruleset.Expr) cel.Program {
		p, err := e.Env.Program(e.AST, cel.EvalOptions(cel.OptTrackState))
		if err != nil {
			b.Fatal(err)
		}
		programs = append(programs, p)
		return p
	}
	for _, f := range rs.Facts { // they stand in the order in which they read each other
		v, _, err := program(f.Expr).Eval(values)
		if err != nil {
			b.Fatal(err)
		}
		values[f.Path()] = v
	}
	for _, r := range rs.Rules {
		program(r.When)
		if r.Unless != nil {
			program(r.Unless)
		}
		for _, a := range r.Advise {
			if a.Formula != nil {
				program(a.Formula)
			}
		}
	}
	return func() {
		for _, p := range programs {
			if _, _, err := p.Eval(values); err != nil {
				b.Fatal(err)
			}
		}
	}
}

func BenchmarkBareCEL(b *testing.B) {
	run := bareCEL(b)
	b.ReportAllocs()
	for b.Loop() {
		run()
	}
}

// BenchmarkAdviseToBareCEL takes turns between the two, so that what else the machine does falls on
// both, and reports how much longer Advise takes; it is to be 1.5 times at most.
func BenchmarkAdviseToBareCEL(b *testing.B) {
	e, a := prepared(b, 0)
	run := bareCEL(b)
	var advice, bare time.Duration
	for b.Loop() {
		start := time.Now()
		e.Advise(a, today())
		between := time.Now()
		run()
		advice, bare = advice+between.Sub(start), bare+time.Since(between)
	}
	b.ReportMetric(float64(advice)/float64(bare), "times")
}
