package whatif

import (
	"fmt"
	"slices"
	"time"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/reason"
)

// Compare says where what cells settle differs from what reason explored completely.
func (w *Advisor) Compare(o *reason.Outcome, a *assess.Assessment) (out []string) {
	if o.Applies == "unknown" {
		return nil
	}
	s := w.newScene(a)
	s.leave(completing, s.missing)
	compare := func(name string, q *question, base reason.Verdict, provisional, whatever bool, x *reason.Explored, matter []string, could []reason.Could, say func(reason.Verdict) (string, any), side assess.Side) {
		if x != nil && !x.Complete {
			return
		}
		f := q.settle(base)
		if !f.settled {
			out = append(out, fmt.Sprintf("%s %s is not settled: %v", side, name, f.open))
			return
		}
		if f.agreed != nil && len(could) == 1 && len(could[0].When) == 0 {
			return // reason waits where a rule asks what is recorded, also where that is all one
		}
		if f.provisional != provisional || (f.agreed != nil) != whatever {
			out = append(out, fmt.Sprintf("%s %s: provisional %v, agreed %v; reason says %v %v: %+v; kinds %+v", side, name, f.provisional, f.agreed != nil, provisional, whatever, could, q.kinds))
			return
		}
		got, want := kinds(s.could(f.could, side, say)), kinds(could)
		if fmt.Sprint(got) != fmt.Sprint(want) {
			out = append(out, fmt.Sprintf("%s %s could become %v; reason says %v", side, name, got, want))
		}
		var paths []string
		for _, i := range f.matter {
			if f.provisional {
				paths = append(paths, path(s.vars[i].key, side))
			}
		}
		slices.Sort(paths)
		slices.Sort(matter)
		alone := len(f.could) == 1 && f.could[0].when == nil // once all is recorded: those that are asked about are enough
		if fmt.Sprint(paths) != fmt.Sprint(matter) && !(alone && len(paths) > 0 && subset(paths, matter)) {
			out = append(out, fmt.Sprintf("%s %s is decided by %v; reason says %v; %+v", side, name, paths, matter, q.kinds))
		}
	}
	for _, row := range s.rows {
		r := results(o)[row.side]
		decides := func(name string) (out []string) {
			for _, m := range r.Missing {
				if slices.Contains(m.Decides, name) {
					out = append(out, m.Measure)
				}
			}
			return out
		}
		for _, t := range w.Topics {
			if c := r.Choices[t.Name]; c != nil && (c.Explored != nil || c.Whatever) {
				rows := s.on(row.side, t)
				var cases []*cell.Case
				for _, i := range rows {
					cases = append(cases, s.rows[i].c)
				}
				compare(t.Name, s.choice(t, rows), w.Decide(t.Index, cases...), c.Provisional, c.Whatever, c.Explored, decides(t.Name), c.CouldBecome,
					func(v reason.Verdict) (string, any) { return v.Status, valueOf(t.Choice, v) }, row.side)
			}
		}
		for _, c := range r.Cautions {
			if c.Explored != nil {
				for i, k := range w.Cautions {
					if k.Name == c.Name {
						rows := s.on(row.side, nil)
						compare("caution."+c.Name, s.cautioned(i, rows[0]), cautionVerdict(s.rows[rows[0]].c.Truth[k.Node]), c.Provisional, false, c.Explored, decides("caution."+c.Name), c.CouldBecome,
							func(v reason.Verdict) (string, any) { return v.Status, nil }, row.side)
					}
				}
			}
		}
	}
	return out
}

func kinds(cs []reason.Could) (out []string) {
	for _, c := range cs {
		status := c.Status
		if status == reason.Default {
			status = reason.Settled
		}
		out = append(out, fmt.Sprint(status, " ", c.Value))
	}
	slices.Sort(out)
	return out
}

func subset(a, b []string) bool {
	for _, x := range a {
		if !slices.Contains(b, x) {
			return false
		}
	}
	return true
}

