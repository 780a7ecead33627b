package ruleset

import (
	"io/fs"
	"os"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"crus/engine/source"
	"crus/engine/source/sourcetest"
)

// header stands in every case that has no ruleset block of its own in the folder that is read.
const header = `ruleset "bad" {
  title      = "A broken ruleset"
  version    = "1.0.0"
  status     = "draft"
  vocabulary = "tiny@1"
}
`

// withLibrary adds the small vocabulary and ruleset that the cases stand on, and a header.
func withLibrary(t testing.TB, files fstest.MapFS) fstest.MapFS {
	t.Helper()
	library := os.DirFS("testdata/library")
	err := fs.WalkDir(library, ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		src, err := fs.ReadFile(library, path)
		if _, own := files[path]; !own {
			files[path] = &fstest.MapFile{Data: src}
		}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	headed, folder := false, false
	for name, f := range files {
		if strings.HasPrefix(name, sourcetest.Folder+"/") {
			folder = folder || strings.HasSuffix(name, ".hcl")
			headed = headed || strings.Contains(string(f.Data), "ruleset") || strings.HasSuffix(name, "/alone.hcl")
		}
	}
	if folder && !headed {
		files[sourcetest.Folder+"/header.hcl"] = &fstest.MapFile{Data: []byte(header)}
	}
	return files
}

// Each broken ruleset of testdata/bad gives its golden diagnostics, at places that are written by hand.
func TestBadRulesets(t *testing.T) {
	sourcetest.Run(t, "testdata/bad", *update, hostile, func(files fstest.MapFS) source.Diagnostics {
		rs, diags := Library{Embedded: withLibrary(t, files)}.Ruleset(sourcetest.Folder)
		if (rs == nil) != diags.HasErrors() {
			t.Errorf("a ruleset %v with errors %v", rs != nil, diags.HasErrors())
		}
		return diags
	})
}

// Each ruleset of testdata/lint can be read, and gives its golden warnings.
func TestLint(t *testing.T) {
	today := time.Date(2026, 11, 25, 12, 0, 0, 0, time.UTC)
	sourcetest.Run(t, "testdata/lint", *update, nil, func(files fstest.MapFS) source.Diagnostics {
		rs, diags := Library{Embedded: withLibrary(t, files)}.Ruleset(sourcetest.Folder)
		if rs == nil {
			t.Fatal(diags.Text())
		}
		return Lint(rs, today)
	})
}
