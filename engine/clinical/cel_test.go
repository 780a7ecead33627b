package clinical

import (
	"math"
	"testing"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"pgregory.net/rapid"
)

// TestConditions: what compiles, what does not, and what it gives.
func TestConditions(t *testing.T) {
	env := environment(t, scale(t, "power", "0", "1", "2"), scale(t, "tone", "0", "1", "2"))
	vars := map[string]any{
		"x.angle": q(t, -5, "deg"), "y.angle": q(t, 10, "deg"), "x.length": q(t, 86.5, "cm"), "x.ratio": q(t, 0.85, "1"), "x.time": q(t, 61, "a"),
		"grade.power": grade(t, scale(t, "power", "0", "1", "2"), "1"), "n": 4, "d": 2.5,
	}
	for expr, want := range map[string]bool{
		"x.angle < deg(5)": true, "x.angle <= deg(-5.0)": true, "x.angle > -deg(5)": false, "-x.angle == deg(5)": true, "deg(12.1) - deg(7.1) == deg(5)": true,
		"x.length == mm(865)": true, "x.length >= m(0.865)": true, "x.length in [mm(860), cm(86.5)]": true, "x.length in [mm(860)]": false, "!(x.length in [])": true,
		"x.ratio < ratio(0.9) && x.ratio < percent(90)": true, "x.time >= years(16)": true, "x.time != months(732)": false,
		"x.angle / y.angle == ratio(-0.5)": true, "2 * x.angle + y.angle == deg(0)": true, "x.angle * n == deg(-20)": true, "x.angle * d == deg(-12.5)": true,
		"deg(n) == deg(4.0) && deg(d) == deg(2.5)": true, "deg(n + 1) == abs(x.angle)": true,
		"abs(-5) == 5 && abs(-5.5) == 5.5 && abs(0) == 0": true, "least(3, 1, 2) == 1 && greatest(3.5, 1.0) == 3.5": true,
		"least(x.angle, y.angle) == x.angle": true, "greatest(deg(1), deg(2), deg(3), deg(4), deg(5), rad(1)) == rad(1)": true,
		"[x.angle, y.angle].exists(a, a > deg(0))": true, "[mm(3), mm(5)].all(l, l < cm(1))": true, "size([mm(3)].filter(l, l > mm(3))) == 0": true,
		"(x.angle < deg(0) ? mm(10) : mm(5)) == cm(1)": true, "{'left': mm(5)}['left'] == mm(5)": true, "[mm(5)] == [cm(0.5)]": true,
		"grade.power >= power('1') && grade.power != power('2')": true, "grade.power in [power('0'), power('2')]": false,
	} {
		if got := eval(t, env, expr, vars); got != types.Bool(want) {
			t.Errorf("%s is %v", expr, got)
		}
	}
	for _, expr := range []string{
		"x.angle < mm(5)", "x.angle < 5", "x.angle < 5.0", "5 < x.angle", "x.angle == 5", "x.angle == mm(5)", "x.angle == 'deg'", "x.angle in [mm(5)]", "x.angle in [5]",
		"x.angle + 5", "5 - x.angle", "x.angle + x.length", "5 / x.angle", "x.angle * x.angle", "x.mass * x.length", "x.angle * 'a'", "x.angle * 2u", "-grade.power", "!x.angle", "x.angle",
		"grade.power < tone('1')", "grade.power == tone('1')", "grade.power == '1'", "grade.power < 1", "grade.power + power('1')", "grade.power * 2", "power(1)", "power('1', '2')",
		"deg('5')", "deg(5u)", "deg()", "deg(5, 6)", "deg(x.angle)", "grade.power in [tone('1')]", "x.ratio < 0.9",
		"abs(grade.power)", "abs('a')", "least(mm(5))", "least(mm(5), 6)", "least(mm(5), kg(6))", "least(1, 2.0)", "greatest(power('1'), power('2'))",
		"least(mm(1), mm(2), mm(3), mm(4), mm(5), mm(6), mm(7))", "string(x.angle)", "double(x.ratio)", "x.angle.unit", "size(x.angle)", "x.angle % 2",
	} {
		if ast, iss := env.Compile(expr); iss.Err() == nil && ast.OutputType() == cel.BoolType || iss.Err() == nil && expr != "x.angle" {
			t.Errorf("%s compiles", expr)
		}
	}
	// What the checker cannot see is refused when it runs.
	for expr, vars := range map[string]any{"dyn(x.angle) < 5": vars, "dyn(x.angle) + mm(5) == mm(5)": vars, "dyn(x.angle) < x.length": vars, "2 * dyn('a') == deg(5)": vars, "dyn(true) * x.angle == deg(5)": vars,
		"x.angle < null": vars, "null * x.angle == deg(5)": vars, "x.angle + null == deg(5)": vars} { // CEL takes null for any type that is not its own
		if got := eval(t, env, expr, vars); !types.IsError(got) {
			t.Errorf("%s is %v", expr, got)
		}
	}
	if got := eval(t, env, "dyn(x.angle) == 5 || dyn(x.angle) == dyn(x.length)", vars); got != types.False {
		t.Errorf("an angle equals a number or a length: %v", got)
	}
}

