package render

import (
	"slices"
	"strings"

	"crus/engine/reason"
)

// reasons is what became of the rules for one limb or the person.
type reasons struct {
	bearer
	Fired    []because
	SetAside []waiting
	Pending  []waiting
	Brief    bool     // many are pending, so they are only named
	Silent   []traced // did not fire
}

// maxPending is how many pending rules are shown with what they wait for, unless all is asked for.
const maxPending = 5

// pending names the rules that could still fire.
func (r reasons) pending() []string {
	out := make([]string, len(r.Pending))
	for i, x := range r.Pending {
		out[i] = within(x.Title)
	}
	return out
}

// because is a rule that fired.
type because struct {
	N        int
	Name     string
	Title    string
	Because  string
	Strength string
	Basis    string // with its sources
	From     string // the ruleset that it comes from, where that is built on
	Used     []pair // recorded values
	Found    []pair // findings and quantities
	Did      []string
	Steps    traced
}

// waiting is a rule that could still fire, or that another rule set aside.
type waiting struct {
	Name  string
	Title string
	State string
	Mark  mark
	Lead  string // "waits for", "set aside by"
	Text  string
	Steps traced
}

// reasons orders the rules that fired as their choices are shown, strong ones first, and numbers
// them through.
func (d *drawer) reasons() []reasons {
	n := 0
	var out []reasons
	for _, b := range d.bearers {
		r := reasons{bearer: b}
		for _, name := range d.rules(b) {
			switch rule := b.result.Rules[name]; rule.State {
			case reason.Fired:
				n++
				d.numbers[b.Key+" "+name] = n
				r.Fired = append(r.Fired, d.because(b, n, name, rule))
			case reason.DidNotFire:
				r.Silent = append(r.Silent, d.ruleSteps(name, rule))
			}
		}
		out = append(out, r)
	}
	for i, b := range d.bearers { // when all have their numbers
		for _, name := range d.rules(b) {
			switch rule := b.result.Rules[name]; rule.State {
			case reason.Pending:
				w := waiting{name, title(name), stateWords(rule.State), provisionalMark(), "waits for", d.some(d.labels(b.Key, rule.WaitsFor), maxWaits), d.ruleSteps(name, rule)}
				if rule.Failed != "" {
					w.Lead, w.Text = "can't be worked out:", d.read(rule.Failed)
				}
				out[i].Pending = append(out[i].Pending, w)
			case reason.SetAside:
				out[i].SetAside = append(out[i].SetAside, waiting{name, title(name), stateWords(rule.State), statusMark(reason.Unanswered), "set aside by", d.ruleList(b, rule.SetAsideBy, "and"), d.ruleSteps(name, rule)})
			}
		}
		out[i].Brief = !d.full && len(out[i].Pending) > maxPending
	}
	return slices.DeleteFunc(out, func(r reasons) bool { return len(r.Fired)+len(r.SetAside)+len(r.Pending)+len(r.Silent) == 0 })
}

// rules orders the rules of a result: by the first choice that they speak of, as choices are shown;
// strong before conditional; then by name.
func (d *drawer) rules(b bearer) []string {
	place := map[string]int{}
	for _, x := range d.bearers {
		for _, name := range d.allChoices(x.result) {
			if _, seen := place[name]; !seen {
				place[name] = len(place)
			}
		}
	}
	first := func(r *reason.Rule) int {
		at := len(place)
		if r.Trace != nil {
			for _, e := range r.Trace.Advises {
				if p, ok := place[e.Choice]; ok {
					at = min(at, p)
				}
			}
		}
		return at
	}
	names := make([]string, 0, len(b.result.Rules))
	for name := range b.result.Rules {
		names = append(names, name)
	}
	slices.SortFunc(names, func(x, y string) int {
		p, q := b.result.Rules[x], b.result.Rules[y]
		if a, b := first(p), first(q); a != b {
			return a - b
		}
		if p.Strength != q.Strength { // "strong" after "conditional" in the alphabet
			return strings.Compare(q.Strength, p.Strength)
		}
		return strings.Compare(x, y)
	})
	return names
}

func (d *drawer) because(b bearer, n int, name string, r *reason.Rule) because {
	x := because{N: n, Name: name, Title: title(name), Because: d.read(r.Because), Strength: strengthWords(r.Strength), Basis: basisWords(r.Basis, d.citeKeys(name, r.Cites)), From: from(name), Steps: d.ruleSteps(name, r)}
	if r.Trace == nil {
		return x
	}
	u := d.used(b, name)
	for _, s := range []*reason.Step{r.Trace.When, r.Trace.Unless} {
		u.take(s)
	}
	for _, e := range r.Trace.Advises {
		u.take(e.Formula)
	}
	x.Did = d.effects(r.Trace.Advises)
	x.Used, x.Found = u.values, u.found
	return x
}

// effects says what a rule says of each choice and what that did.
func (d *drawer) effects(es []reason.Effect) []string {
	var out []string
	last := ""
	for _, e := range es {
		did := within(d.read(e.Did))
		if len(e.Options) > 0 {
			said := verbPhrase(e.Verb, e.Options)
			if e.Verb == "favour" || did == "" {
				did = said
			} else {
				did = said + " (" + did + ")"
			}
		}
		if e.Choice == last && len(out) > 0 {
			out[len(out)-1] += "; " + did
			continue
		}
		out, last = append(out, d.choiceLabel(e.Choice)+": "+did), e.Choice
	}
	return out
}

// used gathers the values that a condition looked at, through the findings and quantities in it.
type used struct {
	*drawer
	bearer
	from   string // the ruleset of the rule, with a point; "" for the root
	values []pair
	found  []pair
	seen   map[string]bool
}

func (d *drawer) used(b bearer, name string) *used {
	u := &used{drawer: d, bearer: b, seen: map[string]bool{}}
	if i := strings.LastIndexByte(name, '.'); i >= 0 {
		u.from = name[:i+1]
	}
	return u
}

func (u *used) take(s *reason.Step) {
	if s == nil {
		return
	}
	for _, inner := range s.Steps {
		u.take(inner)
	}
	root, name, ok := strings.Cut(s.Text, ".")
	if len(s.Steps) > 0 || !ok || u.seen[s.Text] || strings.ContainsAny(name, " (){}[]") {
		return
	}
	u.seen[s.Text] = true
	switch root {
	case "person", "limb", "other":
		if s.Value.Known() {
			u.values = append(u.values, pair{u.label(u.Key, s.Text), s.Value.String()})
		}
	case "finding", "quantity":
		full, t := u.fact(root, name)
		if s.Value.Known() {
			u.found = append(u.found, pair{title(full), s.Value.String()})
		}
		if t == nil {
			return
		}
		old := u.from
		u.from = ""
		if i := strings.LastIndexByte(full, '.'); i >= 0 {
			u.from = full[:i+1]
		}
		u.take(t.When)
		u.from = old
	}
}

// fact finds a finding or quantity by the name that a condition calls it, and how it was worked out.
func (u *used) fact(root, name string) (string, *reason.Trace) {
	for _, full := range []string{u.from + name, name} {
		for _, b := range u.bearers {
			if b.Key != u.Key && b.Key != "person" {
				continue
			}
			if t := b.result.Traces[root+"."+full]; t != nil {
				return full, t
			}
		}
	}
	return name, nil
}
