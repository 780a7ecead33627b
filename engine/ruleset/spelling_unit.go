package ruleset

import (
	"strings"
	"unicode"

	"crus/engine/clinical"
)

// unitBehind says how a quantity is written, where a unit stands behind the number toks[i]: 0.4 m/s,
// 900mm. The span is that of both.
func unitBehind(text []rune, toks []token, i int) (at span, message, hint string) {
	if !number(toks[i].text) {
		return span{}, "", ""
	}
	digits := strings.TrimRightFunc(toks[i].text, unicode.IsLetter)
	from, next := toks[i].start+len([]rune(digits)), i+1 // of the unit, and of the token behind its first word
	if from == toks[i].end {
		if next == len(toks) || !unicode.IsLetter(text[toks[next].start]) {
			return span{}, "", ""
		}
		from, next = toks[next].start, next+1
	}
	to, name := 0, ""
	last := next - 1
	for j := next - 1; j < len(toks) && (j < next || toks[j].start == toks[j-1].end); j++ {
		if n := literalFor(string(text[from:toks[j].end])); n != "" {
			to, name, last = toks[j].end, n, j
		}
	}
	if name == "" || strings.HasSuffix(digits, ".") {
		return span{}, "", ""
	}
	at = span{toks[i].start, to}
	// A further unit that belongs to it: N/m is none of the units, and is not so many N.
	if last+2 < len(toks) && toks[last+1].text == "/" && toks[last+1].start == to && toks[last+2].start == to+1 && literalFor(toks[last+2].text) != "" {
		at.end = toks[last+2].end
		return at, string(text[from:at.end]) + " is none of the units that are known here.",
			"Compound units are " + strings.Join(compounds(), ", ") + ", each written before its number in brackets."
	}
	return at, "A unit does not stand behind its number here.", "Write " + name + "(" + digits + ")."
}

// literalFor gives the function that writes a quantity in a unit: of its UCUM code, its symbol, or the
// function's own name. It is "" where there is none.
func literalFor(unit string) string {
	if unit == "in" { // looks in a list; an inch is [in_i]
		return ""
	}
	for _, u := range clinical.Units() {
		if name := clinical.LiteralFor(u); name != "" && (unit == u.Code || unit == u.Symbol || unit == name) {
			return name
		}
	}
	switch unit {
	case "Nm/deg":
		return "Nm_per_deg"
	case "kmh":
		return "km_per_h"
	}
	return ""
}

// compounds lists the functions of units that are made of others.
func compounds() []string {
	var out []string
	for _, u := range clinical.Units() {
		if name := clinical.LiteralFor(u); strings.Contains(name, "_per_") {
			out = append(out, name)
		}
	}
	return out
}
