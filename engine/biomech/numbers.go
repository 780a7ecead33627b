package biomech

import (
	"math"
	"strconv"
	"strings"
)

func degrees(rad float64) float64 { return rad * 180 / math.Pi }
func radians(deg float64) float64 { return deg * math.Pi / 180 }

// show writes a number for a sentence: at most two decimals, a real minus sign.
func show(x float64) string {
	s := strconv.FormatFloat(math.Round(x*100)/100+0, 'f', -1, 64)
	return strings.Replace(s, "-", "−", 1)
}

// shown writes a number with its unit: "−5°", "20 mm".
func shown(x float64, unit string) string {
	switch unit {
	case "":
		return show(x)
	case "°":
		return show(x) + unit
	}
	return show(x) + " " + unit
}

// finite refuses what is no number; what names the value in a sentence: "ankle angle".
func finite(what string, x float64) error {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return outside("The %s is not a number that a measurement can have.", what)
	}
	return nil
}

// positive refuses a value that is not a number above 0.
func positive(what string, x float64, unit string) error {
	if err := finite(what, x); err != nil || x > 0 {
		return err
	}
	return outside("The %s is %s; it must be more than nothing.", what, shown(x, unit))
}

// between refuses a value outside of lo..hi.
func between(what string, x, lo, hi float64, unit string) error {
	if err := finite(what, x); err != nil || lo <= x && x <= hi {
		return err
	}
	return outside("The %s is %s; this holds from %s to %s.", what, shown(x, unit), shown(lo, unit), shown(hi, unit))
}

// first gives the first error that there is.
func first(errs ...error) error {
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

// working is a formula's function on values and constants.
type working = func(in []Value, k []float64) (Value, error)

// One to four numbers in, one out, no constants.

func one(f func(a float64) (float64, error)) working {
	return func(in []Value, _ []float64) (Value, error) { return number(f(in[0].Number)) }
}

func two(f func(a, b float64) (float64, error)) working {
	return func(in []Value, _ []float64) (Value, error) { return number(f(in[0].Number, in[1].Number)) }
}

func three(f func(a, b, c float64) (float64, error)) working {
	return func(in []Value, _ []float64) (Value, error) {
		return number(f(in[0].Number, in[1].Number, in[2].Number))
	}
}

func four(f func(a, b, c, d float64) (float64, error)) working {
	return func(in []Value, _ []float64) (Value, error) {
		return number(f(in[0].Number, in[1].Number, in[2].Number, in[3].Number))
	}
}
