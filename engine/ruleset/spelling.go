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
	text := func(i int) string {
		if i < 0 || i >= len(toks) {
			return ""
		}
		return toks[i].text
	}
	for i := range toks {
		if at, path := s.apart(toks, i); path != "" {
			s.fail(source.Errorf(place(at), "unknown_name", "A name has no space and no - in it.").Hinting("Write %s.", path))
			return false
		}
	}
	for i := range toks {
		if at, message, hint := unitBehind(runes, toks, i); message != "" {
			s.fail(source.Errorf(place(at), "syntax", "%s", message).Hinting("%s", hint))
			return false
		}
	}
	for i, tok := range toks {
		if message, hint := misspelt(tok.text, text(i-1), text(i+1)); message != "" {
			s.fail(source.Errorf(place(tok.span), "syntax", "%s", message).Hinting("%s", hint))
			return false
		}
	}
	for i := range toks {
		if from, to, ok := roundList(toks, i); ok {
			s.fail(source.Errorf(place(span{from, to}), "syntax", "A list does not stand in round brackets.").
				Hinting("Write in [%s].", strings.TrimSpace(short(string(runes[from+1:to-1])))))
			return false
		}
	}
	for i, tok := range toks {
		if message, hint := unjoined(tok.text, text(i+1)); message != "" {
			s.fail(source.Errorf(place(span{tok.start, toks[min(i+1, len(toks)-1)].end}), "syntax", "%s", message).Hinting("%s", hint))
			return false
		}
	}
	s.brackets(toks, place)
	return s.diags.Errors() == before
}

// apart finds a name that begins at toks[i] and has spaces or - where it should have underscores: its
// place, and the name as it is written.
func (s *scope) apart(toks []token, i int) (at span, path string) {
	if i+3 >= len(toks) || !isRoot(toks[i].text) || toks[i+1].text != "." {
		return span{}, ""
	}
	name := toks[i].text + "." + toks[i+2].text
	if contains(s.paths, name) { // a - behind it can be a minus
		return span{}, ""
	}
	for j := i + 3; j < len(toks); j++ {
		if toks[j].text == "-" && j+1 < len(toks) {
			j++
		}
		if !operandStart(toks[j].text) {
			break
		}
		if name += "_" + toks[j].text; contains(s.paths, name) {
			at, path = span{toks[i].start, toks[j].end}, name
		}
	}
	return at, path
}

// roundList finds a list in round brackets behind the in at toks[i].
func roundList(toks []token, i int) (from, to int, ok bool) {
	if toks[i].text != "in" || i+1 >= len(toks) || toks[i+1].text != "(" {
		return 0, 0, false
	}
	depth := 0
	for _, t := range toks[i+1:] {
		switch t.text {
		case "(", "[":
			depth++
		case ")", "]":
			if depth--; depth == 0 {
				return toks[i+1].start, t.end, ok
			}
		case ",":
			ok = ok || depth == 1
		}
	}
	return 0, 0, false
}

