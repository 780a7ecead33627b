package ruleset

import (
	"crus/engine/source"
)

// declareFact notes the name of a finding or quantity, and gives the work that is left. A quantity
// without a unit is lost: what reads it can't be checked, and is not blamed.
func (p *partReader) declareFact(b *source.Block) func() {
	name := b.Named(&p.diags, map[string]string{"finding": "marked_tone", "quantity": "pitch"}[b.Type])
	if !p.unique(b.Type, name, b.Where) {
		return nil
	}
	f, fields := &Fact{Name: p.p.FullName(name), Part: p.p, Where: b.Where}, b.Fields(&p.diags)
	if b.Type == "quantity" {
		if f.Quantity = unitOf(fields, &p.diags); f.Quantity == nil {
			p.lost["quantity."+name] = true
			return func() { p.fact(fields, f) }
		}
	}
	p.rs.Facts = append(p.rs.Facts, f)
	p.facts[f.Path()] = f
	return func() { p.fact(fields, f) }
}

func (p *partReader) fact(fields *source.Fields, f *Fact) {
	if fields.Block.Type == "quantity" {
		if t, ok := fields.RequiredText("value", `"limb.shoe_heel_height - limb.shoe_forefoot_height"`); ok && f.Quantity != nil {
			f.Expr = p.scope.formula(t, *f.Quantity)
		}
	} else if t, ok := fields.RequiredText("holds", `"limb.plantarflexor_tone >= modified_ashworth('2')"`); ok {
		f.Expr = p.scope.condition(t)
	}
	for _, other := range []string{"when", "if", "holds", "value", "formula"} {
		fields.Instead(other, map[string]string{"finding": "holds", "quantity": "value"}[fields.Block.Type])
	}
	f.Because = p.text(fields, "because")
	f.Cites = p.citing(fields)
	fields.Done()
}

// text reads a text that may hold ${names}, and checks the names.
func (p *partReader) text(f *source.Fields, name string) source.Text {
	t, _ := f.Text(name)
	p.checkNames(t)
	return t
}

func (p *partReader) checkNames(t source.Text) {
	for _, n := range t.Refs {
		if p.scope.isLost(n.Name) {
			continue
		}
		if _, d := p.scope.resolve(n.Name, t.Range(n.Start, n.End)); d != nil {
			p.fail(*d)
		}
	}
}

// citing reads cites; each must be a citation of this part or of the vocabulary.
func (p *partReader) citing(f *source.Fields) []string {
	var out []string
	for _, t := range f.Texts("cites") {
		if !p.cites[t.S] {
			var keys []string
			for k := range p.cites {
				keys = append(keys, k)
			}
			p.fail(source.Errorf(t.All(), "unknown_name", "There is no citation %q.", t.S).
				Hinting("%s", source.DidYouMean(t.S, keys, `Add a block: citation "`+t.S+`" { text = "..." }`)))
			continue
		}
		out = append(out, t.S)
	}
	return out
}

// basis reads what a rule, caution or case stands on; published needs a citation.
func (p *partReader) basis(f *source.Fields, required bool) (string, []string) {
	basis := f.OneOf("basis", "published", "common_practice", "from_memory")
	cites := p.citing(f)
	if required {
		f.Needs("basis", `"common_practice", or "published" (with cites), or "from_memory"`)
	}
	if basis == "published" && len(cites) == 0 {
		if _, written := f.Block.Attr("cites"); !written {
			p.fail(source.Errorf(f.Where("basis"), "no_citation", "The basis is published, and no citation says where.").
				Hinting(`Add cites = ["..."], or write basis = "common_practice" or "from_memory".`))
		}
	}
	return basis, cites
}

