package prove

import (
	"slices"

	"crus/engine/cell"
	"crus/engine/clause"
	"crus/engine/reason"
)

// additions asks which rules add nothing: without them every choice would come out the same, for every assessment.
func (p *prover) additions() {
	left := make([]answer, len(p.Rules)) // of rules that were not seen to matter
	for i := range left {
		left[i].status = Absent
	}
	bears := p.bears()
	// Each rule is asked about with the first choice that it bears on, then, if it was not seen to matter, with the next.
	pass := func(ask func(a *asker, topic int, rules []int) answer) {
		for round, more := 0, true; more; round++ {
			more = false
			pending := make([][]int, len(p.Topics))
			for i, topics := range bears {
				if p.seen.set[i] != nil && !p.seen.matters[i] && round < len(topics) {
					pending[topics[round]] = append(pending[topics[round]], i)
					more = true
				}
			}
			p.each(len(p.Topics), func(i int) bool { return pending[i] != nil }, func(a *asker, i int) answer { return ask(a, i, pending[i]) },
				func(i int, a answer) {
					for k, rule := range a.rules {
						switch b := a.parts[k]; b.status {
						case Found:
							p.seen.matters[rule] = true
						case Undecided:
							left[rule].status = Undecided
							for _, d := range b.doubts {
								left[rule].doubts = addDoubt(left[rule].doubts, d)
							}
						}
					}
				})
		}
	}
	pass(p.askAlone)
	pass(p.askWithout)
	for i, r := range p.Rules {
		if p.seen.set[i] == nil { // it never fires, or that is undecided
			continue
		}
		v := &Verdict{Kind: AddsNothing, Name: "rule." + r.Name, Part: r.Part.Name, Status: Absent}
		if !p.seen.matters[i] && v.none(left[i]) == Found {
			if w := p.confirmRule(i, p.seen.set[i], reason.Fired); w != nil {
				w.shows(v)
			}
		}
		p.add(v, r.Where)
	}
}

// bears lists, for each rule, the choices that it bears on.
func (p *prover) bears() [][]int {
	out := make([][]int, len(p.Rules))
	for i, t := range p.Topics {
		for _, rule := range t.Bears {
			out[rule] = append(out[rule], i)
		}
	}
	return out
}

// together is how many rules are asked about in one set of clauses.
const together = 6

// askWithout asks of each rule that bears on a choice whether it comes out in another way, for some assessment, without it.
func (p *prover) askWithout(a *asker, topic int, rules []int) answer {
	out := absent(rules)
	for _, rows := range p.rowsOf(topic) {
		var q *query
		var with *clause.Choice
		asked := 0
		for k, rule := range out.rules {
			if out.parts[k].status == Found {
				continue
			}
			if asked%together == 0 {
				q = a.begin(rows)
				with = q.Choice(topic, q.Forces(-1))
			}
			asked++
			without := q.Choice(topic, q.Forces(rule))
			this := q.Var() // so that what is only left out of account for this rule does not bind the others
			q.assume, q.guard = []clause.Lit{this, q.Apart(p.Topics[topic].Choice, with, without)}, []clause.Lit{-this}
			q.hangs, q.says, q.nodes = nil, nil, p.nodesWithout([]int{p.Applies}, rule)
			q.onChoice(a, topic, with)
			q.onChoice(a, topic, without)
			q.accept = func(cs []*cell.Case) bool {
				return cs[0].Truth[a.Applies] == cell.Yes && p.differs(topic, rule, cs)
			}
			ans := a.ask(q)
			if ans.status == Undecided {
				out.parts[k] = ans
			}
			if ans.status != Found {
				continue
			}
			p.also(a, topic, ans.rows, out)
		}
	}
	return out
}

// differs reports whether a choice comes out in another way without a rule.
func (p *prover) differs(topic, rule int, cs []*cell.Case) bool {
	return p.counts(rule, cs) && !p.decide(topic, cs, nil).Same(p.decide(topic, cs, p.without(rule, cs)))
}

// also notes of which rules some rows show that they make a difference.
func (p *prover) also(a *asker, topic int, rows []cell.Row, out answer) {
	for i, r := range rows {
		p.Work(a.cases[i], r)
	}
	for k, rule := range out.rules {
		if out.parts[k].status != Found && p.differs(topic, rule, a.cases[:len(rows)]) {
			out.parts[k] = answer{status: Found}
		}
	}
}

// absent begins an answer about some rules.
func absent(rules []int) answer {
	out := answer{rules: rules}
	out.parts = make([]answer, len(out.rules))
	for k := range out.parts {
		out.parts[k].status = Absent
	}
	return out
}

// askAlone looks for assessments on which a rule is in force and as few others speak of the choice as can be: then it mostly
// makes a difference. That is quicker than to ask for a difference.
func (p *prover) askAlone(a *asker, topic int, rules []int) answer {
	out := absent(rules)
	q := a.begin(1)
	says := q.Says(topic, q.Forces(-1))
	for k, rule := range out.rules {
		if out.parts[k].status == Found {
			continue
		}
		this := q.Var() // so that what is left out of account for this rule does not bind the others
		q.assume, q.guard = []clause.Lit{this, q.True(0, p.Rules[rule].Force)}, []clause.Lit{-this}
		q.wish, q.most = nil, 4
		q.nodes = p.nodesWithout([]int{p.Applies}, rule)
		q.hangs, q.says = says, p.Topics[topic].Says
		for i, s := range p.Topics[topic].Says {
			q.nodes = append(q.nodes, s.Rule.Force)
			q.nodes = append(q.nodes, a.nodesOf(s.Advice.Term)...)
			if s.Rule.Index != rule && !slices.Contains(p.under[rule], s.Rule.Index) {
				q.wish = append(q.wish, -says[i])
			}
		}
		q.accept = func(cs []*cell.Case) bool {
			return cs[0].Truth[a.Applies] == cell.Yes && p.differs(topic, rule, cs)
		}
		if ans := a.ask(q); ans.status == Found {
			p.also(a, topic, ans.rows, out)
		}
	}
	return out
}

// nodesWithout adds the nodes that tell what is in force without a rule.
func (p *prover) nodesWithout(nodes []int, rule int) []int {
	nodes = append(nodes, p.Rules[rule].Force)
	for _, i := range p.under[rule] {
		nodes = append(nodes, p.Rules[i].Own, p.Rules[i].Force)
		for _, o := range p.Rules[i].Overriders {
			nodes = append(nodes, p.Rules[o].Force)
		}
	}
	return nodes
}
