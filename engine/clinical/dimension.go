// Package clinical holds the values that an assessment records and a ruleset reasons about:
// quantities typed by dimension with UCUM units, grades of ordinal scales, and dates. Each is a value
// of CEL too, with operators that the checker knows, so that an angle compared with a length, with a
// bare number, or a grade with a grade of another scale does not compile.
//
// An environment is made with [EnvOptions] (the standard library with it), then the EnvOptions of each
// [Scale], in cel.NewCustomEnv:
//
//	limb.ankle_dorsiflexion_knee_extended <= deg(5)
//	limb.plantarflexor_power >= muscle_power('3+')
//	since(person.last_injection) < weeks(12)
//
// A quantity is kept in the base unit of its dimension, to nine decimals ([Quantity]). What cannot be
// worked out (a division by zero, a result too large to be a measurement) is a CEL error value with a
// plain sentence, never an infinity. An unknown value stays unknown through every operator.
//
// CEL's checker takes the literal null for a value of any type that is not its own, so limb.x < null
// compiles, and is an error value when it runs; a reader of conditions should refuse null.
package clinical

import (
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types/traits"
)

// Dimension is what a quantity measures. Quantities of one dimension can be compared and added.
type Dimension string

// The dimensions. Pressure is the stress and the modulus of a material too; SpecificPower is power for each
// kilogram of body mass, as gait laboratories report it; Time is a length of time; Ratio is a quantity
// without unit, such as a pressure index.
const (
	Angle         Dimension = "angle"
	Length        Dimension = "length"
	Mass          Dimension = "mass"
	Force         Dimension = "force"
	Moment        Dimension = "moment"
	Stiffness     Dimension = "stiffness" // rotational: moment over angle
	Pressure      Dimension = "pressure"
	Area          Dimension = "area"
	Speed         Dimension = "speed"
	SpecificPower Dimension = "specific_power"
	Time          Dimension = "time"
	Ratio         Dimension = "ratio"
)

// Dimensions lists every dimension, in a fixed order.
func Dimensions() []Dimension {
	return []Dimension{Angle, Length, Mass, Force, Moment, Stiffness, Pressure, Area, Speed, SpecificPower, Time, Ratio}
}

// String is d in words: "specific power".
func (d Dimension) String() string { return strings.ReplaceAll(string(d), "_", " ") }

// Base is the unit in which quantities of d are kept: deg, mm, kg, N, N.m, N.m/deg, kPa, mm2, m/s, W/kg,
// s or 1. It is the zero Unit where d is not a dimension.
func (d Dimension) Base() Unit { return units[bases[d]] }

// CELType is the type of d's quantities in a condition; nil where d is not a dimension.
func (d Dimension) CELType() *cel.Type { return celTypes[d] }

// DimensionOf tells which dimension's quantities have the type t; false where t is another type.
func DimensionOf(t *cel.Type) (Dimension, bool) {
	if t == nil {
		return "", false
	}
	name, _ := strings.CutPrefix(t.TypeName(), typePrefix)
	d := Dimension(name)
	return d, celTypes[d] != nil && t.TypeName() == typePrefix+name
}

const typePrefix = "crus." // of the type names in CEL

var celTypes = func() map[Dimension]*cel.Type {
	out := map[Dimension]*cel.Type{}
	for _, d := range Dimensions() {
		out[d] = cel.OpaqueType(typePrefix + string(d)).WithTraits(traits.ComparerType | traits.NegatorType |
			traits.AdderType | traits.SubtractorType | traits.MultiplierType | traits.DividerType)
	}
	return out
}()

// product says that a quantity of one dimension times one of the other is one of a third, and so that
// the third over either is the other. a × b in their base units, × num / den, is in of's base unit.
type product struct {
	a, b, of Dimension
	num, den float64
}

// products are those that the trade needs; factors follow from the base units.
var products = [...]product{
	{Force, Length, Moment, 1, 1000}, // N·mm is a thousandth of N·m
	{Stiffness, Angle, Moment, 1, 1}, // N·m/° · °
	{Pressure, Area, Force, 1, 1000}, // kPa·mm² = 10³ Pa · 10⁻⁶ m²
	{Length, Length, Area, 1, 1},     // mm · mm
	{Speed, Time, Length, 1000, 1},   // m/s · s is a thousand mm
}

// times gives the dimension of a quantity of a times one of b, and the factor on their base values.
func times(a, b Dimension) (of Dimension, num, den float64, ok bool) {
	switch {
	case a == Ratio:
		return b, 1, 1, true
	case b == Ratio:
		return a, 1, 1, true
	}
	for _, p := range products {
		if p.a == a && p.b == b || p.a == b && p.b == a {
			return p.of, p.num, p.den, true
		}
	}
	return "", 0, 0, false
}

// over gives the dimension of a quantity of a over one of b, and the factor on their base values.
func over(a, b Dimension) (of Dimension, num, den float64, ok bool) {
	switch {
	case b == Ratio:
		return a, 1, 1, true
	case a == b:
		return Ratio, 1, 1, true
	}
	for _, p := range products {
		switch {
		case p.of == a && p.a == b:
			return p.b, p.den, p.num, true
		case p.of == a && p.b == b:
			return p.a, p.den, p.num, true
		}
	}
	return "", 0, 0, false
}
