package reason_test

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"pgregory.net/rapid"
)

// within gives the values of a measure that the words of a cell name: "5° or less", "1+ to 3",
// "broken or fragile".
func within(t *rapid.T, m about, is string) []float64 {
	is = strings.TrimSuffix(strings.TrimSuffix(is, " or never"), " before the assessment")
	var out []float64
	for _, v := range m.values {
		if holds(t, m, v, is) {
			out = append(out, v)
		}
	}
	if len(out) == 0 { // the values of the tests have gaps: take a constant itself, or a step beside it
		for _, c := range m.constants {
			for _, v := range []float64{c, c - 0.5, c + 0.5, c - 1, c + 1} {
				if m.kind == "number" && holds(t, m, v, is) {
					out = append(out, v)
				}
			}
		}
	}
	if len(out) == 0 {
		t.Fatalf("no value of %s is %q", m.name, is)
	}
	return out
}

func holds(t *rapid.T, m about, v float64, is string) bool {
	switch m.kind {
	case "bool":
		return is == []string{"no", "yes"}[int(v)]
	case "option":
		return slices.Contains(strings.FieldsFunc(is, func(r rune) bool { return r == ',' || r == ' ' }), m.words[int(v)])
	case "text":
		return is == "recorded"
	}
	at := func(s string) float64 {
		if m.kind == "grade" {
			return float64(slices.Index(m.words, s))
		}
		n, _, _ := strings.Cut(strings.TrimSuffix(strings.ReplaceAll(s, "−", "-"), "°"), " ")
		x, err := strconv.ParseFloat(n, 64)
		if err != nil {
			t.Fatalf("%s: %v", is, err)
		}
		return x
	}
	for _, form := range []struct {
		words  string
		within func(a, b float64) bool
	}{
		{`^any value()()$`, func(a, b float64) bool { return true }},
		{`^(.+) or less()$`, func(a, b float64) bool { return v <= a }},
		{`^(.+) or more()$`, func(a, b float64) bool { return v >= a }},
		{`^from (.+) to less than (.+)$`, func(a, b float64) bool { return v >= a && v < b }},
		{`^from (.+) to (.+)$`, func(a, b float64) bool { return v >= a && v <= b }},
		{`^more than (.+) and up to (.+)$`, func(a, b float64) bool { return v > a && v <= b }},
		{`^more than (.+) and less than (.+)$`, func(a, b float64) bool { return v > a && v < b }},
		{`^less than (.+)()$`, func(a, b float64) bool { return v < a }},
		{`^more than (.+)()$`, func(a, b float64) bool { return v > a }},
		{`^(.+) to (.+)$`, func(a, b float64) bool { return v >= a && v <= b }},
		{`^(.+)()$`, func(a, b float64) bool { return v == a }},
	} {
		if g := regexp.MustCompile(form.words).FindStringSubmatch(is); g != nil {
			var a, b float64
			if g[1] != "" {
				a = at(g[1])
			}
			if g[2] != "" {
				b = at(g[2])
			}
			return form.within(a, b)
		}
	}
	t.Fatalf("no words for a cell: %q", is)
	return false
}
