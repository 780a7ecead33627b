package prove

import (
	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/source"
)

// Format names the form of a report in JSON.
const Format = "crus-proof/1"

// Report is what holds of a ruleset over all full assessments to which it applies. Its JSON names are stable.
type Report struct {
	Format     string           `json:"format"`
	Ruleset    reason.Version   `json:"ruleset"`
	BuildsOn   []reason.Version `json:"builds_on,omitempty"`
	Vocabulary reason.Version   `json:"vocabulary"`
	Verdicts   []*Verdict       `json:"verdicts"`          // by kind in the order of Kinds, then in the order of the ruleset
	SaysNot    []string         `json:"says_nothing_of"`   // choices that no rule advises on, and that have no default
	Left       []Left           `json:"left_to_clinician"` // choices that are declared to be the clinician's
	Beyond     []Doubt          `json:"beyond_cells"`      // parts of conditions that can't be looked through, whether or not a verdict rests on them
}

// Left is a choice that the protocol leaves to the clinician on purpose.
type Left struct {
	Choice  string `json:"choice"`
	Because string `json:"because"` // as written
	Part    string `json:"part"`    // the ruleset that says so
}

// Kind is one thing that is asked of a ruleset.
type Kind string

// The kinds, in the order of a report.
const (
	NeverApplies   Kind = "never_applies"           // no assessment is within its scope
	Contradiction  Kind = "contradiction"           // limits leave nothing of a choice
	Gap            Kind = "gap"                     // a choice that is advised on stays unanswered
	NeverFires     Kind = "never_fires"             // a rule's or caution's own condition can't hold
	AlwaysSetAside Kind = "always_set_aside"        // whenever a rule's condition holds, it is overridden
	AlwaysTrue     Kind = "always_true"             // a finding
	AlwaysFalse    Kind = "always_false"            // a finding
	Tie            Kind = "tie"                     // several options level, though some rule prefers
	Open           Kind = "open_without_preference" // several options left, and no rule prefers any
	AddsNothing    Kind = "adds_nothing"            // without the rule every choice would be the same
	Hides          Kind = "hidden_caution"          // one caution never stands without another that is as grave
)

// Kinds lists the kinds in the order of a report: faults first.
func Kinds() []Kind {
	return []Kind{NeverApplies, Contradiction, Gap, NeverFires, AlwaysSetAside, AlwaysTrue, AlwaysFalse, Tie, Open, AddsNothing, Hides}
}

// Fault reports whether what is found of this kind is a fault, and not only a remark.
func (k Kind) Fault() bool {
	switch k {
	case Tie, Open, AddsNothing, Hides:
		return false
	}
	return true
}

// Status is what became of a question.
type Status string

// The statuses of a verdict.
const (
	Found     Status = "found"         // it is so; shown by the witness, or proved where there is none
	Absent    Status = "proven_absent" // it is not so, for any assessment
	Undecided Status = "undecided"     // neither could be shown; Rests says why
)

// Verdict is the answer to one question about a ruleset.
type Verdict struct {
	Kind    Kind      `json:"kind"`
	Name    string    `json:"name"`               // the choice, "rule.x", "caution.x" or "finding.x"; of NeverApplies the ruleset
	Other   string    `json:"other,omitempty"`    // Hides: the caution behind which Name is hidden
	Part    string    `json:"part"`               // the ruleset that it is about: of a choice the whole, else the one that defines the name
	Place   string    `json:"place,omitempty"`    // file:line:column of the block; of a choice ""
	Status  Status    `json:"status"`             //
	Fault   bool      `json:"fault"`              // as Kind.Fault, of the ruleset itself; what is found of one that it builds on is a remark
	Rests   []Doubt   `json:"rests_on,omitempty"` // Undecided: what stood in the way
	Limb    string    `json:"limb,omitempty"`     // the limb of the witness on which it shows: "left"; "": for the person
	Rules   []string  `json:"rules,omitempty"`    // of the witness: Contradiction: a smallest set that can't hold; Tie: those that prefer; AlwaysSetAside: those that override
	Among   []string  `json:"among,omitempty"`    // Tie, Open: the options that are level
	Range   []float64 `json:"range,omitempty"`    // Tie, Open: of a number: from, to
	Witness string    `json:"witness,omitempty"`  // the id of Assessment

	// Assessment is a full assessment that shows what was found: AddsNothing and Hides: the rule, or both
	// cautions, fire, and it makes no difference. nil where the fault is that there is none (NeverApplies, NeverFires).
	Assessment *assess.Assessment `json:"-"`
	Where      source.Range       `json:"-"`
}

// Doubt is what a question could not be decided for.
type Doubt struct {
	Place string `json:"place"` // file:line:column
	Text  string `json:"text"`  // as it is written there
	Why   string `json:"why"`   // in a sentence
}

// Found lists what was found: faults, or remarks.
func (r *Report) Found(fault bool) []*Verdict {
	return r.having(func(v *Verdict) bool { return v.Status == Found && v.Fault == fault })
}

// Undecided lists the questions that could not be decided.
func (r *Report) Undecided() []*Verdict {
	return r.having(func(v *Verdict) bool { return v.Status == Undecided })
}

func (r *Report) having(is func(*Verdict) bool) (out []*Verdict) {
	for _, v := range r.Verdicts {
		if is(v) {
			out = append(out, v)
		}
	}
	return out
}