// TestBareNumbersAreCEL: * is declared anew here, and must give for bare numbers what CEL's own gives.
func TestBareNumbersAreCEL(t *testing.T) {
	ours := environment(t)
	plain, err := cel.NewEnv(cel.Variable("n", cel.IntType), cel.Variable("d", cel.DoubleType))
	if err != nil {
		t.Fatal(err)
	}
	exprs := []string{
		"2 * 3", "2.5 * 4.0", "2u * 3u", "n * n", "d * d", "9223372036854775807 * 2", "-9223372036854775807 * 2", "18446744073709551615u * 2u", "1e308 * 10.0", "0.0 * (1.0 / 0.0)",
		"7 / 2", "7 / 0", "7.0 / 0.0", "7u / 0u", "7 % 0", "n / 2", "9223372036854775807 + 1", "-(-9223372036854775807 - 1)", "1u - 2u",
		"2 * 2.0", "2 * 2u", "2.0 * 2", "'a' * 2", "2 * 'a'", "true * 2", "[1] * 2", "2 / 2.0", "dyn(2) * 2.0", "dyn(2) * 2u", "dyn('a') * 2", "2 * dyn('a')", "dyn(true) * 2",
		"duration('1h') * 2", "2 + 3 * 4 - 5", "n < 5 && d > 2.0", "1 < 2.0", "'a' + 'b'", "[1] + [2]", "duration('1h') + duration('1m')", "-2.5",
	}
	outcome := func(env *cel.Env, expr string) any {
		ast, iss := env.Compile(expr)
		if iss.Err() != nil {
			return "does not compile"
		}
		p, err := env.Program(ast)
		if err != nil {
			return err.Error()
		}
		v, _, err := p.Eval(map[string]any{"n": 4, "d": 2.5})
		if err != nil {
			return err.Error()
		}
		if d, ok := v.(types.Double); ok && math.IsNaN(float64(d)) {
			return "NaN"
		}
		if l, ok := v.Value().([]ref.Val); ok {
			return len(l)
		}
		return v
	}
	for _, expr := range exprs {
		got, want := outcome(ours, expr), outcome(plain, expr)
		g, isVal := got.(ref.Val)
		w, wantVal := want.(ref.Val)
		if same := got == want || isVal && wantVal && g.Type() == w.Type() && types.Equal(g, w) == types.True; !same {
			t.Errorf("%s is %v here, and %v in plain CEL", expr, got, want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Int64().Draw(t, "a"), rapid.Int64().Draw(t, "b")
		if rapid.Bool().Draw(t, "small") {
			a, b = a%1e10, b%1e10
		}
		got, want := multiply(types.Int(a), types.Int(b)), types.Int(a).Multiply(types.Int(b))
		if types.IsError(got) != types.IsError(want) || !types.IsError(got) && got != want {
			t.Fatalf("%d × %d is %v, want %v", a, b, got, want)
		}
	})
}

// TestUnknownStaysUnknown: through every operator and function, and as Kleene's logic has it.
func TestUnknownStaysUnknown(t *testing.T) {
	env := environment(t, scale(t, "power", "0", "1", "2"))
	known := map[string]any{"y.angle": q(t, 10, "deg"), "x.force": q(t, 90, "N"), "x.time": q(t, 1, "a")}
	vars, err := cel.PartialVars(known, cel.AttributePattern("x.angle"), cel.AttributePattern("x.length"), cel.AttributePattern("grade.power"), cel.AttributePattern("day"), cel.AttributePattern("n"))
	if err != nil {
		t.Fatal(err)
	}
	for _, expr := range []string{
		"x.angle", "-x.angle", "x.angle < deg(5)", "deg(5) >= x.angle", "x.angle == y.angle", "x.angle != x.angle", "x.angle + y.angle", "y.angle - x.angle", "x.angle * 2", "2 * x.angle", "x.angle * 0",
		"x.angle / 0", "y.angle / x.angle", "x.force * x.length", "x.length * x.force", "deg(n)", "abs(x.angle)", "least(y.angle, x.angle)", "greatest(x.angle, y.angle, deg(99))", "x.angle in [deg(5)]", "y.angle in [x.angle]",
		"grade.power < power('2')", "grade.power == power('2')", "since(day)", "since(day) < x.time",
		"y.angle == deg(10) && x.angle < deg(5)", "y.angle < deg(0) || x.angle < deg(5)", "!(x.angle < deg(5))",
	} {
		if got := eval(t, env, expr, vars); !types.IsUnknown(got) {
			t.Errorf("%s is %v", expr, got)
		}
	}
	for expr, want := range map[string]types.Bool{"y.angle < deg(0) && x.angle < deg(5)": false, "x.angle < deg(5) || y.angle == deg(10)": true} {
		if got := eval(t, env, expr, vars); got != want {
			t.Errorf("%s is %v", expr, got)
		}
	}
}

func TestDescribe(t *testing.T) {
	env := environment(t, scale(t, "muscle_power", "0", "1"))
	for expr, want := range map[string]string{
		"x.angle": "an angle", "x.area": "an area", "x.length": "a length", "x.time": "a time", "x.ratio": "a ratio", "x.stiffness": "a stiffness",
		"grade.muscle_power": "a grade of muscle_power", "day": "a date", "yes": "yes or no", "n": "a bare number", "d": "a bare number", "2u": "a bare number",
		"word": "text", "[mm(5)]": "a list", "{'a': 1}": "a table of names and values", "null": "nothing", "b'a'": "raw bytes",
		"timestamp('2026-10-02T00:00:00Z')": "a point in time", "duration('1h')": "a bare length of time", "type(n)": "the name of a type", "dyn(n)": "a value of any kind",
	} {
		ast, iss := env.Compile(expr)
		if iss.Err() != nil {
			t.Fatal(iss.Err())
		}
		if got := Describe(ast.OutputType()); got != want {
			t.Errorf("%s is %q, want %q", expr, got, want)
		}
		if d, ok := DimensionOf(ast.OutputType()); ok != (len(expr) > 2 && expr[:2] == "x.") || ok && d != Dimension(expr[2:]) {
			t.Errorf("%s has the dimension %q, %v", expr, d, ok)
		}
	}
	if got := Describe(nil); got != "something unknown" {
		t.Errorf("nil is %q", got)
	}
	for _, typ := range []*cel.Type{nil, cel.OpaqueType("crus.warmth"), cel.OpaqueType("angle"), cel.OpaqueType("crus.")} {
		if d, ok := DimensionOf(typ); ok {
			t.Errorf("%v has the dimension %q", typ, d)
		}
	}
	if got := Describe(cel.OpaqueType("vector")); got != "vector" {
		t.Errorf("another opaque type is %q", got)
	}
}

// TestFunctionsAreDocumented: what Functions lists is declared, and everything declared beyond the
// standard library is listed, with a signature that compiles.
func TestFunctionsAreDocumented(t *testing.T) {
	plain, err := cel.NewEnv()
	if err != nil {
		t.Fatal(err)
	}
	env, err := cel.NewCustomEnv(append(EnvOptions(), cel.Variable("limb.x", Length.CELType()), cel.Variable("other.x", Length.CELType()), cel.Variable("person.x", DateType()))...)
	if err != nil {
		t.Fatal(err)
	}
	listed := map[string]bool{}
	for _, f := range Functions() {
		if listed[f.Name] || f.Doc == "" || plain.HasFunction(f.Name) {
			t.Errorf("%s is listed twice, of CEL itself or without a word", f.Name)
		}
		listed[f.Name] = true
		if _, iss := env.Compile(f.Signature); iss.Err() != nil {
			t.Errorf("%s is not written %s: %v", f.Name, f.Signature, iss.Err())
		}
	}
	for name := range env.Functions() {
		if !plain.HasFunction(name) && !listed[name] {
			t.Errorf("%s is declared and not listed", name)
		}
	}
	for name := range plain.Functions() {
		if !env.HasFunction(name) {
			t.Errorf("%s of the standard library is missing", name)
		}
	}
	for _, u := range Units() {
		if name := LiteralFor(u); name != "" && !listed[name] {
			t.Errorf("the literal %s is not listed", name)
		}
	}
	for name, doc := range map[string]string{"deg": "an angle in degrees", "Nm_per_deg": "a stiffness in newton metres per degree", "ratio": "a ratio", "percent": "a ratio in percent"} {
		for _, f := range Functions() {
			if f.Name == name && f.Doc != doc {
				t.Errorf("%s is %q, want %q", name, f.Doc, doc)
			}
		}
	}
}
