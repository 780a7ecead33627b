package replay

import (
	"math"

	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/vocab"
)

// The slow way works a result out row by row with the cells' own interpreter: where a number is worked out from measures, and
// where completing the row changes what a formula or an unclear part sees.

// formula is a number that is advised and worked out from measures.
type formula struct {
	say  cell.Say
	in   *termInputs
	asks []int // the measures' axes of which it asks whether they are recorded
}

// slowRow is a row, or the two rows of a case, under the slow way.
type slowRow struct {
	*worker
	x      *subject
	row    int
	n      int // rows
	free   []bearing
	vars   []slowVariable
	asked  bool
	unsure bool // completing the row may change a number that is worked out
}

// slowVariable is something missing, with the values that are put in.
type slowVariable struct {
	key    int
	axis   [2]int
	values []float64
}

// slowly settles a subject on one row.
func (w *worker) slowly(x *subject, b *Block, row int) {
	s := &slowRow{worker: w, x: x, row: row, n: 1}
	if x.once && bit(b.Pair, row) {
		s.n = 2
	}
	for i := range s.n {
		b.Row(&w.rows[i], row+i)
		w.p.space.Work(w.cases[i], w.rows[i])
	}
	if x.topic != nil {
		w.result.Choices[x.index].set(row, w.p.space.Decide(x.index, w.cases[:s.n]...))
	}
	if e, open := s.settle(b); open {
		w.conclude(x, row, e, s.asked)
	}
}

// settle gives what all completions give; false where nothing that is missing bears on the subject.
func (s *slowRow) settle(b *Block) (ended, bool) {
	s.asked = s.x.asked >= 0 && bit(s.of(s.x.asked), s.row)
	countable := true
	undated := bit(b.Undated, s.row)
	if s.x.topic == nil {
		node := s.x.caution.Node
		if !s.lookAt(s.p.tries[len(s.p.rules)+s.x.index-len(s.p.space.Topics)].reach, s.x.asks, 0, undated) {
			return ended{several: true}, true
		}
		return s.every(node), true
	}
	for i := range s.n {
		for _, r := range s.x.bears {
			rule := s.p.space.Rules[r]
			if i == 1 && !rule.Limb || rule.Limb && s.cases[i].Alone || !bit(s.of(s.p.rules[r].free), s.row+i) {
				continue
			}
			s.free = append(s.free, bearing{i, r})
			if !s.lookAt(s.p.tries[r].reach, s.p.ruleAsks[r], i, undated) {
				countable = false
			}
		}
		for k := range s.x.formulas {
			f := &s.x.formulas[k]
			if r := f.say.Rule; i == 1 && !r.Limb || r.Limb && s.cases[i].Alone || bit(s.of(s.p.rules[r.Index].out), s.row+i) {
				continue
			}
			asks := s.lacksAny(f.asks, i)
			if !asks && !math.IsNaN(s.cases[i].Of(f.say.Advice.Term)) {
				continue
			}
			s.unsure, s.asked = true, s.asked || asks
			countable = s.addTerm(f.in, i, undated) && countable
		}
	}
	if len(s.free) == 0 && !s.unsure {
		return ended{}, false
	}
	if countable {
		if e := s.every(-1); e.verdict.Status != "" || e.several {
			return e, true
		}
	}
	return s.leave(b), true
}

func (s *slowRow) lacksAny(axes []int, row int) bool {
	for _, a := range axes {
		if !s.rows[row].Recorded[a] {
			return true
		}
	}
	return false
}

// lookAt adds what is missing of what a condition looks at; false where its values can't be counted up.
func (s *slowRow) lookAt(r *reach, asks []int, row int, undated bool) bool {
	asked := s.lacksAny(asks, row)
	ok := true
	for _, a := range r.measures {
		ok = s.add(a, row, false, undated) && ok
	}
	for _, f := range r.formulas {
		if asked || math.IsNaN(s.cases[row].Of(s.p.space.Axes[f].Term)) {
			ok = s.addTerm(s.p.terms[f-s.p.space.Measures], row, undated) && ok
		}
	}
	for _, u := range r.unclear {
		for _, in := range s.p.space.Unclear[u].Inputs {
			ok = s.add(in, row, true, undated) && ok
		}
	}
	return ok
}

// addTerm adds what is missing of what a term looks at; false where its values can't be counted up.
func (s *slowRow) addTerm(in *termInputs, row int, undated bool) bool {
	ok := true
	for _, a := range in.read {
		ok = s.add(a, row, true, undated) && ok
	}
	for _, a := range in.asked {
		ok = s.add(a, row, false, undated) && ok
	}
	return ok
}

// add adds a measure if it is missing; false where its values can't be counted up: each of them matters and there are
// too many, or it is a date and the day of the assessment is not known.
func (s *slowRow) add(axis, row int, fine, undated bool) bool {
	if !math.IsNaN(s.rows[row].Value[axis]) {
		return true
	}
	a := s.p.space.Axes[axis]
	if a.Measure.Kind == vocab.Date && (undated || s.rows[row].Recorded[axis]) {
		return false
	}
	values := s.p.values[axis]
	if fine {
		lo, hi := a.Range()
		if a.Step() != 1 || hi-lo > 64 {
			return false
		}
		values = nil
		for x := lo; x <= hi; x++ {
			values = append(values, x)
		}
	}
	key := s.p.keyOf(axis, row)
	for i := range s.vars {
		if v := &s.vars[i]; v.key == key {
			v.axis[row] = axis
			if fine {
				v.values = values
			}
			return true
		}
	}
	v := slowVariable{key: key, axis: [2]int{-1, -1}, values: values}
	v.axis[row] = axis
	s.vars = append(s.vars, v)
	return true
}

