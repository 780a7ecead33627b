package reason_test

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/google/cel-go/common/types"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// TestConditionsAgreeWithAnotherCEL holds 300 conditions over the lower_limb vocabulary, each on
// several assessments, against the npm package @bufbuild/cel, an implementation of CEL that shares
// no code with cel-go. There quantities are plain numbers in a base unit and grades are ranks; what
// is compared is every result that is known here, so also those where an unknown does not matter.
func TestConditionsAgreeWithAnotherCEL(t *testing.T) {
	const conditions, assessments = 300, 6
	r := rand.New(rand.NewPCG(7, 11))
	lib := ruleset.Library{Embedded: os.DirFS("../../rulesets")}
	v, diags := lib.Vocabulary("lower_limb")
	if v == nil {
		t.Fatal(diags.Text())
	}
	g := newConditions(r, v)
	var text strings.Builder
	text.WriteString("ruleset \"oracle\" {\n title = \"Conditions\"\n version = \"1.0.0\"\n status = \"draft\"\n vocabulary = \"lower_limb@1\"\n}\n")
	exprs := make([]string, conditions)
	for i := range exprs {
		exprs[i] = g.condition(3)
		fmt.Fprintf(&text, "finding \"f%d\" {\n holds = %q\n}\n", i, exprs[i])
	}
	dir := t.TempDir()
	if err := os.MkdirAll(filepath.Join(dir, "oracle"), 0o777); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "oracle", "r.hcl"), []byte(text.String()), 0o666); err != nil {
		t.Fatal(err)
	}
	rs, diags := lib.Ruleset(filepath.Join(dir, "oracle"))
	if rs == nil {
		t.Fatal(diags.Text())
	}
	engine, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	var asked []string
	var ours []bool
	input := &bytes.Buffer{}
	send(t, input, g.header())
	for range assessments {
		a := g.assessment()
		o := engine.Advise(a, time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC))
		for i, expr := range exprs {
			name := fmt.Sprintf("f%d", i)
			got, of := o.Limbs["left"].Findings[name]
			if !of {
				got = o.Person.Findings[name]
			}
			if got == nil {
				continue
			}
			asked, ours = append(asked, expr), append(ours, *got)
			send(t, input, map[string]any{"expr": expr, "vars": vars(a, v)})
		}
	}
	theirs := oracle(t, input)
	if len(theirs) != len(ours) {
		t.Fatalf("%d answers to %d questions", len(theirs), len(ours))
	}
	both := map[bool]int{}
	for i, got := range theirs {
		if got != fmt.Sprint(ours[i]) {
			t.Errorf("%s\n here %v, there %s", asked[i], ours[i], got)
		}
		both[ours[i]]++
	}
	if both[true] < 200 || both[false] < 200 {
		t.Errorf("too few results of one kind: %v", both)
	}
}

// oracle runs testdata/oracle/cel.mjs. It fails where node or the packages are missing: a skipped
// check would look like a passed one.
func oracle(t *testing.T, input *bytes.Buffer) []string {
	t.Helper()
	cmd := exec.Command("node", "cel.mjs")
	cmd.Dir = filepath.Join("..", "..", "testdata", "oracle")
	cmd.Stdin = input
	var stderr bytes.Buffer
	cmd.Stderr = &stderr
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("The other CEL can't be asked: %v\n%s\nInstall node, then run: make oracle", err, stderr.String())
	}
	var lines []string
	s := bufio.NewScanner(bytes.NewReader(out))
	for s.Scan() {
		lines = append(lines, s.Text())
	}
	return lines
}

func send(t *testing.T, w *bytes.Buffer, x any) {
	t.Helper()
	b, err := json.Marshal(x)
	if err != nil {
		t.Fatal(err)
	}
	w.Write(append(b, '\n'))
}

// vars writes an assessment for the other CEL, as the left limb sees it.
func vars(a *assess.Assessment, v *vocab.Vocabulary) map[string]map[string]any {
	out := map[string]map[string]any{"person": {}, "limb": {}, "other": {}}
	put := func(root string, m *vocab.Measure, e *assess.Entry) {
		out[root][m.Name] = nil
		if e == nil || e.Value == nil {
			return
		}
		switch x := e.Value.(type) {
		case clinical.Quantity:
			out[root][m.Name] = map[string]any{"double": x.Base()}
		case clinical.Grade:
			out[root][m.Name] = map[string]any{"int": fmt.Sprint(x.Rank)}
		case types.Int:
			out[root][m.Name] = map[string]any{"int": fmt.Sprint(int64(x))}
		case types.Bool:
			out[root][m.Name] = map[string]any{"bool": bool(x)}
		case types.String:
			out[root][m.Name] = map[string]any{"string": string(x)}
		}
	}
	for _, m := range v.Measures {
		if m.Of == vocab.Person {
			put("person", m, a.Person[m.Name])
			continue
		}
		put("limb", m, a.Left[m.Name])
		put("other", m, a.Right[m.Name])
	}
	return out
}
