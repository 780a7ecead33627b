package smtlib

import (
	"fmt"

	"crus/engine/biomech"
	"crus/engine/cell"
)

// number is the value of a term, a real number in base units, and what makes it known; where it is not, the value means
// nothing.
type number struct {
	value, known expr
	endless      bool // it may be that of what never was, from which nothing can be worked out
}

// greatest is the largest number from which anything is worked out; the time since what never was is larger.
const greatest = 1e21

// calculable says what makes a term's value one to go on with.
func (n number) calculable(kept bool) expr {
	if kept && n.endless {
		return and(n.known, call("<=", n.value, real(greatest)))
	}
	return n.known
}

// term gives the value of a term, and defines what it rests on.
func (w *row) term(t *cell.Term) number {
	if w.opposite && !w.limbTerm[t.Index] {
		return w.first.term(t)
	}
	if n, ok := w.terms[t.Index]; ok {
		return n
	}
	n := w.work(t)
	if name := w.numbers[t.Index]; name != "" || w.termUses[t.Index] > 1 && n.value.list != nil {
		if name == "" {
			name = fmt.Sprintf("number.%d", t.Index)
		}
		name = w.prefix + name
		n.value = w.defined(name, "Real", n.value)
		if n.known.list != nil {
			n.known = w.defined(name+"=known", "Bool", n.known)
		}
	}
	w.terms[t.Index] = n
	return n
}

// work works a term out of its parts.
func (w *row) work(t *cell.Term) number {
	switch t.Op {
	case cell.Number:
		return number{value: real(t.X), known: yes()}
	case cell.Read:
		m := &w.measures[t.Axis]
		_, endless := m.Never()
		return number{m.number(), m.known, endless}
	case cell.Choose:
		c, a, b := w.form(t.Node), w.term(t.A), w.term(t.B)
		return number{either(c.yes, a.value, b.value), or(and(c.yes, a.known), and(c.no, b.known)), a.endless || b.endless}.settle(c, a, b)
	case cell.Holds:
		f := w.form(t.Node)
		if f.total() {
			return number{value: either(f.yes, real(1), real(0)), known: yes()}
		}
		return number{value: either(f.yes, real(1), real(0)), known: or(f.yes, f.no)}
	case cell.Call, cell.Asked:
		return w.unworked(t)
	case cell.Minus, cell.Size:
		a := w.term(t.A)
		if t.Op == cell.Minus {
			return number{call("-", a.value), a.calculable(t.Kept), a.endless && !t.Kept}
		}
		return number{either(call("<", a.value, real(0)), call("-", a.value), a.value), a.known, a.endless}
	case cell.Least, cell.Most:
		return w.extreme(t)
	}
	return w.two(t)
}

// settle leaves out when a choice between numbers is known where it always is.
func (n number) settle(c form, a, b number) number {
	if c.total() && a.known.is("true") && b.known.is("true") {
		n.known = yes()
	}
	return n
}

// extreme gives the least or the greatest of some terms.
func (w *row) extreme(t *cell.Term) number {
	further := map[cell.TermOp]string{cell.Least: "smaller", cell.Most: "larger"}[t.Op]
	out := w.term(t.Of[0])
	for _, x := range t.Of[1:] {
		n := w.term(x)
		out = number{call(further, out.value, n.value), and(out.known, n.known), out.endless || n.endless}
	}
	return out
}

func (w *row) two(t *cell.Term) number {
	a, b := w.term(t.A), w.term(t.B)
	both := and(a.calculable(t.Kept), b.calculable(t.Kept))
	endless := !t.Kept && (a.endless || b.endless)
	switch t.Op {
	case cell.Same:
		return number{value: either(call("=", a.value, b.value), real(0), real(1)), known: both}
	case cell.Sum:
		return number{call("+", a.value, b.value), both, endless}
	case cell.Less, cell.Differ:
		return number{call("-", a.value, b.value), both, endless}
	case cell.Times:
		return number{scaled(call("*", a.value, b.value), t.Num, t.Den), both, endless}
	}
	if t.B.Op == cell.Number && t.B.X != 0 {
		return number{call("/", scaled(a.value, t.Num, t.Den), b.value), both, endless}
	}
	return number{call("/", scaled(a.value, t.Num, t.Den), b.value), and(both, not(call("=", b.value, real(0)))), endless}
}

// scaled takes a number times num/den.
func scaled(e expr, num, den float64) expr {
	if num != den {
		if num != 1 {
			e = call("*", real(num), e)
		}
		if den != 1 {
			e = call("/", e, real(den))
		}
	}
	return e
}

// unworked declares a formula that is not arithmetic: it may be any number of its kind, or not known.
func (w *row) unworked(t *cell.Term) number {
	name := w.prefix + fmt.Sprintf("formula.%d", t.Index)
	what := ""
	if t.Op == cell.Asked {
		what = w.Unclear[int(t.X)].String()
	} else {
		what = t.Formula.Name + ": " + t.Formula.Doc
	}
	sort, bounds := "Real", yes()
	value := word(name)
	if t.Op == cell.Call {
		switch {
		case t.Result != nil:
			sort, bounds = "Int", call("<=", whole(0), word(name), whole(float64(len(t.Result)-1)))
		case t.Formula.Result == biomech.YesNo:
			sort, bounds = "Int", call("<=", whole(0), word(name), whole(1))
		case t.Formula.Result == biomech.Count:
			sort = "Int"
		}
	}
	if sort == "Int" {
		value = call("to_real", value)
	}
	is := word(name + "=known")
	w.note("not arithmetic, so left free: %s", what)
	w.line(call("declare-const", word(name), word(sort)))
	if !bounds.is("true") {
		w.line(call("assert", bounds))
	}
	w.line(call("declare-const", is, word("Bool")))
	w.free[name], w.free[is.word] = what, what
	return number{value: value, known: is}
}
