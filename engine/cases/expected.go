package cases

import (
	"fmt"
	"math"
	"slices"
	"sort"
	"strconv"
	"strings"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
)

// expected is what a case expects of a choice.
type expected struct {
	status      string // "": settled or default
	options     []string
	lo, hi, tol float64
	numeric     bool
	rules       []string // of a conflict; nil: any
	provisional string   // "", "yes", "no"
}

// parseExpected reads a line such as "open: a, b", "20 mm +- 1" or "anterior (provisional)". The
// second result says what is wrong, or is empty.
func parseExpected(c *vocab.Choice, text string) (expected, string) {
	x := expected{}
	if rest, ok := strings.CutSuffix(text, "(not provisional)"); ok {
		x.provisional, text = "no", strings.TrimSpace(rest)
	} else if rest, ok := strings.CutSuffix(text, "(provisional)"); ok {
		x.provisional, text = "yes", strings.TrimSpace(rest)
	}
	word, rest, colon := strings.Cut(text, ":")
	word, rest = strings.TrimSpace(word), strings.TrimSpace(rest)
	switch word {
	case reason.Unanswered, reason.LeftToClinician:
		x.status = word
		if colon {
			return x, word + " takes nothing behind it."
		}
		return x, ""
	case reason.Conflict:
		x.status = word
		if colon {
			x.rules = list(rest)
		}
		return x, ""
	case reason.Settled, reason.Default, reason.IsOpen:
		if !colon {
			if c.Rank(word) >= 0 {
				break
			}
			return x, fmt.Sprintf("%s says what it is behind a colon, for example %q.", word, word+": "+sample(c))
		}
		x.status, text = word, rest
	}
	if c.Numeric() {
		x.numeric = true
		return x, x.number(c, text)
	}
	x.options = list(text)
	for _, o := range x.options {
		if c.Rank(o) < 0 {
			return x, fmt.Sprintf("%s has no option %q. %s", c.Name, o, source.DidYouMean(o, c.Options, "Its options are "+source.And(c.Options)+"."))
		}
	}
	if x.status == reason.IsOpen && len(x.options) < 2 {
		return x, "Several options are open, for example open: " + strings.Join(c.Options[:2], ", ") + "."
	}
	if x.status != reason.IsOpen && len(x.options) != 1 {
		return x, "One option can be picked; several that are level are written open: " + strings.Join(c.Options[:2], ", ") + "."
	}
	sort.Strings(x.options)
	return x, ""
}

func sample(c *vocab.Choice) string {
	if c.Numeric() {
		return "20 " + c.Unit.Code
	}
	return c.Options[0]
}

func list(text string) []string {
	var out []string
	for _, s := range strings.Split(text, ",") {
		if s = strings.TrimSpace(s); s != "" {
			out = append(out, s)
		}
	}
	sort.Strings(out)
	return out
}

// number reads "20 mm", "20 mm +- 1" or, for an open one, "10..20 mm".
func (x *expected) number(c *vocab.Choice, text string) string {
	example := "For example 20 " + c.Unit.Code + ", 20 " + c.Unit.Code + " +- 1, or open: 10..20 " + c.Unit.Code + "."
	if lo, hi, ok := strings.Cut(text, ".."); ok {
		to, err := clinical.ParseQuantity(strings.TrimSpace(hi))
		from, err2 := strconv.ParseFloat(strings.TrimSpace(lo), 64)
		if err != nil || err2 != nil || to.Dimension() != c.Unit.Dimension {
			return "A range is written with one unit behind it. " + example
		}
		x.lo = toUnit(from, to.Unit(), c.Unit)
		x.hi, _ = to.In(c.Unit)
		x.tol = 1e-6
		x.status = reason.IsOpen
		return ""
	}
	q, problem := parseQuantity(text)
	if problem != "" || q.unit.Dimension != c.Unit.Dimension {
		return "A number is written with its unit. " + example
	}
	x.lo = toUnit(q.value, q.unit, c.Unit)
	x.hi, x.tol = x.lo, math.Abs(toUnit(q.tol, q.unit, c.Unit))
	return ""
}

func toUnit(v float64, from, to clinical.Unit) float64 {
	q, err := clinical.NewQuantity(v, from)
	if err != nil {
		return math.NaN()
	}
	at, _ := q.In(to)
	return at
}

// holds reports whether a choice is as expected.
func (x expected) holds(c *reason.Choice) bool {
	if c == nil {
		return false
	}
	if x.provisional == "yes" && !c.Provisional || x.provisional == "no" && c.Provisional {
		return false
	}
	if x.status == "" {
		if c.Status != reason.Settled && c.Status != reason.Default {
			return false
		}
	} else if x.status != c.Status {
		return false
	}
	switch c.Status {
	case reason.Conflict:
		return x.rules == nil || same(x.rules, c.Conflict)
	case reason.Unanswered, reason.LeftToClinician:
		return true
	case reason.IsOpen:
		if x.numeric {
			return c.Range != nil && near(c.Range[0], x.lo, x.tol) && near(c.Range[1], x.hi, x.tol)
		}
		return same(x.options, c.Among)
	}
	if x.numeric {
		v, ok := c.Value.(float64)
		return ok && near(v, x.lo, x.tol)
	}
	return c.Value == x.options[0]
}

func near(a, b, tol float64) bool { return math.Abs(a-b) <= tol+1e-9 }

func same(a, b []string) bool {
	b = append([]string(nil), b...)
	sort.Strings(b)
	return strings.Join(a, ",") == strings.Join(b, ",")
}

// measured is what a case expects of a quantity: "6.2 deg +- 0.1", or unknown.
type measured struct {
	value, tol float64
	unit       clinical.Unit
	unknown    bool
}

