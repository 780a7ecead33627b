package whatif

import (
	"math/bits"
	"time"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/clinical"
	"crus/engine/reason"
	"crus/engine/vocab"
)

// Advise carries the ruleset out on an assessment as reason.Engine.Advise does, settles what that leaves open of
// provisional results, and says what lies close to a boundary.
func (w *Advisor) Advise(a *assess.Assessment, today time.Time) *reason.Outcome {
	o := w.Engine.Advise(a, today)
	w.Refine(o, a, today)
	return o
}

// Refine does that to an outcome of the same assessment and day.
func (w *Advisor) Refine(o *reason.Outcome, a *assess.Assessment, today time.Time) {
	if o.Person == nil {
		return
	}
	s := w.newScene(a)
	if unsettled(o) {
		s.settle(o, today)
	}
	s.near(o)
}

// Settle settles what an outcome of the same assessment and day leaves open of provisional results, and looks for no
// boundaries.
func (w *Advisor) Settle(o *reason.Outcome, a *assess.Assessment, today time.Time) {
	if o.Person != nil && unsettled(o) {
		w.newScene(a).settle(o, today)
	}
}

// results gives the parts of an outcome by side.
func results(o *reason.Outcome) map[assess.Side]*reason.Result {
	out := map[assess.Side]*reason.Result{"": o.Person}
	for side, r := range o.Limbs {
		out[assess.Side(side)] = r
	}
	return out
}

// unsettled reports whether reason left anything open that was to be tried.
func unsettled(o *reason.Outcome) bool {
	for _, r := range results(o) {
		for _, c := range r.Choices {
			if c.Provisional && c.Explored != nil && !c.Explored.Complete {
				return true
			}
		}
		for _, c := range r.Cautions {
			if c.Provisional && c.Explored != nil && !c.Explored.Complete {
				return true
			}
		}
	}
	return false
}

// settle looks at every provisional result again, replaces what was left open, and ranks the missing measures anew.
func (s *scene) settle(o *reason.Outcome, today time.Time) {
	s.leave(completing, s.missing)
	all := results(o)
	matter := map[key]bool{}
	checks := &checker{s: s, today: today}
	for _, row := range s.rows {
		r := all[row.side]
		rank := &ranking{s: s, side: row.side, by: map[key]*ranked{}}
		for _, t := range s.w.Topics {
			if c := r.Choices[t.Name]; c != nil && c.Provisional && c.Explored != nil {
				rank.note(t.Name, reason.ChoiceWeight(t.Choice), s.settleChoice(o, row, t, c, checks))
			}
		}
		left := r.Cautions[:0]
		for _, c := range r.Cautions {
			if c.Provisional && c.Explored != nil {
				f := s.settleCaution(o, row, c)
				rank.note("caution."+c.Name, reason.CautionWeight(c.Level), f)
				if !f.provisional && c.State != reason.Fired { // it stays silent, even where it is not known whether the ruleset applies
					r.Traces["caution."+c.Name] = c.Trace
					continue
				}
			}
			left = append(left, c)
		}
		r.Cautions = left
		for k := range rank.by {
			matter[k] = true
		}
		r.Missing = rank.list()
	}
	for _, row := range s.rows {
		all[row.side].Immaterial = s.immaterial(row.side, matter)
	}
}

// settleChoice settles one provisional choice.
func (s *scene) settleChoice(o *reason.Outcome, row *row, t *cell.Topic, c *reason.Choice, checks *checker) found {
	rows := s.on(row.side, t)
	q := s.choice(t, rows)
	var cases []*cell.Case
	for _, i := range rows {
		cases = append(cases, s.rows[i].c)
	}
	base := s.w.Decide(t.Index, cases...)
	f := q.settle(base)
	if c.Explored.Complete || !f.settled {
		if !c.Explored.Complete {
			c.Explored.Open = f.open
			if c.CouldBecome == nil {
				c.CouldBecome = s.could(f.could, row.side, func(v reason.Verdict) (string, any) { return v.Status, valueOf(t.Choice, v) })
			}
		}
		f.provisional = true
		return f
	}
	if f.agreed != nil {
		done := checks.choice(f.agreed, row.side, t.Name)
		if done == nil || done.Provisional { // not confirmed
			f.provisional = true
			return f
		}
		because, consider := c.Because, c.Consider
		*c = *done
		c.Because, c.Consider = because, consider
		c.Whatever, c.Explored, c.CouldBecome, c.Failed = true, nil, nil, nil
		c.Provisional = o.Applies == "unknown"
		return f
	}
	c.Provisional = f.provisional || o.Applies == "unknown"
	c.Explored, c.CouldBecome = f.explored, s.could(f.could, row.side, func(v reason.Verdict) (string, any) { return v.Status, valueOf(t.Choice, v) })
	if !f.provisional {
		c.Failed = nil
	}
	return f
}

