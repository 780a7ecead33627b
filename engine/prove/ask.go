package prove

import (
	"context"
	"math/rand/v2"
	"slices"

	"crus/engine/cell"
	"crus/engine/clause"
)

// The bounds of one question, after which it is undecided.
const (
	maxSteps  = 1000      // solutions that are looked at
	maxPassed = 12        // solutions that could be neither made real nor excluded
	maxWork   = 2_000_000 // nodes that are worked out to make solutions real
)

// query is a question: whether some assessment is such.
type query struct {
	*clause.Clauses
	assume []clause.Lit
	wish   []clause.Lit // assumed as long as it can be
	nodes  []int        // that accept reads, and the terms' nodes
	most   int          // solutions that are looked at; 0: maxSteps
	accept func(cs []*cell.Case) bool
	shown  func(rows []cell.Row) bool // whether package reason shows the same; nil: it is not asked
	hangs  []clause.Lit               // what accept hangs on besides nodes: which pieces of advice are in force
	says   []cell.Say                 // the same, as advice
	exact  bool                       // it hangs on nothing else, such as the numbers that formulas advise
	maybe  func(t *trial) bool        // whether the numbers leave it open; nil: that is not known
	guard  []clause.Lit               // added to a clause that holds for this question only, not for others of the same clauses
}

// answer is what became of a question.
type answer struct {
	status Status // Found, Absent, Undecided
	rows   []cell.Row
	doubts []Doubt

	rules []int // of a question about several rules: the rules, and an answer each
	parts []answer
}

// asker asks questions of one ruleset. It is used by one goroutine.
type asker struct {
	*cell.Space
	ctx   context.Context
	frame *clause.Frame
	cases []*cell.Case
	usual [3][]float64 // by the number of rows: a value for each line that a question does not look at
}

func newAsker(ctx context.Context, f *clause.Frame) *asker {
	a := &asker{Space: f.Space, ctx: ctx, frame: f, cases: []*cell.Case{f.Space.NewCase(), f.Space.NewCase()}}
	for rows := 1; rows <= 2; rows++ {
		for _, l := range f.Lines(rows) {
			x, ok := 0.0, false
			for n := (l.Count() - 1) / 2; n < 2*l.Count() && !ok; n++ { // the cell in the middle, or the next one that is possible
				x, ok = l.Value(n % l.Count())
			}
			a.usual[rows] = append(a.usual[rows], x)
		}
	}
	return a
}

// begin makes the clauses of a question about the assessments to which the ruleset applies.
func (a *asker) begin(rows int) *query {
	q := &query{Clauses: a.frame.Clauses(rows), exact: true, nodes: []int{a.Applies}}
	q.Add(q.True(0, a.Applies))
	return q
}

// ask looks for an assessment that is accepted: solutions of the clauses are made real, and what turns out to be
// impossible is added as a clause.
func (a *asker) ask(q *query) answer {
	t := &trial{asker: a, query: q, dice: rand.New(rand.NewPCG(1, 2))}
	for n := range maxSteps {
		if q.most > 0 && n == q.most {
			break
		}
		if a.ctx.Err() != nil {
			t.doubt(Doubt{Why: "The work was stopped before it was decided."})
			break
		}
		if !t.solve() {
			if len(t.doubts) > 0 {
				return answer{status: Undecided, doubts: t.doubts}
			}
			return answer{status: Absent}
		}
		if rows := t.step(); rows != nil {
			return answer{status: Found, rows: rows}
		}
		if t.passed > maxPassed || t.spent > maxWork {
			break
		}
	}
	if len(t.doubts) == 0 {
		t.doubt(Doubt{Why: "There are too many combinations to try them all."})
	}
	return answer{status: Undecided, doubts: t.doubts}
}

