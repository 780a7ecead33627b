package reason_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// A second, naive reading of the language, written from its description alone: small expression
// trees that are also printed as CEL, rules, and what they make of a choice. It shares no code with
// package reason, and takes no care to be fast.

// tri is Kleene's truth.
type tri int

const (
	no tri = iota
	maybe
	yes
)

func truth(b bool) tri {
	if b {
		return yes
	}
	return no
}

// about is what these tests record, and the constants that conditions compare it with.
type about struct {
	name, of  string
	kind      string // bool, number, grade, option, count, date, text
	literal   string // of a number or a grade
	constants []float64
	values    []float64 // what is recorded; grades by rank, dates in days before the assessment
	words     []string
}

func measures() []about {
	yesNo := []float64{0, 1}
	return []about{
		{name: "p", of: "limb", kind: "bool", values: yesNo}, {name: "q", of: "limb", kind: "bool", values: yesNo}, {name: "r", of: "limb", kind: "bool", values: yesNo},
		{name: "driver", of: "person", kind: "bool", values: yesNo},
		{name: "flex", of: "limb", kind: "number", literal: "deg", constants: []float64{-10, -5, 0, 5}, values: []float64{-60, -12, -10, -7.5, -5, -2, 0, 3, 5, 7, 45}},
		{name: "knee", of: "limb", kind: "number", literal: "deg", constants: []float64{-10, 0}, values: []float64{-90, -10, -3, 0, 2, 20}},
		{name: "lift", of: "limb", kind: "number", literal: "mm", constants: []float64{10, 20, 40}, values: []float64{0, 5, 10, 15.4, 20, 21, 40, 60, 100}},
		{name: "gap", of: "limb", kind: "number", literal: "mm", constants: []float64{0, 10}, values: []float64{0, 3, 10, 12.6, 100}},
		{name: "age", of: "person", kind: "number", literal: "years", constants: []float64{16, 60}, values: []float64{0, 10, 16, 30, 60, 61, 110}},
		{name: "tone", of: "limb", kind: "grade", literal: "tone_scale", words: []string{"0", "1", "1+", "2", "3", "4"}, constants: []float64{1, 2, 4}, values: []float64{0, 1, 2, 3, 4, 5}},
		{name: "skin", of: "limb", kind: "option", words: []string{"intact", "fragile", "broken"}, values: []float64{0, 1, 2}},
		{name: "work", of: "person", kind: "option", words: []string{"desk", "standing", "field"}, values: []float64{0, 1, 2}},
		{name: "posture", of: "limb", kind: "count", constants: []float64{-2, 0, 6}, values: []float64{-12, -3, -2, -1, 0, 3, 6, 7, 12}},
		{name: "injected", of: "person", kind: "date", constants: []float64{14, 84}, values: []float64{0, 13, 14, 15, 50, 84, 85, 400}},
		{name: "remark", of: "person", kind: "text", values: []float64{1}},
	}
}

// expr is a condition: "and", "or", "not", "if", "is" (a yes/no measure), "compare", "compare two",
// "among" (one of some words), "recorded", "finding", "fails" (a division that fails for 0).
type expr struct {
	op    string
	kids  []*expr
	who   string // person, limb, other
	m     about
	cmp   string
	at    float64
	words []string
	fact  int
}

func (e *expr) cel() string {
	path := e.who + "." + e.m.name
	switch e.op {
	case "and", "or":
		var parts []string
		for _, k := range e.kids {
			parts = append(parts, k.cel())
		}
		return "(" + strings.Join(parts, map[string]string{"and": " && ", "or": " || "}[e.op]) + ")"
	case "not":
		return "!(" + e.kids[0].cel() + ")"
	case "if":
		return "(" + e.kids[0].cel() + " ? " + e.kids[1].cel() + " : " + e.kids[2].cel() + ")"
	case "any":
		return "[" + e.kids[0].cel() + ", " + e.kids[1].cel() + "].exists(x, x)"
	case "compare":
		switch e.m.kind {
		case "grade":
			return fmt.Sprintf("%s %s %s('%s')", path, e.cmp, e.m.literal, e.m.words[int(e.at)])
		case "count":
			return fmt.Sprintf("%s %s %g", path, e.cmp, e.at)
		case "date":
			return fmt.Sprintf("since(%s) %s days(%g)", path, e.cmp, e.at)
		}
		return fmt.Sprintf("%s %s %s(%g)", path, e.cmp, e.m.literal, e.at)
	case "compare two":
		return fmt.Sprintf("%s %s other.%s", path, e.cmp, e.m.name)
	case "among":
		return fmt.Sprintf("%s in ['%s']", path, strings.Join(e.words, "', '"))
	case "recorded":
		return "recorded(" + path + ")"
	case "finding":
		return fmt.Sprintf("finding.f%d", e.fact)
	case "fails":
		return "limb.lift / limb.gap > ratio(1)"
	}
	return path
}

// world is one assessment as one limb sees it.
type world struct {
	values   map[string]float64 // by "person.x", "left.x", "right.x"
	side     string
	findings []tri
}

func (w *world) value(who, name string) (float64, bool) {
	switch who {
	case "limb":
		who = w.side
	case "other":
		who = map[string]string{"left": "right", "right": "left"}[w.side]
	}
	v, ok := w.values[who+"."+name]
	return v, ok
}

func (e *expr) eval(w *world) tri {
	v, known := 0.0, false
	if e.who != "" {
		v, known = w.value(e.who, e.m.name)
	}
	switch e.op {
	case "and", "or", "any":
		least, most := yes, no
		for _, k := range e.kids {
			x := k.eval(w)
			least, most = min(least, x), max(most, x)
		}
		if e.op == "and" {
			return least
		}
		return most
	case "not":
		return yes - e.kids[0].eval(w)
	case "if":
		switch e.kids[0].eval(w) {
		case yes:
			return e.kids[1].eval(w)
		case no:
			return e.kids[2].eval(w)
		}
		return maybe
	case "finding":
		return w.findings[e.fact]
	case "recorded":
		return truth(known)
	case "fails":
		lift, ok := w.value("limb", "lift")
		gap, also := w.value("limb", "gap")
		if !ok || !also || gap == 0 {
			return maybe
		}
		return truth(lift/gap > 1)
	}
	if !known {
		return maybe
	}
	switch e.op {
	case "compare":
		return compared(v, e.cmp, e.at)
	case "compare two":
		if o, ok := w.value("other", e.m.name); ok {
			return compared(v, e.cmp, o)
		}
		return maybe
	case "among":
		return truth(slices.Contains(e.words, e.m.words[int(v)]))
	}
	return truth(v == 1)
}

func compared(a float64, op string, b float64) tri {
	switch op {
	case "<":
		return truth(a < b)
	case "<=":
		return truth(a <= b)
	case ">":
		return truth(a > b)
	case ">=":
		return truth(a >= b)
	case "==":
		return truth(a == b)
	}
	return truth(a != b)
}

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
					v.value += s.times * m
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
