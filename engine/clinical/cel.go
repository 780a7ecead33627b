package clinical

import (
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
)

// Function documents one.
type Function struct{ Name, Signature, Doc string }

// Functions lists them.
func Functions() []Function {
	var out []Function
	for _, u := range units {
		if u.literal != "" {
			out = append(out, Function{u.literal, u.literal + "(5)", ""})
		}
	}
	return append(out, Function{"since", "since(person.last_injection)", ""})
}

// EnvOptions declares everything.
func EnvOptions() []cel.EnvOption {
	out := []cel.EnvOption{cel.StdLib()}
	for _, u := range units {
		if u.literal == "" {
			continue
		}
		lit := func(v ref.Val) ref.Val {
			var x float64
			switch n := v.(type) {
			case types.Int:
				x = float64(n)
			case types.Double:
				x = float64(n)
			}
			q, err := NewQuantity(x, u)
			if err != nil {
				return types.WrapErr(err)
			}
			return q
		}
		out = append(out, cel.Function(u.literal,
			cel.Overload(u.literal+"_int", []*cel.Type{cel.IntType}, celTypes[u.Dimension], cel.UnaryBinding(lit)),
			cel.Overload(u.literal+"_double", []*cel.Type{cel.DoubleType}, celTypes[u.Dimension], cel.UnaryBinding(lit))))
	}
	for _, d := range Dimensions() {
		t := celTypes[d]
		for _, op := range []string{"<", "<=", ">", ">="} {
			out = append(out, cel.Function("_"+op+"_", cel.Overload("cmp"+op+string(d), []*cel.Type{t, t}, cel.BoolType)))
		}
		for _, op := range []string{"+", "-"} {
			out = append(out, cel.Function("_"+op+"_", cel.Overload("arith"+op+string(d), []*cel.Type{t, t}, t)))
		}
		out = append(out, cel.Function("-_", cel.Overload("neg"+string(d), []*cel.Type{t}, t)))
		for _, n := range []*cel.Type{cel.IntType, cel.DoubleType} {
			out = append(out, cel.Function("_*_", cel.Overload("mul"+string(d)+n.String(), []*cel.Type{t, n}, t)),
				cel.Function("_/_", cel.Overload("div"+string(d)+n.String(), []*cel.Type{t, n}, t)))
		}
		if d != Ratio {
			out = append(out, cel.Function("_/_", cel.Overload("ratio"+string(d), []*cel.Type{t, t}, celTypes[Ratio])))
		}
	}
	day, _ := UnitByCode("d")
	out = append(out, cel.Function("since", cel.Overload("since_date", []*cel.Type{dateType}, celTypes[Time], cel.UnaryBinding(func(v ref.Val) ref.Val {
		d := v.(Date)
		if d.ref == -1<<40 {
			return types.NewErr("the assessment has no date")
		}
		q, err := NewQuantity(float64(d.ref-d.day), day)
		if err != nil {
			return types.WrapErr(err)
		}
		return q
	}))))
	return out
}

// DimensionOf tells a quantity type.
func DimensionOf(t *cel.Type) (Dimension, bool) {
	d, ok := strings.CutPrefix(t.String(), "crus.")
	_, known := celTypes[Dimension(d)]
	return Dimension(d), ok && known
}

// Describe names a type.
func Describe(t *cel.Type) string {
	if d, ok := DimensionOf(t); ok {
		if strings.ContainsAny(string(d[:1]), "aeiou") {
			return "an " + string(d)
		}
		return "a " + string(d)
	}
	if n, ok := strings.CutPrefix(t.String(), "scale."); ok {
		return "a grade of " + n
	}
	switch t.String() {
	case "int", "double", "uint":
		return "a bare number"
	case "bool":
		return "yes or no"
	case "string":
		return "text"
	case "crus.date":
		return "a date"
	}
	return t.String()
}
