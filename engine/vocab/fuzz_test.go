package vocab

import (
	"os"
	"path/filepath"
	"testing"

	"crus/engine/source"
	"crus/engine/source/sourcetest"
)

// FuzzVocabulary reads a vocabulary of two files.
func FuzzVocabulary(f *testing.F) {
	for _, files := range sourcetest.Seeds(f, "testdata/bad") {
		for _, file := range files {
			f.Add([]byte(header), file.Data)
		}
	}
	real, err := filepath.Glob("../../rulesets/lower_limb/*.hcl")
	if err != nil || len(real) == 0 {
		f.Fatalf("files %v, error %v", real, err)
	}
	for _, name := range real {
		src, err := os.ReadFile(name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add([]byte(header), src)
		f.Add(src, []byte(""))
	}
	f.Fuzz(func(t *testing.T, a, b []byte) {
		v, diags := Parse([]*source.File{source.NewFile("a.hcl", a), source.NewFile("b.hcl", b)})
		if (v == nil) != diags.HasErrors() {
			t.Fatalf("a vocabulary %v with %s", v != nil, diags.Text())
		}
		sourcetest.Sound(t, diags)
		if v == nil {
			return
		}
		for _, m := range v.Measures {
			if v.Measure(m.Name) != m || m.Kind == "" || m.Kind != Text && m.CELType() == nil || m.Never && m.Kind != Date {
				t.Fatalf("the measure %+v", m)
			}
		}
		for _, c := range v.Choices {
			if v.Choice(c.Name) != c || c.Numeric() == (len(c.Options) > 0) || c.HasDefault && !c.Numeric() && c.Rank(c.Default) < 0 {
				t.Fatalf("the choice %+v", c)
			}
		}
	})
}
