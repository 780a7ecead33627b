package assess

import (
	"fmt"
	"slices"
	"strings"
	"unicode"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// fieldNames are the fields of an assessment, as they are usually ordered.
func fieldNames() []string {
	return []string{"format", "id", "vocabulary", "date", "assessor", "device_for", "person", "left", "right"}
}

// check makes an assessment of a document, or says everything that is wrong with it.
func check(doc *document, v *vocab.Vocabulary) (*Assessment, source.Diagnostics) {
	c := &checker{document: doc, v: v}
	a := c.assessment()
	diags := c.diags.Sorted()
	if more := len(diags) - maxErrors; more > 0 {
		where := diags[maxErrors].Where
		diags = append(diags[:maxErrors:maxErrors], source.Errorf(where, "too_many", "There are more errors than the %d above, from here on.", maxErrors).
			Hinting("Correct those first."))
	}
	if diags.HasErrors() {
		return nil, diags
	}
	return a, diags
}

type checker struct {
	*document
	v    *vocab.Vocabulary
	date *clinical.Date // of the assessment; nil where it is not known
}

func (c *checker) assessment() *Assessment {
	a := &Assessment{Vocabulary: c.written, Where: c.where}
	if c.root.Kind != source.ObjectKind {
		c.fail(source.Errorf(c.root.Where, "kind", "An assessment is a group of fields, and this is %s.", c.root.Kind).
			Hinting(`Write { "format": %q, "id": "...", ... }; several assessments stand one a line in a file whose name ends in .jsonl.`, Format))
		return a
	}
	c.known()
	mine := c.header(a)
	c.deviceFor(a)
	if !mine { // measures of another vocabulary would all be unknown
		return a
	}
	a.Person = c.entries("person", vocab.Person)
	a.Left = c.entries("left", vocab.Limb)
	a.Right = c.entries("right", vocab.Limb)
	return a
}

// known reports the fields that an assessment does not have, and misses those that it must have.
func (c *checker) known() {
	for _, f := range c.root.Fields {
		if c.full() {
			return
		}
		if slices.Contains(fieldNames(), f.Name) {
			continue
		}
		d := source.Errorf(f.NameWhere, "unknown_field", "An assessment has no field %s.", short(f.Name))
		switch m := c.v.Measure(f.Name); {
		case m != nil && m.Of == vocab.Person:
			d = d.Hinting("Move it into person: it is a measure of the person.")
		case m != nil:
			d = d.Hinting("Move it into left or right: it is a measure of a limb.")
		default:
			d = d.Hinting("%s", nearest(f.Name, fieldNames(), "It can have "+source.And(fieldNames())+"."))
		}
		c.fail(d)
	}
	example := map[string]string{
		"format": c.notation.text(Format), "id": c.notation.text("demo-017"), "vocabulary": c.notation.text(usual(c.v)), "device_for": `["left"]`,
	}
	for _, name := range c.required {
		if _, ok := c.root.Field(name); !ok {
			c.fail(source.Errorf(c.where, "missing", "The assessment has no %s.", name).Hinting("Add %s", c.notation.field(name, example[name])))
		}
	}
}

// header reads the fields before the measures, and reports whether those are of this vocabulary.
func (c *checker) header(a *Assessment) bool {
	mine := true
	if s, where, ok := c.line("format"); ok && s != Format {
		c.fail(source.Errorf(where, "format", "The format is %s, which is not known here.", quoted(s)).Hinting("This program reads %s.", c.notation.text(Format)))
		mine = false
	}
	if s, where, ok := c.line("id"); ok {
		a.ID, a.Where = s, where
	}
	a.Assessor, _, _ = c.line("assessor")
	if s, where, ok := c.line("vocabulary"); ok {
		a.Vocabulary = s
		name, want, versioned := strings.Cut(s, "@")
		hint := fmt.Sprintf("These measures are of %s; write %s if the assessment is too.", c.v.Name, c.notation.text(usual(c.v)))
		switch {
		case name != c.v.Name:
			c.fail(source.Errorf(where, "vocabulary", "The assessment is written for the vocabulary %s, and it is read with %s %s.", quoted(name), c.v.Name, c.v.Version).
				Hinting("Read it with its own vocabulary."))
			mine = false
		case !versioned || want == "":
			c.fail(source.Errorf(where, "vocabulary", "The vocabulary is named without a version.").Hinting("%s", hint))
		case !vocab.Accepts(want, c.v.Version):
			c.fail(source.Errorf(where, "vocabulary", "The assessment is written for %s, and it is read with version %s.", quoted(s), c.v.Version).Hinting("%s", hint))
			mine = false
		}
	}
	if s, where, ok := c.line("date"); ok {
		if d, err := clinical.ParseDate(s); err != nil {
			c.fail(notADate("date", s, where))
		} else {
			a.Date, c.date = s, &d
		}
	}
	return mine
}

// line reads a field of one line of text.
func (c *checker) line(name string) (string, source.Range, bool) {
	f, ok := c.root.Field(name)
	where := f.Value.Where
	if !ok || c.bad[where] {
		return "", where, false
	}
	if f.Value.Kind != source.TextKind {
		c.fail(source.Errorf(where, "kind", "%s is a text, and this is %s.", name, f.Value.Kind).
			Hinting("For example %s", c.notation.field(name, `"..."`)))
		return "", where, false
	}
	s := strings.TrimSpace(f.Value.Text.S)
	switch {
	case s == "":
		hint := "Write it between the quotes."
		if name == "date" || name == "assessor" {
			hint = "Write it between the quotes, or leave the field out."
		}
		c.fail(source.Errorf(where, "missing", "%s is empty.", name).Hinting("%s", hint))
		return "", where, false
	case strings.ContainsFunc(s, unicode.IsControl):
		c.fail(source.Errorf(where, "not_text", "%s has a line end or another control character in it.", name).Hinting("Write it on one line."))
		return "", where, false
	}
	return s, where, true
}

// deviceFor reads which limbs are to get a device.
func (c *checker) deviceFor(a *Assessment) {
	f, ok := c.root.Field("device_for")
	if !ok || c.bad[f.Value.Where] {
		return
	}
	const example = `["left"], ["right"] or ["left", "right"]`
	if f.Value.Kind != source.ListKind {
		c.fail(source.Errorf(f.Value.Where, "kind", "device_for is a list of limbs, and this is %s.", f.Value.Kind).
			Hinting("It can be %s.", example))
		return
	}
	if len(f.Value.Items) == 0 {
		d := source.Errorf(f.Value.Where, "device_for", "No limb is named that is to get a device.").Hinting("device_for can be %s.", example)
		if c.notation == csvNotation {
			d = d.Hinting("Write yes in the column device, in the row of each limb that is to get one.")
		}
		c.fail(d)
		return
	}
	seen := map[Side]source.Range{}
	for _, item := range f.Value.Items {
		if c.bad[item.Where] {
			continue
		}
		if c.full() {
			return
		}
		side := Side(item.Text.S)
		if item.Kind != source.TextKind || side != Left && side != Right {
			c.fail(source.Errorf(item.Where, "device_for", "%s is not a limb.", short(item.Where.Text())).
				Hinting("%s", nearest(item.Text.S, []string{`"left"`, `"right"`}, "device_for can be "+example+".")))
			continue
		}
		if first, twice := seen[side]; twice {
			c.fail(duplicate(string(side), item.Where, first))
			continue
		}
		seen[side] = item.Where
	}
	for _, side := range Sides() {
		if _, ok := seen[side]; ok {
			a.DeviceFor = append(a.DeviceFor, side)
		}
	}
}

// entries reads the measures of the person or of one limb.
func (c *checker) entries(group string, of vocab.Of) map[string]*Entry {
	out := map[string]*Entry{}
	f, ok := c.root.Field(group)
	if !ok || c.bad[f.Value.Where] {
		return out
	}
	if f.Value.Kind != source.ObjectKind {
		c.fail(source.Errorf(f.Value.Where, "kind", "%s is a group of measures, and this is %s.", group, f.Value.Kind).
			Hinting("For example %s", c.notation.field(group, "{ }")))
		return out
	}
	for _, field := range f.Value.Fields {
		if c.full() {
			break
		}
		m := c.v.Measure(field.Name)
		if m == nil || m.Of != of {
			c.fail(c.notHere(group, of, m, field))
			continue
		}
		if e, ok := c.entry(m, group+"."+m.Name, field.Value); ok {
			out[m.Name] = e
		}
	}
	return out
}

// notHere reports a field that is no measure, or one that belongs elsewhere.
func (c *checker) notHere(group string, of vocab.Of, m *vocab.Measure, f source.Field) source.Diagnostic {
	switch {
	case m == nil:
		all := append(c.v.MeasureNames(vocab.Person), c.v.MeasureNames(vocab.Limb)...)
		hint := nearest(f.Name, c.v.MeasureNames(of), "")
		if hint == "" {
			hint = nearest(f.Name, all, fmt.Sprintf("crus form lists the measures of %s.", c.v.Name))
		}
		return source.Errorf(f.NameWhere, "unknown_field", "There is no measure %s.%s.", group, short(f.Name)).Hinting("%s", hint)
	case m.Of == vocab.Person:
		return source.Errorf(f.NameWhere, "unknown_field", "%s is a measure of the person, and stands under %s.", m.Name, group).
			Hinting("Move it into person.")
	}
	return source.Errorf(f.NameWhere, "unknown_field", "%s is a measure of a limb, and stands under person.", m.Name).
		Hinting("Move it into left or right.")
}
