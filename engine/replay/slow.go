package replay

import (
	"math"

	"crus/engine/cell"
	"crus/engine/vocab"
)

// The slow way settles a result on a row where a number is worked out from measures, or where completing the row changes
// what a formula or an unclear part sees. Like package reason it works each rule and number out for every completion of
// what that one looks at, takes completions together that make no difference, and then goes through those of the whole.

// maxTable is how many completions of what one rule or number looks at are tried.
const maxTable = 4096

// formula is a number that is advised and worked out from measures.
type formula struct {
	say  cell.Say
	in   *termInputs
	asks []int // the measures' axes of which it asks whether they are recorded
	plan []int // the nodes that it rests on; nil: all
}

// slowRow is a row, or the two rows of a case, under the slow way.
type slowRow struct {
	*worker
	x       *subject
	row     int
	n       int // rows
	undated bool
	asked   bool      // something asks what is recorded
	vars    []slowVar // what is missing and looked at
	tables  []*table  // of the rules that completing may change, then of the numbers
	rules   int       // how many of the tables are of rules
	lost    bool      // something can't be counted up, or not be worked out in some completion
	full    [2]cell.Row
	now     [2][]float64 // of each row: the number of each thing that is said of a choice, as things stand
}

// slowVar is something missing, with the values that are put in and the classes of those that make no difference.
type slowVar struct {
	key    int
	axis   [2]int
	fine   bool // every value matters
	values []float64
	class  []int // of each value
	pick   []int // a value of each class
	every  int   // how many completions it stays the same
}

// table holds what a rule's own condition, or a number, gives for each completion of what it looks at.
type table struct {
	bearing
	formula *formula // nil of a rule
	looks   []looked
	holds   []bool
	number  []float64
}

// looked is a variable as a table looks at it: values that it does not tell apart are one part.
type looked struct {
	v     int
	part  []int
	first []int // a value of each part
}

// slowly settles a subject on one row.
func (w *worker) slowly(x *subject, b *Block, row int) {
	s := &slowRow{worker: w, x: x, row: row, n: 1, undated: bit(b.Undated, row), asked: x.asked >= 0 && bit(w.of(x.asked), row)}
	if x.once && bit(b.Pair, row) {
		s.n = 2
	}
	for i := range s.n {
		b.Row(&w.rows[i], row+i)
		w.p.space.WorkOn(w.cases[i], w.rows[i], x.plan)
		s.full[i] = w.rows[i].Clone()
		for axis := range s.full[i].Recorded { // completed, everything is recorded
			s.full[i].Recorded[axis] = true
		}
	}
	if x.topic != nil {
		w.result.Choices[x.index].set(row, w.p.space.Decide(x.index, w.cases[:s.n]...))
		s.numbers()
	}
	s.find(b)
	switch {
	case len(s.tables) == 0 && !s.lost: // nothing that is missing bears on it
	case s.complete():
		w.conclude(x, row, s.every(b), s.asked)
	default:
		w.conclude(x, row, s.leave(b), s.asked)
	}
}

// numbers notes the numbers that are worked out, as things stand.
func (s *slowRow) numbers() {
	if len(s.x.formulas) == 0 {
		return
	}
	for i := range s.n {
		s.now[i] = make([]float64, len(s.x.topic.Says))
		for k, say := range s.x.topic.Says {
			if t := say.Advice.Term; t != nil && !say.Advice.Fixed {
				s.now[i][k] = s.cases[i].Of(t)
			}
		}
	}
}