// Tried is how many results were tried, and how many of these were settled.
type Tried struct{ Results, Settled, Sampled int }

// Completions holds what is settled against completions that are drawn: values from every cell, at its ends and inside.
func (w *Advisor) Completions(a *assess.Assessment, rounds int, draw func(n int) int, n *Tried) (out []string) {
	s := w.newScene(a)
	s.leave(completing, s.missing)
	try := func(name string, q *question, base reason.Verdict) {
		n.Results++
		f := q.settle(base)
		if !f.settled {
			return
		}
		n.Settled++
		possible := []reason.Verdict{base}
		if f.agreed != nil {
			possible[0] = q.with(f.agreed)
		}
		for _, p := range f.could {
			possible = append(possible, p.Verdict)
		}
		for range rounds {
			set := s.drawn(draw)
			v := q.with(set)
			n.Sampled++
			if !slices.ContainsFunc(possible, v.Same) {
				out = append(out, fmt.Sprintf("%s: %+v with %s; only %+v is said to be possible", name, v, s.show(set), possible))
				return
			}
			for _, p := range f.could {
				if p.holds(set) && !v.Same(p.Verdict) {
					out = append(out, fmt.Sprintf("%s: %+v with %s, where %+v should be: %v", name, v, s.show(set), p.Verdict, s.could([]possibility{p}, "", func(v reason.Verdict) (string, any) { return v.Status, nil })))
					return
				}
			}
		}
		for _, p := range f.could {
			if v := q.with(p.set); !v.Same(p.Verdict) {
				out = append(out, fmt.Sprintf("%s: %+v is claimed and %+v comes with %s", name, p.Verdict, v, s.show(p.set)))
			}
		}
	}
	for _, row := range s.rows {
		for _, t := range w.Topics {
			if rows := s.on(row.side, t); (t.Of == "person") == (row.side == "") {
				var cases []*cell.Case
				for _, i := range rows {
					cases = append(cases, s.rows[i].c)
				}
				try(t.Name, s.choice(t, rows), w.Decide(t.Index, cases...))
			}
		}
		for i, k := range w.Cautions {
			if k.Limb == (row.side != "") {
				rows := s.on(row.side, nil)
				try("caution."+k.Name, s.cautioned(i, rows[0]), cautionVerdict(s.rows[rows[0]].c.Truth[k.Node]))
			}
		}
	}
	return out
}

// holds reports whether values lie where a possibility says; one with examples holds for these alone.
func (p possibility) holds(set values) bool {
	for _, b := range p.when {
		at := set[b.v.key]
		if b.example {
			return false
		}
		if !slices.ContainsFunc(b.cells, func(c int) bool {
			x := b.v.cells[c]
			return x.recorded == at.recorded && (x.cell == cell.NotRecorded || b.v.line.Cell(at.value) == x.cell)
		}) {
			return false
		}
	}
	return true
}

// drawn gives drawn values of everything that is open.
func (s *scene) drawn(draw func(n int) int) values {
	out := values{}
	for _, r := range s.rows {
		for _, a := range s.w.Axes[:s.w.Measures] {
			if r.side == "" && a.Limb || !s.isOpen(r, a.Index) {
				continue
			}
			k := s.key(r, a.Index)
			if _, done := out[k]; done {
				continue
			}
			v := s.vars[s.variable(k)]
			p := v.cells[draw(len(v.cells))]
			if span, ok := v.span(p); ok {
				at := []float64{span.Lo, span.Hi, span.Lo + (span.Hi-span.Lo)*float64(draw(1000))/999}[draw(3)]
				if step := v.line.Step(); step > 0 {
					at = float64(int(at/step)) * step
				} else {
					at = float64(int(at*1e6)) / 1e6
				}
				if span.Holds(at) {
					p.value = at
				}
			}
			out[k] = p
		}
	}
	return out
}

func (s *scene) show(set values) (out []string) {
	for k, p := range set {
		out = append(out, fmt.Sprintf("%s=%v", path(k, ""), p.value))
	}
	slices.Sort(out)
	return out
}

