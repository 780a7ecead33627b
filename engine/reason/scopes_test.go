package reason_test

import (
	"strings"
	"testing"

	"crus/engine/reason"
)

// names lists the rules, cautions, findings and quantities that stand in a result.
func names(r *reason.Result) string {
	var out []string
	for n := range r.Rules {
		out = append(out, n)
	}
	for n := range r.Findings {
		out = append(out, n)
	}
	for n := range r.Quantities {
		out = append(out, n)
	}
	for _, c := range r.Cautions {
		out = append(out, c.Name)
	}
	for n := range r.Traces {
		if name, ok := strings.CutPrefix(n, "caution."); ok {
			out = append(out, name)
		}
	}
	return sorted(out)
}

// What reads a limb stands under each limb, the rest under the person, and nothing under both.
func TestPersonAndLimb(t *testing.T) {
	o := advise(t, "for=left,right age=70 left.p=true right.p=false",
		rule("of_limb", "limb.p", "trim favour low"),
		rule("of_other", "other.p", "closure favour strap"),
		rule("of_person", "person.age > years(60)", "trim favour high"),
		rule("by_formula", "true", "height aim limb.lift"),
		rule("by_finding", "finding.sign", "pad favour soft"),
		rule("by_text", "true", "because It is ${limb.flex}.", "pad favour none"),
		rule("by_person_text", "true", "because It is ${person.age}.", "pad favour none"),
		rule("by_chain", "finding.deep", "pad favour none"),
		rule("plain", "finding.old", "pad favour none"),
		finding("sign", "limb.p"), finding("old", "person.age > years(60)"), finding("deep", "finding.sign && finding.old"),
		quantity("half", "a", "person.age / 2"), quantity("slope", "1", "limb.lift / limb.gap"),
		caution("limb_caution", "limb.p"), caution("person_caution", "finding.old"), caution("text_caution", "true", `says "It is ${limb.flex}."`))
	of := "by_chain by_finding by_formula by_text deep limb_caution of_limb of_other sign slope text_caution"
	same(t, "left", names(o.Limbs["left"]), of)
	same(t, "right", names(o.Limbs["right"]), of)
	same(t, "person", names(o.Person), "by_person_text half of_person old person_caution plain")
	same(t, "left trim", said(o.Limbs["left"].Choices["trim"]), "open low high")
	same(t, "right trim", said(o.Limbs["right"].Choices["trim"]), "settled high")
	same(t, "left closure", said(o.Limbs["left"].Choices["closure"]), "unanswered")
	same(t, "right closure", said(o.Limbs["right"].Choices["closure"]), "settled strap")
	if _, stands := o.Limbs["left"].Choices["review"]; stands {
		t.Error("a choice of the person stands under a limb")
	}
}

// Only the limbs that are marked for a device are advised on; the other one can be read all the same.
func TestDeviceFor(t *testing.T) {
	rules := []string{rule("a", "limb.p && !other.p", "trim favour low"), rule("b", "!limb.p && other.p", "trim favour high")}
	for _, x := range []struct{ given, left, right string }{
		{"for=left left.p=true right.p=false", "settled low", ""},
		{"for=right left.p=true right.p=false", "", "settled high"},
		{"for=left,right left.p=true right.p=false", "settled low", "settled high"},
		{"for=left left.p=true", "unanswered provisional", ""},
		{"for=right left.p=true", "", "unanswered provisional"},
	} {
		o := advise(t, x.given, rules...)
		for side, want := range map[string]string{"left": x.left, "right": x.right} {
			r := o.Limbs[side]
			if (r != nil) != (want != "") {
				t.Errorf("%s: %s: result %v", x.given, side, r != nil)
			} else if r != nil {
				same(t, x.given+" "+side, said(r.Choices["trim"]), want)
			}
		}
	}
}

