package prove_test

import (
	"testing"

	"crus/engine/cell"
	"crus/engine/cell/celltest"
	"crus/engine/prove"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/rulesets"
)

// BenchmarkProve proves a ruleset that comes with the program, and one of 500 generated rules about 40 choices.
func BenchmarkProve(b *testing.B) {
	rs, diags := ruleset.Library{Embedded: rulesets.FS}.Ruleset("stroke_afo")
	if diags.HasErrors() {
		b.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		b.Fatal(err)
	}
	size := celltest.Large(500).Plain().Without(celltest.BuildsOn)
	size.Choices = 40
	for _, x := range []struct {
		name   string
		engine *reason.Engine
	}{{"stroke_afo", e}, {"500_rules", celltest.Draw(celltest.Seeded(1), size).Engine(b)}} {
		s, err := cell.New(x.engine)
		if err != nil {
			b.Fatal(err)
		}
		b.Run(x.name, func(b *testing.B) {
			for b.Loop() {
				prove.Prove(b.Context(), s, prove.Options{})
			}
		})
	}
}
