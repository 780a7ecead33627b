package clinical

import (
	"testing"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types/ref"
	"github.com/google/cel-go/common/types/traits"
)

// TestComparingAllocatesNothing: comparing two values, already boxed as CEL holds them, needs no memory.
func TestComparingAllocatesNothing(t *testing.T) {
	s := scale(t, "power", "0", "1", "2")
	for name, pair := range map[string][2]ref.Val{
		"quantities":         {q(t, 5, "deg"), q(t, 7, "deg")},
		"quantities, turned": {q(t, 7, "deg"), q(t, 5, "deg")},
		"of two units":       {q(t, 5, "mm"), q(t, 7, "cm")},
		"equal":              {q(t, 5, "mm"), q(t, 0.5, "cm")},
		"grades":             {grade(t, s, "0"), grade(t, s, "2")},
	} {
		a, b := pair[0], pair[1]
		if n := testing.AllocsPerRun(100, func() {
			_ = a.(traits.Comparer).Compare(b)
			_ = a.Equal(b)
			_ = a.Type()
		}); n != 0 {
			t.Errorf("comparing %s allocates %v times", name, n)
		}
	}
}

// BenchmarkCompare evaluates a comparison of a measure with a literal; "number" is the same on CEL's own doubles.
func BenchmarkCompare(b *testing.B) {
	s := scale(b, "power", "0", "1", "2")
	env := environment(b, s)
	vars, err := cel.NewActivation(map[string]any{"x.angle": q(b, 4, "deg"), "y.angle": q(b, 5, "deg"), "grade.power": grade(b, s, "1"), "d": 4.0})
	if err != nil {
		b.Fatal(err)
	}
	for _, c := range []struct{ name, expr string }{
		{"number", "d < 5.0"}, {"quantity", "x.angle < deg(5)"}, {"two quantities", "x.angle < y.angle"}, {"grade", "grade.power < power('2')"}, {"sum", "x.angle - y.angle < deg(5)"},
	} {
		b.Run(c.name, func(b *testing.B) {
			ast, iss := env.Compile(c.expr)
			if iss.Err() != nil {
				b.Fatal(iss.Err())
			}
			p, err := env.Program(ast)
			if err != nil {
				b.Fatal(err)
			}
			b.ReportAllocs()
			for b.Loop() {
				if _, _, err := p.Eval(vars); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}

// BenchmarkEnvironment makes an environment with all that this package declares.
func BenchmarkEnvironment(b *testing.B) {
	for b.Loop() {
		if _, err := cel.NewCustomEnv(EnvOptions()...); err != nil {
			b.Fatal(err)
		}
	}
}
