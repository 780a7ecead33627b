package smtlib_test

import (
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"crus/engine/cell"
	"crus/engine/prove"
	"crus/engine/smtlib"
)

// answers has z3 (the Debian package) answer what is written, and gives its answers by the questions' names. z3 holds each
// answer against the :status that is written before it; that it differs, and every other complaint, is a failure.
func answers(t *testing.T, text string) map[string]string {
	t.Helper()
	printed := solve(t, []byte(text))
	if strings.Contains(printed, "error") {
		t.Fatalf("z3 says\n%s\n%s", printed, text)
	}
	out := map[string]string{}
	lines := strings.Split(strings.TrimSpace(printed), "\n")
	for i := 0; i+1 < len(lines); i += 2 {
		out[lines[i]] = lines[i+1]
	}
	if len(lines) != 2*strings.Count(text, "(check-sat)") || len(lines) != 2*len(out) {
		t.Fatalf("%d answers are of %d questions:\n%s", len(lines)/2, len(out), printed)
	}
	return out
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

// written gives the questions of a report as they are written.
func written(t *testing.T, s *cell.Space, r *prove.Report) string {
	t.Helper()
	var text strings.Builder
	if err := smtlib.Write(&text, s, r); err != nil {
		t.Fatal(err)
	}
	return text.String()
}
