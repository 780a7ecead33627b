package reason_test

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"crus/engine/reason"
)

// results gives the results of an outcome by "person", "left", "right".
func results(o *reason.Outcome) map[string]*reason.Result {
	out := map[string]*reason.Result{"person": o.Person}
	for side, r := range o.Limbs {
		out[side] = r
	}
	return out
}

// advised writes a choice as the naive reading does.
func advised(c *reason.Choice) string {
	if c.Status == reason.Conflict {
		return c.Status
	}
	return strings.TrimSuffix(said(c), " provisional")
}

// alike takes a default and what a rule settles for one.
func alike(advice string) string { return strings.Replace(advice, "default ", "settled ", 1) }

func TestAgreesWithTheNaiveReading(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		d := newDrawing(rt, false)
		b := d.book()
		e := engine(t, b.blocks()...)
		for range 4 {
			r := d.record()
			o := r.outcome(t, e)
			for _, w := range r.worlds() {
				for i, want := range b.states(w) {
					x := o.Limbs[w.side].Rules[fmt.Sprintf("r%d", i)]
					if x == nil {
						x = o.Person.Rules[fmt.Sprintf("r%d", i)]
					}
					if x.State != want {
						rt.Fatalf("%v: rule r%d is %s, not %s", r, i, x.State, want)
					}
				}
				for i, want := range w.findings {
					name := fmt.Sprintf("f%d", i)
					got, limb := o.Limbs[w.side].Findings[name]
					if !limb {
						got = o.Person.Findings[name]
					}
					if (got == nil) != (want == maybe) || got != nil && *got != (want == yes) {
						rt.Fatalf("%v: finding %s is %v, not %v", r, name, got, want)
					}
				}
				for i, c := range b.cautions {
					d.caution(rt, o, w, fmt.Sprintf("c%d", i), c.eval(w))
				}
			}
			for name, c := range ordered(choices()) {
				if c.person {
					c := o.Person.Choices[name]
					if got, want := advised(c), b.decide(name, r.worlds()); got != want && !c.Whatever {
						rt.Fatalf("%v: %s is %s, not %s", r, name, got, want)
					}
					continue
				}
				for _, w := range r.worlds() {
					c := o.Limbs[w.side].Choices[name]
					if got, want := advised(c), b.decide(name, []*world{w}); got != want && !c.Whatever {
						rt.Fatalf("%v: %s %s is %s, not %s", r, w.side, name, got, want)
					}
				}
			}
		}
	})
}

// caution checks a caution against its truth; where that is unknown it may still stand either way.
func (d *drawing) caution(rt *rapid.T, o *reason.Outcome, w *world, name string, want tri) {
	got := reason.DidNotFire
	for _, r := range []*reason.Result{o.Person, o.Limbs[w.side]} {
		for _, c := range r.Cautions {
			if c.Name == name {
				got = c.State
			}
		}
	}
	if want == yes && got != reason.Fired || want == no && got == reason.Fired {
		rt.Fatalf("caution %s is %s, not %v", name, got, want)
	}
}

// What is not provisional is the same however the assessment is completed, in part or in whole. Where
// a rule asks what is recorded, a part is not on the way to the whole: then a result may look different
// as long as it is provisional.
func TestWhatIsNotProvisionalStands(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		d := newDrawing(rt, rapid.Bool().Draw(rt, "exact"))
		blocks := d.book().blocks()
		e := engine(t, blocks...)
		asks := strings.Contains(strings.Join(blocks, ""), "recorded(")
		r := d.record()
		missing := d.missing(r)
		if len(missing) == 0 {
			return
		}
		before := results(r.outcome(t, e))
		for range 6 {
			some := missing
			if d.chance(50) {
				some = []string{one(d, missing)}
			}
			more := r.with(d.completion(some))
			strict := !asks || len(d.missing(more)) == 0
			for of, x := range ordered(results(more.outcome(t, e))) {
				for name, c := range ordered(x.Choices) {
					old := before[of].Choices[name]
					if !old.Provisional && (strict && c.Provisional || (strict || !c.Provisional) && alike(advised(c)) != alike(advised(old))) {
						rt.Fatalf("%v: %s %s stands as %s; with %v it is %s", r, of, name, said(old), more.values, said(c))
					}
				}
				was, is := cautionStates(before[of]), cautionStates(x)
				for name, state := range ordered(was) {
					if !strings.HasSuffix(state, " provisional") && is[name] != state && (strict || !strings.HasSuffix(is[name], " provisional")) {
						rt.Fatalf("%v: %s caution %s stands as %s; with %v it is %s", r, of, name, state, more.values, is[name])
					}
				}
			}
		}
	})
}

