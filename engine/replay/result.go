package replay

import (
	"math/bits"

	"crus/engine/cell"
	"crus/engine/reason"
)

// Result is what becomes of a block. Its planes have a bit for each row, as the block's have. It is used up when the
// worker goes on to the next block.
type Result struct {
	space    *cell.Space
	Block    *Block
	Words    int      // how many words of the planes are in use
	In       []uint64 // rows of persons to whom the ruleset applies, or may apply
	Doubt    []uint64 // of these, where it is not known whether it applies: everything on them is provisional
	Rules    []RuleResult
	Choices  []*ChoiceResult  // as Space.Topics
	Cautions []*CautionResult // as Space.Cautions
}

// RuleResult says where a rule is in which state; where it is in none of these it did not fire. A rule that reads no limb
// is in the same state on all rows of a case; one that reads a limb means nothing on a row of the person alone.
type RuleResult struct{ Fired, SetAside, Pending []uint64 }

// ChoiceResult says what becomes of a choice on each row: of one of the person, on the first row of each case.
type ChoiceResult struct {
	Topic       *cell.Topic
	Rows        []uint64 // the rows on which it is decided
	Provisional []uint64
	Whatever    []uint64   // it stands whatever is missing, although what is known does not say so
	level       [][]uint64 // of each option
	conflict    []uint64
	spoke       []uint64
	number      []int32 // of a choice with a number, of each row: its verdict
	verdicts    *numbers
}

// Verdict gives the verdict on a row.
func (c *ChoiceResult) Verdict(row int) reason.Verdict {
	if c.verdicts != nil {
		return c.verdicts.verdicts[c.number[row]]
	}
	var mask uint64
	for i, l := range c.level {
		mask |= (l[row/64] >> (row % 64) & 1) << i
	}
	return optionsVerdict(c.Topic, mask, bit(c.spoke, row))
}

// set puts another verdict on a row.
func (c *ChoiceResult) set(row int, v reason.Verdict) {
	if c.verdicts != nil {
		c.number[row] = c.verdicts.id(v)
		return
	}
	word, at := row/64, uint64(1)<<(row%64)
	put := func(p []uint64, on bool) {
		if p[word] &^= at; on {
			p[word] |= at
		}
	}
	for i, l := range c.level {
		put(l, v.Mask>>i&1 == 1)
	}
	put(c.conflict, v.Status == reason.Conflict)
	put(c.spoke, v.Status == reason.Conflict || v.Status == reason.Settled || v.Status == reason.IsOpen)
}

// CautionResult says what becomes of a caution: of one that reads no limb, on the first row of each case.
type CautionResult struct {
	Caution     *cell.Caution
	Rows        []uint64 // the rows on which it is looked at
	Fired       []uint64
	Pending     []uint64 // it could fire once more is recorded
	Provisional []uint64 // more that is recorded could change its state
}

// rows calls do for each row of a plane.
func rows(plane []uint64, do func(row int)) {
	for w, m := range plane {
		for ; m != 0; m &= m - 1 {
			do(w*64 + bits.TrailingZeros64(m))
		}
	}
}

// newResult makes room for the results of a program.
func (p *Program) newResult() *Result {
	r := &Result{space: p.space, In: make([]uint64, words), Doubt: make([]uint64, words), Rules: make([]RuleResult, len(p.rules))}
	room := func(n int) [][]uint64 {
		out := make([][]uint64, n)
		for i := range out {
			out[i] = make([]uint64, words)
		}
		return out
	}
	for _, x := range p.subjects {
		m := room(6)
		if x.topic == nil {
			r.Cautions = append(r.Cautions, &CautionResult{Caution: x.caution, Rows: m[0], Fired: m[1], Pending: m[2], Provisional: m[3]})
			continue
		}
		c := &ChoiceResult{Topic: x.topic, Rows: m[0], Provisional: m[1], Whatever: m[2], conflict: m[3], spoke: m[4]}
		if x.topic.Numeric() {
			c.verdicts = newNumbers(p.space.Engine, x.topic, x.groups)
			c.number = make([]int32, BlockRows)
		} else {
			c.level = room(len(x.topic.Options))
		}
		r.Choices = append(r.Choices, c)
	}
	return r
}
