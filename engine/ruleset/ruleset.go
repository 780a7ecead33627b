// Package ruleset is the language: it reads a folder of HCL blocks with CEL conditions into a
// checked ruleset, or says what is wrong with it at the exact column.
//
//	lib := ruleset.Library{Embedded: rulesets.FS}
//	rs, diags := lib.Ruleset("demo_clinic")
//
// What a ruleset means is in docs/language.md; package reason carries that meaning out.
package ruleset

import (
	"time"

	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// Ruleset is a checked ruleset with everything that it builds on. It is not changed after reading
// and may be used by several goroutines.
type Ruleset struct {
	Header
	Digest     string // "sha256:" and the hash of its files, of those it builds on and of the vocabulary
	Vocabulary *vocab.Vocabulary
	Parts      []*Part // what it builds on, each before those that build on it; the ruleset's own part last

	// All parts together; findings and quantities stand in Facts so that each comes after what it reads.
	Facts    []*Fact
	Rules    []*Rule
	Cautions []*Caution
	Open     []*Open
	Cases    []*Case // its own, not those of the parts it builds on
	Excepts  []*Except
}

// Header is what a ruleset says of itself. Its words are those of HL7 FHIR's Library resource.
type Header struct {
	Name, Title, Version string
	Status               string // draft | active | retired
	Publisher, Purpose   string
	Author               []string
	Reviewer             []string
	Endorser             []string
	ApprovalDate         string // dates are YYYY-MM-DD or ""
	LastReviewDate       string
	EffectivePeriod      [2]string
	ReviewBy             string
	Where                source.Range
}

// Part is one ruleset's own contribution.
type Part struct {
	Header
	Digest    string
	Applies   *Expr // nil: always
	Citations []*vocab.Citation
	Root      bool

	places map[string]source.Range // of the values in its header, by attribute
	lost   map[string]bool         // rulesets that it builds on and that could not be read
}

// place gives where an attribute of the header is written, or the header itself.
func (p *Part) place(attribute string) source.Range {
	if r, ok := p.places[attribute]; ok {
		return r
	}
	return p.Where
}

// FullName gives the name by which the root ruleset knows something defined in this part.
func (p *Part) FullName(name string) string {
	if p.Root {
		return name
	}
	return p.Name + "." + name
}

// Fact is a finding (a named yes/no fact) or a quantity (a named computed value).
type Fact struct {
	Name     string // full name, without "finding." or "quantity."
	Part     *Part
	Quantity *clinical.Unit // the unit of a quantity; nil for a finding
	Expr     *Expr
	Because  source.Text
	Cites    []string
	Limb     bool // reads a limb, so it is worked out for each
	Where    source.Range
}

// Path is the fact's name in the root ruleset's conditions.
func (f *Fact) Path() string {
	if f.Quantity != nil {
		return "quantity." + f.Name
	}
	return "finding." + f.Name
}

// Strength is GRADE's word for a recommendation.
type Strength string

// GRADE's two strengths.
const (
	Strong      Strength = "strong"
	Conditional Strength = "conditional"
)

// Rule advises something of the device where its condition holds.
type Rule struct {
	Name      string // full name
	Part      *Part
	When      *Expr
	Unless    *Expr // nil: never
	Because   source.Text
	Strength  Strength
	Basis     string // published | common_practice | from_memory
	Cites     []string
	Overrides []*Rule
	Advise    []*Advice
	Limb      bool
	Where     source.Range

	overrides []source.Text
}

// Verb is what an advise block says of a choice.
type Verb string

// The verbs: limits remove options or bound a number, Favour and Aim prefer.
const (
	Only    Verb = "only"
	Never   Verb = "never"
	AtLeast Verb = "at_least"
	AtMost  Verb = "at_most"
	Favour  Verb = "favour"
	Aim     Verb = "aim"
)

// Limit reports whether the verb removes, rather than prefers.
func (v Verb) Limit() bool { return v != Favour && v != Aim }

// Advice is one verb of an advise block.
type Advice struct {
	Choice  *vocab.Choice
	Verb    Verb
	Options []string // of a choice with options
	Formula *Expr    // of a choice with a number, of its dimension
	Where   source.Range
}

// Caution warns where its condition holds.
type Caution struct {
	Name  string
	Part  *Part
	Level string // contraindication | precaution | note
	When  *Expr
	Says  source.Text
	Act   source.Text
	Basis string
	Cites []string
	Limb  bool
	Where source.Range
}

// Open is a choice that the protocol leaves to the clinician on purpose.
type Open struct {
	Choice   *vocab.Choice
	Part     *Part
	Because  source.Text
	Consider []source.Text
	Where    source.Range
}

// Except leaves out a rule or caution of a ruleset that is built on.
type Except struct {
	Name    string
	Because string
	Where   source.Range
}

// Case is a worked case: the ruleset's own test.
type Case struct {
	Name   string
	Basis  string
	Cites  []string
	Given  *source.Block // an assessment; package assess reads it
	Expect []*Expectation
	Where  source.Range
}

// Expectation is what a worked case expects of one limb or of the person. What it does not name is
// not checked.
type Expectation struct {
	Of         string // left | right | person
	Applies    string // of the person: yes | no | unknown; "": not said
	Choices    []Expected
	Findings   []Expected
	Quantities []Expected
	Cautions   []source.Text // must fire
	Fires      []source.Text // rules that must fire
	Silent     []source.Text // rules and cautions that must not fire
	Where      source.Range
}

// More reports whether anything is expected besides whether the ruleset applies.
func (e *Expectation) More() bool {
	return len(e.Choices)+len(e.Findings)+len(e.Quantities)+len(e.Cautions)+len(e.Fires)+len(e.Silent) > 0
}

// Expected is one line of an expectation. Text is what was written; findings are "true", "false" or "unknown".
type Expected struct {
	Name  string
	Text  string
	Where source.Range
}

// Rule finds a rule by full name; nil if there is none.
func (rs *Ruleset) Rule(name string) *Rule {
	for _, r := range rs.Rules {
		if r.Name == name {
			return r
		}
	}
	return nil
}

// Overdue reports whether the review date has passed on a day.
func (h Header) Overdue(day time.Time) bool {
	t, err := time.Parse(time.DateOnly, h.ReviewBy)
	return err == nil && day.After(t.AddDate(0, 0, 1).Add(-time.Nanosecond))
}
