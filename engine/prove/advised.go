package prove

import (
	"math"
	"slices"

	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/ruleset"
)

// advised bounds the numbers that the pieces of advice in force could give, in the unit of their choice, while the measures stay
// in their cells.
func (t *trial) advised(topic *cell.Topic) (says []cell.Say, numbers []reach) {
	for k, s := range t.says {
		if !t.Holds(t.hangs[k]) {
			continue
		}
		if s.Advice.Fixed {
			says, numbers = append(says, s), append(numbers, reach{s.Advice.At, s.Advice.At, false})
			continue
		}
		for row := range t.Rows {
			b := box{}
			for _, axis := range reads(s.Advice.Term) {
				i := t.frame.Line(t.Rows, row, axis)
				b[i] = t.lineReach(i)
			}
			r := t.enclose(b, row, s.Advice.Term)
			r.lo, r.hi = inUnit(r.lo, topic), inUnit(r.hi, topic)
			says, numbers = append(says, s), append(numbers, r)
			if !s.Rule.Limb {
				break
			}
		}
	}
	return says, numbers
}

func inUnit(x float64, t *cell.Topic) float64 {
	if math.IsInf(x, 0) {
		return x
	}
	return reason.InUnit(x, t.Choice)
}

// could reports whether the numbers that are advised could bring about what is asked for, while the measures stay in their
// cells.
func (q asked) could(t *trial, topic *cell.Topic) bool {
	says, numbers := t.advised(topic)
	least, most := reach{topic.Between.Lo, topic.Between.Lo, false}, reach{topic.Between.Hi, topic.Between.Hi, false}
	lowest, highest := math.Inf(1), math.Inf(-1) // of aims
	none := true
	for k, s := range says {
		r := numbers[k]
		none = none && r.none
		switch s.Advice.Verb {
		case ruleset.AtLeast:
			least.hi = max(least.hi, r.hi)
		case ruleset.AtMost:
			most.lo = min(most.lo, r.lo)
		case ruleset.Aim:
			lowest, highest = min(lowest, r.lo), max(highest, r.hi)
		}
	}
	switch q.kind {
	case Contradiction:
		return least.hi > most.lo
	case Gap:
		return none
	case Tie:
		return highest-lowest > topic.Rounding
	}
	return true
}

// computed lists the lines that the formulas of the advice in force read.
func (t *trial) computed() (out []int) {
	for k, s := range t.says {
		if !t.Holds(t.hangs[k]) || s.Advice.Term == nil || s.Advice.Fixed {
			continue
		}
		for row := range t.Rows {
			for _, axis := range reads(s.Advice.Term) {
				if i := t.frame.Line(t.Rows, row, axis); !slices.Contains(out, i) {
					out = append(out, i)
				}
			}
		}
	}
	return out
}