// find lists the rules and numbers that completing may change, and what they look at.
func (s *slowRow) find(b *Block) {
	if s.x.topic == nil {
		s.rule(bearing{0, len(s.p.rules) + s.x.index - len(s.p.space.Topics)}, s.x.asks)
		s.rules = 1
		return
	}
	for i := range s.n {
		for _, r := range s.x.bears {
			if s.here(s.p.space.Rules[r], i) && bit(s.of(s.p.rules[r].free), s.row+i) {
				s.rule(bearing{i, r}, s.p.ruleAsks[r])
			}
		}
	}
	s.rules = len(s.tables)
	for i := range s.n {
		for k := range s.x.formulas {
			f := &s.x.formulas[k]
			if r := f.say.Rule; !s.here(r, i) || bit(s.of(s.p.rules[r.Index].out), s.row+i) {
				continue
			}
			asks := s.lacksAny(f.asks, i)
			if asks || math.IsNaN(s.cases[i].Of(f.say.Advice.Term)) {
				s.asked = s.asked || asks
				s.term(f.in, i)
				s.tables = append(s.tables, &table{bearing: bearing{i, f.say.Rule.Index}, formula: f})
			}
		}
	}
}

// here reports whether a rule is looked at on a row: one that reads no limb is the same on both.
func (s *slowRow) here(r *cell.Rule, row int) bool {
	return (row == 0 || r.Limb) && !(r.Limb && s.cases[row].Alone)
}

func (s *slowRow) lacksAny(axes []int, row int) bool {
	for _, a := range axes {
		if !s.rows[row].Recorded[a] {
			return true
		}
	}
	return false
}

// rule adds a rule or caution, and what is missing of what it looks at.
func (s *slowRow) rule(at bearing, asks []int) {
	r := s.p.tries[at.rule].reach
	asked := s.lacksAny(asks, at.row)
	for _, a := range r.measures {
		s.look(a, at.row, false)
	}
	for _, f := range r.formulas {
		if asked || math.IsNaN(s.cases[at.row].Of(s.p.space.Axes[f].Term)) {
			s.term(s.p.terms[f-s.p.space.Measures], at.row)
		}
	}
	for _, u := range r.unclear {
		for _, a := range s.p.space.Unclear[u].Inputs {
			s.look(a, at.row, true)
		}
	}
	s.tables = append(s.tables, &table{bearing: at})
}

// term adds what is missing of what a term looks at.
func (s *slowRow) term(in *termInputs, row int) {
	for _, a := range in.read {
		s.look(a, row, true)
	}
	for _, a := range in.asked {
		s.look(a, row, false)
	}
}

// look adds a measure if it is missing. Where its values can't be counted up the row is lost: each of them matters and
// there are too many, or it is a date and the day of the assessment is not recorded either.
func (s *slowRow) look(axis, row int, fine bool) {
	if s.rows[row].Recorded[axis] { // or it is a date that can't be worked with, and stays one
		return
	}
	a := s.p.space.Axes[axis]
	lo, hi := a.Range()
	if a.Measure.Kind == vocab.Date && s.undated || fine && (a.Step() != 1 || hi-lo > 64) {
		s.lost = true
		return
	}
	key := s.p.keyOf(axis, row)
	at := -1
	for i := range s.vars {
		if s.vars[i].key == key {
			at = i
		}
	}
	if at < 0 {
		at = len(s.vars)
		s.vars = append(s.vars, slowVar{key: key, axis: [2]int{-1, -1}, values: s.p.values[axis]})
	}
	v := &s.vars[at]
	v.axis[row] = axis
	if fine && !v.fine {
		v.fine, v.values = true, nil
		for x := lo; x <= hi; x++ {
			v.values = append(v.values, x)
		}
	}
}

// complete fills the tables in and joins values that make no difference; false where not all completions can be tried.
func (s *slowRow) complete() bool {
	if s.lost {
		return false
	}
	for _, t := range s.tables {
		if !s.fill(t) {
			return false
		}
	}
	total := 1
	for i := range s.vars {
		s.join(i)
		s.vars[i].every = total
		if total *= len(s.vars[i].pick); total > maxCompletions {
			return false
		}
	}
	s.search.make(total)
	return true
}

