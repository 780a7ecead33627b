package assess

import (
	"bytes"
	"fmt"
	"strconv"
	"strings"
	"unicode/utf8"

	"crus/engine/source"
)

// document is what a format's reader hands to the check: one tree, and how to speak about it.
type document struct {
	root     source.Value // a group of fields; what each means is in check.go
	where    source.Range // where a field that is missing is reported
	required []string
	notation notation
	written  string // Vocabulary where the document does not say it; "" where it must

	diags source.Diagnostics
	bad   map[source.Range]bool // values that were complained of: the check leaves them alone
}

func newDocument(f *source.File, n notation) *document {
	return &document{where: source.Range{File: f}, notation: n, bad: map[source.Range]bool{}}
}

func (d *document) fail(diag source.Diagnostic) { d.diags = append(d.diags, diag) }

// full reports whether more errors would not be shown anyway.
func (d *document) full() bool { return len(d.diags) > maxErrors }

// refuse reports a value that stays in the tree.
func (d *document) refuse(diag source.Diagnostic) {
	d.fail(diag)
	d.bad[diag.Where] = true
}

func textValue(where source.Range, s string) source.Value {
	return source.Value{Kind: source.TextKind, Where: where, Text: source.Text{S: s, File: where.File}}
}

// text refuses what stands from start to end if it is not UTF-8 or empty, and gives where it
// begins behind a byte order mark.
func text(f *source.File, start, end int) (int, source.Diagnostics) {
	src := f.Src[start:end]
	if !utf8.Valid(src) {
		at := start
		for at < end {
			c, n := utf8.DecodeRune(f.Src[at:end])
			if c == utf8.RuneError && n == 1 {
				break
			}
			at += n
		}
		return 0, source.Diagnostics{source.Errorf(source.Range{File: f, Start: at, End: at + 1}, "not_utf8", "The file is not UTF-8 text.").
			Hinting("Save it again with the encoding UTF-8.")}
	}
	if bytes.HasPrefix(src, []byte("\ufeff")) {
		start += len("\ufeff")
	}
	if len(bytes.TrimSpace(f.Src[start:end])) == 0 {
		return 0, source.Diagnostics{source.Errorf(source.Range{File: f}, "empty", "The file is empty.").
			Hinting("Write a blank assessment with crus form, and fill it in.")}
	}
	return start, nil
}

// notation is how one format writes things; the ways out are shown in it.
type notation int

const (
	jsonNotation notation = iota
	hclNotation
	csvNotation
)

// text writes a text.
func (n notation) text(s string) string {
	if n == csvNotation {
		return s
	}
	return strconv.Quote(s)
}

// field writes a field whose value is already written.
func (n notation) field(name, value string) string {
	switch n {
	case jsonNotation:
		return fmt.Sprintf("%q: %s", name, value)
	case hclNotation:
		return name + " = " + value
	}
	return value
}

// confirmed writes a number that is confirmed.
func (n notation) confirmed(number string) string {
	switch n {
	case jsonNotation:
		return fmt.Sprintf(`{"value": %s, "confirmed": true}`, number)
	case hclNotation:
		return fmt.Sprintf(`{ value = %s, confirmed = true }`, number)
	}
	return number + " (confirmed)"
}

// notRecorded writes that a measure could not be taken.
func (n notation) notRecorded() string {
	switch n {
	case jsonNotation:
		return `{"not_recorded": "the reason"}`
	case hclNotation:
		return `{ not_recorded = "the reason" }`
	}
	return "not recorded: the reason"
}

// yesNo writes yes and no.
func (n notation) yesNo() []string {
	if n == csvNotation {
		return []string{"yes", "no"}
	}
	return []string{"true", "false"}
}

// omit is what to do where a measure was not taken at all.
func (n notation) omit() string {
	if n == csvNotation {
		return "leave the cell blank"
	}
	return "leave the field out"
}

func duplicate(name string, where, first source.Range) source.Diagnostic {
	return source.Errorf(where, "duplicate", "%s is given twice.", short(name)).
		Hinting("Keep the one that is right.").With("The first one is here.", first)
}

func tooDeep(where source.Range) source.Diagnostic {
	return source.Errorf(where, "too_deep", "Groups and lists stand more than %d deep in each other.", maxDepth).
		Hinting("A brace or bracket is probably not closed further up.")
}

func tooLarge(where source.Range) source.Diagnostic {
	return source.Errorf(where, "too_large", "%s is beyond what can be kept as a number.", short(where.Text())).
		Hinting("Correct it.")
}

func notANumber(where source.Range, n notation) source.Diagnostic {
	return source.Errorf(where, "not_a_number", "%s is not a value that can be recorded.", short(where.Text())).
		Hinting("Give a number, or say why there is none: %s", n.notRecorded())
}

// isNoNumber reports whether a word is one of the ways in which programs write that they have no
// number.
func isNoNumber(word string) bool {
	switch strings.ToLower(strings.TrimLeft(word, "+-")) {
	case "nan", "inf", "infinity":
		return true
	}
	return false
}

// short gives a text for use in a sentence: on one line and not long.
func short(s string) string {
	const most = 40
	s = strings.Join(strings.Fields(s), " ")
	if utf8.RuneCountInString(s) > most {
		return string([]rune(s)[:most-1]) + "…"
	}
	return s
}

// quoted is short in quotes.
func quoted(s string) string { return strconv.Quote(short(s)) }

// nearest is source.DidYouMean for names of any length: a long one is like none.
func nearest(name string, candidates []string, otherwise string) string {
	if len(name) > 80 {
		return otherwise
	}
	return source.DidYouMean(name, candidates, otherwise)
}
