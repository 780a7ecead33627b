package reason_test

import (
	"strings"
	"testing"
)

// What can't be worked out says why: in the rule, in the caution, and at the choice that hangs on it.
func TestFailuresSayWhy(t *testing.T) {
	divided := "limb.lift / limb.gap > ratio(1)"
	zero := "divided by zero"
	for _, x := range []struct {
		name, given string
		blocks      []string
		rule, why   string
		choice      bool // its choice says so too
	}{
		{"condition", "lift=4 gap=0", []string{rule("a", divided, "trim favour low")}, "a", zero, true},
		{"through a finding", "lift=4 gap=0", []string{finding("f", divided), rule("a", "finding.f", "trim favour low")}, "a", zero, true},
		{"formula", "lift=4 gap=0", []string{always("a", "height aim limb.lift * (limb.lift / limb.gap)")}, "a", zero, true},
		{"does not matter", "lift=4 gap=0 p=false", []string{rule("a", divided+" && limb.p", "trim favour low")}, "a", "", false},
		{"can be worked out", "lift=4 gap=2", []string{rule("a", divided, "trim favour low")}, "a", "", false},
		{"only missing", "lift=4", []string{rule("a", divided, "trim favour low")}, "a", "", false},
	} {
		r := advise(t, x.given, x.blocks...).Limbs["left"]
		why := r.Rules[x.rule].Failed
		if x.why == "" && why != "" || !strings.Contains(why, x.why) {
			t.Errorf("%s: says %q", x.name, why)
		}
		said := 0
		for _, c := range r.Choices {
			for _, f := range c.Failed {
				if f.Rule == x.rule && f.Why == why {
					said++
				}
			}
		}
		if (said == 1) != x.choice {
			t.Errorf("%s: said at %d choices", x.name, said)
		}
	}
	c := advise(t, "lift=4 gap=0", caution("c", divided)).Limbs["left"].Cautions
	if len(c) != 1 || !strings.Contains(c[0].Failed, zero) {
		t.Errorf("caution: %+v", c)
	}
}