// A choice of the person pools what the rules say on either limb.
func TestPersonChoicePools(t *testing.T) {
	for _, x := range []struct {
		name, given string
		rules       []string
		shoe        string
		review      string
	}{
		{"a limb's rule on one limb", "for=left,right left.p=true right.p=false", []string{rule("a", "limb.p", "shoe favour deep")}, "settled deep", "unanswered"},
		{"the same rule on both limbs counts once", "for=left,right left.p=true right.p=true",
			[]string{rule("a", "limb.p", "shoe favour deep"), rule("b", "true", "shoe favour own")}, "open own deep", "unanswered"},
		{"different rules on the limbs", "for=left,right left.p=true right.q=true left.q=false right.p=false",
			[]string{rule("a", "limb.p", "shoe favour deep"), rule("b", "limb.q", "shoe favour deep"), rule("c", "true", "shoe favour own")}, "settled deep", "unanswered"},
		{"limits of both limbs", "for=left,right left.p=true right.p=false",
			[]string{rule("a", "limb.p", "shoe at_least deep"), rule("b", "!limb.p", "shoe at_most own")}, "conflict a b", "unanswered"},
		{"one rule against itself", "for=left,right left.lift=30 right.lift=10",
			[]string{rule("a", "true", "review at_least weeks(1) * (limb.lift / mm(1) > ratio(20) ? 8 : 1)", "review at_most weeks(1) * (limb.lift / mm(1) > ratio(20) ? 10 : 4)")}, "unanswered", "conflict a"},
		{"formulas of both limbs", "for=left,right left.lift=30 right.lift=10",
			[]string{rule("a", "true", "review aim weeks(1) * (limb.lift > mm(20) ? 4 : 8)")}, "unanswered", "open 4..8"},
		{"a limb without a device has no say", "for=left left.p=false right.p=true", []string{rule("a", "limb.p", "shoe favour deep")}, "unanswered", "unanswered"},
		{"a person's rule", "for=left,right driver=true", []string{rule("a", "person.driver", "shoe favour deep", "review aim weeks(6)")}, "settled deep", "settled 6"},
		{"what is missing on one limb", "for=left,right left.p=false", []string{rule("a", "limb.p", "shoe favour deep")}, "unanswered provisional", "unanswered"},
		{"what is missing does not matter", "for=left,right left.p=true", []string{rule("a", "limb.p", "shoe favour deep")}, "settled deep", "unanswered"},
		{"set aside on one limb only", "for=left,right left.p=true right.p=false driver=true",
			[]string{rule("a", "limb.p", "overrides b"), rule("b", "person.driver", "shoe favour deep")}, "settled deep", "unanswered"},
	} {
		o := advise(t, x.given, x.rules...)
		same(t, x.name+": shoe", said(o.Person.Choices["shoe"]), x.shoe)
		same(t, x.name+": review", said(o.Person.Choices["review"]), x.review)
	}
	o := advise(t, "for=left,right left.p=false", rule("a", "limb.p", "shoe favour deep"))
	same(t, "missing of the person", missingOf(o.Person), "right.p decides shoe settles 1")
	same(t, "could become", couldOf(o.Person.Choices["shoe"]), "settled deep if right.p is yes")
}

func TestApplies(t *testing.T) {
	fs := func(applies string) folders {
		return folders{"main": header("main", `applies "`+applies+`"`) + rule("a", "limb.p", "trim favour low") + caution("c", "limb.q") + finding("adult", "person.age >= years(16)")}
	}
	const wait = "It is not known whether this ruleset applies to the person, so everything here is provisional. It waits for: person.age."
	for _, x := range []struct{ applies, given, want string }{
		{"person.age >= years(16)", "age=30 p=true q=true", "yes"},
		{"person.age >= years(16)", "age=10 p=true q=true", "no"},
		{"person.age >= years(16)", "p=true q=true", "unknown"},
		{"finding.adult", "age=30 p=true q=true", "yes"},
		{"finding.adult", "age=10 p=true q=true", "no"},
		{"finding.adult", "p=true q=true", "unknown"},
	} {
		what := x.applies + " given " + x.given
		o := adviseOn(t, engineOf(t, fs(x.applies)), x.given)
		same(t, what, o.Applies, x.want)
		if o.Scope == nil || o.Scope.When.Text != x.applies {
			t.Errorf("%s: no trace of applies", what)
		}
		switch x.want {
		case "no":
			if o.Person != nil || o.Limbs != nil {
				t.Errorf("%s: something is advised all the same", what)
			}
		case "yes":
			same(t, what, said(o.Limbs["left"].Choices["trim"]), "settled low")
			same(t, what, strings.Join(o.WaitsFor, " "), "")
		case "unknown":
			same(t, what, said(o.Limbs["left"].Choices["trim"]), "settled low provisional")
			same(t, what, said(o.Limbs["left"].Choices["pad"]), "default none provisional")
			same(t, what, cautionsOf(o.Limbs["left"]), "c fired provisional")
			same(t, what, strings.Join(o.WaitsFor, " "), "person.age")
			same(t, what, o.Notices[len(o.Notices)-1], wait)
		}
	}
	if o := advise(t, ""); o.Applies != "yes" || o.Scope != nil {
		t.Error("a ruleset that applies always does not say so")
	}
}

