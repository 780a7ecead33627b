package cell_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/cell/celltest"
	"crus/engine/reason"
	"crus/engine/ruleset"
)

const small = `
vocabulary "small" {
  title   = "Small"
  version = "1.0.0"
}
scale "tone" { grades = ["0", "1", "1+", "2"] }
measure "flex" {
  of          = "limb"
  label       = "Flex"
  unit        = "deg"
  plausible   = [-60, 45]
  error_basis = "None is published."
}
measure "knee" {
  of          = "limb"
  label       = "Knee"
  unit        = "deg"
  plausible   = [-90, 20]
  error_basis = "None is published."
}
measure "tone" {
  of          = "limb"
  label       = "Tone"
  scale       = "tone"
  error_basis = "None is published."
}
measure "skin" {
  of          = "limb"
  label       = "Skin"
  one_of      = ["intact", "thin", "broken", "raw"]
  error_basis = "None is published."
}
measure "able" {
  of          = "limb"
  label       = "Able"
  yes_no      = true
  error_basis = "None is published."
}
measure "rises" {
  of          = "limb"
  label       = "Rises"
  count       = true
  plausible   = [0, 50]
  error_basis = "None is published."
}
measure "injected" {
  of    = "person"
  label = "Injected"
  date  = true
  never = true
}
choice "pad" {
  label   = "Pad"
  options = ["none", "thin", "thick"]
}
`

