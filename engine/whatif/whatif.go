package whatif

import (
	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/vocab"
)

// Advisor is a ruleset made ready to say what else an assessment could have brought. It is not changed after New and may
// be used by several goroutines.
type Advisor struct {
	*cell.Space
	inputs   [][]int  // of each axis: the measures' axes that a formula reads
	recorded [][]int  // of each axis: those of which a formula asks whether they are recorded
	numbers  [][]bool // of each axis of a formula: whether it works with the value of each measure's axis
	plans    [][]int  // of each axis: the nodes that work it out
	asking   []bool   // of each node: it asks whether something is recorded
	rank     map[*vocab.Measure]int
}

// New makes a ruleset ready. An error means that a checked condition can't be carried out, which is a fault of the
// program, not of the ruleset.
func New(e *reason.Engine) (*Advisor, error) {
	s, err := cell.New(e)
	if err != nil {
		return nil, err
	}
	return On(s), nil
}

// On is New for cells that are there already.
func On(s *cell.Space) *Advisor {
	w := &Advisor{Space: s, inputs: make([][]int, len(s.Axes)), recorded: make([][]int, len(s.Axes)), plans: make([][]int, len(s.Axes)), numbers: make([][]bool, len(s.Axes)),
		asking: make([]bool, len(s.Nodes)), rank: map[*vocab.Measure]int{}}
	for i, m := range s.Ruleset.Vocabulary.Measures {
		w.rank[m] = i
	}
	for i, a := range s.Axes[s.Measures:] {
		r := w.reader()
		r.term(a.Term)
		w.inputs[s.Measures+i], w.recorded[s.Measures+i], w.numbers[s.Measures+i] = marked(r.in), marked(r.recorded), r.numbers
	}
	for n, x := range s.Nodes {
		switch x.Op {
		case cell.Recorded:
			w.asking[n] = true
		case cell.Not:
			w.asking[n] = w.asking[x.A]
		case cell.And, cell.Or:
			w.asking[n] = w.asking[x.A] || w.asking[x.B]
		case cell.If:
			w.asking[n] = w.asking[x.A] || w.asking[x.B] || w.asking[x.C]
		}
		if x.Op == cell.Ask {
			w.asking[n] = len(w.recorded[s.Questions[x.X].Axis]) > 0
			if i := s.Questions[x.X].Axis; w.plans[i] == nil {
				w.plans[i] = s.Plan(n)
			}
		}
	}
	return w
}

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
