package prove

import (
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
	p.each(len(p.Topics), func(i int) bool { return len(p.pending(i)) > 0 },
		func(a *asker, i int) answer { return p.askWithout(a, i) },
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

// pending lists the rules that bear on a choice, can be in force, and were not seen to make a difference to any.
func (p *prover) pending(topic int) (out []int) {
	for _, i := range p.Topics[topic].Bears {
		if p.seen.set[i] != nil && !p.seen.matters[i] {
			out = append(out, i)
		}
	}
	return out
}

// together is how many rules are asked about in one set of clauses.
const together = 6

// askWithout asks of each rule that bears on a choice whether it comes out in another way, for some assessment, without it.
func (p *prover) askWithout(a *asker, topic int) answer {
	out := answer{rules: p.pending(topic)}
	out.parts = make([]answer, len(out.rules))
	for k := range out.parts {
		out.parts[k].status = Absent
	}
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
			differs := func(rule int, cs []*cell.Case) bool {
				return p.counts(rule, cs) && !p.decide(topic, cs, nil).Same(p.decide(topic, cs, p.without(rule, cs)))
			}
			q.accept = func(cs []*cell.Case) bool {
				return cs[0].Truth[a.Applies] == cell.Yes && differs(rule, cs)
			}
			ans := a.ask(q)
			if ans.status == Undecided {
				out.parts[k] = ans
			}
			if ans.status != Found {
				continue
			}
			for i, r := range ans.rows { // it may show of others too that they matter
				p.Work(a.cases[i], r)
			}
			for j, other := range out.rules[k:] {
				if out.parts[k+j].status != Found && differs(other, a.cases[:rows]) {
					out.parts[k+j] = answer{status: Found}
				}
			}
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
