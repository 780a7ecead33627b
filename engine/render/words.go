package render

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"

	"crus/engine/clinical"
	"crus/engine/reason"
	"crus/engine/vocab"
)

// Every word, mark and tone that stands for a state is here, so that the terminal and the page say
// the same.

// mark is a sign for a state. It never stands without its word.
type mark struct {
	Sign string // in text
	Name string // of its drawing on the page, and of its colour there
	tone tone
}

func provisionalMark() mark { return mark{"◌", "provisional", unsure} }
func boundaryMark() mark    { return mark{"≈", "boundary", unsure} }

// statusMark gives the mark of a choice's status.
func statusMark(status string) mark {
	switch status {
	case reason.Settled:
		return mark{"●", "settled", sure}
	case reason.IsOpen:
		return mark{"◐", "open", unsure}
	case reason.Default:
		return mark{"○", "default", usual}
	case reason.LeftToClinician:
		return mark{"◇", "clinician", strong}
	case reason.Conflict:
		return mark{"⊠", "conflict", alarm}
	}
	return mark{"—", "unanswered", faint}
}

// statusWord gives the word of a choice's status.
func statusWord(status string) string {
	if status == reason.LeftToClinician {
		return "left to the clinician"
	}
	return plain(status)
}

// levelMark gives the mark of a caution's level.
func levelMark(level string) mark {
	switch level {
	case "contraindication":
		return mark{"▲", "contraindication", gravest}
	case "precaution":
		return mark{"△", "precaution", unsure}
	}
	return mark{"▫", "note", usual}
}

// levelRank orders cautions, gravest first.
func levelRank(level string) int {
	switch level {
	case "contraindication":
		return 0
	case "precaution":
		return 1
	}
	return 2
}

// concernTitle is the heading of a group of choices.
func concernTitle(concern string) string {
	switch concern {
	case "":
		return "Other"
	case "follow_up":
		return "Follow-up"
	}
	return sentence(plain(concern))
}

// verbPhrase says what a rule says of a choice with options: "at least in front of malleoli".
func verbPhrase(verb string, options []string) string {
	word, last := plain(verb), "or"
	switch verb {
	case "favour":
		word = "favours"
	case "never":
		last = "nor"
	}
	return word + " " + join(plains(options), last)
}

// strengthWords says how strongly a rule recommends.
func strengthWords(strength string) string {
	if strength == "" {
		return ""
	}
	return strength + " recommendation"
}

// basisWords says what a rule or caution stands on, with its sources.
func basisWords(basis string, cites []string) string {
	words := plain(basis)
	switch {
	case basis == "common_practice" && len(cites) == 0:
		return "common practice, no published source"
	case basis == "common_practice":
		return "common practice; beside it: " + strings.Join(cites, "; ")
	case basis == "from_memory":
		words = "from memory, to be checked"
	}
	if len(cites) == 0 {
		return words
	}
	return words + ": " + strings.Join(cites, "; ")
}

// standingWords says how well a source is known.
func standingWords(c *vocab.Citation) string {
	switch {
	case c == nil:
		return "the text of this source is not at hand"
	case c.Standing == "read":
		return "read in the source"
	case c.Standing == "second_hand":
		return "second-hand: read in a text that reports it"
	case c.Standing == "from_memory":
		return "from memory: to be checked before it is relied on"
	}
	return "it is not said whether the source was read"
}

// stateWords says what became of a rule or caution.
func stateWords(state string) string { return plain(state) }

// decides is the sentence that stands beside the signatures.
const decides = "A licensed clinician decides. This sheet supports that decision and does not make it."

// bearerTitle heads what belongs to a limb or to the person.
func bearerTitle(key string) string { return sentence(key) }

// plain writes a name as words: in_front_of_malleoli becomes "in front of malleoli".
func plain(name string) string { return strings.ReplaceAll(name, "_", " ") }

func plains(names []string) []string {
	out := make([]string, len(names))
	for i, n := range names {
		out[i] = plain(n)
	}
	return out
}

// title writes the full name of a rule, caution, finding or quantity as words, without the ruleset
// that it comes from: limb_safety.insensate becomes "Insensate".
func title(name string) string {
	return sentence(plain(name[strings.LastIndexByte(name, '.')+1:]))
}

// from says which ruleset a full name comes from: "from limb_safety", or "" for the ruleset's own.
func from(name string) string {
	if i := strings.LastIndexByte(name, '.'); i > 0 {
		return "from " + name[:i]
	}
	return ""
}

// sentence begins a text with a capital letter.
func sentence(text string) string {
	c, n := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(c)) + text[n:]
}

// within takes the capital letter and full stop of a sentence away, to set it into another.
func within(text string) string {
	c, n := utf8.DecodeRuneInString(text)
	return strings.TrimSuffix(string(unicode.ToLower(c))+text[n:], ".")
}

// join writes "a, b or c".
func join(words []string, last string) string {
	n := len(words)
	if n < 2 {
		return strings.Join(words, "")
	}
	return strings.Join(words[:n-1], ", ") + " " + last + " " + words[n-1]
}

// number writes a number with the symbol of its unit, a UCUM code: "−5°", "20 mm".
func number(x float64, code string) string {
	if u, ok := clinical.UnitByCode(code); ok {
		if q, err := clinical.Restored(x, u); err == nil {
			return q.Brief()
		}
	}
	return strings.TrimSpace(strings.Replace(fmt.Sprint(x), "-", "−", 1) + " " + code)
}

// grouped writes a whole number with its thousands apart; a very large one by its power of ten.
func grouped(digits string) string {
	if len(digits) > 15 {
		return fmt.Sprintf("more than 10^%d", len(digits)-1)
	}
	for i := len(digits) - 3; i > 0; i -= 3 {
		digits = digits[:i] + "," + digits[i:]
	}
	return digits
}

// span writes a range of numbers: "10 to 30 mm", "−5° to 10°".
func span(lo, hi float64, code string) string {
	a, b := number(lo, code), number(hi, code)
	if a == b {
		return a
	}
	if _, unit, spaced := strings.Cut(b, " "); spaced {
		a = strings.TrimSuffix(a, " "+unit)
	}
	return a + " to " + b
}

// valueWords writes a value of a choice, as an outcome gives it or as it comes back from JSON.
func valueWords(v any, code string) string {
	switch x := v.(type) {
	case nil:
		return ""
	case string:
		return plain(x)
	case float64:
		return number(x, code)
	case []string:
		return join(plains(x), "or")
	case [2]float64:
		return span(x[0], x[1], code)
	case []any:
		if len(x) == 2 {
			lo, isLo := x[0].(float64)
			hi, isHi := x[1].(float64)
			if isLo && isHi {
				return span(lo, hi, code)
			}
		}
		words := make([]string, len(x))
		for i, item := range x {
			words[i] = valueWords(item, code)
		}
		return join(words, "or")
	}
	return fmt.Sprint(v)
}
