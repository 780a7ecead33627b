package assess

import (
	"bufio"
	"bytes"
	"errors"
	"io"
	"iter"
	"unicode/utf8"

	"crus/engine/source"
	"crus/engine/vocab"
)

// Lines reads a stream of JSON lines: one assessment a line, blank lines between them if wanted. name is
// what to call the stream in messages. Each step gives the assessment of a line and what was found in
// it; with an error the assessment is nil, and the stream goes on with the next line. Only one line is
// held in memory, and of a line that is too long only its beginning.
func Lines(r io.Reader, name string, v *vocab.Vocabulary) iter.Seq2[*Assessment, source.Diagnostics] {
	return func(yield func(*Assessment, source.Diagnostics) bool) {
		for l := range Unread(r, name) {
			if !yield(l.Read(v)) {
				return
			}
		}
	}
}

// Line is a line of a stream that was not read yet. It is not changed, so lines can be read at the same time.
type Line struct {
	file  *source.File
	start int
	size  int
	diags source.Diagnostics // why there is nothing to be read
}

// Read reads the assessment of the line, as [Lines] does.
func (l Line) Read(v *vocab.Vocabulary) (*Assessment, source.Diagnostics) {
	if l.diags != nil {
		return nil, l.diags
	}
	return readLine(l.file, l.start, len(l.file.Src), l.size, v)
}

// Unread gives the lines of a stream of JSON lines, without blank ones, to be read later.
func Unread(r io.Reader, name string) iter.Seq[Line] {
	return func(yield func(Line) bool) {
		in := bufio.NewReaderSize(r, 64<<10)
		seen := false
		for above := 0; ; above++ {
			line, size, err := nextLine(in)
			f := source.NewPart(name, line, above)
			start := 0
			if above == 0 && bytes.HasPrefix(line, []byte(byteOrderMark)) {
				start = len(byteOrderMark)
			}
			if len(bytes.TrimSpace(line[start:])) > 0 {
				seen = true
				if !yield(Line{file: f, start: start, size: size}) {
					return
				}
			}
			switch {
			case errors.Is(err, io.EOF):
				if !seen {
					yield(Line{diags: source.Diagnostics{noLines(name)}})
				}
				return
			case err != nil:
				yield(Line{diags: source.Diagnostics{source.Errorf(source.Range{File: f}, "unreadable", "The stream can't be read on: %s.", err).
					Hinting("What stands after this line was not read.")}})
				return
			}
		}
	}
}

const byteOrderMark = "\xef\xbb\xbf"

// nextLine reads a line without its end: its first MaxLineSize bytes, and how many it has. The
// error is that of the end of the stream.
func nextLine(in *bufio.Reader) (line []byte, size int, err error) {
	for {
		part, err := in.ReadSlice('\n')
		size += len(part)
		if room := MaxLineSize + 1 - len(line); room > 0 {
			line = append(line, part[:min(room, len(part))]...)
		}
		if err == nil {
			size--
			line = bytes.TrimSuffix(line, []byte("\n"))
		}
		if !errors.Is(err, bufio.ErrBufferFull) {
			return line[:min(len(line), MaxLineSize)], size, err
		}
	}
}

// readLine reads the assessment of one line, which stands from start to end of f and has size bytes.
func readLine(f *source.File, start, end, size int, v *vocab.Vocabulary) (*Assessment, source.Diagnostics) {
	if size > MaxLineSize {
		shown := f.Src[start:min(start+80, end)]
		for len(shown) > 0 && !utf8.Valid(shown) {
			shown = shown[:len(shown)-1]
		}
		return nil, source.Diagnostics{source.Errorf(source.Range{File: f, Start: start, End: start + len(shown)}, "too_large",
			"This line has %d bytes; more than %d are not read.", size, MaxLineSize).
			Hinting("One line is one assessment.")}
	}
	start, diags := text(f, start, end)
	if diags.HasErrors() {
		return nil, diags
	}
	return readJSON(f, start, end, v)
}

func noLines(name string) source.Diagnostic {
	return source.Errorf(source.Range{File: source.NewFile(name, nil)}, "empty", "There are no assessments in it.").
		Hinting("Write one assessment a line, as JSON.")
}

// readLines reads the lines of a file that is in memory, so that all places are places in it.
func readLines(f *source.File, v *vocab.Vocabulary) ([]*Assessment, source.Diagnostics) {
	var out []*Assessment
	var all source.Diagnostics
	seen := false
	for start := 0; start < len(f.Src); {
		end := len(f.Src)
		if i := bytes.IndexByte(f.Src[start:], '\n'); i >= 0 {
			end = start + i
		}
		from := start
		if start == 0 && bytes.HasPrefix(f.Src, []byte(byteOrderMark)) {
			from = len(byteOrderMark)
		}
		if len(bytes.TrimSpace(f.Src[from:end])) > 0 {
			seen = true
			a, diags := readLine(f, from, end, end-start, v)
			all = append(all, diags...)
			if a != nil {
				out = append(out, a)
			}
		}
		start = end + 1
	}
	if !seen {
		all = append(all, noLines(f.Name))
	}
	return out, all
}
