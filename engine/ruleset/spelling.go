package ruleset

import (
	"strings"
	"unicode"

	"github.com/google/cel-go/cel"

	"crus/engine/source"
)

// spelling finds what people write who have not met CEL before, and says what to write instead.
// cel-go's own parser would report all of these as unexpected tokens.
func (s *scope) spelling(t source.Text) bool {
	before := s.diags.Errors()
	if len(t.Refs) > 0 {
		r := t.Refs[0]
		s.fail(source.Errorf(t.Range(r.Start, r.End), "template", "A condition has no ${...}.").
			Hinting("Name the measure itself: %s.", r.Name))
		return false
	}
	runes := []rune(t.S)
	at := make([]int, 0, len(runes)+1)
	for i := range t.S {
		at = append(at, i)
	}
	at = append(at, len(t.S))
	place := func(sp span) source.Range { return t.Range(at[sp.start], at[sp.end]) }
	toks := celTokens(runes)
	if len(toks) == 0 {
		s.fail(source.Errorf(t.All(), "empty", "The condition is empty.").
			Hinting("Write what must hold, for example limb.knee_extension < deg(0); a condition that always holds is true."))
		return false
	}
	for i, tok := range toks {
		next, prev := "", ""
		if i+1 < len(toks) {
			next = toks[i+1].text
		}
		if i > 0 {
			prev = toks[i-1].text
		}
		if message, hint := misspelt(tok.text, prev, next); message != "" {
			s.fail(source.Errorf(place(tok.span), "syntax", "%s", message).Hinting("%s", hint))
			return false
		}
	}
	s.brackets(toks, place)
	return s.diags.Errors() == before
}

// misspelt says what is wrong with one token, and what to write.
func misspelt(tok, prev, next string) (message, hint string) {
	switch tok {
	case "=":
		switch next {
		case ">":
			return "=> is not a comparison.", "Greater or equal is written >=."
		case "<":
			return "=< is not a comparison.", "Less or equal is written <=."
		}
		return "A single = does not compare.", "Equal is written ==."
	case "&":
		return "A single & does not join conditions.", "And is written &&."
	case "|":
		return "A single | does not join conditions.", "Or is written ||."
	case "≤":
		return "≤ is not read here.", "Less or equal is written <=."
	case "≥":
		return "≥ is not read here.", "Greater or equal is written >=."
	case "≠":
		return "≠ is not read here.", "Not equal is written !=."
	case "−", "–":
		return "This is a dash, not a minus sign.", "Write the - of the keyboard: deg(-5)."
	case "°":
		return "° is not read here.", "An angle is written deg(5)."
	case "“", "”", "‘", "’", "„", "«", "»":
		return "These are printed quotation marks.", "Use the ' of the keyboard: 'broken'."
	case ";":
		return "A semicolon does not join conditions.", "And is written &&, or is written ||."
	}
	if word := strings.ToLower(tok); prev != "." && next != "(" && next != "." {
		switch word {
		case "and":
			return tok + " is not read here.", "And is written &&."
		case "or":
			return tok + " is not read here.", "Or is written ||."
		case "not":
			return tok + " is not read here.", "Not is written ! before what it denies: !finding.marked_tone."
		case "is":
			return tok + " is not read here.", "Equal is written ==, not equal !=."
		}
	}
	if c := []rune(tok); unicode.IsDigit(c[0]) && len(c) > 1 {
		number := strings.TrimRight(tok, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_")
		unit := tok[len(number):]
		switch unit {
		case "deg", "mm", "cm", "m", "kg", "g", "N", "Nm", "kPa", "years", "weeks", "days":
			return "A unit does not stand behind its number here.", "Write " + unit + "(" + number + ")."
		}
	}
	if c := []rune(tok); (c[0] == '\'' || c[0] == '"') && (len(c) == 1 || c[len(c)-1] != c[0]) {
		return "A quoted word is not closed.", "Close it with the same quote: 'broken'."
	}
	return "", ""
}

// brackets reports the first bracket that has no partner.
func (s *scope) brackets(toks []token, place func(span) source.Range) {
	pair := map[string]string{")": "(", "]": "[", "}": "{"}
	var open []token
	for _, tok := range toks {
		switch tok.text {
		case "(", "[", "{":
			open = append(open, tok)
		case ")", "]", "}":
			if len(open) == 0 || open[len(open)-1].text != pair[tok.text] {
				s.fail(source.Errorf(place(tok.span), "syntax", "This %s closes nothing.", tok.text).
					Hinting("Take it out, or open it with %s further left.", pair[tok.text]))
				return
			}
			open = open[:len(open)-1]
		}
	}
	if len(open) > 0 {
		last := open[len(open)-1]
		s.fail(source.Errorf(place(last.span), "syntax", "This %s is not closed.", last.text).Hinting("Close it where it ends."))
	}
}

// syntax rewords the first error of cel-go's parser; the others mostly follow from it.
func (s *scope) syntax(e *Expr, iss *cel.Issues) {
	err := iss.Errors()[0]
	offset := e.offset(err.Location.Line(), err.Location.Column())
	where := e.Text.Range(e.runes[offset], e.runes[min(offset+1, len(e.runes)-1)])
	message, hint := "The condition can't be read from here on.", "An operator such as &&, ||, <, == or a bracket is probably missing, or there is one too many."
	switch m := err.Message; {
	case strings.Contains(m, "recorded: no measure"):
		message, hint = "recorded(...) takes the name of one measure.", "For example recorded(limb.knee_extension)."
	case strings.Contains(m, "<EOF>"):
		message, hint = "The condition ends too early.", "Something is missing behind its last sign."
	case strings.Contains(m, "token recognition error"):
		message, hint = "There is a sign here that conditions don't have.", "Conditions have names, numbers, quoted words, brackets, and && || ! == != < <= > >= + - * /."
	case strings.Contains(m, "reserved identifier"):
		message, hint = "This word is reserved and can't be a name.", "Choose another name."
	case strings.Contains(m, "recursion") || strings.Contains(m, "nest"):
		message, hint = "Too many brackets, dots or ? : stand inside each other here.", "Divide the condition into findings that each say one thing."
	case strings.Contains(m, "size") || strings.Contains(m, "limit"):
		message, hint = "The condition is too long.", "Divide it into findings that each say one thing."
	case strings.Contains(m, "literal"):
		message, hint = "This number is too large.", "Check it; a quantity can also be written in a larger unit."
	case strings.Contains(m, "invalid argument"), strings.Contains(m, "must be a simple name"):
		message, hint = "Inside exists, all, filter or map the first part is a plain name for the list's item.", "For example [deg(0), deg(5)].exists(x, limb.knee_extension < x)."
	}
	s.fail(source.Errorf(where, "syntax", "%s", message).Hinting("%s", hint))
}

// offset turns cel-go's line (from 1) and column (from 0) into a code point offset in the text.
func (e *Expr) offset(line, column int) int {
	i, n := 0, len(e.runes)-1
	for ; line > 1 && i < n; i++ {
		if e.Text.S[e.runes[i]] == '\n' {
			line--
		}
	}
	return min(i+max(0, column), n)
}
