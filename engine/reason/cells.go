package reason

import (
	"fmt"
	"math"
	"slices"
	"sort"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/vocab"
)

// cells are the parts of a measure's plausible range within which every condition behaves the
// same, in order, each with a value from it. inexact: some conditions also look at the measure in
// ways that constants don't show (a formula, a comparison with another measure), so for these the
// values are samples and something between them can have been missed.
type cells struct {
	values  []ref.Val
	inexact bool
	ordered bool       // neighbouring cells can be named together
	options [][]string // of a measure with options: the words that each cell stands for
	show    func(from, to int) string
	lies    func(cell int, cut ref.Val) int // where a cell lies of a constant: -1 below, 0 on it, 1 above; nil: every cell is told apart
}

// maxSingles is how many integers are tried one by one.
const maxSingles = 40

// names writes some cells, in order, for people.
func (c cells) names(numbers []int) string {
	if c.ordered {
		return c.show(numbers[0], numbers[len(numbers)-1])
	}
	var out []string
	for _, n := range numbers {
		if c.options != nil {
			out = append(out, c.options[n]...)
		} else {
			out = append(out, c.show(n, n))
		}
	}
	return list(out, "or")
}

func cellsOf(m *vocab.Measure, u *usage, asOf *clinical.Date) cells {
	if u == nil {
		u = &usage{}
	}
	switch m.Kind {
	case vocab.YesNo:
		return cells{values: []ref.Val{types.False, types.True}, show: func(from, to int) string { return [...]string{"no", "yes"}[from] }}
	case vocab.Option:
		return optionCells(m, u)
	case vocab.Grade:
		return gradeCells(m, u)
	case vocab.Count:
		return countCells(m, u)
	case vocab.Date:
		return dateCells(m, u, asOf)
	case vocab.Text: // can only be asked whether it is recorded
		return cells{values: []ref.Val{types.String("")}, show: func(from, to int) string { return "recorded" }}
	}
	return quantityCells(m, u)
}

func optionCells(m *vocab.Measure, u *usage) cells {
	mentioned := map[string]bool{}
	for _, v := range u.cuts {
		if s, ok := v.(types.String); ok {
			mentioned[string(s)] = true
		}
	}
	var rest []string
	out := cells{}
	for _, o := range m.Options {
		if mentioned[o] || u.other {
			out.values = append(out.values, types.String(o))
			out.options = append(out.options, []string{words(o)})
		} else {
			rest = append(rest, o)
		}
	}
	if len(rest) > 0 {
		out.values = append(out.values, types.String(rest[0]))
		out.options = append(out.options, plain(rest))
	}
	out.show = func(from, to int) string { return list(out.options[from], "or") }
	out.lies = func(cell int, cut ref.Val) int {
		if out.values[cell] == cut {
			return 0
		}
		return 1
	}
	return out
}

// line cuts a range of numbers at some points: the cells are the open stretches between them and
// the points themselves.
type line struct {
	lo, hi []float64 // of each cell; equal for a point
}

func cutLine(lo, hi float64, cuts []float64) line {
	sort.Float64s(cuts)
	var l line
	add := func(a, b float64) { l.lo, l.hi = append(l.lo, a), append(l.hi, b) }
	at := lo
	open := false // whether at itself is already a cell
	for i, c := range cuts {
		if c < lo || c > hi || i > 0 && c == cuts[i-1] {
			continue
		}
		if c > at {
			add(at, c)
		}
		add(c, c)
		at, open = c, true
	}
	if at < hi || !open {
		add(at, hi)
	}
	return l
}

// span names the cells from to to of a line.
func (l line) span(from, to int, show func(float64) string) string {
	first, last := from == 0, to == len(l.lo)-1
	a, b := l.lo[from], l.hi[to]
	point := func(i int) bool { return l.lo[i] == l.hi[i] }
	switch {
	case first && last:
		return "any value"
	case from == to && point(from):
		return show(a)
	case first && point(to):
		return show(b) + " or less"
	case first:
		return "less than " + show(b)
	case last && point(from):
		return show(a) + " or more"
	case last:
		return "more than " + show(a)
	}
	low, high := "more than "+show(a), "less than "+show(b)
	switch {
	case point(from) && point(to):
		return "from " + show(a) + " to " + show(b)
	case point(from):
		return "from " + show(a) + " to less than " + show(b)
	case point(to):
		return low + " and up to " + show(b)
	}
	return low + " and " + high
}

func quantityCells(m *vocab.Measure, u *usage) cells {
	var cuts []float64
	exact := map[float64]clinical.Quantity{} // a cut in another unit can have more decimals than are kept of this one
	for _, v := range u.cuts {
		if at, ok := number(v, m.Unit); ok {
			cuts = append(cuts, at)
			exact[at] = v.(clinical.Quantity).WithUnit(m.Unit)
		}
	}
	l := cutLine(m.Plausible.Lo, m.Plausible.Hi, cuts)
	out := cells{ordered: true, inexact: u.other}
	quantity := func(x float64) clinical.Quantity {
		if q, ok := exact[x]; ok {
			return q
		}
		q, _ := clinical.NewQuantity(x, m.Unit)
		return q
	}
	var of []int // the part of the line that each value stands for
	for i := range l.lo {
		at := []float64{tidy((l.lo[i] + l.hi[i]) / 2)}
		if u.other {
			at = append(at, inside(m.Plausible, l, i)...)
			slices.Sort(at)
		}
		for _, x := range slices.Compact(at) {
			out.values, of = append(out.values, quantity(x)), append(of, i)
		}
	}
	out.show = func(from, to int) string {
		return l.span(of[from], of[to], func(x float64) string { return quantity(x).Short() })
	}
	out.lies = func(cell int, cut ref.Val) int {
		at, _ := number(cut, m.Unit)
		switch lo, hi := l.lo[of[cell]], l.hi[of[cell]]; {
		case lo == hi && lo == at:
			return 0
		case hi <= at:
			return -1
		}
		return 1
	}
	return out
}

