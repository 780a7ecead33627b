package whatif

import (
	"math"
	"slices"
	"time"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/vocab"
)

// Wish is another result that is asked about: an option or a number of a choice, of a limb or of the person ("").
type Wish struct {
	Side   assess.Side
	Choice *vocab.Choice
	Option string
	Number float64 // of a choice with a number, in its unit
}

// maxShown is how many ways to a wish are shown.
const maxShown = 3

// Instead looks for the fewest and then the smallest changes of the measures of the limbs that would have a choice come out
// as wished, settled or by default; what is recorded of the person stays. Every way that is given is carried out by package
// reason.
func (w *Advisor) Instead(a *assess.Assessment, wish Wish, today time.Time) *reason.Instead {
	s := w.newScene(a)
	t := w.Topics[slices.IndexFunc(w.Topics, func(t *cell.Topic) bool { return t.Choice == wish.Choice })]
	out := &reason.Instead{Choice: wish.Choice.Name, Side: string(wish.Side), Wanted: wish.Option}
	if t.Numeric() {
		out.Wanted, out.Unit = wish.Number, t.Unit.Code
	}
	x := &seeker{s: s, t: t, wish: wish, today: today, rows: s.on(wish.Side, t)}
	if x.wished(s.w.Decide(t.Index, s.cases(x.rows)...)) {
		out.Found = reason.InsteadAlready
		return out
	}
	s.leave(changing, func(k key) bool { return k.side != "" })
	x.q = s.choice(t, x.rows)
	if !t.Numeric() {
		x.q.want = 1 << t.Rank(wish.Option)
	}
	d := x.q.diagram()
	var ways []*wayTo
	complete := d != nil
	if d != nil {
		ways, complete = x.ways(d)
	}
	if t.Numeric() && len(ways) == 0 {
		ways = x.scan()
	}
	for _, y := range ways {
		if len(out.Ways) > 0 && len(y.set) > len(out.Ways[0].Changes) || len(out.Ways) == maxShown {
			break
		}
		if way := x.verified(y); way != nil {
			out.Ways = append(out.Ways, way)
		}
	}
	switch {
	case out.Ways != nil:
		out.Found = reason.InsteadFound
	case complete && len(ways) == 0:
		out.Found = reason.InsteadNever
		x.why(out)
	default:
		out.Found = reason.InsteadNotFound
		x.why(out)
	}
	return out
}

// seeker looks for ways to one wish.
type seeker struct {
	s     *scene
	t     *cell.Topic
	wish  Wish
	today time.Time
	rows  []int
	q     *question
}

// wished reports whether a verdict is the one that is wished.
func (x *seeker) wished(v reason.Verdict) bool {
	if v.Status != reason.Settled && v.Status != reason.Default {
		return false
	}
	if x.t.Numeric() {
		return math.Abs(v.Lo-x.wish.Number) < max(1e-9, x.t.Rounding/2)
	}
	return v.Mask == 1<<x.t.Rank(x.wish.Option)
}

// wayTo is some measures with the cells that they would have to be in.
type wayTo struct {
	set      values
	is       map[key]string // in words
	distance float64
}

// trail is the changes on the way down from a node to what is wished.
type trail struct {
	count    int
	distance float64
	level    int
	cell     int
	next     *trail
	changed  string // which levels
}

func (a *trail) before(b *trail) int {
	switch {
	case a.count != b.count:
		return a.count - b.count
	case a.distance < b.distance:
		return -1
	case a.distance > b.distance:
		return 1
	}
	return 0
}

// maxTrails is how many ways are kept at each node, each with other measures changed.
const maxTrails = 12

