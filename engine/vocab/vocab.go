// Package vocab is a vocabulary: what an assessment can record (measures, on scales or in units)
// and what can be advised of a device (choices). Rulesets and assessments are checked against it.
//
//	v, diags := vocab.Read(os.DirFS("rulesets"), "lower_limb", "rulesets/lower_limb")
package vocab

import (
	"github.com/google/cel-go/cel"

	"crus/engine/clinical"
	"crus/engine/source"
)

// Of says whether something belongs to the person or to each limb.
type Of string

// Person is recorded or decided once; Limb for left and right.
const (
	Person Of = "person"
	Limb   Of = "limb"
)

// Kind is how a measure is recorded.
type Kind string

// The kinds of measure.
const (
	Quantity Kind = "quantity" // a number with a unit
	Grade    Kind = "grade"    // a grade of an ordinal scale
	Option   Kind = "option"   // one of a few words without order
	YesNo    Kind = "yes_no"
	Count    Kind = "count" // an integer, which may be negative
	Date     Kind = "date"
	Text     Kind = "text" // shown, never tested
)

// Taken is when in an examination a measure is taken, in the order of the examination.
var takenOrder = [...]string{"person", "lying", "standing", "walking", "shoe", "workshop"}

// Taken lists the stages of an examination in their order.
func Taken() []string { return takenOrder[:] }

// Concerns lists the groups of choices in the order in which they are shown.
func Concerns() []string {
	return []string{"device", "alignment", "stiffness", "force_pattern", "follow_up"}
}

// Span is a closed interval.
type Span struct{ Lo, Hi float64 }

// Vocabulary is a checked vocabulary. It is not changed after Read.
type Vocabulary struct {
	Name, Title, Version string
	Digest               string // "sha256:" and the hash of its files
	Scales               []*clinical.Scale
	Measures             []*Measure // in written order
	Choices              []*Choice
	Citations            []*Citation
	Where                source.Range

	measures map[string]*Measure
	choices  map[string]*Choice
}

// Measure is one thing that can be recorded.
type Measure struct {
	Name, Label string
	Of          Of
	Kind        Kind
	Unit        clinical.Unit   // Quantity
	Scale       *clinical.Scale // Grade
	Options     []string        // Option
	Plausible   Span            // Quantity, in Unit; Count
	Never       bool            // Date: it may never have been, and "never" is then its value
	Taken       string          // one of Taken()
	How         string
	Error       float64 // half-width of a 95 % band for one assessment, in Unit, grades or counts; 0: none stated
	ErrorBasis  string  // where Error comes from, or that none is published
	Cites       []string
	Where       source.Range
}

// Choice is one feature of the device that can be advised: one of some options, or a number.
type Choice struct {
	Name, Label string
	Of          Of
	Concerns    string // one of Concerns()
	How         string // what the choice means
	Options     []string
	Ordered     bool
	Default     string        // an option; "" when there is none
	Unit        clinical.Unit // of a number
	Between     Span          // of a number, in Unit
	Rounding    float64       // of a number, in Unit
	HasDefault  bool
	DefaultAt   float64 // of a number, in Unit
	Cites       []string
	Where       source.Range
}

// Numeric reports whether the choice is a number.
func (c *Choice) Numeric() bool { return c.Options == nil }

// Rank gives the place of an option among the options, or -1.
func (c *Choice) Rank(option string) int {
	for i, o := range c.Options {
		if o == option {
			return i
		}
	}
	return -1
}

// Path is the measure's name in a condition, for the limb that is advised on.
func (m *Measure) Path() string { return string(m.Of) + "." + m.Name }

// CELType is the type of the measure in a condition; nil for a text, which is never tested.
func (m *Measure) CELType() *cel.Type {
	switch m.Kind {
	case Quantity:
		return m.Unit.Dimension.CELType()
	case Grade:
		return m.Scale.CELType()
	case Option:
		return cel.StringType
	case YesNo:
		return cel.BoolType
	case Count:
		return cel.IntType
	case Date:
		return clinical.DateType()
	}
	return nil
}

// Measure finds a measure by name; nil if there is none.
func (v *Vocabulary) Measure(name string) *Measure { return v.measures[name] }

// Choice finds a choice by name; nil if there is none.
func (v *Vocabulary) Choice(name string) *Choice { return v.choices[name] }

// Scale finds a scale by name; nil if there is none.
func (v *Vocabulary) Scale(name string) *clinical.Scale {
	for _, s := range v.Scales {
		if s.Name == name {
			return s
		}
	}
	return nil
}

// MeasureNames lists the names of the measures of one kind of bearer, in written order.
func (v *Vocabulary) MeasureNames(of Of) []string {
	var out []string
	for _, m := range v.Measures {
		if m.Of == of {
			out = append(out, m.Name)
		}
	}
	return out
}

// ChoiceNames lists the names of the choices, in written order.
func (v *Vocabulary) ChoiceNames() []string {
	var out []string
	for _, c := range v.Choices {
		out = append(out, c.Name)
	}
	return out
}

// ScaleNames lists the names of the scales, in written order.
func (v *Vocabulary) ScaleNames() []string {
	var out []string
	for _, s := range v.Scales {
		out = append(out, s.Name)
	}
	return out
}
