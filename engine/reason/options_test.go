package reason_test

import (
	"strings"
	"testing"

	"crus/engine/reason"
)

// Rules that are always true, so that a row shows just what they make of a choice.
func always(name string, parts ...string) string { return rule(name, "true", parts...) }

func TestOptions(t *testing.T) {
	for _, x := range []struct {
		name  string
		rules []string
		want  map[string]string
	}{
		{"no rule speaks", []string{always("a", "closure favour strap")}, map[string]string{"trim": "unanswered", "pad": "default none", "closure": "settled strap"}},
		{"left to the clinician", []string{left("trim"), left("pad")}, map[string]string{"trim": "left_to_clinician", "pad": "default none"}},
		{"left to the clinician, and a rule speaks", []string{left("trim"), always("a", "trim favour low")}, map[string]string{"trim": "settled low"}},
		{"left to the clinician, and a limit leaves two", []string{left("trim"), always("a", "trim never low")}, map[string]string{"trim": "open middle high"}},

		{"only one", []string{always("a", "trim only middle")}, map[string]string{"trim": "settled middle"}},
		{"only two", []string{always("a", "trim only low high")}, map[string]string{"trim": "open low high"}},
		{"only all", []string{always("a", "trim only low middle high")}, map[string]string{"trim": "open low middle high"}},
		{"never one", []string{always("a", "trim never middle")}, map[string]string{"trim": "open low high"}},
		{"never two", []string{always("a", "trim never low high")}, map[string]string{"trim": "settled middle"}},
		{"at least the lowest", []string{always("a", "trim at_least low")}, map[string]string{"trim": "open low middle high"}},
		{"at least the middle", []string{always("a", "trim at_least middle")}, map[string]string{"trim": "open middle high"}},
		{"at least the highest", []string{always("a", "trim at_least high")}, map[string]string{"trim": "settled high"}},
		{"at most the highest", []string{always("a", "trim at_most high")}, map[string]string{"trim": "open low middle high"}},
		{"at most the middle", []string{always("a", "trim at_most middle")}, map[string]string{"trim": "open low middle"}},
		{"at most the lowest", []string{always("a", "trim at_most low")}, map[string]string{"trim": "settled low"}},
		{"both ends", []string{always("a", "trim at_least middle"), always("b", "trim at_most middle")}, map[string]string{"trim": "settled middle"}},
		{"both ends in one rule", []string{always("a", "trim at_least middle", "trim at_most middle")}, map[string]string{"trim": "settled middle"}},
		{"a limit beside a default", []string{always("a", "pad never none")}, map[string]string{"pad": "settled soft"}},
		{"a limit that leaves the default", []string{always("a", "pad never soft")}, map[string]string{"pad": "settled none"}},
		{"a limit that leaves all beside a default", []string{always("a", "pad only none soft")}, map[string]string{"pad": "open none soft"}},

		{"favour one", []string{always("a", "trim favour high")}, map[string]string{"trim": "settled high"}},
		{"favour two", []string{always("a", "trim favour low high")}, map[string]string{"trim": "open low high"}},
		{"two against one", []string{always("a", "trim favour low"), always("b", "trim favour high"), always("c", "trim favour high")}, map[string]string{"trim": "settled high"}},
		{"one each", []string{always("a", "trim favour low"), always("b", "trim favour high")}, map[string]string{"trim": "open low high"}},
		{"one strong against three conditional", []string{always("a", "strong", "trim favour low"), always("b", "trim favour high"), always("c", "trim favour high"), always("d", "trim favour high")},
			map[string]string{"trim": "settled low"}},
		{"strong level, conditional ahead", []string{always("a", "strong", "trim favour low"), always("b", "strong", "trim favour high"), always("c", "trim favour high")},
			map[string]string{"trim": "settled high"}},
		{"strong and conditional level", []string{always("a", "strong", "trim favour low"), always("b", "strong", "trim favour high"), always("c", "trim favour low"), always("d", "trim favour high")},
			map[string]string{"trim": "open low high"}},
		{"two strong against one strong and two conditional", []string{always("a", "strong", "trim favour low"), always("b", "strong", "trim favour low"), always("c", "strong", "trim favour high"),
			always("d", "trim favour high"), always("e", "trim favour high")}, map[string]string{"trim": "settled low"}},
		{"favour the default", []string{always("a", "pad favour none")}, map[string]string{"pad": "settled none"}},
		{"favour against the default", []string{always("a", "pad favour soft")}, map[string]string{"pad": "settled soft"}},

		{"favour what is removed", []string{always("a", "trim favour low"), always("b", "trim never low")}, map[string]string{"trim": "open middle high"}},
		{"favour what is removed, one left", []string{always("a", "strong", "trim favour low"), always("b", "trim at_least high")}, map[string]string{"trim": "settled high"}},
		{"favours among what is left", []string{always("a", "strong", "trim favour low"), always("b", "trim at_least middle"), always("c", "trim favour high")}, map[string]string{"trim": "settled high"}},
		{"limit and favour in one rule", []string{always("a", "trim never low", "trim favour high")}, map[string]string{"trim": "settled high"}},
		{"a strong limit is no stronger", []string{always("a", "strong", "trim at_least middle"), always("b", "trim at_most middle")}, map[string]string{"trim": "settled middle"}},

		{"two rules can't hold together", []string{always("a", "trim only low"), always("b", "trim only high")}, map[string]string{"trim": "conflict a b"}},
		{"ordered limits can't hold together", []string{always("a", "trim at_most low"), always("b", "trim at_least middle")}, map[string]string{"trim": "conflict a b"}},
		{"three rules can't hold together", []string{always("a", "closure never strap"), always("b", "closure never shell"), always("c", "closure never wrap")}, map[string]string{"closure": "conflict a b c"}},
		{"one rule alone can't hold", []string{always("a", "trim at_least high", "trim at_most low"), always("b", "trim only low")}, map[string]string{"trim": "conflict a"}},
		{"a smaller set is found behind a larger one", []string{always("a", "closure never strap"), always("b", "closure never shell"), always("c", "closure never wrap"), always("d", "closure never strap shell")},
			map[string]string{"closure": "conflict c d"}},
		{"several smallest sets: always the same one", []string{always("a", "closure only strap"), always("b", "closure only shell"), always("c", "closure only wrap")}, map[string]string{"closure": "conflict a b"}},
		{"favours don't belong to a conflict", []string{always("a", "trim only low"), always("b", "trim only high"), always("c", "strong", "trim favour low")}, map[string]string{"trim": "conflict a b"}},
		{"a default does not end a conflict", []string{always("a", "pad never none"), always("b", "pad never soft")}, map[string]string{"pad": "conflict a b"}},
	} {
		t.Run(x.name, func(t *testing.T) {
			o := advise(t, "", x.rules...)
			for choice, want := range x.want {
				same(t, choice, said(o.Limbs["left"].Choices[choice]), want)
			}
		})
	}
}

