package reason

import (
	"math/big"
	"slices"

	"crus/engine/vocab"
)

// maxCompletions is how many completions of the measures that bear on one result are tried.
const maxCompletions = 1 << 16

// maxQuiet is how many in a row may bring no new result before a provisional one is left at that.
const maxQuiet = 1 << 12

// maxFree is how many undecided rules are combined freely where completions can't be tried.
const maxFree = 12

// instance is a rule as one limb (or the person) sees it, with what completing can make of it.
type instance struct {
	rule  *rule
	own   truth
	table *table // nil: fixed
	over  []int  // the instances that override it; they come before it
	forms []form // of the advice on the choice in question
}

// form is one advice with a number, and what completing can make of it.
type form struct {
	*advice
	value float64
	known bool
	off   *Uncertainty
	table *table
}

// question is one result (a choice or caution) with all that bears on it.
type question struct {
	c         *completer
	instances []*instance               // each after those that override it
	vars      []int                     // the variables that bear on it
	sampled   map[int]bool              // those whose cells some table does not show
	classes   [][]int                   // of each variable: a cell of each class of cells that behave alike
	member    [][]int                   // of each variable: the class of each cell
	answer    func(cell []int) Verdict  // for cell numbers indexed by variable
	effects   func(cell []int) []effect // on a choice; what they give is used up by the next call
	base      Verdict
}

// answers is what exploring a question gave.
type answers struct {
	provisional bool
	agreed      *agreement // where every completion gives one and the same other result
	could       []possibility
	explored    *Explored
	matter      []int           // the variables that can change the result
	settles     map[int]float64 // of each: the share of its cells that settle the result alone
}

// agreement is the verdict that every completion gives, with the effects on a choice in one of them.
type agreement struct {
	Verdict
	effects []effect
}

// possibility is another verdict and a smallest set of cells found that brings it about.
type possibility struct {
	Verdict
	when  []bracket
	other bool // there are other ways to it
}

// bracket is some cells of one variable, in order; neighbours where the cells have an order.
type bracket struct {
	variable int
	cells    []int
	example  bool // just the value, not the part of the range that it stands for
}

func (q *question) tables() []*table {
	var out []*table
	for _, in := range q.instances {
		if in.table != nil {
			out = append(out, in.table)
		}
		for _, f := range in.forms {
			if f.table != nil {
				out = append(out, f.table)
			}
		}
	}
	return out
}

// explore tries the completions, as the person or the limb on a side sees them.
func (q *question) explore(side string) answers {
	ts := q.tables()
	if len(ts) == 0 {
		return answers{}
	}
	q.sampled = map[int]bool{}
	whole, stuck := true, false
	for _, t := range ts {
		whole, stuck = whole && t.whole, stuck || t.stuck()
		for d, v := range t.vars {
			if !slices.Contains(q.vars, v) {
				q.vars = append(q.vars, v)
			}
			if t.sampled[d] {
				q.sampled[v] = true
			}
		}
	}
	exact := len(q.sampled) == 0
	q.c.order(q.vars, side)
	out := answers{settles: map[int]float64{}}
	total := big.NewInt(1)
	if whole {
		q.alike(ts)
		for i := range q.vars {
			total.Mul(total, big.NewInt(int64(len(q.classes[i]))))
		}
	} else {
		for _, v := range q.vars {
			total.Mul(total, big.NewInt(int64(max(1, len(q.c.vars[v].values)))))
		}
	}
	tried := 0
	all := whole && total.IsInt64() && total.Int64() <= maxCompletions
	switch {
	case all:
		tried = int(total.Int64())
		q.every(&out)
	case whole:
		tried = q.some(&out, total)
	}
	if !all || !exact || stuck { // that samples agree proves nothing
		out.agreed = nil
		switch a := q.free(); {
		case a != nil && a.Same(q.base):
			out.provisional, out.could, out.matter = false, nil, nil
		case a != nil:
			out.agreed = a
		case !out.provisional:
			out.provisional, out.matter = true, q.live()
		}
	}
	if out.agreed != nil && q.asks() { // it is not so yet: only once that is recorded
		out.agreed = nil
		out.provisional, out.matter = true, q.vars
	}
	if out.agreed != nil {
		return answers{agreed: out.agreed}
	}
	if !exact && len(q.vars) > 1 { // samples don't show that a measure settles a result alone
		out.settles = map[int]float64{}
	}
	if out.provisional || !all {
		out.explored = &Explored{Tried: tried, Of: total.String(), Complete: all && exact && !stuck}
	}
	return out
}

// stuck reports whether the table has a completion that can't be worked out whatever is recorded.
func (t *table) stuck() bool {
	return slices.Contains(t.truth, unknown) || slices.Contains(t.known, false)
}

// every tries all completions.
func (q *question) every(out *answers) {
	g := q.grid()
	for k, v := range g.kinds {
		if !v.Same(q.base) {
			out.provisional = true
			p := possibility{Verdict: v}
			p.when, p.other = g.smallest(k)
			out.could = append(out.could, p)
		}
	}
	if !out.provisional {
		return
	}
	if len(g.kinds) == 1 {
		cell := make([]int, len(q.c.vars))
		for i, v := range q.vars {
			cell[v] = q.classes[i][0]
		}
		out.agreed = q.agreement(g.kinds[0], cell)
	}
	for i := range q.vars {
		if share := g.share(i); share >= 0 {
			out.matter = append(out.matter, q.vars[i])
			out.settles[q.vars[i]] = share
		}
	}
	if out.matter == nil { // whatever the values are, once they are recorded
		out.matter = q.vars
		if len(q.vars) == 1 {
			out.settles[q.vars[0]] = 1
		}
	}
	sortPossibilities(out.could)
}

