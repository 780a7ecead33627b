package assess

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// entry reads one measure; path is how it is named in a message. What is written is a bare value,
// or a group of the fields value, unit and confirmed, or of not_recorded alone.
func (c *checker) entry(m *vocab.Measure, path string, v source.Value) (*Entry, bool) {
	r := &recorded{checker: c, m: m, path: path, value: v}
	if c.bad[v.Where] || v.Kind == source.ObjectKind && !r.group(v) {
		return nil, false
	}
	e := &Entry{Measure: m, NotRecorded: r.reason, Confirmed: r.confirmed, Where: v.Where}
	if r.reason != "" {
		return e, true
	}
	if c.bad[r.value.Where] {
		return nil, false
	}
	var ok bool
	e.Value, ok = r.read()
	return e, ok
}

// recorded is what was written of one measure.
type recorded struct {
	*checker
	m         *vocab.Measure
	path      string
	value     source.Value
	grouped   bool          // the value is the field value of a group
	unit      *source.Value // the field unit; nil where it is not written
	confirmed bool
	reason    string // why it is not recorded
}

// bounded reports whether the measure has a plausible range.
func (r *recorded) bounded() bool { return r.m.Kind == vocab.Quantity || r.m.Kind == vocab.Count }

// wrong reports the value.
func (r *recorded) wrong(code, format string, args ...any) source.Diagnostic {
	return source.Errorf(r.value.Where, code, "%s %s.", r.path, fmt.Sprintf(format, args...))
}

// group takes a group of fields apart.
func (r *recorded) group(v source.Value) bool {
	before := len(r.diags)
	names := []string{"value", "unit", "confirmed", "not_recorded"}
	for _, f := range v.Fields {
		switch f.Name {
		case "value":
			r.value, r.grouped = f.Value, true
			if f.Value.Kind == source.ObjectKind {
				r.fail(r.wrong("kind", "is written as a group within a group").Hinting("For example %s", r.notation.confirmed(r.example())))
			}
		case "unit":
			r.unit = &f.Value
		case "confirmed":
			r.confirmed = f.Value.Bool
			switch {
			case f.Value.Kind != source.BoolKind:
				r.fail(source.Errorf(f.Value.Where, "kind", "confirmed is true or false, and this is %s.", f.Value.Kind).Hinting("Write %s", r.notation.field("confirmed", "true")))
			case r.confirmed && !r.bounded():
				r.fail(source.Errorf(f.NameWhere, "confirmed", "%s has no plausible range, so there is nothing to confirm.", r.path).Hinting("Leave confirmed out."))
			}
		case "not_recorded":
			r.notRecorded(f, len(v.Fields) > 1)
		default:
			if !r.full() {
				r.fail(source.Errorf(f.NameWhere, "unknown_field", "%s has no field %s.", r.path, short(f.Name)).
					Hinting("%s", nearest(f.Name, names, "A measure can have "+source.And(names)+".")))
			}
		}
	}
	_, hasValue := v.Field("value")
	_, missing := v.Field("not_recorded")
	if !hasValue && !missing && len(r.diags) == before {
		r.fail(source.Errorf(v.Where, "missing", "%s has neither a value nor a reason why it is not recorded.", r.path).
			Hinting("Add %s, or write %s", r.notation.field("value", r.example()), r.notation.notRecorded()))
	}
	return len(r.diags) == before
}

func (r *recorded) notRecorded(f source.Field, more bool) {
	reason, problem := words(f.Value)
	switch {
	case r.bad[f.Value.Where]:
	case problem != "":
		r.fail(source.Errorf(f.Value.Where, "not_recorded", "The reason why %s is not recorded %s.", r.path, problem).
			Hinting("Write %s, or %s if it was not taken at all.", r.notation.notRecorded(), r.notation.omit()))
	case more:
		r.fail(source.Errorf(f.NameWhere, "not_recorded", "%s is said to be not recorded, and other fields stand beside that.", r.path).
			Hinting("Keep either the value or not_recorded."))
	}
	r.reason = reason
}

// words gives a text of one or more lines, or says what is wrong with it.
func words(v source.Value) (s, problem string) {
	s = strings.TrimSpace(strings.ReplaceAll(v.Text.S, "\r\n", "\n"))
	switch {
	case v.Kind != source.TextKind:
		return "", fmt.Sprintf("is a text, and this is %s", v.Kind)
	case s == "":
		return "", "is empty"
	case strings.ContainsFunc(s, func(c rune) bool { return unicode.IsControl(c) && c != '\n' && c != '\t' }):
		return "", "has a control character in it"
	}
	return s, ""
}

