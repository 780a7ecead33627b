package clinical

import (
	"math"
	"slices"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
)

// Unit is one of the units that quantities are recorded and shown in. The table is closed: a Unit
// made elsewhere, the zero Unit among them, is none of its units, and measures nothing.
type Unit struct {
	Code      string // UCUM, case sensitive: "deg", "[in_i]", "N.m/deg"
	Symbol    string // for people: "°", "in", "N·m/°"; empty for a bare ratio
	Dimension Dimension

	num, den float64 // a number of these units × num / den is one of base units
	literal  string  // the CEL function that writes a quantity in this unit; empty if none
	plural   string  // in words: "degrees"
	id       uint8   // its place in units
	places   int     // decimals that In keeps
}

// units is the table; the first entry is the zero Unit. UCUM 2.2 defines each unit (checked against an
// independent implementation in the tests): the inch and the pound are exact by definition, a millimetre of
// mercury is 133.322 Pa, a year is 365.25 days and a month a twelfth of it.
var units = numbered([]Unit{
	{},
	{Code: "deg", Symbol: "°", Dimension: Angle, num: 1, den: 1, literal: "deg", plural: "degrees"},
	{Code: "rad", Symbol: "rad", Dimension: Angle, num: 180, den: math.Pi, literal: "rad", plural: "radians"},
	{Code: "mm", Symbol: "mm", Dimension: Length, num: 1, den: 1, literal: "mm", plural: "millimetres"},
	{Code: "cm", Symbol: "cm", Dimension: Length, num: 10, den: 1, literal: "cm", plural: "centimetres"},
	{Code: "m", Symbol: "m", Dimension: Length, num: 1000, den: 1, literal: "m", plural: "metres"},
	{Code: "[in_i]", Symbol: "in", Dimension: Length, num: 127, den: 5, literal: "inch", plural: "inches"},
	{Code: "kg", Symbol: "kg", Dimension: Mass, num: 1, den: 1, literal: "kg", plural: "kilograms"},
	{Code: "g", Symbol: "g", Dimension: Mass, num: 1, den: 1000, literal: "g", plural: "grams"},
	{Code: "[lb_av]", Symbol: "lb", Dimension: Mass, num: 45359237, den: 1e8, literal: "lb", plural: "pounds"},
	{Code: "N", Symbol: "N", Dimension: Force, num: 1, den: 1, literal: "N", plural: "newtons"},
	{Code: "N.m", Symbol: "N·m", Dimension: Moment, num: 1, den: 1, literal: "Nm", plural: "newton metres"},
	{Code: "N.m/deg", Symbol: "N·m/°", Dimension: Stiffness, num: 1, den: 1, literal: "Nm_per_deg", plural: "newton metres per degree"},
	{Code: "N.m/rad", Symbol: "N·m/rad", Dimension: Stiffness, num: math.Pi, den: 180, plural: "newton metres per radian"},
	{Code: "Pa", Symbol: "Pa", Dimension: Pressure, num: 1, den: 1000, plural: "pascals"},
	{Code: "kPa", Symbol: "kPa", Dimension: Pressure, num: 1, den: 1, literal: "kPa", plural: "kilopascals"},
	{Code: "MPa", Symbol: "MPa", Dimension: Pressure, num: 1000, den: 1, literal: "MPa", plural: "megapascals"},
	{Code: "GPa", Symbol: "GPa", Dimension: Pressure, num: 1e6, den: 1, literal: "GPa", plural: "gigapascals"},
	{Code: "mm[Hg]", Symbol: "mmHg", Dimension: Pressure, num: 133322, den: 1e6, literal: "mmHg", plural: "millimetres of mercury"},
	{Code: "mm2", Symbol: "mm²", Dimension: Area, num: 1, den: 1, literal: "mm2", plural: "square millimetres"},
	{Code: "cm2", Symbol: "cm²", Dimension: Area, num: 100, den: 1, literal: "cm2", plural: "square centimetres"},
	{Code: "m2", Symbol: "m²", Dimension: Area, num: 1e6, den: 1, plural: "square metres"},
	{Code: "m/s", Symbol: "m/s", Dimension: Speed, num: 1, den: 1, literal: "m_per_s", plural: "metres per second"},
	{Code: "km/h", Symbol: "km/h", Dimension: Speed, num: 5, den: 18, literal: "km_per_h", plural: "kilometres per hour"},
	{Code: "W/kg", Symbol: "W/kg", Dimension: SpecificPower, num: 1, den: 1, literal: "W_per_kg", plural: "watts per kilogram"},
	{Code: "s", Symbol: "s", Dimension: Time, num: 1, den: 1, literal: "s", plural: "seconds"},
	{Code: "min", Symbol: "min", Dimension: Time, num: 60, den: 1, literal: "minutes", plural: "minutes"},
	{Code: "h", Symbol: "h", Dimension: Time, num: 3600, den: 1, literal: "hours", plural: "hours"},
	{Code: "d", Symbol: "d", Dimension: Time, num: day, den: 1, literal: "days", plural: "days"},
	{Code: "wk", Symbol: "wk", Dimension: Time, num: 7 * day, den: 1, literal: "weeks", plural: "weeks"},
	{Code: "mo", Symbol: "mo", Dimension: Time, num: 30.4375 * day, den: 1, literal: "months", plural: "months"},
	{Code: "a", Symbol: "y", Dimension: Time, num: 365.25 * day, den: 1, literal: "years", plural: "years"},
	{Code: "1", Symbol: "", Dimension: Ratio, num: 1, den: 1, literal: "ratio"},
	{Code: "%", Symbol: "%", Dimension: Ratio, num: 1, den: 100, literal: "percent", plural: "percent"},
})

const day = 86400 // seconds

// numbered gives each unit its id and how many decimals of it nine decimals of the base unit can
// tell apart: a stored value is off by half a unit of the ninth decimal, and that must round away.
func numbered(table []Unit) []Unit {
	for i := range table {
		u := &table[i]
		u.id = uint8(i)
		for step := 0.1; u.places < maxPlaces && step*u.num/u.den > 0.999e-9; step /= 10 {
			u.places++
		}
	}
	return table
}

// bases and unitTypes are the table looked up by dimension and by unit.
var (
	bases = func() map[Dimension]uint8 {
		out := map[Dimension]uint8{}
		for _, u := range units[1:] {
			if u.num == 1 && u.den == 1 {
				out[u.Dimension] = u.id
			}
		}
		return out
	}()
	unitTypes = func() []*cel.Type {
		out := []*cel.Type{types.ErrorType}
		for _, u := range units[1:] {
			out = append(out, u.Dimension.CELType())
		}
		return out
	}()
)

// Units lists the units, those of a dimension together, in a fixed order.
func Units() []Unit { return slices.Clone(units[1:]) }

// UnitByCode finds a unit by its UCUM code; false if there is none.
func UnitByCode(code string) (Unit, bool) {
	for _, u := range units[1:] {
		if u.Code == code {
			return u, true
		}
	}
	return Unit{}, false
}

// LiteralFor names the CEL function that writes a quantity in u: "deg" for deg, "Nm_per_deg" for
// N.m/deg. It is empty for the few units that conditions do not write.
func LiteralFor(u Unit) string { return u.literal }
