package replay

import (
	"math/bits"

	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/ruleset"
)

// verdict are the planes of what becomes of a choice with options.
type verdict struct {
	level    []ref    // of each option: it is the one picked, or level with others
	conflict ref      // limits leave none
	spoke    ref      // some rule in force speaks of the choice
	best     [2][]ref // the digits of how many strong rules, and conditional ones, favour what is level
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
		out.best[k] = make([]ref, high)
		for bit := high - 1; bit >= 0; bit-- {
			digit := make([]ref, n)
			ahead := never
			for o := range n {
				if digit[o] = never; bit < len(counts[o]) {
					digit[o] = counts[o][bit]
				}
				ahead = b.or(ahead, b.and(alive[o], digit[o]))
			}
			out.best[k][bit] = ahead
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

// stands gives where a verdict stands however the undecided rules come out, each by itself: what is level keeps its
// place, and nothing else can reach it. It is not everywhere that this is so, but nearly. fired are the planes of what the
// rules surely say, possible those of what they could say.
func (b *builder) stands(t *cell.Topic, v verdict, fired, possible []ref) ref {
	moves, raised, several, seen := never, never, never, never
	for o, level := range v.level {
		var most [2][]ref // planes of rules that could favour it
		removed, doubt, favour := never, never, never
		for i, say := range t.Says {
			maybe := b.and(possible[i], fired[i].not())
			if say.Advice.Removes>>o&1 == 1 {
				removed, doubt = b.or(removed, fired[i]), b.or(doubt, maybe)
			}
			if say.Advice.Favours>>o&1 == 1 {
				favour = b.or(favour, maybe)
				k := 0
				if say.Rule.Strength != ruleset.Strong {
					k = 1
				}
				most[k] = append(most[k], possible[i])
			}
		}
		below, alike := never, always
		for k := range 2 {
			count := b.count(most[k])
			for bit := max(len(count), len(v.best[k])) - 1; bit >= 0; bit-- {
				x, y := never, never
				if bit < len(count) {
					x = count[bit]
				}
				if bit < len(v.best[k]) {
					y = v.best[k][bit]
				}
				below = b.or(below, b.and(alike, b.and(y, x.not())))
				alike = b.and(alike, b.xor(x, y).not())
			}
		}
		moves = b.or(moves, b.and(level.not(), b.or(removed, below).not()))
		moves = b.or(moves, b.and(level, doubt))
		several = b.or(several, b.and(level, seen))
		seen = b.or(seen, level)
		raised = b.or(raised, b.and(level, favour))
	}
	return b.or(moves, b.and(several, raised)).not() // raised, one of several would leave the others behind
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
