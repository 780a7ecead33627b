package celltest_test

import (
	"bytes"
	"fmt"
	"testing"

	"crus/engine/cell/celltest"
)

func TestEveryDrawnSampleCanBeRead(t *testing.T) {
	for seed := range uint64(300) {
		d := celltest.Seeded(seed)
		s := celltest.Draw(d, celltest.Small())
		s.Ruleset(t)
		for range 5 {
			r := s.Record(d, celltest.AnyShare)
			read, err := r.Read().JSON()
			if err != nil {
				t.Fatal(err)
			}
			made, err := r.Make().JSON()
			if err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(read, made) {
				t.Fatalf("read %s\nmade %s", read, made)
			}
		}
	}
}

func TestDrawingDependsOnTheDiceAlone(t *testing.T) {
	for seed := range uint64(20) {
		first, second := celltest.Seeded(seed), celltest.Seeded(seed)
		a, b := celltest.Draw(first, celltest.Medium()), celltest.Draw(second, celltest.Medium())
		if a.String() != b.String() {
			t.Fatalf("seed %d gives two rulesets", seed)
		}
		if x, y := a.Record(first, celltest.AnyShare).JSON(), b.Record(second, celltest.AnyShare).JSON(); !bytes.Equal(x, y) {
			t.Fatalf("seed %d gives %s and %s", seed, x, y)
		}
	}
}

func BenchmarkDraw(b *testing.B) {
	for name, size := range map[string]celltest.Size{"small": celltest.Small(), "medium": celltest.Medium(), "large": celltest.Large(500)} {
		for _, read := range []bool{false, true} {
			b.Run(fmt.Sprintf("%s/read=%t", name, read), func(b *testing.B) {
				seed := uint64(0)
				for b.Loop() {
					s := celltest.Draw(celltest.Seeded(seed), size)
					if seed++; read {
						s.Ruleset(b)
					}
				}
			})
		}
	}
}