// ways reads the shortest ways to what is wished off a diagram. The second result says whether, where there are none, none
// can be.
func (x *seeker) ways(d *diagram) ([]*wayTo, bool) {
	best := make([][]*trail, len(d.nodes))
	reachable, complete := false, len(d.sampled) == 0
	for n, y := range d.nodes { // the kids of a node stand before it
		if d.end(n) {
			k := x.q.kinds[y.kind]
			complete = complete && !k.varies
			if !k.varies && x.wished(k.Verdict) {
				reachable = true
				best[n] = []*trail{{level: -1}}
			}
			continue
		}
		v := d.variable(n)
		var all []*trail
		for c, kid := range y.kids {
			count, distance := 0, 0.0
			if v.measured() && c != v.now {
				if !v.cells[c].recorded && v.now >= 0 {
					continue // what is recorded is not forgotten
				}
				count, distance = 1, v.distance(c)
			}
			for _, t := range best[kid] {
				z := &trail{t.count + count, t.distance + distance, y.level, c, t, t.changed}
				if count > 0 {
					z.changed = string(rune(y.level)) + t.changed
				}
				all = append(all, z)
			}
		}
		slices.SortStableFunc(all, (*trail).before)
		seen := map[string]bool{}
		for _, t := range all {
			if !seen[t.changed] && len(best[n]) < maxTrails {
				seen[t.changed] = true
				best[n] = append(best[n], t)
			}
		}
	}
	complete = complete && d.plain()
	var out []*wayTo
	for _, t := range best[d.top] {
		if y := x.way(d, t); y != nil {
			out = append(out, y)
		}
	}
	slices.SortStableFunc(out, func(a, b *wayTo) int {
		switch {
		case len(a.set) != len(b.set):
			return len(a.set) - len(b.set)
		case a.distance < b.distance:
			return -1
		case a.distance > b.distance:
			return 1
		}
		return 0
	})
	return out, complete && !reachable
}

// way turns a trail into values.
func (x *seeker) way(d *diagram, t *trail) *wayTo {
	out := &wayTo{set: values{}, is: map[key]string{}}
	h := d.free()
	for l, i := range d.order { // all else stays
		if v := x.s.vars[i]; v.measured() && v.now >= 0 {
			h.hold(d, l, v.now)
		}
	}
	var changed []int
	for ; t.next != nil; t = t.next {
		v := x.s.vars[d.order[t.level]]
		h.hold(d, t.level, t.cell)
		if v.measured() && t.cell != v.now {
			changed = append(changed, t.level)
			out.set[v.key] = v.cells[t.cell]
			out.distance += v.distance(t.cell)
		}
	}
	if !x.wished(x.q.with(out.set)) {
		return nil
	}
	for _, l := range changed {
		v := x.s.vars[d.order[l]]
		from := slices.Index(h[l], true)
		cells := []int{from}
		takes := func(c int) bool {
			if c < 0 || c >= len(v.cells) || c == v.now || !v.cells[c].recorded || math.IsNaN(v.cells[c].value) {
				return false
			}
			was := h[l]
			h.hold(d, l, c)
			ok := true
			for k, yes := range d.reach(h) {
				ok = ok && (!yes || !x.q.kinds[k].varies && x.wished(x.q.kinds[k].Verdict))
			}
			h[l] = was
			return ok
		}
		if v.line.Cells == nil {
			for c := from - 1; takes(c); c-- {
				cells = append([]int{c}, cells...)
			}
			for c := from + 1; takes(c); c++ {
				cells = append(cells, c)
			}
		} else {
			for c := range v.cells {
				if c != from && takes(c) {
					cells = append(cells, c)
				}
			}
			slices.Sort(cells)
		}
		out.is[v.key] = x.s.words(bracket{v: v, cells: cells}, nil)
	}
	return out
}

// distance is how far a cell lies from what is recorded now: in units of the measure's error, or else of a twentieth of the
// plausible range; grades by steps; 1 for options, yes or no, and what is not recorded.
func (v *variable) distance(c int) float64 {
	if v.now < 0 || math.IsNaN(v.cells[v.now].value) || v.line.Cells != nil {
		return 1
	}
	at := v.cells[v.now].value
	x := v.cells[c].value
	if span, ok := v.span(v.cells[c]); ok {
		x = min(max(at, span.Lo), span.Hi)
	}
	return math.Abs(x-at) / v.scale()
}

