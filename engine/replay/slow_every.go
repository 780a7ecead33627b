package replay

import (
	"math"

	"crus/engine/reason"
)

// join puts the values of a variable into classes: those together that make no difference to any table.
func (s *slowRow) join(i int) {
	v := &s.vars[i]
	v.class, v.pick = make([]int, len(v.values)), nil
	for k := range v.values {
		v.class[k] = -1
		for c, f := range v.pick {
			if s.same(i, k, f) {
				v.class[k] = c
				break
			}
		}
		if v.class[k] < 0 {
			v.class[k] = len(v.pick)
			v.pick = append(v.pick, k)
		}
	}
}

// same reports whether two values of a variable give the same entries in every table.
func (s *slowRow) same(i, a, b int) bool {
	for _, t := range s.tables {
		stride := 1
		for d := len(t.looks) - 1; d >= 0; d-- {
			l := t.looks[d]
			if l.v == i && l.part[a] != l.part[b] && !t.same(l.part[a], l.part[b], stride, len(l.first)) {
				return false
			}
			stride *= len(l.first)
		}
	}
	return true
}

func (t *table) same(a, b, stride, size int) bool {
	n := max(len(t.holds), len(t.number))
	for from := 0; from < n; from += stride * size {
		for k := range stride {
			x, y := from+a*stride+k, from+b*stride+k
			if t.holds != nil && t.holds[x] != t.holds[y] || t.number != nil && t.number[x] != t.number[y] {
				return false
			}
		}
	}
	return true
}

// entry gives the place in a table of the completion with a number.
func (s *slowRow) entry(t *table, number int) int {
	at := 0
	for _, l := range t.looks {
		v := &s.vars[l.v]
		at = at*len(l.first) + l.part[v.pick[number/v.every%len(v.pick)]]
	}
	return at
}

// every goes through all completions.
func (s *slowRow) every(b *Block) ended {
	if s.x.topic == nil {
		return s.everyOfCaution()
	}
	if s.computed() {
		var first reason.Verdict
		for k := range s.search.total {
			v := s.decided(func(i int) bool { return s.tables[i].holds[s.entry(s.tables[i], k)] },
				func(t *table) float64 { return t.number[s.entry(t, k)] })
			if k == 0 {
				first = v
			} else if !v.Same(first) {
				return ended{several: true}
			}
		}
		return ended{verdict: first}
	}
	t := s.x.trial
	if s.n == 2 {
		t = s.x.trialPair
	}
	s.loosen(s.x, t, b, s.row) // finds the rules in the order of the tables
	return s.through(s.x, t, func(i, from int, to []uint64) {
		clear(to)
		for k := range min(64*len(to), s.search.total-from) {
			if s.tables[i].holds[s.entry(s.tables[i], from+k)] {
				to[k/64] |= 1 << (k % 64)
			}
		}
	})
}

func (s *slowRow) everyOfCaution() ended {
	t := s.tables[0]
	for _, h := range t.holds {
		if h != t.holds[0] {
			return ended{several: true}
		}
	}
	if t.holds[0] {
		return ended{verdict: reason.Verdict{Status: reason.Fired}}
	}
	return ended{verdict: reason.Verdict{Status: reason.DidNotFire}}
}

// computed reports whether a number that is worked out from measures may count on the row.
func (s *slowRow) computed() bool { return s.x.computed >= 0 && bit(s.of(s.x.computed), s.row) }

// leave leaves the rules that completing may change free to hold or not.
func (s *slowRow) leave(b *Block) ended {
	switch {
	case s.x.topic == nil || len(s.tables) > s.rules || s.rules > maxFree: // a number that is not known can be any
		return ended{several: true}
	case !s.computed():
		t := s.x.trial
		if s.n == 2 {
			t = s.x.trialPair
		}
		s.loosen(s.x, t, b, s.row)
		return s.leaveFree(s.x, t)
	}
	var first reason.Verdict
	for bits := range 1 << s.rules {
		v := s.decided(func(i int) bool { return bits>>i&1 == 1 }, nil)
		if bits == 0 {
			first = v
		} else if !v.Same(first) {
			return ended{several: true}
		}
	}
	return ended{verdict: first}
}

// decided gives the verdict where some of the rules that completing may change hold, and the numbers that it may change
// are known.
func (s *slowRow) decided(holds func(table int) bool, number func(t *table) float64) reason.Verdict {
	var force [2]map[int]bool
	for i := range s.n {
		force[i] = map[int]bool{}
		for _, r := range s.x.bears {
			rule := s.p.space.Rules[r]
			if i == 1 && !rule.Limb {
				force[1][r] = force[0][r]
				continue
			}
			own := s.here(rule, i) && bit(s.of(s.p.rules[r].holds), s.row+i)
			for k, t := range s.tables[:s.rules] {
				if t.bearing == (bearing{i, r}) {
					own = holds(k)
				}
			}
			for _, o := range rule.Overriders {
				own = own && !force[i][o]
			}
			force[i][r] = own
		}
	}
	var said []reason.Said
	for k := range s.x.topic.Says {
		say := &s.x.topic.Says[k]
		for i := range s.n {
			constant := say.Advice.Fixed || say.Advice.Term == nil
			if !force[i][say.Rule.Index] || i == 1 && (constant || !say.Rule.Limb) && force[0][say.Rule.Index] {
				continue
			}
			at := say.Advice.At
			if !constant {
				x := s.now[i][k]
				for _, t := range s.tables[s.rules:] {
					if t.row == i && t.formula.say.Advice == say.Advice {
						x = number(t)
					}
				}
				if math.IsNaN(x) {
					continue
				}
				at = reason.InUnit(x, s.x.topic.Choice)
			}
			said = append(said, reason.Said{Rule: say.Rule.Index, Advice: say.Place, Value: at})
		}
	}
	return s.p.space.Engine.Decide(s.x.topic.Choice, said)
}
