package celltest_test

import (
	"bytes"
	"fmt"
	"maps"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"crus/engine/assess"
	"crus/engine/cell/celltest"
)

func TestEveryDrawnSampleCanBeRead(t *testing.T) {
	for seed := range uint64(300) {
		d := celltest.Seeded(seed)
		s := celltest.Draw(d, []celltest.Size{celltest.Small(), celltest.Tiny(), celltest.Small().Plain()}[seed%3])
		s.Ruleset(t)
		for range 5 {
			r := s.Record(d, celltest.AnyShare)
			same(t, r.Read(), r.Make())
		}
	}
}

// same fails the test where two assessments differ in more than their places.
func same(t *testing.T, a, b *assess.Assessment) {
	t.Helper()
	if a.ID != b.ID || a.Vocabulary != b.Vocabulary || a.Date != b.Date || !slices.Equal(a.DeviceFor, b.DeviceFor) {
		t.Errorf("%v is not %v", a, b)
	}
	for _, x := range [][2]map[string]*assess.Entry{{a.Person, b.Person}, {a.Left, b.Left}, {a.Right, b.Right}} {
		if !maps.EqualFunc(x[0], x[1], func(e, f *assess.Entry) bool {
			return e.Measure == f.Measure && e.Value == f.Value && e.NotRecorded == f.NotRecorded && e.Confirmed == f.Confirmed
		}) {
			t.Errorf("%v is not %v", x[0], x[1])
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
