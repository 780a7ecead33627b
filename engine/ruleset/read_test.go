package ruleset

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"pgregory.net/rapid"

	"crus/engine/source"
)

// files makes a folder tree of texts.
func files(texts map[string]string) fstest.MapFS {
	out := fstest.MapFS{}
	for name, text := range texts {
		out[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return out
}

// headed gives the header of a ruleset over the small vocabulary, with further lines.
func headed(name string, lines ...string) string {
	return fmt.Sprintf("ruleset %q {\n  title      = \"T\"\n  version    = \"1.0.0\"\n  status     = \"draft\"\n  vocabulary = \"tiny@1\"\n%s\n}\n", name, strings.Join(lines, "\n"))
}

// ruled gives a rule that favours an anterior shell, with further lines.
func ruled(name, when string, lines ...string) string {
	return fmt.Sprintf("rule %q {\n  when     = %q\n  because  = \"B.\"\n  strength = \"strong\"\n  basis    = \"common_practice\"\n  advise \"shell_side\" { favour = \"anterior\" }\n%s\n}\n", name, when, strings.Join(lines, "\n"))
}

// read reads the ruleset bad among some files, which must be in order.
func read(t testing.TB, texts map[string]string) *Ruleset {
	t.Helper()
	rs, diags := Library{Embedded: withLibrary(t, files(texts))}.Ruleset("bad")
	if rs == nil {
		t.Fatal(diags.Text())
	}
	return rs
}

func ruleNames(rs *Ruleset) string {
	var out []string
	for _, r := range rs.Rules {
		out = append(out, r.Name)
	}
	return strings.Join(out, " ")
}

func TestHeader(t *testing.T) {
	rs := read(t, map[string]string{"bad/a.hcl": `ruleset "bad" {
  title            = "Bad"
  version          = "1.4.2"
  status           = "active"
  publisher        = "A clinic"
  author           = "senior orthotist"
  reviewer         = ["physiatrist", " orthotist "]
  purpose          = "P."
  approval_date    = "2026-12-01"
  effective_period = ["2027-01-01", "2028-12-31"]
  review_by        = "2028-01-01"
  vocabulary       = "tiny@1.2"
}
`})
	want := Header{Name: "bad", Title: "Bad", Version: "1.4.2", Status: "active", Publisher: "A clinic", Purpose: "P.",
		Author: []string{"senior orthotist"}, Reviewer: []string{"physiatrist", "orthotist"}, ApprovalDate: "2026-12-01",
		EffectivePeriod: [2]string{"2027-01-01", "2028-12-31"}, ReviewBy: "2028-01-01"}
	got := rs.Header
	got.Where = source.Range{}
	if fmt.Sprintf("%+v", got) != fmt.Sprintf("%+v", want) {
		t.Errorf("\n got %+v\nwant %+v", got, want)
	}
	if at := rs.Parts[0].place("review_by").Text(); at != `"2028-01-01"` {
		t.Errorf("review_by is placed at %s", at)
	}
}

func TestReads(t *testing.T) {
	rs := read(t, map[string]string{"bad/a.hcl": headed("bad", `builds_on = ["safety"]`), "bad/b.hcl": `finding "a" {
  holds = "other.knee_extension > limb.knee_extension && recorded(limb.knee_extension) && limb.knee_extension > deg(0) && finding.safety.fragile"
}
`})
	var got []string
	for _, f := range rs.Facts {
		if f.Name != "a" {
			continue
		}
		for _, r := range f.Expr.Reads {
			got = append(got, fmt.Sprintf("%s other=%v recorded=%v measure=%v fact=%v at %s", r.Path, r.Other, r.Recorded, r.Measure != nil, r.Fact != nil, r.Where.Text()))
		}
	}
	want := []string{
		"other.knee_extension other=true recorded=false measure=true fact=false at other.knee_extension",
		"limb.knee_extension other=false recorded=false measure=true fact=false at limb.knee_extension",
		"limb.knee_extension other=false recorded=true measure=true fact=false at limb.knee_extension",
		"finding.safety.fragile other=false recorded=false measure=false fact=true at finding.safety.fragile",
	}
	if !slices.Equal(got, want) {
		t.Errorf("\n got %s\nwant %s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// What runs for each limb, and what once: directly, through facts and formulas, through texts, and
// because a rule that overrides it does.
func TestReach(t *testing.T) {
	facts := `finding "of_person" {
  holds = "person.age > years(16)"
}
finding "of_limb" {
  holds = "limb.knee_extension > deg(0)"
}
finding "of_other" {
  holds = "other.knee_extension > deg(0)"
}
finding "through" {
  holds = "finding.of_limb && finding.of_person"
}
finding "asks" {
  holds = "recorded(limb.knee_extension)"
}
quantity "length" {
  unit  = "mm"
  value = "limb.leg_length"
}
`
	for _, test := range []struct {
		name, rules string
		want        string // the rules that run for each limb
	}{
		{"a person's condition", ruled("r", "finding.of_person"), ""},
		{"no condition", ruled("r", "true"), ""},
		{"a limb's condition", ruled("r", "limb.knee_extension > deg(0)"), "r"},
		{"the other limb's", ruled("r", "finding.of_other"), "r"},
		{"through two findings", ruled("r", "finding.through"), "r"},
		{"whether a limb's is recorded", ruled("r", "finding.asks"), "r"},
		{"through unless", ruled("r", "true", `unless = "finding.of_limb"`), "r"},
		{"through a formula", ruled("r", "true", `advise "heel_raise" { aim = "quantity.length / 100" }`), "r"},
		{"through a text", strings.Replace(ruled("r", "true"), `"B."`, `"B ${quantity.length}."`, 1), "r"},
		{"overridden by a limb's", ruled("r", "true") + ruled("s", "finding.of_limb", `overrides = ["r"]`), "r s"},
		{"overriding a limb's", ruled("r", "finding.of_limb") + ruled("s", "true", `overrides = ["r"]`), "r"},
		{"overridden by what a limb's overrides", ruled("r", "true") + ruled("s", "true", `overrides = ["r"]`) + ruled("t", "finding.of_limb", `overrides = ["s"]`), "r s t"},
	} {
		t.Run(test.name, func(t *testing.T) {
			rs := read(t, map[string]string{"bad/a.hcl": headed("bad"), "bad/b.hcl": facts, "bad/c.hcl": test.rules})
			var got []string
			for _, r := range rs.Rules {
				if r.Limb {
					got = append(got, r.Name)
				}
			}
			if strings.Join(got, " ") != test.want {
				t.Errorf("for each limb: %q, want %q", got, test.want)
			}
			for _, f := range rs.Facts {
				if f.Limb != (f.Name != "of_person") {
					t.Errorf("%s: for each limb %v", f.Path(), f.Limb)
				}
			}
		})
	}
}

func TestFactsComeAfterWhatTheyRead(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		n := rapid.IntRange(1, 9).Draw(rt, "facts")
		order := rapid.Permutation(slices.Collect(func(yield func(int) bool) {
			for i := range n {
				if !yield(i) {
					return
				}
			}
		})).Draw(rt, "names") // fact i is called f<order[i]>, and reads earlier ones
		text := ""
		for i := range n {
			holds := []string{"person.skin_check_possible"}
			for j := range i {
				if rapid.Bool().Draw(rt, "reads") {
					holds = append(holds, fmt.Sprintf("finding.f%d", order[j]))
				}
			}
			text += fmt.Sprintf("finding \"f%d\" {\n  holds = %q\n}\n", order[i], strings.Join(holds, " || "))
		}
		rs := read(t, map[string]string{"bad/a.hcl": headed("bad"), "bad/b.hcl": text})
		seen := map[*Fact]bool{}
		for _, f := range rs.Facts {
			for _, r := range f.Expr.Reads {
				if r.Fact != nil && !seen[r.Fact] {
					rt.Fatalf("%s stands before %s, which it reads", f.Name, r.Fact.Name)
				}
			}
			seen[f] = true
		}
		if len(seen) != n {
			rt.Fatalf("%d facts of %d", len(seen), n)
		}
	})
}

// Where blocks and files stand does not matter.
func TestOrderOfBlocksDoesNotMatter(t *testing.T) {
	blocks := []string{
		headed("bad", `builds_on = ["safety"]`), ruled("b", "finding.y", `overrides = ["a"]`), ruled("a", "finding.x"), ruled("c", "finding.safety.fragile"),
		"finding \"y\" {\n  holds = \"finding.x\"\n}\n", "finding \"x\" {\n  holds = \"limb.knee_extension > deg(0)\"\n}\n",
		"citation \"k\" {\n  text = \"K.\"\n}\n",
	}
	shape := func(rs *Ruleset) string {
		var out []string
		for _, f := range rs.Facts {
			out = append(out, f.Path())
		}
		for _, r := range rs.Rules {
			out = append(out, fmt.Sprint(r.Name, r.Limb, len(r.Overrides)))
		}
		for _, c := range rs.Cautions {
			out = append(out, c.Name)
		}
		return strings.Join(out, "\n")
	}
	want := shape(read(t, map[string]string{"bad/a.hcl": strings.Join(blocks, "")}))
	rapid.Check(t, func(rt *rapid.T) {
		texts := map[string]string{}
		for _, b := range rapid.Permutation(blocks).Draw(rt, "order") {
			texts[fmt.Sprintf("bad/%d.hcl", rapid.IntRange(0, 3).Draw(rt, "file"))] += b
		}
		if got := shape(read(t, texts)); got != want {
			rt.Fatalf("got\n%s\nwant\n%s", got, want)
		}
	})
}

func TestDigest(t *testing.T) {
	base := map[string]string{"bad/a.hcl": headed("bad", `builds_on = ["safety"]`), "bad/b.hcl": ruled("a", "true")}
	digest := func(more map[string]string) string {
		texts := maps.Clone(base)
		maps.Copy(texts, more)
		return read(t, texts).Digest
	}
	want := digest(nil)
	if !strings.HasPrefix(want, "sha256:") || len(want) != 7+64 {
		t.Fatalf("digest %s", want)
	}
	for range 5 { // the order of a map changes between runs
		if got := digest(nil); got != want {
			t.Fatalf("two readings give %s and %s", want, got)
		}
	}
	seen := map[string]string{want: "nothing"}
	library := withLibrary(t, fstest.MapFS{})
	for name, more := range map[string]map[string]string{
		"a rule":             {"bad/b.hcl": ruled("a", "false")},
		"a note":             {"bad/b.hcl": ruled("a", "true") + "# a note\n"},
		"a file more":        {"bad/c.hcl": "# nothing\n"},
		"what is built on":   {"safety/safety.hcl": string(library["safety/safety.hcl"].Data) + "# a note\n"},
		"the vocabulary":     {"tiny/vocabulary.hcl": string(library["tiny/vocabulary.hcl"].Data) + "# a note\n"},
		"the name of a file": {"bad/b.hcl": "", "bad/d.hcl": ruled("a", "true")},
	} {
		got := digest(more)
		if other, twice := seen[got]; twice {
			t.Errorf("changing %s gives the digest of changing %s", name, other)
		}
		seen[got] = name
	}
	if got := digest(map[string]string{"bad/readme.txt": "not read", "elsewhere/a.hcl": "not read"}); got != want {
		t.Error("a file that is not read changes the digest")
	}
}

func TestOverridesThatAreNoCircle(t *testing.T) {
	rs := read(t, map[string]string{"bad/a.hcl": headed("bad"), "bad/b.hcl": ruled("top", "true", `overrides = ["left", "right"]`) +
		ruled("left", "true", `overrides = ["bottom"]`) + ruled("right", "true", `overrides = ["bottom"]`) + ruled("bottom", "true")})
	if r := rs.Rule("top"); len(r.Overrides) != 2 || r.Overrides[0].Name != "left" || r.Overrides[1].Name != "right" {
		t.Errorf("top overrides %v", r.Overrides)
	}
}

// Random overriding is a circle just where a walk along it comes back to a rule that it passed.
func TestOverridingCycles(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		n := rapid.IntRange(1, 5).Draw(rt, "rules")
		over := make([][]int, n)
		text := ""
		for i := range n {
			var names []string
			for j := range n {
				if i != j && rapid.IntRange(0, 3).Draw(rt, "overrides") == 0 {
					over[i] = append(over[i], j)
					names = append(names, fmt.Sprintf("%q", fmt.Sprintf("r%d", j)))
				}
			}
			text += ruled(fmt.Sprintf("r%d", i), "true", "overrides = ["+strings.Join(names, ", ")+"]")
		}
		reaches := func(from, to int) bool { // by as many steps as there are rules
			at := map[int]bool{from: true}
			for range n {
				next := map[int]bool{}
				for i := range at {
					for _, j := range over[i] {
						next[j] = true
					}
				}
				if next[to] {
					return true
				}
				at = next
			}
			return false
		}
		circle := false
		for i := range n {
			circle = circle || reaches(i, i)
		}
		rs, diags := Library{Embedded: withLibrary(t, files(map[string]string{"bad/a.hcl": headed("bad"), "bad/b.hcl": text}))}.Ruleset("bad")
		if (rs == nil) != circle || circle && (len(diags) != 1 || diags[0].Code != "cycle") {
			rt.Fatalf("circle %v, diagnostics %s\n%s", circle, diags.Text(), text)
		}
	})
}

func TestTooMany(t *testing.T) {
	many := func(n int, block string) map[string]string {
		text := ""
		for i := range n {
			text += fmt.Sprintf(block, i)
		}
		return map[string]string{"bad/a.hcl": headed("bad"), "bad/b.hcl": text}
	}
	_, diags := Library{Embedded: withLibrary(t, files(many(300, "finding \"f%d\" {\n  holds = \"limb.naught\"\n}\n")))}.Ruleset("bad")
	if n := diags.Errors(); n < maxErrors || n > maxErrors+5 || !strings.Contains(diags.Text(), "more than 200 errors") {
		t.Errorf("%d errors", n)
	}
	_, diags = Library{Embedded: withLibrary(t, files(many(maxBlocks, "citation \"c%d\" {\n  text = \"C.\"\n}\n")))}.Ruleset("bad")
	if len(diags) != 1 || diags[0].Code != "too_large" {
		t.Errorf("%s", diags.Text())
	}
}
