package reason

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"crus/engine/ruleset"
)

// Cautions are the usual ones, which every report carries.
func Cautions() []string {
	return []string{
		"Decision support only: a licensed clinician decides.",
		"Local codes and the device's own instructions come first.",
		"Check the skin before, during and after first use, and at every review.",
	}
}

// BoundaryNotice says that an outcome has not been looked through for boundaries.
const BoundaryNotice = "Whether a result lies close to a boundary within measurement error was not looked at."

// notices says what must be known of the ruleset itself.
func (e *Engine) notices(today time.Time) []string {
	out := Cautions()
	for _, p := range e.rs.Parts {
		h := p.Header
		if h.Overdue(today) {
			out = append(out, fmt.Sprintf("%s %s is past its review date, %s.", h.Name, h.Version, h.ReviewBy))
		}
		switch h.Status {
		case "draft":
			out = append(out, fmt.Sprintf("%s %s is a draft: it has not been put in force.", h.Name, h.Version))
		case "retired":
			out = append(out, fmt.Sprintf("%s %s is retired: it is no longer in force.", h.Name, h.Version))
		}
		day := today.Format(time.DateOnly)
		if from, to := h.EffectivePeriod[0], h.EffectivePeriod[1]; from != "" && (day < from || day > to) {
			out = append(out, fmt.Sprintf("%s %s is meant for the time from %s to %s, and %s lies outside.", h.Name, h.Version, from, to, day))
		}
	}
	excepts := slices.SortedFunc(slices.Values(e.rs.Excepts), func(a, b *ruleset.Except) int { return strings.Compare(a.Name, b.Name) })
	for _, x := range excepts {
		out = append(out, fmt.Sprintf("%s is left out here: %s", x.Name, x.Because))
	}
	return append(out, BoundaryNotice)
}
