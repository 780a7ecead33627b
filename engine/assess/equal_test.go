package assess

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/cel-go/common/types"
	"pgregory.net/rapid"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// sample is one measure as three formats write it, and what must come of it.
type sample struct {
	json, hcl, csv string
	unit           string  // the csv cell needs the column to be in this unit; "" for none
	base           float64 // of a quantity or count
	word           string  // of anything else, or the reason
	confirmed      bool
	missing        bool
}

// drawn is an assessment in the three formats.
type drawn struct {
	json, hcl, csv string
	deviceFor      []Side
	samples        map[string]map[string]sample // by person, left, right and the measure's name
}

var word = rapid.Map(rapid.StringOf(rapid.SampledFrom([]rune("ab Zé漢e\u0301\"'\\,;:|${}%#=[]()1+-\U0001F9B6\u00a0"))), strings.TrimSpace)

func oneLine(t *rapid.T, label string) string {
	return word.Filter(func(s string) bool { return s != "" && !strings.HasPrefix(s, "#") }).Draw(t, label)
}

func manyLines(t *rapid.T, label string) string {
	return strings.TrimSpace(strings.Join(rapid.SliceOfN(word, 1, 3).Draw(t, label), "\n") + "\tx")
}

func inJSON(s string) string {
	b, _ := json.Marshal(s)
	return string(b)
}

