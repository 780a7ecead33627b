package clinical

import (
	"fmt"
	"math"
	"reflect"
	"strconv"
	"strings"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
)

// Quantity is a value with a unit.
type Quantity struct {
	base float64
	unit Unit
}

func round9(x float64) float64 {
	if math.Abs(x) > 1e6 {
		return x
	}
	if y := math.Round(x*1e9) / 1e9; y != 0 {
		return y
	}
	return 0
}

// NewQuantity makes one.
func NewQuantity(v float64, u Unit) (Quantity, error) {
	if math.IsNaN(v) || math.Abs(v) > 1e12 {
		return Quantity{}, fmt.Errorf("the number is not in range")
	}
	return Quantity{round9(v * u.num / u.den), u}, nil
}

// ParseQuantity reads "82 kg".
func ParseQuantity(s string) (Quantity, error) {
	n, code, ok := strings.Cut(strings.TrimSpace(s), " ")
	v, err := strconv.ParseFloat(n, 64)
	u, known := UnitByCode(strings.TrimSpace(code))
	if !ok || err != nil || !known {
		return Quantity{}, fmt.Errorf("%q is not a number with a unit", s)
	}
	return NewQuantity(v, u)
}

func (q Quantity) Dimension() Dimension     { return q.unit.Dimension }
func (q Quantity) Base() float64            { return q.base }
func (q Quantity) Unit() Unit               { return q.unit }
func (q Quantity) WithUnit(u Unit) Quantity { q.unit = u; return q }
func (q Quantity) In(u Unit) (float64, bool) {
	return round9(q.base * u.den / u.num), u.Dimension == q.unit.Dimension
}
func (q Quantity) String() string {
	v, _ := q.In(q.unit)
	s := strings.Replace(strconv.FormatFloat(math.Round(v*1e6)/1e6, 'f', -1, 64), "-", "−", 1)
	if q.unit.Symbol == "°" || q.unit.Symbol == "" {
		return s + q.unit.Symbol
	}
	return s + " " + q.unit.Symbol
}

func (q Quantity) ConvertToNative(t reflect.Type) (any, error) { return nil, fmt.Errorf("no") }
func (q Quantity) ConvertToType(t ref.Type) ref.Val            { return types.NewErr("no") }
func (q Quantity) Type() ref.Type                              { return celTypes[q.unit.Dimension] }
func (q Quantity) Value() any                                  { return q }
func (q Quantity) Equal(o ref.Val) ref.Val {
	p, ok := o.(Quantity)
	return types.Bool(ok && p.base == q.base && p.unit.Dimension == q.unit.Dimension)
}
func (q Quantity) Compare(o ref.Val) ref.Val {
	p, ok := o.(Quantity)
	if !ok {
		return types.MaybeNoSuchOverloadErr(o)
	}
	switch {
	case q.base < p.base:
		return types.IntNegOne
	case q.base > p.base:
		return types.IntOne
	}
	return types.IntZero
}
func (q Quantity) Add(o ref.Val) ref.Val {
	p, ok := o.(Quantity)
	if !ok {
		return types.MaybeNoSuchOverloadErr(o)
	}
	return Quantity{round9(q.base + p.base), q.unit}
}
func (q Quantity) Subtract(o ref.Val) ref.Val {
	p, ok := o.(Quantity)
	if !ok {
		return types.MaybeNoSuchOverloadErr(o)
	}
	return Quantity{round9(q.base - p.base), q.unit}
}
func (q Quantity) Negate() ref.Val { return Quantity{-q.base, q.unit} }
func (q Quantity) Multiply(o ref.Val) ref.Val {
	switch n := o.(type) {
	case types.Int:
		return Quantity{round9(q.base * float64(n)), q.unit}
	case types.Double:
		return Quantity{round9(q.base * float64(n)), q.unit}
	}
	return types.MaybeNoSuchOverloadErr(o)
}
func (q Quantity) Divide(o ref.Val) ref.Val {
	n := 0.0
	switch x := o.(type) {
	case types.Int:
		n = float64(x)
	case types.Double:
		n = float64(x)
	case Quantity:
		if x.base == 0 {
			return types.NewErr("division by zero")
		}
		return Quantity{round9(q.base / x.base), Ratio.Base()}
	default:
		return types.MaybeNoSuchOverloadErr(o)
	}
	if n == 0 {
		return types.NewErr("division by zero")
	}
	return Quantity{round9(q.base / n), q.unit}
}
