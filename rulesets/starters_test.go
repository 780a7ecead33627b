package rulesets_test

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"crus/engine/assess"
	"crus/engine/cases"
	"crus/engine/reason"
	"crus/engine/render"
	"crus/engine/ruleset"
	"crus/rulesets"
)

// today is a day on which no ruleset is past its review date.
var today = time.Date(2026, 12, 1, 0, 0, 0, 0, time.UTC)

// starters reads every ruleset that comes with the program.
func starters(t testing.TB) []*reason.Engine {
	t.Helper()
	lib := ruleset.Library{Embedded: rulesets.FS}
	var out []*reason.Engine
	for _, l := range lib.List() {
		if l.Kind != "ruleset" {
			continue
		}
		rs, diags := lib.Ruleset(l.Name)
		if rs == nil {
			t.Fatal(diags.Text())
		}
		e, err := reason.New(rs)
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, e)
	}
	if len(out) < 9 {
		t.Fatalf("only %d rulesets come with the program", len(out))
	}
	return out
}

// demonstrations show what the language can do; the others are what a clinic can start from.
var demonstrations = []string{"demo_clinic", "demo_safety"}

// Every worked case passes; every rule and caution is in force in one and did not fire in another; every
// condition is shown both ways, and every boundary has a case on it and on either side.
func TestWorkedCasesShowEverything(t *testing.T) {
	total := 0
	for _, e := range starters(t) {
		if !slices.Contains(demonstrations, e.Ruleset().Name) {
			total += len(e.Ruleset().Cases)
		}
		t.Run(e.Ruleset().Name, func(t *testing.T) {
			t.Parallel()
			allPass(t, e)
			if !slices.Contains(demonstrations, e.Ruleset().Name) {
				firesAndIsSilent(t, e)
			}
		})
	}
	if total < 150 {
		t.Errorf("there are only %d worked cases", total)
	}
}

func allPass(t *testing.T, e *reason.Engine) {
	t.Helper()
	report, diags := cases.Run(e, today)
	if report == nil {
		t.Fatal(diags.Text())
	}
	for _, c := range report.Cases {
		for _, f := range c.Failures {
			t.Errorf("%s: %s: %s: expected %s, got %s", f.Place, c.Name, f.What, f.Expected, f.Got)
		}
	}
	if slices.Contains(demonstrations, e.Ruleset().Name) {
		return
	}
	for _, c := range report.Unshown {
		t.Errorf("%s: no case shows both ways: %s", c.Place, c.Text)
	}
	for _, b := range report.Boundaries {
		t.Errorf("%s: no case stands everywhere about %s", b.Place, b.Text)
	}
}

func firesAndIsSilent(t *testing.T, e *reason.Engine) {
	t.Helper()
	rs := e.Ruleset()
	fires, silent := map[string]bool{}, map[string]bool{}
	for _, c := range rs.Cases {
		a, diags := assess.Given(c.Given, rs.Vocabulary)
		if diags.HasErrors() {
			t.Fatal(diags.Text())
		}
		for _, r := range results(e.Advise(a, today)) {
			for name, x := range r.Rules {
				fires[name] = fires[name] || x.State == reason.Fired
				silent[name] = silent[name] || x.State == reason.DidNotFire
			}
			named := map[string]bool{}
			for _, x := range r.Cautions {
				named[x.Name] = true
				fires[x.Name] = fires[x.Name] || x.State == reason.Fired
			}
			for name := range r.Traces {
				if own, ok := strings.CutPrefix(name, "caution."); ok && !named[own] {
					silent[own] = true
				}
			}
		}
	}
	check := func(part *ruleset.Part, name string) {
		switch {
		case !part.Root:
		case !fires[name]:
			t.Errorf("%s: %s is in force in no worked case", rs.Name, name)
		case !silent[name]:
			t.Errorf("%s: %s is silent in no worked case", rs.Name, name)
		}
	}
	for _, r := range rs.Rules {
		check(r.Part, r.Name)
	}
	for _, c := range rs.Cautions {
		check(c.Part, c.Name)
	}
}

// A figure from memory or from practice is no published one: whatever a rule cites as published was read, or
// was read in a work that reports it.
func TestPublishedMeansRead(t *testing.T) {
	for _, e := range starters(t) {
		if slices.Contains(demonstrations, e.Ruleset().Name) {
			continue
		}
		for _, r := range render.EvidenceOf(e.Ruleset()).Rests {
			if r.Basis == "published" && r.Standing != "read" && r.Standing != "second_hand" {
				t.Errorf("%s: %s %s is published, and stands %s: %v", e.Ruleset().Name, r.Kind, r.Name, r.Standing, r.Cites)
			}
		}
	}
}

// Every starter ruleset has a page for those who adopt it, and links on pages lead somewhere.
func TestEveryRulesetHasItsPage(t *testing.T) {
	link := regexp.MustCompile(`\]\(([^)#:]+)(?:#[^)]*)?\)`)
	for _, e := range starters(t) {
		name := e.Ruleset().Name
		if slices.Contains(demonstrations, name) {
			continue
		}
		path := filepath.Join("..", "docs", "rulesets", name+".md")
		src, err := os.ReadFile(path)
		if err != nil {
			t.Errorf("%s has no page: %v", name, err)
			continue
		}
		for _, m := range link.FindAllStringSubmatch(string(src), -1) {
			if _, err := os.Stat(filepath.Join(filepath.Dir(path), m[1])); err != nil {
				t.Errorf("%s: the link to %s leads nowhere", path, m[1])
			}
		}
	}
}
