package render

import (
	"bytes"
	_ "embed"
	"html/template"
	"io"
	"strconv"
	"strings"
)

//go:embed prescription.html
var prescriptionSource string

//go:embed prescription.css
var prescriptionStyle string

// PrescriptionPage writes the summaries as one page that needs nothing else, a sheet of A4 for each leg.
func PrescriptionPage(w io.Writer, ps []*Prescription, title string) error {
	t, err := template.New("prescription").Funcs(template.FuncMap{
		"upper": strings.ToUpper, "svg": func(s string) template.HTML { return template.HTML(s) },
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

// heading is the line below the title, without the mark of its last word.
func (p *Prescription) heading() string { return p.About() + " · " + p.Digest }

// About names the assessment and the ruleset.
func (p *Prescription) About() string {
	var of []string
	for _, f := range p.Assessment {
		of = append(of, f.Value)
	}
	return "Assessment " + strings.Join(of, ", ") + " · " + p.Ruleset
}

// FigureNote says how the drawing is to be read.
func (p *Prescription) FigureNote() string {
	out := "Dorsiflexion and a forward lean are positive. Dash-dotted: axis of the shank, and square to the foot plate."
	if len(p.Assumed) > 0 {
		out += " Not recorded, drawn by proportion: " + strings.Join(p.Assumed, ", ") + "."
	}
	return out
}

// NotesLine names the notes.
func (p *Prescription) NotesLine() string {
	return "Notes in the full recommendation: " + strings.Join(p.Notes, "; ") + "."
}

// ShoeLine says what is recorded of the shoe.
func (p *Prescription) ShoeLine() string {
	if len(p.Shoe) == 0 {
		return "— Not recorded: write in heel height, forefoot height and inside length:"
	}
	return listed(p.Shoe)
}

// MadeLine says what the workshop recorded; nothing where it recorded nothing.
func (p *Prescription) MadeLine() string { return listed(p.Made) }

func listed(fields []prescribedField) string {
	var parts []string
	for _, f := range fields {
		parts = append(parts, f.Label+": "+f.Value)
	}
	if parts == nil {
		return ""
	}
	return strings.Join(parts, "; ") + "."
}

// OpenLine says what is left to do before the cast is taken.
func (p *Prescription) OpenLine() string {
	rows, provisional := 0, 0
	for _, g := range p.Groups {
		for _, r := range g.Rows {
			switch {
			case r.Firm:
			case r.decided:
				provisional++
			default:
				rows++
			}
		}
	}
	var parts []string
	if rows > 0 {
		parts = append(parts, "decide and write in the rows with a bar ("+strconv.Itoa(rows)+")")
	}
	if provisional > 0 {
		parts = append(parts, "confirm what is provisional ("+strconv.Itoa(provisional)+"): what is not recorded could change it")
	}
	if len(p.Unspoken) > 0 {
		parts = append(parts, "write in, because no rule speaks of it: "+strings.Join(p.Unspoken, "; "))
	}
	return "Before the cast: " + strings.Join(parts, ". And ") + "."
}

// SmallPrint says what kind of device and of page this is: a custom-made device after Regulation (EU) 2017/745,
// whose design the prescriber answers for.
func (p *Prescription) SmallPrint() string {
	return strings.Join(p.Usual, " ") + " Custom-made device, for the sole use of the person named above; the prescriber answers for the design characteristics on this page" +
		" (EU 2017/745, Annex XIII)."
}
