package replay

import (
	"math/bits"

	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/ruleset"
)

// group is what rules say of a number in one and the same way, with a constant: said once or twice it comes to the same.
type group struct {
	says []int // places in topic.Says
	key  sayKey
}

type sayKey struct {
	verb   ruleset.Verb
	strong bool // of an aim
	at     float64
}

// maxGroups is how many groups the pattern of a row can hold. A choice with more is worked out row by row.
const maxGroups = 64

// groupsOf gathers the constants that a topic's rules advise.
func groupsOf(t *cell.Topic) (out []group) {
	at := map[sayKey]int{}
	for i, say := range t.Says {
		if !say.Advice.Fixed {
			continue
		}
		key := sayKey{say.Advice.Verb, say.Advice.Verb == ruleset.Aim && say.Rule.Strength == ruleset.Strong, say.Advice.At}
		g, ok := at[key]
		if !ok {
			g = len(out)
			at[key] = g
			out = append(out, group{key: key})
		}
		out[g].says = append(out[g].says, i)
	}
	return out
}

// standing gives where a number stands however the undecided rules come out: each limit that could come in has one that is
// surely there and at least as tight, and each aim lies between aims that surely count, or is outweighed. It is not
// everywhere that this is so. fired are the planes of the groups that are surely said, possible those that could be.
func (b *builder) standing(groups []group, fired, possible []ref) ref {
	covered := func(g group, by func(h group) bool) ref {
		out := never
		for j, h := range groups {
			if h.key.verb == g.key.verb && by(h) {
				out = b.or(out, fired[j])
			}
		}
		return out
	}
	moves := never
	for i, g := range groups {
		above := func(h group) bool { return h.key.strong == g.key.strong && h.key.at >= g.key.at }
		below := func(h group) bool { return h.key.strong == g.key.strong && h.key.at <= g.key.at }
		var idle ref
		switch g.key.verb {
		case ruleset.AtLeast:
			idle = covered(g, above)
		case ruleset.AtMost:
			idle = covered(g, below)
		default:
			idle = b.and(covered(g, above), covered(g, below))
			if !g.key.strong {
				idle = b.or(idle, covered(g, func(h group) bool { return h.key.strong }))
			}
		}
		moves = b.or(moves, b.and(possible[i], b.or(fired[i], idle).not()))
	}
	return moves.not()
}

// effective gives where what a group says counts: a limit where no tighter one is said, an aim where it is the lowest or
// the highest, and no strong one is said if it is conditional. The verdict hangs on these alone, and there are few patterns
// of them.
func (b *builder) effective(groups []group, said []ref) []ref {
	out := make([]ref, len(groups))
	for i, g := range groups {
		higher, lower, stronger := never, never, never
		for j, h := range groups {
			switch {
			case h.key.verb != g.key.verb:
			case h.key.strong != g.key.strong:
				if h.key.strong {
					stronger = b.or(stronger, said[j])
				}
			case h.key.at > g.key.at:
				higher = b.or(higher, said[j])
			case h.key.at < g.key.at:
				lower = b.or(lower, said[j])
			}
		}
		var idle ref
		switch g.key.verb {
		case ruleset.AtLeast:
			idle = higher
		case ruleset.AtMost:
			idle = lower
		default:
			idle = b.or(stronger, b.and(higher, lower))
		}
		out[i] = b.and(said[i], idle.not())
	}
	return out
}

// numbers remembers the verdicts on a choice with a number, by the pattern of what the rules in force say: bit i of a
// pattern is group i. It is used by one goroutine.
type numbers struct {
	e        *reason.Engine
	t        *cell.Topic
	groups   []group
	verdicts []reason.Verdict
	same     []int32 // of each verdict: the first one that advises the same
	at       map[reason.Verdict]int32
	keys     []uint64 // an open table of patterns: its size is a power of two
	ids      []int32  // -1: free
	used     int
	said     []reason.Said
}

func newNumbers(e *reason.Engine, t *cell.Topic, groups []group) *numbers {
	n := &numbers{e: e, t: t, groups: groups, at: map[reason.Verdict]int32{}}
	n.grow(1 << 8)
	return n
}

func (n *numbers) grow(size int) {
	keys, ids := n.keys, n.ids
	n.keys, n.ids, n.used = make([]uint64, size), make([]int32, size), 0
	for i := range n.ids {
		n.ids[i] = -1
	}
	for i, id := range ids {
		if id >= 0 {
			n.put(keys[i], id)
		}
	}
}

func (n *numbers) put(pattern uint64, id int32) {
	i := n.slot(pattern)
	for n.ids[i] >= 0 {
		i = (i + 1) & (len(n.ids) - 1)
	}
	n.keys[i], n.ids[i] = pattern, id
	n.used++
}

func (n *numbers) slot(pattern uint64) int {
	return int(pattern * 0x9e3779b97f4a7c15 >> 32 & uint64(len(n.ids)-1))
}

// of gives the number of the verdict for a pattern.
func (n *numbers) of(pattern uint64) int32 {
	for i := n.slot(pattern); n.ids[i] >= 0; i = (i + 1) & (len(n.ids) - 1) {
		if n.keys[i] == pattern {
			return n.ids[i]
		}
	}
	n.said = n.said[:0]
	for m := pattern; m != 0; m &= m - 1 {
		say := n.t.Says[n.groups[bits.TrailingZeros64(m)].says[0]]
		n.said = append(n.said, reason.Said{Rule: say.Rule.Index, Advice: say.Place, Value: say.Advice.At})
	}
	id := n.id(n.e.Decide(n.t.Choice, n.said))
	if n.used > maxPatterns { // begin anew rather than grow without end
		n.grow(1 << 8)
	}
	if 2*n.used >= len(n.ids) {
		n.grow(2 * len(n.ids))
	}
	n.put(pattern, id)
	return id
}

// maxPatterns is how many patterns are remembered.
const maxPatterns = 1 << 16

// id gives the number of a verdict.
func (n *numbers) id(v reason.Verdict) int32 {
	if id, ok := n.at[v]; ok {
		return id
	}
	id := int32(len(n.verdicts))
	same := id
	for i, w := range n.verdicts {
		if w.Same(v) {
			same = n.same[i]
			break
		}
	}
	n.at[v], n.verdicts, n.same = id, append(n.verdicts, v), append(n.same, same)
	return id
}

// alike reports whether two verdicts, by their numbers, advise the same.
func (n *numbers) alike(a, b int32) bool { return a == b || n.same[a] == n.same[b] }

// patterns turns a word of each group's plane into the patterns of 64 rows.
func patterns(planes [][]uint64, word int, out *[64]uint64) {
	*out = [64]uint64{}
	for i, p := range planes {
		for m := p[word]; m != 0; m &= m - 1 {
			out[bits.TrailingZeros64(m)&63] |= 1 << (i & 63)
		}
	}
}