// Around calls do for values of each recorded measure with a stated error within that error: on a grid, and on and just
// beside every cut of its axes.
func (w *Advisor) Around(a *assess.Assessment, steps int, do func(measure string, value float64, b *assess.Assessment)) {
	s := w.newScene(a)
	done := map[key]bool{}
	for i, r := range s.rows {
		for _, axis := range w.Axes[:w.Measures] {
			if r.side == "" && axis.Limb || !r.Recorded[axis.Index] || axis.Measure.Error == 0 {
				continue
			}
			k := s.key(s.rows[i], axis.Index)
			if done[k] {
				continue
			}
			done[k] = true
			v, e := r.Value[axis.Index], axis.Measure.Error
			if axis.Step() == 0 {
				e = axis.Measure.Unit.ToBase(e)
			}
			lo, hi := axis.Range()
			lo, hi = min(v, max(lo, v-e)), max(v, min(hi, v+e))
			var at []float64
			if axis.Step() > 0 {
				for x := lo; x <= hi; x++ {
					at = append(at, x)
				}
			} else {
				for n := range steps + 1 {
					at = append(at, lo+(hi-lo)*float64(n)/float64(steps))
				}
				m := w.newScene(a)
				m.leave(moving, func(x key) bool { return x == k })
				m.band = [2]float64{lo, hi}
				for _, c := range m.vars[m.variable(k)].line.Cuts {
					for _, x := range []float64{c.At - 1e-6, c.At, c.At + 1e-6} {
						if x >= lo && x <= hi {
							at = append(at, x)
						}
					}
				}
			}
			for _, x := range at {
				if b := s.changed(values{k: {value: x, recorded: true}}); b != nil {
					do(path(k, ""), x, b)
				}
			}
		}
	}
}

// Wishes lists the options of choices that are not advised, with what Instead finds, and the fewest changes and the smallest
// distance that trying every combination of cells finds (-1: none); try is how many combinations are tried at most.
func (w *Advisor) Wishes(a *assess.Assessment, today time.Time, most int, do func(wish Wish, got *reason.Instead, count int, distance float64)) {
	s := w.newScene(a)
	for _, row := range s.rows {
		for _, t := range w.Topics {
			if t.Numeric() || (t.Of == "person") != (row.side == "") || row.side == "" && len(s.rows) > 1 && t.Of != "person" {
				continue
			}
			for _, option := range t.Options {
				wish := Wish{Side: row.side, Choice: t.Choice, Option: option}
				x := &seeker{s: s, t: t, wish: wish, today: today, rows: s.on(row.side, t)}
				if x.rows == nil || x.wished(w.Decide(t.Index, s.cases(x.rows)...)) {
					continue
				}
				s.leave(changing, func(k key) bool { return k.side != "" })
				x.q = s.choice(t, x.rows)
				var vars []*variable
				n := 1
				for _, r := range x.rows {
					for _, axis := range s.openOf(s.rows[r], t.Reads) {
						if v := s.vars[s.variable(s.key(s.rows[r], axis))]; !slices.Contains(vars, v) {
							vars = append(vars, v)
							n *= len(v.cells)
						}
					}
				}
				if n > most {
					continue
				}
				count, distance := -1, 0.0
				at := make([]int, len(vars))
				for range n {
					c, far := 0, 0.0
					set := values{}
					ok := true
					for i, v := range vars {
						p := v.cells[at[i]]
						ok = ok && (p.recorded || at[i] == v.now)
						if at[i] != v.now {
							set[v.key] = p
							c, far = c+1, far+v.distance(at[i])
						}
					}
					if ok && (count < 0 || c < count || c == count && far < distance) && x.wished(x.q.with(set)) && x.verified(&wayTo{set: set}) != nil {
						count, distance = c, far
					}
					for i := range at {
						if at[i]++; at[i] < len(vars[i].cells) {
							break
						}
						at[i] = 0
					}
				}
				do(wish, w.Instead(a, wish, today), count, distance)
			}
		}
	}
}
