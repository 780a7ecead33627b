package whatif

import (
	"fmt"
	"slices"
	"strings"

	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// standing is what became of a result, as far as a value within measurement error could change it: of a number, its
// smooth drift with what it is worked out from is left out of account.
type standing struct {
	reason.Verdict
	by string // of a number: the rules that decide
}

// changed reports whether another standing is another result.
func (x standing) changed(y standing, numeric bool) bool {
	if x.Same(y.Verdict) {
		return false
	}
	kind := func(s string) string {
		if s == reason.Default {
			return reason.Settled
		}
		return s
	}
	return !numeric || kind(x.Status) != kind(y.Status) || x.by != y.by
}

// result is one result of the person or a limb.
type result struct {
	name    string
	row     int // of the person or the limb under which it stands
	topic   *cell.Topic
	caution int   // scope: whether the ruleset applies at all
	rows    []int // that it looks at
	agreed  bool  // it stands whatever is missing, and other than the rules in force say
	now     standing
	choice  *reason.Choice
	shown   *reason.Caution
}

// scope stands for the result that the ruleset applies.
const scope = -1

// node gives the node of a result that is no choice.
func (s *scene) node(x *result) int {
	if x.caution == scope {
		return s.w.Applies
	}
	return s.w.Cautions[x.caution].Node
}

// near looks, for every recorded measure with a stated error, one at a time, for values within that error that would
// change a result.
func (s *scene) near(o *reason.Outcome) {
	all := results(o)
	rs := s.results(o)
	for _, x := range rs {
		switch f := false; {
		case x.choice != nil:
			x.choice.NearBoundary = &f
		case x.shown != nil:
			x.shown.NearBoundary = &f
		}
	}
	var left []string
	seen := map[key]bool{}
	for i, r := range s.rows {
		for _, a := range s.w.Axes[:s.w.Measures] {
			if r.side == "" && a.Limb || !r.Recorded[a.Index] {
				continue
			}
			k := s.key(s.rows[i], a.Index)
			if seen[k] {
				continue
			}
			seen[k] = true
			switch k.measure.Kind {
			case vocab.Quantity, vocab.Grade, vocab.Count:
				if k.measure.Error > 0 {
					s.around(k, rs, all)
				} else {
					o.NotLooked = append(o.NotLooked, path(k, ""))
					left = append(left, label(k, ""))
				}
			}
		}
	}
	for _, r := range all {
		slices.SortStableFunc(r.Boundaries, func(a, b *reason.Near) int { return strings.Compare(a.Result, b.Result) })
	}
	o.Notices = slices.DeleteFunc(o.Notices, func(n string) bool { return n == reason.BoundaryNotice })
	if left != nil {
		o.Notices = append(o.Notices, "Not looked at for closeness to a boundary, because no measurement error is stated: "+someOf(left)+".")
	}
}

// maxNamed is how many measures a notice names.
const maxNamed = 6

// someOf lists the first few of many.
func someOf(items []string) string {
	if len(items) <= maxNamed+1 {
		return strings.Join(items, "; ")
	}
	return strings.Join(items[:maxNamed], "; ") + fmt.Sprintf("; and %d more", len(items)-maxNamed)
}

// results lists all results with what became of them.
func (s *scene) results(o *reason.Outcome) (out []*result) {
	all := results(o)
	out = []*result{{name: "applies", caution: scope, rows: []int{0}}}
	out[0].now = s.standing(out[0], s.cases(out[0].rows))
	for i, r := range s.rows {
		for _, t := range s.w.Topics {
			if c := all[r.side].Choices[t.Name]; c != nil {
				x := &result{name: t.Name, row: i, topic: t, rows: s.on(r.side, t), choice: c, agreed: c.Whatever}
				x.now = s.standing(x, s.cases(x.rows))
				if x.agreed {
					now, ok := s.agreed(x, x.now)
					if !ok || !matches(x.choice, now) {
						continue // it is not known why it stands
					}
					x.now = now
				}
				out = append(out, x)
			}
		}
		for j, k := range s.w.Cautions {
			if k.Limb != (r.side != "") {
				continue
			}
			x := &result{name: "caution." + k.Name, row: i, caution: j, rows: []int{i}}
			x.now = s.standing(x, s.cases(x.rows))
			for _, c := range all[r.side].Cautions {
				if c.Name == k.Name {
					x.shown = c
				}
			}
			if x.now.Status == reason.Pending && (x.shown == nil || x.shown.State == reason.Fired) { // whatever is missing
				x.agreed = true
				x.now.Status = reason.DidNotFire
				if x.shown != nil {
					x.now.Status = reason.Fired
				}
			}
			out = append(out, x)
		}
	}
	return out
}

// matches reports whether a choice is shown as it stands.
func matches(c *reason.Choice, x standing) bool {
	at, number := c.Value.(float64)
	return c.Status == x.Status && (!number || at == x.Lo)
}

func (s *scene) cases(rows []int) (out []*cell.Case) {
	for _, i := range rows {
		out = append(out, s.rows[i].c)
	}
	return out
}

// standing says what became of a result.
func (s *scene) standing(x *result, cases []*cell.Case) standing {
	switch {
	case x.caution == scope:
		return standing{Verdict: reason.Verdict{Status: [...]string{"no", "unknown", "yes"}[cases[0].Truth[s.w.Applies]]}}
	case x.topic == nil:
		return standing{Verdict: cautionVerdict(cases[0].Truth[s.node(x)])}
	}
	out := standing{Verdict: s.w.Decide(x.topic.Index, cases...)}
	if x.topic.Numeric() {
		var by [3][]string // strong aims, conditional aims, limits
		for _, say := range x.topic.Says {
			for i, c := range cases {
				if c.Truth[say.Rule.Force] != cell.Yes || c.Alone && say.Rule.Limb {
					continue
				}
				at := 2
				if say.Advice.Verb == ruleset.Aim {
					at = 0
					if say.Rule.Strength == ruleset.Conditional {
						at = 1
					}
				}
				name := say.Rule.Name
				if say.Advice.Term != nil && say.Rule.Limb {
					name += fmt.Sprint(" ", i)
				}
				if !slices.Contains(by[at], name) {
					by[at] = append(by[at], name)
				}
			}
		}
		for _, names := range by {
			if names != nil {
				out.by = strings.Join(names, ", ")
				break
			}
		}
	}
	return out
}

// agreed says what a result comes to whatever is missing, or what it is now where that is not so; false where neither is
// known.
func (s *scene) agreed(x *result, now standing) (standing, bool) {
	if s.rows[0].c.Truth[s.w.Applies] == cell.Unknown { // all is provisional
		return now, false
	}
	s.leave(completing, s.missing)
	var q *question
	if x.topic != nil {
		q = s.choice(x.topic, x.rows)
	} else {
		q = s.cautioned(x.caution, x.rows[0])
	}
	f := q.settle(now.Verdict)
	if f.agreed != nil {
		q.with(f.agreed)
		var cases []*cell.Case
		for _, i := range x.rows {
			cases = append(cases, s.rows[i].spare(s.w))
		}
		return s.standing(x, cases), true
	}
	if x.topic != nil && !q.asks && (!f.settled || f.provisional) {
		if v, ok := s.freely(x.topic, x.rows); ok {
			now.Verdict = v
			return now, true
		}
	}
	return now, f.settled
}
