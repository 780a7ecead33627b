package celltest

import (
	"encoding/json"
	"fmt"
	"time"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// AnyShare has [Sample.Record] draw how much is missing: nothing, 5, 40, 70 or 100 of a hundred.
const AnyShare = -1

// Assessed is the day of every assessment that has one.
const Assessed = "2026-10-02"

// Record is a drawn assessment.
type Record struct {
	Sides []assess.Side // that a device is for; none: only the person is looked at
	Date  string        // Assessed, or ""

	sample *Sample
	groups map[string]map[string]*entry // person, left, right
}

// entry is what is recorded of one measure.
type entry struct {
	m         *measure
	reason    string  // why it is not recorded
	number    float64 // of a quantity, in unit; of a count
	unit      clinical.Unit
	confirmed bool
	word      string // of a grade, an option or a text
	yes       bool
	days      int // before the day of the assessment
	never     bool
}

// Assessment draws an assessment, writes it as JSON and reads that. Where it is for no limb, which no reader
// gives, it is for one while it is read. It panics where what was drawn can't be read: an error of this package.
func (s *Sample) Assessment(d Dice) *assess.Assessment { return s.Record(d, AnyShare).Read() }

// Quick draws an assessment of which about so many of a hundred measures are missing, or [AnyShare], and makes
// it without writing it: the same one as reading would give, but for the places.
func (s *Sample) Quick(d Dice, missing int) *assess.Assessment { return s.Record(d, missing).Make() }

// Record draws what an assessment records: values on the cuts of conditions, a step beside them, at the ends of
// the plausible range, within it and beyond it, and those of like measures. About so many of a hundred are
// missing, or [AnyShare].
func (s *Sample) Record(d Dice, missing int) *Record {
	r := &Record{sample: s, Date: Assessed, groups: map[string]map[string]*entry{"person": {}, "left": {}, "right": {}}}
	if missing == AnyShare {
		missing = []int{0, 40, 5, 70, 100}[d.Int(5)]
	}
	sides := [][]assess.Side{{assess.Left}, {assess.Right}, {assess.Left, assess.Right}, {assess.Left}, {assess.Left, assess.Right}, {assess.Right}, {assess.Left}, nil}
	r.Sides = sides[d.Int(len(sides))]
	if d.Int(8) == 7 {
		r.Date = ""
	}
	alone := len(r.Sides) == 1 && d.Int(4) == 3 // nothing of the other limb
	var done []*entry
	for _, group := range []string{"person", "left", "right"} {
		if alone && group == string(r.Sides[0].Opposite()) {
			continue
		}
		for _, m := range s.measures {
			if m.limb == (group == "person") {
				continue
			}
			if d.Int(100) >= 100-missing {
				if d.Int(4) == 3 {
					r.groups[group][m.name] = &entry{m: m, reason: "pain on movement"}
				}
				continue
			}
			e := m.entry(d, done)
			r.groups[group][m.name], done = e, append(done, e)
		}
	}
	return r
}

// entry draws what is recorded of the measure, after some others.
func (m *measure) entry(d Dice, done []*entry) *entry {
	if d.Int(10) == 9 {
		for _, e := range done {
			if e.m.comparable(m) && (!e.never || m.never) {
				like := *e
				like.m = m
				like.confirmed = like.beyond()
				return &like
			}
		}
	}
	e := &entry{m: m}
	switch m.kind {
	case vocab.Quantity, vocab.Count:
		m.number(d, e)
	case vocab.Grade:
		e.word = one(d, m.scale.grades)
	case vocab.Option:
		e.word = one(d, m.options)
	case vocab.YesNo:
		e.yes = d.Int(2) == 1
	case vocab.Date:
		m.day(d, e)
	case vocab.Text:
		e.word = "as last time"
	}
	return e
}

// number draws a number: within the range, on a cut, beside one, at an end, or beyond.
func (m *measure) number(d Dice, e *entry) {
	e.number, e.unit = m.grid(d, 0), m.unit
	whole := m.kind == vocab.Count
	switch form := d.Int(10); {
	case form >= 3 && form < 8 && len(m.cuts) > 0:
		c := one(d, m.cuts)
		e.number, e.unit = c.at, c.unit
		if form >= 6 {
			steps := []float64{1, -1, 0.1, -0.1, 1e-3, -1e-3, 1e-9, -1e-9}
			if whole {
				steps = steps[:2]
			}
			e.number = rounded(e.number + one(d, steps))
		}
	case form == 8:
		e.number = []float64{m.lo, m.hi}[d.Int(2)]
	case form == 9 && d.Int(3) == 2:
		e.number = rounded(one(d, []float64{m.lo - m.step, m.hi + m.step, m.hi + 40*m.step, m.lo - 40*m.step, 1e12, -1e12}))
	}
	e.confirmed = e.beyond()
}

// beyond reports whether the value lies beyond the plausible range of its measure.
func (e *entry) beyond() bool {
	switch e.m.kind {
	case vocab.Count:
		return e.number < e.m.lo || e.number > e.m.hi
	case vocab.Quantity:
		q := quantity(e.number, e.unit)
		return q.Compare(quantity(e.m.lo, e.m.unit)) == types.IntNegOne || q.Compare(quantity(e.m.hi, e.m.unit)) == types.IntOne
	}
	return false
}

// quantity makes a quantity; the numbers that are drawn are all ones that can be.
func quantity(x float64, u clinical.Unit) clinical.Quantity {
	q, err := clinical.NewQuantity(x, u)
	if err != nil {
		panic("celltest: " + err.Error())
	}
	return q
}

// day draws a date: some days before the assessment, on a cut or beside it, or never.
func (m *measure) day(d Dice, e *entry) {
	e.days = d.Int(1200)
	switch form := d.Int(8); {
	case form >= 3 && form < 6 && len(m.cuts) > 0:
		c := one(d, m.cuts)
		seconds := quantity(c.at, c.unit).Base()
		e.days = max(0, int(seconds/86400)+d.Int(3)-1)
	case form == 6:
		e.days = 0
	case form == 7 && m.never:
		e.days, e.never = 0, true
	}
}

// date writes the day that lies so many days before that of the assessment.
func date(days int) string {
	t, err := time.Parse(time.DateOnly, Assessed)
	if err != nil {
		panic("celltest: " + err.Error())
	}
	return t.AddDate(0, 0, -days).Format(time.DateOnly)
}

// JSON writes the record. Where it is for no limb it says the left one.
func (r *Record) JSON() []byte {
	sides := r.Sides
	if len(sides) == 0 {
		sides = []assess.Side{assess.Left}
	}
	doc := map[string]any{"format": assess.Format, "id": "drawn", "vocabulary": VocabularyName + "@1", "device_for": sides}
	if r.Date != "" {
		doc["date"] = r.Date
	}
	for name, entries := range r.groups {
		group := map[string]any{}
		for measure, e := range entries {
			group[measure] = e.written()
		}
		doc[name] = group
	}
	b, err := json.Marshal(doc)
	if err != nil {
		panic("celltest: " + err.Error())
	}
	return b
}

// written gives the entry as JSON has it.
func (e *entry) written() any {
	if e.reason != "" {
		return map[string]any{"not_recorded": e.reason}
	}
	switch e.m.kind {
	case vocab.YesNo:
		return e.yes
	case vocab.Date:
		if e.never {
			return clinical.NeverWord
		}
		return date(e.days)
	case vocab.Quantity, vocab.Count:
		object := map[string]any{"value": e.number}
		if e.unit != e.m.unit {
			object["unit"] = e.unit.Code
		}
		if e.confirmed {
			object["confirmed"] = true
		}
		if len(object) == 1 {
			return e.number
		}
		return object
	}
	return e.word
}

// Read writes the record as JSON and reads that. See [Sample.Assessment].
func (r *Record) Read() *assess.Assessment {
	if r.sample.rs == nil {
		r.sample.Ruleset(panics{})
	}
	src := r.JSON()
	a, diags := assess.ReadJSON(source.NewFile("drawn.json", src), r.sample.rs.Vocabulary)
	if diags.HasErrors() {
		panic(fmt.Sprintf("the drawn assessment has errors:\n%s\n%s", diags.Text(), src))
	}
	if len(r.Sides) == 0 {
		a.DeviceFor = nil
	}
	return a
}

// Make makes the assessment that reading would give, but for the places.
func (r *Record) Make() *assess.Assessment {
	if r.sample.rs == nil {
		r.sample.Ruleset(panics{})
	}
	a := &assess.Assessment{ID: "drawn", Vocabulary: VocabularyName + "@1", Date: r.Date, DeviceFor: r.Sides}
	for name, into := range map[string]*map[string]*assess.Entry{"person": &a.Person, "left": &a.Left, "right": &a.Right} {
		*into = map[string]*assess.Entry{}
		for measure, e := range r.groups[name] {
			m := r.sample.rs.Vocabulary.Measure(measure)
			out := &assess.Entry{Measure: m, NotRecorded: e.reason, Confirmed: e.confirmed}
			if e.reason == "" {
				out.Value = e.value(m, r.Date)
			}
			(*into)[measure] = out
		}
	}
	return a
}

// value gives the value that reading would give.
func (e *entry) value(m *vocab.Measure, assessed string) ref.Val {
	switch m.Kind {
	case vocab.Quantity:
		return quantity(e.number, e.unit).WithUnit(m.Unit)
	case vocab.Count:
		return types.Int(e.number)
	case vocab.YesNo:
		return types.Bool(e.yes)
	case vocab.Grade:
		g, ok := m.Scale.Grade(e.word)
		if !ok {
			panic("celltest: no grade " + e.word)
		}
		return g
	case vocab.Date:
		return e.date(assessed)
	}
	return types.String(e.word)
}

func (e *entry) date(assessed string) clinical.Date {
	if e.never {
		return clinical.Never()
	}
	day, err := clinical.ParseDate(date(e.days))
	if err != nil {
		panic("celltest: " + err.Error())
	}
	if assessed == "" {
		return day
	}
	from, err := clinical.ParseDate(assessed)
	if err != nil {
		panic("celltest: " + err.Error())
	}
	return day.AsOf(from)
}

// panics is a test that stops everything.
type panics struct{}

func (panics) Helper() {}

func (panics) Fatalf(format string, args ...any) { panic(fmt.Sprintf(format, args...)) }