// fill works a table out; false where there are too many completions, or one can't be worked out.
func (s *slowRow) fill(t *table) bool {
	n := 1
	for i := range s.vars {
		if part, first := s.parts(t, i); len(first) > 1 {
			t.looks = append(t.looks, looked{i, part, first})
			if n *= len(first); n > maxTable {
				return false
			}
		}
	}
	plan := s.p.plans[t.rule]
	if t.formula != nil {
		plan = t.formula.plan
	}
	row, c := s.full[t.row], s.cases[t.row]
	at := make([]int, len(t.looks))
	for range n {
		for i := range s.vars { // those that it doesn't look at too: any value of theirs will do
			if axis := s.vars[i].axis[t.row]; axis >= 0 {
				row.Value[axis] = s.vars[i].values[0]
			}
		}
		for d, l := range t.looks {
			row.Value[s.vars[l.v].axis[t.row]] = s.vars[l.v].values[l.first[at[d]]]
		}
		s.p.space.WorkOn(c, row, plan)
		if !s.note(t, c) {
			return false
		}
		for d := len(at) - 1; d >= 0; d-- {
			if at[d]++; at[d] < len(t.looks[d].first) {
				break
			}
			at[d] = 0
		}
	}
	return true
}

// note takes an entry of a table from a completed row; false where it can't be worked out.
func (s *slowRow) note(t *table, c *cell.Case) bool {
	if t.formula != nil {
		x := c.Of(t.formula.say.Advice.Term)
		t.number = append(t.number, x)
		return !math.IsNaN(x)
	}
	own := c.Truth[s.p.ownNode(t.rule)]
	t.holds = append(t.holds, own == cell.Yes)
	return own != cell.Unknown
}

// parts divides the values of a variable by what a table tells apart.
func (s *slowRow) parts(t *table, i int) (part, first []int) {
	v := &s.vars[i]
	axis := v.axis[t.row]
	part = make([]int, len(v.values))
	if axis < 0 {
		return part, []int{0}
	}
	whole, asked := s.p.tells(t, axis)
	a := s.p.space.Axes[axis]
	for k := range v.values {
		part[k] = -1
		for p, f := range first {
			if !whole && s.p.alike(asked, a.Cell(v.values[f]), a.Cell(v.values[k])) {
				part[k] = p
				break
			}
		}
		if part[k] < 0 {
			part[k] = len(first)
			first = append(first, k)
		}
	}
	return part, first
}

// tells says how a table looks at a measure's axis: at every value, or only by some questions.
func (p *Program) tells(t *table, axis int) (whole bool, asked []int) {
	has := func(list []int) bool {
		for _, a := range list {
			if a == axis {
				return true
			}
		}
		return false
	}
	term := func(in *termInputs) {
		whole = whole || has(in.read)
		for _, n := range in.nodes {
			asked = append(asked, p.questionsOf(n, axis)...)
		}
	}
	if t.formula != nil {
		term(t.formula.in)
		return whole, asked
	}
	r := p.tries[t.rule].reach
	asked = p.questionsOf(p.ownNode(t.rule), axis)
	for _, f := range r.formulas {
		term(p.terms[f-p.space.Measures])
	}
	for _, u := range r.unclear {
		whole = whole || has(p.space.Unclear[u].Inputs)
	}
	return whole, asked
}

// questionsOf lists what a node asks of a measure's axis.
func (p *Program) questionsOf(node, axis int) []int {
	r := reachOf(p.space, node)
	for k, a := range r.measures {
		if a == axis {
			return r.asked[k]
		}
	}
	return nil
}

// alike reports whether some questions are answered alike in two cells.
func (p *Program) alike(asked []int, a, b int) bool {
	for _, q := range asked {
		if yes := p.space.Questions[q].Yes; yes[a] != yes[b] {
			return false
		}
	}
	return true
}

// ownNode is the node of a rule's own condition, or of a caution, by its place among the trials.
func (p *Program) ownNode(i int) int {
	if i < len(p.rules) {
		return p.space.Rules[i].Own
	}
	return p.space.Cautions[i-len(p.rules)].Node
}
