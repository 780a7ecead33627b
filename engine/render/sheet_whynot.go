package render

import (
	"fmt"
	"slices"

	"crus/engine/reason"
)

// whyNots says, for one limb or the person, why the alternatives were not picked.
type whyNots struct {
	bearer
	Choices []whyNot
	Default []string // choices of which no rule spoke, so that their defaults stand
}

// whyNot is one choice with the options that were not picked.
type whyNot struct {
	Label string
	Items []pair // options (or a number), and why
}

func (d *drawer) whyNot() []whyNots {
	var out []whyNots
	for _, b := range d.bearers {
		w := whyNots{bearer: b}
		for _, name := range d.allChoices(b.result) {
			c := b.result.Choices[name]
			switch c.Status {
			case reason.Unanswered, reason.LeftToClinician:
				continue
			case reason.Default:
				w.Default = append(w.Default, d.choiceLabel(name))
				continue
			}
			items := append(d.optionsNot(c), d.numbersNot(b, c)...)
			if items != nil {
				w.Choices = append(w.Choices, whyNot{d.choiceLabel(name), items})
			}
		}
		if w.Choices != nil || w.Default != nil {
			out = append(out, w)
		}
	}
	return out
}

// optionsNot groups the options that were not picked by the reason.
func (d *drawer) optionsNot(c *reason.Choice) []pair {
	var whys []string
	options := map[string][]string{}
	for _, o := range c.Options {
		if o.State == reason.Picked {
			continue
		}
		if options[o.Why] == nil {
			whys = append(whys, o.Why)
		}
		options[o.Why] = append(options[o.Why], plain(o.Option))
	}
	var out []pair
	for _, why := range whys {
		out = append(out, pair{join(options[why], "or"), d.read(why)})
	}
	return out
}

// numbersNot says what the limits and aims on a number did, where there is more than one aim or an
// aim was not followed. What a rule says alike for both limbs stands once.
func (d *drawer) numbersNot(b bearer, c *reason.Choice) []pair {
	var out []pair
	aims := 0
	notable := c.Status == reason.Conflict
	for _, n := range c.Numbers {
		x := d.numberNot(b, c, n)
		if slices.Contains(out, x) {
			continue
		}
		out = append(out, x)
		if n.Verb == "aim" {
			aims++
			notable = notable || n.Moved != nil || n.State == reason.Outweighed
		}
	}
	if !notable && aims < 2 {
		return nil
	}
	return out
}

func (d *drawer) numberNot(b bearer, c *reason.Choice, n reason.Number) pair {
	value := number(n.Value, c.Unit)
	if n.Off != nil {
		value = uncertain(n.Value, c.Unit, &n.Off.PlusMinus)
	}
	rule := d.ruleList(b, []string{n.Rule}, "and")
	switch {
	case n.Verb != "aim":
		return pair{plain(n.Verb) + " " + value, "Limit set by " + rule + "."}
	case n.State == reason.Outweighed:
		return pair{value, fmt.Sprintf("Aim of %s, conditional: a strong aim goes before it.", rule)}
	case n.Moved != nil:
		return pair{value, fmt.Sprintf("Aim of %s, moved to %s by the limits.", rule, number(*n.Moved, c.Unit))}
	}
	return pair{value, fmt.Sprintf("Aim of %s, %s.", rule, n.Strength)}
}
