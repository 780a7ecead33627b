package replay

import (
	"math/bits"

	"crus/engine/reason"
)

// What completing the missing measures could change is found in three steps. Some completions are tried on all rows at
// once: where two of them differ, the result is provisional. What is still open is tried row by row, all completions of
// it, 64 to a word. Rows on which a formula looks at what is missing are left to the slow way.

// ended is what all completions of a row give.
type ended struct {
	several bool           // they differ, or it is not known that they don't
	verdict reason.Verdict // the one that all give
}

// complete finds out what completing the rows could change.
func (w *worker) complete(b *Block, n int) {
	var any uint64
	for _, o := range w.open {
		for j := range n {
			any |= o.soft[j]
		}
	}
	if any != 0 {
		var before *round
		for i := range w.p.rounds {
			w.fill(&w.p.rounds[i], before, b, n)
			before = &w.p.rounds[i]
			w.p.later.wide(w.later, b.Pair)
			for k, x := range w.p.subjects {
				if x.open >= 0 {
					w.compare(x, w.open[k], i == 0, n)
				}
			}
		}
	}
	for k, x := range w.p.subjects {
		o := w.open[k]
		for j := range n {
			if m := o.multi[j]; m != 0 {
				w.provisional(x, j, m)
			}
			for m := o.soft[j] &^ o.multi[j]; m != 0; m &= m - 1 {
				row := 64*j + bits.TrailingZeros64(m)
				w.conclude(x, row, w.try(x, b, row), x.asked >= 0 && bit(w.of(x.asked), row))
			}
			for m := o.hard[j]; m != 0; m &= m - 1 {
				row := 64*j + bits.TrailingZeros64(m)
				w.slowly(x, b, row)
			}
		}
	}
}

// compare notes where a completion gives another verdict than the first one.
func (w *worker) compare(x *subject, o *openRows, first bool, n int) {
	results := x.differ
	if first {
		for i, r := range results {
			copy(o.first[i][:n], w.later.at(w.p.later.out[r]))
		}
		if o.id == nil {
			return
		}
		var base [][]uint64
		for _, f := range x.now.fired {
			base = append(base, w.of(f))
		}
		c := w.result.Choices[x.index]
		for j := range n {
			if o.soft[j] == 0 {
				continue
			}
			var other uint64
			for i, f := range o.first {
				other |= f[j] ^ base[i][j]
			}
			copy(o.id[64*j:64*j+64], c.number[64*j:])
			for m := other & o.soft[j]; m != 0; m &= m - 1 {
				at := bits.TrailingZeros64(m)
				o.id[64*j+at] = c.verdicts.of(patternAt(o.first, j, at))
			}
		}
		return
	}
	w.other = w.other[:0]
	for _, r := range results {
		w.other = append(w.other, w.later.at(w.p.later.out[r])[:n])
	}
	for j := range n {
		left := o.soft[j] &^ o.multi[j]
		if left == 0 {
			continue
		}
		var other uint64
		for i, plane := range w.other {
			other |= o.first[i][j] ^ plane[j]
		}
		other &= left
		if o.id == nil {
			o.multi[j] |= other
			continue
		}
		c := w.result.Choices[x.index].verdicts
		for m := other; m != 0; m &= m - 1 {
			at := bits.TrailingZeros64(m)
			if !c.alike(c.of(patternAt(w.other, j, at)), o.id[64*j+at]) {
				o.multi[j] |= 1 << at
			}
		}
	}
}

// patternAt gives the pattern of one row.
func patternAt(planes [][]uint64, word, at int) (out uint64) {
	for i, p := range planes {
		out |= (p[word] >> at & 1) << i
	}
	return out
}

// provisional marks rows of a word as provisional.
func (w *worker) provisional(x *subject, word int, rows uint64) {
	if x.topic != nil {
		w.result.Choices[x.index].Provisional[word] |= rows
		return
	}
	c := w.result.Cautions[x.index-len(w.p.space.Topics)]
	c.Provisional[word] |= rows
	c.Pending[word] |= rows &^ c.Fired[word]
}

// conclude takes what all completions of a row give: the result stands, or another one does, or it is provisional. asked
// says whether something that bears on it asks what is recorded.
func (w *worker) conclude(x *subject, row int, e ended, asked bool) {
	word, at := row/64, uint64(1)<<(row%64)
	now := w.verdict(x, row)
	switch {
	case e.several || asked && !e.verdict.Same(now): // it is not so yet: only once that is recorded
		w.provisional(x, word, at)
	case e.verdict.Same(now):
	case x.topic != nil:
		c := w.result.Choices[x.index]
		c.Whatever[word] |= at
		c.set(row, e.verdict)
	default:
		c := w.result.Cautions[x.index-len(w.p.space.Topics)]
		c.Pending[word] &^= at
		if c.Fired[word] &^= at; e.verdict.Status == reason.Fired {
			c.Fired[word] |= at
		}
	}
}

// verdict gives what is known of a subject on a row as things stand.
func (w *worker) verdict(x *subject, row int) reason.Verdict {
	if x.topic != nil {
		return w.result.Choices[x.index].Verdict(row)
	}
	switch c := w.result.Cautions[x.index-len(w.p.space.Topics)]; {
	case bit(c.Fired, row):
		return reason.Verdict{Status: reason.Fired}
	case bit(c.Pending, row):
		return reason.Verdict{Status: reason.Pending}
	}
	return reason.Verdict{Status: reason.DidNotFire}
}
