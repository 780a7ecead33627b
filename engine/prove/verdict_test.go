package prove_test

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/clause"
	"crus/engine/prove"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
)

// space makes the cells of some blocks under a plain header, over the vocabulary of package reason's tests; further
// rulesets, which it may build on, stand by name.
func space(t testing.TB, header, blocks string, further map[string]string) *cell.Space {
	t.Helper()
	vocabulary, err := os.ReadFile("../reason/testdata/vocabulary.hcl")
	if err != nil {
		t.Fatal(err)
	}
	head := func(name, more string) string {
		return fmt.Sprintf("ruleset %q {\n title = \"For tests\"\n version = \"1.0.0\"\n status = \"active\"\n vocabulary = \"small@1\"\n%s\n}\n", name, more)
	}
	files := fstest.MapFS{"small/vocabulary.hcl": {Data: vocabulary}, "main/rules.hcl": {Data: []byte(head("main", header) + blocks)}}
	for name, text := range further {
		files[name+"/rules.hcl"] = &fstest.MapFile{Data: []byte(head(name, "") + text)}
	}
	rs, diags := ruleset.Library{Embedded: files}.Ruleset("main")
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	s, err := cell.New(e)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// rule writes a rule: more are lines of its block, "CHOICE: VERB = VALUE" an advise block.
func rule(name, when string, more ...string) string {
	strength, text := "conditional", ""
	for _, m := range more {
		if m == "strong" {
			strength = m
		} else if choice, verb, ok := strings.Cut(m, ": "); ok {
			text += fmt.Sprintf("  advise %q { %s }\n", choice, verb)
		} else {
			text += "  " + m + "\n"
		}
	}
	return fmt.Sprintf("rule %q {\n  when = %q\n  because = \"It is so.\"\n  strength = %q\n  basis = \"common_practice\"\n%s}\n", name, when, strength, text)
}

func caution(name, level, when string) string {
	return fmt.Sprintf("caution %q {\n  level = %q\n  when = %q\n  says = \"Take care.\"\n  basis = \"common_practice\"\n}\n", name, level, when)
}

func finding(name, holds string) string {
	return fmt.Sprintf("finding %q {\n  holds = %q\n}\n", name, holds)
}

// always advises on a choice of options whatever else is so, so that it is no gap.
const always = "limb.p || !limb.p"

func TestVerdicts(t *testing.T) {
	low, high := `trim: only = "low"`, `trim: only = "high"`
	for name, c := range map[string]struct {
		header  string
		blocks  string
		further map[string]string
		kind    prove.Kind
		about   string
		want    prove.Status
		shows   string // rules, options, range and other caution, as the verdict has them
	}{
		"a choice that no rule advises on for some": {blocks: rule("a", "limb.p", low), kind: prove.Gap, about: "trim", want: prove.Found},
		"a choice that is always advised on":        {blocks: rule("a", always, low), kind: prove.Gap, about: "trim", want: prove.Absent},
		"a gap closed by two rules":                 {blocks: rule("a", "limb.flex < deg(5)", low) + rule("b", "limb.flex >= deg(5)", low), kind: prove.Gap, about: "trim", want: prove.Absent},
		"a gap of one value":                        {blocks: rule("a", "limb.flex < deg(5)", low) + rule("b", "limb.flex > deg(5)", low), kind: prove.Gap, about: "trim", want: prove.Found},
		"a gap beyond what is plausible":            {blocks: rule("a", "limb.flex >= deg(-60) && limb.flex <= deg(45)", low), kind: prove.Gap, about: "trim", want: prove.Absent},
		"a gap outside of the scope":                {header: `applies = "person.age >= years(16)"`, blocks: rule("a", "person.age > years(10)", low), kind: prove.Gap, about: "trim", want: prove.Absent},
		"a gap between grades":                      {blocks: rule("a", "limb.tone <= tone_scale('1')", low) + rule("b", "limb.tone >= tone_scale('1+')", low), kind: prove.Gap, about: "trim", want: prove.Absent},
		"a gap between whole numbers":               {blocks: rule("a", "limb.posture <= 3", low) + rule("b", "limb.posture >= 4", low), kind: prove.Gap, about: "trim", want: prove.Absent},
		"a gap in a sum":                            {blocks: rule("a", "limb.gap + limb.lift < mm(150)", low) + rule("b", "limb.gap + limb.lift > mm(150)", low), kind: prove.Gap, about: "trim", want: prove.Found},
		"no gap in a sum":                           {blocks: rule("a", "limb.gap + limb.lift <= mm(150)", low) + rule("b", "limb.gap + limb.lift > mm(150)", low), kind: prove.Gap, about: "trim", want: prove.Absent},
		"a sum that is always within":               {blocks: rule("a", "limb.gap + limb.lift <= mm(200)", low), kind: prove.Gap, about: "trim", want: prove.Absent},
		"no gap for what is only missing":           {blocks: rule("a", "limb.p || !limb.p", low) + rule("b", "!recorded(limb.p)", `closure: favour = "strap"`), kind: prove.Gap, about: "trim", want: prove.Absent},
		"what must agree about three":               {blocks: rule("a", "limb.flex > limb.knee && limb.knee > other.flex && other.flex > limb.flex", low), kind: prove.NeverFires, about: "rule.a", want: prove.Found},
		"what can be of three":                      {blocks: rule("a", "limb.flex > limb.knee && limb.knee > other.flex", low), kind: prove.NeverFires, about: "rule.a", want: prove.Absent},

		"limits that contradict each other":       {blocks: rule("a", "limb.p", low) + rule("b", "limb.q", high), kind: prove.Contradiction, about: "trim", want: prove.Found, shows: "a b"},
		"limits that never meet":                  {blocks: rule("a", "limb.p", low) + rule("b", "!limb.p", high), kind: prove.Contradiction, about: "trim", want: prove.Absent},
		"a contradiction that overriding settles": {blocks: rule("a", "limb.p", low, `overrides = ["b"]`) + rule("b", "limb.q", high), kind: prove.Contradiction, about: "trim", want: prove.Absent},
		"numbers that contradict each other":      {blocks: rule("a", "limb.p", `height: at_least = "mm(20)"`) + rule("b", "limb.q", `height: at_most = "mm(19)"`), kind: prove.Contradiction, about: "height", want: prove.Found, shows: "a b"},
		"numbers that just meet":                  {blocks: rule("a", "limb.p", `height: at_least = "mm(20)"`) + rule("b", "limb.q", `height: at_most = "mm(20)"`), kind: prove.Contradiction, about: "height", want: prove.Absent},
		"a measure as limit against a number":     {blocks: rule("a", "limb.p", `height: at_least = "limb.gap"`) + rule("b", "limb.q", `height: at_most = "mm(55)"`), kind: prove.Contradiction, about: "height", want: prove.Found},
		"a measure as limit that can't be over":   {blocks: rule("a", "limb.gap < mm(50)", `height: at_least = "limb.gap"`) + rule("b", "limb.q", `height: at_most = "mm(55)"`), kind: prove.Contradiction, about: "height", want: prove.Absent},
		"both limbs against each other":           {blocks: rule("a", "limb.p && limb.q", `shoe: only = "own"`) + rule("b", "limb.p && !limb.q", `shoe: only = "made"`), kind: prove.Contradiction, about: "shoe", want: prove.Found, shows: "a b"},
		"one limb alone":                          {blocks: rule("a", "limb.p && !other.p", `shoe: only = "own"`) + rule("b", "limb.p && other.p", `shoe: only = "made"`), kind: prove.Contradiction, about: "shoe", want: prove.Absent},

		"two options level":                 {blocks: rule("a", "limb.p", `trim: favour = "low"`) + rule("b", "limb.q", `trim: favour = "high"`), kind: prove.Tie, about: "trim", want: prove.Found, shows: "a b | low high"},
		"a strong one ahead":                {blocks: rule("a", "limb.p", "strong", `trim: favour = "low"`) + rule("b", "limb.q", `trim: favour = "high"`), kind: prove.Tie, about: "trim", want: prove.Absent},
		"a tie that is declared":            {blocks: rule("a", "limb.p", `trim: favour = "low"`) + rule("b", "limb.q", `trim: favour = "high"`) + "clinician_decides \"trim\" { because = \"It is open.\" }\n", kind: prove.Tie, about: "trim", want: ""},
		"aims that differ":                  {blocks: rule("a", "limb.p", `height: aim = "mm(10)"`) + rule("b", "limb.q", `height: aim = "mm(12)"`), kind: prove.Tie, about: "height", want: prove.Found, shows: "a b | [10 12]"},
		"aims within the rounding":          {blocks: rule("a", "limb.p", `height: aim = "mm(10)"`) + rule("b", "limb.q", `height: aim = "mm(11)"`), kind: prove.Tie, about: "height", want: prove.Absent},
		"aims that a limit brings together": {blocks: rule("a", "limb.p", `height: aim = "mm(10)"`) + rule("b", "limb.q", `height: aim = "mm(30)"`) + rule("c", "limb.q", `height: at_most = "mm(10)"`), kind: prove.Tie, about: "height", want: prove.Absent},
		"left open by limits":               {blocks: rule("a", "limb.p", `trim: never = "low"`), kind: prove.Open, about: "trim", want: prove.Found, shows: "| middle high"},
		"one left by limits":                {blocks: rule("a", "limb.p", low), kind: prove.Open, about: "trim", want: prove.Absent},

		"a rule that can't fire":            {blocks: rule("a", "limb.flex < deg(5) && limb.flex > deg(10)", low), kind: prove.NeverFires, about: "rule.a", want: prove.Found},
		"a rule beyond what is plausible":   {blocks: rule("a", "limb.flex > deg(45)", low), kind: prove.NeverFires, about: "rule.a", want: prove.Found},
		"a rule of what may be missing":     {blocks: rule("a", "!recorded(limb.flex)", low), kind: prove.NeverFires, about: "rule.a", want: prove.Absent},
		"a rule of a narrow cell":           {blocks: rule("a", "limb.flex > deg(5) && limb.flex < deg(5.01)", low), kind: prove.NeverFires, about: "rule.a", want: prove.Absent},
		"a caution that can't fire":         {blocks: caution("a", "note", "person.age > years(110)"), kind: prove.NeverFires, about: "caution.a", want: prove.Found},
		"long ago and never":                {blocks: rule("a", "since(person.injected) > years(150)", low), kind: prove.NeverFires, about: "rule.a", want: prove.Absent},
		"always set aside":                  {blocks: rule("a", "limb.p", low, `overrides = ["b"]`) + rule("b", "limb.p && limb.q", high), kind: prove.AlwaysSetAside, about: "rule.b", want: prove.Found, shows: "a"},
		"sometimes set aside":               {blocks: rule("a", "limb.p", low, `overrides = ["b"]`) + rule("b", "limb.q", high), kind: prove.AlwaysSetAside, about: "rule.b", want: prove.Absent},
		"what is set aside sets none aside": {blocks: rule("a", "limb.p", low, `overrides = ["b"]`) + rule("b", "limb.p", low, `overrides = ["c"]`) + rule("c", "limb.p", low), kind: prove.AlwaysSetAside, about: "rule.c", want: prove.Absent},
		"a rule that adds nothing":          {blocks: rule("a", "limb.p", low) + rule("b", "limb.p && limb.q", low), kind: prove.AddsNothing, about: "rule.b", want: prove.Found},
		"a rule that adds something":        {blocks: rule("a", "limb.p", low) + rule("b", "limb.p || limb.q", low), kind: prove.AddsNothing, about: "rule.b", want: prove.Absent},
		"a rule that only sets aside":       {blocks: rule("a", "limb.p", `pad: favour = "none"`, `overrides = ["b"]`) + rule("b", "limb.q", low), kind: prove.AddsNothing, about: "rule.a", want: prove.Absent},
		"a limit under a tighter one":       {blocks: rule("a", "limb.p", `height: at_most = "mm(20)"`) + rule("b", "limb.p && limb.q", `height: at_most = "mm(30)"`), kind: prove.AddsNothing, about: "rule.b", want: prove.Found},
		"a default said again":              {blocks: rule("a", "limb.p", `pad: favour = "none"`), kind: prove.AddsNothing, about: "rule.a", want: prove.Found},

		"a finding that always holds": {blocks: finding("f", "person.age < years(200)") + rule("a", "finding.f", low), kind: prove.AlwaysTrue, about: "finding.f", want: prove.Found},
		"a finding that never holds":  {blocks: finding("f", "limb.p && !limb.p") + rule("a", "finding.f", low), kind: prove.AlwaysFalse, about: "finding.f", want: prove.Found},
		"a finding that may hold":     {blocks: finding("f", "limb.p") + rule("a", "finding.f", low), kind: prove.AlwaysTrue, about: "finding.f", want: prove.Absent},
		"nothing in scope":            {header: `applies = "person.age > years(110)"`, blocks: rule("a", "limb.p", low), kind: prove.NeverApplies, about: "main", want: prove.Found},

		"a caution behind another":       {blocks: caution("a", "contraindication", "limb.p || limb.q") + caution("b", "precaution", "limb.p"), kind: prove.Hides, about: "caution.b", want: prove.Found, shows: "caution.a"},
		"a graver caution is not hidden": {blocks: caution("a", "note", "limb.p || limb.q") + caution("b", "precaution", "limb.p"), kind: prove.Hides, about: "caution.b", want: prove.Absent},
		"a caution that can stand alone": {blocks: caution("a", "note", "limb.p") + caution("b", "note", "limb.p || limb.q"), kind: prove.Hides, about: "caution.b", want: prove.Absent},
		"two cautions that are one":      {blocks: caution("a", "note", "limb.p") + caution("b", "note", "limb.p"), kind: prove.Hides, about: "caution.a", want: prove.Absent},

		"of what is built on": {header: `builds_on = ["base@1"]`, blocks: rule("a", "limb.p", low), further: map[string]string{"base": rule("b", "limb.flex > deg(45)", high)}, kind: prove.NeverFires, about: "rule.base.b", want: prove.Found},
	} {
		t.Run(name, func(t *testing.T) {
			s := space(t, c.header, c.blocks, c.further)
			r := prove.Prove(context.Background(), s, prove.Options{})
			i := slices.IndexFunc(r.Verdicts, func(v *prove.Verdict) bool { return v.Kind == c.kind && v.Name == c.about })
			if i < 0 {
				if c.want != "" {
					t.Fatalf("there is no verdict %s on %s", c.kind, c.about)
				}
				return
			}
			v := r.Verdicts[i]
			if v.Status != c.want {
				t.Fatalf("%s, not %s (%v)", v.Status, c.want, v.Rests)
			}
			shows := strings.Join(v.Rules, " ")
			if v.Among != nil {
				shows = strings.TrimSpace(shows + " | " + strings.Join(v.Among, " "))
			}
			if v.Range != nil {
				shows += fmt.Sprint(" | ", v.Range)
			}
			shows += v.Other
			if c.shows != "" && shows != c.shows {
				t.Errorf("shows %q, not %q", shows, c.shows)
			}
			if v.Status == prove.Found && v.Kind != prove.NeverFires && v.Kind != prove.NeverApplies {
				reproduce(t, s, v)
			}
		})
	}
}

// reproduce writes a witness, reads it as anyone would, and advises on it: the outcome shows what was found.
func reproduce(t *testing.T, s *cell.Space, v *prove.Verdict) {
	t.Helper()
	if v.Assessment == nil {
		t.Fatal("there is no witness")
	}
	doc, err := v.Assessment.JSON()
	if err != nil {
		t.Fatal(err)
	}
	a, diags := assess.ReadJSON(source.NewFile("witness.json", doc), s.Ruleset.Vocabulary)
	if diags.HasErrors() {
		t.Fatalf("the witness can't be read:\n%s\n%s", diags.Text(), doc)
	}
	o := s.Engine.Advise(a, time.Date(2026, 1, 1, 0, 0, 0, 0, time.UTC))
	r := o.Person
	if v.Limb != "" {
		r = o.Limbs[v.Limb]
	}
	name := v.Name
	if _, after, ok := strings.Cut(v.Name, "."); ok {
		name = after
	}
	fired := func(caution string) bool {
		return slices.ContainsFunc(r.Cautions, func(c *reason.Caution) bool {
			return "caution."+c.Name == caution && c.State == reason.Fired
		})
	}
	ok := false
	switch v.Kind {
	case prove.Gap:
		ok = r.Choices[name].Status == reason.Unanswered
	case prove.Contradiction:
		ok = r.Choices[name].Status == reason.Conflict
	case prove.Tie, prove.Open:
		ok = r.Choices[name].Status == reason.IsOpen
	case prove.AlwaysSetAside:
		ok = r.Rules[name].State == reason.SetAside
	case prove.AddsNothing:
		ok = r.Rules[name].State == reason.Fired
	case prove.AlwaysTrue, prove.AlwaysFalse:
		ok = r.Findings[name] != nil && *r.Findings[name] == (v.Kind == prove.AlwaysTrue)
	case prove.Hides:
		ok = fired(v.Name) && fired(v.Other)
	}
	if !ok {
		t.Errorf("the witness does not show it:\n%s", doc)
	}
	full := 0
	for _, x := range s.Axes[:s.Measures] {
		if side := a.Person; x.Measure.Of == vocab.Person && side[x.Measure.Name] != nil || x.Measure.Of == vocab.Limb && (x.Other && a.Right[x.Measure.Name] != nil || !x.Other && a.Left[x.Measure.Name] != nil) {
			full++
		}
	}
	if full < s.Measures && !slices.Contains(clause.New(s).Missing, true) {
		t.Errorf("the witness is not full:\n%s", doc)
	}
}

// What can be neither shown nor excluded is undecided, by name.
func TestUndecidedIsNamed(t *testing.T) {
	s := space(t, "", rule("a", "size([limb.p, limb.q].filter(x, x)) * 2 == 3", `trim: only = "low"`)+
		rule("b", "pitch_along_plate(limb.gap, limb.lift + mm(1)) > deg(89.99999)", `trim: only = "low"`), nil)
	r := prove.Prove(context.Background(), s, prove.Options{})
	named := map[string]string{}
	for _, v := range r.Verdicts {
		if v.Kind == prove.NeverFires {
			named[v.Name] = fmt.Sprint(v.Status)
			for _, d := range v.Rests {
				named[v.Name] += " " + d.Text
				if d.Place == "" || d.Why == "" {
					t.Errorf("%s: a doubt without place or reason: %+v", v.Name, d)
				}
			}
		}
	}
	if got := named["rule.a"]; got != "found" { // few values: it is worked out for each
		t.Errorf("a: %s", got)
	}
	if got := named["rule.b"]; got != "undecided pitch_along_plate(limb.gap, limb.lift + mm(1))" {
		t.Errorf("b: %s", got)
	}
}

// The same ruleset gives the same report and the same witnesses, whatever the number of workers.
func TestReportIsAlwaysTheSame(t *testing.T) {
	blocks := ""
	for i := range 12 {
		blocks += rule(fmt.Sprintf("r%d", i), fmt.Sprintf("limb.flex > deg(%d) && (limb.p || limb.tone > tone_scale('1')) && limb.gap - limb.lift < mm(%d)", i-6, 5*i), `trim: favour = "low"`, fmt.Sprintf(`height: at_most = "mm(%d)"`, 5+5*i))
	}
	var first string
	for _, workers := range []int{1, 2, 5} {
		s := space(t, "", blocks, nil)
		r := prove.Prove(context.Background(), s, prove.Options{Workers: workers})
		b, err := json.Marshal(r)
		if err != nil {
			t.Fatal(err)
		}
		for _, v := range r.Verdicts {
			if v.Assessment != nil {
				doc, err := v.Assessment.JSON()
				if err != nil {
					t.Fatal(err)
				}
				b = append(b, doc...)
			}
		}
		if first == "" {
			first = string(b)
		}
		if string(b) != first {
			t.Fatalf("with %d workers:\n%s\nand with one:\n%s", workers, b, first)
		}
	}
}

// Where the work is stopped, what is left is undecided, and says so.
func TestStopped(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	r := prove.Prove(ctx, space(t, "", rule("a", "limb.p", `trim: only = "low"`), nil), prove.Options{})
	if len(r.Undecided()) == 0 {
		t.Fatal("everything is decided")
	}
	for _, v := range r.Undecided() {
		if len(v.Rests) == 0 || !strings.Contains(v.Rests[0].Why, "stopped") {
			t.Errorf("%s %s: %v", v.Kind, v.Name, v.Rests)
		}
	}
}
