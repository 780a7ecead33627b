package rulesets_test

import (
	"encoding/json"
	"maps"
	"math/rand/v2"
	"reflect"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"pgregory.net/rapid"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/form"
	"crus/engine/reason"
	"crus/engine/vocab"
)

// place is one measure of the person ("") or of a side.
type place struct {
	side assess.Side
	m    *vocab.Measure
}

// world draws assessments for a ruleset: one of its worked cases, with some of what it reads recorded
// otherwise or not at all.
type world struct {
	e      *reason.Engine
	cases  []*assess.Assessment
	places []place // what the ruleset reads, texts apart
}

func newWorld(t testing.TB, e *reason.Engine) *world {
	t.Helper()
	w := &world{e: e}
	rs := e.Ruleset()
	for _, c := range rs.Cases {
		a, diags := assess.Given(c.Given, rs.Vocabulary)
		if diags.HasErrors() {
			t.Fatal(diags.Text())
		}
		w.cases = append(w.cases, a)
	}
	for _, s := range form.ForRuleset(rs, assess.Sides()).Stages {
		for _, f := range s.Fields {
			if f.Measure.Kind == vocab.Text {
				continue
			}
			if f.Sides == nil {
				w.places = append(w.places, place{"", f.Measure})
			}
			for _, side := range f.Sides {
				w.places = append(w.places, place{side, f.Measure})
			}
		}
	}
	return w
}

// entries gives what is recorded where a place is.
func (p place) entries(a *assess.Assessment) map[string]*assess.Entry {
	if p.side == "" {
		return a.Person
	}
	return a.Limb(p.side)
}

func (p place) String() string { return string(p.side) + "." + p.m.Name }

// value draws a value of a measure within its plausible range.
func value(t rapid.TB, r *rand.Rand, m *vocab.Measure) ref.Val {
	switch m.Kind {
	case vocab.YesNo:
		return types.Bool(r.IntN(2) == 0)
	case vocab.Option:
		return types.String(m.Options[r.IntN(len(m.Options))])
	case vocab.Grade:
		g, _ := m.Scale.At(r.IntN(len(m.Scale.Grades)))
		return g
	case vocab.Count:
		return types.Int(int(m.Plausible.Lo) + r.IntN(int(m.Plausible.Hi-m.Plausible.Lo)+1))
	case vocab.Date:
		if m.Never && r.IntN(4) == 0 {
			return clinical.Never()
		}
		days := []string{"2020-01-31", "2026-03-01", "2026-08-20", "2026-09-25"}
		d, err := clinical.ParseDate(days[r.IntN(len(days))])
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	q, err := clinical.NewQuantity(m.Plausible.Lo+(m.Plausible.Hi-m.Plausible.Lo)*float64(r.IntN(41))/40, m.Unit)
	if err != nil {
		t.Fatal(err)
	}
	return q
}

func random(t *rapid.T) *rand.Rand { return rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 0)) }

// draw gives an assessment of its own.
func (w *world) draw(t *rapid.T) *assess.Assessment {
	from := rapid.SampledFrom(w.cases).Draw(t, "case")
	a := *from
	a.Person, a.Left, a.Right = maps.Clone(from.Person), maps.Clone(from.Left), maps.Clone(from.Right)
	for _, m := range []*map[string]*assess.Entry{&a.Person, &a.Left, &a.Right} {
		if *m == nil {
			*m = map[string]*assess.Entry{}
		}
	}
	if a.Date == "" {
		a.Date = "2026-10-02"
	}
	r := random(t)
	record := func(p place) { p.entries(&a)[p.m.Name] = &assess.Entry{Measure: p.m, Value: value(t, r, p.m)} }
	share := rapid.SampledFrom([]float64{0.5, 0.9, 0.97, 1}).Draw(t, "recorded")
	for _, p := range w.places {
		if _, ok := p.entries(&a)[p.m.Name]; !ok && r.Float64() < share {
			record(p)
		}
	}
	for range rapid.IntRange(0, 4).Draw(t, "changes") {
		p := w.places[r.IntN(len(w.places))]
		if delete(p.entries(&a), p.m.Name); r.IntN(2) == 0 {
			record(p)
		}
	}
	return &a
}

// results lists those of an outcome by whom they are for.
func results(o *reason.Outcome) map[string]*reason.Result {
	out := map[string]*reason.Result{}
	if o.Person != nil {
		out["person"] = o.Person
	}
	for side, r := range o.Limbs {
		out[side] = r
	}
	return out
}

