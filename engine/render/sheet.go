package render

import (
	"slices"
	"strconv"
	"strings"

	"crus/engine/reason"
	"crus/engine/vocab"
)

// sheet is an outcome in a clinician's words, in the order in which it is read. The terminal, the
// page and the print show nothing that does not stand here.
type sheet struct {
	Title       string // of the ruleset
	Ruleset     string // its name, version and status
	Digest      string // short
	Vocabulary  string
	Particulars []pair   // of the assessment
	Alerts      []string // about the ruleset: past its review date, a draft
	Usual       string   // the first of the usual cautions, and where the others stand
	Scope       *scope   // where it does not apply, or that is not known
	Cautions    []caution
	Advice      []advice
	Instead     []instead
	Missing     missing
	Near        []nearby
	Reasons     []reasons
	WhyNot      []whyNots
	Found       []found
	Steps       []steps
	Sources     []cited
	Versions    []versioned
	Notices     []string
}

// pair is a label and its value.
type pair struct{ Label, Value string }

// scope says why a ruleset does not apply, or what is needed to know.
type scope struct {
	Applies string // no | unknown
	Says    string
	Asks    string // its condition, as written
	Used    []pair
	Waits   []string
	Step    *reason.Step
}

// versioned is one ruleset or vocabulary with its full digest.
type versioned struct{ What, Title, Digest string }

// bearer is a limb or the person.
type bearer struct {
	Key    string // left | right | person
	Title  string
	result *reason.Result
}

// drawer makes a sheet.
type drawer struct {
	o       *reason.Outcome
	v       *vocab.Vocabulary
	cites   map[string]*vocab.Citation
	full    bool
	bearers []bearer
	numbers map[string]int // of reasons, by bearer and rule
	naming  *strings.Replacer
}

// draw puts an outcome into words. Unless it is to be full, long lists are cut, and say so.
func draw(o *reason.Outcome, v *vocab.Vocabulary, cites map[string]*vocab.Citation, full bool) *sheet {
	d := newDrawer(o, v, cites, full)
	s := &sheet{Notices: d.readAll(o.Notices)}
	d.heading(s)
	s.Scope = d.scope()
	s.Reasons = d.reasons() // numbers them
	s.Cautions = d.cautions()
	s.Advice = d.advice()
	s.Instead = d.instead()
	s.Missing = d.missing()
	s.Near = d.near()
	s.WhyNot = d.whyNot()
	s.Found = d.found()
	s.Steps = d.steps(s)
	s.Sources = d.sources()
	return s
}

func newDrawer(o *reason.Outcome, v *vocab.Vocabulary, cites map[string]*vocab.Citation, full bool) *drawer {
	d := &drawer{o: o, v: v, cites: cites, full: full, numbers: map[string]int{}}
	for _, key := range []string{"left", "right"} {
		if r := o.Limbs[key]; r != nil {
			d.bearers = append(d.bearers, bearer{key, bearerTitle(key), r})
		}
	}
	if o.Person != nil {
		d.bearers = append(d.bearers, bearer{"person", bearerTitle("person"), o.Person})
	}
	d.naming = d.replacer()
	return d
}

func (d *drawer) heading(s *sheet) {
	o := d.o
	s.Title = o.Ruleset.Title
	if s.Title == "" {
		s.Title = title(o.Ruleset.Name)
	}
	s.Ruleset = nameVersion(o.Ruleset)
	if o.Ruleset.Status != "" {
		s.Ruleset += ", " + plain(o.Ruleset.Status)
	}
	s.Digest = short(o.Ruleset.Digest)
	s.Vocabulary = nameVersion(o.Vocabulary)
	a := o.Assessment
	for _, p := range []pair{{"Assessment", a.ID}, {"Date", a.Date}, {"Assessor", a.Assessor}, {"Device for", join(a.DeviceFor, "and")}} {
		if p.Value != "" {
			s.Particulars = append(s.Particulars, p)
		}
	}
	s.Usual = reason.Cautions()[0] + " More notices at the end."
	for _, n := range o.Notices {
		for _, v := range append([]reason.Version{o.Ruleset}, o.BuildsOn...) {
			about := strings.HasPrefix(n, nameVersion(v)+" ") || strings.HasPrefix(n, v.Name+".") // the second: what is left out
			if about && !slices.Contains(s.Alerts, n) {
				s.Alerts = append(s.Alerts, n)
			}
		}
	}
	add := func(kind string, v reason.Version) {
		s.Versions = append(s.Versions, versioned{kind + " " + nameVersion(v), v.Title, v.Digest})
	}
	add("Ruleset", o.Ruleset)
	for _, v := range o.BuildsOn {
		add("Builds on", v)
	}
	add("Vocabulary", o.Vocabulary)
}

