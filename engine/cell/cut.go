package cell

import (
	"fmt"
	"math"
	"slices"

	"github.com/google/cel-go/common/operators"

	"crus/engine/vocab"
)

// maxFine is how many whole numbers of a count are told apart one by one where a formula reads it.
const maxFine = 64

// cut divides every axis by what is asked of it, and then says of each question in which cells it is answered yes.
func (c *compiler) cut() {
	for _, a := range c.Axes {
		for _, i := range a.Inputs {
			c.Axes[i].Fine = c.Axes[i].discrete()
		}
	}
	for _, u := range c.Unclear {
		for _, i := range u.Inputs {
			c.Axes[i].Fine = c.Axes[i].discrete()
		}
	}
	by := make([][]asking, len(c.Axes))
	for _, q := range c.asks {
		by[q.axis] = append(by[q.axis], q)
	}
	for i, a := range c.Axes {
		if a.Measure != nil && (a.Measure.Kind == vocab.Option || a.Measure.Kind == vocab.YesNo) {
			a.sort(by[i])
		} else {
			a.divide(by[i])
		}
	}
	for _, q := range c.asks {
		a := c.Axes[q.axis]
		yes := make([]bool, a.Count())
		for i := range yes {
			yes[i] = q.holds(a.inside(i))
		}
		c.Questions = append(c.Questions, &Question{q.axis, yes})
	}
}

// discrete reports whether a measure has few values, which can be told apart one by one.
func (a *Axis) discrete() bool {
	switch a.Measure.Kind {
	case vocab.Option, vocab.YesNo, vocab.Grade:
		return true
	case vocab.Count:
		return a.Measure.Plausible.Hi-a.Measure.Plausible.Lo < maxFine
	}
	return false
}

// sort puts the options of a measure into cells: those together that every question answers alike.
func (a *Axis) sort(asks []asking) {
	n := 2
	if a.Measure.Kind == vocab.Option {
		n = len(a.Measure.Options)
	}
	seen := map[string]int{}
	for i := range n {
		key := ""
		for _, q := range asks {
			key += map[bool]string{true: "y", false: "n"}[q.holds(float64(i))]
		}
		if a.Fine {
			key = fmt.Sprint(i)
		}
		if _, ok := seen[key]; !ok {
			seen[key] = len(seen)
		}
		a.Cells = append(a.Cells, seen[key])
	}
}

// divide cuts a line of numbers. Between whole numbers nothing lies, so there x <= 3 is x < 4.
func (a *Axis) divide(asks []asking) {
	steps := a.whole()
	add := func(at float64, below bool) {
		if steps && below {
			at, below = at+1, false
		}
		a.Cuts = append(a.Cuts, Cut{at, below})
	}
	for _, q := range asks {
		switch q.op {
		case operators.Less:
			add(q.at, false)
		case operators.LessEquals:
			add(q.at, true)
		case operators.Equals:
			add(q.at, false)
			add(q.at, true)
		default:
			for _, at := range q.set {
				add(at, false)
				add(at, true)
			}
		}
	}
	if a.Fine {
		lo, hi := a.steps()
		for at := lo + 1; at <= hi; at++ {
			add(at, false)
		}
	}
	slices.SortFunc(a.Cuts, func(c, d Cut) int {
		switch {
		case c.before(d):
			return -1
		case d.before(c):
			return 1
		}
		return 0
	})
	a.Cuts = slices.Compact(a.Cuts)
}

// whole reports whether the values of an axis are whole numbers.
func (a *Axis) whole() bool {
	return a.Measure != nil && (a.Measure.Kind == vocab.Grade || a.Measure.Kind == vocab.Count)
}

// steps gives the least and the greatest whole number of an axis of grades or counts.
func (a *Axis) steps() (lo, hi float64) {
	if a.Measure.Kind == vocab.Grade {
		return 0, float64(len(a.Measure.Scale.Grades) - 1)
	}
	return math.Ceil(a.Measure.Plausible.Lo), math.Floor(a.Measure.Plausible.Hi)
}

// inside gives a value that lies in a cell, plausible or not.
func (a *Axis) inside(cell int) float64 {
	if a.Cells != nil {
		return float64(slices.Index(a.Cells, cell))
	}
	switch n := len(a.Cuts); {
	case n == 0:
		return 0
	case cell == 0:
		if c := a.Cuts[0]; c.Below {
			return c.At
		}
		return a.Cuts[0].At - 1
	case cell == n:
		if c := a.Cuts[n-1]; !c.Below {
			return c.At
		}
		return a.Cuts[n-1].At + 1
	}
	low, high := a.Cuts[cell-1], a.Cuts[cell]
	switch {
	case !low.Below:
		return low.At
	case high.Below:
		return high.At
	}
	return low.At + (high.At-low.At)/2
}
