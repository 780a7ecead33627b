package cases

import (
	"os"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"crus/engine/reason"
	"crus/engine/ruleset"
)

// today is a day before any review date in these tests.
var today = time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC)

const header = `ruleset "small" {
  title      = "Cases"
  version    = "1.0.0"
  status     = "draft"
  vocabulary = "tiny@1"
  applies    = "person.age >= years(16)"
}
rule "stiff" {
  when     = "limb.tone >= tone('2')"
  because  = "Tone of ${limb.tone}."
  strength = "strong"
  basis    = "common_practice"
  advise "shell" { favour = "anterior" }
  advise "block" { aim = "limb.heel" }
}
rule "soft" {
  when     = "limb.tone <= tone('2')"
  because  = "Soft."
  strength = "strong"
  basis    = "common_practice"
  advise "shell" { favour = "posterior" }
}
rule "never_any" {
  when     = "limb.skin == 'broken'"
  because  = "Broken."
  strength = "strong"
  basis    = "common_practice"
  advise "shell" { never = ["anterior", "posterior"] }
}
finding "marked" { holds = "limb.tone >= tone('3')" }
quantity "twice" {
  unit  = "mm"
  value = "limb.heel * 2"
}
caution "broken_skin" {
  level = "precaution"
  when  = "limb.skin == 'broken'"
  says  = "Broken skin."
  basis = "common_practice"
}
`

const vocabulary = `vocabulary "tiny" {
  title   = "Tiny"
  version = "1.0.0"
}
scale "tone" { grades = ["0", "1", "2", "3"] }
measure "age" {
  of          = "person"
  label       = "Age"
  unit        = "a"
  plausible   = [0, 110]
  error_basis = "None."
}
measure "falls" {
  of          = "person"
  label       = "Falls"
  count       = true
  plausible   = [0, 20]
  error_basis = "None."
}
measure "injected" {
  of    = "person"
  label = "Injected"
  date  = true
  never = true
}
measure "tone" {
  of          = "limb"
  label       = "Tone"
  scale       = "tone"
  error_basis = "None."
}
measure "heel" {
  of          = "limb"
  label       = "Heel"
  unit        = "mm"
  plausible   = [0, 60]
  error_basis = "None."
}
measure "skin" {
  of          = "limb"
  label       = "Skin"
  one_of      = ["intact", "broken"]
  error_basis = "None."
}
choice "shell" {
  label   = "Shell"
  options = ["anterior", "posterior"]
}
choice "block" {
  label    = "Block"
  unit     = "mm"
  between  = [0, 60]
  rounding = 1
}
choice "interval" {
  of       = "person"
  label    = "Review"
  unit     = "wk"
  between  = [1, 52]
  rounding = 1
}
`

