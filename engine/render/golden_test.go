package render

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"testing"
)

var update = flag.Bool("update", false, "write the golden files anew")

// golden compares what was written with the file testdata/name.
func golden(t *testing.T, name string, got []byte) {
	t.Helper()
	path := filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(path, got, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatalf("%v; write it with: go test ./engine/render -update", err)
	}
	if !bytes.Equal(got, want) {
		t.Errorf("%s differs; look at it with: go test ./engine/render -update && git diff\n%s", path, firstDifference(want, got))
	}
}

func firstDifference(want, got []byte) string {
	w, g := bytes.Split(want, []byte("\n")), bytes.Split(got, []byte("\n"))
	for i := range max(len(w), len(g)) {
		var a, b []byte
		if i < len(w) {
			a = w[i]
		}
		if i < len(g) {
			b = g[i]
		}
		if !bytes.Equal(a, b) {
			return "want: " + string(a) + "\ngot:  " + string(b)
		}
	}
	return ""
}
