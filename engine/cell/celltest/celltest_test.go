package celltest_test

import (
	"bytes"
	"fmt"
	"testing"

	"pgregory.net/rapid"

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

func TestRapidDraws(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		d := celltest.Rapid(rt)
		s := celltest.Draw(d, celltest.Small())
		s.Engine(rt)
		s.Assessment(d)
	})
}

func TestLargerSamplesCanBeRead(t *testing.T) {
	for name, size := range map[string]celltest.Size{"medium": celltest.Medium(), "plain": celltest.Medium().Plain(), "large": celltest.Large(200)} {
		s := celltest.Draw(celltest.Seeded(1), size)
		rs := s.Ruleset(t)
		own := 0
		for _, r := range rs.Rules {
			if r.Part.Root {
				own++
			}
		}
		if own != size.Rules || len(rs.Vocabulary.Measures) != size.Measures || len(rs.Vocabulary.Choices) != size.Choices {
			t.Errorf("%s: %d rules, %d measures, %d choices", name, own, len(rs.Vocabulary.Measures), len(rs.Vocabulary.Choices))
		}
		s.Assessment(celltest.Seeded(2))
	}
}

func BenchmarkRecord(b *testing.B) {
	d := celltest.Seeded(1)
	s := celltest.Draw(d, celltest.Medium())
	s.Ruleset(b)
	b.Run("read", func(b *testing.B) {
		for b.Loop() {
			s.Assessment(d)
		}
	})
	b.Run("made", func(b *testing.B) {
		for b.Loop() {
			s.Quick(d, 5)
		}
	})
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
