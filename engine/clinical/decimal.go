package clinical

import "math"

const (
	basePlaces = 9  // decimals of a base unit that are kept
	maxPlaces  = 15 // decimals that a float64 can always tell apart, counted from the first digit
)

// powers[n] is 10ⁿ, exactly.
var powers = [maxPlaces + 1]float64{1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15}

// keep rounds x to so many decimals, or to fifteen significant digits where that is coarser (beyond a
// million at nine decimals). The result is the float64 nearest to that decimal number, as if it had
// been read from text; −0 becomes 0. Whole numbers beyond 10¹⁵ stay as they are.
func keep(x float64, places int) float64 {
	for places > 0 && math.Abs(x) >= powers[maxPlaces-places] {
		places--
	}
	if math.Abs(x) >= powers[maxPlaces] {
		return x
	}
	return math.Round(x*powers[places])/powers[places] + 0
}