// settleCaution settles one provisional caution.
func (s *scene) settleCaution(o *reason.Outcome, row *row, c *reason.Caution) found {
	i := 0
	for s.w.Cautions[i].Name != c.Name {
		i++
	}
	rows := s.on(row.side, nil)
	q := s.cautioned(i, rows[0])
	base := cautionVerdict(s.rows[rows[0]].c.Truth[s.w.Cautions[i].Node])
	f := q.settle(base)
	if c.Explored.Complete || !f.settled {
		if !c.Explored.Complete {
			c.Explored.Open = f.open
			if c.CouldBecome == nil {
				c.CouldBecome = s.could(f.could, row.side, func(v reason.Verdict) (string, any) { return v.Status, nil })
			}
		}
		f.provisional = true
		return f
	}
	c.Provisional = f.provisional || o.Applies == "unknown"
	c.Explored, c.CouldBecome = f.explored, s.could(f.could, row.side, func(v reason.Verdict) (string, any) { return v.Status, nil })
	if f.agreed != nil {
		c.WaitsFor = []string{}
		c.State = reason.DidNotFire
		if q.with(f.agreed).Status == reason.Fired {
			c.State = reason.Fired
		}
	}
	return f
}

// valueOf gives what a verdict would be: the value, the level options, or the range.
func valueOf(c *vocab.Choice, v reason.Verdict) any {
	options := func() []string {
		var out []string
		for m := v.Mask; m != 0; m &= m - 1 {
			out = append(out, c.Options[bits.TrailingZeros64(m)])
		}
		return out
	}
	switch {
	case v.Status == reason.IsOpen && c.Numeric():
		return [2]float64{v.Lo, v.Hi}
	case v.Status == reason.IsOpen:
		return options()
	case v.Status != reason.Settled && v.Status != reason.Default:
		return nil
	case c.Numeric():
		return v.Lo
	}
	return options()[0]
}

// checker has package reason carry the ruleset out on completions.
type checker struct {
	s     *scene
	today time.Time
}

// choice gives a choice with everything that is missing recorded as some values say; nil where that can't be written.
func (c *checker) choice(set values, side assess.Side, name string) *reason.Choice {
	o := c.s.advise(set, c.today)
	if o == nil || o.Person == nil {
		return nil
	}
	return results(o)[side].Choices[name]
}

// complete gives values for all that is missing, besides those of set.
func (s *scene) complete(set values) values {
	out := values{}
	for _, r := range s.rows {
		for _, a := range s.w.Axes[:s.w.Measures] {
			if r.side == "" && a.Limb {
				continue
			}
			k := s.key(r, a.Index)
			if p, ok := set[k]; ok {
				out[k] = p
			} else if s.missing(k) {
				for i := range a.Count() {
					if x, ok := a.Value(i); ok {
						out[k] = place{x, true, i}
						break
					}
				}
			}
		}
	}
	return out
}

// advise carries the ruleset out with everything that is missing recorded; nil where a date has no day to be seen from.
func (s *scene) advise(set values, today time.Time) *reason.Outcome {
	a := s.changed(s.complete(set))
	if a == nil {
		return nil
	}
	return s.w.Engine.Advise(a, today)
}

// changed gives the assessment with some measures recorded as given; nil where a date has no day to be seen from.
func (s *scene) changed(set values) *assess.Assessment {
	rows := map[assess.Side]cell.Row{}
	for _, r := range s.rows {
		row := s.w.Blank()
		for axis, a := range s.w.Axes[:s.w.Measures] {
			if p, ok := set[s.key(r, axis)]; ok && !(r.side == "" && a.Limb) {
				row.Value[axis], row.Recorded[axis] = p.value, p.recorded
			}
		}
		rows[r.side] = row
	}
	day := s.a.Date
	if _, err := clinical.ParseDate(day); err != nil {
		for k := range set {
			if k.measure.Kind == vocab.Date {
				return nil
			}
		}
		day = "2000-01-01"
	}
	b, err := s.w.Assessment(s.a.ID, day, rows)
	if err != nil {
		return nil
	}
	out := *s.a
	out.Person, out.Left, out.Right = over(s.a.Person, b.Person, set, ""), over(s.a.Left, b.Left, set, assess.Left), over(s.a.Right, b.Right, set, assess.Right)
	return &out
}

// over puts the entries of changed measures over the old ones.
func over(old, changed map[string]*assess.Entry, set values, side assess.Side) map[string]*assess.Entry {
	out := map[string]*assess.Entry{}
	for name, e := range old {
		out[name] = e
	}
	for k := range set {
		if k.side == side {
			delete(out, k.measure.Name)
			if e := changed[k.measure.Name]; e != nil {
				out[k.measure.Name] = e
			}
		}
	}
	return out
}
