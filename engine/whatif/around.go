package whatif

import (
	"math"
	"slices"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/vocab"
)

// walker goes from what is recorded of one measure through the values within its error.
type walker struct {
	s       *scene
	key     key
	line    *cell.Axis
	axes    []int // in each row; -1 where the row does not see it
	at      float64
	lo, hi  float64
	results []*result // those that the measure bears on
	smooth  bool      // a number is worked out from it
	all     map[assess.Side]*reason.Result
}

// around looks at the values of one measure within its error, upwards and downwards.
func (s *scene) around(k key, rs []*result, all map[assess.Side]*reason.Result) {
	w := &walker{s: s, key: k, all: all}
	for i, r := range s.rows {
		w.axes = append(w.axes, -1)
		for _, a := range s.w.Axes[:s.w.Measures] {
			if a.Measure == k.measure && !(r.side == "" && a.Limb) && s.key(r, a.Index) == k {
				w.axes[i] = a.Index
			}
		}
	}
	for _, x := range rs {
		bears, smooth := false, false
		for _, row := range x.rows {
			if axis := w.axes[row]; axis >= 0 {
				b := s.w.bears[axis]
				if x.topic != nil {
					bears, smooth = bears || b.topics[x.topic.Index], smooth || b.numbers[x.topic.Index]
				} else {
					bears = bears || slices.Contains(b.nodes, s.node(x))
				}
			}
		}
		if bears {
			w.results = append(w.results, x)
		}
		w.smooth = w.smooth || smooth
	}
	if w.results == nil {
		return
	}
	w.band()
	s.leave(moving, func(x key) bool { return x == k })
	s.band = [2]float64{w.lo, w.hi}
	w.line = s.vars[s.variable(k)].line
	w.walk(1)
	w.walk(-1)
	for i := range s.rows {
		if w.axes[i] >= 0 {
			w.work(i, w.at)
		}
	}
}

// band works out from where to where the value can be, within its error and the plausible range.
func (w *walker) band() {
	m := w.key.measure
	a := w.s.w.Axes[w.axes[slices.IndexFunc(w.axes, func(i int) bool { return i >= 0 })]]
	for i, r := range w.s.rows {
		if w.axes[i] >= 0 {
			w.at = r.Value[w.axes[i]]
		}
	}
	e := m.Error
	if m.Kind == vocab.Quantity {
		e = m.Unit.ToBase(e)
	}
	least, most := a.Range()
	w.lo, w.hi = min(w.at, max(w.at-e, least)), max(w.at, min(w.at+e, most))
	if m.Kind == vocab.Quantity { // as they are kept
		w.lo, w.hi, _ = kept(w.lo, w.hi, false)
	}
}

// work works a row out with another value of the measure.
func (w *walker) work(i int, x float64) {
	r := w.s.rows[i]
	c := r.place(w.s.w, 1)
	if !r.moving {
		w.s.w.Work(c, r.Row)
		r.moving = true
	}
	row, axis := r.Row, w.axes[i]
	was := row.Value[axis]
	row.Value[axis] = x
	w.s.w.WorkOn(c, row, w.s.w.bears[axis].nodes)
	row.Value[axis] = was
}

// same reports whether nothing that a result hangs on is other than it is, as is the rule.
func (w *walker) same(x *result) bool {
	for _, i := range x.rows {
		axis := w.axes[i]
		if axis < 0 {
			continue
		}
		b := &w.s.w.bears[axis]
		was, is := w.s.rows[i].c.Truth, w.s.rows[i].place(w.s.w, 1).Truth
		switch {
		case x.topic != nil && b.numbers[x.topic.Index]:
			return false
		case x.agreed: // what it hangs on is not known either way, and may come to something else all the same
			if b.formulas || slices.ContainsFunc(b.nodes, func(n int) bool { return was[n] != is[n] }) {
				return false
			}
		case x.topic == nil:
			if n := w.s.node(x); was[n] != is[n] {
				return false
			}
		default:
			for _, say := range x.topic.Says {
				if n := say.Rule.Force; was[n] != is[n] {
					return false
				}
			}
		}
	}
	return true
}

// standing gives what becomes of a result, once the rows are worked out.
func (w *walker) standing(x *result, at float64) standing {
	var cases []*cell.Case
	for _, i := range x.rows {
		if w.axes[i] >= 0 {
			cases = append(cases, w.s.rows[i].place(w.s.w, 1))
		} else {
			cases = append(cases, w.s.rows[i].c)
		}
	}
	out := w.s.standing(x, cases)
	if x.agreed || x.topic != nil && x.now.changed(out, x.topic.Numeric()) && waits(x.topic, cases) {
		out, _ = w.s.with(values{w.key: {value: at, recorded: true}}).agreed(x, out)
	}
	return out
}

// waits reports whether a rule on a choice is not known to be in force or not.
func waits(t *cell.Topic, cases []*cell.Case) bool {
	for _, say := range t.Says {
		for _, c := range cases {
			if c.Truth[say.Rule.Force] == cell.Unknown && !(c.Alone && say.Rule.Limb) {
				return true
			}
		}
	}
	return false
}

