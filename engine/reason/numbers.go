package reason

import (
	"math"

	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// bounds is what limits leave of a number.
type bounds struct{ lo, hi float64 }

func bound(c *vocab.Choice, effects []effect) bounds {
	b := bounds{c.Between.Lo, c.Between.Hi}
	for _, f := range effects {
		b = b.limited(f)
	}
	return b
}

func (b bounds) limited(f effect) bounds {
	switch f.Verb {
	case ruleset.AtLeast:
		b.lo = max(b.lo, f.value)
	case ruleset.AtMost:
		b.hi = min(b.hi, f.value)
	}
	return b
}

func (b bounds) empty() bool { return b.lo > b.hi }

// conflictNumbers gives a smallest set of rules whose limits can't hold together: the first that
// leaves nothing alone, or else the two with the tightest limits.
func conflictNumbers(c *vocab.Choice, effects []effect) []string {
	alone := map[int]bounds{}
	for _, f := range effects {
		b, seen := alone[f.rule.index]
		if !seen {
			b = bounds{c.Between.Lo, c.Between.Hi}
		}
		alone[f.rule.index] = b.limited(f)
	}
	least, most := effects[0].rule, effects[0].rule
	for _, f := range effects {
		b := alone[f.rule.index]
		if b.empty() {
			return []string{f.rule.Name}
		}
		if b.lo > alone[least.index].lo {
			least = f.rule
		}
		if b.hi < alone[most.index].hi {
			most = f.rule
		}
	}
	if most.index < least.index {
		least, most = most, least
	}
	return []string{least.Name, most.Name}
}

// near moves a value to the nearest end of the interval if it lies outside.
func (b bounds) near(v float64) float64 { return min(max(v, b.lo), b.hi) }

// aims gives the aims that count: the strong ones, or else the conditional ones.
func aims(effects []effect) (decide []effect) {
	for _, strength := range []ruleset.Strength{ruleset.Strong, ruleset.Conditional} {
		for _, f := range effects {
			if f.Verb == ruleset.Aim && f.rule.Strength == strength {
				decide = append(decide, f)
			}
		}
		if decide != nil {
			return decide
		}
	}
	return nil
}

// decideNumber gives the verdict on a choice with a number.
func (e *Engine) decideNumber(c *vocab.Choice, effects []effect) Verdict {
	if len(effects) == 0 {
		return e.silent(c)
	}
	b := bound(c, effects)
	if b.empty() {
		return Verdict{Status: Conflict}
	}
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, f := range aims(effects) {
		lo, hi = min(lo, b.near(f.value)), max(hi, b.near(f.value))
	}
	if lo > hi { // no aim: what the limits leave is open
		if b.lo == b.hi {
			return Verdict{Status: Settled, Lo: b.lo, Hi: b.lo}
		}
		return Verdict{Status: IsOpen, Lo: b.lo, Hi: b.hi}
	}
	if tidy(hi-lo) <= c.Rounding {
		v := b.rounded(c, (lo+hi)/2)
		return Verdict{Status: Settled, Lo: v, Hi: v}
	}
	return Verdict{Status: IsOpen, Lo: lo, Hi: hi}
}

// rounded gives the value on the choice's grid that is nearest and still within the interval; an
// interval too narrow for any grid value keeps the value as it is.
func (b bounds) rounded(c *vocab.Choice, v float64) float64 {
	r := tidy(math.Round(v/c.Rounding) * c.Rounding)
	if r < b.lo {
		r = tidy(math.Ceil(tidy(b.lo/c.Rounding)) * c.Rounding)
	}
	if r > b.hi {
		r = tidy(math.Floor(tidy(b.hi/c.Rounding)) * c.Rounding)
	}
	if r < b.lo || r > b.hi {
		return tidy(v)
	}
	return r
}