// solve finds a solution, if it can be one in which all is recorded.
func (t *trial) solve() bool {
	all := slices.Clone(t.assume)
	for _, i := range t.Asked {
		if t.frame.Lines(t.Rows)[i].Missing {
			all = append(all, t.LineKnown(i))
		}
	}
	if len(all) > len(t.assume) && !t.partly && len(t.wish) == 0 {
		if t.Solve(all...) {
			return true
		}
		t.partly = true // what is added only excludes more
	}
	for {
		if t.Solve(append(slices.Clone(t.assume), t.wish...)...) {
			return true
		}
		failed := t.Failed()
		n := len(t.wish)
		t.wish = slices.DeleteFunc(t.wish, func(l clause.Lit) bool { return slices.Contains(failed, l) })
		if len(t.wish) == n {
			return false
		}
	}
}

// trial is the work on one question.
type trial struct {
	*asker
	*query
	dice   *rand.Rand
	plan   []int
	rows   []cell.Row
	values []float64 // of each line; NaN: not recorded
	doubts []Doubt
	passed int
	spent  int // nodes that were worked out

	formulas, unclear map[clause.Worked]bool // that the last solution makes use of
	partly            bool                   // there is no solution in which all is recorded
}

// step tries to make the last solution real, and returns its rows where it is accepted; else it adds a clause.
func (t *trial) step() []cell.Row {
	if t.plan == nil {
		t.prepare()
	}
	t.formulas, t.unclear = t.Needed(t.nodes)
	t.plain()
	if t.works() {
		return t.settle()
	}
	if len(t.amiss()) == 0 { // as the solution says, and still not accepted
		return t.unlike()
	}
	if t.linear() { // clauses were added
		return nil
	}
	if t.works() {
		return t.settle()
	}
	amiss := t.amiss()
	if len(amiss) == 0 {
		return t.unlike()
	}
	if t.climb(amiss) {
		return t.settle()
	}
	if !t.exclude(amiss) {
		t.pass(amiss)
	}
	return nil
}

// settle gives the rows that were accepted, if package reason shows the same of them.
func (t *trial) settle() []cell.Row {
	if t.shown == nil || t.shown(t.rows) {
		return t.rows
	}
	t.passed++
	t.doubt(Doubt{Why: "What was found did not show in a full outcome."})
	t.leave(t.not(t.Asked))
	return nil
}

// leave excludes something for this question without its being impossible.
func (t *trial) leave(not []clause.Lit) { t.Add(append(not, t.guard...)...) }

// prepare finds out what has to be worked out of a row.
func (t *trial) prepare() {
	nodes := t.nodes
	for _, w := range t.Worked {
		nodes = append(nodes, t.frame.AskNode(w.X))
	}
	for _, w := range t.Opened {
		nodes = append(nodes, t.frame.UnclearNode(w.X))
	}
	t.plan = t.Plan(nodes...)
	t.values = make([]float64, len(t.frame.Lines(t.Rows)))
	t.rows = make([]cell.Row, t.Rows)
	for i := range t.rows {
		t.rows[i] = t.Blank()
	}
}

// works works the values out, and reports whether they are accepted.
func (t *trial) works() bool {
	t.work()
	return t.accept(t.cases[:t.Rows])
}

// work writes the values into the rows and works these out.
func (t *trial) work() {
	for i := range t.rows {
		r := t.rows[i]
		for axis := range t.Measures {
			x := t.values[t.frame.Line(t.Rows, i, axis)]
			r.Value[axis], r.Recorded[axis] = x, x == x
		}
		t.WorkOn(t.cases[i], r, t.plan)
		t.spent += len(t.plan) + costOfUnclear*len(t.Opened)
	}
}

// costOfUnclear is how much an unclear part costs, in nodes.
const costOfUnclear = 100

// amiss lists the formulas and unclear parts that come out in another way than the last solution says.
func (t *trial) amiss() (out []fault) {
	for _, w := range t.Worked {
		if want, got := t.Formula(w), t.cases[w.Row].Cell[w.X]; want != got && t.formulas[w] {
			out = append(out, fault{Worked: w, cell: want})
		}
	}
	for _, w := range t.Opened {
		if want, got := t.Clauses.Unclear(w), t.cases[w.Row].Truth[t.frame.UnclearNode(w.X)]; want != got && t.unclear[w] {
			out = append(out, fault{Worked: w, unclear: true, truth: want})
		}
	}
	return out
}

