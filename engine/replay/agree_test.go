package replay_test

import (
	"context"
	"flag"
	"fmt"
	"io"
	"slices"
	"strings"
	"testing"
	"time"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/cell/celltest"
	"crus/engine/reason"
	"crus/engine/replay"
	"crus/engine/vocab"
	"crus/engine/whatif"
)

// pairs is how many pairs of a ruleset and an assessment are compared.
var pairs = flag.Int("pairs", 3000, "how many pairs of a drawn ruleset and assessment are compared with the reference")

// list is a source of assessments that are there already.
type list struct {
	s    *cell.Space
	rest []*assess.Assessment
}

func (l *list) Next() (replay.Fill, error) {
	if len(l.rest) == 0 {
		return nil, io.EOF
	}
	mine := l.rest[:min(len(l.rest), replay.BlockCases)]
	l.rest = l.rest[len(mine):]
	return func(b *replay.Block) error {
		for _, a := range mine {
			b.Add(l.s, a)
		}
		return nil
	}, nil
}

func today() time.Time { return time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC) }

// held is what replay made of one row: what an outcome says of it, to be compared.
type held struct {
	rules     map[string]string
	cautions  map[string]string
	choices   map[string]reason.Verdict
	unsettled map[string]bool // choices that are provisional
	whatever  map[string]bool
}

// holding gathers what a result says of its rows.
func holding(s *cell.Space, r *replay.Result, row int, limb bool) held {
	h := held{map[string]string{}, map[string]string{}, map[string]reason.Verdict{}, map[string]bool{}, map[string]bool{}}
	on := func(p []uint64) bool { return p[row/64]>>(row%64)&1 == 1 }
	for i, x := range r.Rules {
		if s.Rules[i].Limb != limb {
			continue
		}
		state := reason.DidNotFire
		switch {
		case on(x.Fired):
			state = reason.Fired
		case on(x.SetAside):
			state = reason.SetAside
		case on(x.Pending):
			state = reason.Pending
		}
		h.rules[s.Rules[i].Name] = state
	}
	for _, c := range r.Cautions {
		if c.Caution.Limb != limb || !on(c.Fired) && !on(c.Pending) {
			continue
		}
		state := reason.Pending
		if on(c.Fired) {
			state = reason.Fired
		}
		if on(c.Provisional) {
			state += " provisional"
		}
		h.cautions[c.Caution.Name] = state
	}
	for _, c := range r.Choices {
		if (c.Topic.Of == vocab.Limb) == limb {
			h.choices[c.Topic.Name] = c.Verdict(row)
			h.unsettled[c.Topic.Name] = on(c.Provisional)
			h.whatever[c.Topic.Name] = on(c.Whatever)
		}
	}
	return h
}

// differs lists where replay and an outcome differ. Where the reference leaves a result provisional because it could not
// try everything, and replay does not, package whatif has to find the same as replay; sharper counts these.
func (h held) differs(s *cell.Space, r *reason.Result, exact func() *reason.Result, sharper *int) (out []string) {
	note := func(format string, args ...any) { out = append(out, fmt.Sprintf(format, args...)) }
	for name, state := range h.rules {
		if want := r.Rules[name]; want == nil || want.State != state {
			note("rule %s is %s, not %v", name, state, want)
		}
	}
	bounded := func(e *reason.Explored) bool { return e != nil && !e.Complete }
	seen := map[string]bool{}
	for _, c := range r.Cautions {
		want := c.State
		if c.Provisional {
			want += " provisional"
		}
		seen[c.Name] = true
		if got := h.cautions[c.Name]; got != want {
			if c.Provisional && bounded(c.Explored) {
				*sharper++
				i := slices.IndexFunc(exact().Cautions, func(x *reason.Caution) bool { return x.Name == c.Name })
				if i < 0 {
					if got != "" {
						note("caution %s is %q, and silent beyond doubt", c.Name, got)
					}
					continue
				}
				x := exact().Cautions[i]
				settled := x.State
				if x.Provisional {
					settled += " provisional"
				}
				if !bounded(x.Explored) && got != settled {
					note("caution %s is %q; what can be settled exactly is %q", c.Name, got, settled)
				}
				continue
			}
			note("caution %s is %q, not %q", c.Name, got, want)
		}
	}
	for name, got := range h.cautions {
		if !seen[name] {
			note("caution %s is %q, not silent", name, got)
		}
	}
	for name, got := range h.choices {
		want := r.Choices[name]
		if h.unsettled[name] != want.Provisional || h.whatever[name] != want.Whatever {
			if want.Provisional && bounded(want.Explored) {
				*sharper++
				x := exact().Choices[name]
				if g, w := written(s, name, got, h.whatever[name]), wanted(x); !bounded(x.Explored) && (x.Provisional != h.unsettled[name] || g != w) {
					note("%s is %s (provisional: %v); what can be settled exactly is %s (provisional: %v)", name, g, h.unsettled[name], w, x.Provisional)
				}
				continue
			}
			note("%s is provisional: %v, whatever is missing: %v; not %v, %v (%+v)", name, h.unsettled[name], h.whatever[name], want.Provisional, want.Whatever, want.Explored)
		}
		if g, w := written(s, name, got, want.Whatever), wanted(want); g != w {
			note("%s is %s, not %s", name, g, w)
		}
	}
	slices.Sort(out)
	return out
}

