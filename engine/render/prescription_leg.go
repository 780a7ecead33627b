package render

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"crus/engine/assess"
	"crus/engine/clinical"
	"crus/engine/figure"
	"crus/engine/reason"
)

// The drawing takes its numbers from measures and choices of the lower_limb vocabulary and from quantities of
// these names, whichever ruleset computes them. What a ruleset lacks is not drawn.
var drawnForces = []struct{ quantity, at, says string }{
	{"force_at_calf", figure.Calf, "on the calf, forward"},
	{"force_at_shin", figure.Shin, "on the shin, back"},
	{"force_at_instep", figure.Instep, "on the instep, back and down"},
	{"force_at_heel", figure.Heel, "on the heel, forward and down"},
	{"force_under_forefoot", figure.Forefoot, "under the forefoot, up"},
	{"force_at_ankle_lateral", "", "on the ankle from the lateral side"},
	{"force_at_ankle_medial", "", "on the ankle from the medial side"},
	{"force_at_shank_frontal", "", "on the shank, against the ankle's"},
	{"force_at_foot_frontal", "", "on the foot, against the ankle's"},
}

// paperWidth is what the drawing may take of the page, mm; how high it may be hangs on what else there is.
const paperWidth = 186

// drawn is a leg as the drawing sees it.
type drawn struct {
	leg      figure.Leg
	measured func(name string) float64 // mm; 0 where it is not recorded
}

func drawnLeg(a *assess.Assessment, side string) drawn {
	at := func(entries map[string]*assess.Entry, name string) float64 {
		e := entries[name]
		if e == nil || e.Value == nil {
			return 0
		}
		q, ok := e.Value.(clinical.Quantity)
		if !ok || q.Dimension() != clinical.Length {
			return 0
		}
		return q.Base()
	}
	limb := a.Limb(assess.Side(side))
	measured := func(name string) float64 { return at(limb, name) }
	leg := figure.Leg{FootLength: measured("foot_length"), HeelToBall: measured("heel_to_ball_length"), AnkleToHeelBack: measured("ankle_to_heel_back"),
		KneeHeight: measured("knee_height"), AnkleDepth: measured("ankle_girth") / math.Pi, CalfDepth: measured("calf_girth") / math.Pi}
	if medial, lateral := measured("medial_malleolus_height"), measured("lateral_malleolus_height"); medial > 0 && lateral > 0 {
		leg.AnkleHeight = (medial + lateral) / 2 // the axis runs through both
	} else {
		leg.AnkleHeight = max(medial, lateral)
	}
	return drawn{leg.Complete(at(a.Person, "height")), measured}
}

// draw draws the leg on its casting block and in its shoe, as far as these are settled, and says what was not
// recorded of it.
func (x drawn) draw(r *reason.Result, height float64) (svg string, assumed []string) {
	angle, angled := picked(r, "cast_ankle_angle")
	var views []figure.View
	if block, ok := picked(r, "cast_block_height"); ok && angled {
		views = append(views, figure.View{Title: "In the cast", Angle: angle, Under: []figure.Layer{{Name: "block", Height: block}}, Block: true})
	}
	if angled {
		views = append(views, x.inShoe(r, angle))
	} else {
		views = append(views, figure.View{Title: "The ankle's angle is not settled: drawn at a right angle", Device: x.device(r), Forces: x.forces(r)})
	}
	scale := figure.Scale(x.leg, len(views), 0, paperWidth, height)
	return figure.Side(x.leg, scale, views...), x.leg.Assumed
}

func (x drawn) inShoe(r *reason.Result, angle float64) figure.View {
	v := figure.View{Title: "In shoe and device", Angle: angle, Device: x.device(r), Forces: x.forces(r)}
	heel, ball := x.measured("shoe_heel_height"), x.measured("shoe_forefoot_height")
	if heel > 0 {
		v.Under = append(v.Under, figure.Layer{Name: "shoe", Height: max(heel-ball, 0)})
	} else {
		v.Title += " (heel of the shoe not recorded)"
	}
	if raise, ok := picked(r, "heel_raise"); ok {
		v.Under = append(v.Under, figure.Layer{Name: "raise", Height: raise})
	}
	if lean, ok := picked(r, "shank_to_vertical_target"); ok {
		v.Lean = &lean
	}
	return v
}

