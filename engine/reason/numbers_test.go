package reason_test

import (
	"fmt"
	"strings"
	"testing"

	"crus/engine/reason"
)

// numberSaid writes a number with its interval: "settled 20 [10,30]".
func numberSaid(c *reason.Choice) string {
	out := said(c)
	if c.Interval != nil {
		out += fmt.Sprintf(" [%g,%g]", c.Interval[0], c.Interval[1])
	}
	return out
}

func TestNumbers(t *testing.T) {
	for _, x := range []struct {
		name   string
		rules  []string
		choice string
		want   string
	}{
		{"no rule speaks", nil, "height", "unanswered [0,60]"},
		{"default", nil, "angle", "default 0 [-10,10]"},
		{"left to the clinician", []string{left("height")}, "height", "left_to_clinician [0,60]"},
		{"default ahead of the clinician", []string{left("angle")}, "angle", "default 0 [-10,10]"},

		{"at least", []string{always("a", "height at_least mm(10)")}, "height", "open 10..60 [10,60]"},
		{"at most", []string{always("a", "height at_most mm(10)")}, "height", "open 0..10 [0,10]"},
		{"an interval", []string{always("a", "height at_least mm(10)"), always("b", "height at_most mm(20)")}, "height", "open 10..20 [10,20]"},
		{"the tightest limits", []string{always("a", "height at_least mm(10)"), always("b", "height at_least mm(12)"), always("c", "height at_most mm(20)"), always("d", "height at_most mm(18)")}, "height", "open 12..18 [12,18]"},
		{"one point", []string{always("a", "height at_least mm(10)"), always("b", "height at_most mm(10)")}, "height", "settled 10 [10,10]"},
		{"one point off the grid", []string{always("a", "height at_least mm(10.5)", "height at_most mm(10.5)")}, "height", "settled 10.5 [10.5,10.5]"},
		{"limits beyond the range leave the range", []string{always("a", "height at_least mm(-5)", "height at_most mm(100)")}, "height", "open 0..60 [0,60]"},
		{"a limit beside a default", []string{always("a", "angle at_least deg(2)")}, "angle", "open 2..10 [2,10]"},
		{"at least the end of the range", []string{always("a", "height at_least mm(60)")}, "height", "settled 60 [60,60]"},
		{"other units", []string{always("a", "height at_least cm(1.2)", "height at_most inch(1)")}, "height", "open 12..25.4 [12,25.4]"},

		{"an aim", []string{always("a", "height aim mm(20)")}, "height", "settled 20 [0,60]"},
		{"an aim ahead of the default", []string{always("a", "angle aim deg(4)")}, "angle", "settled 4 [-10,10]"},
		{"an aim off the grid", []string{always("a", "height aim mm(20.4)")}, "height", "settled 20 [0,60]"},
		{"an aim off the grid of two", []string{always("a", "angle aim deg(-3.5)")}, "angle", "settled -4 [-10,10]"},
		{"aims that are equal", []string{always("a", "height aim mm(20)"), always("b", "height aim cm(2)")}, "height", "settled 20 [0,60]"},
		{"aims within the rounding", []string{always("a", "height aim mm(20)"), always("b", "height aim mm(20.8)")}, "height", "settled 20 [0,60]"},
		{"aims just within the rounding", []string{always("a", "height aim mm(20.2)"), always("b", "height aim mm(21.2)")}, "height", "settled 21 [0,60]"},
		{"aims just beyond the rounding", []string{always("a", "height aim mm(20)"), always("b", "height aim mm(21.1)")}, "height", "open 20..21.1 [0,60]"},
		{"aims that differ", []string{always("a", "height aim mm(20)"), always("b", "height aim mm(30)")}, "height", "open 20..30 [0,60]"},
		{"three aims in steps of the rounding", []string{always("a", "height aim mm(20)"), always("b", "height aim mm(21)"), always("c", "height aim mm(22)")}, "height", "open 20..22 [0,60]"},
		{"strong ahead of conditional", []string{always("a", "strong", "height aim mm(20)"), always("b", "height aim mm(30)"), always("c", "height aim mm(30)")}, "height", "settled 20 [0,60]"},
		{"strong aims that differ", []string{always("a", "strong", "height aim mm(20)"), always("b", "strong", "height aim mm(25)"), always("c", "height aim mm(30)")}, "height", "open 20..25 [0,60]"},

		{"an aim above the interval", []string{always("a", "height aim mm(20)"), always("b", "height at_most mm(15)")}, "height", "settled 15 [0,15]"},
		{"an aim below the interval", []string{always("a", "height aim mm(20)"), always("b", "height at_least mm(25)")}, "height", "settled 25 [25,60]"},
		{"an aim beyond the range", []string{always("a", "height aim mm(80)")}, "height", "settled 60 [0,60]"},
		{"aims that the limits bring together", []string{always("a", "height aim mm(20)"), always("b", "height aim mm(40)"), always("c", "height at_most mm(20)")}, "height", "settled 20 [0,20]"},
		{"aims that the limits bring nearer", []string{always("a", "height aim mm(20)"), always("b", "height aim mm(40)"), always("c", "height at_most mm(25)")}, "height", "open 20..25 [0,25]"},
		{"rounding stays within: above", []string{always("a", "height aim mm(20)"), always("b", "height at_most mm(15.6)")}, "height", "settled 15 [0,15.6]"},
		{"rounding stays within: below", []string{always("a", "height aim mm(20)"), always("b", "height at_least mm(25.2)")}, "height", "settled 26 [25.2,60]"},
		{"no grid value within", []string{always("a", "height aim mm(20)"), always("b", "height at_least mm(15.2)", "height at_most mm(15.4)")}, "height", "settled 15.4 [15.2,15.4]"},
		{"a strong limit is no stronger", []string{always("a", "strong", "height at_least mm(10)"), always("b", "height at_most mm(10)")}, "height", "settled 10 [10,10]"},

		{"limits can't hold together", []string{always("a", "height at_least mm(20)"), always("b", "height at_most mm(10)")}, "height", "conflict a b"},
		{"an aim does not end a conflict", []string{always("a", "height at_least mm(20)"), always("b", "height at_most mm(10)"), always("c", "strong", "height aim mm(20)")}, "height", "conflict a b"},
		{"one rule alone", []string{always("a", "height at_least mm(20)", "height at_most mm(10)")}, "height", "conflict a"},
		{"one rule beyond the range", []string{always("a", "height at_least mm(70)")}, "height", "conflict a"},
		{"one rule below the range", []string{always("a", "height at_most mm(-1)")}, "height", "conflict a"},
		{"one rule beyond the range beside another limit", []string{always("a", "height at_most mm(10)"), always("b", "height at_least mm(70)")}, "height", "conflict b"},
		{"one rule alone between two others", []string{always("a", "height at_least mm(30)"), always("b", "height at_most mm(5)"), always("c", "height at_least mm(20)", "height at_most mm(10)")}, "height", "conflict c"},
		{"several pairs: the tightest limits", []string{always("a", "height at_least mm(20)"), always("b", "height at_most mm(10)"), always("c", "height at_least mm(30)"), always("d", "height at_most mm(5)")}, "height", "conflict c d"},
		{"several alike: the first ones", []string{always("a", "height at_most mm(10)"), always("b", "height at_least mm(20)"), always("c", "height at_most mm(10)"), always("d", "height at_least mm(20)")}, "height", "conflict a b"},
		{"formulas", []string{always("a", "height at_least limb.lift * 2"), always("b", "height at_most limb.lift - limb.gap"), always("c", "angle aim limb.flex / 2")}, "height", "conflict a b"},
	} {
		t.Run(x.name, func(t *testing.T) {
			o := advise(t, "lift=10 gap=3 flex=-8", x.rules...)
			same(t, x.choice, numberSaid(o.Limbs["left"].Choices[x.choice]), x.want)
		})
	}
}

