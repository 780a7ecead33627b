// Package reason carries a ruleset out on one assessment. It is the reference meaning of the
// language: conditions are worked out by cel-go, with what is not recorded left unknown, and every
// step is kept in a trace.
//
//	e, err := reason.New(rs)
//	outcome := e.Advise(assessment, today)
//
// The files, in the order of the work: engine (a ruleset made ready), plan and program (one condition,
// with cel-go, and its trace), frame (what conditions read), scope and states (facts, and which rules
// are in force), uncertain (how far a number could be off), choice, options and numbers (what rules
// make of a choice), explain (why, in words); cuts, cells, complete, classes, grid and explore (what
// completing the assessment could change), missing (which measures decide); advise (the outcome).
package reason

import (
	"fmt"
	"slices"
	"strings"

	"crus/engine/clinical"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
)

// Engine is a ruleset made ready. It is not changed after New and may be used by several goroutines.
type Engine struct {
	rs       *ruleset.Ruleset
	layout   *layout
	uses     map[string]*usage          // of each measure
	applies  map[*ruleset.Part]*program // nil entries: always
	facts    []*fact
	rules    []*rule
	cautions []*caution
	open     map[*vocab.Choice]*ruleset.Open
	down     []int // rules, each after those that override it
	topics   map[*vocab.Choice]*topic
	formulas int    // how many are advised
	steps    [2]int // of everything that runs for the person, and for a limb
}

type fact struct {
	*ruleset.Fact
	prog  *program
	off   *spread // how far a quantity could be off; nil for a finding
	slot  int
	place string
}

type rule struct {
	*ruleset.Rule
	index        int
	applies      *program
	when, unless *program
	advise       []*advice
	overriders   []int // rules that override this one
	place        string
	needs        []int     // facts that must be worked out before it, in order
	reads        []reading // of its own condition
}

type advice struct {
	*ruleset.Advice
	rule    *rule
	formula *program
	index   int       // of the formula
	reads   []reading // of the formula
	off     *spread   // how far its number could be off
	removes uint64    // options
	favours uint64
	does    string // the same in a sentence, where the rule fires; "" of a number
}

// topic is what a ruleset says of one choice.
type topic struct {
	advice []*advice // in the order of the rules
	bears  []int     // the rules that advise on it, and those that could set these aside, top down
}

type caution struct {
	*ruleset.Caution
	applies *program
	when    *program
	place   string
	needs   []int
	reads   []reading
}

// New makes a checked ruleset ready. An error means that a checked condition can't be carried out,
// which is a fault of the program, not of the ruleset.
func New(rs *ruleset.Ruleset) (*Engine, error) {
	e := &Engine{rs: rs, applies: map[*ruleset.Part]*program{}, open: map[*vocab.Choice]*ruleset.Open{}}
	e.layout = newLayout(rs)
	e.uses = map[string]*usage{}
	b := &builder{e: e, plans: map[*ruleset.Part]*planner{}}
	for _, p := range rs.Parts {
		e.applies[p] = b.program(p.Applies)
	}
	for _, f := range rs.Facts {
		e.facts = append(e.facts, &fact{Fact: f, prog: b.program(f.Expr), slot: e.layout.facts[f], place: f.Where.String()})
	}
	for _, f := range e.facts { // a program is made once, so after all are there
		if f.Quantity != nil {
			f.off = e.spread(f.prog, *f.Quantity)
		}
	}
	byRule := map[*ruleset.Rule]*rule{}
	for i, r := range rs.Rules {
		x := &rule{Rule: r, index: i, when: b.program(r.When), unless: b.program(r.Unless), place: r.Where.String()}
		if !r.Part.Root {
			x.applies = e.applies[r.Part]
		}
		for _, a := range r.Advise {
			formula := b.program(a.Formula)
			x.advise = append(x.advise, &advice{Advice: a, index: e.formulas, rule: x, formula: formula,
				reads: e.readings(a.Formula), removes: Removes(a), favours: Favours(a), off: e.spread(formula, a.Choice.Unit)})
			if a.Formula == nil {
				x.advise[len(x.advise)-1].does = does(a)
			}
			if a.Formula != nil {
				e.formulas++
			}
		}
		x.needs = e.needs(append(formulas(r), r.When, r.Unless, guard(r.Part))...)
		x.reads = e.readings(r.When, r.Unless, guard(r.Part))
		e.rules = append(e.rules, x)
		byRule[r] = x
	}
	for _, x := range e.rules {
		for _, o := range x.Overrides {
			byRule[o].overriders = append(byRule[o].overriders, x.index)
		}
	}
	for _, c := range rs.Cautions {
		x := &caution{Caution: c, when: b.program(c.When), place: c.Where.String(), needs: e.needs(c.When, guard(c.Part)), reads: e.readings(c.When, guard(c.Part))}
		if !c.Part.Root {
			x.applies = e.applies[c.Part]
		}
		e.cautions = append(e.cautions, x)
	}
	for _, o := range rs.Open { // parts come before those that build on them: the nearest word counts
		e.open[o.Choice] = o
	}
	e.down = topDown(e.rules)
	e.topics = map[*vocab.Choice]*topic{}
	for _, c := range rs.Vocabulary.Choices {
		e.topics[c] = e.topic(c)
	}
	e.steps = [2]int{e.room(false), e.room(true)}
	return e, b.err
}

