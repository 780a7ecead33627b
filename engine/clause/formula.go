package clause

import (
	"math"
	"slices"

	"crus/engine/cell"
)

// maxTable is how many combinations of what a formula reads are worked out one by one.
const maxTable = 4096

// table is what a formula's axis, or an unclear part, gives for every combination of the cells of what it reads.
type table struct {
	inputs []int
	sizes  []int // of each input: how many cells; one more where it may be missing, the last
	out    []int // a cell or NotRecorded; of an unclear part a truth
}

// tabulate works out the tables, and which formulas are known where their inputs are.
func (f *Frame) tabulate() {
	s := f.Space
	c := s.NewCase()
	for i, a := range s.Axes[s.Measures:] {
		i += s.Measures
		if n, asked := f.asks[i]; asked {
			plan := s.Plan(n)
			f.tables[i] = f.table(a.Inputs, func(r cell.Row) int { s.WorkOn(c, r, plan); return c.Cell[i] })
			f.sure[i] = f.Surely(a.Term)
		}
	}
	for i, u := range s.Unclear {
		if n, asked := f.opaques[i]; asked {
			plan := s.Plan(n)
			f.unclear[i] = f.table(u.Inputs, func(r cell.Row) int { s.WorkOn(c, r, plan); return int(c.Truth[n]) })
		}
	}
}

// table works out every combination; nil where there are too many, or where one input has values between.
func (f *Frame) table(inputs []int, work func(cell.Row) int) *table {
	t := &table{inputs: inputs}
	all := 1
	for _, i := range inputs {
		a := f.Space.Axes[i]
		if !a.Fine {
			return nil
		}
		n := a.Count()
		if f.Missing[i] {
			n++
		}
		t.sizes = append(t.sizes, n)
		if all *= n; all > maxTable {
			return nil
		}
	}
	row := f.Space.Blank()
	for k := range all {
		possible := true
		for j, c := range t.cells(k) {
			i := inputs[j]
			row.Value[i], row.Recorded[i] = math.NaN(), c < f.Space.Axes[i].Count()
			if row.Recorded[i] {
				x, ok := f.Space.Axes[i].Value(c)
				row.Value[i], possible = x, possible && ok
			}
		}
		out := cell.NotRecorded
		if possible {
			out = work(row)
		}
		t.out = append(t.out, out)
	}
	return t
}

// cells gives the cell of each input in a combination.
func (t *table) cells(k int) []int {
	out := make([]int, len(t.sizes))
	for j, n := range t.sizes {
		out[j], k = k%n, k/n
	}
	return out
}

// Surely reports whether a term can always be worked out of what is recorded and was.
func (f *Frame) Surely(t *cell.Term) bool {
	switch t.Op {
	case cell.Number, cell.Read:
		return true
	case cell.Over:
		return t.B.Op == cell.Number && t.B.X != 0 && f.Surely(t.A)
	case cell.Choose:
		return f.known(t.Node) && f.Surely(t.A) && f.Surely(t.B)
	case cell.Holds:
		return f.known(t.Node)
	case cell.Call, cell.Asked:
		return false
	}
	for _, x := range append(slices.Clone(t.Of), t.A, t.B) {
		if x != nil && !f.Surely(x) {
			return false
		}
	}
	return true
}

// known reports whether a node is never unknown where all that it reads is recorded and was.
func (f *Frame) known(n int) bool {
	switch x := f.Space.Nodes[n]; x.Op {
	case cell.Ask:
		a := f.Space.Axes[f.Space.Questions[x.X].Axis]
		return a.Term == nil || f.Surely(a.Term)
	case cell.Opaque:
		return false
	case cell.Not:
		return f.known(x.A)
	case cell.And, cell.Or:
		return f.known(x.A) && f.known(x.B)
	case cell.If:
		return f.known(x.A) && f.known(x.B) && f.known(x.C)
	}
	return true
}

