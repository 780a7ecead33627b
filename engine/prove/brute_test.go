package prove_test

import (
	"context"
	"math"
	"math/rand/v2"
	"testing"

	"crus/engine/cell"
	"crus/engine/cell/celltest"
	"crus/engine/clause"
	"crus/engine/prove"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// tried is what trying all assessments has shown of a ruleset: the names of what happened, by kind. It knows nothing of
// clauses; what is in force is worked out rule by rule.
type tried struct {
	*cell.Space
	frame *clause.Frame
	saw   map[string]bool
}

const maxTried = 60_000

// try goes through every combination of cells of so many rows; false where there are too many.
func (x *tried) try(rows int, look func(cs []*cell.Case)) bool {
	lines := x.frame.Lines(rows)
	values := make([][]float64, len(lines))
	all := 1
	for i, l := range lines {
		for c := range l.Count() {
			v, ok := l.Value(c)
			if !ok {
				continue
			}
			values[i] = append(values[i], v)
		}
		if l.Missing {
			values[i] = append(values[i], math.NaN())
		}
		if all *= len(values[i]); all > maxTried {
			return false
		}
	}
	cs := []*cell.Case{x.NewCase(), x.NewCase()}[:rows]
	row := x.Blank()
	for k := range all {
		at, rest := make([]float64, len(lines)), k
		for i, v := range values {
			at[i], rest = v[rest%len(v)], rest/len(v)
		}
		for r := range rows {
			for axis := range x.Measures {
				v := at[x.frame.Line(rows, r, axis)]
				row.Value[axis], row.Recorded[axis] = v, v == v
			}
			x.Work(cs[r], row)
		}
		if cs[0].Truth[x.Applies] == cell.Yes {
			look(cs)
		}
	}
	return true
}

// force gives the truth of a rule being in force, with one rule left out (-1: none).
func (x *tried) force(c *cell.Case, rule, without int) cell.Truth {
	if rule == without {
		return cell.No
	}
	r := x.Rules[rule]
	t := c.Truth[r.Own]
	for _, o := range r.Overriders {
		t = min(t, cell.Yes-x.force(c, o, without))
	}
	return t
}

func (x *tried) decide(t *cell.Topic, cs []*cell.Case, without int) (v reason.Verdict, stands, prefers bool) {
	var said []reason.Said
	known, recorded := true, true
	var favours uint64
	for _, s := range t.Says {
		for i, c := range cs {
			f := x.force(c, s.Rule.Index, without)
			known = known && f != cell.Unknown
			if f != cell.Yes || i == 1 && (s.Advice.Term == nil || !s.Rule.Limb) && x.force(cs[0], s.Rule.Index, without) == cell.Yes {
				continue
			}
			at := s.Advice.At
			if s.Advice.Term != nil && !s.Advice.Fixed {
				y := c.Of(s.Advice.Term)
				if math.IsNaN(y) {
					continue
				}
				at = reason.InUnit(y, t.Choice)
			}
			said = append(said, reason.Said{Rule: s.Rule.Index, Advice: s.Place, Value: at})
			favours |= s.Advice.Favours
			prefers = prefers || s.Advice.Verb == ruleset.Aim
		}
	}
	for _, c := range cs {
		for _, axis := range t.Reads {
			recorded = recorded && c.Recorded[axis]
		}
	}
	v = x.Engine.Decide(t.Choice, said)
	return v, known || recorded, prefers || favours&v.Mask != 0
}

func (x *tried) choice(t *cell.Topic, cs []*cell.Case) {
	v, stands, prefers := x.decide(t, cs, -1)
	if stands {
		switch {
		case v.Status == reason.Conflict:
			x.saw["contradiction "+t.Name] = true
		case v.Status == reason.Unanswered:
			x.saw["gap "+t.Name] = true
		case v.Status == reason.IsOpen && prefers:
			x.saw["tie "+t.Name] = true
		case v.Status == reason.IsOpen:
			x.saw["open_without_preference "+t.Name] = true
		}
	}
	for _, r := range x.Rules {
		if w, _, _ := x.decide(t, cs, r.Index); !w.Same(v) {
			x.saw["matters rule."+r.Name] = true
		}
	}
}

// one notes what one row shows.
func (x *tried) one(cs []*cell.Case) {
	x.saw["applies"] = true
	c := cs[0]
	for i, r := range x.Rules {
		if c.Truth[r.Own] == cell.Yes {
			x.saw["own rule."+r.Name] = true
		}
		if x.force(c, i, -1) == cell.Yes {
			x.saw["set rule."+r.Name] = true
		}
	}
	for _, f := range x.Facts {
		if f.Term == nil {
			x.saw["is "+f.Path()] = x.saw["is "+f.Path()] || c.Truth[f.Node] == cell.Yes
			x.saw["is not "+f.Path()] = x.saw["is not "+f.Path()] || c.Truth[f.Node] == cell.No
		}
	}
	for _, y := range x.Cautions {
		if c.Truth[y.Node] == cell.Yes {
			x.saw["own caution."+y.Name] = true
			for _, z := range x.Cautions {
				if c.Truth[z.Node] != cell.Yes {
					x.saw["apart caution."+y.Name+" caution."+z.Name] = true
				}
			}
		}
	}
	for _, topic := range x.Topics {
		x.choice(topic, cs)
	}
}

// both notes what both limbs show of the choices of the person.
func (x *tried) both(cs []*cell.Case) {
	for _, topic := range x.Topics {
		if topic.Of == vocab.Person {
			x.choice(topic, cs)
		}
	}
}

// pooled reports whether a choice of the person depends on both limbs.
func (x *tried) pooled() bool {
	for _, topic := range x.Topics {
		for _, say := range topic.Says {
			if say.Rule.Limb && topic.Of == vocab.Person {
				return true
			}
		}
	}
	return false
}

// found says whether a verdict should be found, if what was seen is all there is; so: it is one of something that never
// happens.
func (x *tried) found(v *prove.Verdict) (want, never bool) {
	switch v.Kind {
	case prove.NeverApplies:
		return !x.saw["applies"], true
	case prove.NeverFires:
		return !x.saw["own "+v.Name], true
	case prove.AlwaysSetAside:
		return !x.saw["set "+v.Name], true
	case prove.AlwaysTrue:
		return !x.saw["is not "+v.Name] && x.saw["is "+v.Name], true
	case prove.AlwaysFalse:
		return !x.saw["is "+v.Name], true
	case prove.AddsNothing:
		return !x.saw["matters "+v.Name], true
	case prove.Hides:
		return v.Status == prove.Found && !x.saw["apart "+v.Name+" "+v.Other], true
	}
	return x.saw[string(v.Kind)+" "+v.Name], false
}

// count counts verdicts by kind and status.
type count map[prove.Kind]map[prove.Status]int

func (c count) add(v *prove.Verdict) {
	if c[v.Kind] == nil {
		c[v.Kind] = map[prove.Status]int{}
	}
	c[v.Kind][v.Status]++
}

func spaceOf(t *testing.T, sample *celltest.Sample) *tried {
	t.Helper()
	s, err := cell.New(sample.Engine(t))
	if err != nil {
		t.Fatal(err)
	}
	return &tried{Space: s, frame: clause.New(s), saw: map[string]bool{}}
}

// Where everything has few cells, trying every assessment gives the verdicts that are proved.
func TestVerdictsAgreeWithTryingEverything(t *testing.T) {
	size := celltest.Small().Without(celltest.Linear | celltest.Piecewise | celltest.Pairs | celltest.Computed | celltest.Biomech | celltest.Failing | celltest.Opaque)
	size.Measures, size.Rules = 4, 6
	rulesets, verdicts := 0, count{}
	for seed := uint64(0); seed < 400 && rulesets < 100; seed++ {
		sample := celltest.Draw(celltest.Seeded(seed), size)
		x := spaceOf(t, sample)
		if !x.try(1, x.one) || x.pooled() && !x.try(2, x.both) {
			continue
		}
		rulesets++
		for _, v := range prove.Prove(context.Background(), x.Space, prove.Options{}).Verdicts {
			if want, _ := x.found(v); (v.Status == prove.Found) != want || v.Status == prove.Undecided {
				t.Fatalf("seed %d: %s %s: %s, but trying says %v (%v)\n%s", seed, v.Kind, v.Name, v.Status, want, v.Rests, sample)
			}
			verdicts.add(v)
		}
	}
	t.Log(rulesets, verdicts)
	for _, k := range prove.Kinds()[1:] {
		if verdicts[k][prove.Found] == 0 || verdicts[k][prove.Absent] == 0 {
			t.Errorf("%s was not both found and excluded: %v", k, verdicts[k])
		}
	}
}

// With every construct, no drawn assessment speaks against a verdict.
func TestNoAssessmentSpeaksAgainstAVerdict(t *testing.T) {
	verdicts := count{}
	dice := rand.New(rand.NewPCG(3, 4))
	for seed := range uint64(120) {
		size := celltest.Small()
		if seed%2 == 0 {
			size = size.Plain()
		}
		sample := celltest.Draw(celltest.Seeded(seed), size)
		x := spaceOf(t, sample)
		lines := x.frame.Lines(2)
		cs := []*cell.Case{x.NewCase(), x.NewCase()}
		row := x.Blank()
		for range 400 {
			at := make([]float64, len(lines))
			for i, l := range lines {
				for {
					v, ok := l.Value(dice.IntN(l.Count()))
					if s, numbers := l.Plausible(l.Cell(v)); ok && numbers && dice.IntN(2) == 0 && l.Step() == 0 {
						v = s.Lo + (s.Hi-s.Lo)*dice.Float64()
					}
					if at[i] = v; ok && v == v {
						break
					}
				}
				if l.Missing && dice.IntN(4) == 0 {
					at[i] = math.NaN()
				}
			}
			for r := range cs {
				for axis := range x.Measures {
					v := at[x.frame.Line(2, r, axis)]
					row.Value[axis], row.Recorded[axis] = v, v == v
				}
				x.Work(cs[r], row)
			}
			if cs[0].Truth[x.Applies] == cell.Yes {
				x.one(cs[:1])
				x.one(cs[1:])
				x.both(cs)
			}
		}
		for _, v := range prove.Prove(context.Background(), x.Space, prove.Options{}).Verdicts {
			want, never := x.found(v)
			if never && v.Status == prove.Found && !want || !never && v.Status == prove.Absent && want {
				t.Fatalf("seed %d: %s %s: %s, but an assessment speaks against it (%v)\n%s", seed, v.Kind, v.Name, v.Status, v.Other, sample)
			}
			verdicts.add(v)
			if v.Status == prove.Undecided && len(v.Rests) == 0 {
				t.Errorf("seed %d: %s %s is undecided without a reason", seed, v.Kind, v.Name)
			}
		}
	}
	t.Log(verdicts)
}
