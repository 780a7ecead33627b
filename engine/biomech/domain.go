package biomech

import "math"

// notNegative refuses a value that is not a number of 0 or more.
func notNegative(what string, x float64, unit string) error {
	if err := finite(what, x); err != nil || x >= 0 {
		return err
	}
	return outside("The %s is %s; it cannot be less than nothing.", what, shown(x, unit))
}

// wholeNumber refuses a value that is not a whole number from least on.
func wholeNumber(what string, x float64, least int) error {
	switch err := finite(what, x); {
	case err != nil:
		return err
	case x != math.Trunc(x):
		return outside("The %s is %s; it must be a whole number.", what, show(x))
	case x < float64(least):
		return outside("The %s is %s; it must be %d or more.", what, show(x), least)
	}
	return nil
}

// small passes a result on that is a number; values within a formula's domain can still be so large or small
// that what comes out is none.
func small(x float64) (float64, error) {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, outside("What comes out is no number that a measurement can have.")
	}
	return x, nil
}
