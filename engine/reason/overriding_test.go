package reason_test

import (
	"testing"

	"crus/engine/reason"
)

func TestOverriding(t *testing.T) {
	for _, x := range []struct {
		name  string
		rules []string
		given string
		want  string
	}{
		{"a chain", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "overrides c"), rule("c", "limb.r", "trim favour low")},
			"p=true q=true r=true", "a fired, b set_aside(a), c fired"},
		{"a chain without its head", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "overrides c"), rule("c", "limb.r", "trim favour low")},
			"p=false q=true r=true", "a did_not_fire, b fired, c set_aside(b)"},
		{"a chain of four", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.p", "overrides c"), rule("c", "limb.p", "overrides d"), rule("d", "limb.p", "trim favour low")},
			"p=true", "a fired, b set_aside(a), c fired, d set_aside(c)"},
		{"what does not fire can't be set aside", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "trim favour low")},
			"p=true q=false", "a fired, b did_not_fire"},
		{"pending overrider, fired rule", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "trim favour low")},
			"q=true", "a pending(limb.p), b pending(limb.p)"},
		{"pending overrider, pending rule", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "trim favour low")},
			"", "a pending(limb.p), b pending(limb.q limb.p)"},
		{"pending overrider, rule that did not fire", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "trim favour low")},
			"q=false", "a pending(limb.p), b did_not_fire"},
		{"fired overrider, pending rule", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "trim favour low")},
			"p=true", "a fired, b set_aside(a)"},
		{"overrider that did not fire, pending rule", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "trim favour low")},
			"p=false", "a did_not_fire, b pending(limb.q)"},
		{"pending head of a chain", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "overrides c"), rule("c", "limb.r", "trim favour low")},
			"q=true r=true", "a pending(limb.p), b pending(limb.p), c pending(limb.p)"},
		{"a set-aside rule leaves no doubt", []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "overrides c"), rule("c", "limb.r", "trim favour low")},
			"p=true r=true", "a fired, b set_aside(a), c fired"},
		{"two fired overriders", []string{rule("a", "limb.p", "overrides c"), rule("b", "limb.q", "overrides c"), rule("c", "limb.r", "trim favour low")},
			"p=true q=true r=true", "a fired, b fired, c set_aside(a b)"},
		{"a fired and a pending overrider", []string{rule("a", "limb.p", "overrides c"), rule("b", "limb.q", "overrides c"), rule("c", "limb.r", "trim favour low")},
			"q=true r=true", "a pending(limb.p), b fired, c set_aside(b)"},
		{"two pending overriders", []string{rule("a", "limb.p", "overrides c"), rule("b", "limb.q", "overrides c"), rule("c", "limb.r", "trim favour low")},
			"r=true", "a pending(limb.p), b pending(limb.q), c pending(limb.p limb.q)"},
		{"one that did not fire and one pending", []string{rule("a", "limb.p", "overrides c"), rule("b", "limb.q", "overrides c"), rule("c", "limb.r", "trim favour low")},
			"p=false r=true", "a did_not_fire, b pending(limb.q), c pending(limb.q)"},
		{"one rule sets two aside", []string{rule("a", "limb.p", "overrides b c"), rule("b", "limb.p", "trim favour low"), rule("c", "limb.p", "trim favour low")},
			"p=true", "a fired, b set_aside(a), c set_aside(a)"},
		{"unless", []string{rule("a", "limb.p", "unless limb.q", "trim favour low")}, "p=true q=true", "a did_not_fire"},
		{"unless not", []string{rule("a", "limb.p", "unless limb.q", "trim favour low")}, "p=true q=false", "a fired"},
		{"unless unknown", []string{rule("a", "limb.p", "unless limb.q", "trim favour low")}, "p=true", "a pending(limb.q)"},
		{"when unknown, unless holds", []string{rule("a", "limb.p", "unless limb.q", "trim favour low")}, "q=true", "a did_not_fire"},
		{"when not, unless unknown", []string{rule("a", "limb.p", "unless limb.q", "trim favour low")}, "p=false", "a did_not_fire"},
		{"both unknown", []string{rule("a", "limb.p", "unless limb.q", "trim favour low")}, "", "a pending(limb.p limb.q)"},
		{"an overrider stopped by unless", []string{rule("a", "limb.p", "unless limb.q", "overrides b"), rule("b", "limb.r", "trim favour low")},
			"p=true q=true r=true", "a did_not_fire, b fired"},
		{"a failed overrider", []string{rule("a", "limb.lift / limb.gap > ratio(1)", "overrides b"), rule("b", "limb.r", "trim favour low")},
			"lift=1 gap=0 r=true", "a pending, b pending"},
		// A rule of the person runs for each limb once a limb's rule overrides it.
		{"a person's rule that a limb's overrides", []string{rule("a", "limb.p", "overrides b"), rule("b", "person.driver", "trim favour low")},
			"p=true driver=true", "a fired, b set_aside(a)"},
		{"a person's rule that a person's overrides", []string{rule("a", "person.driver", "overrides b"), rule("b", "person.driver", "trim favour low")},
			"driver=true", "a fired, b set_aside(a)"},
		{"a limb's rule that a person's overrides", []string{rule("a", "person.driver", "overrides b"), rule("b", "limb.p", "trim favour low")},
			"p=true", "a pending(person.driver), b pending(person.driver)"},
	} {
		t.Run(x.name, func(t *testing.T) { same(t, x.given, states(advise(t, x.given, x.rules...), "left"), x.want) })
	}
}

