package reason

import (
	"sort"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/vocab"
)

// missing gathers, for one scope, which missing measures decide something, and how much.
type missing struct {
	r     *run
	side  string
	by    map[int]*Missing
	score map[int]float64
}

func newMissing(r *run, side string) *missing {
	return &missing{r: r, side: side, by: map[int]*Missing{}, score: map[int]float64{}}
}

// note takes in what exploring one result gave.
func (m *missing) note(result string, found answers) {
	if !found.provisional {
		return
	}
	for _, i := range found.matter {
		v := m.r.vars[i]
		x := m.by[i]
		if x == nil {
			x = &Missing{Measure: v.path(m.side), Label: v.label(m.side), Taken: v.measure.Taken}
			if v.entry != nil {
				x.Reason = v.entry.NotRecorded
			}
			m.by[i] = x
		}
		x.Decides = append(x.Decides, result)
		if share := found.settles[i]; share == 1 {
			x.Settles++
		}
		m.score[i] += found.settles[i]
	}
}

// list gives the missing measures, the one to take first leading: the one that can be expected to
// settle most, then the one that decides most, then the one that is taken first in an examination.
func (m *missing) list() []*Missing {
	order := make([]int, 0, len(m.by))
	for i := range m.by {
		order = append(order, i)
	}
	rank := map[string]int{}
	for i, t := range vocab.Taken() {
		rank[t] = i
	}
	sort.Slice(order, func(a, b int) bool {
		i, j := order[a], order[b]
		x, y := m.by[i], m.by[j]
		switch {
		case m.score[i] != m.score[j]:
			return m.score[i] > m.score[j]
		case len(x.Decides) != len(y.Decides):
			return len(x.Decides) > len(y.Decides)
		case rank[x.Taken] != rank[y.Taken]:
			return rank[x.Taken] < rank[y.Taken]
		}
		return x.Measure < y.Measure
	})
	out := make([]*Missing, 0, len(order))
	for _, i := range order {
		out = append(out, m.by[i])
	}
	return out
}

// immaterial lists what rules read and is missing, and changes nothing here whatever it is.
func (m *missing) immaterial(s *scope) []string {
	seen := map[string]bool{}
	var out []string
	add := func(reads []int) {
		for _, i := range reads {
			if v := m.r.vars[i]; m.by[i] == nil && !seen[v.path(m.side)] {
				seen[v.path(m.side)] = true
				out = append(out, v.path(m.side))
			}
		}
	}
	limb := s.side != ""
	for _, x := range m.r.e.rules {
		if x.Limb == limb {
			reads, _ := m.r.missing(s.frame, append(formulas(x.Rule), x.When, x.Unless)...)
			add(reads)
		}
	}
	for _, x := range m.r.e.cautions {
		if x.Limb == limb {
			reads, _ := m.r.missing(s.frame, x.When)
			add(reads)
		}
	}
	sort.Strings(out)
	return out
}

// could writes what exploring found as data.
func (r *run) could(found answers, side string, say func(verdict) (string, any)) []Could {
	var out []Could
	for _, p := range found.could {
		when, text := r.describe(p, side)
		if text == "" {
			text = "whatever the missing values are"
		}
		status, v := say(p.verdict)
		out = append(out, Could{Status: status, Value: v, If: text, When: when})
	}
	return out
}

// sortPossibilities orders other verdicts: the ones that hang on fewest measures first.
func sortPossibilities(ps []possibility) {
	sort.SliceStable(ps, func(i, j int) bool {
		a, b := ps[i], ps[j]
		switch {
		case len(a.when) != len(b.when):
			return len(a.when) < len(b.when)
		case a.status != b.status:
			return a.status < b.status
		case a.mask != b.mask:
			return a.mask < b.mask
		case a.lo != b.lo:
			return a.lo < b.lo
		}
		return a.hi < b.hi
	})
}

func sortInts(x []int) { sort.Ints(x) }

// known gives a finding's value; nil is unknown.
func known(v ref.Val) *bool {
	if b, ok := v.(types.Bool); ok {
		x := bool(b)
		return &x
	}
	return nil
}

// measured gives a quantity's value in its unit; nil is unknown.
func measured(v ref.Val, u clinical.Unit) *Measured {
	if at, ok := number(v, u); ok {
		return &Measured{at, u.Code}
	}
	return nil
}

// measuredWords writes a number with its unit for people.
func measuredWords(x float64, u clinical.Unit) string {
	if q, err := clinical.NewQuantity(x, u); err == nil {
		return q.String()
	}
	return trimNumber(x) + " " + u.Symbol
}
