package replay

import (
	"crus/engine/reason"
)

// try goes through all completions of a row, for a subject that only looks at measures there.
func (w *worker) try(x *subject, b *Block, row int) ended {
	if x.topic == nil {
		return w.tryCaution(x, row)
	}
	t := x.trial
	if x.once && bit(b.Pair, row) {
		t = x.trialPair
	}
	s := w.search
	w.loosen(x, t, b, row)
	s.vars = s.vars[:0]
	for _, f := range s.free {
		w.look(f.own, row, f.row)
	}
	if v := w.known(x, row); v.Status != "" {
		return ended{verdict: v}
	}
	if !s.number() {
		return w.leaveFree(x, t)
	}
	return w.through(x, t, func(i, from int, to []uint64) {
		f := s.free[i]
		copy(to, w.own(f.own, row, f.row, from, len(to)))
	})
}

// known gives the verdict of all completions where those that were tried on all rows are all that there are.
func (w *worker) known(x *subject, row int) reason.Verdict {
	switch vars := w.search.vars; {
	case len(vars) > 1 || len(vars) == 1 && vars[0].values > len(w.p.rounds):
		return reason.Verdict{}
	}
	first := w.open[x.index].first
	word, at := row/64, row%64
	switch {
	case x.topic == nil && first[0][word]>>at&1 == 1:
		return reason.Verdict{Status: reason.Fired}
	case x.topic == nil:
		return reason.Verdict{Status: reason.DidNotFire}
	case x.topic.Numeric():
		return w.result.Choices[x.index].verdicts.verdicts[w.open[x.index].id[row]]
	}
	mask := patternAt(first[:len(x.topic.Options)], word, at)
	if mask == 0 && first[len(x.topic.Options)][word]>>at&1 == 0 { // no rule spoke
		return x.topic.Silent
	}
	return optionsVerdict(x.topic, mask, true)
}

// loosen finds the rules that completing may change, and what is fixed of the others.
func (w *worker) loosen(x *subject, t *trial, b *Block, row int) {
	s, p := w.search, w.p
	s.free, s.fixed = s.free[:0], s.fixed[:0]
	alone := bit(b.Alone, row)
	for i, in := range t.slots {
		at := row + t.inputs[i].row
		fixed := false
		switch {
		case alone && in.limb:
		case w.base.bit(in.free, at):
			s.free = append(s.free, freed{i, t.inputs[i].row, p.tries[t.inputs[i].rule]})
		default:
			fixed = w.base.bit(in.holds, at)
		}
		s.fixed = append(s.fixed, fixed)
	}
}

// look adds what is missing of what a condition looks at.
func (w *worker) look(own *ownTrial, first, row int) {
	for k, axis := range own.reach.measures {
		if own.count[k] > 1 && !w.base.bit(w.p.inputs.known[axis], first+row) {
			w.search.variable(w.p, axis, row).divide(own.parts[k], own.count[k])
		}
	}
}

// own works out a condition for the completions from a multiple of 64 on, n words of them.
func (w *worker) own(own *ownTrial, first, row, from, n int) []uint64 {
	s := w.search
	for i, in := range own.inputs {
		to := s.own.at(int32(i))[:n]
		if w.base.bit(in.known, first+row) {
			fixed := uint64(0)
			if w.base.bit(in.slot, first+row) {
				fixed = ^fixed
			}
			for j := range to {
				to[j] = fixed
			}
			continue
		}
		cells := w.p.cells[in.axis]
		if v := s.at(in.axis, row); v != nil {
			v.digit(cells, in.bit, from, min(s.total-from, 64*n), to)
			continue
		}
		fixed := -uint64(cells[0] >> in.bit & 1) // all its values are alike here
		for j := range to {
			to[j] = fixed
		}
	}
	for i, u := range own.unclear { // clear, or the row would be under the slow way
		to := s.own.at(int32(len(own.inputs) + i))[:n]
		fixed := -(w.base.at(w.p.inputs.unclear[u])[(first+row)/64] >> ((first + row) % 64) & 1)
		for j := range to {
			to[j] = fixed
		}
	}
	own.c.run(s.own, n, nil)
	return s.own.at(own.c.out[0])[:n]
}

// leaveFree leaves rules free to hold or not where completions can't be tried.
func (w *worker) leaveFree(x *subject, t *trial) ended {
	s := w.search
	if len(s.free) > maxFree {
		return ended{several: true}
	}
	s.vars = s.vars[:0]
	s.make(1 << len(s.free))
	return w.through(x, t, func(i, from int, to []uint64) {
		for j := range to {
			to[j] = counting(i, from/64+j)
		}
	})
}

