package figure

import (
	"encoding/xml"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// shape is one element of a drawing, as it stands in the SVG.
type shape struct {
	name, class string
	attrs       map[string]string
	text        string
	at          []point // the places that a path goes through; its Bézier pieces as many short lines
}

// parsed is a drawing read back. It fails where it is no well-formed XML or holds what is no number.
type parsed struct {
	width, height float64
	shapes        []shape
}

type fataler interface {
	Fatalf(format string, args ...any)
	Helper()
}

func parse(t fataler, svg string) parsed {
	t.Helper()
	if strings.Contains(svg, "NaN") || strings.Contains(svg, "Inf") {
		t.Fatalf("a number is none: %s", svg)
	}
	var out parsed
	d := xml.NewDecoder(strings.NewReader(svg))
	for {
		token, err := d.Token()
		if err == io.EOF {
			return out
		}
		if err != nil {
			t.Fatalf("%v\n%s", err, svg)
		}
		switch x := token.(type) {
		case xml.StartElement:
			s := shape{name: x.Name.Local, attrs: map[string]string{}}
			for _, a := range x.Attr {
				s.attrs[a.Name.Local] = a.Value
			}
			s.class = s.attrs["class"]
			if s.name == "svg" {
				b := strings.Fields(s.attrs["viewBox"])
				out.width, out.height = float(t, b[2]), float(t, b[3])
				if s.attrs["width"] != b[2]+"mm" || s.attrs["height"] != b[3]+"mm" {
					t.Fatalf("a unit of the drawing is not a millimetre: %v", s.attrs)
				}
			}
			s.at = path(t, s.attrs["d"])
			out.shapes = append(out.shapes, s)
		case xml.CharData:
			if len(out.shapes) > 0 {
				out.shapes[len(out.shapes)-1].text += strings.TrimSuffix(string(x), "\n")
			}
		}
	}
}

func float(t fataler, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil || math.IsNaN(x) || math.IsInf(x, 0) {
		t.Fatalf("%q is no number", s)
	}
	return x
}

var steps = regexp.MustCompile(`([MLCAHVZ])([^MLCAHVZ]*)`)

// path reads the commands that these drawings use.
func path(t fataler, d string) []point {
	t.Helper()
	var out []point
	for _, m := range steps.FindAllStringSubmatch(d, -1) {
		var n []float64
		for _, f := range strings.Fields(m[2]) {
			n = append(n, float(t, f))
		}
		switch m[1] {
		case "M", "L":
			out = append(out, point{n[0], n[1]})
		case "C":
			a := out[len(out)-1]
			for i := 1; i <= 20; i++ {
				u := float64(i) / 20
				v := 1 - u
				out = append(out, point{v*v*v*a.x + 3*v*v*u*n[0] + 3*v*u*u*n[2] + u*u*u*n[4], v*v*v*a.z + 3*v*v*u*n[1] + 3*v*u*u*n[3] + u*u*u*n[5]})
			}
		case "A":
			out = append(out, point{n[5], n[6]})
		}
	}
	return out
}

// of gives the shapes of a class, in their order.
func (p parsed) of(class string) []shape {
	var out []shape
	for _, s := range p.shapes {
		if s.class == class {
			out = append(out, s)
		}
	}
	return out
}

// words is a text with the room that it takes: a letter is at least 0.55 of the size wide.
type words struct {
	shape
	box
}

func (p parsed) words(t fataler) []words {
	size := map[string]float64{"title": 3.4, "small": 2.5, "small aimed": 2.5, "newtons": 2.9}
	var out []words
	for _, s := range p.shapes {
		if s.name != "text" {
			continue
		}
		em := size[s.class]
		if em == 0 || s.attrs["text-anchor"] != "middle" {
			t.Fatalf("a text of no known size or place: %v", s.attrs)
		}
		x, z, half := float(t, s.attrs["x"]), float(t, s.attrs["y"]), 0.55*em*float64(len([]rune(s.text)))/2
		out = append(out, words{s, box{x - half, z - 0.74*em, x + half, z + 0.2*em}})
	}
	return out
}

// The sizes that the test reads texts by are those of the style.
func TestSizesOfStyle(t *testing.T) {
	for _, want := range []string{".title{font-size:3.4px", ".small{font-size:2.5px", ".leg text{fill:#1c1c1c;font-size:2.9px"} {
		if !strings.Contains(style, want) {
			t.Errorf("the style lacks %s", want)
		}
	}
}
