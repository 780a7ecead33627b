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
