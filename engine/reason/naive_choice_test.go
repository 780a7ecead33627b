package reason_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// says is one advice: options, or a number at + times·measure.
type says struct {
	choice, verb string
	options      []string
	at, times    float64
	measure      string // of the limb; "" for a plain number
}

// law is one rule.
type law struct {
	when, unless *expr
	strong       bool
	overrides    []int
	says         []says
}

// book is a small ruleset.
type book struct {
	findings []*expr
	rules    []*law
	cautions []*expr
	open     []string // choices left to the clinician
}

// picks is a choice's fixed part.
type picks struct {
	options          []string
	fallback         string
	lo, hi, rounding float64
	at               float64
	preset, person   bool
	literal          string
}

func choices() map[string]picks {
	return map[string]picks{
		"trim":   {options: []string{"low", "middle", "high"}},
		"pad":    {options: []string{"none", "soft"}, fallback: "none", preset: true},
		"shoe":   {options: []string{"own", "deep", "made"}, person: true},
		"height": {lo: 0, hi: 60, rounding: 1, literal: "mm"},
		"angle":  {lo: -10, hi: 10, rounding: 2, preset: true, literal: "deg"},
		"review": {lo: 1, hi: 52, rounding: 1, person: true, literal: "weeks"},
	}
}

// states gives every rule's state on one limb, and the findings.
func (b *book) states(w *world) (states []string) {
	w.findings = nil
	for _, f := range b.findings {
		w.findings = append(w.findings, f.eval(w))
	}
	states = make([]string, len(b.rules))
	var settle func(i int) string
	settle = func(i int) string {
		if states[i] != "" {
			return states[i]
		}
		r := b.rules[i]
		own := r.when.eval(w)
		if r.unless != nil {
			own = min(own, yes-r.unless.eval(w))
		}
		over := map[string]bool{}
		for j, o := range b.rules {
			if slices.Contains(o.overrides, i) {
				over[settle(j)] = true
			}
		}
		switch {
		case own == no:
			states[i] = "did_not_fire"
		case over["fired"]:
			states[i] = "set_aside"
		case own == maybe || over["pending"]:
			states[i] = "pending"
		default:
			states[i] = "fired"
		}
		return states[i]
	}
	for i := range b.rules {
		settle(i)
	}
	return states
}

// voice is one thing that a fired rule says of a choice; value is its number.
type voice struct {
	rule  int
	says  says
	value float64
}

// heard gathers what fired rules say of a choice on some limbs.
func (b *book) heard(choice string, limbs []*world) []voice {
	var out []voice
	seen := map[string]bool{}
	for _, w := range limbs {
		states := b.states(w)
		for i, r := range b.rules {
			for j, s := range r.says {
				if states[i] != "fired" || s.choice != choice {
					continue
				}
				v := voice{i, s, s.at}
				if s.measure != "" {
					m, ok := w.value("limb", s.measure)
					if !ok {
						continue
					}
					v.value = math.Round((v.value+s.times*m)*1e9) / 1e9 // as quantities are kept
				}
				key := fmt.Sprint(i, j)
				if s.options != nil && seen[key] {
					continue
				}
				seen[key] = true
				out = append(out, v)
			}
		}
	}
	return out
}

// remaining gives the options that limits leave.
func remaining(options []string, voices []voice) (rest []string) {
	for i, o := range options {
		gone := false
		for _, v := range voices {
			named := slices.Contains(v.says.options, o)
			switch v.says.verb {
			case "only":
				gone = gone || !named
			case "never":
				gone = gone || named
			case "at_least":
				gone = gone || i < slices.Index(options, v.says.options[0])
			case "at_most":
				gone = gone || i > slices.Index(options, v.says.options[0])
			}
		}
		if !gone {
			rest = append(rest, o)
		}
	}
	return rest
}

// span gives the interval that limits leave.
func span(c picks, voices []voice) (lo, hi float64) {
	lo, hi = c.lo, c.hi
	for _, v := range voices {
		switch v.says.verb {
		case "at_least":
			lo = math.Max(lo, v.value)
		case "at_most":
			hi = math.Min(hi, v.value)
		}
	}
	return lo, hi
}

// decide gives what becomes of a choice, as said() writes it.
func (b *book) decide(name string, limbs []*world) string {
	c := choices()[name]
	voices := b.heard(name, limbs)
	if len(voices) == 0 {
		switch {
		case c.preset && c.options != nil:
			return "default " + c.fallback
		case c.preset:
			return fmt.Sprint("default ", c.at)
		case slices.Contains(b.open, name):
			return "left_to_clinician"
		}
		return "unanswered"
	}
	if c.options == nil {
		return b.number(c, voices)
	}
	rest := remaining(c.options, voices)
	if len(rest) == 0 {
		return "conflict"
	}
	score := func(o string) int {
		n := 0
		for _, v := range voices {
			if v.says.verb == "favour" && slices.Contains(v.says.options, o) {
				n += map[bool]int{true: 1000, false: 1}[b.rules[v.rule].strong]
			}
		}
		return n
	}
	best := 0
	for _, o := range rest {
		best = max(best, score(o))
	}
	rest = slices.DeleteFunc(rest, func(o string) bool { return score(o) < best })
	if len(rest) == 1 {
		return "settled " + rest[0]
	}
	return "open " + strings.Join(rest, " ")
}

func (b *book) number(c picks, voices []voice) string {
	lo, hi := span(c, voices)
	if lo > hi {
		return "conflict"
	}
	var strong, any []float64
	for _, v := range voices {
		if v.says.verb == "aim" {
			x := math.Min(math.Max(v.value, lo), hi)
			any = append(any, x)
			if b.rules[v.rule].strong {
				strong = append(strong, x)
			}
		}
	}
	if strong != nil {
		any = strong
	}
	switch {
	case any == nil && lo == hi:
		return fmt.Sprint("settled ", lo)
	case any == nil:
		return fmt.Sprintf("open %g..%g", lo, hi)
	}
	from, to := slices.Min(any), slices.Max(any)
	if math.Round((to-from)*1e9)/1e9 > c.rounding {
		return fmt.Sprintf("open %g..%g", from, to)
	}
	middle := (from + to) / 2
	best, found := middle, false
	for k := math.Floor(lo/c.rounding) - 1; k*c.rounding <= hi; k++ { // the nearest on the grid; of two, the one farther from zero
		x := k * c.rounding
		d, old := math.Abs(x-middle), math.Abs(best-middle)
		if x >= lo && (!found || d < old-1e-9 || math.Abs(d-old) <= 1e-9 && math.Abs(x) > math.Abs(best)) {
			best, found = x, true
		}
	}
	if !found {
		best = math.Round(middle*1e9) / 1e9
	}
	return fmt.Sprint("settled ", best+0)
}