// Left and right swapped gives left and right swapped, to the byte of their JSON.
func TestSidesAreAlike(t *testing.T) {
	for _, e := range starters(t) {
		t.Run(e.Ruleset().Name, func(t *testing.T) {
			t.Parallel()
			w := newWorld(t, e)
			rapid.Check(t, func(t *rapid.T) {
				a := w.draw(t)
				b := *a
				b.Left, b.Right, b.DeviceFor = a.Right, a.Left, nil
				for _, s := range a.DeviceFor {
					b.DeviceFor = append(b.DeviceFor, s.Opposite())
				}
				x, y := e.Advise(a, today), e.Advise(&b, today)
				for _, side := range assess.Sides() {
					if got, want := mirrored(written(t, y.Limbs[string(side.Opposite())])), written(t, x.Limbs[string(side)]); got != want {
						t.Fatalf("%s becomes another thing on the other side: %s", side, differ(want, got))
					}
				}
				if got, want := mirrored(written(t, y.Person)), written(t, x.Person); got != want && len(a.DeviceFor) == 1 {
					t.Fatalf("the person's results differ: %s", differ(want, got))
				}
			})
		})
	}
}

// mirrored names the other side where a label or a path says whose measure it is.
func mirrored(s string) string {
	return whose.ReplaceAllStringFunc(s, func(w string) string {
		if strings.Contains(w, "left") {
			return strings.Replace(w, "left", "right", 1)
		}
		return strings.Replace(w, "right", "left", 1)
	})
}

var whose = regexp.MustCompile(`\((left|right)\)|"(left|right)\.`)

// differ shows where two texts part.
func differ(a, b string) string {
	i := 0
	for i < min(len(a), len(b)) && a[i] == b[i] {
		i++
	}
	around := func(s string) string { return s[max(0, i-200):min(len(s), i+200)] }
	return "\n" + around(a) + "\n" + around(b)
}

func written(t *rapid.T, r *reason.Result) string {
	b, err := json.Marshal(r)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// Recording one more measure never turns what is settled and not provisional into something else, nor
// silences or raises a caution that is not provisional.
func TestOneMoreMeasureKeepsWhatStands(t *testing.T) {
	for _, e := range starters(t) {
		t.Run(e.Ruleset().Name, func(t *testing.T) {
			t.Parallel()
			w := newWorld(t, e)
			rapid.Check(t, func(t *rapid.T) {
				a := w.draw(t)
				missing := slices.DeleteFunc(slices.Clone(w.places), func(p place) bool {
					x := p.entries(a)[p.m.Name]
					return x != nil && x.Value != nil
				})
				if len(missing) == 0 {
					return
				}
				first := e.Advise(a, today)
				if first.Applies != "yes" {
					return // all of it is provisional, or there is nothing
				}
				before := results(first)
				p := rapid.SampledFrom(missing).Draw(t, "recorded now")
				p.entries(a)[p.m.Name] = &assess.Entry{Measure: p.m, Value: value(t, random(t), p.m)}
				after := results(e.Advise(a, today))
				for who, r := range before {
					kept(t, who, p, r, after[who])
				}
			})
		})
	}
}

func kept(t *rapid.T, who string, p place, before, after *reason.Result) {
	if after == nil {
		t.Fatalf("%s: nothing is advised any more once %s is recorded", who, p)
	}
	for name, c := range before.Choices {
		if c.Provisional {
			continue
		}
		d := after.Choices[name]
		same := d.Status == c.Status || !named(c.Status) && !named(d.Status) || c.Status == reason.Settled && d.Status == reason.Default || c.Status == reason.Default && d.Status == reason.Settled
		if !same || !reflect.DeepEqual(c.Value, d.Value) || !reflect.DeepEqual(c.Among, d.Among) || !reflect.DeepEqual(c.Range, d.Range) {
			t.Fatalf("%s: %s was %s %v %v, and with %s recorded is %s %v %v", who, name, c.Status, c.Value, c.Among, p, d.Status, d.Value, d.Among)
		}
	}
	stood := map[string]string{}
	for _, c := range after.Cautions {
		stood[c.Name] = c.State
	}
	shown := map[string]bool{}
	for _, c := range before.Cautions {
		shown[c.Name] = true
		if c.State == reason.Fired && !c.Provisional && stood[c.Name] != reason.Fired {
			t.Fatalf("%s: the caution %s was in force, and with %s recorded is not", who, c.Name, p)
		}
	}
	for name := range stood {
		if !shown[name] && stood[name] == reason.Fired {
			t.Fatalf("%s: the caution %s was out of the question, and with %s recorded is in force", who, name, p)
		}
	}
}

func named(status string) bool {
	return status != reason.Unanswered && status != reason.LeftToClinician
}
