package reason_test

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/source"
	"crus/engine/vocab"
)

// drawing draws small rulesets over a few measures.
type drawing struct {
	t        *rapid.T
	measures []about // the ones that this ruleset looks at
	exact    bool    // only conditions whose cells constants show
}

func (d *drawing) number(from, to int, what string) int {
	return rapid.IntRange(from, to).Draw(d.t, what)
}

func (d *drawing) chance(percent int) bool { return d.number(1, 100, "chance") <= percent }

func one[T any](d *drawing, of []T) T { return of[d.number(0, len(of)-1, "pick")] }

func newDrawing(t *rapid.T, exact bool) *drawing {
	d := &drawing{t: t, exact: exact}
	all := rapid.Permutation(measures()).Draw(t, "measures")
	d.measures = all[:d.number(3, 6, "how many measures")]
	return d
}

func (d *drawing) book() *book {
	b := &book{}
	for range d.number(2, 5, "findings") {
		b.findings = append(b.findings, d.expr(2, len(b.findings)))
	}
	n := d.number(1, 8, "rules")
	for i := range n {
		r := &law{when: d.expr(2, len(b.findings)), strong: d.chance(40)}
		if d.chance(20) {
			r.unless = d.expr(1, len(b.findings))
		}
		for j := i + 1; j < n; j++ {
			if d.chance(15) {
				r.overrides = append(r.overrides, j)
			}
		}
		for range d.number(1, 2, "advice") {
			x := d.says()
			if !slices.ContainsFunc(r.says, func(y says) bool { return y.choice == x.choice }) { // one block a choice
				r.says = append(r.says, x)
			}
		}
		b.rules = append(b.rules, r)
	}
	for range d.number(0, 2, "cautions") {
		b.cautions = append(b.cautions, d.expr(2, len(b.findings)))
	}
	if d.chance(30) {
		b.open = []string{"trim"}
	}
	d.t.Log(strings.Join(b.blocks(), ""))
	return b
}

func (d *drawing) says() says {
	names := []string{"trim", "pad", "shoe", "height", "angle", "review"}
	s := says{choice: one(d, names)}
	c := choices()[s.choice]
	if c.options == nil {
		s.verb = one(d, []string{"at_least", "at_most", "aim"})
		switch s.choice {
		case "height":
			s.at = float64(d.number(-5, 65, "height"))
			if m := one(d, []string{"lift", "gap", ""}); m != "" && !d.exact && d.chance(40) && d.looks(m) {
				s.measure, s.times, s.at = m, one(d, []float64{1, 2, -1}), float64(d.number(0, 40, "offset"))
			}
		case "angle":
			s.at = float64(d.number(-12, 12, "angle"))
		default:
			s.at = float64(d.number(1, 20, "weeks"))
		}
		return s
	}
	verbs := []string{"only", "never", "favour", "favour", "favour"}
	if len(c.options) == 3 && s.choice != "closure" && s.choice != "pad" {
		verbs = append(verbs, "at_least", "at_most")
	}
	s.verb = one(d, verbs)
	s.options = []string{one(d, c.options)}
	if s.verb != "at_least" && s.verb != "at_most" && d.chance(30) {
		if o := one(d, c.options); !slices.Contains(s.options, o) {
			s.options = append(s.options, o)
		}
	}
	return s
}

func (d *drawing) looks(name string) bool {
	return slices.ContainsFunc(d.measures, func(m about) bool { return m.name == name })
}

// expr draws a condition that may name the first facts findings.
func (d *drawing) expr(depth, facts int) *expr {
	if depth > 0 && d.chance(60) {
		op := one(d, []string{"and", "and", "or", "or", "not", "if", "any"})
		n := map[string]int{"and": 2, "or": 2, "not": 1, "if": 3, "any": 2}[op]
		e := &expr{op: op}
		if op == "any" { // one list at a time
			depth = 1
		}
		for range n {
			e.kids = append(e.kids, d.expr(depth-1, facts))
		}
		return e
	}
	if facts > 0 && d.chance(30) {
		return &expr{op: "finding", fact: d.number(0, facts-1, "finding")}
	}
	if !d.exact && d.chance(5) {
		return &expr{op: "fails"}
	}
	m := one(d, d.measures)
	e := &expr{who: m.of, m: m}
	if m.of == "limb" && d.chance(20) {
		e.who = "other"
	}
	if m.kind == "text" || d.chance(8) {
		e.op = "recorded"
		return e
	}
	orders := []string{"<", "<=", ">", ">=", "==", "!="}
	switch m.kind {
	case "bool":
		e.op = "is"
	case "option":
		e.op, e.words = "among", []string{one(d, m.words)}
		if w := one(d, m.words); w != e.words[0] {
			e.words = append(e.words, w)
		}
	default:
		e.op, e.cmp, e.at = "compare", one(d, orders), one(d, m.constants)
		if m.of == "limb" && m.kind != "date" && !d.exact && d.chance(10) {
			e.op, e.who = "compare two", "limb"
		}
	}
	return e
}

