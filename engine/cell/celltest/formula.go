package celltest

import (
	"fmt"
	"slices"
	"strings"

	"crus/engine/biomech"
	"crus/engine/clinical"
	"crus/engine/vocab"
)

// dimensions lists the dimensions of which something can be read where the drawer is.
func (d *drawer) dimensions() (out []clinical.Dimension) {
	add := func(x clinical.Dimension) {
		if !slices.Contains(out, x) {
			out = append(out, x)
		}
	}
	for _, m := range d.readable(ofKind(vocab.Quantity)) {
		add(m.unit.Dimension)
	}
	for _, f := range d.known(func(f *fact) bool { return f.dimension != "" }) {
		add(f.dimension)
	}
	return out
}

// ofFormula compares a formula or a quantity with a constant or another; empty where there is nothing to
// make one of.
func (d *drawer) ofFormula() string {
	if d.may(Biomech) && d.chance(30) {
		if text := d.biomechanical(); text != "" {
			return text
		}
	}
	dims := d.dimensions()
	if len(dims) == 0 {
		return ""
	}
	dim := one(d, dims)
	left := d.formula(dim, 2)
	right := d.plain(dim)
	if d.may(Linear) && d.may(Pairs) && d.chance(25) {
		right = d.formula(dim, 1)
	}
	if d.may(Failing) && d.chance(15) {
		return fmt.Sprintf("%s / %s %s ratio(%s)", closed(left), closed(d.formula(dim, 1)), one(d, orders()), one(d, []string{"1", "0", "0.5", "2"}))
	}
	return fmt.Sprintf("%s %s %s", left, one(d, orders()), right)
}

// plain writes a constant of a dimension that fits what can be read of it.
func (d *drawer) plain(dim clinical.Dimension) string {
	for _, m := range d.measures {
		if m.kind == vocab.Quantity && m.unit.Dimension == dim {
			return fmt.Sprintf("%s(%s)", clinical.LiteralFor(m.unit), number(m.grid(d, 0)))
		}
	}
	return fmt.Sprintf("%s(%d)", clinical.LiteralFor(dim.Base()), d.between(-2, 10))
}

// leaf writes a measure or a quantity of a dimension, or a constant.
func (d *drawer) leaf(dim clinical.Dimension) string {
	measures := d.readable(func(m *measure) bool { return m.kind == vocab.Quantity && m.unit.Dimension == dim })
	facts := d.known(ofDimension(dim))
	var dates []*measure
	if dim == clinical.Time && d.may(Dates) && d.may(Failing) {
		dates = d.readable(ofKind(vocab.Date))
	}
	n := len(measures) + len(facts) + len(dates)
	if n == 0 || d.chance(10) {
		return d.plain(dim)
	}
	i := d.Int(n)
	switch {
	case i < len(measures):
		return d.path(measures[i])
	case i < len(measures)+len(facts):
		return d.factPath(facts[i-len(measures)])
	}
	return "since(" + d.path(dates[i-len(measures)-len(facts)]) + ")"
}

// formula draws a formula of a dimension with at most so many levels. It can stand beside a comparison.
func (d *drawer) formula(dim clinical.Dimension, depth int) string {
	if depth == 0 || !d.chance(75) {
		return d.leaf(dim)
	}
	forms := []func(clinical.Dimension, int) string{}
	if d.may(Linear) {
		forms = append(forms, d.sum, d.sum, d.multiple)
	}
	if d.may(Piecewise) {
		forms = append(forms, d.absolute, d.furthest, d.eitherOf)
	}
	if d.may(Biomech) {
		forms = append(forms, d.computed)
	}
	if d.may(Failing) {
		forms = append(forms, d.scaled)
	}
	if len(forms) == 0 {
		return d.leaf(dim)
	}
	return one(d, forms)(dim, depth-1)
}

func (d *drawer) sum(dim clinical.Dimension, depth int) string {
	return fmt.Sprintf("%s%s%s", d.formula(dim, depth), one(d, []string{" - ", " + "}), closed(d.formula(dim, depth)))
}

func (d *drawer) multiple(dim clinical.Dimension, depth int) string {
	x := closed(d.formula(dim, depth))
	switch d.Int(4) {
	case 0:
		return x + " * " + one(d, []string{"2", "0.5", "-1", "3"})
	case 1:
		return x + " / " + one(d, []string{"2", "4.0", "-2"})
	case 2:
		return one(d, []string{"2", "0.5", "-1.5"}) + " * " + x
	}
	return "-" + x
}

func (d *drawer) absolute(dim clinical.Dimension, depth int) string {
	return "abs(" + d.formula(dim, depth) + ")"
}

func (d *drawer) furthest(dim clinical.Dimension, depth int) string {
	text := one(d, []string{"least(", "greatest("}) + d.formula(dim, depth) + ", " + d.formula(dim, depth)
	if d.chance(30) {
		text += ", " + d.formula(dim, depth)
	}
	return text + ")"
}

func (d *drawer) eitherOf(dim clinical.Dimension, depth int) string {
	return fmt.Sprintf("(%s ? %s : %s)", d.shallow(), d.formula(dim, depth), d.formula(dim, depth))
}

// scaled multiplies or divides by what is measured, which may be zero.
func (d *drawer) scaled(dim clinical.Dimension, depth int) string {
	x := closed(d.formula(dim, depth))
	if counts := d.readable(ofKind(vocab.Count)); len(counts) > 0 && d.chance(50) {
		return x + one(d, []string{" / ", " * "}) + d.path(one(d, counts))
	}
	other := one(d, d.dimensionsOr(dim))
	return fmt.Sprintf("%s%s(%s / %s)", x, one(d, []string{" / ", " * "}), closed(d.formula(other, depth)), closed(d.leaf(other)))
}