func nameVersion(v reason.Version) string { return strings.TrimSpace(v.Name + " " + v.Version) }

// short is a digest as people compare it at a glance; the full one stands at the end.
func short(digest string) string {
	hash, hex, ok := strings.Cut(digest, ":")
	if !ok || len(hex) <= 12 {
		return digest
	}
	return hash + ":" + hex[:12]
}

func (d *drawer) scope() *scope {
	if d.o.Applies == "yes" {
		return nil
	}
	s := &scope{Applies: d.o.Applies, Says: "This ruleset does not apply to this person, so it advises nothing."}
	if s.Applies == "unknown" {
		s.Says = "It is not known whether this ruleset applies to this person, so everything here is provisional."
	}
	if t := d.o.Scope; t != nil && t.When != nil {
		s.Asks, s.Step = t.When.Text, t.When
		used := d.used(bearer{Key: "person", result: d.o.Person}, "")
		used.take(t.When)
		s.Used = used.values
	}
	s.Waits = d.labels("person", d.o.WaitsFor)
	return s
}

// label writes the path of a measure, as one limb or the person sees it, for people.
func (d *drawer) label(at, path string) string {
	root, name, _ := strings.Cut(path, ".")
	switch root {
	case "finding", "quantity":
		return within(title(name))
	}
	label := plain(name)
	if m := d.v.Measure(name); m != nil {
		label = m.Label
	}
	side := d.side(at, path)
	if side == at || side == "" || side == "person" {
		return label
	}
	return label + " (" + side + ")"
}

// side says whose measure a path names: left, right or person; "" where it can't be told.
func (d *drawer) side(at, path string) string {
	root, _, _ := strings.Cut(path, ".")
	switch {
	case root == "left" || root == "right" || root == "person":
		return root
	case root == "limb":
		return at
	case root == "other" && at == "left":
		return "right"
	case root == "other" && at == "right":
		return "left"
	case root == "other":
		return "opposite limb"
	}
	return ""
}

func (d *drawer) labels(at string, paths []string) []string {
	var out []string
	for _, p := range paths {
		if l := d.label(at, p); !slices.Contains(out, l) {
			out = append(out, l)
		}
	}
	return out
}

// some lists the first few of many.
func (d *drawer) some(items []string, few int) string {
	if d.full || len(items) <= few+1 {
		return strings.Join(items, "; ")
	}
	return strings.Join(items[:few], "; ") + "; and " + strconv.Itoa(len(items)-few) + " more"
}

// choiceLabel names a choice, or what else an outcome names beside choices ("caution.x").
func (d *drawer) choiceLabel(name string) string {
	if kind, own, ok := strings.Cut(name, "."); ok && kind == "caution" {
		return "caution " + within(title(own))
	}
	if c := d.v.Choice(name); c != nil {
		return c.Label
	}
	return sentence(plain(name))
}

// replacer writes the names of rules and measures that stand in an outcome's sentences as words.
func (d *drawer) replacer() *strings.Replacer {
	var names []string
	words := map[string]string{}
	note := func(name, word string) {
		if _, seen := words[name]; !seen && strings.ContainsAny(name, "_.") {
			words[name] = word
			names = append(names, name)
		}
	}
	for _, b := range d.bearers {
		for name, r := range b.result.Rules {
			note(name, "“"+within(title(name))+"”")
			for _, w := range r.WaitsFor {
				note(w, d.label(b.Key, w))
			}
		}
	}
	for _, w := range d.o.WaitsFor {
		note(w, d.label("person", w))
	}
	slices.SortFunc(names, func(a, b string) int { // a longer name before its beginning
		if len(a) != len(b) {
			return len(b) - len(a)
		}
		return strings.Compare(a, b)
	})
	var pairs []string
	for _, n := range names {
		pairs = append(pairs, n, words[n])
	}
	return strings.NewReplacer(pairs...)
}

// read writes a sentence of an outcome with names as words.
func (d *drawer) read(text string) string { return d.naming.Replace(text) }

func (d *drawer) readAll(texts []string) []string {
	out := make([]string, len(texts))
	for i, t := range texts {
		out[i] = d.read(t)
	}
	return out
}