// numbersOf writes every limit and aim: "a at_least 10 limit, b aim 20->15 decides".
func numbersOf(c *reason.Choice) string {
	var out []string
	for _, n := range c.Numbers {
		s := fmt.Sprintf("%s %s %g", n.Rule, n.Verb, n.Value)
		if n.Moved != nil {
			s += fmt.Sprintf("->%g", *n.Moved)
		}
		out = append(out, s+" "+n.State)
	}
	return strings.Join(out, ", ")
}

func TestNumbersSay(t *testing.T) {
	for _, x := range []struct {
		rules []string
		want  string
	}{
		{[]string{always("a", "height at_least mm(10)", "height aim mm(20)"), always("b", "height at_most mm(15)")}, "a at_least 10 limit, a aim 20->15 decides, b at_most 15 limit"},
		{[]string{always("a", "strong", "height aim mm(20)"), always("b", "height aim mm(70)")}, "a aim 20 decides, b aim 70->60 outweighed"},
		{[]string{always("a", "height aim mm(20)"), always("b", "height aim mm(30)")}, "a aim 20 decides, b aim 30 decides"},
		{[]string{always("a", "height at_least mm(20)"), always("b", "height at_most mm(10)"), always("c", "height aim mm(20)")}, "a at_least 20 limit, b at_most 10 limit, c aim 20 outweighed"},
		{[]string{always("a", "height aim limb.lift")}, ""}, // not known yet
	} {
		c := advise(t, "", x.rules...).Limbs["left"].Choices["height"]
		same(t, strings.Join(x.rules, ""), numbersOf(c), x.want)
		same(t, "unit", c.Unit, "mm")
	}
}

// Where limits move an aim, the trace says so.
func TestMovedAimIsSaid(t *testing.T) {
	o := advise(t, "p=true", rule("a", "limb.p", "height aim mm(20)", "height at_most mm(15)", "review aim weeks(60)", "angle aim deg(4)"))
	var did []string
	for _, e := range o.Limbs["left"].Rules["a"].Trace.Advises {
		did = append(did, e.Did)
	}
	same(t, "did", strings.Join(did, " "), "Not above 15 mm. Aimed at 20 mm, which the limits move to 15 mm. Aimed at 60 weeks, which the limits move to 52 weeks. Aimed at 4°.")
}

// A formula that is not known leaves the choice as if the rule had said nothing yet, and provisional.
func TestUnknownFormula(t *testing.T) {
	for _, x := range []struct{ advice, given, want string }{
		{"height aim limb.lift", "lift=12", "settled 12"},
		{"height aim limb.lift", "", "unanswered provisional"},
		{"angle aim limb.flex", "", "default 0 provisional"},
		{"height at_most limb.lift * 2", "", "unanswered provisional"},
		{"height aim mm(10) * (limb.lift / limb.gap < ratio(2) ? 1 : 2)", "lift=3 gap=0", "unanswered provisional"},
	} {
		same(t, x.advice+" given "+x.given, said(advise(t, x.given, always("a", x.advice)).Limbs["left"].Choices[strings.Fields(x.advice)[0]]), x.want)
	}
}
