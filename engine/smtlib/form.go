package smtlib

import (
	"fmt"

	"crus/engine/cell"
)

// form is a yes/no form in Kleene's logic: what makes it true, and what makes it false. Where one is the negation of the
// other it can't be unknown.
type form struct{ yes, no expr }

func known(yes expr) form { return form{yes, not(yes)} }

// total reports whether a form is never unknown.
func (f form) total() bool { return f.no.equal(not(f.yes)) }

// form gives a node's form, and defines what it rests on.
func (w *row) form(n int) form {
	if w.opposite && !w.limb[n] {
		return w.first.form(n)
	}
	if f, ok := w.forms[n]; ok {
		return f
	}
	f := w.make(n)
	if name := w.names[n]; name != "" || w.uses[n] > 1 && f.yes.list != nil && w.Nodes[n].Op != cell.Not {
		if name == "" {
			name = fmt.Sprintf("part.%d", n)
		}
		f = w.define(w.prefix+name, f)
	}
	w.forms[n] = f
	return f
}

// make works a node's form out of those of its parts.
func (w *row) make(n int) form {
	switch x := w.Nodes[n]; x.Op {
	case cell.Always:
		return known(yes())
	case cell.Ask:
		return w.answer(w.Questions[x.X])
	case cell.Recorded:
		return known(w.measures[x.X].known)
	case cell.Opaque:
		return w.unclear(x.X)
	case cell.Not:
		a := w.form(x.A)
		return form{a.no, a.yes}
	case cell.And:
		a, b := w.form(x.A), w.form(x.B)
		return neither(form{and(a.yes, b.yes), or(a.no, b.no)}, a, b)
	case cell.Or:
		a, b := w.form(x.A), w.form(x.B)
		return neither(form{or(a.yes, b.yes), and(a.no, b.no)}, a, b)
	default:
		a, b, c := w.form(x.A), w.form(x.B), w.form(x.C)
		if a.total() {
			return neither(form{either(a.yes, b.yes, c.yes), either(a.yes, b.no, c.no)}, a, b, c)
		}
		return form{or(and(a.yes, b.yes), and(a.no, c.yes)), or(and(a.yes, b.no), and(a.no, c.no))}
	}
}

// neither gives a form as it is, or as one that is never unknown where none of its parts can be.
func neither(f form, parts ...form) form {
	for _, p := range parts {
		if !p.total() {
			return f
		}
	}
	return known(f.yes)
}

// answer says whether a value lies in the cells that a question means.
func (w *row) answer(q *cell.Question) form {
	a := w.Axes[q.Axis]
	if a.Measure != nil {
		m := &w.measures[q.Axis]
		in := m.within(q.Yes)
		if m.known.is("true") {
			return known(in)
		}
		return form{and(m.known, in), and(m.known, not(in))}
	}
	t := w.term(a.Term)
	in := stretches(a, q.Yes, func(s cell.Span) expr { return inReal(t.value, s) })
	if t.known.is("true") {
		return known(in)
	}
	return form{and(t.known, in), and(t.known, not(in))}
}

// unclear declares a part that is not looked into: it may be true, false or neither.
func (w *row) unclear(i int) form {
	name := w.prefix + fmt.Sprintf("unclear.%d", i)
	f := form{word(name + "=true"), word(name + "=false")}
	w.note("not looked into, so left free: %s", w.Unclear[i])
	w.line(call("declare-const", f.yes, word("Bool")))
	w.line(call("declare-const", f.no, word("Bool")))
	w.line(call("assert", not(and(f.yes, f.no))))
	w.free[f.yes.word], w.free[f.no.word] = w.Unclear[i].String(), w.Unclear[i].String()
	return f
}

// define defines a form by a name, and gives the form that uses it.
func (w *writer) define(name string, f form) form {
	if f.total() {
		return known(w.defined(name, "Bool", f.yes))
	}
	return form{w.defined(name+"=true", "Bool", f.yes), w.defined(name+"=false", "Bool", f.no)}
}

// defined defines a name for an expression of a sort.
func (w *writer) defined(name, sort string, e expr) expr {
	w.line(call("define-fun", word(name), word("()"), word(sort), e))
	w.bodies[name] = e
	return word(name)
}
