package clause

import "crus/engine/cell"

// Needed says which formulas and unclear parts the last solution makes use of: enough of them that some nodes are what the
// solution says, whatever the others are.
func (c *Clauses) Needed(nodes []int) (formulas, unclear map[Worked]bool) {
	n := &needs{Clauses: c, done: map[need]bool{}, formulas: map[Worked]bool{}, unclear: map[Worked]bool{}}
	for row := range c.Rows {
		for _, i := range nodes {
			n.visit(row, i, true)
			n.visit(row, i, false)
		}
	}
	return n.formulas, n.unclear
}

type needs struct {
	*Clauses
	done              map[need]bool
	formulas, unclear map[Worked]bool
}

// need is one side of a node: that it is known to be true or not, or known to be false or not.
type need struct {
	row, node int
	yes       bool
}

// is reports what the last solution says of one side of a node.
func (n *needs) is(row, node int, yes bool) bool {
	r := n.node(row, node)
	if yes {
		return n.Holds(r.yes)
	}
	return n.Holds(r.no)
}

// visit notes what one side of a node rests on.
func (n *needs) visit(row, node int, yes bool) {
	if !n.frame.limb[node] {
		row = 0
	}
	if k := (need{row, node, yes}); n.done[k] {
		return
	} else {
		n.done[k] = true
	}
	switch x := n.frame.Space.Nodes[node]; x.Op {
	case cell.Ask:
		if axis := n.frame.Space.Questions[x.X].Axis; axis >= n.frame.Space.Measures {
			if !n.frame.Space.Axes[axis].Limb {
				row = 0
			}
			n.formulas[Worked{row, axis}] = true
		}
	case cell.Opaque:
		n.unclear[Worked{row, x.X}] = true
	case cell.Not:
		n.visit(row, x.A, !yes)
	case cell.And, cell.Or:
		if n.is(row, node, yes) == (yes == (x.Op == cell.And)) { // it takes both: to be true of and, not to be false of and, ...
			n.visit(row, x.A, yes)
			n.visit(row, x.B, yes)
			return
		}
		n.either(row, x.A, x.B, yes, n.is(row, node, yes))
	case cell.If:
		n.visit(row, x.A, true)
		n.visit(row, x.A, false)
		switch {
		case n.is(row, x.A, true):
			n.visit(row, x.B, yes)
		case n.is(row, x.A, false):
			n.visit(row, x.C, yes)
		}
	}
}

// either visits one of two nodes of which each that is so decides: one that is visited already, or the plainer one.
func (n *needs) either(row, a, b int, yes, so bool) {
	switch {
	case n.is(row, a, yes) != so:
		n.visit(row, b, yes)
	case n.is(row, b, yes) != so:
		n.visit(row, a, yes)
	case n.seen(row, b, yes) || !n.seen(row, a, yes) && n.frame.cost[b] < n.frame.cost[a]:
		n.visit(row, b, yes)
	default:
		n.visit(row, a, yes)
	}
}

func (n *needs) seen(row, node int, yes bool) bool {
	if !n.frame.limb[node] {
		row = 0
	}
	return n.done[need{row, node, yes}]
}
