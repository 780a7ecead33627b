package reason_test

import (
	"bytes"
	"encoding/json"
	"flag"
	"io/fs"
	"os"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/source"
)

var update = flag.Bool("update", false, "write the golden files anew")

// full reads the ruleset and the assessment of the golden file.
func full(t testing.TB) (*reason.Engine, *assess.Assessment) {
	t.Helper()
	m := fstest.MapFS{}
	for in, as := range map[string]string{"vocabulary.hcl": "small/vocabulary.hcl", "base/base.hcl": "base/base.hcl", "full/full.hcl": "full/full.hcl"} {
		src, err := fs.ReadFile(os.DirFS("testdata"), in)
		if err != nil {
			t.Fatal(err)
		}
		m[as] = &fstest.MapFile{Data: src}
	}
	rs, diags := ruleset.Library{Embedded: m}.Ruleset("full")
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	src, err := os.ReadFile("testdata/full.json")
	if err != nil {
		t.Fatal(err)
	}
	a, diags := assess.ReadJSON(source.NewFile("full.json", src), rs.Vocabulary)
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	return e, a
}

// The golden file shows one whole outcome, every name and value of it.
func TestGoldenOutcome(t *testing.T) {
	e, a := full(t)
	got := []byte(toJSON(t, e.Advise(a, today())) + "\n")
	const path = "testdata/full.golden.json"
	if *update {
		if err := os.WriteFile(path, got, 0o666); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatalf("%v; write it with: go test ./engine/reason -update", err)
	}
	if !bytes.Equal(got, want) {
		t.Errorf("%s differs; look at it with: go test ./engine/reason -update && git diff", path)
	}
}

// The fields of an outcome that others may rely on. * is any name or number; what stands behind the
// colon is the kind of the value somewhere at that path: text, number, flag (yes or no), null, list, object.
const promised = `
format: text
ruleset.name: text
ruleset.version: text
ruleset.digest: text
vocabulary: object
assessment: object
applies: text
notices.*: text
person.choices: object
person.cautions: list
person.findings: object
person.quantities: object
person.rules: object
person.missing: list
limbs.left: object
limbs.right: object
limbs.*.choices.*.status: text
limbs.*.choices.*.value: text
limbs.*.choices.*.value: number
limbs.*.choices.*.value: null
limbs.*.choices.*.among.*: text
limbs.*.choices.*.provisional: flag
limbs.*.choices.*.near_boundary: null
limbs.*.choices.*.options.*.option: text
limbs.*.choices.*.options.*.state: text
limbs.*.choices.*.options.*.by.*: text
limbs.*.choices.*.conflict.*: text
limbs.*.choices.*.could_become.*.value: text
limbs.*.choices.*.could_become.*.if: text
limbs.*.choices.*.unit: text
limbs.*.choices.*.interval.*: number
limbs.*.cautions.*.name: text
limbs.*.cautions.*.level: text
limbs.*.cautions.*.state: text
limbs.*.cautions.*.says: text
limbs.*.cautions.*.act: text
limbs.*.findings.*: flag
limbs.*.findings.*: null
limbs.*.quantities.*.value: number
limbs.*.quantities.*.unit: text
limbs.*.quantities.*: null
limbs.*.rules.*.state: text
limbs.*.rules.*.waits_for.*: text
limbs.*.rules.*.set_aside_by: list
limbs.*.rules.*.trace: object
limbs.*.missing.*.measure: text
limbs.*.missing.*.decides.*: text
`

func TestPromisedFields(t *testing.T) {
	e, a := full(t)
	var o any
	if err := json.Unmarshal([]byte(toJSON(t, e.Advise(a, today()))), &o); err != nil {
		t.Fatal(err)
	}
	for _, line := range strings.Split(strings.TrimSpace(promised), "\n") {
		path, kind, _ := strings.Cut(line, ": ")
		if !slices.Contains(kinds(o, strings.Split(path, ".")), kind) {
			t.Errorf("the outcome has no %s that is a %s", path, kind)
		}
	}
}

// kinds gives the kinds of the values at a path.
func kinds(v any, path []string) (out []string) {
	if len(path) > 0 {
		switch x := v.(type) {
		case map[string]any:
			for name, inner := range x {
				if path[0] == "*" || path[0] == name {
					out = append(out, kinds(inner, path[1:])...)
				}
			}
		case []any:
			for _, inner := range x {
				if path[0] == "*" {
					out = append(out, kinds(inner, path[1:])...)
				}
			}
		}
		return out
	}
	switch v.(type) {
	case string:
		return []string{"text"}
	case float64:
		return []string{"number"}
	case bool:
		return []string{"flag"}
	case nil:
		return []string{"null"}
	case []any:
		return []string{"list"}
	}
	return []string{"object"}
}

// The words for states are those of the language.
func TestWordsOfStates(t *testing.T) {
	e, a := full(t)
	o := e.Advise(a, today())
	said := map[string]bool{}
	for _, r := range []*reason.Result{o.Person, o.Limbs["left"], o.Limbs["right"]} {
		for _, c := range r.Choices {
			said[c.Status] = true
			for _, x := range c.Options {
				said[x.State] = true
			}
		}
		for _, x := range r.Rules {
			said[x.State] = true
		}
		for _, c := range r.Cautions {
			said[c.State] = true
		}
	}
	var got []string
	for w := range said {
		got = append(got, w)
	}
	same(t, "words", sorted(got), "conflict default did_not_fire fired level open outweighed pending picked removed set_aside settled unanswered")
}

// One engine serves several goroutines at once.
func TestManyAtOnce(t *testing.T) {
	e, a := full(t)
	want := toJSON(t, e.Advise(a, today()))
	var wg sync.WaitGroup
	for range 8 {
		wg.Go(func() {
			for range 5 {
				b, err := json.MarshalIndent(e.Advise(a, today()), "", "  ")
				if err != nil || string(b) != want {
					t.Errorf("an outcome made beside others differs (%v)", err)
				}
			}
		})
	}
	wg.Wait()
}
