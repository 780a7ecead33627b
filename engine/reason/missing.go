package reason

import (
	"fmt"
	"slices"
	"sort"
	"strings"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/vocab"
)

// missing gathers, for one scope, which missing measures decide something, and how much.
type missing struct {
	r      *run
	side   string
	by     map[int]*Missing
	score  map[int]float64 // what it can be expected to settle
	weight map[int]float64 // what it bears on
}

func newMissing(r *run, side string) *missing {
	return &missing{r: r, side: side, by: map[int]*Missing{}, score: map[int]float64{}, weight: map[int]float64{}}
}

// note takes in what exploring one result gave.
func (m *missing) note(result string, weight float64, found answers) {
	if !found.provisional {
		return
	}
	for _, i := range found.matter {
		v := m.r.vars[i]
		m.r.matter[v.key] = true
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
		m.score[i] += weight * found.settles[i]
		m.weight[i] += weight
	}
}

// CautionWeight says how much a caution of a level weighs where the measure to take first is sought: what could harm and
// which device it is come before the rest of the advice, and the follow-up and notes can wait.
func CautionWeight(level string) float64 {
	switch level {
	case "contraindication":
		return 4
	case "precaution":
		return 0.5
	}
	return 0.125
}

// ChoiceWeight says the same of a choice.
func ChoiceWeight(c *vocab.Choice) float64 {
	switch c.Concerns {
	case "device":
		return 2
	case "follow_up":
		return 0.25
	}
	return 1
}

// list gives the missing measures, the one to take first leading: the one that can be expected to
// settle most, then the one that bears on most, then the one that is taken first in an examination.
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
		case m.weight[i] != m.weight[j]:
			return m.weight[i] > m.weight[j]
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

// immaterial lists what rules and cautions of a scope read and is missing, and changes nothing
// whatever it is, for this scope or another.
func (r *run) immaterial(s *scope) []string {
	var slots []int
	add := func(x bool, reads []reading) {
		if s.runs(x) {
			lacks, _ := s.lacking(reads)
			for _, x := range lacks {
				slots = append(slots, x.slot)
			}
		}
	}
	for _, x := range r.e.rules {
		add(x.Limb, x.reads)
		for _, a := range x.advise {
			add(x.Limb, a.reads)
		}
	}
	for _, x := range r.e.cautions {
		add(x.Limb, x.reads)
	}
	slots = slices.DeleteFunc(slots, func(i int) bool { return r.matter[keyOf(s.layout.slots[i], s.side)] })
	slices.Sort(slots)
	var out []string
	for _, i := range slices.Compact(slots) {
		out = append(out, r.vars[r.variable(s.layout.slots[i], s.side)].path(s.side))
	}
	return out
}

// could writes what exploring found as data.
func (r *run) could(found answers, side string, say func(Verdict) (string, any)) []Could {
	var out []Could
	for _, p := range found.could {
		when, text := r.describe(p, side)
		switch {
		case text == "":
			text = "whatever the missing values are"
		case p.other:
			text += " (one of several ways)"
		}
		status, v := say(p.Verdict)
		out = append(out, Could{Status: status, Value: v, If: text, When: when, OtherWays: p.other})
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
		case a.Status != b.Status:
			return a.Status < b.Status
		case a.Mask != b.Mask:
			return a.Mask < b.Mask
		case a.Lo != b.Lo:
			return a.Lo < b.Lo
		}
		return a.Hi < b.Hi
	})
}

// order puts variables in the order of the vocabulary, as the person or the limb on a side sees them,
// so that both limbs are looked at in the same way.
func (c *completer) order(vars []int, side string) {
	rank := func(i int) (int, string) {
		v := c.vars[i]
		other := side != "" && v.side != "" && v.side != side
		slot, readable := c.e.layout.measure[slotKey{v.name, other, false}]
		if !readable {
			slot = c.e.layout.measure[slotKey{v.name, other, true}]
		}
		return slot, v.side
	}
	slices.SortFunc(vars, func(a, b int) int {
		x, first := rank(a)
		y, second := rank(b)
		if x != y {
			return x - y
		}
		return strings.Compare(first, second)
	})
}

// describe writes possibilities as data and words.
func (c *completer) describe(p possibility, side string) ([]Cell, string) {
	var cells []Cell
	var parts []string
	for _, b := range p.when {
		v := c.vars[b.variable]
		is := v.names(b.cells)
		if b.example {
			is = Value{v.values[b.cells[0]]}.String() + ", for example"
		}
		cells = append(cells, Cell{Measure: v.path(side), Is: is})
		parts = append(parts, fmt.Sprintf("%s is %s", v.label(side), is))
	}
	return cells, list(parts, "and")
}

// path names a variable as the limb on a side sees it; side "" is the person's view.
func (v *variable) path(side string) string {
	switch {
	case v.side == "":
		return "person." + v.name
	case side == "":
		return v.side + "." + v.name
	case v.side == side:
		return "limb." + v.name
	}
	return "other." + v.name
}

// label is the same for people.
func (v *variable) label(side string) string {
	if v.side == "" || v.side == side {
		return v.measure.Label
	}
	return v.measure.Label + " (" + v.side + ")"
}

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
		return &Measured{Value: at, Unit: u.Code}
	}
	return nil
}

// measuredWords writes a number with its unit for people.
func measuredWords(x float64, u clinical.Unit) string {
	if q, err := clinical.Restored(x, u); err == nil {
		return q.Brief()
	}
	return trimNumber(x) + " " + u.Symbol
}
