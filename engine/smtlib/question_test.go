package smtlib_test

import (
	"flag"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"crus/engine/cell"
	"crus/engine/prove"
	"crus/engine/reason"
	"crus/engine/ruleset"
)

const vocabulary = `
vocabulary "small" {
  title   = "Small"
  version = "1.0.0"
}
scale "power" { grades = ["0", "1", "2", "3"] }
measure "height" {
  of          = "limb"
  label       = "Height"
  unit        = "cm"
  plausible   = [10, 20]
  error_basis = "None is published."
}
measure "depth" {
  of          = "limb"
  label       = "Depth"
  unit        = "mm"
  plausible   = [0, 100]
  error_basis = "None is published."
}
measure "calf_power" {
  of          = "limb"
  label       = "Calf power"
  scale       = "power"
  error_basis = "None is published."
}
measure "skin" {
  of          = "limb"
  label       = "Skin"
  one_of      = ["intact", "red", "broken"]
  error_basis = "None is published."
}
measure "walks" {
  of          = "person"
  label       = "Walks"
  yes_no      = true
  error_basis = "None is published."
}
measure "falls" {
  of          = "person"
  label       = "Falls"
  count       = true
  plausible   = [0, 9]
  error_basis = "None is published."
}
measure "injection" {
  of    = "person"
  label = "Injection"
  date  = true
  never = true
}
choice "raise" {
  label    = "Raise"
  unit     = "mm"
  between  = [0, 60]
  rounding = 5
}
choice "side" {
  label   = "Side"
  options = ["front", "back"]
}
choice "visit" {
  of      = "person"
  label   = "Visit"
  options = ["soon", "later"]
  default = "later"
}
`

