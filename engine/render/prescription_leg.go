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
var drawnForces = []drawnForce{
	{"force_at_calf", figure.Calf, "on the calf, forward"},
	{"force_at_shin", figure.Shin, "on the shin, back"},
	{"force_at_instep", figure.Instep, "on the instep, back and down"},
	{"force_at_heel", figure.Heel, "on the heel, forward and up"},
	{"force_under_forefoot", figure.Forefoot, "under the forefoot, up"},
}

var drawnForcesBehind = []drawnForce{
	{"force_at_ankle_lateral", figure.AnkleLateral, "on the ankle from the lateral side"},
	{"force_at_ankle_medial", figure.AnkleMedial, "on the ankle from the medial side"},
	{"force_at_shank_frontal", figure.Shank, "on the shank, against the ankle's"},
	{"force_at_foot_frontal", figure.Foot, "on the foot, against the ankle's"},
}

// drawnForce is a quantity that is drawn as a force at a place.
type drawnForce struct{ quantity, at, says string }

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

// drawing draws the leg on its casting block and in its shoe, as far as these are settled, and from behind where
// forces are worked out there.
func (x drawn) drawing(side string, r *reason.Result) figure.Drawing {
	d := figure.Drawing{Leg: x.leg}
	angle, angled := picked(r, "cast_ankle_angle")
	if block, ok := picked(r, "cast_block_height"); ok && angled {
		d.Side = append(d.Side, figure.View{Title: "In the cast", Notes: notFirm(r, "cast_ankle_angle", "cast_block_height"), Angle: angle, Under: []figure.Layer{{Name: "block", Height: block}}, Block: true})
	}
	shoe := x.inShoe(r, angle)
	if !angled {
		shoe = figure.View{Title: "In the device", Notes: []string{"angle not settled: drawn square"}, Square: true, Device: x.device(r), Forces: x.forces(r)}
	}
	d.Side = append(d.Side, shoe)
	if forces := forcesOf(r, drawnForcesBehind); slices.ContainsFunc(forces, func(f figure.Force) bool {
		return f.Newtons > 0 && (f.At == figure.AnkleLateral || f.At == figure.AnkleMedial)
	}) {
		d.Behind = &figure.Behind{Title: "From behind, " + side, Right: side == "right", Under: shoe.Under, Contact: x.measured("shank_contact_height"), Forces: forces}
	}
	return d
}

func (x drawn) inShoe(r *reason.Result, angle float64) figure.View {
	v := figure.View{Title: "In shoe and device", Angle: angle, Device: x.device(r), Forces: x.forces(r)}
	heel, ball := x.measured("shoe_heel_height"), x.measured("shoe_forefoot_height")
	if heel > 0 {
		v.Under = append(v.Under, figure.Layer{Name: "shoe", Height: max(heel-ball, 0)})
	} else {
		v.Unsupported = true
		v.Notes = append(v.Notes, "heel of the shoe not recorded")
	}
	if raise, ok := picked(r, "heel_raise"); ok {
		v.Under = append(v.Under, figure.Layer{Name: "raise", Height: raise})
	} else if r.Choices["heel_raise"] != nil {
		v.Notes = append(v.Notes, "without a raise: not decided")
	}
	if lean, ok := picked(r, "shank_to_vertical_target"); ok {
		v.Lean = &lean
	}
	v.Notes = append(v.Notes, notFirm(r, "cast_ankle_angle", "heel_raise", "shank_to_vertical_target", "shell_side", "proximal_height", "strut_place", "foot_plate_length", "foot_shell")...)
	return v
}

// notFirm says which of the choices that are drawn are provisional.
func notFirm(r *reason.Result, choices ...string) []string {
	var soft []string
	for _, name := range choices {
		if c := decided(r, name); c != nil && c.Provisional {
			soft = append(soft, plain(name))
		}
	}
	switch {
	case len(soft) > 2:
		return []string{"provisional in part"}
	case len(soft) > 0:
		return []string{"provisional: " + strings.Join(soft, ", ")}
	}
	return nil
}

