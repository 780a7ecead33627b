package render

import "unicode/utf8"

// setting is one way to set the page: its style's name, and what it makes of text, in millimetres.
type setting struct {
	name string
	line float64 // from line to line
	char float64 // width of a usual character
}

// The settings are those of prescription.css; the widths are of its font, measured.
var settings = []setting{{"wide", 3.9, 1.52}, {"close", 3.67, 1.43}, {"closest", 3.24, 1.33}}

// What the page is made of, in millimetres.
const (
	printable    = 279 // height of A4 less its margins
	pageWidth    = 186
	columnWidth  = 90
	fixed        = 69 // heading, lines to fill in and to sign, usual cautions, caption
	rowPadding   = 0.6
	sectionSpace = 2.2
	wantedFigure = 88 // a drawing that can be read
	leastFigure  = 66
)

// fit chooses how closely the page must be set so that it stays on one sheet with a drawing that can be read,
// and gives the height that is left for the drawing.
func (p *Prescription) fit() (figure float64) {
	for _, s := range settings {
		p.Size = s.name
		if figure = printable - fixed - p.height(s); figure >= wantedFigure {
			break
		}
	}
	return max(figure, leastFigure)
}

// height estimates what the tables and the cautions take.
func (p *Prescription) height(s setting) float64 {
	lines := func(text string, width float64) float64 {
		return max(1, float64(int(float64(utf8.RuneCountInString(text))*s.char/width+0.999)))
	}
	var columns float64
	row := func(label, value string) {
		columns += max(lines(label, 0.5*columnWidth), lines(value, 0.43*columnWidth))*s.line + rowPadding
	}
	for _, g := range p.Groups {
		columns += s.line + sectionSpace
		for _, r := range g.Rows {
			value := r.Value
			if !r.Firm {
				value += "   " + r.Status
			}
			row(r.Label, value)
		}
	}
	for _, fields := range [][]prescribedField{p.Forces, p.Shoe} {
		if fields != nil {
			columns += s.line + sectionSpace
		}
		for _, f := range fields {
			row(f.Label, f.Value)
		}
	}
	total := columns/2 + 2*s.line + s.line + sectionSpace // the two columns are never quite even
	for _, c := range p.Cautions {
		total += lines(c.Level+c.Title+c.Act+"    ", pageWidth)*s.line + 0.4
	}
	list := func(items []string, lead int) {
		n := lead
		for _, i := range items {
			n += len(i) + 2
		}
		if len(items) > 0 {
			total += (float64(int(float64(n)*s.char/pageWidth+0.999)))*s.line + 1.2
		}
	}
	list(p.Notes, 34)
	list(p.Open, 48)
	list(p.Alerts, 0)
	list(p.Assumed, 0)
	return total
}
