package smtlib

import (
	"math"
	"strconv"
	"strings"
)

// expr is an S-expression: a word, or a list.
type expr struct {
	word string
	list []expr
}

// The truth values.
func yes() expr { return expr{word: "true"} }
func no() expr  { return expr{word: "false"} }

// word makes an expression of a name.
func word(s string) expr { return expr{word: s} }

// call applies a function to some arguments.
func call(name string, args ...expr) expr { return expr{list: append([]expr{word(name)}, args...)} }

func (e expr) is(name string) bool { return e.word == name }

// calls reports whether an expression applies a function.
func (e expr) calls(name string) bool { return len(e.list) > 0 && e.list[0].is(name) }

func (e expr) equal(f expr) bool {
	if e.word != f.word || len(e.list) != len(f.list) {
		return false
	}
	for i, x := range e.list {
		if !x.equal(f.list[i]) {
			return false
		}
	}
	return true
}

func not(e expr) expr {
	switch {
	case e.is("true"):
		return no()
	case e.is("false"):
		return yes()
	case e.calls("not"):
		return e.list[1]
	}
	return call("not", e)
}

// and joins conditions; none is true.
func and(all ...expr) expr { return join("and", "true", "false", all) }

// or joins conditions; none is false.
func or(all ...expr) expr { return join("or", "false", "true", all) }

// join joins conditions of which unit says nothing and zero says all.
func join(name, unit, zero string, all []expr) expr {
	var out []expr
	var add func(e expr) bool
	add = func(e expr) bool {
		switch {
		case e.is(unit):
		case e.is(zero):
			return false
		case e.calls(name):
			for _, x := range e.list[1:] {
				if !add(x) {
					return false
				}
			}
		default:
			for _, x := range out {
				if x.equal(e) {
					return true
				}
			}
			out = append(out, e)
		}
		return true
	}
	for _, e := range all {
		if !add(e) {
			return word(zero)
		}
	}
	switch len(out) {
	case 0:
		return word(unit)
	case 1:
		return out[0]
	}
	return call(name, out...)
}

// either gives a where the condition holds, and b where not.
func either(condition, a, b expr) expr {
	switch {
	case condition.is("true") || a.equal(b):
		return a
	case condition.is("false"):
		return b
	}
	return call("ite", condition, a, b)
}

// sum adds up numbers; none is zero, written as given.
func sum(zero expr, all ...expr) expr {
	switch len(all) {
	case 0:
		return zero
	case 1:
		return all[0]
	}
	return call("+", all...)
}

// whole writes a whole number.
func whole(x float64) expr { return signed(x, strconv.FormatFloat(math.Abs(x), 'f', 0, 64)) }

// real writes a number exactly as people write it, in the fewest digits that tell it from its neighbours.
func real(x float64) expr {
	text := strconv.FormatFloat(math.Abs(x), 'f', -1, 64)
	if !strings.Contains(text, ".") {
		text += ".0"
	}
	return signed(x, text)
}

func signed(x float64, text string) expr {
	if x < 0 {
		return call("-", word(text))
	}
	return word(text)
}

// columns is how wide a line may be before a list is broken.
const columns = 110

// String writes an expression on one line.
func (e expr) String() string {
	if e.list == nil {
		return e.word
	}
	parts := make([]string, len(e.list))
	for i, x := range e.list {
		parts[i] = x.String()
	}
	return "(" + strings.Join(parts, " ") + ")"
}

// laidOut writes an expression from a column on, broken over lines where it is wider than these.
func (e expr) laidOut(column int) string {
	text := e.String()
	if e.list == nil || column+len(text) <= columns {
		return text
	}
	var b strings.Builder
	b.WriteString("(" + e.list[0].String())
	rest := e.list[1:]
	if e.list[0].is("define-fun") { // its name, inputs and sort stay beside it
		for _, x := range rest[:3] {
			b.WriteString(" " + x.String())
		}
		rest = rest[3:]
	}
	for _, x := range rest {
		b.WriteString("\n" + strings.Repeat(" ", column+2) + x.laidOut(column+2))
	}
	b.WriteString(")")
	return b.String()
}
