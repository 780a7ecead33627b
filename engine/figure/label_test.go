package figure

import (
	"fmt"
	"testing"
)

// Over the cases that a clinic meets no word leaves the paper, none lies on another, and none lies on an arrow.
func TestWordsAreLegible(t *testing.T) {
	for name, leg := range map[string]Leg{"adult": adult, "child": child} {
		for _, scale := range []float64{5, 8, 12} {
			for _, ankle := range []float64{-30, -20, -10, -4, 0, 5, 15} {
				for _, rise := range []float64{0, 2, 10, 30, 60} {
					for forces, d := range withForces(leg, ankle, rise) {
						legible(t, fmt.Sprintf("%s at 1:%g, ankle %g, rise %g, %s", name, scale, ankle, rise, forces), d.SVG(scale))
					}
				}
			}
		}
	}
}

// withForces gives a drawing without forces, one of a foot that is held up and one of a shank that is held back.
func withForces(leg Leg, ankle, rise float64) map[string]Drawing {
	shoe := View{Title: "In shoe and device", Notes: []string{"provisional: strut place", "without a raise: not decided"}, Angle: ankle, Under: []Layer{{"shoe", rise * 0.4}, {"raise", rise * 0.6}}, Lean: ptr(11.0)}
	cast := View{Title: "In the cast", Angle: ankle, Under: []Layer{{"block", rise}}, Block: true}
	held, back := shoe, shoe
	held.Device = &Device{Shell: Posterior, ShellTop: 0.85 * leg.KneeHeight, Strut: Posterior, Plate: leg.HeelToBall, FootShell: 30, Dorsal: true}
	held.Forces = []Force{{Calf, 37.5, 0}, {Instep, 81, 3}, {Forefoot, 69, 12}}
	back.Device = &Device{Shell: Anterior, ShellTop: 0.92 * leg.KneeHeight, Strut: Anterior, Plate: leg.FootLength, FootShell: 20}
	back.Forces = []Force{{Shin, 242, 134}, {Heel, 525, 291}, {Floor, 466, 258}}
	return map[string]Drawing{
		"no forces":  {Leg: leg, Side: []View{cast, shoe}},
		"held up":    {Leg: leg, Side: []View{cast, held}, Behind: &Behind{Title: "From behind, left", Under: shoe.Under, Forces: []Force{{AnkleLateral, 124, 12}, {Shank, 24, 3}, {Foot, 100, 11}}}},
		"held back":  {Leg: leg, Side: []View{back}, Behind: &Behind{Title: "From behind, right", Right: true, Under: shoe.Under, Forces: []Force{{AnkleMedial, 49, 0}, {Shank, 11, 0}, {Foot, 38, 0}}}},
		"not square": {Leg: leg, Side: []View{{Title: "In the device", Notes: []string{"angle not settled: drawn square"}, Square: true, Forces: back.Forces}}},
	}
}

func legible(t *testing.T, name, svg string) {
	t.Helper()
	p := parse(t, svg)
	all := p.words(t)
	page := box{0, 0, p.width, p.height}
	for i, w := range all {
		if page.with(w.box) != page {
			t.Errorf("%s: %q leaves the paper: %v of %g by %g", name, w.text, w.box, p.width, p.height)
		}
		for _, other := range all[:i] {
			if w.box.meets(other.box) {
				t.Errorf("%s: %q lies on %q", name, w.text, other.text)
			}
		}
		for _, a := range p.of("force") {
			line := stroke{point{float(t, a.attrs["x1"]), float(t, a.attrs["y1"])}, point{float(t, a.attrs["x2"]), float(t, a.attrs["y2"])}}
			if w.box.crosses(line) {
				t.Errorf("%s: %q lies on an arrow", name, w.text)
			}
		}
	}
	for _, s := range p.shapes {
		for _, q := range s.at {
			if page.with(box{q.x, q.z, q.x, q.z}) != page {
				t.Errorf("%s: a %s leaves the paper at %v", name, s.class, q)
				break
			}
		}
	}
}

// A drawing that fits on some paper does so at the scale that is given, and not at the next larger one.
func TestFit(t *testing.T) {
	for name, d := range withForces(adult, -10, 30) {
		for _, height := range []float64{60, 80, 100, 130} {
			scale := d.Fit(186, height)
			p := parse(t, d.SVG(scale))
			if scale < 20 && (p.width > 186 || p.height > height) {
				t.Errorf("%s at 1:%g takes %g by %g, for 186 by %g", name, scale, p.width, p.height, height)
			}
			if larger := parse(t, d.SVG(scale-1)); scale > 4 && scale <= 12 && larger.width <= 186 && larger.height <= height {
				t.Errorf("%s fits at 1:%g as well as at 1:%g", name, scale-1, scale)
			}
		}
	}
}
