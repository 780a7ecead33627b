package vocab

import (
	"fmt"

	"crus/engine/clinical"
	"crus/engine/source"
)

func (r *reader) measure(b *source.Block) {
	m := &Measure{Name: b.Named(&r.diags, "knee_extension"), Where: b.Where}
	r.unique("measure", m.Name, b.Where)
	f := b.Fields(&r.diags)
	m.Of = Of(f.OneOf("of", string(Person), string(Limb)))
	f.Needs("of", `"limb", or "person"`)
	m.Label = f.Required("label", `"Knee extension"`)
	m.Taken = f.OneOf("taken", takenOrder[:]...)
	m.How = f.String("how")
	r.kind(m, f)
	r.never(m, f)
	r.plausible(m, f)
	r.error(m, f)
	m.Cites = r.cites(f)
	f.Done()
	r.v.Measures = append(r.v.Measures, m)
	if m.Name != "" {
		r.v.measures[m.Name] = m
	}
}

// kind reads which of the seven kinds the measure is; just one must be written.
func (r *reader) kind(m *Measure, f *source.Fields) {
	var kinds []string
	for _, k := range []string{"unit", "scale", "one_of", "yes_no", "count", "date", "text"} {
		if f.Has(k) {
			kinds = append(kinds, k)
		}
	}
	if len(kinds) != 1 {
		problem := "does not say how it is recorded"
		if len(kinds) > 1 {
			problem = "is recorded in several ways at once: " + source.And(kinds)
		}
		r.fail(source.Errorf(m.Where, "kind", "The measure %q %s.", m.Name, problem).
			Hinting(`Write just one of unit = "deg", scale = "...", one_of = [...], yes_no = true, count = true, date = true, text = true.`))
		return
	}
	switch kinds[0] {
	case "unit":
		m.Kind = Quantity
		m.Unit = r.unit(f)
	case "scale":
		m.Kind = Grade
		m.Scale = r.namedScale(f)
	case "one_of":
		m.Kind = Option
		m.Options = r.options(f, "one_of")
	case "yes_no":
		m.Kind = r.flag(f, "yes_no", YesNo)
	case "count":
		m.Kind = r.flag(f, "count", Count)
	case "date":
		m.Kind = r.flag(f, "date", Date)
	case "text":
		m.Kind = r.flag(f, "text", Text)
	}
}

func (r *reader) flag(f *source.Fields, name string, k Kind) Kind {
	if a, _ := f.Block.Attr(name); a.Value.Kind == source.BoolKind && !a.Value.Bool {
		r.fail(source.Errorf(a.Value.Where, "kind", "%s = false says nothing.", name).Hinting("Leave the line out, or write %s = true.", name))
	}
	f.Bool(name)
	return k
}

// never reads whether a date may never have been.
func (r *reader) never(m *Measure, f *source.Fields) {
	if !f.Has("never") {
		return
	}
	if m.Kind != Date && m.Kind != "" {
		r.fail(source.Errorf(f.Where("never"), "never", "Only a date can be never.").Hinting("Leave the line out."))
		return
	}
	r.flag(f, "never", Date)
	m.Never = true
}

func (r *reader) unit(f *source.Fields) clinical.Unit {
	t, ok := f.Text("unit")
	if !ok {
		return clinical.Unit{}
	}
	u, known := clinical.UnitByCode(t.S)
	if !known {
		var codes []string
		for _, u := range clinical.Units() {
			codes = append(codes, u.Code)
		}
		r.fail(source.Errorf(t.All(), "unit", "%q is not a unit that is known here.", t.S).
			Hinting("%s", source.DidYouMean(t.S, codes, "Units are UCUM codes: "+source.And(codes)+".")))
	}
	return u
}

func (r *reader) namedScale(f *source.Fields) *clinical.Scale {
	t, ok := f.Text("scale")
	if !ok {
		return nil
	}
	s := r.v.Scale(t.S)
	if s == nil {
		if _, broken := r.first["scale "+t.S]; !broken {
			r.fail(source.Errorf(t.All(), "unknown_name", "There is no scale %q.", t.S).
				Hinting("%s", source.DidYouMean(t.S, r.v.ScaleNames(), fmt.Sprintf("Add a block: scale %q { grades = [...] }", t.S))))
		}
	}
	return s
}

// maxWords is the most options or grades that there can be.
const maxWords = 64

func (r *reader) options(f *source.Fields, name string) []string {
	texts := f.Texts(name)
	written := len(texts)
	if a, ok := f.Block.Attr(name); ok {
		written = max(written, len(a.Value.Items)) // those that are no texts are said already
	}
	if written < 2 {
		r.fail(source.Errorf(f.Where(name), "options", "%s needs at least two words to choose from.", name).
			Hinting(`For example: %s = ["intact", "broken"]`, name))
	}
	if len(texts) > maxWords {
		r.fail(source.Errorf(f.Where(name), "options", "%s has more than %d words to choose from.", name, maxWords).Hinting("Divide it into two."))
		return []string{}
	}
	out := []string{}
	for _, t := range texts {
		if !Word(t.S) {
			r.fail(source.Errorf(t.All(), "options", "%q can't be an option.", t.S).
				Hinting("An option has small letters, digits and underscores, for example in_front_of_malleoli."))
		}
		out = append(out, t.S)
	}
	return out
}

// Word reports whether s can be an option: like a name, but it may begin with a digit.
func Word(s string) bool {
	for _, c := range s {
		if (c < 'a' || c > 'z') && (c < '0' || c > '9') && c != '_' {
			return false
		}
	}
	return s != ""
}

func (r *reader) plausible(m *Measure, f *source.Fields) {
	needed := m.Kind == Quantity || m.Kind == Count
	if !f.Has("plausible") {
		if needed { // the range outside of which a value is likely a slip
			f.Needs("plausible", "[-60, 45]")
		}
		return
	}
	lo, hi, ok := f.Pair("plausible")
	if ok && !needed && m.Kind != "" {
		r.fail(source.Errorf(f.Where("plausible"), "plausible", "Only a measure with a unit or a count has a plausible range.").Hinting("Leave the line out."))
	}
	m.Plausible = Span{lo, hi}
}

func (r *reader) error(m *Measure, f *source.Fields) {
	m.ErrorBasis = f.String("error_basis")
	e, stated := f.Number("error")
	if stated && e <= 0 {
		r.fail(source.Errorf(f.Where("error"), "error_size", "A measurement error is greater than 0.").
			Hinting("Where none is known leave error out and say so: error_basis = \"None is published.\""))
	}
	if stated && m.Kind != Quantity && m.Kind != Count && m.Kind != Grade {
		r.fail(source.Errorf(f.Where("error"), "error_size", "Only a measure with a unit, a count or a scale has a measurement error.").Hinting("Leave the line out."))
	}
	if !f.Has("error") && m.ErrorBasis == "" && m.Kind != Text && m.Kind != Date {
		f.RequiredText("error_basis", `"None is published.", or error = 5 with its source`)
	}
	if stated {
		m.Error = e
	}
}
