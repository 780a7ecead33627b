package clause

import (
	"slices"

	"crus/engine/cell"
)

// Clauses are the clauses of one question, or of a few about the same. They grow with what is asked for.
type Clauses struct {
	*gates
	Rows   int
	Asked  []int    // the lines that were asked for, by their places in Frame.Lines
	Worked []Worked // the formulas' axes that were
	Opened []Worked // and the unclear parts that have no table

	frame    *Frame
	lines    map[int]*stretch
	formulas [2]map[int]*stretch
	nodes    [2]map[int]rail
	unclear  [2]map[int]rail
}

// Worked is a formula's axis, or an unclear part, in a row.
type Worked struct{ Row, X int }

// rail holds the literals of a node: known to be true, known to be false.
type rail struct{ yes, no Lit }

// Clauses begins a set of clauses about one or two rows.
func (f *Frame) Clauses(rows int) *Clauses {
	c := &Clauses{gates: newGates(), Rows: rows, frame: f, lines: map[int]*stretch{}}
	for i := range c.nodes {
		c.formulas[i], c.nodes[i], c.unclear[i] = map[int]*stretch{}, map[int]rail{}, map[int]rail{}
	}
	return c
}

// True gives a literal that holds where a node is known to be true in a row.
func (c *Clauses) True(row, node int) Lit { return c.node(row, node).yes }

// False gives a literal that holds where a node is known to be false in a row.
func (c *Clauses) False(row, node int) Lit { return c.node(row, node).no }

// on gives a literal that holds where a measure of a row, if it is recorded, lies in some of its axis's cells.
func (c *Clauses) on(row, axis int, yes func(cell int) bool) Lit {
	i := c.frame.at[c.Rows][row][axis]
	l := c.frame.lines[c.Rows][i]
	for _, v := range l.Views {
		if v.Axis == axis && (v.Row == row || !l.Limb) {
			return c.in(c.line(i), func(n int) bool { return yes(v.cell[n]) })
		}
	}
	return -c.yes
}

func (c *Clauses) node(row, n int) rail {
	if !c.frame.limb[n] {
		row = 0
	}
	if r, ok := c.nodes[row][n]; ok {
		return r
	}
	r := c.make(row, c.frame.Space.Nodes[n])
	c.nodes[row][n] = r
	return r
}

func (c *Clauses) make(row int, n cell.Node) rail {
	switch n.Op {
	case cell.Always:
		return rail{c.yes, -c.yes}
	case cell.Ask:
		return c.ask(row, c.frame.Space.Questions[n.X])
	case cell.Recorded:
		known := c.line(c.frame.at[c.Rows][row][n.X]).known
		return rail{known, -known}
	case cell.Opaque:
		return c.opaque(row, n.X)
	case cell.Not:
		a := c.node(row, n.A)
		return rail{a.no, a.yes}
	case cell.And:
		return c.andRails(c.node(row, n.A), c.node(row, n.B))
	case cell.Or:
		return c.andRails(c.node(row, n.A).not(), c.node(row, n.B).not()).not()
	}
	a, b, d := c.node(row, n.A), c.node(row, n.B), c.node(row, n.C)
	yes := c.Or(c.And(a.yes, b.yes), c.And(a.no, d.yes))
	if a.sure() && b.sure() && d.sure() {
		return rail{yes, -yes}
	}
	return rail{yes, c.Or(c.And(a.yes, b.no), c.And(a.no, d.no))}
}

// sure reports whether the node can't be unknown.
func (r rail) sure() bool { return r.yes == -r.no }

func (r rail) not() rail { return rail{r.no, r.yes} }

func (c *Clauses) andRails(a, b rail) rail {
	yes := c.And(a.yes, b.yes)
	if a.sure() && b.sure() {
		return rail{yes, -yes}
	}
	return rail{yes, c.Or(a.no, b.no)}
}

func (c *Clauses) ask(row int, q *cell.Question) rail {
	yes := func(n int) bool { return q.Yes[n] }
	var known, in Lit
	if q.Axis < c.frame.Space.Measures {
		known, in = c.line(c.frame.at[c.Rows][row][q.Axis]).known, c.on(row, q.Axis, yes)
	} else {
		x := c.formula(row, q.Axis)
		known, in = x.known, c.in(x, yes)
	}
	if known == c.yes {
		return rail{in, -in}
	}
	return rail{c.And(known, in), c.And(known, -in)}
}

// opaque makes the literals of an unclear part: bound where it has a table, else free.
func (c *Clauses) opaque(row, i int) rail {
	u := c.frame.Space.Unclear[i]
	if !u.Limb {
		row = 0
	}
	if r, ok := c.unclear[row][i]; ok {
		return r
	}
	r := rail{c.Var(), c.Var()}
	c.unclear[row][i] = r
	c.Add(-r.yes, -r.no)
	t := c.frame.unclear[i]
	if t == nil {
		c.Opened = append(c.Opened, Worked{row, i})
		for _, axis := range u.Inputs { // so that they are in what is found
			c.line(c.frame.at[c.Rows][row][axis])
		}
		return r
	}
	for k, out := range t.out {
		not := c.unless(row, t, k)
		yes, no := -r.yes, -r.no
		switch cell.Truth(out) {
		case cell.Yes:
			yes = r.yes
		case cell.No:
			no = r.no
		}
		c.Add(append(slices.Clone(not), yes)...)
		c.Add(append(not, no)...)
	}
	return r
}
