package render

import (
	"fmt"
	"slices"
	"strings"

	"crus/engine/reason"
	"crus/engine/vocab"
)

// nearby is what other values within measurement error would change, of the person or one limb.
type nearby struct {
	Title string
	Items []nearMeasure
}

// nearMeasure is one measure with what would change beside it.
type nearMeasure struct {
	Label string
	Value string // "−6° ± 5.6°"
	Sides []pair // "less than −10°": what it would bring
}

// near gathers the boundaries by measure, in the order in which they are found.
func (d *drawer) near() []nearby {
	var out []nearby
	for _, b := range d.bearers {
		n := nearby{Title: b.Title}
		for _, x := range b.result.Boundaries {
			label := d.label(b.Key, x.Measure)
			i := slices.IndexFunc(n.Items, func(m nearMeasure) bool { return m.Label == label })
			if i < 0 {
				i = len(n.Items)
				n.Items = append(n.Items, nearMeasure{Label: label, Value: x.Value + " " + d.errorWords(x)})
			}
			m := &n.Items[i]
			brings := d.brings(x)
			if j := slices.IndexFunc(m.Sides, func(p pair) bool { return p.Label == x.There.Is }); j >= 0 {
				m.Sides[j].Value += "; " + brings
			} else {
				m.Sides = append(m.Sides, pair{x.There.Is, brings})
			}
		}
		if n.Items != nil {
			out = append(out, n)
		}
	}
	return out
}

// errorWords writes how far a measure can be off: "± 5.6°", "± 1 grade".
func (d *drawer) errorWords(x *reason.Near) string {
	_, name, _ := strings.Cut(x.Measure, ".")
	if m := d.v.Measure(name); m != nil && m.Kind == vocab.Grade {
		return "± " + count(int(x.Error), "grade")
	}
	return "± " + number(x.Error, x.Unit)
}

// brings says what the other side of a boundary gives.
func (d *drawer) brings(x *reason.Near) string {
	if caution, ok := strings.CutPrefix(x.Result, "caution."); ok {
		return "caution “" + within(title(caution)) + "” " + cautionBecomes(x.There.Status)
	}
	if x.Result == "applies" {
		return map[string]string{"no": "the ruleset does not apply", "yes": "the ruleset applies", "unknown": "it is not known whether the ruleset applies"}[x.There.Status]
	}
	unit := ""
	if c := d.v.Choice(x.Result); c != nil {
		unit = c.Unit.Code
	}
	return d.choiceLabel(x.Result) + ": " + becomes(reason.Could{Status: x.There.Status, Value: x.There.Value}, unit)
}

func cautionBecomes(status string) string {
	switch status {
	case reason.Fired:
		return "in force"
	case reason.Pending:
		return "pending"
	}
	return "silent"
}

// nearNotes says of one result with which other values it would change.
func (d *drawer) nearNotes(b bearer, result, unit string) []note {
	var out []note
	for _, x := range b.result.Boundaries {
		if x.Result != result {
			continue
		}
		word := becomes(reason.Could{Status: x.There.Status, Value: x.There.Value}, unit)
		if strings.HasPrefix(result, "caution.") {
			word = cautionBecomes(x.There.Status)
		}
		out = append(out, note{boundaryMark(), "close to a boundary:", word + " if " + d.label(b.Key, x.Measure) + " is " + x.There.Is + " (recorded: " + x.Value + " " + d.errorWords(x) + ")"})
	}
	return out
}

// instead is what would bring another result about.
type instead struct {
	Title string // "Right: device, articulated"
	Says  string
	Ways  [][]string // the changes of each
	Notes []string   // of each
}

func (d *drawer) instead() []instead {
	var out []instead
	for _, x := range d.o.Instead {
		i := instead{Title: d.choiceLabel(x.Choice) + ": " + valueWords(x.Wanted, x.Unit)}
		if x.Side != "" && len(d.o.Limbs) > 1 {
			i.Title = bearerTitle(x.Side) + ", " + within(i.Title)
		}
		key := x.Side
		if key == "" {
			key = "person"
		}
		switch x.Found {
		case reason.InsteadAlready:
			i.Says = "This is advised as it is."
		case reason.InsteadFound:
			i.Says = "The fewest changes that would give this:"
			if len(x.Ways) > 1 {
				i.Says = "The fewest changes that would give this, one of:"
			}
		case reason.InsteadNever:
			i.Says = "Whatever is measured on the limb, this does not come about: " + d.against(x)
		default:
			i.Says = "No way to this was found, which does not show that there is none. As things stand, " + d.against(x)
		}
		for _, w := range x.Ways {
			var changes []string
			for _, c := range w.Changes {
				words := d.label(key, c.Measure) + ": " + c.Is
				if c.From != "" {
					words += ", not " + c.From
				} else {
					words += ", if it were recorded so"
				}
				changes = append(changes, words)
			}
			i.Ways = append(i.Ways, changes)
			n := ""
			if w.Provisional {
				n = "still provisional, for other values are missing"
			}
			i.Notes = append(i.Notes, n)
		}
		out = append(out, i)
	}
	return out
}

// against says what stands against another result.
func (d *drawer) against(x *reason.Instead) string {
	var rules []string
	for _, l := range x.Limits {
		rules = append(rules, fmt.Sprintf("“%s” (%s %s)", within(title(l.Rule)), plain(l.Verb), join(plains(l.Options), "or")))
	}
	switch {
	case len(rules) == 1:
		return rules[0] + " takes it away."
	case rules != nil:
		return join(rules, "and") + " take it away."
	case !x.Favoured:
		return "no rule prefers it."
	}
	return "other options stay ahead, or rules take it away."
}
