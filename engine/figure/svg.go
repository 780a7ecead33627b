package figure

import (
	"fmt"
	"html"
	"math"
	"strconv"
	"strings"
)

// sheet is a drawing in millimetres of paper.
type sheet struct {
	strings.Builder
	scale  float64 // paper over leg
	origin point   // of the room, on paper: x to the right, z down
}

func mm(x float64) string {
	return strconv.FormatFloat(math.Round(x*100)/100+0, 'f', -1, 64)
}

// at takes a place in the room to paper.
func (s *sheet) at(p point) point {
	return point{s.origin.x + p.x*s.scale, s.origin.z - p.z*s.scale}
}

func (s *sheet) tag(name, attrs string) { fmt.Fprintf(s, "<%s %s/>\n", name, attrs) }

// line joins places in the room.
func (s *sheet) line(class string, ps ...point) { s.path(class, ps, false) }

func (s *sheet) path(class string, ps []point, closed bool) {
	var d strings.Builder
	for i, p := range ps {
		q := s.at(p)
		d.WriteString(map[bool]string{true: "M", false: "L"}[i == 0] + mm(q.x) + " " + mm(q.z))
	}
	if closed {
		d.WriteString("Z")
	}
	s.tag("path", `class="`+class+`" d="`+d.String()+`"`)
}

// smooth draws a curve through places in the room (Catmull and Rom's spline).
func (s *sheet) smooth(class string, ps []point) {
	var d strings.Builder
	q := make([]point, len(ps))
	for i, p := range ps {
		q[i] = s.at(p)
	}
	fmt.Fprintf(&d, "M%s %s", mm(q[0].x), mm(q[0].z))
	for i := 0; i+1 < len(q); i++ {
		a, b, c, e := q[max(i-1, 0)], q[i], q[i+1], q[min(i+2, len(q)-1)]
		fmt.Fprintf(&d, "C%s %s %s %s %s %s", mm(b.x+(c.x-a.x)/6), mm(b.z+(c.z-a.z)/6), mm(c.x-(e.x-b.x)/6), mm(c.z-(e.z-b.z)/6), mm(c.x), mm(c.z))
	}
	s.tag("path", `class="`+class+`" d="`+d.String()+`"`)
}

// text writes beside a place on paper.
func (s *sheet) text(class, anchor string, p point, words string) {
	fmt.Fprintf(s, `<text class="%s" text-anchor="%s" x="%s" y="%s">%s</text>`+"\n", class, anchor, mm(p.x), mm(p.z), html.EscapeString(words))
}

// arrow draws a force that ends at a place in the room; its direction is in the room, its length on paper.
func (s *sheet) arrow(tip, toward point, length float64) (tail point) {
	n := math.Hypot(toward.x, toward.z)
	u := point{toward.x / n, -toward.z / n} // on paper
	end := s.at(tip)
	tail = point{end.x - u.x*length, end.z - u.z*length}
	neck := point{end.x - u.x*2.6, end.z - u.z*2.6}
	s.tag("line", fmt.Sprintf(`class="force" x1="%s" y1="%s" x2="%s" y2="%s"`, mm(tail.x), mm(tail.z), mm(neck.x), mm(neck.z)))
	s.tag("path", fmt.Sprintf(`class="head" d="M%s %sL%s %sL%s %sZ"`, mm(end.x), mm(end.z), mm(neck.x-u.z*1.1), mm(neck.z+u.x*1.1), mm(neck.x+u.z*1.1), mm(neck.z-u.x*1.1)))
	return tail
}

// arc draws part of a circle about a place in the room, from one direction to another: degrees forward of
// straight up. radius is on paper.
func (s *sheet) arc(class string, about point, radius, from, to float64) {
	c := s.at(about)
	place := func(deg float64) point {
		sin, cos := math.Sincos(deg * math.Pi / 180)
		return point{c.x + radius*sin, c.z - radius*cos}
	}
	a, b := place(from), place(to)
	sweep := 0
	if to > from {
		sweep = 1
	}
	s.tag("path", fmt.Sprintf(`class="%s" d="M%s %sA%s %s 0 0 %d %s %s"`, class, mm(a.x), mm(a.z), mm(radius), mm(radius), sweep, mm(b.x), mm(b.z)))
}

// degrees writes an angle with its sign; whole degrees, a real minus.
func degrees(x float64) string {
	return strings.Replace(strconv.FormatFloat(math.Round(x)+0, 'f', -1, 64), "-", "−", 1) + "°"
}
