package clause

import (
	"slices"

	"crus/engine/cell"
	"crus/engine/ruleset"
)

// number works out what becomes of a choice with a number from the limits and aims that are constants. Its values are
// those of a line: of each constant a literal says whether what is meant is as great or greater.
func (c *Clauses) number(t *cell.Topic, out *Choice) {
	keys := []float64{t.Between.Lo, t.Between.Hi}
	for _, s := range t.Says {
		if s.Advice.Fixed {
			keys = append(keys, s.Advice.At)
		}
	}
	slices.Sort(keys)
	keys = slices.Compact(keys)
	// some gives a literal that holds where one piece of advice in force is such.
	some := func(is func(cell.Say) bool) Lit {
		var any []Lit
		for i, s := range t.Says {
			if s.Advice.Fixed && is(s) {
				any = append(any, out.Says[i])
			}
		}
		return c.Or(any...)
	}
	strong := some(func(s cell.Say) bool { return s.Advice.Verb == ruleset.Aim && s.Rule.Strength == ruleset.Strong })
	aimed := some(func(s cell.Say) bool { return s.Advice.Verb == ruleset.Aim })
	// aim gives a literal that holds where an aim that counts is such.
	aim := func(is func(at float64) bool) Lit {
		of := func(strength ruleset.Strength) Lit {
			return some(func(s cell.Say) bool {
				return s.Advice.Verb == ruleset.Aim && s.Rule.Strength == strength && is(s.Advice.At)
			})
		}
		return c.Or(of(ruleset.Strong), c.And(-strong, of(ruleset.Conditional)))
	}
	n := len(keys)
	least, most, low, high := make([]Lit, n), make([]Lit, n), make([]Lit, n), make([]Lit, n)
	empty := -c.yes
	for k, key := range keys {
		least[k] = some(func(s cell.Say) bool { return s.Advice.Verb == ruleset.AtLeast && s.Advice.At >= key })
		if key <= t.Between.Lo {
			least[k] = c.yes
		}
		most[k] = -some(func(s cell.Say) bool { return s.Advice.Verb == ruleset.AtMost && s.Advice.At < key })
		if key > t.Between.Hi {
			most[k] = -c.yes
		}
		empty = c.Or(empty, c.And(least[k], -most[k]))
		low[k] = c.Or(least[k], c.And(most[k], -aim(func(at float64) bool { return at < key })))
		high[k] = c.Or(least[k], c.And(most[k], aim(func(at float64) bool { return at >= key })))
	}
	apart, room := -c.yes, -c.yes
	for k := range keys {
		room = c.Or(room, c.And(most[k], -least[k]))
		under := c.yes // the lowest aim is no higher than this key
		if k+1 < n {
			under = -low[k+1]
		}
		if j := slices.IndexFunc(keys, func(key float64) bool { return key-keys[k] > t.Rounding }); j >= 0 {
			apart = c.Or(apart, c.And(under, high[j]))
		}
	}
	out.Conflict = c.And(out.Spoke, empty)
	out.Tie = c.And(out.Spoke, -empty, aimed, apart)
	out.Open = c.And(out.Spoke, -empty, -aimed, room)
	out.final = append(out.final, empty, aimed)
	for k, key := range keys {
		from, to := c.Or(c.And(aimed, low[k]), c.And(-aimed, least[k])), c.Or(c.And(aimed, high[k]), c.And(-aimed, most[k]))
		out.final = append(out.final, c.And(-empty, from), c.And(-empty, to))
		// Rounding can be turned back by a limit close by.
		near := func(of []Lit, past func(other float64) bool) Lit {
			j := slices.IndexFunc(keys, past)
			if j < 0 {
				return -c.yes
			}
			return of[j]
		}
		below := near(high, func(other float64) bool { return other > key-2*t.Rounding })
		above := near(low, func(other float64) bool { return other >= key+2*t.Rounding })
		out.fit = append(out.fit, c.And(aimed, -empty, below, most[k]), c.And(aimed, -empty, -above, least[k]))
	}
}
