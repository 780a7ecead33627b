package whatif

import (
	"cmp"
	"slices"

	"crus/engine/assess"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// ranking gathers, for the person or one limb, which missing measures decide something, and how much.
type ranking struct {
	s    *scene
	side assess.Side
	by   map[key]*ranked
}

type ranked struct {
	*reason.Missing
	score  float64 // what it can be expected to settle
	weight float64 // what it bears on
}

// note takes in what was found of one result.
func (r *ranking) note(result string, weight float64, f found) {
	if !f.provisional {
		return
	}
	for _, i := range f.matter {
		k := r.s.vars[i].key
		x := r.by[k]
		if x == nil {
			x = &ranked{Missing: &reason.Missing{Measure: path(k, r.side), Label: label(k, r.side), Taken: k.measure.Taken, Reason: r.s.reason(k)}}
			r.by[k] = x
		}
		x.Decides = append(x.Decides, result)
		if f.share[i] == 1 {
			x.Settles++
		}
		x.score += weight * f.share[i]
		x.weight += weight
	}
}

// reason gives why a measure was not recorded, as written.
func (s *scene) reason(k key) string {
	entries := s.a.Person
	if k.side != "" {
		entries = s.a.Limb(k.side)
	}
	if e := entries[k.measure.Name]; e != nil {
		return e.NotRecorded
	}
	return ""
}

// list gives the missing measures, the one to take first leading.
func (r *ranking) list() []*reason.Missing {
	all := make([]*ranked, 0, len(r.by))
	for _, x := range r.by {
		all = append(all, x)
	}
	place := func(x *ranked) int { return slices.Index(vocab.Taken(), x.Taken) }
	slices.SortFunc(all, func(a, b *ranked) int {
		return cmp.Or(cmp.Compare(b.score, a.score), cmp.Compare(b.weight, a.weight), place(a)-place(b), cmp.Compare(a.Measure, b.Measure))
	})
	out := make([]*reason.Missing, len(all))
	for i, x := range all {
		out[i] = x.Missing
	}
	return out
}

// immaterial lists what the rules and cautions of the person or a limb read, is missing, and decides nothing anywhere.
func (s *scene) immaterial(side assess.Side, matter map[key]bool) []string {
	limb := side != ""
	used := map[string]bool{}
	done := map[*ruleset.Fact]bool{}
	var read func(xs ...*ruleset.Expr)
	read = func(xs ...*ruleset.Expr) {
		for _, x := range xs {
			if x == nil {
				continue
			}
			for _, ref := range x.Reads {
				switch {
				case ref.Fact == nil:
					used[ref.Path] = true
				case !done[ref.Fact]:
					done[ref.Fact] = true
					read(ref.Fact.Expr)
				}
			}
		}
	}
	for _, x := range s.w.Rules {
		if x.Limb == limb {
			read(x.Rule.When, x.Rule.Unless, reason.Guard(x.Part))
			for _, a := range x.Advise {
				read(a.Formula)
			}
		}
	}
	for _, x := range s.w.Cautions {
		if x.Limb == limb {
			read(x.Caution.When, reason.Guard(x.Part))
		}
	}
	var out []string
	for _, r := range s.rows {
		if r.side != side {
			continue
		}
		for _, a := range s.w.Axes[:s.w.Measures] {
			if side == "" && a.Limb || !used[a.Path] {
				continue
			}
			if k := s.key(r, a.Index); s.missing(k) && !matter[k] {
				out = append(out, path(k, side))
			}
		}
	}
	return out
}
