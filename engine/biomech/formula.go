// Package biomech holds the formulas of the trade: alignment, stiffness, forces, swing, and what is read
// off a measurement. Each is a pure Go function with its symbols, units, sign convention, domain and
// source, and each is listed as a [Formula], which makes it a function of conditions too:
//
//	shank_to_vertical(pitch_along_plate(quantity.shoe_drop, limb.heel_to_ball_length), deg(-5))
//
// Numbers are in the base units of [clinical]: deg, mm, kg, N, N·m, N·m/deg, kPa, mm², m/s, W/kg, s, and 1 for
// a ratio. Dorsiflexion is positive and plantarflexion negative; a shank that leans forward is positive.
// The weight of a kilogram is 9.80665 N (the standard gravity of the International System).
//
// Outside its domain a formula gives an error, never a number: the sentence says what was asked of it and
// what it holds for. A figure that a formula rests on (a mean of a population, a slope of a trial) is one of
// its Constants, with a standard uncertainty, so that what is worked out from it can be uncertain too.
// [Propagate] is the law of propagation of uncertainty.
package biomech

import (
	"fmt"
	"slices"

	"crus/engine/clinical"
)

// Gravity is the standard acceleration of free fall, m/s² (International System of Units, by definition).
const Gravity = 9.80665

// Kind is what goes into a formula or comes out of it: a dimension of clinical, [Count], [YesNo], [Word], or a
// grade of a scale ([GradeOf]).
type Kind string

// Kinds that are not dimensions.
const (
	Count Kind = "count"  // a whole number
	YesNo Kind = "yes_no" // 1 for yes, 0 for no
	Word  Kind = "word"   // an option of a measure
)

// GradeOf is the kind of a scale's grades. A vocabulary that lacks the scale lacks the formula.
func GradeOf(scale string) Kind { return Kind("scale " + scale) }

// Of is the kind of quantities of a dimension.
func Of(d clinical.Dimension) Kind { return Kind(d) }

// Short names for the tables of formulas.
const (
	angle     = Kind(clinical.Angle)
	length    = Kind(clinical.Length)
	mass      = Kind(clinical.Mass)
	force     = Kind(clinical.Force)
	moment    = Kind(clinical.Moment)
	stiffness = Kind(clinical.Stiffness)
	pressure  = Kind(clinical.Pressure)
	area      = Kind(clinical.Area)
	speed     = Kind(clinical.Speed)
	power     = Kind(clinical.SpecificPower)
	duration  = Kind(clinical.Time)
	ratio     = Kind(clinical.Ratio)
)

// Value is one value that goes into a formula or comes out of it.
type Value struct {
	Number float64 // of a quantity in its base unit, of a count, of a yes (1) or no (0)
	Word   string  // of a grade (its label) or an option
}

// Param is one input of a formula.
type Param struct {
	Name string
	Kind Kind
}

// Constant is a figure that a formula rests on and that is itself uncertain.
type Constant struct {
	Name   string  // for people: "stiffness for each kilogram"
	Value  float64 // in the unit that Says names
	U      float64 // standard uncertainty, in the same unit
	Unit   string  // for people: "N·m/(kg·°)"
	Source string
}

// Standing says how a formula or figure is known, in the words of a citation's standing, and "derived" for
// what follows from geometry or mechanics.
type Standing string

// The standings.
const (
	Read       Standing = "read"
	SecondHand Standing = "second_hand"
	FromMemory Standing = "from_memory"
	Derived    Standing = "derived"
	Common     Standing = "common_practice"
)

// Formula is one formula as conditions see it.
type Formula struct {
	Name      string // as conditions write it
	Topic     string // alignment, stiffness, forces, swing, measurement
	Params    []Param
	Result    Kind
	Doc       string // what it gives, in one sentence without full stop
	Writes    string // the formula itself, in symbols
	Domain    string // what it holds for, in words
	Standing  Standing
	Sources   []string
	Constants []Constant
	of        func(in []Value, k []float64) (Value, error) // k: the constants' values
}

// Formulas lists every formula, by topic.
func Formulas() []*Formula { return slices.Clone(formulas) }

var formulas = slices.Concat(alignment(), stiffnesses(), forces(), swing(), measurement())

// Named finds a formula by the name that conditions write; nil where there is none.
func Named(name string) *Formula {
	for _, f := range formulas {
		if f.Name == name {
			return f
		}
	}
	return nil
}

// Of works the formula out for values in the order of Params. An error is a sentence for a clinician.
func (f *Formula) Of(in ...Value) (Value, error) { return f.Shifted(-1, 0, in...) }

// Shifted works the formula out with one of its constants moved by some amount; none for a negative index.
func (f *Formula) Shifted(constant int, by float64, in ...Value) (Value, error) {
	if len(in) != len(f.Params) {
		return Value{}, fmt.Errorf("%s takes %d values.", f.Name, len(f.Params))
	}
	k := make([]float64, len(f.Constants))
	for i, c := range f.Constants {
		k[i] = c.Value
	}
	if constant >= 0 && constant < len(k) {
		k[constant] += by
	}
	return f.of(in, k)
}

// number passes a plain result on.
func number(x float64, err error) (Value, error) { return Value{Number: x}, err }

// outside says that a value is outside of what a formula holds for.
func outside(format string, args ...any) error { return fmt.Errorf(format, args...) }
