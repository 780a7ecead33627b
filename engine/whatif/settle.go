package whatif

import (
	"math/big"
	"slices"
	"strings"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/source"
)

// found is what completing the missing measures can make of one result.
type found struct {
	settled     bool // all completions are accounted for
	provisional bool
	agreed      values // where every completion gives one and the same other result: one of them
	could       []possibility
	explored    *reason.Explored
	matter      []int           // the variables that can change the result
	share       map[int]float64 // of each: the share of its cells that settle the result
	open        []string        // the formulas of which not all is known
}

// possibility is another kind of result with what brings it about.
type possibility struct {
	reason.Verdict
	when  []bracket
	other bool // there are other ways to it
	set   values
}

// bracket is some cells of a variable, or one value for example.
type bracket struct {
	v       *variable
	cells   []int // places among those of the variable
	example bool
}

// settle looks at every completion of what is missing; base is what the result is now.
func (q *question) settle(base reason.Verdict) found {
	d := q.diagram()
	if d == nil {
		return found{provisional: true}
	}
	out := found{share: map[int]float64{}}
	plain := d.plain()
	uses := d.uses()
	total := big.NewInt(1)
	for _, i := range d.order {
		if v := q.s.vars[i]; v.measured() {
			total.Mul(total, big.NewInt(int64(len(v.cells))))
		}
	}
	out.settled, out.open = len(d.sampled) == 0, d.sampled
	left := 0
	alone := -1
	for k, x := range q.kinds {
		if d.far(k)[d.top] < 0 {
			continue
		}
		way, set, how := d.witness(k)
		switch {
		case how == ruledOut:
			continue
		case how == notSeen:
			out.settled = false
			for l, used := range uses {
				if v := q.s.vars[d.order[l]]; used && !v.measured() {
					out.open = append(out.open, q.s.name(v.part))
				}
			}
			continue
		case x.varies:
			out.settled = false
		}
		left++
		alone = k
		if x.stuck || x.varies || !x.Same(base) {
			out.provisional = true
		}
		if !x.varies && !x.Same(base) { // what varies has no one value to show
			out.could = append(out.could, d.possibility(k, way, set, plain))
		}
	}
	sortPossibilities(out.could)
	slices.Sort(out.open)
	out.open = slices.Compact(out.open)
	out.provisional = out.provisional || !out.settled
	if left == 1 && out.settled && out.provisional && !q.kinds[alone].stuck && !q.asks {
		out.agreed, out.provisional = out.could[0].set, false
		out.could = nil
	}
	if !out.provisional {
		return out
	}
	out.explored = &reason.Explored{Tried: len(d.nodes), Of: total.String(), Complete: out.settled, Open: out.open}
	d.weigh(&out, uses)
	return out
}

// weigh says which measures can change the result, and how far each settles it.
func (d *diagram) weigh(out *found, uses []bool) {
	s := d.q.s
	for l, used := range uses {
		i := d.order[l]
		switch v := s.vars[i]; {
		case !used:
		case v.measured():
			out.matter = addInt(out.matter, i)
			if d.sampled == nil || len(d.order) == 1 {
				out.share[i] = d.share(l)
			}
		default:
			for _, in := range v.inputs {
				out.matter = addInt(out.matter, in)
			}
		}
	}
	for _, x := range d.q.says { // a number that hangs on what is missing
		if x.open {
			r := s.rows[x.row]
			for _, axis := range s.openOf(r, s.w.termInputs(x.say.Advice.Term)) {
				out.matter = addInt(out.matter, s.variable(s.key(r, axis)))
			}
		}
	}
	if out.matter == nil { // whatever the values are, once they are recorded
		out.matter = d.q.bears()
		if len(out.matter) == 1 {
			out.share[out.matter[0]] = 1
		}
	}
	slices.SortStableFunc(out.matter, func(a, b int) int { return s.compare(s.vars[a], s.vars[b]) })
}

// bears lists the open measures that what is not known now reads.
func (q *question) bears() (out []int) {
	for _, row := range q.rows {
		r, x := q.s.rows[row], q.s.w.reader()
		for _, n := range q.nodes() {
			q.s.lift(row, n)
			if r.c.Truth[n] == cell.Unknown || r.asks[n] {
				x.node(n)
			}
		}
		for _, axis := range q.s.openOf(r, marked(x.in)) {
			out = addInt(out, q.s.variable(q.s.key(r, axis)))
		}
	}
	return out
}

