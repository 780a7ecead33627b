package render

import (
	"fmt"
	"io"
	"strings"

	"crus/engine/reason"
	"crus/engine/vocab"
)

// TextOptions says how much a terminal shows.
type TextOptions struct {
	Full  bool                       // every rule, finding and quantity step by step
	Cites map[string]*vocab.Citation // the sources, as Citations gives them
}

// Text writes an outcome for a terminal, no line wider than Columns. v is the vocabulary of the
// outcome. The error is that of w.
func Text(w io.Writer, o *reason.Outcome, v *vocab.Vocabulary, st Style, opt TextOptions) error {
	p := &printer{st: st}
	p.sheet(draw(o, v, opt.Cites, opt.Full), opt)
	_, err := io.WriteString(w, p.b.String())
	return err
}

func (p *printer) sheet(s *sheet, opt TextOptions) {
	p.top(s)
	if s.Scope != nil {
		p.scope(s.Scope, opt)
	}
	if s.Scope == nil || s.Scope.Applies != "no" {
		p.cautions(s.Cautions, opt.Full)
		p.advice(s.Advice)
		p.instead(s.Instead)
		p.missing(s.Missing)
		p.near(s.Near)
		p.reasons(s.Reasons)
		p.whyNot(s.WhyNot)
		p.found(s.Found)
		if opt.Full {
			p.steps(s.Steps)
		}
		p.sources(s.Sources)
	}
	p.versions(s.Versions, opt.Full)
	p.heading("Notices")
	for _, n := range s.Notices {
		p.hang(2, "·", faint, n, usual)
	}
}

func (p *printer) top(s *sheet) {
	p.hang(0, "", usual, s.Title, strong)
	p.hang(0, "", usual, strings.Join([]string{s.Ruleset, s.Digest, "vocabulary " + s.Vocabulary}, " · "), faint)
	var about []string
	for _, x := range s.Particulars {
		about = append(about, within(x.Label)+" "+x.Value)
	}
	p.hang(0, "", usual, sentence(strings.Join(about, " · ")), usual)
	for _, a := range s.Alerts {
		p.hang(0, "!", unsure, a, usual)
	}
	p.hang(0, "", usual, s.Usual, faint)
}

func (p *printer) scope(s *scope, opt TextOptions) {
	heading := "Does not apply"
	if s.Applies == "unknown" {
		heading = "May not apply"
	}
	p.heading(heading)
	p.hang(2, "", usual, s.Says, strong)
	p.facts(2, "asks", s.Asks)
	p.facts(2, "recorded", pairs(s.Used))
	p.facts(2, "waits for", strings.Join(s.Waits, "; "))
	if opt.Full && s.Step != nil {
		p.step(4, s.Step)
	}
}

func (p *printer) cautions(cs []caution, full bool) {
	p.heading("Cautions")
	if len(cs) == 0 {
		p.hang(2, "", usual, "None from these rules.", usual)
	}
	for _, c := range cs {
		sign := c.Mark
		if c.Pending {
			sign.Sign = provisionalMark().Sign
		}
		p.hang(2, sign.Sign, sign.tone, c.Stands()+": "+within(c.Title), sign.tone)
		if c.Pending && !full {
			if c.Level == "contraindication" {
				p.hang(4, "", usual, c.Says, usual)
			}
			p.hang(4, "", usual, c.When, usual)
			continue
		}
		p.hang(4, "", usual, c.Says, usual)
		if c.Act != "" {
			p.hang(4, "Do:", strong, c.Act, usual)
		}
		p.notes(4, c.Notes)
		p.facts(4, "recorded", pairs(c.Used))
		p.hang(4, "", usual, strings.Join(nonEmpty(c.Basis, c.From), " · "), faint)
	}
}

