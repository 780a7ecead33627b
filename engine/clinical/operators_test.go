package clinical

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"github.com/google/cel-go/common/types/traits"
)

// productTable is written by hand, apart from the one in the code: what times what is what.
var productTable = map[string]Dimension{
	"force length": Moment, "length force": Moment, "stiffness angle": Moment, "angle stiffness": Moment,
	"pressure area": Force, "area pressure": Force, "length length": Area, "speed time": Length, "time speed": Length,
}

// quotientTable likewise, without those by a ratio and those of a dimension by itself.
var quotientTable = map[string]Dimension{
	"moment angle": Stiffness, "moment stiffness": Angle, "moment length": Force, "moment force": Length,
	"force area": Pressure, "force pressure": Area, "area length": Length, "length time": Speed, "length speed": Time,
}

// si is how many coherent SI units (radians, metres, ...) a base unit is: the outside check of the factors.
var si = map[Dimension]float64{
	Angle: math.Pi / 180, Length: 1e-3, Mass: 1, Force: 1, Moment: 1, Stiffness: 180 / math.Pi,
	Pressure: 1e3, Area: 1e-6, Speed: 1, SpecificPower: 1, Time: 1, Ratio: 1,
}

// TestEveryOperatorOnEveryPair compiles each operator on each pair of types and holds the result
// against the tables; where it compiles, the value too, worked out in SI units.
func TestEveryOperatorOnEveryPair(t *testing.T) {
	power, tone := scale(t, "power", "0", "1", "2"), scale(t, "tone", "0", "1", "2")
	env := environment(t, power, tone)
	values := map[string]any{"n": 4, "d": 2.5, "word": "w", "yes": true, "day": date(t, "2026-10-02"), "grade.power": grade(t, power, "1"), "grade.tone": grade(t, tone, "1")}
	others := []string{"n", "d", "word", "yes", "day", "grade.power", "grade.tone"}
	var all []string
	for i, d := range Dimensions() {
		all = append(all, "x."+string(d))
		values["x."+string(d)] = Quantity{float64(3 + 2*i), bases[d]}
		values["y."+string(d)] = Quantity{float64(17 - i), bases[d]}
	}
	all = append(all, others...)
	dim := func(operand string) Dimension { d, _ := strings.CutPrefix(operand, "x."); return Dimension(d) }
	quantity := func(operand string) bool { return strings.HasPrefix(operand, "x.") }
	number := func(operand string) bool { return operand == "n" || operand == "d" }

	// want gives the type of a op b; nil where that must not compile. At least one is a quantity or grade.
	want := func(op, a, b string) *cel.Type {
		switch op {
		case "<", "<=", ">", ">=", "==", "!=":
			if a == b {
				return cel.BoolType
			}
		case "+", "-":
			if a == b && quantity(a) {
				return dim(a).CELType()
			}
		case "*":
			switch {
			case quantity(a) && (number(b) || b == "x.ratio"):
				return dim(a).CELType()
			case quantity(b) && (number(a) || a == "x.ratio"):
				return dim(b).CELType()
			}
			return productTable[string(dim(a))+" "+string(dim(b))].CELType()
		case "/":
			switch {
			case quantity(a) && (number(b) || b == "x.ratio"):
				return dim(a).CELType()
			case a == b && quantity(a):
				return Ratio.CELType()
			}
			return quotientTable[string(dim(a))+" "+string(dim(b))].CELType()
		}
		return nil
	}
	inSI := func(operand string) float64 {
		switch v := values[operand].(type) {
		case Quantity:
			return v.Base() * si[v.Dimension()]
		case int:
			return float64(v)
		case float64:
			return v
		}
		return math.NaN()
	}
	compiled := 0
	for _, op := range []string{"<", "<=", ">", ">=", "==", "!=", "+", "-", "*", "/", "%", "&&", "||"} {
		for _, a := range all {
			for _, b := range all {
				if !quantity(a) && !quantity(b) && !strings.HasPrefix(a, "grade") && !strings.HasPrefix(b, "grade") {
					continue // CEL's own
				}
				right := b
				if a == b && quantity(b) {
					right = strings.Replace(b, "x", "y", 1) // another value of the type
				}
				expr := a + " " + op + " " + right
				ast, iss := env.Compile(expr)
				w := want(op, a, b)
				if (w != nil) != (iss.Err() == nil) {
					t.Errorf("%s: compiles %v, want %v (%v)", expr, iss.Err() == nil, w, iss.Err())
					continue
				}
				if w == nil {
					continue
				}
				compiled++
				if !ast.OutputType().IsExactType(w) {
					t.Errorf("%s is %s, want %s", expr, ast.OutputType(), w)
				}
				got := eval(t, env, expr, values)
				if x, y := inSI(a), inSI(right); !math.IsNaN(x) && !math.IsNaN(y) {
					checkInSI(t, expr, got, op, x, y)
				}
			}
		}
	}
	// 14 types compare in 6 ways, 12 add and subtract. By a number, * 48 ways and / 24; by a ratio * 23 and
	// / 12 (the ratio by itself once); by itself / 11 more; and the two tables.
	if want := 14*6 + 12*2 + 48 + 24 + 23 + 12 + 11 + len(productTable) + len(quotientTable); compiled != want {
		t.Errorf("%d pairs compile, want %d", compiled, want)
	}
}

