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
	values    []float64 // what is recorded; grades by rank, dates in days before the assessment, never as infinity
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
		{name: "injected", of: "person", kind: "date", constants: []float64{14, 84}, values: []float64{0, 13, 14, 15, 50, 84, 85, 400, math.Inf(1)}},
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
