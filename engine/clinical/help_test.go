package clinical

import (
	"testing"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
)

// q makes a quantity for a table row.
func q(t testing.TB, v float64, code string) Quantity {
	t.Helper()
	u, ok := UnitByCode(code)
	if !ok {
		t.Fatalf("no unit %s", code)
	}
	out, err := NewQuantity(v, u)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// environment is what the tests compile in: quantities x.<dimension> and y.<dimension>, grades, dates
// and bare values.
func environment(t testing.TB, scales ...*Scale) *cel.Env {
	t.Helper()
	opts := append(EnvOptions(),
		cel.Variable("day", DateType()), cel.Variable("undated", DateType()),
		cel.Variable("n", cel.IntType), cel.Variable("d", cel.DoubleType), cel.Variable("word", cel.StringType), cel.Variable("yes", cel.BoolType))
	for _, dim := range Dimensions() {
		opts = append(opts, cel.Variable("x."+string(dim), dim.CELType()), cel.Variable("y."+string(dim), dim.CELType()))
	}
	for _, s := range scales {
		opts = append(opts, s.EnvOptions()...)
		opts = append(opts, cel.Variable("grade."+s.Name, s.CELType()))
	}
	env, err := cel.NewCustomEnv(opts...)
	if err != nil {
		t.Fatal(err)
	}
	return env
}

// eval compiles and evaluates; a failed evaluation is its error value.
func eval(t testing.TB, env *cel.Env, expr string, vars any) ref.Val {
	t.Helper()
	ast, iss := env.Compile(expr)
	if iss.Err() != nil {
		t.Fatalf("%s does not compile: %v", expr, iss.Err())
	}
	p, err := env.Program(ast, cel.EvalOptions(cel.OptPartialEval))
	if err != nil {
		t.Fatalf("%s: %v", expr, err)
	}
	v, _, err := p.Eval(vars)
	if err != nil && !types.IsError(v) {
		t.Fatalf("%s: %v", expr, err)
	}
	return v
}

// none are no variables.
var none = map[string]any{}

func scale(t testing.TB, name string, grades ...string) *Scale {
	t.Helper()
	s, err := NewScale(name, grades)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func grade(t testing.TB, s *Scale, label string) Grade {
	t.Helper()
	g, ok := s.Grade(label)
	if !ok {
		t.Fatalf("%s has no grade %s", s.Name, label)
	}
	return g
}

func date(t testing.TB, s string) Date {
	t.Helper()
	d, err := ParseDate(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}
