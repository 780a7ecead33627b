package cell

import (
	"crus/engine/clinical"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// Axis is one line of values that questions are asked of: a measure of the person, of the limb or of the
// opposite limb, or what a formula over measures gives. Its values are numbers:
//
//	quantity   base units of clinical
//	grade      rank, from 0
//	option     place among the options, from 0
//	yes or no  1 or 0
//	count      itself
//	date       the time since it, in seconds; of what never was 10¹⁸ days
//	text       0; it can only be recorded or not
//
// The cuts divide the line into cells, numbered from 0 upwards, within which every question has one
// answer. What is not recorded, or can't be worked out, is in no cell: it is [NotRecorded].
type Axis struct {
	Index   int
	Path    string         // as the ruleset writes it: "limb.x", "person.y"; of a formula its text
	Measure *vocab.Measure // nil for a formula
	Other   bool           // of the opposite limb
	Limb    bool           // reads a limb; otherwise it is the same for both
	Cuts    []Cut          // in order, of a line of numbers; nil where Cells is set
	Cells   []int          // of a measure with options: the cell of each option
	Fine    bool           // a formula reads the measure: every grade, option or count matters to it

	// Of a formula.
	Term   *Term
	Unit   clinical.Unit // that of its dimension, where it has one
	Expr   *ruleset.Expr // where it stands
	ID     int64         // of the node in Expr
	Inputs []int         // the measures' axes that the term reads, directly or through findings and quantities
	Linear *Linear       // nil: not a linear formula of quantities
}

// Cut divides a line: what lies below At is below the cut, what lies above is above, and At itself lies
// below where Below is set (x <= At asks for a cut with it, x < At for one without).
type Cut struct {
	At    float64
	Below bool
}

// NotRecorded stands for the cell of a value that is not known.
const NotRecorded = -1

// Count is how many cells the axis has, besides that of what is not recorded.
func (a *Axis) Count() int {
	if a.Cells != nil {
		n := 0
		for _, c := range a.Cells {
			n = max(n, c+1)
		}
		return n
	}
	return len(a.Cuts) + 1
}

// Cell gives the cell of a known value.
func (a *Axis) Cell(x float64) int {
	if a.Cells != nil {
		if i := int(x); i >= 0 && i < len(a.Cells) {
			return a.Cells[i]
		}
		return NotRecorded
	}
	n := 0
	for _, c := range a.Cuts {
		if c.above(x) {
			n++
		}
	}
	return n
}

// above reports whether a value lies above the cut.
func (c Cut) above(x float64) bool { return x > c.At || x == c.At && !c.Below }

// before orders cuts.
func (c Cut) before(d Cut) bool { return c.At < d.At || c.At == d.At && !c.Below && d.Below }

// Question is a yes/no question that is asked of one axis: whether its value lies in some of the cells.
// It is unknown where the value is.
type Question struct {
	Axis int
	Yes  []bool // of each cell
}

// Linear is a weighted sum of measures: the sum of Weight[i] times the value of axis Of[i], and Constant.
type Linear struct {
	Of       []int
	Weight   []float64
	Constant float64
}
