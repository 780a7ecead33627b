package clinical

import (
	"strings"
	"testing"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
)

func TestNewScaleRefuses(t *testing.T) {
	for _, c := range []struct {
		name   string
		grades []string
		want   string
	}{
		{"power", nil, "The scale power needs at least two grades."},
		{"power", []string{"0"}, "The scale power needs at least two grades."},
		{"power", []string{"0", "1", "0"}, `The scale power has the grade "0" twice.`},
		{"power", []string{"0", ""}, `The scale power has the grade "": a grade has a label, without spaces around it.`},
		{"power", []string{"0", " 1"}, `The scale power has the grade " 1": a grade has a label, without spaces around it.`},
		{"", []string{"0", "1"}, `The scale's name "" must have small letters, digits and underscores only, and begin with a letter.`},
		{"Power", []string{"0", "1"}, `The scale's name "Power" must have small letters, digits and underscores only, and begin with a letter.`},
		{"_power", []string{"0", "1"}, `The scale's name "_power" must have small letters, digits and underscores only, and begin with a letter.`},
		{"muscle power\n", []string{"0", "1"}, `The scale's name "muscle power\n" must have small letters, digits and underscores only, and begin with a letter.`},
		{"deg", []string{"0", "1"}, "A scale can't be called deg: the word has another meaning in a condition."},
		{"since", []string{"0", "1"}, "A scale can't be called since: the word has another meaning in a condition."},
		{"size", []string{"0", "1"}, "A scale can't be called size: the word has another meaning in a condition."},
		{"string", []string{"0", "1"}, "A scale can't be called string: the word has another meaning in a condition."},
		{"in", []string{"0", "1"}, "A scale can't be called in: the word has another meaning in a condition."},
		{"has", []string{"0", "1"}, "A scale can't be called has: the word has another meaning in a condition."},
	} {
		if s, err := NewScale(c.name, c.grades); err == nil || err.Error() != c.want || s != nil {
			t.Errorf("%q %q: %v, %v\nwant %s", c.name, c.grades, s, err, c.want)
		}
	}
	// Names that share a beginning or a word with a type or overload of CEL are free.
	opts := EnvOptions()
	for _, name := range []string{"int64", "bool_", "date", "quantity", "crus", "scale", "angle", "less", "deg_", "abs_int"} {
		opts = append(opts, scale(t, name, "0", "1").EnvOptions()...)
	}
	if _, err := cel.NewCustomEnv(opts...); err != nil {
		t.Error(err)
	}
}

func TestGrades(t *testing.T) {
	labels := []string{"none", "slight", "marked"}
	s := scale(t, "spasm", labels...)
	labels[0] = "changed"
	for rank, label := range []string{"none", "slight", "marked"} {
		g, ok := s.Grade(label)
		if h, found := s.At(rank); !ok || !found || g != h || g.Rank != rank || g.Scale != s || g.String() != label {
			t.Errorf("grade %d is %v by its label and %v by its rank", rank, g, h)
		}
	}
	for _, label := range []string{"", "None", "changed", "severe"} {
		if g, ok := s.Grade(label); ok || g != (Grade{}) {
			t.Errorf("%q is the grade %v", label, g)
		}
	}
	for _, rank := range []int{-1, 3, 1 << 40} {
		if g, ok := s.At(rank); ok || g != (Grade{}) {
			t.Errorf("rank %d is the grade %v", rank, g)
		}
		if text := (Grade{s, rank}).String(); text != "" {
			t.Errorf("rank %d is called %q", rank, text)
		}
	}
	if (Grade{}).String() != "" || !types.IsError((Grade{}).Type().(*cel.Type).ConvertToType(types.IntType)) {
		t.Error("the zero Grade has a label or a type")
	}
}

// TestScaleReadTwice: an assessment and a ruleset may each have read the vocabulary; their grades are the same.
func TestScaleReadTwice(t *testing.T) {
	a, b := scale(t, "power", "0", "1", "2"), scale(t, "power", "0", "1", "2")
	env := environment(t, b)
	if got := eval(t, env, "grade.power == power('1') && grade.power < power('2') && grade.power in [power('0'), power('1')]",
		map[string]any{"grade.power": grade(t, a, "1")}); got != types.True {
		t.Errorf("a grade of the same scale, read twice, gives %v", got)
	}
	older := scale(t, "power", "0", "1") // another edition: its ranks mean something else
	if grade(t, older, "1").Equal(grade(t, b, "1")) != types.False || !types.IsError(grade(t, older, "1").Compare(grade(t, b, "1"))) {
		t.Error("grades of two editions of a scale compare")
	}
}

// TestPublishedScales holds the order of the two scales that rulesets use most against the published
// one. T01: Bohannon & Smith 1987, as tabulated in J Neuroeng Rehabil 2013;10:61, table 2. P01: grade
// definitions of a manual muscle testing pack (secondary), 5− from a second one. P09 and P10 follow from that order.
func TestPublishedScales(t *testing.T) {
	ashworth := scale(t, "modified_ashworth", "0", "1", "1+", "2", "3", "4")
	power := scale(t, "muscle_power", "0", "1", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5")
	for rank, label := range strings.Fields("0 1 1+ 2 3 4") { // T01: ranks 0 to 5; rank 2 is grade 1+
		if got := grade(t, ashworth, label); got.Rank != rank {
			t.Errorf("T01: the Ashworth grade %s has rank %d, want %d", label, got.Rank, rank)
		}
	}
	env := environment(t, ashworth, power)
	ordered := func(id string, s *Scale, labels []string) {
		for i, a := range labels {
			for j, b := range labels {
				x, y := s.Name+"('"+a+"')", s.Name+"('"+b+"')"
				for op, want := range map[string]bool{"<": i < j, "<=": i <= j, ">": i > j, ">=": i >= j, "==": i == j, "!=": i != j} {
					if got := eval(t, env, x+" "+op+" "+y, none); got != types.Bool(want) {
						t.Errorf("%s: %s %s %s is %v", id, x, op, y, got)
					}
				}
			}
		}
	}
	ordered("T01", ashworth, strings.Fields("0 1 1+ 2 3 4"))
	ordered("P01", power, strings.Split("0<1<2-<2<2+<3-<3<3+<4-<4<4+<5-<5", "<"))
	for _, c := range []struct {
		id, expr, grade string
		want            types.Bool
	}{
		{"T01", "grade.modified_ashworth == modified_ashworth('1')", "1+", false}, // 1+ is not equal to 1
		{"P09", "grade.muscle_power >= muscle_power('4')", "4-", false},
		{"P10", "grade.muscle_power < muscle_power('3')", "3-", true},
	} {
		vars := map[string]any{}
		for _, s := range []*Scale{ashworth, power} {
			if g, ok := s.Grade(c.grade); ok {
				vars["grade."+s.Name] = g
			}
		}
		if got := eval(t, env, c.expr, vars); got != c.want {
			t.Errorf("%s: %s for grade %s is %v, want %v", c.id, c.expr, c.grade, got, c.want)
		}
	}
}
