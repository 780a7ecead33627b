package reason

import (
	"math"

	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// bounds is what the limits leave of a number, with the limits that set its ends (nil: the choice's
// own range).
type bounds struct {
	lo, hi     float64
	from, upTo *effect
}

func bound(c *vocab.Choice, effects []effect) bounds {
	b := bounds{lo: c.Between.Lo, hi: c.Between.Hi}
	for i := range effects {
		f := &effects[i]
		switch f.Verb {
		case ruleset.AtLeast:
			if f.value > b.lo {
				b.lo, b.from = f.value, f
			}
		case ruleset.AtMost:
			if f.value < b.hi {
				b.hi, b.upTo = f.value, f
			}
		}
	}
	return b
}

func (b bounds) empty() bool { return b.lo > b.hi }

// conflict names the limits that can't hold together; one alone where it leaves the range that can
// be made.
func (b bounds) conflict() []string {
	out := []string{}
	for _, f := range []*effect{b.from, b.upTo} {
		if f != nil && (len(out) == 0 || out[0] != f.rule.Name) {
			out = append(out, f.rule.Name)
		}
	}
	if len(out) == 2 && out[0] > out[1] {
		out[0], out[1] = out[1], out[0]
	}
	return out
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
func (e *Engine) decideNumber(c *vocab.Choice, effects []effect) verdict {
	if len(effects) == 0 {
		return e.silent(c)
	}
	b := bound(c, effects)
	if b.empty() {
		return verdict{status: Conflict}
	}
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, f := range aims(effects) {
		lo, hi = min(lo, b.near(f.value)), max(hi, b.near(f.value))
	}
	if lo > hi { // no aim: what the limits leave is open
		if b.lo == b.hi {
			return verdict{status: Settled, lo: b.lo, hi: b.lo}
		}
		return verdict{status: IsOpen, lo: b.lo, hi: b.hi}
	}
	if tidy(hi-lo) <= c.Rounding {
		v := b.rounded(c, (lo+hi)/2)
		return verdict{status: Settled, lo: v, hi: v}
	}
	return verdict{status: IsOpen, lo: lo, hi: hi}
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
