package reason

// grid is every completion of what bears on a question, cells that behave alike taken together, with
// the verdict of each. Entries are numbered with the last variable fastest.
type grid struct {
	q      *question
	size   []int // classes of each variable
	stride []int
	whole  [][]int   // all classes of each variable
	kinds  []Verdict // distinct verdicts
	of     []int     // the verdict of each entry
}

func (q *question) grid() *grid {
	g := &grid{q: q, stride: make([]int, len(q.vars))}
	n := 1
	for i := range q.vars {
		k := len(q.classes[i])
		all := make([]int, k)
		for j := range all {
			all[j] = j
		}
		g.size, g.whole = append(g.size, k), append(g.whole, all)
		n *= k
	}
	s := 1
	for i := len(g.size) - 1; i >= 0; i-- {
		g.stride[i] = s
		s *= g.size[i]
	}
	g.of = make([]int, n)
	cell, at := make([]int, len(q.c.vars)), make([]int, len(q.vars))
	for e := range g.of {
		for i, v := range q.vars {
			cell[v] = q.classes[i][at[i]]
		}
		g.of[e] = g.kind(q.answer(cell))
		for i := len(at) - 1; i >= 0; i-- {
			if at[i]++; at[i] < g.size[i] {
				break
			}
			at[i] = 0
		}
	}
	return g
}

func (g *grid) kind(v Verdict) int {
	for i, k := range g.kinds {
		if k.Same(v) {
			return i
		}
	}
	g.kinds = append(g.kinds, v)
	return len(g.kinds) - 1
}

// share gives the share of a variable's cells that settle the result whatever the others are, or
// -1 where the variable makes no difference.
func (g *grid) share(i int) float64 {
	matters := false
	settled := make([]int, g.size[i]) // verdict+1 of each class so far; -1: several
	for e, k := range g.of {
		c := e / g.stride[i] % g.size[i]
		if c > 0 && g.of[e-g.stride[i]] != k {
			matters = true
		}
		switch settled[c] {
		case 0:
			settled[c] = k + 1
		case k + 1:
		default:
			settled[c] = -1
		}
	}
	if !matters {
		return -1
	}
	cellsSettled := 0
	for _, class := range g.q.member[i] {
		if settled[class] > 0 {
			cellsSettled++
		}
	}
	return float64(cellsSettled) / float64(len(g.q.member[i]))
}

// smallest finds few cells that bring a verdict about whatever the other measures are: from some
// completions with that verdict, every measure is let go that can be, and then the cells of the
// others are widened. The second result says whether other cells bring the verdict about too.
func (g *grid) smallest(kind int) ([]bracket, bool) {
	const starts = 24
	var best [][]int
	bestLeft := len(g.size) + 1
	seen := 0
	for e, k := range g.of {
		if k != kind {
			continue
		}
		if seen++; seen > starts || bestLeft <= 1 {
			break
		}
		held := make([][]int, len(g.size)) // the classes in which each variable is held
		for i := range held {
			held[i] = []int{e / g.stride[i] % g.size[i]}
		}
		left := len(held)
		for i := range held {
			old := held[i]
			held[i] = g.whole[i]
			if g.all(held, kind) {
				left--
			} else {
				held[i] = old
			}
		}
		if left < bestLeft {
			best, bestLeft = held, left
		}
	}
	var out []bracket
	for i := range best {
		if len(best[i]) < g.size[i] {
			out = append(out, g.widen(best, i, kind))
		}
	}
	held, all := 1, 0
	for _, classes := range best {
		held *= len(classes)
	}
	for _, k := range g.of {
		if k == kind {
			all++
		}
	}
	return out, held < all
}

// widen takes in the cells that bring the same about, together with all that the other variables are
// held in: neighbours where the cells have an order, any where they have none. Samples stand for
// themselves alone.
func (g *grid) widen(held [][]int, i, kind int) bracket {
	member := g.q.member[i]
	classes := held[i]
	good := map[int]bool{classes[0]: true}
	takes := func(cell int) bool {
		class := member[cell]
		if _, known := good[class]; !known {
			held[i] = []int{class}
			good[class] = g.all(held, kind)
		}
		if good[class] {
			classes = addInt(classes, class)
		}
		return good[class]
	}
	from := 0
	for member[from] != classes[0] {
		from++
	}
	b := bracket{g.q.vars[i], []int{from}, g.q.sampled[g.q.vars[i]]}
	switch v := g.q.c.vars[b.variable]; {
	case b.example:
	case v.ordered:
		for k := from - 1; k >= 0 && takes(k); k-- {
			b.cells = append([]int{k}, b.cells...)
		}
		for k := from + 1; k < len(member) && takes(k); k++ {
			b.cells = append(b.cells, k)
		}
	default:
		for k := from + 1; k < len(member); k++ {
			if takes(k) {
				b.cells = append(b.cells, k)
			}
		}
	}
	held[i] = classes
	return b
}

func addInt(list []int, x int) []int {
	for _, y := range list {
		if x == y {
			return list
		}
	}
	return append(list[:len(list):len(list)], x)
}

// all reports whether every entry whose classes are among those held has a verdict.
func (g *grid) all(held [][]int, kind int) bool {
	digits := make([]int, len(held))
	at := 0
	for i, classes := range held {
		at += classes[0] * g.stride[i]
	}
	for {
		if g.of[at] != kind {
			return false
		}
		i := len(held) - 1
		for ; i >= 0; i-- {
			old := held[i][digits[i]]
			digits[i] = (digits[i] + 1) % len(held[i])
			at += (held[i][digits[i]] - old) * g.stride[i]
			if digits[i] > 0 {
				break
			}
		}
		if i < 0 {
			return true
		}
	}
}
