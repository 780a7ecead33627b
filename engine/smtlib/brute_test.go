package smtlib_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"crus/engine/cell"
	"crus/engine/cell/celltest"
	"crus/engine/prove"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// mostRows is how many rows of a ruleset are tried.
const mostRows = 100_000

// On drawn rulesets in which no measure is compared with another, trying every cell of every measure answers every
// question as z3 answers what is written.
func TestQuestionsAgainstEveryCell(t *testing.T) {
	t.Parallel()
	size := celltest.Small().Plain().Without(celltest.Linear | celltest.Pairs)
	size.Measures = 4
	tried := 0
	for seed := uint64(0); tried < 18; seed++ {
		sample := celltest.Draw(celltest.Seeded(seed), size)
		s, err := cell.New(sample.Engine(t))
		if err != nil {
			t.Fatal(err)
		}
		b, ok := everyRow(s)
		if !ok {
			continue
		}
		tried++
		got := answers(t, written(t, s, &prove.Report{Verdicts: everyQuestion(s)}))
		for question, answer := range got {
			want := "unsat"
			if b.shown(question) {
				want = "sat"
			}
			if answer != want {
				t.Errorf("seed %d, %s: z3 says %s, trying everything %s\n%s", seed, question, answer, want, sample)
			}
		}
		if t.Failed() {
			return
		}
	}
}

// everyQuestion lists every question that can be asked of a ruleset, without an answer.
func everyQuestion(s *cell.Space) (out []*prove.Verdict) {
	add := func(name string, kinds ...prove.Kind) {
		for _, k := range kinds {
			out = append(out, &prove.Verdict{Kind: k, Name: name, Status: prove.Undecided})
		}
	}
	add(s.Ruleset.Name, prove.NeverApplies)
	for _, t := range s.Topics {
		if len(t.Says) > 0 {
			add(t.Name, prove.Contradiction, prove.Gap, prove.Tie, prove.Open)
		}
	}
	for _, r := range s.Rules {
		add("rule."+r.Name, prove.NeverFires, prove.AlwaysSetAside, prove.AddsNothing)
	}
	for _, f := range s.Facts {
		if f.Term == nil {
			add("finding."+f.Name, prove.AlwaysTrue, prove.AlwaysFalse)
		}
	}
	for _, c := range s.Cautions {
		add("caution."+c.Name, prove.NeverFires, prove.Hides)
	}
	return out
}

// pair is one assessment as one limb sees it, and as the other does.
type pair [2]*cell.Case

// rows is every assessment of a ruleset.
type rows struct {
	*cell.Space
	missing map[*vocab.Measure]bool
	each    []pair
}

// everyRow works out the two rows of an assessment for every combination of cells; false where there are too many.
func everyRow(s *cell.Space) (rows, bool) {
	out := rows{Space: s, missing: map[*vocab.Measure]bool{}}
	for _, n := range s.Nodes {
		if n.Op == cell.Recorded {
			out.missing[s.Axes[n.X].Measure] = true
		}
	}
	type line struct { // a measure of one limb, or of the person
		at []float64 // NaN: not recorded
		on [2]int    // its axis as each limb sees it; -1: neither
	}
	lines := map[string]*line{}
	var order []string
	for i, a := range s.Axes[:s.Measures] {
		for view := range 2 {
			key := a.Measure.Name
			if a.Limb {
				key += map[bool]string{true: " of the first", false: " of the second"}[a.Other == (view == 1)]
			}
			l := lines[key]
			if l == nil {
				l = &line{on: [2]int{-1, -1}}
				lines[key] = l
				order = append(order, key)
				if out.missing[a.Measure] {
					l.at = append(l.at, math.NaN())
				}
			}
			l.on[view] = i
			for c := range a.Count() {
				if x, ok := a.Value(c); ok && a.Possible(c) && !slices.Contains(l.at, x) {
					l.at = append(l.at, x)
				}
			}
		}
	}
	count := 1
	for _, key := range order {
		if count *= len(lines[key].at); count > mostRows {
			return rows{}, false
		}
	}
	row := [2]cell.Row{s.Blank(), s.Blank()}
	for n := range count {
		for _, key := range order {
			l := lines[key]
			x := l.at[n%len(l.at)]
			for view, axis := range l.on {
				if axis >= 0 {
					row[view].Value[axis], row[view].Recorded[axis] = x, x == x
				}
			}
			n /= len(l.at)
		}
		p := pair{s.NewCase(), s.NewCase()}
		s.Work(p[0], row[0])
		s.Work(p[1], row[1])
		if p[0].Truth[s.Applies] == cell.Yes {
			out.each = append(out.each, p)
		}
	}
	return out, true
}

