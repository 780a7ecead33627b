package clinical

import (
	"math"
	"strconv"
	"testing"

	"github.com/google/cel-go/common/types"
	"pgregory.net/rapid"
)

func TestNewQuantityRefuses(t *testing.T) {
	mm, _ := UnitByCode("mm")
	for _, c := range []struct {
		v    float64
		u    Unit
		want string
	}{
		{math.NaN(), mm, "the value is not a number"},
		{math.Inf(1), mm, "the number is too large to be a measurement"},
		{math.Inf(-1), mm, "the number is too large to be a measurement"},
		{1.1e12, mm, "the number is too large to be a measurement"},
		{-1.1e12, mm, "the number is too large to be a measurement"},
		{5, Unit{}, `"" is not a unit that is known here`},
		{5, Unit{Code: "furlong", Dimension: Length}, `"furlong" is not a unit that is known here`},
	} {
		if q, err := NewQuantity(c.v, c.u); err == nil || err.Error() != c.want || q != (Quantity{}) {
			t.Errorf("%v %s: %v, %v, want %s", c.v, c.u.Code, q, err, c.want)
		}
	}
	for _, u := range Units() { // the limits themselves, in each unit
		for _, v := range []float64{maxNumber, -maxNumber} {
			if q, err := NewQuantity(v, u); err != nil || math.Abs(q.Base()) > maxBase {
				t.Errorf("%v %s: %v, %v", v, u.Code, q, err)
			}
		}
	}
}

// TestString pins how a quantity is shown to people.
func TestString(t *testing.T) {
	for _, c := range []struct {
		v    float64
		code string
		want string
	}{
		{-5, "deg", "−5°"}, {0, "deg", "0°"}, {math.Copysign(0, -1), "deg", "0°"}, {-1e-12, "deg", "0°"}, {0.1 + 0.2, "deg", "0.3°"},
		{20, "mm", "20 mm"}, {86.5, "cm", "86.5 cm"}, {1.25, "m", "1.25 m"}, {9.5, "[in_i]", "9.5 in"},
		{82, "kg", "82 kg"}, {12.5, "[lb_av]", "12.5 lb"}, {90, "N", "90 N"}, {-35, "N.m", "−35 N·m"},
		{3.5, "N.m/deg", "3.5 N·m/°"}, {200, "N.m/rad", "200 N·m/rad"}, {120, "mm[Hg]", "120 mmHg"}, {12, "cm2", "12 cm²"},
		{0.45, "m/s", "0.45 m/s"}, {5, "km/h", "5 km/h"}, {0.9, "1", "0.9"}, {90, "%", "90%"},
		{40, "s", "40 s"}, {5, "min", "5 min"}, {2, "h", "2 h"}, {1, "d", "1 day"}, {-1, "d", "−1 day"}, {0, "d", "0 days"},
		{12, "wk", "12 weeks"}, {1, "wk", "1 week"}, {1.5, "mo", "1.5 months"}, {61, "a", "61 years"}, {1, "a", "1 year"},
		{6.123456789, "deg", "6.123457°"}, {0.00012345, "deg", "0.000123°"}, {0.0000012345, "deg", "0.0000012°"}, {0.000000001, "deg", "0.000000001°"},
		{1234567.25, "mm", "1234567.25 mm"}, {1e12, "kg", "1000000000000 kg"}, {123456789012, "deg", "123456789012°"},
	} {
		if got := q(t, c.v, c.code).String(); got != c.want {
			t.Errorf("%v %s is shown as %q, want %q", c.v, c.code, got, c.want)
		}
	}
	if got := (Quantity{}).String(); got != "" {
		t.Errorf("the zero Quantity is shown as %q", got)
	}
}

func TestWithUnit(t *testing.T) {
	cm, _ := UnitByCode("cm")
	kg, _ := UnitByCode("kg")
	x := q(t, 865, "mm")
	if got := x.WithUnit(cm); got.String() != "86.5 cm" || got.Equal(x) != types.True || got == x {
		t.Errorf("865 mm in cm is %v", got)
	}
	for _, u := range []Unit{kg, {}, {Code: "ell", Dimension: Length}} {
		if got := x.WithUnit(u); got != x {
			t.Errorf("865 mm in %q is %v", u.Code, got)
		}
		if v, ok := x.In(u); ok || !math.IsNaN(v) {
			t.Errorf("865 mm is %v %s", v, u.Code)
		}
	}
	if v, ok := (Quantity{}).In(Unit{}); ok || !math.IsNaN(v) {
		t.Errorf("the zero Quantity is %v", v)
	}
}

// decimal draws a decimal number of at most so many places, below a size, as text and value.
func decimal(places int, size int64) *rapid.Generator[float64] {
	return rapid.Custom(func(t *rapid.T) float64 {
		scale := int64(powers[places])
		n := rapid.Int64Range(-size*scale, size*scale).Draw(t, "n")
		v, err := strconv.ParseFloat(strconv.FormatInt(n, 10)+"e-"+strconv.Itoa(places), 64)
		if err != nil {
			t.Fatal(err)
		}
		return v
	})
}

func unit() *rapid.Generator[Unit] { return rapid.SampledFrom(Units()) }

// TestNumberComesBack: a number of six decimals comes back from its unit as it was written, in all
// units whose steps are not coarser than nine decimals of the base unit.
func TestNumberComesBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := unit().Draw(t, "unit")
		v := decimal(min(u.places, 6), 1000).Draw(t, "v")
		x, err := NewQuantity(v, u)
		if err != nil {
			t.Fatal(err)
		}
		if got, ok := x.In(u); !ok || got != v+0 {
			t.Fatalf("%v %s comes back as %v", v, u.Code, got)
		}
	})
}

