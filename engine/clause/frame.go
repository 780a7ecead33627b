package clause

import (
	"crus/engine/cell"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// Frame is what all clauses of a space share. It is not changed after New and may be used by several goroutines.
//
// What it knows of a formula's axis, or of an unclear part:
//   - where everything that it reads has few values, which cell each combination gives (a table);
//   - where it is linear, or made of operations that can't fail, that it is known where its inputs are recorded;
//   - what it gives where a date never was.
type Frame struct {
	Space   *cell.Space
	Missing []bool // of each measure's axis: it may be missing, as some condition asks recorded() of the measure

	limb    []bool // of each node: it reads a limb
	cost    []int  // of each node: how many formulas and unclear parts are below it
	asks    map[int]int
	opaques map[int]int // a node of each unclear part
	tables  map[int]*table
	unclear map[int]*table
	sure    map[int]bool // formulas' axes that are known where all that they read is recorded and was
	lines   [3][]*Line   // by the number of rows
	at      [3][2][]int  // by the number of rows, and the row: the line of each measure's axis
}

// New makes the frame of a space.
func New(s *cell.Space) *Frame {
	f := &Frame{Space: s, Missing: missing(s), asks: map[int]int{}, opaques: map[int]int{}, tables: map[int]*table{}, unclear: map[int]*table{}, sure: map[int]bool{}}
	f.limb, f.cost = make([]bool, len(s.Nodes)), make([]int, len(s.Nodes))
	for i, n := range s.Nodes {
		f.cost[i] = f.costOf(n)
		switch n.Op {
		case cell.Ask:
			f.limb[i] = s.Axes[s.Questions[n.X].Axis].Limb
			f.asks[s.Questions[n.X].Axis] = i
		case cell.Recorded:
			f.limb[i] = s.Axes[n.X].Limb
		case cell.Opaque:
			f.limb[i] = s.Unclear[n.X].Limb
			f.opaques[n.X] = i
		case cell.Not:
			f.limb[i] = f.limb[n.A]
		case cell.And, cell.Or:
			f.limb[i] = f.limb[n.A] || f.limb[n.B]
		case cell.If:
			f.limb[i] = f.limb[n.A] || f.limb[n.B] || f.limb[n.C]
		}
	}
	for rows := 1; rows <= 2; rows++ {
		f.divide(rows)
	}
	f.tabulate()
	return f
}

// costOf counts the formulas and unclear parts below a node, each as often as it stands there.
func (f *Frame) costOf(n cell.Node) int {
	const most = 1 << 20
	switch n.Op {
	case cell.Ask:
		if f.Space.Questions[n.X].Axis >= f.Space.Measures {
			return 1
		}
	case cell.Opaque:
		return 4
	case cell.Not:
		return f.cost[n.A]
	case cell.And, cell.Or:
		return min(most, f.cost[n.A]+f.cost[n.B])
	case cell.If:
		return min(most, f.cost[n.A]+f.cost[n.B]+f.cost[n.C])
	}
	return 0
}

// missing says of each measure's axis whether it may be missing.
func missing(s *cell.Space) []bool {
	asked := map[*vocab.Measure]bool{}
	note := func(xs ...*ruleset.Expr) {
		for _, x := range xs {
			if x != nil {
				for _, r := range x.Reads {
					if r.Recorded && r.Measure != nil {
						asked[r.Measure] = true
					}
				}
			}
		}
	}
	for _, p := range s.Ruleset.Parts {
		note(p.Applies)
	}
	for _, x := range s.Facts {
		note(x.Expr)
	}
	for _, r := range s.Rules {
		note(r.Rule.When, r.Rule.Unless)
		for _, a := range r.Advise {
			note(a.Formula)
		}
	}
	for _, x := range s.Cautions {
		note(x.Caution.When)
	}
	out := make([]bool, s.Measures)
	for i, a := range s.Axes[:s.Measures] {
		out[i] = asked[a.Measure]
	}
	return out
}

// AskNode gives a node that asks about a formula's axis, or has an unclear part answered: once it is worked out of a row,
// the axis is too.
func (f *Frame) AskNode(axis int) int { return f.asks[axis] }

// UnclearNode gives the node of an unclear part.
func (f *Frame) UnclearNode(i int) int { return f.opaques[i] }

// Exact reports whether clauses bind a formula's axis exactly to what it reads.
func (f *Frame) Exact(axis int) bool { return f.tables[axis] != nil }
