package replay

import (
	"crus/engine/cell"
	"crus/engine/vocab"
)

// Program is a ruleset ready to be carried out on blocks of assessments. It is not changed after New and may be used by
// several goroutines.
type Program struct {
	space    *cell.Space
	base     *circuit // rows as they are
	inputs   rowInputs
	applies  [2]int // results of base: the ruleset applies, it does not
	rules    []ruleResults
	later    *circuit // rows as they are completed
	filled   rowInputs
	subjects []*subject // choices, then cautions
	rounds   []round
	tries    []*ownTrial   // of each rule, then of each caution
	ruleAsks [][]int       // of each rule: the measures' axes of which it asks whether they are recorded
	plans    [][]int       // of each rule and caution: the nodes that its own condition rests on
	formulas []int         // the nodes that formulas and unclear parts rest on
	unclear  []int         // of each unclear part: its node, 0 of one in a formula
	terms    []*termInputs // of each formula's axis
	twins    []int         // of each measure's axis: that of the same measure of the opposite limb, or -1
	values   [][]float64   // of each measure's axis: values that stand for all plausible ones; twins have the same
	cells    [][]int       // of each: the cell in which each of the values lies
}

// rowInputs says in which slots a circuit has its inputs.
type rowInputs struct {
	bits     [][]int32
	known    []int32
	recorded []int32
	unclear  []int32
	clear    []int32
	undated  int32
	alone    int32
}

// ruleResults are what the base circuit gives of a rule, as places among its results.
type ruleResults struct {
	fired, aside, pending int
	free                  int // completing the row may change it
	holds                 int // its own condition holds, and nothing can change that
	out                   int // it is not in force whatever is recorded
}

// subject is a choice or a caution: something that has a result of its own.
type subject struct {
	index   int
	topic   *cell.Topic   // nil of a caution
	caution *cell.Caution // nil of a choice
	once    bool          // it is decided once for a case, on its first row
	limb    bool          // of a caution: it reads a limb
	asks    []int         // of a caution: see ruleOf
	bears   []int         // the rules that bear on it
	groups  []group       // of a choice with a number

	// Results of the base circuit, -1 where there are none.
	now      subjectResults
	open     int // completing the row may change something that bears on it
	hard     int // and what it does can't be seen from cells of measures alone
	asked    int // and some of it asks what is recorded
	computed int // a number that is worked out from measures may count

	later     subjectResults // results of the circuit of completed rows
	differ    []int          // those in which two verdicts differ where they advise differently
	trial     *trial
	trialPair *trial    // of a case with two rows, where it is decided once
	formulas  []formula // of a choice with a number
	plan      []int     // the nodes that it rests on; nil: all
}

// subjectResults are the planes of a verdict, as places among the results of a circuit.
type subjectResults struct {
	level           []int // of a choice with options
	conflict, spoke int
	fired           []int // of a choice with a number: of each of its groups
	yes, no         int   // of a caution: it fired, it did not
}

// results gathers the results of a circuit.
type results struct{ list []ref }

func (r *results) add(x ref) int {
	r.list = append(r.list, x)
	return len(r.list) - 1
}

func (r *results) some(x ref) int {
	if x == never {
		return -1
	}
	return r.add(x)
}

// New makes a program of a ruleset's cells.
func New(s *cell.Space) *Program {
	p := &Program{space: s}
	for i, t := range s.Topics {
		x := &subject{index: i, topic: t, once: t.Of == vocab.Person, bears: t.Bears}
		p.subjects = append(p.subjects, x)
	}
	for i := range s.Cautions {
		c := &s.Cautions[i]
		p.subjects = append(p.subjects, &subject{index: len(s.Topics) + i, caution: c, limb: c.Limb, once: !c.Limb})
	}
	p.makeValues()
	p.makeBase()
	p.makeLater()
	p.makeTrials()
	return p
}

// Space gives the cells that the program was made of.
func (p *Program) Space() *cell.Space { return p.space }

