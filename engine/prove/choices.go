package prove

import (
	"crus/engine/cell"
	"crus/engine/clause"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// choiceKinds lists what is asked of a choice.
func choiceKinds() []Kind { return []Kind{Contradiction, Gap, Tie, Open} }

// asks reports whether a question is asked of a choice.
func (p *prover) asks(q asked) bool {
	t := p.Topics[q.topic]
	switch {
	case len(t.Says) == 0:
		return false
	case q.kind == Gap:
		return t.Silent.Status == reason.Unanswered
	case q.kind == Contradiction:
		return true
	}
	return !p.opened[q.topic]
}

// is reports whether a verdict on a choice, as some cases have it, is what is asked for.
func (p *prover) is(q asked, v reason.Verdict, cases []*cell.Case) bool {
	switch q.kind {
	case Contradiction:
		return v.Status == reason.Conflict && p.stands(q.topic, cases)
	case Gap:
		return v.Status == reason.Unanswered && p.stands(q.topic, cases)
	}
	return v.Status == reason.IsOpen && p.prefers(q.topic, v, cases) == (q.kind == Tie) && p.stands(q.topic, cases)
}

// stands reports whether a choice does not hang on what is missing: each rule that advises on it is in force or known not to
// be, or all that bears on it is recorded.
func (p *prover) stands(topic int, cases []*cell.Case) bool {
	t := p.Topics[topic]
	known, recorded := true, true
	for _, c := range cases {
		for _, s := range t.Says {
			known = known && c.Truth[s.Rule.Force] != cell.Unknown
		}
		for _, axis := range t.Reads {
			recorded = recorded && c.Recorded[axis]
		}
	}
	return known || recorded
}

// choices asks what can become of the choices.
func (p *prover) choices() {
	kinds := choiceKinds()
	n := len(p.Topics) * len(kinds)
	at := func(k int) asked { return asked{kinds[k%len(kinds)], k / len(kinds)} }
	answers := make([]answer, n)
	finds := make([]*found, n)
	p.each(n, func(k int) bool { return p.asks(at(k)) && p.seen.choices[at(k)] == nil },
		func(a *asker, k int) answer {
			ans, f := p.askChoice(a, at(k))
			finds[k] = f
			return ans
		},
		func(k int, a answer) {
			answers[k] = a
			if q := at(k); finds[k] != nil && p.seen.choices[q] == nil {
				p.seen.choices[q] = finds[k]
			}
		})
	for k := range n {
		q := at(k)
		if !p.asks(q) {
			continue
		}
		v := &Verdict{Kind: q.kind, Name: p.Topics[q.topic].Name, Part: p.Ruleset.Name, Status: Absent}
		if f := p.seen.choices[q]; f != nil {
			f.shows(v)
		} else if a := answers[k]; a.status != Found {
			v.Status, v.Rests = a.status, a.doubts
		}
		p.add(v, p.Ruleset.Where)
		v.Place = ""
	}
}

// rowsOf lists on how many limbs a choice is to be asked about: a choice of the person that some rule sees limb by limb on one
// and on both.
func (p *prover) rowsOf(topic int) []int {
	t := p.Topics[topic]
	if t.Of == vocab.Person {
		for _, s := range t.Says {
			if s.Rule.Limb {
				return []int{1, 2}
			}
		}
	}
	return []int{1}
}

// askChoice asks one question about a choice, and gives the witness.
func (p *prover) askChoice(a *asker, q asked) (answer, *found) {
	out := answer{status: Absent}
	for _, rows := range p.rowsOf(q.topic) {
		for _, part := range p.parts(q) {
			x := a.begin(rows)
			c := x.Choice(q.topic, x.Forces(-1))
			x.assume = append(x.assume, part(x, c), c.Stands)
			x.onChoice(a, q.topic, c)
			x.maybe = func(t *trial) bool { return q.could(t, p.Topics[q.topic]) }
			x.accept = func(cs []*cell.Case) bool {
				return cs[0].Truth[a.Applies] == cell.Yes && p.is(q, p.decide(q.topic, cs, nil), cs)
			}
			var f *found
			x.shown = func(rows []cell.Row) bool {
				f = p.confirm(q, rows)
				return f != nil
			}
			switch ans := a.ask(x); ans.status {
			case Found:
				return ans, f
			case Undecided:
				out.status = Undecided
				for _, d := range ans.doubts {
					out.doubts = addDoubt(out.doubts, d)
				}
			}
		}
	}
	return out, nil
}

// onChoice tells a query what the answer hangs on.
func (q *query) onChoice(a *asker, topic int, c *clause.Choice) {
	t := a.Topics[topic]
	for i, s := range t.Says {
		q.hangs, q.says = append(q.hangs, c.Says[i]), append(q.says, s)
		q.nodes = append(q.nodes, s.Rule.Force)
		q.nodes = append(q.nodes, a.nodesOf(s.Advice.Term)...)
		for row := range q.Rows {
			for _, axis := range reads(s.Advice.Term) {
				q.Look(row, axis)
			}
		}
	}
	q.exact = q.exact && c.Exact
}

// nodesOf lists the nodes that a term reads.
func (a *asker) nodesOf(x *cell.Term) (out []int) {
	if x == nil {
		return nil
	}
	if x.Op == cell.Choose || x.Op == cell.Holds {
		out = append(out, x.Node)
	}
	if x.Op == cell.Asked { // it may read any finding
		for _, f := range a.Facts {
			if f.Term == nil {
				out = append(out, f.Node)
			}
		}
	}
	for _, part := range append([]*cell.Term{x.A, x.B}, x.Of...) {
		out = append(out, a.nodesOf(part)...)
	}
	return out
}

// part makes the literal of one way in which something could come about.
type part func(x *query, c *clause.Choice) clause.Lit

// parts divides a question into ones that are easier to ask: one, but for numbers that formulas advise, of which each
// combination that could bring it about is asked by itself.
func (p *prover) parts(q asked) []part {
	t := p.Topics[q.topic]
	computed := func(i int) bool { return t.Numeric() && !t.Says[i].Advice.Fixed }
	aims := func(i int) bool { return t.Says[i].Advice.Verb == ruleset.Aim }
	// some gives a literal that holds where one piece of advice in force is such.
	some := func(x *query, c *clause.Choice, is func(i int) bool) clause.Lit {
		var any []clause.Lit
		for i := range t.Says {
			if is(i) {
				any = append(any, c.Says[i])
			}
		}
		return x.Or(any...)
	}
	out := []part{func(x *query, c *clause.Choice) clause.Lit {
		switch q.kind {
		case Contradiction:
			return c.Conflict
		case Gap:
			return -c.Spoke
		case Tie:
			return c.Tie
		}
		return x.And(c.Open, -some(x, c, aims))
	}}
	for i, s := range t.Says {
		if !t.Numeric() {
			break
		}
		if computed(i) && (q.kind == Contradiction && !aims(i) && !p.leaves(s, nil) || q.kind == Tie && aims(i) && t.Of == vocab.Person) {
			out = append(out, func(x *query, c *clause.Choice) clause.Lit {
				if q.kind == Contradiction {
					return x.beyond(p.asker, c.Says[i], s)
				}
				return c.Says[i]
			})
		}
		if computed(i) && q.kind == Open && !aims(i) {
			out = append(out, func(x *query, c *clause.Choice) clause.Lit { return x.And(c.Says[i], -some(x, c, aims)) })
		}
		if computed(i) && q.kind == Gap && !p.sure(q.topic) { // of a formula that can't be worked out nothing is advised
			out = append(out, func(x *query, c *clause.Choice) clause.Lit {
				return x.And(c.Says[i], -some(x, c, func(j int) bool { return !computed(j) }))
			})
		}
		for j, r := range t.Says[:i] {
			against := s.Advice.Verb == ruleset.AtLeast && r.Advice.Verb == ruleset.AtMost || s.Advice.Verb == ruleset.AtMost && r.Advice.Verb == ruleset.AtLeast
			against = against && !p.leaves(s, &r)
			if (computed(i) || computed(j)) && (q.kind == Contradiction && against || q.kind == Tie && aims(i) && aims(j)) {
				out = append(out, func(x *query, c *clause.Choice) clause.Lit { return x.And(c.Says[i], c.Says[j]) })
			}
		}
	}
	return out
}

func addDoubt(list []Doubt, d Doubt) []Doubt {
	for _, old := range list {
		if old == d {
			return list
		}
	}
	return append(list, d)
}
