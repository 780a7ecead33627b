package prove

import (
	"slices"
	"strings"
	"time"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/vocab"
)

// The day of every witness, from which dates are counted back.
const assessed = "2026-01-01"

// found is a witness that package reason has confirmed, and what it shows.
type found struct {
	assessment *assess.Assessment
	limb       string
	rules      []string
	among      []string
	span       []float64
}

// outcome turns rows into an assessment and carries the ruleset out on it: the first row is the left limb's.
func (p *prover) outcome(rows []cell.Row) (*assess.Assessment, *reason.Outcome) {
	by := map[assess.Side]cell.Row{}
	for i, r := range rows {
		by[assess.Sides()[i]] = r
	}
	a, err := p.Assessment("witness", assessed, by)
	if err != nil { // it has no value that can be written
		return nil, nil
	}
	day, err := time.Parse(time.DateOnly, assessed)
	if err != nil {
		return nil, nil
	}
	o := p.Engine.Advise(a, day)
	if o.Applies != "yes" {
		return nil, nil
	}
	return a, o
}

// result gives the part of an outcome in which something stands: the left limb's, or the person's.
func result(o *reason.Outcome, limb bool) (*reason.Result, string) {
	if limb {
		return o.Limbs[string(assess.Left)], string(assess.Left)
	}
	return o.Person, ""
}

// confirm holds what rows show of a choice against a full outcome; nil where that shows something else.
func (p *prover) confirm(q asked, rows []cell.Row) *found {
	a, o := p.outcome(rows)
	if o == nil {
		return nil
	}
	t := p.Topics[q.topic]
	r, limb := result(o, t.Of == vocab.Limb)
	c := r.Choices[t.Name]
	out := &found{assessment: a, limb: limb}
	switch q.kind {
	case Contradiction:
		out.rules = c.Conflict
		return out.where(c.Status == reason.Conflict)
	case Gap:
		return out.where(c.Status == reason.Unanswered)
	}
	out.among = c.Among
	for _, x := range c.Options {
		if x.State == reason.Level {
			out.rules = append(out.rules, x.By...)
		}
	}
	for _, x := range c.Numbers {
		if x.Verb == "aim" && x.State == "decides" {
			out.rules = append(out.rules, x.Rule)
		}
	}
	slices.Sort(out.rules)
	out.rules = slices.Compact(out.rules)
	if c.Range != nil {
		out.span = c.Range[:]
	} else if c.Interval != nil {
		out.span = c.Interval[:]
	}
	return out.where(c.Status == reason.IsOpen && (len(out.rules) > 0) == (q.kind == Tie))
}

// where gives what was found if it holds.
func (f *found) where(holds bool) *found {
	if !holds {
		return nil
	}
	return f
}

// confirmRule holds the state of a rule in a row against a full outcome.
func (p *prover) confirmRule(i int, row []cell.Row, state string) *found {
	a, o := p.outcome(row)
	if o == nil {
		return nil
	}
	x := p.Rules[i]
	r, limb := result(o, x.Limb)
	out := &found{assessment: a, limb: limb, rules: r.Rules[x.Name].SetAsideBy}
	return out.where(r.Rules[x.Name].State == state)
}

// confirmFinding holds a finding in a row against a full outcome.
func (p *prover) confirmFinding(i int, row []cell.Row, want bool) *found {
	a, o := p.outcome(row)
	if o == nil {
		return nil
	}
	x := p.Facts[i]
	r, limb := result(o, x.Limb)
	got := r.Findings[x.Name]
	return (&found{assessment: a, limb: limb}).where(got != nil && *got == want)
}

// confirmCautions holds it against a full outcome that two cautions fire in a row.
func (p *prover) confirmCautions(i, j int, row []cell.Row) *found {
	a, o := p.outcome(row)
	if o == nil {
		return nil
	}
	out := &found{assessment: a}
	all := true
	for _, k := range []int{j, i} {
		x := p.Cautions[k]
		r, limb := result(o, x.Limb)
		out.limb = limb
		all = all && slices.ContainsFunc(r.Cautions, func(c *reason.Caution) bool { return c.Name == x.Name && c.State == reason.Fired })
	}
	return out.where(all)
}

// shows writes a witness into a verdict.
func (f *found) shows(v *Verdict) {
	id := strings.Map(func(c rune) rune {
		if c == '_' || c == '.' || c == '-' || c >= '0' && c <= '9' || c >= 'a' && c <= 'z' {
			return c
		}
		return '_'
	}, string(v.Kind)+"-"+v.Name)
	a := *f.assessment
	a.ID = id
	v.Status, v.Witness, v.Assessment, v.Limb = Found, id, &a, f.limb
	v.Rules, v.Among, v.Range = f.rules, f.among, f.span
}
