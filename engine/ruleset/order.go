package ruleset

import (
	"sort"
	"strings"

	"crus/engine/source"
)

// order puts the facts so that each comes after those that it reads, or reports a circle as its path.
func (r *reader) order() {
	const entered, left = 1, 2
	state := map[*Fact]int{}
	var out []*Fact
	var trail []*Fact
	var visit func(f *Fact)
	visit = func(f *Fact) {
		switch state[f] {
		case left:
			return
		case entered:
			from := 0
			for trail[from] != f {
				from++
			}
			var path []string
			for _, x := range append(trail[from:len(trail):len(trail)], f) {
				path = append(path, x.Path())
			}
			message := "These read each other in a circle: " + strings.Join(path, " → ") + "."
			if len(path) == 2 {
				message = f.Path() + " reads itself."
			}
			r.fail(source.Errorf(f.Where, "cycle", "%s", message).Hinting("Define one of them from measures alone."))
			return
		}
		state[f] = entered
		trail = append(trail, f)
		if f.Expr != nil {
			for _, ref := range f.Expr.Reads {
				if ref.Fact != nil {
					visit(ref.Fact)
				}
			}
		}
		trail = trail[:len(trail)-1]
		state[f] = left
		out = append(out, f)
	}
	sort.Slice(r.rs.Facts, func(i, j int) bool { return r.rs.Facts[i].Path() < r.rs.Facts[j].Path() })
	for _, f := range r.rs.Facts {
		visit(f)
	}
	r.rs.Facts = out
}

// overridden gives the full name of a rule that this part calls by name in overrides.
func (p *Part) overridden(name string) string {
	if !strings.Contains(name, ".") {
		return p.FullName(name)
	}
	if own, ok := strings.CutPrefix(name, p.Name+"."); ok && p.Root {
		return own
	}
	return name
}

// isLost reports whether a rule belongs to a ruleset that could not be read.
func (r *reader) isLost(p *Part, name string) bool {
	ruleset, _, _ := strings.Cut(name, ".")
	return p.lost[ruleset]
}

// link resolves what overrides what, and refuses a circle.
func (r *reader) link() {
	var names []string
	for n := range r.rules {
		names = append(names, n)
	}
	sort.Strings(names)
	for _, rule := range r.rs.Rules {
		for _, t := range rule.overrides {
			name := rule.Part.overridden(t.S)
			over := r.rules[name]
			switch {
			case over == nil && r.isLost(rule.Part, name):
			case over == nil:
				d := source.Errorf(t.All(), "unknown_name", "There is no rule %q to override.", t.S).
					Hinting("%s", source.DidYouMean(t.S, names, "Only rules can be overridden, of this ruleset or of one it builds on."))
				if r.cautions[name] != nil {
					d = d.Hinting("%s is a caution, and cautions can't be overridden; a local protocol leaves one out with except.", t.S)
				}
				r.fail(d)
			case over == rule:
				r.fail(source.Errorf(t.All(), "cycle", "The rule overrides itself.").Hinting("Leave it out."))
			default:
				rule.Overrides = append(rule.Overrides, over)
			}
		}
	}
	r.overridingCycle()
	sort.Slice(r.rs.Rules, func(i, j int) bool { return r.rs.Rules[i].Name < r.rs.Rules[j].Name })
	sort.Slice(r.rs.Cautions, func(i, j int) bool { return r.rs.Cautions[i].Name < r.rs.Cautions[j].Name })
}

func (r *reader) overridingCycle() {
	const entered, left = 1, 2
	state := map[*Rule]int{}
	var trail []string
	var visit func(x *Rule) bool
	visit = func(x *Rule) bool {
		trail = append(trail, x.Name)
		defer func() { trail = trail[:len(trail)-1] }()
		switch state[x] {
		case left:
			return true
		case entered:
			from := 0
			for trail[from] != x.Name {
				from++
			}
			r.fail(source.Errorf(x.Where, "cycle", "These rules override each other in a circle: %s.", strings.Join(trail[from:], " → ")).
				Hinting("Decide which of them goes first, and take one overrides out."))
			return false
		}
		state[x] = entered
		for _, o := range x.Overrides {
			if !visit(o) {
				return false
			}
		}
		state[x] = left
		return true
	}
	for _, x := range r.rs.Rules {
		if state[x] == 0 && !visit(x) {
			return
		}
	}
}

