package celltest_test

import (
	"regexp"
	"slices"
	"strings"
	"testing"
	"time"

	"crus/engine/biomech"
	"crus/engine/cell/celltest"
	"crus/engine/reason"
)

// construct is something of the language, and how its text looks.
type construct struct{ name, looks string }

// plain are the constructs that every sample may have.
func plain() []construct {
	measure := `(?:limb|other|person)\.\w+`
	return []construct{
		{"quantity", `unit  = "mm"`}, {"quantity in cm", `unit  = "cm"`}, {"quantity in years", `unit  = "a"`}, {"quantity in kg", `unit  = "kg"`},
		{"grade", `scale = "`}, {"option", `one_of = `}, {"yes/no", `yes_no = true`}, {"count", `count = true`}, {"negative count", `(?s)count = true\s+plausible = \[-`},
		{"date", `date = true`}, {"date with never", `never = true`}, {"text", `text = true`}, {"error", `  error = `},
		{"measure of the person", `(?s)measure "\w+" \{\s+of    = "person"`}, {"measure of a limb", `(?s)measure "\w+" \{\s+of    = "limb"`},
		{"choice of the person", `(?s)choice "\w+" \{\s+of       = "person"`}, {"ordered", `ordered  = true`}, {"not ordered", `ordered  = false`},
		{"default option", `default  = "`}, {"default number", `default  = -?\d`}, {"rounding", `rounding = `},
		{"applies", `applies `}, {"builds_on", `builds_on`}, {"except", `except "`}, {"clinician_decides", `clinician_decides "`},
		{"quantity block", `quantity "q`}, {"finding block", `finding "f`}, {"unless", `unless `}, {"overrides", `overrides = \["r`}, {"overrides across parts", `overrides = \[[^\]]*"(?:base|further)\.`},
		{"strong", `"strong"`}, {"conditional", `"conditional"`}, {"rule without advice", `(?s)overrides = [^\n]*\n\}`}, {"several advise blocks", `(?s)  \}\n  advise "`},
		{"favour", `favour = `}, {"only", `only = `}, {"never option", `never = \[`}, {"at_least option", `at_least = \[`}, {"at_most option", `at_most = \[`},
		{"aim", `aim = "`}, {"at_least number", `at_least = "`}, {"at_most number", `at_most = "`},
		{"contraindication", `"contraindication"`}, {"precaution", `"precaution"`}, {"note", `"note"`}, {"template", `\$\{(?:limb|finding|quantity)\.`},
		{"&&", ` && `}, {"||", ` \|\| `}, {"!", `!\(|!limb`}, {"==", ` == `}, {"!=", ` != `}, {"<", ` < `}, {"<=", ` <= `}, {">", ` > `}, {">=", ` >= `},
		{"constant first", `"[a-z]+\(-?[\d.]+\) [<>=]+ ` + measure}, {"constant condition", `= "(?:true|false)"|\((?:true|false)\)| (?:true|false) &&`},
		{"pair of quantities", `\.(?:angle|length)_\d+ [<>=!]+ ` + measure}, {"pair of grades", `\.grade_\d+ [<>=!]+ ` + measure}, {"pair of options", `\.kind_\d+ [=!]= ` + measure},
		{"pair of counts", `\.count_\d+ [<>=!]+ ` + measure}, {"pair of yes/no", `\.sign_\d+ [=!]= ` + measure}, {"pair of dates", `since\([\w.]+\) [<>=!]+ since\(`},
		{"in options", ` in \['`}, {"in grades", ` in \[\w+_scale`}, {"in quantities", ` in \[(?:deg|mm|cm|years)\(`}, {"in counts", ` in \[-?\d`}, {"in a list that is not constant", ` in \[` + measure},
		{"exists over measures", `\[` + measure + `, [^\]]*\]\.exists\(`}, {"all over measures", `\[` + measure + `, [^\]]*\]\.all\(`}, {"exists over constants", `\[\w+\([^\]]*\)\]\.exists\(x, ` + measure},
		{"exists over conditions", `\.exists\(x, x\)`}, {"all over conditions", `\.all\(x, !x\)`}, {"exists over dates", `\[since\([^\]]*\]\.(?:exists|all)`},
		{"ternary", ` \? `}, {"nested ternary", ` \? [^":]* \? `}, {"== of conditions", `\)? == \(|finding\.\w+ == `}, {"!= of conditions", `\)? != \(|finding\.\w+ != `},
		{"other", `other\.`}, {"recorded", `recorded\((?:limb|person)`}, {"recorded other", `recorded\(other`}, {"since", `since\(`},
		{"time in months", `months\(`}, {"finding", `finding\.f\d`}, {"finding of another", `finding\.(?:base|further)\.`}, {"quantity read", `quantity\.q\d`}, {"quantity of another", `quantity\.(?:base|further)\.`},
		{"sum", measure + ` \+ ` + measure}, {"difference", measure + ` - ` + measure}, {"times a number", measure + ` \* `}, {"a number times", `\d \* ` + measure}, {"divided by a number", measure + ` / -?\d`}, {"negated", `-` + measure},
	}
}

