// Package celltest draws vocabularies, rulesets with every construct of the language, and assessments,
// for property tests that hold one way of working a ruleset out against another, and for benchmarks.
//
//	s := celltest.Draw(celltest.Seeded(7), celltest.Small())
//	e := s.Engine(t)
//	a := s.Assessment(celltest.Seeded(8))
//
// What is drawn depends on the dice alone. Every ruleset that is drawn can be read; one with an error is an
// error of this package, and fails the test with the text of both.
package celltest

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing/fstest"

	"pgregory.net/rapid"

	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// Dice is where chance comes from. Int gives a number from 0 to n-1; n is at least 1. The smaller a
// number, the simpler is what comes of it, so that rapid shrinks to simple things.
type Dice interface{ Int(n int) int }

// Seeded gives dice that always fall alike for a seed.
func Seeded(seed uint64) Dice { return seeded{rand.New(rand.NewPCG(seed, 0x9e3779b97f4a7c15))} }

type seeded struct{ *rand.Rand }

func (s seeded) Int(n int) int { return s.IntN(n) }

// Rapid gives dice of a rapid property test.
func Rapid(t *rapid.T) Dice { return rapids{t} }

type rapids struct{ t *rapid.T }

func (r rapids) Int(n int) int {
	if n == 1 {
		return 0
	}
	return rapid.IntRange(0, n-1).Draw(r.t, "dice")
}

// Features are the constructs that may occur besides the plain ones: comparing with constants, !, && and ||,
// findings, rules with unless and overrides, cautions, choices with options and with numbers.
type Features uint32

// The features. Failing and Opaque are what no cells can express.
const (
	Linear        Features = 1 << iota // quantities: sums, differences and multiples of measures
	Piecewise                          // abs, least, greatest; a quantity or grade by a condition
	Pairs                              // a measure compared with another
	Lists                              // exists, all, and in a list that is not constant
	Ternaries                          // a condition by a condition; == and != of conditions
	OtherLimb                          // other.x
	Recorded                           // recorded(...)
	Dates                              // since(...)
	Text                               // measures that hold a text
	PersonChoices                      // choices of the person
	Scope                              // what the ruleset itself applies to
	BuildsOn                           // rulesets that are built on, with what they apply to, and except
	Computed                           // numbers advised by a formula that reads measures
	Biomech                            // formulas of package biomech
	Failing                            // divisions by what may be zero
	Opaque                             // exists_one, filter, map, size, arithmetic and texts of counts
	Inexact                            // units whose numbers are no decimals in the base unit: rad, km/h
	All           Features = 1<<iota - 1
)

// Size says how much is drawn.
type Size struct {
	Measures, Choices                     int  // at least 1
	Findings, Quantities, Rules, Cautions int  // of the ruleset itself; one that is built on has a third
	Depth                                 int  // of conditions
	Vary                                  bool // the numbers above are the most; how many there are is drawn
	Features                              Features
}

// Tiny is a ruleset of up to 3 measures and 4 rules, all of whose cells can be tried with the reference meaning.
func Tiny() Size {
	return Size{Measures: 3, Choices: 3, Findings: 1, Quantities: 1, Rules: 4, Cautions: 1, Depth: 1, Vary: true, Features: All}
}

// Small is a ruleset over 3 to 6 measures, with 1 to 8 rules.
func Small() Size {
	return Size{Measures: 6, Choices: 5, Findings: 3, Quantities: 2, Rules: 8, Cautions: 2, Depth: 2, Vary: true, Features: All}
}

// Medium is a ruleset of 30 measures and 40 rules.
func Medium() Size {
	return Size{Measures: 30, Choices: 10, Findings: 12, Quantities: 6, Rules: 40, Cautions: 8, Depth: 3, Features: All}
}

// Large is a ruleset of some rules over 40 measures, for benchmarks: it applies to everyone.
func Large(rules int) Size {
	return Size{Measures: 40, Choices: 14, Findings: rules / 5, Quantities: rules / 20, Rules: rules, Cautions: rules / 10, Depth: 3, Features: All &^ Scope}
}

// Plain gives the size without the constructs that no cells can express, and without those whose cells are not
// bounded by sums of measures: what a solver for linear arithmetic can be asked about.
func (s Size) Plain() Size {
	return s.Without(Piecewise | Computed | Biomech | Failing | Opaque | Inexact)
}

// Without gives the size without some features.
func (s Size) Without(f Features) Size {
	s.Features &^= f
	return s
}

// Sample is a drawn ruleset with its vocabulary. What is read of it is kept, so one goroutine at a time may use
// it until Engine was called.
type Sample struct {
	Files fstest.MapFS // the folders of the vocabulary, the ruleset "main", and what that builds on
	Size  Size

	measures []*measure
	rs       *ruleset.Ruleset
	engine   *reason.Engine
}

// Name is that of the drawn ruleset, and VocabularyName that of its vocabulary.
const (
	Name           = "main"
	VocabularyName = "drawn"
)

// Draw draws a vocabulary and a ruleset.
func Draw(d Dice, size Size) *Sample {
	s := &Sample{Files: fstest.MapFS{}, Size: size}
	x := &drawer{Dice: d, size: size}
	x.vocabulary()
	s.measures = x.measures
	s.Files[VocabularyName+"/vocabulary.hcl"] = &fstest.MapFile{Data: []byte(x.vocabularyText())}
	for name, text := range x.rulesets() {
		s.Files[name+"/rules.hcl"] = &fstest.MapFile{Data: []byte(text)}
	}
	return s
}

// T is what a test is told: *testing.T, *testing.B and *rapid.T are one.
type T interface {
	Helper()
	Fatalf(format string, args ...any)
}

// Ruleset reads the ruleset, once.
func (s *Sample) Ruleset(t T) *ruleset.Ruleset {
	t.Helper()
	if s.rs == nil {
		rs, diags := ruleset.Library{Embedded: s.Files}.Ruleset(Name)
		if diags.HasErrors() {
			t.Fatalf("the drawn ruleset has errors:\n%s\n%s", diags.Text(), s)
		}
		s.rs = rs
	}
	return s.rs
}

// Vocabulary reads the vocabulary, once.
func (s *Sample) Vocabulary(t T) *vocab.Vocabulary {
	t.Helper()
	return s.Ruleset(t).Vocabulary
}

// Engine makes the engine of the ruleset, once.
func (s *Sample) Engine(t T) *reason.Engine {
	t.Helper()
	if s.engine == nil {
		e, err := reason.New(s.Ruleset(t))
		if err != nil {
			t.Fatalf("the drawn ruleset has no engine: %v\n%s", err, s)
		}
		s.engine = e
	}
	return s.engine
}

// String gives the text of all files.
func (s *Sample) String() string {
	var names []string
	for name := range s.Files {
		names = append(names, name)
	}
	slices.Sort(names)
	var b strings.Builder
	for _, name := range names {
		fmt.Fprintf(&b, "# %s\n%s\n", name, s.Files[name].Data)
	}
	return b.String()
}
