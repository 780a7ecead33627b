package smtlib

import (
	"bytes"
	"fmt"
	"io"

	"crus/engine/cell"
	"crus/engine/prove"
	"crus/engine/source"
)

// writer holds what is defined so far.
type writer struct {
	*cell.Space
	out bytes.Buffer

	measures []measure
	forms    map[int]form   // by node
	terms    map[int]number // by term
	uses     map[int]int    // of nodes
	termUses map[int]int
	names    map[int]string    // of nodes
	numbers  map[int]string    // names of terms
	bodies   map[string]expr   // of what is defined
	free     map[string]string // what is declared without a meaning, in words

	applies   form
	findings  map[string]form
	own       map[string]form // the conditions of rules
	force     []form          // whether each rule is in force
	ruleAt    map[string]int
	cautions  map[string]form
	decisions map[string]decision
}

// Write writes the questions of a report on a ruleset, each with the answer that it got.
func Write(to io.Writer, s *cell.Space, r *prove.Report) error {
	w := &writer{Space: s, forms: map[int]form{}, terms: map[int]number{}, uses: map[int]int{}, termUses: map[int]int{}, names: map[int]string{},
		numbers: map[int]string{}, bodies: map[string]expr{}, free: map[string]string{}, findings: map[string]form{}, own: map[string]form{},
		force: make([]form, len(s.Rules)), ruleAt: map[string]int{}, cautions: map[string]form{}, decisions: map[string]decision{}}
	w.head()
	w.heading("Measures, of one assessment as one limb sees it")
	w.declare()
	w.count()
	w.everything()
	w.heading("Questions")
	for _, v := range r.Verdicts {
		w.ask(v)
	}
	_, err := to.Write(w.out.Bytes())
	return err
}

func (w *writer) head() {
	w.note("%s %s: %s", w.Ruleset.Name, w.Ruleset.Version, w.Ruleset.Digest)
	w.note("What crus prove asks of this ruleset, over all assessments to which it applies in which everything is recorded, within plausible ranges; only a " +
		"measure of which a condition asks whether it is recorded can also be missing. Quantities are numbers in base units, grades and options are counted from 0, " +
		"dates are days before the assessment. What may be unknown has two names: with =true and with =false. Each question stands between push and pop; :status is " +
		"the answer that crus gave.")
	w.line(call("set-info", word(":smt-lib-version"), word("2.6")))
	w.line(call("set-logic", word("ALL")))
	w.out.WriteString("\n" + helpers)
}

func (w *writer) heading(text string) { w.out.WriteString("\n; --- " + text + "\n") }

// line writes a command.
func (w *writer) line(e expr) { w.out.WriteString(e.laidOut(0) + "\n") }

func wrapped(text string) []string { return source.Wrap(text, columns-2) }

// count counts how often nodes and terms are used, so that what is used again gets a name.
func (w *writer) count() {
	for _, n := range w.Nodes {
		switch n.Op {
		case cell.Not:
			w.uses[n.A]++
		case cell.And, cell.Or:
			w.uses[n.A]++
			w.uses[n.B]++
		case cell.If:
			w.uses[n.A] += 2
			w.uses[n.B]++
			w.uses[n.C]++
		}
	}
	for _, t := range w.Terms {
		for _, x := range append([]*cell.Term{t.A, t.B}, t.Of...) {
			if x != nil {
				w.termUses[x.Index]++
			}
		}
	}
	for _, a := range w.Axes[w.Measures:] {
		w.termUses[a.Term.Index] += 2
	}
}

// everything defines the findings, quantities, rules, cautions and choices, so that the questions can name them.
func (w *writer) everything() {
	w.heading("Findings and quantities")
	for _, f := range w.Facts {
		if f.Term != nil {
			if w.numbers[f.Term.Index] == "" {
				w.numbers[f.Term.Index] = f.Path()
			}
			w.term(f.Term)
		} else {
			w.findings[f.Name] = w.alias(f.Path(), f.Node)
		}
	}
	w.applies = w.alias("applies", w.Applies)
	w.heading("Rules: whether the own condition holds, and whether it is in force")
	for _, i := range w.Down {
		r := w.Rules[i]
		w.ruleAt[r.Name] = i
		w.own[r.Name] = w.alias("holds."+r.Name, r.Own)
		w.force[i] = w.alias("in_force."+r.Name, r.Force)
		for _, a := range r.Advice {
			if a.Term != nil {
				w.term(a.Term)
			}
		}
	}
	w.heading("Cautions")
	for _, c := range w.Cautions {
		w.cautions[c.Name] = w.alias("caution."+c.Name, c.Node)
	}
	for _, t := range w.Topics {
		if len(t.Says) > 0 {
			w.heading(fmt.Sprintf("Choice %s: what limits leave, and what rules in force prefer", t.Name))
			w.decisions[t.Name] = w.decide(t, func(i int) form { return w.force[i] }, "choice."+t.Name)
		}
	}
}

// alias defines a name for a node's form.
func (w *writer) alias(name string, node int) form {
	if w.names[node] == "" {
		w.names[node] = name
		if _, ok := w.forms[node]; !ok {
			return w.form(node)
		}
	}
	f := w.define(name, w.form(node))
	w.forms[node] = f
	return f
}
