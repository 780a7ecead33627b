package whatif

import (
	"math"
	"slices"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/clinical"
	"crus/engine/vocab"
)

// variable is an open measure, or a formula whose value the open measures leave open.
type variable struct {
	key
	line  *cell.Axis // the measure's axis, cut wherever anything that bears on this scene changes with it
	cells []place
	now   int   // the cell of what is recorded now, or of what is not; -1 where neither is among the cells
	at    []int // of a measure: its axis in each row, -1 where the row does not see it

	part   part // of a formula
	inputs []int
	pieces []sum // of a formula
	exact  bool  // of a formula: no other cells than these are possible, and a linear program tells which go together
}

// place is one cell of a variable, with a value from it. That of a formula has the number of its axis's cell.
type place struct {
	value    float64 // NaN: not known
	recorded bool
	cell     int // of line; NotRecorded
}

// measured reports whether the variable is a measure and no formula.
func (v *variable) measured() bool { return v.measure != nil }

// few reports whether the variable has few values, each in a cell of its own.
func (v *variable) few() bool {
	return v.line.Step() == 1 && v.line.Measure.Kind != vocab.Count || v.line.Fine
}

// span gives the plausible stretch of a line of numbers that one of its cells is; false where it is none.
func (v *variable) span(p place) (cell.Span, bool) {
	if v.line.Cells != nil || p.cell == cell.NotRecorded {
		return cell.Span{}, false
	}
	span, ok := v.line.Plausible(p.cell)
	return span, ok && span.Holds(p.value)
}

// variable gives the number of an open measure.
func (s *scene) variable(k key) int {
	if i, ok := s.byKey[k]; ok {
		return i
	}
	v := &variable{key: k, now: -1}
	var line cell.Axis
	for _, r := range s.rows {
		at := -1
		for _, a := range s.w.Axes[:s.w.Measures] {
			if a.Measure != k.measure || r.side == "" && a.Limb || s.key(r, a.Index) != k {
				continue
			}
			at = a.Index
			if line.Measure == nil {
				line = cell.Axis{Index: a.Index, Path: a.Path, Measure: a.Measure, Limb: a.Limb}
			}
			line.Fine = line.Fine || a.Fine
			line.Cuts = append(line.Cuts, a.Cuts...)
		}
		v.at = append(v.at, at)
	}
	v.line = &line
	switch k.measure.Kind {
	case vocab.Option:
		line.Cells = upTo(len(k.measure.Options))
	case vocab.YesNo:
		line.Cells = upTo(2)
	case vocab.Quantity, vocab.Count, vocab.Date, vocab.Grade:
		if !v.few() {
			s.refine(v)
		}
		line.Cuts = sortCuts(line.Cuts)
	}
	s.fill(v)
	i := len(s.vars)
	s.byKey[k] = i
	s.vars = append(s.vars, v)
	return i
}

func upTo(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	return out
}

func sortCuts(cuts []cell.Cut) []cell.Cut {
	slices.SortFunc(cuts, func(a, b cell.Cut) int {
		switch {
		case a.At < b.At || a.At == b.At && !a.Below && b.Below:
			return -1
		case a == b:
			return 0
		}
		return 1
	})
	return slices.Compact(cuts)
}

// fill lists the cells of a measure in which something plausible lies, and that of what is recorded now.
func (s *scene) fill(v *variable) {
	missing := s.missing(v.key)
	_, err := clinical.ParseDate(s.a.Date)
	if v.measure.Kind == vocab.Date && err != nil { // seen from no day, it tells nothing
		v.cells = append(v.cells, place{math.NaN(), true, cell.NotRecorded})
	} else {
		for i := range v.line.Count() {
			if x, ok := v.line.Value(i); ok {
				v.cells = append(v.cells, place{x, true, i})
			}
		}
	}
	if s.mode == changing {
		if missing {
			v.now = len(v.cells)
			v.cells = append(v.cells, place{math.NaN(), false, cell.NotRecorded})
			return
		}
		at := s.value(v)
		here := v.line.Cell(at)
		v.now = slices.IndexFunc(v.cells, func(p place) bool { return p.cell == here })
		if v.now < 0 {
			v.now = len(v.cells)
			v.cells = append(v.cells, place{at, true, here})
		}
		for i, p := range v.cells {
			if p.cell != cell.NotRecorded {
				v.cells[i].value = v.nearest(p.cell, at)
			}
		}
		v.cells[v.now].value = at
	}
}

// value gives what is recorded of a measure now.
func (s *scene) value(v *variable) float64 {
	for i, r := range s.rows {
		if v.at[i] >= 0 {
			return r.Value[v.at[i]]
		}
	}
	return math.NaN()
}

// values are what some open measures are set to.
type values map[key]place

// rowWith gives a row with some open measures set.
func (s *scene) rowWith(i int, set values) cell.Row {
	r := s.rows[i]
	out := r.Row.Clone()
	for axis, a := range s.w.Axes[:s.w.Measures] {
		if r.side == "" && a.Limb {
			continue
		}
		if p, ok := set[s.key(r, axis)]; ok {
			out.Value[axis], out.Recorded[axis] = p.value, p.recorded
		}
	}
	return out
}

// eval gives the cell of a formula, or the truth of an unclear part, with some open measures set.
func (s *scene) eval(p part, set values) int {
	r := s.rows[p.row]
	c := r.scratch(s.w)
	plan := s.w.plans[max(p.axis, 0)]
	if p.axis < 0 {
		plan = s.w.opaque[s.w.Nodes[p.x].X]
	}
	s.w.WorkOn(c, s.setting(p, set), plan)
	if p.axis < 0 {
		return int(c.Truth[p.x])
	}
	return c.Cell[p.axis]
}

