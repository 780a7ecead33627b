package clause

import (
	"crus/engine/cell"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// Forces says which rules are in force, with all rules or without one.
type Forces struct {
	c       *Clauses
	without int // -1: all rules
	made    [2]map[int]rail
}

// Forces gives the rules in force. Without a rule (-1: with all) what it set aside is in force again. What does not change
// keeps its literals, so that a solver sees at once that it is the same.
func (c *Clauses) Forces(without int) *Forces {
	return &Forces{c: c, without: without, made: [2]map[int]rail{{}, {}}}
}

func (f *Forces) rule(row, i int) rail {
	x := f.c.frame.Space.Rules[i]
	if i == f.without {
		return rail{-f.c.yes, f.c.yes}
	}
	if f.without < 0 || len(x.Overriders) == 0 {
		return f.c.node(row, x.Force)
	}
	if r, ok := f.made[row][i]; ok {
		return r
	}
	out := f.c.node(row, x.Force)
	same := true
	for _, o := range x.Overriders {
		same = same && f.rule(row, o) == f.c.node(row, f.c.frame.Space.Rules[o].Force)
	}
	if !same {
		out = f.c.node(row, x.Own)
		for _, o := range x.Overriders {
			out = f.c.andRails(out, f.rule(row, o).not())
		}
	}
	f.made[row][i] = out
	return out
}

// Choice holds the literals of what becomes of a choice.
type Choice struct {
	Says     []Lit // of each piece of advice, in the order of the topic: its rule is in force
	Spoke    Lit   // one of them is
	Stands   Lit   // every rule that advises on it is in force or known not to be, or all that bears on it is recorded
	Conflict Lit   // nothing is left
	Tie      Lit   // several options are level, or aims differ, and a rule prefers
	Open     Lit   // several options, or an interval, are left, and no rule prefers
	Exact    bool  // the four above are all there is to it; false where formulas advise numbers, which are left out of account

	final []Lit // what tells two outcomes apart, besides Spoke
	fit   []Lit // of a number: what may, where these agree
}

// Says makes the literals of each piece of advice on a choice: its rule is in force on some row.
func (c *Clauses) Says(topic int, f *Forces) (out []Lit) {
	for _, s := range c.frame.Space.Topics[topic].Says {
		var any []Lit
		for row := range c.Rows {
			any = append(any, f.rule(row, s.Rule.Index).yes)
		}
		out = append(out, c.Or(any...))
	}
	return out
}

// Choice makes the literals of what becomes of a choice, with the rules in force on all rows.
func (c *Clauses) Choice(topic int, f *Forces) *Choice {
	t := c.frame.Space.Topics[topic]
	out := &Choice{Says: c.Says(topic, f), Exact: true, Stands: c.yes}
	for _, s := range t.Says {
		for row := range c.Rows {
			r := f.rule(row, s.Rule.Index)
			out.Stands = c.And(out.Stands, c.Or(r.yes, r.no))
		}
		out.Exact = out.Exact && (s.Advice.Term == nil || s.Advice.Fixed)
	}
	all := c.yes
	for row := range c.Rows {
		for _, axis := range t.Reads {
			if c.frame.Missing[axis] {
				all = c.And(all, c.line(c.frame.at[c.Rows][row][axis]).known)
			}
		}
	}
	out.Stands = c.Or(out.Stands, all)
	out.Spoke = c.Or(out.Says...)
	if t.Numeric() {
		c.number(t, out)
	} else {
		c.options(t, out)
	}
	return out
}

// options weighs the options of a choice as an outcome does: what limits leave, compared by the number of strong rules
// that favour it, then of conditional ones.
func (c *Clauses) options(t *cell.Topic, out *Choice) {
	n := len(t.Options)
	removed, strong, weak := make([]Lit, n), make([][]Lit, n), make([][]Lit, n)
	for o := range n {
		var limits, firm, mild []Lit
		for i, s := range t.Says {
			switch {
			case s.Advice.Removes>>o&1 == 1:
				limits = append(limits, out.Says[i])
			case s.Advice.Favours>>o&1 == 1 && s.Rule.Strength == ruleset.Strong:
				firm = append(firm, out.Says[i])
			case s.Advice.Favours>>o&1 == 1:
				mild = append(mild, out.Says[i])
			}
		}
		removed[o], strong[o], weak[o] = c.Or(limits...), c.Count(firm), c.Count(mild)
	}
	level, preferred := make([]Lit, n), -c.yes
	for o := range n {
		level[o] = c.And(out.Spoke, -removed[o])
		for p := range n {
			if p == o {
				continue
			}
			ahead := c.And(c.notLess(strong[o], strong[p]), c.Or(-c.notLess(strong[p], strong[o]), c.notLess(weak[o], weak[p])))
			level[o] = c.And(level[o], c.Or(removed[p], ahead))
		}
		preferred = c.Or(preferred, c.And(level[o], c.Or(atLeast(c.gates, strong[o], 1), atLeast(c.gates, weak[o], 1))))
	}
	out.Conflict = c.And(out.Spoke, c.And(removed...))
	several := atLeast(c.gates, c.Count(level), 2)
	out.Tie, out.Open = c.And(several, preferred), c.And(several, -preferred)
	for o, l := range level { // a default advises like a rule
		if t.HasDefault && t.Rank(t.Default) == o {
			l = c.Or(l, -out.Spoke)
		}
		out.final = append(out.final, l)
	}
	out.final = append(out.final, out.Conflict)
}

// Apart gives a literal that holds where a choice comes out in two ways: exactly so where both are exact and have options,
// else at least where it does.
func (c *Clauses) Apart(t *vocab.Choice, a, b *Choice) Lit {
	var ways []Lit
	for i := range a.final {
		ways = append(ways, c.Differ(a.final[i], b.final[i]))
	}
	for i := range a.fit {
		ways = append(ways, c.Differ(a.fit[i], b.fit[i]))
	}
	if t.Numeric() {
		ways = append(ways, c.Differ(a.Spoke, b.Spoke))
	}
	if !a.Exact {
		for i := range a.Says {
			ways = append(ways, c.Differ(a.Says[i], b.Says[i]))
		}
	}
	return c.Or(ways...)
}
