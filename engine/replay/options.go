package replay

import (
	"math/bits"

	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/ruleset"
)

// verdict are the planes of what becomes of a choice with options.
type verdict struct {
	level    []ref // of each option: it is the one picked, or level with others
	conflict ref   // limits leave none
	spoke    ref   // some rule in force speaks of the choice
}

// options compares the options of a choice: fired are the planes of what the rules say of it, in the order of
// topic.Says. Limits remove options; those that remain are compared by the number of rules that favour them, strong ones
// first. Counts are kept bit by bit, and options are dropped from the highest bit down.
func (b *builder) options(t *cell.Topic, fired []ref) verdict {
	n := len(t.Options)
	out := verdict{level: make([]ref, n), spoke: b.any(fired)}
	removed := make([][]ref, n)
	favoured := make([][2][]ref, n) // by strong rules, by conditional ones
	for i, say := range t.Says {
		for o := range n {
			if say.Advice.Removes>>o&1 == 1 {
				removed[o] = append(removed[o], fired[i])
			}
			if say.Advice.Favours>>o&1 == 1 {
				k := 0
				if say.Rule.Strength != ruleset.Strong {
					k = 1
				}
				favoured[o][k] = append(favoured[o][k], fired[i])
			}
		}
	}
	alive := out.level
	for o := range n {
		alive[o] = b.any(removed[o]).not()
	}
	for k := range 2 {
		counts := make([][]ref, n)
		high := 0
		for o := range n {
			counts[o] = b.count(favoured[o][k])
			high = max(high, len(counts[o]))
		}
		for bit := high - 1; bit >= 0; bit-- {
			digit := make([]ref, n)
			ahead := never
			for o := range n {
				if digit[o] = never; bit < len(counts[o]) {
					digit[o] = counts[o][bit]
				}
				ahead = b.or(ahead, b.and(alive[o], digit[o]))
			}
			for o := range n {
				alive[o] = b.and(alive[o], b.or(digit[o], ahead.not()))
			}
		}
	}
	out.conflict = b.and(out.spoke, b.any(alive).not())
	for o := range n {
		silent := never
		if t.Silent.Mask>>o&1 == 1 {
			silent = always
		}
		out.level[o] = b.choose(out.spoke, alive[o], silent)
	}
	return out
}

// count adds planes up: it gives the digits of how many of them hold, the lowest first.
func (b *builder) count(of []ref) []ref {
	var out []ref
	column := of
	for len(column) > 0 {
		var next []ref
		for len(column) > 1 {
			x, y := column[0], column[1]
			if len(column) == 2 {
				column = []ref{b.xor(x, y)}
				next = append(next, b.and(x, y))
				break
			}
			z := column[2]
			half := b.xor(x, y)
			column = append(column[3:len(column):len(column)], b.xor(half, z))
			next = append(next, b.or(b.and(x, y), b.and(half, z)))
		}
		out = append(out, column[0])
		column = next
	}
	return out
}

// optionsVerdict gives the verdict on a choice with options from which of them are level and whether a rule spoke.
func optionsVerdict(t *cell.Topic, mask uint64, spoke bool) reason.Verdict {
	switch {
	case !spoke:
		return t.Silent
	case mask == 0:
		return reason.Verdict{Status: reason.Conflict}
	case bits.OnesCount64(mask) == 1:
		return reason.Verdict{Status: reason.Settled, Mask: mask}
	}
	return reason.Verdict{Status: reason.IsOpen, Mask: mask}
}