// some tries as many completions as are allowed, spread evenly; what they show is true, but more is
// possible. Steps of the golden ratio, without a common divisor with the number of completions, turn
// every variable. Once a result is known to be provisional, many in a row that bring nothing new end it.
// It gives how many were tried.
func (q *question) some(out *answers, total *big.Int) (tried int) {
	step := q.digits(stride(total))
	at := make([]int, len(q.vars)) // the completion's number, in digits of the variables' classes
	cell := make([]int, len(q.c.vars))
	kinds := []Verdict{q.base}
	news := 0 // when the last new result came
	for ; tried < maxCompletions && (!out.provisional || tried-news < maxQuiet); tried++ {
		for i, v := range q.vars {
			cell[v] = q.classes[i][at[i]]
		}
		if v := q.answer(cell); !slices.ContainsFunc(kinds, v.Same) {
			kinds, news = append(kinds, v), tried
			p := possibility{Verdict: v, other: true}
			for _, x := range q.vars {
				p.when = append(p.when, bracket{x, []int{cell[x]}, q.sampled[x]})
			}
			out.could = append(out.could, p)
			out.provisional, out.matter = true, q.live()
		}
		carry := 0
		for i := len(at) - 1; i >= 0; i-- {
			sum := at[i] + step[i] + carry
			at[i], carry = sum%len(q.classes[i]), sum/len(q.classes[i])
		}
	}
	sortPossibilities(out.could)
	return tried
}

// stride gives a number near total times the golden ratio that has no divisor in common with it.
func stride(total *big.Int) *big.Int {
	one := big.NewInt(1)
	step := new(big.Int).Mul(total, big.NewInt(618034))
	step.Div(step, big.NewInt(1000000))
	for new(big.Int).GCD(nil, nil, step, total).Cmp(one) != 0 {
		step.Add(step, one)
	}
	return step
}

// digits writes the number of a completion as a class of each variable.
func (q *question) digits(n *big.Int) []int {
	out := make([]int, len(q.vars))
	rest, digit := new(big.Int).Set(n), new(big.Int)
	for i := len(q.vars) - 1; i >= 0; i-- {
		rest.QuoRem(rest, big.NewInt(int64(len(q.classes[i]))), digit)
		out[i] = int(digit.Int64())
	}
	return out
}

// agreement keeps what a completion gives.
func (q *question) agreement(v Verdict, cell []int) *agreement {
	a := &agreement{Verdict: v}
	if q.effects != nil {
		a.effects = slices.Clone(q.effects(cell))
	}
	return a
}

// asks reports whether anything that bears on the question asks if a missing measure is recorded.
func (q *question) asks() bool {
	return slices.ContainsFunc(q.tables(), func(t *table) bool { return t.asks })
}

// free gives the verdict that comes out however the undecided rules do, each free to hold or not;
// nil where it is not always the same. Completions can do no more than that, since real rules hang
// together through their measures.
func (q *question) free() *agreement {
	var free []*instance
	for _, in := range q.instances {
		if in.table != nil {
			free = append(free, in)
		}
		for _, f := range in.forms {
			if f.table != nil {
				return nil // a number that is not known can be any
			}
		}
	}
	if len(free) > maxFree {
		return nil
	}
	held := make([]instance, len(free))
	for i, in := range free {
		held[i] = *in
		in.table = nil
	}
	defer func() {
		for i, in := range free {
			*in = held[i]
		}
	}()
	var first *agreement
	for bits := range 1 << len(free) {
		for i, in := range free {
			in.own = no
			if bits>>i&1 == 1 {
				in.own = yes
			}
		}
		switch v := q.answer(nil); {
		case first == nil:
			first = q.agreement(v, nil)
		case !v.Same(first.Verdict):
			return nil
		}
	}
	return first
}

// decide works a choice out with every rule's truth and every formula's value taken from its table.
func (q *question) decide(c *vocab.Choice) {
	state := make([]force, len(q.instances))
	var effects []effect
	q.effects = func(cell []int) []effect {
		effects = effects[:0]
		for i, in := range q.instances {
			own := in.own
			if in.table != nil {
				own = in.table.truthAt(cell)
			}
			state[i] = overridden(own, in.over, state)
			if state[i] != fired {
				continue
			}
			for _, f := range in.forms {
				v, known := f.value, f.known
				if f.table != nil {
					v, known = f.table.valueAt(cell)
				}
				if known {
					effects = alsoSays(effects, effect{advice: f.advice, value: v})
				}
			}
		}
		return effects
	}
	q.answer = func(cell []int) Verdict { return q.c.e.decideChoice(c, q.effects(cell)) }
}

// alsoSays adds an effect; what a rule says alike on both limbs counts once.
func alsoSays(effects []effect, f effect) []effect {
	if (f.formula == nil || !f.rule.Limb) && slices.ContainsFunc(effects, func(g effect) bool { return g.advice == f.advice }) {
		return effects
	}
	return append(effects, f)
}

func (t *table) truthAt(cell []int) truth {
	if !t.whole {
		return unknown
	}
	return t.truth[t.at(cell)]
}

func (t *table) valueAt(cell []int) (float64, bool) {
	if !t.whole {
		return 0, false
	}
	i := t.at(cell)
	return t.value[i], t.known[i]
}
