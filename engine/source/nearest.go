package source

import (
	"sort"
	"strings"
	"unicode/utf8"

	"github.com/agext/levenshtein"
)

// maxNear is the longest name, in bytes, that is compared with others: the cost grows with its square.
const maxNear = 80

// Nearest gives at most three of the candidates that look like name, the closest first.
func Nearest(name string, candidates []string) []string {
	type near struct {
		text string
		cost int
	}
	var found []near
	if len(name) > maxNear {
		return nil
	}
	low, length := strings.ToLower(name), utf8.RuneCountInString(name)
	for _, c := range candidates {
		limit := min(max(2, length/3), length/2)
		cost := limit + 1
		if n := utf8.RuneCountInString(c); n-length <= limit && length-n <= limit { // else it can't be near
			cost = levenshtein.Distance(low, strings.ToLower(c), nil)
		}
		if last := c[strings.LastIndexByte(c, '.')+1:]; cost > limit && (last == low || strings.HasSuffix(low, "."+last)) {
			cost = limit // the right name in the wrong place
		} else if cost > limit && len(c) > 2 && strings.HasPrefix(low, strings.ToLower(c)) {
			cost = limit // degrees for deg
		}
		if cost <= limit {
			found = append(found, near{c, cost})
		}
	}
	sort.Slice(found, func(i, j int) bool {
		if found[i].cost != found[j].cost {
			return found[i].cost < found[j].cost
		}
		return found[i].text < found[j].text
	})
	var out []string
	for _, f := range found[:min(3, len(found))] {
		if f.cost <= 2*found[0].cost+1 { // much farther than the closest: not meant
			out = append(out, f.text)
		}
	}
	return out
}

// DidYouMean makes the hint for a name that does not exist: the nearest ones, or otherwise.
func DidYouMean(name string, candidates []string, otherwise string) string {
	near := Nearest(name, candidates)
	if len(near) == 0 {
		return otherwise
	}
	return "Did you mean " + Or(near) + "?"
}

// Or joins words as "a, b or c".
func Or(words []string) string { return join(words, "or") }

// And joins words as "a, b and c".
func And(words []string) string { return join(words, "and") }

func join(words []string, last string) string {
	switch len(words) {
	case 0:
		return ""
	case 1:
		return words[0]
	}
	return strings.Join(words[:len(words)-1], ", ") + " " + last + " " + words[len(words)-1]
}