func (d *drawer) dimensionsOr(dim clinical.Dimension) []clinical.Dimension {
	if dims := d.dimensions(); len(dims) > 0 {
		return dims
	}
	return []clinical.Dimension{dim}
}

// usual are values that formulas hold for, by the names of inputs.
func usual(name string) string {
	return map[string]string{
		"differential": "mm(20)", "plate": "mm(180)", "run": "mm(170)", "pitch": "deg(6)", "ankle_angle": "deg(-5)", "wanted": "deg(2)",
		"knee_extended": "deg(5)", "knee_flexed": "deg(15)", "shank_to_vertical": "deg(10)", "heel_raise": "mm(10)", "ankle_to_ball": "mm(120)",
		"ankle_height": "mm(80)", "body_mass": "kg(70)", "leg_length": "mm(850)", "speed": "m_per_s(1)", "residual": "ratio(0.5)", "needed": "Nm(90)",
		"own": "Nm(40)", "dorsiflexion": "deg(10)", "from": "Nm_per_deg(3)", "to": "Nm_per_deg(5)", "clearance": "mm(15)", "index": "ratio(0.9)",
	}[name]
}

// reads reports whether the drawer can read something for an input of a formula.
func (d *drawer) reads(p biomech.Param, dims []clinical.Dimension) bool {
	switch p.Kind {
	case biomech.Count:
		return len(d.readable(ofKind(vocab.Count))) > 0
	case biomech.Word:
		return false
	}
	return slices.Contains(dims, clinical.Dimension(p.Kind)) || len(d.readable(ofScale(p.Kind))) > 0
}

// ofScale holds of the measures on the scale that a formula takes a grade of.
func ofScale(k biomech.Kind) func(*measure) bool {
	return func(m *measure) bool { return m.kind == vocab.Grade && biomech.GradeOf(m.scale.name) == k }
}

// fixed reports whether an input of a formula can be a constant.
func fixed(p biomech.Param) bool {
	return p.Kind == biomech.Word || clinical.Dimension(p.Kind).CELType() != nil
}

// argument draws what is put into a formula.
func (d *drawer) argument(p biomech.Param, dims []clinical.Dimension) string {
	switch {
	case p.Kind == biomech.Count:
		return d.path(one(d, d.readable(ofKind(vocab.Count))))
	case p.Kind == biomech.Word:
		return one(d, []string{"'female'", "'male'"})
	case !fixed(p):
		return d.path(one(d, d.readable(ofScale(p.Kind))))
	}
	dim := clinical.Dimension(p.Kind)
	if slices.Contains(dims, dim) && !d.chance(30) {
		return d.leaf(dim)
	}
	if u := usual(p.Name); u != "" {
		return u
	}
	return fmt.Sprintf("%s(%s)", clinical.LiteralFor(dim.Base()), one(d, []string{"5", "20", "100"}))
}

// call writes a call of a formula of biomech that gives one of some kinds and reads something; no formula and
// empty where there is none.
func (d *drawer) call(gives func(biomech.Kind) bool) (*biomech.Formula, string) {
	dims := d.dimensions()
	reads := func(p biomech.Param) bool { return d.reads(p, dims) }
	var can []*biomech.Formula
	for _, f := range biomech.Formulas() {
		if gives(f.Result) && slices.ContainsFunc(f.Params, reads) && !slices.ContainsFunc(f.Params, func(p biomech.Param) bool { return !fixed(p) && !reads(p) }) {
			can = append(can, f)
		}
	}
	if len(can) == 0 {
		return nil, ""
	}
	f := one(d, can)
	var args []string
	for _, p := range f.Params {
		args = append(args, d.argument(p, dims))
	}
	return f, f.Name + "(" + strings.Join(args, ", ") + ")"
}

// computed writes a formula of biomech that gives a dimension, or a plain one.
func (d *drawer) computed(dim clinical.Dimension, depth int) string {
	if _, text := d.call(func(k biomech.Kind) bool { return k == biomech.Of(dim) }); text != "" {
		return text
	}
	return d.leaf(dim)
}

// biomechanical asks about what a formula of biomech gives; empty where none can be called.
func (d *drawer) biomechanical() string {
	measured := func(k biomech.Kind) bool { return clinical.Dimension(k).CELType() != nil }
	f, text := d.call(func(k biomech.Kind) bool { return k == biomech.YesNo || k == biomech.Count || d.scaleOf(k) != nil })
	if f == nil || d.chance(50) {
		f, text = d.call(measured)
	}
	if f == nil {
		return ""
	}
	switch s := d.scaleOf(f.Result); {
	case f.Result == biomech.YesNo:
		return text
	case f.Result == biomech.Count:
		return fmt.Sprintf("%s %s %d", text, one(d, orders()), d.between(-2, 8))
	case s != nil:
		return fmt.Sprintf("%s %s %s('%s')", text, one(d, orders()), s.name, one(d, s.grades))
	}
	return fmt.Sprintf("%s %s %s", text, one(d, orders()), d.plain(clinical.Dimension(f.Result)))
}

// scaleOf gives the scale whose grades a formula gives, or nil.
func (d *drawer) scaleOf(k biomech.Kind) *scale {
	for _, s := range d.scales {
		if biomech.GradeOf(s.name) == k {
			return s
		}
	}
	return nil
}
