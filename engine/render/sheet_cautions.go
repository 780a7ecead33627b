package render

import (
	"slices"
	"strings"

	"crus/engine/reason"
)

// caution is one caution. What both limbs have alike stands once.
type caution struct {
	Name    string
	Title   string
	Mark    mark
	Level   string // contraindication | precaution | note
	State   string // fired | pending | provisional
	For     string // left, right, both limbs, or "" for the person
	Says    string
	Act     string
	Basis   string // with its sources
	From    string // the ruleset that it comes from, where that is built on
	Used    []pair // recorded values
	Pending bool
	When    string // of a pending one: what brings it into force, in one line
	Notes   []note
	Steps   traced
}

// cautions gathers those of the person and of both limbs, gravest first, those that hold before
// those that could.
func (d *drawer) cautions() []caution {
	var out []caution
	for _, b := range d.bearers {
		for _, c := range b.result.Cautions {
			x := d.caution(b, c)
			if i := slices.IndexFunc(out, func(y caution) bool { return alike(x, y) }); i >= 0 {
				out[i].For = "both limbs"
				continue
			}
			out = append(out, x)
		}
	}
	slices.SortStableFunc(out, func(a, b caution) int {
		if a.Level != b.Level {
			return levelRank(a.Level) - levelRank(b.Level)
		}
		if a.Pending != b.Pending {
			if b.Pending {
				return -1
			}
			return 1
		}
		return 0
	})
	return out
}

func (d *drawer) caution(b bearer, c *reason.Caution) caution {
	x := caution{Name: c.Name, Title: title(c.Name), Mark: levelMark(c.Level), Level: plain(c.Level), State: stateWords(c.State),
		Says: d.saysOf(c), Act: d.read(c.Act), Basis: basisWords(c.Basis, d.citeKeys(c.Name, c.Cites)), Pending: c.State == reason.Pending, From: from(c.Name),
		Steps: d.traced("caution", c.Name, stateWords(c.State), "when", c.Trace)}
	if b.Key != "person" {
		x.For = b.Key
	}
	if c.Trace != nil {
		u := d.used(b, c.Name)
		u.take(c.Trace.When)
		x.Used = u.values
	}
	near := d.nearNotes(b, "caution."+c.Name, "")
	if !x.Pending && !c.Provisional {
		x.Notes = near
		return x
	}
	if !x.Pending {
		x.State = "provisional"
	}
	waits := d.decidedBy(b, "caution."+c.Name)
	if waits == nil {
		waits = d.labels(b.Key, c.WaitsFor)
	}
	x.When = "waits for " + d.some(waits, maxWaits)
	var failed []string
	if c.Failed != "" {
		failed = append(failed, d.read(c.Failed))
		x.When = "can't be worked out: " + d.read(c.Failed)
	}
	for _, y := range c.CouldBecome {
		if y.Status == reason.Fired && len(y.When) <= maxWhen {
			x.When = "in force " + d.under(b.Key, y)
		}
	}
	x.Notes = d.provisional(b.Key, waits, failed, c.CouldBecome, c.Explored, func(y reason.Could) string {
		if y.Status == reason.Fired {
			return "in force"
		}
		return "silent"
	})
	x.Notes = append(x.Notes, near...)
	return x
}

// alike reports whether two limbs have the same caution for the same reason.
func alike(a, b caution) bool {
	return a.Name == b.Name && a.Says == b.Says && a.Act == b.Act && a.State == b.State && slices.Equal(a.Used, b.Used) && a.For != "" && b.For != "" && slices.Equal(a.Notes, b.Notes)
}

// Stands is the caution's level, state and limb in words: "precaution, pending, left".
func (c caution) Stands() string {
	words := []string{c.Level}
	if c.State != "fired" {
		words = append(words, c.State)
	}
	if c.For != "" {
		words = append(words, c.For)
	}
	return strings.Join(words, ", ")
}

// saysOf gives what a caution says. One that waits says nothing yet: its words must not read as a fact.
func (d *drawer) saysOf(c *reason.Caution) string {
	if c.State == reason.Pending {
		return "It would say: " + d.read(c.Says)
	}
	return d.read(c.Says)
}