// through goes through all completions, or all ways in which the free rules can come out: own writes whether a free rule
// holds in those from a multiple of 64 on.
func (w *worker) through(x *subject, t *trial, own func(i, from int, to []uint64)) ended {
	s := w.search
	var first reason.Verdict
	for i, holds := range s.fixed {
		to := s.result.at(int32(i))[:min(trialWords, (s.total+63)/64)]
		for j := range to {
			if to[j] = 0; holds {
				to[j] = ^uint64(0)
			}
		}
	}
	for from := 0; from < s.total; from += 64 * trialWords {
		n := min(trialWords, (s.total-from+63)/64)
		for i, f := range s.free {
			own(i, from, s.result.at(int32(f.input))[:n])
		}
		t.c.run(s.result, n, nil)
		last := ^uint64(0) // of the rows of the last word that stand for a completion
		if end := s.total - from; end < 64*n {
			last = 1<<(end-64*(n-1)) - 1
		}
		if x.topic.Numeric() {
			if w.numbersDiffer(x, t, from, n, last, &first) {
				return ended{several: true}
			}
			continue
		}
		if from == 0 {
			first = w.firstOf(x, t)
		}
		for i, r := range t.differ {
			want := uint64(0)
			if i < len(t.out.level) {
				want = -(first.Mask >> i & 1)
			} else if first.Status == reason.Conflict {
				want = ^uint64(0)
			}
			plane := s.result.at(t.c.out[r])[:n]
			other := (plane[n-1] ^ want) & last
			for _, m := range plane[:n-1] {
				other |= m ^ want
			}
			if other != 0 {
				return ended{several: true}
			}
		}
	}
	return ended{verdict: first}
}

// firstOf gives the verdict of the first completion.
func (w *worker) firstOf(x *subject, t *trial) reason.Verdict {
	one := func(r int) uint64 { return w.search.result.at(t.c.out[r])[0] & 1 }
	var mask uint64
	for i, l := range t.out.level {
		mask |= one(l) << i
	}
	return optionsVerdict(x.topic, mask, one(t.out.spoke) == 1)
}

// numbersDiffer reports whether completions give different numbers; first is that of the very first.
func (w *worker) numbersDiffer(x *subject, t *trial, from, n int, last uint64, first *reason.Verdict) bool {
	c := w.result.Choices[x.index].verdicts
	planes := w.fired[:0]
	for _, r := range t.out.fired {
		planes = append(planes, w.search.result.at(t.c.out[r])[:n])
	}
	w.fired = planes
	if from == 0 {
		*first = c.verdicts[c.of(patternAt(planes, 0, 0))]
	}
	id := c.id(*first)
	for j := range n {
		rows := ^uint64(0)
		if j == n-1 {
			rows = last
		}
		for rows != 0 { // those that are alike at once
			at := lowest(rows)
			like := rows
			var pattern uint64
			for i, p := range planes {
				if p[j]>>at&1 == 1 {
					like &= p[j]
					pattern |= 1 << i
				} else {
					like &^= p[j]
				}
			}
			if !c.alike(c.of(pattern), id) {
				return true
			}
			rows &^= like
		}
	}
	return false
}

// tryCaution is try for a caution.
func (w *worker) tryCaution(x *subject, row int) ended {
	own := w.p.tries[len(w.p.rules)+x.index-len(w.p.space.Topics)]
	s := w.search
	s.vars = s.vars[:0]
	w.look(own, row, 0)
	if v := w.known(x, row); v.Status != "" {
		return ended{verdict: v}
	}
	if !s.number() {
		return ended{several: true}
	}
	var all, none = true, true
	for from := 0; from < s.total; from += 64 * trialWords {
		n := min(trialWords, (s.total-from+63)/64)
		for j, m := range w.own(own, row, 0, from, n) {
			rows := ^uint64(0)
			if end := s.total - from - 64*j; end < 64 {
				rows = 1<<end - 1
			}
			all, none = all && m&rows == rows, none && m&rows == 0
		}
	}
	switch {
	case all:
		return ended{verdict: reason.Verdict{Status: reason.Fired}}
	case none:
		return ended{verdict: reason.Verdict{Status: reason.DidNotFire}}
	}
	return ended{several: true}
}
