package render

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"crus/engine/clinical"
	"crus/engine/reason"
)

// uncertain writes a number with how far it could be off: "49 mm ± 6", "6.4° ± 1.4".
func uncertain(x float64, code string, off *float64) string {
	if off == nil || *off <= 0 {
		return number(x, code)
	}
	places := offPlaces(*off)
	return number(roundTo(x, places), code) + " ± " + strconv.FormatFloat(roundTo(*off, places), 'f', -1, 64)
}

// offPlaces is how many decimals are worth writing: those of one digit of the uncertainty, or of two where the
// first is 1 (JCGM 100:2008, 7.2.6: at most two).
func offPlaces(off float64) int {
	exponent := math.Floor(math.Log10(off))
	if off/math.Pow(10, exponent) < 1.95 {
		exponent--
	}
	return int(min(max(-exponent, 0), 6))
}

func roundTo(x float64, places int) float64 {
	k := math.Pow(10, float64(places))
	return math.Round(x*k) / k
}

// offWords says where an uncertainty comes from, the largest first.
func (d *drawer) offWords(at string, u *reason.Uncertainty, code string) string {
	var from []string
	for _, s := range u.From {
		if s.Share >= 0.01 {
			from = append(from, fmt.Sprintf("%s (± %s) %.0f %%", d.inputLabel(at, s.Input), strings.TrimSpace(inputNumber(s.PlusMinus, s.Unit)), 100*s.Share))
		}
	}
	out := "± " + trimmed(u.PlusMinus, code) + ", a band of about 95 %. It comes from " + join(from, "and") + "."
	if len(u.NotCounted) > 0 {
		out += " Not counted, because no error is stated: " + join(d.labels(at, u.NotCounted), "and") + "."
	}
	return out
}

func trimmed(off float64, code string) string { return number(roundTo(off, offPlaces(off)), code) }

// inputLabel names a measure, or the figure of a formula.
func (d *drawer) inputLabel(at, input string) string {
	if root, _, named := strings.Cut(input, "."); named && (root == "limb" || root == "other" || root == "person") {
		return d.label(at, input)
	}
	return input
}

// inputNumber writes a number whose unit may be one that quantities are not recorded in.
func inputNumber(x float64, unit string) string {
	if _, ok := clinical.UnitByCode(unit); ok {
		return number(x, unit)
	}
	return strconv.FormatFloat(x, 'g', 3, 64) + " " + unit
}

// uncertainSpan writes a range of numbers with how far its ends could be off.
func uncertainSpan(x [2]float64, code string, off *float64) string {
	if off == nil || *off <= 0 {
		return span(x[0], x[1], code)
	}
	places := offPlaces(*off)
	return span(roundTo(x[0], places), roundTo(x[1], places), code) + " ± " + strconv.FormatFloat(roundTo(*off, places), 'f', -1, 64)
}