// read gives the value.
func (r *recorded) read() (ref.Val, bool) {
	switch {
	case r.value.Kind == source.NullKind:
		r.fail(r.wrong("kind", "is null, which does not say why there is no value").
			Hinting("Write %s, or %s if it was not taken at all.", r.notation.notRecorded(), r.notation.omit()))
	case r.unit != nil && r.m.Kind != vocab.Quantity:
		r.fail(source.Errorf(r.unit.Where, "unit", "%s has no unit.", r.path).Hinting("Leave the unit out."))
	case r.value.Kind == source.TextKind && r.bounded() && isNoNumber(strings.TrimSpace(r.value.Text.S)):
		r.fail(notANumber(r.value.Where, r.notation))
	default:
		return r.byKind()
	}
	return nil, false
}

func (r *recorded) byKind() (ref.Val, bool) {
	switch r.m.Kind {
	case vocab.Quantity:
		return r.quantity()
	case vocab.Grade:
		return r.grade()
	case vocab.Option:
		return r.option()
	case vocab.YesNo:
		return r.yesNo()
	case vocab.Count:
		return r.count()
	case vocab.Date:
		return r.day()
	}
	return r.freeText()
}

func (r *recorded) implausible(value, lo, hi string) {
	r.fail(r.wrong("implausible", "is %s, and a plausible value lies from %s to %s", value, lo, hi).
		Hinting("If it is right, confirm it: %s", r.notation.field(r.m.Name, r.notation.confirmed(r.asWritten()))))
}

// asWritten gives the value as it stands in the document.
func (r *recorded) asWritten() string {
	if r.value.Kind == source.TextKind {
		return r.notation.text(short(r.value.Text.S))
	}
	return strconv.FormatFloat(r.value.Number, 'g', -1, 64)
}

func (r *recorded) grade() (ref.Val, bool) {
	grades := r.m.Scale.Grades
	switch r.value.Kind {
	case source.TextKind:
		if g, ok := r.m.Scale.Grade(strings.TrimSpace(r.value.Text.S)); ok {
			return g, true
		}
		d := source.Errorf(r.value.Where, "grade", "%s has no grade %s.", r.path, quoted(r.value.Text.S)).
			Hinting("Its grades are %s.", source.And(r.quotedAll(grades)))
		switch g, ok := r.likeGrade(r.value.Text.S); {
		case ok && strings.Contains(g, "-") && keyboardMinus(r.value.Text.S) != r.value.Text.S:
			d = d.Hinting("Write it with the keyboard's minus -: %s", r.notation.field(r.named(), r.notation.text(g)))
		case ok:
			d = d.Hinting("Did you mean %s?", r.notation.text(g))
		}
		r.fail(d)
	case source.NumberKind:
		d := r.wrong("kind", "is a grade, which is a text, and this is a number").Hinting("Its grades are %s.", source.And(r.quotedAll(grades)))
		if label := r.asWritten(); slices.Contains(grades, label) {
			d = d.Hinting("If the grade is %s, write %s", label, r.notation.field(r.m.Name, r.notation.text(label)))
		}
		r.fail(d)
	default:
		r.fail(r.wrong("kind", "is a grade, and this is %s", r.value.Kind).Hinting("Its grades are %s.", source.And(r.quotedAll(grades))))
	}
	return nil, false
}

func (r *recorded) quotedAll(words []string) []string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = r.notation.text(w)
	}
	return out
}

func (r *recorded) option() (ref.Val, bool) {
	s := strings.TrimSpace(r.value.Text.S)
	all := source.Or(r.quotedAll(r.m.Options))
	switch {
	case r.value.Kind != source.TextKind:
		r.fail(r.wrong("kind", "is one of a few words, and this is %s", r.value.Kind).Hinting("It can be %s.", all))
	case !slices.Contains(r.m.Options, s):
		hint := "It can be " + all + "."
		if like := r.likeOption(s); like != "" {
			hint = like + " " + hint
		}
		r.fail(r.wrong("option", "can't be %s", quoted(s)).Hinting("%s", hint))
	default:
		return types.String(s), true
	}
	return nil, false
}

func (r *recorded) yesNo() (ref.Val, bool) {
	if r.value.Kind == source.BoolKind {
		return types.Bool(r.value.Bool), true
	}
	d := r.wrong("yes_no", "is yes or no, and this is %s", r.value.Kind)
	if r.value.Kind == source.TextKind {
		d = r.wrong("yes_no", "is yes or no, and this is the text %s", quoted(r.value.Text.S))
	}
	r.fail(d.Hinting("Write %s", source.Or(r.notation.yesNo())+"."))
	return nil, false
}

