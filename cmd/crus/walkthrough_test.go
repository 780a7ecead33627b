package main

import (
	"encoding/json"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// The walkthrough shows what the program really prints, decides and draws for the three invented persons, whose
// assessments lie in the folder in which its commands run. Beside the comments of the tutorial a reader does not
// see
//
//	<!--decided RULESET ASSESSMENT SIDE...-->
//
// Of the table below it, the first cell of a row names a choice, and the next cells hold what is decided for each
// side; every choice has a row, and every caution of the sheet is named before the next person. -update writes
// what the program decides, and the pictures that it draws; the page as a picture is made by hand.
func TestWalkthrough(t *testing.T) {
	doc, err := filepath.Abs("../../docs/walkthrough.md")
	if err != nil {
		t.Fatal(err)
	}
	pictures := filepath.Join(filepath.Dir(doc), "pictures")
	dir := t.TempDir()
	for _, name := range []string{"design_stroke.json", "design_child.json", "design_neuropathy.json"} {
		src, err := os.ReadFile(filepath.Join("../../testdata", name))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), src, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	retold(t, "../../docs/walkthrough.md", dir)
	decidedTables(t, doc)
	drawn(t, dir, pictures)
	shown(t, doc)
}

// decidedTables holds the tables of decisions against the program.
func decidedTables(t *testing.T, doc string) {
	t.Helper()
	src, err := os.ReadFile(doc)
	if err != nil {
		t.Fatal(err)
	}
	lines := strings.Split(string(src), "\n")
	tables := 0
	for i, line := range lines {
		if said, ok := strings.CutPrefix(line, "<!--decided "); ok {
			tables++
			words := strings.Fields(strings.TrimSuffix(said, "-->"))
			decidedTable(t, words[0], words[1], words[2:], lines[i+1:])
		}
	}
	if tables != 3 {
		t.Errorf("%d tables of decisions for three persons", tables)
	}
	now := strings.Join(lines, "\n")
	switch {
	case now == string(src):
	case *update:
		if err := os.WriteFile(doc, []byte(now), 0o644); err != nil {
			t.Fatal(err)
		}
	default:
		for _, l := range diffLines(string(src), now) {
			if l.sign != ' ' {
				t.Errorf("%c %s", l.sign, l.text)
			}
		}
		t.Error("a table shows something else than the program decides; -update writes what it decides")
	}
}

// decidedTable writes what is decided into the table with which the lines begin.
func decidedTable(t *testing.T, ruleset, file string, sides []string, lines []string) {
	t.Helper()
	rows := lines[2:slices.Index(lines, "")]
	person := strings.ToLower(strings.Join(lines[:slices.IndexFunc(lines, func(s string) bool { return strings.HasPrefix(s, "## ") })], " "))
	for n, side := range sides {
		decided, cautions := decisions(t, ruleset, file, side)
		for r, row := range rows {
			cells := strings.Split(row, "|")
			label := strings.TrimSpace(cells[1])
			value, ok := decided[label]
			if !ok {
				t.Fatalf("%s, %s: nothing is decided about %s", file, side, label)
			}
			cells[2+n] = " " + value + " "
			rows[r] = strings.Join(cells, "|")
		}
		if len(rows) != len(decided) {
			t.Errorf("%s, %s: %d rows for %d choices", file, side, len(rows), len(decided))
		}
		for _, caution := range cautions {
			if !strings.Contains(person, "*"+strings.ToLower(caution)+"*") {
				t.Errorf("%s, %s: nothing is said about the caution %s", file, side, caution)
			}
		}
	}
}

// decisions says what the workshop sheet of one leg shows: what is decided, by the label of the choice, and the
// titles of its cautions.
func decisions(t *testing.T, ruleset, file, side string) (decided map[string]string, cautions []string) {
	t.Helper()
	var out, errs strings.Builder
	if run([]string{"sheet", ruleset, file, "--side", side, "--json"}, strings.NewReader(""), &out, &errs) == failed {
		t.Fatal(errs.String())
	}
	var legs []struct {
		Prescribed []struct {
			Rows []struct{ Label, Value, Status string }
		}
		Cautions []struct{ Title string }
	}
	if err := json.Unmarshal([]byte(out.String()), &legs); err != nil {
		t.Fatal(err)
	}
	if len(legs) != 1 {
		t.Fatalf("%s, %s: %d legs", file, side, len(legs))
	}
	for _, caution := range legs[0].Cautions {
		cautions = append(cautions, caution.Title)
	}
	decided = map[string]string{}
	for _, group := range legs[0].Prescribed {
		for _, row := range group.Rows {
			switch {
			case row.Value == "":
				decided[row.Label] = "*" + row.Status + "*"
			case row.Status == "settled":
				decided[row.Label] = "**" + row.Value + "**"
			case row.Status == "default":
				decided[row.Label] = row.Value
			default:
				decided[row.Label] = row.Value + " *(" + row.Status + ")*"
			}
		}
	}
	return decided, cautions
}

// drawn holds every drawing that the commands wrote against the one that stands beside the document.
func drawn(t *testing.T, dir, pictures string) {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(dir, "*.svg"))
	if err != nil {
		t.Fatal(err)
	}
	if len(files) < 4 {
		t.Errorf("the commands drew only %d legs", len(files))
	}
	for _, file := range files {
		now, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		kept := filepath.Join(pictures, filepath.Base(file))
		if *update {
			if err := os.WriteFile(kept, now, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		before, err := os.ReadFile(kept)
		if err != nil {
			t.Fatal(err)
		}
		if string(before) != string(now) {
			t.Errorf("%s is not what the program draws now; -update writes it", filepath.Base(file))
		}
	}
}

// shown looks for pictures without a place in this document or those beside it, and for places without a picture.
func shown(t *testing.T, doc string) {
	t.Helper()
	pages, err := filepath.Glob(filepath.Join(filepath.Dir(doc), "*.md"))
	if err != nil {
		t.Fatal(err)
	}
	var all strings.Builder
	for _, page := range pages {
		src, err := os.ReadFile(page)
		if err != nil {
			t.Fatal(err)
		}
		all.Write(src)
	}
	var named []string
	for _, part := range strings.Split(all.String(), "](pictures/")[1:] {
		name, _, _ := strings.Cut(part, ")")
		named = append(named, name)
		if _, err := os.Stat(filepath.Join(filepath.Dir(doc), "pictures", name)); err != nil {
			t.Error(err)
		}
	}
	kept, err := os.ReadDir(filepath.Join(filepath.Dir(doc), "pictures"))
	if err != nil {
		t.Fatal(err)
	}
	for _, picture := range kept {
		if !slices.Contains(named, picture.Name()) {
			t.Errorf("nothing shows %s", picture.Name())
		}
	}
}
