package whatif

import (
	"math"
	"math/bits"

	"crus/engine/cell"
	"crus/engine/reason"
)

// question is one result, a choice or a caution, with what it hangs on.
type question struct {
	s       *scene
	topic   *cell.Topic // nil of a caution
	caution int
	rows    []int
	roots   []form // what it hangs on: the truth of each rule, then the numbers that are open
	rules   int    // how many of the roots are rules
	says    []said
	said    []reason.Said // room
	kinds   []kind
	want    uint64 // the one option that matters, as a set; all other results are taken together. 0: all matter
	asks    bool   // it asks whether something open is recorded
}

// said is one piece of advice: of a rule in one row, or in any where it says the same in all.
type said struct {
	root  int // of the rule
	row   int
	say   *cell.Say
	at    float64 // of a number that is known
	value int     // the root of a number that is open; -1: none
	open  bool    // of a number: open measures with many values bear on it
}

// kind is one way in which a result can come out.
type kind struct {
	reason.Verdict
	stuck  bool // rules that bear on it can't be worked out
	varies bool // it hangs on a number that is not known
}

// choice asks about a choice, of one side or of the person.
func (s *scene) choice(t *cell.Topic, rows []int) *question {
	q := &question{s: s, topic: t, rows: rows}
	at := map[[2]int]int{}  // roots, by row (-1: any) and rule
	for i := range t.Says { // in the order of the rules, as Space.Decide has them
		say := &t.Says[i]
		alike := say.Advice.Term == nil || !say.Rule.Limb // in all rows
		f := no
		for _, row := range rows {
			r := s.rows[row]
			if r.Alone && say.Rule.Limb {
				continue
			}
			g := s.lift(row, say.Rule.Force)
			q.asks = q.asks || r.asks[say.Rule.Force] && (g != no || r.c.Truth[say.Rule.Force] != cell.No)
			if f = s.forms.or(f, g); !alike {
				q.add(at, [2]int{row, say.Rule.Index}, g, row, say)
			}
		}
		if alike {
			q.add(at, [2]int{-1, say.Rule.Index}, f, rows[0], say)
		}
	}
	q.rules = len(q.roots)
	for i := range q.says {
		if x := &q.says[i]; x.say.Advice.Term != nil && !x.say.Advice.Fixed {
			q.number(x)
		}
	}
	return q
}

// add adds a piece of advice with the root of its rule, unless that can't be in force.
func (q *question) add(at map[[2]int]int, k [2]int, f form, row int, say *cell.Say) {
	if f == no {
		return
	}
	root, ok := at[k]
	if !ok {
		root = len(q.roots)
		at[k], q.roots = root, append(q.roots, f)
	}
	q.says = append(q.says, said{root: root, row: row, say: say, at: say.Advice.At, value: -1})
}

// first lists the roots in the order in which their measures are looked at: limits, which decide most, first.
func (q *question) first() []form {
	limits := make([]bool, len(q.roots))
	for _, x := range q.says {
		limits[x.root] = limits[x.root] || x.say.Advice.Removes != 0
	}
	var out []form
	for _, limit := range []bool{true, false} {
		for i, f := range q.roots {
			if limits[i] == limit {
				out = append(out, f)
			}
		}
	}
	return out
}

// cautioned asks about a caution.
func (s *scene) cautioned(i, row int) *question {
	k := s.w.Cautions[i]
	q := &question{s: s, caution: i, rows: []int{row}, roots: []form{s.lift(row, k.Node)}}
	q.asks = s.rows[row].asks[k.Node]
	return q
}