// setting gives the row of a part with what it reads set. It is used up by the next call.
func (s *scene) setting(p part, set values) cell.Row {
	r := s.rows[p.row]
	if r.trial.Value == nil {
		r.trial = r.Row.Clone()
	}
	copy(r.trial.Value, r.Value)
	copy(r.trial.Recorded, r.Recorded)
	put := func(axes []int) {
		for _, axis := range axes {
			if r.side == "" && s.w.Axes[axis].Limb {
				continue
			}
			if at, ok := set[s.key(r, axis)]; ok {
				r.trial.Value[axis], r.trial.Recorded[axis] = at.value, at.recorded
			}
		}
	}
	if p.axis < 0 {
		put(s.w.Unclear[s.w.Nodes[p.x].X].Inputs)
	} else {
		put(s.w.inputs[p.axis])
		put(s.w.recorded[p.axis])
	}
	return r.trial
}

// evalAt is eval with one measure, by its axis, set to a value.
func (s *scene) evalAt(p part, axis int, x float64) int {
	r := s.rows[p.row]
	c, row := r.scratch(s.w), r.Row
	value, recorded := row.Value[axis], row.Recorded[axis]
	row.Value[axis], row.Recorded[axis] = x, true
	plan := s.w.plans[max(p.axis, 0)]
	if p.axis < 0 {
		plan = s.w.opaque[s.w.Nodes[p.x].X]
	}
	s.w.WorkOn(c, row, plan)
	row.Value[axis], row.Recorded[axis] = value, recorded
	if p.axis < 0 {
		return int(c.Truth[p.x])
	}
	return c.Cell[p.axis]
}

// openInputs lists the open measures that a part reads.
func (s *scene) openInputs(p part) []key {
	r := s.rows[p.row]
	var axes []int
	if p.axis >= 0 {
		axes = s.openOf(r, s.w.inputs[p.axis])
	} else {
		axes = s.openOf(r, s.w.Unclear[s.w.Nodes[p.x].X].Inputs)
	}
	out := make([]key, len(axes))
	for i, a := range axes {
		out[i] = s.key(r, a)
	}
	return out
}

// maxTree is how many values of measures with few values are tried for one formula.
const maxTree = 4096

// worked gives the form of a question about a formula or an unclear part: answers gives its truth for each cell.
func (s *scene) worked(p part, answers func(cell int) cell.Truth) form {
	keys := s.openInputs(p)
	inputs := make([]int, len(keys))
	few, many := 1, false
	for i, k := range keys {
		inputs[i] = s.variable(k)
		v := s.vars[inputs[i]]
		many = many || !v.few() && s.worksWith(p, v)
		few *= len(v.cells)
	}
	if len(inputs) == 1 || (!many || s.mode == changing) && few <= maxTree {
		f := s.tree(inputs, values{}, func(set values) form { return form(answers(s.eval(p, set))) })
		if many && (len(inputs) > 1 || p.axis < 0 || s.pieces(p.row, s.w.Axes[p.axis].Term) == nil) {
			return s.forms.sampled(f, inputs[0], s.name(p))
		}
		return f
	}
	d := s.derived(p, inputs)
	kids := make([]form, len(s.vars[d].cells))
	for i, c := range s.vars[d].cells {
		kids[i] = form(answers(c.cell))
	}
	return s.forms.switchOn(d, kids)
}

// worksWith reports whether a part works with the value of a measure, so that its cells don't tell all.
func (s *scene) worksWith(p part, v *variable) bool {
	return p.axis < 0 || s.w.numbers[p.axis][v.at[p.row]]
}

// tree tries every cell of some variables.
func (s *scene) tree(inputs []int, set values, leaf func(values) form) form {
	if len(inputs) == 0 {
		return leaf(set)
	}
	v := s.vars[inputs[0]]
	kids := make([]form, len(v.cells))
	for i, c := range v.cells {
		set[v.key] = c
		kids[i] = s.tree(inputs[1:], set, leaf)
	}
	delete(set, v.key)
	return s.forms.switchOn(inputs[0], kids)
}

// derived gives the number of a formula that several open measures leave open.
func (s *scene) derived(p part, inputs []int) int {
	if i, ok := s.byPart[p]; ok {
		return i
	}
	v := &variable{part: p, inputs: inputs, now: -1}
	cells := []int{int(cell.No), int(cell.Unknown), int(cell.Yes)}
	if p.axis >= 0 {
		a := s.w.Axes[p.axis]
		v.line = a
		cells = upTo(a.Count())
		lo, hi, fails := s.bounds(p.row, a.Term)
		cells = slices.DeleteFunc(cells, func(c int) bool {
			span := a.Span(c)
			return span.Lo > hi || span.Hi < lo || span.Lo == hi && !span.LoIn || span.Hi == lo && !span.HiIn
		})
		v.pieces = s.pieces(p.row, a.Term)
		v.exact = len(v.pieces) == 1 && !fails
		for _, i := range inputs {
			x := s.vars[i]
			v.exact = v.exact && (x.few() || x.measure.Kind == vocab.Quantity)
			fails = fails || slices.ContainsFunc(x.cells, func(p place) bool { return math.IsNaN(p.value) })
		}
		if fails {
			cells = append(cells, cell.NotRecorded)
		}
	}
	for _, c := range cells {
		v.cells = append(v.cells, place{math.NaN(), true, c})
	}
	i := len(s.vars)
	s.byPart[p] = i
	s.vars = append(s.vars, v)
	return i
}

// sideRank puts the person before the limbs.
func sideRank(side assess.Side) int {
	switch side {
	case "":
		return 0
	case assess.Left:
		return 1
	}
	return 2
}
