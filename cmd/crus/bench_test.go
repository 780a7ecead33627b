package main

import (
	"os"
	"os/exec"
	"path/filepath"
	"testing"
)

// BenchmarkColdStart times whole processes: the program from start to end, beside a Go program that
// does nothing, which is what the machine needs to start any.
func BenchmarkColdStart(b *testing.B) {
	dir := b.TempDir()
	empty := filepath.Join(dir, "empty.go")
	if err := os.WriteFile(empty, []byte("package main\n\nfunc main() {}\n"), 0o666); err != nil {
		b.Fatal(err)
	}
	build := func(out, what string) string {
		path := filepath.Join(dir, out)
		if text, err := exec.Command("go", "build", "-o", path, what).CombinedOutput(); err != nil {
			b.Fatalf("%v\n%s", err, text)
		}
		return path
	}
	nothing, crus := build("nothing", empty), build("crus", ".")
	for _, x := range []struct {
		name string
		args []string
	}{
		{"empty program", []string{nothing}},
		{"crus version", []string{crus, "version"}},
		{"crus check demo_clinic", []string{crus, "check", "demo_clinic"}},
		{"crus advise demo_clinic", []string{crus, "advise", "demo_clinic", "../../testdata/spastic_equinovarus.json"}},
	} {
		b.Run(x.name, func(b *testing.B) {
			for b.Loop() {
				if text, err := exec.Command(x.args[0], x.args[1:]...).CombinedOutput(); err != nil {
					b.Fatalf("%v\n%s", err, text)
				}
			}
		})
	}
}
