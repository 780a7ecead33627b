package render

import (
	"bytes"
	_ "embed"
	"html/template"
	"io"
	"slices"
	"strconv"
	"strings"

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
	Open       []string            `json:"to_be_decided"` // before the cast is taken
	Forces     []prescribedField   `json:"forces"`
	Shoe       []prescribedField   `json:"shoe"`
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
	Choice string `json:"choice"`
	Label  string `json:"label"`
	Value  string `json:"value"`
	Status string `json:"status"`
	Firm   bool   `json:"firm"` // settled or by default, and not provisional
	Mark   mark   `json:"-"`
}

type prescribedCaution struct {
	Level string `json:"level"`
	Title string `json:"title"`
	Act   string `json:"act"`
	Mark  mark   `json:"-"`
}

//go:embed prescription.html
var prescriptionSource string

//go:embed prescription.css
var prescriptionStyle string

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
			Open: []string{}, Notes: []string{}, Alerts: []string{}}
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
		p.Shoe = d.shoe(a, b.Key)
		p.Forces = leg.forceFields(b.result)
		p.Drawing, p.Assumed = leg.draw(b.result, p.fit())
		out = append(out, p)
	}
	return out
}

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
				x := prescribedRow{Choice: name, Label: r.Label, Value: r.Value, Status: r.Status, Mark: r.Mark, Firm: !c.Provisional && (c.Status == reason.Settled || c.Status == reason.Default)}
				switch {
				case c.Status == reason.Unanswered:
					p.Open = append(p.Open, r.Label)
					continue
				case c.Status == reason.Default && x.Firm:
					x.Value += " (by default)"
				case c.Status == reason.LeftToClinician:
					x.Value, x.Status = "", "the clinician decides"
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

// PrescriptionPage writes the summaries as one page that needs nothing else, a sheet of A4 for each leg.
func PrescriptionPage(w io.Writer, ps []*Prescription, title string) error {
	t, err := template.New("prescription").Funcs(template.FuncMap{
		"join": strings.Join, "upper": strings.ToUpper, "svg": func(s string) template.HTML { return template.HTML(s) },
	}).Parse(prescriptionSource)
	if err != nil {
		return err
	}
	var b bytes.Buffer
	if err := t.Execute(&b, map[string]any{"Legs": ps, "Title": title, "Style": template.CSS(prescriptionStyle)}); err != nil {
		return err
	}
	_, err = io.WriteString(w, clean(b.String()))
	return err
}

// Drawing gives the drawing of a leg alone; false where there is none of that side.
func Drawing(ps []*Prescription, side string) (string, bool) {
	i := slices.IndexFunc(ps, func(p *Prescription) bool { return side == "" || p.Side == side })
	if i < 0 {
		return "", false
	}
	return ps[i].Drawing, true
}
