package reason_test

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"
	"time"

	"crus/engine/reason"
)

// steps writes a step with what stands below it: "a && b = yes [a = yes, b = yes]".
func steps(s *reason.Step) string {
	out := s.Text + " = " + s.Value.String()
	var below []string
	for _, k := range s.Steps {
		below = append(below, steps(k))
	}
	if below != nil {
		out += " [" + strings.Join(below, ", ") + "]"
	}
	return out
}

// Every sub-expression has its value, also where the result did not need it; constants are not shown.
func TestSteps(t *testing.T) {
	facts := []string{finding("f", "limb.p"), quantity("z", "mm", "limb.lift + mm(5)")}
	for _, x := range []struct{ when, want string }{
		{"limb.p", "limb.p = yes"},
		{"limb.p && limb.q && limb.r", "limb.p && limb.q && limb.r = no [limb.p = yes, limb.q = no, limb.r = unknown]"},
		{"limb.q && limb.p", "limb.q && limb.p = no [limb.q = no, limb.p = yes]"},
		{"limb.p || limb.q", "limb.p || limb.q = yes [limb.p = yes, limb.q = no]"},
		{"(limb.p || limb.q) && !limb.r", "(limb.p || limb.q) && !limb.r = unknown [limb.p || limb.q = yes [limb.p = yes, limb.q = no], !limb.r = unknown [limb.r = unknown]]"},
		{"limb.flex   <=\n deg(5)", "limb.flex <= deg(5) = yes [limb.flex = −5°]"},
		{"limb.flex + limb.knee < deg(-10)", "limb.flex + limb.knee < deg(-10) = no [limb.flex + limb.knee = −8° [limb.flex = −5°, limb.knee = −3°]]"},
		{"limb.tone >= tone_scale('2')", "limb.tone >= tone_scale('2') = no [limb.tone = 1+]"},
		{"limb.skin in ['fragile', 'broken']", "limb.skin in ['fragile', 'broken'] = yes [limb.skin = fragile]"},
		{"limb.lift in [mm(1), limb.gap]", "limb.lift in [mm(1), limb.gap] = no [limb.lift = 10 mm, limb.gap = 0 mm]"},
		{"limb.p ? limb.flex > deg(0) : limb.q", "limb.p ? limb.flex > deg(0) : limb.q = no [limb.p = yes, limb.flex > deg(0) = no [limb.flex = −5°], limb.q = no]"},
		{"limb.q ? limb.flex > deg(0) : limb.p", "limb.q ? limb.flex > deg(0) : limb.p = yes [limb.q = no, limb.flex > deg(0) = no [limb.flex = −5°], limb.p = yes]"},
		{"[limb.p, limb.q].exists(x, x)", "[limb.p, limb.q].exists(x, x) = yes [limb.p = yes, limb.q = no]"},
		{"finding.f && quantity.z > mm(10)", "finding.f && quantity.z > mm(10) = yes [finding.f = yes, quantity.z > mm(10) = yes [quantity.z = 15 mm]]"},
		{"recorded(limb.r) || recorded(limb.p)", "recorded(limb.r) || recorded(limb.p) = yes [recorded(limb.r) = no, recorded(limb.p) = yes]"},
		{"double(limb.posture) / 0.0 > 1.0", "double(limb.posture) / 0.0 > 1.0 = no [double(limb.posture) / 0.0 = −Inf [double(limb.posture) = −3 [limb.posture = −3]]]"},
		{"since(person.injected) > weeks(4) && limb.p", "since(person.injected) > weeks(4) && limb.p = yes [since(person.injected) > weeks(4) = yes [since(person.injected) = 30 days [person.injected = 2026-09-02]], limb.p = yes]"},
		{"limb.lift / limb.gap > ratio(2) || limb.p", "limb.lift / limb.gap > ratio(2) || limb.p = yes [limb.lift / limb.gap > ratio(2) = can't be worked out [limb.lift / limb.gap = can't be worked out [limb.lift = 10 mm, limb.gap = 0 mm]], limb.p = yes]"},
	} {
		r := advise(t, "p=true q=false flex=-5 knee=-3 tone=1+ skin=fragile posture=-3 lift=10 gap=0 injected=2026-09-02", append(facts, rule("a", x.when, "trim favour low"))...).Limbs["left"].Rules["a"]
		same(t, x.when, steps(r.Trace.When), x.want)
		if _, err := json.Marshal(r); err != nil {
			t.Errorf("%s: %v", x.when, err)
		}
	}
}

// The trace of a rule shows when, unless and the formulas of its advice, each with its place.
func TestTraceOfARule(t *testing.T) {
	o := advise(t, "p=true q=false lift=10", rule("a", "limb.p", "unless limb.q && limb.r", "height aim limb.lift * 2", "trim favour low high"))
	tr := o.Limbs["left"].Rules["a"].Trace
	same(t, "when", steps(tr.When), "limb.p = yes")
	same(t, "unless", steps(tr.Unless), "limb.q && limb.r = no [limb.q = no, limb.r = unknown]")
	same(t, "formula", steps(tr.Advises[0].Formula), "limb.lift * 2 = 20 mm [limb.lift = 10 mm]")
	same(t, "advice", fmt.Sprint(tr.Advises[1].Choice, " ", tr.Advises[1].Verb, " ", tr.Advises[1].Options), "trim favour [low high]")
	same(t, "places", strings.Join([]string{tr.Place, tr.When.Place, tr.Unless.Place, tr.Unless.Steps[1].Place, tr.Advises[0].Formula.Place}, " "),
		"rulesets/main/rules.hcl:7:1 rulesets/main/rules.hcl:8:11 rulesets/main/rules.hcl:12:13 rulesets/main/rules.hcl:12:23 rulesets/main/rules.hcl:14:12")
}

