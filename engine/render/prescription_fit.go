package render

import (
	"slices"
	"strings"

	"crus/engine/figure"
)

// setting is one way to set the page: the name of its style in prescription.css, that style's size of letters and
// distance of lines, mm, and the scale of a drawing for which it is good: closer letters are worth a readable
// drawing, and the closest a drawing at all.
type setting struct {
	name       string
	size, line float64
	readable   float64
}

const point = 25.4 / 72 // mm

var settings = []setting{
	{"wide", 8.6 * point, 8.6 * point * 1.28, 8}, {"close", 8.1 * point, 8.1 * point * 1.28, 8},
	{"closer", 7.5 * point, 7.5 * point * 1.22, 12}, {"closest", 7 * point, 7 * point * 1.18, 14},
}

// What prescription.css makes of the page, mm.
const (
	pageHeight  = 279 // A4 less its margins
	pageWidth   = 186
	columnWidth = 90
	labelWidth  = 0.52*columnWidth - 1
	valueWidth  = 0.48*columnWidth - 2.8
	rowSpace    = 0.7 // padding and line of a row
	titleSpace  = 1.5 // margin and line of a heading
	smallPrint  = 6.8 * point
	writeIn     = 7.5 // a row of lines to fill in
	writeIns    = 5
	spare       = 2.5 // rounding, and what the estimate misses
)

// fit chooses how closely the page is set, so that it stays on one sheet with a drawing that can be read, and
// gives the scale of the drawing. A sheet that has more to say runs on over another page.
func (p *Prescription) fit(d figure.Drawing) (scale float64) {
	widest := d.Fit(pageWidth, pageHeight) // some drawings are wide
	for _, s := range settings {
		p.Size = s.name
		scale = d.Fit(pageWidth, pageHeight-spare-p.height(s))
		if scale <= max(s.readable, widest) {
			return scale
		}
	}
	p.Size = settings[1].name
	return d.Fit(pageWidth, pageHeight/3)
}

// height estimates what the page takes without its drawing.
func (p *Prescription) height(s setting) float64 {
	const sideWidth = 40 // of the box with the side, and its distance
	small := setting{size: smallPrint, line: smallPrint * s.line / s.size}
	head := 13*point*s.line/s.size + s.lines(pageWidth-sideWidth, "", p.heading())
	for _, a := range p.Alerts {
		head += s.lines(pageWidth-sideWidth, "! "+a, "")
	}
	total := max(head, 10) + 1.8 + writeIns*writeIn
	total += 1 + small.lines(pageWidth, "", p.FigureNote())
	_, columns := s.columns(p)
	total += 1 + columns
	total += 0.8 + s.lines(pageWidth, "Shoe.", p.ShoeLine())
	if made := p.MadeLine(); made != "" {
		total += 0.8 + s.lines(pageWidth, "Lay-up and test, as recorded.", made)
	}
	total += titleSpace + s.line
	for _, c := range p.Cautions {
		total += s.lines(pageWidth, c.Mark.Sign+" "+c.Level+": "+c.Title+".", c.Act) + 0.4
	}
	if len(p.Cautions) == 0 {
		total += s.line + 0.4
	}
	if len(p.Notes) > 0 {
		total += s.lines(pageWidth, "", p.NotesLine()) + 0.4
	}
	if len(p.Open) > 0 {
		total += s.lines(pageWidth-3.2, p.OpenLine(), "") + 2.2
	}
	return total + 1.2 + small.lines(pageWidth, "", p.SmallPrint())
}

// columns parts the tables into two columns that are as even as can be: each heading stays with its first row. It
// gives how many rows stand in the first, and how high the higher one is.
func (s setting) columns(p *Prescription) (first int, height float64) {
	var before []float64 // of each row: what is above it
	total := 0.0
	for _, g := range p.Groups {
		total += s.line + titleSpace
		for i, r := range g.Rows {
			if i == 0 {
				before = append(before, total-s.line-titleSpace)
			} else {
				before = append(before, total)
			}
			total += rowSpace + max(s.lines(labelWidth, "", r.Label), s.lines(valueWidth, r.bold(), r.usual()))
		}
	}
	first, height = len(before), total
	for i, above := range before {
		if h := max(above, total-above); h < height {
			first, height = i, h
		}
	}
	return first, height
}

// Columns gives the tables in two columns. A table that goes on in the second has its heading in the first.
func (p *Prescription) Columns() [2][]prescribedGroup {
	s := settings[max(slices.IndexFunc(settings, func(s setting) bool { return s.name == p.Size }), 0)]
	first, _ := s.columns(p)
	var out [2][]prescribedGroup
	n := 0
	for _, g := range p.Groups {
		left := min(max(first-n, 0), len(g.Rows))
		n += len(g.Rows)
		if left > 0 {
			out[0] = append(out[0], prescribedGroup{g.Title, g.Rows[:left]})
		}
		switch {
		case left == 0:
			out[1] = append(out[1], g)
		case left < len(g.Rows):
			out[1] = append(out[1], prescribedGroup{Rows: g.Rows[left:]})
		}
	}
	return out
}

// bold is what is set bold of a row: what is firm.
func (r prescribedRow) bold() string {
	if r.Firm {
		return r.Value
	}
	return ""
}

func (r prescribedRow) usual() string {
	if r.Firm {
		return ""
	}
	return r.Value + " " + r.Mark.Sign + " " + r.Status
}

// lines gives the height of a text that begins bold and goes on as usual, broken between words.
func (s setting) lines(width float64, bold, usual string) float64 {
	n, used := 1, 0.0
	set := func(text string, bold bool) {
		for _, word := range strings.Fields(text) {
			w := 0.0
			for _, r := range word {
				w += letter(r, bold) * s.size
			}
			if used > 0 && used+w > width {
				n, used = n+1, 0
			}
			for ; w > width; w -= width { // a word longer than a line is broken inside
				n++
			}
			used += w + letter(' ', bold)*s.size
		}
	}
	set(bold, true)
	set(usual, false)
	return float64(n) * s.line
}

// widths are those of the letters of Helvetica, to which those of the page's face are equal, in thousandths of their
// size: Adobe's font metrics of Helvetica and Helvetica-Bold, from memory; a test holds the page against them.
var widths = [2][]struct {
	width   float64
	letters string
}{{
	{222, "'ijl|’"}, {278, " !,./:;I[]\\ft·"}, {340, "()-r`{}\"“”"}, {400, "*°"}, {500, "ckscvxyzJ"}, {556, "0123456789#$_?abdeghnopquL–"}, {584, "+<=>~−±"},
	{611, "FTZ"}, {667, "ABEKPSVXY&"}, {722, "CDHNRUw"}, {778, "GOQ"}, {833, "Mm"}, {889, "%"}, {944, "W"}, {1015, "@"},
}, {
	{278, " ,./I\\ijl|'’"}, {333, "!()-:;[]ft`·"}, {400, "r*°{}"}, {500, "z\"“”"}, {556, "0123456789#$_aceksvxyJ–"}, {584, "+<=>~−±"},
	{611, "bdghnopquFLTZ?"}, {667, "EPSVXY"}, {722, "ABCDHKNRU&"}, {778, "GOQw"}, {833, "M"}, {889, "m%"}, {944, "W"}, {1000, "@"},
}}

// letter is how wide a letter is, as a share of its size; a sign of another face is as wide as it is high.
func letter(r rune, bold bool) float64 {
	i := 0
	if bold {
		i = 1
	}
	for _, g := range widths[i] {
		if strings.ContainsRune(g.letters, r) {
			return g.width / 1000
		}
	}
	return 1.1
}