// cautionStates gives the state of every caution. Of one that does not fire, but could, it is the list
// of what is missing that says so.
func cautionStates(r *reason.Result) map[string]string {
	out := map[string]string{}
	for _, s := range strings.Split(cautionsOf(r), ", ") {
		if name, state, ok := strings.Cut(s, " "); ok {
			out[name] = state
		}
	}
	for path := range r.Traces {
		if name, ok := strings.CutPrefix(path, "caution."); ok {
			out[name] = reason.DidNotFire
			if slices.ContainsFunc(r.Missing, func(m *reason.Missing) bool { return slices.Contains(m.Decides, path) }) {
				out[name] += " provisional"
			}
		}
	}
	return out
}

// A provisional choice whose completions were all tried can really become each thing that it could
// become, and what is named for it is enough.
func TestCouldBecomeIsTrue(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		d := newDrawing(rt, true)
		e := engine(t, d.book().blocks()...)
		r := d.record()
		missing := d.missing(r)
		for of, x := range ordered(results(r.outcome(t, e))) {
			for name, c := range ordered(x.Choices) {
				if !c.Provisional {
					continue
				}
				if !c.Explored.Complete {
					if n, err := strconv.Atoi(c.Explored.Of); err != nil || n <= 4096 {
						rt.Fatalf("%v: %s %s was not explored completely: %+v", r, of, name, c.Explored)
					}
					continue
				}
				if len(c.CouldBecome) == 0 {
					rt.Fatalf("%v: %s %s is provisional, and nothing else can become of it", r, of, name)
				}
				for _, p := range c.CouldBecome {
					for range 3 {
						more := d.completion(missing)
						for _, cell := range p.When {
							place := placeOf(cell.Measure, of)
							more[place] = one(d, within(rt, aboutOf(place), cell.Is))
						}
						got := results(r.with(more).outcome(t, e))[of].Choices[name]
						if want := claimed(p); alike(advised(got)) != alike(want) || alike(advised(got)) == alike(advised(c)) {
							rt.Fatalf("%v: %s %s is %s and should become %s if %s; with %v it is %s", r, of, name, said(c), want, p.If, more, said(got))
						}
					}
				}
			}
		}
	})
}

// claimed writes a possibility as advised() writes a choice.
func claimed(p reason.Could) string {
	switch v := p.Value.(type) {
	case nil:
		return p.Status
	case []string:
		return p.Status + " " + strings.Join(v, " ")
	case [2]float64:
		return fmt.Sprintf("%s %g..%g", p.Status, v[0], v[1])
	}
	return fmt.Sprint(p.Status, " ", p.Value)
}

// placeOf gives the place of a measure as a result of "left", "right" or "person" calls it.
func placeOf(measure, of string) string {
	who, name, _ := strings.Cut(measure, ".")
	switch who {
	case "limb":
		who = of
	case "other":
		who = map[string]string{"left": "right", "right": "left"}[of]
	}
	return who + "." + name
}

// The rules that are named in a conflict can't hold together, and no smaller set of rules can't.
func TestConflictIsSmallest(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		d := newDrawing(rt, false)
		b := d.book()
		for i := range b.rules { // so that conflicts are common
			for j := range b.rules[i].says {
				s := &b.rules[i].says[j]
				if s.options != nil {
					s.choice, s.verb, s.options = "trim", one(d, []string{"only", "never", "at_least", "at_most"}), []string{one(d, choices()["trim"].options)}
				} else if s.choice == "height" && s.verb == "aim" {
					s.verb = "at_most"
				}
			}
			seen := map[string]bool{}
			b.rules[i].says = slices.DeleteFunc(b.rules[i].says, func(x says) bool { // one block a choice
				again := seen[x.choice]
				seen[x.choice] = true
				return again
			})
			b.rules[i].when = &expr{op: "not", kids: []*expr{b.rules[i].when}}
		}
		e := engine(t, b.blocks()...)
		r := d.record()
		for of, x := range ordered(results(r.outcome(t, e))) {
			for name, c := range ordered(x.Choices) {
				if c.Status != reason.Conflict || c.Whatever { // of the second kind, what is in force says nothing
					continue
				}
				limbs := r.worlds()
				if of != "person" {
					limbs = slices.DeleteFunc(limbs, func(w *world) bool { return w.side != of })
				}
				voices := b.heard(name, limbs)
				if got, want := len(c.Conflict), smallestConflict(choices()[name], voices, len(b.rules)); got != want || !conflicts(choices()[name], voices, c.Conflict) {
					rt.Fatalf("%v: %s %s: conflict of %v; a smallest set has %d", r, of, name, c.Conflict, want)
				}
			}
		}
	})
}

