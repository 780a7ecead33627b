package whatif_test

import (
	"testing"
	"time"

	"crus/engine/cell/celltest"
	"crus/engine/reason"
	"crus/engine/whatif"
)

func today() time.Time { return time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC) }

func results(o *reason.Outcome) map[string]*reason.Result {
	out := map[string]*reason.Result{"": o.Person}
	for side, r := range o.Limbs {
		out[side] = r
	}
	return out
}

// Where reason has explored everything, the same comes of it by cells.
func TestAgreesWithReasonWhereComplete(t *testing.T) {
	n, provisional := 0, 0
	for seed := range uint64(120) {
		s := celltest.Draw(celltest.Seeded(seed), celltest.Small())
		w, err := whatif.New(s.Engine(t))
		if err != nil {
			t.Fatal(err)
		}
		d := celltest.Seeded(seed + 1<<32)
		for range 6 {
			a := s.Assessment(d)
			o := w.Engine.Advise(a, today())
			if o.Person == nil {
				continue
			}
			for _, diff := range w.Compare(o, a) {
				doc, _ := a.JSON()
				t.Fatalf("seed %d:\n%s\n%s\n%s", seed, s, doc, diff)
			}
			n++
			for _, r := range results(o) {
				for _, c := range r.Choices {
					if c.Provisional {
						provisional++
					}
				}
			}
		}
	}
	t.Log(n, "outcomes,", provisional, "provisional choices")
	if provisional < 100 {
		t.Error("too little was compared")
	}
}

// What is settled holds for every completion that is drawn, and what is claimed to be possible is.
func TestSettledHolds(t *testing.T) {
	var n whatif.Tried
	for seed := range uint64(120) {
		size := celltest.Small()
		if seed%2 == 1 {
			size = celltest.Small().Without(celltest.Biomech | celltest.Failing | celltest.Opaque)
		}
		s := celltest.Draw(celltest.Seeded(seed+1000), size)
		w, err := whatif.New(s.Engine(t))
		if err != nil {
			t.Fatal(err)
		}
		d := celltest.Seeded(seed + 1<<33)
		for range 4 {
			a := s.Assessment(d)
			for _, diff := range w.Completions(a, 200, d.Int, &n) {
				doc, _ := a.JSON()
				t.Fatalf("seed %d:\n%s\n%s\n%s", seed, s, doc, diff)
			}
		}
	}
	t.Logf("%+v", n)
	if n.Settled*10 < n.Results*9 {
		t.Error("too little was settled")
	}
}