// every goes through all completions. It gives nothing where there are too many, or where something can't be worked out
// in one of them.
func (s *slowRow) every(node int) ended {
	total := 1
	for _, v := range s.vars {
		if total *= len(v.values); total > maxCompletions || total == 0 {
			return ended{several: node >= 0}
		}
	}
	plan := s.x.plan
	var full [2]cell.Row
	for i := range s.n {
		full[i] = s.rows[i].Clone()
		for axis := range full[i].Recorded { // completed, everything is recorded
			full[i].Recorded[axis] = true
		}
	}
	at := make([]int, len(s.vars))
	var first reason.Verdict
	for k := range total {
		for d, v := range s.vars {
			for i := range s.n {
				if axis := v.axis[i]; axis >= 0 {
					full[i].Value[axis] = v.values[at[d]]
				}
			}
		}
		for i := range s.n {
			s.p.space.WorkOn(s.cases[i], full[i], plan)
		}
		v, ok := s.verdictOn(node)
		if !ok {
			return ended{several: node >= 0}
		}
		if k == 0 {
			first = v
		} else if !v.Same(first) {
			return ended{several: true}
		}
		for d := len(at) - 1; d >= 0; d-- {
			if at[d]++; at[d] < len(s.vars[d].values) {
				break
			}
			at[d] = 0
		}
	}
	return ended{verdict: first}
}

// verdictOn gives the verdict of one completion; false where something that bears on it can't be worked out.
func (s *slowRow) verdictOn(node int) (reason.Verdict, bool) {
	if node >= 0 {
		switch s.cases[0].Truth[node] {
		case cell.Yes:
			return reason.Verdict{Status: reason.Fired}, true
		case cell.No:
			return reason.Verdict{Status: reason.DidNotFire}, true
		}
		return reason.Verdict{}, false
	}
	for _, f := range s.free {
		if s.cases[f.row].Truth[s.p.space.Rules[f.rule].Own] == cell.Unknown {
			return reason.Verdict{}, false
		}
	}
	if s.unsure {
		for i := range s.n {
			for _, f := range s.x.formulas {
				if r := f.say.Rule; r.Limb && s.cases[i].Alone || bit(s.of(s.p.rules[r.Index].out), s.row+i) {
					continue
				}
				if math.IsNaN(s.cases[i].Of(f.say.Advice.Term)) {
					return reason.Verdict{}, false
				}
			}
		}
	}
	return s.p.space.Decide(s.x.index, s.cases[:s.n]...), true
}

// leave leaves the rules that completing may change free to hold or not.
func (s *slowRow) leave(b *Block) ended {
	switch {
	case s.unsure || len(s.free) > maxFree: // a number that is not known can be any
		return ended{several: true}
	case s.x.computed < 0 || !bit(s.of(s.x.computed), s.row):
		t := s.x.trial
		if s.n == 2 {
			t = s.x.trialPair
		}
		s.loosen(s.x, t, b, s.row)
		return s.leaveFree(s.x, t)
	}
	for i := range s.n { // every may have left a completion there
		s.p.space.Work(s.cases[i], s.rows[i])
	}
	var first reason.Verdict
	for bits := range 1 << len(s.free) {
		v := s.decided(bits)
		if bits == 0 {
			first = v
		} else if !v.Same(first) {
			return ended{several: true}
		}
	}
	return ended{verdict: first}
}

// decided gives the verdict where of the free rules those hold whose bits are set.
func (s *slowRow) decided(bits int) reason.Verdict {
	var force [2]map[int]bool
	for i := range s.n {
		force[i] = map[int]bool{}
		for _, r := range s.x.bears {
			rule := s.p.space.Rules[r]
			if i == 1 && !rule.Limb {
				force[1][r] = force[0][r]
				continue
			}
			own := bit(s.of(s.p.rules[r].holds), s.row+i) && !(rule.Limb && s.cases[i].Alone)
			for k, f := range s.free {
				if f.row == i && f.rule == r {
					own = bits>>k&1 == 1
				}
			}
			for _, o := range rule.Overriders {
				own = own && !force[i][o]
			}
			force[i][r] = own
		}
	}
	var said []reason.Said
	for _, say := range s.x.topic.Says {
		for i := range s.n {
			if !force[i][say.Rule.Index] || i == 1 && (say.Advice.Fixed || say.Advice.Term == nil || !say.Rule.Limb) && force[0][say.Rule.Index] {
				continue
			}
			at := say.Advice.At
			if say.Advice.Term != nil && !say.Advice.Fixed {
				x := s.cases[i].Of(say.Advice.Term)
				if math.IsNaN(x) {
					continue
				}
				at = reason.InUnit(x, s.x.topic.Choice)
			}
			said = append(said, reason.Said{Rule: say.Rule.Index, Advice: say.Place, Value: at})
		}
	}
	return s.p.space.Engine.Decide(s.x.topic.Choice, said)
}
