package source

import (
	"fmt"
	"sort"
	"strings"

	"github.com/rivo/uniseg"
)

// Severity says whether a diagnostic stops the work.
type Severity int

// An Error stops the work; a Warning is for the author to weigh.
const (
	Error Severity = iota
	Warning
)

// String gives the word that is shown.
func (s Severity) String() string {
	if s == Warning {
		return "warning"
	}
	return "error"
}

// Diagnostic is one thing that is wrong with what somebody wrote: a sentence, its place, the way out.
type Diagnostic struct {
	Severity Severity
	Code     string // short stable name, for example "unknown_name"
	Message  string // one plain sentence
	Hint     string // the way out, one sentence or more; may be empty
	Where    Range  // may be no place, for example for a folder that is not there
	Related  []Related
}

// Related is another place that belongs to a diagnostic, such as the first of two duplicates.
type Related struct {
	Message string
	Where   Range
}

// Diagnostics is all that was found in one go.
type Diagnostics []Diagnostic

// Errorf makes an error at a place.
func Errorf(where Range, code, format string, args ...any) Diagnostic {
	return Diagnostic{Severity: Error, Code: code, Message: sentence(format, args), Where: where}
}

// Warnf makes a warning at a place.
func Warnf(where Range, code, format string, args ...any) Diagnostic {
	return Diagnostic{Severity: Warning, Code: code, Message: sentence(format, args), Where: where}
}

// maxWord is how much of one word is repeated: a name can be as long as a file.
const maxWord = 100

// sentence fills a format in, and cuts what is too long to be read.
func sentence(format string, args []any) string {
	s := fmt.Sprintf(format, args...)
	if len(s) <= maxWord {
		return s
	}
	words := strings.Split(s, " ")
	for i, w := range words {
		if r := []rune(w); len(r) > maxWord {
			words[i] = string(r[:maxWord-1]) + "…"
			if end := r[len(r)-1]; strings.ContainsRune(".,:;?", end) { // a sentence still ends
				words[i] += string(end)
			}
		}
	}
	return strings.Join(words, " ")
}

// Hinting gives d with a way out.
func (d Diagnostic) Hinting(format string, args ...any) Diagnostic {
	d.Hint = sentence(format, args)
	return d
}

// With gives d with a further place.
func (d Diagnostic) With(message string, where Range) Diagnostic {
	d.Related = append(d.Related[:len(d.Related):len(d.Related)], Related{message, where})
	return d
}

// Errors counts the errors.
func (ds Diagnostics) Errors() int {
	n := 0
	for _, d := range ds {
		if d.Severity == Error {
			n++
		}
	}
	return n
}

// HasErrors reports whether anything stops the work.
func (ds Diagnostics) HasErrors() bool { return ds.Errors() > 0 }

// Sorted gives the diagnostics by file, place, severity and message, each once.
func (ds Diagnostics) Sorted() Diagnostics {
	out := append(Diagnostics(nil), ds...)
	name := func(d Diagnostic) string {
		if d.Where.File == nil {
			return ""
		}
		return d.Where.File.Name
	}
	sort.SliceStable(out, func(i, j int) bool {
		a, b := out[i], out[j]
		if na, nb := name(a), name(b); na != nb {
			return na < nb
		}
		if a.Where.Start != b.Where.Start {
			return a.Where.Start < b.Where.Start
		}
		if a.Severity != b.Severity {
			return a.Severity < b.Severity
		}
		return a.Message < b.Message
	})
	kept := out[:0]
	for i, d := range out {
		if i > 0 && d.Message == out[i-1].Message && d.Where == out[i-1].Where {
			continue
		}
		kept = append(kept, d)
	}
	return kept
}

// Error makes Diagnostics an error: the text of all of them.
func (ds Diagnostics) Error() string { return ds.Text() }

// Text writes all diagnostics as a person reads them in a terminal, without colour.
func (ds Diagnostics) Text() string { return ds.Render(Plain) }

// Style turns the parts of a diagnostic into what the screen shows; Plain leaves them as they are.
type Style struct {
	Error, Warning, Mark, Faint func(string) string
}

func same(s string) string { return s }

