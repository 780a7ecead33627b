package reason_test

import (
	"encoding/json"
	"fmt"
	"iter"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
)

// Rulesets are written here in short: rule("a", "limb.p", "strong", "trim only low middle") gives
// the HCL block, and read puts blocks under a header.

// block writes one HCL block of attributes; an attribute is a name, a space and its HCL value.
func block(head string, attrs ...string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "%s {\n", head)
	for _, a := range attrs {
		name, value, _ := strings.Cut(a, " ")
		fmt.Fprintf(&b, "  %s = %s\n", name, value)
	}
	return b.String() + "}\n"
}

// rule writes a rule. Each part is "strong", "because TEXT", "unless CONDITION", "overrides A B", or
// advice: "CHOICE VERB WORDS", where the words are options, or the formula of a number.
func rule(name, when string, parts ...string) string {
	strength, because := "conditional", "Because of "+name+"."
	var extra, advice string
	var order []string
	lines := map[string]string{} // of each choice's block
	for _, p := range parts {
		word, rest, _ := strings.Cut(p, " ")
		switch word {
		case "strong":
			strength = word
		case "because":
			because = rest
		case "unless":
			extra += fmt.Sprintf("  unless = %q\n", rest)
		case "overrides":
			extra += fmt.Sprintf("  overrides = [%s]\n", quoted(rest))
		default:
			verb, words, _ := strings.Cut(rest, " ")
			value := "[" + quoted(words) + "]"
			if strings.ContainsAny(words, "().*") || verb == "aim" {
				value = fmt.Sprintf("%q", words)
			}
			if lines[word] == "" {
				order = append(order, word)
			}
			lines[word] += fmt.Sprintf("    %s = %s\n", verb, value)
		}
	}
	for _, choice := range order {
		advice += fmt.Sprintf("  advise %q {\n%s  }\n", choice, lines[choice])
	}
	return fmt.Sprintf("rule %q {\n  when = %q\n  because = %q\n  strength = %q\n  basis = \"common_practice\"\n%s%s}\n",
		name, when, because, strength, extra, advice)
}

func quoted(words string) string {
	list := strings.Fields(words)
	for i, w := range list {
		list[i] = fmt.Sprintf("%q", w)
	}
	return strings.Join(list, ", ")
}

func finding(name, holds string) string {
	return block(fmt.Sprintf("finding %q", name), fmt.Sprintf("holds %q", holds))
}

func quantity(name, unit, value string) string {
	return block(fmt.Sprintf("quantity %q", name), fmt.Sprintf("unit %q", unit), fmt.Sprintf("value %q", value))
}

func caution(name, when string, attrs ...string) string {
	if !slices.ContainsFunc(attrs, func(a string) bool { return strings.HasPrefix(a, "level ") }) {
		attrs = append(attrs, `level "precaution"`)
	}
	if !slices.ContainsFunc(attrs, func(a string) bool { return strings.HasPrefix(a, "says ") }) {
		attrs = append(attrs, `says "Take care."`)
	}
	return block(fmt.Sprintf("caution %q", name), append(attrs, fmt.Sprintf("when %q", when), `basis "common_practice"`)...)
}

// left leaves a choice to the clinician.
func left(choice string) string {
	return block(fmt.Sprintf("clinician_decides %q", choice), `because "No comparison is known."`)
}

// header writes the header of a ruleset; more are further attributes.
func header(name string, more ...string) string {
	return block(fmt.Sprintf("ruleset %q", name), append(more, `title "For tests"`, `version "1.0.0"`, `status "active"`, `vocabulary "small@1"`)...)
}

// folders are rulesets by name, each the text of its one file; further files are named "main/more.hcl".
type folders map[string]string