// engine makes the small ruleset with some more text ready.
func engine(t *testing.T, more string) *reason.Engine {
	t.Helper()
	fsys := fstest.MapFS{
		"tiny/v.hcl":  {Data: []byte(vocabulary)},
		"small/r.hcl": {Data: []byte(header + more)},
	}
	rs, diags := ruleset.Library{Embedded: fsys}.Ruleset("small")
	if rs == nil {
		t.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

// worked writes a case: the left limb as given, and what is expected of it.
func worked(left, expect string) string {
	return "case \"c\" {\n given {\n device_for = [\"left\"]\n person { age = 40 }\n left {\n" + left + "\n}\n}\n expect \"left\" {\n" + expect + "\n}\n}\n"
}

func TestExpectations(t *testing.T) {
	full := "tone = \"3\"\n heel = 20\n skin = \"intact\""
	level := "tone = \"2\"\n heel = 20\n skin = \"intact\""
	broken := "tone = \"3\"\n heel = 20\n skin = \"broken\""
	for _, c := range []struct {
		name, left, expect string
		got                string // of the failure; "" where it passes
	}{
		{"option", full, `choices = { shell = "anterior" }`, ""},
		{"settled", full, `choices = { shell = "settled: anterior" }`, ""},
		{"default is not settled", full, `choices = { shell = "default: anterior" }`, "settled: anterior"},
		{"other option", full, `choices = { shell = "posterior" }`, "settled: anterior"},
		{"open", level, `choices = { shell = "open: posterior, anterior" }`, ""},
		{"open is not settled", level, `choices = { shell = "anterior" }`, "open: anterior, posterior"},
		{"conflict", broken, `choices = { shell = "conflict" }`, ""},
		{"conflict of", broken, `choices = { shell = "conflict: never_any" }`, ""},
		{"conflict of another", broken, `choices = { shell = "conflict: stiff" }`, "conflict: never_any"},
		{"unanswered", "heel = 20\n tone = \"0\"\n skin = \"intact\"", `choices = { block = "unanswered" }`, ""},
		{"number", full, `choices = { block = "20 mm" }`, ""},
		{"number in cm", full, `choices = { block = "2 cm" }`, ""},
		{"number within", full, `choices = { block = "21 mm +- 1" }`, ""},
		{"number beyond", full, `choices = { block = "21.5 mm +- 1 mm" }`, "settled: 20 mm"},
		{"provisional", "tone = \"3\"\n heel = 20", `choices = { shell = "anterior (provisional)" }`, ""},
		{"not provisional", "tone = \"3\"\n heel = 20", `choices = { shell = "anterior (not provisional)" }`, "settled: anterior (provisional)"},
		{"finding", full, `findings = { marked = true }`, ""},
		{"finding otherwise", level, `findings = { marked = true }`, "false"},
		{"finding unknown", "heel = 20", `findings = { marked = "unknown" }`, ""},
		{"quantity", full, `quantities = { twice = "4 cm" }`, ""},
		{"quantity within", full, `quantities = { twice = "40.4 mm ± 0.5" }`, ""},
		{"quantity beyond", full, `quantities = { twice = "41 mm" }`, "40 mm"},
		{"quantity unknown", "tone = \"3\"", `quantities = { twice = "unknown" }`, ""},
		{"fires", full, `fires = ["stiff"]`, ""},
		{"does not fire", full, `fires = ["soft"]`, "did_not_fire"},
		{"silent", full, `silent = ["soft", "broken_skin"]`, ""},
		{"not silent", broken, `silent = ["broken_skin"]`, "fired"},
		{"caution", broken, `cautions = ["broken_skin"]`, ""},
		{"no caution", full, `cautions = ["broken_skin"]`, "did_not_fire"},
		{"pending caution", "tone = \"3\"", `cautions = ["broken_skin"]`, "pending"},
	} {
		t.Run(c.name, func(t *testing.T) {
			report, diags := Run(engine(t, worked(c.left, c.expect)), today)
			if report == nil {
				t.Fatal(diags.Text())
			}
			fs := report.Cases[0].Failures
			switch {
			case c.got == "" && len(fs) > 0:
				t.Errorf("fails: %+v", fs)
			case c.got != "" && len(fs) != 1:
				t.Errorf("%d failures: %+v", len(fs), fs)
			case c.got != "" && fs[0].Got != c.got:
				t.Errorf("got %q, want %q", fs[0].Got, c.got)
			}
			if report.Passed+report.Failed != 1 || (report.Passed == 1) != (c.got == "") {
				t.Errorf("%d passed, %d failed", report.Passed, report.Failed)
			}
		})
	}
}

func TestDoesNotApply(t *testing.T) {
	text := strings.Replace(worked("tone = \"3\"", `fires = ["stiff"]`), "age = 40", "age = 4", 1)
	report, _ := Run(engine(t, text), today)
	if report == nil || report.Failed != 1 || report.Cases[0].Failures[0].Got != "applies: no" {
		t.Errorf("%+v", report)
	}
}

// Whether the ruleset applies can be expected of the person, and where it does not, nothing else can.
func TestExpectedScope(t *testing.T) {
	for _, c := range []struct {
		name, age, expect string
		got               string // of the first failure; "" where it passes
	}{
		{"it applies", "age = 40", `applies = "yes"`, ""},
		{"it applies, and more", "age = 40", "applies = \"yes\"\n choices = { interval = \"unanswered\" }", ""},
		{"it does not", "age = 4", `applies = "no"`, ""},
		{"it does not, and more is expected", "age = 4", "applies = \"no\"\n choices = { interval = \"unanswered\" }", "applies: no"},
		{"it is not known", "", `applies = "unknown"`, ""},
		{"it applies after all", "age = 40", `applies = "no"`, "applies: yes"},
		{"it does not after all", "age = 4", `applies = "yes"`, "applies: no"},
	} {
		text := "case \"c\" {\n given {\n device_for = [\"left\"]\n person {\n" + c.age + "\n}\n}\n expect \"person\" {\n" + c.expect + "\n}\n}\n"
		report, diags := Run(engine(t, text), today)
		if report == nil {
			t.Fatal(diags.Text())
		}
		got := ""
		if fs := report.Cases[0].Failures; len(fs) > 0 {
			got = fs[0].Got
		}
		if got != c.got || (report.Passed == 1) != (c.got == "") {
			t.Errorf("%s: got %q, want %q", c.name, got, c.got)
		}
	}
}

func TestWhatCannotBeExpected(t *testing.T) {
	for _, c := range []struct{ name, expect, says string }{
		{"no such option", `choices = { shell = "dorsal" }`, `shell has no option "dorsal".`},
		{"one level option", `choices = { shell = "open: anterior" }`, "Several options are open"},
		{"two picked", `choices = { shell = "anterior, posterior" }`, "One option can be picked"},
		{"settled without a value", `choices = { shell = "settled" }`, "behind a colon"},
		{"unanswered with a value", `choices = { shell = "unanswered: x" }`, "takes nothing behind it"},
		{"bare number", `choices = { block = "20" }`, "A number is written with its unit."},
		{"wrong dimension", `choices = { block = "20 deg" }`, "A number is written with its unit."},
		{"broken range", `choices = { block = "open: 10..x mm" }`, "A range is written with one unit behind it."},
		{"negative tolerance", `quantities = { twice = "40 mm +- -1" }`, "Behind +- stands a number"},
		{"finding as text", `findings = { marked = "yes" }`, "true, false or unknown"},
		{"no such rule", `fires = ["stif"]`, "Did you mean stiff?"},
		{"no such rule in a conflict", `choices = { shell = "conflict: stif, never_any" }`, "Did you mean stiff?"},
		{"a caution in a conflict", `choices = { shell = "conflict: broken_skin" }`, `there is no rule "broken_skin"`},
		{"no such caution", `cautions = ["stiff"]`, `There is no caution "stiff".`},
		{"choice of the person", `choices = { interval = "6 wk" }`, "interval is decided of the person."},
	} {
		t.Run(c.name, func(t *testing.T) {
			report, diags := Run(engine(t, worked("tone = \"3\"", c.expect)), today)
			if report != nil || !strings.Contains(diags.Text(), c.says) {
				t.Errorf("says %q", diags.Text())
			}
			if len(diags) > 0 && !diags[0].Where.Known() {
				t.Error("has no place")
			}
		})
	}
}

func TestSideWithoutDevice(t *testing.T) {
	text := strings.Replace(worked("tone = \"3\"", `fires = ["stiff"]`), `expect "left"`, `expect "right"`, 1)
	if _, diags := Run(engine(t, text), today); !strings.Contains(diags.Text(), "marks no device for the right limb") {
		t.Error(diags.Text())
	}
}

func TestConditionsShown(t *testing.T) {
	one := worked("tone = \"3\"\n heel = 20\n skin = \"intact\"", `fires = ["stiff"]`)
	two := strings.Replace(worked("tone = \"0\"\n heel = 20\n skin = \"broken\"", `fires = ["soft"]`), `"c"`, `"d"`, 1)
	shown := func(text string) map[string]string {
		report, diags := Run(engine(t, text), today)
		if report == nil {
			t.Fatal(diags.Text())
		}
		out := map[string]string{}
		for _, c := range report.Unshown {
			out[c.Of] += map[bool]string{true: "T", false: "-"}[c.True] + map[bool]string{true: "F", false: "-"}[c.False]
		}
		return out
	}
	if got := shown(one); got["rule.stiff"] != "T-" || got["rule.soft"] != "-F" || got["caution.broken_skin"] != "-F" || got["applies"] != "T-" {
		t.Errorf("after one case: %v", got)
	}
	if got := shown(one + two); len(got) != 1 || got["applies"] != "T-" {
		t.Errorf("after both cases: %v", got)
	}
	if got := shown(""); got["rule.stiff"] != "--" || got["finding.marked"] != "--" {
		t.Errorf("without cases: %v", got)
	}
}

// A quantity is told in words, also the time since what never was.
func TestQuantityWord(t *testing.T) {
	for want, m := range map[string]*reason.Measured{"unknown": nil, "40 mm": {Value: 40, Unit: "mm"}, "longer than any limit": {Value: 1e18 / 7, Unit: "wk"}, "2e+12 mm": {Value: 2e12, Unit: "mm"}} {
		if got := quantityWord(m); got != want {
			t.Errorf("%s, want %s", got, want)
		}
	}
}

// A tolerance keeps its digits where the unit is written as 1, and takes its unit or none otherwise.
func TestTolerance(t *testing.T) {
	for text, want := range map[string]float64{"0.6 1 +- 0.01": 0.01, "6.2 deg +- 0.1": 0.1, "6.2 deg ± 0.1 deg": 0.1, "20 mm": 1e-6} {
		if q, problem := parseQuantity(text); problem != "" || q.tol != want {
			t.Errorf("%s: tolerance %v, not %v (%s)", text, q.tol, want, problem)
		}
	}
}

// FuzzExpected reads any text as what is expected of a choice and of a quantity.
func FuzzExpected(f *testing.F) {
	for _, s := range []string{"anterior", "open: a, b", "20 mm +- 1", "open: 10..20 mm", "conflict: x (provisional)", "::", "..", "±", "1e999 mm"} {
		f.Add(s)
	}
	rs, diags := ruleset.Library{Embedded: os.DirFS("../../rulesets")}.Vocabulary("lower_limb")
	if rs == nil {
		f.Fatal(diags.Text())
	}
	f.Fuzz(func(t *testing.T, s string) {
		for _, name := range []string{"shell_trimline", "cast_block_height"} {
			x, problem := parseExpected(rs.Choice(name), s)
			if problem == "" && (x.tol < 0 || x.tol != x.tol) {
				t.Errorf("%q: tolerance %v", s, x.tol)
			}
		}
		_, _ = parseQuantity(s)
	})
}
