package replay

import (
	"math"

	"crus/engine/cell"
)

// worker carries a program out on one block after the other.
type worker struct {
	p       *Program
	packers []*packer // of each axis
	base    planes
	later   planes
	column  [][]float64 // of each formula: its values
	result  *Result
	open    []*openRows // of each subject
	search  *search
	cases   [2]*cell.Case
	rows    [2]cell.Row
	given   packed
	pattern [64]uint64
	other   [][]uint64 // planes of another completion
	fired   [][]uint64 // planes of what rules say
}

// openRows are the rows of a subject that something missing bears on.
type openRows struct {
	soft  []uint64 // completions are cells of measures
	hard  []uint64 // they are more than that
	multi []uint64 // two completions differ
	first [][]uint64
	id    []int32 // of a choice with a number: the verdict of the first completion
}

func (p *Program) newWorker() *worker {
	w := &worker{p: p, base: p.base.memory(words), later: p.later.memory(words), result: p.newResult(), search: p.newSearch()}
	for i, a := range p.space.Axes {
		w.packers = append(w.packers, newPacker(a))
		if i >= p.space.Measures {
			w.column = append(w.column, make([]float64, BlockRows))
		}
	}
	for _, x := range p.subjects {
		o := &openRows{soft: make([]uint64, words), hard: make([]uint64, words), multi: make([]uint64, words)}
		for range x.differ {
			o.first = append(o.first, make([]uint64, words))
		}
		if x.topic != nil && x.topic.Numeric() {
			o.id = make([]int32, BlockRows)
		}
		w.open = append(w.open, o)
	}
	for i := range w.cases {
		w.cases[i] = p.space.NewCase()
		w.rows[i] = p.space.Blank()
	}
	return w
}

// planes lists the results in which two verdicts differ where they advise differently.
func (s *subjectResults) planes() []int {
	if s.fired != nil {
		return s.fired
	}
	if s.level != nil {
		return append(s.level[:len(s.level):len(s.level)], s.conflict)
	}
	return []int{s.yes}
}

// of gives a plane of the base circuit's results.
func (w *worker) of(result int) []uint64 { return w.base.at(w.p.base.out[result]) }

// work carries the program out on a block.
func (w *worker) work(b *Block) *Result {
	r := w.result
	r.Block, r.Words = b, (b.Rows+63)/64
	n := r.Words
	w.pack(b, n)
	w.p.base.wide(w.base, b.Pair)
	applies, not := w.of(w.p.applies[0]), w.of(w.p.applies[1])
	clear(r.In)
	clear(r.Doubt)
	for j := range n {
		r.In[j] = b.Used[j] &^ not[j]
		r.Doubt[j] = r.In[j] &^ applies[j]
	}
	for i, x := range w.p.rules {
		r.Rules[i] = RuleResult{w.of(x.fired)[:n], w.of(x.aside)[:n], w.of(x.pending)[:n]}
	}
	for _, x := range w.p.subjects {
		if x.topic != nil {
			w.choice(x, b, n)
		} else {
			w.caution(x, b, n)
		}
	}
	w.complete(b, n)
	w.doubt(n)
	return r
}

// pack fills in the inputs of the base circuit.
func (w *worker) pack(b *Block, n int) {
	s, in := w.p.space, &w.p.inputs
	if len(w.column) > 0 || len(s.Unclear) > 0 {
		w.formulas(b, n)
	}
	for i := range s.Axes {
		values := b.Value
		at := i
		if i >= s.Measures {
			values, at = w.column, i-s.Measures
		}
		known := w.base.at(in.known[i])
		for j := range n {
			w.packers[i].pack(values[at][64*j:min(64*j+64, b.Rows)], &w.given)
			for k, slot := range in.bits[i] {
				w.base.at(slot)[j] = w.given.bits[k]
			}
			known[j] = w.given.known
		}
		if i < s.Measures && w.p.base.used[in.recorded[i]] {
			from := b.Recorded[i]
			if from == nil {
				from = known
			}
			copy(w.base.at(in.recorded[i])[:n], from)
		}
		if i >= s.Measures {
			for k, slot := range in.bits[i] {
				copy(w.later.at(w.p.filled.bits[i][k])[:n], w.base.at(slot))
			}
		}
	}
	copy(w.base.at(in.alone)[:n], b.Alone)
	copy(w.base.at(in.undated)[:n], b.Undated)
	copy(w.later.at(w.p.filled.alone)[:n], b.Alone)
}

