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
	r.Coverage = &cases.Coverage{Conditions: 2, Questions: 10, Unique: 3,
		Masking: []cases.Question{{Of: "finding.tight", Text: "limb.tone >= tone('3')"}}, Unsure: []cases.Question{{Of: "finding.loose", Text: "finding.tight"}},
		Never: []cases.Question{{Of: "finding.tight", Text: "limb.tone >= tone('1')", Note: "No assessment within the plausible ranges makes it decide."}},
		Unshown: []cases.Question{
			{Of: "rule.stiff", Text: "limb.tone >= tone('2')", Lacks: "no", Ready: "case \"a\" {\n}\n"},
			{Of: "rule.stiff", Text: "[limb.ankle_dorsiflexion_knee_extended, limb.ankle_dorsiflexion_knee_flexed].exists(x, x < deg(0))", Lacks: "both", Ready: "case \"b\" {\n}\n"},
			{Of: "rule.soft", Field: "unless", Text: "limb.tone <= tone('2')", Lacks: "pair", Ready: "case \"c\" {\n}\n"},
			{Of: "caution.x", Text: "person.age < years(1)", Lacks: "yes", Note: "No assessment was found that shows it."},
		}}
	for i := range 12 {
		r.Boundaries = append(r.Boundaries, cases.Boundary{Of: "caution.x", Text: fmt.Sprintf("person.age < %d years", i+1), Place: fmt.Sprintf("small/cautions.hcl:%d:9", i+1), Not: []string{"on"}})
	}
	return r
}

func TestCasesGolden(t *testing.T) {
	shown := report()
	shown.Unshown, shown.Boundaries = nil, nil
	shown.Coverage = &cases.Coverage{Questions: 4, Unique: 4}
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
	var b bytes.Buffer
	if err := Ready(&b, report()); err != nil {
		t.Fatal(err)
	}
	golden(t, "cases_ready.hcl", b.Bytes())
	if err := Cases(failing{}, report(), Plain, CasesOptions{}); err == nil {
		t.Error("an error of the writer is lost")
	}
}