// number works a number out, or leaves it open.
func (q *question) number(x *said) {
	s, t := q.s, x.say.Advice.Term
	r := s.rows[x.row]
	open := s.openOf(r, s.w.termInputs(t))
	if len(open) == 0 {
		x.at = math.NaN()
		if v := r.c.Of(t); !math.IsNaN(v) {
			x.at = reason.InUnit(v, q.topic.Choice)
		}
		return
	}
	inputs, few, many := []int{}, 1, false
	for _, axis := range open {
		v := s.variable(s.key(r, axis))
		inputs = append(inputs, v)
		many = many || !s.vars[v].few()
		few *= len(s.vars[v].cells)
	}
	if many || few > maxTree {
		x.open = true
		return
	}
	c := r.scratch(s.w)
	f := s.tree(inputs, values{}, func(set values) form {
		s.w.Work(c, s.rowWith(x.row, set))
		v := c.Of(t)
		if math.IsNaN(v) {
			return unknown
		}
		return s.forms.number(reason.InUnit(v, q.topic.Choice))
	})
	x.value = len(q.roots)
	q.roots = append(q.roots, f)
}

// truth gives the truth that a root is known to have; unknown where it is open.
func (q *question) truth(f form) cell.Truth {
	if f <= yes {
		return cell.Truth(f)
	}
	return cell.Unknown
}

// outcome gives the verdict with the truths of the rules as given. An open number has the value that lies so far from the
// low end of the choice's range to its high end.
func (q *question) outcome(truths []cell.Truth, roots []form, far float64) (v reason.Verdict, open, failed bool) {
	t := q.topic
	out := q.said[:0]
	for _, x := range q.says {
		if truths[x.root] != cell.Yes {
			continue
		}
		at := x.at
		switch {
		case x.open:
			open = true
			at = t.Between.Lo + far*(t.Between.Hi-t.Between.Lo)
		case x.value >= 0:
			if m := q.s.forms.list[roots[x.value]]; m.op == number {
				at = m.x
			} else {
				at = math.NaN()
			}
		}
		if math.IsNaN(at) {
			failed = true
			continue
		}
		out = append(out, reason.Said{Rule: x.say.Rule.Index, Advice: x.say.Place, Value: at})
	}
	q.said = out
	return q.s.w.Engine.Decide(t.Choice, out), open, failed
}

// maxFree is how many rules that are not known are combined freely to see whether a result is certain.
const maxFree = 4

// certain gives the kind of a result that comes out however what is still open does; false where that is not plain.
func (q *question) certain(roots []form) (int, bool) {
	if q.topic == nil {
		if roots[0] > yes {
			return 0, false
		}
		return q.kind(kind{Verdict: cautionVerdict(cell.Truth(roots[0])), stuck: roots[0] == unknown}), true
	}
	var room [64]cell.Truth
	truths := room[:0]
	var free []int
	open, stuck := false, false
	for i := range q.rules {
		f := roots[i]
		truths = append(truths, q.truth(f))
		if f == unknown || f > yes {
			free = append(free, i)
			open = open || f > yes
			stuck = stuck || f == unknown
		}
	}
	for i := q.rules; i < len(roots); i++ {
		if !q.s.forms.fixed(roots[i]) && q.counts(truths, i) {
			return 0, false
		}
	}
	if q.want != 0 && q.hopeless(truths) {
		return q.kind(kind{}), true
	}
	if len(free) > maxFree {
		if !q.topic.Numeric() {
			if v, ok := q.bounded(truths); ok {
				return q.kind(kind{Verdict: v}), true
			}
		}
		if open {
			return 0, false
		}
		v, _, _ := q.outcome(truths, roots, middle)
		return q.kind(kind{Verdict: v, stuck: true}), true
	}
	var first reason.Verdict
	ok, varies := true, false
	for b := range 1 << len(free) {
		for i, r := range free {
			truths[r] = truthOf(b>>i&1 == 1)
		}
		for i, far := range [...]float64{0, 1, -1e6, 1e6} {
			v, number, failed := q.outcome(truths, roots, far)
			switch {
			case b == 0 && i == 0:
				first = v
			case !v.Same(first):
				ok = false
			}
			ok, stuck, varies = ok && !failed, stuck || failed, varies || number
			if !number {
				break
			}
		}
	}
	switch {
	case ok:
		return q.kind(kind{Verdict: first}), true
	case open:
		return 0, false
	}
	for _, r := range free {
		truths[r] = cell.Unknown
	}
	v, _, _ := q.outcome(truths, roots, middle)
	return q.kind(kind{Verdict: v, stuck: stuck, varies: varies}), true
}

