package reason_test

import (
	"fmt"
	"strings"
	"testing"
)

func TestProvisional(t *testing.T) {
	for _, x := range []struct {
		name   string
		rules  []string
		given  string
		choice string
		want   string
		could  string
	}{
		{"a rule is pending", []string{rule("a", "limb.p", "trim favour low")}, "", "trim",
			"unanswered provisional", "settled low if limb.p is yes"},
		{"a rule is pending, and says the same as what stands", []string{rule("a", "limb.p", "trim favour low"), always("b", "trim only low")}, "", "trim", "settled low", ""},
		{"a pending favour can't catch up", []string{rule("a", "limb.p", "trim favour low"), always("b", "strong", "trim favour high")}, "", "trim", "settled high", ""},
		{"a pending favour can draw level", []string{rule("a", "limb.p", "trim favour low"), always("b", "trim favour high")}, "", "trim",
			"settled high provisional", "open [low high] if limb.p is yes"},
		{"a pending favour of what a limit removes", []string{rule("a", "limb.p", "strong", "trim favour low"), always("b", "trim never low middle")}, "", "trim", "settled high", ""},
		{"a pending limit on what is not picked", []string{rule("a", "limb.p", "trim never low"), always("b", "trim favour high")}, "", "trim", "settled high", ""},
		{"a pending limit on what is picked", []string{rule("a", "limb.p", "trim never high"), always("b", "trim favour high")}, "", "trim",
			"settled high provisional", "open [low middle] if limb.p is yes"},
		{"a conflict is possible", []string{rule("a", "limb.p", "trim only low"), always("b", "trim only high")}, "", "trim",
			"settled high provisional", "conflict if limb.p is yes"},
		{"a conflict stands", []string{rule("a", "limb.p", "trim only middle"), always("b", "trim only high"), always("c", "trim only low")}, "", "trim", "conflict b c", ""},
		{"by default and by a rule are the same", []string{rule("a", "limb.p", "pad favour none")}, "", "pad", "default none", ""},
		{"the two ways are the same", []string{rule("a", "limb.p", "trim favour low"), rule("b", "!limb.p", "trim favour low")}, "", "trim",
			"settled low", ""},
		{"rules that hang together", []string{rule("a", "limb.p", "trim favour low"), rule("b", "limb.p && limb.q", "strong", "trim favour low"), always("c", "trim only low")}, "", "trim", "settled low", ""},
		{"never both", []string{rule("a", "limb.p", "trim only low"), rule("b", "!limb.p", "trim only high")}, "", "trim",
			"unanswered provisional", "settled low if limb.p is yes; settled high if limb.p is no"},
		{"Kleene's unknown that is always true", []string{rule("a", "limb.p || !limb.p", "trim favour low")}, "", "trim", "settled low", ""},
		{"whether it is recorded is not a completion", []string{rule("a", "limb.p || !limb.p", "trim favour low"), rule("b", "!recorded(limb.p)", "trim favour high")}, "", "trim", "settled high provisional", "settled low"},
		{"an overrider that only can set aside", []string{rule("a", "limb.p", "overrides b"), always("b", "trim favour low")}, "", "trim",
			"unanswered provisional", "settled low if limb.p is no"},
		{"two measures", []string{rule("a", "limb.p && limb.q", "trim favour low")}, "", "trim",
			"unanswered provisional", "settled low if limb.p is yes and limb.q is yes"},
		{"either measure", []string{rule("a", "limb.p || limb.q", "trim favour low")}, "", "trim",
			"unanswered provisional", "settled low if limb.q is yes"},
		{"a measure that was refused", []string{rule("a", "limb.p", "trim favour low")}, "p=!pain", "trim", "unanswered provisional", "settled low if limb.p is yes"},
		{"asked whether it is recorded", []string{rule("a", "recorded(limb.p)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low"},
		{"guarded by whether it is recorded", []string{rule("a", "recorded(limb.p) && limb.p", "trim favour low")}, "", "trim",
			"unanswered provisional", "settled low if limb.p is yes"},
		{"a free text asked for", []string{rule("a", "!recorded(person.remark)", "trim favour low")}, "", "trim", "settled low provisional", "unanswered"},

		{"a threshold", []string{rule("a", "limb.flex <= deg(5)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.flex is 5° or less"},
		{"a strict threshold", []string{rule("a", "limb.flex < deg(5)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.flex is less than 5°"},
		{"a threshold from above", []string{rule("a", "limb.flex > deg(5)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.flex is more than 5°"},
		{"a threshold from above, with it", []string{rule("a", "deg(5) <= limb.flex", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.flex is 5° or more"},
		{"a band", []string{rule("a", "limb.flex >= deg(-5) && limb.flex < deg(5)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.flex is from −5° to less than 5°"},
		{"an open band", []string{rule("a", "limb.flex > deg(-5) && limb.flex < deg(5)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.flex is more than −5° and less than 5°"},
		{"a half-open band", []string{rule("a", "limb.flex > deg(-5) && limb.flex <= deg(5)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.flex is more than −5° and up to 5°"},
		{"a single value", []string{rule("a", "limb.flex == deg(5)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.flex is 5°"},
		{"thresholds of other rules don't show", []string{rule("a", "limb.flex <= deg(5)", "trim favour low"), rule("b", "limb.flex <= deg(-10) || limb.flex > deg(20)", "closure favour strap")}, "", "trim",
			"unanswered provisional", "settled low if limb.flex is 5° or less"},
		{"another unit", []string{rule("a", "limb.lift > cm(2)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.lift is more than 20 mm"},
		{"a threshold outside of the plausible range", []string{rule("a", "limb.lift > mm(500)", "trim favour low")}, "", "trim", "unanswered", ""},
		{"a grade", []string{rule("a", "limb.tone >= tone_scale('1+')", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.tone is 1+ or more"},
		{"grades up to", []string{rule("a", "limb.tone < tone_scale('2')", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.tone is 1+ or less"},
		{"one grade", []string{rule("a", "limb.tone == tone_scale('1+')", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.tone is 1+"},
		{"grades between", []string{rule("a", "limb.tone > tone_scale('0') && limb.tone < tone_scale('3')", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.tone is 1 to 2"},
		{"a count", []string{rule("a", "limb.posture >= 6", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.posture is 6 or more"},
		{"a count below", []string{rule("a", "limb.posture < -2", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.posture is −3 or less"},
		{"an option", []string{rule("a", "limb.skin == 'broken'", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.skin is broken"},
		{"not an option", []string{rule("a", "limb.skin != 'broken'", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.skin is intact or fragile"},
		{"some options", []string{rule("a", "limb.skin in ['broken', 'fragile']", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if limb.skin is fragile or broken"},
		{"the time since a date", []string{rule("a", "since(person.injected) >= weeks(12)", "trim favour low")}, "", "trim",
			"unanswered provisional", "settled low if person.injected is 84 days or more before the assessment or never"},
		{"a short time since a date", []string{rule("a", "since(person.injected) < weeks(12)", "trim favour low")}, "", "trim",
			"unanswered provisional", "settled low if person.injected is 83 days or less before the assessment"},
		{"longer since than anybody lives", []string{rule("a", "since(person.injected) > years(200)", "trim favour low")}, "", "trim",
			"unanswered provisional", "settled low if person.injected is never"},
		{"the time since a date, whatever it is", []string{rule("a", "since(person.injected) >= days(0)", "trim favour low")}, "", "trim",
			"settled low", ""},
		{"the other limb", []string{rule("a", "other.flex < deg(0)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if other.flex is less than 0°"},
		{"a person's measure", []string{rule("a", "person.mass >= kg(110)", "trim favour low")}, "", "trim", "unanswered provisional", "settled low if person.mass is 110 kg or more"},
		{"through findings", []string{finding("f", "limb.flex <= deg(5)"), finding("g", "finding.f && limb.p"), rule("a", "finding.g", "trim favour low")}, "p=true", "trim",
			"unanswered provisional", "settled low if limb.flex is 5° or less"},

		{"a number's formula", []string{always("a", "height aim limb.gap")}, "", "height", "unanswered provisional", ""},
		{"a number's rule", []string{rule("a", "limb.p", "height aim mm(20)")}, "", "height", "unanswered provisional", "settled 20 if limb.p is yes"},
		{"an aim that agrees", []string{rule("a", "limb.p", "height aim mm(20)"), always("b", "height aim mm(20)")}, "", "height", "settled 20", ""},
		{"an aim that opens", []string{rule("a", "limb.p", "height aim mm(30)"), always("b", "height aim mm(20)")}, "", "height", "settled 20 provisional", "open [20 30] if limb.p is yes"},
		{"a limit that narrows what is open", []string{rule("a", "limb.p", "height at_most mm(30)"), always("b", "height at_least mm(20)")}, "", "height", "open 20..60 provisional", "open [20 30] if limb.p is yes"},
		{"a limit that does not bind", []string{rule("a", "limb.p", "height at_most mm(30)"), always("b", "height aim mm(20)")}, "", "height", "settled 20", ""},
	} {
		t.Run(x.name, func(t *testing.T) {
			c := advise(t, x.given, x.rules...).Limbs["left"].Choices[x.choice]
			same(t, "choice", said(c), x.want)
			if x.choice == "height" && strings.Contains(x.rules[0], "limb.gap") { // samples: shown as examples
				for _, p := range c.CouldBecome {
					if !strings.Contains(p.If, ", for example") {
						t.Errorf("a sample is not called one: %s", p.If)
					}
				}
				if c.Explored.Complete || len(c.CouldBecome) < 5 {
					t.Errorf("explored %+v, %d possibilities", c.Explored, len(c.CouldBecome))
				}
				return
			}
			same(t, "could become", couldOf(c), x.could)
		})
	}
}

// What could change is told with all that is needed for it and no more, in words and as data.
func TestCouldBecomeIf(t *testing.T) {
	c := advise(t, "", rule("a", "limb.p && limb.flex <= deg(5) && other.tone > tone_scale('1')", "trim favour low")).Limbs["left"].Choices["trim"]
	same(t, "if", c.CouldBecome[0].If, "Dorsiflexion is 5° or less, Tone (right) is 1+ or more and Sign P is yes")
	same(t, "data", couldOf(c), "settled low if limb.flex is 5° or less and other.tone is 1+ or more and limb.p is yes")
	same(t, "explored", fmt.Sprint(*c.Explored), "{8 8 true []}")
	c = advise(t, "", rule("a", "recorded(limb.p)", "trim favour low")).Limbs["left"].Choices["trim"]
	same(t, "whatever", c.CouldBecome[0].If, "whatever the missing values are")
}

// Cells are widened together, never beyond what is enough: here each band can be widened alone, and
// both together would let in a case that comes out differently.
func TestWhenIsEnough(t *testing.T) {
	c := advise(t, "", rule("a", "limb.flex > deg(0) && limb.knee > deg(0)", "trim only low"),
		rule("b", "limb.flex > deg(10) && limb.knee > deg(10)", "trim only high")).Limbs["left"].Choices["trim"]
	same(t, "could become", couldOf(c), "conflict if limb.flex is more than 10° and limb.knee is more than 10°; settled low if limb.flex is more than 0° and limb.knee is more than 0° and up to 10°")
}

// With too many completions to try, that is said, and the result stays provisional: it is left at that once
// 4,096 in a row have brought nothing new.
func TestBoundHit(t *testing.T) {
	var rules []string
	for i := range 10 {
		for _, side := range []string{"limb", "other"} {
			m := []string{"p", "q", "r", "s"}[i%4]
			rules = append(rules, rule(fmt.Sprintf("%s%d", side, i), fmt.Sprintf("%[1]s.%[2]s && %[1]s.flex > deg(%[3]d) && %[1]s.knee > deg(%[4]d)", side, m, 3*i, -4*i), "strong", "trim favour "+[]string{"low", "middle"}[i%2]))
		}
	}
	rules = append(rules, always("z", "trim favour high"))
	c := advise(t, "", rules...).Limbs["left"].Choices["trim"]
	if c.Explored == nil || c.Explored.Complete || c.Explored.Tried < 4096 || c.Explored.Tried >= 65536 || len(c.Explored.Of) < 6 {
		t.Fatalf("explored: %+v", c.Explored)
	}
	same(t, "trim", said(c), "settled high provisional")
	statuses := map[string]bool{}
	for _, x := range c.CouldBecome {
		statuses[fmt.Sprint(x.Status, " ", x.Value)] = true
	}
	for _, want := range []string{"settled low", "settled middle"} {
		if !statuses[want] {
			t.Errorf("%s was not found among %v", want, statuses)
		}
	}
	// A rule alone that reads too much: nothing can be tried, and nothing is claimed.
	c = advise(t, "", rule("a", "limb.flex > limb.knee && limb.lift > limb.gap && other.flex > other.knee", "trim favour low")).Limbs["left"].Choices["trim"]
	if said(c) != "unanswered provisional" || c.Explored.Tried != 0 || c.Explored.Complete || len(c.CouldBecome) > 0 {
		t.Errorf("%s, explored %+v, could %s", said(c), c.Explored, couldOf(c))
	}
	// Where even free rules can't change it, the result stands.
	c = advise(t, "", rule("a", "limb.flex > limb.knee && limb.lift > limb.gap && other.flex > other.knee", "trim favour low"), always("b", "trim only high")).Limbs["left"].Choices["trim"]
	if said(c) != "settled high" || c.Explored == nil || c.Explored.Complete {
		t.Errorf("%s, explored %+v", said(c), c.Explored)
	}
}

// missing: what decides something, the measure that settles most first.
func TestMissing(t *testing.T) {
	for _, x := range []struct {
		name, given string
		rules       []string
		want        string
		immaterial  string
	}{
		{"nothing", "p=true", []string{rule("a", "limb.p", "trim favour low")}, "", ""},
		{"one", "", []string{rule("a", "limb.p", "trim favour low")}, "limb.p decides trim settles 1", ""},
		{"two choices", "", []string{rule("a", "limb.p", "trim favour low", "closure favour strap")}, "limb.p decides trim closure settles 2", ""},
		{"the one that settles more first", "", []string{rule("a", "limb.q", "trim favour low"), rule("b", "limb.s", "closure favour strap", "height aim mm(3)")},
			"limb.s decides closure height settles 2, limb.q decides trim settles 1", ""},
		{"neither settles alone", "", []string{rule("a", "limb.p && limb.q", "trim favour low")}, "limb.p decides trim settles 0, limb.q decides trim settles 0", ""},
		{"level: the one that is taken first", "", []string{rule("a", "limb.s && limb.p", "trim favour low")}, "limb.p decides trim settles 0, limb.s decides trim settles 0", ""},
		{"the one that settles more of its range first", "", []string{rule("a", "limb.p && limb.tone == tone_scale('3')", "trim favour low")}, "limb.tone decides trim settles 0, limb.p decides trim settles 0", ""},
		{"cautions count too", "", []string{rule("a", "limb.p", "trim favour low"), caution("c", "limb.q", `level "contraindication"`), caution("d", "limb.q")},
			"limb.q decides caution.c caution.d settles 2, limb.p decides trim settles 1", ""},
		{"a note can wait", "", []string{rule("a", "limb.p", "trim favour low"), caution("c", "limb.q", `level "note"`), caution("d", "limb.q", `level "note"`)},
			"limb.p decides trim settles 1, limb.q decides caution.c caution.d settles 2", ""},
		{"what can't change anything", "", []string{rule("a", "limb.p && limb.q", "trim favour low"), always("b", "trim only high"), rule("c", "limb.q", "closure favour wrap")},
			"limb.q decides closure settles 1", "limb.p"},
		{"read by the formula of a rule that can't fire", "p=false", []string{rule("a", "limb.p", "height aim limb.lift")}, "", "limb.lift"},
		{"read by the formula of a rule that is set aside", "p=true", []string{always("a", "height aim limb.lift"), rule("b", "limb.p", "overrides a")}, "", "limb.lift"},
		{"a condition that is false anyway", "p=false", []string{rule("a", "limb.p && limb.q", "trim favour low")}, "", "limb.q"},
		{"what decides the person's choice", "", []string{rule("a", "limb.p", "shoe favour deep"), rule("b", "limb.q && limb.p", "pad favour none")}, "", "limb.q"},
		{"whether it is recorded", "", []string{rule("a", "recorded(limb.p)", "trim favour low")}, "limb.p decides trim settles 1", ""},
		{"whatever the value is", "", []string{rule("a", "limb.p || !limb.p || limb.q", "trim favour low")}, "", "limb.p limb.q"},
		{"the other limb's", "", []string{rule("a", "other.p", "trim favour low")}, "other.p decides trim settles 1", ""},
	} {
		r := advise(t, x.given, x.rules...).Limbs["left"]
		same(t, x.name, missingOf(r), x.want)
		same(t, x.name+": immaterial", strings.Join(r.Immaterial, " "), x.immaterial)
	}
	m := advise(t, "p=!pain", rule("a", "limb.p", "trim favour low")).Limbs["left"].Missing[0]
	same(t, "why missing", fmt.Sprint(m.Label, " ", m.Taken, " ", m.Reason), "Sign P lying pain")
}

func TestCautions(t *testing.T) {
	for _, x := range []struct{ name, when, given, want, could, waits string }{
		{"fired", "limb.p", "p=true", "c fired", "", ""},
		{"did not fire", "limb.p", "p=false", "", "", ""},
		{"pending", "limb.p", "", "c pending provisional", "did_not_fire if limb.p is no; fired if limb.p is yes", "limb.p"},
		{"pending on two", "limb.p && limb.q", "p=true", "c pending provisional", "did_not_fire if limb.q is no; fired if limb.q is yes", "limb.q"},
		{"fires whatever is missing", "limb.p || !limb.p", "", "c fired", "", ""},
		{"does not fire whatever is missing", "limb.p && !limb.p", "", "", "", ""},
		{"fires for every plausible value", "limb.lift < mm(200)", "", "c fired", "", ""},
		{"fires as long as it is not recorded", "!recorded(limb.p)", "", "c fired provisional", "did_not_fire", ""},
		{"failed", "limb.lift / limb.gap > ratio(1)", "lift=1 gap=0", "c pending provisional", "", ""},
		{"unknown through a formula", "limb.lift / limb.gap > ratio(1)", "lift=10", "c pending provisional", "examples", "limb.gap"},
	} {
		r := advise(t, x.given, caution("c", x.when)).Limbs["left"]
		same(t, x.name, cautionsOf(r), x.want)
		if len(r.Cautions) == 0 {
			if r.Traces["caution.c"] == nil {
				t.Errorf("%s: no trace", x.name)
			}
			continue
		}
		c := r.Cautions[0]
		if x.could != "examples" {
			same(t, x.name+": could become", possibilities(c.CouldBecome), x.could)
		}
		same(t, x.name+": waits for", strings.Join(c.WaitsFor, " "), x.waits)
	}
	o := advise(t, "p=true flex=3", caution("b", "limb.p", `level "note"`), caution("a", "limb.p", `level "precaution"`), caution("d", "limb.q", `level "contraindication"`),
		caution("c", "limb.p", `level "contraindication"`, `says "It is ${limb.flex}."`, `act "Look at ${limb.knee}."`), caution("e", "person.driver"))
	same(t, "gravest first, fired before pending", cautionsOf(o.Limbs["left"]), "c fired, d pending provisional, a fired, b fired")
	same(t, "the person's", cautionsOf(o.Person), "e pending provisional")
	c := o.Limbs["left"].Cautions[0]
	same(t, "texts", c.Says+" "+c.Act, "It is 3°. Look at unknown.")
	if c.Trace == nil || c.Trace.When.Text != "limb.p" || c.Level != "contraindication" || c.Basis != "common_practice" {
		t.Errorf("caution %+v", c)
	}
}
