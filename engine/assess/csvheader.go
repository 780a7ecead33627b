package assess

import (
	"slices"
	"strings"

	"crus/engine/source"
	"crus/engine/vocab"
)

// column is what the first line of a table says of one column.
type column struct {
	name    string         // id, date, assessor, side, device, or the measure's
	measure *vocab.Measure // nil for those five
	unit    *source.Value  // of all its cells; nil where it is not said
}

// columnNames are the columns that are no measures. Where a measure has the name of one of them,
// its column is called limb.date or person.date.
func columnNames() []string { return []string{"id", "date", "assessor", "side", "device"} }

// header reads the first line. Capital letters and blanks around a name do not matter.
func (t *table) header(cells []string, places []source.Range) {
	first := map[string]source.Range{}
	for i, cell := range cells {
		if len(t.diags) > maxErrors {
			return
		}
		c := t.column(strings.TrimSpace(cell), places[i])
		key := c.name
		if c.measure != nil {
			key = c.measure.Path()
		}
		if at, twice := first[key]; twice && key != "" {
			t.fail(duplicate("The column "+key, places[i], at))
		}
		first[key] = places[i]
		t.columns = append(t.columns, c)
	}
	var missing []string
	for _, name := range []string{"id", "side", "device"} {
		if _, ok := first[name]; !ok {
			missing = append(missing, name)
		}
	}
	if len(missing) > 0 {
		t.fail(source.Errorf(places[0], "missing", "The table has no column %s.", source.Or(missing)).
			Hinting("Each row is a limb: its columns are id (of the assessment), side (left or right), device (yes or no: is one wanted for this limb), and measures."))
	}
}

// column reads one cell of the first line.
func (t *table) column(cell string, where source.Range) column {
	written, unit, hasUnit := strings.Cut(cell, "[")
	written = strings.TrimSpace(written)
	name := strings.ToLower(written)
	for _, n := range columnNames() {
		if n == name && !hasUnit {
			return column{name: name}
		}
	}
	of, plain, qualified := strings.Cut(name, ".")
	if !qualified {
		plain = name
	}
	m := t.v.Measure(plain)
	if m == nil || qualified && of != string(m.Of) {
		t.fail(t.noColumn(written, m, where))
		return column{}
	}
	c := column{name: m.Name, measure: m}
	if !hasUnit {
		return c
	}
	unit, closed := strings.CutSuffix(unit, "]")
	if !closed {
		t.fail(source.Errorf(where, "syntax", "The bracket around the unit is not closed.").Hinting("For example: %s [%s]", name, m.Unit.Code))
		return c
	}
	if i := strings.Index(where.Text(), "["+unit+"]"); i >= 0 { // not so if the cell has doubled quotes
		where.Start, where.End = where.Start+i+1, where.Start+i+1+len(unit)
	}
	if _, d := unitOf(m, "limb."+m.Name, unit, where); d != nil {
		t.fail(*d)
		return c
	}
	v := textValue(where, unit)
	c.unit = &v
	return c
}

func (t *table) noColumn(name string, m *vocab.Measure, where source.Range) source.Diagnostic {
	switch {
	case name == "":
		return source.Errorf(where, "unknown_field", "A column has no name.").Hinting("Name it in the first line, or delete it.")
	case m != nil:
		return source.Errorf(where, "unknown_field", "There is no measure %s.", short(name)).Hinting("Did you mean %s?", m.Path())
	}
	names := append(columnNames(), t.v.MeasureNames(vocab.Person)...)
	names = append(names, t.v.MeasureNames(vocab.Limb)...)
	if like := asName(name); slices.Contains(names, like) {
		return source.Errorf(where, "unknown_field", "There is no column or measure %s.", short(name)).Hinting("Write it as %s.", like)
	}
	return source.Errorf(where, "unknown_field", "There is no column or measure %s.", short(name)).
		Hinting("%s", nearest(asName(name), names, "A column is one of "+source.And(columnNames())+", or a measure of "+t.v.Name+"."))
}
