package cases

import (
	"fmt"
	"strings"
	"testing"

	"crus/engine/biomech"
)

// formulaRow is a published case that formulas answer, written as the published result is.
type formulaRow struct {
	row  string
	says string // what the published result must have
	got  func() string
}

// formulaRows asks the formulas what the rows publish.
func formulaRows() []formulaRow {
	number := func(format string) func(x float64, err error) string {
		return func(x float64, err error) string { return formulaText(fmt.Sprintf(format, x), err) }
	}
	realChange := func(from, to, smallest float64) string {
		yes, err := biomech.RealChange(from, to, smallest)
		return formulaText(map[bool]string{true: "real", false: "not a real"}[yes], err)
	}
	stature := func(format string, parts ...float64) string {
		var out []string
		for _, p := range parts {
			out = append(out, number(format)(biomech.OfStature(p, 1.75)))
		}
		return strings.Join(out, "; ")
	}
	foot, shank, thigh := biomech.Foot(), biomech.Shank(), biomech.Thigh()
	return []formulaRow{
		{"T11", "20 deg", func() string { return number("%v deg")(biomech.DynamicRange(12, -8)) }},
		{"T12", "R2-R1 = 0;", func() string { return number("R2-R1 = %v;")(biomech.DynamicRange(5, 5)) }},
		{"T13", "data error", func() string {
			if _, err := biomech.DynamicRange(3, 9); err != nil && strings.Contains(err.Error(), "beyond the slow range") {
				return "data error"
			}
			return "no error"
		}},
		{"P14", "not a real change", func() string { return realChange(22, 26, 6.2) + " change" }},
		{"P14", "not a real change", func() string { return realChange(22, 26, 6.5) + " change" }},
		{"P15", "real change (8 > 6.5)", func() string { return realChange(22, 30, 6.5) + " change (8 > 6.5)" }},
		{"R01", "isolated gastrocnemius", func() string { return "isolated " + formulaText(biomech.CalfShortness(5, 18)) }},
		{"R02", "not tight by <=5 rule", func() string {
			return map[string]string{"none": "not tight by <=5 rule"}[formulaText(biomech.CalfShortness(6, 18))]
		}},
		{"R03", "gastrocsoleus", func() string {
			return map[string]string{"gastrocnemius_and_soleus": "gastrocsoleus"}[formulaText(biomech.CalfShortness(-10, -8))]
		}},
		{"R04", "gastrocnemius (", func() string { return formulaText(biomech.CalfShortness(0, 15)) + " (" }},
		{"R15", "not a real change", func() string { return realChange(5, 12, 7.94) + " change" }},
		{"R16", "7.93", func() string { return number("%.2f")(biomech.SmallestRealChange(2.86)) }},
		{"R17", "mean 28.3, CI of mean 27.2-29.4 (2-8 y band)", func() string {
			n, err := biomech.RangeNorm("hip_extension", 5, "male")
			return formulaText(fmt.Sprintf("mean %v, CI of mean %v-%v (%d-%d y band)", n.Mean, n.Low, n.High, n.From, n.To), err)
		}},
		{"G01", "household", func() string { return formulaText(biomech.WalkingClass(0.39)) }},
		{"G02", "limited community", func() string { return spaced(biomech.WalkingClass(0.40)) }},
		{"G03", "limited community", func() string { return spaced(biomech.WalkingClass(0.80)) }},
		{"G04", "community", func() string { return spaced(biomech.WalkingClass(0.81)) }},
		{"G05", "limited community", func() string { return spaced(biomech.WalkingClass(10 / 20.0)) }},
		{"G06", "Perry says limited community", func() string { return "Perry says " + spaced(biomech.WalkingClass(0.45)) }},
		{"G07", "not real under MDC95 0.10", func() string { return strings.Replace(realChange(0.30, 0.37, 0.10), "a ", "", 1) + " under MDC95 0.10" }},
		{"G07", "; real under MDC 0.05", func() string { return "; " + realChange(0.30, 0.37, 0.05) + " under MDC 0.05" }},
		{"G08", "real under both (MDC 0.15", func() string { return realChange(0.60, 0.78, 0.15) + " under both (MDC 0.15" }},
		{"G08", "real under both (MDC 0.15 and 0.11)", func() string { return realChange(0.60, 0.78, 0.11) + " under both (MDC 0.15 and 0.11)" }},
		{"S11", "borderline", func() string { return formulaText(biomech.PressureIndexBand(0.95)) }},
		{"S12", "critical", func() string { return formulaText(biomech.PressureIndexBand(0.28)) }},
		{"S13", "severe", func() string { return formulaText(biomech.PressureIndexBand(0.40)) }},
		{"S14", "above normal", func() string {
			return map[string]string{"raised": "above normal"}[formulaText(biomech.PressureIndexBand(1.45))]
		}},
		{"A01", "0.2660", func() string { return stature("%.4f", biomech.FootLengthOfStature) }},
		{"A02", "0.4305; 0.06825; 0.09625", func() string {
			return stature("%.4f", biomech.ShankOfStature) + "; " + stature("%.5f", biomech.AnkleHeightOfStature, biomech.FootBreadthOfStature)
		}},
		{"A03", "0.285", func() string { return fmt.Sprintf("%.3f", biomech.AnkleHeightOfStature+biomech.ShankOfStature) }},
		{"A03", "0.285", func() string { return fmt.Sprintf("%.3f", biomech.KneeHeightOfStature) }},
		{"A04", "0.530", func() string { return fmt.Sprintf("%.3f", biomech.KneeHeightOfStature+biomech.ThighOfStature) }},
		{"A04", "0.530", func() string { return fmt.Sprintf("%.3f", biomech.HipHeightOfStature) }},
		{"A05", "1.0875; 3.4875; 7.50", func() string { return fmt.Sprintf("%.4f; %.4f; %.2f", 75*foot.Mass, 75*shank.Mass, 75*thigh.Mass) }},
		{"A06", "0.061; 0.161", func() string { return fmt.Sprintf("%.3f; %.3f", foot.Mass+shank.Mass, foot.Mass+shank.Mass+thigh.Mass) }},
		{"A07", "0.1864", func() string { return fmt.Sprintf("%.4f", 0.4305*shank.Centre) }},
		{"A08", "0.05895", func() string { return number("%.5f")(biomech.Shank().Inertia(75, 430.5)) }},
		{"A09", "0.50 (", func() string { return fmt.Sprintf("%.2f (", foot.Centre) }},
		{"A12", "pitch 3.01 deg", func() string { return number("pitch %.2f deg")(biomech.PitchHorizontal(30-20, 190)) }},
		{"A13", "33.5 mm", func() string { return number("%.1f mm")(biomech.BlockForEquinusHorizontal(-10, 190)) }},
	}
}

func formulaText(s string, err error) string {
	if err != nil {
		return err.Error()
	}
	return s
}

func spaced(s string, err error) string { return strings.ReplaceAll(formulaText(s, err), "_", " ") }

func TestPublishedFormulas(t *testing.T) {
	published := rows(t)
	for _, x := range formulaRows() {
		if row := published[x.row]; !strings.Contains(row.expected, x.says) {
			t.Errorf("%s is not published so: %+v", x.row, row)
		} else if got := x.got(); got != x.says {
			t.Errorf("%s, %s (%s): %q, want %q", x.row, row.input, row.source, got, x.says)
		}
	}
}
