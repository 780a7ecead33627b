package prove

import (
	"math"

	"crus/engine/cell"
	"crus/engine/clause"
)

// reach bounds what a term can give; none: it can also be that it gives nothing.
type reach struct {
	lo, hi float64
	none   bool
}

var anything = reach{math.Inf(-1), math.Inf(1), true}

// box bounds the values of the lines that some formulas read.
type box map[int]reach

// maxBoxes is how many parts of the cells are looked at to exclude what formulas should give.
const maxBoxes = 400

// exclude shows that formulas can't come out as the last solution says, whatever the values of what they read within
// their cells: these are halved until in every part the bounds of some formula miss its cell. It then adds a clause that
// says so and reports true.
func (t *trial) exclude(amiss []fault) bool {
	whole := box{}
	var formulas []fault
	for _, f := range amiss {
		if f.unclear {
			continue
		}
		formulas = append(formulas, f)
		for _, i := range t.inputs(f) {
			whole[i] = t.lineReach(i)
		}
	}
	todo := []box{whole}
	for n := 0; len(todo) > 0; n++ {
		b := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if t.misses(formulas, b) {
			continue
		}
		i := t.widest(b)
		if i < 0 || n+len(todo) > maxBoxes {
			return false
		}
		for _, half := range [][2]float64{{b[i].lo, (b[i].lo + b[i].hi) / 2}, {(b[i].lo + b[i].hi) / 2, b[i].hi}} {
			part := box{}
			for k, r := range b {
				part[k] = r
			}
			part[i] = reach{half[0], half[1], b[i].none}
			todo = append(todo, part)
		}
	}
	var not []clause.Lit
	for _, f := range formulas {
		not = append(not, t.unless(f)...)
		not = append(not, t.not(t.inputs(f))...)
	}
	t.Add(not...)
	return true
}

// widest gives the line whose stretch is the widest part of its range; -1 where all are points.
func (t *trial) widest(b box) int {
	best, at := 1e-6, -1
	for _, i := range t.Asked { // in a fixed order
		r, ok := b[i]
		if !ok {
			continue
		}
		lo, hi := t.frame.Lines(t.Rows)[i].Range()
		if w := (r.hi - r.lo) / (hi - lo); r.hi > r.lo && w > best {
			best, at = w, i
		}
	}
	return at
}

// lineReach bounds a line's value in the last solution.
func (t *trial) lineReach(i int) reach {
	l, v := t.frame.Lines(t.Rows)[i], t.Line(i)
	switch {
	case v.Cell == cell.NotRecorded:
		return reach{math.Inf(1), math.Inf(-1), true}
	case v.Never:
		x, _ := l.Never()
		return reach{x, x, false}
	case l.Cells != nil:
		x, _ := l.Value(v.Cell)
		return reach{x, x, false}
	}
	s, _ := l.Plausible(v.Cell)
	return reach{s.Lo, s.Hi, false}
}

// misses reports whether within a box some formula can't be in its cell.
func (t *trial) misses(formulas []fault, b box) bool {
	for _, f := range formulas {
		a := t.Axes[f.X]
		got := t.enclose(b, f.Row, a.Term)
		if f.cell == cell.NotRecorded {
			if !got.none {
				return true
			}
			continue
		}
		s := a.Span(f.cell)
		if got.hi < s.Lo || got.lo > s.Hi || got.hi == s.Lo && !s.LoIn || got.lo == s.Hi && !s.HiIn {
			return true
		}
	}
	return false
}

// enclose bounds a term within a box.
func (t *trial) enclose(b box, row int, x *cell.Term) reach {
	of := func(y *cell.Term) reach { return t.enclose(b, row, y) }
	switch x.Op {
	case cell.Number:
		return reach{x.X, x.X, false}
	case cell.Read:
		return b[t.frame.Line(t.Rows, row, x.Axis)]
	case cell.Choose:
		switch yes, no := t.could(b, row, x.Node); {
		case yes && !no:
			return of(x.A)
		case no && !yes:
			return of(x.B)
		}
		p, q := of(x.A), of(x.B)
		return reach{min(p.lo, q.lo), max(p.hi, q.hi), true}
	case cell.Least, cell.Most:
		pick := math.Min
		if x.Op == cell.Most {
			pick = math.Max
		}
		out := of(x.Of[0])
		for _, y := range x.Of[1:] {
			p := of(y)
			out = reach{pick(out.lo, p.lo), pick(out.hi, p.hi), out.none || p.none}
		}
		return out
	case cell.Size:
		p := of(x.A)
		lo, hi := math.Abs(p.lo), math.Abs(p.hi)
		if p.lo <= 0 && p.hi >= 0 {
			return reach{0, max(lo, hi), p.none}
		}
		return reach{min(lo, hi), max(lo, hi), p.none}
	case cell.Minus:
		return corners(x, of(x.A), reach{})
	case cell.Sum, cell.Less, cell.Differ, cell.Times:
		return corners(x, of(x.A), of(x.B))
	case cell.Over:
		if q := of(x.B); q.lo > 0 || q.hi < 0 {
			return corners(x, of(x.A), q)
		}
	}
	return anything
}

// corners bounds what is greatest and least at the ends of both parts of a term; rounding keeps the order.
func corners(x *cell.Term, p, q reach) reach {
	lo, hi := math.Inf(1), math.Inf(-1)
	for _, a := range []float64{p.lo, p.hi} {
		for _, b := range []float64{q.lo, q.hi} {
			y := x.Apply([]float64{a, b})
			if math.IsNaN(y) {
				return anything
			}
			lo, hi = min(lo, y), max(hi, y)
		}
	}
	return reach{lo, hi, p.none || q.none}
}

// could says whether a node could be true, and whether it could be false, within a box. Both: it is not known.
func (t *trial) could(b box, row, n int) (yes, no bool) {
	switch x := t.Nodes[n]; x.Op {
	case cell.Always:
		return true, false
	case cell.Ask:
		q := t.Questions[x.X]
		a := t.Axes[q.Axis]
		var r reach
		ok := true
		if q.Axis >= t.Measures {
			r = t.enclose(b, row, a.Term)
		} else {
			r, ok = b[t.frame.Line(t.Rows, row, q.Axis)]
		}
		if !ok || r.none || r.lo > r.hi {
			return true, true
		}
		for c := a.Cell(r.lo); c <= a.Cell(r.hi); c++ {
			yes, no = yes || q.Yes[c], no || !q.Yes[c]
		}
		return yes, no
	case cell.Not:
		no, yes = t.could(b, row, x.A)
		return yes, no
	case cell.And, cell.Or:
		y1, n1 := t.could(b, row, x.A)
		y2, n2 := t.could(b, row, x.B)
		if x.Op == cell.And {
			return y1 && y2, n1 || n2
		}
		return y1 || y2, n1 && n2
	}
	return true, true
}
