package render

import (
	"bytes"
	"fmt"
	"testing"

	"crus/engine/cases"
	"crus/engine/reason"
)

// report is one on worked cases that has something of everything.
func report() *cases.Report {
	r := &cases.Report{Ruleset: "small", Version: "1.0.0", Passed: 1, Failed: 1, Shown: 3, BoundariesShown: 2,
		Cases: []cases.Case{{Name: "heel down", Passed: true}, {Name: "heel up", Place: "small/cases.hcl:12:1", Failures: []cases.Failure{{
			Of: "left", What: "choice shell", Expected: "anterior", Got: "open: anterior, posterior", Place: "small/cases.hcl:20:5",
			Excerpt: "  20 |   choices = { shell = \"anterior\" }\n     |                       ^^^^^^^^^^\n"}}}},
		Unshown: []cases.Condition{
			{Condition: reason.Condition{Of: "rule.stiff", Text: "limb.tone >= tone('2')"}, True: true},
			{Condition: reason.Condition{Of: "rule.soft", Text: "limb.tone <= tone('2')"}},
		},
		Boundaries: []cases.Boundary{
			{Of: "rule.stiff", Text: "limb.tone >= 2", Place: "small/rules.hcl:8:15", Not: []string{"on", "above"}},
			{Of: "rule.soft", Text: "limb.ankle_dorsiflexion_knee_extended <= 5°", Place: "small/rules_of_the_foot.hcl:108:15", Not: []string{"below"}},
		}}
	for i := range 12 {
		r.Boundaries = append(r.Boundaries, cases.Boundary{Of: "caution.x", Text: fmt.Sprintf("person.age < %d years", i+1), Place: fmt.Sprintf("small/cautions.hcl:%d:9", i+1), Not: []string{"on"}})
	}
	return r
}

func TestCasesGolden(t *testing.T) {
	shown := report()
	shown.Unshown, shown.Boundaries = nil, nil
	for _, x := range []struct {
		name string
		r    *cases.Report
		opt  CasesOptions
	}{
		{"cases.txt", report(), CasesOptions{}},
		{"cases_all.txt", report(), CasesOptions{All: true}},
		{"cases_shown.txt", shown, CasesOptions{}},
		{"cases_none.txt", &cases.Report{Ruleset: "empty", Version: "0.1.0"}, CasesOptions{}},
	} {
		var b bytes.Buffer
		if err := Cases(&b, x.r, Plain, x.opt); err != nil {
			t.Fatal(err)
		}
		golden(t, x.name, b.Bytes())
	}
	if err := Cases(failing{}, report(), Plain, CasesOptions{}); err == nil {
		t.Error("an error of the writer is lost")
	}
}
