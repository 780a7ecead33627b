package smtlib

import (
	"slices"
	"strings"

	"crus/engine/cell"
	"crus/engine/prove"
)

// question is one question to a solver.
type question struct {
	of    []string // what an answer of sat, and one of unsat, means
	found string   // the answer that stands for what was looked for: sat or unsat
	asks  []expr
}

// ask writes a question, with the answer that prove gave.
func (w *writer) ask(v *prove.Verdict) {
	w.line(call("push", whole(1)))
	q := w.question(v)
	name := string(v.Kind) + " " + v.Name
	if v.Other != "" {
		name += " " + v.Other
	}
	for _, text := range q.of {
		w.note("%s", text)
	}
	if free := w.freeOf(q.asks); len(free) > 0 {
		w.note("sat is no proof here: it rests on what was left free")
		for _, f := range free {
			w.note("  %s", f)
		}
	}
	w.line(call("echo", word(`"`+strings.ReplaceAll(name, `"`, `""`)+`"`)))
	for _, e := range q.asks {
		w.line(call("assert", e))
	}
	w.line(call("set-info", word(":status"), word(q.status(v))))
	w.line(call("check-sat"))
	w.line(call("pop", whole(1)))
	w.out.WriteString("\n")
}

// status is the answer that prove gave to a question.
func (q question) status(v *prove.Verdict) string {
	other := map[string]string{"sat": "unsat", "unsat": "sat"}[q.found]
	switch v.Status {
	case prove.Found:
		return q.found
	case prove.Absent:
		return other
	}
	return "unknown"
}

// question puts a question about a ruleset to a solver.
func (w *writer) question(v *prove.Verdict) question {
	applies := w.applies.yes
	kind, name, _ := strings.Cut(v.Name, ".")
	switch v.Kind {
	case prove.NeverApplies:
		return question{says("the ruleset applies to some assessment", "it applies to none"), "unsat", []expr{applies}}
	case prove.NeverFires:
		f := w.cautions[name]
		if kind == "rule" {
			f = w.rows[0].own[w.ruleAt[name]]
		}
		return question{says("the condition of "+v.Name+" can hold", "it never holds"), "unsat", []expr{applies, f.yes}}
	case prove.AlwaysSetAside:
		return question{says(v.Name+" can be in force", "it never is"), "unsat", []expr{applies, w.rows[0].force[w.ruleAt[name]].yes}}
	case prove.AlwaysTrue:
		return question{says(v.Name+" can be something else than true", "it is always true"), "unsat", []expr{applies, not(w.findings[name].yes)}}
	case prove.AlwaysFalse:
		return question{says(v.Name+" can be something else than false", "it is always false"), "unsat", []expr{applies, not(w.findings[name].no)}}
	case prove.Hides:
		_, other, _ := strings.Cut(v.Other, ".")
		return question{says(v.Name+" can stand without "+v.Other, "it never does"), "unsat",
			[]expr{applies, w.cautions[name].yes, not(w.cautions[other].yes)}}
	case prove.AddsNothing:
		return question{says("without "+v.Name+" some choice can come out otherwise", "none can"), "unsat", []expr{applies, w.matters(w.ruleAt[name])}}
	}
	var asks []expr
	for _, d := range w.decisions[v.Name] {
		one := map[prove.Kind][]expr{prove.Contradiction: {d.conflict}, prove.Gap: {not(d.spoken)}, prove.Tie: {d.several, d.prefers}, prove.Open: {d.several, not(d.prefers)}}[v.Kind]
		asks = append(asks, and(append([]expr{d.decided}, one...)...))
	}
	texts := map[prove.Kind][]string{
		prove.Contradiction: says("limits can leave nothing of "+v.Name, "they always leave something"),
		prove.Gap:           says(v.Name+" can stay unanswered", "it is always advised on"),
		prove.Tie:           says("several values of "+v.Name+" can be level though a rule prefers some of them", "none can"),
		prove.Open:          says("several values of "+v.Name+" can be left of which no rule prefers any", "none can"),
	}
	return question{texts[v.Kind], "sat", []expr{applies, or(asks...)}}
}

func says(sat, unsat string) []string {
	return []string{"sat: " + sat, "unsat: " + unsat}
}

// matters says that a choice comes out otherwise without a rule.
func (w *writer) matters(rule int) expr {
	var views []view
	changed := map[int]form{}
	for _, r := range w.rows {
		forms := r.without(rule)
		changed = forms // of the same rules on each row
		views = append(views, view{r, func(i int) form {
			if f, ok := forms[i]; ok {
				return f
			}
			return r.force[i]
		}})
	}
	var out []expr
	for _, t := range w.Topics {
		if !slices.ContainsFunc(t.Says, func(s cell.Say) bool { _, ok := changed[s.Rule.Index]; return ok }) {
			continue
		}
		for i, d := range w.decisions[t.Name] {
			e := w.decide(t, views[:i+1], "without/"+limbs(i)+t.Name)
			out = append(out, and(d.decided, e.decided, d.differs(e, t)))
		}
	}
	return or(out...)
}

// freeOf lists what was left free of all that expressions rest on, in order.
func (w *writer) freeOf(of []expr) []string {
	seen, out := map[string]bool{}, []string{}
	var visit func(e expr)
	visit = func(e expr) {
		for _, x := range e.list {
			visit(x)
		}
		if e.word == "" || seen[e.word] {
			return
		}
		seen[e.word] = true
		if text, ok := w.free[e.word]; ok && !slices.Contains(out, text) {
			out = append(out, text)
		}
		if body, ok := w.bodies[e.word]; ok {
			visit(body)
		}
	}
	for _, e := range of {
		visit(e)
	}
	slices.Sort(out)
	return out
}