func inHCL(s string) string {
	return `"` + strings.NewReplacer(`\`, `\\`, `"`, `\"`, "\n", `\n`, "\t", `\t`, "${", "$${", "%{", "%%{").Replace(s) + `"`
}

// number draws a decimal number between lo and hi, as it is written and what it is.
func number(t *rapid.T, lo, hi float64) (string, float64) {
	decimals := rapid.IntRange(0, 4).Draw(t, "decimals")
	scale := math.Pow10(decimals)
	n := rapid.Int64Range(int64(math.Ceil(lo*scale)), int64(math.Floor(hi*scale))).Draw(t, "number")
	s := strconv.FormatFloat(float64(n)/scale, 'f', decimals, 64)
	x, _ := strconv.ParseFloat(s, 64)
	return s, x
}

// drawSample draws a value of a measure.
func drawSample(t *rapid.T, m *vocab.Measure) sample {
	if rapid.IntRange(0, 5).Draw(t, "missing") == 0 {
		s := oneLine(t, "reason")
		return sample{json: `{"not_recorded": ` + inJSON(s) + `}`, hcl: `{ not_recorded = ` + inHCL(s) + ` }`, csv: "not recorded: " + s, word: s, missing: true}
	}
	plain := func(word string) sample {
		return sample{json: inJSON(word), hcl: inHCL(word), csv: word, word: word}
	}
	switch m.Kind {
	case vocab.Grade:
		return plain(rapid.SampledFrom(m.Scale.Grades).Draw(t, "grade"))
	case vocab.Option:
		return plain(rapid.SampledFrom(m.Options).Draw(t, "option"))
	case vocab.Date:
		if m.Never && rapid.IntRange(0, 2).Draw(t, "never") == 0 {
			return plain("never")
		}
		return plain(fmt.Sprintf("20%02d-%02d-%02d", rapid.IntRange(0, 25).Draw(t, "year"), rapid.IntRange(1, 12).Draw(t, "month"), rapid.IntRange(1, 28).Draw(t, "day")))
	case vocab.Text:
		return plain(manyLines(t, "text"))
	case vocab.YesNo:
		if rapid.Bool().Draw(t, "yes") {
			return sample{json: "true", hcl: "true", csv: "yes", word: "true"}
		}
		return sample{json: "false", hcl: "false", csv: "no", word: "false"}
	case vocab.Count:
		n := rapid.IntRange(int(m.Plausible.Lo)-20, int(m.Plausible.Hi)+20).Draw(t, "count")
		s := strconv.Itoa(n)
		out := sample{json: s, hcl: s, csv: s, base: float64(n)}
		if float64(n) < m.Plausible.Lo || float64(n) > m.Plausible.Hi {
			return confirm(out, s, "")
		}
		return out
	}
	return drawQuantity(t, m)
}

func confirm(s sample, number, unit string) sample {
	s.confirmed = true
	s.csv += " (confirmed)"
	if unit == "" {
		s.json, s.hcl = fmt.Sprintf(`{"confirmed": true, "value": %s}`, number), fmt.Sprintf(`{ value = %s, confirmed = true }`, number)
	} else {
		s.json, s.hcl = fmt.Sprintf(`{"value": %q, "confirmed": true}`, number+" "+unit), fmt.Sprintf("{ value = %s\n unit = %q\n confirmed = true }", number, unit)
	}
	return s
}

func drawQuantity(t *rapid.T, m *vocab.Measure) sample {
	var same []clinical.Unit
	for _, u := range clinical.Units() {
		if u.Dimension == m.Unit.Dimension {
			same = append(same, u)
		}
	}
	u := rapid.SampledFrom(same).Draw(t, "unit")
	limit := func(x float64) float64 {
		q, _ := clinical.NewQuantity(x, m.Unit)
		at, _ := q.In(u)
		return at
	}
	lo, hi := limit(m.Plausible.Lo), limit(m.Plausible.Hi)
	beyond := (hi - lo) * rapid.SampledFrom([]float64{0, 0, 0, 1}).Draw(t, "beyond")
	if hi-lo < 1 { // in such a unit no short decimal number might lie between
		u, lo, hi, beyond = m.Unit, m.Plausible.Lo, m.Plausible.Hi, 0
	}
	s, x := number(t, lo-beyond, hi+beyond)
	q, err := clinical.NewQuantity(x, u)
	if err != nil {
		t.Fatal(err)
	}
	inside := x >= lo && x <= hi
	out := sample{json: s, hcl: s, csv: s, base: q.Base()}
	switch {
	case u.Code == m.Unit.Code && rapid.Bool().Draw(t, "bare"):
		if !inside {
			return confirm(out, s, "")
		}
	default:
		if rapid.Bool().Draw(t, "unit in the column") {
			out.unit = u.Code
		} else {
			out.csv = s + " " + u.Code
		}
		if !inside {
			return confirm(out, s, u.Code)
		}
		out.json, out.hcl = fmt.Sprintf("%q", s+" "+u.Code), fmt.Sprintf(`{ value = %s, unit = %q }`, s, u.Code)
		if rapid.Bool().Draw(t, "swap") {
			out.json, out.hcl = fmt.Sprintf(`{"value": %s, "unit": %q}`, s, u.Code), fmt.Sprintf("%q", s+" "+u.Code)
		}
	}
	return out
}

// draw draws an assessment.
func draw(t *rapid.T, v *vocab.Vocabulary) drawn {
	d := drawn{deviceFor: rapid.SampledFrom([][]Side{{Left}, {Right}, {Left, Right}}).Draw(t, "device_for"), samples: map[string]map[string]sample{}}
	head := [][2]string{{"format", Format}, {"id", oneLine(t, "id")}, {"vocabulary", "small_limb@1"}, {"date", "2026-10-02"}, {"assessor", oneLine(t, "assessor")}}
	var js, hs []string
	for _, h := range head {
		js, hs = append(js, inJSON(h[0])+": "+inJSON(h[1])), append(hs, h[0]+" = "+inHCL(h[1]))
	}
	limbs, _ := json.Marshal(d.deviceFor)
	js, hs = append(js, `"device_for": `+string(limbs)), append(hs, "device_for = "+string(limbs))

	table := [][]string{
		{"id", "date", "assessor", "side", "device"},
		{head[1][1], head[3][1], head[4][1], "left", yes(slices.Contains(d.deviceFor, Left))},
		{head[1][1], head[3][1], head[4][1], "right", yes(slices.Contains(d.deviceFor, Right))},
	}
	for _, group := range []string{"person", "left", "right"} {
		d.samples[group] = map[string]sample{}
		var inner, lines []string
		for _, m := range v.Measures {
			if (m.Of == vocab.Person) != (group == "person") || rapid.IntRange(0, 2).Draw(t, m.Name) == 0 {
				continue
			}
			s := drawSample(t, m)
			d.samples[group][m.Name] = s
			inner, lines = append(inner, inJSON(m.Name)+": "+s.json), append(lines, m.Name+" = "+s.hcl)
		}
		js = append(js, fmt.Sprintf("%q: {%s}", group, strings.Join(inner, ", ")))
		hs = append(hs, fmt.Sprintf("%s {\n%s\n}", group, strings.Join(lines, "\n")))
	}
	for _, m := range v.Measures {
		table = addColumn(t, table, m, d.samples)
	}
	js = rapid.Permutation(js).Draw(t, "order")
	d.json, d.hcl, d.csv = "{"+strings.Join(js, ",\n")+"}", strings.Join(hs, "\n"), writeTable(t, table)
	return d
}

func yes(b bool) string {
	if b {
		return "yes"
	}
	return "no"
}

// addColumn adds a measure to a table: a column has one unit for both limbs, so a cell that cannot
// share it says its own.
func addColumn(t *rapid.T, table [][]string, m *vocab.Measure, samples map[string]map[string]sample) [][]string {
	cells := [2]sample{samples["left"][m.Name], samples["right"][m.Name]}
	if m.Of == vocab.Person {
		s := samples["person"][m.Name]
		cells = rapid.SampledFrom([][2]sample{{s, s}, {s, {}}, {{}, s}}).Draw(t, "rows")
	}
	name := m.Name
	if name == "device" || rapid.Bool().Draw(t, "qualified") {
		name = m.Path()
	}
	unit := ""
	bare := func(s sample) bool { return s.csv == "" || s.missing }
	if a, b := cells[0], cells[1]; m.Kind == vocab.Quantity && (a.unit == b.unit || bare(a) || bare(b)) {
		unit = a.unit + b.unit
		if a.unit == b.unit {
			unit = a.unit
		}
	}
	if unit != "" {
		name += " [" + unit + "]"
	}
	table[0] = append(table[0], name)
	for i, s := range cells {
		if s.unit != "" && unit == "" {
			number, confirmed := strings.CutSuffix(s.csv, " (confirmed)")
			s.csv = number + " " + s.unit
			if confirmed {
				s.csv += " (confirmed)"
			}
		}
		table[i+1] = append(table[i+1], s.csv)
	}
	return table
}

// writeTable writes a table with any of the separators, and in one with semicolons perhaps with
// decimal commas.
func writeTable(t *rapid.T, table [][]string) string {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	w.Comma = rapid.SampledFrom([]rune(",;\t")).Draw(t, "separator")
	w.UseCRLF = rapid.Bool().Draw(t, "crlf")
	if w.Comma == ';' {
		comma := rapid.Bool().Draw(t, "decimal comma")
		for _, row := range table[1:] {
			for i := range row {
				if m := numberForm.FindStringSubmatch(row[i]); m != nil && m[2] == "." && isMeasured(table[0][i]) {
					if len(m[3]) == 3 {
						m[3] += "0" // 1.234 could be one thousand
					}
					if comma {
						m[2] = ","
					}
					row[i] = strings.Join(m[1:], "")
				}
			}
		}
	}
	if err := w.WriteAll(table); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// isMeasured reports whether the cells of a column are numbers.
func isMeasured(column string) bool {
	for _, name := range []string{"age", "body_mass", "falls", "leg_length", "dorsiflexion", "pressure_index", "foot_posture"} {
		if strings.Contains(column, name) {
			return true
		}
	}
	return false
}

// matches reports whether an entry is what was drawn.
func (s sample) matches(e *Entry) bool {
	if e == nil || e.Confirmed != s.confirmed || (e.Value == nil) != s.missing {
		return false
	}
	switch x := e.Value.(type) {
	case nil:
		return e.NotRecorded == s.word
	case clinical.Quantity:
		return x.Base() == s.base && x.Unit() == e.Measure.Unit
	case types.Int:
		return float64(x) == s.base
	case types.Bool:
		return strconv.FormatBool(bool(x)) == s.word
	case types.String:
		return string(x) == s.word
	default:
		return fmt.Sprint(x) == s.word
	}
}

// mismatch says where an assessment is not what was drawn; "" is nowhere.
func (d drawn) mismatch(a *Assessment) string {
	if !slices.Equal(a.DeviceFor, d.deviceFor) {
		return fmt.Sprintf("device_for is %v", a.DeviceFor)
	}
	for group, entries := range map[string]map[string]*Entry{"person": a.Person, "left": a.Left, "right": a.Right} {
		if len(entries) != len(d.samples[group]) {
			return fmt.Sprintf("%d entries for %s, want %d", len(entries), group, len(d.samples[group]))
		}
		for name, s := range d.samples[group] {
			if !s.matches(entries[name]) {
				return fmt.Sprintf("%s.%s is %+v, want %+v", group, name, entries[name], s)
			}
		}
	}
	return ""
}

func TestTheThreeFormatsReadTheSame(t *testing.T) {
	v := vocabulary(t)
	rapid.Check(t, func(t *rapid.T) {
		d := draw(t, v)
		var first []byte
		for _, x := range [][2]string{{"a.json", d.json}, {"a.hcl", d.hcl}, {"a.csv", d.csv}} {
			list, diags := Read(source.NewFile(x[0], []byte(x[1])), v)
			if len(diags) > 0 || len(list) != 1 {
				t.Fatalf("%s\n%s", x[1], diags.Text())
			}
			if m := d.mismatch(list[0]); m != "" {
				t.Fatalf("%s: %s\n%s", x[0], m, x[1])
			}
			written, err := list[0].JSON()
			if err != nil {
				t.Fatal(err)
			}
			if first == nil {
				first = written
			}
			if !bytes.Equal(first, written) {
				t.Fatalf("%s gives another assessment:\n%s\n%s", x[0], first, written)
			}
		}
	})
}

func TestWhatIsWrittenReadsBack(t *testing.T) {
	v := vocabulary(t)
	rapid.Check(t, func(t *rapid.T) {
		d := draw(t, v)
		a, diags := ReadJSON(source.NewFile("a.json", []byte(d.json)), v)
		if a == nil {
			t.Fatal(diags.Text())
		}
		written, err := a.JSON()
		if err != nil {
			t.Fatal(err)
		}
		b, diags := ReadJSON(source.NewFile("b.json", written), v)
		if b == nil {
			t.Fatalf("%s\n%s", written, diags.Text())
		}
		if m := d.mismatch(b); m != "" {
			t.Fatalf("%s\n%s", m, written)
		}
		if b.ID != a.ID || b.Assessor != a.Assessor || b.Date != a.Date || b.Vocabulary != a.Vocabulary || b.Digest() != a.Digest() {
			t.Fatalf("%+v\n%+v", a, b)
		}
	})
}

// Any quantity that can be kept reads back to itself, however large or small it is.
func TestAnyQuantityIsWrittenExactly(t *testing.T) {
	v := vocabulary(t)
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64().Draw(t, "value")
		m := rapid.SampledFrom([]string{"leg_length", "dorsiflexion"}).Draw(t, "measure")
		u := rapid.SampledFrom(map[string][]string{"leg_length": {"mm", "cm", "m", "[in_i]"}, "dorsiflexion": {"deg", "rad"}}[m]).Draw(t, "unit")
		text := minimal(`"left": {}`, fmt.Sprintf(`"left": {%q: {"value": %s, "unit": %q, "confirmed": true}}`, m, strconv.FormatFloat(x, 'g', -1, 64), u))
		a, _ := ReadJSON(source.NewFile("a.json", []byte(text)), v)
		if a == nil {
			return // too large
		}
		written, err := a.JSON()
		if err != nil {
			t.Fatal(err)
		}
		b, diags := ReadJSON(source.NewFile("b.json", written), v)
		if b == nil {
			t.Fatalf("%s\n%s", written, diags.Text())
		}
		got, want := b.Left[m].Value.(clinical.Quantity), a.Left[m].Value.(clinical.Quantity)
		if most := 1e12; math.Abs(want.Base()) > most && math.Abs(got.Base()-want.Base()) <= 1e-14*math.Abs(want.Base()) {
			return // too large for its own unit, and no other unit has a number for each of its last digits
		}
		if got.Base() != want.Base() || got.Unit() != want.Unit() {
			t.Fatalf("%v, want %v\n%s", got, want, written)
		}
	})
}
