package whatif

import (
	"math"

	"crus/engine/cell"
)

// lift gives a node of a row as a form over what is open.
func (s *scene) lift(row, n int) form {
	r := s.rows[row]
	if r.lifted == nil {
		r.lifted, r.asks = make([]form, len(s.w.Nodes)), make([]bool, len(s.w.Nodes))
		for i := range r.lifted {
			r.lifted[i] = unset
		}
	}
	if r.lifted[n] != unset {
		return r.lifted[n]
	}
	x := s.w.Nodes[n]
	f := form(r.c.Truth[n])
	switch x.Op {
	case cell.Ask:
		q := s.w.Questions[x.X]
		a := s.w.Axes[q.Axis]
		switch {
		case a.Measure != nil:
			if s.isOpen(r, a.Index) {
				f = s.asked(row, a, n)
			}
		case len(s.openOf(r, s.w.inputs[a.Index])) > 0:
			f = s.worked(part{row: row, axis: a.Index}, func(i int) cell.Truth { return answer(q, i) })
		}
		r.asks[n] = a.Measure == nil && s.recorded(r, s.w.recorded[a.Index])
	case cell.Recorded:
		if s.isOpen(r, x.X) {
			r.asks[n] = true
			v := s.variable(s.key(r, x.X))
			kids := make([]form, len(s.vars[v].cells))
			for i, c := range s.vars[v].cells {
				kids[i] = form(truthOf(c.recorded))
			}
			f = s.forms.switchOn(v, kids)
		}
	case cell.Opaque:
		if u := s.w.Unclear[x.X]; len(s.openOf(r, u.Inputs)) > 0 {
			f = s.worked(part{row: row, axis: -1, x: n}, func(i int) cell.Truth { return cell.Truth(i) })
		}
	case cell.Not:
		f = s.forms.not(s.lift(row, x.A))
		r.asks[n] = r.asks[x.A]
	case cell.And:
		f = s.forms.and(s.lift(row, x.A), s.lift(row, x.B))
		r.asks[n] = r.asks[x.A] || r.asks[x.B]
	case cell.Or:
		f = s.forms.or(s.lift(row, x.A), s.lift(row, x.B))
		r.asks[n] = r.asks[x.A] || r.asks[x.B]
	case cell.If:
		f = s.forms.choose(s.lift(row, x.A), s.lift(row, x.B), s.lift(row, x.C))
		r.asks[n] = r.asks[x.A] || r.asks[x.B] || r.asks[x.C]
	}
	r.lifted[n] = f
	return f
}

// recorded reports whether any of some measures' axes is open in a row.
func (s *scene) recorded(r *row, axes []int) bool { return len(s.openOf(r, axes)) > 0 }

func truthOf(b bool) cell.Truth {
	if b {
		return cell.Yes
	}
	return cell.No
}

// answer gives the answer to a question for a cell of its axis.
func answer(q *cell.Question, at int) cell.Truth {
	if at == cell.NotRecorded {
		return cell.Unknown
	}
	return truthOf(q.Yes[at])
}

// asked gives the form of a question about an open measure.
func (s *scene) asked(row int, a *cell.Axis, n int) form {
	q := s.w.Questions[s.w.Nodes[n].X]
	v := s.variable(s.key(s.rows[row], a.Index))
	kids := make([]form, len(s.vars[v].cells))
	for i, c := range s.vars[v].cells {
		at := cell.NotRecorded
		if !math.IsNaN(c.value) {
			at = a.Cell(c.value)
		}
		kids[i] = form(answer(q, at))
	}
	return s.forms.switchOn(v, kids)
}
