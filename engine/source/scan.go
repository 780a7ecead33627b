package source

import (
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// maxNesting is how deep braces, brackets and parentheses may stand inside each other.
const maxNesting = 40

// scan looks at the tokens before they are parsed. A file here holds values only, so operators,
// function calls and the like are refused at once; with that the parser, which calls itself for
// every level, cannot be driven deep by a hostile file.
func scan(f *File, tokens hclsyntax.Tokens) (Diagnostic, bool) {
	depth, template, minus := 0, 0, 0
	for _, t := range tokens {
		where := Range{f, t.Range.Start.Byte, t.Range.End.Byte}
		if t.Type != hclsyntax.TokenMinus {
			minus = 0
		}
		switch t.Type {
		case hclsyntax.TokenOBrace, hclsyntax.TokenOBrack:
			if template > 0 {
				return notAName(where), false
			}
			if depth++; depth > maxNesting {
				return Errorf(where, "too_deep", "Blocks and lists stand more than %d deep in each other.", maxNesting).
					Hinting("A brace or bracket is probably not closed further up."), false
			}
		case hclsyntax.TokenCBrace, hclsyntax.TokenCBrack:
			if template > 0 {
				return notAName(where), false
			}
			depth = max(0, depth-1)
		case hclsyntax.TokenTemplateInterp:
			if template++; template > 1 {
				return notAName(where), false
			}
		case hclsyntax.TokenTemplateSeqEnd:
			template = max(0, template-1)
		case hclsyntax.TokenTemplateControl:
			return Errorf(where, "template", "%%{ begins a control sequence, which texts here do not have.").
				Hinting("Write %%%%{ for the two characters themselves."), false
		case hclsyntax.TokenIdent, hclsyntax.TokenDot:
		case hclsyntax.TokenMinus:
			if minus++; minus > 1 || template > 0 {
				return expression(where), false
			}
		case hclsyntax.TokenNewline, hclsyntax.TokenComment, hclsyntax.TokenEOF:
		case hclsyntax.TokenEqual, hclsyntax.TokenComma, hclsyntax.TokenColon, hclsyntax.TokenNumberLit,
			hclsyntax.TokenOQuote, hclsyntax.TokenCQuote, hclsyntax.TokenQuotedLit,
			hclsyntax.TokenOHeredoc, hclsyntax.TokenCHeredoc, hclsyntax.TokenStringLit:
			if template > 0 {
				return notAName(where), false
			}
		default:
			if template > 0 {
				return notAName(where), false
			}
			return expression(where), false
		}
	}
	return Diagnostic{}, true
}

func notAName(where Range) Diagnostic {
	return Errorf(where, "template", "Between ${ and } stands only the name of a measure, finding or quantity.").
		Hinting("For example ${limb.plantarflexor_tone}. Write $${ for the two characters themselves.")
}

func expression(where Range) Diagnostic {
	return Errorf(where, "expression", "%q does not belong here: a file holds plain values, one name = value a line.", where.Text()).
		Hinting(`A condition or formula is a text in quotes: when = "limb.knee_extension < deg(0)". A note begins with #.`)
}
