package main

import (
	"bytes"
	"encoding/json"
	"path/filepath"
	"strings"
	"testing"

	"github.com/rivo/uniseg"
)

// The assessments that come with the program are all advised on by the demonstration clinic's rules:
// twice the same bytes, and as text no line wider than a terminal.
func TestDemo(t *testing.T) {
	var files []string
	for _, pattern := range []string{"*.json", "*.hcl", "*.csv"} {
		found, err := filepath.Glob(filepath.Join("../../testdata", pattern))
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, found...)
	}
	if len(files) < 6 {
		t.Fatalf("only %d assessments", len(files))
	}
	for _, file := range files {
		t.Run(filepath.Base(file), func(t *testing.T) {
			call := func(args ...string) []byte {
				t.Helper()
				var out, errs bytes.Buffer
				if got := run(append([]string{"advise", "demo_clinic", file}, args...), strings.NewReader(""), &out, &errs); got == failed || errs.Len() > 0 {
					t.Fatalf("status %d\n%s", got, errs.String())
				}
				return out.Bytes()
			}
			first := call("--json")
			if !json.Valid(first) {
				t.Error("not JSON")
			}
			if !bytes.Equal(first, call("--json")) {
				t.Error("two runs differ")
			}
			for _, line := range strings.Split(string(call("--full")), "\n") {
				if w := uniseg.StringWidth(line); w > 80 {
					t.Errorf("%d columns: %s", w, line)
				}
			}
		})
	}
}