// inside gives samples from a part of the line, on a grid over the plausible range: for conditions
// that look at the measure in ways that constants don't show.
func inside(plausible vocab.Span, l line, i int) (at []float64) {
	const steps = 8
	for k := range steps + 1 {
		x := tidy(plausible.Lo + (plausible.Hi-plausible.Lo)*float64(k)/steps)
		if x > l.lo[i] && x < l.hi[i] || x == plausible.Lo && i == 0 || x == plausible.Hi && i == len(l.lo)-1 {
			at = append(at, x)
		}
	}
	return at
}

func gradeCells(m *vocab.Measure, u *usage) cells {
	n := len(m.Scale.Grades)
	var cuts []int
	for _, v := range u.cuts {
		if g, ok := v.(clinical.Grade); ok {
			cuts = append(cuts, g.Rank)
		}
	}
	return stepCells(0, n-1, cuts, u.other, func(i int) ref.Val { g, _ := m.Scale.At(i); return g },
		func(i int) string { return m.Scale.Grades[i] }, func(cut ref.Val) float64 { g, _ := cut.(clinical.Grade); return float64(g.Rank) })
}

// samples adds a few steps over a whole range to some cuts, where constants don't show what conditions
// look at.
func samples(cuts []int, lo, hi int) []int {
	const steps = 8
	for i := 0; i <= steps; i++ {
		cuts = append(cuts, lo+(hi-lo)*i/steps)
	}
	return cuts
}

func countCells(m *vocab.Measure, u *usage) cells {
	var cuts []int
	for _, v := range u.cuts {
		if i, ok := v.(types.Int); ok {
			cuts = append(cuts, int(i))
		}
	}
	lo, hi := int(math.Ceil(m.Plausible.Lo)), int(math.Floor(m.Plausible.Hi))
	single := u.other && hi-lo <= maxSingles
	if u.other && !single {
		cuts = samples(cuts, lo, hi)
	}
	out := stepCells(lo, hi, cuts, single, func(i int) ref.Val { return types.Int(i) }, func(i int) string { return trimNumber(float64(i)) },
		func(cut ref.Val) float64 { i, _ := cut.(types.Int); return float64(i) })
	out.inexact = u.other && !single
	return out
}

// stepCells cuts a range of whole steps: each cut is a cell, and so is each stretch between two. place
// says where a constant lies.
func stepCells(lo, hi int, cuts []int, single bool, value func(int) ref.Val, label func(int) string, place func(cut ref.Val) float64) cells {
	if single {
		cuts = nil
		for i := lo; i <= hi; i++ {
			cuts = append(cuts, i)
		}
	}
	slices.Sort(cuts)
	var from, to []int
	out := cells{ordered: true}
	at := lo
	add := func(upTo int) {
		from, to, at = append(from, at), append(to, upTo), upTo+1
		out.values = append(out.values, value(from[len(from)-1]))
	}
	for _, c := range cuts {
		if c < at || c > hi {
			continue
		}
		if c > at {
			add(c - 1)
		}
		add(c)
	}
	if at <= hi {
		add(hi)
	}
	out.show = func(a, b int) string {
		x, y := from[a], to[b]
		switch {
		case x == lo && y == hi:
			return "any value"
		case x == y:
			return label(x)
		case x == lo:
			return label(y) + " or less"
		case y == hi:
			return label(x) + " or more"
		}
		return label(x) + " to " + label(y)
	}
	out.lies = func(cell int, cut ref.Val) int {
		switch at := place(cut); {
		case float64(to[cell]) < at:
			return -1
		case float64(from[cell]) > at:
			return 1
		}
		return 0
	}
	return out
}

// dateCells cuts the time up to the assessment into days; since() is all that looks at a date. Never stands
// one day behind the longest time: it lies above every constant, as the longest times do, so it is one
// cell with them. A constant longer than any life lies between the two and parts them.
func dateCells(m *vocab.Measure, u *usage, asOf *clinical.Date) cells {
	if asOf == nil {
		return cells{inexact: true}
	}
	const longest = 120 * 365
	last := longest
	if m.Never {
		last++
	}
	day, _ := clinical.UnitByCode("d")
	place := func(cut ref.Val) float64 { at, _ := number(cut, day); return min(max(at, -1), longest+0.5) }
	var cuts []int
	for _, v := range u.cuts {
		if _, ok := number(v, day); ok {
			cuts = append(cuts, int(math.Floor(place(v))), int(math.Ceil(place(v))))
		}
	}
	if u.other {
		cuts = samples(cuts, 0, longest)
	}
	out := stepCells(0, last, cuts, false, func(days int) ref.Val {
		if days > longest {
			return clinical.Never()
		}
		return asOf.Before(days).AsOf(*asOf)
	}, func(days int) string { return fmt.Sprintf("%d days", days) }, place)
	out.inexact = u.other
	show := out.show
	out.show = func(from, to int) string {
		said := show(from, to) + " before the assessment"
		switch {
		case !m.Never || to < len(out.values)-1:
			return said
		case from == to && out.values[from] == clinical.Never():
			return clinical.NeverWord
		}
		return said + " or " + clinical.NeverWord
	}
	return out
}