// Plain is the style without colour.
var Plain = Style{Error: same, Warning: same, Mark: same, Faint: same}

// Render writes all diagnostics in a style, one blank line between two.
func (ds Diagnostics) Render(st Style) string {
	var b strings.Builder
	for i, d := range ds {
		if i > 0 {
			b.WriteByte('\n')
		}
		d.render(&b, st)
	}
	return b.String()
}

func (d Diagnostic) render(b *strings.Builder, st Style) {
	word := st.Error(d.Severity.String())
	if d.Severity == Warning {
		word = st.Warning(d.Severity.String())
	}
	if d.Where.Known() {
		fmt.Fprintf(b, "%s: ", d.Where)
	}
	fmt.Fprintf(b, "%s: %s\n", word, d.Message)
	excerpt(b, d.Where, st)
	for _, r := range d.Related {
		fmt.Fprintf(b, "  %s: %s\n", r.Where, r.Message)
		excerpt(b, r.Where, st)
	}
	if d.Hint != "" {
		for _, line := range Wrap(d.Hint, 74) {
			fmt.Fprintf(b, "      %s\n", line)
		}
	}
}

// maxExcerpt is how many columns of a line are shown; a longer one is cut around the mark.
const maxExcerpt = 72

func excerpt(b *strings.Builder, r Range, st Style) {
	if !r.Known() || len(r.File.Src) == 0 {
		return
	}
	line, _ := r.File.Position(r.Start)
	text := r.File.Line(line)
	begin := r.File.lines[line-r.File.above-1]
	from := min(max(r.Start-begin, 0), len(text))
	to := min(max(r.End-begin, from), len(text))
	const near = 8 * maxExcerpt // bytes: more than is shown of a line that may be very long
	before := clean(text[max(0, from-near):from])
	marked, after := clean(text[from:min(to, from+near)]), clean(text[to:min(len(text), to+near)])
	before, marked, after = cut(before, marked, after)
	number := fmt.Sprintf("%5d", line)
	fmt.Fprintf(b, "%s %s%s%s\n", st.Faint(number+" |"), before, marked, after)
	width := max(1, uniseg.StringWidth(marked))
	fmt.Fprintf(b, "%s %s%s\n", st.Faint("      |"), strings.Repeat(" ", uniseg.StringWidth(before)), st.Mark(strings.Repeat("^", width)))
}

// clean makes a piece of a line printable on one screen line.
func clean(s string) string {
	return strings.Map(func(c rune) rune {
		if c == '\t' {
			return ' '
		}
		if c < ' ' || c == 0x7f || c == 0xfffd || c >= 0x202a && c <= 0x202e || c >= 0x2066 && c <= 0x2069 {
			return '?'
		}
		return c
	}, s)
}

func cut(before, marked, after string) (string, string, string) {
	b, m, a := []rune(before), []rune(marked), []rune(after)
	if len(m) > maxExcerpt/2 {
		m = append(append([]rune(nil), m[:maxExcerpt/2-1]...), '…')
		a = nil
	}
	room := maxExcerpt - len(m)
	if len(b)+len(a) > room {
		keep := max(room-len(a), room/2)
		if len(b) > keep {
			b = append([]rune{'…'}, b[len(b)-keep+1:]...)
		}
		if left := room - len(b); len(a) > left {
			a = append(append([]rune(nil), a[:max(0, left-1)]...), '…')
		}
	}
	return string(b), string(m), string(a)
}

// Wrap breaks a text into lines of at most width columns at its spaces.
func Wrap(text string, width int) []string {
	var lines []string
	for _, paragraph := range strings.Split(strings.TrimSpace(text), "\n") {
		line := ""
		for _, word := range strings.Fields(paragraph) {
			switch {
			case line == "":
				line = word
			case uniseg.StringWidth(line)+1+uniseg.StringWidth(word) > width:
				lines = append(lines, line)
				line = word
			default:
				line += " " + word
			}
		}
		lines = append(lines, line)
	}
	return lines
}

// Excerpt gives the line of a place with the mark under it, as a diagnostic shows it.
func Excerpt(r Range) string {
	var b strings.Builder
	excerpt(&b, r, Plain)
	return b.String()
}
