package main

import (
	"context"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"crus/engine/render"
)

// Work that is stopped gives what was counted so far, says that it is not all, and exits with 1.
func TestTallyStops(t *testing.T) {
	path := filepath.Join(t.TempDir(), "lines.jsonl")
	line := `{"format": "crus-assessment/1", "id": "a", "vocabulary": "lower_limb@1", "device_for": ["left"], "person": {}, "left": {}}` + "\n"
	if err := os.WriteFile(path, []byte(strings.Repeat(line, 50)), 0o600); err != nil {
		t.Fatal(err)
	}
	ctx, stop := context.WithCancel(context.Background())
	for _, x := range []struct {
		stopped bool
		status  int
		text    string
	}{
		{false, fine, "demo_clinic "},
		{true, findings, "Stopped before the end: only these assessments were counted.\n"},
	} {
		if x.stopped {
			stop()
		}
		var out, errs strings.Builder
		a := newApp(strings.NewReader(""), &out, &errs)
		if status := a.finish(a.tallyAll(ctx, "demo_clinic", []string{path}, render.TallyOptions{}, false)); status != x.status {
			t.Errorf("exit status %d, not %d: %s", status, x.status, errs.String())
		}
		if !strings.Contains(out.String(), x.text) || strings.Contains(out.String(), "Stopped") != x.stopped {
			t.Errorf("%q is missing in\n%s", x.text, out.String())
		}
	}
	stop()
}