// What is set aside, pending or did not fire says nothing of a choice; the chain's last word counts.
func TestOnlyFiredRulesSpeak(t *testing.T) {
	rules := []string{rule("a", "limb.p", "overrides b"), rule("b", "limb.q", "trim only high", "overrides c"), rule("c", "limb.r", "trim only low")}
	for _, x := range []struct{ given, want string }{
		{"p=true q=true r=true", "settled low"},
		{"p=false q=true r=true", "settled high"},
		{"p=false q=false r=true", "settled low"},
		{"p=true q=true r=false", "unanswered"},
		{"p=false q=true", "settled high"},          // c can't matter
		{"q=true r=true", "unanswered provisional"}, // b or c, never neither
		{"q=false r=true", "settled low"},           // a can't matter
	} {
		same(t, x.given, said(advise(t, x.given, rules...).Limbs["left"].Choices["trim"]), x.want)
	}
}

// Where the same rule comes out differently on the two limbs, each limb has its own.
func TestOverridingPerLimb(t *testing.T) {
	o := advise(t, "for=left,right driver=true left.p=true right.p=false",
		rule("a", "limb.p", "overrides b"), rule("b", "person.driver", "trim favour low", "shoe favour deep"))
	same(t, "left", states(o, "left"), "a fired, b set_aside(a)")
	same(t, "right", states(o, "right"), "a did_not_fire, b fired")
	if _, stands := o.Person.Rules["b"]; stands {
		t.Error("the rule stands under the person too")
	}
	same(t, "left trim", said(o.Limbs["left"].Choices["trim"]), "unanswered")
	same(t, "right trim", said(o.Limbs["right"].Choices["trim"]), "settled low")
	same(t, "shoe", said(o.Person.Choices["shoe"]), "settled deep")
}

