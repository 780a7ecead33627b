package smtlib

import (
	"slices"

	"crus/engine/cell"
)

// row is an assessment as one limb sees it, with what is defined of it. What is decided once for the person can rest on
// both limbs; what the second sees is then defined too, under names that begin with opposite/.
type row struct {
	*writer
	opposite bool
	prefix   string // of the names that are defined
	first    *row   // of the second row: the other
	measures []measure
	forms    map[int]form   // by node
	terms    map[int]number // by term
	own      []form         // of each rule: its condition
	force    []form         // of each rule: whether it is in force
}

func (w *writer) newRow(first *row) *row {
	r := &row{writer: w, first: first, opposite: first != nil, forms: map[int]form{}, terms: map[int]number{},
		own: make([]form, len(w.Rules)), force: make([]form, len(w.Rules))}
	if r.opposite {
		r.prefix = "opposite/"
	}
	return r
}

// rule defines the condition of a rule, and whether it is in force.
func (r *row) rule(i int) {
	x := r.Rules[i]
	r.own[i] = r.alias("holds."+x.Name, x.Own)
	r.force[i] = r.alias("in_force."+x.Name, x.Force)
	for _, a := range x.Advice {
		if a.Term != nil {
			r.term(a.Term)
		}
	}
}

// alias defines a name for a node's form.
func (r *row) alias(name string, node int) form {
	if r.opposite && !r.limb[node] {
		return r.form(node)
	}
	if r.names[node] == "" {
		r.names[node] = name
	}
	if _, made := r.forms[node]; r.names[node] == name && (!made || r.defines(r.prefix+name)) {
		return r.form(node)
	}
	f := r.define(r.prefix+name, r.form(node))
	r.forms[node] = f
	return f
}

// defines reports whether a form is defined by a name.
func (w *writer) defines(name string) bool {
	_, ok := w.bodies[name]
	_, part := w.bodies[name+"=true"]
	return ok || part
}

// without gives what makes rules in force if one were left out: those that come out otherwise.
func (r *row) without(rule int) map[int]form {
	out := map[int]form{rule: known(no())}
	for _, i := range r.Down {
		x := r.Rules[i]
		if i == rule || !slices.ContainsFunc(x.Overriders, func(o int) bool { _, ok := out[o]; return ok }) {
			continue
		}
		f := r.own[i]
		for _, o := range x.Overriders {
			g := r.force[o]
			if h, ok := out[o]; ok {
				g = h
			}
			f = neither(form{and(f.yes, g.no), or(f.no, g.yes)}, f, g)
		}
		out[i] = r.define(r.prefix+"without/in_force."+x.Name, f)
	}
	return out
}

// reads says of each node and term whether it reads a limb.
func (w *writer) reads() {
	w.limb, w.limbTerm = make([]bool, len(w.Nodes)), make([]bool, len(w.Terms))
	for i, t := range w.Terms { // parts come before; nodes of conditions within are looked up below
		w.limbTerm[i] = w.termReads(t)
	}
	for i, n := range w.Nodes {
		switch n.Op {
		case cell.Ask:
			w.limb[i] = w.Axes[w.Questions[n.X].Axis].Limb
		case cell.Recorded:
			w.limb[i] = w.Axes[n.X].Limb
		case cell.Opaque:
			w.limb[i] = w.Unclear[n.X].Limb
		case cell.Not:
			w.limb[i] = w.limb[n.A]
		case cell.And, cell.Or:
			w.limb[i] = w.limb[n.A] || w.limb[n.B]
		case cell.If:
			w.limb[i] = w.limb[n.A] || w.limb[n.B] || w.limb[n.C]
		}
	}
}

// termReads reports whether a term reads a limb. What hangs on a condition is taken to do so: no harm is done where a
// term that reads none is defined twice.
func (w *writer) termReads(t *cell.Term) bool {
	switch t.Op {
	case cell.Read:
		return w.Axes[t.Axis].Limb
	case cell.Choose, cell.Holds:
		return true
	case cell.Asked:
		return w.Unclear[int(t.X)].Limb
	}
	return slices.ContainsFunc(append([]*cell.Term{t.A, t.B}, t.Of...), func(x *cell.Term) bool { return x != nil && w.limbTerm[x.Index] })
}
