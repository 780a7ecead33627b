package replay

import "crus/engine/cell"

// A trial goes through all completions of one row, or of the two rows of a case, for one result: 64 completions to a
// word. Of the rules that bear on the result, only those that something missing can change are worked out again.

// The bounds are those within which package reason tries everything.
const (
	maxCompletions = 1 << 16
	maxFree        = 12 // rules that are left free to hold or not, where completions can't be tried
	trialWords     = 16
)

// ownTrial works out the own condition of a rule, or a caution, for completed rows.
type ownTrial struct {
	reach   *reach
	c       *circuit
	inputs  []axisBit
	unclear []int   // inputs after these
	parts   [][]int // of each measure of the reach: the part of each of the measure's values; parts are told apart by the condition
	count   []int   // parts of each
}

// axisBit is a bit of the number of the cell of an axis; in which slots of the base circuit it stands, and whether the axis
// is known.
type axisBit struct {
	axis, bit   int
	slot, known int32
}

// trial works out the verdict on a choice from the own truths of the rules that bear on it.
type trial struct {
	c      *circuit
	inputs []bearing
	slots  []bearingSlots
	out    subjectResults
	differ []int // of these, those in which two verdicts differ where they advise differently
}

// bearing is a rule that bears on a choice, as the first or the second row of a case has it.
type bearing struct{ row, rule int }

// bearingSlots are the slots of the base circuit that say whether a rule is free, and whether it holds.
type bearingSlots struct {
	free, holds int32
	limb        bool
}

func (p *Program) makeTrials() {
	s := p.space
	for _, a := range s.Axes[s.Measures:] {
		p.terms = append(p.terms, termReach(s, a.Term))
	}
	p.unclear = make([]int, len(s.Unclear))
	asked := []int{cell.True}
	for i, x := range s.Nodes {
		switch {
		case x.Op == cell.Opaque:
			p.unclear[x.X] = i
			asked = append(asked, i)
		case x.Op == cell.Ask && s.Questions[x.X].Axis >= s.Measures:
			asked = append(asked, i)
		}
	}
	p.formulas = s.Plan(asked...)
	for _, r := range s.Rules {
		p.tries, p.ruleAsks = append(p.tries, p.makeOwn(r.Own)), append(p.ruleAsks, asksOf(s, r))
	}
	for i := range p.space.Cautions {
		p.tries = append(p.tries, p.makeOwn(p.space.Cautions[i].Node))
	}
	for i := range p.tries {
		p.plans = append(p.plans, s.Plan(p.ownNode(i)))
	}
	for _, x := range p.subjects {
		if x.topic == nil {
			x.plan = s.Plan(x.caution.Node)
			continue
		}
		nodes, whole := []int{cell.True}, true // whole: the plan can be told
		for _, r := range x.bears {
			nodes = append(nodes, s.Rules[r].Own, s.Rules[r].Force)
		}
		x.trial = p.makeTrial(x, 1)
		if x.once {
			x.trialPair = p.makeTrial(x, 2)
		}
		for _, say := range x.topic.Says {
			if t := say.Advice.Term; t != nil && !say.Advice.Fixed {
				f := formula{say: say, in: termReach(s, t), asks: asks(s, say.Advice.Formula)}
				if !f.in.unclear {
					f.plan = s.Plan(append([]int{cell.True}, f.in.nodes...)...)
				}
				x.formulas = append(x.formulas, f)
				nodes, whole = append(nodes, f.in.nodes...), whole && !f.in.unclear
			}
		}
		if whole {
			x.plan = s.Plan(nodes...)
		}
	}
}

func (p *Program) makeOwn(node int) *ownTrial {
	t := &ownTrial{reach: reachOf(p.space, node)}
	b := newBuilder()
	g := &given{bits: make([][]ref, len(p.space.Axes)), unclear: make([]ref, len(p.space.Unclear))}
	for _, axis := range append(t.reach.measures[:len(t.reach.measures):len(t.reach.measures)], t.reach.formulas...) {
		for bit := range width(p.space.Axes[axis]) {
			g.bits[axis] = append(g.bits[axis], b.input())
			t.inputs = append(t.inputs, axisBit{axis, bit, p.inputs.bits[axis][bit], p.inputs.known[axis]})
		}
	}
	for _, u := range t.reach.unclear {
		g.unclear[u] = b.input()
		t.unclear = append(t.unclear, u)
	}
	for k, axis := range t.reach.measures {
		parts := make([]int, len(p.values[axis]))
		seen := map[string]int{}
		for v, c := range p.cells[axis] {
			key := ""
			for _, q := range t.reach.asked[k] {
				key += map[bool]string{false: "n", true: "y"}[p.space.Questions[q].Yes[c]]
			}
			if _, ok := seen[key]; !ok {
				seen[key] = len(seen)
			}
			parts[v] = seen[key]
		}
		t.parts, t.count = append(t.parts, parts), append(t.count, len(seen))
	}
	t.c = b.finish([]ref{b.crisp(p.space, g).of(node)})
	return t
}