// maxCount is the largest number up to which every integer has its own float64.
const maxCount = 1 << 53

func (r *recorded) count() (ref.Val, bool) {
	n := r.value.Number
	switch {
	case r.value.Kind == source.TextKind:
		if d, ok := r.slip(); ok {
			r.fail(d)
			break
		}
		r.fail(r.wrong("kind", "is a count, and this is the text %s", quoted(r.value.Text.S)).Hinting("Write a whole number alone: %s", r.notation.field(r.m.Name, r.example())))
	case r.value.Kind != source.NumberKind:
		r.fail(r.wrong("kind", "is a count, and this is %s", r.value.Kind).Hinting("For example %s", r.notation.field(r.m.Name, r.example())))
	case n != math.Trunc(n):
		r.fail(r.wrong("count", "is a count, and %s is not a whole number", r.asWritten()).Hinting("Write a whole number: %s", r.notation.field(r.m.Name, r.example())))
	case math.Abs(n) > maxCount:
		r.fail(tooLarge(r.value.Where))
	case !r.confirmed && (n < r.m.Plausible.Lo || n > r.m.Plausible.Hi):
		one := clinical.Unit{Code: "1"}
		r.implausible(r.asWritten(), amount(r.m.Plausible.Lo, one), amount(r.m.Plausible.Hi, one))
	default:
		return types.Int(n), true
	}
	return nil, false
}

func (r *recorded) day() (ref.Val, bool) {
	s := strings.TrimSpace(r.value.Text.S)
	never := r.notation.text(clinical.NeverWord)
	way := "Write it as year-month-day: " + r.notation.field(r.named(), r.example())
	if r.m.Never {
		way += "; if it never was, write " + never
	}
	d, err := clinical.ParseDate(s)
	switch {
	case r.value.Kind != source.TextKind:
		r.fail(r.wrong("date", "is a date, and this is %s", r.value.Kind).Hinting("%s", way))
	case r.m.Never && s == clinical.NeverWord:
		return clinical.Never(), true
	case r.m.Never && strings.EqualFold(s, clinical.NeverWord):
		r.fail(notADate(r.path, s, r.value.Where).Hinting("Did you mean %s?", never))
	case strings.EqualFold(s, clinical.NeverWord):
		r.fail(r.wrong("date", "is %s, and it can only be a date", quoted(s)).
			Hinting("%s. If it is not known, write %s, or %s.", way, r.notation.notRecorded(), r.notation.omit()))
	case err != nil:
		r.fail(notADate(r.path, s, r.value.Where).Hinting("%s", way))
	case r.date == nil:
		if _, said := r.root.Field("date"); !said {
			r.fail(source.Warnf(r.value.Where, "no_date", "The assessment has no date, so the time since %s stays unknown.", r.path).
				Hinting("Add %s, the day of the assessment.", r.notation.field("date", r.notation.text("2026-10-02"))))
		}
		return d, true
	case d.String() > r.date.String(): // both are year-month-day
		r.fail(r.wrong("date", "is %s, and the assessment was on %s", d, r.date).Hinting("Correct one of the two: what is recorded lies before the assessment."))
	default:
		return d.AsOf(*r.date), true
	}
	return nil, false
}

func notADate(name, s string, where source.Range) source.Diagnostic {
	return source.Errorf(where, "date", "%s is %s, which is not a date.", name, quoted(s)).Hinting("Write year-month-day, for example 2026-10-02.")
}

func (r *recorded) freeText() (ref.Val, bool) {
	s, problem := words(r.value)
	if problem != "" {
		r.fail(r.wrong("text", "%s", problem).Hinting("Write a text, or %s.", r.notation.omit()))
		return nil, false
	}
	return types.String(s), true
}

// example writes a value that the measure could have.
func (r *recorded) example() string {
	switch r.m.Kind {
	case vocab.Quantity, vocab.Count:
		return strconv.FormatFloat(math.Round((r.m.Plausible.Lo+r.m.Plausible.Hi)/2), 'g', -1, 64)
	case vocab.Grade:
		return r.notation.text(r.m.Scale.Grades[0])
	case vocab.Option:
		return r.notation.text(r.m.Options[0])
	case vocab.YesNo:
		return r.notation.yesNo()[0]
	case vocab.Date:
		return r.notation.text("2026-10-02")
	}
	return r.notation.text("...")
}
