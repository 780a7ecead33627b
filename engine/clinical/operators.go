package clinical

import (
	"fmt"
	"math"
	"reflect"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
)

// Compare orders q and another quantity of its dimension: −1, 0 or 1.
func (q Quantity) Compare(other ref.Val) ref.Val {
	p, ok := other.(Quantity)
	switch {
	case !ok || !q.like(p):
		return types.MaybeNoSuchOverloadErr(other)
	case q.base < p.base:
		return types.IntNegOne
	case q.base > p.base:
		return types.IntOne
	}
	return types.IntZero
}

// Equal reports whether other is the same quantity, in whichever unit: 2 cm equals 20 mm.
func (q Quantity) Equal(other ref.Val) ref.Val {
	p, ok := other.(Quantity)
	return types.Bool(ok && q.base == p.base && q.like(p))
}

// Add gives the sum of two quantities of one dimension, in q's unit.
func (q Quantity) Add(other ref.Val) ref.Val {
	p, ok := other.(Quantity)
	switch {
	case !ok || !q.like(p):
		return types.MaybeNoSuchOverloadErr(other)
	case q.endless() || p.endless():
		return onlyCompared()
	}
	return result(q.base+p.base, q.unit)
}

// Subtract gives the difference of two quantities of one dimension, in q's unit.
func (q Quantity) Subtract(other ref.Val) ref.Val {
	p, ok := other.(Quantity)
	switch {
	case !ok || !q.like(p):
		return types.MaybeNoSuchOverloadErr(other)
	case q.endless() || p.endless():
		return onlyCompared()
	}
	return result(q.base-p.base, q.unit)
}

// Negate gives −q.
func (q Quantity) Negate() ref.Val {
	if q.endless() {
		return onlyCompared()
	}
	return Quantity{0 - q.base, q.unit}
}

// Multiply gives q times a number or a ratio, in q's unit, or its product with a quantity of another
// dimension, in the base unit of the product's.
func (q Quantity) Multiply(other ref.Val) ref.Val {
	if p, ok := other.(Quantity); q.endless() || ok && p.endless() {
		return onlyCompared()
	}
	switch n := other.(type) {
	case types.Int:
		return result(q.base*float64(n), q.unit)
	case types.Double:
		return result(q.base*float64(n), q.unit)
	case Quantity:
		if of, num, den, ok := times(q.Dimension(), n.Dimension()); ok {
			return result(q.base*n.base*num/den, q.unitFor(of, n))
		}
	}
	return types.MaybeNoSuchOverloadErr(other)
}

// Divide gives q over a number or a ratio, in q's unit; over a quantity of its own dimension, a
// ratio; over one of another, in the base unit of the quotient's dimension.
func (q Quantity) Divide(other ref.Val) ref.Val {
	if p, ok := other.(Quantity); q.endless() || ok && p.endless() {
		return onlyCompared()
	}
	switch n := other.(type) {
	case types.Int:
		return quotient(q.base, float64(n), q.unit)
	case types.Double:
		return quotient(q.base, float64(n), q.unit)
	case Quantity:
		if of, num, den, ok := over(q.Dimension(), n.Dimension()); ok {
			return quotient(q.base*num/den, n.base, q.unitFor(of, n))
		}
	}
	return types.MaybeNoSuchOverloadErr(other)
}

// like reports whether q and p are of one dimension.
func (q Quantity) like(p Quantity) bool {
	return q.unit == p.unit || units[q.unit].Dimension == units[p.unit].Dimension
}

// unitFor gives the unit of a product or quotient of q and p: that of the operand whose dimension a
// ratio has kept, q first, else the base unit.
func (q Quantity) unitFor(of Dimension, p Quantity) uint8 {
	switch {
	case of == q.Dimension():
		return q.unit
	case q.Dimension() == Ratio:
		return p.unit
	}
	return bases[of]
}

// onlyCompared says why nothing is worked out of Forever.
func onlyCompared() ref.Val {
	return types.NewErrFromString("The time since what never was can be compared, and nothing can be worked out from it.")
}

func quotient(a, b float64, unit uint8) ref.Val {
	if b == 0 {
		return types.NewErrFromString("Nothing can be divided by zero.")
	}
	return result(a/b, unit)
}

// result makes a quantity of a base value that was worked out, or says why that is none.
func result(base float64, unit uint8) ref.Val {
	switch {
	case math.IsNaN(base):
		return types.NewErrFromString("The result is not a number.")
	case math.Abs(base) > maxBase:
		return types.NewErrFromString("The result is too large to be a measurement.")
	}
	return Quantity{keep(base, basePlaces), unit}
}

// Type is the CEL type of q's dimension.
func (q Quantity) Type() ref.Type { return unitTypes[q.unit] }

// Value is q itself.
func (q Quantity) Value() any { return q }

// ConvertToNative gives q itself where a Quantity, or an interface that it satisfies, is wanted.
func (q Quantity) ConvertToNative(t reflect.Type) (any, error) { return native(q, t) }

// ConvertToType gives q's text, its type, or q itself.
func (q Quantity) ConvertToType(t ref.Type) ref.Val { return convert(q, t) }

func native(v any, t reflect.Type) (any, error) {
	if reflect.TypeOf(v).AssignableTo(t) {
		return v, nil
	}
	return nil, fmt.Errorf("a %T can't become a %s", v, t)
}

func convert(v interface {
	ref.Val
	fmt.Stringer
}, t ref.Type) ref.Val {
	switch t {
	case v.Type():
		return v
	case types.StringType:
		return types.String(v.String())
	case types.TypeType:
		return v.Type().(ref.Val)
	}
	return types.NewErr("%s can't become a %s.", v, t.TypeName())
}
