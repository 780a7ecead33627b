package reason_test

import (
	"encoding/json"
	"strings"
	"testing"
)

// What never was is recorded: what asks whether it was lately is silent, and nothing waits for it. No date
// of the assessment is needed for that.
func TestNever(t *testing.T) {
	blocks := []string{
		finding("lately", "since(person.injected) < weeks(13)"), rule("wait", "finding.lately", "trim favour low"),
		rule("long_ago", "since(person.injected) >= weeks(13)", "pad favour soft"), rule("asked", "recorded(person.injected)", "shoe favour deep"),
		caution("late", "finding.lately"), caution("early", "weeks(13) < since(person.injected)"),
	}
	for _, x := range []struct{ given, states, cautions, missing, trim string }{
		{"injected=never", "asked fired, long_ago fired, wait did_not_fire", "early fired", "", "unanswered"},
		{"injected=never date=", "asked fired, long_ago fired, wait did_not_fire", "early fired", "", "unanswered"},
		{"injected=!never_asked", "asked did_not_fire, long_ago pending(person.injected), wait pending(person.injected)", "early pending provisional, late pending provisional",
			"person.injected decides shoe caution.early caution.late settles 3", "unanswered provisional"},
	} {
		o := advise(t, x.given, blocks...)
		same(t, x.given+": rules", states(o, "left"), x.states)
		same(t, x.given+": cautions", cautionsOf(o.Person), x.cautions)
		same(t, x.given+": missing", missingOf(o.Person), x.missing)
		same(t, x.given+": trim", said(o.Limbs["left"].Choices["trim"]), x.trim)
	}
}

// It reads as never wherever the date stands, and as longer than any limit wherever the time since it does; as
// data it is a date or a number with its unit like any other.
func TestNeverInWords(t *testing.T) {
	o := advise(t, "injected=never p=true", quantity("ago", "wk", "since(person.injected)"), quantity("off", "wk", "since(person.injected) - weeks(2)"),
		rule("a", "since(person.injected) > weeks(4)", "review aim quantity.ago", "because ${person.injected}, ${quantity.ago}, ${quantity.off}"),
		rule("b", "limb.p", "height at_least quantity.ago / weeks(1) * mm(1)"))
	a, b := o.Person.Rules["a"], o.Limbs["left"].Rules["b"]
	same(t, "trace", steps(a.Trace.When), "since(person.injected) > weeks(4) = yes [since(person.injected) = longer than any limit [person.injected = never]]")
	same(t, "text", a.Because, "never, longer than any limit, can't be worked out")
	same(t, "aim", said(o.Person.Choices["review"]), "settled 52")
	if did := a.Trace.Advises[0].Did; !strings.Contains(did, "longer than any limit, which the limits move to 52 weeks") {
		t.Errorf("the aim: %s", did)
	}
	same(t, "what is worked out from it", b.Failed, "The time since what never was can be compared, and nothing can be worked out from it.")
	if o.Person.Quantities["off"] != nil {
		t.Errorf("a time before never: %v", o.Person.Quantities["off"])
	}
	data, err := json.Marshal([]any{a.Trace.When.Steps[0], o.Person.Quantities["ago"].Unit})
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{`"value":{"value":1000000000000000000,"unit":"d"}`, `"value":"never"`, `"wk"`} {
		if !strings.Contains(string(data), want) {
			t.Errorf("no %s in %s", want, data)
		}
	}
}