// blocks writes a book as HCL blocks.
func (b *book) blocks() []string {
	var out []string
	for i, f := range b.findings {
		out = append(out, finding(fmt.Sprintf("f%d", i), f.cel()))
	}
	for i, r := range b.rules {
		var parts []string
		if r.strong {
			parts = append(parts, "strong")
		}
		if r.unless != nil {
			parts = append(parts, "unless "+r.unless.cel())
		}
		var over []string
		for _, o := range r.overrides {
			over = append(over, fmt.Sprintf("r%d", o))
		}
		if over != nil {
			parts = append(parts, "overrides "+strings.Join(over, " "))
		}
		for _, s := range r.says {
			words := strings.Join(s.options, " ")
			if s.options == nil {
				words = fmt.Sprintf("%s(%g)", choices()[s.choice].literal, s.at)
				if s.measure != "" {
					words += fmt.Sprintf(" + limb.%s * %g", s.measure, s.times)
				}
			}
			parts = append(parts, s.choice+" "+s.verb+" "+words)
		}
		out = append(out, rule(fmt.Sprintf("r%d", i), r.when.cel(), parts...))
	}
	for i, c := range b.cautions {
		out = append(out, caution(fmt.Sprintf("c%d", i), c.cel()))
	}
	for _, o := range b.open {
		out = append(out, left(o))
	}
	return out
}

// record is a drawn assessment: what is recorded, by "person.x", "left.x", "right.x".
type record struct {
	values map[string]float64
	sides  []string
}

// places lists where the drawing's measures can be recorded.
func (d *drawing) places() (out []string) {
	for _, m := range d.measures {
		if m.of == "person" {
			out = append(out, "person."+m.name)
		} else {
			out = append(out, "left."+m.name, "right."+m.name)
		}
	}
	slices.Sort(out)
	return out
}

func aboutOf(place string) about {
	_, name, _ := strings.Cut(place, ".")
	all := measures()
	return all[slices.IndexFunc(all, func(m about) bool { return m.name == name })]
}

// record draws an assessment in which a share of the places is recorded.
func (d *drawing) record() record {
	r := record{values: map[string]float64{}, sides: one(d, [][]string{{"left"}, {"right"}, {"left", "right"}})}
	share := one(d, []int{0, 40, 70, 100})
	for _, p := range d.places() {
		if d.chance(share) {
			r.values[p] = one(d, aboutOf(p).values)
		}
	}
	return r
}

// with gives the record with more recorded.
func (r record) with(more map[string]float64) record {
	out := record{values: map[string]float64{}, sides: r.sides}
	for _, from := range []map[string]float64{more, r.values} {
		for p, v := range from {
			out.values[p] = v
		}
	}
	return out
}

func (r record) worlds() (out []*world) {
	for _, s := range r.sides {
		out = append(out, &world{values: r.values, side: s})
	}
	return out
}

const assessed = "2026-10-02"

// assessment writes the record as JSON and reads it.
func (r record) assessment(t testing.TB, v *vocab.Vocabulary) *assess.Assessment {
	t.Helper()
	doc := map[string]any{"format": assess.Format, "id": "drawn", "vocabulary": "small@1", "date": assessed, "device_for": r.sides}
	parts := map[string]map[string]any{"person": {}, "left": {}, "right": {}}
	for p, x := range r.values {
		where, name, _ := strings.Cut(p, ".")
		m := aboutOf(p)
		var value any = x
		switch m.kind {
		case "bool":
			value = x == 1
		case "grade", "option":
			value = m.words[int(x)]
		case "date":
			day, err := time.Parse(time.DateOnly, assessed)
			if err != nil {
				t.Fatal(err)
			}
			if value = day.AddDate(0, 0, -int(x)).Format(time.DateOnly); math.IsInf(x, 1) {
				value = "never"
			}
		case "text":
			value = "written"
		}
		parts[where][name] = value
	}
	for where, values := range parts {
		doc[where] = values
	}
	src, err := json.Marshal(doc)
	if err != nil {
		t.Fatal(err)
	}
	a, diags := assess.ReadJSON(source.NewFile("drawn.json", src), v)
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	return a
}

// outcome carries an engine out on the record.
func (r record) outcome(t testing.TB, e *reason.Engine) *reason.Outcome {
	t.Helper()
	return e.Advise(r.assessment(t, e.Ruleset().Vocabulary), today())
}

// missing lists the places that are not recorded.
func (d *drawing) missing(r record) (out []string) {
	for _, p := range d.places() {
		if _, ok := r.values[p]; !ok {
			out = append(out, p)
		}
	}
	return out
}

// completion draws a value for each of some places.
func (d *drawing) completion(places []string) map[string]float64 {
	out := map[string]float64{}
	for _, p := range places {
		out[p] = one(d, aboutOf(p).values)
	}
	return out
}
