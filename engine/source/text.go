package source

import (
	"bytes"
	"sort"
	"strings"
	"unicode"

	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// text decodes the quoted text or heredoc that stands at r, keeping where each byte came from.
// A ${name} stays in the text as written and is listed in Refs. The second result says what is
// wrong, or is empty.
//
// HCL's own value cannot be used for this: it is Unicode-normalised, and the ranges of its parts
// still hold the indentation that <<- takes away.
func (r *hclReader) text(at Range) (Text, string) {
	first := sort.Search(len(r.tokens), func(i int) bool { return r.tokens[i].Range.Start.Byte >= at.Start })
	var ps []piece
	flush := false
	end := at.Start
	for _, t := range r.tokens[first:] {
		if t.Range.End.Byte > at.End {
			break
		}
		switch t.Type {
		case hclsyntax.TokenOQuote:
			end = t.Range.End.Byte
		case hclsyntax.TokenOHeredoc:
			flush = bytes.HasPrefix(t.Bytes, []byte("<<-"))
			end = t.Range.End.Byte
		case hclsyntax.TokenQuotedLit, hclsyntax.TokenStringLit:
			p, ok := decode(t)
			if !ok {
				return Text{}, "A backslash stands before a character that it does not go with."
			}
			ps = append(ps, p)
			end = t.Range.End.Byte
		case hclsyntax.TokenTemplateInterp, hclsyntax.TokenTemplateSeqEnd, hclsyntax.TokenIdent, hclsyntax.TokenDot:
			ps = append(ps, verbatim(t))
			end = t.Range.End.Byte
		}
	}
	if flush {
		unindent(ps)
	}
	return joined(r.file, ps, end), ""
}

// piece is a decoded token and the file offset of each of its bytes.
type piece struct {
	s    []byte
	at   []int
	open bool // ${
	shut bool // its }
	lit  bool
}

func verbatim(t hclsyntax.Token) piece {
	p := piece{s: t.Bytes, open: t.Type == hclsyntax.TokenTemplateInterp, shut: t.Type == hclsyntax.TokenTemplateSeqEnd}
	for i := range t.Bytes {
		p.at = append(p.at, t.Range.Start.Byte+i)
	}
	return p
}

func joined(f *File, ps []piece, end int) Text {
	out := Text{File: f}
	var b strings.Builder
	open := -1
	for _, p := range ps {
		if p.open {
			open = b.Len()
		}
		b.Write(p.s)
		out.At = append(out.At, p.at...)
		if p.shut && open >= 0 {
			written := b.String()[open:]
			name := strings.Trim(strings.TrimPrefix(written, "$"), "{}~ ")
			out.Refs = append(out.Refs, Name{Name: name, Start: open, End: b.Len()})
			open = -1
		}
	}
	out.S = b.String()
	out.At = append(out.At, end)
	return out
}

func decode(t hclsyntax.Token) (piece, bool) {
	p := piece{lit: true}
	for i := 0; i < len(t.Bytes); {
		n := min(escapeLen(t.Bytes[i:], t.Type == hclsyntax.TokenQuotedLit), len(t.Bytes)-i)
		dec, diags := hclsyntax.ParseStringLiteralToken(hclsyntax.Token{Type: t.Type, Bytes: t.Bytes[i : i+n], Range: t.Range})
		if diags.HasErrors() {
			return p, false
		}
		for range len(dec) {
			p.at = append(p.at, t.Range.Start.Byte+i)
		}
		p.s = append(p.s, dec...)
		i += n
	}
	return p, true
}

// unindent does what HCL does for <<- before it parses the template: the smallest leading run of
// spaces goes from every line that begins with a literal.
func unindent(ps []piece) {
	least := -1
	var adjust []int
	newline := true
	for i, p := range ps {
		if newline && p.lit {
			trimmed := bytes.TrimLeftFunc(p.s, unicode.IsSpace)
			if len(trimmed) > 0 || !bytes.HasSuffix(p.s, []byte("\n")) {
				adjust = append(adjust, i)
				if n := len(p.s) - len(trimmed); least < 0 || n < least {
					least = n
				}
			}
		}
		newline = bytes.HasSuffix(p.s, []byte("\n"))
	}
	for _, i := range adjust {
		ps[i].s, ps[i].at = ps[i].s[least:], ps[i].at[least:]
	}
}

// escapeLen is how many bytes of a token make its next character.
func escapeLen(b []byte, quoted bool) int {
	switch {
	case quoted && b[0] == '\\' && len(b) > 1:
		switch b[1] {
		case 'u':
			return 6
		case 'U':
			return 10
		}
		return 2
	case (b[0] == '$' || b[0] == '%') && len(b) > 2 && b[1] == b[0] && b[2] == '{':
		return 3
	case b[0] >= 0x80:
		n := 1
		for n < len(b) && b[n]&0xC0 == 0x80 {
			n++
		}
		return n
	}
	return 1
}
