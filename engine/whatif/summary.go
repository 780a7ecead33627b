package whatif

import (
	"encoding/binary"
	"math/bits"

	"crus/engine/ruleset"
)

// summary tells apart what matters of some roots, once they are simplified: of a choice with options, what is still open,
// which options are gone, and by how much each of the others is ahead. Rules that can't change anything more are set to no.
func (q *question) summary(roots []form) string {
	id := make([]byte, 0, 4*len(roots))
	if q.topic == nil || q.topic.Numeric() {
		for _, f := range roots {
			id = binary.AppendUvarint(id, uint64(f))
		}
		return string(id)
	}
	var gone, may uint64
	var low, high [64]weight
	spoke := false
	for _, x := range q.says {
		f := roots[x.root]
		if f == no {
			continue
		}
		may |= x.say.Advice.Removes
		if f == yes {
			gone |= x.say.Advice.Removes
			spoke = true
		}
		for m := x.say.Advice.Favours; m != 0; m &= m - 1 {
			i := bits.TrailingZeros64(m)
			add(&high[i], x.say.Rule.Strength)
			if f == yes {
				add(&low[i], x.say.Rule.Strength)
			}
		}
	}
	gone |= q.beaten(gone, may, &low, &high)
	var room [256]bool
	matters := room[:0]
	for range roots {
		matters = append(matters, false)
	}
	for _, x := range q.says {
		if roots[x.root] != no {
			matters[x.root] = matters[x.root] || !spoke || (x.say.Advice.Favours|x.say.Advice.Removes)&^gone != 0
		}
	}
	least := weight{1 << 30, 1 << 30}
	for i := range q.topic.Options {
		if gone>>i&1 == 0 {
			least.strong, least.conditional = min(least.strong, low[i].strong), min(least.conditional, low[i].conditional)
		}
	}
	id = binary.AppendUvarint(id, gone)
	if spoke {
		id = append(id, 1)
	} else {
		id = append(id, 0)
	}
	for i := range q.topic.Options {
		if gone>>i&1 == 0 {
			id = binary.AppendUvarint(id, uint64(low[i].strong-least.strong))
			id = binary.AppendUvarint(id, uint64(low[i].conditional-least.conditional))
		}
	}
	for i, f := range roots {
		if f == yes {
			continue
		}
		if !matters[i] {
			roots[i] = no
			continue
		}
		id = binary.AppendUvarint(binary.AppendUvarint(id, uint64(i)), uint64(f))
	}
	return string(id)
}

func add(w *weight, s ruleset.Strength) {
	if s == ruleset.Strong {
		w.strong++
	} else {
		w.conditional++
	}
}

// beaten gives the options that can't be picked any more: another that stays is ahead of them however the rules that are
// not known come out. Only the wanted option counts where there is one, so that others need not stay after it.
func (q *question) beaten(gone, may uint64, low, high *[64]weight) (out uint64) {
	for p := range q.topic.Options {
		if gone>>p&1 == 1 || may>>p&1 == 1 && q.want != 1<<p {
			continue
		}
		for o := range q.topic.Options {
			if gone>>o&1 == 0 && low[p].above(high[o]) {
				out |= 1 << o
			}
		}
	}
	return out
}
