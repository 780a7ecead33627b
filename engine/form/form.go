// Package form makes blank assessments: everything that a vocabulary can record, or just what a
// ruleset reads, in the order of an examination. A form is written as HCL (with notes), JSON, CSV
// (a row a limb) or a page to print and fill in by hand.
//
//	f := form.ForRuleset(rs, assess.Sides())
//	os.Stdout.Write(f.HCL())
//
// What is left blank in one of them reads back as not recorded.
package form

import (
	"slices"
	"strings"

	"crus/engine/assess"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
)

// Form is a blank assessment.
type Form struct {
	Vocabulary *vocab.Vocabulary
	Ruleset    *ruleset.Ruleset // nil: the whole vocabulary
	DeviceFor  []assess.Side    // the limbs that get a device, left first
	Stages     []Stage          // those that have fields, in the order of an examination
}

// Stage is what is taken at one stage of an examination.
type Stage struct {
	Taken  string // one of vocab.Taken(); "" for measures that do not say when they are taken
	Fields []Field
}

// Field is one measure to record.
type Field struct {
	Measure *vocab.Measure
	Sides   []assess.Side // of a limb: where it is to be recorded, left first; nil: of the person
}

// OfLimb reports whether anything at the stage is taken of a limb.
func (s Stage) OfLimb() bool {
	return slices.ContainsFunc(s.Fields, func(f Field) bool { return f.Sides != nil })
}

// ForVocabulary makes the form of everything that a vocabulary can record of the person and of the
// limbs that get a device.
func ForVocabulary(v *vocab.Vocabulary, deviceFor []assess.Side) *Form {
	return build(v, nil, deviceFor, func(m *vocab.Measure) []assess.Side { return deviceFor })
}

// ForRuleset makes the form of what a ruleset reads, with all that it builds on: in conditions,
// formulas and the texts that it shows. What it reads of the other limb is asked of the limb
// opposite to each that gets a device.
func ForRuleset(rs *ruleset.Ruleset, deviceFor []assess.Side) *Form {
	here, opposite := map[*vocab.Measure]bool{}, map[*vocab.Measure]bool{}
	eachRead(rs, func(m *vocab.Measure, other bool) {
		if other {
			opposite[m] = true
		} else {
			here[m] = true
		}
	})
	return build(rs.Vocabulary, rs, deviceFor, func(m *vocab.Measure) []assess.Side {
		var sides []assess.Side
		for _, s := range assess.Sides() {
			if here[m] && slices.Contains(deviceFor, s) || opposite[m] && slices.Contains(deviceFor, s.Opposite()) {
				sides = append(sides, s)
			}
		}
		return sides
	})
}

// build makes a form of the measures for which sides gives any; those of the person are taken once.
func build(v *vocab.Vocabulary, rs *ruleset.Ruleset, deviceFor []assess.Side, sides func(*vocab.Measure) []assess.Side) *Form {
	f := &Form{Vocabulary: v, Ruleset: rs, DeviceFor: deviceFor}
	for _, taken := range append(vocab.Taken(), "") {
		stage := Stage{Taken: taken}
		for _, m := range v.Measures {
			at := sides(m)
			if m.Taken != taken || len(at) == 0 {
				continue
			}
			if m.Of == vocab.Person {
				at = nil
			}
			stage.Fields = append(stage.Fields, Field{m, at})
		}
		if len(stage.Fields) > 0 {
			f.Stages = append(f.Stages, stage)
		}
	}
	return f
}

// eachRead calls yield for each measure that a ruleset reads, some more than once. Findings and
// quantities need no following: every one that is in force is itself looked at.
func eachRead(rs *ruleset.Ruleset, yield func(m *vocab.Measure, other bool)) {
	expr := func(e *ruleset.Expr) {
		if e == nil {
			return
		}
		for _, r := range e.Reads {
			if r.Measure != nil {
				yield(r.Measure, r.Other)
			}
		}
	}
	text := func(t source.Text) {
		for _, r := range t.Refs {
			root, name, _ := strings.Cut(r.Name, ".")
			if m := rs.Vocabulary.Measure(name); m != nil && root != "finding" && root != "quantity" {
				yield(m, root == "other")
			}
		}
	}
	for _, p := range rs.Parts {
		expr(p.Applies)
	}
	for _, f := range rs.Facts {
		expr(f.Expr)
		text(f.Because)
	}
	for _, r := range rs.Rules {
		expr(r.When)
		expr(r.Unless)
		text(r.Because)
		for _, a := range r.Advise {
			expr(a.Formula)
		}
	}
	for _, c := range rs.Cautions {
		expr(c.When)
		text(c.Says)
		text(c.Act)
	}
	for _, o := range rs.Open {
		text(o.Because)
		for _, t := range o.Consider {
			text(t)
		}
	}
}

// Title says what the form is for.
func (f *Form) Title() string {
	if f.Ruleset != nil {
		return f.Ruleset.Title
	}
	return f.Vocabulary.Title
}

// Sides lists the limbs of which anything is recorded or that get a device, left first.
func (f *Form) Sides() []assess.Side {
	var out []assess.Side
	for _, s := range assess.Sides() {
		asked := slices.Contains(f.DeviceFor, s)
		for _, st := range f.Stages {
			for _, field := range st.Fields {
				asked = asked || slices.Contains(field.Sides, s)
			}
		}
		if asked {
			out = append(out, s)
		}
	}
	return out
}

// Count is how many measures are on the form.
func (f *Form) Count() int {
	n := 0
	for _, s := range f.Stages {
		n += len(s.Fields)
	}
	return n
}

// usual names the vocabulary as an assessment does: with the first number of its version.
func (f *Form) usual() string {
	major, _, _ := strings.Cut(f.Vocabulary.Version, ".")
	return f.Vocabulary.Name + "@" + major
}
