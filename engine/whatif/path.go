package whatif

import (
	"math"
	"slices"
)

// held says in which cells variables are held, by level; nil holds nothing.
type held [][]bool

func (d *diagram) free() held { return make(held, len(d.order)+1) }

// hold holds a variable in one cell.
func (h held) hold(d *diagram, level, cell int) {
	h[level] = make([]bool, len(d.q.s.vars[d.order[level]].cells))
	h[level][cell] = true
}

// far gives, for each node, over how few variables a kind of result can be reached; -1: it can't.
func (d *diagram) far(kind int) []int {
	out := make([]int, len(d.nodes))
	for n, x := range d.nodes { // the kids of a node stand before it
		out[n] = -1
		if d.end(n) {
			if x.kind == kind {
				out[n] = 0
			}
			continue
		}
		for _, k := range x.kids {
			if out[k] >= 0 && (out[n] < 0 || out[k]+1 < out[n]) {
				out[n] = out[k] + 1
			}
		}
	}
	return out
}

// paths goes through the ways to a kind of result, the shortest first at every turn, until do answers false: way holds the
// cell of each level, -1 where any will do.
func (d *diagram) paths(kind int, do func(way []int) bool) {
	far := d.far(kind)
	way := make([]int, len(d.order))
	for i := range way {
		way[i] = -1
	}
	var down func(n int) bool
	down = func(n int) bool {
		if d.end(n) {
			return do(way)
		}
		x := &d.nodes[n]
		cells := make([]int, 0, len(x.kids))
		for c, k := range x.kids {
			if far[k] >= 0 {
				cells = append(cells, c)
			}
		}
		slices.SortStableFunc(cells, func(a, b int) int { return far[x.kids[a]] - far[x.kids[b]] })
		for _, c := range cells {
			way[x.level] = c
			if !down(x.kids[c]) {
				return false
			}
		}
		way[x.level] = -1
		return true
	}
	if far[d.top] >= 0 {
		down(d.top)
	}
}

// smallest lets go whatever a way can do without, and takes in the cells beside those that it holds, as long as nothing
// but its kind of result comes of it.
func (d *diagram) smallest(kind int, way []int) held {
	h := d.free()
	for l, c := range way {
		if c >= 0 {
			h.hold(d, l, c)
		}
	}
	for l := range way {
		if was := h[l]; was != nil {
			if h[l] = nil; !d.only(h, kind) {
				h[l] = was
			}
		}
	}
	for l := range way {
		if h[l] != nil {
			d.widen(h, l, way[l], kind)
		}
	}
	return h
}

// widen takes in more cells of one variable: neighbours where they have an order, any where they have none.
func (d *diagram) widen(h held, l, from, kind int) {
	v := d.q.s.vars[d.order[l]]
	if !v.measured() {
		return
	}
	takes := func(c int) bool {
		if c < 0 || c >= len(v.cells) || math.IsNaN(v.cells[c].value) {
			return false
		}
		was := h[l]
		h.hold(d, l, c)
		ok := d.only(h, kind)
		if h[l] = was; ok {
			h[l][c] = true
		}
		return ok
	}
	if v.line.Cells == nil {
		for c := from - 1; takes(c); c-- {
		}
		for c := from + 1; takes(c); c++ {
		}
		return
	}
	for c := range v.cells {
		if c != from {
			takes(c)
		}
	}
}

// otherWays reports whether a kind of result comes about outside of what is held, too.
func (d *diagram) otherWays(kind int, h held) bool {
	far := d.far(kind)
	proper := func(from, to int) bool { // a variable between two levels makes no difference there, and is held
		for l := from; l < to; l++ {
			if h[l] != nil && slices.Contains(h[l], false) {
				return true
			}
		}
		return false
	}
	seen := make([]bool, len(d.nodes))
	var down func(n, from int) bool
	down = func(n, from int) bool {
		switch x := &d.nodes[n]; {
		case far[n] < 0:
			return false
		case proper(from, x.level):
			return true
		case seen[n] || d.end(n):
			return false
		default:
			seen[n] = true
			for c, k := range x.kids {
				if far[k] >= 0 && h[x.level] != nil && !h[x.level][c] || down(k, x.level+1) {
					return true
				}
			}
			return false
		}
	}
	return down(d.top, 0)
}

// share gives the share of a variable's cells that settle the result whatever the others are.
func (d *diagram) share(l int) float64 {
	v := d.q.s.vars[d.order[l]]
	settled := 0
	h := d.free()
	for c := range v.cells {
		h.hold(d, l, c)
		n := 0
		for _, yes := range d.reach(h) {
			if yes {
				n++
			}
		}
		if n == 1 {
			settled++
		}
	}
	return float64(settled) / float64(len(v.cells))
}