func (p *partReader) rule(b *source.Block) {
	name := b.Named(&p.diags, "raise_trimline_for_tone")
	if !p.unique("rule or caution", name, b.Where) {
		return
	}
	f := b.Fields(&p.diags)
	r := &Rule{Name: p.p.FullName(name), Part: p.p, Where: b.Where}
	if t, ok := f.RequiredText("when", `"finding.marked_tone"`); ok {
		r.When = p.scope.condition(t)
	}
	if t, ok := f.Text("unless"); ok {
		r.Unless = p.scope.condition(t)
	}
	if _, ok := f.RequiredText("because", `"What a clinician would say."`); ok {
		r.Because = p.text(f, "because")
	}
	r.Strength = Strength(f.OneOf("strength", string(Strong), string(Conditional)))
	f.Needs("strength", `"strong", or "conditional"`)
	r.Basis, r.Cites = p.basis(f, true)
	r.overrides = f.Texts("overrides")
	f.Inner("advise")
	f.Instead("holds", "when")
	f.Instead("if", "when")
	f.Done()
	first := map[string]source.Range{} // of each choice
	for _, a := range b.Blocks {
		if a.Type != "advise" {
			continue
		}
		choice := a.Label0().Text
		if at, twice := first[choice]; twice && len(a.Labels) == 1 {
			p.fail(source.Errorf(a.Where, "duplicate", "The rule has a second block advise %q, and a rule counts once for a choice.", choice).
				Hinting("Put both into one block, or make two rules.").With("The first one is here.", at))
			continue
		}
		first[choice] = a.Where
		r.Advise = append(r.Advise, p.advise(a)...)
	}
	if _, meant := b.Attr("advise"); !meant && len(b.Blocks) == 0 && len(r.overrides) == 0 {
		p.fail(source.Errorf(b.Where, "no_advice", "The rule %q advises nothing.", name).
			Hinting(`Add a block: advise "shell_trimline" { at_least = "in_front_of_malleoli" }`))
	}
	p.rs.Rules = append(p.rs.Rules, r)
	p.rules[r.Name] = r
}

func (p *partReader) caution(b *source.Block) {
	name := b.Named(&p.diags, "insensate_under_shell")
	if !p.unique("rule or caution", name, b.Where) {
		return
	}
	f := b.Fields(&p.diags)
	c := &Caution{Name: p.p.FullName(name), Part: p.p, Where: b.Where}
	c.Level = f.OneOf("level", "contraindication", "precaution", "note")
	f.Needs("level", `"precaution", or "contraindication", or "note"`)
	if t, ok := f.RequiredText("when", `"limb.protective_sensation == 'absent'"`); ok {
		c.When = p.scope.condition(t)
	}
	if _, ok := f.RequiredText("says", `"The foot has no protective sensation."`); ok {
		c.Says = p.text(f, "says")
	}
	c.Act = p.text(f, "act")
	f.Instead("holds", "when")
	f.Instead("because", "says")
	c.Basis, c.Cites = p.basis(f, true)
	f.Done()
	p.rs.Cautions = append(p.rs.Cautions, c)
	p.cautions[c.Name] = c
}

func (p *partReader) open(b *source.Block) {
	o := &Open{Part: p.p, Where: b.Where}
	if len(b.Labels) != 1 {
		b.Named(&p.diags, "strut_place")
		return
	}
	label := b.Labels[0]
	if o.Choice = p.rs.Vocabulary.Choice(label.Text); o.Choice == nil {
		p.noChoice(label)
	}
	p.unique("clinician_decides", label.Text, b.Where)
	f := b.Fields(&p.diags)
	if _, ok := f.RequiredText("because", `"No published comparison."`); ok {
		o.Because = p.text(f, "because")
	}
	o.Consider = f.Texts("consider")
	for _, t := range o.Consider {
		p.checkNames(t)
	}
	f.Done()
	if o.Choice != nil {
		p.rs.Open = append(p.rs.Open, o)
	}
}

func (p *partReader) noChoice(l source.Label) {
	names := p.rs.Vocabulary.ChoiceNames()
	p.fail(source.Errorf(l.Where, "unknown_name", "There is no choice %q.", l.Text).
		Hinting("%s", source.DidYouMean(l.Text, names, "The vocabulary lists the choices: "+source.And(names)+".")))
}

type pendingExcept struct {
	except *Except
	part   *partReader
}

func (p *partReader) except(b *source.Block) {
	if len(b.Labels) != 1 {
		p.fail(source.Errorf(b.Where, "label", "An except block names one rule or caution in quotes.").Hinting(`For example: except "limb_safety.driving" { because = "..." }`))
		return
	}
	f := b.Fields(&p.diags)
	e := &Except{Name: b.Labels[0].Text, Because: f.Required("because", `"Our clinic does not see drivers."`), Where: b.Labels[0].Where}
	f.Done()
	if p.unique("except", e.Name, b.Where) {
		p.reader.excepts = append(p.reader.excepts, pendingExcept{e, p})
	}
}
