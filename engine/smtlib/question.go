package smtlib

import (
	"slices"
	"strings"

	"crus/engine/cell"
	"crus/engine/prove"
)

// question is one question to a solver.
type question struct {
	name   string
	sat    string // what an answer of sat means
	unsat  string
	asks   []expr
	status string // the answer that prove gave: sat, unsat or unknown
}

// ask writes the questions that stand behind a verdict.
func (w *writer) ask(v *prove.Verdict) {
	if v.Kind == prove.Hides {
		w.hides(v)
		return
	}
	w.line(call("push", whole(1))) // before what the question defines
	q := w.question(v)
	q.name = string(v.Kind) + " " + v.Name
	w.put(q)
}

// put writes a question, after its push.
func (w *writer) put(q question) {
	w.note("sat: %s", q.sat)
	w.note("unsat: %s", q.unsat)
	if free := w.freeOf(q.asks); len(free) > 0 {
		w.note("sat proves nothing here, for it rests on what was left free:")
		for _, f := range free {
			w.note("  %s", f)
		}
	}
	w.line(call("echo", word(`"`+q.name+`"`)))
	for _, e := range append([]expr{w.applies.yes}, q.asks...) {
		w.line(call("assert", e))
	}
	w.line(call("set-info", word(":status"), word(q.status)))
	w.line(call("check-sat"))
	w.line(call("pop", whole(1)))
	w.out.WriteString("\n")
}

// status is the answer that prove gave to a question, where found is that of what was looked for.
func status(v *prove.Verdict, found string) string {
	switch v.Status {
	case prove.Found:
		return found
	case prove.Absent:
		return map[string]string{"sat": "unsat", "unsat": "sat"}[found]
	}
	return "unknown"
}

// question puts a verdict's question to a solver.
func (w *writer) question(v *prove.Verdict) question {
	_, name, _ := strings.Cut(v.Name, ".")
	never := status(v, "unsat")
	switch v.Kind {
	case prove.NeverApplies:
		return question{sat: "the ruleset applies to some assessment", unsat: "it applies to none", status: never}
	case prove.NeverFires:
		f := w.cautions[name]
		if i, ok := w.ruleAt[name]; ok && v.Name == "rule."+name {
			f = w.rows[0].own[i]
		}
		return question{sat: "the condition of " + v.Name + " can hold", unsat: "it never holds", asks: []expr{f.yes}, status: never}
	case prove.AlwaysSetAside:
		return question{sat: v.Name + " can be in force", unsat: "it never is", asks: []expr{w.rows[0].force[w.ruleAt[name]].yes}, status: never}
	case prove.AlwaysTrue:
		if w.found[string(prove.AlwaysFalse)+" "+v.Name] { // it may never be known either
			never = "unknown"
		}
		return question{sat: v.Name + " can be false", unsat: "it never is", asks: []expr{w.findings[name].no}, status: never}
	case prove.AlwaysFalse:
		return question{sat: v.Name + " can be true", unsat: "it never is", asks: []expr{w.findings[name].yes}, status: never}
	case prove.AddsNothing:
		return question{sat: "without " + v.Name + " some choice can come out otherwise", unsat: "none can", asks: []expr{w.matters(w.ruleAt[name])}, status: never}
	}
	return w.onChoice(v)
}

// onChoice puts a question about a choice.
func (w *writer) onChoice(v *prove.Verdict) question {
	q := question{status: status(v, "sat")}
	var ways []expr
	for _, d := range w.decisions[v.Name] {
		way := d.decided
		switch v.Kind {
		case prove.Contradiction:
			q.sat, q.unsat, way = "limits can leave nothing of "+v.Name, "they always leave something", and(way, d.conflict)
		case prove.Gap:
			q.sat, q.unsat, way = v.Name+" can stay unanswered", "it is always advised on", and(way, not(d.spoken))
		case prove.Tie:
			q.sat, q.unsat, way = "several values of "+v.Name+" can be level though a rule prefers some of them", "none can", and(way, d.several, d.prefers)
		case prove.Open:
			q.sat, q.unsat, way = "several values of "+v.Name+" can be left of which no rule prefers any", "none can", and(way, d.several, not(d.prefers))
		}
		ways = append(ways, way)
	}
	q.asks = []expr{or(ways...)}
	return q
}

// hides asks of a caution whether it stands without each other that is as grave. Of two that always stand together prove
// calls the later one hidden, so what becomes of the earlier beside it is not said.
func (w *writer) hides(v *prove.Verdict) {
	at := slices.IndexFunc(w.Cautions, func(c cell.Caution) bool { return "caution."+c.Name == v.Name })
	x := w.Cautions[at]
	for i, y := range w.Cautions {
		if i == at || gravity(y.Level) > gravity(x.Level) || y.Limb && !x.Limb {
			continue
		}
		other := "caution." + y.Name
		q := question{name: string(v.Kind) + " " + v.Name + " " + other, sat: v.Name + " can stand without " + other, unsat: "it never does", status: "unknown",
			asks: []expr{w.cautions[x.Name].yes, not(w.cautions[y.Name].yes)}}
		switch {
		case v.Status == prove.Found && v.Other == other:
			q.status = "unsat"
		case v.Status == prove.Absent && !(i > at && w.found[string(v.Kind)+" "+other]):
			q.status = "sat"
		}
		w.line(call("push", whole(1)))
		w.put(q)
	}
}

// gravity orders the levels of cautions, the gravest first.
func gravity(level string) int {
	return slices.Index([]string{"contraindication", "precaution", "note"}, level)
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
			out = append(out, d.differs(e, t))
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
