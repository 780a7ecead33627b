package cases

import (
	"math"
	"math/rand/v2"
	"slices"

	"crus/engine/cell"
)

// world is what a condition's questions could be answered by full assessments of what it reads: each combination of
// answers that was met, with a row that gives it.
type world struct {
	by       map[string]run
	keys     []string // in the order in which they were met
	complete bool     // every combination of cells was tried
}

// maxWorld is how many combinations of cells are tried, and maxTried how many drawn ones where there are more.
const (
	maxWorld  = 60_000
	maxTried  = 20_000
	maxAround = 100 // combinations that are looked around
)

// all gives the world of the condition.
func (st *study) all() *world {
	if st.world != nil {
		return st.world
	}
	w := &world{by: map[string]run{}, complete: true}
	st.world = w
	var choices [][]float64
	total := 1
	for _, i := range st.reads {
		values := st.values(i)
		choices = append(choices, values)
		total = min(total*max(1, len(values)), maxWorld+1)
		if a := st.Axes[i]; a.Step() == 0 && st.formulas(i) { // a formula may tell values of one cell apart
			w.complete = false
		}
	}
	row := st.Blank()
	row.Alone = !st.Limb
	try := func(pick func(n, d int) int) {
		for d, i := range st.reads {
			v := math.NaN()
			if k := len(choices[d]); k > 0 {
				v = choices[d][pick(k, d)]
			}
			row.Value[i], row.Recorded[i] = v, !math.IsNaN(v)
		}
		st.meet(row)
	}
	if total > maxWorld {
		w.complete = false
		dice := rand.New(rand.NewPCG(11, 13))
		for range maxTried {
			try(func(n, _ int) int { return dice.IntN(n) })
		}
		return w
	}
	for e := range total {
		rest := e
		try(func(n, _ int) int {
			at := rest % n
			rest /= n
			return at
		})
	}
	return w
}

// meet notes what a row gives, if it is new.
func (st *study) meet(row cell.Row) {
	r, ok := st.run(nil, "", row)
	if !ok || r.truth == cell.Unknown { // a formula can fail though everything is recorded
		return
	}
	key := r.key(0)[1:] + is(r.answer[0])
	if _, met := st.world.by[key]; !met {
		r.row = row.Clone()
		st.world.by[key] = r
		st.world.keys = append(st.world.keys, key)
	}
}

// values gives a value from each possible cell of a measure, and some of the plausible range where a formula reads it; NaN
// stands for not recorded where it is asked whether the measure is recorded.
func (st *study) values(i int) []float64 {
	a := st.Axes[i]
	var out []float64
	for c := range a.Count() {
		if v, ok := a.Value(c); ok {
			out = append(out, v)
		}
	}
	if a.Cells == nil && st.formulas(i) {
		lo, hi := a.Range()
		for _, v := range []float64{lo, lo + (hi-lo)/4, lo + (hi-lo)*3/4, hi} {
			if a.Step() > 0 {
				v = math.Round(v/a.Step()) * a.Step()
			}
			out = append(out, v)
		}
	}
	slices.Sort(out)
	out = slices.Compact(out)
	if slices.ContainsFunc(st.plan, func(n int) bool { return st.Nodes[n].Op == cell.Recorded && st.Nodes[n].X == i }) {
		out = append(out, math.NaN())
	}
	return out
}

// near gives values as values does, those of wide cells not far from the value that there is.
func (st *study) near(i int, from float64) []float64 {
	a, out := st.Axes[i], st.values(i)
	if math.IsNaN(from) {
		return out
	}
	var near []float64
	for c := range a.Count() {
		if v, ok := a.Near(c, from); ok {
			near = append(near, v)
		}
	}
	return append(near, out...)
}

// formulas reports whether a formula that the condition rests on reads a measure.
func (st *study) formulas(axis int) bool {
	return slices.ContainsFunc(st.plan, func(n int) bool {
		x := st.Nodes[n]
		switch x.Op {
		case cell.Ask:
			a := st.Axes[st.Space.Questions[x.X].Axis]
			return slices.Contains(a.Inputs, axis)
		case cell.Opaque:
			return slices.Contains(st.Unclear[x.X].Inputs, axis)
		}
		return false
	})
}

// pair is what could be added, so that a question is shown.
type pair struct {
	runs  []run // one that goes with a run of a worked case, or two
	alone bool  // they differ in the question only
}

// pair finds runs to add, so that question i is shown: alone where that can be, with few changes from a worked case; else
// together with others.
func (st *study) pair(i int) pair {
	if r := st.beside(st.runs, i); r != nil {
		return pair{[]run{*r}, true}
	}
	w := st.all()
	seen := map[string]run{}
	var deciding []run
	var sides [3]*run
	for _, k := range w.keys {
		r := w.by[k]
		if r.answer[i] == cell.Unknown {
			continue
		}
		if other, met := seen[r.key(i)+not(r.answer[i])]; met && other.truth != r.truth {
			return pair{[]run{other, r}, true}
		}
		seen[r.key(i)+is(r.answer[i])] = r
		if st.decides(r, i) {
			deciding = append(deciding, r)
			if sides[r.answer[i]] == nil {
				sides[r.answer[i]] = &r
			}
		}
	}
	if !w.complete { // not every combination was met: look around those that were
		for _, from := range deciding[:min(len(deciding), maxAround)] {
			if r := st.beside([]run{from}, i); r != nil {
				return pair{[]run{from, *r}, true}
			}
		}
	}
	if sides[cell.Yes] != nil && sides[cell.No] != nil {
		return pair{[]run{*sides[cell.Yes], *sides[cell.No]}, false}
	}
	return pair{}
}

// beside looks for a row that differs from one of some runs in one or two measures, and in question i only.
func (st *study) beside(runs []run, i int) *run {
	reads := st.Reads(st.Plan(st.questions[i].Node))
	var best *run
	consider := func(from run, row cell.Row) bool {
		r, ok := st.run(from.a, from.side, row)
		if !ok || r.answer[i] != cell.Yes-from.answer[i] || r.truth != cell.Yes-from.truth || r.key(i) != from.key(i) {
			return false
		}
		r.row = row.Clone()
		best = &r
		return true
	}
	for _, from := range runs {
		if !st.decides(from, i) {
			continue
		}
		row := from.row.Clone()
		for _, x := range reads {
			for _, v := range st.near(x, row.Value[x]) {
				old, was := row.Value[x], row.Recorded[x]
				row.Value[x], row.Recorded[x] = v, !math.IsNaN(v)
				if consider(from, row) {
					return best
				}
				row.Value[x], row.Recorded[x] = old, was
			}
		}
	}
	const most = 200 // runs times pairs are many
	for n, from := range runs {
		if n > most || !st.decides(from, i) {
			continue
		}
		row := from.row.Clone()
		for a, x := range reads {
			for _, y := range reads[a+1:] {
				for _, v := range st.near(x, row.Value[x]) {
					for _, u := range st.near(y, row.Value[y]) {
						old := [2]float64{row.Value[x], row.Value[y]}
						was := [2]bool{row.Recorded[x], row.Recorded[y]}
						row.Value[x], row.Value[y], row.Recorded[x], row.Recorded[y] = v, u, !math.IsNaN(v), !math.IsNaN(u)
						if consider(from, row) {
							return best
						}
						row.Value[x], row.Value[y], row.Recorded[x], row.Recorded[y] = old[0], old[1], was[0], was[1]
					}
				}
			}
		}
	}
	return nil
}
