package vocab

import (
	"crus/engine/source"
)

func (r *reader) choice(b *source.Block) {
	c := &Choice{Name: b.Named(&r.diags, "shell_trimline"), Where: b.Where, Of: Limb}
	r.unique("choice", c.Name, b.Where)
	f := b.Fields(&r.diags)
	if of := f.OneOf("of", string(Person), string(Limb)); of != "" {
		c.Of = Of(of)
	}
	c.Label = f.Required("label", `"Malleolar trim-line"`)
	c.Concerns = f.OneOf("concerns", Concerns()...)
	c.How = f.String("how")
	c.Cites = r.cites(f)
	switch options, unit := f.Has("options"), f.Has("unit"); {
	case options == unit:
		problem := "has neither options nor a unit"
		if options {
			problem = "has both options and a unit"
		}
		r.fail(source.Errorf(b.Where, "kind", "The choice %q %s.", c.Name, problem).
			Hinting(`Write options = ["...", "..."], or unit = "mm" with between = [0, 60] and rounding = 1.`))
		f.Has("default")
	case options:
		r.optionChoice(c, f)
	default:
		r.numberChoice(c, f)
	}
	f.Done()
	r.v.Choices = append(r.v.Choices, c)
	if c.Name != "" {
		r.v.choices[c.Name] = c
	}
}

func (r *reader) optionChoice(c *Choice, f *source.Fields) {
	c.Options = r.options(f, "options")
	c.Ordered = f.Bool("ordered")
	if t, ok := f.Text("default"); ok {
		if c.Rank(t.S) < 0 {
			r.fail(source.Errorf(t.All(), "unknown_name", "The default %q is not one of the options.", t.S).
				Hinting("%s", source.DidYouMean(t.S, c.Options, "The options are "+source.And(c.Options)+".")))
		}
		c.Default, c.HasDefault = t.S, true
	}
}

func (r *reader) numberChoice(c *Choice, f *source.Fields) {
	c.Unit = r.unit(f)
	lo, hi, ranged := f.Pair("between")
	f.Needs("between", "[0, 60]")
	c.Between = Span{lo, hi}
	rounding, ok := f.Number("rounding")
	f.Needs("rounding", "1")
	if ok && rounding <= 0 {
		r.fail(source.Errorf(f.Where("rounding"), "rounding", "A rounding is greater than 0.").Hinting("For example: rounding = 1"))
	}
	c.Rounding = rounding
	if d, ok := f.Number("default"); ok {
		if ranged && (d < lo || d > hi) {
			r.fail(source.Errorf(f.Where("default"), "default", "The default lies outside of the choice's range.").Hinting("Choose a value between the two, or widen between."))
		}
		c.DefaultAt, c.HasDefault = d, true
	}
}
