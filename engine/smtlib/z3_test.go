package smtlib_test

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"crus/engine/cell"
	"crus/engine/prove"
	"crus/engine/smtlib"
)

// answers puts the questions of a report to z3 (the Debian package) and gives its answer to each, by the question's name.
// z3 itself holds each answer against the :status that is written before it; that and every other complaint is a failure.
func answers(t *testing.T, s *cell.Space, r *prove.Report) map[string]string {
	t.Helper()
	var text bytes.Buffer
	if err := smtlib.Write(&text, s, r); err != nil {
		t.Fatal(err)
	}
	printed := solve(t, text.Bytes())
	if strings.Contains(printed, "error") {
		t.Fatalf("z3 says\n%s\n%s", printed, text.Bytes())
	}
	out := map[string]string{}
	lines := strings.Split(strings.TrimSpace(printed), "\n")
	for i := 0; i+1 < len(lines); i += 2 {
		out[lines[i]] = lines[i+1]
	}
	if len(out) != len(r.Verdicts) || len(lines) != 2*len(out) {
		t.Fatalf("%d questions, %d answers:\n%s", len(r.Verdicts), len(out), printed)
	}
	return out
}

// name is that of a verdict's question.
func name(v *prove.Verdict) string {
	return strings.TrimSpace(string(v.Kind) + " " + v.Name + " " + v.Other)
}

// solve gives what z3 prints.
func solve(t *testing.T, text []byte) string {
	t.Helper()
	solver, err := exec.LookPath("z3")
	if err != nil {
		t.Fatal("z3 is missing. Install it: apt-get install z3")
	}
	file := filepath.Join(t.TempDir(), "questions.smt2")
	if err := os.WriteFile(file, text, 0o600); err != nil {
		t.Fatal(err)
	}
	printed, err := exec.Command(solver, "-smt2", "-T:60", file).CombinedOutput()
	if err != nil && len(printed) == 0 {
		t.Fatal(err)
	}
	return string(printed)
}
