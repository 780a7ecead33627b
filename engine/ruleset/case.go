package ruleset

import (
	"fmt"
	"strings"

	"crus/engine/source"
)

// workedCase reads a case block. What stands in given is read by package assess.
func (p *partReader) workedCase(b *source.Block) {
	if len(b.Labels) != 1 || strings.TrimSpace(b.Labels[0].Text) == "" {
		p.fail(source.Errorf(b.Where, "label", "A case has one title in quotes before its brace.").Hinting(`For example: case "late stance collapse, calf power 3" {`))
		return
	}
	c := &Case{Name: b.Labels[0].Text, Where: b.Where}
	p.unique("case", c.Name, b.Where)
	f := b.Fields(&p.diags)
	c.Basis, c.Cites = p.basis(f, false)
	f.Inner("given", "expect")
	f.Done()
	for _, inner := range b.Blocks {
		switch inner.Type {
		case "given":
			if c.Given != nil {
				p.fail(source.Errorf(inner.Where, "duplicate", "The case has a second given block.").Hinting("Keep one: a case is one assessment.").With("The first one is here.", c.Given.Where))
			}
			c.Given = inner
		case "expect":
			c.Expect = append(c.Expect, p.expectation(inner))
		}
	}
	whole := true // every block inside is one that belongs there
	for _, inner := range b.Blocks {
		whole = whole && (inner.Type == "given" || inner.Type == "expect")
	}
	if c.Given == nil && whole {
		p.fail(source.Errorf(b.Where, "missing", "The case %q has no given block.", c.Name).Hinting("Add the assessment:\ngiven {\ndevice_for = [\"left\"]\nleft { ... }\n}"))
	}
	if len(c.Expect) == 0 && whole {
		p.fail(source.Errorf(b.Where, "missing", "The case %q expects nothing.", c.Name).
			Hinting(`Add a block: expect "left" { choices = { shell_side = "anterior" } }`))
	}
	if p.p.Root {
		p.rs.Cases = append(p.rs.Cases, c)
	}
}

func (p *partReader) expectation(b *source.Block) *Expectation {
	e := &Expectation{Where: b.Where}
	if len(b.Labels) == 1 {
		e.Of = b.Labels[0].Text
	}
	if e.Of != "left" && e.Of != "right" && e.Of != "person" {
		p.fail(source.Errorf(b.Where, "label", `An expect block is for "left", "right" or "person".`).Hinting(`For example: expect "left" {`))
	}
	f, before := b.Fields(&p.diags), p.diags.Errors()
	e.Choices = p.expected(f, "choices", `{ shell_side = "anterior" }`, func(x Expected) {
		if p.rs.Vocabulary.Choice(x.Name) == nil {
			p.noChoice(source.Label{Text: x.Name, Where: x.Where})
		}
	})
	e.Findings = p.expected(f, "findings", `{ gastrocnemius_short = true }`, func(x Expected) { p.named("finding."+x.Name, x.Where) })
	e.Quantities = p.expected(f, "quantities", `{ pitch = "6.2 deg +- 0.1" }`, func(x Expected) { p.named("quantity."+x.Name, x.Where) })
	p.expectsScope(f, e)
	e.Cautions, e.Fires, e.Silent = f.Texts("cautions"), f.Texts("fires"), f.Texts("silent")
	f.Done()
	if p.diags.Errors() == before && !e.More() && e.Applies == "" {
		p.fail(source.Errorf(b.Where, "missing", "The expect block expects nothing.").Hinting(`For example: choices = { shell_side = "anterior" }`))
	}
	return e
}

// expectsScope reads whether the ruleset is expected to apply at all, which is a matter of the person.
func (p *partReader) expectsScope(f *source.Fields, e *Expectation) {
	t, ok := f.Text("applies")
	switch {
	case !ok:
	case e.Of != "person":
		p.fail(source.Errorf(t.All(), "label", "Whether the ruleset applies is a matter of the person.").Hinting(`Move the line into a block: expect "person" { applies = "%s" }`, t.S))
	case t.S != "yes" && t.S != "no" && t.S != "unknown":
		p.fail(source.Errorf(t.All(), "kind", "A ruleset applies, does not, or it is not known: %q is none of these.", t.S).Hinting(`Write applies = "yes", "no" or "unknown".`))
	default:
		e.Applies = t.S
	}
}

func (p *partReader) named(path string, where source.Range) {
	if _, d := p.scope.resolve(path, where); d != nil && !p.scope.isLost(path) {
		p.fail(*d)
	}
}

func (p *partReader) expected(f *source.Fields, name, example string, check func(Expected)) []Expected {
	var out []Expected
	for _, field := range f.Object(name, example) {
		x := Expected{Name: field.Name, Where: field.NameWhere}
		switch v := field.Value; {
		case v.Kind == source.TextKind:
			x.Text = strings.TrimSpace(v.Text.S)
		case v.Kind == source.BoolKind && name == "findings":
			x.Text = map[bool]string{true: "true", false: "false"}[v.Bool]
		case v.Kind == source.NullKind && name == "findings":
			x.Text = "unknown"
		default:
			hint := "For example: " + name + " = " + example
			if c := p.rs.Vocabulary.Choice(x.Name); v.Kind == source.NumberKind && name == "choices" && c != nil && c.Numeric() {
				hint = fmt.Sprintf("A number is written with its unit, in quotes: %s = \"%v %s\"", x.Name, v.Number, c.Unit.Code)
			}
			p.fail(source.Errorf(v.Where, "kind", "%s is expected as a text, and this is %s.", field.Name, v.Kind).Hinting("%s", hint))
			continue
		}
		check(x)
		out = append(out, x)
	}
	return out
}