// decided gives a choice that is settled or made by default.
func decided(r *reason.Result, choice string) *reason.Choice {
	c := r.Choices[choice]
	if c == nil || c.Status != reason.Settled && c.Status != reason.Default {
		return nil
	}
	return c
}

// picked gives a decided number, in degrees or millimetres.
func picked(r *reason.Result, choice string) (float64, bool) {
	if c := decided(r, choice); c != nil {
		x, ok := c.Value.(float64)
		return x, ok
	}
	return 0, false
}

func pickedWord(r *reason.Result, choice string) string {
	if c := decided(r, choice); c != nil {
		w, _ := c.Value.(string)
		return w
	}
	return ""
}

func (x drawn) device(r *reason.Result) *figure.Device {
	l := x.leg
	d := &figure.Device{Shell: pickedWord(r, "shell_side"), Contact: x.measured("shank_contact_height")}
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

// forces gives the forces that are seen from the side. Where the shin is pressed and the calf is not, the force
// under the forefoot is the floor's on the foot plate: package biomech, Crouch.
func (x drawn) forces(r *reason.Result) []figure.Force {
	out := forcesOf(r, drawnForces)
	if onFloor(r) {
		for i := range out {
			if out[i].At == figure.Forefoot {
				out[i].At = figure.Floor
			}
		}
	}
	return out
}

func onFloor(r *reason.Result) bool {
	calf, shin := quantityNamed(r, "force_at_calf"), quantityNamed(r, "force_at_shin")
	return shin != nil && shin.Value > 0 && (calf == nil || calf.Value <= 0)
}

func forcesOf(r *reason.Result, from []drawnForce) []figure.Force {
	var out []figure.Force
	for _, f := range from {
		if m := quantityNamed(r, f.quantity); m != nil && m.Unit == "N" {
			force := figure.Force{At: f.at, Newtons: m.Value}
			if m.PlusMinus != nil {
				force.PlusMinus = *m.PlusMinus
			}
			out = append(out, force)
		}
	}
	return out
}

// forceFields lists the forces in words; one whose error is not known, to whole newtons.
func (x drawn) forceFields(r *reason.Result) []prescribedField {
	var out []prescribedField
	for _, f := range slices.Concat(drawnForces, drawnForcesBehind) {
		m := quantityNamed(r, f.quantity)
		if m == nil || m.Value <= 0 || m.Unit != "N" {
			continue
		}
		says, value := f.says, m.Value
		if f.at == figure.Forefoot && onFloor(r) {
			says = "of the floor under the ball of the foot plate, up"
		}
		if m.PlusMinus == nil {
			value = math.Round(value)
		}
		out = append(out, prescribedField{says, uncertain(value, m.Unit, m.PlusMinus)})
	}
	return out
}

// recorded lists what is recorded of some measures of a leg.
func (d *drawer) recorded(a *assess.Assessment, side string, measures []string) []prescribedField {
	var out []prescribedField
	entries := a.Limb(assess.Side(side))
	for _, m := range d.v.Measures {
		if e := entries[m.Name]; e != nil && e.Value != nil && slices.Contains(measures, m.Name) {
			out = append(out, prescribedField{m.Label, plain(fmt.Sprint(reason.Value{V: e.Value}))})
		}
	}
	return out
}

// shoeFields are recorded of the shoe: a device is prescribed for one shoe. madeFields are those of the parts and
// of the test, without which a stiffness says little.
var (
	shoeFields = []string{"shoe_will_be_worn", "shoe_heel_height", "shoe_forefoot_height", "shoe_inside_length", "shoe_opening", "shoe_depth", "shoe_insole_thickness"}
	madeFields = []string{"device_thickness_under_ball", "strut_thickness", "strut_layers", "strut_modulus", "bench_stiffness", "bench_method"}
)

// noShoe stands where nothing is recorded of the shoe.
const noShoe = "The shoe that it is made for"
