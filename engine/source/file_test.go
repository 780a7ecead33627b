package source

import (
	"strings"
	"testing"
	"unicode/utf8"

	"pgregory.net/rapid"
)

func TestPosition(t *testing.T) {
	for _, test := range []struct {
		name, src    string
		offset       int
		line, column int
		text         string // of the line
	}{
		{"the beginning", "ab\ncd\n", 0, 1, 1, "ab"},
		{"in a line", "ab\ncd\n", 4, 2, 2, "cd"},
		{"at a line end", "ab\ncd\n", 2, 1, 3, "ab"},
		{"behind the last line end", "ab\ncd\n", 6, 3, 1, ""},
		{"without a last line end", "ab\ncd", 5, 2, 3, "cd"},
		{"letters of several bytes", "é日x\n", 5, 1, 3, "é日x"},
		{"a Windows line end", "ab\r\ncd\r\n", 4, 2, 1, "cd"},
		{"an empty file", "", 0, 1, 1, ""},
		{"far outside", "ab", 99, 1, 3, "ab"},
		{"before the beginning", "ab", -1, 1, 1, "ab"},
		{"behind a byte order mark", "\uFEFFab", 4, 1, 2, "ab"},
		{"at a byte order mark", "\uFEFFab", 0, 1, 1, "ab"},
		{"a byte order mark alone", "\uFEFF", 3, 1, 1, ""},
	} {
		f := NewFile("f.hcl", []byte(test.src))
		line, column := f.Position(test.offset)
		if line != test.line || column != test.column || f.Line(line) != test.text {
			t.Errorf("%s: line %d, column %d, %q", test.name, line, column, f.Line(line))
		}
	}
}

func TestPartOfALongerText(t *testing.T) {
	f := NewPart("cases.jsonl", []byte("first\nsecond"), 41)
	line, column := f.Position(8)
	if line != 43 || column != 3 || f.Line(43) != "second" || f.Line(1) != "" {
		t.Errorf("line %d, column %d, %q", line, column, f.Line(43))
	}
}

// Line and column lead back to the byte.
func TestPositionLeadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		src := strings.Join(rapid.SliceOf(rapid.SampledFrom([]string{"a", "é", "日", "\n", "\r\n", " "})).Draw(t, "src"), "")
		f := NewFile("f", []byte(src))
		for offset := range len(src) + 1 {
			if !utf8.RuneStart((src + "x")[offset]) {
				continue
			}
			line, column := f.Position(offset)
			back := 0
			for range line - 1 {
				back += strings.IndexByte(src[back:], '\n') + 1
			}
			for range column - 1 {
				_, n := utf8.DecodeRuneInString(src[back:])
				back += n
			}
			if back != offset {
				t.Fatalf("%q: byte %d is line %d, column %d, which is byte %d", src, offset, line, column, back)
			}
		}
	})
}

func TestRange(t *testing.T) {
	f := NewFile("f.hcl", []byte("ab\ncde"))
	if r := (Range{f, 3, 5}); r.String() != "f.hcl:2:1" || r.Text() != "cd" || !r.Known() {
		t.Errorf("%s %q", r, r.Text())
	}
	if r := (Range{}); r.String() != "" || r.Text() != "" || r.Known() {
		t.Errorf("no place: %s %q", r, r.Text())
	}
	if r := (Text{}).All(); r.Known() {
		t.Errorf("no text: %s", r)
	}
}
