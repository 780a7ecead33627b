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
	inputs   [][]int   // of each axis: the measures' axes that a formula reads
	recorded [][]int   // of each axis: those of which a formula asks whether they are recorded
	numbers  [][]bool  // of each axis of a formula: whether it works with the value of each measure's axis
	opaque   [][]int   // of each unclear part: the nodes that work it out
	plans    [][]int   // of each axis: the nodes that work it out
	asking   []bool    // of each node: it asks whether something is recorded
	bears    []bearing // of each measure's axis
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
		asking: make([]bool, len(s.Nodes)), opaque: make([][]int, len(s.Unclear)), rank: map[*vocab.Measure]int{}}
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
		if x.Op == cell.Opaque {
			w.opaque[x.X] = s.Plan(n)
		}
		if x.Op == cell.Ask {
			w.asking[n] = len(w.recorded[s.Questions[x.X].Axis]) > 0
			if i := s.Questions[x.X].Axis; w.plans[i] == nil {
				w.plans[i] = s.Plan(n)
			}
		}
	}
	w.bear()
	return w
}
