package ruleset

import (
	"bytes"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/hashicorp/hcl/v2/hclwrite"

	"crus/engine/source"
)

// Tidy gives the file in the one canonical layout: two spaces of indentation a level, the equal
// signs of neighbouring lines under each other, one blank line between top-level blocks, none just
// inside a brace, never two together, no blanks at line ends, and a line end at the end. Comments
// stay, and so does every character inside quotes and heredocs.
//
// A file that can't be read is refused with its diagnostics, and no text.
func Tidy(f *source.File) ([]byte, source.Diagnostics) {
	if _, diags := source.ReadHCL(f); diags.HasErrors() {
		return nil, diags
	}
	out := hclwrite.Format(layout(lex(f.Src)))
	// What is about to replace a clinic's protocol is compared with it first.
	if !sameWords(lex(f.Src), lex(out)) {
		return nil, source.Diagnostics{source.Errorf(source.Range{File: f}, "tidy", "The file can't be laid out without changing what it says.").
			Hinting("Nothing was changed. This is a fault of the program: please report it with the file.")}
	}
	return out, nil
}

func lex(src []byte) hclsyntax.Tokens {
	tokens, _ := hclsyntax.LexConfig(src, "", hcl.InitialPos)
	return tokens
}

// sameWords reports whether two files have the same tokens but for blanks and line ends.
func sameWords(a, b hclsyntax.Tokens) bool {
	a, b = essence(a), essence(b)
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].Type != b[i].Type || !bytes.Equal(a[i].Bytes, b[i].Bytes) {
			return false
		}
	}
	return true
}

// essence gives the tokens without line ends, and without what stands before one.
func essence(tokens hclsyntax.Tokens) hclsyntax.Tokens {
	var out hclsyntax.Tokens
	for _, t := range tokens {
		switch t.Type {
		case hclsyntax.TokenNewline, hclsyntax.TokenEOF:
			continue
		case hclsyntax.TokenComment, hclsyntax.TokenOHeredoc:
			t.Bytes = trimLine(t.Bytes)
		}
		out = append(out, t)
	}
	return out
}

// trimLine takes the line end and the blanks before it from a token.
func trimLine(b []byte) []byte { return bytes.TrimRight(b, " \t\r\n") }

// layout writes the tokens with their blank lines and line ends in order; the blanks between the
// tokens of a line stay, for hclwrite.Format to set.
func layout(tokens hclsyntax.Tokens) []byte {
	w := &writer{lineEmpty: true}
	for i, t := range tokens {
		gap := 0
		if i > 0 {
			gap = t.Range.Start.Byte - tokens[i-1].Range.End.Byte
		}
		w.token(t, gap)
	}
	w.endLine()
	return w.out.Bytes()
}

// writer is the state of layout.
type writer struct {
	out       bytes.Buffer
	depth     int  // braces and brackets that are open
	template  int  // quotes and heredocs that are open: what stands in them is kept as it is
	lineEmpty bool // nothing is written on this line yet
	blank     bool // a blank line stands before this one
	opened    bool // the last word before this line was an opening brace or bracket
	ended     bool // the last line ended a top-level block
}

func (w *writer) token(t hclsyntax.Token, gap int) {
	if w.template > 0 {
		w.write(t.Bytes, gap)
		w.track(t)
		return
	}
	switch t.Type {
	case hclsyntax.TokenEOF:
	case hclsyntax.TokenNewline:
		if w.lineEmpty {
			w.blank = true
			return
		}
		w.endLine()
	case hclsyntax.TokenComment:
		w.startLine(t)
		w.write(trimLine(t.Bytes), gap)
		if bytes.HasSuffix(t.Bytes, []byte("\n")) {
			w.endLine()
		}
	case hclsyntax.TokenOHeredoc:
		w.startLine(t)
		w.write(trimLine(t.Bytes), gap)
		w.out.WriteByte('\n')
		w.track(t)
	default:
		w.startLine(t)
		w.write(t.Bytes, gap)
		w.track(t)
	}
}

func (w *writer) write(b []byte, gap int) {
	for range gap {
		w.out.WriteByte(' ')
	}
	w.out.Write(b)
	w.lineEmpty = false
}

// startLine writes the blank line that belongs before the first word of a line.
func (w *writer) startLine(first hclsyntax.Token) {
	if !w.lineEmpty {
		return
	}
	if w.out.Len() > 0 && (w.blank && !w.opened && !closes(first) || w.ended) {
		w.out.WriteByte('\n')
	}
	w.blank, w.ended = false, false
	if first.Type == hclsyntax.TokenComment {
		w.opened = false
	}
}

func (w *writer) endLine() {
	if !w.lineEmpty {
		w.out.WriteByte('\n')
		w.lineEmpty = true
	}
}

// track follows what is open after a token.
func (w *writer) track(t hclsyntax.Token) {
	w.opened, w.ended = false, false
	switch t.Type {
	case hclsyntax.TokenOQuote, hclsyntax.TokenOHeredoc:
		w.template++
	case hclsyntax.TokenCQuote, hclsyntax.TokenCHeredoc:
		w.template--
	case hclsyntax.TokenOBrace, hclsyntax.TokenOBrack:
		if w.template == 0 {
			w.depth++
			w.opened = true
		}
	case hclsyntax.TokenCBrace, hclsyntax.TokenCBrack:
		if w.template == 0 {
			w.depth--
			w.ended = w.depth == 0 && t.Type == hclsyntax.TokenCBrace
		}
	}
}

func closes(t hclsyntax.Token) bool {
	return t.Type == hclsyntax.TokenCBrace || t.Type == hclsyntax.TokenCBrack
}
