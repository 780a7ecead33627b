package pdf

import (
	"bytes"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// A small page is printed on one sheet of A4, with its words, and leaves nothing behind.
func TestPDF(t *testing.T) {
	t.Setenv("TMPDIR", t.TempDir())
	got, err := Print([]byte(`<!doctype html><style>@page{size:A4;margin:9mm}</style><p>Plantarflexion: −5°`))
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.HasPrefix(got, []byte("%PDF-")) {
		t.Fatalf("no PDF: %.20q", got)
	}
	boxes := regexp.MustCompile(`/MediaBox ?\[0 0 (59[456][0-9.]*) (84[123][0-9.]*)\]`).FindAll(got, -1) // ISO 216: 595.3 by 841.9 points
	if len(boxes) != 1 {
		t.Errorf("%d sheets of A4", len(boxes))
	}
	file := filepath.Join(t.TempDir(), "page.pdf")
	if err := os.WriteFile(file, got, 0o600); err != nil {
		t.Fatal(err)
	}
	text, err := exec.Command("pdftotext", file, "-").Output()
	if err != nil {
		t.Fatalf("pdftotext, of poppler-utils: %v", err)
	}
	if !strings.Contains(string(text), "Plantarflexion: −5°") {
		t.Errorf("the page says %q", text)
	}
	left, err := filepath.Glob(filepath.Join(os.Getenv("TMPDIR"), "crus-print-*"))
	if err != nil || len(left) > 0 {
		t.Errorf("left behind: %v, %v", left, err)
	}
}

// Without a browser Print says so, at once.
func TestNoBrowser(t *testing.T) {
	t.Setenv("PATH", t.TempDir())
	if _, err := Print([]byte("<p>x")); !errors.Is(err, ErrNoBrowser) {
		t.Errorf("%v", err)
	}
}

// What is called chromium and is none ends in an error, not in waiting.
func TestBrokenBrowser(t *testing.T) {
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "chromium"), []byte("#!/bin/sh\nexit 3\n"), 0o755); err != nil {
		t.Fatal(err)
	}
	t.Setenv("PATH", dir)
	if _, err := Print([]byte("<p>x")); err == nil || errors.Is(err, ErrNoBrowser) {
		t.Errorf("%v", err)
	}
}
