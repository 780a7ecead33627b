package ruleset

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// write makes files below a folder.
func write(t *testing.T, dir string, texts map[string]string) {
	t.Helper()
	for name, text := range texts {
		path := filepath.Join(dir, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// vocabulary makes a vocabulary with nothing in it.
func vocabulary(title, version string) string {
	return "vocabulary \"words\" {\n  title   = \"" + title + "\"\n  version = \"" + version + "\"\n}\n"
}

// over makes a ruleset over that vocabulary.
func over(want string) string {
	return "ruleset \"own\" {\n  title      = \"T\"\n  version    = \"1.0.0\"\n  status     = \"draft\"\n  vocabulary = \"" + want + "\"\n}\n"
}

// A name in a ruleset is looked for beside it, then in each folder of the library in order, then among
// the embedded ones.
func TestWhereNamesAreLookedFor(t *testing.T) {
	beside, first, second := t.TempDir(), t.TempDir(), t.TempDir()
	write(t, beside, map[string]string{"own/r.hcl": over("words")})
	lib := Library{Dirs: []string{first, second}, Embedded: files(map[string]string{"words/v.hcl": vocabulary("embedded", "1.0.0")})}
	title := func() string {
		t.Helper()
		rs, diags := lib.Ruleset(filepath.Join(beside, "own"))
		if rs == nil {
			t.Fatal(diags.Text())
		}
		return rs.Vocabulary.Title
	}
	for _, step := range []struct{ dir, want string }{{"", "embedded"}, {second, "second"}, {first, "first"}, {beside, "beside"}} {
		if step.dir != "" {
			write(t, step.dir, map[string]string{"words/v.hcl": vocabulary(step.want, "1.0.0")})
		}
		if got := title(); got != step.want {
			t.Errorf("with %s: found %s", step.want, got)
		}
	}
}

func TestVersions(t *testing.T) {
	lib := Library{Embedded: files(map[string]string{"words/v.hcl": vocabulary("V", "1.10.2"), "own/r.hcl": over("words")})}
	for _, test := range []struct {
		want string
		ok   bool
	}{{"words", true}, {"words@1", true}, {"words@1.10", true}, {"words@1.10.2", true}, {"words@1.1", false}, {"words@2", false}, {"words@1.10.0", false}, {"words@10", false}} {
		v, diags := lib.Vocabulary(test.want)
		if (v != nil) != test.ok || test.ok == diags.HasErrors() {
			t.Errorf("%s: found %v, %s", test.want, v != nil, diags.Text())
		}
		if !test.ok && (len(diags) != 1 || diags[0].Code != "version") {
			t.Errorf("%s: %s", test.want, diags.Text())
		}
		rs, diags := Library{Embedded: files(map[string]string{"words/v.hcl": vocabulary("V", "1.10.2"), "own/r.hcl": over(test.want)})}.Ruleset("own")
		if (rs != nil) != test.ok {
			t.Errorf("a ruleset over %s: %s", test.want, diags.Text())
		}
	}
	if rs, diags := lib.Ruleset("own@2"); rs != nil || len(diags) != 1 || diags[0].Code != "version" {
		t.Errorf("own@2: %s", diags.Text())
	}
}

// What a person types is a folder where there is one, then a name.
func TestNamedByAPerson(t *testing.T) {
	here := t.TempDir()
	t.Chdir(here)
	write(t, here, map[string]string{
		"words/v.hcl":    vocabulary("here", "1.0.0"),
		"own/r.hcl":      over("words"),
		"note.txt":       "no ruleset",
		"empty/note.txt": "no ruleset",
	})
	lib := Library{Embedded: files(map[string]string{"words/v.hcl": vocabulary("embedded", "1.0.0"), "clinic/r.hcl": over("words")})}
	if v, diags := lib.Vocabulary("words"); v == nil || v.Title != "here" {
		t.Errorf("the folder is not taken: %s", diags.Text())
	}
	if rs, diags := lib.Ruleset("clinic"); rs == nil || rs.Vocabulary.Title != "embedded" {
		t.Errorf("the embedded ruleset takes another vocabulary: %s", diags.Text())
	}
	for _, name := range []string{"own", "./own", "own/", filepath.Join(here, "own")} {
		if rs, diags := lib.Ruleset(name); rs == nil || rs.Vocabulary.Title != "here" {
			t.Errorf("%s: %s", name, diags.Text())
		}
	}
	for name, want := range map[string]string{
		"note.txt":   "error: note.txt is a file, and a ruleset is a folder of .hcl files.\n      Name the folder: .\n",
		"empty":      "error: The folder empty has no .hcl files.\n      A ruleset or vocabulary is a folder with .hcl files; check the path.\n",
		"./nowhere":  "error: There is no folder ./nowhere.\n      Check the path. Known by name are clinic and words; anything else is given\n      as a folder.\n",
		"clinics":    "error: There is no ruleset clinics.\n      Did you mean clinic? Known by name are clinic and words; anything else is\n      given as a folder.\n",
		"clinic@1@2": "error: \"1@2\" behind the @ is not a version.\n      For example clinic@1 for any 1.x.y, or clinic@1.2.0 for that one.\n",
		"clinic@":    "error: Behind the @ the version is missing.\n      For example clinic@1 for any 1.x.y, or clinic@1.2.0 for that one.\n",
		"":           "error: No ruleset is named.\n      Known by name are clinic and words; anything else is given as a folder.\n",
	} {
		rs, diags := lib.Ruleset(name)
		if rs != nil {
			t.Errorf("%q is read", name)
		}
		if got := diags.Text(); want != "" && got != want {
			t.Errorf("%q: got\n%swant\n%s", name, got, want)
		}
	}
}

// The places of errors are shown as the person named the folder.
func TestShownPaths(t *testing.T) {
	here := t.TempDir()
	t.Chdir(here)
	write(t, here, map[string]string{"words/v.hcl": vocabulary("here", "1.0.0"), "own/r.hcl": over("words") + "rul \"a\" {\n}\n"})
	for name, want := range map[string]string{"own": "own/r.hcl:7:1", "./own/": "own/r.hcl:7:1", "../" + filepath.Base(here) + "/own": "../" + filepath.Base(here) + "/own/r.hcl:7:1"} {
		_, diags := Library{}.Ruleset(name)
		if len(diags) != 1 || diags[0].Where.String() != want {
			t.Errorf("%s: %s", name, diags.Text())
		}
	}
}

func TestNamesOfTheLibrary(t *testing.T) {
	dir := t.TempDir()
	write(t, dir, map[string]string{"b/r.hcl": over("words"), "not-a-name/r.hcl": "", "file.hcl": ""})
	lib := Library{Dirs: []string{dir, filepath.Join(dir, "nowhere")}, Embedded: files(map[string]string{"a/r.hcl": over("words"), "b/r.hcl": over("words")})}
	if got := strings.Join(lib.names(), " "); got != "a b" {
		t.Errorf("names %s", got)
	}
}
