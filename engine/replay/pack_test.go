package replay

import (
	"math"
	"math/rand/v2"
	"testing"

	"crus/engine/cell"
	"crus/engine/cell/celltest"
)

// Every value is packed into the bits of its cell: those on cuts, next to them, beyond the plausible range and without end.
func TestPack(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 6))
	for seed := range uint64(40) {
		size := celltest.Small()
		if seed%4 == 3 {
			size = celltest.Medium()
		}
		s, err := cell.New(celltest.Draw(celltest.Seeded(seed), size).Engine(t))
		if err != nil {
			t.Fatal(err)
		}
		for _, a := range s.Axes {
			values := []float64{math.NaN(), math.Inf(1), math.Inf(-1), 0, -1, 1e300, -1e300}
			for _, c := range a.Cuts {
				values = append(values, c.At, math.Nextafter(c.At, math.Inf(1)), math.Nextafter(c.At, math.Inf(-1)), c.At+1, c.At-1)
			}
			if a.Measure != nil {
				lo, hi := a.Range()
				for range 100 {
					values = append(values, lo+r.Float64()*(hi-lo))
				}
				values = append(values, lo, hi, math.Nextafter(lo, math.Inf(-1)), lo-1, hi+1)
				if a.Step() > 0 { // between its steps nothing is recorded
					for i := range values {
						values[i] = math.Round(values[i])
					}
				}
			}
			p := newPacker(a)
			for from := 0; from < len(values); from += 61 {
				part := values[from:min(from+61, len(values))]
				var got packed
				p.pack(part, &got)
				for i, x := range part {
					want := cell.NotRecorded
					if !math.IsNaN(x) {
						want = a.Cell(x)
					}
					is := 0
					for k := range p.width {
						is |= int(got.bits[k]>>i&1) << k
					}
					if known := got.known>>i&1 == 1; known != (want >= 0) || known && is != want {
						t.Fatalf("seed %d, %s: %v is packed into %d (known: %v), not %d", seed, a.Path, x, is, known, want)
					}
				}
			}
		}
	}
}