// picked gives a settled number, in degrees or millimetres.
func picked(r *reason.Result, choice string) (float64, bool) {
	c := r.Choices[choice]
	if c == nil {
		return 0, false
	}
	x, ok := c.Value.(float64)
	return x, ok
}

func pickedWord(r *reason.Result, choice string) string {
	if c := r.Choices[choice]; c != nil {
		w, _ := c.Value.(string)
		return w
	}
	return ""
}

func (x drawn) device(r *reason.Result) *figure.Device {
	l := x.leg
	d := &figure.Device{Shell: pickedWord(r, "shell_side")}
	switch pickedWord(r, "strut_place") {
	case "posterior":
		d.Strut = figure.Posterior
	case "anterior":
		d.Strut = figure.Anterior
	case "medial", "lateral", "medial_and_lateral":
		d.Strut = "beside"
	}
	edge := func(measure string, share float64) float64 {
		if h := x.measured(measure); h > 0 {
			return h
		}
		return share * l.KneeHeight
	}
	switch pickedWord(r, "proximal_height") { // shares of knee height: for drawing, from memory
	case "lower_third":
		d.ShellTop = 0.45 * l.KneeHeight
	case "mid_calf":
		d.ShellTop = edge("calf_height", 0.7)
	case "below_fibular_head":
		d.ShellTop = edge("fibular_head_height", 0.9) - 20
	case "tibial_tubercle":
		d.ShellTop = 0.92 * l.KneeHeight
	case "patellar_tendon":
		d.ShellTop = 0.98 * l.KneeHeight
	}
	switch pickedWord(r, "foot_plate_length") {
	case "behind_metatarsal_heads":
		d.Plate = l.HeelToBall - 10
	case "to_toe_bases":
		d.Plate = l.HeelToBall + 0.35*(l.FootLength-l.HeelToBall)
	case "full_length":
		d.Plate = l.FootLength
	}
	switch pickedWord(r, "foot_shell") {
	case "low":
		d.FootShell = 0.4 * l.AnkleHeight
	case "high_medial", "high_lateral":
		d.FootShell = 0.75 * l.AnkleHeight
	case "dorsal":
		d.FootShell, d.Dorsal = 0.4*l.AnkleHeight, true
	}
	return d
}

// quantityNamed finds a quantity by its own name, in whichever ruleset.
func quantityNamed(r *reason.Result, name string) *reason.Measured {
	if m := r.Quantities[name]; m != nil {
		return m
	}
	for _, full := range sortedKeys(r.Quantities) {
		if strings.HasSuffix(full, "."+name) && r.Quantities[full] != nil {
			return r.Quantities[full]
		}
	}
	return nil
}

func (x drawn) forces(r *reason.Result) []figure.Force {
	var out []figure.Force
	for _, f := range drawnForces {
		if m := quantityNamed(r, f.quantity); m != nil && f.at != "" && m.Unit == "N" {
			force := figure.Force{At: f.at, Newtons: m.Value}
			if m.PlusMinus != nil {
				force.PlusMinus = *m.PlusMinus
			}
			out = append(out, force)
		}
	}
	return out
}

func (x drawn) forceFields(r *reason.Result) []prescribedField {
	var out []prescribedField
	for _, f := range drawnForces {
		if m := quantityNamed(r, f.quantity); m != nil && m.Value > 0 {
			out = append(out, prescribedField{f.says, uncertain(m.Value, m.Unit, m.PlusMinus)})
		}
	}
	return out
}

// shoe lists what is recorded of the shoe: a device is prescribed for one shoe.
func (d *drawer) shoe(a *assess.Assessment, side string) []prescribedField {
	var out []prescribedField
	entries := a.Limb(assess.Side(side))
	for _, m := range d.v.Measures {
		if e := entries[m.Name]; m.Taken == "shoe" && e != nil && e.Value != nil && slices.Contains(shoeFields, m.Name) {
			out = append(out, prescribedField{m.Label, fmt.Sprint(reason.Value{V: e.Value})})
		}
	}
	return out
}

var shoeFields = []string{"shoe_will_be_worn", "shoe_heel_height", "shoe_forefoot_height", "shoe_inside_length", "shoe_opening", "shoe_depth", "shoe_insole_thickness"}