func (p *printer) advice(as []advice) {
	p.heading("Recommendation")
	if len(as) == 0 {
		p.hang(2, "", usual, "No limb is marked for a device, so nothing is advised.", usual)
	}
	for _, a := range as {
		p.hang(2, "", usual, a.Title, strong)
		for _, g := range a.Groups {
			p.hang(4, "", usual, g.Title, faint)
			for _, r := range g.Rows {
				value := r.Value
				if r.Limits != "" {
					value += " (" + r.Limits + ")"
				}
				p.columns(6, column{1, r.Mark.Sign, r.Mark.tone}, column{27, r.Label, usual}, column{21, value, strong},
					column{20, strings.TrimSpace(r.Status + " " + refWords(r.Refs)), r.Mark.tone})
				if r.AsLeft {
					p.hang(12, "", usual, "as on the left", faint)
					continue
				}
				p.notes(10, r.Notes)
			}
		}
		if len(a.Unanswered) > 0 {
			p.hang(4, statusMark(reason.Unanswered).Sign, faint, "unanswered: "+strings.Join(a.unanswered(), "; "), faint)
		}
	}
}

func (p *printer) missing(m missing) {
	p.heading("What is missing")
	if len(m.Items) == 0 {
		p.hang(2, "", usual, "Nothing that would change a result.", usual)
	}
	for i, x := range m.Items {
		if i == 0 {
			p.hang(2, "", usual, "Take first:", faint)
		}
		label := x.Label
		if x.Taken != "" {
			label += " (" + x.Taken + ")"
		}
		t := usual
		if i == 0 {
			t = strong
		}
		p.columns(2, column{2, fmt.Sprintf("%2d", i+1), faint}, column{47, label, t}, column{25, x.Settles, usual})
		if x.Reason != "" {
			p.hang(5, "not recorded:", faint, x.Reason, usual)
		}
		p.hang(5, "for", faint, x.For, faint)
	}
	if len(m.Later) > 0 {
		p.hang(2, "", usual, "Then, in the order of an examination:", faint)
	}
	for _, x := range m.Later {
		p.facts(5, x.Label, x.Value)
	}
	if len(m.Immaterial) > 0 {
		p.hang(2, "Not recorded, and changes nothing here:", faint, strings.Join(m.Immaterial, "; "), faint)
	}
}

func (p *printer) near(ns []nearby) {
	if len(ns) == 0 {
		return
	}
	p.heading("Close to a boundary")
	p.hang(2, "", usual, "Another value of one measure, within its measurement error, would change:", faint)
	for _, n := range ns {
		p.hang(2, "", usual, n.Title, strong)
		for _, m := range n.Items {
			p.hang(4, boundaryMark().Sign, unsure, m.Label+": "+m.Value, usual)
			for _, s := range m.Sides {
				p.hang(6, "", usual, s.Label+": "+s.Value, usual)
			}
		}
	}
}

func (p *printer) instead(is []instead) {
	if len(is) == 0 {
		return
	}
	p.heading("What would have to change")
	for _, x := range is {
		p.hang(2, "", usual, x.Title, strong)
		p.hang(4, "", usual, x.Says, usual)
		for i, changes := range x.Ways {
			for j, c := range changes {
				lead := "and"
				if j == 0 {
					lead = fmt.Sprintf("%3d", i+1)
				}
				p.hang(4, lead, faint, c, usual)
			}
			p.hang(8, "", usual, x.Notes[i], faint)
		}
	}
}

func (p *printer) reasons(rs []reasons) {
	p.heading("Reasons")
	for _, r := range rs {
		p.hang(2, "", usual, r.Title, strong)
		for _, x := range r.Fired {
			p.hang(2, fmt.Sprintf("%2d", x.N), faint, x.Title, strong)
			p.hang(5, "", usual, x.Because, usual)
			p.facts(5, "recorded", pairs(x.Used))
			p.facts(5, "found", pairs(x.Found))
			for _, did := range x.Did {
				p.facts(5, "effect", did)
			}
			p.hang(5, "", usual, strings.Join(nonEmpty(x.Strength, x.Basis, x.From), " · "), faint)
		}
		for _, x := range r.SetAside {
			p.waiting(x)
		}
		if r.Brief {
			p.hang(3, provisionalMark().Sign, unsure, count(len(r.Pending), "rule")+" pending: "+strings.Join(r.pending(), "; "), usual)
		} else {
			for _, x := range r.Pending {
				p.waiting(x)
			}
		}
		if len(r.Silent) > 0 {
			p.hang(5, "", usual, count(len(r.Silent), "rule")+" did not fire.", faint)
		}
	}
}