func parseQuantity(text string) (measured, string) {
	if text == "unknown" {
		return measured{unknown: true}, ""
	}
	text = strings.ReplaceAll(text, "±", "+-")
	value, tol, has := strings.Cut(text, "+-")
	q, err := clinical.ParseQuantity(strings.TrimSpace(value))
	if err != nil {
		return measured{}, "It is written as a number with its unit, for example 6.2 deg or 6.2 deg +- 0.1."
	}
	m := measured{unit: q.Unit(), tol: 1e-6}
	m.value, _ = q.In(q.Unit())
	if has {
		t := strings.TrimSpace(tol)
		if code := q.Unit().Code; code != "1" { // the 1 of a ratio is no unit behind a tolerance such as 0.1
			t = strings.TrimSpace(strings.TrimSuffix(t, code))
		}
		if m.tol, err = strconv.ParseFloat(t, 64); err != nil || !(m.tol >= 0) {
			return measured{}, "Behind +- stands a number, for example 6.2 deg +- 0.1."
		}
	}
	return m, ""
}

func (m measured) holds(got *reason.Measured) bool {
	if m.unknown || got == nil {
		return m.unknown && got == nil
	}
	u, ok := clinical.UnitByCode(got.Unit)
	return ok && u.Dimension == m.unit.Dimension && near(toUnit(got.Value, u, m.unit), m.value, m.tol)
}

// checkExpectation reports what can't be expected.
func checkExpectation(rs *ruleset.Ruleset, a *assess.Assessment, x *ruleset.Expectation) source.Diagnostics {
	var diags source.Diagnostics
	fail := func(where source.Range, message, hint string) {
		diags = append(diags, source.Errorf(where, "expectation", "%s", message).Hinting("%s", hint))
	}
	if a != nil && x.Of != "person" && !marked(a, x.Of) {
		fail(x.Where, fmt.Sprintf("The case marks no device for the %s limb, so nothing is advised for it.", x.Of), fmt.Sprintf("Add %q to device_for, or expect another side.", x.Of))
	}
	for _, e := range x.Choices {
		c := rs.Vocabulary.Choice(e.Name)
		if (c.Of == vocab.Person) != (x.Of == "person") {
			fail(e.Where, fmt.Sprintf("%s is decided of the %s.", e.Name, c.Of), fmt.Sprintf("Expect it under %q.", map[bool]string{true: "person", false: "left\" or \"right"}[c.Of == vocab.Person]))
		} else if _, problem := parseExpected(c, e.Text); problem != "" {
			fail(e.Where, fmt.Sprintf("What is expected of %s can't be read.", e.Name), problem)
		}
	}
	for _, e := range append(x.Findings[:len(x.Findings):len(x.Findings)], x.Quantities...) {
		for _, f := range rs.Facts {
			if f.Name == e.Name && f.Limb != (x.Of != "person") {
				fail(e.Where, fmt.Sprintf("%s is worked out for %s.", e.Name, map[bool]string{true: "each limb", false: "the person"}[f.Limb]), "Expect it there.")
			}
		}
	}
	for _, e := range x.Findings {
		if e.Text != "true" && e.Text != "false" && e.Text != "unknown" {
			fail(e.Where, fmt.Sprintf("A finding is true, false or unknown, and %s is expected to be %q.", e.Name, e.Text), "Write true, false or \"unknown\".")
		}
	}
	for _, e := range x.Quantities {
		if _, problem := parseQuantity(e.Text); problem != "" {
			fail(e.Where, fmt.Sprintf("What is expected of %s can't be read.", e.Name), problem)
		}
	}
	checkNames(rs, x, fail)
	return diags
}

func marked(a *assess.Assessment, side string) bool {
	for _, s := range a.DeviceFor {
		if string(s) == side {
			return true
		}
	}
	return false
}

// checkNames reports rules and cautions that are not there, or that run elsewhere.
func checkNames(rs *ruleset.Ruleset, x *ruleset.Expectation, fail func(source.Range, string, string)) {
	limb := map[string]bool{}
	var rules, cautions []string
	for _, r := range rs.Rules {
		rules = append(rules, r.Name)
		limb[r.Name] = r.Limb
	}
	for _, c := range rs.Cautions {
		cautions = append(cautions, c.Name)
		limb[c.Name] = c.Limb
	}
	check := func(texts []source.Text, kind string, names []string) {
		for _, t := range texts {
			found := false
			for _, n := range names {
				found = found || n == t.S
			}
			switch {
			case !found:
				fail(t.All(), fmt.Sprintf("There is no %s %q.", kind, t.S), source.DidYouMean(t.S, names, "Name one of this ruleset, or one it builds on with its ruleset in front."))
			case limb[t.S] != (x.Of != "person"):
				fail(t.All(), fmt.Sprintf("%s is worked out for %s.", t.S, map[bool]string{true: "each limb", false: "the person"}[limb[t.S]]), "Expect it there.")
			}
		}
	}
	for _, e := range x.Choices {
		c := rs.Vocabulary.Choice(e.Name)
		expects, problem := parseExpected(c, e.Text)
		for _, name := range expects.rules {
			if problem == "" && !slices.Contains(rules, name) {
				fail(e.Where, fmt.Sprintf("%s is expected to be a conflict of %s, and there is no rule %q.", e.Name, source.And(expects.rules), name),
					source.DidYouMean(name, rules, "Name one of this ruleset, or one it builds on with its ruleset in front."))
			}
		}
	}
	check(x.Fires, "rule", rules)
	check(x.Cautions, "caution", cautions)
	check(x.Silent, "rule or caution", append(rules, cautions...))
}
