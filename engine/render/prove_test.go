package render

import (
	"bytes"
	"testing"

	"crus/engine/assess"
	"crus/engine/prove"
	"crus/engine/reason"
	"crus/engine/ruleset"
)

// proofReport is a report with something of every kind.
func proofReport() *prove.Report {
	found := func(k prove.Kind, name string) *prove.Verdict {
		return &prove.Verdict{Kind: k, Name: name, Status: prove.Found, Fault: k.Fault(), Witness: string(k) + "-" + name, Assessment: &assess.Assessment{}}
	}
	none := func(k prove.Kind, name string) *prove.Verdict {
		return &prove.Verdict{Kind: k, Name: name, Status: prove.Found, Fault: k.Fault(), Place: "r/rules.hcl:12:1"}
	}
	well := func(k prove.Kind, name string) *prove.Verdict {
		return &prove.Verdict{Kind: k, Name: name, Status: prove.Absent, Fault: k.Fault()}
	}
	limits := found(prove.Contradiction, "shell_side")
	limits.Rules = []string{"only_in_front", "never_in_front"}
	alone := found(prove.Contradiction, "cast_block_height")
	alone.Rules = []string{"higher_than_can_be"}
	aside := found(prove.AlwaysSetAside, "rule.lower")
	aside.Place, aside.Rules = "r/rules.hcl:30:1", []string{"higher"}
	tie := found(prove.Tie, "shell_side")
	tie.Among, tie.Rules = []string{"in_front", "behind"}, []string{"for_the_shin", "for_the_calf"}
	apart := found(prove.Tie, "cast_block_height")
	apart.Range, apart.Rules = []float64{10, 20}, []string{"low", "high"}
	left := found(prove.Open, "cast_block_height")
	left.Range = []float64{0, 60}
	hidden := found(prove.Hides, "caution.mild")
	hidden.Place, hidden.Other = "r/rules.hcl:50:1", "caution.grave"
	open := &prove.Verdict{Kind: prove.AddsNothing, Name: "rule.formula", Status: prove.Undecided, Place: "r/rules.hcl:40:1", Rests: []prove.Doubt{
		{Place: "r/rules.hcl:41:12", Text: "pitch_along_plate(limb.a, limb.b)", Why: "Whether this formula can give such a number was tried for some values, and could not be worked out."},
		{Why: "The work was stopped before it was decided."}}}
	return &prove.Report{Format: prove.Format, Ruleset: reason.Version{Name: "clinic", Version: "1.2.0"}, BuildsOn: []reason.Version{{Name: "safety", Version: "1.0.0"}},
		Verdicts: []*prove.Verdict{none(prove.NeverApplies, "clinic"), limits, alone, well(prove.Contradiction, "closure"), found(prove.Gap, "shell_side"), none(prove.NeverFires, "rule.dead"),
			well(prove.NeverFires, "rule.alive"), aside, none(prove.AlwaysFalse, "finding.never"), found(prove.AlwaysTrue, "finding.ever"), tie, apart, left,
			found(prove.AddsNothing, "rule.idle"), open, hidden, well(prove.Hides, "caution.grave")},
		SaysNot: []string{"strap_place", "heel"}, Left: []prove.Left{{Choice: "sole", Because: "It depends.", Part: "clinic"}, {Choice: "lever", Because: "It depends.", Part: "safety"}},
		Beyond: []prove.Doubt{{Place: "r/rules.hcl:9:3", Text: "[1, 2].exists_one(x, x == person.falls)"}}}
}

func writtenProof(t *testing.T, r *prove.Report, st Style, file string) []byte {
	t.Helper()
	var b bytes.Buffer
	err := Proof(&b, r, &ruleset.Ruleset{Vocabulary: small(t)}, st, ProofOptions{Ruleset: "clinic",
		Matters: func(v *prove.Verdict) (out []prove.Reading) {
			for range map[prove.Kind]int{prove.Contradiction: 2, prove.Gap: 12}[v.Kind] {
				out = append(out, prove.Reading{Of: "left", Measure: "range", Label: "Ankle dorsiflexion, knee extended", Value: "−5°"})
			}
			return out
		},
		File: func(v *prove.Verdict) string {
			if file == "" {
				return ""
			}
			return file + "/" + v.Witness + ".json"
		}})
	if err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestProof(t *testing.T) {
	golden(t, "proof.txt", writtenProof(t, proofReport(), Plain, ""))
	golden(t, "proof_witness_colour.txt", writtenProof(t, proofReport(), Coloured(), "faults"))
}

// Where there is nothing to find, the report says so.
func TestProofOfNothing(t *testing.T) {
	r := &prove.Report{Ruleset: reason.Version{Name: "clinic", Version: "1.2.0"}, Verdicts: []*prove.Verdict{{Kind: prove.Gap, Name: "shell_side", Status: prove.Absent}}}
	golden(t, "proof_none.txt", writtenProof(t, r, Plain, ""))
}
