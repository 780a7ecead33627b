package cases

import (
	"encoding/csv"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"crus/engine/assess"
	"crus/engine/ruleset"
	"crus/engine/source"
)

// TestEveryPublishedCaseIsRun: each row of testdata/reference/clinical_check_cases.csv that was read (V), read
// second-hand (V2) or derived (D) is in one of the tables of these tests. A row from memory (M) is in none.
func TestEveryPublishedCaseIsRun(t *testing.T) {
	run := map[string][]string{"S08": {"TestPublishedScreening"}}
	add := func(test, id string) { run[id] = append(run[id], test) }
	for _, x := range ruleRows() {
		add("TestPublishedCutOffs", x.row)
	}
	for _, x := range formulaRows() {
		add("TestPublishedFormulas", x.row)
	}
	for _, x := range wordingRows() {
		add("TestPublishedWording", x.row)
	}
	for _, x := range scaleRows() {
		add("TestPublishedScales", x.row)
	}
	for _, x := range refusedRows() {
		add("TestPublishedScalesRefuse", x.row)
	}
	for _, x := range wardRows() {
		add("TestPublishedBedside", x.row)
	}
	published := rows(t)
	for id, row := range published {
		switch truth := slices.Contains([]string{"V", "V2", "D"}, row.status); {
		case !truth && row.status != "M":
			t.Errorf("%s has the status %q", id, row.status)
		case truth && len(run[id]) == 0:
			t.Errorf("%s, %s (%s): no test runs it", id, row.input, row.source)
		case !truth && len(run[id]) > 0:
			t.Errorf("%s is from memory, and yet %v holds something against it", id, run[id])
		}
	}
	for id := range run {
		if _, ok := published[id]; !ok {
			t.Errorf("%s is not published", id)
		}
	}
}

type row struct{ input, expected, source, status string }

// rows reads the published check cases.
func rows(t *testing.T) map[string]row {
	t.Helper()
	f, err := os.Open("../../testdata/reference/clinical_check_cases.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.FieldsPerRecord, r.LazyQuotes = -1, true
	lines, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]row{}
	for _, l := range lines[1:] {
		n := len(l) // a comma in the published result that is not quoted shifts what follows
		out[l[0]] = row{l[2], strings.Join(l[3:n-2], ","), l[n-2], l[n-1]}
	}
	return out
}

func assessment(t *testing.T, rs *ruleset.Ruleset, person, left, right string) *assess.Assessment {
	t.Helper()
	text := fmt.Sprintf(`{"format": "crus-assessment/1", "id": "x", "vocabulary": "lower_limb@1", "date": "2026-10-02", "device_for": ["left"],
 "person": {%s}, "left": {%s}, "right": {%s}}`, person, left, right)
	list, diags := assess.Read(source.NewFile("a.json", []byte(text)), rs.Vocabulary)
	if len(list) != 1 {
		t.Fatal(diags.Text())
	}
	return list[0]
}
