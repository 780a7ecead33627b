// Package reason carries a ruleset out on one assessment. It is the reference meaning of the
// language: conditions are worked out by cel-go, with what is not recorded left unknown, and every
// step is kept in a trace.
//
//	e, err := reason.New(rs)
//	outcome := e.Advise(assessment, today)
//
// The order of work is that of the files: frame (what can be read), program (one condition and its
// trace), states (which rules are in force), options and numbers (what they make of a choice),
// cells and explore (what completing the assessment could change), advise (the outcome).
package reason

import (
	"fmt"
	"strings"

	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
)

// Engine is a ruleset made ready. It is not changed after New and may be used by several goroutines.
type Engine struct {
	rs       *ruleset.Ruleset
	layout   *layout
	applies  map[*ruleset.Part]*program // nil entries: always
	facts    []*fact
	rules    []*rule
	cautions []*caution
	open     map[*vocab.Choice]*ruleset.Open
}

type fact struct {
	*ruleset.Fact
	prog  *program
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
	needs        []int // facts that must be worked out before it, in order
}

type advice struct {
	*ruleset.Advice
	rule    *rule
	formula *program
}

type caution struct {
	*ruleset.Caution
	applies *program
	when    *program
	place   string
	needs   []int
}

// New makes a checked ruleset ready. An error means that a checked condition can't be carried out,
// which is a fault of the program, not of the ruleset.
func New(rs *ruleset.Ruleset) (*Engine, error) {
	e := &Engine{rs: rs, applies: map[*ruleset.Part]*program{}, open: map[*vocab.Choice]*ruleset.Open{}}
	e.layout = newLayout(rs)
	b := &builder{e: e}
	for _, p := range rs.Parts {
		e.applies[p] = b.program(p.Applies)
	}
	for _, f := range rs.Facts {
		e.facts = append(e.facts, &fact{Fact: f, prog: b.program(f.Expr), slot: e.layout.facts[f], place: f.Where.String()})
	}
	byRule := map[*ruleset.Rule]*rule{}
	for i, r := range rs.Rules {
		x := &rule{Rule: r, index: i, when: b.program(r.When), unless: b.program(r.Unless), place: r.Where.String()}
		if !r.Part.Root {
			x.applies = e.applies[r.Part]
		}
		for _, a := range r.Advise {
			x.advise = append(x.advise, &advice{Advice: a, rule: x, formula: b.program(a.Formula)})
		}
		x.needs = e.needs(append(formulas(r), r.When, r.Unless, r.Part.Applies)...)
		e.rules = append(e.rules, x)
		byRule[r] = x
	}
	for _, x := range e.rules {
		for _, o := range x.Overrides {
			byRule[o].overriders = append(byRule[o].overriders, x.index)
		}
	}
	for _, c := range rs.Cautions {
		x := &caution{Caution: c, when: b.program(c.When), place: c.Where.String(), needs: e.needs(c.When, c.Part.Applies)}
		if !c.Part.Root {
			x.applies = e.applies[c.Part]
		}
		e.cautions = append(e.cautions, x)
	}
	for _, o := range rs.Open { // parts come before those that build on them: the nearest word counts
		e.open[o.Choice] = o
	}
	return e, b.err
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
	e   *Engine
	err error
}

// program makes the runnable form of an expression; nil for nil.
func (b *builder) program(x *ruleset.Expr) *program {
	if x == nil {
		return nil
	}
	p, err := newProgram(x, b.e.layout)
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
	at := 0
	for _, r := range t.Refs {
		b.WriteString(t.S[at:r.Start])
		at = r.End
		if slot, ok := f.layout.names[part][r.Name]; ok {
			b.WriteString(Value{f.values[slot]}.String())
		} else { // free text, which conditions can't read
			b.WriteString(f.texts[r.Name])
		}
	}
	b.WriteString(t.S[at:])
	return strings.TrimSpace(b.String())
}
