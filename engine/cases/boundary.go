package cases

import (
	"strings"

	"github.com/google/cel-go/common/types/ref"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/reason"
	"crus/engine/ruleset"
)

// Boundary is a comparison of a measure, a quantity or the time since a date with a constant, on which or
// beside which no case stands: a slip of one grade or one unit there would not be seen.
type Boundary struct {
	Of    string   `json:"of"`   // finding.x, rule.x or caution.x
	Text  string   `json:"text"` // "limb.x <= 5°"
	Place string   `json:"place"`
	Not   []string `json:"not_shown"` // of "on", "below", "above"; never a side where no plausible value is
}

// String says it in a sentence: "No case stands on limb.x <= 5° (rules.hcl:12:3), and none above it."
func (b Boundary) String() string {
	at := b.Text + " (" + b.Place + ")"
	beside := b.Not
	if b.Not[0] != "on" {
		return "No case stands " + strings.Join(beside, " or ") + " " + at + "."
	}
	if beside = beside[1:]; len(beside) > 0 {
		at += ", and none " + strings.Join(beside, " or ") + " it"
	}
	return "No case stands on " + at + "."
}

// stood notes where the values of the cases stand at each boundary of a ruleset.
type stood struct {
	all   []ruleset.Boundary
	sides []map[int]bool // of each boundary: −1 below, 0 on, 1 above
}

func newStood(rs *ruleset.Ruleset) *stood {
	s := &stood{all: ruleset.Boundaries(rs)}
	for range s.all {
		s.sides = append(s.sides, map[int]bool{})
	}
	return s
}

// outcome takes in one case: what was recorded, and what was worked out of it. A case to which the ruleset
// does not apply shows nothing.
func (s *stood) outcome(a *assess.Assessment, o *reason.Outcome) {
	if o.Person == nil {
		return
	}
	for i, b := range s.all {
		for _, side := range a.DeviceFor {
			if v := valueAt(b, a, side, o); v != nil {
				if at, ok := b.Side(v); ok {
					s.sides[i][at] = true
				}
			}
		}
	}
}

// unshown lists the boundaries that some side lacks, and counts the others.
func (s *stood) unshown() (list []Boundary, shown int) {
	list = []Boundary{}
	for i, b := range s.all {
		below, on, above := b.Room()
		var not []string
		for _, x := range []struct {
			word string
			room bool
			at   int
		}{{"on", on, 0}, {"below", below, -1}, {"above", above, 1}} {
			if x.room && !s.sides[i][x.at] {
				not = append(not, x.word)
			}
		}
		if not == nil {
			shown++
			continue
		}
		list = append(list, Boundary{b.Of, b.String(), b.Where.String(), not})
	}
	return list, shown
}

// valueAt gives the value that a boundary is about, for the limb that is advised on; nil where it is unknown.
func valueAt(b ruleset.Boundary, a *assess.Assessment, side assess.Side, o *reason.Outcome) ref.Val {
	if f := b.Read.Fact; f != nil {
		for _, r := range []*reason.Result{o.Limbs[string(side)], o.Person} {
			if m := r.Quantities[f.Name]; m != nil {
				return quantity(m.Value, m.Unit)
			}
		}
		return nil
	}
	entries := a.Person
	switch root, _, _ := strings.Cut(b.Read.Path, "."); root {
	case "limb":
		entries = a.Limb(side)
	case "other":
		entries = a.Limb(side.Opposite())
	}
	e := entries[b.Read.Measure.Name]
	if e == nil || e.Value == nil {
		return nil
	}
	if !b.Since {
		return e.Value
	}
	d, ok := e.Value.(clinical.Date)
	if !ok {
		return nil
	}
	days, known := d.Since()
	if !known {
		return nil
	}
	return days
}

// quantity makes a value of what an outcome says of a quantity; nil where it is none.
func quantity(number float64, unit string) ref.Val {
	u, ok := clinical.UnitByCode(unit)
	if !ok {
		return nil
	}
	q, err := clinical.Restored(number, u)
	if err != nil {
		return nil
	}
	return q
}