// with gives the scene with some measures set, worked out.
func (s *scene) with(set values) *scene {
	out := &scene{w: s.w, a: s.a}
	for i, r := range s.rows {
		n := &row{side: r.side, Row: s.rowWith(i, set), c: s.w.NewCase()}
		s.w.Work(n.c, n.Row)
		out.rows = append(out.rows, n)
	}
	return out
}

// stop is a value at which results are looked at. Where it is the first of its cell, cut divides it from the one before.
type stop struct {
	x   float64
	cut *cell.Cut
}

// stops lists the values to look at, from what is recorded to the end of the error band.
func (w *walker) stops(up bool) []stop {
	line := w.line
	here, end := line.Cell(w.at), line.Cell(w.hi)
	step := 1
	if !up {
		end, step = line.Cell(w.lo), -1
	}
	var out []stop
	for c := here; c != end+step; c += step {
		span := line.Span(c)
		lo, hi := max(span.Lo, w.lo), min(span.Hi, w.hi)
		switch {
		case c == here && up:
			lo = w.at
		case c == here:
			hi = w.at
		}
		for i, x := range w.points(lo, hi, span, up) {
			s := stop{x: x}
			if i == 0 && c != here {
				s.cut = &line.Cuts[max(c-step, c)-1]
			}
			out = append(out, s)
		}
	}
	return out
}

// parts is how many values of a stretch are looked at where a number is worked out from the measure.
const parts = 2

// points gives values from a stretch of a cell, in the order of the walk.
func (w *walker) points(lo, hi float64, span cell.Span, up bool) (out []float64) {
	if step := w.line.Step(); step > 0 {
		for x := math.Ceil(lo); x <= hi; x++ {
			if span.Holds(x) {
				out = append(out, x)
			}
		}
	} else {
		n := 2
		if w.smooth {
			n = 2 * parts
		}
		for i := range n + 1 {
			x := lo + (hi-lo)*float64(i)/float64(n)
			if span.Holds(x) && (w.smooth || i == n/2) {
				out = append(out, x)
			}
		}
		if out == nil && span.Holds(lo) {
			out = []float64{lo}
		}
		out = slices.Compact(out)
	}
	if !up {
		slices.Reverse(out)
	}
	return out
}

// walk walks one way and notes the first change of each result.
func (w *walker) walk(way int) {
	changed := make([]bool, len(w.results))
	before := w.at
	for _, p := range w.stops(way > 0) {
		for i := range w.s.rows {
			if w.axes[i] >= 0 {
				w.work(i, p.x)
			}
		}
		for i, x := range w.results {
			if changed[i] || w.same(x) {
				continue
			}
			there := w.standing(x, p.x)
			if changed[i] = x.now.changed(there, x.topic != nil && x.topic.Numeric()); changed[i] {
				cut := p.cut
				if cut == nil || x.topic != nil && x.topic.Numeric() && w.smooth {
					cut = w.narrow(x, before, p.x, cut)
					for i := range w.s.rows { // narrowing worked others out
						if w.axes[i] >= 0 {
							w.work(i, p.x)
						}
					}
				}
				w.note(x, *cut, there, way)
			}
		}
		before = p.x
	}
}

// narrow finds where a number changes its standing between two values; cut is the cut between them, if there is one.
func (w *walker) narrow(x *result, from, to float64, cut *cell.Cut) *cell.Cut {
	turned := func(at float64) bool {
		for i := range w.s.rows {
			if w.axes[i] >= 0 {
				w.work(i, at)
			}
		}
		return x.now.changed(w.standing(x, at), true)
	}
	for range 40 {
		m := from + (to-from)/2
		if m == from || m == to {
			break
		}
		if turned(m) {
			to = m
		} else {
			from = m
		}
	}
	if cut != nil && math.Abs(cut.At-to) < 1e-6*max(1, math.Abs(to)) {
		return cut
	}
	return &cell.Cut{At: round(w.key.measure, to)}
}

// note writes a boundary down.
func (w *walker) note(x *result, cut cell.Cut, there standing, way int) {
	s, m := w.s, w.key.measure
	side := s.rows[x.row].side
	line := &cell.Axis{Measure: m, Cuts: []cell.Cut{cut}, Limb: m.Of == vocab.Limb}
	n := &reason.Near{Result: x.name, Measure: path(w.key, side), Label: label(w.key, side), Value: w.line.Say(w.at), Error: m.Error, Boundary: line.Say(cut.At),
		Here: reason.Beside{Is: line.Words(0)}, There: reason.Beside{Is: line.Words(1)}}
	if w.line.Step() > 0 {
		n.Boundary = "between " + line.Say(cut.At-1) + " and " + line.Say(cut.At)
	}
	if way < 0 {
		n.Here.Is, n.There.Is = n.There.Is, n.Here.Is
	}
	if m.Kind == vocab.Quantity {
		n.Unit = m.Unit.Code
	}
	for _, y := range []struct {
		*reason.Beside
		standing
	}{{&n.Here, x.now}, {&n.There, there}} {
		y.Beside.Status = y.standing.Status
		if x.topic != nil {
			y.Beside.Value = valueOf(x.topic.Choice, y.Verdict)
		}
	}
	r := w.all[side]
	r.Boundaries = append(r.Boundaries, n)
	yes := true
	switch {
	case x.choice != nil:
		x.choice.NearBoundary = &yes
	case x.shown != nil:
		x.shown.NearBoundary = &yes
	}
}