func conflicts(c picks, voices []voice, rules []string) bool {
	var some []voice
	for _, v := range voices {
		if slices.Contains(rules, fmt.Sprintf("r%d", v.rule)) {
			some = append(some, v)
		}
	}
	if c.options != nil {
		return len(remaining(c.options, some)) == 0
	}
	lo, hi := span(c, some)
	return lo > hi
}

// smallestConflict tries every set of rules.
func smallestConflict(c picks, voices []voice, rules int) int {
	best := rules + 1
	for set := range 1 << rules {
		var names []string
		for i := range rules {
			if set>>i&1 == 1 {
				names = append(names, fmt.Sprintf("r%d", i))
			}
		}
		if len(names) < best && conflicts(c, voices, names) {
			best = len(names)
		}
	}
	return best
}

// placesOut matches what may differ between two orders of the same blocks.
func placesOut() *regexp.Regexp { return regexp.MustCompile(`"(place|digest)": "[^"]*"`) }

// The same ruleset and assessment give the same bytes; blocks in another order and in other files
// give the same but for places and digests.
func TestSameBytes(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		d := newDrawing(rt, rapid.Bool().Draw(rt, "exact"))
		blocks := d.book().blocks()
		r := d.record()
		e := engine(t, blocks...)
		first := toJSON(t, r.outcome(t, e))
		if second := toJSON(t, r.outcome(t, e)); first != second {
			rt.Fatal("two runs of one engine differ")
		}
		if second := toJSON(t, r.outcome(t, engine(t, blocks...))); first != second {
			rt.Fatal("two engines of one ruleset differ")
		}
		shuffled := rapid.Permutation(blocks).Draw(rt, "order")
		cut := d.number(0, len(shuffled), "cut")
		two := engineOf(t, folders{"main": header("main") + strings.Join(shuffled[:cut], ""), "main/more.hcl": strings.Join(shuffled[cut:], "")})
		out := placesOut()
		if a, b := out.ReplaceAllString(first, ""), out.ReplaceAllString(toJSON(t, r.outcome(t, two)), ""); a != b {
			rt.Fatal("another order of blocks and files gives another outcome")
		}
	})
}

// Left and right exchanged in the assessment are exchanged in the outcome.
func TestSidesAreAlike(t *testing.T) {
	word := regexp.MustCompile(`\b(left|right)\b`)
	exchange := func(text string) string {
		return word.ReplaceAllStringFunc(text, func(w string) string { return map[string]string{"left": "right", "right": "left"}[w] })
	}
	rapid.Check(t, func(rt *rapid.T) {
		d := newDrawing(rt, rapid.Bool().Draw(rt, "exact"))
		e := engine(t, d.book().blocks()...)
		r := d.record()
		mirror := record{values: map[string]float64{}}
		for p, v := range r.values {
			mirror.values[exchange(p)] = v
		}
		for _, s := range r.sides {
			mirror.sides = append(mirror.sides, exchange(s))
		}
		slices.Sort(mirror.sides)
		a, b := r.outcome(t, e), mirror.outcome(t, e)
		for side, x := range ordered(a.Limbs) {
			other := b.Limbs[exchange(side)]
			if got, want := exchange(toJSON(t, &reason.Outcome{Person: other})), toJSON(t, &reason.Outcome{Person: x}); got != want {
				rt.Fatalf("%v: the %s limb differs from the other one of the mirrored assessment", r, side)
			}
		}
		for name, c := range ordered(a.Person.Choices) {
			if got, want := said(b.Person.Choices[name]), said(c); got != want {
				rt.Fatalf("%v: %s is %s, and %s for the mirrored assessment", r, name, want, got)
			}
		}
	})
}