// room counts the steps of everything that runs for the person, or for a limb.
func (e *Engine) room(limb bool) (n int) {
	count := func(runs bool, ps ...*program) {
		for _, p := range ps {
			if runs && p != nil {
				n += len(p.nodes)
			}
		}
	}
	for _, f := range e.facts {
		count(f.Limb == limb, f.prog)
	}
	for _, x := range e.rules {
		count(x.Limb == limb, x.applies, x.when, x.unless)
		for _, a := range x.advise {
			count(x.Limb == limb, a.formula)
		}
	}
	for _, c := range e.cautions {
		count(c.Limb == limb, c.applies, c.when)
	}
	count(!limb, e.applies[e.rs.Parts[len(e.rs.Parts)-1]])
	return n
}

// topic gathers what bears on a choice.
func (e *Engine) topic(c *vocab.Choice) *topic {
	t := &topic{}
	bears := make([]bool, len(e.rules))
	for _, x := range e.rules {
		for _, a := range x.advise {
			if a.Choice == c {
				t.advice = append(t.advice, a)
				bears[x.index] = true
			}
		}
	}
	for _, i := range slices.Backward(e.down) { // whatever bears makes its overriders bear
		if bears[i] {
			for _, o := range e.rules[i].overriders {
				bears[o] = true
			}
		}
	}
	for _, i := range e.down {
		if bears[i] {
			t.bears = append(t.bears, i)
		}
	}
	return t
}

// guard is what must hold for a part's rules and cautions to be in force; nil for the ruleset's own,
// whose outcome says whether it applies.
func guard(p *ruleset.Part) *ruleset.Expr {
	if p.Root {
		return nil
	}
	return p.Applies
}

func formulas(r *ruleset.Rule) []*ruleset.Expr {
	var out []*ruleset.Expr
	for _, a := range r.Advise {
		out = append(out, a.Formula)
	}
	return out
}

// needs lists the facts that expressions read, directly or through other facts, in working order.
func (e *Engine) needs(exprs ...*ruleset.Expr) []int {
	wanted := map[*ruleset.Fact]bool{}
	var mark func(x *ruleset.Expr)
	mark = func(x *ruleset.Expr) {
		if x == nil {
			return
		}
		for _, r := range x.Reads {
			if r.Fact != nil && !wanted[r.Fact] {
				wanted[r.Fact] = true
				mark(r.Fact.Expr)
			}
		}
	}
	for _, x := range exprs {
		mark(x)
	}
	var out []int
	for i, f := range e.rs.Facts {
		if wanted[f] {
			out = append(out, i)
		}
	}
	return out
}

// Ruleset gives the ruleset that the engine was made from.
func (e *Engine) Ruleset() *ruleset.Ruleset { return e.rs }

type builder struct {
	e     *Engine
	plans map[*ruleset.Part]*planner
	err   error
}

// program makes the runnable form of an expression; nil for nil.
func (b *builder) program(x *ruleset.Expr) *program {
	if x == nil {
		return nil
	}
	plan, err := b.plans[x.Part], error(nil)
	if plan == nil {
		if plan, err = newPlanner(x.Env, b.e.layout.names[x.Part]); err == nil {
			b.plans[x.Part] = plan
		}
	}
	var p *program
	if err == nil {
		p, err = newProgram(x, b.e.layout, plan)
	}
	if err != nil && b.err == nil {
		b.err = fmt.Errorf("%s: %w", x.Text.All(), err)
	}
	return p
}

// fill writes a text with its ${names} replaced by their values.
func (f *frame) fill(part *ruleset.Part, t source.Text) string {
	if len(t.Refs) == 0 {
		return strings.TrimSpace(t.S)
	}
	var b strings.Builder
	b.Grow(len(t.S))
	at := 0
	for _, r := range t.Refs {
		b.WriteString(t.S[at:r.Start])
		at = r.End
		if slot, ok := f.layout.names[part][r.Name]; ok {
			b.WriteString(f.word(slot))
		} else { // free text, which conditions can't read
			b.WriteString(f.texts[r.Name])
		}
	}
	b.WriteString(t.S[at:])
	return strings.TrimSpace(b.String())
}

// word gives the value in a slot for people. What is recorded is written once for all texts.
func (f *frame) word(slot int) string {
	if f.layout.slots[slot].measure == nil { // a fact, which may not be worked out yet
		if q, ok := f.values[slot].(clinical.Quantity); ok {
			return q.Brief()
		}
		return Value{f.values[slot]}.String()
	}
	if f.words == nil {
		f.words = make([]string, len(f.values))
	}
	if f.words[slot] == "" {
		f.words[slot] = Value{f.values[slot]}.String()
	}
	return f.words[slot]
}
