package replay

import (
	"math"
	"math/bits"

	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
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

// standing gives where a number stands however the undecided rules come out: each thing that could be said besides is idle.
// It is not everywhere that this is so, but nearly. fired are the planes of the groups that are surely said, possible those
// that could be.
func (b *builder) standing(c *vocab.Choice, groups []group, fired, possible []ref) ref {
	s := &said{b, c, groups, fired, possible}
	moves := never
	for i, g := range groups {
		idle := fired[i]
		switch g.key.verb {
		case ruleset.AtLeast:
			idle = b.or(idle, s.idleLimit(g, 1))
		case ruleset.AtMost:
			idle = b.or(idle, s.idleLimit(g, -1))
		default:
			low := b.or(s.some(fired, ruleset.Aim, g.key.strong, -1, g.key.at), s.ended(g, 1))
			high := b.or(s.some(fired, ruleset.Aim, g.key.strong, 1, g.key.at), s.ended(g, -1))
			idle = b.or(idle, b.and(low, high))
			if !g.key.strong {
				idle = b.or(idle, s.some(fired, ruleset.Aim, true, 0, 0))
			}
		}
		moves = b.or(moves, b.and(possible[i], idle.not()))
	}
	return moves.not()
}

// said are the things that rules surely say, or could say, of a number.
type said struct {
	*builder
	choice          *vocab.Choice
	groups          []group
	fired, possible []ref
}

// some gives where any group of a kind is said: up is 1 for those at a number or above, -1 for those at it or below, 0 for
// all.
func (s *said) some(planes []ref, verb ruleset.Verb, strong bool, up float64, at float64) ref {
	out := never
	for i, g := range s.groups {
		if g.key.verb == verb && g.key.strong == strong && (g.key.at-at)*up >= 0 {
			out = s.or(out, planes[i])
		}
	}
	return out
}

// beyond is some without those at the number itself.
func (s *said) beyond(planes []ref, verb ruleset.Verb, strong bool, up float64, at float64) ref {
	out := never
	for i, g := range s.groups {
		if g.key.verb == verb && g.key.strong == strong && (g.key.at-at)*up > 0 {
			out = s.or(out, planes[i])
		}
	}
	return out
}

// idleLimit gives where a limit changes nothing: one that is at least as tight is there, or the aims that decide lie on
// its good side, it is itself one of the choice's round numbers, and no limit could contradict it. up is 1 of at_least, -1
// of at_most.
func (s *said) idleLimit(g group, up float64) ref {
	tight := s.some(s.fired, g.key.verb, false, up, g.key.at)
	other, end := ruleset.AtMost, s.choice.Between.Hi
	if up < 0 {
		other, end = ruleset.AtLeast, s.choice.Between.Lo
	}
	if (end-g.key.at)*up < 0 || math.Mod(g.key.at, s.choice.Rounding) != 0 {
		return tight
	}
	good := func(strong bool) ref {
		return s.and(s.some(s.fired, ruleset.Aim, strong, 0, 0), s.beyond(s.fired, ruleset.Aim, strong, -up, g.key.at).not())
	}
	clash := s.beyond(s.possible, other, false, -up, g.key.at)
	aims := s.choose(s.some(s.fired, ruleset.Aim, true, 0, 0), good(true), good(false))
	return s.or(tight, s.and(aims, clash.not()))
}

// ended gives where an aim is moved to an end of the interval to which another one is moved already: up is 1 for the lower
// end.
func (s *said) ended(g group, up float64) ref {
	verb := ruleset.AtLeast
	if up < 0 {
		verb = ruleset.AtMost
	}
	out := never
	for i, limit := range s.groups {
		if limit.key.verb == verb && (limit.key.at-g.key.at)*up >= 0 {
			out = s.or(out, s.and(s.fired[i], s.some(s.fired, ruleset.Aim, g.key.strong, -up, limit.key.at)))
		}
	}
	return out
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

// grow makes the table larger, or empties it.
func (n *numbers) grow(size int) {
	keys, ids := n.keys, n.ids
	n.keys, n.ids, n.used = make([]uint64, size), make([]int32, size), 0
	for i := range n.ids {
		n.ids[i] = -1
	}
	for i, id := range ids {
		if id >= 0 && size > 0 {
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
	n.at[v], n.verdicts, n.same = id, append(n.verdicts, v), append(n.same, id)
	if v.Status == reason.Default { // it advises the same as a rule that settles it so
		v.Status = reason.Settled
		same := n.id(v)
		n.same[id] = same
	}
	return id
}

// begin begins a block: what is remembered must not grow without end, where numbers are worked out from measures.
func (n *numbers) begin() {
	if len(n.verdicts) > maxPatterns || n.used > maxPatterns {
		n.verdicts, n.same = nil, nil
		clear(n.at)
		n.grow(0)
		n.grow(1 << 8)
	}
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
