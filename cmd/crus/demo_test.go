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

// A device for a leg of which nothing is recorded, beside one that was examined, is warned of; the
// recommendation comes all the same.
func TestSwappedSides(t *testing.T) {
	for deviceFor, warns := range map[string]bool{`["right"]`: true, `["left"]`: false, `["left", "right"]`: false} {
		in := `{"format": "crus-assessment/1", "id": "x", "vocabulary": "lower_limb@1", "date": "2026-10-02", "device_for": ` + deviceFor + `,
			"left": {"plantarflexor_tone": "2"}, "right": {"knee_extension": {"not_recorded": "not asked for"}}}`
		var out, errs bytes.Buffer
		if got := run([]string{"advise", "demo_clinic", "-"}, strings.NewReader(in), &out, &errs); got != fine {
			t.Fatalf("%s: status %d\n%s", deviceFor, got, errs.String())
		}
		if got := strings.Contains(errs.String(), "A device is wanted on the right, and only the left leg was examined."); got != warns {
			t.Errorf("%s: warned %v:\n%s", deviceFor, got, errs.String())
		}
		if !strings.Contains(out.String(), "Recommendation") {
			t.Errorf("%s: no recommendation", deviceFor)
		}
	}
}
