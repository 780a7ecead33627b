package prove

import (
	"slices"

	"crus/engine/cell"
	"crus/engine/reason"
)

// additions asks which rules add nothing: without them every choice would come out the same, for every assessment.
func (p *prover) additions() {
	answers := make([]answer, len(p.Rules))
	p.each(len(p.Rules), func(i int) bool { return p.seen.set[i] != nil && !p.seen.matters[i] },
		func(a *asker, i int) answer { return p.askWithout(a, i) },
		func(i int, a answer) { answers[i] = a })
	for i, r := range p.Rules {
		if p.seen.set[i] == nil { // it never fires, or that is undecided
			continue
		}
		v := &Verdict{Kind: AddsNothing, Name: "rule." + r.Name, Part: r.Part.Name, Status: Absent}
		if !p.seen.matters[i] {
			if v.none(answers[i]) == Found {
				if w := p.confirmRule(i, p.seen.set[i], reason.Fired); w != nil {
					w.shows(v)
				}
			}
		}
		p.add(v, r.Where)
	}
}

// touched lists the choices that a rule bears on: by its own advice, and by that of rules it keeps out of force.
func (p *prover) touched(rule int) (out []int) {
	for i, t := range p.Topics {
		if slices.ContainsFunc(t.Says, func(s cell.Say) bool {
			return s.Rule.Index == rule || slices.Contains(p.under[rule], s.Rule.Index)
		}) {
			out = append(out, i)
		}
	}
	return out
}

// askWithout asks whether some choice of some assessment comes out in another way without a rule.
func (p *prover) askWithout(a *asker, rule int) answer {
	out := answer{status: Absent}
	for _, topic := range p.touched(rule) {
		for _, rows := range p.rowsOf(topic) {
			x := a.begin(rows)
			with, without := x.Choice(topic, x.Forces(-1)), x.Choice(topic, x.Forces(rule))
			x.assume = append(x.assume, x.Apart(p.Topics[topic].Choice, with, without))
			x.onChoice(a, topic, with)
			x.hangs = append(x.hangs, without.Says...)
			x.says = append(x.says, p.Topics[topic].Says...)
			x.nodes = append(x.nodes, p.Rules[rule].Force)
			for _, i := range p.under[rule] {
				x.nodes = append(x.nodes, p.Rules[i].Own, p.Rules[i].Force)
				for _, o := range p.Rules[i].Overriders {
					x.nodes = append(x.nodes, p.Rules[o].Force)
				}
			}
			x.accept = func(cs []*cell.Case) bool {
				return cs[0].Truth[a.Applies] == cell.Yes && !p.decide(topic, cs, nil).Same(p.decide(topic, cs, p.without(rule, cs)))
			}
			switch ans := a.ask(x); ans.status {
			case Found:
				return ans
			case Undecided:
				out.status = Undecided
				for _, d := range ans.doubts {
					out.doubts = addDoubt(out.doubts, d)
				}
			}
		}
	}
	return out
}