// slots gives the places of the inputs of a circuit.
func (g *given) slots() rowInputs {
	var in rowInputs
	one := func(r ref) int32 { return r.gate() - 1 } // inputs are the first gates after the constant
	many := func(rs []ref) (out []int32) {
		for _, r := range rs {
			out = append(out, one(r))
		}
		return out
	}
	for _, of := range g.bits {
		in.bits = append(in.bits, many(of))
	}
	in.known, in.recorded, in.unclear, in.clear = many(g.known), many(g.recorded), many(g.unclear), many(g.clear)
	in.undated, in.alone = one(g.undated), one(g.alone)
	return in
}

// maker makes the base circuit.
type maker struct {
	*kleene
	p     *Program
	out   results
	force []two // of each rule
	firm  []two // of each rule: whether it is in force whatever is recorded
	free  []ref
	hard  []ref
	asked []ref
}

func (p *Program) makeBase() {
	b := newBuilder()
	g := b.rows(p.space)
	m := &maker{kleene: b.kleene(p.space, g), p: p}
	n := len(p.space.Rules)
	m.force, m.firm, m.free, m.hard, m.asked = make([]two, n), make([]two, n), make([]ref, n), make([]ref, n), make([]ref, n)
	applies := m.of(p.space.Applies)
	p.applies = [2]int{m.out.add(applies.t), m.out.add(applies.f)}
	p.rules = make([]ruleResults, n)
	for _, i := range p.space.Down {
		m.rule(i)
	}
	for _, x := range p.subjects {
		if x.topic != nil {
			m.topic(x)
		} else {
			m.caution(x)
		}
	}
	p.inputs = g.slots()
	p.base = b.finish(m.out.list)
}

// asking gives where any of some measures is not recorded.
func (m *maker) asking(axes []int) ref {
	out := never
	for _, a := range axes {
		out = m.or(out, m.recorded[a].not())
	}
	return out
}

// beyond gives where cells of measures don't show what a node could become: it rests on a formula or an unclear part
// that is not known, or on a date that can't be worked with. asked is where it asks what is recorded.
func (m *maker) beyond(node int, asked ref) ref {
	r := reachOf(m.s, node)
	out := never
	for _, f := range r.formulas {
		out = m.or(out, m.or(m.known[f].not(), asked))
	}
	for _, u := range r.unclear {
		out = m.or(out, m.or(m.clear[u].not(), asked))
	}
	for _, a := range r.measures {
		if m.s.Axes[a].Measure.Kind == vocab.Date {
			out = m.or(out, m.and(m.known[a].not(), m.or(m.recorded[a], m.undated)))
		}
	}
	return out
}

func (m *maker) rule(i int) {
	x := m.s.Rules[i]
	own := m.of(x.Own)
	m.force[i] = m.of(x.Force)
	asking := m.asking(asksOf(m.s, x))
	table := m.or(m.unknown(own), asking)
	firm := two{m.and(own.t, table.not()), m.and(own.f, table.not())}
	aside := never
	holds := firm.t
	for _, o := range x.Overriders {
		firm = m.both(firm, m.firm[o].not())
		aside = m.or(aside, m.force[o].t)
	}
	m.firm[i] = firm
	m.free[i] = m.and(table, firm.f.not())
	m.hard[i] = m.and(m.free[i], m.beyond(x.Own, asking))
	m.asked[i] = m.and(m.free[i], asking)
	aside = m.and(own.f.not(), aside)
	m.p.rules[i] = ruleResults{
		fired:   m.out.add(m.force[i].t),
		aside:   m.out.add(aside),
		pending: m.out.add(m.or(own.f, m.or(m.force[i].t, aside)).not()),
		free:    m.out.add(m.free[i]),
		holds:   m.out.add(holds),
		out:     m.out.add(firm.f),
	}
}

// seen gives a plane of a rule as a subject sees it: what is decided once sees the rules of both rows.
func (m *maker) seen(x *subject, limb bool, r ref) ref { return seen(m.builder, m.given, x, limb, r) }

