package clinical

import "math"

// Kept gives a number in a base unit, as it was worked out, as a Quantity keeps it; false where it is none
// (NaN), or too large to be a measurement. Columns of many cases are calculated with it, so that they come out
// as the operators of conditions do.
func Kept(base float64) (float64, bool) {
	if math.IsNaN(base) || math.Abs(base) > maxBase {
		return math.NaN(), false
	}
	return keep(base, basePlaces), true
}

// Calculable reports whether anything can be worked out from a number in a base unit: not from that of Forever.
func Calculable(base float64) bool { return base <= maxBase }

// Product tells how base numbers of two dimensions are multiplied: a·b·num/den is a base number of the
// dimension of; false where they have no product.
func Product(a, b Dimension) (of Dimension, num, den float64, ok bool) { return times(a, b) }

// Quotient tells how base numbers of two dimensions are divided: (a·num/den)/b is a base number of the dimension
// of; false where they have no quotient.
func Quotient(a, b Dimension) (of Dimension, num, den float64, ok bool) { return over(a, b) }

// FromBase gives a base number in the unit, as [Quantity.In] does.
func (u Unit) FromBase(base float64) float64 { return keep(base*u.den/u.num, u.places) }

// ToBase gives the base number of a number in the unit, as [NewQuantity] keeps it.
func (u Unit) ToBase(v float64) float64 { return keep(v*u.num/u.den, basePlaces) }

// OfBase makes a quantity shown in u of a base number, as a Quantity holds it: of what a measurement or calculation
// gave, or of Forever. It is false for what is no number.
func OfBase(base float64, u Unit) (Quantity, bool) {
	if math.IsNaN(base) || u.id == 0 {
		return Quantity{}, false
	}
	return Quantity{base, u.id}, true
}
