package render

import (
	"fmt"
	"slices"
	"strings"

	"crus/engine/reason"
	"crus/engine/vocab"
)

// missing is what was not recorded: what to take next, and what would change nothing.
type missing struct {
	Items      []missed
	Later      []pair // the rest of many: by when they are taken, only their names
	Immaterial []string
}

// missed is one measure that decides something.
type missed struct {
	Label   string
	Taken   string // person | lying | standing | walking | shoe | workshop
	Reason  string // why it was not recorded
	Settles string // how much it settles
	For     string // the results that it bears on
}

// How many missing measures are shown with what they bear on, unless all is asked for, and how many
// of these results.
const (
	maxMissing = 8
	maxDecides = 4
)

// missing gathers what both limbs and the person wait for, each measure once. What was first for
// one limb stays before what was second; between limbs, what settles most leads. What bears on
// nothing but the follow-up and notes comes after the rest: it does not hold up the cast.
func (d *drawer) missing() missing {
	type entry struct {
		missed
		at      string // whose, and which
		place   int
		settles int
		decides int
		decided []string // with two limbs, the first of each says whose
		lesser  bool     // bears on nothing but the follow-up and notes
	}
	var out missing
	for _, l := range d.labels("person", d.o.WaitsFor) {
		out.Items = append(out.Items, missed{Label: l, Settles: "decides whether the ruleset applies"})
	}
	var list []*entry
	for _, b := range d.bearers {
		for i, m := range b.result.Missing {
			_, name, _ := strings.Cut(m.Measure, ".")
			at := d.side(b.Key, m.Measure) + "." + name
			k := slices.IndexFunc(list, func(e *entry) bool { return e.at == at })
			if k < 0 {
				k = len(list)
				list = append(list, &entry{at: at, place: i, missed: missed{Label: d.missingLabel(b, m.Measure, m.Label), Taken: m.Taken, Reason: m.Reason}, lesser: true})
			}
			e := list[k]
			e.place = min(e.place, i)
			e.settles += m.Settles
			e.decides += len(m.Decides)
			for k, name := range m.Decides {
				e.lesser = e.lesser && d.lesser(b, name)
				label := d.choiceLabel(name)
				if k == 0 && len(d.o.Limbs) > 1 {
					label = b.Key + ": " + label
				}
				e.decided = append(e.decided, label)
			}
		}
	}
	slices.SortStableFunc(list, func(a, b *entry) int {
		switch {
		case a.lesser != b.lesser && a.lesser:
			return 1
		case a.lesser != b.lesser:
			return -1
		case a.place != b.place:
			return a.place - b.place
		case a.settles != b.settles:
			return b.settles - a.settles
		}
		return b.decides - a.decides
	})
	later := map[string][]string{}
	for i, e := range list {
		e.Settles = settlesWords(e.settles, e.decides)
		if i < maxMissing || d.full || len(list) <= maxMissing+2 {
			e.For = d.some(e.decided, maxDecides)
			out.Items = append(out.Items, e.missed)
		} else {
			later[e.Taken] = append(later[e.Taken], e.Label)
		}
	}
	for _, stage := range append(vocab.Taken(), "") {
		if later[stage] != nil {
			out.Later = append(out.Later, pair{stage, strings.Join(later[stage], "; ")})
		}
	}
	for _, b := range d.bearers {
		for _, p := range b.result.Immaterial {
			if l := d.missingLabel(b, p, ""); !slices.Contains(out.Immaterial, l) {
				out.Immaterial = append(out.Immaterial, l)
			}
		}
	}
	return out
}

// lesser reports whether a result is one of the follow-up, or a note.
func (d *drawer) lesser(b bearer, name string) bool {
	if own, ok := strings.CutPrefix(name, "caution."); ok {
		return slices.ContainsFunc(b.result.Cautions, func(c *reason.Caution) bool { return c.Name == own && c.Level == "note" })
	}
	c := d.v.Choice(name)
	return c != nil && c.Concerns == "follow_up"
}

// missingLabel names a missing measure with its side, where it has one.
func (d *drawer) missingLabel(b bearer, path, otherwise string) string {
	_, name, _ := strings.Cut(path, ".")
	label := otherwise
	if m := d.v.Measure(name); m != nil {
		label = m.Label
	}
	if label == "" {
		label = plain(name)
	}
	if side := d.side(b.Key, path); side != "" && side != "person" {
		label += ", " + side
	}
	return label
}

// settlesWords says how many of the results that hang on a measure it settles alone.
func settlesWords(settles, decides int) string {
	switch {
	case settles == 0 && decides == 1:
		return "bears on 1 result"
	case settles == 0:
		return fmt.Sprintf("bears on %d results", decides)
	case settles == decides:
		return "settles " + count(settles, "result")
	}
	return fmt.Sprintf("settles %d of %d results", settles, decides)
}