// misspelt says what is wrong with one token, and what to write.
func misspelt(tok, prev, next string) (message, hint string) {
	switch tok + " " + next {
	case "= >":
		return "=> is not a comparison.", "Greater or equal is written >=."
	case "= <":
		return "=< is not a comparison.", "Less or equal is written <=."
	case "< >":
		return "<> is not a comparison.", "Not equal is written !=."
	case "== =":
		return "=== is not a comparison.", "Equal is written ==."
	case "!= =":
		return "!== is not a comparison.", "Not equal is written !=."
	case "* *":
		return "There are no powers here.", "Multiply the number by itself."
	}
	switch tok {
	case "=":
		return "A single = does not compare.", "Equal is written ==."
	case "&":
		return "A single & does not join conditions.", "And is written &&."
	case "|":
		return "A single | does not join conditions.", "Or is written ||."
	case "%":
		if next == "" || !operandStart(next) {
			return "% is not read behind a number.", "A percentage is written percent(50)."
		}
	case "≤":
		return "≤ is not read here.", "Less or equal is written <=."
	case "≥":
		return "≥ is not read here.", "Greater or equal is written >=."
	case "≠":
		return "≠ is not read here.", "Not equal is written !=."
	case "−", "–", "—":
		return "This is a dash, not a minus sign.", "Write the - of the keyboard: deg(-5)."
	case "×", "·":
		return tok + " is not read here.", "Times is written *."
	case "÷":
		return "÷ is not read here.", "Divided by is written /."
	case "°":
		return "° is not read here.", "An angle is written deg(5)."
	case "“", "”", "‘", "’", "„", "«", "»":
		return "These are printed quotation marks.", "Use the ' of the keyboard: 'broken'."
	case ";":
		return "A semicolon does not join conditions.", "And is written &&, or is written ||."
	}
	if c := []rune(tok); (c[0] == '\'' || c[0] == '"') && (len(c) == 1 || c[len(c)-1] != c[0]) {
		return "A quoted word is not closed.", "Close it with the same quote: 'broken'."
	}
	if unicode.IsDigit([]rune(tok)[0]) {
		number := strings.TrimRight(tok, "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ_")
		if strings.HasSuffix(number, ".") {
			return "A number does not end with a point.", "Write " + strings.TrimRight(number, ".") + "."
		}
	}
	if prev != "." && next != "." && (next != "(" || operandEnd(prev)) {
		if hint := english(tok); hint != "" {
			return "The word \"" + tok + "\" is not read here.", hint
		}
	}
	return "", ""
}

// english says how a word is written that other languages join or compare with.
func english(word string) string {
	switch strings.ToLower(word) {
	case "and":
		return "And is written &&."
	case "or":
		return "Or is written ||."
	case "not":
		return "Not is written ! before what it denies: !finding.marked_tone."
	case "is", "equals":
		return "Equal is written ==, not equal !=."
	case "between":
		return "Write both ends: limb.knee_extension >= deg(0) && limb.knee_extension <= deg(10)."
	case "if", "when":
		return "Write only what must hold."
	case "then", "else":
		return "A condition says only what must hold; what follows from it stands in the blocks advise."
	}
	return ""
}

// unjoined says what is wrong where one token can't be followed by the next, which is "" at the end.
func unjoined(tok, next string) (message, hint string) {
	joins := joining(tok)
	switch {
	case joins && next == "":
		return "Nothing stands behind this " + tok + ".", "Write what belongs there, or take it out."
	case joins && next == "+":
		return "A number is written without +.", "Take the + out."
	case joins && joining(next) && next != "-" && next != "!":
		return "Something is missing between " + tok + " and " + next + ".", "Write what belongs between the two, or take one out."
	case joins || !operandEnd(tok) || !operandStart(next):
		return "", ""
	case number(tok) && number(next):
		return "A number is written without a space.", "Write " + tok + next + "."
	}
	return "A sign is missing between " + short(tok) + " and " + short(next) + ".", "And is written &&, or ||, equal ==; less and greater are < <= > >=."
}

// joining reports whether a token needs something behind it.
func joining(tok string) bool {
	switch tok {
	case "&&", "||", "!", "==", "!=", "<", "<=", ">", ">=", "+", "-", "*", "/", "?", "in":
		return true
	}
	return false
}

func number(tok string) bool { return tok != "" && tok[0] >= '0' && tok[0] <= '9' }

// operandEnd reports whether a name, number, word or bracket ends with a token.
func operandEnd(tok string) bool { return tok == ")" || tok == "]" || operandStart(tok) }

// operandStart reports whether a name, number or word begins with a token.
func operandStart(tok string) bool {
	if tok == "" || tok == "in" {
		return false
	}
	c := []rune(tok)[0]
	return unicode.IsLetter(c) || unicode.IsDigit(c) || c == '_' || c == '\'' || c == '"'
}

// short cuts what is too long to be repeated in a sentence.
func short(s string) string {
	if r := []rune(s); len(r) > maxRepeat {
		return string(r[:maxRepeat-1]) + "…"
	}
	return s
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
			if n := len(open); n > 0 && open[n-1].text != pair[tok.text] {
				s.fail(source.Errorf(place(tok.span), "syntax", "This %s does not close the %s that is open.", tok.text, open[n-1].text).
					Hinting("Close that one first.").With("It is opened here.", place(open[n-1].span)))
				return
			}
			if len(open) == 0 {
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
