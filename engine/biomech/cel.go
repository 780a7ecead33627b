package biomech

import (
	"math"
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
)

// EnvOptions declares the formulas as functions of CEL, for an environment that has these scales: a
// formula on a scale that is not among them is left out.
func EnvOptions(scales []*clinical.Scale) []cel.EnvOption {
	var out []cel.EnvOption
	for _, f := range formulas {
		if c, ok := f.with(scales); ok {
			out = append(out, cel.Function(f.Name, cel.Overload("biomech_"+f.Name, c.params, c.result,
				cel.FunctionBinding(func(args ...ref.Val) ref.Val { return c.call(-1, 0, args) }))))
		}
	}
	return out
}

// callable is a formula with the scales of an environment.
type callable struct {
	*Formula
	params []*cel.Type
	result *cel.Type
	scale  *clinical.Scale // of the result
}

// with fits a formula to some scales; false where it needs another.
func (f *Formula) with(scales []*clinical.Scale) (*callable, bool) {
	c := &callable{Formula: f}
	for _, p := range f.Params {
		t, _ := typeOf(p.Kind, scales)
		if t == nil {
			return nil, false
		}
		c.params = append(c.params, t)
	}
	c.result, c.scale = typeOf(f.Result, scales)
	return c, c.result != nil
}

func typeOf(k Kind, scales []*clinical.Scale) (*cel.Type, *clinical.Scale) {
	switch k {
	case Count:
		return cel.IntType, nil
	case YesNo:
		return cel.BoolType, nil
	case Word:
		return cel.StringType, nil
	}
	if name, ok := strings.CutPrefix(string(k), "scale "); ok {
		for _, s := range scales {
			if s.Name == name {
				return s.CELType(), s
			}
		}
		return nil, nil
	}
	return clinical.Dimension(k).CELType(), nil
}

// Call works a formula out on CEL's values with one of its constants moved by some amount (none for a
// negative index). like is a result of the same call, which says which scale a grade is of.
func (f *Formula) Call(constant int, by float64, args []ref.Val, like ref.Val) ref.Val {
	c := &callable{Formula: f}
	if g, ok := like.(clinical.Grade); ok {
		c.scale = g.Scale
	}
	return c.call(constant, by, args)
}

func (c *callable) call(constant int, by float64, args []ref.Val) ref.Val {
	in := make([]Value, len(args))
	for i, a := range args {
		v, ok := valueOf(a)
		if !ok {
			return types.MaybeNoSuchOverloadErr(a)
		}
		in[i] = v
	}
	v, err := c.Shifted(constant, by, in...)
	if err != nil {
		return types.NewErrFromString(err.Error())
	}
	switch {
	case c.Result == Count:
		return types.Int(math.Round(v.Number))
	case c.Result == YesNo:
		return types.Bool(v.Number != 0)
	case c.Result == Word:
		return types.String(v.Word)
	case c.scale != nil:
		g, ok := c.scale.Grade(v.Word)
		if !ok {
			return types.NewErr("The scale %s of this vocabulary has no grade %s, which %s gives.", c.scale.Name, v.Word, c.Name)
		}
		return g
	}
	q, err := clinical.NewQuantity(v.Number, clinical.Dimension(c.Result).Base())
	if err != nil {
		return types.NewErr("%s gives no measurement here: %w.", c.Name, err)
	}
	return q
}

func valueOf(v ref.Val) (Value, bool) {
	switch x := v.(type) {
	case clinical.Quantity:
		return Value{Number: x.Base()}, true
	case clinical.Grade:
		return Value{Word: x.String()}, true
	case types.Int:
		return Value{Number: float64(x)}, true
	case types.Bool:
		if x {
			return Value{Number: 1}, true
		}
		return Value{}, true
	case types.String:
		return Value{Word: string(x)}, true
	}
	return Value{}, false
}

// Functions lists the formulas that an environment with these scales has, as clinical lists its functions.
func Functions(scales []*clinical.Scale) []clinical.Function {
	var out []clinical.Function
	for _, f := range formulas {
		if _, ok := f.with(scales); ok {
			out = append(out, clinical.Function{Name: f.Name, Signature: f.Signature(), Doc: f.Doc})
		}
	}
	return out
}

// Signature writes the formula's call with the names of its inputs: "pitch_along_plate(differential, plate)".
func (f *Formula) Signature() string {
	names := make([]string, len(f.Params))
	for i, p := range f.Params {
		names[i] = p.Name
	}
	return f.Name + "(" + strings.Join(names, ", ") + ")"
}

// Takes names the kinds of the formula's inputs for people: "a length", "a grade of muscle_power".
func (f *Formula) Takes() []string {
	out := make([]string, len(f.Params))
	for i, p := range f.Params {
		scale, graded := strings.CutPrefix(string(p.Kind), "scale ")
		switch {
		case graded:
			out[i] = "a grade of " + scale
		case p.Kind == Count:
			out[i] = "a bare number"
		case p.Kind == YesNo:
			out[i] = "yes or no"
		case p.Kind == Word:
			out[i] = "a word"
		default:
			out[i] = clinical.Describe(clinical.Dimension(p.Kind).CELType())
		}
	}
	return out
}
