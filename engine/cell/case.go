package cell

import (
	"math"
	"slices"

	"github.com/google/cel-go/common/types"

	"crus/engine/reason"
)

// Truth is a truth of Kleene's strong logic.
type Truth int8

// The three truths, in their order.
const (
	No Truth = iota
	Unknown
	Yes
)

// Row is an assessment as one limb sees it, or the person alone: the value of each measure's axis, NaN where it is
// not known, and whether the measure is recorded.
type Row struct {
	Value    []float64
	Recorded []bool
	Alone    bool // of the person alone: rules that read a limb don't run
}

// Clone gives a copy that can be changed.
func (r Row) Clone() Row { return Row{slices.Clone(r.Value), slices.Clone(r.Recorded), r.Alone} }

// Case is a row with all that follows from it. It is used for one row after the other, by one goroutine.
type Case struct {
	Row
	Cell  []int   // of each axis
	Truth []Truth // of each node
	space *Space
	terms []float64
	done  []bool // which terms are worked out
	part  bool   // only the nodes of a plan are worked out, and the cells that they ask about
}

// NewCase makes room for one case.
func (s *Space) NewCase() *Case {
	return &Case{Row: Row{Value: make([]float64, s.Measures), Recorded: make([]bool, s.Measures)}, Cell: make([]int, len(s.Axes)), Truth: make([]Truth, len(s.Nodes)),
		space: s, terms: make([]float64, len(s.Terms)), done: make([]bool, len(s.Terms))}
}

// Work works out every node for a row.
func (s *Space) Work(c *Case, r Row) { s.WorkOn(c, r, nil) }

// WorkOn works out the nodes of a plan for a row, and the cells of the axes that they ask about; what others hold is left
// as it was. A nil plan is all nodes.
func (s *Space) WorkOn(c *Case, r Row, plan []int) {
	copy(c.Value, r.Value)
	copy(c.Recorded, r.Recorded)
	c.Alone = r.Alone
	clear(c.done)
	c.part = plan != nil
	if !c.part {
		for i, a := range s.Axes[:s.Measures] {
			c.Cell[i] = a.cellOf(r.Value[i])
		}
		for n := range s.Nodes {
			c.Truth[n] = c.node(n)
		}
		return
	}
	for _, n := range plan {
		c.Truth[n] = c.node(n)
	}
}

// Plan lists the nodes that some nodes rest on, and these, each after its parts.
func (s *Space) Plan(of ...int) []int {
	needed := make([]bool, len(s.Nodes))
	var terms func(t *Term)
	var visit func(n int)
	terms = func(t *Term) {
		if t == nil {
			return
		}
		if t.Op == Choose || t.Op == Holds {
			visit(t.Node)
		}
		if t.Op == Asked {
			s.Unclear[int(t.X)].facts(s, visit, terms)
		}
		terms(t.A)
		terms(t.B)
		for _, x := range t.Of {
			terms(x)
		}
	}
	visit = func(n int) {
		if needed[n] {
			return
		}
		needed[n] = true
		switch x := s.Nodes[n]; x.Op {
		case Ask:
			terms(s.Axes[s.Questions[x.X].Axis].Term)
		case Opaque:
			s.Unclear[x.X].facts(s, visit, terms)
		case Not:
			visit(x.A)
		case And, Or:
			visit(x.A)
			visit(x.B)
		case If:
			visit(x.A)
			visit(x.B)
			visit(x.C)
		}
	}
	for _, n := range of {
		visit(n)
	}
	var out []int
	for n, yes := range needed {
		if yes {
			out = append(out, n)
		}
	}
	return out
}

// facts visits the facts that an unclear part reads.
func (u *Unclear) facts(s *Space, visit func(n int), terms func(t *Term)) {
	for _, r := range u.ask.reads {
		switch {
		case r.fact < 0:
		case s.Facts[r.fact].Term != nil:
			terms(s.Facts[r.fact].Term)
		default:
			visit(s.Facts[r.fact].Node)
		}
	}
}

func (a *Axis) cellOf(x float64) int {
	if math.IsNaN(x) {
		return NotRecorded
	}
	return a.Cell(x)
}

