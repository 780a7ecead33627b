package render

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"crus/engine/prove"
	"crus/engine/ruleset"
	"crus/engine/source"
)

// ProofOptions says what stands beside a report on a whole ruleset.
type ProofOptions struct {
	Ruleset string                                 // as the user named it, for the commands that are shown
	Matters func(v *prove.Verdict) []prove.Reading // the measures of a witness that bring it about
	File    func(v *prove.Verdict) string          // where a witness was written; "" where it was not
}

// maxReadings is how many measures of a witness are shown.
const maxReadings = 8

// Proof writes what holds of a ruleset over all assessments: faults first, then remarks, then what could not be decided,
// then what is proved, and last the choices of which it says nothing or that it leaves open.
func Proof(w io.Writer, r *prove.Report, rs *ruleset.Ruleset, st Style, opt ProofOptions) error {
	var b strings.Builder
	p := &proof{&b, r, rs, st, opt}
	p.head()
	p.verdicts("fault", r.Found(true), mark{"✗", "", alarm})
	p.verdicts("remark", r.Found(false), mark{"△", "", unsure})
	if slices.ContainsFunc(r.Verdicts, func(v *prove.Verdict) bool { return v.Assessment != nil && opt.File(v) == "" }) {
		p.say("  ", "With --witness DIR each example is written as an assessment.")
	}
	p.undecided()
	p.proved()
	p.beyond()
	p.choices()
	_, err := io.WriteString(w, b.String())
	return err
}

type proof struct {
	*strings.Builder
	r   *prove.Report
	rs  *ruleset.Ruleset
	st  Style
	opt ProofOptions
}

// say writes a paragraph, each line after the margin.
func (p *proof) say(margin, format string, args ...any) {
	for _, line := range Wrap(fmt.Sprintf(format, args...), Columns-len(margin)) {
		p.WriteString(margin + line + "\n")
	}
}

func (p *proof) head() {
	fmt.Fprintf(p, "%s %s\n", p.st.in(strong, p.r.Ruleset.Name), p.r.Ruleset.Version)
	for _, x := range p.r.BuildsOn {
		fmt.Fprintf(p, "  with %s %s\n", x.Name, x.Version)
	}
	p.say("", "Over all assessments to which it applies, with every measure recorded within its plausible range. "+
		"Beside what was found stand the measures of an example that bring it about, whatever the others are.")
}

// verdicts lists what was found of one sort.
func (p *proof) verdicts(sort string, list []*prove.Verdict, m mark) {
	if len(list) == 0 {
		fmt.Fprintf(p, "\n%s\n", p.st.in(strong, "No "+sort+"s"))
		return
	}
	fmt.Fprintf(p, "\n%s\n", p.st.in(strong, sentence(count(len(list), sort))))
	for _, v := range list {
		p.title(v, m)
		p.say("    ", "%s", p.sentence(v))
		p.witness(v)
	}
	if slices.ContainsFunc(list, func(v *prove.Verdict) bool { return v.Kind == prove.Gap }) {
		p.say("  ", "Where a gap is meant, say so and why: clinician_decides \"name\" { because = \"...\" }.")
	}
}

// title heads a verdict: what it is, of what, and where that stands.
func (p *proof) title(v *prove.Verdict, m mark) {
	fmt.Fprintf(p, "  %s %s  %s\n", p.st.in(m.tone, m.Sign), plain(string(v.Kind)), p.st.in(strong, v.Name))
	if c := p.rs.Vocabulary.Choice(v.Name); c != nil {
		p.say("    ", "%s", c.Label)
	} else if v.Place != "" {
		p.say("    ", "%s", p.st.in(faint, v.Place))
	}
}

// sentence says what was found.
func (p *proof) sentence(v *prove.Verdict) string {
	among := join(plains(v.Among), "and")
	if v.Range != nil {
		among = "values from " + span(v.Range[0], v.Range[1], p.unit(v.Name))
	}
	switch v.Kind {
	case prove.NeverApplies:
		return "No assessment is within its scope."
	case prove.Contradiction:
		if len(v.Rules) == 1 {
			return v.Rules[0] + " alone can leave nothing of it."
		}
		return "Limits can leave nothing of it: " + source.And(v.Rules) + " can't hold together."
	case prove.Gap:
		return "It can stay unanswered: no rule that advises on it is in force."
	case prove.NeverFires:
		return "Its condition can't hold."
	case prove.AlwaysSetAside:
		if len(v.Rules) == 0 {
			return "Whenever its condition holds, another rule overrides it."
		}
		return "Whenever its condition holds, another rule overrides it; here " + source.And(v.Rules) + "."
	case prove.AlwaysTrue:
		return "It always holds."
	case prove.AlwaysFalse:
		return "It never holds."
	case prove.Tie:
		return fmt.Sprintf("Several are preferred alike: %s, by %s.", among, source.And(v.Rules))
	case prove.Open:
		return "Limits can leave " + among + ", and no rule prefers any."
	case prove.AddsNothing:
		return "Without it every choice would come out the same."
	}
	return "It never stands without " + v.Other + ", which is as grave."
}

// unit gives the unit of a choice with a number.
func (p *proof) unit(choice string) string {
	if c := p.rs.Vocabulary.Choice(choice); c != nil {
		return c.Unit.Code
	}
	return ""
}

