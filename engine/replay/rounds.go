package replay

import (
	"cmp"
	"math/rand/v2"
	"slices"

	"crus/engine/cell"
)

// valuesOf gives values of a measure that stand for all plausible ones: one from each cell, and where the measure is asked
// of both limbs, one from each part that the cells of both axes leave.
func valuesOf(a, twin *cell.Axis) []float64 {
	line := *a
	var out []float64
	switch {
	case a.Cells != nil && twin != nil:
		seen := map[[2]int]bool{}
		for x := range a.Cells {
			if at := [2]int{a.Cells[x], twin.Cells[x]}; !seen[at] {
				seen[at] = true
				out = append(out, float64(x))
			}
		}
		return out
	case twin != nil:
		line.Cuts = append(slices.Clone(a.Cuts), twin.Cuts...)
		slices.SortFunc(line.Cuts, func(c, d cell.Cut) int {
			if c.At == d.At && c.Below != d.Below {
				if d.Below {
					return -1
				}
				return 1
			}
			return cmp.Compare(c.At, d.At)
		})
		line.Cuts = slices.Compact(line.Cuts)
	}
	for c := range line.Count() {
		if line.Possible(c) {
			if x, ok := line.Value(c); ok {
				out = append(out, x)
			}
		}
	}
	return out
}

// makeValues finds the values that are put in for each measure, and the cells in which they lie.
func (p *Program) makeValues() {
	s := p.space
	for i, a := range s.Axes[:s.Measures] {
		p.twins = append(p.twins, -1)
		for j, b := range s.Axes[:s.Measures] {
			if i != j && a.Measure == b.Measure {
				p.twins[i] = j
			}
		}
		var values []float64
		switch twin := p.twins[i]; {
		case twin >= 0 && twin < i:
			values = p.values[twin]
		case twin >= 0:
			values = valuesOf(a, s.Axes[twin])
		default:
			values = valuesOf(a, nil)
		}
		cells := make([]int, len(values))
		for k, x := range values {
			cells[k] = a.Cell(x)
		}
		p.values, p.cells = append(p.values, values), append(p.cells, cells)
	}
}

// At least and at most so many completions are tried on all rows at once, before what is still open is tried row by row.
// With as many as a measure has values, nothing is left of the rows on which it alone is missing.
const (
	leastTried = 4
	mostTried  = 16
)

// round is one completion of whatever is missing: the cell of each measure's axis that is put in on the rows of a left
// limb, and on those of a right one. Between the two, limb.x and other.x change places, so that both rows of a case are
// completed alike.
type round struct{ left, right []int }

// makeRounds chooses the completions: the first has the lowest value of each measure, the second the highest, and after as many as a measure has
// values, each of them had its turn. They are always the same for a ruleset.
func (p *Program) makeRounds() {
	r := rand.New(rand.NewPCG(1, 1))
	s := p.space
	tried := leastTried
	for _, values := range p.values {
		tried = min(max(tried, len(values)), mostTried)
	}
	turns := func(values int) []int {
		var out []int
		for len(out) < tried {
			deck := r.Perm(values)
			if out == nil { // the lowest, then the highest: most questions part them
				first := slices.Index(deck, 0)
				deck[0], deck[first] = 0, deck[0]
				if last := slices.Index(deck, values-1); last > 1 {
					deck[1], deck[last] = values-1, deck[1]
				}
			}
			out = append(out, deck...)
		}
		return out
	}
	left, right := make([][]int, s.Measures), make([][]int, s.Measures) // places among the values
	for i, a := range s.Axes[:s.Measures] {
		switch twin := p.twins[i]; {
		case !a.Limb:
			left[i] = turns(len(p.values[i]))
			right[i] = left[i]
		case twin >= 0 && twin < i:
			left[i], right[i] = right[twin], left[twin]
		default:
			left[i], right[i] = turns(len(p.values[i])), turns(len(p.values[i]))
		}
	}
	for k := range tried {
		var x round
		for i := range s.Measures {
			x.left, x.right = append(x.left, p.cells[i][left[i][k]]), append(x.right, p.cells[i][right[i][k]])
		}
		p.rounds = append(p.rounds, x)
	}
}

// fill writes the inputs of the circuit of completed rows for one round: what is known stays, what is missing gets the
// round's cells. before is the round of the same block that was filled in before it, nil for the first: of what the two
// have alike nothing is written.
func (w *worker) fill(r, before *round, b *Block, n int) {
	for i := range w.p.space.Measures {
		known := w.base.at(w.p.inputs.known[i])[:n]
		for k, slot := range w.p.filled.bits[i] {
			from, to := w.base.at(w.p.inputs.bits[i][k])[:n], w.later.at(slot)[:n]
			left, right := -uint64(r.left[i]>>k&1), -uint64(r.right[i]>>k&1)
			if before != nil && left == -uint64(before.left[i]>>k&1) && right == -uint64(before.right[i]>>k&1) {
				continue
			}
			if left == right {
				for j := range to {
					to[j] = from[j] | left&^known[j]
				}
				continue
			}
			right64 := b.Right[:n]
			for j := range to {
				to[j] = from[j] | (left^right64[j])&^known[j]
			}
		}
	}
}
