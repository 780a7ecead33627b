package whatif_test

import (
	"fmt"
	"testing"

	"crus/engine/assess"
	"crus/engine/cell/celltest"
	"crus/engine/whatif"
)

// BenchmarkAdviseWhatIf carries a ruleset of 100 rules out with everything that cells add; BenchmarkAdvise without it.
func BenchmarkAdviseWhatIf(b *testing.B) {
	each(b, func(w *whatif.Advisor, a *assess.Assessment) { w.Advise(a, today()) })
}

func BenchmarkAdvise(b *testing.B) {
	each(b, func(w *whatif.Advisor, a *assess.Assessment) { w.Engine.Advise(a, today()) })
}

func each(b *testing.B, do func(w *whatif.Advisor, a *assess.Assessment)) {
	for _, size := range []struct {
		name string
		celltest.Size
	}{{"comparisons", celltest.Large(100).Plain()}, {"formulas", celltest.Large(100)}} {
		s := celltest.Draw(celltest.Seeded(1), size.Size)
		w, err := whatif.New(s.Engine(b))
		if err != nil {
			b.Fatal(err)
		}
		for _, missing := range []int{0, 5, 20} {
			b.Run(fmt.Sprintf("%s/missing=%d%%", size.name, missing), func(b *testing.B) {
				a := s.Quick(celltest.Seeded(2), missing)
				for b.Loop() {
					do(w, a)
				}
			})
		}
	}
}
