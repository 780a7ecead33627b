package clinical

import (
	"bufio"
	"bytes"
	"encoding/json"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

type conversion struct {
	Value float64 `json:"value"`
	From  string  `json:"from"`
	To    string  `json:"to"`
}

type converted struct {
	Value *float64 `json:"value"`
	Error string   `json:"error"`
}

// TestUCUM converts between all pairs of units and compares with an independent implementation of UCUM, the
// npm package @lhncbc/ucum-lhc 7.1.10 of the Lister Hill National Center for Biomedical Communications.
// It also agrees on what does not convert.
func TestUCUM(t *testing.T) {
	var all []conversion
	for _, from := range Units() {
		for _, to := range Units() {
			for _, v := range []float64{1, -7.25, 86.5} {
				all = append(all, conversion{v, from.Code, to.Code})
			}
		}
	}
	answers := askUCUM(t, all)
	alike := 0
	for i, c := range all {
		from, _ := UnitByCode(c.From)
		to, _ := UnitByCode(c.To)
		quantity, err := NewQuantity(c.Value, from)
		if err != nil {
			t.Fatal(err)
		}
		got, ok := quantity.In(to)
		if ok != (answers[i].Value != nil) {
			t.Errorf("%v %s in %s: converts here %v, there %v (%s)", c.Value, c.From, c.To, ok, answers[i].Value != nil, answers[i].Error)
			continue
		}
		if !ok {
			continue
		}
		// Nine decimals of the base unit are kept, and In rounds to what those tell apart; or fifteen digits.
		within := math.Max(0.5e-9*to.den/to.num+0.5/powers[to.places], 5e-15*math.Abs(got)) * 1.001
		if want := *answers[i].Value; math.Abs(got-want) > within {
			t.Errorf("%v %s is %v %s, want %v", c.Value, c.From, got, c.To, want)
		}
		alike++
	}
	if alike < 3*len(Units()) {
		t.Errorf("only %d conversions were compared", alike)
	}
}

// askUCUM runs the oracle; it fails the test where that is not installed.
func askUCUM(t *testing.T, all []conversion) []converted {
	t.Helper()
	folder := filepath.Join("..", "..", "testdata", "oracle")
	const wayOut = "run `make oracle` (npm ci in testdata/oracle) once"
	node, err := exec.LookPath("node")
	if err != nil {
		t.Fatalf("UCUM conversions are checked with node, which is not installed: install Node.js, then %s", wayOut)
	}
	if _, err := os.Stat(filepath.Join(folder, "node_modules", "@lhncbc", "ucum-lhc")); err != nil {
		t.Fatalf("the npm package that UCUM conversions are checked with is not installed: %s", wayOut)
	}
	var in, out, failed bytes.Buffer
	w := json.NewEncoder(&in)
	for _, c := range all {
		if err := w.Encode(c); err != nil {
			t.Fatal(err)
		}
	}
	cmd := exec.Command(node, "ucum.mjs")
	cmd.Dir, cmd.Stdin, cmd.Stdout, cmd.Stderr = folder, &in, &out, &failed
	if err := cmd.Run(); err != nil {
		t.Fatalf("node ucum.mjs: %v\n%s\n%s, if it is incomplete", err, failed.String(), wayOut)
	}
	var answers []converted
	for lines := bufio.NewScanner(&out); lines.Scan(); {
		var a converted
		if err := json.Unmarshal(lines.Bytes(), &a); err != nil {
			t.Fatalf("%s: %v", lines.Text(), err)
		}
		answers = append(answers, a)
	}
	if len(answers) != len(all) {
		t.Fatalf("%d answers for %d conversions", len(answers), len(all))
	}
	return answers
}
