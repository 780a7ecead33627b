package reason

import (
	"fmt"
	"slices"
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/assess"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
)

// layout gives every name that a condition can read a slot in a frame.
type layout struct {
	slots   []slot
	blank   []ref.Val // a frame in which nothing is recorded
	names   map[*ruleset.Part]map[string]int
	facts   map[*ruleset.Fact]int
	measure map[slotKey]int
}

// slot says what a place in a frame holds.
type slot struct {
	path     string         // as the root ruleset writes it
	measure  *vocab.Measure // nil for a fact, and for whether a measure is recorded
	other    bool
	recorded int // the slot that says whether this measure is recorded
}

type slotKey struct {
	name     string
	other    bool
	recorded bool
}

func newLayout(rs *ruleset.Ruleset) *layout {
	l := &layout{names: map[*ruleset.Part]map[string]int{}, facts: map[*ruleset.Fact]int{}, measure: map[slotKey]int{}}
	shared := map[string]int{}
	add := func(path string, s slot, v ref.Val) int {
		i := len(l.slots)
		s.path = path
		l.slots = append(l.slots, s)
		if v == nil {
			v = types.NewUnknown(int64(i), types.NewAttributeTrail(path))
		}
		l.blank = append(l.blank, v)
		shared[path] = i
		return i
	}
	used := usedPaths(rs)
	measure := func(m *vocab.Measure, root string, other bool) {
		if !used[root+"."+m.Name] {
			return
		}
		if m.CELType() == nil {
			r := add("recorded."+root+"."+m.Name, slot{measure: m, other: other}, types.False)
			l.slots[r].recorded = r
			l.measure[slotKey{m.Name, other, true}] = r
			return
		}
		i := add(root+"."+m.Name, slot{measure: m, other: other}, nil)
		r := add("recorded."+root+"."+m.Name, slot{}, types.False)
		l.slots[i].recorded = r
		l.measure[slotKey{m.Name, other, false}] = i
		l.measure[slotKey{m.Name, other, true}] = r
	}
	for _, m := range rs.Vocabulary.Measures {
		if m.Of == vocab.Person {
			measure(m, "person", false)
			continue
		}
		measure(m, "limb", false)
		measure(m, "other", true)
	}
	for _, f := range rs.Facts {
		l.facts[f] = add(f.Path(), slot{}, nil)
	}
	for _, p := range rs.Parts {
		l.names[p] = shared
		if !p.Root { // the part calls its own facts without its name in front
			own := make(map[string]int, len(shared))
			for path, i := range shared {
				root, name, _ := strings.Cut(path, ".")
				if inner, ok := strings.CutPrefix(name, p.Name+"."); ok && (root == "finding" || root == "quantity") {
					own[root+"."+inner] = i
				} else if root != "finding" && root != "quantity" || strings.Contains(name, ".") {
					own[path] = i
				}
			}
			l.names[p] = own
		}
	}
	return l
}

// usedPaths gives the names of measures that conditions, formulas and texts read.
func usedPaths(rs *ruleset.Ruleset) map[string]bool {
	used := map[string]bool{}
	expr := func(xs ...*ruleset.Expr) {
		for _, x := range xs {
			if x != nil {
				for _, r := range x.Reads {
					used[r.Path] = true
				}
			}
		}
	}
	text := func(ts ...source.Text) {
		for _, t := range ts {
			for _, r := range t.Refs {
				used[r.Name] = true
			}
		}
	}
	for _, p := range rs.Parts {
		expr(p.Applies)
	}
	for _, f := range rs.Facts {
		expr(f.Expr)
		text(f.Because)
	}
	for _, r := range rs.Rules {
		expr(r.When, r.Unless)
		expr(formulas(r)...)
		text(r.Because)
	}
	for _, c := range rs.Cautions {
		expr(c.When)
		text(c.Says, c.Act)
	}
	for _, o := range rs.Open {
		text(o.Because)
		text(o.Consider...)
	}
	return used
}

// frame holds every value that conditions can read for one limb, or for the person alone.
type frame struct {
	layout *layout
	values []ref.Val
	texts  map[string]string // free texts, for ${names} only
	words  []string          // what texts say of the values so far
	side   string            // "left", "right", or "" for the person
	room   *room             // for the steps that are shown
	shift  *shift            // a figure that a formula rests on, moved to see what that does; usually nil
}

// newFrame lays out an assessment as one limb sees it.
func newFrame(l *layout, a *assess.Assessment, side assess.Side, steps int) *frame {
	f := &frame{layout: l, values: slices.Clone(l.blank), texts: map[string]string{}, side: string(side), room: newRoom(steps)}
	f.record(a.Person, "person", false)
	if side != "" {
		f.record(a.Limb(side), "limb", false)
		f.record(a.Limb(side.Opposite()), "other", true)
	}
	return f
}

func (f *frame) record(entries map[string]*assess.Entry, root string, other bool) {
	for name, e := range entries {
		if e.Value == nil {
			continue
		}
		if e.Measure.Kind == vocab.Text {
			f.texts[root+"."+name] = fmt.Sprint(e.Value.Value()) // as written
		} else if i, ok := f.layout.measure[slotKey{name, other, false}]; ok {
			f.values[i] = e.Value
		}
		if i, ok := f.layout.measure[slotKey{name, other, true}]; ok {
			f.values[i] = types.True
		}
	}
}

// view is what one part's conditions see of a frame, and where their steps go.
type view struct {
	*frame
	names map[string]int
	steps []Step
}

// ResolveName finds a name, for cel-go.
func (v *view) ResolveName(name string) (any, bool) {
	i, ok := v.names[name]
	if !ok {
		return nil, false
	}
	return v.values[i], true
}

// Parent is nil: there is nothing else to look in.
func (v *view) Parent() cel.Activation { return nil }

// waitFor gives the unknown value that waits for some slots.
func (l *layout) waitFor(slots []int) ref.Val {
	var out *types.Unknown
	for _, i := range slots {
		out = types.MergeUnknowns(out, l.blank[i].(*types.Unknown))
	}
	return out
}
