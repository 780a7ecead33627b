package assess

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"strings"

	"crus/engine/source"
	"crus/engine/vocab"
)

// ReadCSV reads a table of assessments. A row is a limb, and the rows with one id are one
// assessment. The first line names the columns:
//
//	id        the assessment
//	date      of the assessment, and assessor: optional
//	side      left or right
//	device    yes or no: is a device wanted for this limb
//	a measure its name, or person.name or limb.name, and if wanted the unit of the whole column
//	          behind it: leg_length [cm]
//
// Capital letters, and blanks around a name, do not matter there.
//
// What may stand in a cell is said in cell.go. The date, the assessor and the measures of the
// person may stand in one row of an assessment or in both; two that differ are refused. Columns are
// separated by what separates those of the first line: comma, semicolon or tab.
//
// An assessment with an error is left out, and the diagnostics say what is wrong with it. With an
// error in the first line or in the form of a row there are none at all.
func ReadCSV(f *source.File, v *vocab.Vocabulary) ([]*Assessment, source.Diagnostics) {
	start, diags := whole(f, MaxFileSize)
	if diags.HasErrors() {
		return nil, diags
	}
	t := &table{file: f, start: start, v: v, byID: map[string]*record{}}
	t.read()
	var out []*Assessment
	all := t.diags
	if len(t.noSide) > 0 {
		all = append(all, t.sides())
	}
	for _, r := range t.records {
		a, diags := check(r.finish(), v)
		all = append(all, diags...)
		if a != nil && !r.incomplete {
			out = append(out, a)
		}
	}
	if t.diags.HasErrors() {
		return nil, all.Sorted()
	}
	return out, all.Sorted()
}

// table reads the rows of a CSV file.
type table struct {
	file      *source.File
	start     int // where the text begins
	v         *vocab.Vocabulary
	diags     source.Diagnostics // of the first line and of rows that belong to no assessment
	separator rune
	columns   []column
	records   []*record // in the order of their first rows
	byID      map[string]*record
	noSide    []source.Value // cells of the column side that do not say one
}

func (t *table) fail(d source.Diagnostic) { t.diags = append(t.diags, d) }

func (t *table) read() {
	src := t.file.Src[t.start:]
	if t.separator = t.findSeparator(src); t.separator == 0 {
		return
	}
	r := csv.NewReader(bytes.NewReader(src))
	r.Comma, r.FieldsPerRecord = t.separator, -1
	lines := []int{t.start}
	for line := range bytes.Lines(src) {
		start := lines[len(lines)-1]
		if len(line) > MaxLineSize {
			t.fail(source.Errorf(source.Range{File: t.file, Start: start, End: start + len(line)}, "too_large", "This line has %d bytes; more than %d are not read.", len(line), MaxLineSize).
				Hinting("A line is one limb."))
			return
		}
		lines = append(lines, start+len(line))
	}
	for {
		cells, err := r.Read()
		if err != nil {
			t.end(err, lines)
			return
		}
		places := t.places(r, len(cells), lines)
		switch {
		case t.columns == nil:
			if t.header(cells, places); t.diags.HasErrors() {
				return
			}
		default:
			t.row(cells, places)
		}
		if len(t.diags) > maxErrors {
			return
		}
	}
}

// sides reports the cells that do not say a side, all at once: a table that writes L writes it in
// every row.
func (t *table) sides() source.Diagnostic {
	first := t.noSide[0]
	message := quoted(first.Text.S) + " is not a side."
	if n := len(t.noSide) - 1; n == 1 {
		message = quoted(first.Text.S) + " is not a side, nor is what stands in 1 further row."
	} else if n > 1 {
		message = fmt.Sprintf("%s is not a side, nor is what stands in %d further rows.", quoted(first.Text.S), n)
	}
	return source.Errorf(first.Where, "side", "%s", message).Hinting("Write left or right.")
}