func (c *Case) node(n int) Truth {
	switch x := &c.space.Nodes[n]; x.Op {
	case Always:
		return Yes
	case Ask:
		q := c.space.Questions[x.X]
		switch a := c.space.Axes[q.Axis]; {
		case a.Measure == nil:
			c.Cell[q.Axis] = a.cellOf(c.term(a.Term))
		case c.part:
			c.Cell[q.Axis] = a.cellOf(c.Value[q.Axis])
		}
		switch at := c.Cell[q.Axis]; {
		case at == NotRecorded:
			return Unknown
		case q.Yes[at]:
			return Yes
		}
		return No
	case Recorded:
		return truth(c.Recorded[x.X])
	case Opaque:
		switch c.space.Unclear[x.X].ask.run(c.space, c) {
		case types.True:
			return Yes
		case types.False:
			return No
		}
		return Unknown
	case Not:
		return Yes - c.Truth[x.A]
	case And:
		return min(c.Truth[x.A], c.Truth[x.B])
	case Or:
		return max(c.Truth[x.A], c.Truth[x.B])
	default:
		switch c.Truth[x.A] {
		case Yes:
			return c.Truth[x.B]
		case No:
			return c.Truth[x.C]
		}
		return Unknown
	}
}

func truth(b bool) Truth {
	if b {
		return Yes
	}
	return No
}

func (c *Case) axis(i int) float64 {
	if i < c.space.Measures {
		return c.Value[i]
	}
	return c.term(c.space.Axes[i].Term)
}

func (c *Case) recorded(i int) bool  { return c.Recorded[i] }
func (c *Case) truth(node int) Truth { return c.Truth[node] }

func (c *Case) term(t *Term) float64 {
	if !c.done[t.Index] {
		c.terms[t.Index] = t.work(c.space, c)
		c.done[t.Index] = true
	}
	return c.terms[t.Index]
}

// Of gives the value of a term, once the nodes that it rests on are worked out; NaN where it is not known.
func (c *Case) Of(t *Term) float64 { return c.term(t) }

// State gives what became of a rule, as an outcome names it.
func (s *Space) State(c *Case, rule int) string {
	x := s.Rules[rule]
	switch {
	case c.Truth[x.Own] == No:
		return reason.DidNotFire
	case c.Truth[x.Force] == Yes:
		return reason.Fired
	}
	for _, o := range x.Overriders {
		if c.Truth[s.Rules[o].Force] == Yes {
			return reason.SetAside
		}
	}
	return reason.Pending
}

// Decide gives the verdict on a choice from the rules that are known to be in force: of one limb, or of all limbs
// that are advised on for a choice of the person. It is what an outcome shows where nothing is missing.
func (s *Space) Decide(topic int, limbs ...*Case) reason.Verdict {
	t := s.Topics[topic]
	var said []reason.Said
	for _, say := range t.Says {
		for i, c := range limbs {
			if c.Truth[say.Rule.Force] != Yes || c.Alone && say.Rule.Limb {
				continue
			}
			at := say.Advice.At
			if say.Advice.Term != nil && !say.Advice.Fixed {
				x := c.term(say.Advice.Term)
				if math.IsNaN(x) {
					continue
				}
				at = reason.InUnit(x, t.Choice)
			}
			again := i > 0 && (say.Advice.Term == nil || !say.Rule.Limb) && limbs[0].Truth[say.Rule.Force] == Yes
			if !again {
				said = append(said, reason.Said{Rule: say.Rule.Index, Advice: say.Place, Value: at})
			}
		}
	}
	return s.Engine.Decide(t.Choice, said)
}

// Reads lists the measures' axes that the nodes of a plan read, in order.
func (s *Space) Reads(plan []int) []int {
	seen := make([]bool, s.Measures)
	note := func(axes []int) {
		for _, i := range axes {
			seen[i] = true
		}
	}
	for _, n := range plan {
		switch x := s.Nodes[n]; x.Op {
		case Ask:
			if a := s.Axes[s.Questions[x.X].Axis]; a.Measure == nil {
				note(a.Inputs)
			} else {
				seen[a.Index] = true
			}
		case Recorded:
			seen[x.X] = true
		case Opaque:
			note(s.Unclear[x.X].Inputs)
		}
	}
	var out []int
	for i, yes := range seen {
		if yes {
			out = append(out, i)
		}
	}
	return out
}
