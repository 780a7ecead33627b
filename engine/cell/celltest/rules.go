package celltest

import (
	"fmt"
	"slices"
	"strings"

	"crus/engine/clinical"
)

// rulesets draws the ruleset and what it builds on: the text of each, by name.
func (d *drawer) rulesets() map[string]string {
	out := map[string]string{}
	third := d.size
	third.Findings, third.Quantities = (third.Findings+2)/3, (third.Quantities+2)/3
	third.Rules, third.Cautions = (third.Rules+2)/3, (third.Cautions+2)/3
	whole := d.size
	var built []string
	if d.may(BuildsOn) {
		for _, name := range []string{"base", "further"}[:[]int{0, 0, 0, 1, 1, 2}[d.Int(6)]] {
			d.part, d.size = name, third
			out[name] = d.ruleset(built)
			built = append(built, name)
		}
	}
	d.part, d.size = Name, whole
	out[Name] = d.ruleset(built)
	return out
}

// ruleset draws one ruleset that builds on some that are drawn already.
func (d *drawer) ruleset(built []string) string {
	var b strings.Builder
	fmt.Fprintf(&b, "ruleset %q {\n  title      = \"Drawn\"\n  version    = \"1.0.0\"\n  status     = \"active\"\n  vocabulary = \"%s@1\"\n", d.part, VocabularyName)
	if built != nil {
		fmt.Fprintf(&b, "  builds_on  = [%s]\n", quoted(`"`, built...))
	}
	if d.part == Name && d.may(Scope) && d.chance(25) || d.part != Name && d.chance(60) {
		d.person = true
		fmt.Fprintf(&b, "  applies    = %q\n", d.condition(1))
		d.person = false
	}
	fmt.Fprint(&b, "}\n")
	d.drawFacts(&b)
	d.drawRules(&b)
	for i := range d.many(d.size.Cautions, 0) {
		d.drawCaution(&b, i)
	}
	for _, c := range d.choices {
		if d.chance(20) {
			fmt.Fprintf(&b, "clinician_decides %q {\n  because  = \"Nothing is known.\"\n  consider = [\"What the person wants\"]\n}\n", c.name)
		}
	}
	if built != nil && d.chance(40) {
		others := slices.DeleteFunc(append(slices.Clone(d.rules), d.cautions...), func(w written) bool { return w.part == d.part })
		if len(others) > 0 {
			w := one(d, others)
			fmt.Fprintf(&b, "except \"%s.%s\" {\n  because = \"It does not hold here.\"\n}\n", w.part, w.name)
		}
	}
	return b.String()
}

func (d *drawer) drawFacts(b *strings.Builder) {
	findings, quantities := d.many(d.size.Findings, 0), d.many(d.size.Quantities, 0)
	for i := range findings + quantities {
		d.person = d.chance(15)
		d.limb = false
		f := &fact{part: d.part, name: fmt.Sprintf("f%d", i)}
		dims := d.dimensions()
		if len(dims) > 0 && d.Int(findings+quantities) < quantities {
			f.name, f.dimension = fmt.Sprintf("q%d", i), one(d, dims)
			fmt.Fprintf(b, "quantity %q {\n  unit  = %q\n  value = %q\n}\n", f.name, d.unit(f.dimension).Code, d.formula(f.dimension, 2))
		} else {
			fmt.Fprintf(b, "finding %q {\n  holds = %q\n}\n", f.name, d.condition(d.size.Depth))
		}
		f.limb = d.limb
		d.facts = append(d.facts, f)
		d.person = false
	}
}

// unit draws a unit of a dimension in which a quantity is shown.
func (d *drawer) unit(dim clinical.Dimension) clinical.Unit {
	if !d.chance(20) {
		return dim.Base()
	}
	return one(d, slices.DeleteFunc(clinical.Units(), func(u clinical.Unit) bool { return u.Dimension != dim || inexact(u.Code) && !d.may(Inexact) }))
}