// A ruleset that is built on is in force under its name, guarded by its own applies.
func TestBuildsOn(t *testing.T) {
	fs := folders{
		"deep": header("deep", `applies "person.age >= years(16)"`) + finding("f", "limb.p") + quantity("z", "mm", "limb.lift") +
			rule("r", "finding.f", "trim favour low") + caution("c", "finding.f && quantity.z > mm(1)"),
		"middle": header("middle", `builds_on ["deep@1"]`) + finding("f", "!finding.deep.f") + rule("r", "finding.f", "trim favour high", "overrides deep.r"),
		"main": header("main", `builds_on ["middle", "deep@1.0"]`) +
			rule("r", "finding.middle.f || finding.deep.f", "because ${quantity.deep.z} and ${finding.middle.f}", "closure favour strap") + rule("s", "limb.q", "overrides middle.r"),
	}
	e := engineOf(t, fs)
	for _, x := range []struct{ given, states, trim, cautions string }{
		{"age=30 p=true lift=5 q=false", "deep.r fired, middle.r did_not_fire, r fired, s did_not_fire", "settled low", "deep.c fired"},
		{"age=10 p=true lift=5 q=false", "deep.r did_not_fire, middle.r did_not_fire, r fired, s did_not_fire", "unanswered", ""},
		{"p=true lift=5 q=false", "deep.r pending(person.age), middle.r did_not_fire, r fired, s did_not_fire", "unanswered provisional", "deep.c pending provisional"},
		{"age=30 p=false lift=5 q=false", "deep.r did_not_fire, middle.r fired, r fired, s did_not_fire", "settled high", ""},
		{"age=30 p=false lift=5 q=true", "deep.r did_not_fire, middle.r set_aside(s), r fired, s fired", "unanswered", ""},
		{"age=30 q=false", "deep.r pending(limb.p), middle.r pending(limb.p), r pending(limb.p), s did_not_fire", "unanswered provisional", "deep.c pending provisional"},
	} {
		o := adviseOn(t, e, x.given)
		same(t, x.given, states(o, "left"), x.states)
		same(t, x.given, said(o.Limbs["left"].Choices["trim"]), x.trim)
		same(t, x.given, cautionsOf(o.Limbs["left"]), x.cautions)
		same(t, x.given, o.Applies, "yes")
	}
	o := adviseOn(t, e, "age=30 p=true lift=5 q=false")
	same(t, "text", o.Limbs["left"].Rules["r"].Because, "5 mm and no")
	var built []string
	for _, v := range o.BuildsOn {
		built = append(built, v.Name+" "+v.Version)
	}
	same(t, "builds on", strings.Join(built, ", "), "deep 1.0.0, middle 1.0.0")
	if o.Limbs["left"].Rules["deep.r"].Trace.Applies == nil {
		t.Error("the trace of a rule that is built on does not show its applies")
	}
}

// A local protocol leaves something out, and the outcome says so.
func TestExcept(t *testing.T) {
	fs := folders{
		"base": header("base") + rule("a", "limb.p", "trim favour low") + rule("b", "limb.p", "trim favour high", "overrides a") + caution("c", "limb.p"),
		"main": header("main", `builds_on ["base"]`) + block(`except "base.c"`, `because "Seen elsewhere."`) + block(`except "base.b"`, `because "Not here."`),
	}
	o := adviseOn(t, engineOf(t, fs), "p=true")
	same(t, "states", states(o, "left"), "base.a fired")
	same(t, "trim", said(o.Limbs["left"].Choices["trim"]), "settled low")
	same(t, "cautions", cautionsOf(o.Limbs["left"]), "")
	same(t, "notices", strings.Join(o.Notices[3:5], " "), "base.b is left out here: Not here. base.c is left out here: Seen elsewhere.")
}
