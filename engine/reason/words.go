package reason

import (
	"math"
	"strconv"
	"strings"
)

// tidy takes away what floating point adds beyond nine decimals.
func tidy(x float64) float64 {
	if math.Abs(x) > 1e6 {
		return x
	}
	if y := math.Round(x*1e9) / 1e9; y != 0 {
		return y
	}
	return 0 // never −0
}

// trimNumber writes a number as people do, with a real minus sign.
func trimNumber(x float64) string {
	return strings.Replace(strconv.FormatFloat(tidy(x), 'f', -1, 64), "-", "−", 1)
}

// words writes an option as words: in_front_of_malleoli becomes "in front of malleoli".
func words(option string) string { return strings.ReplaceAll(option, "_", " ") }

func list(items []string, last string) string {
	switch len(items) {
	case 0:
		return ""
	case 1:
		return items[0]
	}
	return strings.Join(items[:len(items)-1], ", ") + " " + last + " " + items[len(items)-1]
}