// fault is a formula, or an unclear part, that does not come out as a solution says.
type fault struct {
	clause.Worked
	unclear bool
	cell    int        // that a formula should be in
	truth   cell.Truth // that an unclear part should have
}

// unlike deals with a solution that is real and not accepted: because of numbers that are advised, or because of what
// is done with them. Where the numbers leave it open, other values are tried; then what the answer hangs on is excluded.
func (t *trial) unlike() []cell.Row {
	if len(t.hangs) == 0 { // clauses and cells disagree, which would be a fault of the program
		t.passed++
		t.doubt(Doubt{Why: "An assessment that should show it does not."})
		t.leave(t.not(t.Asked))
		return nil
	}
	if !t.exact && (t.query.maybe == nil || t.query.maybe(t)) {
		if t.vary() {
			return t.settle()
		}
		t.passed++
		for i, s := range t.says {
			if t.Holds(t.hangs[i]) && s.Advice.Term != nil && !s.Advice.Fixed {
				t.doubt(Doubt{Place: s.Advice.Formula.Text.All().String(), Text: s.Advice.Formula.Text.S,
					Why: "Which numbers this formula gives together with the others was tried, not worked out."})
			}
		}
	}
	not := t.not(t.computed())
	for _, l := range t.hangs {
		if t.Holds(l) {
			not = append(not, -l)
		} else {
			not = append(not, l)
		}
	}
	t.leave(not)
	return nil
}

// not gives the members of a clause that excludes what the last solution says of some lines.
func (t *trial) not(lines []int) (out []clause.Lit) {
	for _, i := range lines {
		for _, l := range t.LineIs(i) {
			out = append(out, -l)
		}
	}
	return out
}

// pass leaves a solution behind that could be neither made real nor excluded, with the reason.
func (t *trial) pass(amiss []fault) {
	t.passed++
	var not []clause.Lit
	for _, f := range amiss {
		t.doubt(t.why(f))
		not = append(not, t.unless(f)...)
		not = append(not, t.not(t.inputs(f))...)
	}
	t.leave(not)
}

// unless gives the members of a clause for a formula, or unclear part, not coming out as a solution says.
func (t *trial) unless(f fault) (out []clause.Lit) {
	if f.unclear {
		for _, l := range t.UnclearIs(f.Worked, f.truth) {
			out = append(out, -l)
		}
		return out
	}
	for _, l := range t.FormulaIs(f.Worked, f.cell) {
		out = append(out, -l)
	}
	return out
}

// inputs lists the lines that a formula, or an unclear part, reads.
func (t *trial) inputs(f fault) (out []int) {
	for _, axis := range t.inputAxes(f) {
		out = append(out, t.frame.Line(t.Rows, f.Row, axis))
	}
	return out
}

func (t *trial) inputAxes(f fault) []int {
	if f.unclear {
		return t.Space.Unclear[f.X].Inputs
	}
	return t.Axes[f.X].Inputs
}

// why says what stood in the way.
func (t *trial) why(f fault) Doubt {
	if f.unclear {
		u := t.Space.Unclear[f.X]
		return Doubt{Place: u.Expr.Where(u.ID).String(), Text: u.Expr.Written(u.ID), Why: "What this gives was tried for some values, and can't be looked through."}
	}
	x := t.Axes[f.X]
	return Doubt{Place: x.Expr.Where(x.ID).String(), Text: x.Path, Why: "Whether this formula can give such a number was tried for some values, and could not be worked out."}
}

// doubt notes a reason, once.
func (t *trial) doubt(d Doubt) {
	for _, old := range t.doubts {
		if old == d {
			return
		}
	}
	t.doubts = append(t.doubts, d)
}