// shown reports whether some row shows what a question asks for.
func (b rows) shown(question string) bool {
	words := append(strings.Fields(question), "")
	kind, name, other := prove.Kind(words[0]), words[1], words[2]
	node := func(c *cell.Case, name string) cell.Truth {
		for _, r := range b.Rules {
			if "rule."+r.Name == name {
				return c.Truth[r.Own]
			}
		}
		for _, x := range b.Cautions {
			if "caution."+x.Name == name {
				return c.Truth[x.Node]
			}
		}
		for _, f := range b.Facts {
			if f.Path() == name {
				return c.Truth[f.Node]
			}
		}
		return cell.Unknown
	}
	topic := slices.IndexFunc(b.Topics, func(t *cell.Topic) bool { return t.Name == name })
	rule := slices.IndexFunc(b.Rules, func(r *cell.Rule) bool { return "rule."+r.Name == name })
	return slices.ContainsFunc(b.each, func(p pair) bool {
		c := p[0]
		switch kind {
		case prove.NeverApplies:
			return true
		case prove.NeverFires:
			return node(c, name) == cell.Yes
		case prove.AlwaysSetAside:
			return c.Truth[b.Rules[rule].Force] == cell.Yes
		case prove.AlwaysTrue:
			return node(c, name) == cell.No
		case prove.AlwaysFalse:
			return node(c, name) == cell.Yes
		case prove.Hides:
			return node(c, name) == cell.Yes && node(c, other) != cell.Yes
		case prove.AddsNothing:
			return b.matters(p, rule)
		}
		return b.comes(kind, topic, c) || b.Topics[topic].Of == vocab.Person && b.comes(kind, topic, c, p[1])
	})
}

// comes reports whether a choice comes out as a kind of question asks, for one limb or both.
func (b rows) comes(k prove.Kind, topic int, limbs ...*cell.Case) bool {
	force := func(limb, rule int) cell.Truth { return limbs[limb].Truth[b.Rules[rule].Force] }
	said, decided := b.said(topic, limbs, force)
	d := b.Decide(topic, limbs...)
	prefers := slices.ContainsFunc(said, func(x reason.Said) bool {
		a := b.Rules[x.Rule].Advice[x.Advice]
		return a.Verb == ruleset.Aim || a.Favours&d.Mask != 0
	})
	switch k {
	case prove.Contradiction:
		return decided && d.Status == reason.Conflict
	case prove.Gap:
		return decided && said == nil
	case prove.Tie:
		return decided && said != nil && d.Status == reason.IsOpen && prefers
	}
	return decided && said != nil && d.Status == reason.IsOpen && !prefers
}

// said lists what rules in force say of a choice, and whether these are all known, or all that bears on the choice is.
func (b rows) said(topic int, limbs []*cell.Case, force func(limb, rule int) cell.Truth) (out []reason.Said, decided bool) {
	decided = true
	for _, say := range b.Topics[topic].Says {
		yes := false
		for i := range limbs {
			f := force(i, say.Rule.Index)
			yes = yes || f == cell.Yes
			decided = decided && f != cell.Unknown
		}
		if yes {
			out = append(out, reason.Said{Rule: say.Rule.Index, Advice: say.Place, Value: say.Advice.At})
		}
	}
	recorded := true
	for _, axis := range b.Topics[topic].Reads {
		for _, c := range limbs {
			recorded = recorded && (c.Recorded[axis] || !b.missing[b.Axes[axis].Measure])
		}
	}
	return out, decided || recorded
}

// matters reports whether a choice comes out otherwise without a rule.
func (b rows) matters(p pair, rule int) bool {
	var without [2][]cell.Truth
	for limb, c := range p {
		without[limb] = make([]cell.Truth, len(b.Rules))
		for _, i := range b.Down {
			f := c.Truth[b.Rules[i].Own]
			for _, o := range b.Rules[i].Overriders {
				f = min(f, cell.Yes-without[limb][o])
			}
			if i == rule {
				f = cell.No
			}
			without[limb][i] = f
		}
	}
	for i, t := range b.Topics {
		for _, limbs := range [][]*cell.Case{p[:1], p[:]} {
			if len(limbs) == 2 && t.Of != vocab.Person {
				continue
			}
			said, _ := b.said(i, limbs, func(limb, rule int) cell.Truth { return without[limb][rule] })
			if !b.Engine.Decide(t.Choice, said).Same(b.Decide(i, limbs...)) {
				return true
			}
		}
	}
	return false
}
