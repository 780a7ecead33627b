package render

import (
	"slices"
	"strings"

	"crus/engine/reason"
)

// articulation is the choice whose options are written in the words of joint control.
const articulation = "articulation"

// optionWords writes the options of a choice that are picked or level; where most are level, those that are not.
func (d *drawer) optionWords(name string, c *reason.Choice, otherwise string) string {
	word := plain
	if name == articulation {
		word = control
	}
	if x, ok := c.Value.(string); ok {
		return word(x)
	}
	if len(c.Among) == 0 || c.Status != reason.IsOpen {
		return otherwise
	}
	if known := d.v.Choice(name); known != nil && len(c.Among) > 3 && len(c.Among) < len(known.Options) {
		var others []string
		for _, o := range known.Options {
			if !slices.Contains(c.Among, o) {
				others = append(others, word(o))
			}
		}
		if len(others) < len(c.Among) {
			return "any but " + join(others, "and")
		}
	}
	words := make([]string, len(c.Among))
	for i, o := range c.Among {
		words[i] = word(o)
	}
	return join(words, "or")
}

// control says what a joint does in the words of joint control (free, assist, resist, stop, hold, lock) before
// the motion: "stop plantarflexion". Other options keep their words.
func control(option string) string {
	if option == "both_stops" {
		return "stop plantarflexion and dorsiflexion"
	}
	for _, verb := range []string{"free", "assist", "resist", "stop", "hold", "lock"} {
		if motion, ok := strings.CutSuffix(option, "_"+verb); ok {
			return verb + " " + plain(motion)
		}
	}
	return plain(option)
}
