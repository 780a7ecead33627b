package sourcetest

import (
	"path/filepath"
	"strings"
	"testing"

	"golang.org/x/tools/txtar"

	"crus/engine/source"
)

// leaks are words of the libraries underneath that no reader of a diagnostic knows.
var leaks = [...]string{"overload", "undeclared", "mismatched input", "extraneous input", "token recognition", "<EOF>", "list(", "_&&_", "_||_", "_==_", "!_",
	"@in", "crus.angle", "crus.length", "scale.muscle_power", "Unsupported", "nil", "%!", "ERROR", "hcl", "cty"}

// Sound checks what must be true of diagnostics whatever was read: places inside their files, whole
// plain sentences, and no word of the libraries underneath unless the input has it.
func Sound(t interface {
	Helper()
	Fatalf(string, ...any)
}, diags source.Diagnostics) {
	t.Helper()
	for _, d := range diags {
		text, input := d.Message+"\n"+d.Hint, ""
		if f := d.Where.File; f != nil {
			input = string(f.Src)
			if d.Where.Start < 0 || d.Where.End < d.Where.Start || d.Where.End > len(f.Src) {
				t.Fatalf("%q: the place %d to %d is not in its file of %d bytes", d.Message, d.Where.Start, d.Where.End, len(f.Src))
			}
		}
		if d.Code == "" || !strings.HasSuffix(d.Message, ".") || strings.HasSuffix(d.Message, "..") && !strings.HasSuffix(d.Message, "....") {
			t.Fatalf("%q (%s) is not a whole sentence with a code", d.Message, d.Code)
		}
		for _, leak := range leaks {
			if strings.Contains(text, leak) && !strings.Contains(input, leak) && !strings.Contains(text, ".hcl files") && !strings.Contains(text, "docs/") {
				t.Fatalf("the diagnostic says %q: %s", leak, text)
			}
		}
	}
	_ = diags.Text()
}

// Seeds gives the files of the archives of a folder, with the names of their archives.
func Seeds(f *testing.F, dir string) map[string][]txtar.File {
	f.Helper()
	names, err := filepath.Glob(filepath.Join(dir, "*.txtar"))
	if err != nil || len(names) == 0 {
		f.Fatalf("archives %v, error %v", names, err)
	}
	out := map[string][]txtar.File{}
	for _, name := range names {
		ar, err := txtar.ParseFile(name)
		if err != nil {
			f.Fatal(err)
		}
		for _, file := range ar.Files {
			if file.Name != "want" {
				out[name] = append(out[name], file)
			}
		}
	}
	return out
}
