package cases

import (
	"fmt"
	"strings"

	"crus/engine/clinical"
	"crus/engine/reason"
	"crus/engine/vocab"
)

// describe writes a choice the way an expectation is written, so that it can be compared at a glance.
func describe(c *vocab.Choice, got *reason.Choice) string {
	if got == nil {
		return "nothing"
	}
	text := got.Status
	switch {
	case got.Status == reason.Conflict:
		text += ": " + strings.Join(got.Conflict, ", ")
	case got.Status == reason.IsOpen && got.Range != nil:
		text += fmt.Sprintf(": %v..%v %s", got.Range[0], got.Range[1], c.Unit.Code)
	case got.Status == reason.IsOpen:
		text += ": " + strings.Join(got.Among, ", ")
	case got.Value != nil && c.Numeric():
		text += fmt.Sprintf(": %v %s", got.Value, c.Unit.Code)
	case got.Value != nil:
		text += fmt.Sprintf(": %v", got.Value)
	}
	if got.Provisional {
		text += " (provisional)"
	}
	return text
}

func quantityWord(m *reason.Measured) string {
	if m == nil {
		return "unknown"
	}
	u, _ := clinical.UnitByCode(m.Unit)
	q, err := clinical.Restored(m.Value, u)
	if err != nil {
		return fmt.Sprintf("%v %s", m.Value, m.Unit)
	}
	return q.String()
}