// formula makes the variables of a formula's axis in a row, once.
func (c *Clauses) formula(row, axis int) *stretch {
	f, s := c.frame, c.frame.Space
	a := s.Axes[axis]
	if !a.Limb {
		row = 0
	}
	if x := c.formulas[row][axis]; x != nil {
		return x
	}
	x := &stretch{known: c.Var(), above: c.order(len(a.Cuts))}
	c.formulas[row][axis] = x
	c.Worked = append(c.Worked, Worked{row, axis})
	if t := f.tables[axis]; t != nil {
		for k, out := range t.out {
			not := c.unless(row, t, k)
			if out == cell.NotRecorded {
				c.Add(append(not, -x.known)...)
				continue
			}
			c.Add(append(slices.Clone(not), x.known)...)
			c.Add(append(slices.Clone(not), x.from(c, out))...)
			c.Add(append(not, x.upTo(c, out))...)
		}
		return x
	}
	var nevers []int
	for _, i := range a.Inputs { // so that they are in what is found
		if c.line(f.at[c.Rows][row][i]).never != 0 {
			nevers = append(nevers, i)
		}
	}
	strict := a.Linear != nil || !chooses(a.Term)
	if f.sure[axis] {
		c.sure(row, a, x, nevers)
	}
	if a.Linear != nil {
		c.linear(row, a, x)
	}
	if strict {
		for _, i := range a.Inputs {
			c.Add(-x.known, c.line(f.at[c.Rows][row][i]).known)
		}
	}
	return x
}

// unless gives the members of a clause that says something of one combination.
func (c *Clauses) unless(row int, t *table, k int) (not []Lit) {
	for j, n := range t.cells(k) {
		l := c.line(c.frame.at[c.Rows][row][t.inputs[j]])
		if n == c.frame.Space.Axes[t.inputs[j]].Count() {
			not = append(not, l.known)
			continue
		}
		not = append(not, -l.known, -c.on(row, t.inputs[j], func(cell int) bool { return cell == n }))
	}
	return not
}

// chooses reports whether a term may leave some of what it reads out of account.
func chooses(t *cell.Term) bool {
	switch {
	case t == nil:
		return false
	case t.Op == cell.Choose || t.Op == cell.Asked || t.Op == cell.Holds:
		return true
	}
	return chooses(t.A) || chooses(t.B) || slices.ContainsFunc(t.Of, chooses)
}

// maxNevers is how many dates that may never have been are told apart in one formula.
const maxNevers = 3

// sure binds a formula that can be worked out of all that is recorded and was. Where one of its dates never was, its value
// is the same whatever else it reads: none, or beyond every cut.
func (c *Clauses) sure(row int, a *cell.Axis, x *stretch, nevers []int) {
	f, s := c.frame, c.frame.Space
	var missing []Lit
	for _, i := range a.Inputs {
		missing = append(missing, -c.line(f.at[c.Rows][row][i]).known)
	}
	if len(nevers) == 0 {
		c.Add(append(missing, x.known)...)
		return
	}
	if len(nevers) > maxNevers || a.Linear == nil {
		return
	}
	n := f.asks[a.Index]
	plan, work := s.Plan(n), s.NewCase()
	for set := range 1 << len(nevers) {
		not := slices.Clone(missing)
		r := s.Blank()
		for _, i := range a.Inputs {
			r.Value[i], r.Recorded[i] = middle(s.Axes[i]), true
		}
		for j, i := range nevers {
			never := c.line(f.at[c.Rows][row][i]).never
			if set>>j&1 == 1 {
				never = -never
				r.Value[i], _ = s.Axes[i].Never()
			}
			not = append(not, never)
		}
		if set == 0 {
			c.Add(append(not, x.known)...)
			continue
		}
		s.WorkOn(work, r, plan)
		out := work.Cell[a.Index]
		if out == cell.NotRecorded {
			c.Add(append(not, -x.known)...)
			continue
		}
		c.Add(append(slices.Clone(not), x.known)...)
		c.Add(append(slices.Clone(not), x.from(c, out))...)
		c.Add(append(not, x.upTo(c, out))...)
	}
}

// middle gives a plausible value of a measure that is not never.
func middle(a *cell.Axis) float64 {
	for n := a.Count() - 1; n >= 0; n-- {
		if span, ok := a.Plausible(n); ok && a.Cells == nil {
			return a.Nice(span)
		}
	}
	return 0
}