// scale is what a distance is measured in.
func (v *variable) scale() float64 {
	switch m := v.measure; {
	case m.Kind == vocab.Grade:
		return 1
	case m.Kind == vocab.Quantity && m.Error > 0:
		return m.Unit.ToBase(m.Error)
	case m.Kind == vocab.Count && m.Error > 0:
		return m.Error
	}
	const parts = 20
	lo, hi := v.line.Range()
	return max((hi-lo)/parts, 1e-9)
}

// nearest gives a value of a cell near another, one that a person would write.
func (v *variable) nearest(c int, at float64) float64 {
	if v.line.Cells != nil {
		x, _ := v.line.Value(c)
		return x
	}
	span, ok := v.line.Plausible(c)
	if !ok { // never
		x, _ := v.line.Value(c)
		return x
	}
	if v.line.Step() > 0 {
		return min(max(at, span.Lo), span.Hi)
	}
	end, in, down := span.Lo, span.LoIn, false
	if span.Hi < at || span.Hi == at {
		end, in, down = span.Hi, span.HiIn, true
	}
	if in {
		return end
	}
	u := v.measure.Unit
	for _, grid := range []float64{1, 0.5, 0.1, 0.05, 0.01, 0.001, 1e-4, 1e-5, 1e-6} {
		n := math.Floor(u.FromBase(end)/grid + 1)
		if down {
			n = math.Ceil(u.FromBase(end)/grid - 1)
		}
		if x := u.ToBase(n * grid); span.Holds(x) {
			return x
		}
	}
	x, _ := v.line.Value(c)
	return x
}

// verified carries a way out with package reason; nil where that does not bear it out.
func (x *seeker) verified(y *wayTo) *reason.Way {
	b := x.s.changed(y.set)
	if b == nil {
		return nil
	}
	o := x.s.w.Engine.Advise(b, x.today)
	if o.Person == nil {
		return nil
	}
	c := results(o)[x.wish.Side].Choices[x.t.Name]
	ok := c.Value == any(x.wish.Option)
	if at, number := c.Value.(float64); x.t.Numeric() {
		ok = number && x.wished(reason.Verdict{Status: reason.Settled, Lo: at})
	}
	if !ok {
		return nil
	}
	out := &reason.Way{Distance: math.Round(y.distance*100) / 100, Provisional: c.Provisional}
	keys := make([]key, 0, len(y.set))
	for k := range y.set {
		keys = append(keys, k)
	}
	slices.SortFunc(keys, func(a, b key) int {
		return x.s.compare(x.s.vars[x.s.variable(a)], x.s.vars[x.s.variable(b)])
	})
	for _, k := range keys {
		v := x.s.vars[x.s.variable(k)]
		change := reason.Change{Measure: path(k, x.wish.Side), Label: label(k, x.wish.Side), To: v.line.Say(y.set[k].value), Is: y.is[k]}
		if !x.s.missing(k) {
			change.From = v.line.Say(x.s.value(v))
		}
		out.Changes = append(out.Changes, change)
	}
	return out
}

// why says what stands against a wish: the limits that hold whatever the limbs are like, or else those in force now.
func (x *seeker) why(out *reason.Instead) {
	if x.t.Numeric() {
		return
	}
	option := uint64(1) << x.t.Rank(x.wish.Option)
	add := func(say *cell.Say) {
		if !slices.ContainsFunc(out.Limits, func(l reason.Limit) bool { return l.Rule == say.Rule.Name }) {
			out.Limits = append(out.Limits, reason.Limit{Rule: say.Rule.Name, Verb: string(say.Advice.Verb), Options: say.Advice.Options})
		}
	}
	for _, y := range x.q.says {
		if y.say.Advice.Removes&option != 0 && x.q.roots[y.root] == yes {
			add(y.say)
			out.Always = true
		}
	}
	if out.Limits != nil {
		return
	}
	for i := range x.t.Says {
		say := &x.t.Says[i]
		for _, c := range x.s.cases(x.rows) {
			if say.Advice.Removes&option != 0 && c.Truth[say.Rule.Force] == cell.Yes {
				add(say)
			}
		}
	}
	out.Favoured = slices.ContainsFunc(x.q.says, func(y said) bool { return y.say.Advice.Favours&option != 0 })
}