// witness shows in short on whom it shows, and how to see it whole.
func (p *proof) witness(v *prove.Verdict) {
	if v.Assessment == nil {
		return
	}
	readings := p.opt.Matters(v)
	for i, x := range readings {
		if i == maxReadings && len(readings) > maxReadings+1 {
			fmt.Fprintf(p, "      … and %d more\n", len(readings)-i)
			break
		}
		p.say("      ", "%s: %s, %s", x.Of, x.Label, x.Value)
	}
	if file := p.opt.File(v); file != "" {
		fmt.Fprintf(p, "    %s\n", p.st.in(faint, "crus advise "+p.opt.Ruleset+" "+file))
	}
}

// undecided lists what could be neither shown nor excluded, with what stood in the way.
func (p *proof) undecided() {
	list := p.r.Undecided()
	if len(list) == 0 {
		return
	}
	fmt.Fprintf(p, "\n%s\n", p.st.in(strong, fmt.Sprintf("%d undecided", len(list))))
	for _, v := range list {
		p.title(v, mark{"?", "", unsure})
		for i, d := range v.Rests {
			if i == 3 && len(v.Rests) > 4 {
				fmt.Fprintf(p, "    … and %d more\n", len(v.Rests)-i)
				break
			}
			if d.Text == "" {
				p.say("    ", "%s", d.Why)
				continue
			}
			p.say("    ", "%s: %s", d.Place, d.Text)
			p.say("      ", "%s", d.Why)
		}
	}
}

// proved says of each kind for how many it is proved that it can't be, or shown that it is well.
func (p *proof) proved() {
	fmt.Fprintf(p, "\n%s\n", p.st.in(strong, "Proved or shown"))
	for _, k := range []struct {
		kinds []prove.Kind
		of    string
		well  string
	}{
		{[]prove.Kind{prove.NeverApplies}, "ruleset", "applies to someone"},
		{[]prove.Kind{prove.Contradiction}, "choice", "no contradiction"},
		{[]prove.Kind{prove.Gap}, "choice", "no gap"},
		{[]prove.Kind{prove.NeverFires}, "rule or caution", "can fire"},
		{[]prove.Kind{prove.AlwaysSetAside}, "rule that others override", "can be in force"},
		{[]prove.Kind{prove.AlwaysTrue, prove.AlwaysFalse}, "finding", "can be true and false"},
		{[]prove.Kind{prove.Tie}, "choice", "no two preferred alike"},
		{[]prove.Kind{prove.Open}, "choice", "nothing left open without a preference"},
		{[]prove.Kind{prove.AddsNothing}, "rule", "makes a difference"},
		{[]prove.Kind{prove.Hides}, "caution", "can stand alone"},
	} {
		asked, well := map[string]bool{}, map[string]bool{}
		for _, v := range p.r.Verdicts {
			if slices.Contains(k.kinds, v.Kind) {
				if !asked[v.Name] {
					asked[v.Name], well[v.Name] = true, true
				}
				well[v.Name] = well[v.Name] && v.Status == prove.Absent
			}
		}
		n := 0
		for _, ok := range well {
			if ok {
				n++
			}
		}
		if len(asked) > 0 {
			fmt.Fprintf(p, "  %s %s: %s\n", p.st.in(sure, sign(n == len(asked))), k.well, outOf(n, len(asked), k.of))
		}
	}
}

func sign(all bool) string {
	if all {
		return "✓"
	}
	return "·"
}

// outOf writes "all 12 choices", "11 of 12 choices".
func outOf(n, all int, thing string) string {
	words := thing + "s"
	if before, after, ok := strings.Cut(thing, " or "); ok {
		words = before + "s and " + after + "s"
	} else if before, after, ok := strings.Cut(thing, " that "); ok {
		words = before + "s that " + after
	}
	switch {
	case all == 1:
		words = thing
		fallthrough
	case n < all:
		return fmt.Sprintf("%d of %d %s", n, all, words)
	}
	return fmt.Sprintf("all %d %s", all, words)
}

// beyond lists what can't be looked through, whether or not anything rests on it.
func (p *proof) beyond() {
	if len(p.r.Beyond) == 0 {
		return
	}
	fmt.Fprintf(p, "\n%s\n", p.st.in(strong, "Not looked through"))
	for _, d := range p.r.Beyond {
		p.say("  ", "%s: %s", d.Place, d.Text)
	}
}

// choices lists those of which nothing is said, and those that are left open on purpose.
func (p *proof) choices() {
	if len(p.r.SaysNot) > 0 {
		fmt.Fprintf(p, "\n%s\n", p.st.in(strong, "No rule speaks of"))
		p.say("  ", "%s", strings.Join(p.r.SaysNot, ", "))
	}
	if len(p.r.Left) > 0 {
		fmt.Fprintf(p, "\n%s\n", p.st.in(strong, "Left to the clinician"))
		by := map[string][]string{}
		var parts []string
		for _, x := range p.r.Left {
			if by[x.Part] == nil {
				parts = append(parts, x.Part)
			}
			by[x.Part] = append(by[x.Part], x.Choice)
		}
		for _, part := range parts {
			p.say("  ", "by %s: %s", part, strings.Join(by[part], ", "))
		}
	}
}
