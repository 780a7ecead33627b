package figure

import (
	"math"
	"unicode/utf8"
)

// box is a rectangle on paper; that with x1 < x0 is empty.
type box struct{ x0, z0, x1, z1 float64 }

var nowhere = box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}

func (b box) with(c box) box {
	return box{min(b.x0, c.x0), min(b.z0, c.z0), max(b.x1, c.x1), max(b.z1, c.z1)}
}

func (b box) grown(by float64) box { return box{b.x0 - by, b.z0 - by, b.x1 + by, b.z1 + by} }

func (b box) meets(c box) bool { return b.x0 < c.x1 && c.x0 < b.x1 && b.z0 < c.z1 && c.z0 < b.z1 }

// crosses tells whether a line runs through the box (Liang and Barsky's clipping).
func (b box) crosses(s stroke) bool {
	from, to := 0.0, 1.0
	dx, dz := s.b.x-s.a.x, s.b.z-s.a.z
	for _, side := range [][2]float64{{-dx, s.a.x - b.x0}, {dx, b.x1 - s.a.x}, {-dz, s.a.z - b.z0}, {dz, b.z1 - s.a.z}} {
		p, q := side[0], side[1]
		switch {
		case p == 0 && q < 0:
			return false
		case p < 0:
			from = max(from, q/p)
		case p > 0:
			to = min(to, q/p)
		}
	}
	return from < to
}

// nearest is the place of the box that is nearest to p.
func (b box) nearest(p point) point {
	return point{min(max(p.x, b.x0), b.x1), min(max(p.z, b.z0), b.z1)}
}

// The sizes of letters, mm of paper, by the class of the text. 2.5 mm are 7 points.
const (
	titleSize = 3.4
	forceSize = 2.9
	smallSize = 2.5
)

// wordsBox is what words take on paper: a usual letter is 0.55 of the size wide, a bold one 0.6.
func wordsBox(class string, size float64, middle point, words string) box {
	em := 0.55
	if class == "title" || class == "newtons" {
		em = 0.6
	}
	w, h := em*size*float64(utf8.RuneCountInString(words)), 0.98*size
	return box{middle.x - w/2, middle.z - h/2, middle.x + w/2, middle.z + h/2}
}

// label writes words beside a place on paper where nothing is yet, as near as can be; the directions (degrees,
// 0 to the right, 90 up) are tried in their order. Words that stand far off get a line to their place.
func (s *sheet) label(class string, size float64, to point, words string, directions ...float64) {
	const near, step, far, beside = 1.2, 0.8, 90, 2.2
	at0 := wordsBox(class, size, point{}, words)
	for off := near; off < far; off += step {
		for _, deg := range directions {
			sin, cos := sincos(deg)
			middle := point{to.x + cos*off + round1(cos)*at0.x1, to.z - sin*off - round1(sin)*at0.z1}
			b := wordsBox(class, size, middle, words)
			lead := stroke{to, b.nearest(to)}
			if !s.free(b, lead) {
				continue
			}
			if off > beside {
				s.lineOnPaper("lead", false, lead.a, lead.b)
			}
			s.text(class, size, middle, words)
			return
		}
	}
	s.text(class, size, point{s.ink.x1 - at0.x0 + 2, to.z}, words)
}

// round1 makes a direction lean on a side of the box or on its middle.
func round1(x float64) float64 { return min(max(1.4*x, -1), 1) }

// free tells whether words can stand in a box, and be led to from their place.
func (s *sheet) free(b box, lead stroke) bool {
	for _, l := range s.labels {
		if l.meets(b.grown(0.5)) || l.grown(0.2).crosses(lead) {
			return false
		}
	}
	clear := b.grown(0.35)
	for _, x := range s.strokes {
		if clear.crosses(x) {
			return false
		}
	}
	return true
}
