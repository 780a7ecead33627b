package figure

import (
	"fmt"
	"html"
	"math"
	"strconv"
	"strings"
)

// sheet is a drawing in millimetres of paper. It keeps count of where it has drawn.
type sheet struct {
	strings.Builder
	scale   float64 // paper over leg
	origin  point   // of the room, on paper: x to the right, z down
	newtons float64 // the greatest force of the whole drawing, whose arrow is the longest
	ink     box     // everything drawn
	strokes []stroke
	labels  []box
}

// stroke is a piece of a line on paper.
type stroke struct{ a, b point }

// mm writes a length of paper; a micrometre is finer than any printer.
func mm(x float64) string {
	return strconv.FormatFloat(math.Round(x*1000)/1000+0, 'f', -1, 64)
}

// at takes a place in the room to paper.
func (s *sheet) at(p point) point {
	return point{s.origin.x + p.x*s.scale, s.origin.z - p.z*s.scale}
}

func (s *sheet) tag(name, attrs string) { fmt.Fprintf(s, "<%s %s/>\n", name, attrs) }

// drawn remembers a line on paper.
func (s *sheet) drawn(q ...point) {
	for i, p := range q {
		s.ink = s.ink.with(box{p.x, p.z, p.x, p.z}.grown(0.5))
		if i > 0 {
			s.strokes = append(s.strokes, stroke{q[i-1], p})
		}
	}
}

// line joins places in the room.
func (s *sheet) line(class string, ps ...point) {
	q := make([]point, len(ps))
	for i, p := range ps {
		q[i] = s.at(p)
	}
	s.lineOnPaper(class, false, q...)
}

// area fills the polygon between places in the room.
func (s *sheet) area(class string, ps ...point) {
	q := make([]point, len(ps))
	for i, p := range ps {
		q[i] = s.at(p)
	}
	s.lineOnPaper(class, true, q...)
}

func (s *sheet) lineOnPaper(class string, closed bool, q ...point) {
	var d strings.Builder
	for i, p := range q {
		d.WriteString(map[bool]string{true: "M", false: "L"}[i == 0] + mm(p.x) + " " + mm(p.z))
	}
	if closed {
		d.WriteString("Z")
		q = append(q, q[0])
	}
	s.drawn(q...)
	s.tag("path", `class="`+class+`" d="`+d.String()+`"`)
}

// spline is a curve through places (Catmull and Rom's), as the four points of each of its Bézier pieces. It has a
// corner at a place that is named twice.
func spline(ps []point) [][4]point {
	var out [][4]point
	for i := 0; i+1 < len(ps); i++ {
		a, b, c, e := ps[max(i-1, 0)], ps[i], ps[i+1], ps[min(i+2, len(ps)-1)]
		if b == c {
			continue
		}
		out = append(out, [4]point{b, {b.x + (c.x-a.x)/6, b.z + (c.z-a.z)/6}, {c.x - (e.x-b.x)/6, c.z - (e.z-b.z)/6}, c})
	}
	return out
}

// flat is a curve as short straight pieces.
func flat(ps []point) []point {
	const parts = 8
	out := []point{ps[0]}
	for _, p := range spline(ps) {
		for i := 1; i <= parts; i++ {
			t := float64(i) / parts
			u := 1 - t
			a, b, c, d := u*u*u, 3*u*u*t, 3*u*t*t, t*t*t
			out = append(out, point{a*p[0].x + b*p[1].x + c*p[2].x + d*p[3].x, a*p[0].z + b*p[1].z + c*p[2].z + d*p[3].z})
		}
	}
	return out
}

// smooth draws a curve through places in the room.
func (s *sheet) smooth(class string, ps []point) {
	q := make([]point, len(ps))
	for i, p := range ps {
		q[i] = s.at(p)
	}
	var d strings.Builder
	fmt.Fprintf(&d, "M%s %s", mm(q[0].x), mm(q[0].z))
	for _, p := range spline(q) {
		fmt.Fprintf(&d, "C%s %s %s %s %s %s", mm(p[1].x), mm(p[1].z), mm(p[2].x), mm(p[2].z), mm(p[3].x), mm(p[3].z))
	}
	s.drawn(flat(q)...)
	s.tag("path", `class="`+class+`" d="`+d.String()+`"`)
}

// arrow draws a force that ends at a place in the room; its direction is in the room. It gives its tail, on
// paper, and the direction from its tip to there.
func (s *sheet) arrow(tip, toward point, f Force) (tail, away point) {
	const shortest, more, head = 4.5, 6, 2.4 // mm of paper
	length := shortest + more*min(f.Newtons/s.newtons, 1)
	n := math.Hypot(toward.x, toward.z)
	away = point{-toward.x / n, toward.z / n}
	end := s.at(tip)
	tail = point{end.x + away.x*length, end.z + away.z*length}
	neck := point{end.x + away.x*head, end.z + away.z*head}
	s.drawn(tail, end)
	s.tag("line", fmt.Sprintf(`class="force" x1="%s" y1="%s" x2="%s" y2="%s"`, mm(tail.x), mm(tail.z), mm(neck.x), mm(neck.z)))
	s.tag("path", fmt.Sprintf(`class="head" d="M%s %sL%s %sL%s %sZ"`, mm(end.x), mm(end.z), mm(neck.x-away.z*1.1), mm(neck.z+away.x*1.1), mm(neck.x+away.z*1.1), mm(neck.z-away.x*1.1)))
	return tail, away
}

// arc draws part of a circle about a place in the room, from one direction to another: degrees forward of
// straight up. radius is on paper.
func (s *sheet) arc(class string, about point, radius, from, to float64) {
	c := s.at(about)
	place := func(deg float64) point {
		sin, cos := sincos(deg)
		return point{c.x + radius*sin, c.z - radius*cos}
	}
	a, b := place(from), place(to)
	sweep := 0
	if to > from {
		sweep = 1
	}
	s.drawn(a, place((from+to)/2), b)
	s.tag("path", fmt.Sprintf(`class="%s" d="M%s %sA%s %s 0 0 %d %s %s"`, class, mm(a.x), mm(a.z), mm(radius), mm(radius), sweep, mm(b.x), mm(b.z)))
}

// text writes words whose middle is at a place on paper.
func (s *sheet) text(class string, size float64, middle point, words string) {
	b := wordsBox(class, size, middle, words)
	s.ink, s.labels = s.ink.with(b), append(s.labels, b)
	fmt.Fprintf(s, `<text class="%s" text-anchor="middle" x="%s" y="%s">%s</text>`+"\n", class, mm(middle.x), mm(middle.z+0.36*size), html.EscapeString(plain(words)))
}

// plain leaves out what XML cannot hold.
func plain(s string) string {
	return strings.Map(func(r rune) rune {
		if r < ' ' || r == 0xFFFE || r == 0xFFFF {
			return -1
		}
		return r
	}, strings.ToValidUTF8(s, ""))
}

// degrees writes an angle with its sign; whole degrees, a real minus.
func degrees(x float64) string { return strings.Replace(whole(x), "-", "−", 1) + "°" }

// whole writes a number without decimals; one that is no number of a leg, shortly.
func whole(x float64) string {
	if math.Abs(x) >= 1e6 {
		return strconv.FormatFloat(x, 'g', 3, 64)
	}
	return strconv.FormatFloat(math.Round(x)+0, 'f', -1, 64)
}
