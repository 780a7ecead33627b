package cases

import (
	"github.com/google/cel-go/common/types"

	"crus/engine/reason"
)

// shown notes which conditions came out true and which false.
type shown struct {
	by map[string]both
}

type both struct{ yes, no bool }

func newShown() *shown { return &shown{by: map[string]both{}} }

func (s *shown) outcome(o *reason.Outcome) {
	s.trace(o.Scope)
	results := []*reason.Result{o.Person}
	for _, r := range o.Limbs {
		results = append(results, r)
	}
	for _, r := range results {
		if r == nil {
			continue
		}
		for _, t := range r.Traces {
			s.trace(t)
		}
		for _, x := range r.Rules {
			s.trace(x.Trace)
		}
		for _, c := range r.Cautions {
			s.trace(c.Trace)
		}
	}
}

func (s *shown) trace(t *reason.Trace) {
	if t == nil {
		return
	}
	s.step(t.When)
	s.step(t.Unless)
	s.step(t.Applies)
}

func (s *shown) step(x *reason.Step) {
	if x == nil {
		return
	}
	key := x.Place + " " + x.Text
	b := s.by[key]
	switch x.Value.V {
	case types.True:
		b.yes = true
	case types.False:
		b.no = true
	}
	s.by[key] = b
	for _, k := range x.Steps {
		s.step(k)
	}
}
