package whatif

import (
	"slices"

	"crus/engine/cell"
)

// reader gathers the measures' axes that nodes and terms read.
type reader struct {
	w            *Advisor
	in, recorded []bool // of each measure's axis: it is read, or it is asked whether it is recorded
	numbers      []bool // of each measure's axis: its value is worked with, more than that questions are asked of it
	nodes        map[int]bool
	terms        map[*cell.Term]bool
}

func (w *Advisor) reader() *reader {
	return &reader{w, make([]bool, w.Measures), make([]bool, w.Measures), make([]bool, w.Measures), map[int]bool{}, map[*cell.Term]bool{}}
}

func (r *reader) node(n int) {
	if r.nodes[n] {
		return
	}
	r.nodes[n] = true
	switch x := r.w.Nodes[n]; x.Op {
	case cell.Ask:
		if a := r.w.Axes[r.w.Questions[x.X].Axis]; a.Measure != nil {
			r.in[a.Index] = true
		} else {
			r.term(a.Term)
		}
	case cell.Recorded:
		r.in[x.X], r.recorded[x.X] = true, true
	case cell.Opaque:
		r.unclear(x.X)
	case cell.Not:
		r.node(x.A)
	case cell.And, cell.Or:
		r.node(x.A)
		r.node(x.B)
	case cell.If:
		r.node(x.A)
		r.node(x.B)
		r.node(x.C)
	}
}

func (r *reader) unclear(i int) {
	for _, axis := range r.w.Unclear[i].Inputs {
		r.in[axis], r.numbers[axis] = true, true
	}
}

func (r *reader) term(t *cell.Term) {
	if t == nil || r.terms[t] {
		return
	}
	r.terms[t] = true
	switch t.Op {
	case cell.Read:
		r.in[t.Axis], r.numbers[t.Axis] = true, true
	case cell.Choose, cell.Holds:
		r.node(t.Node)
	case cell.Asked:
		r.unclear(int(t.X))
	}
	r.term(t.A)
	r.term(t.B)
	for _, x := range t.Of {
		r.term(x)
	}
}

// marked lists the places that are marked.
func marked(list []bool) (out []int) {
	for i, yes := range list {
		if yes {
			out = append(out, i)
		}
	}
	return out
}

// termInputs lists the measures' axes that a term reads.
func (w *Advisor) termInputs(t *cell.Term) []int {
	r := w.reader()
	r.term(t)
	return marked(r.in)
}

// bearing is what a measure's axis bears on.
type bearing struct {
	nodes    []int  // in their order
	topics   []bool // by index
	formulas bool   // a formula that is compared reads it
	numbers  []bool // of each topic: a number is worked out from it
}

// bear finds out what each measure bears on.
func (w *Advisor) bear() {
	r := &reaches{w: w, nodes: make([][]bool, len(w.Nodes)), terms: map[*cell.Term][]bool{}}
	for n := range w.Nodes {
		r.node(n)
	}
	w.bears = make([]bearing, w.Measures)
	for a := range w.bears {
		b := bearing{topics: make([]bool, len(w.Topics)), numbers: make([]bool, len(w.Topics))}
		for n := range w.Nodes {
			if r.nodes[n][a] {
				b.nodes = append(b.nodes, n)
			}
		}
		for _, in := range w.inputs[w.Measures:] {
			b.formulas = b.formulas || slices.Contains(in, a)
		}
		for i, t := range w.Topics {
			for _, s := range t.Says {
				b.topics[i] = b.topics[i] || r.nodes[s.Rule.Force][a]
				if s.Advice.Term != nil && !s.Advice.Fixed && r.term(s.Advice.Term)[a] {
					b.topics[i], b.numbers[i] = true, true
				}
			}
		}
		w.bears[a] = b
	}
}

// reaches gathers the measures' axes that each node and term reads.
type reaches struct {
	w     *Advisor
	nodes [][]bool
	terms map[*cell.Term][]bool
}

func (r *reaches) node(n int) []bool {
	if r.nodes[n] != nil {
		return r.nodes[n]
	}
	out := make([]bool, r.w.Measures)
	switch x := r.w.Nodes[n]; x.Op {
	case cell.Ask:
		if a := r.w.Axes[r.w.Questions[x.X].Axis]; a.Measure != nil {
			out[a.Index] = true
		} else {
			join(out, r.term(a.Term))
		}
	case cell.Recorded:
		out[x.X] = true
	case cell.Opaque:
		for _, i := range r.w.Unclear[x.X].Inputs {
			out[i] = true
		}
	case cell.Not:
		join(out, r.node(x.A))
	case cell.And, cell.Or:
		join(out, r.node(x.A))
		join(out, r.node(x.B))
	case cell.If:
		join(out, r.node(x.A))
		join(out, r.node(x.B))
		join(out, r.node(x.C))
	}
	r.nodes[n] = out
	return out
}

func (r *reaches) term(t *cell.Term) []bool {
	if out, ok := r.terms[t]; ok {
		return out
	}
	out := make([]bool, r.w.Measures)
	switch t.Op {
	case cell.Read:
		out[t.Axis] = true
	case cell.Choose, cell.Holds:
		join(out, r.node(t.Node))
	case cell.Asked:
		for _, i := range r.w.Unclear[int(t.X)].Inputs {
			out[i] = true
		}
	}
	for _, x := range append([]*cell.Term{t.A, t.B}, t.Of...) {
		if x != nil {
			join(out, r.term(x))
		}
	}
	r.terms[t] = out
	return out
}

func join(out, more []bool) {
	for i, yes := range more {
		out[i] = out[i] || yes
	}
}