// except takes out what a local protocol leaves out.
func (r *reader) except() {
	for _, p := range r.excepts {
		e := p.except
		part, _, qualified := strings.Cut(e.Name, ".")
		rule, caution := r.rules[e.Name], r.cautions[e.Name]
		switch {
		case (rule != nil || caution != nil) && (!qualified || part == p.part.p.Name):
			r.fail(source.Errorf(e.Where, "except", "except leaves out a rule or caution of a ruleset that is built on, and %q is this ruleset's own.", e.Name).
				Hinting("Delete the %s itself.", map[bool]string{true: "rule", false: "caution"}[rule != nil]))
			continue
		case p.part.lost[part]:
			continue
		case rule == nil && caution == nil:
			var names []string
			for n := range r.rules {
				names = append(names, n)
			}
			for n := range r.cautions {
				names = append(names, n)
			}
			r.fail(source.Errorf(e.Where, "unknown_name", "There is no rule or caution %q to leave out.", e.Name).
				Hinting("%s", r.exceptLike(p.part, e.Name, names)))
			continue
		}
		r.rs.Excepts = append(r.rs.Excepts, e)
		r.rs.Rules = without(r.rs.Rules, rule)
		r.rs.Cautions = without(r.rs.Cautions, caution)
		for _, x := range r.rs.Rules {
			x.Overrides = without(x.Overrides, rule)
		}
	}
}

// exceptLike makes the hint for something to leave out that does not exist.
func (r *reader) exceptLike(p *partReader, name string, names []string) string {
	var ends []string // the same name, with a ruleset before it
	for _, n := range names {
		if strings.HasSuffix(n, "."+name) {
			ends = append(ends, n)
		}
	}
	sort.Strings(ends)
	part, _, qualified := strings.Cut(name, ".")
	switch {
	case len(ends) > 0:
		return "Name it with its ruleset: " + source.Or(ends) + "."
	case qualified && r.parts[part] == nil:
		if f, _, ok := p.lib.find(p.folder, part); ok {
			if header := f.header(); header != nil && header.Type == "ruleset" {
				version, _ := header.Attr("version")
				major, _, _ := strings.Cut(version.Value.Text.S, ".")
				return "Only what is built on can be left out: add builds_on = [\"" + part + "@" + major + "\"] to the ruleset block."
			}
		}
	}
	return source.DidYouMean(name, names, "Name it with its ruleset, for example limb_safety.driving.")
}

func without[T comparable](list []T, x T) []T {
	var out []T
	for _, y := range list {
		if y != x {
			out = append(out, y)
		}
	}
	return out
}

// reach works out what reads a limb and so runs for each: directly, through facts, through a
// formula or text of its own, or because a rule that overrides it does.
func (r *reader) reach() {
	for _, f := range r.rs.Facts { // in order: what a fact reads is known before it
		f.Limb = readsLimb(f.Expr) || r.textReadsLimb(f.Part, f.Because)
	}
	for _, p := range r.rs.Parts {
		if readsLimb(p.Applies) {
			r.fail(source.Errorf(p.Applies.Text.All(), "applies", "Whether a ruleset applies is asked once for the person, and this reads a limb.").
				Hinting("Test the person here, and the limb in a finding that the rules read."))
		}
	}
	for _, c := range r.rs.Cautions {
		c.Limb = readsLimb(c.When) || r.textReadsLimb(c.Part, c.Says, c.Act)
	}
	for _, x := range r.rs.Rules {
		x.Limb = readsLimb(x.When) || readsLimb(x.Unless) || r.textReadsLimb(x.Part, x.Because)
		for _, a := range x.Advise {
			x.Limb = x.Limb || readsLimb(a.Formula)
		}
	}
	for changed := true; changed; {
		changed = false
		for _, x := range r.rs.Rules {
			for _, o := range x.Overrides {
				if x.Limb && !o.Limb {
					o.Limb, changed = true, true
				}
			}
		}
	}
}

func readsLimb(e *Expr) bool {
	if e == nil {
		return false
	}
	for _, ref := range e.Reads {
		if ref.Fact != nil && ref.Fact.Limb || ref.Measure != nil && ref.Measure.Of == "limb" {
			return true
		}
	}
	return false
}

func (r *reader) textReadsLimb(p *Part, texts ...source.Text) bool {
	for _, t := range texts {
		for _, n := range t.Refs {
			root, name, _ := strings.Cut(n.Name, ".")
			if root == "limb" || root == "other" {
				return true
			}
			if root == "person" {
				continue
			}
			if !strings.Contains(name, ".") {
				name = p.FullName(name)
			}
			if f := r.facts[root+"."+name]; f != nil && f.Limb {
				return true
			}
		}
	}
	return false
}