// spaceOf makes the cells of a ruleset that is written without its header.
func spaceOf(t *testing.T, rules string) *cell.Space {
	t.Helper()
	header := "ruleset \"r\" {\n  title = \"R\"\n  version = \"1.0.0\"\n  status = \"active\"\n  vocabulary = \"small@1\"\n}\n"
	files := fstest.MapFS{"small/v.hcl": {Data: []byte(vocabulary)}, "r/r.hcl": {Data: []byte(header + rules)}}
	rs, diags := ruleset.Library{Embedded: files}.Ruleset("r")
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	s, err := cell.New(e)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// rule writes a rule with one piece of advice.
func rule(name, when, strength, advice string) string {
	return `rule "` + name + `" {` + "\n  when = \"" + when + "\"\n  because = \"So.\"\n  strength = \"" + strength + "\"\n  basis = \"common_practice\"\n  " + advice + "\n}\n"
}

func aim(mm string) string     { return `advise "raise" { aim = "mm(` + mm + `)" }` }
func atLeast(mm string) string { return `advise "raise" { at_least = "mm(` + mm + `)" }` }
func atMost(mm string) string  { return `advise "raise" { at_most = "mm(` + mm + `)" }` }
func favour(o string) string   { return `advise "side" { favour = "` + o + `" }` }

// What z3 must say of questions whose answer can be seen at a glance.
func TestQuestions(t *testing.T) {
	t.Parallel()
	always, deep := "limb.depth >= mm(0)", "limb.depth > mm(50)"
	for _, x := range []struct {
		what, rules string
		kind        prove.Kind
		name, want  string
	}{
		{"a limit that is just met", rule("a", always, "strong", atLeast("20")) + rule("b", always, "strong", atMost("20")), prove.Contradiction, "raise", "unsat"},
		{"a limit that is just missed", rule("a", always, "strong", atLeast("20.1")) + rule("b", always, "strong", atMost("20")), prove.Contradiction, "raise", "sat"},
		{"a limit beyond the choice's own", rule("a", always, "strong", atLeast("61")), prove.Contradiction, "raise", "sat"},
		{"aims within the rounding", rule("a", always, "strong", aim("10")) + rule("b", always, "strong", aim("15")), prove.Tie, "raise", "unsat"},
		{"aims beyond the rounding", rule("a", always, "strong", aim("10")) + rule("b", always, "strong", aim("15.1")), prove.Tie, "raise", "sat"},
		{"a strong aim stands before a conditional one", rule("a", always, "strong", aim("10")) + rule("b", always, "conditional", aim("40")), prove.Tie, "raise", "unsat"},
		{"aims that a limit brings together", rule("a", always, "strong", aim("10")) + rule("b", always, "strong", aim("40")) + rule("c", always, "strong", atMost("12")), prove.Tie, "raise", "unsat"},
		{"an interval", rule("a", always, "strong", atLeast("10")), prove.Open, "raise", "sat"},
		{"an interval of one point", rule("a", always, "strong", atLeast("60")), prove.Open, "raise", "unsat"},
		{"an aim that is rounded away", rule("a", always, "strong", aim("10")) + rule("b", always, "strong", aim("12")), prove.AddsNothing, "rule.b", "unsat"},
		{"an aim that is rounded up", rule("a", always, "strong", aim("10")) + rule("b", always, "strong", aim("15")), prove.AddsNothing, "rule.b", "sat"},
		{"a number of which nothing is said", rule("a", deep, "strong", aim("10")), prove.Gap, "raise", "sat"},
		{"a number of which something is always said", rule("a", always, "strong", aim("10")), prove.Gap, "raise", "unsat"},
		{"another unit", rule("a", "limb.height < mm(100)", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"the end of a range", rule("a", "limb.height <= mm(100)", "strong", aim("10")), prove.NeverFires, "rule.a", "sat"},
		{"a sum that can't be reached", rule("a", "limb.height + limb.depth > mm(300)", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"a sum that is just reached", rule("a", "limb.height + limb.depth >= mm(300)", "strong", aim("10")), prove.NeverFires, "rule.a", "sat"},
		{"a multiple less another", rule("a", "limb.height * 0.5 - limb.depth * 2 > mm(100)", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"an absolute value", rule("a", "abs(limb.depth - mm(60)) > mm(60)", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"the lesser of two", rule("a", "least(limb.depth, limb.height) > mm(100)", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"a number by a condition", rule("a", "(person.walks ? limb.depth : mm(0)) > mm(50) && !person.walks", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"grades in order", rule("a", "limb.calf_power > power('2') && limb.calf_power < power('3')", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"two grades compared", rule("a", "limb.calf_power < other.calf_power && limb.calf_power == power('3')", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"two options compared", rule("a", "limb.skin == other.skin && limb.skin == 'red' && other.skin != 'red'", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"a count between two", rule("a", "person.falls > 3 && person.falls < 4", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"days are whole", rule("a", "since(person.injection) > days(3) && since(person.injection) < days(4)", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"half days", rule("a", "since(person.injection) > days(3.5) && since(person.injection) < days(4.5)", "strong", aim("10")), prove.NeverFires, "rule.a", "sat"},
		{"a day is just past", rule("a", "since(person.injection) >= days(3) && since(person.injection) <= days(3)", "strong", aim("10")), prove.NeverFires, "rule.a", "sat"},
		{"longer than any life", rule("a", "since(person.injection) > years(130)", "strong", aim("10")), prove.NeverFires, "rule.a", "sat"},
		{"nothing is worked out of never", rule("a", "since(person.injection) - days(1) > years(130)", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"a missing measure is no answer", rule("a", "!recorded(limb.depth) && limb.depth > mm(5)", "strong", aim("10")), prove.NeverFires, "rule.a", "unsat"},
		{"a measure that may be missing", rule("a", "!recorded(limb.depth)", "strong", aim("10")), prove.NeverFires, "rule.a", "sat"},
		{"division by what may be nothing", rule("a", "limb.depth / limb.depth == ratio(1)", "strong", aim("10")), prove.NeverFires, "rule.a", "sat"},
		{"two of three for the front", rule("a", always, "strong", favour("front")) + rule("b", always, "strong", favour("front")) + rule("c", deep, "strong", favour("back")), prove.Tie, "side", "unsat"},
		{"one strong against two conditional", rule("a", always, "strong", favour("front")) + rule("b", always, "conditional", favour("back")) + rule("c", deep, "conditional", favour("back")), prove.Tie, "side", "unsat"},
		{"one against one", rule("a", always, "strong", favour("front")) + rule("b", deep, "strong", favour("back")), prove.Tie, "side", "sat"},
		{"limits alone", rule("a", always, "strong", `advise "side" { never = "front" }`), prove.Open, "side", "unsat"},
		{"no option is left", rule("a", always, "strong", `advise "side" { only = "front" }`) + rule("b", deep, "strong", `advise "side" { never = "front" }`), prove.Contradiction, "side", "sat"},
		{"what the default says anyway", rule("a", deep, "strong", `advise "visit" { favour = "later" }`), prove.AddsNothing, "rule.a", "unsat"},
		{"something else than the default", rule("a", deep, "strong", `advise "visit" { favour = "soon" }`), prove.AddsNothing, "rule.a", "sat"},
		{"one limb against the other", rule("a", deep, "strong", `advise "visit" { only = "soon" }`) + rule("b", "!("+deep+")", "strong", `advise "visit" { only = "later" }`), prove.Contradiction, "visit", "sat"},
		{"the person has no second view", rule("a", "person.walks", "strong", `advise "visit" { only = "soon" }`) + rule("b", "!person.walks", "strong", `advise "visit" { only = "later" }`), prove.Contradiction, "visit", "unsat"},
		{"the same limb seen from the other", rule("a", "limb.depth > other.depth && other.depth > limb.depth", "strong", `advise "visit" { only = "soon" }`), prove.NeverFires, "rule.a", "unsat"},
		{"each limb is deeper than the other", rule("a", "limb.depth > other.depth", "strong", `advise "visit" { only = "soon" }`) + rule("b", "other.depth > limb.depth", "strong", `advise "visit" { never = "soon" }`), prove.Contradiction, "visit", "sat"},
	} {
		r := &prove.Report{Verdicts: []*prove.Verdict{{Kind: x.kind, Name: x.name, Status: prove.Undecided}}}
		for _, got := range answers(t, written(t, spaceOf(t, x.rules), r)) {
			if got != x.want {
				t.Errorf("%s, %s of %s: %s, not %s", x.what, x.kind, x.name, got, x.want)
			}
		}
	}
}

var update = flag.Bool("update", false, "write the golden file anew")

// The file as a person reads it: a measure, a finding that may be unknown, a rule that another overrides, a choice of the
// person that rests on both limbs.
func TestWritten(t *testing.T) {
	s := spaceOf(t, `finding "deep" { holds = "limb.depth > mm(50) || recorded(limb.calf_power) && limb.calf_power < power('2')" }`+"\n"+
		rule("later", "finding.deep", "strong", `advise "visit" { favour = "later" }`)+
		strings.Replace(rule("soon", "since(person.injection) < weeks(6) && limb.height + limb.depth >= mm(200)", "strong", `advise "visit" { only = "soon" }`), "because", "overrides = [\"later\"]\n  because", 1))
	got := written(t, s, prove.Prove(t.Context(), s, prove.Options{}))
	if *update {
		if err := os.WriteFile("testdata/written.smt2", []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile("testdata/written.smt2")
	if err != nil || string(want) != got {
		t.Errorf("testdata/written.smt2 differs (%v); write it with: go test ./engine/smtlib -update, and look at git diff", err)
	}
	answers(t, got)
}

// An answer that is not prove's is found by z3 itself.
func TestAWrongStatusIsNoticed(t *testing.T) {
	s := spaceOf(t, rule("a", "limb.depth > mm(50)", "strong", aim("10")))
	v := &prove.Verdict{Kind: prove.Gap, Name: "raise", Status: prove.Absent}
	if printed := solve(t, []byte(written(t, s, &prove.Report{Verdicts: []*prove.Verdict{v}}))); !strings.Contains(printed, "error") || !strings.Contains(printed, "unsat") {
		t.Errorf("z3 does not notice it:\n%s", printed)
	}
}