func checkInSI(t *testing.T, expr string, got ref.Val, op string, x, y float64) {
	t.Helper()
	switch want := map[string]float64{"+": x + y, "-": x - y, "*": x * y, "/": x / y}[op]; op {
	case "+", "-", "*", "/":
		r, ok := got.(Quantity)
		if !ok || math.Abs(r.Base()*si[r.Dimension()]-want) > 1e-9*math.Max(1, si[r.Dimension()])+1e-12*math.Abs(want) {
			t.Errorf("%s is %v (%v), want %v in SI units", expr, got, r.Base(), want)
		}
	default:
		want := map[string]bool{"<": x < y, "<=": x <= y, ">": x > y, ">=": x >= y, "==": x == y, "!=": x != y}[op]
		if got != types.Bool(want) {
			t.Errorf("%s is %v, want %v", expr, got, want)
		}
	}
}

// TestResultUnits: the left operand's unit where the dimension is kept, else the base unit.
func TestResultUnits(t *testing.T) {
	env := environment(t)
	for expr, want := range map[string]string{
		"cm(2) + mm(5)": "2.5 cm", "mm(5) + cm(2)": "25 mm", "cm(2) - m(1)": "−98 cm", "-inch(2)": "−2 in",
		"3 * cm(2)": "6 cm", "cm(2) * 1.5": "3 cm", "cm(2) / 4": "0.5 cm", "percent(50) * cm(2)": "1 cm", "cm(2) * percent(50)": "1 cm",
		"percent(50) * percent(50)": "25%", "percent(50) * ratio(0.5)": "25%", "ratio(0.5) * percent(50)": "0.25", "percent(50) / ratio(2)": "25%",
		"cm(2) / ratio(0.5)": "4 cm", "cm(2) / mm(5)": "4", "years(1) / days(1)": "365.25",
		"N(90) * cm(20)": "18 N·m", "cm(20) * N(90)": "18 N·m", "Nm(18) / cm(20)": "90 N", "Nm(18) / N(90)": "200 mm",
		"Nm(35) / deg(10)": "3.5 N·m/°", "Nm_per_deg(3.5) * deg(10)": "35 N·m", "rad(0.1) * Nm_per_deg(3.5)": "20.053523 N·m", "Nm(35) / Nm_per_deg(3.5)": "10°",
		"N(100) / cm2(20)": "50 kPa", "kPa(50) * cm2(20)": "100 N", "mmHg(32) * cm2(10)": "4.266304 N", "N(100) / kPa(50)": "2000 mm²",
		"cm(2) * cm(3)": "600 mm²", "cm2(6) / cm(3)": "20 mm", "m(10) / s(8)": "1.25 m/s", "km_per_h(3.6) * minutes(1)": "60000 mm", "m(6) / m_per_s(1.2)": "5 s",
		"abs(cm(-2))": "2 cm", "least(cm(2), mm(5))": "5 mm", "greatest(cm(2), mm(5), m(0.02))": "2 cm",
	} {
		if got := eval(t, env, expr, none).(interface{ String() string }).String(); got != want {
			t.Errorf("%s is %s, want %s", expr, got, want)
		}
	}
}

// TestZeroHasNoSign: whichever way it comes about, so that it is written as 0.
func TestZeroHasNoSign(t *testing.T) {
	env := environment(t)
	for _, expr := range []string{"-deg(0)", "-1 * deg(0)", "deg(-0.0)", "deg(0) / -5", "abs(-deg(0))", "deg(-1e-12)", "-deg(0) - deg(0)"} {
		if got := eval(t, env, expr, none).(Quantity); got.Base() != 0 || math.Signbit(got.Base()) {
			t.Errorf("%s is kept as %v", expr, got.Base())
		}
	}
}

