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
	var gone uint64
	spoke := false
	for _, x := range q.says {
		if roots[x.root] == yes {
			gone |= x.say.Advice.Removes
			spoke = true
		}
	}
	var ahead [64]weight
	var room [256]bool
	matters := room[:0]
	for range roots {
		matters = append(matters, false)
	}
	for _, x := range q.says {
		f := roots[x.root]
		if f == no {
			continue
		}
		favours := x.say.Advice.Favours &^ gone
		matters[x.root] = matters[x.root] || !spoke || favours != 0 || x.say.Advice.Removes&^gone != 0
		if f == yes {
			for m := favours; m != 0; m &= m - 1 {
				add(&ahead[bits.TrailingZeros64(m)], x.say.Rule.Strength)
			}
		}
	}
	least := weight{1 << 30, 1 << 30}
	for i := range q.topic.Options {
		if gone>>i&1 == 0 {
			least.strong, least.conditional = min(least.strong, ahead[i].strong), min(least.conditional, ahead[i].conditional)
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
			id = binary.AppendUvarint(id, uint64(ahead[i].strong-least.strong))
			id = binary.AppendUvarint(id, uint64(ahead[i].conditional-least.conditional))
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
