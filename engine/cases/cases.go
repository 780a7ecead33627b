// Package cases runs a ruleset's worked cases: each is an assessment with what the ruleset is
// expected to say of it. It also tells which conditions no case has shown both ways, and on which
// side of which boundary no case stands.
//
//	report, diags := cases.Run(engine, today)
package cases

import (
	"fmt"
	"runtime"
	"slices"
	"sync"
	"time"

	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/whatif"
)

// Report is what running all cases gave. Its JSON names are stable.
type Report struct {
	Format  string      `json:"format"` // crus-cases/1
	Ruleset string      `json:"ruleset"`
	Version string      `json:"version"`
	Digest  string      `json:"digest"`
	Passed  int         `json:"passed"`
	Failed  int         `json:"failed"`
	Cases   []Case      `json:"cases"`
	Shown   int         `json:"conditions_shown_both_ways"`
	Unshown []Condition `json:"conditions_not_shown"`

	BoundariesShown int        `json:"boundaries_shown"` // a case stands on it and on either side
	Boundaries      []Boundary `json:"boundaries_not_shown"`

	Coverage *Coverage `json:"questions"`
}

// Case is one worked case and where it failed.
type Case struct {
	Name     string    `json:"name"`
	Place    string    `json:"place"`
	Passed   bool      `json:"passed"`
	Failures []Failure `json:"failures,omitempty"`
}

// Failure is one line of an expectation that did not hold.
type Failure struct {
	Of       string `json:"of"`   // left, right or person
	What     string `json:"what"` // choice x, finding x, quantity x, caution x, rule x
	Expected string `json:"expected"`
	Got      string `json:"got"`
	Place    string `json:"place"`
	Excerpt  string `json:"-"` // the place with its line and mark, for a terminal
}

// Condition is a yes/no part of the ruleset that no case has shown both ways.
type Condition struct {
	reason.Condition
	True  bool `json:"shown_true"`
	False bool `json:"shown_false"`
}

// Check reads every case and reports what can't be run: an assessment with errors, an expectation
// that can't be read or that names what is not there.
func Check(rs *ruleset.Ruleset) source.Diagnostics {
	var diags source.Diagnostics
	for _, c := range rs.Cases {
		_, ds := read(rs, c)
		diags = append(diags, ds...)
	}
	return diags.Sorted()
}

// read gives the assessment of a case.
func read(rs *ruleset.Ruleset, c *ruleset.Case) (*assess.Assessment, source.Diagnostics) {
	a, diags := assess.Given(c.Given, rs.Vocabulary)
	for _, x := range c.Expect {
		diags = append(diags, checkExpectation(rs, a, x)...)
	}
	if diags.HasErrors() {
		return nil, diags
	}
	a.ID = c.Name
	return a, diags
}

// Run runs all cases. With errors in any of them nothing is run.
func Run(e *reason.Engine, today time.Time) (*Report, source.Diagnostics) {
	rs := e.Ruleset()
	if diags := Check(rs); diags.HasErrors() {
		return nil, diags
	}
	w, err := whatif.New(e)
	if err != nil {
		return nil, source.Diagnostics{source.Errorf(rs.Where, "internal", "The ruleset can't be divided into cells: %v.", err)}
	}
	out := &Report{Format: "crus-cases/1", Ruleset: rs.Name, Version: rs.Version, Digest: rs.Digest, Cases: []Case{}, Unshown: []Condition{}}
	seen, stood := newShown(), newStood(rs)
	all, outcomes := advised(w, today)
	for i, c := range rs.Cases {
		a, o := all[i], outcomes[i]
		seen.outcome(o)
		stood.outcome(a, o)
		r := Case{Name: c.Name, Place: c.Where.String()}
		for _, x := range c.Expect {
			r.Failures = append(r.Failures, compare(rs, o, x)...)
		}
		if r.Passed = len(r.Failures) == 0; r.Passed {
			out.Passed++
		} else {
			out.Failed++
		}
		out.Cases = append(out.Cases, r)
	}
	for _, k := range e.Conditions() {
		s := seen.by[k.Place+" "+k.Text]
		if s.yes && s.no {
			out.Shown++
		} else {
			out.Unshown = append(out.Unshown, Condition{k, s.yes, s.no})
		}
	}
	out.Boundaries, out.BoundariesShown = stood.unshown()
	out.Coverage = cover(w.Space, all)
	return out, nil
}