// written writes a verdict as wanted does. What stands whatever is missing may be so by default or by a rule.
func written(s *cell.Space, name string, v reason.Verdict, whatever bool) string {
	if whatever && v.Status == reason.Default {
		v.Status = reason.Settled
	}
	c := s.Ruleset.Vocabulary.Choice(name)
	switch {
	case v.Status == reason.IsOpen && c.Numeric():
		return fmt.Sprint(v.Status, " ", v.Lo, "..", v.Hi)
	case v.Status == reason.IsOpen:
		var among []string
		for i, o := range c.Options {
			if v.Mask>>i&1 == 1 {
				among = append(among, o)
			}
		}
		return v.Status + " " + strings.Join(among, ", ")
	case v.Status != reason.Settled && v.Status != reason.Default:
		return v.Status
	case c.Numeric():
		return fmt.Sprint(v.Status, " ", v.Lo)
	}
	for i, o := range c.Options {
		if v.Mask == 1<<i {
			return v.Status + " " + o
		}
	}
	return fmt.Sprintf("%s of %b", v.Status, v.Mask)
}

func wanted(c *reason.Choice) string {
	status := c.Status
	if c.Whatever && status == reason.Default {
		status = reason.Settled
	}
	switch {
	case status == reason.IsOpen && c.Range != nil:
		return fmt.Sprint(status, " ", c.Range[0], "..", c.Range[1])
	case status == reason.IsOpen:
		return status + " " + strings.Join(c.Among, ", ")
	case status != reason.Settled && status != reason.Default:
		return status
	}
	return fmt.Sprint(status, " ", c.Value)
}

// compared holds a ruleset's replay of some assessments against the reference.
func compared(t testing.TB, s *cell.Space, all []*assess.Assessment) (differences []string, sharper int) {
	t.Helper()
	p := replay.New(s)
	done := 0
	_, err := p.Run(context.Background(), &list{s, all}, replay.Options{Workers: 2}, func(r *replay.Result) error {
		row := 0
		for range r.Block.Cases {
			for r.Block.Used[row/64]>>(row%64)&1 == 0 {
				row++
			}
			a := all[done]
			done++
			differences = append(differences, onCase(s, r, row, a, &sharper)...)
			row += max(1, len(a.DeviceFor))
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if done != len(all) {
		t.Fatalf("%d assessments of %d were collected", done, len(all))
	}
	return differences, sharper
}

// onCase compares one assessment, whose rows begin at one row.
func onCase(s *cell.Space, r *replay.Result, row int, a *assess.Assessment, sharper *int) (out []string) {
	o := s.Engine.Advise(a, today())
	on := func(p []uint64) bool { return p[row/64]>>(row%64)&1 == 1 }
	applies := map[bool]string{true: "yes", false: "no"}[on(r.In)]
	if on(r.Doubt) {
		applies = "unknown"
	}
	if applies != o.Applies {
		out = append(out, fmt.Sprintf("applies: %s, not %s", applies, o.Applies))
	}
	if o.Applies == "no" || out != nil {
		return out
	}
	var settled *reason.Outcome
	exact := func() *reason.Outcome {
		if settled == nil {
			w, err := whatif.New(s.Engine)
			if err != nil {
				panic(err)
			}
			settled = w.Advise(a, today())
		}
		return settled
	}
	out = holding(s, r, row, false).differs(s, o.Person, func() *reason.Result { return exact().Person }, sharper)
	for i, side := range a.DeviceFor {
		for _, d := range holding(s, r, row+i, true).differs(s, o.Limbs[string(side)], func() *reason.Result { return exact().Limbs[string(side)] }, sharper) {
			out = append(out, string(side)+" "+d)
		}
	}
	if out != nil {
		doc, _ := a.JSON()
		out = append(out, string(doc))
	}
	return out
}

// Replay and the reference agree on drawn rulesets of every construct, with several assessments to each. One ruleset in
// ten is of a usual size; little is missing there, since the reference takes long.
func TestAgreesWithReason(t *testing.T) {
	const each = 20
	sharper := 0
	for seed := range uint64((*pairs + each - 1) / each) {
		size, missing := celltest.Small(), celltest.AnyShare
		if seed%10 == 9 {
			size, missing = celltest.Medium(), 4
		}
		drawn := celltest.Draw(celltest.Seeded(seed), size)
		s, err := cell.New(drawn.Engine(t))
		if err != nil {
			t.Fatal(err)
		}
		d := celltest.Seeded(seed + 1<<32)
		var all []*assess.Assessment
		for range each {
			all = append(all, drawn.Quick(d, missing))
		}
		differences, n := compared(t, s, all)
		sharper += n
		if differences != nil {
			t.Fatalf("seed %d:\n%s\n%s", seed, drawn, strings.Join(differences, "\n"))
		}
	}
	t.Logf("%d results are settled that the reference leaves open", sharper)
}
