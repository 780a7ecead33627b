package form

import (
	"bytes"
	"encoding/csv"
	"slices"

	"crus/engine/assess"
	"crus/engine/vocab"
)

// CSV writes the form as a table for a spreadsheet: a column a measure, with its unit, and a row a
// limb. What is of the person need be filled in in one row only.
func (f *Form) CSV() []byte {
	header := []string{"id", "date", "assessor", "side", "device"}
	reserved := len(header)
	for _, st := range f.Stages {
		for _, field := range st.Fields {
			header = append(header, columnName(field.Measure, header[:reserved]))
		}
	}
	var out bytes.Buffer
	w := csv.NewWriter(&out)
	_ = w.Write(header) // a buffer takes everything
	for _, s := range f.Sides() {
		row := make([]string, len(header))
		row[3], row[4] = string(s), device(f, s)
		_ = w.Write(row)
	}
	w.Flush()
	return out.Bytes()
}

// columnName is a measure's name, or its path where a column of another meaning has that name, with
// the unit of its cells.
func columnName(m *vocab.Measure, taken []string) string {
	name := m.Name
	if slices.Contains(taken, name) {
		name = m.Path()
	}
	if m.Kind == vocab.Quantity {
		name += " [" + m.Unit.Code + "]"
	}
	return name
}

func device(f *Form, s assess.Side) string {
	if slices.Contains(f.DeviceFor, s) {
		return "yes"
	}
	return "no"
}