// advised carries the ruleset out on all cases, on all cores. What is provisional is settled where a case expects
// something of it.
func advised(w *whatif.Advisor, today time.Time) ([]*assess.Assessment, []*reason.Outcome) {
	rs := w.Ruleset
	all, outcomes := make([]*assess.Assessment, len(rs.Cases)), make([]*reason.Outcome, len(rs.Cases))
	var work sync.WaitGroup
	next := make(chan int)
	for range runtime.GOMAXPROCS(0) {
		work.Go(func() {
			for i := range next {
				all[i], _ = read(rs, rs.Cases[i])
				outcomes[i] = w.Engine.Advise(all[i], today)
				if slices.ContainsFunc(rs.Cases[i].Expect, func(x *ruleset.Expectation) bool { return hangs(x, outcomes[i]) }) {
					w.Settle(outcomes[i], all[i], today)
				}
			}
		})
	}
	for i := range rs.Cases {
		next <- i
	}
	close(next)
	work.Wait()
	return all, outcomes
}

// hangs reports whether something is expected of a choice or caution that is provisional, and not all that is missing was
// tried.
func hangs(x *ruleset.Expectation, o *reason.Outcome) bool {
	r := o.Limbs[x.Of]
	if x.Of == "person" {
		r = o.Person
	}
	if r == nil {
		return false
	}
	open := func(provisional bool, e *reason.Explored) bool { return provisional && e != nil && !e.Complete }
	for _, c := range x.Choices {
		if y := r.Choices[c.Name]; y != nil && open(y.Provisional, y.Explored) {
			return true
		}
	}
	for _, t := range slices.Concat(x.Cautions, x.Silent) {
		if slices.ContainsFunc(r.Cautions, func(c *reason.Caution) bool { return c.Name == t.S && open(c.Provisional, c.Explored) }) {
			return true
		}
	}
	return false
}

// compare holds one expectation against an outcome.
func compare(rs *ruleset.Ruleset, o *reason.Outcome, x *ruleset.Expectation) []Failure {
	var out []Failure
	fail := func(what, expected, got string, where source.Range) {
		out = append(out, Failure{x.Of, what, expected, got, where.String(), source.Excerpt(where)})
	}
	if x.Applies != "" && x.Applies != o.Applies {
		fail("the ruleset", "applies: "+x.Applies, "applies: "+o.Applies, x.Where)
	}
	r := o.Person
	if x.Of != "person" {
		r = o.Limbs[x.Of]
	}
	if r == nil && x.Applies == "no" && o.Applies == "no" && !x.More() {
		return out
	}
	if r == nil {
		fail("the ruleset", "applies", "applies: "+o.Applies, x.Where)
		return out
	}
	for _, e := range x.Choices {
		want, _ := parseExpected(rs.Vocabulary.Choice(e.Name), e.Text)
		if got := r.Choices[e.Name]; !want.holds(got) {
			fail("choice "+e.Name, e.Text, describe(rs.Vocabulary.Choice(e.Name), got), e.Where)
		}
	}
	for _, e := range x.Findings {
		if got := findingWord(r.Findings[e.Name]); got != e.Text {
			fail("finding "+e.Name, e.Text, got, e.Where)
		}
	}
	for _, e := range x.Quantities {
		want, _ := parseQuantity(e.Text)
		if got := r.Quantities[e.Name]; !want.holds(got) {
			fail("quantity "+e.Name, e.Text, quantityWord(got), e.Where)
		}
	}
	for _, t := range x.Cautions {
		if got := stateOf(r, t.S); got != reason.Fired {
			fail("caution "+t.S, reason.Fired, got, t.All())
		}
	}
	for _, t := range x.Fires {
		if got := stateOf(r, t.S); got != reason.Fired {
			fail("rule "+t.S, reason.Fired, got, t.All())
		}
	}
	for _, t := range x.Silent {
		if got := stateOf(r, t.S); got == reason.Fired {
			fail(t.S, "silent", got, t.All())
		}
	}
	return out
}

// stateOf gives the state of a rule or caution of a result.
func stateOf(r *reason.Result, name string) string {
	if rule, ok := r.Rules[name]; ok {
		return rule.State
	}
	for _, c := range r.Cautions {
		if c.Name == name {
			return c.State
		}
	}
	return reason.DidNotFire
}

func findingWord(b *bool) string {
	if b == nil {
		return "unknown"
	}
	return fmt.Sprint(*b)
}
