package prove

import (
	"crus/engine/cell"

	"crus/engine/reason"
)

// aim makes a question for one node being known to be true, or false, in one row, and perhaps another not being true.
func (a *asker) aim(node int, want cell.Truth, unlike ...int) *query {
	q := a.begin(1)
	if want == cell.Yes {
		q.assume = append(q.assume, q.True(0, node))
	} else {
		q.assume = append(q.assume, q.False(0, node))
	}
	for _, n := range unlike {
		q.assume = append(q.assume, -q.True(0, n))
	}
	q.nodes = append(append(q.nodes, node), unlike...)
	q.accept = func(cs []*cell.Case) bool {
		c := cs[0]
		for _, n := range unlike {
			if c.Truth[n] == cell.Yes {
				return false
			}
		}
		return c.Truth[a.Applies] == cell.Yes && c.Truth[node] == want
	}
	return q
}

// rules asks which rules can't fire, and which are always set aside.
func (p *prover) rules() {
	own := make([]answer, len(p.Rules))
	p.each(len(p.Rules), func(i int) bool { return p.seen.own[i] == nil },
		func(a *asker, i int) answer { return a.ask(a.aim(p.Rules[i].Own, cell.Yes)) },
		func(i int, a answer) { own[i] = a })
	set := make([]answer, len(p.Rules))
	p.each(len(p.Rules), func(i int) bool { return p.seen.set[i] == nil && p.seen.own[i] != nil },
		func(a *asker, i int) answer { return a.ask(a.aim(p.Rules[i].Force, cell.Yes)) },
		func(i int, a answer) { set[i] = a })
	for i, r := range p.Rules {
		v := &Verdict{Kind: NeverFires, Name: "rule." + r.Name, Part: r.Part.Name, Status: Absent}
		if p.seen.own[i] == nil {
			v.none(own[i])
		}
		p.add(v, r.Where)
		if len(r.Overriders) == 0 {
			continue
		}
		v = &Verdict{Kind: AlwaysSetAside, Name: "rule." + r.Name, Part: r.Part.Name, Status: Absent}
		switch {
		case p.seen.own[i] == nil && v.none(own[i]) == Found: // it never fires at all
			continue
		case p.seen.own[i] != nil && p.seen.set[i] == nil && v.none(set[i]) == Found:
			p.aside(i, v)
		}
		p.add(v, r.Where)
	}
}

// none makes a verdict of there being nothing, from the answer to the question whether there is something.
func (v *Verdict) none(a answer) Status {
	switch a.status {
	case Absent:
		v.Status = Found
	case Undecided:
		v.Status, v.Rests = Undecided, a.doubts
	}
	return v.Status
}

// aside looks for an assessment on which a rule is set aside.
func (p *prover) aside(i int, v *Verdict) {
	r := p.Rules[i]
	for _, o := range r.Overriders {
		if p.seen.aside[i] == nil {
			q := p.aim(r.Own, cell.Yes)
			q.assume = append(q.assume, q.True(0, p.Rules[o].Force))
			q.nodes = append(q.nodes, p.Rules[o].Force)
			own := q.accept
			q.accept = func(cs []*cell.Case) bool { return own(cs) && cs[0].Truth[p.Rules[o].Force] == cell.Yes }
			if a := p.ask(q); a.status == Found {
				p.observe(a.rows)
			}
		}
	}
	if p.seen.aside[i] != nil {
		if f := p.confirmRule(i, p.seen.aside[i], reason.SetAside); f != nil {
			f.shows(v)
		}
	}
}

