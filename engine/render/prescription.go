package render

import (
	"strconv"

	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/vocab"
)

// Prescription is the summary for the workshop of what is prescribed for one leg: a page to print, sign and
// pin to the cast.
type Prescription struct {
	Side       string              `json:"side"`
	Ruleset    string              `json:"ruleset"`
	Digest     string              `json:"digest"`
	Assessment []prescribedField   `json:"assessment"`
	Groups     []prescribedGroup   `json:"prescribed"`
	Open       []string            `json:"to_be_decided"`  // or to be confirmed, before the cast is taken
	Unspoken   []string            `json:"no_rule_speaks"` // of these; they have no row
	Forces     []prescribedField   `json:"forces"`
	Shoe       []prescribedField   `json:"shoe"`
	Made       []prescribedField   `json:"made"` // what the workshop recorded of lay-up and test
	Cautions   []prescribedCaution `json:"cautions"`
	Notes      []string            `json:"notes"` // the titles of the cautions that are only notes
	Alerts     []string            `json:"alerts"`
	Usual      []string            `json:"usual_cautions"`
	Assumed    []string            `json:"drawn_from"` // what of the leg was not recorded, and from what it is drawn
	Drawing    string              `json:"-"`          // SVG
	Size       string              `json:"-"`          // how closely it is set to stay on one page: wide, close, closest
}

type prescribedField struct {
	Label string `json:"label"`
	Value string `json:"value"`
}

type prescribedGroup struct {
	Title string          `json:"title"`
	Rows  []prescribedRow `json:"rows"`
}

type prescribedRow struct {
	Choice  string `json:"choice"`
	Label   string `json:"label"`
	Value   string `json:"value"`
	Status  string `json:"status"`
	Firm    bool   `json:"firm"` // settled or by default, and not provisional
	decided bool   // settled or by default
	Mark    mark   `json:"-"`
}

type prescribedCaution struct {
	Level string `json:"level"`
	Title string `json:"title"`
	Act   string `json:"act"`
	Mark  mark   `json:"-"`
}

// Prescriptions gives the summary of each leg that a device is asked for; none where the ruleset does not
// apply.
func Prescriptions(o *reason.Outcome, a *assess.Assessment, v *vocab.Vocabulary) []*Prescription {
	d := newDrawer(o, v, nil, false)
	var out []*Prescription
	for _, b := range d.bearers {
		if b.Key == "person" {
			continue
		}
		p := &Prescription{Side: b.Key, Ruleset: nameVersion(o.Ruleset), Digest: short(o.Ruleset.Digest), Usual: reason.Cautions(),
			Open: []string{}, Unspoken: []string{}, Alerts: []string{}}
		if o.Ruleset.Status != "" && o.Ruleset.Status != "active" {
			p.Ruleset += ", " + plain(o.Ruleset.Status)
		}
		for _, f := range []prescribedField{{"Assessment", o.Assessment.ID}, {"Date", o.Assessment.Date}, {"Assessor", o.Assessment.Assessor}} {
			if f.Value != "" {
				p.Assessment = append(p.Assessment, f)
			}
		}
		d.prescribed(p, b)
		d.warned(p, b)
		leg := drawnLeg(a, b.Key)
		p.Shoe, p.Made = d.recorded(a, b.Key, shoeFields), d.recorded(a, b.Key, madeFields)
		if p.Shoe == nil {
			p.Open, p.Unspoken = append(p.Open, noShoe), append(p.Unspoken, noShoe)
		}
		p.Forces, p.Assumed = leg.forceFields(b.result), leg.leg.Assumed
		drawing := leg.drawing(b.Key, b.result)
		p.Drawing = drawing.SVG(p.fit(drawing))
		p.Assessment, p.Groups, p.Cautions, p.Notes = list(p.Assessment), list(p.Groups), list(p.Cautions), list(p.Notes)
		p.Forces, p.Shoe, p.Made, p.Assumed = list(p.Forces), list(p.Shoe), list(p.Made), list(p.Assumed)
		out = append(out, p)
	}
	return out
}

// list is a list that JSON writes as one although it is empty.
func list[T any](x []T) []T { return append([]T{}, x...) }

// prescribed sorts the choices of a leg, and those made once for the person, into what is prescribed and what
// is still to be decided.
func (d *drawer) prescribed(p *Prescription, limb bearer) {
	bearers := []bearer{limb}
	for _, b := range d.bearers {
		if b.Key == "person" {
			bearers = append(bearers, b)
		}
	}
	for _, concern := range vocab.Concerns() {
		g := prescribedGroup{Title: concernTitle(concern)}
		for _, b := range bearers {
			for _, name := range d.choices(b.result, concern) {
				c := b.result.Choices[name]
				r := d.row(b, name, c)
				x := prescribedRow{Choice: name, Label: r.Label, Value: r.Value, Status: r.Status, Mark: r.Mark, decided: c.Status == reason.Settled || c.Status == reason.Default}
				x.Firm = x.decided && !c.Provisional
				if len(c.Among) > 0 || name == articulation {
					x.Value = d.optionWords(name, c, x.Value)
				}
				switch {
				case c.Status == reason.Unanswered && concern == "follow_up": // these rows are always there
					x.Value, x.Status = "", "no rule speaks of it"
				case c.Status == reason.Unanswered:
					p.Open, p.Unspoken = append(p.Open, r.Label), append(p.Unspoken, r.Label)
					continue
				case c.Status == reason.Default && x.Firm:
					x.Value += " (by default)"
				case c.Status == reason.LeftToClinician:
					x.Value, x.Status = "", "the clinician decides"
					if c.Provisional {
						x.Status += ", provisional"
					}
				}
				if !x.Firm {
					p.Open = append(p.Open, r.Label)
				}
				g.Rows = append(g.Rows, x)
			}
		}
		if g.Rows != nil {
			p.Groups = append(p.Groups, g)
		}
	}
}

// warned gathers the cautions in force for a leg and the person.
func (d *drawer) warned(p *Prescription, limb bearer) {
	for _, c := range d.cautions() {
		if c.Pending || c.For != "" && c.For != limb.Key && c.For != "both limbs" {
			continue
		}
		if c.Level == "note" {
			p.Notes = append(p.Notes, c.Title)
			continue
		}
		act := c.Act
		if act == "" {
			act = c.Says
		}
		p.Cautions = append(p.Cautions, prescribedCaution{c.Level, c.Title, act, c.Mark})
	}
	pending := 0
	for _, c := range d.cautions() {
		if c.Pending && (c.For == "" || c.For == limb.Key || c.For == "both limbs") {
			pending++
		}
	}
	if pending > 0 {
		p.Alerts = append(p.Alerts, "Cautions that wait for what is not recorded: "+strconv.Itoa(pending)+". See the full recommendation.")
	}
	if d.o.Applies == "unknown" {
		p.Alerts = append(p.Alerts, "It is not known whether this ruleset applies to the person: everything here is provisional.")
	}
}
