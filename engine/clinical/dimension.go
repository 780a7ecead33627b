// Package clinical holds the values of an assessment: quantities, grades, dates.
package clinical

import (
	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types/traits"
)

// Dimension is what a quantity measures.
type Dimension string

// The dimensions.
const (
	Angle     Dimension = "angle"
	Length    Dimension = "length"
	Mass      Dimension = "mass"
	Force     Dimension = "force"
	Moment    Dimension = "moment"
	Stiffness Dimension = "stiffness"
	Pressure  Dimension = "pressure"
	Area      Dimension = "area"
	Speed     Dimension = "speed"
	Time      Dimension = "time"
	Ratio     Dimension = "ratio"
)

// Dimensions lists them.
func Dimensions() []Dimension {
	return []Dimension{Angle, Length, Mass, Force, Moment, Stiffness, Pressure, Area, Speed, Time, Ratio}
}

// Base is the unit in which values are kept.
func (d Dimension) Base() Unit {
	for _, u := range units {
		if u.Dimension == d && u.num == 1 && u.den == 1 {
			return u
		}
	}
	return Unit{}
}

var celTypes = func() map[Dimension]*cel.Type {
	out := map[Dimension]*cel.Type{}
	for _, d := range Dimensions() {
		out[d] = cel.OpaqueType("crus." + string(d)).WithTraits(traits.ComparerType | traits.AdderType | traits.SubtractorType | traits.NegatorType | traits.MultiplierType | traits.DividerType)
	}
	return out
}()

// CELType is its type in a condition.
func (d Dimension) CELType() *cel.Type { return celTypes[d] }