// library puts rulesets beside the tests' vocabulary.
func library(t testing.TB, fs folders) ruleset.Library {
	t.Helper()
	src, err := os.ReadFile("testdata/vocabulary.hcl")
	if err != nil {
		t.Fatal(err)
	}
	m := fstest.MapFS{"small/vocabulary.hcl": {Data: src}}
	for name, text := range fs {
		if !strings.Contains(name, "/") {
			name += "/rules.hcl"
		}
		m[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return ruleset.Library{Embedded: m}
}

// engineOf makes the engine of the ruleset called main.
func engineOf(t testing.TB, fs folders) *reason.Engine {
	t.Helper()
	rs, diags := library(t, fs).Ruleset("main")
	if diags.HasErrors() {
		t.Fatalf("the ruleset has errors:\n%s", diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	return e
}

// engine makes the engine of some blocks under a plain header.
func engine(t testing.TB, blocks ...string) *reason.Engine {
	t.Helper()
	return engineOf(t, folders{"main": header("main") + strings.Join(blocks, "")})
}

// given reads an assessment written in short: "p=true right.flex=-5 age=30 for=left,right". A
// measure of a limb stands under left unless it says otherwise; "x=!reason" is not recorded, and
// the assessment's date is 2026-10-02 unless it is given ("date=" for none).
func given(t testing.TB, v *vocab.Vocabulary, short string) *assess.Assessment {
	t.Helper()
	doc := map[string]any{"format": assess.Format, "id": "test", "vocabulary": v.Name + "@1", "device_for": []string{"left"}, "date": "2026-10-02"}
	parts := map[string]map[string]any{"person": {}, "left": {}, "right": {}}
	for _, w := range strings.Fields(short) {
		path, text, _ := strings.Cut(w, "=")
		switch path {
		case "for":
			doc["device_for"] = strings.Split(text, ",")
			continue
		case "date":
			if delete(doc, "date"); text != "" {
				doc["date"] = text
			}
			continue
		}
		where, name, dotted := strings.Cut(path, ".")
		if !dotted {
			name, where = where, "left"
			if m := v.Measure(name); m != nil && m.Of == vocab.Person {
				where = "person"
			}
		}
		var value any = text
		if why, missing := strings.CutPrefix(text, "!"); missing {
			value = map[string]any{"not_recorded": why}
		} else if m := v.Measure(name); m != nil && m.Kind != vocab.Grade && m.Kind != vocab.Option && m.Kind != vocab.Date && m.Kind != vocab.Text {
			value = json.RawMessage(text)
		}
		parts[where][name] = value
	}
	for where, values := range parts {
		doc[where] = values
	}
	src, err := json.Marshal(doc)
	if err != nil {
		t.Fatalf("%s: %v", short, err)
	}
	a, diags := assess.ReadJSON(source.NewFile("given.json", src), v)
	if diags.HasErrors() {
		t.Fatalf("%s:\n%s", short, diags.Text())
	}
	return a
}

// today is the day of every test; no ruleset of theirs is past its review date on it unless meant.
func today() time.Time { return time.Date(2026, 10, 5, 12, 0, 0, 0, time.UTC) }

// advise carries blocks out on an assessment in short.
func advise(t testing.TB, short string, blocks ...string) *reason.Outcome {
	t.Helper()
	return adviseOn(t, engine(t, blocks...), short)
}

func adviseOn(t testing.TB, e *reason.Engine, short string) *reason.Outcome {
	t.Helper()
	return e.Advise(given(t, e.Ruleset().Vocabulary, short), today())
}

// found gives the result of "left", "right" or "person".
func found(o *reason.Outcome, of string) *reason.Result {
	if of == "person" {
		return o.Person
	}
	return o.Limbs[of]
}

// said writes a choice in short: "settled low", "open low middle", "open 10..20", "conflict a b",
// "default none", each followed by " provisional" where it is.
func said(c *reason.Choice) string {
	out := c.Status
	switch {
	case c.Status == reason.Conflict:
		out += " " + strings.Join(c.Conflict, " ")
	case c.Value != nil:
		out += fmt.Sprint(" ", c.Value)
	case c.Range != nil:
		out += fmt.Sprintf(" %g..%g", c.Range[0], c.Range[1])
	case len(c.Among) > 0:
		out += " " + strings.Join(c.Among, " ")
	}
	if c.Provisional {
		out += " provisional"
	}
	return out
}

// states writes what became of every rule of the left limb and the person, in the order of their
// names: "a fired, b pending(limb.p), c set_aside(a)".
func states(o *reason.Outcome, of string) string {
	all := map[string]*reason.Rule{}
	for _, r := range []*reason.Result{o.Person, found(o, of)} {
		for name, x := range r.Rules {
			all[name] = x
		}
	}
	var out []string
	for name, x := range all {
		s := name + " " + x.State
		if more := append(slices.Clone(x.WaitsFor), x.SetAsideBy...); len(more) > 0 {
			s += "(" + strings.Join(more, " ") + ")"
		}
		out = append(out, s)
	}
	slices.Sort(out)
	return strings.Join(out, ", ")
}

// same fails the test where got is not want.
func same(t testing.TB, what, got, want string) {
	t.Helper()
	if got != want {
		t.Errorf("%s:\n got %s\nwant %s", what, got, want)
	}
}

// toJSON gives the bytes of an outcome.
func toJSON(t testing.TB, o *reason.Outcome) string {
	t.Helper()
	b, err := json.MarshalIndent(o, "", "  ")
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

// ordered goes through a map in the order of its keys.
func ordered[V any](m map[string]V) iter.Seq2[string, V] {
	return func(yield func(string, V) bool) {
		for _, k := range slices.Sorted(maps.Keys(m)) {
			if !yield(k, m[k]) {
				return
			}
		}
	}
}

func sorted(words []string) string {
	slices.Sort(words)
	return strings.Join(words, " ")
}

// cautionsOf writes the cautions: "a fired, b pending provisional".
func cautionsOf(r *reason.Result) string {
	var out []string
	for _, c := range r.Cautions {
		s := c.Name + " " + c.State
		if c.Provisional {
			s += " provisional"
		}
		out = append(out, s)
	}
	return strings.Join(out, ", ")
}

// missingOf writes what is missing, the one to take first leading: "limb.p decides trim pad settles 1".
func missingOf(r *reason.Result) string {
	var out []string
	for _, m := range r.Missing {
		out = append(out, fmt.Sprintf("%s decides %s settles %d", m.Measure, strings.Join(m.Decides, " "), m.Settles))
	}
	return strings.Join(out, ", ")
}

// couldOf writes what a choice could become: "settled low if limb.p is yes and limb.q is no; ...".
func couldOf(c *reason.Choice) string { return possibilities(c.CouldBecome) }

func possibilities(list []reason.Could) string {
	var out []string
	for _, x := range list {
		s := x.Status
		if x.Value != nil {
			s += fmt.Sprint(" ", x.Value)
		}
		var when []string
		for _, c := range x.When {
			when = append(when, c.Measure+" is "+c.Is)
		}
		if len(when) > 0 {
			s += " if " + strings.Join(when, " and ")
		}
		out = append(out, s)
	}
	return strings.Join(out, "; ")
}