func seen(b *builder, g *given, x *subject, limb bool, r ref) ref {
	if !x.once || !limb {
		return r
	}
	return b.and(b.pool(r), g.alone.not())
}

func (m *maker) topic(x *subject) {
	var open, hard, asked, computed []ref
	for _, i := range x.bears {
		limb := m.s.Rules[i].Limb
		open = append(open, m.seen(x, limb, m.free[i]))
		hard = append(hard, m.seen(x, limb, m.hard[i]))
		asked = append(asked, m.seen(x, limb, m.asked[i]))
	}
	var fired, possible []ref
	for _, say := range x.topic.Says {
		i, limb := say.Rule.Index, say.Rule.Limb
		fired, possible = append(fired, m.seen(x, limb, m.force[i].t)), append(possible, m.seen(x, limb, m.firm[i].f.not()))
		if say.Advice.Term != nil && !say.Advice.Fixed {
			computed = append(computed, m.seen(x, say.Rule.Limb, m.firm[say.Rule.Index].f.not()))
		}
	}
	if x.topic.Numeric() {
		if x.groups = groupsOf(x.topic); len(x.groups) > maxGroups {
			x.groups, computed = nil, []ref{always}
		}
	}
	var stands ref
	if x.topic.Numeric() {
		stands = m.standing(x.topic.Choice, x.groups, m.grouped(x.groups, fired), m.grouped(x.groups, possible))
	} else {
		stands = m.stands(x.topic, m.options(x.topic, fired), fired, possible)
	}
	stands = m.and(stands, m.any(asked).not()) // what asks is not surely said
	x.open, x.hard = m.out.some(m.and(m.any(open), stands.not())), m.out.some(m.and(m.any(hard), stands.not()))
	x.asked, x.computed = m.out.some(m.any(asked)), m.out.some(m.any(computed))
	x.now = m.out.topic(m.builder, x, fired)
}

// grouped joins the planes of what rules say by groups.
func (b *builder) grouped(groups []group, says []ref) (out []ref) {
	for _, g := range groups {
		said := never
		for _, i := range g.says {
			said = b.or(said, says[i])
		}
		out = append(out, said)
	}
	return out
}

// topic adds the planes of a verdict; fired are those of what the rules say.
func (r *results) topic(b *builder, x *subject, fired []ref) subjectResults {
	var out subjectResults
	if x.topic.Numeric() {
		out.fired = []int{}
		for _, g := range b.effective(x.groups, b.grouped(x.groups, fired)) {
			out.fired = append(out.fired, r.add(g))
		}
		return out
	}
	v := b.options(x.topic, fired)
	for _, l := range v.level {
		out.level = append(out.level, r.add(l))
	}
	out.conflict, out.spoke = r.add(v.conflict), r.add(v.spoke)
	return out
}

func (m *maker) caution(x *subject) {
	c := x.caution
	v := m.of(c.Node)
	x.asks = asksOfCaution(m.s, c)
	asking := m.asking(x.asks)
	open := m.or(m.unknown(v), asking)
	x.open, x.asked, x.computed = m.out.some(open), m.out.some(asking), -1
	x.hard = m.out.some(m.and(open, m.beyond(c.Node, asking)))
	x.now = subjectResults{yes: m.out.add(v.t), no: m.out.add(v.f)}
}

// makeLater makes the circuit of completed rows.
func (p *Program) makeLater() {
	b := newBuilder()
	g := b.completed(p.space)
	l := b.crisp(p.space, g)
	var out results
	for _, x := range p.subjects {
		if x.open < 0 {
			continue
		}
		if x.topic == nil {
			x.later = subjectResults{yes: out.add(l.of(x.caution.Node))}
			x.differ = x.later.planes()
			continue
		}
		var fired []ref
		for _, say := range x.topic.Says {
			fired = append(fired, seen(b, g, x, say.Rule.Limb, l.of(say.Rule.Force)))
		}
		x.later = out.topic(b, x, fired)
		x.differ = x.later.planes()
	}
	g.undated = g.alone
	p.filled = g.slots()
	p.later = b.finish(out.list)
	p.makeRounds()
}
