package reason

import (
	"math/bits"

	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// effect is one thing that a rule in force says of a choice.
type effect struct {
	*advice
	value float64      // of a number, in the choice's unit
	off   *Uncertainty // of a number
}

// Verdict is what becomes of a choice, in short: enough to see whether two completions differ.
type Verdict struct {
	Status string
	Mask   uint64  // options, by their places: the one picked, or those that are level
	Lo, Hi float64 // numbers, in the choice's unit: the value (Lo == Hi), or the range that is open
}

// Same reports whether two verdicts advise the same. Picking an option by default or by a rule
// makes no difference to the patient.
func (v Verdict) Same(w Verdict) bool {
	kind := func(s string) string {
		if s == Default {
			return Settled
		}
		return s
	}
	return kind(v.Status) == kind(w.Status) && v.Mask == w.Mask && v.Lo == w.Lo && v.Hi == w.Hi
}

// silent is the verdict where no rule spoke.
func (e *Engine) silent(c *vocab.Choice) Verdict {
	v := Verdict{}
	switch {
	case c.HasDefault && c.Numeric():
		v.Status, v.Lo, v.Hi = Default, c.DefaultAt, c.DefaultAt
	case c.HasDefault:
		v.Status, v.Mask = Default, 1<<c.Rank(c.Default)
	case e.open[c] != nil:
		v.Status = LeftToClinician
	default:
		v.Status = Unanswered
	}
	return v
}

// Removes gives the options that a limit takes away, as a set of their places.
func Removes(a *ruleset.Advice) uint64 {
	c := a.Choice
	all := uint64(1)<<len(c.Options) - 1
	if len(c.Options) == 64 {
		all = ^uint64(0)
	}
	var named uint64
	for _, o := range a.Options {
		named |= 1 << c.Rank(o)
	}
	switch a.Verb {
	case ruleset.Only:
		return all &^ named
	case ruleset.Never:
		return named
	case ruleset.AtLeast:
		return named - 1
	case ruleset.AtMost:
		return all &^ (named | (named - 1))
	}
	return 0
}

// Favours gives the options that a preference favours, as a set of their places.
func Favours(a *ruleset.Advice) uint64 {
	var named uint64
	if a.Verb == ruleset.Favour {
		for _, o := range a.Options {
			named |= 1 << a.Choice.Rank(o)
		}
	}
	return named
}

// weight counts the rules that favour an option: strong ones first, then conditional ones.
type weight struct{ strong, conditional int }

func (w weight) less(x weight) bool {
	return w.strong < x.strong || w.strong == x.strong && w.conditional < x.conditional
}

// weigh counts, for each option, the rules that favour it.
func weigh(effects []effect) (out [64]weight) {
	for _, f := range effects {
		for m := f.favours; m != 0; m &= m - 1 {
			i := bits.TrailingZeros64(m)
			if f.rule.Strength == ruleset.Strong {
				out[i].strong++
			} else {
				out[i].conditional++
			}
		}
	}
	return out
}

// decideOptions gives the verdict on a choice with options.
func (e *Engine) decideOptions(c *vocab.Choice, effects []effect) Verdict {
	if len(effects) == 0 {
		return e.silent(c)
	}
	var removed uint64
	for _, f := range effects {
		removed |= f.removes
	}
	weights := weigh(effects)
	best, level := weight{-1, -1}, uint64(0)
	for i := range c.Options {
		if removed>>i&1 == 1 {
			continue
		}
		switch {
		case best.less(weights[i]):
			best, level = weights[i], 1<<i
		case weights[i] == best:
			level |= 1 << i
		}
	}
	switch bits.OnesCount64(level) {
	case 0:
		return Verdict{Status: Conflict}
	case 1:
		return Verdict{Status: Settled, Mask: level}
	}
	return Verdict{Status: IsOpen, Mask: level}
}

// conflictOptions gives a smallest set of limits that leaves no option: a smallest cover, found by
// trying sizes upwards; the first in the rules' order is given, so that it is always the same one.
func conflictOptions(c *vocab.Choice, effects []effect) []string {
	all := uint64(1)<<len(c.Options) - 1
	if len(c.Options) == 64 {
		all = ^uint64(0)
	}
	byRule := map[int]uint64{}
	var order []int
	for _, f := range effects {
		if f.Verb.Limit() {
			if _, seen := byRule[f.rule.index]; !seen {
				order = append(order, f.rule.index)
			}
			byRule[f.rule.index] |= f.removes
		}
	}
	names := map[int]string{}
	for _, f := range effects {
		names[f.rule.index] = f.rule.Name
	}
	var found []int
	var search func(left uint64, size int, picked []int) bool
	search = func(left uint64, size int, picked []int) bool {
		if left == 0 {
			found = append([]int(nil), picked...)
			return true
		}
		if size == 0 {
			return false
		}
		i := bits.TrailingZeros64(left) // some rule must remove this option
		for _, r := range order {
			if byRule[r]>>i&1 == 1 && search(left&^byRule[r], size-1, append(picked, r)) {
				return true
			}
		}
		return false
	}
	for size := 1; size <= len(order); size++ {
		if search(all, size, nil) {
			break
		}
	}
	return inOrder(order, found, names)
}

func inOrder(order, found []int, names map[int]string) []string {
	out := []string{}
	for _, r := range order {
		for _, x := range found {
			if r == x {
				out = append(out, names[r])
				break
			}
		}
	}
	return out
}
