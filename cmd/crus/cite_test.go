package main

import (
	"os"
	"strings"
	"testing"
)

// docs/evidence.md is what crus cite writes.
func TestEvidenceDocument(t *testing.T) {
	const path = "../../docs/evidence.md"
	var out, errs strings.Builder
	if got := run([]string{"cite"}, strings.NewReader(""), &out, &errs); got != 0 {
		t.Fatalf("status %d\n%s", got, errs.String())
	}
	if *update {
		if err := os.WriteFile(path, []byte(out.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	src, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if string(src) != out.String() {
		t.Error("docs/evidence.md is not what crus cite writes now; -update writes it anew")
	}
}
