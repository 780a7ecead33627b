package smtlib

import (
	"bytes"
	"fmt"
	"io"
	"slices"

	"crus/engine/cell"
	"crus/engine/prove"
	"crus/engine/source"
	"crus/engine/vocab"
)

// writer holds what is defined so far.
type writer struct {
	*cell.Space
	out bytes.Buffer

	limb, limbTerm []bool            // of nodes and terms: they read a limb
	uses, termUses []int             // of nodes and terms: how often
	names, numbers map[int]string    // of nodes and terms
	declared       map[string]bool   // measures
	bodies         map[string]expr   // of what is defined
	free           map[string]string // what is declared without a meaning, in words

	rows      []*row // the second only where a choice of the person rests on limbs
	applies   form
	findings  map[string]form
	cautions  map[string]form
	ruleAt    map[string]int
	found     map[string]bool       // what was found, by kind and name
	decisions map[string][]decision // on each choice: with one limb, and where it makes a difference with both
}

// Write writes the questions of a report on a ruleset, each with the answer that it got.
func Write(to io.Writer, s *cell.Space, r *prove.Report) error {
	w := &writer{Space: s, uses: make([]int, len(s.Nodes)), termUses: make([]int, len(s.Terms)), names: map[int]string{}, numbers: map[int]string{},
		declared: map[string]bool{}, bodies: map[string]expr{}, free: map[string]string{}, findings: map[string]form{}, cautions: map[string]form{},
		ruleAt: map[string]int{}, found: map[string]bool{}, decisions: map[string][]decision{}}
	w.reads()
	w.count()
	w.head()
	w.row()
	w.choices(1)
	if slices.ContainsFunc(s.Topics, pools) {
		w.second()
		w.choices(2)
	}
	for _, v := range r.Verdicts {
		w.found[string(v.Kind)+" "+v.Name] = v.Status == prove.Found
	}
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

// note writes a comment.
func (w *writer) note(format string, args ...any) {
	for _, line := range source.Wrap(fmt.Sprintf(format, args...), columns-2) {
		w.out.WriteString("; " + line + "\n")
	}
}

// row defines what one limb sees: findings, quantities, rules and cautions, so that the questions can name them.
func (w *writer) row() {
	r := w.newRow(nil)
	w.rows = append(w.rows, r)
	w.heading("Measures, of an assessment as one limb sees it")
	r.declare()
	w.heading("Findings and quantities")
	for _, f := range w.Facts {
		if f.Term == nil {
			w.findings[f.Name] = r.alias(f.Path(), f.Node)
			continue
		}
		if w.numbers[f.Term.Index] == "" {
			w.numbers[f.Term.Index] = f.Path()
		}
		r.term(f.Term)
	}
	w.applies = r.alias("applies", w.Applies)
	w.heading("Rules: whether the own condition holds, and whether it is in force")
	for _, i := range w.Down {
		w.ruleAt[w.Rules[i].Name] = i
		r.rule(i)
	}
	w.heading("Cautions")
	for _, c := range w.Cautions {
		w.cautions[c.Name] = r.alias("caution."+c.Name, c.Node)
	}
}

// second defines what the other limb sees where both get a device.
func (w *writer) second() {
	r := w.newRow(w.rows[0])
	w.rows = append(w.rows, r)
	w.heading("The same as the opposite limb sees it, for choices of the person where both limbs get a device")
	r.declare()
	for _, i := range w.Down {
		r.rule(i)
	}
}

// pools reports whether a choice rests on what both limbs see.
func pools(t *cell.Topic) bool {
	return t.Of == vocab.Person && slices.ContainsFunc(t.Says, func(s cell.Say) bool { return s.Rule.Limb })
}

// choices defines what becomes of choices where so many limbs are seen.
func (w *writer) choices(seen int) {
	var views []view
	for _, r := range w.rows[:seen] {
		views = append(views, view{r, func(i int) form { return r.force[i] }})
	}
	for _, t := range w.Topics {
		if len(t.Says) == 0 || seen == 2 && !pools(t) {
			continue
		}
		w.heading("Choice " + t.Name + ": what limits leave, and what rules in force prefer")
		w.decisions[t.Name] = append(w.decisions[t.Name], w.decide(t, views, limbs(seen-1)+t.Name))
	}
}

// limbs begins the names of what is defined of a choice.
func limbs(others int) string {
	return []string{"choice.", "both/choice."}[others]
}

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
