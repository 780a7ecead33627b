package vocab

import (
	"flag"
	"strings"
	"testing"
	"testing/fstest"

	"crus/engine/source"
	"crus/engine/source/sourcetest"
)

var update = flag.Bool("update", false, "write the golden files anew")

// header stands in every case that has no vocabulary block of its own.
const header = `vocabulary "bad" {
  title   = "A broken vocabulary"
  version = "1.0.0"
}
`

// Each broken vocabulary of testdata/bad gives its golden diagnostics, at places that are written by hand.
func TestBadVocabularies(t *testing.T) {
	sourcetest.Run(t, "testdata/bad", *update, hostile(), func(files fstest.MapFS) source.Diagnostics {
		headed := false
		for name, f := range files {
			headed = headed || strings.Contains(string(f.Data), "vocabulary") || strings.HasSuffix(name, "/alone.hcl")
		}
		if !headed && len(files) > 0 {
			files["bad/header.hcl"] = &fstest.MapFile{Data: []byte(header)}
		}
		v, diags := Read(files, sourcetest.Folder, sourcetest.Folder)
		if (v == nil) != diags.HasErrors() {
			t.Errorf("a vocabulary %v with errors %v", v != nil, diags.HasErrors())
		}
		return diags
	})
}

// hostile holds the broken vocabularies that are not text enough for an archive.
func hostile() sourcetest.Made {
	file := func(text string) func() fstest.MapFS {
		return func() fstest.MapFS { return fstest.MapFS{"bad/v.hcl": {Data: []byte(text)}} }
	}
	var options, grades []string
	for i := range 65 {
		options = append(options, `"o`+strings.Repeat("x", i)+`"`)
	}
	for i := range 300 {
		grades = append(grades, `"`+strings.Repeat("g", i%60)+strings.Repeat("h", i/60)+`"`)
	}
	return sourcetest.Made{
		"folder_missing": func() fstest.MapFS { return fstest.MapFS{} },
		"file_empty":     func() fstest.MapFS { return fstest.MapFS{"bad/alone.hcl": {}} },
		"file_not_utf8":  file("# \xff\n"),
		"options_many":   file("choice \"c\" {\n  label = \"C\"\n  options = [" + strings.Join(options, ", ") + "]\n}\n"),
		"grades_many":    file("scale \"power\" {\n  grades = [" + strings.Join(grades, ", ") + "]\n}\n"),
	}
}
