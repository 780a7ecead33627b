package clinical

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
)

const (
	maxNumber = 1e12 // the largest number that can be written, in any unit
	maxBase   = 1e21 // the largest result of a calculation, in a base unit: above every number that can be written
	forever   = 1e18 // days: in seconds, above every result of a calculation
)

// Quantity is a number with a unit: what a measure records, and what a formula gives. It is kept in
// the base unit of its dimension, and remembers the unit that it is shown in. Values of the type can
// be compared with ==, which also compares that unit; Equal does not.
//
// The number is kept to nine decimals of the base unit, so that decimal sums are exact: 12.1° − 7.1°
// equals 5°. Beyond a million base units (a kilometre; twelve days, in seconds) it is kept to fifteen
// significant digits instead, and a float64 cannot hold more; sums up to there stay exact too. What is
// smaller than half of the ninth decimal is 0.
//
// The zero Quantity has no unit, no dimension and no text, and equals only itself.
type Quantity struct {
	base float64
	unit uint8 // place in units
}

// NewQuantity makes a quantity of v units u. NaN, an infinite number, one beyond 10¹² and a Unit that
// is not of the table are errors.
func NewQuantity(v float64, u Unit) (Quantity, error) {
	switch {
	case u.id == 0:
		return Quantity{}, fmt.Errorf("%s is not a unit that is known here", quoted(u.Code))
	case math.IsNaN(v):
		return Quantity{}, errors.New("the value is not a number")
	case math.Abs(v) > maxNumber:
		return Quantity{}, errors.New("the number is too large to be a measurement")
	}
	return Quantity{u.ToBase(v), u.id}, nil
}

// Forever is the time since what never was: 10¹⁸ days, so that it is longer than any time that can be
// written or worked out. It compares like any other time, shows itself as "longer than any limit", and
// calculating with it is an error, for it is the length of nothing.
func Forever() Quantity {
	days, _ := UnitByCode("d")
	return Quantity{forever * day, days.id}
}

// Restored makes a quantity of the number that q.In(u) gave of a quantity q, which may have been Forever.
// Errors are those of NewQuantity.
func Restored(v float64, u Unit) (Quantity, error) {
	if u.Dimension == Time && v*u.num/u.den > maxBase {
		return Forever().WithUnit(u), nil
	}
	return NewQuantity(v, u)
}

// endless reports whether q is Forever.
func (q Quantity) endless() bool { return q.base > maxBase }

// Dimension is what q measures.
func (q Quantity) Dimension() Dimension { return units[q.unit].Dimension }

// Base is q's number in the base unit of its dimension.
func (q Quantity) Base() float64 { return q.base }

// In is q's number in the unit u, rounded to what nine decimals of the base unit can tell apart, so
// that a number comes back as it was written; false where u is of another dimension.
func (q Quantity) In(u Unit) (float64, bool) {
	if u.id == 0 || u.Dimension != q.Dimension() {
		return math.NaN(), false
	}
	return u.FromBase(q.base), true
}

// Unit is the unit that q is shown in.
func (q Quantity) Unit() Unit { return units[q.unit] }

// WithUnit gives the same quantity, shown in u; where u is of another dimension, it is q as it was.
func (q Quantity) WithUnit(u Unit) Quantity {
	if u.id != 0 && u.Dimension == q.Dimension() {
		q.unit = u.id
	}
	return q
}

// String is q in its unit, with a real minus sign: "−5°", "20 mm", "3.5 N·m/°", "12 weeks". Beyond
// six decimals (and at least two digits) nothing is shown. [Quantity.In] gives the number itself.
// Forever is "longer than any limit".
func (q Quantity) String() string { return q.shown(6) }

// Short is q as a clinician reads it: like String, but with no more than two decimals, and at least
// two digits of a small number.
func (q Quantity) Short() string { return q.shown(2) }

// Brief is q as a number that was worked out is read: three digits, and the whole part always whole.
func (q Quantity) Brief() string {
	v, ok := q.In(q.Unit())
	switch v = math.Abs(v); {
	case !ok || v < 10:
		return q.shown(2)
	case v < 100:
		return q.shown(1)
	}
	return q.shown(0)
}

func (q Quantity) shown(places int) string {
	u := q.Unit()
	v, ok := q.In(u)
	switch {
	case !ok:
		return ""
	case q.endless():
		return "longer than any limit"
	}
	for places < u.places && math.Abs(v)*powers[places] < 10 { // a small number needs more
		places++
	}
	text := strconv.FormatFloat(keep(v, places), 'f', -1, 64)
	if strings.HasPrefix(text, "-") {
		text = "−" + text[1:]
	}
	switch {
	case u.Symbol == "" || u.Symbol == "°" || u.Symbol == "%":
		return text + u.Symbol
	case u.Dimension != Time || u.num < day:
		return text + " " + u.Symbol
	case text == "1" || text == "−1": // a day and longer are written out
		return text + " " + strings.TrimSuffix(u.plural, "s")
	}
	return text + " " + u.plural
}

func quoted(s string) string {
	const most = 40
	runes := []rune(s[:min(len(s), 4*most+4)])
	if len(runes) > most {
		return strconv.Quote(string(runes[:most]) + "…")
	}
	return strconv.Quote(s)
}
