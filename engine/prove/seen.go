package prove

import (
	"math"

	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// shown is an assessment that shows something: one limb's row, or both limbs'; nil: none is known.
type shown []cell.Row

// seen is what assessments have shown so far.
type seen struct {
	applies         shown
	own, set, aside []shown          // of each rule: its condition holds, it is in force, it is set aside
	yes, no         []shown          // of each fact that is a finding
	warns           []shown          // of each caution: it fires
	apart           [][]bool         // of each caution: it fires, and that other one does not
	matters         []bool           // of each rule: without it some choice would be another
	choices         map[asked]*found // what was looked for and is confirmed
	tries           map[asked]int    // how often what was seen did not show in a full outcome
}

// asked is a question about a choice.
type asked struct {
	kind  Kind
	topic int
}

func newSeen(s *cell.Space) *seen {
	n := &seen{own: make([]shown, len(s.Rules)), set: make([]shown, len(s.Rules)), aside: make([]shown, len(s.Rules)), yes: make([]shown, len(s.Facts)),
		no: make([]shown, len(s.Facts)), warns: make([]shown, len(s.Cautions)), matters: make([]bool, len(s.Rules)), choices: map[asked]*found{}, tries: map[asked]int{}}
	for range s.Cautions {
		n.apart = append(n.apart, make([]bool, len(s.Cautions)))
	}
	return n
}

// keep notes rows, if something shows in them that was not known.
func keep(to *shown, rows []cell.Row) bool {
	if *to != nil {
		return false
	}
	for _, r := range rows {
		*to = append(*to, r.Clone())
	}
	return true
}

// observe notes what an assessment shows, and reports whether anything was new. Its rows are full: one limb's,
// or both limbs'.
func (p *prover) observe(rows []cell.Row) (news bool) {
	for i, r := range rows {
		p.Work(p.cases[i], r)
	}
	if p.cases[0].Truth[p.Applies] != cell.Yes {
		return false
	}
	news = keep(&p.seen.applies, rows[:1])
	for i := range rows {
		news = p.observeRow(p.cases[i], rows[i:i+1]) || news
	}
	for i, t := range p.Topics {
		for k := range rows {
			news = p.observeChoice(i, p.cases[k:k+1], rows[k:k+1]) || news
		}
		if len(rows) == 2 && t.Of == vocab.Person {
			news = p.observeChoice(i, p.cases[:2], rows) || news
		}
	}
	return news
}

// observeRow notes what one row shows of rules, findings and cautions.
func (p *prover) observeRow(c *cell.Case, row []cell.Row) (news bool) {
	n := p.seen
	for i, r := range p.Rules {
		if c.Truth[r.Own] != cell.Yes {
			continue
		}
		news = keep(&n.own[i], row) || news
		if c.Truth[r.Force] == cell.Yes {
			news = keep(&n.set[i], row) || news
		} else if p.State(c, i) == reason.SetAside {
			news = keep(&n.aside[i], row) || news
		}
	}
	for i, f := range p.Facts {
		if f.Term != nil {
			continue
		}
		switch c.Truth[f.Node] {
		case cell.Yes:
			news = keep(&n.yes[i], row) || news
		case cell.No:
			news = keep(&n.no[i], row) || news
		}
	}
	for i, x := range p.Cautions {
		if c.Truth[x.Node] != cell.Yes {
			continue
		}
		news = keep(&n.warns[i], row) || news
		for j, y := range p.Cautions {
			if !n.apart[i][j] && c.Truth[y.Node] != cell.Yes {
				n.apart[i][j], news = true, true
			}
		}
	}
	return news
}

// maxTries is how often what was seen in cells is held against a full outcome.
const maxTries = 5

// observeChoice notes what becomes of a choice, and which rules make a difference to it.
func (p *prover) observeChoice(topic int, cases []*cell.Case, rows []cell.Row) (news bool) {
	if len(p.Topics[topic].Says) == 0 {
		return false
	}
	with := p.decide(topic, cases, nil)
	for _, kind := range choiceKinds() {
		q := asked{kind, topic}
		if !p.asks(q) || p.seen.choices[q] != nil || p.seen.tries[q] >= maxTries || !p.is(q, with, cases) {
			continue
		}
		if f := p.confirm(q, rows); f != nil {
			p.seen.choices[q], news = f, true
		} else {
			p.seen.tries[q]++
		}
	}
	for _, i := range p.Topics[topic].Bears {
		if !p.seen.matters[i] && p.counts(i, cases) && !with.Same(p.decide(topic, cases, p.without(i, cases))) {
			p.seen.matters[i], news = true, true
		}
	}
	return news
}

// counts reports whether a rule is in force, or could be.
func (p *prover) counts(rule int, cases []*cell.Case) bool {
	for _, c := range cases {
		if c.Truth[p.Rules[rule].Force] != cell.No {
			return true
		}
	}
	return false
}

// without says which rules are in force without one of them: of each case, the truths of those that change.
func (p *prover) without(rule int, cases []*cell.Case) []map[int]cell.Truth {
	out := make([]map[int]cell.Truth, len(cases))
	for k, c := range cases {
		m := map[int]cell.Truth{rule: cell.No}
		for _, i := range p.under[rule] {
			x := p.Rules[i]
			truth := c.Truth[x.Own]
			for _, o := range x.Overriders {
				over, changed := m[o]
				if !changed {
					over = c.Truth[p.Rules[o].Force]
				}
				truth = min(truth, cell.Yes-over)
			}
			m[i] = truth
		}
		out[k] = m
	}
	return out
}

// decide gives the verdict on a choice, with the truths of some rules changed.
func (p *prover) decide(topic int, cases []*cell.Case, changed []map[int]cell.Truth) reason.Verdict {
	t := p.Topics[topic]
	var said []reason.Said
	for _, say := range t.Says {
		again := false
		for k, c := range cases {
			truth := c.Truth[say.Rule.Force]
			if changed != nil {
				if x, ok := changed[k][say.Rule.Index]; ok {
					truth = x
				}
			}
			if truth != cell.Yes {
				continue
			}
			at := say.Advice.At
			if say.Advice.Term != nil && !say.Advice.Fixed {
				x := c.Of(say.Advice.Term)
				if math.IsNaN(x) {
					continue
				}
				at = reason.InUnit(x, t.Choice)
			}
			if again && (say.Advice.Term == nil || !say.Rule.Limb) {
				continue
			}
			again = true
			said = append(said, reason.Said{Rule: say.Rule.Index, Advice: say.Place, Value: at})
		}
	}
	return p.Engine.Decide(t.Choice, said)
}

// prefers reports whether a rule in force favours one of the options that are left, or aims.
func (p *prover) prefers(topic int, v reason.Verdict, cases []*cell.Case) bool {
	for _, say := range p.Topics[topic].Says {
		if say.Advice.Verb != ruleset.Aim && say.Advice.Favours&v.Mask == 0 {
			continue
		}
		for _, c := range cases {
			known := say.Advice.Term == nil || say.Advice.Fixed || !math.IsNaN(c.Of(say.Advice.Term))
			if c.Truth[say.Rule.Force] == cell.Yes && known {
				return true
			}
		}
	}
	return false
}