// dear are the constructs that no cells can express, or that are not linear.
func dear() []construct {
	measure := `(?:limb|other|person)\.\w+`
	return []construct{
		{"abs", `abs\((?:limb|other|person)\.(?:angle|length|mass|time)`}, {"least", `least\(`}, {"greatest", `greatest\(`}, {"value by a condition", `\(` + measure + ` \? (?:limb|other|person)\.(?:angle|length|grade|count)_\d+ : `},
		{"divided by a measure", measure + ` / ` + measure}, {"ratio", `/ (?:\(|abs|least|greatest|` + measure + `)[^"]* ratio\(`}, {"formula", `(?:pitch_along_plate|shank_to_vertical|feasible_ankle_angle|block_for_equinus)\(`},
		{"formula of yes or no", `gastrocnemius_overrun\(`}, {"formula of a grade", `(?:calf_shortness|walking_class|pressure_index_band|foot_posture_band)\(`}, {"formula of a count", `(?:layers_for|foot_posture_total)\(`},
		{"formula of a count measure", `_by_heel_rises\(`}, {"formula of a grade measure", `residual_(?:least|most)\(`}, {"computed aim", `aim = "[^"]*(?:limb|other|person|quantity)\.`}, {"computed limit", `at_(?:least|most) = "[^"]*(?:limb|other|person|quantity)\.`},
		{"exists_one", `\.exists_one\(`}, {"filter", `\.filter\(`}, {"map", `\.map\(`}, {"size", `size\(`}, {"startsWith", `\.startsWith\(`}, {"index", `\]\[\d\]`},
		{"arithmetic of counts", `\.count_\d+ \+ `}, {"remainder", ` % `}, {"double", `double\(`}, {"radians", `rad\(|"rad"`},
	}
}

// samples draws so many.
func samples(size celltest.Size, n int) (out []string) {
	for seed := range uint64(n) {
		out = append(out, celltest.Draw(celltest.Seeded(seed), size).String())
	}
	return out
}

func TestEveryConstructIsDrawn(t *testing.T) {
	texts := samples(celltest.Small(), 300)
	for _, c := range append(plain(), dear()...) {
		looks, n := regexp.MustCompile(c.looks), 0
		for _, text := range texts {
			if looks.MatchString(text) {
				n++
			}
		}
		if n == 0 {
			t.Errorf("%s does not occur", c.name)
		}
		t.Logf("%3d %s", n, c.name)
	}
	called := 0
	all := strings.Join(append(texts, samples(celltest.Medium(), 50)...), "")
	for _, f := range biomech.Formulas() {
		if strings.Contains(all, f.Name+"(") {
			called++
		}
	}
	if called < 40 {
		t.Errorf("only %d formulas of biomech are called", called)
	}
}

func TestPlainSamplesHaveNothingDear(t *testing.T) {
	texts := samples(celltest.Small().Plain(), 300)
	for _, c := range dear() {
		looks := regexp.MustCompile(c.looks)
		if i := slices.IndexFunc(texts, looks.MatchString); i >= 0 {
			t.Errorf("%s occurs with seed %d: %q", c.name, i, looks.FindString(texts[i]))
		}
	}
	for _, c := range plain() {
		if !slices.ContainsFunc(texts, regexp.MustCompile(c.looks).MatchString) {
			t.Errorf("%s does not occur", c.name)
		}
	}
}

func TestEveryKindOfRecordIsDrawn(t *testing.T) {
	var texts []string
	for seed := range uint64(100) {
		d := celltest.Seeded(seed)
		s := celltest.Draw(d, celltest.Small())
		for range 5 {
			texts = append(texts, string(s.Record(d, celltest.AnyShare).JSON()))
		}
	}
	for _, looks := range []string{
		`"confirmed":true`, `"not_recorded":`, `"never"`, `"20\d\d-\d\d-\d\d"`, `"unit":"`, `"device_for":\["left","right"\]`, `"device_for":\["left"\]`,
		`"device_for":\["right"\]`, `"person":\{\}`, `"left":\{\},"person":\{"`, `\.\d{9}[,}]`, `"\w+_\d":true`, `"as last time"`, `"date":"`,
	} {
		if !slices.ContainsFunc(texts, regexp.MustCompile(looks).MatchString) {
			t.Errorf("%s does not occur", looks)
		}
	}
	dated := regexp.MustCompile(`"date":"`)
	if !slices.ContainsFunc(texts, func(s string) bool { return !dated.MatchString(s) }) {
		t.Error("every assessment has a date")
	}
}

// What a test finds is worth little where rules rarely fire or everything is unknown.
func TestOutcomesAreVaried(t *testing.T) {
	states, statuses := map[string]int{}, map[string]int{}
	applies, failed, provisional := map[string]int{}, 0, 0
	for seed := range uint64(120) {
		d := celltest.Seeded(seed)
		s := celltest.Draw(d, celltest.Small())
		for range 3 {
			o := s.Engine(t).Advise(s.Assessment(d), time.Date(2026, 10, 5, 0, 0, 0, 0, time.UTC))
			applies[o.Applies]++
			all := []*reason.Result{o.Person}
			for _, r := range o.Limbs {
				all = append(all, r)
			}
			for _, r := range all {
				if r == nil {
					continue
				}
				for _, x := range r.Rules {
					states[x.State]++
				}
				for _, c := range r.Choices {
					statuses[c.Status]++
					failed += len(c.Failed)
					if c.Provisional {
						provisional++
					}
				}
			}
		}
	}
	t.Log(states, statuses, applies, failed, provisional)
	for what, counts := range map[string]struct {
		of    map[string]int
		words []string
	}{
		"rules":   {states, []string{reason.Fired, reason.DidNotFire, reason.Pending, reason.SetAside}},
		"choices": {statuses, []string{reason.Settled, reason.IsOpen, reason.Default, reason.LeftToClinician, reason.Unanswered, reason.Conflict}},
		"scope":   {applies, []string{"yes", "no", "unknown"}},
	} {
		total := 0
		for _, n := range counts.of {
			total += n
		}
		for _, w := range counts.words {
			if counts.of[w]*50 < total {
				t.Errorf("%s: %q is %d of %d", what, w, counts.of[w], total)
			}
		}
	}
	if failed == 0 || provisional == 0 {
		t.Errorf("%d advice failed, %d choices are provisional", failed, provisional)
	}
}