// optionsOf writes every option: "low removed(a b) middle picked(c) high outweighed".
func optionsOf(c *reason.Choice) string {
	var out []string
	for _, o := range c.Options {
		s := o.Option + " " + o.State
		if len(o.By) > 0 {
			s += "(" + strings.Join(o.By, " ") + ")"
		}
		if len(o.Favoured) > 0 {
			s += " though favoured(" + strings.Join(o.Favoured, " ") + ")"
		}
		out = append(out, s)
	}
	return strings.Join(out, ", ")
}

// For every option that was not picked the outcome says why not.
func TestWhyNot(t *testing.T) {
	for _, x := range []struct {
		name   string
		rules  []string
		choice string
		want   string
		why    []string
	}{
		{"settled by favours", []string{always("a", "trim favour high"), always("b", "trim favour high low"), always("c", "strong", "trim never middle")}, "trim",
			"low outweighed(b), middle removed(c), high picked(a b)",
			[]string{"Still possible, but favoured by b (1 conditional); the one ahead has 2 conditional.", "Removed by c.", "Ahead: favoured by a and b (2 conditional)."}},
		{"settled by limits", []string{always("a", "trim at_least high")}, "trim", "low removed(a), middle removed(a), high picked",
			[]string{"Removed by a.", "Removed by a.", "The only one that the limits leave."}},
		{"favoured and removed", []string{always("a", "strong", "trim favour low"), always("b", "trim never low"), always("c", "trim at_least high")}, "trim",
			"low removed(b c) though favoured(a), middle removed(c), high picked",
			[]string{"Favoured by a, but removed by b and c.", "Removed by c.", "The only one that the limits leave."}},
		{"level", []string{always("a", "strong", "trim favour low"), always("b", "strong", "trim favour high"), always("c", "trim favour low high")}, "trim",
			"low level(a c), middle outweighed, high level(b c)",
			[]string{"Level with the others: favoured by a and c (1 strong, 1 conditional).",
				"Still possible, but no rule favours it; the one ahead has 1 strong, 1 conditional.", "Level with the others: favoured by b and c (1 strong, 1 conditional)."}},
		{"default", nil, "pad", "none picked, soft outweighed", []string{"No rule spoke: this is the default.", "No rule spoke, and it is not the default."}},
		{"unanswered", nil, "closure", "strap level, shell level, wrap level", []string{"No rule spoke.", "No rule spoke.", "No rule spoke."}},
		{"left to the clinician", []string{left("closure")}, "closure", "strap level, shell level, wrap level",
			[]string{"The protocol leaves this to the clinician.", "The protocol leaves this to the clinician.", "The protocol leaves this to the clinician."}},
		{"conflict", []string{always("a", "pad never none"), always("b", "pad never soft"), always("c", "pad never soft")}, "pad", "none removed(a), soft removed(b c)",
			[]string{"Removed by a.", "Removed by b and c."}},
	} {
		t.Run(x.name, func(t *testing.T) {
			c := advise(t, "", x.rules...).Limbs["left"].Choices[x.choice]
			same(t, "options", optionsOf(c), x.want)
			for i, o := range c.Options {
				same(t, o.Option, o.Why, x.why[i])
			}
		})
	}
}

