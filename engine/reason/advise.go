package reason

import (
	"sort"
	"time"

	"crus/engine/assess"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// Advise carries the ruleset out on an assessment of its vocabulary. today is only used to say
// whether the ruleset's review date has passed. The same ruleset, assessment and day give the same
// outcome, to the byte of its JSON.
func (e *Engine) Advise(a *assess.Assessment, today time.Time) *Outcome {
	o := &Outcome{Format: Format, Ruleset: version(e.rs.Header, e.rs.Digest), Applies: "yes",
		Vocabulary: Version{Name: e.rs.Vocabulary.Name, Title: e.rs.Vocabulary.Title, Version: e.rs.Vocabulary.Version, Digest: e.rs.Vocabulary.Digest},
		Assessment: About{ID: a.ID, Date: a.Date, Assessor: a.Assessor, DeviceFor: []string{}}}
	for _, p := range e.rs.Parts {
		if !p.Root {
			o.BuildsOn = append(o.BuildsOn, version(p.Header, p.Digest))
		}
	}
	for _, s := range a.DeviceFor {
		o.Assessment.DeviceFor = append(o.Assessment.DeviceFor, string(s))
	}
	o.Notices = e.notices(today)
	person := e.newScope(newFrame(e.layout, a, "", e.steps[0]), nil)
	var waiting []string
	if p := e.applies[e.rs.Parts[len(e.rs.Parts)-1]]; p != nil {
		v, step := p.show(person.frame)
		o.Scope = &Trace{Place: p.expr.Text.All().String(), When: step}
		switch truthOf(v) {
		case no:
			o.Applies = "no"
			return o
		case unknown:
			o.Applies = "unknown"
			waiting = e.layout.paths(p.waits(step, nil))
		}
	}
	r := &run{e: e, a: a, outcome: o, completer: &completer{e: e, a: a}, person: person, matter: map[key]bool{}}
	person.work(r.completer)
	for _, side := range []assess.Side{assess.Left, assess.Right} {
		for _, s := range a.DeviceFor {
			if s == side {
				limb := e.newScope(newFrame(e.layout, a, side, e.steps[1]), person)
				limb.work(r.completer)
				r.limbs = append(r.limbs, limb)
			}
		}
	}
	o.Person = r.result(r.person, vocab.Person)
	o.Limbs = map[string]*Result{}
	for _, s := range r.limbs {
		o.Limbs[s.side] = r.result(s, vocab.Limb)
	}
	o.Person.Immaterial = r.immaterial(person)
	for _, s := range r.limbs {
		o.Limbs[s.side].Immaterial = r.immaterial(s)
	}
	if o.Applies == "unknown" {
		o.doubt(waiting)
	}
	return o
}

func version(h ruleset.Header, digest string) Version {
	return Version{Name: h.Name, Title: h.Title, Version: h.Version, Status: h.Status, Digest: digest}
}

// run is one assessment being advised on.
type run struct {
	e *Engine
	a *assess.Assessment
	*completer
	person  *scope
	limbs   []*scope
	outcome *Outcome     // what is done of it
	matter  map[key]bool // the missing measures that decide something
}

// result gathers what one scope gives.
func (r *run) result(s *scope, of vocab.Of) *Result {
	limb := of == vocab.Limb
	out := &Result{Choices: make(map[string]*Choice, len(r.e.rs.Vocabulary.Choices)), Cautions: []*Caution{}, Findings: map[string]*bool{}, Quantities: map[string]*Measured{},
		Rules: map[string]*Rule{}, Missing: []*Missing{}, Traces: map[string]*Trace{}}
	if limb {
		out.Rules = make(map[string]*Rule, len(r.e.rules))
	}
	m := newMissing(r, s.side)
	for _, c := range r.e.rs.Vocabulary.Choices {
		if (c.Of == vocab.Limb) == limb {
			out.Choices[c.Name] = r.choice(s, c, m)
		}
	}
	for i, x := range r.e.facts {
		if x.Limb != limb {
			continue
		}
		out.Traces[x.Path()] = s.facts[i]
		if x.Quantity == nil {
			out.Findings[x.Name] = known(s.values[x.slot])
		} else {
			out.Quantities[x.Name] = s.quantity(x, s.facts[i])
		}
	}
	for i, x := range r.e.rules {
		if x.Limb != limb {
			continue
		}
		w := s.rules[i]
		for j, a := range x.advise {
			w.trace.Advises[j].Did = r.did(s, x, a, out)
		}
		out.Rules[x.Name] = &Rule{State: s.state[i].String(), WaitsFor: orEmpty(w.waits), SetAsideBy: orEmpty(w.aside), Strength: string(x.Strength),
			Basis: x.Basis, Cites: orEmpty(x.Cites), Because: w.trace.Because, Failed: s.failure(i), Trace: w.trace}
	}
	for i, x := range r.e.cautions {
		if x.Limb == limb {
			r.caution(s, i, x, out, m)
		}
	}
	sortCautions(out.Cautions)
	out.Missing = m.list()
	return out
}

func orEmpty(s []string) []string {
	if s == nil {
		return []string{}
	}
	return s
}

// caution adds a caution that fired or waits; the trace of one that did not is kept aside.
func (r *run) caution(s *scope, i int, x *caution, out *Result, m *missing) {
	w := s.cautions[i]
	c := &Caution{Name: x.Name, Level: x.Level, Says: s.fill(x.Part, x.Says), Act: s.fill(x.Part, x.Act), Basis: x.Basis,
		Cites: orEmpty(x.Cites), WaitsFor: orEmpty(w.waits), Trace: w.trace}
	if t := r.truths(s.frame, w.truth, x.reads, x.needs, x.truth); t != nil {
		in := &instance{own: w.truth, table: t}
		q := &question{c: r.completer, base: cautionVerdict(w.truth), instances: []*instance{in}}
		q.answer = func(cell []int) Verdict {
			if in.table == nil {
				return cautionVerdict(in.own)
			}
			return cautionVerdict(in.table.truthAt(cell))
		}
		found := q.explore(s.side)
		if a := found.agreed; a != nil && a.Status != Pending { // it stands, although data are missing
			w.truth, c.WaitsFor = no, []string{}
			if a.Status == Fired {
				w.truth = yes
			}
		}
		c.Provisional, c.Explored = found.provisional, found.explored
		c.CouldBecome = r.could(found, s.side, func(v Verdict) (string, any) { return v.Status, nil })
		m.note("caution."+x.Name, CautionWeight(x.Level), found)
	}
	switch w.truth {
	case yes:
		c.State = Fired
	case unknown:
		c.State, c.Failed = Pending, w.trace.failure()
		c.Provisional = true
	case no:
		if !c.Provisional { // otherwise it could fire once more is recorded, so it waits too
			out.Traces["caution."+x.Name] = w.trace
			return
		}
		c.State = Pending
	}
	out.Cautions = append(out.Cautions, c)
}

func cautionVerdict(t truth) Verdict {
	return Verdict{Status: [...]string{no: DidNotFire, unknown: Pending, yes: Fired}[t]}
}

func sortCautions(cs []*Caution) {
	rank := map[string]int{"contraindication": 0, "precaution": 1, "note": 2}
	sort.SliceStable(cs, func(i, j int) bool {
		if rank[cs[i].Level] != rank[cs[j].Level] {
			return rank[cs[i].Level] < rank[cs[j].Level]
		}
		if cs[i].State != cs[j].State {
			return cs[i].State == Fired
		}
		return cs[i].Name < cs[j].Name
	})
}

// doubt marks everything provisional, because it is not known whether the ruleset applies at all.
func (o *Outcome) doubt(waiting []string) {
	results := []*Result{o.Person}
	for _, r := range o.Limbs {
		results = append(results, r)
	}
	for _, r := range results {
		for _, c := range r.Choices {
			c.Provisional = true
		}
		for _, c := range r.Cautions {
			c.Provisional = true
		}
	}
	o.WaitsFor = waiting
	o.Notices = append(o.Notices, "It is not known whether this ruleset applies to the person, so everything here is provisional. It waits for: "+list(waiting, "and")+".")
}