// TestRoundTripThroughUnits: shown in another unit a quantity stays the same, and written there anew
// it is off by no more than both roundings.
func TestRoundTripThroughUnits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := unit().Draw(t, "unit")
		other := unit().Filter(func(o Unit) bool { return o.Dimension == u.Dimension }).Draw(t, "other")
		x, err := NewQuantity(decimal(3, 10000).Draw(t, "v"), u)
		if err != nil {
			t.Fatal(err)
		}
		there := x.WithUnit(other)
		if there.Base() != x.Base() || there.Equal(x) != types.True || there.Compare(x) != types.IntZero {
			t.Fatalf("%v becomes %v", x, there)
		}
		v, _ := x.In(other)
		back, err := NewQuantity(v, other)
		if tooLarge := math.Abs(v) > maxNumber; tooLarge != (err != nil) { // a thousand gigapascals in pascals
			t.Fatalf("%v as %v %s: %v", x, v, other.Code, err)
		} else if tooLarge {
			return
		}
		within := 0.5e-9 + 0.5/powers[other.places]*other.num/other.den + 1e-14*math.Abs(x.Base())
		if math.Abs(back.Base()-x.Base()) > within*1.001 {
			t.Fatalf("%v is %v %s, and that is %v (within %v)", x, v, other.Code, back, within)
		}
	})
}

// TestOrderIsPreserved: quantities of one unit are in the order of their numbers, and in any other
// unit still are.
func TestOrderIsPreserved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := unit().Draw(t, "unit")
		v, w := decimal(6, 1000).Draw(t, "v"), decimal(6, 1000).Draw(t, "w")
		x, _ := NewQuantity(v, u)
		y, _ := NewQuantity(w, u)
		order := x.Compare(y).(types.Int)
		if v < w && order > 0 || v > w && order < 0 || v == w && order != 0 || order != -y.Compare(x).(types.Int) {
			t.Fatalf("%v and %v %s compare as %v", v, w, u.Code, order)
		}
		if u.places >= 6 && v != w && order == 0 {
			t.Fatalf("%v and %v %s are held to be equal", v, w, u.Code)
		}
		other := unit().Filter(func(o Unit) bool { return o.Dimension == u.Dimension }).Draw(t, "other")
		a, _ := x.In(other)
		b, _ := y.In(other)
		if order <= 0 && a > b || order >= 0 && a < b {
			t.Fatalf("%v %s and %v %s change their order in %s: %v, %v", v, u.Code, w, u.Code, other.Code, a, b)
		}
	})
}

// TestNineDecimals: sums and differences of decimals equal the decimal that they are on paper, and
// every value is the float64 nearest to one of nine decimals.
func TestNineDecimals(t *testing.T) {
	deg := Angle.Base()
	kept := func(t *rapid.T, v float64) Quantity {
		x, err := NewQuantity(v, deg)
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
	rapid.Check(t, func(t *rapid.T) {
		places := rapid.IntRange(0, 9).Draw(t, "places")
		limit := int64(400000 * powers[places]) // sums stay below a million
		n, m := rapid.Int64Range(-limit, limit).Draw(t, "n"), rapid.Int64Range(-limit, limit).Draw(t, "m")
		paper := func(n int64) Quantity { return kept(t, float64(n)/powers[places]) }
		if got := paper(n).Add(paper(m)); got != paper(n+m) {
			t.Fatalf("%v + %v is %v, want %v", paper(n), paper(m), got, paper(n+m))
		}
		if got := paper(n).Subtract(paper(m)); got != paper(n-m) {
			t.Fatalf("%v − %v is %v, want %v", paper(n), paper(m), got, paper(n-m))
		}
	})
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(-1e6, 1e6).Draw(t, "v")
		got := kept(t, v).Base()
		if math.Abs(got-v) > 0.7e-9 || got != kept(t, got).Base() { // half of the ninth decimal, and what a float64 is off
			t.Fatalf("%v is kept as %v, and that as %v", v, got, kept(t, got).Base())
		}
		if back, _ := strconv.ParseFloat(strconv.FormatFloat(got, 'f', 9, 64), 64); back != got {
			t.Fatalf("%v is kept as %v, which has more than nine decimals", v, got)
		}
	})
	rapid.Check(t, func(t *rapid.T) { // beyond a million: fifteen significant digits
		v := rapid.Float64Range(1e6, 1e12).Draw(t, "v")
		got := kept(t, v).Base()
		if back, _ := strconv.ParseFloat(strconv.FormatFloat(got, 'g', 15, 64), 64); back != got {
			t.Fatalf("%v is kept as %v, which has more than fifteen digits", v, got)
		}
	})
	for _, c := range []struct{ a, b, sum string }{ // across the step, where seconds go
		{"0.1 a", "0.2 a", "0.3 a"}, {"1.1 mo", "2.2 mo", "3.3 mo"}, {"0.7 wk", "0.1 wk", "0.8 wk"}, {"12.1 deg", "-7.1 deg", "5 deg"}, {"0.1 m2", "0.2 m2", "0.3 m2"},
	} {
		a, _ := ParseQuantity(c.a)
		b, _ := ParseQuantity(c.b)
		sum, _ := ParseQuantity(c.sum)
		if got := a.Add(b); got != sum {
			t.Errorf("%s + %s is %v", c.a, c.b, got)
		}
	}
}