// middle is half the way through a choice's range.
const middle = 0.5

// counts reports whether the number of a root is one of a rule that may be in force.
func (q *question) counts(truths []cell.Truth, root int) bool {
	for _, x := range q.says {
		if x.value == root && truths[x.root] != cell.No {
			return true
		}
	}
	return false
}

func cautionVerdict(t cell.Truth) reason.Verdict {
	return reason.Verdict{Status: [...]string{reason.DidNotFire, reason.Pending, reason.Fired}[t]}
}

// weight counts the rules that favour an option.
type weight struct{ strong, conditional int }

func (w weight) above(x weight) bool {
	return w.strong > x.strong || w.strong == x.strong && w.conditional > x.conditional
}

// bounded gives the option that is ahead of all others however the rules that are not known come out.
func (q *question) bounded(truths []cell.Truth) (reason.Verdict, bool) {
	var gone, may uint64
	var low, high [64]weight
	for _, x := range q.says {
		t := truths[x.root]
		if t == cell.No {
			continue
		}
		may |= x.say.Advice.Removes
		if t == cell.Yes {
			gone |= x.say.Advice.Removes
		}
		for m := x.say.Advice.Favours; m != 0; m &= m - 1 {
			i := bits.TrailingZeros64(m)
			add(&high[i], x.say.Rule.Strength)
			if t == cell.Yes {
				add(&low[i], x.say.Rule.Strength)
			}
		}
	}
	left := uint64(0)
	for i := range q.topic.Options {
		if gone>>i&1 == 0 {
			left |= 1 << i
		}
	}
	if left == 0 {
		return reason.Verdict{Status: reason.Conflict}, true
	}
	for i := range q.topic.Options {
		if may>>i&1 == 1 {
			continue
		}
		ahead := low[i] != weight{}
		for j := range q.topic.Options {
			ahead = ahead && (j == i || left>>j&1 == 0 || low[i].above(high[j]))
		}
		if ahead {
			return reason.Verdict{Status: reason.Settled, Mask: 1 << i}, true
		}
	}
	return reason.Verdict{}, false
}

// hopeless reports whether the wanted option can't be picked any more: it is gone, or another that stays is ahead of it,
// however the rules that are not known come out.
func (q *question) hopeless(truths []cell.Truth) bool {
	var gone, may uint64
	var low [64]weight
	var high weight
	spoke := false
	for _, x := range q.says {
		t := truths[x.root]
		if t == cell.No {
			continue
		}
		spoke = true
		may |= x.say.Advice.Removes
		if t == cell.Yes {
			gone |= x.say.Advice.Removes
		}
		if x.say.Advice.Favours&q.want != 0 {
			add(&high, x.say.Rule.Strength)
		}
		if t == cell.Yes {
			for m := x.say.Advice.Favours; m != 0; m &= m - 1 {
				add(&low[bits.TrailingZeros64(m)], x.say.Rule.Strength)
			}
		}
	}
	if gone&q.want != 0 || !spoke && q.topic.Silent.Mask != q.want {
		return true
	}
	for i := range q.topic.Options {
		if may>>i&1 == 0 && q.want>>i&1 == 0 && !high.above(low[i]) {
			return q.spoken(truths)
		}
	}
	return false
}

// spoken reports whether some rule is known to speak, so that no default stands.
func (q *question) spoken(truths []cell.Truth) bool {
	for _, x := range q.says {
		if truths[x.root] == cell.Yes {
			return true
		}
	}
	return false
}

// kind numbers the ways in which a result can come out.
func (q *question) kind(k kind) int {
	if q.want != 0 && (k.Mask != q.want || k.Status != reason.Settled && k.Status != reason.Default) {
		k = kind{Verdict: reason.Verdict{Status: "other"}}
	}
	for i, x := range q.kinds {
		if x.stuck == k.stuck && x.varies == k.varies && x.Same(k.Verdict) {
			return i
		}
	}
	q.kinds = append(q.kinds, k)
	return len(q.kinds) - 1
}