// drawRules draws rules. Each can override later ones and those of what is built on, so that nothing
// overrides itself in a circle.
func (d *drawer) drawRules(b *strings.Builder) {
	n := d.many(d.size.Rules, 1)
	var own []written
	for i := range n {
		own = append(own, written{d.part, fmt.Sprintf("r%d", i)})
	}
	for i, w := range own {
		d.person = d.chance(20)
		fmt.Fprintf(b, "rule %q {\n  when     = %q\n", w.name, d.condition(d.size.Depth))
		if d.chance(25) {
			fmt.Fprintf(b, "  unless   = %q\n", d.condition(1))
		}
		fmt.Fprintf(b, "  because  = %q\n  strength = %q\n  basis    = %q\n", "Because of "+w.name+"."+d.mention(), one(d, []string{"conditional", "strong"}), one(d, []string{"common_practice", "from_memory"}))
		over := some(d, d.overriding(), append(slices.Clone(own[i+1:]), d.rules...))
		if len(over) > 0 {
			var names []string
			for _, o := range over {
				names = append(names, o.from(d.part))
			}
			fmt.Fprintf(b, "  overrides = [%s]\n", quoted(`"`, names...))
		}
		least := 1
		if len(over) > 0 && d.chance(25) {
			least = 0
		}
		for _, c := range some(d, max(least, one(d, []int{1, 1, 2, 1, 3, 0})), d.choices) {
			fmt.Fprintf(b, "  advise %q {\n%s  }\n", c.name, d.advice(c))
		}
		fmt.Fprint(b, "}\n")
		d.person = false
	}
	d.rules = append(d.rules, own...)
}

// overriding draws how many rules a rule overrides.
func (d *drawer) overriding() int {
	if !d.chance(30) {
		return 0
	}
	return d.between(1, 2)
}

// mention draws a sentence that names something that was recorded or worked out, or nothing.
func (d *drawer) mention() string {
	if !d.chance(30) {
		return ""
	}
	if f := d.known(func(*fact) bool { return true }); len(f) > 0 && d.chance(40) {
		return " It is ${" + d.factPath(one(d, f)) + "}."
	}
	if m := d.readable(func(*measure) bool { return true }); len(m) > 0 {
		return " It is ${" + d.path(one(d, m)) + "}."
	}
	return ""
}

// advice draws the lines of an advise block.
func (d *drawer) advice(c *choice) string {
	verbs := []string{"favour", "never", "favour", "only"}
	if c.ordered {
		verbs = append(verbs, "at_least", "at_most")
	}
	if c.options == nil {
		verbs = []string{"aim", "at_least", "aim", "at_most"}
	}
	for range d.size.Rules / (3 * len(d.choices)) { // where many rules advise on a choice, most of them only prefer
		verbs = append(verbs, verbs[0])
	}
	var lines []string
	var used []string
	for range d.between(1, 2) {
		verb := one(d, verbs)
		if slices.Contains(used, verb) {
			continue
		}
		used = append(used, verb)
		lines = append(lines, fmt.Sprintf("    %s = %s\n", verb, d.advised(c, verb)))
	}
	return strings.Join(lines, "")
}

// advised draws what a verb says of a choice, as HCL writes it.
func (d *drawer) advised(c *choice, verb string) string {
	switch {
	case c.options != nil:
		n := 1
		if verb != "at_least" && verb != "at_most" && d.chance(30) {
			n = 2
		}
		return "[" + quoted(`"`, some(d, n, c.options)...) + "]"
	case d.may(Computed) && slices.Contains(d.dimensions(), c.unit.Dimension) && d.chance(50):
		return fmt.Sprintf("%q", d.formula(c.unit.Dimension, 2))
	}
	return fmt.Sprintf("\"%s(%s)\"", clinical.LiteralFor(c.unit), number(c.at(d, 2)))
}

func (d *drawer) drawCaution(b *strings.Builder, i int) {
	d.person = d.chance(20)
	w := written{d.part, fmt.Sprintf("c%d", i)}
	fmt.Fprintf(b, "caution %q {\n  level = %q\n  when  = %q\n  says  = %q\n", w.name, one(d, []string{"note", "precaution", "contraindication"}), d.condition(d.size.Depth), "Take care."+d.mention())
	if d.chance(40) {
		fmt.Fprint(b, "  act   = \"Look at it again.\"\n")
	}
	fmt.Fprint(b, "  basis = \"common_practice\"\n}\n")
	d.person = false
	d.cautions = append(d.cautions, w)
}