// end reports why there are no further rows, unless the table just ends.
func (t *table) end(err error, lines []int) {
	var parse *csv.ParseError
	switch {
	case errors.As(err, &parse):
		at := min(lines[parse.Line-1]+parse.Column-1, len(t.file.Src))
		t.fail(source.Errorf(source.Range{File: t.file, Start: at, End: min(at+1, len(t.file.Src))}, "syntax", "A quote stands where it can't be read.").
			Hinting(`A cell that holds a quote, a line end or the separator stands in quotes from its first to its last character, and a quote inside it is doubled: "a ""b"" c".`))
	case errors.Is(err, io.EOF) && len(t.records) == 0 && !t.diags.HasErrors():
		t.fail(source.Errorf(source.Range{File: t.file, Start: len(t.file.Src), End: len(t.file.Src)}, "empty", "The table has no rows below its first line.").
			Hinting("Write one row for each limb."))
	}
}

// findSeparator gives what separates the columns of the first line; 0 is not to be known.
func (t *table) findSeparator(src []byte) rune {
	line, _, _ := bytes.Cut(bytes.TrimLeft(src, "\r\n"), []byte("\n"))
	var found []string
	separator := ','
	inside := false
	for _, c := range string(line) {
		if c == '"' {
			inside = !inside
		}
		name := map[rune]string{',': "a comma", ';': "a semicolon", '\t': "a tab"}[c]
		if name == "" || inside || len(found) > 0 && c == separator {
			continue
		}
		found, separator = append(found, name), c
		if len(found) > 1 {
			break
		}
	}
	if len(found) > 1 {
		at := t.start + bytes.Index(src, line)
		t.fail(source.Errorf(source.Range{File: t.file, Start: at, End: at + len(line)}, "separator", "The first line has both %s between its columns.", source.And(found)).
			Hinting("Use one of the two in the whole table."))
		return 0
	}
	return separator
}

// places gives the places of the cells of the row that was just read, quotes included.
func (t *table) places(r *csv.Reader, n int, lines []int) []source.Range {
	out := make([]source.Range, n)
	for i := range out {
		line, column := r.FieldPos(i)
		out[i] = source.Range{File: t.file, Start: lines[line-1] + column - 1}
		if i > 0 {
			out[i-1].End = out[i].Start - 1 // a separator is one byte
		}
	}
	end := t.start + int(r.InputOffset())
	for end > out[n-1].Start && (t.file.Src[end-1] == '\n' || t.file.Src[end-1] == '\r') {
		end--
	}
	out[n-1].End = end
	return out
}

// row adds one limb to its assessment.
func (t *table) row(cells []string, places []source.Range) {
	blank := true
	for i := range cells {
		cells[i] = strings.TrimSpace(cells[i])
		blank = blank && cells[i] == ""
	}
	if blank {
		return
	}
	if len(cells) != len(t.columns) {
		d := source.Errorf(source.Range{File: t.file, Start: places[0].Start, End: places[len(places)-1].End}, "columns",
			"This row has %d cells, and the first line has %d.", len(cells), len(t.columns)).
			Hinting("A cell that holds the separator stands in quotes.")
		if t.separator == ',' {
			d = d.Hinting("Decimals are written with a point, and a cell that holds a comma stands in quotes.")
		}
		t.fail(d)
		return
	}
	at := t.at("id")
	if cells[at] == "" {
		t.fail(source.Errorf(places[at], "missing", "This row has no id.").Hinting("Both limbs of one assessment have its id."))
		return
	}
	rec := t.byID[cells[at]]
	if rec == nil {
		rec = newRecord(t, textValue(places[at], cells[at]))
		t.byID[cells[at]] = rec
		t.records = append(t.records, rec)
	}
	rec.row(t, cells, places)
}

// at gives the place of a column in the row; every table that is read on has the ones asked for.
func (t *table) at(name string) int {
	for i, c := range t.columns {
		if c.measure == nil && c.name == name {
			return i
		}
	}
	return 0
}
