package form

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"crus/engine/assess"
	"crus/engine/ruleset"
	"crus/rulesets"
)

// The printed sheet is A4 throughout, is of few pages, carries a line for the assessment's number on
// each, and has every measure on it. It is printed by chromium and read by poppler.
func TestPrintedSheet(t *testing.T) {
	rs, diags := ruleset.Library{Embedded: rulesets.FS}.Ruleset("demo_safety")
	if rs == nil {
		t.Fatal(diags)
	}
	f := ForRuleset(rs, assess.Sides())
	var page bytes.Buffer
	if err := f.HTML(&page); err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	html, pdf := filepath.Join(dir, "sheet.html"), filepath.Join(dir, "sheet.pdf")
	if err := os.WriteFile(html, page.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
	call(t, "chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
		"--disable-component-update", "--disable-sync", "--user-data-dir="+filepath.Join(dir, "profile"),
		"--no-pdf-header-footer", "--print-to-pdf="+pdf, "file://"+html)
	info := call(t, "pdfinfo", pdf)
	if !strings.Contains(info, "(A4)") {
		t.Errorf("not A4:\n%s", info)
	}
	pages := strings.Split(strings.TrimSuffix(call(t, "pdftotext", pdf, "-"), "\f"), "\f")
	if len(pages) < 1 || len(pages) > 4 {
		t.Errorf("%d pages for %d measures", len(pages), f.Count())
	}
	all := strings.Join(strings.Fields(strings.Join(pages, " ")), " ")
	for i, p := range pages {
		if !strings.Contains(p, "Assessment ....") {
			t.Errorf("page %d has no line for the number", i+1)
		}
	}
	for _, st := range f.Stages {
		for _, field := range st.Fields {
			if !strings.Contains(all, field.Measure.Label) {
				t.Errorf("%s is not on the sheet", field.Measure.Label)
			}
		}
	}
}

// call runs a program and gives what it printed.
func call(t *testing.T, name string, args ...string) string {
	t.Helper()
	out, err := exec.CommandContext(t.Context(), name, args...).Output()
	if err != nil {
		t.Fatalf("%s: %v. The tests need chromium and poppler-utils; make test says how to install them.", name, err)
	}
	return string(out)
}
