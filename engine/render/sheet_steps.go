package render

import (
	"slices"
	"strings"

	"crus/engine/reason"
)

// found lists the findings and quantities of one limb or the person.
type found struct {
	bearer
	Findings   []fact
	Quantities []fact
}

// fact is a finding or quantity with how it was worked out.
type fact struct {
	Title, Value string // yes | no | unknown, or a number with its unit
	Steps        traced
}

// are names the findings with a value, as a list runs on in a sentence.
func (f found) are(value string) []string {
	var out []string
	for _, x := range f.Findings {
		if x.Value == value {
			out = append(out, within(x.Title))
		}
	}
	return out
}

func (d *drawer) found() []found {
	var out []found
	for _, b := range d.bearers {
		f := found{bearer: b}
		for _, name := range sortedKeys(b.result.Findings) {
			value := "unknown"
			if holds := b.result.Findings[name]; holds != nil {
				value = map[bool]string{true: "yes", false: "no"}[*holds]
			}
			f.Findings = append(f.Findings, fact{title(name), value, d.traced("finding", name, value, "holds", b.result.Traces["finding."+name])})
		}
		for _, name := range sortedKeys(b.result.Quantities) {
			value := "unknown"
			if m := b.result.Quantities[name]; m != nil {
				value = uncertain(m.Value, m.Unit, m.PlusMinus)
			}
			x := fact{title(name), value, d.traced("quantity", name, value, "is", b.result.Traces["quantity."+name])}
			if t := b.result.Traces["quantity."+name]; t != nil && t.Off != nil {
				x.Steps.Off = d.offWords(b.Key, t.Off, b.result.Quantities[name].Unit)
			}
			f.Quantities = append(f.Quantities, x)
		}
		if len(f.Findings)+len(f.Quantities) > 0 {
			out = append(out, f)
		}
	}
	return out
}

// steps is the whole trace of one limb or the person.
type steps struct {
	bearer
	Traced []traced
}

// traced is how one rule, caution, finding or quantity was worked out.
type traced struct {
	Kind, Name, State string
	Place             string
	Parts             []part
	Effects           []string
	Because           string
	Off               string // how far a quantity could be off, and from what
}

// part is one condition or formula with all its steps.
type part struct {
	Word string // applies | when | unless | holds | is, or verb and choice of a formula
	Step *reason.Step
}

// steps gathers everything that was worked out: findings and quantities, rules, cautions.
func (d *drawer) steps(s *sheet) []steps {
	var out []steps
	for _, b := range d.bearers {
		x := steps{bearer: b}
		for _, f := range s.Found {
			if f.Key == b.Key {
				for _, fact := range append(slices.Clone(f.Findings), f.Quantities...) {
					x.Traced = append(x.Traced, fact.Steps)
				}
			}
		}
		for _, name := range d.rules(b) {
			x.Traced = append(x.Traced, d.ruleSteps(name, b.result.Rules[name]))
		}
		for _, c := range b.result.Cautions {
			x.Traced = append(x.Traced, d.traced("caution", c.Name, stateWords(c.State), "when", c.Trace))
		}
		x.Traced = append(x.Traced, d.silentCautions(b)...)
		if x.Traced != nil {
			out = append(out, x)
		}
	}
	return out
}

// silentCautions gives the traces of the cautions that did not fire.
func (d *drawer) silentCautions(b bearer) []traced {
	var out []traced
	for _, name := range sortedKeys(b.result.Traces) {
		if own, ok := strings.CutPrefix(name, "caution."); ok {
			out = append(out, d.traced("caution", own, stateWords(reason.DidNotFire), "when", b.result.Traces[name]))
		}
	}
	return out
}

func (d *drawer) ruleSteps(name string, r *reason.Rule) traced {
	return d.traced("rule", name, stateWords(r.State), "when", r.Trace)
}

func (d *drawer) traced(kind, name, state, word string, t *reason.Trace) traced {
	x := traced{Kind: kind, Name: name, State: state}
	if t == nil {
		return x
	}
	x.Place, x.Because = t.Place, d.read(t.Because)
	add := func(word string, s *reason.Step) {
		if s != nil {
			x.Parts = append(x.Parts, part{word, s})
		}
	}
	add("applies", t.Applies)
	add(word, t.When)
	add("unless", t.Unless)
	for _, e := range t.Advises {
		add(plain(e.Verb)+", "+d.choiceLabel(e.Choice), e.Formula)
	}
	x.Effects = d.effects(t.Advises)
	return x
}

func sortedKeys[V any](m map[string]V) []string {
	out := make([]string, 0, len(m))
	for k := range m {
		out = append(out, k)
	}
	slices.Sort(out)
	return out
}