// formulas works out the columns of formulas and the answers of unclear parts, row by row.
func (w *worker) formulas(b *Block, n int) {
	s, c := w.p.space, w.cases[0]
	for i := range s.Unclear {
		clear(w.base.at(w.p.inputs.unclear[i])[:n])
		clear(w.base.at(w.p.inputs.clear[i])[:n])
	}
	for at := range b.Rows {
		if !bit(b.Used, at) {
			for _, col := range w.column {
				col[at] = math.NaN()
			}
			continue
		}
		b.Row(&w.rows[0], at)
		s.WorkOn(c, w.rows[0], w.p.formulas)
		for f, col := range w.column {
			col[at] = c.Of(s.Axes[s.Measures+f].Term)
		}
		for i, node := range w.p.unclear {
			if node == 0 { // of a formula
				continue
			}
			on := uint64(1) << (at % 64)
			switch c.Truth[node] {
			case cell.Yes:
				w.base.at(w.p.inputs.unclear[i])[at/64] |= on
				w.base.at(w.p.inputs.clear[i])[at/64] |= on
			case cell.No:
				w.base.at(w.p.inputs.clear[i])[at/64] |= on
			}
		}
	}
	for i := range s.Unclear {
		copy(w.later.at(w.p.filled.unclear[i])[:n], w.base.at(w.p.inputs.unclear[i]))
	}
}

// decidedOn gives the rows on which a subject has a result.
func (w *worker) decidedOn(x *subject, b *Block, to []uint64, n int) {
	clear(to)
	for j := range n {
		if x.once {
			to[j] = b.First[j] & w.result.In[j]
		} else {
			to[j] = b.Used[j] &^ b.Alone[j] & w.result.In[j]
		}
	}
}

// choice takes the verdict on a choice from the base circuit, and notes where something missing bears on it.
func (w *worker) choice(x *subject, b *Block, n int) {
	c, o := w.result.Choices[x.index], w.open[x.index]
	w.decidedOn(x, b, c.Rows, n)
	clear(c.Provisional)
	clear(c.Whatever)
	if x.topic.Numeric() {
		c.verdicts.begin()
		w.fired = w.fired[:0]
		for _, f := range x.now.fired {
			w.fired = append(w.fired, w.of(f))
		}
		for j := range n {
			patterns(w.fired, j, &w.pattern)
			for i, p := range w.pattern {
				c.number[64*j+i] = c.verdicts.of(p)
			}
		}
	} else {
		for i, l := range x.now.level {
			copy(c.level[i][:n], w.of(l))
		}
		copy(c.conflict[:n], w.of(x.now.conflict))
		copy(c.spoke[:n], w.of(x.now.spoke))
	}
	w.opened(x, o, c.Rows, n)
	if x.computed >= 0 {
		computed := w.of(x.computed)
		for j := range n {
			here := computed[j] & c.Rows[j]
			o.soft[j] &^= here
			o.hard[j] |= here
		}
	}
}

// opened notes where something missing bears on a subject.
func (w *worker) opened(x *subject, o *openRows, on []uint64, n int) {
	clear(o.soft)
	clear(o.hard)
	clear(o.multi)
	if x.open < 0 {
		return
	}
	open := w.of(x.open)
	for j := range n {
		o.soft[j] = open[j] & on[j]
	}
	if x.hard < 0 {
		return
	}
	hard := w.of(x.hard)
	for j := range n {
		o.hard[j] = o.soft[j] & hard[j]
		o.soft[j] &^= hard[j]
	}
}

func (w *worker) caution(x *subject, b *Block, n int) {
	c := w.result.Cautions[x.index-len(w.p.space.Topics)]
	w.decidedOn(x, b, c.Rows, n)
	clear(c.Provisional)
	yes, no := w.of(x.now.yes), w.of(x.now.no)
	for j := range n {
		c.Fired[j] = yes[j] & c.Rows[j]
		c.Pending[j] = c.Rows[j] &^ (yes[j] | no[j])
	}
	w.opened(x, w.open[x.index], c.Rows, n)
}

// doubt marks everything provisional where it is not known whether the ruleset applies.
func (w *worker) doubt(n int) {
	for j, d := range w.result.Doubt[:n] {
		if d == 0 {
			continue
		}
		for _, c := range w.result.Choices {
			c.Provisional[j] |= d & c.Rows[j]
		}
		for _, c := range w.result.Cautions {
			c.Provisional[j] |= d & (c.Fired[j] | c.Pending[j])
		}
	}
}
