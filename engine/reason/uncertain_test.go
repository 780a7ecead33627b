package reason_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"crus/engine/reason"
)

// In the tests' vocabulary flex and knee state an error of 5 deg; lengths and mass state none.
func off(t *testing.T, u *reason.Uncertainty) string {
	t.Helper()
	if u == nil {
		return "none"
	}
	var from []string
	for _, s := range u.From {
		from = append(from, fmt.Sprintf("%s ±%.3g%s adds %.3g share %.2f", s.Input, s.PlusMinus, s.Unit, s.Adds, s.Share))
	}
	out := fmt.Sprintf("±%.4g: %s", u.PlusMinus, strings.Join(from, "; "))
	if u.NotCounted != nil {
		out += " without " + strings.Join(u.NotCounted, " ")
	}
	return out
}

func TestUncertaintyOfQuantities(t *testing.T) {
	for _, x := range []struct{ name, unit, value, want string }{
		{"the measure itself", "deg", "limb.flex", "±5: limb.flex ±5deg adds 5 share 1.00"},
		{"a sum: root of the sum of squares", "deg", "limb.flex + limb.knee", "±7.071: limb.flex ±5deg adds 5 share 0.50; limb.knee ±5deg adds 5 share 0.50"},
		{"a difference of one measure with itself", "deg", "limb.flex - limb.flex", "none"},
		{"twice one, once the other: the first dominates", "deg", "limb.knee + limb.flex * 2", "±11.18: limb.flex ±5deg adds 10 share 0.80; limb.knee ±5deg adds 5 share 0.20"},
		{"in the quantity's unit", "rad", "limb.flex", "±0.08727: limb.flex ±5deg adds 0.0873 share 1.00"},
		{"the opposite limb is an input of its own", "deg", "limb.flex - other.flex", "±7.071: limb.flex ±5deg adds 5 share 0.50; other.flex ±5deg adds 5 share 0.50"},
		{"through another quantity", "deg", "quantity.twice - limb.flex", "±5: limb.flex ±5deg adds 5 share 1.00"},
		{"a length times an angle: the length states no error", "mm", "limb.lift * (limb.flex / deg(10))", "±6: limb.flex ±5deg adds 6 share 1.00 without limb.lift"},
		{"nothing states an error", "mm", "limb.lift * 2", "none"},
		{"a constant", "mm", "mm(3)", "none"},
		{"only the branch that is taken", "deg", "limb.flex > deg(0) ? limb.flex : limb.knee", "±5: limb.flex ±5deg adds 5 share 1.00"},
		{"a limit beyond the band of the input", "deg", "least(limb.knee, deg(14))", "±5: limb.knee ±5deg adds 5 share 1.00"},
		{"a limit within the band: the side that moves counts", "deg", "greatest(limb.knee, deg(5))", "±5: limb.knee ±5deg adds 5 share 1.00"},
		{"a limit that the value has passed by less than the band", "deg", "greatest(limb.knee, deg(9))", "±4: limb.knee ±5deg adds 4 share 1.00"},
		{"a limit that the value has passed by more", "deg", "greatest(limb.knee, deg(14))", "none"},
		{"a figure that a formula rests on", "N.m/deg", "normal_stiffness(person.mass)", "±1.904: stiffness for each kilogram"},
	} {
		o := advise(t, "flex=20 knee=8 lift=12 mass=70 right.flex=7", quantity("twice", "deg", "limb.flex * 2"), quantity("z", x.unit, x.value))
		r := o.Limbs["left"]
		if o.Person.Quantities["z"] != nil {
			r = o.Person
		}
		m := r.Quantities["z"]
		if m == nil {
			t.Errorf("%s: no value", x.name)
			continue
		}
		u := r.Traces["quantity.z"].Off
		if got := off(t, u); !strings.HasPrefix(got, x.want) {
			t.Errorf("%s:\n  got %s\n want %s", x.name, got, x.want)
		}
		if (u == nil) != (m.PlusMinus == nil) || u != nil && u.PlusMinus != *m.PlusMinus {
			t.Errorf("%s: the quantity and its trace differ", x.name)
		}
	}
}

// What a settled number could be off by is that of the aim that decided, or of the limit that moved it.
func TestUncertaintyOfNumbers(t *testing.T) {
	for _, x := range []struct {
		name  string
		rules string
		want  float64 // 0: none
	}{
		{"one aim", rule("a", "limb.p", "angle aim limb.flex"), 5},
		{"two aims that agree: the wider", rule("a", "limb.p", "angle aim limb.flex * 1") + rule("b", "limb.p", "angle aim limb.knee + limb.flex * 0.6"), 5.83095},
		{"an aim without error", rule("a", "limb.p", "angle aim deg(5)"), 0},
		{"a conditional aim does not count beside a strong one", rule("a", "limb.p", "strong", "angle aim deg(5)") + rule("b", "limb.p", "angle aim limb.flex"), 0},
		{"a limit moves the aim", rule("a", "limb.p", "angle aim deg(19)") + rule("b", "limb.p", "angle at_most limb.knee * 1"), 5},
		{"a limit that does nothing", rule("a", "limb.p", "angle aim deg(5)") + rule("b", "limb.p", "angle at_most limb.knee * 1"), 0},
		{"open between two aims", rule("a", "limb.p", "angle aim limb.knee") + rule("b", "limb.p", "angle aim deg(1)"), 5},
		{"open within limits", rule("a", "limb.p", "angle at_least limb.knee * 0.5"), 2.5},
		{"the rule did not fire", rule("a", "limb.p", "angle aim deg(5)") + rule("b", "limb.q", "angle aim limb.flex"), 0},
	} {
		c := advise(t, "flex=5 knee=5 p=true q=false", x.rules).Limbs["left"].Choices["angle"]
		got := 0.0
		if c.PlusMinus != nil {
			got = *c.PlusMinus
		}
		if math.Abs(got-x.want) > 1e-4 {
			t.Errorf("%s: ± %v, want %v (%s %v)", x.name, got, x.want, c.Status, c.Value)
		}
	}
}
