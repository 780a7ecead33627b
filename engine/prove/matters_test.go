package prove

import (
	"math"
	"testing"

	"crus/engine/cell"
	"crus/engine/cell/celltest"
)

// What brings a witness about is enough: with those measures as they are it is so whatever the others are, recorded or,
// where that is asked, not. And none of them can be left out.
func TestWhatMattersIsEnough(t *testing.T) {
	verdicts, readings := 0, 0
	for seed := range uint64(60) {
		sample := celltest.Draw(celltest.Seeded(seed), celltest.Small().Plain())
		s, err := cell.New(sample.Engine(t))
		if err != nil {
			t.Fatal(err)
		}
		dice := celltest.Seeded(seed + 1<<32)
		for _, v := range Prove(t.Context(), s, Options{Workers: 1}).Verdicts {
			if v.Assessment == nil {
				continue
			}
			kept := map[key]bool{}
			for _, x := range Matters(s, v) {
				kept[key{x.Of, x.Measure}] = true
			}
			verdicts, readings = verdicts+1, readings+len(kept)
			for range 15 {
				m := newMatter(s, v)
				m.redraw(dice, kept)
				if !m.so() {
					t.Fatalf("seed %d: %s of %s is not so on %v, with %v\n%s", seed, v.Kind, v.Name, m.rows, kept, sample)
				}
			}
			for leave := range kept {
				m := newMatter(s, v)
				m.leave(leave, kept)
				if m.so() {
					t.Errorf("seed %d: %s of %s is so without %v of %v", seed, v.Kind, v.Name, leave, kept)
				}
			}
		}
	}
	t.Logf("%d verdicts, %d measures", verdicts, readings)
}

// redraw draws every measure anew that is not kept.
func (m *matter) redraw(dice celltest.Dice, kept map[key]bool) {
	drawn := map[key]float64{}
	for k := range m.rows {
		for i, a := range m.Axes[:m.Measures] {
			of := key{m.of(k, i), a.Measure.Name}
			if kept[of] {
				continue
			}
			x, ok := drawn[of]
			if !ok {
				if x, ok = a.Value(dice.Int(a.Count())); !ok {
					x = m.rows[k].Value[i]
				}
				if m.asked[a.Measure.Name] && dice.Int(2) == 0 {
					x = math.NaN()
				}
				drawn[of] = x
			}
			m.rows[k].Value[i], m.rows[k].Recorded[i] = x, x == x
		}
	}
}

// leave takes everything away but what is kept, and one of that too.
func (m *matter) leave(one key, kept map[key]bool) {
	for row := range m.rows {
		for i, a := range m.Axes[:m.Measures] {
			if k := (key{m.of(row, i), a.Measure.Name}); k == one || !kept[k] {
				m.rows[row].Value[i], m.rows[row].Recorded[i] = math.NaN(), false
				m.out[k] = true
			}
		}
	}
}