// conditions reads a ruleset with one finding for each condition.
func conditions(t testing.TB, texts ...string) *cell.Space {
	t.Helper()
	var b strings.Builder
	b.WriteString("ruleset \"main\" {\n title = \"Main\"\n version = \"1.0.0\"\n status = \"active\"\n vocabulary = \"small@1\"\n}\n")
	for i, text := range texts {
		fmt.Fprintf(&b, "finding \"f%d\" {\n holds = %q\n because = \"So.\"\n}\n", i, text)
	}
	lib := ruleset.Library{Embedded: fstest.MapFS{"small/v.hcl": {Data: []byte(small)}, "main/r.hcl": {Data: []byte(b.String())}}}
	rs, diags := lib.Ruleset("main")
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	s, err := cell.New(e)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func axis(t testing.TB, s *cell.Space, path string) *cell.Axis {
	t.Helper()
	i := slices.IndexFunc(s.Axes, func(a *cell.Axis) bool { return a.Path == path })
	if i < 0 {
		t.Fatalf("no axis %s", path)
	}
	return s.Axes[i]
}

// Each cell of an axis in words, from the lowest to the highest.
func TestCells(t *testing.T) {
	for _, x := range []struct{ conditions, path, cells string }{
		{"limb.flex < deg(5)", "limb.flex", "less than 5° | 5° or more"},
		{"limb.flex <= deg(5)", "limb.flex", "5° or less | more than 5°"},
		{"limb.flex >= deg(5)", "limb.flex", "less than 5° | 5° or more"},
		{"deg(5) < limb.flex", "limb.flex", "5° or less | more than 5°"},
		{"limb.flex == deg(5)", "limb.flex", "less than 5° | 5° | more than 5°"},
		{"limb.flex < deg(5) ; limb.flex <= deg(5)", "limb.flex", "less than 5° | 5° | more than 5°"},
		{"limb.flex > deg(-10) ; limb.flex < deg(5)", "limb.flex", "−10° or less | more than −10° and less than 5° | 5° or more"},
		{"limb.flex >= deg(-10) && limb.flex <= deg(5)", "limb.flex", "less than −10° | from −10° to 5° | more than 5°"},
		{"limb.flex in [deg(0), deg(5)]", "limb.flex", "less than 0° | 0° | more than 0° and less than 5° | 5° | more than 5°"},
		{"[deg(0), deg(5)].exists(x, limb.flex < x)", "limb.flex", "less than 0° | from 0° to less than 5° | 5° or more"},
		{"limb.flex >= deg(45)", "limb.flex", "less than 45° | 45° or more"},
		{"limb.tone > tone('1')", "limb.tone", "1 or less | 1+ or more"},
		{"limb.tone >= tone('1+')", "limb.tone", "1 or less | 1+ or more"},
		{"limb.tone != tone('1')", "limb.tone", "0 | 1 | 1+ or more"},
		{"limb.rises <= 3 ; limb.rises < 4", "limb.rises", "3 or less | 4 or more"},
		{"limb.skin == 'broken'", "limb.skin", "intact, thin or raw | broken"},
		{"limb.skin in ['broken', 'raw']", "limb.skin", "intact or thin | broken or raw"},
		{"limb.skin in ['broken', 'raw'] ; limb.skin == 'raw'", "limb.skin", "intact or thin | broken | raw"},
		{"[limb.able].exists_one(x, x)", "limb.able", "no | yes"},
		{"limb.able", "limb.able", "no | yes"},
		{"since(person.injected) > weeks(12)", "person.injected", "84 days or less before the assessment | 85 days or more before the assessment or never"},
		{"limb.flex - limb.knee > deg(5)", "limb.flex - limb.knee", "5° or less | more than 5°"},
		{"limb.skin == other.skin", "limb.skin", "intact | thin | broken | raw"},
	} {
		s := conditions(t, strings.Split(x.conditions, " ; ")...)
		a := axis(t, s, x.path)
		var got []string
		for i := range a.Count() {
			got = append(got, a.Words(i))
		}
		if g := strings.Join(got, " | "); g != x.cells {
			t.Errorf("%s: %s\n  is cut into %s\n  not into %s", x.conditions, x.path, g, x.cells)
		}
	}
}

// What the fragment takes in, and what is left to cel-go.
func TestFragment(t *testing.T) {
	for text, unclear := range map[string]int{
		"limb.flex < deg(5) ? limb.able : other.able":                    0,
		"limb.able == other.able":                                        0,
		"limb.flex < other.flex":                                         0,
		"limb.tone > other.tone":                                         0,
		"recorded(limb.flex) || limb.flex + deg(5) > abs(limb.knee) * 2": 0,
		"[limb.flex, limb.knee].all(x, x > deg(5))":                      0,
		"limb.tone in [other.tone, tone('2')]":                           0,
		"[limb.able].exists_one(x, x)":                                   0,
		"[limb.flex, limb.knee].filter(x, x > deg(5)).size() == 1":       1,
		"limb.able && [limb.flex, limb.knee].exists_one(x, x > deg(5))":  1,
		"limb.rises * limb.rises > 9":                                    1,
	} {
		if s := conditions(t, text); len(s.Unclear) != unclear {
			t.Errorf("%s: %d unclear parts, not %d", text, len(s.Unclear), unclear)
		}
	}
}

// A value from a cell lies in it and is plausible, for every cell that is possible at all; the cells next to each other
// leave nothing out.
func TestValuesOfCells(t *testing.T) {
	for seed := range uint64(100) {
		s := celltest.Draw(celltest.Seeded(seed), celltest.Small())
		x := newComparison(t, s.Engine(t))
		for _, a := range x.Axes[:x.Measures] {
			lo, hi := a.Range()
			never, may := a.Never()
			for i := range a.Count() {
				v, ok := a.Value(i)
				if ok != a.Possible(i) {
					t.Fatalf("seed %d: %s cell %d: a value %v, and possible %v", seed, a.Path, i, ok, a.Possible(i))
				}
				if ok && (a.Cell(v) != i || v < lo || v > hi) && !(may && v == never) {
					t.Errorf("seed %d: %s: %v stands for cell %d (%s), and lies in %d, from %v to %v", seed, a.Path, v, i, a.Words(i), a.Cell(v), lo, hi)
				}
			}
			if a.Cells == nil && (!a.Possible(a.Cell(lo)) || !a.Possible(a.Cell(hi))) {
				t.Errorf("seed %d: an end of %s lies in no possible cell", seed, a.Path)
			}
		}
	}
}

// Rows turned back into an assessment give the rows.
func TestRowsBack(t *testing.T) {
	for seed := range uint64(100) {
		s := celltest.Draw(celltest.Seeded(seed), celltest.Small())
		x := newComparison(t, s.Engine(t))
		a := s.Assessment(celltest.Seeded(seed + 1))
		rows := map[assess.Side]cell.Row{}
		for _, side := range a.DeviceFor {
			rows[side] = x.Row(a, side)
		}
		if a.Date == "" {
			continue
		}
		b, err := x.Assessment("again", a.Date, rows)
		if err != nil {
			t.Fatalf("seed %d: %v", seed, err)
		}
		for side, want := range rows {
			got := x.Row(b, side)
			for i := range want.Value {
				if want.Value[i] != got.Value[i] && !(math.IsNaN(want.Value[i]) && math.IsNaN(got.Value[i])) || want.Recorded[i] != got.Recorded[i] {
					t.Errorf("seed %d: %s is %v, not %v", seed, x.Axes[i].Path, got.Value[i], want.Value[i])
				}
			}
		}
	}
}

// A plan works out what it was made for as the whole does.
func TestPlan(t *testing.T) {
	for seed := range uint64(100) {
		s := celltest.Draw(celltest.Seeded(seed), celltest.Small())
		x := newComparison(t, s.Engine(t))
		d := celltest.Seeded(seed + 1)
		all, some := x.NewCase(), x.NewCase()
		for _, rule := range x.Rules {
			plan := x.Plan(rule.Force)
			row := x.Row(s.Assessment(d), assess.Left)
			x.Work(all, row)
			x.WorkOn(some, row, plan)
			if all.Truth[rule.Force] != some.Truth[rule.Force] {
				t.Fatalf("seed %d: %s is %v by itself, not %v", seed, rule.Name, some.Truth[rule.Force], all.Truth[rule.Force])
			}
		}
	}
}

func BenchmarkWork(b *testing.B) {
	s := celltest.Draw(celltest.Seeded(1), celltest.Medium())
	x, err := cell.New(s.Engine(b))
	if err != nil {
		b.Fatal(err)
	}
	row, c := x.Row(s.Assessment(celltest.Seeded(2)), assess.Left), x.NewCase()
	b.ReportAllocs()
	for b.Loop() {
		x.Work(c, row)
	}
	b.ReportMetric(float64(len(x.Nodes)), "nodes")
}
