package smtlib_test

import (
	"testing"

	"crus/engine/cell"
	"crus/engine/cell/celltest"
	"crus/engine/prove"
)

// agreeing is how many drawn rulesets z3 is asked about, of which prove decides all but few completely: where exact numbers
// and those that are kept to nine decimals differ (x / 2 * 3 is 17.5 for no x), it says that it can't.
const (
	agreeing = 110
	few      = 6
)

// z3, which is asked in arithmetic, agrees with every verdict of prove, which asks in clauses over cells: on drawn rulesets
// with sums of measures, dates, what is recorded, measures and options compared with each other, lists, overriding and
// rulesets that are built on.
func TestProveAgreesWithZ3(t *testing.T) {
	t.Parallel()
	kinds := map[prove.Kind]map[prove.Status]int{}
	questions, undecided := 0, 0
	for seed := range uint64(agreeing) {
		sample := celltest.Draw(celltest.Seeded(seed), celltest.Small().Plain())
		s, err := cell.New(sample.Engine(t))
		if err != nil {
			t.Fatal(err)
		}
		r := prove.Prove(t.Context(), s, prove.Options{Workers: 1})
		if open := r.Undecided(); open != nil {
			undecided++
			t.Logf("seed %d: %d of %d questions undecided, %s of %s: %v", seed, len(open), len(r.Verdicts), open[0].Kind, open[0].Name, open[0].Rests)
		}
		for _, v := range r.Verdicts {
			if kinds[v.Kind] == nil {
				kinds[v.Kind] = map[prove.Status]int{}
			}
			kinds[v.Kind][v.Status]++
		}
		text := written(t, s, r)
		got := answers(t, text) // z3 itself holds each answer against prove's
		questions += len(got)
		for question, answer := range got {
			if answer != "sat" && answer != "unsat" {
				t.Errorf("seed %d: z3 answers %s to %s", seed, answer, question)
			}
		}
		if t.Failed() {
			t.Fatalf("%s\n%s", sample, text)
		}
	}
	for _, k := range prove.Kinds() {
		t.Logf("%-24s %v", k, kinds[k])
		if kinds[k][prove.Found] == 0 || kinds[k][prove.Absent] == 0 {
			t.Errorf("%s is never found or never absent in what was drawn: %v", k, kinds[k])
		}
	}
	if undecided > few {
		t.Errorf("%d rulesets are not wholly decided", undecided)
	}
	t.Logf("%d rulesets, %d questions", agreeing, questions)
}
