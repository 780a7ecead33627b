package replay

import (
	"math/bits"

	"crus/engine/reason"
)

// Tally counts what became of many assessments.
type Tally struct {
	Cases    int64 // assessments
	Out      int64 // of persons to whom the ruleset does not apply; nothing else is counted of them
	Unsure   int64 // of persons of whom it is not known whether it applies; everything is provisional there
	Limbs    int64 // limbs that a device is for, without those of persons to whom the ruleset does not apply
	Rules    []RuleTally
	Cautions []CautionTally
	Choices  []ChoiceTally
}

// RuleTally counts the states of a rule: over limbs, or over cases where it reads no limb.
type RuleTally struct{ Of, Fired, SetAside, Pending int64 }

// CautionTally counts the states of a caution: over limbs, or over cases where it reads no limb.
type CautionTally struct{ Of, Fired, Pending, Provisional int64 }

// ChoiceTally counts what became of a choice: over limbs, or over cases for one of the person.
type ChoiceTally struct {
	Of          int64
	Status      map[string]int64  // of package reason
	Picked      []int64           // of each option: by a rule or by default
	Level       []int64           // of each option: with others
	Values      map[float64]int64 // of a choice with a number: those that are settled or default
	Provisional int64
	Whatever    int64 // it stands whatever is missing, although what is known does not say so
}

func (p *Program) newTally() *Tally {
	t := &Tally{Rules: make([]RuleTally, len(p.rules)), Cautions: make([]CautionTally, len(p.space.Cautions))}
	for _, x := range p.space.Topics {
		t.Choices = append(t.Choices, ChoiceTally{Status: map[string]int64{}, Picked: make([]int64, len(x.Options)), Level: make([]int64, len(x.Options)), Values: map[float64]int64{}})
	}
	return t
}

func ones64(plane, of []uint64) (n int64) {
	for j, m := range of {
		n += int64(bits.OnesCount64(plane[j] & m))
	}
	return n
}

// count adds what became of a block. Cases are added where blocks are collected.
func (t *Tally) count(r *Result) {
	n := r.Words
	in := r.In[:n]
	first, limbs := make([]uint64, n), make([]uint64, n)
	for j := range n {
		first[j] = r.Block.First[j] & in[j]
		limbs[j] = in[j] &^ r.Block.Alone[j]
		t.Out += int64(bits.OnesCount64(r.Block.First[j] &^ in[j]))
	}
	t.Unsure += ones64(r.Doubt, first)
	t.Limbs += ones64(limbs, limbs)
	for i := range t.Rules {
		on := first
		if r.space.Rules[i].Limb {
			on = limbs
		}
		x, y := &t.Rules[i], r.Rules[i]
		x.Of += ones64(on, on)
		x.Fired += ones64(y.Fired, on)
		x.SetAside += ones64(y.SetAside, on)
		x.Pending += ones64(y.Pending, on)
	}
	for i, c := range r.Cautions {
		x, on := &t.Cautions[i], c.Rows[:n]
		x.Of += ones64(on, on)
		x.Fired += ones64(c.Fired, on)
		x.Pending += ones64(c.Pending, on)
		x.Provisional += ones64(c.Provisional, on)
	}
	for i, c := range r.Choices {
		t.Choices[i].count(c, n)
	}
}

func (x *ChoiceTally) count(c *ChoiceResult, n int) {
	on := c.Rows[:n]
	x.Of += ones64(on, on)
	x.Provisional += ones64(c.Provisional, on)
	x.Whatever += ones64(c.Whatever, on)
	if c.verdicts != nil {
		counts := make([]int64, len(c.verdicts.verdicts))
		rows(on, func(row int) { counts[c.number[row]]++ })
		for id, k := range counts {
			if k > 0 {
				v := c.verdicts.verdicts[id]
				x.Status[v.Status] += k
				if v.Status == reason.Settled || v.Status == reason.Default {
					x.Values[v.Lo] += k
				}
			}
		}
		return
	}
	var silent, conflict, open int64
	for j, m := range on {
		var some, more uint64 // at least one option is level, at least two
		for _, l := range c.level {
			more |= some & l[j]
			some |= l[j]
		}
		for i, l := range c.level {
			x.Picked[i] += int64(bits.OnesCount64(l[j] & m &^ more))
			x.Level[i] += int64(bits.OnesCount64(l[j] & m & more))
		}
		silent += int64(bits.OnesCount64(m &^ c.spoke[j]))
		conflict += int64(bits.OnesCount64(m & c.conflict[j]))
		open += int64(bits.OnesCount64(m & more))
	}
	add := func(status string, k int64) {
		if k > 0 {
			x.Status[status] += k
		}
	}
	add(c.Topic.Silent.Status, silent)
	add(reason.Conflict, conflict)
	add(reason.IsOpen, open)
	add(reason.Settled, ones64(on, on)-silent-conflict-open)
}

// add takes in another tally, but for its number of cases.
func (t *Tally) add(u *Tally) {
	t.Out, t.Unsure, t.Limbs = t.Out+u.Out, t.Unsure+u.Unsure, t.Limbs+u.Limbs
	for i, x := range u.Rules {
		y := &t.Rules[i]
		y.Of, y.Fired, y.SetAside, y.Pending = y.Of+x.Of, y.Fired+x.Fired, y.SetAside+x.SetAside, y.Pending+x.Pending
	}
	for i, x := range u.Cautions {
		y := &t.Cautions[i]
		y.Of, y.Fired, y.Pending, y.Provisional = y.Of+x.Of, y.Fired+x.Fired, y.Pending+x.Pending, y.Provisional+x.Provisional
	}
	for i, x := range u.Choices {
		y := &t.Choices[i]
		y.Of, y.Provisional, y.Whatever = y.Of+x.Of, y.Provisional+x.Provisional, y.Whatever+x.Whatever
		for k := range x.Picked {
			y.Picked[k] += x.Picked[k]
			y.Level[k] += x.Level[k]
		}
		for s, k := range x.Status {
			y.Status[s] += k
		}
		for v, k := range x.Values {
			y.Values[v] += k
		}
	}
}