// TestFailures: what cannot be worked out is an error value with a sentence, never an infinity.
func TestFailures(t *testing.T) {
	env := environment(t, scale(t, "power", "0", "1", "2"))
	for expr, want := range map[string]string{
		"mm(5) / 0": "Nothing can be divided by zero.", "mm(5) / 0.0": "Nothing can be divided by zero.", "mm(5) / -0.0": "Nothing can be divided by zero.",
		"mm(0) / mm(0)": "Nothing can be divided by zero.", "Nm(5) / deg(0)": "Nothing can be divided by zero.", "mm(5) / ratio(0)": "Nothing can be divided by zero.",
		"mm(5) / mm(0.0000000001)": "Nothing can be divided by zero.", // kept as 0
		"mm(5) * (0.0 / 0.0)":      "The result is not a number.", "mm(5) / (0.0 / 0.0)": "The result is not a number.",
		"mm(5) * (1.0 / 0.0)": "The result is too large to be a measurement.", "m(1e12) * 1e9": "The result is too large to be a measurement.",
		"cm2(1e12) / 1e-12": "The result is too large to be a measurement.", "mm(1e12) * mm(1e12) * 1e12": "The result is too large to be a measurement.",
		"deg(1.0 / 0.0)":                "deg(+Inf) can't be a quantity: the number is too large to be a measurement.",
		"deg(0.0 / 0.0)":                "deg(NaN) can't be a quantity: the value is not a number.",
		"deg(9000000000000000)":         "deg(9000000000000000) can't be a quantity: the number is too large to be a measurement.",
		"power('6')":                    `power has no grade "6"; its grades are 0, 1 and 2.`,
		"power('')":                     `power has no grade ""; its grades are 0, 1 and 2.`,
		"since(undated)":                "The assessment has no date, so the time since 2026-07-01 can't be told.",
		"abs(-9223372036854775807 - 1)": "integer overflow", "least(1.0, 0.0 / 0.0)": "NaN values cannot be ordered",
	} {
		got := eval(t, env, expr, map[string]any{"undated": date(t, "2026-07-01")})
		if err, ok := got.(*types.Err); !ok || err.Error() != want {
			t.Errorf("%s is %v, want %s", expr, got, want)
		}
	}
	// a division by a number that is not zero but small stays finite or fails; it is never an infinity
	if got := eval(t, env, "mm(1) / 1e-15", none); got.(Quantity).Base() != 1e15 {
		t.Errorf("1 mm / 1e-15 is %v", got)
	}
}

// TestWrongOperands: called with what the checker would not let through, every method gives an error
// value; an error or unknown operand goes through as it is.
func TestWrongOperands(t *testing.T) {
	s, other := scale(t, "power", "0", "1"), scale(t, "tone", "0", "1")
	operands := map[ref.Val][]ref.Val{
		q(t, 5, "mm"):            {q(t, 5, "kg"), types.String("5"), types.NullValue, types.True, grade(t, s, "0"), date(t, "2026-10-02"), Quantity{}},
		grade(t, s, "0"):         {grade(t, other, "0"), types.Int(0), types.String("0"), q(t, 0, "mm"), Grade{}},
		Quantity{}:               {q(t, 5, "kg"), types.String("")},
		Grade{}:                  {grade(t, s, "0"), types.Int(0)},
		Grade{Scale: s, Rank: 9}: {types.Int(9)},
	}
	unknown, failure := types.NewUnknown(7, nil), types.NewErr("no")
	for a, wrong := range operands {
		calls := map[string]func(ref.Val) ref.Val{"Compare": a.(traits.Comparer).Compare}
		if x, ok := a.(Quantity); ok {
			calls["Add"], calls["Subtract"], calls["Multiply"], calls["Divide"] = x.Add, x.Subtract, x.Multiply, x.Divide
		}
		for name, call := range calls {
			for _, b := range wrong {
				if got := call(b); !types.IsError(got) {
					t.Errorf("%v.%s(%v) is %v", a, name, b, got)
				}
			}
			if got := call(unknown); got != ref.Val(unknown) {
				t.Errorf("%v.%s(unknown) is %v", a, name, got)
			}
			if got := call(failure); got != failure {
				t.Errorf("%v.%s(failure) is %v", a, name, got)
			}
		}
		for _, b := range wrong {
			if a.Equal(b) != types.False || b.Equal(a) != types.False {
				t.Errorf("%v equals %v", a, b)
			}
		}
		if a.Equal(a) != types.True {
			t.Errorf("%v does not equal itself", a)
		}
	}
}

func TestConversions(t *testing.T) {
	for _, c := range []struct {
		v    ref.Val
		text string
	}{
		{q(t, 5, "mm"), "5 mm"}, {grade(t, scale(t, "power", "0", "3+"), "3+"), "3+"}, {date(t, "2026-10-02"), "2026-10-02"},
	} {
		if got := c.v.ConvertToType(types.StringType); got != types.String(c.text) {
			t.Errorf("%v as text is %v", c.v, got)
		}
		if got := c.v.ConvertToType(c.v.Type()); got != c.v {
			t.Errorf("%v as its own type is %v", c.v, got)
		}
		if got := c.v.ConvertToType(types.TypeType); got != c.v.Type().(ref.Val) {
			t.Errorf("the type of %v is %v", c.v, got)
		}
		if got := c.v.ConvertToType(types.IntType); !types.IsError(got) {
			t.Errorf("%v as a number is %v", c.v, got)
		}
		if c.v.Value() != any(c.v) {
			t.Errorf("the value of %v is %v", c.v, c.v.Value())
		}
		for _, want := range []reflect.Type{reflect.TypeOf(c.v), reflect.TypeFor[any](), reflect.TypeFor[ref.Val]()} {
			if got, err := c.v.ConvertToNative(want); err != nil || got != any(c.v) {
				t.Errorf("%v as %v is %v, %v", c.v, want, got, err)
			}
		}
		if got, err := c.v.ConvertToNative(reflect.TypeFor[int]()); err == nil {
			t.Errorf("%v as int is %v", c.v, got)
		}
	}
}
