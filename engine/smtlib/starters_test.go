package smtlib_test

import (
	"slices"
	"testing"

	"crus/engine/cell"
	"crus/engine/prove"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/rulesets"
)

// z3 agrees with what prove says of faults in rulesets that come with the program, with formulas of biomechanics left free.
func TestStartersAgreeWithZ3(t *testing.T) {
	t.Parallel()
	for _, name := range []string{"demo_clinic", "limb_safety", "composite_design"} {
		rs, diags := ruleset.Library{Embedded: rulesets.FS}.Ruleset(name)
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
		r := prove.Prove(t.Context(), s, prove.Options{})
		r.Verdicts = slices.DeleteFunc(r.Verdicts, func(v *prove.Verdict) bool { return !v.Kind.Fault() })
		got := answers(t, written(t, s, r)) // z3 itself holds each answer against prove's
		t.Logf("%s: %d questions", name, len(got))
	}
}
