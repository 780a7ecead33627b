package smtlib

import (
	"fmt"
	"math"
	"strings"

	"crus/engine/cell"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// secondsADay turns the time since a date, which is counted in days here, into seconds.
const secondsADay = 86400

// measure is one measure of one limb, of its opposite, or of the person, as it is declared.
type measure struct {
	*cell.Axis
	name  string // of its value
	known expr   // whether it is recorded
}

// declare declares the measures that a row reads, once: their values, whether those are recorded of which this is asked,
// and what is plausible of them.
func (r *row) declare() {
	asked := missing(r.Space)
	for _, a := range r.Axes[:r.Measures] {
		path := a.Path
		if a.Limb && r.opposite { // what is this limb's for one row is the opposite limb's for the other
			limb, other := "limb."+a.Measure.Name, "other."+a.Measure.Name
			path = map[string]string{limb: other, other: limb}[path]
		}
		m := measure{Axis: a, name: path, known: yes()}
		if a.Measure.Kind == vocab.Date {
			m.name = "since." + path
		}
		if asked[a.Measure] {
			m.known = word(path + "=recorded")
		}
		r.measures = append(r.measures, m)
		if !r.declared[path] {
			r.declared[path] = true
			r.declareOne(&m, path)
		}
	}
}

func (w *writer) declareOne(m *measure, path string) {
	if m.Measure.Kind != vocab.Text {
		w.note("%s: %s", path, m.meaning())
		w.line(call("declare-const", word(m.name), word(m.sort())))
		if in := m.plausible(); !in.is("true") {
			w.line(call("assert", in))
		}
	}
	if !m.known.is("true") {
		w.note("whether %s is recorded; where it is not, its value means nothing", path)
		w.line(call("declare-const", m.known, word("Bool")))
	}
}

// missing lists the measures that may be missing: some condition or formula asks whether they are recorded.
func missing(s *cell.Space) map[*vocab.Measure]bool {
	out := map[*vocab.Measure]bool{}
	note := func(all ...*ruleset.Expr) {
		for _, x := range all {
			if x == nil {
				continue
			}
			for _, ref := range x.Reads {
				if ref.Recorded {
					out[ref.Measure] = true
				}
			}
		}
	}
	for _, p := range s.Ruleset.Parts {
		note(p.Applies)
	}
	for _, f := range s.Facts {
		note(f.Expr)
	}
	for _, r := range s.Rules {
		note(r.Rule.When, r.Rule.Unless)
		for _, a := range r.Advice {
			note(a.Formula)
		}
	}
	for _, c := range s.Cautions {
		note(c.Caution.When)
	}
	return out
}

func (m *measure) sort() string {
	switch m.Measure.Kind {
	case vocab.Quantity:
		return "Real"
	case vocab.YesNo:
		return "Bool"
	}
	return "Int"
}

// meaning says what a value stands for.
func (m *measure) meaning() string {
	x := m.Measure
	switch x.Kind {
	case vocab.Quantity:
		return fmt.Sprintf("%s, in %s", x.Label, x.Unit.Dimension.Base().Code)
	case vocab.Grade:
		return x.Label + "; " + numbered(x.Scale.Grades)
	case vocab.Option:
		return x.Label + "; " + numbered(x.Options)
	case vocab.Date:
		return x.Label + ", in days up to the assessment"
	}
	return x.Label
}

// numbered writes "0 absent, 1 present".
func numbered(words []string) string {
	out := make([]string, len(words))
	for i, x := range words {
		out[i] = fmt.Sprintf("%d: %s", i, x)
	}
	return strings.Join(out, ", ")
}

// plausible says which values are plausible.
func (m *measure) plausible() expr {
	lo, hi := m.Range()
	x := word(m.name)
	switch m.Measure.Kind {
	case vocab.YesNo:
		return yes()
	case vocab.Quantity:
		return call("<=", real(lo), x, real(hi))
	case vocab.Date:
		in := call("<=", whole(math.Ceil(lo/secondsADay)), x, whole(math.Floor(hi/secondsADay)))
		if never, ok := m.Never(); ok {
			return or(in, call("=", x, whole(never/secondsADay)))
		}
		return in
	}
	return call("<=", whole(lo), x, whole(hi))
}

// number gives the value of a measure as a number on its axis.
func (m *measure) number() expr {
	switch m.Measure.Kind {
	case vocab.Quantity:
		return word(m.name)
	case vocab.YesNo:
		return either(word(m.name), real(1), real(0))
	case vocab.Date:
		return call("*", real(secondsADay), call("to_real", word(m.name)))
	}
	return call("to_real", word(m.name))
}

// within says that the value lies in some of the cells of the axis.
func (m *measure) within(yes []bool) expr {
	x := word(m.name)
	switch m.Measure.Kind {
	case vocab.YesNo:
		return or(truth(yes[m.Cells[1]], x), truth(yes[m.Cells[0]], not(x)))
	case vocab.Option:
		var out []expr
		for option, c := range m.Cells {
			if yes[c] {
				out = append(out, call("=", x, whole(float64(option))))
			}
		}
		return or(out...)
	case vocab.Quantity:
		return stretches(m.Axis, yes, func(s cell.Span) expr { return inReal(x, s) })
	}
	step := 1.0
	if m.Measure.Kind == vocab.Date {
		step = secondsADay
	}
	return stretches(m.Axis, yes, func(s cell.Span) expr { return inWhole(x, s, step) })
}

// truth gives a condition, or false where it does not count.
func truth(counts bool, e expr) expr {
	if counts {
		return e
	}
	return no()
}

// stretches joins what is written of every stretch of neighbouring cells that are answered yes.
func stretches(a *cell.Axis, yes []bool, in func(cell.Span) expr) expr {
	var out []expr
	for from := 0; from < len(yes); from++ {
		if !yes[from] {
			continue
		}
		to := from
		for to+1 < len(yes) && yes[to+1] {
			to++
		}
		s := a.Span(from)
		last := a.Span(to)
		s.Hi, s.HiIn = last.Hi, last.HiIn
		out = append(out, in(s))
		from = to
	}
	return or(out...)
}

// inReal says that a number lies in a span.
func inReal(x expr, s cell.Span) expr {
	if s.Lo == s.Hi {
		return call("=", x, real(s.Lo))
	}
	var out []expr
	if !math.IsInf(s.Lo, -1) {
		out = append(out, call(map[bool]string{true: ">=", false: ">"}[s.LoIn], x, real(s.Lo)))
	}
	if !math.IsInf(s.Hi, 1) {
		out = append(out, call(map[bool]string{true: "<=", false: "<"}[s.HiIn], x, real(s.Hi)))
	}
	return and(out...)
}

// inWhole says that a whole number of steps lies in a span.
func inWhole(x expr, s cell.Span, step float64) expr {
	var out []expr
	lo, hi := math.Ceil(s.Lo/step), math.Floor(s.Hi/step)
	if !math.IsInf(lo, -1) {
		if lo*step == s.Lo && !s.LoIn {
			lo++
		}
		out = append(out, call(">=", x, whole(lo)))
	}
	if !math.IsInf(hi, 1) {
		if hi*step == s.Hi && !s.HiIn {
			hi--
		}
		out = append(out, call("<=", x, whole(hi)))
	}
	if len(out) == 2 && lo == hi {
		return call("=", x, whole(lo))
	}
	return and(out...)
}
