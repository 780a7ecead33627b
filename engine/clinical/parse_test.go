package clinical

import (
	"math"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"
)

func TestParseQuantity(t *testing.T) {
	for _, c := range []struct {
		s    string
		v    float64
		code string
	}{
		{"82 kg", 82, "kg"}, {"-5 deg", -5, "deg"}, {"+5 deg", 5, "deg"}, {"3.5 N.m/deg", 3.5, "N.m/deg"}, {"86.5cm", 86.5, "cm"}, {" 20  mm\t", 20, "mm"},
		{".5 m", 0.5, "m"}, {"5. m", 5, "m"}, {"1e2 mm", 100, "mm"}, {"0.9 1", 0.9, "1"}, {"90%", 90, "%"}, {"9 [in_i]", 9, "[in_i]"}, {"120 mm[Hg]", 120, "mm[Hg]"},
		{"-0 deg", 0, "deg"}, {"1e-30 mm", 0, "mm"}, {"1000000000000 mm", 1e12, "mm"},
	} {
		got, err := ParseQuantity(c.s)
		if err != nil || got != q(t, c.v, c.code) {
			t.Errorf("%q is %v, %v, want %v %s", c.s, got, err, c.v, c.code)
		}
	}
}

func TestParseQuantityRefuses(t *testing.T) {
	const unknown = " is not a unit that is known here: "
	const every = "write one of deg, rad, mm, cm, m, [in_i], kg, g, [lb_av], N, N.m, N.m/deg, N.m/rad, Pa, kPa, MPa, GPa, mm[Hg], mm2, cm2, m2, m/s, km/h, W/kg, s, min, h, d, wk, mo, a, 1 or %"
	for _, c := range []struct{ s, want string }{
		{"", `"" does not begin with a number`},
		{"kg", `"kg" does not begin with a number`},
		{"NaN deg", `"NaN deg" does not begin with a number`},
		{"inf mm", `"inf mm" does not begin with a number`},
		{"- 5 deg", `"- 5 deg" does not begin with a number`},
		{"−5 deg", `"−5 deg" has a dash for a minus sign: write the - of the keyboard`},
		{"82", `"82" has no unit: write its code after the number, for example 20 mm`},
		{"3,5 kg", `"3,5 kg" has a comma in its number: write a point before decimals, and nothing between thousands`},
		{"1e13 mm", "the number is too large to be a measurement"},
		{"1e999 mm", "the number is too large to be a measurement"},
		{"0x1p4 mm", `"x1p4 mm"` + unknown + every},
		{"1_000 mm", `"_000 mm"` + unknown + every},
		{"5 lbs", `"lbs"` + unknown + "did you mean [lb_av]?"},
		{"5 kgs", `"kgs"` + unknown + "did you mean kg?"},
		{"5 KG", `"KG"` + unknown + "did you mean kg?"},
		{"5°", `"°"` + unknown + "did you mean deg?"},
		{"5 degree", `"degree"` + unknown + "did you mean deg?"},
		{"5 in", `"in"` + unknown + "did you mean [in_i]?"},
		{"5 inches", `"inches"` + unknown + "did you mean [in_i]?"},
		{"5 Nm", `"Nm"` + unknown + "did you mean N.m?"},
		{"5 N·m/°", `"N·m/°"` + unknown + "did you mean N.m/deg?"},
		{"5 Nm/deg", `"Nm/deg"` + unknown + "did you mean N.m/deg?"},
		{"5 mmHg", `"mmHg"` + unknown + "did you mean mm[Hg]?"},
		{"5 weeks", `"weeks"` + unknown + "did you mean wk?"},
		{"5 y", `"y"` + unknown + "did you mean a?"},
		{"5 xx", `"xx"` + unknown + every},
		{"5 m/s/s and more words than a unit ever has", `"m/s/s and more words than a unit ever ha…"` + unknown + every},
	} {
		if got, err := ParseQuantity(c.s); err == nil || err.Error() != c.want || got != (Quantity{}) {
			t.Errorf("%q is %v:\n  %v\nwant\n  %s", c.s, got, err, c.want)
		}
	}
}

// TestParseReadsWhatIsWritten: a quantity's number and code read as that quantity, with or without a space.
func TestParseReadsWhatIsWritten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := unit().Draw(t, "unit")
		x, err := NewQuantity(decimal(4, 100000).Draw(t, "v"), u)
		if err != nil {
			t.Fatal(err)
		}
		written := x.String()
		for _, words := range []string{" " + u.plural, " " + strings.TrimSuffix(u.plural, "s"), " " + u.Symbol, u.Symbol} {
			if number, ok := strings.CutSuffix(written, words); ok && words != " " {
				written = number
				break
			}
		}
		space := rapid.SampledFrom([]string{"", " ", "  "}).Draw(t, "space")
		got, err := ParseQuantity(strings.Replace(written, "−", "-", 1) + space + u.Code)
		if u.Code == "1" && space == "" { // the code is a digit of the number then
			return
		}
		// What is shown may lack what lies beyond six decimals.
		if err != nil || got.Unit() != u || math.Abs(got.Base()-x.Base()) > 0.5001e-6*u.num/u.den+1e-9 {
			t.Fatalf("%v is read as %v, %v", x, got, err)
		}
	})
}

func TestParseIsQuickOnLongText(t *testing.T) {
	start := time.Now()
	for _, s := range []string{strings.Repeat("9", 1<<20) + " mm", "5 " + strings.Repeat("m", 1<<20), strings.Repeat("x", 1<<20), "5 " + strings.Repeat("é", 1<<20)} {
		_, err := ParseQuantity(s)
		if err == nil || len(err.Error()) > 400 {
			t.Errorf("a text of a million letters is read with the error %.80q…", err)
		}
	}
	if took := time.Since(start); took > 5*time.Second {
		t.Errorf("long texts take %v", took)
	}
}

func FuzzParseQuantity(f *testing.F) {
	for _, s := range []string{"82 kg", "-5 deg", "3.5 N.m/deg", "1e12 a", "9.5[in_i]", "3,5 kg", "−5°", "5 lbs", "", "\xff 5", "1e-400 %"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		got, err := ParseQuantity(s)
		if err != nil {
			if got != (Quantity{}) || strings.ContainsAny(err.Error(), "\n\r") || len(err.Error()) > 400 {
				t.Fatalf("%q is refused with %v and %q", s, got, err)
			}
			return
		}
		v, ok := got.In(got.Unit())
		if !ok || math.IsNaN(v) || math.IsInf(v, 0) || got.String() == "" {
			t.Fatalf("%q is read as %v (%v)", s, got, v)
		}
		again, err := NewQuantity(v, got.Unit())
		if err != nil && math.Abs(v) <= maxNumber {
			t.Fatalf("%q is read as %v, which is refused: %v", s, got, err)
		}
		if err == nil && math.Abs(again.Base()-got.Base()) > 1e-9+1e-14*math.Abs(got.Base()) {
			t.Fatalf("%q is read as %v, and that as %v", s, got, again)
		}
	})
}
