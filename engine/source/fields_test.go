package source

import (
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
)

// block reads a file with one block.
func block(t *testing.T, body string) *Block {
	t.Helper()
	root, diags := ReadHCL(NewFile("f.hcl", []byte("thing \"a\" {\n"+body+"\n}\n")))
	if root == nil {
		t.Fatal(diags.Text())
	}
	return root.Blocks[0]
}

func TestFieldsGive(t *testing.T) {
	b := block(t, "text = \" t \"\nnumber = -2.5\nyes = true\npair = [0, 60]\nlist = [\"a\", \"b\"]\none = \"a\"\nword = \"red\"\ngroup = { x = \"y\" }")
	var diags Diagnostics
	f := b.Fields(&diags)
	number, _ := f.Number("number")
	lo, hi, ok := f.Pair("pair")
	got := fmt.Sprintln(f.String("text"), number, f.Bool("yes"), lo, hi, ok, len(f.Texts("list")), len(f.Texts("one")), f.OneOf("word", "red", "green"),
		len(f.Object("group", "{}")), f.Has("text"), f.Has("nothing"), f.Where("yes").Text(), f.Where("nothing").Text())
	if want := "t -2.5 true 0 60 true 2 1 red 1 true false true thing \"a\"\n"; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	f.Done()
	if len(diags) != 0 {
		t.Error(diags.Text())
	}
}

func TestFieldsRefuse(t *testing.T) {
	for _, test := range []struct {
		name, body string
		take       func(f *Fields)
		want       string // the messages
	}{
		{"a text", "x = 5", func(f *Fields) { f.String("x") }, "x takes a text, and this is a number."},
		{"an empty text", "x = \" \"", func(f *Fields) { f.Required("x", `"e"`) }, "x is empty."},
		{"two that are not there", "z = 1", func(f *Fields) { f.Number("z"); f.Required("x", `"e"`); f.Needs("y", `"e"`) }, `The thing "a" has no line for x or y.`},
		{"a misspelt one", "lenght = 1", func(f *Fields) { f.Needs("length", "1"); f.Number("length") }, `The thing "a" has nothing called lenght.`},
		{"a misspelt one beside another", "lenght = 1", func(f *Fields) { f.Needs("length", "1"); f.Needs("title", `"e"`) },
			`The thing "a" has nothing called lenght. The thing "a" has no line for title.`},
		{"the wrong kind is not missing too", "x = 5", func(f *Fields) { f.RequiredText("x", `"e"`) }, "x takes a text, and this is a number."},
		{"a pair the wrong way round", "x = [2, 1]", func(f *Fields) { f.Pair("x") }, "x takes two numbers, the smaller one first."},
		{"a pair of one value", "x = [1, 1]", func(f *Fields) { f.Pair("x") }, "x takes two numbers, the smaller one first."},
		{"a word", "x = \"blue\"", func(f *Fields) { f.OneOf("x", "red", "green") }, `x is "blue", which is not one of its words.`},
		{"a list with a number", "x = [\"a\", 1]", func(f *Fields) { f.Texts("x") }, "x takes a list of texts, and this is a number."},
		{"a list with a text twice", "x = [\"a\", \"a\"]", func(f *Fields) { f.Texts("x") }, `"a" stands twice in x.`},
		{"a list too long", "x = [" + strings.Repeat("1, ", maxItems+1) + "]", func(f *Fields) { f.Texts("x") }, "x has more than 500 items."},
		{"a name in a plain text", "x = \"${limb.y}\"", func(f *Fields) { f.String("x") }, "x is a plain text, without ${names}."},
		{"an inner block", "inner \"b\" {\n}", func(f *Fields) { f.Inner("other") }, `The thing "a" has no block inner inside.`},
	} {
		var diags Diagnostics
		f := block(t, test.body).Fields(&diags)
		test.take(f)
		f.Done()
		var got []string
		for _, d := range diags {
			got = append(got, d.Message)
		}
		if s := strings.Join(got, " "); s != test.want {
			t.Errorf("%s: got  %s\nwant %s", test.name, s, test.want)
		}
	}
}

func TestNamed(t *testing.T) {
	for header, want := range map[string]string{
		`thing "a_1" {`: "a_1", `thing a_1 {`: "a_1", `thing "A" {`: "", `thing "1a" {`: "", `thing "" {`: "", `thing "a" "b" {`: "", `thing {`: "", `thing "é" {`: "", `thing "in" {`: "", `thing "a.b" {`: "",
	} {
		root, diags := ReadHCL(NewFile("f.hcl", []byte(header+"\n}\n")))
		if root == nil {
			t.Fatal(diags.Text())
		}
		if got := root.Blocks[0].Named(&diags, "b"); got != want || diags.HasErrors() != (want == "") {
			t.Errorf("%s: %q, %s", header, got, diags.Text())
		}
	}
}

func TestReadFolder(t *testing.T) {
	folder := fstest.MapFS{
		"r/b.hcl": {Data: []byte("b {\n}\n")}, "r/a.hcl": {Data: []byte("a {\n}\n")}, "r/.hidden.hcl": {Data: []byte("c {\n}\n")},
		"r/note.txt": {Data: []byte("d")}, "r/sub/e.hcl": {Data: []byte("e {\n}\n")}, "r/folder.hcl/f.hcl": {Data: []byte("f {\n}\n")},
	}
	files, diags := ReadFolder(folder, "r", "shown/as")
	if len(diags) != 0 || len(files) != 2 || files[0].Name != "shown/as/a.hcl" || files[1].Name != "shown/as/b.hcl" {
		t.Fatalf("%v, %s", files, diags.Text())
	}
	blocks, diags := ReadBlocks(files)
	if len(diags) != 0 || len(blocks) != 2 || blocks[0].Type != "a" || blocks[1].Type != "b" {
		t.Errorf("%v, %s", blocks, diags.Text())
	}
}
