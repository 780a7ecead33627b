package cases

import (
	"fmt"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/cell/celltest"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/rulesets"
)

// spaceOf reads a ruleset from files.
func spaceOf(t testing.TB, files fs.FS, name string) *cell.Space {
	t.Helper()
	rs, diags := ruleset.Library{Embedded: files}.Ruleset(name)
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	s, err := cell.New(e)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// givens reads the assessments of all worked cases.
func givens(t testing.TB, s *cell.Space) (out []*assess.Assessment) {
	t.Helper()
	for _, c := range s.Ruleset.Cases {
		a, diags := read(s.Ruleset, c)
		if diags.HasErrors() {
			t.Fatal(diags.Text())
		}
		out = append(out, a)
	}
	return out
}

// copied gives the files of a file system that can be added to.
func copied(t testing.TB, from fs.FS) fstest.MapFS {
	t.Helper()
	out := fstest.MapFS{}
	err := fs.WalkDir(from, ".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		src, err := fs.ReadFile(from, path)
		out[path] = &fstest.MapFile{Data: src}
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// readyShows pastes the ready cases of a ruleset into it, and reports which questions they leave unshown. Their
// expectations must hold too.
func readyShows(t testing.TB, files fstest.MapFS, name string, max int) (shown int, problems []string) {
	t.Helper()
	s := spaceOf(t, files, name)
	before := cover(s, givens(t, s))
	if got := before.Unique + len(before.Masking) + len(before.Unsure) + len(before.Never) + len(before.Unshown); got != before.Questions {
		problems = append(problems, fmt.Sprintf("%d questions, and %d are told of", before.Questions, got))
	}
	more := fstest.MapFS{}
	for path, f := range files {
		more[path] = f
	}
	var blocks []string
	pasted := map[string]bool{}
	for _, q := range before.Unshown {
		if q.Ready != "" && len(blocks) < max {
			blocks = append(blocks, q.Ready)
			pasted[q.Of+q.Place+q.Text] = true
		}
	}
	more[name+"/ready.hcl"] = &fstest.MapFile{Data: []byte(strings.Join(blocks, "\n"))}
	again := spaceOf(t, more, name)
	all := givens(t, again)
	after := cover(again, all)
	for _, q := range after.Unshown {
		if pasted[q.Of+q.Place+q.Text] {
			problems = append(problems, fmt.Sprintf("%s %s lacks %s (%s) after its ready case:\n%s", q.Of, q.Text, q.Lacks, q.Note, q.Ready))
		}
	}
	for i, c := range again.Ruleset.Cases[len(s.Ruleset.Cases):] {
		if i%7 > 0 && max > 100 { // reason is slow where little is recorded
			continue
		}
		o := again.Engine.Advise(all[len(s.Ruleset.Cases)+i], time.Time{})
		for _, x := range c.Expect {
			for _, f := range compare(again.Ruleset, o, x) {
				problems = append(problems, fmt.Sprintf("%s: %s is %s, and %s is expected", c.Name, f.What, f.Got, f.Expected))
			}
		}
	}
	return len(blocks), problems
}

// What is written ready to paste shows what it is meant to show, in every ruleset that comes with the program.
func TestReadyCasesShow(t *testing.T) {
	files := copied(t, rulesets.FS)
	for _, name := range []string{"demo_clinic", "stroke_afo", "composite_design", "limb_safety", "spastic_gait_afo", "calf_weakness_afo", "flaccid_drop_foot_afo", "hereditary_neuropathy_afo"} {
		if _, problems := readyShows(t, files, name, 1000); problems != nil {
			t.Errorf("%s:\n%s", name, strings.Join(problems, "\n"))
		}
	}
}

// The same in drawn rulesets, which have no worked cases at all.
func TestReadyCasesOfDrawnRulesets(t *testing.T) {
	total := 0
	for seed := range uint64(60) {
		s := celltest.Draw(celltest.Seeded(seed), celltest.Small())
		shown, problems := readyShows(t, s.Files, celltest.Name, 60)
		total += shown
		if problems != nil {
			t.Errorf("seed %d:\n%s\n%s", seed, strings.Join(problems, "\n"), s)
		}
	}
	if total < 200 {
		t.Errorf("only %d questions were shown by ready cases", total)
	}
}

// vocabulary of a few measures for conditions written here.
const coverVocabulary = `
vocabulary "small" {
  title   = "Small"
  version = "1.0.0"
}
measure "p" {
  of          = "limb"
  label       = "P"
  yes_no      = true
  error_basis = "None is published."
}
measure "q" {
  of          = "limb"
  label       = "Q"
  yes_no      = true
  error_basis = "None is published."
}
measure "flex" {
  of          = "limb"
  label       = "Flex"
  unit        = "deg"
  plausible   = [-60, 45]
  error_basis = "None is published."
}
choice "pad" {
  label   = "Pad"
  options = ["none", "thin"]
}
`

// Which questions some cases show, in short: cases are "p=true flex=5", and what is not shown is "question: lacks".
func TestCoverage(t *testing.T) {
	for _, x := range []struct {
		condition string
		cases     []string
		alone     int
		masking   int
		rest      string
	}{
		{"limb.p && limb.q", []string{"p=true q=true", "p=false q=true", "p=true q=false"}, 2, 0, ""},
		{"limb.p && limb.q", []string{"p=true q=true", "p=false q=true"}, 1, 0, "limb.q lacks no"},
		{"limb.p && limb.q", []string{"p=false q=false", "p=true q=true"}, 0, 0, "limb.p lacks no; limb.q lacks no"},
		{"limb.p && limb.q", nil, 0, 0, "limb.p lacks both; limb.q lacks both"},
		{"limb.p || limb.q", []string{"p=true q=false", "p=false q=false"}, 1, 0, "limb.q lacks yes"},
		{"limb.p && limb.q", []string{"p=true", "q=true p=false", "p=true q=true"}, 1, 0, "limb.q lacks no"}, // an unknown answer shows nothing
		{"limb.flex < deg(0) || limb.flex < deg(5)", []string{"flex=-1", "flex=3", "flex=9"}, 1, 0, "limb.flex < deg(0) never"},
		{"limb.flex < deg(0) || limb.flex > deg(5)", []string{"flex=-1", "flex=3", "flex=9"}, 2, 0, ""},
		{"limb.p && !limb.p || limb.q", []string{"q=true p=true", "q=false p=true"}, 1, 0, "limb.p never"},
		{"limb.flex < deg(0) ? limb.p : limb.flex > deg(5)", []string{"flex=-1 p=false", "flex=-1 p=true", "flex=3 p=true", "flex=9 p=true", "flex=9 p=false", "flex=3 p=false"}, 3, 0, ""},
		{"limb.p == limb.q", []string{"p=true q=true", "p=false q=true", "p=true q=false"}, 2, 0, ""},
		{"(limb.flex < deg(0)) == (limb.flex < deg(5))", []string{"flex=-1", "flex=3", "flex=9"}, 2, 0, ""},
	} {
		src := "ruleset \"main\" {\n title = \"Main\"\n version = \"1.0.0\"\n status = \"active\"\n vocabulary = \"small@1\"\n}\n" +
			fmt.Sprintf("finding \"f\" {\n holds = %q\n because = \"So.\"\n}\n", x.condition)
		for i, c := range x.cases {
			src += fmt.Sprintf("case \"c%d\" {\n basis = \"common_practice\"\n given {\n device_for = [\"left\"]\n left {\n%s\n}\n}\n expect \"left\" {\n findings = { f = \"unknown\" }\n}\n}\n", i, strings.ReplaceAll(c, " ", "\n"))
		}
		s := spaceOf(t, fstest.MapFS{"small/v.hcl": {Data: []byte(coverVocabulary)}, "main/r.hcl": {Data: []byte(src)}}, "main")
		c := cover(s, givens(t, s))
		var rest []string
		for _, q := range c.Never {
			rest = append(rest, q.Text+" never")
		}
		for _, q := range c.Unshown {
			rest = append(rest, q.Text+" lacks "+q.Lacks)
		}
		if got := strings.Join(rest, "; "); c.Unique != x.alone || len(c.Masking) != x.masking || got != x.rest {
			t.Errorf("%s with %q: %d alone, %d with others, %q; not %d, %d, %q", x.condition, x.cases, c.Unique, len(c.Masking), got, x.alone, x.masking, x.rest)
		}
	}
}
