package source

import (
	"fmt"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// maxNesting is how deep braces, brackets and parentheses may stand inside each other.
const maxNesting = 40

const digits = "0123456789"

// scan looks at the tokens before they are parsed. A file here holds values only, so operators,
// function calls and the like are refused at once; with that the parser, which calls itself for
// every level, cannot be driven deep by a hostile file. It gives the first thing that is wrong, or nil.
func scan(f *File, tokens hclsyntax.Tokens) *Diagnostic {
	s := &scanner{file: f}
	for i, t := range tokens {
		next := hclsyntax.Token{Type: hclsyntax.TokenEOF}
		if i+1 < len(tokens) {
			next = tokens[i+1]
		}
		if d := s.token(t, next); d != nil {
			return d
		}
		s.before = t
	}
	if s.long != nil {
		return problem(*s.long, "syntax", "This long text is not closed.", "Write the same word as behind the << on a line of its own where the text ends.")
	}
	return nil
}

type scanner struct {
	file   *File
	before hclsyntax.Token
	begin  Range   // the last ${
	open   []Range // braces and brackets that are open
	inside bool    // between ${ and }
	name   bool    // and there is a name already
	long   *Range  // the beginning of a heredoc that is open
}

func (s *scanner) token(t, next hclsyntax.Token) *Diagnostic {
	where := Range{s.file, t.Range.Start.Byte, t.Range.End.Byte}
	if s.inside {
		return s.template(t, where)
	}
	switch t.Type {
	case hclsyntax.TokenOBrace, hclsyntax.TokenOBrack:
		s.open = append(s.open, where)
		if len(s.open) > maxNesting {
			return problem(where, "too_deep", fmt.Sprintf("Blocks and lists stand more than %d deep in each other.", maxNesting),
				"A brace or bracket is probably not closed further up.")
		}
	case hclsyntax.TokenCBrace, hclsyntax.TokenCBrack:
		return s.closing(t, where)
	case hclsyntax.TokenTemplateInterp:
		s.inside, s.name, s.begin = true, false, where
	case hclsyntax.TokenTemplateControl:
		return problem(where, "template", "%{ begins a control sequence, which texts here do not have.", "Write %%{ for the two characters themselves.")
	case hclsyntax.TokenOHeredoc:
		s.long = &where
	case hclsyntax.TokenCHeredoc:
		s.long = nil
	case hclsyntax.TokenMinus:
		if next.Type != hclsyntax.TokenNumberLit {
			return expression(where)
		}
	case hclsyntax.TokenEqual:
		if next.Type == hclsyntax.TokenNewline || next.Type == hclsyntax.TokenEOF || next.Type == hclsyntax.TokenComment || next.Type == hclsyntax.TokenCBrace {
			return problem(where, "syntax", "The value behind the = is missing.", "Write the value on the same line, or take the line out.")
		}
	case hclsyntax.TokenSlash:
		if next.Type == hclsyntax.TokenStar {
			return problem(where, "syntax", "A note that begins with /* is not closed.", "Close it with */, or begin each of its lines with # instead.")
		}
		return expression(where)
	case hclsyntax.TokenIdent, hclsyntax.TokenDot, hclsyntax.TokenNewline, hclsyntax.TokenComment, hclsyntax.TokenEOF,
		hclsyntax.TokenComma, hclsyntax.TokenColon, hclsyntax.TokenNumberLit, hclsyntax.TokenOQuote, hclsyntax.TokenCQuote,
		hclsyntax.TokenQuotedLit, hclsyntax.TokenStringLit:
	case hclsyntax.TokenQuotedNewline:
		return problem(where, "syntax", "A quoted text is not closed on its line.",
			`Close it with ", or write a long text between <<-EOT and EOT on lines of their own.`)
	case hclsyntax.TokenInvalid, hclsyntax.TokenApostrophe, hclsyntax.TokenBacktick, hclsyntax.TokenSemicolon, hclsyntax.TokenTabs, hclsyntax.TokenBadUTF8:
		return character(where)
	default:
		return expression(where)
	}
	return nil
}

// closing matches a closing brace or bracket with the one that is open.
func (s *scanner) closing(t hclsyntax.Token, where Range) *Diagnostic {
	pair := "{"
	if t.Type == hclsyntax.TokenCBrack {
		pair = "["
	}
	if len(s.open) == 0 {
		return problem(where, "syntax", fmt.Sprintf("This %s closes nothing.", where.Text()), "Take it out, or look for one too many further up.")
	}
	last := s.open[len(s.open)-1]
	if last.Text() != pair {
		what := "list"
		if pair == "[" {
			what = "block or group"
		}
		d := problem(where, "syntax", fmt.Sprintf("A %s is not closed before this %s.", what, where.Text()), "Close it where it ends.").
			With("It begins here.", last)
		return &d
	}
	s.open = s.open[:len(s.open)-1]
	return nil
}

// template looks at a token between ${ and }, where one dotted name stands.
func (s *scanner) template(t hclsyntax.Token, where Range) *Diagnostic {
	d := s.inTemplate(t, where)
	if d == nil {
		return nil
	}
	line, _, _ := strings.Cut(string(s.file.Src[s.begin.Start:]), "\n")
	if !strings.Contains(line, "}") {
		return problem(s.begin, "template", "A ${ is not closed.", "Close it with } behind the name, for example ${limb.plantarflexor_tone}.")
	}
	return d
}

func (s *scanner) inTemplate(t hclsyntax.Token, where Range) *Diagnostic {
	switch t.Type {
	case hclsyntax.TokenTemplateSeqEnd:
		s.inside = false
		if !s.name {
			return notAName(Range{s.file, s.before.Range.Start.Byte, where.End})
		}
	case hclsyntax.TokenIdent:
		if s.name && s.before.Type != hclsyntax.TokenDot {
			return notAName(where)
		}
		s.name = true
	case hclsyntax.TokenDot:
		if s.before.Type != hclsyntax.TokenIdent {
			return notAName(where)
		}
	case hclsyntax.TokenQuotedNewline, hclsyntax.TokenNewline, hclsyntax.TokenEOF:
		return problem(where, "template", "A ${ is not closed.", "Close it with } behind the name, for example ${limb.plantarflexor_tone}.")
	default:
		return notAName(where)
	}
	return nil
}

func problem(where Range, code, message, hint string) *Diagnostic {
	d := Errorf(where, code, "%s", message).Hinting("%s", hint)
	return &d
}

func notAName(where Range) *Diagnostic {
	return problem(where, "template", "Between ${ and } stands only the name of a measure, finding or quantity.",
		"For example ${limb.plantarflexor_tone}. Write $${ for the two characters themselves.")
}

// expression words a sign with which HCL would calculate something.
func expression(where Range) *Diagnostic {
	src := where.File.Src
	near := func(at int, chars string) bool {
		return 0 <= at && at < len(src) && strings.IndexByte(chars, src[at]) >= 0
	}
	hint := `A condition or formula is a text in quotes: when = "limb.knee_extension < deg(0)". A note begins with #.`
	switch sign := where.Text(); {
	case (sign == "+" || sign == "-") && (near(where.Start-1, digits) || near(where.End, digits)):
		hint = `A grade stands in quotes: "3+", "+2".`
	case sign == "(" && near(where.End, digits+"-"):
		hint = `A value with its unit is a text: "5 deg".`
	}
	return problem(where, "expression", fmt.Sprintf("%q does not belong here: a file holds plain values, one name = value a line.", where.Text()), hint)
}

// character words a character that has no meaning outside of quotes.
func character(where Range) *Diagnostic {
	switch where.Text() {
	case "'", "‘", "’", "“", "”", "„", "«", "»", "`":
		return problem(where, "syntax", "A text does not stand in quotes of this kind.", `Use the " of the keyboard: strength = "strong".`)
	case ";":
		return problem(where, "syntax", "A line does not end with a semicolon.", "Take it out; what comes next begins on a new line.")
	}
	return problem(where, "syntax", "This character has no meaning outside of a text in quotes.", "Take it out, or write the line again.")
}
