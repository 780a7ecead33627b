package cell_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/cell/celltest"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
	"crus/rulesets"
)

func today() time.Time { return time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC) }

// comparison holds what cells make of an assessment against the reference.
type comparison struct {
	*cell.Space
	c []*cell.Case // person, left, right
}

func newComparison(t testing.TB, e *reason.Engine) *comparison {
	t.Helper()
	s, err := cell.New(e)
	if err != nil {
		t.Fatal(err)
	}
	return &comparison{s, []*cell.Case{s.NewCase(), s.NewCase(), s.NewCase()}}
}

// differences lists where the two differ on an assessment.
func (x *comparison) differences(a *assess.Assessment) (out []string) {
	o := x.Engine.Advise(a, today())
	note := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	x.Work(x.c[0], x.Row(a, ""))
	if got := [...]string{"no", "unknown", "yes"}[x.c[0].Truth[x.Applies]]; len(a.DeviceFor) == 0 && got != o.Applies {
		note("applies: %s, not %s", got, o.Applies)
	}
	if o.Applies == "no" {
		return out
	}
	var limbs []*cell.Case
	results := map[string]*reason.Result{"": o.Person}
	cases := map[string]*cell.Case{"": x.c[0]}
	for i, side := range assess.Sides() {
		if slices.Contains(a.DeviceFor, side) {
			c := x.c[i+1]
			x.Work(c, x.Row(a, side))
			limbs = append(limbs, c)
			results[string(side)], cases[string(side)] = o.Limbs[string(side)], c
		}
	}
	if limbs == nil {
		limbs = x.c[:1]
	}
	for side, r := range results {
		c := cases[side]
		for i, f := range x.Facts {
			switch {
			case f.Limb != (side != ""):
			case f.Term != nil:
				want := math.NaN()
				if q := r.Quantities[f.Name]; q != nil {
					want = q.Value
				}
				if got := f.Quantity.FromBase(c.Of(f.Term)); !math.IsNaN(want) && math.Abs(got-want) > 2e-9*max(1, math.Abs(want)) || math.IsNaN(want) != math.IsNaN(got) {
					note("%s quantity %s: %v, not %v", side, f.Name, got, want)
				}
			default:
				want := cell.Unknown
				if b := r.Findings[x.Facts[i].Name]; b != nil {
					want = map[bool]cell.Truth{true: cell.Yes, false: cell.No}[*b]
				}
				if got := c.Truth[f.Node]; got != want {
					note("%s finding %s: %v, not %v", side, f.Name, got, want)
				}
			}
		}
		for i, rule := range x.Rules {
			if rule.Limb == (side != "") {
				if got, want := x.State(c, i), r.Rules[rule.Name].State; got != want {
					note("%s rule %s: %s, not %s", side, rule.Name, got, want)
				}
			}
		}
		for _, k := range x.Cautions {
			if k.Limb != (side != "") {
				continue
			}
			want := cell.No
			for _, f := range r.Cautions {
				if f.Name == k.Name && f.State == reason.Fired {
					want = cell.Yes
				}
			}
			if got := c.Truth[k.Node]; got != cell.Unknown && got != want { // what is unknown may stand whatever is missing
				note("%s caution %s: %v, not %v", side, k.Name, got, want)
			}
		}
		for i, topic := range x.Topics {
			if (topic.Of == vocab.Limb) != (side != "") {
				continue
			}
			want := r.Choices[topic.Name]
			if want.Whatever { // not what is known to be in force decides
				continue
			}
			on := limbs
			if side != "" {
				on = []*cell.Case{c}
			}
			got := x.Decide(i, on...)
			if got.Status != want.Status || got.Status == reason.Settled && fmt.Sprint(value(topic, got)) != fmt.Sprint(want.Value) ||
				got.Status == reason.IsOpen && !topic.Numeric() && fmt.Sprint(level(topic, got)) != fmt.Sprint(want.Among) {
				note("%s %s: %v, not %s %v", side, topic.Name, got, want.Status, want.Value)
			}
		}
	}
	slices.Sort(out)
	return out
}

func value(t *cell.Topic, v reason.Verdict) any {
	if t.Numeric() {
		return v.Lo
	}
	return level(t, v)[0]
}

func level(t *cell.Topic, v reason.Verdict) (out []string) {
	for i, o := range t.Options {
		if v.Mask>>i&1 == 1 {
			out = append(out, o)
		}
	}
	return out
}

// A drawn ruleset of every construct is the same in cells, on drawn assessments.
func TestCellsAgreeWithReason(t *testing.T) {
	for seed := range uint64(150) {
		s := celltest.Draw(celltest.Seeded(seed), celltest.Small())
		x := newComparison(t, s.Engine(t))
		d := celltest.Seeded(seed + 1<<32)
		for range 12 {
			a := s.Assessment(d)
			if diff := x.differences(a); diff != nil {
				doc, _ := a.JSON()
				t.Fatalf("seed %d:\n%s\n%s\n%v", seed, s, doc, diff)
			}
		}
	}
}

// The rulesets that come with the program are the same in cells on their worked cases, whole and with some of what is
// recorded left out.
func TestRulesetsAgree(t *testing.T) {
	lib := ruleset.Library{Embedded: rulesets.FS}
	r := rand.New(rand.NewPCG(1, 2))
	for _, name := range []string{"demo_clinic", "stroke_afo", "spastic_gait_afo", "calf_weakness_afo", "flaccid_drop_foot_afo", "hereditary_neuropathy_afo", "composite_design", "limb_safety"} {
		rs, diags := lib.Ruleset(name)
		if diags.HasErrors() {
			t.Fatal(diags.Text())
		}
		e, err := reason.New(rs)
		if err != nil {
			t.Fatal(err)
		}
		x := newComparison(t, e)
		if len(x.Unclear) > 0 {
			t.Errorf("%s: %v", name, x.Unclear)
		}
		for i, k := range rs.Cases {
			if i%3 > 0 { // reason is slow where much is missing
				continue
			}
			a, diags := assess.Given(k.Given, rs.Vocabulary)
			if diags.HasErrors() {
				t.Fatal(diags.Text())
			}
			rounds := 1 + max(0, r.IntN(12)-10) // what is recorded in part takes reason long
			for round := range rounds {
				if diff := x.differences(a); diff != nil {
					t.Errorf("%s, %s (%d): %v", name, k.Name, round, diff)
				}
				for _, group := range []map[string]*assess.Entry{a.Person, a.Left, a.Right} {
					for m := range group {
						if r.IntN(5) == 0 {
							delete(group, m)
						}
					}
				}
			}
		}
	}
}