func (p *printer) waiting(x waiting) {
	p.hang(3, x.Mark.Sign, x.Mark.tone, x.State+": "+within(x.Title), usual)
	p.facts(5, x.Lead, x.Text)
}

func (p *printer) whyNot(ws []whyNots) {
	if len(ws) == 0 {
		return
	}
	p.heading("Why not …")
	for _, w := range ws {
		p.hang(2, "", usual, w.Title, strong)
		for _, c := range w.Choices {
			p.hang(4, "", usual, c.Label, usual)
			for _, x := range c.Items {
				p.hang(6, "", usual, x.Label+": "+within(x.Value)+".", usual)
			}
		}
		if len(w.Default) > 0 {
			p.hang(4, "No rule spoke, so the default stands:", faint, strings.Join(w.Default, "; "), faint)
		}
	}
}

func (p *printer) found(fs []found) {
	if len(fs) == 0 {
		return
	}
	p.heading("Findings and quantities")
	for _, f := range fs {
		p.hang(2, "", usual, f.Title, strong)
		for _, value := range []string{"yes", "no", "unknown"} {
			p.facts(4, value, strings.Join(f.are(value), "; "))
		}
		for _, q := range f.Quantities {
			p.hang(4, "", usual, q.Title+": "+q.Value, usual)
		}
	}
}

func (p *printer) sources(cs []cited) {
	if len(cs) == 0 {
		return
	}
	p.heading("Sources")
	for _, c := range cs {
		p.hang(2, "", usual, c.Key, strong)
		for _, line := range nonEmpty(c.Text, c.Link) {
			p.hang(4, "", usual, line, usual)
		}
		p.hang(4, "", usual, c.Standing, faint)
	}
}

func (p *printer) versions(vs []versioned, full bool) {
	p.heading("Versions")
	for _, v := range vs {
		digest := short(v.Digest)
		if full {
			digest = v.Digest
		}
		p.hang(2, "", usual, v.What+" · "+digest, usual)
	}
}

// steps writes everything that was worked out, step by step.
func (p *printer) steps(ss []steps) {
	p.heading("Step by step")
	for _, s := range ss {
		p.hang(2, "", usual, s.Title, strong)
		for _, t := range s.Traced {
			p.hang(2, "", usual, strings.Join(nonEmpty(t.Kind+" "+t.Name, t.State, t.Place), " · "), strong)
			for _, x := range t.Parts {
				p.hang(4, "", usual, x.Word, faint)
				p.step(6, x.Step)
			}
			for _, e := range t.Effects {
				p.facts(4, "effect", e)
			}
			if t.Off != "" {
				p.facts(4, "uncertainty", t.Off)
			}
			if t.Because != "" {
				p.facts(4, "because", t.Because)
			}
		}
	}
}

// deepest is the indent beyond which deeper steps are not set further in.
const deepest = 32

func (p *printer) step(indent int, s *reason.Step) {
	value := s.Value.String()
	t := usual
	if !s.Value.Known() {
		t = unsure
	}
	if why := s.Value.Failed(); why != "" {
		value += ": " + why
	}
	lines := Wrap(s.Text+" → "+value, Columns-indent-2)
	for i, line := range lines {
		if i > 0 {
			line = "  " + line
		}
		p.write(indent, p.st.in(t, line))
	}
	for _, inner := range s.Steps {
		p.step(min(indent+2, deepest), inner)
	}
}
