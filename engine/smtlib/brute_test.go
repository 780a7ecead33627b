package smtlib_test

import (
	"slices"
	"testing"

	"crus/engine/cell"
	"crus/engine/cell/celltest"
	"crus/engine/prove"
	"crus/engine/reason"
)

// mostRows is how many rows of a ruleset are tried.
const mostRows = 100_000

// On drawn rulesets in which no measure is compared with another, trying every cell of every measure answers every
// question as z3 answers what is written.
func TestQuestionsAgainstEveryCell(t *testing.T) {
	size := celltest.Small().Plain().Without(celltest.Linear | celltest.Pairs)
	size.Measures = 4
	tried := 0
	for seed := uint64(0); tried < 25; seed++ {
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
		r := &prove.Report{Verdicts: everyQuestion(s)}
		got := answers(t, s, r)
		for _, v := range r.Verdicts {
			want := "unsat"
			if b.shown(v) {
				want = "sat"
			}
			if got[name(v)] != want {
				t.Errorf("seed %d, %s: z3 says %s, trying everything %s\n%s", seed, name(v), got[name(v)], want, sample)
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
		add("caution."+c.Name, prove.NeverFires)
		for _, d := range s.Cautions {
			if c.Caution != d.Caution {
				out = append(out, &prove.Verdict{Kind: prove.Hides, Name: "caution." + c.Name, Other: "caution." + d.Name, Status: prove.Undecided})
			}
		}
	}
	return out
}

// rows is every row of a ruleset.
type rows struct {
	*cell.Space
	each []*cell.Case
}

// everyRow works out a row for every combination of cells; false where there are too many.
func everyRow(s *cell.Space) (rows, bool) {
	type option struct {
		at       float64
		recorded bool
	}
	asked := map[int]bool{}
	for _, n := range s.Nodes {
		if n.Op == cell.Recorded {
			asked[n.X] = true
		}
	}
	options := make([][]option, s.Measures)
	count := 1
	for i, a := range s.Axes[:s.Measures] {
		for c := range a.Count() {
			if x, ok := a.Value(c); ok && a.Possible(c) {
				options[i] = append(options[i], option{x, true})
			}
		}
		if asked[i] {
			options[i] = append(options[i], option{s.Blank().Value[i], false})
		}
		if count *= len(options[i]); count > mostRows {
			return rows{}, false
		}
	}
	out := rows{Space: s}
	row := s.Blank()
	for n := range count {
		for i := range options {
			o := options[i][n%len(options[i])]
			row.Value[i], row.Recorded[i] = o.at, o.recorded
			n /= len(options[i])
		}
		c := s.NewCase()
		s.Work(c, row)
		if c.Truth[s.Applies] == cell.Yes {
			out.each = append(out.each, c)
		}
	}
	return out, true
}

// shown reports whether some row shows what a question asks for.
func (b rows) shown(v *prove.Verdict) bool {
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
	topic := slices.IndexFunc(b.Topics, func(t *cell.Topic) bool { return t.Name == v.Name })
	rule := slices.IndexFunc(b.Rules, func(r *cell.Rule) bool { return "rule."+r.Name == v.Name })
	return slices.ContainsFunc(b.each, func(c *cell.Case) bool {
		switch v.Kind {
		case prove.NeverApplies:
			return true
		case prove.NeverFires:
			return node(c, v.Name) == cell.Yes
		case prove.AlwaysSetAside:
			return c.Truth[b.Rules[rule].Force] == cell.Yes
		case prove.AlwaysTrue:
			return node(c, v.Name) != cell.Yes
		case prove.AlwaysFalse:
			return node(c, v.Name) != cell.No
		case prove.Hides:
			return node(c, v.Name) == cell.Yes && node(c, v.Other) != cell.Yes
		case prove.AddsNothing:
			return b.matters(c, rule)
		}
		spoken, prefers, decided := b.said(c, topic)
		if !decided {
			return false
		}
		switch d := b.Decide(topic, c); v.Kind {
		case prove.Contradiction:
			return d.Status == reason.Conflict
		case prove.Gap:
			return !spoken
		case prove.Tie:
			return spoken && d.Status == reason.IsOpen && prefers
		default:
			return spoken && d.Status == reason.IsOpen && !prefers
		}
	})
}

// said says whether a rule in force advises on a choice, whether one prefers, and whether all are known to be in force or
// not.
func (b rows) said(c *cell.Case, topic int) (spoken, prefers, decided bool) {
	decided = true
	for _, say := range b.Topics[topic].Says {
		force := c.Truth[say.Rule.Force]
		spoken = spoken || force == cell.Yes
		prefers = prefers || force == cell.Yes && !say.Advice.Verb.Limit()
		decided = decided && force != cell.Unknown
	}
	return
}

// matters reports whether a choice comes out otherwise without a rule.
func (b rows) matters(c *cell.Case, rule int) bool {
	force := make([]cell.Truth, len(b.Rules))
	for _, i := range b.Down {
		force[i] = c.Truth[b.Rules[i].Own]
		for _, o := range b.Rules[i].Overriders {
			force[i] = min(force[i], cell.Yes-force[o])
		}
		if i == rule {
			force[i] = cell.No
		}
	}
	for i := range b.Topics {
		var said []reason.Said
		decided := true
		for _, say := range b.Topics[i].Says {
			if f := force[say.Rule.Index]; f == cell.Yes {
				said = append(said, reason.Said{Rule: say.Rule.Index, Advice: say.Place, Value: say.Advice.At})
			} else if f == cell.Unknown {
				decided = false
			}
		}
		_, _, also := b.said(c, i)
		if decided && also && !b.Engine.Decide(b.Topics[i].Choice, said).Same(b.Decide(i, c)) {
			return true
		}
	}
	return false
}