// nodes lists the nodes that a question hangs on.
func (q *question) nodes() (out []int) {
	if q.topic == nil {
		return []int{q.s.w.Cautions[q.caution].Node}
	}
	for _, i := range q.topic.Bears {
		out = append(out, q.s.w.Rules[i].Own)
	}
	return out
}

func addInt(list []int, x int) []int {
	if slices.Contains(list, x) {
		return list
	}
	return append(list, x)
}

// possibility describes a kind of result by a way to it that was found to be possible.
func (d *diagram) possibility(kind int, way []int, set values, plain bool) possibility {
	s := d.q.s
	p := possibility{Verdict: d.q.kinds[kind].Verdict, set: set}
	h := d.smallest(kind, way)
	example := map[int]bool{}
	for l := range way {
		if v := s.vars[d.order[l]]; h[l] != nil && !v.measured() {
			for _, i := range v.inputs {
				example[i] = true
			}
		}
	}
	for i, v := range s.vars {
		switch l := d.levelOf(i); {
		case !v.measured():
		case example[i]:
			p.when = append(p.when, bracket{v, nil, true})
		case l < len(way) && h[l] != nil && slices.Contains(h[l], false):
			b := bracket{v: v}
			for c, yes := range h[l] {
				if yes {
					b.cells = append(b.cells, c)
				}
			}
			p.when = append(p.when, b)
		}
	}
	slices.SortStableFunc(p.when, func(a, b bracket) int { return s.compare(a.v, b.v) })
	p.other = !plain || d.otherWays(kind, h)
	return p
}

// levelOf gives the level of a variable, which may have been made after the diagram.
func (d *diagram) levelOf(v int) int {
	if v < len(d.level) {
		return d.level[v]
	}
	return len(d.order)
}

// sortPossibilities orders other results: the ones that hang on fewest measures first.
func sortPossibilities(ps []possibility) {
	slices.SortStableFunc(ps, func(a, b possibility) int {
		switch {
		case len(a.when) != len(b.when):
			return len(a.when) - len(b.when)
		case a.Status != b.Status:
			return strings.Compare(a.Status, b.Status)
		case a.Mask != b.Mask:
			if a.Mask < b.Mask {
				return -1
			}
			return 1
		case a.Lo != b.Lo:
			if a.Lo < b.Lo {
				return -1
			}
			return 1
		case a.Hi < b.Hi:
			return -1
		case a.Hi > b.Hi:
			return 1
		}
		return 0
	})
}

// could writes possibilities as an outcome has them.
func (s *scene) could(ps []possibility, side assess.Side, say func(reason.Verdict) (string, any)) []reason.Could {
	var out []reason.Could
	for _, p := range ps {
		var cells []reason.Cell
		var parts []string
		for _, b := range p.when {
			is := s.words(b, p.set)
			cells = append(cells, reason.Cell{Measure: path(b.v.key, side), Is: is})
			parts = append(parts, label(b.v.key, side)+" is "+is)
		}
		text := source.And(parts)
		switch {
		case text == "":
			text = "whatever the missing values are"
		case p.other:
			text += " (one of several ways)"
		}
		status, value := say(p.Verdict)
		out = append(out, reason.Could{Status: status, Value: value, If: text, When: cells, OtherWays: p.other})
	}
	return out
}

// words writes a bracket for people.
func (s *scene) words(b bracket, set values) string {
	if b.example {
		return b.v.line.Say(set[b.v.key].value) + ", for example"
	}
	var cells []int
	for _, c := range b.cells {
		if b.v.cells[c].cell == cell.NotRecorded {
			return "recorded"
		}
		cells = append(cells, b.v.cells[c].cell)
	}
	return b.v.line.Words(cells...)
}

// path names a measure as the limb on a side sees it; "" is the person's view.
func path(k key, side assess.Side) string {
	switch {
	case k.side == "":
		return "person." + k.measure.Name
	case side == "":
		return string(k.side) + "." + k.measure.Name
	case k.side == side:
		return "limb." + k.measure.Name
	}
	return "other." + k.measure.Name
}

// label is the same for people.
func label(k key, side assess.Side) string {
	if k.side == "" || k.side == side {
		return k.measure.Label
	}
	return k.measure.Label + " (" + string(k.side) + ")"
}

// name gives a formula that is left open as the ruleset writes it.
func (s *scene) name(p part) string {
	if p.axis >= 0 {
		return s.w.Axes[p.axis].Path
	}
	u := s.w.Unclear[s.w.Nodes[p.x].X]
	return strings.Join(strings.Fields(u.Expr.Written(u.ID)), " ")
}
