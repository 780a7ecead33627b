// Package source is where every text that a person wrote is kept with its places: files, ranges in
// them, the excerpt with a mark, and the diagnostics that point there. The readers of vocabularies,
// rulesets and assessments stand on it, so that an error in any of them looks and reads the same.
//
//	f := source.NewFile("rules.hcl", src)
//	body, diags := source.ReadHCL(f)
//	if diags.HasErrors() {
//		fmt.Print(diags.Text())
//	}
package source

import (
	"bytes"
	"fmt"
	"sort"
	"unicode/utf8"
)

// MaxFileSize is the largest file that is read, in bytes. A ruleset of 500 rules needs about a
// quarter of it; what is larger is a slip, and would cost time and memory before anyone is told.
const MaxFileSize = 1 << 20

// File is one text with a name to show for it. It is not changed after NewFile.
type File struct {
	Name  string
	Src   []byte
	lines []int // byte offset of each line's first byte
	above int   // lines of the whole text before Src, where Src is only a part
}

// NewFile keeps src under name.
//
// A byte order mark before the first line is passed over: it is in Src, and in no line.
func NewFile(name string, src []byte) *File {
	f := &File{Name: name, Src: src, lines: []int{0}}
	if bytes.HasPrefix(src, []byte("\xef\xbb\xbf")) {
		f.lines[0] = 3
	}
	for i, c := range src {
		if c == '\n' {
			f.lines = append(f.lines, i+1)
		}
	}
	return f
}

// NewPart keeps a part of a longer text, such as one line of a stream; above is how many lines stand
// before it.
func NewPart(name string, src []byte, above int) *File {
	f := NewFile(name, src)
	f.above = above
	return f
}

// Position gives the line and column, both from 1, of a byte offset. Columns count characters
// (Unicode code points), as editors do.
func (f *File) Position(offset int) (line, column int) {
	offset = min(max(offset, f.lines[0]), len(f.Src))
	line = sort.SearchInts(f.lines, offset+1)
	return line + f.above, utf8.RuneCount(f.Src[f.lines[line-1]:offset]) + 1
}

// Line gives the text of a line counted from 1, without its line end.
func (f *File) Line(n int) string {
	n -= f.above
	if n < 1 || n > len(f.lines) {
		return ""
	}
	end := len(f.Src)
	if n < len(f.lines) {
		end = f.lines[n] - 1
	}
	text := f.Src[f.lines[n-1]:end]
	if len(text) > 0 && text[len(text)-1] == '\r' {
		text = text[:len(text)-1]
	}
	return string(text)
}

// Range is a half-open span of bytes in a file. The zero Range is no place.
type Range struct {
	File       *File
	Start, End int
}

// Known reports whether r is a place at all.
func (r Range) Known() bool { return r.File != nil }

// String writes the place as file:line:column.
func (r Range) String() string {
	if r.File == nil {
		return ""
	}
	line, column := r.File.Position(r.Start)
	return fmt.Sprintf("%s:%d:%d", r.File.Name, line, column)
}

// Text gives what stands there.
func (r Range) Text() string {
	if r.File == nil {
		return ""
	}
	return string(r.File.Src[r.Start:r.End])
}

// Text is a string value with the file offset that each of its bytes came from, so that a place
// inside a quoted text or a heredoc can be shown in the file.
type Text struct {
	S    string
	File *File
	At   []int  // len(S)+1 offsets; the last is just past the end
	Refs []Name // the ${names} in it, in order
}

// Name is a ${dotted.name} inside a Text. Start and End delimit it in Text.S, braces included.
type Name struct {
	Name       string
	Start, End int
}

// Range gives the place in the file of the bytes start to end of t.S.
func (t Text) Range(start, end int) Range {
	if t.File == nil || len(t.At) == 0 {
		return Range{}
	}
	last := len(t.At) - 1
	start = min(max(start, 0), last)
	end = min(max(end, start), last)
	to := t.At[end]
	if end > start { // the end of the last byte taken, not the start of the one after an escape
		to = max(t.At[end-1]+1, min(to, t.At[end]))
	}
	return Range{t.File, t.At[start], max(to, t.At[start])}
}

// All gives the place of the whole text.
func (t Text) All() Range { return t.Range(0, len(t.S)) }
