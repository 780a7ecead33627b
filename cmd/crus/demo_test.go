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

// What decides the device or the cast is asked for before what bears on nothing but the follow-up and
// notes, although those settle more at once.
func TestMissingOrder(t *testing.T) {
	var out, errs bytes.Buffer
	if got := run([]string{"advise", "demo_clinic", "../../testdata/sparse.json"}, strings.NewReader(""), &out, &errs); got != fine {
		t.Fatalf("status %d\n%s", got, errs.String())
	}
	_, missing, _ := strings.Cut(out.String(), "What is missing ─")
	skin, injection, driving := strings.Index(missing, "Skin, over the malleoli"), strings.Index(missing, "Last injection"), strings.Index(missing, "Driving")
	if skin < 0 || injection < skin || driving < skin {
		t.Errorf("skin at %d, injection at %d, driving at %d of\n%s", skin, injection, driving, missing)
	}
}
