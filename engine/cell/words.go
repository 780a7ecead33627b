package cell

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// Say writes a value of the axis for people: "−5°", "1+", "broken", "14 days before the assessment".
func (a *Axis) Say(x float64) string {
	if a.Measure == nil {
		if q, ok := clinical.OfBase(x, a.Unit); ok {
			return q.Brief()
		}
		return strconv.FormatFloat(x, 'g', 6, 64)
	}
	switch v := a.celValue(x); a.Measure.Kind {
	case vocab.YesNo:
		return map[bool]string{true: "yes", false: "no"}[x == 1]
	case vocab.Date:
		if !clinical.Calculable(x) {
			return clinical.NeverWord
		}
		return days(x) + " before the assessment"
	case vocab.Text:
		return "recorded"
	case vocab.Option:
		return strings.ReplaceAll(fmt.Sprint(v), "_", " ")
	case vocab.Quantity:
		return v.(clinical.Quantity).Short()
	default:
		return strings.Replace(fmt.Sprint(v), "-", map[bool]string{true: "−", false: "-"}[a.Measure.Kind == vocab.Count], 1)
	}
}

func days(seconds float64) string {
	n := strconv.FormatFloat(seconds/secondsADay, 'f', -1, 64)
	if n == "1" {
		return "1 day"
	}
	return n + " days"
}

// Words names some cells, in order, for people: "5° or less", "broken or fragile", "2 or more". Cells of a line of
// numbers are named from the first to the last, as one stretch.
func (a *Axis) Words(cells ...int) string {
	if a.Cells != nil {
		var out []string
		for option, c := range a.Cells {
			if slices.Contains(cells, c) {
				out = append(out, a.Say(float64(option)))
			}
		}
		return source.Or(out)
	}
	from, to := cells[0], cells[len(cells)-1]
	if a.Measure != nil && a.Step() > 0 {
		return a.steppedWords(from, to)
	}
	low, high := a.Span(from), a.Span(to)
	lo, hi := math.Inf(-1), math.Inf(1)
	if a.Measure != nil {
		lo, hi = a.Range()
	}
	first, last := low.Lo < lo || math.IsInf(low.Lo, -1), high.Hi > hi || math.IsInf(high.Hi, 1)
	switch {
	case first && last:
		return "any value"
	case low.Lo == high.Hi:
		return a.Say(low.Lo)
	case first && high.HiIn:
		return a.Say(high.Hi) + " or less"
	case first:
		return "less than " + a.Say(high.Hi)
	case last && low.LoIn:
		return a.Say(low.Lo) + " or more"
	case last:
		return "more than " + a.Say(low.Lo)
	}
	text := "more than " + a.Say(low.Lo)
	if low.LoIn {
		text = "from " + a.Say(low.Lo)
	}
	switch {
	case high.HiIn && low.LoIn:
		return text + " to " + a.Say(high.Hi)
	case high.HiIn:
		return text + " and up to " + a.Say(high.Hi)
	case low.LoIn:
		return text + " to less than " + a.Say(high.Hi)
	}
	return text + " and less than " + a.Say(high.Hi)
}

// steppedWords names a stretch of whole steps: of grades, counts or days.
func (a *Axis) steppedWords(from, to int) string {
	lo, hi := a.Range()
	low, ok := a.Plausible(from)
	high, also := a.Plausible(to)
	never, may := a.Never()
	ends := may && a.Cell(never) == to
	say := func(x float64) string { return a.Say(x) }
	if a.Measure.Kind == vocab.Date {
		say = days
	}
	var text string
	switch {
	case !ok || !also:
		if ends {
			return clinical.NeverWord
		}
		return a.Say(a.inside(from))
	case low.Lo <= lo && high.Hi >= hi:
		return "any value"
	case low.Lo == high.Hi:
		text = say(low.Lo)
	case low.Lo <= lo:
		text = say(high.Hi) + " or less"
	case high.Hi >= hi:
		text = say(low.Lo) + " or more"
	default:
		text = say(low.Lo) + " to " + say(high.Hi)
	}
	if a.Measure.Kind == vocab.Date {
		text += " before the assessment"
	}
	if ends {
		text += " or " + clinical.NeverWord
	}
	return text
}
