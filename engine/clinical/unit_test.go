package clinical

import (
	"math"
	"testing"
)

// TestEachDimensionHasItsBaseUnit pins the base units, in which the recorded numbers are compared.
func TestEachDimensionHasItsBaseUnit(t *testing.T) {
	want := map[Dimension]string{
		Angle: "deg", Length: "mm", Mass: "kg", Force: "N", Moment: "N.m", Stiffness: "N.m/deg",
		Pressure: "kPa", Area: "mm2", Speed: "m/s", SpecificPower: "W/kg", Time: "s", Ratio: "1",
	}
	if len(Dimensions()) != len(want) {
		t.Fatalf("%d dimensions, want %d", len(Dimensions()), len(want))
	}
	for _, d := range Dimensions() {
		if got := d.Base(); got.Code != want[d] || got.Dimension != d {
			t.Errorf("the base unit of %s is %q of %s, want %q", d, got.Code, got.Dimension, want[d])
		}
		if got, ok := DimensionOf(d.CELType()); !ok || got != d {
			t.Errorf("the CEL type of %s says %q, %v", d, got, ok)
		}
	}
	if u := Dimension("warmth").Base(); u != (Unit{}) || Dimension("warmth").CELType() != nil {
		t.Errorf("an unknown dimension has the unit %v", u)
	}
}

// TestUnitTable pins codes, symbols and literals, in their order.
func TestUnitTable(t *testing.T) {
	want := []struct{ code, symbol, literal string }{
		{"deg", "°", "deg"}, {"rad", "rad", "rad"},
		{"mm", "mm", "mm"}, {"cm", "cm", "cm"}, {"m", "m", "m"}, {"[in_i]", "in", "inch"},
		{"kg", "kg", "kg"}, {"g", "g", "g"}, {"[lb_av]", "lb", "lb"},
		{"N", "N", "N"}, {"N.m", "N·m", "Nm"}, {"N.m/deg", "N·m/°", "Nm_per_deg"}, {"N.m/rad", "N·m/rad", ""},
		{"Pa", "Pa", ""}, {"kPa", "kPa", "kPa"}, {"MPa", "MPa", "MPa"}, {"GPa", "GPa", "GPa"}, {"mm[Hg]", "mmHg", "mmHg"},
		{"mm2", "mm²", "mm2"}, {"cm2", "cm²", "cm2"}, {"m2", "m²", ""},
		{"m/s", "m/s", "m_per_s"}, {"km/h", "km/h", "km_per_h"}, {"W/kg", "W/kg", "W_per_kg"},
		{"s", "s", "s"}, {"min", "min", "minutes"}, {"h", "h", "hours"}, {"d", "d", "days"},
		{"wk", "wk", "weeks"}, {"mo", "mo", "months"}, {"a", "y", "years"},
		{"1", "", "ratio"}, {"%", "%", "percent"},
	}
	got := Units()
	if len(got) != len(want) {
		t.Fatalf("%d units, want %d", len(got), len(want))
	}
	for i, w := range want {
		u := got[i]
		if u.Code != w.code || u.Symbol != w.symbol || LiteralFor(u) != w.literal {
			t.Errorf("unit %d is %q %q %q, want %q %q %q", i, u.Code, u.Symbol, LiteralFor(u), w.code, w.symbol, w.literal)
		}
		if found, ok := UnitByCode(w.code); !ok || found != u {
			t.Errorf("%s is not found by its code", w.code)
		}
	}
	for _, code := range []string{"", "MM", "°", "lb", "in", "years"} {
		if u, ok := UnitByCode(code); ok {
			t.Errorf("%q is found as %v", code, u)
		}
	}
	got[0].Symbol = "changed"
	if Units()[0].Symbol != "°" {
		t.Error("the table can be changed from outside")
	}
}

// TestConversionsAreExact: what is a whole decimal in both units is one after conversion too.
func TestConversionsAreExact(t *testing.T) {
	for _, c := range []struct {
		v    float64
		from string
		want float64
		to   string
	}{
		{86.5, "cm", 865, "mm"}, {865, "mm", 86.5, "cm"}, {865, "mm", 0.865, "m"}, {1, "[in_i]", 25.4, "mm"}, {0.3, "m", 300, "mm"},
		{12.7, "mm", 0.5, "[in_i]"}, {1, "[lb_av]", 0.45359237, "kg"}, {82, "kg", 82000, "g"}, {0.1, "[lb_av]", 0.1, "[lb_av]"},
		{120, "mm[Hg]", 15.99864, "kPa"}, {50, "mm[Hg]", 50, "mm[Hg]"}, {1000, "Pa", 1, "kPa"}, {60, "GPa", 6e7, "kPa"}, {103.5, "MPa", 0.1035, "GPa"}, {60.7, "GPa", 60.7, "GPa"}, {-0.09, "W/kg", -0.09, "W/kg"}, {1, "cm2", 100, "mm2"}, {1, "m2", 10000, "cm2"},
		{5, "km/h", 5, "km/h"}, {3.6, "km/h", 1, "m/s"}, {0.4, "m/s", 1.44, "km/h"}, {180, "deg", 3.14159265, "rad"},
		{3.5, "N.m/rad", 3.5, "N.m/rad"}, {1, "a", 365.25, "d"}, {1, "mo", 30.4375, "d"}, {12, "wk", 84, "d"}, {18, "mo", 1.5, "a"}, {90, "min", 1.5, "h"},
		{95, "%", 0.95, "1"}, {0.95, "1", 95, "%"}, {0, "cm", 0, "mm"},
	} {
		u, _ := UnitByCode(c.to)
		got, ok := q(t, c.v, c.from).In(u)
		if c.to == "rad" { // no whole decimal
			got = math.Round(got*1e8) / 1e8
		}
		if !ok || got != c.want {
			t.Errorf("%v %s is %v %s, want %v", c.v, c.from, got, c.to, c.want)
		}
	}
}