// A choice that is left to the clinician says why, and what to weigh.
func TestLeftToClinicianSays(t *testing.T) {
	o := advise(t, "flex=-5", block(`clinician_decides "closure"`, `because "With ${limb.flex} nothing is known."`, `consider ["hand function", "the flex of ${limb.flex}"]`))
	c := o.Limbs["left"].Choices["closure"]
	same(t, "status", said(c), "left_to_clinician")
	same(t, "because", c.Because, "With −5° nothing is known.")
	same(t, "consider", strings.Join(c.Consider, "; "), "hand function; the flex of −5°")
}

// What a rule's advice did is said beside it.
func TestDid(t *testing.T) {
	o := advise(t, "p=false lift=8",
		always("a", "trim at_least middle", "closure favour shell wrap", "height at_least limb.lift", "height at_most mm(30.5)", "height aim mm(20)", "trim only low middle high", "angle aim deg(-3)", "angle at_most limb.flex"),
		rule("b", "limb.p", "trim favour low"), rule("c", "limb.q", "trim favour low"), always("d", "overrides e"), always("e", "trim favour low"))
	r := o.Limbs["left"].Rules
	did := func(name string) string {
		x := r[name]
		if x == nil {
			x = o.Person.Rules[name]
		}
		var out []string
		for _, e := range x.Trace.Advises {
			out = append(out, e.Choice+": "+e.Did)
		}
		return strings.Join(out, " ")
	}
	same(t, "a", did("a"), "trim: Removed nothing. trim: Removed low. closure: Favoured shell and wrap. height: Not below 8 mm. height: Not above 30.5 mm. "+
		"height: Aimed at 20 mm. angle: Nothing yet: its number can't be worked out. angle: Aimed at −3°.")
	same(t, "b", did("b"), "trim: Nothing: the rule did not fire.")
	same(t, "c", did("c"), "trim: Nothing: the rule is pending.")
	same(t, "e", did("e"), "trim: Nothing: the rule is set aside.")
}