// ${names} become values with their units; a text may name any fact, in whatever order they stand.
func TestTexts(t *testing.T) {
	o := advise(t, "flex=-5 tone=1+ skin=fragile posture=-3 p=true work=field mass=82.5 remark=likes_hills injected=2026-09-02",
		rule("a", "limb.p", "trim favour low", "because ${limb.flex}, ${limb.tone}, ${limb.skin}, ${limb.posture}, ${limb.p}, ${limb.q}; ${person.work}, ${person.mass}, ${person.remark}, ${person.injected}; ${finding.a}, ${quantity.z}, ${quantity.fails}, ${other.flex}"),
		block(`finding "a"`, `holds "limb.p"`, `because "It is ${quantity.z}, and ${finding.z}."`),
		finding("z", "!limb.p"), quantity("z", "deg", "limb.flex * 2"), quantity("fails", "deg", "limb.flex / 0"))
	r := o.Limbs["left"]
	same(t, "rule", r.Rules["a"].Because, "−5°, 1+, fragile, −3, yes, unknown; field, 82.5 kg, likes_hills, 2026-09-02; yes, −10°, can't be worked out, unknown")
	same(t, "in the trace", r.Rules["a"].Trace.Because, r.Rules["a"].Because)
	same(t, "finding", r.Traces["finding.a"].Because, "It is −10°, and no.")
}

func TestFactsInTheOutcome(t *testing.T) {
	o := advise(t, "p=true lift=12 gap=0", finding("yes", "limb.p"), finding("no", "!limb.p"), finding("open", "limb.q"), finding("fails", "limb.lift / limb.gap > ratio(1)"),
		quantity("cm", "cm", "limb.lift"), quantity("open", "mm", "limb.lift + other.lift"), quantity("fails", "1", "limb.lift / limb.gap"))
	r := o.Limbs["left"]
	if !*r.Findings["yes"] || *r.Findings["no"] || r.Findings["open"] != nil || r.Findings["fails"] != nil {
		t.Errorf("findings %v", r.Findings)
	}
	if r.Quantities["open"] != nil || r.Quantities["fails"] != nil {
		t.Errorf("quantities %v", r.Quantities)
	}
	same(t, "cm", fmt.Sprint(*r.Quantities["cm"]), "{1.2 cm <nil>}")
	if r.Traces["quantity.cm"] == nil || r.Traces["finding.open"] == nil {
		t.Error("a fact has no trace")
	}
}

func TestNotices(t *testing.T) {
	usual := len(reason.Cautions())
	for _, x := range []struct {
		name, header string
		today        string
		want         string
	}{
		{"nothing special", "", "2026-10-05", ""},
		{"before its review date", `review_by "2026-10-05"`, "2026-10-04", ""},
		{"on its review date", `review_by "2026-10-05"`, "2026-10-05", ""},
		{"past its review date", `review_by "2026-10-05"`, "2026-10-06", "main 1.0.0 is past its review date, 2026-10-05."},
		{"within its period", `effective_period ["2026-01-01", "2026-12-31"]`, "2026-12-31", ""},
		{"before its period", `effective_period ["2026-01-01", "2026-12-31"]`, "2025-12-31", "main 1.0.0 is meant for the time from 2026-01-01 to 2026-12-31, and 2025-12-31 lies outside."},
		{"after its period", `effective_period ["2026-01-01", "2026-12-31"]`, "2027-01-01", "main 1.0.0 is meant for the time from 2026-01-01 to 2026-12-31, and 2027-01-01 lies outside."},
	} {
		var more []string
		if x.header != "" {
			more = append(more, x.header)
		}
		e := engineOf(t, folders{"main": header("main", more...)})
		day, err := time.Parse(time.DateOnly, x.today)
		if err != nil {
			t.Fatal(err)
		}
		o := e.Advise(given(t, e.Ruleset().Vocabulary, ""), day)
		same(t, x.name+": usual", strings.Join(o.Notices[:usual], ""), strings.Join(reason.Cautions(), ""))
		same(t, x.name, strings.Join(o.Notices[usual:len(o.Notices)-1], ""), x.want)
		same(t, x.name+": boundary", o.Notices[len(o.Notices)-1], "Whether a result lies close to a boundary within measurement error was not looked at.")
	}
	for status, want := range map[string]string{"draft": "main 1.0.0 is a draft: it has not been put in force.", "retired": "main 1.0.0 is retired: it is no longer in force."} {
		e := engineOf(t, folders{"main": strings.Replace(header("main"), `"active"`, `"`+status+`"`, 1)})
		same(t, status, adviseOn(t, e, "").Notices[usual], want)
	}
}
