package figure

import (
	"fmt"
	"math"
	"slices"
	"strings"
)

// Drawing is pictures of one leg beside each other, all to one scale of lengths and to one of forces.
type Drawing struct {
	Leg    Leg
	Side   []View
	Behind *Behind // nil: not drawn
}

// Room on paper, mm.
const (
	gap     = 4 // between pictures
	border  = 1
	heading = 5.5 // for titles
	noteRow = 3.4
)

// panel is one picture.
type panel struct {
	title string
	notes []string
	draw  func(*sheet)
	ink   box // as drawn with the origin at 0, 0
}

// width is what the picture and its words take, to the left and to the right of the picture's middle.
func (p panel) width() (half float64) {
	return max((p.ink.x1-p.ink.x0)/2, p.words())
}

// words is what its title and notes take to either side.
func (p panel) words() float64 {
	half := wordsBox("title", titleSize, point{}, p.title).x1
	for _, n := range p.notes {
		half = max(half, wordsBox("small", smallSize, point{}, n).x1)
	}
	return half
}

// layout is how the pictures lie on paper.
type layout struct {
	panels        []panel
	width, height float64
	base          float64 // of the room's origin
	most          float64 // newtons
}

func (d Drawing) layout(scale float64) layout {
	leg := d.Leg.usable()
	var out layout
	for _, v := range d.Side {
		notes := v.Notes
		if heightOf(v.Under) > steepest*leg.HeelToBall {
			notes = append(slices.Clone(notes), "heel higher than this foot can stand on:", "not to scale")
		}
		out.panels = append(out.panels, panel{title: v.Title, notes: notes, draw: func(s *sheet) { s.side(leg, v) }})
		out.most = max(out.most, greatest(v.Forces))
	}
	if b := d.Behind; b != nil {
		out.panels = append(out.panels, panel{title: b.Title, notes: b.Notes, draw: func(s *sheet) { s.behind(leg, *b) }})
		out.most = max(out.most, greatest(b.Forces))
	}
	rows := 0
	above, below := 0.0, 0.0
	for i := range out.panels {
		p := &out.panels[i]
		s := &sheet{scale: 1 / scale, newtons: out.most, ink: nowhere}
		p.draw(s)
		p.ink = s.ink
		above, below = max(above, -s.ink.z0), max(below, s.ink.z1)
		rows = max(rows, len(p.notes))
		out.width += 2*p.width() + gap
	}
	out.width += 2*border - gap
	out.base = border + heading + float64(rows)*noteRow + above
	out.height = out.base + below + border
	if n := len(out.panels); n > 0 { // the bar of the scale stands beside the last title
		last := out.panels[n-1]
		out.width = max(out.width, out.width-border-last.width()+last.words()+gap+max(100/scale, barWords)+border)
	}
	return out
}

// barWords is what the words over the bar of the scale take.
const barWords = 0.55 * smallSize * 16

func greatest(forces []Force) (n float64) {
	for _, f := range forces {
		if f.drawable() {
			n = max(n, f.Newtons)
		}
	}
	return n
}

// usual gives a scale that can be drawn to.
func usual(scale float64) float64 {
	if math.IsNaN(scale) {
		return 10
	}
	return min(max(scale, 1), 100)
}

// SVG draws the pictures, one to scale (5: a fifth of life size; 1 to 100). It measures itself in millimetres of
// paper. Numbers that are none of a leg are drawn as near to one as can be.
func (d Drawing) SVG(scale float64) string {
	scale = usual(scale)
	l := d.layout(scale)
	var b strings.Builder
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="leg" width="%smm" height="%smm" viewBox="0 0 %s %s" role="img" aria-label="The leg in its device, to scale">`+"\n",
		mm(l.width), mm(l.height), mm(l.width), mm(l.height))
	b.WriteString("<style>" + style + "</style>\n")
	x := float64(border)
	for _, p := range l.panels {
		middle := x + p.width()
		s := &sheet{scale: 1 / scale, newtons: l.most, ink: nowhere, origin: point{middle - (p.ink.x0+p.ink.x1)/2, l.base}}
		p.draw(s)
		s.text("title", titleSize, point{middle, border + 2.2}, p.title)
		for i, n := range p.notes {
			s.text("small", smallSize, point{middle, border + 5.7 + noteRow*float64(i)}, n)
		}
		b.WriteString(s.String())
		x = middle + p.width() + gap
	}
	s := &sheet{ink: nowhere}
	end := l.width - border
	long := 100 / scale
	s.text("small", smallSize, point{end - max(long, barWords)/2, border + 2}, "100 mm at 1:"+mm(scale))
	s.tag("path", fmt.Sprintf(`class="measure bar" d="M%s %sV%sH%sV%s"`, mm(end-long), mm(border+4), mm(border+5), mm(end), mm(border+4)))
	b.WriteString(s.String() + "</svg>\n")
	return b.String()
}

// Fit gives the largest of the usual scales at which the pictures fit on paper of a width and height, mm: 5 for
// one to five. If none fits it gives the smallest.
func (d Drawing) Fit(width, height float64) float64 {
	const smallest = 20
	for _, scale := range []float64{4, 5, 6, 7, 8, 9, 10, 11, 12, 14, 16} {
		if l := d.layout(scale); l.width <= width && l.height <= height {
			return scale
		}
	}
	return smallest
}

const style = `.leg{font-family:"Liberation Sans",Arial,sans-serif;color:#1c1c1c}
.leg .skin{fill:#f3ece4;stroke:#6b5f55;stroke-width:.3}.leg .ground{stroke:#1c1c1c;stroke-width:.5}
.leg .under{fill:#d9d9d9;stroke:#444;stroke-width:.25}.leg .raise{fill:#fff;stroke:#444;stroke-width:.25;stroke-dasharray:.8 .5}
.leg .shell{fill:none;stroke:#154a6b;stroke-width:1.3;stroke-linecap:round;stroke-linejoin:round}.leg .strut{fill:none;stroke:#154a6b;stroke-width:.9;stroke-dasharray:2.2 .9}
.leg .axis{stroke:#1c1c1c;stroke-width:.25;stroke-dasharray:3 .8 .6 .8;fill:none}.leg .vertical{stroke:#1c1c1c;stroke-width:.2;fill:none}.leg .target{stroke:#7a3b00;stroke-width:.35;stroke-dasharray:1.4 .9;fill:none}
.leg .arc{stroke:#1c1c1c;stroke-width:.3;fill:none}.leg .measure{stroke:#1c1c1c;stroke-width:.25;fill:none}.leg .lead{stroke:#444;stroke-width:.18;fill:none}
.leg .force{stroke:#8c1c13;stroke-width:.7}.leg .head{fill:#8c1c13}.leg .joint{fill:#fff;stroke:#1c1c1c;stroke-width:.3}
.leg text{fill:#1c1c1c;font-size:2.9px}.leg .title{font-size:3.4px;font-weight:bold}.leg .small{font-size:2.5px}.leg .newtons{fill:#8c1c13;font-weight:bold}.leg .aimed{fill:#7a3b00}`
