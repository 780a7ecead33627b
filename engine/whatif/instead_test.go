package whatif_test

import (
	"math"
	"testing"

	"crus/engine/cell/celltest"
	"crus/engine/reason"
	"crus/engine/whatif"
)

// The nearest change is held against trying every combination of the cells of all measures of the limbs.
func TestNearestChange(t *testing.T) {
	n := map[string]int{}
	for seed := range uint64(120) {
		size := celltest.Small().Without(celltest.Biomech | celltest.Failing | celltest.Opaque)
		if seed%3 > 0 {
			size = size.Plain().Without(celltest.Linear | celltest.Pairs)
		}
		s := celltest.Draw(celltest.Seeded(seed+2000), size)
		w, err := whatif.New(s.Engine(t))
		if err != nil {
			t.Fatal(err)
		}
		d := celltest.Seeded(seed + 1<<35)
		for _, missing := range []int{0, 40} {
			a := s.Quick(d, missing)
			w.Wishes(a, today(), 3000, func(wish whatif.Wish, got *reason.Instead, count int, distance float64) {
				n[got.Found]++
				fail := func(why string) {
					doc, _ := a.JSON()
					t.Fatalf("seed %d:\n%s\n%s\n%s.%s=%s: %s: %+v; by trying %d changes, distance %v", seed, s, doc, wish.Side, wish.Choice.Name, wish.Option, why, got, count, distance)
				}
				switch {
				case got.Found == reason.InsteadNever && count >= 0:
					fail("there is a way")
				case missing == 0 && got.Found == reason.InsteadFound && count >= 0 && len(got.Ways[0].Changes) > count:
					fail("more changes than needed")
				case missing == 0 && got.Found == reason.InsteadFound && count == len(got.Ways[0].Changes) && got.Ways[0].Distance > math.Round(distance*100)/100+0.02:
					fail("a longer way than needed")
				case got.Found == reason.InsteadNotFound && count >= 0:
					n["missed"]++
				}
			})
		}
	}
	t.Log(n)
	if n[reason.InsteadFound] < 40 || n[reason.InsteadNever] < 100 || n["missed"]*20 > n[reason.InsteadFound] {
		t.Error("too little was found")
	}
}
