package biomech

import "math"

// SmallestRealChange is how far two assessments of one person must differ for the difference to be more than error
// of measurement, with 95 % confidence:
//
//	MDC = 1.96 √2 · SEM
//
// SEM is the standard error of one assessment; the result is in its unit. For one assessment alone the band
// is ±1.96 SEM. Holds for SEM ≥ 0, errors that are independent and alike. Derived.
func SmallestRealChange(standardError float64) (float64, error) {
	if err := finite("standard error", standardError); err != nil {
		return 0, err
	}
	if standardError < 0 {
		return 0, outside("The standard error is %s; it can't be less than nothing.", show(standardError))
	}
	return 1.96 * math.Sqrt2 * standardError, nil
}

// RealChange says whether two assessments differ by more than the smallest real change, all in one unit:
//
//	|to − from| > smallest
//
// Holds for smallest ≥ 0. Derived.
func RealChange(from, to, smallest float64) (bool, error) {
	if err := first(finite("first assessment", from), finite("second assessment", to), finite("smallest real change", smallest)); err != nil {
		return false, err
	}
	if smallest < 0 {
		return false, outside("The smallest real change is %s; it can't be less than nothing.", show(smallest))
	}
	return math.Abs(to-from) > smallest, nil
}