func (p *Program) makeTrial(x *subject, rows int) *trial {
	t := &trial{}
	b := newBuilder()
	force := make([]map[int]ref, rows)
	for row := range rows {
		force[row] = map[int]ref{}
		for _, i := range x.bears {
			r := p.space.Rules[i]
			if row == 1 && !r.Limb { // the same on both rows
				force[1][i] = force[0][i]
				continue
			}
			t.inputs = append(t.inputs, bearing{row, i})
			t.slots = append(t.slots, bearingSlots{p.base.out[p.rules[i].free], p.base.out[p.rules[i].holds], r.Limb})
			f := b.input()
			for _, o := range r.Overriders {
				f = b.and(f, force[row][o].not())
			}
			force[row][i] = f
		}
	}
	var fired []ref
	for _, say := range x.topic.Says {
		f := never
		for row := range rows {
			f = b.or(f, force[row][say.Rule.Index])
		}
		fired = append(fired, f)
	}
	var out results
	t.out = out.topic(b, x, fired)
	t.differ = t.out.planes()
	t.c = b.finish(out.list)
	return t
}

// variable is something missing that is completed: a measure as the two rows of a case have it.
type variable struct {
	key    int
	axis   [2]int // as either row has it; -1 where it doesn't look at it
	values int
	part   []int // of each value: the part that it belongs to
	parts  int
	pick   []int // a value of each part
	every  int   // how many completions its digit stays the same
}

// freed is a rule that completing may change: input of the trial, and the row.
type freed struct {
	input, row int
	own        *ownTrial
}

// search is the state of a trial. It is used again for the next one.
type search struct {
	vars   []variable
	free   []freed
	fixed  []bool // of each input of the trial: whether the rule holds
	total  int
	own    planes       // of the circuits of conditions
	result planes       // of the circuit of the choice
	room   [2][2]planes // what these two are, where one word is enough and where it is not
}

// newSearch makes room for any trial of a program.
func (p *Program) newSearch() *search {
	most, largest := 1, 1
	for _, t := range p.tries {
		if t.c != nil {
			most = max(most, t.c.slots)
		}
	}
	for _, x := range p.subjects {
		for _, t := range []*trial{x.trial, x.trialPair} {
			if t != nil {
				largest = max(largest, t.c.slots)
			}
		}
	}
	s := &search{}
	for i, words := range []int{1, trialWords} {
		s.room[i] = [2]planes{{words, make([]uint64, most*words)}, {words, make([]uint64, largest*words)}}
	}
	return s
}

// make makes ready for so many completions.
func (s *search) make(total int) {
	s.total = total
	i := 0
	if total > 64 {
		i = 1
	}
	s.own, s.result = s.room[i][0], s.room[i][1]
}

// variable finds the variable of a measure's axis as a row has it, or adds it.
func (s *search) variable(p *Program, axis, row int) *variable {
	key := p.keyOf(axis, row)
	for i := range s.vars {
		if s.vars[i].key == key {
			s.vars[i].axis[row] = axis
			return &s.vars[i]
		}
	}
	if len(s.vars) < cap(s.vars) {
		s.vars = s.vars[:len(s.vars)+1]
	} else {
		s.vars = append(s.vars, variable{})
	}
	v := &s.vars[len(s.vars)-1]
	v.key, v.axis, v.values, v.parts = key, [2]int{-1, -1}, len(p.values[axis]), 1
	v.axis[row] = axis
	v.part = v.part[:0]
	for range v.values {
		v.part = append(v.part, 0)
	}
	return v
}

// at finds the variable of a measure's axis as a row has it; nil where there is none.
func (s *search) at(axis, row int) *variable {
	for i := range s.vars {
		if s.vars[i].axis[row] == axis {
			return &s.vars[i]
		}
	}
	return nil
}

// keyOf names the measure behind an axis as the first or the second row of a case has it: what is limb.x to one is other.x
// to the other.
func (p *Program) keyOf(axis, row int) int {
	if row == 0 || !p.space.Axes[axis].Limb {
		return axis
	}
	if twin := p.twins[axis]; twin >= 0 {
		return twin
	}
	return axis + len(p.space.Axes)
}

// divide tells apart what other parts tell apart.
func (v *variable) divide(parts []int, count int) {
	if count == 1 {
		return
	}
	var first [64]int // the first value of each new part
	n := 0
	old := v.pick[:0]
	old = append(old, v.part...)
	v.pick = old
next:
	for k := range v.part {
		for i := range min(n, len(first)) {
			if f := first[i]; old[f] == old[k] && parts[f] == parts[k] {
				v.part[k] = i
				continue next
			}
		}
		if n < len(first) {
			first[n] = k
		}
		v.part[k] = n
		n++
	}
	v.parts = n
}

// choose picks a value of each part.
func (v *variable) choose() {
	v.pick = v.pick[:0]
	for k, part := range v.part {
		if part == len(v.pick) {
			v.pick = append(v.pick, k)
		}
	}
}

// number gives every variable its digit, and counts the completions; false where there are too many.
func (s *search) number() bool {
	total := 1
	for i := range s.vars {
		v := &s.vars[i]
		v.choose()
		v.every = total
		if total *= len(v.pick); total > maxCompletions {
			return false
		}
	}
	s.make(total)
	return true
}

// digit writes a bit of the cell that a variable has in each of some completions from a multiple of 64 on.
func (v *variable) digit(cells []int, bit, from, count int, to []uint64) {
	clear(to)
	at := from / v.every % len(v.pick)
	left := v.every - from%v.every // how long the digit stays
	for i := 0; i < count; {
		n := min(left, count-i)
		if cells[v.pick[at]]>>bit&1 == 1 {
			set(to, i, n)
		}
		i += n
		left = v.every
		if at++; at == len(v.pick) {
			at = 0
		}
	}
}

// set sets n bits from one on.
func set(to []uint64, from, n int) {
	for n > 0 {
		k := min(n, 64-from%64)
		to[from/64] |= (^uint64(0) >> (64 - k)) << (from % 64)
		from, n = from+k, n-k
	}
}