// findings asks which findings are always true or false.
func (p *prover) findings() {
	yes, no := make([]answer, len(p.Facts)), make([]answer, len(p.Facts))
	finding := func(i int) bool { return p.Facts[i].Term == nil }
	p.each(len(p.Facts), func(i int) bool { return finding(i) && p.seen.yes[i] == nil },
		func(a *asker, i int) answer { return a.ask(a.aim(p.Facts[i].Node, cell.Yes)) }, func(i int, a answer) { yes[i] = a })
	p.each(len(p.Facts), func(i int) bool { return finding(i) && p.seen.no[i] == nil },
		func(a *asker, i int) answer { return a.ask(a.aim(p.Facts[i].Node, cell.No)) }, func(i int, a answer) { no[i] = a })
	for i, f := range p.Facts {
		if !finding(i) {
			continue
		}
		for _, k := range []Kind{AlwaysTrue, AlwaysFalse} {
			v := &Verdict{Kind: k, Name: f.Path(), Part: f.Part.Name, Status: Absent}
			missing, other, answers := p.seen.no[i], p.seen.yes[i], no
			if k == AlwaysFalse {
				missing, other, answers = other, missing, yes
			}
			if missing == nil {
				v.none(answers[i])
			}
			if v.Status == Found && k == AlwaysTrue && other == nil { // it can't be worked out: it never holds
				v.Status = Absent
			}
			if v.Status == Found && other != nil {
				if w := p.confirmFinding(i, other, k == AlwaysTrue); w != nil {
					w.shows(v)
				}
			}
			p.add(v, f.Where)
		}
	}
}

// cautions asks which cautions can't fire.
func (p *prover) cautions() {
	warns := make([]answer, len(p.Cautions))
	p.each(len(p.Cautions), func(i int) bool { return p.seen.warns[i] == nil },
		func(a *asker, i int) answer { return a.ask(a.aim(p.Cautions[i].Node, cell.Yes)) }, func(i int, a answer) { warns[i] = a })
	for i, x := range p.Cautions {
		v := &Verdict{Kind: NeverFires, Name: "caution." + x.Name, Part: x.Part.Name, Status: Absent}
		if p.seen.warns[i] == nil {
			v.none(warns[i])
		}
		p.add(v, x.Where)
	}
}

// gravity is the order of the levels of cautions, the gravest first.
func gravity(level string) int {
	for i, l := range []string{"contraindication", "precaution", "note"} {
		if l == level {
			return i
		}
	}
	return 3
}

// hidden asks which cautions never stand without another one that is as grave. Of two that always fire together and are as
// grave, the later one is hidden.
func (p *prover) hidden() {
	type pair struct{ hidden, before int }
	var pairs []pair
	for i, x := range p.Cautions {
		for j, y := range p.Cautions {
			if i != j && p.seen.warns[i] != nil && gravity(y.Level) <= gravity(x.Level) && !(y.Limb && !x.Limb) {
				pairs = append(pairs, pair{i, j})
			}
		}
	}
	answers := make([]answer, len(pairs))
	p.each(len(pairs), func(k int) bool { return !p.seen.apart[pairs[k].hidden][pairs[k].before] },
		func(a *asker, k int) answer {
			return a.ask(a.aim(p.Cautions[pairs[k].hidden].Node, cell.Yes, p.Cautions[pairs[k].before].Node))
		},
		func(k int, a answer) { answers[k] = a })
	never := func(k int) bool {
		return !p.seen.apart[pairs[k].hidden][pairs[k].before] && answers[k].status == Absent
	}
	alike := func(i, j int) bool {
		for k, x := range pairs {
			if x == (pair{j, i}) {
				return never(k)
			}
		}
		return false
	}
	for i, x := range p.Cautions {
		if p.seen.warns[i] == nil {
			continue
		}
		v := &Verdict{Kind: Hides, Name: "caution." + x.Name, Part: x.Part.Name, Status: Absent}
		for k, y := range pairs {
			switch {
			case y.hidden != i || v.Status == Found:
			case never(k) && !(y.before > i && alike(i, y.before)):
				v.Status, v.Rests, v.Other = Found, nil, "caution."+p.Cautions[y.before].Name
				if w := p.confirmCautions(i, y.before, p.seen.warns[i]); w != nil {
					w.shows(v)
				}
			case answers[k].status == Undecided && !p.seen.apart[y.hidden][y.before]:
				v.Status, v.Rests = Undecided, answers[k].doubts
			}
		}
		p.add(v, x.Where)
	}
}
