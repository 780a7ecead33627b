package replay

import (
	"cmp"
	"maps"
	"slices"

	"crus/engine/reason"
)

// Format is what a report's field format says.
const Format = "crus-tally/1"

// Report is a tally with its names, as programs read it.
type Report struct {
	Format   string          `json:"format"`
	Ruleset  reason.Version  `json:"ruleset"`
	Partial  bool            `json:"partial"` // the work was stopped: not all assessments are counted
	Cases    int64           `json:"assessments"`
	Refused  int64           `json:"refused"` // assessments that could not be read; they are not counted elsewhere
	Outside  int64           `json:"outside"` // of persons to whom the ruleset does not apply; nothing else is counted of them
	Unsure   int64           `json:"unsure"`  // of persons of whom it is not known whether it applies
	Limbs    int64           `json:"limbs"`
	Rules    []RuleReport    `json:"rules"`
	Cautions []CautionReport `json:"cautions"`
	Choices  []ChoiceReport  `json:"choices"`
}

// RuleReport counts the states of a rule. Of is how many limbs, or assessments for a rule that reads no limb.
type RuleReport struct {
	Name       string `json:"rule"`
	Per        string `json:"per"` // limb | assessment
	Of         int64  `json:"of"`
	Fired      int64  `json:"fired"`
	SetAside   int64  `json:"set_aside"`
	Pending    int64  `json:"pending"`
	DidNotFire int64  `json:"did_not_fire"`
}

// CautionReport counts the states of a caution.
type CautionReport struct {
	Name        string `json:"caution"`
	Level       string `json:"level"`
	Per         string `json:"per"`
	Of          int64  `json:"of"`
	Fired       int64  `json:"fired"`
	Pending     int64  `json:"pending"`
	Provisional int64  `json:"provisional"`
}

// ChoiceReport counts what became of a choice.
type ChoiceReport struct {
	Name        string           `json:"choice"`
	Label       string           `json:"label"`
	Per         string           `json:"per"`
	Of          int64            `json:"of"`
	Status      map[string]int64 `json:"status"`
	Options     []OptionReport   `json:"options,omitempty"`
	Unit        string           `json:"unit,omitempty"`
	Values      []ValueReport    `json:"values,omitempty"` // numbers that are settled or default, in order
	Provisional int64            `json:"provisional"`
	Whatever    int64            `json:"whatever_is_missing"` // it stands, although what is known does not say so
}

// OptionReport counts how often an option is picked, by a rule or by default, and how often it is level with others.
type OptionReport struct {
	Option string `json:"option"`
	Picked int64  `json:"picked"`
	Level  int64  `json:"level"`
}

// ValueReport counts how often a number is advised.
type ValueReport struct {
	Value float64 `json:"value"`
	Count int64   `json:"count"`
}

// Report gives a tally of the program with its names.
func (p *Program) Report(t *Tally) *Report {
	rs := p.space.Ruleset
	r := &Report{Format: Format, Ruleset: reason.Version{Name: rs.Name, Title: rs.Title, Version: rs.Version, Status: rs.Status, Digest: rs.Digest},
		Cases: t.Cases, Outside: t.Out, Unsure: t.Unsure, Limbs: t.Limbs, Rules: []RuleReport{}, Cautions: []CautionReport{}, Choices: []ChoiceReport{}}
	per := map[bool]string{true: "limb", false: "assessment"}
	for i, x := range t.Rules {
		rule := p.space.Rules[i]
		r.Rules = append(r.Rules, RuleReport{rule.Name, per[rule.Limb], x.Of, x.Fired, x.SetAside, x.Pending, x.Of - x.Fired - x.SetAside - x.Pending})
	}
	for i, x := range t.Cautions {
		c := p.space.Cautions[i]
		r.Cautions = append(r.Cautions, CautionReport{c.Name, c.Level, per[c.Limb], x.Of, x.Fired, x.Pending, x.Provisional})
	}
	for i, x := range t.Choices {
		topic := p.space.Topics[i]
		c := ChoiceReport{Name: topic.Name, Label: topic.Label, Per: per[!p.subjects[i].once], Of: x.Of, Status: x.Status, Provisional: x.Provisional, Whatever: x.Whatever}
		for k, o := range topic.Options {
			c.Options = append(c.Options, OptionReport{o, x.Picked[k], x.Level[k]})
		}
		if topic.Numeric() {
			c.Unit = topic.Unit.Code
			for _, at := range slices.SortedFunc(maps.Keys(x.Values), cmp.Compare[float64]) {
				c.Values = append(c.Values, ValueReport{at, x.Values[at]})
			}
		}
		r.Choices = append(r.Choices, c)
	}
	return r
}
