package prove

import (
	"context"
	"runtime"
	"sync"

	"crus/engine/cell"
	"crus/engine/clause"
	"crus/engine/reason"
	"crus/engine/source"
	"crus/engine/vocab"
)

// Options are what a caller wants besides the report.
type Options struct {
	Progress func(done, all int) // is told how many questions are answered; may be nil
	Workers  int                 // how many questions are asked at a time; 0: as many as there are processors
}

// Prove asks everything about a ruleset. The same ruleset gives the same report, whatever the number of workers. Where
// ctx ends, what is not answered is undecided.
func Prove(ctx context.Context, s *cell.Space, o Options) *Report {
	p := newProver(ctx, s, o)
	p.simulate()
	p.scope()
	if p.seen.applies != nil || p.doubt != nil {
		p.rules()
		p.findings()
		p.cautions()
		p.choices()
		p.additions()
		p.hidden()
	}
	return p.finish()
}

// prover is the work on one ruleset.
type prover struct {
	*asker // for what is done one after the other
	Options
	askers []*asker
	seen   *seen
	under  [][]int // of each rule: those that it overrides, and those that these do, each after those that override it
	opened []bool  // of each choice: declared to be the clinician's
	doubt  []Doubt // whether the ruleset applies to anyone is undecided
	report *Report
	by     map[Kind][]*Verdict
	done   int
	all    int
}

func newProver(ctx context.Context, s *cell.Space, o Options) *prover {
	if o.Workers <= 0 {
		o.Workers = runtime.GOMAXPROCS(0)
	}
	f := clause.New(s)
	p := &prover{asker: newAsker(ctx, f), Options: o, seen: newSeen(s), opened: make([]bool, len(s.Topics)), by: map[Kind][]*Verdict{}}
	for range o.Workers {
		p.askers = append(p.askers, newAsker(ctx, f))
	}
	for r := range s.Rules {
		under := map[int]bool{r: true}
		var list []int
		for _, i := range s.Down {
			for _, over := range s.Rules[i].Overriders {
				if under[over] && !under[i] {
					under[i] = true
					list = append(list, i)
				}
			}
		}
		p.under = append(p.under, list)
	}
	for _, x := range s.Ruleset.Open {
		p.opened[s.Topics[topicOf(s, x.Choice)].Index] = true
	}
	p.report = &Report{Format: Format, Verdicts: []*Verdict{}, SaysNot: []string{}, Left: []Left{}, Beyond: []Doubt{}}
	p.all = 3*len(s.Rules) + len(s.Facts) + 2*len(s.Cautions) + len(choiceKinds())*len(s.Topics)
	return p
}

func topicOf(s *cell.Space, c *vocab.Choice) int {
	for i, t := range s.Topics {
		if t.Choice == c {
			return i
		}
	}
	return -1
}

// scope asks whether the ruleset applies to anyone.
func (p *prover) scope() {
	v := &Verdict{Kind: NeverApplies, Name: p.Ruleset.Name, Part: p.Ruleset.Name, Status: Absent}
	if p.seen.applies == nil {
		q := p.begin(1)
		q.accept = func(cs []*cell.Case) bool { return cs[0].Truth[p.Applies] == cell.Yes }
		switch a := p.ask(q); a.status {
		case Found:
			p.observe(a.rows)
		case Absent:
			v.Status = Found
		default:
			v.Status, v.Rests, p.doubt = Undecided, a.doubts, a.doubts
		}
	}
	p.add(v, p.Ruleset.Where)
}

// add puts a verdict into the report.
func (p *prover) add(v *Verdict, where source.Range) {
	v.Fault, v.Where = v.Kind.Fault() && v.Part == p.Ruleset.Name, where
	if where.File != nil {
		v.Place = where.String()
	}
	if v.Status == Absent && p.doubt != nil {
		v.Status, v.Rests = Undecided, p.doubt
	}
	p.by[v.Kind] = append(p.by[v.Kind], v)
}

// batch is how many questions are asked before what they showed is noted.
const batch = 32

// each asks questions, some at a time, and takes their answers in order; need says which are still to be asked.
func (p *prover) each(n int, need func(i int) bool, ask func(a *asker, i int) answer, take func(i int, a answer)) {
	var todo []int
	flush := func() {
		answers := make([]answer, len(todo))
		var wg sync.WaitGroup
		next := make(chan int, len(todo))
		for k := range todo {
			next <- k
		}
		close(next)
		for _, a := range p.askers {
			wg.Go(func() {
				for k := range next {
					answers[k] = ask(a, todo[k])
				}
			})
		}
		wg.Wait()
		for k, i := range todo {
			if answers[k].status == Found {
				p.observe(answers[k].rows)
			}
			take(i, answers[k])
		}
		todo = todo[:0]
	}
	for i := range n {
		if p.done++; p.Progress != nil && (p.done%16 == 0) {
			p.Progress(min(p.done, p.all), p.all)
		}
		if need(i) {
			if todo = append(todo, i); len(todo) == batch {
				flush()
			}
		}
	}
	flush()
}

// finish puts the verdicts in order.
func (p *prover) finish() *Report {
	r, rs := p.report, p.Ruleset
	of := func(name, title, version, status, digest string) reason.Version {
		return reason.Version{Name: name, Title: title, Version: version, Status: status, Digest: digest}
	}
	r.Ruleset = of(rs.Name, rs.Title, rs.Version, rs.Status, rs.Digest)
	for _, x := range rs.Parts {
		if !x.Root {
			r.BuildsOn = append(r.BuildsOn, of(x.Name, x.Title, x.Version, x.Status, x.Digest))
		}
	}
	v := rs.Vocabulary
	r.Vocabulary = of(v.Name, v.Title, v.Version, "", v.Digest)
	for _, k := range Kinds() {
		r.Verdicts = append(r.Verdicts, p.by[k]...)
	}
	for i, t := range p.Topics {
		if len(t.Says) == 0 && !t.HasDefault && !p.opened[i] {
			r.SaysNot = append(r.SaysNot, t.Name)
		}
	}
	for _, x := range rs.Open {
		r.Left = append(r.Left, Left{Choice: x.Choice.Name, Because: x.Because.S, Part: x.Part.Name})
	}
	for _, u := range p.Space.Unclear {
		r.Beyond = append(r.Beyond, Doubt{Place: u.Expr.Where(u.ID).String(), Text: u.Expr.Written(u.ID), Why: "No cell can express this; it is answered value by value."})
	}
	if p.Progress != nil {
		p.Progress(p.all, p.all)
	}
	return r
}