// waits_for names just the measures of the unknown parts that can still decide.
func TestWaitsFor(t *testing.T) {
	facts := []string{
		finding("f", "limb.p && limb.q"), finding("g", "limb.r"), finding("h", "finding.f || finding.g"),
		quantity("z", "mm", "limb.lift - limb.gap"), finding("old", "person.age > years(60)"),
	}
	for _, x := range []struct{ when, given, want string }{
		{"limb.p && limb.q", "", "a pending(limb.p limb.q)"},
		{"limb.p && limb.q", "p=true", "a pending(limb.q)"},
		{"limb.p && limb.q", "p=false", "a did_not_fire"},
		{"limb.p || limb.q", "q=false", "a pending(limb.p)"},
		{"limb.p || limb.q && limb.r", "q=false", "a pending(limb.p)"},
		{"limb.p || limb.q && limb.r", "q=true", "a pending(limb.p limb.r)"},
		{"!(limb.p && !limb.q)", "", "a pending(limb.p limb.q)"},
		{"limb.q && limb.p && limb.q", "", "a pending(limb.p limb.q)"},
		{"limb.lift > limb.gap", "", "a pending(limb.gap limb.lift)"},
		{"limb.lift > limb.gap", "gap=3", "a pending(limb.lift)"},
		{"limb.lift - limb.gap > mm(3)", "lift=3", "a pending(limb.gap)"},
		{"limb.p ? limb.q : limb.r", "", "a pending(limb.p limb.q limb.r)"},
		{"limb.p ? limb.q : limb.r", "p=true", "a pending(limb.q)"},
		{"limb.p ? limb.q : limb.r", "p=false", "a pending(limb.r)"},
		{"limb.p ? limb.q : limb.r", "q=true", "a pending(limb.p limb.r)"},
		{"limb.p ? true : limb.r", "", "a pending(limb.p limb.r)"},
		{"[limb.p, limb.q, limb.r].exists(x, x)", "p=false", "a pending(limb.q limb.r)"},
		{"limb.lift in [mm(1), limb.gap]", "lift=3", "a pending(limb.gap)"},
		{"limb.skin in ['intact', 'broken']", "", "a pending(limb.skin)"},
		{"limb.tone >= tone_scale('2') && limb.posture > 3", "", "a pending(limb.tone limb.posture)"},
		{"other.p && limb.p", "", "a pending(limb.p other.p)"},
		{"recorded(limb.p) || limb.q", "", "a pending(limb.q)"},
		{"since(person.injected) > weeks(3) && limb.p", "", "a pending(person.injected limb.p)"},
		{"finding.f", "", "a pending(limb.p limb.q)"},
		{"finding.h", "", "a pending(limb.p limb.q limb.r)"},
		{"finding.h", "q=true", "a pending(limb.p limb.r)"},
		{"finding.h", "q=false", "a pending(limb.r)"},
		{"quantity.z > mm(0) && finding.old", "lift=3", "a pending(person.age limb.gap)"},
		{"limb.lift / limb.gap > ratio(1) || limb.p", "lift=3 gap=0", "a pending(limb.p)"}, // what fails waits for nothing
		{"limb.lift / limb.gap > ratio(1) || limb.p", "gap=0", "a pending(limb.lift limb.p)"},
	} {
		same(t, x.when+" given "+x.given, states(advise(t, x.given, append(facts, rule("a", x.when, "trim favour low"))...), "left"), x.want)
	}
}

// A failed condition counts as unknown, and the trace says what failed.
func TestFailedConditions(t *testing.T) {
	o := advise(t, "lift=10 gap=0", rule("a", "limb.lift / limb.gap > ratio(2)", "trim only low"),
		finding("steep", "limb.lift / limb.gap > ratio(2)"), quantity("slope", "1", "limb.lift / limb.gap"),
		rule("b", "finding.steep || limb.p", "trim only high"), rule("c", "finding.steep && limb.gap > mm(0)", "trim only high"))
	r := o.Limbs["left"]
	same(t, "states", states(o, "left"), "a pending, b pending(limb.p), c did_not_fire")
	if r.Findings["steep"] != nil || r.Quantities["slope"] != nil {
		t.Error("a fact that can't be worked out has a value")
	}
	for what, step := range map[string]*reason.Step{"rule": r.Rules["a"].Trace.When, "finding": r.Traces["finding.steep"].When, "quantity": r.Traces["quantity.slope"].When} {
		if step.Value.Failed() == "" || step.Value.Known() {
			t.Errorf("the trace of the %s does not say that it failed: %v", what, step.Value)
		}
	}
	for _, s := range r.Rules["a"].Trace.When.Steps {
		if s.Text == "limb.lift / limb.gap" && s.Value.Failed() == "" {
			t.Error("the step that failed does not say so")
		}
	}
	if !r.Choices["trim"].Provisional {
		t.Error("a rule can't be worked out, and the choice that it bears on is not provisional")
	}
}
