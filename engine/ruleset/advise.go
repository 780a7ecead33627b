package ruleset

import (
	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// advise reads one advise block: what a rule says of one choice.
func (p *partReader) advise(b *source.Block) []*Advice {
	if len(b.Labels) != 1 {
		p.fail(source.Errorf(b.Where, "label", "An advise block names one choice in quotes.").Hinting(`For example: advise "shell_trimline" { at_least = "in_front_of_malleoli" }`))
		return nil
	}
	c := p.rs.Vocabulary.Choice(b.Labels[0].Text)
	if c == nil {
		p.noChoice(b.Labels[0])
		return nil
	}
	f := b.Fields(&p.diags)
	var out []*Advice
	if c.Numeric() {
		for _, verb := range []Verb{AtLeast, AtMost, Aim} {
			if t, ok := f.TextLike(string(verb), `"`+clinical.LiteralFor(c.Unit)+`(10)"`); ok {
				if e := p.scope.formula(t, c.Unit); e != nil {
					out = append(out, &Advice{Choice: c, Verb: verb, Formula: e, Where: t.All()})
				}
			}
		}
		p.misplaced(b, c, f, []Verb{Only, Never, Favour}, "is a number: it takes at_least, at_most and aim, each a formula",
			"For example: at_most = \""+clinical.LiteralFor(c.Unit)+"(10)\"")
	} else {
		for _, verb := range []Verb{Only, Never, AtLeast, AtMost, Favour} {
			if a := p.options(f, c, verb); a != nil {
				out = append(out, a)
			}
		}
		p.misplaced(b, c, f, []Verb{Aim}, "has options: it takes only, never, at_least, at_most and favour", "For example: favour = \""+c.Options[0]+"\"")
	}
	f.Done()
	if len(b.Attrs) == 0 {
		p.fail(source.Errorf(b.Where, "no_advice", "The advise block says nothing of %s.", c.Name).Hinting(`For example: favour = "..."`))
	}
	return out
}

func (p *partReader) misplaced(b *source.Block, c *vocab.Choice, f *source.Fields, verbs []Verb, message, hint string) {
	for _, verb := range verbs {
		if f.Has(string(verb)) {
			a, _ := b.Attr(string(verb))
			p.fail(source.Errorf(a.NameWhere, "verb", "%s does not take %s.", c.Name, verb).Hinting("The choice %s. %s", message, hint))
		}
	}
}

func (p *partReader) options(f *source.Fields, c *vocab.Choice, verb Verb) *Advice {
	texts := f.Texts(string(verb))
	if len(texts) == 0 {
		if a, ok := f.Block.Attr(string(verb)); ok && a.Value.Kind == source.ListKind && len(a.Value.Items) == 0 {
			p.fail(source.Errorf(a.Value.Where, "verb", "%s names no option.", verb).Hinting("The options of %s are %s.", c.Name, source.And(c.Options)))
		}
		return nil
	}
	a := &Advice{Choice: c, Verb: verb, Where: f.Where(string(verb))}
	if ordered := verb == AtLeast || verb == AtMost; ordered && !c.Ordered {
		p.fail(source.Errorf(a.Where, "verb", "%s needs options in an order, and those of %s have none.", verb, c.Name).
			Hinting("Use only or never with the options that you mean."))
	} else if ordered && len(texts) > 1 {
		p.fail(source.Errorf(a.Where, "verb", "%s takes one option.", verb).Hinting("Name the one that is the limit."))
	}
	for _, t := range texts {
		if c.Rank(t.S) < 0 {
			p.fail(source.Errorf(t.All(), "option", "%s has no option %q.", c.Name, t.S).
				Hinting("%s", source.DidYouMean(t.S, c.Options, "Its options are "+source.And(c.Options)+".")))
			continue
		}
		a.Options = append(a.Options, t.S)
	}
	return a
}
