package render

import (
	"fmt"
	"slices"
	"strings"

	"crus/engine/reason"
	"crus/engine/vocab"
)

// advice is what is recommended for one limb or the person.
type advice struct {
	bearer
	Groups     []group
	Unanswered []row // choices on which no rule spoke and no default stands
}

// unanswered names the choices on which no rule spoke.
func (a advice) unanswered() []string {
	out := make([]string, len(a.Unanswered))
	for i, r := range a.Unanswered {
		out[i] = r.Label
	}
	return out
}

// group is the choices that concern one thing: device, alignment, stiffness, ...
type group struct {
	Title string
	Rows  []row
}

// row is one choice. Where there is no value, Value holds the word of its status.
type row struct {
	Name   string
	Group  string // title of its group
	Label  string
	How    string // what the choice means
	Mark   mark
	Value  string
	Empty  bool   // nothing is picked: Value is the word of its status
	Limits string // of a number: what the limits leave, where that is less than can be made
	Status string
	Refs   []int // the reasons that speak of it
	Notes  []note
	AsLeft bool // of the right limb: left to the clinician in the same words as on the left
	place  int  // among all choices
}

// note explains a row or a caution.
type note struct {
	Mark mark   // none: Sign is empty
	Lead string // "waits for:"
	Text string
}

// How much is shown of one result unless all is asked for.
const (
	maxWaits   = 4 // measures that it waits for
	maxBecomes = 3 // other possible results
	maxWhen    = 3 // measures that another result hangs on
)

func (d *drawer) advice() []advice {
	var out []advice
	for _, b := range d.bearers {
		a := advice{bearer: b}
		for i, concern := range append(vocab.Concerns(), "") {
			g := group{Title: concernTitle(concern)}
			for _, name := range d.choices(b.result, concern) {
				c := b.result.Choices[name]
				r := d.row(b, name, c)
				r.Group = g.Title
				r.place = i*len(d.v.Choices) + slices.Index(d.v.Choices, d.v.Choice(name))
				if c.Status == reason.Unanswered && len(r.Notes) == 0 {
					a.Unanswered = append(a.Unanswered, r)
					continue
				}
				g.Rows = append(g.Rows, r)
			}
			if g.Rows != nil {
				a.Groups = append(a.Groups, g)
			}
		}
		if a.Groups != nil || a.Unanswered != nil {
			out = append(out, a)
		}
	}
	if len(out) > 1 && out[1].Key == "right" {
		out[1].compare(out[0])
	}
	return out
}

// compare marks what is left to the clinician in the same words on both sides.
func (a advice) compare(left advice) {
	words := map[string][]note{}
	for _, g := range left.Groups {
		for _, r := range g.Rows {
			words[r.Name] = r.Notes
		}
	}
	for _, g := range a.Groups {
		for i, r := range g.Rows {
			g.Rows[i].AsLeft = r.Mark == statusMark(reason.LeftToClinician) && len(r.Notes) > 0 && slices.Equal(r.Notes, words[r.Name])
		}
	}
}

// choices lists the choices of a result that concern one thing, in the order of the vocabulary;
// then those that the vocabulary does not know, by name, under "".
func (d *drawer) choices(r *reason.Result, concern string) []string {
	var out []string
	for _, c := range d.v.Choices {
		if r.Choices[c.Name] != nil && c.Concerns == concern {
			out = append(out, c.Name)
		}
	}
	if concern != "" {
		return out
	}
	var strange []string
	for name := range r.Choices {
		if d.v.Choice(name) == nil {
			strange = append(strange, name)
		}
	}
	slices.Sort(strange)
	return append(out, strange...)
}

// allChoices lists the choices of a result in the order in which they are shown.
func (d *drawer) allChoices(r *reason.Result) []string {
	var out []string
	for _, concern := range append(vocab.Concerns(), "") {
		out = append(out, d.choices(r, concern)...)
	}
	return out
}

func (d *drawer) row(b bearer, name string, c *reason.Choice) row {
	r := row{Name: name, Label: d.choiceLabel(name), Mark: statusMark(c.Status), Status: statusWord(c.Status), Refs: d.refs(b, name)}
	known := d.v.Choice(name)
	if known != nil {
		r.How = known.How
	}
	switch c.Status {
	case reason.Settled, reason.Default:
		r.Value = valueWords(c.Value, c.Unit)
		if x, ok := c.Value.(float64); ok {
			r.Value = uncertain(x, c.Unit, c.PlusMinus)
		}
	case reason.IsOpen:
		switch {
		case c.Range != nil:
			r.Value = uncertainSpan(*c.Range, c.Unit, c.PlusMinus)
		case c.Interval != nil:
			r.Value = uncertainSpan(*c.Interval, c.Unit, c.PlusMinus)
		default:
			r.Value = valueWords(c.Among, c.Unit)
		}
	case reason.Conflict:
		r.Value, r.Status, r.Empty = r.Status, "nothing is picked", true
	default:
		r.Value, r.Status, r.Empty = r.Status, "", true
	}
	limitsAreValue := c.Status == reason.IsOpen && (c.Range == nil || c.Interval != nil && *c.Range == *c.Interval)
	if known != nil && c.Interval != nil && !limitsAreValue {
		r.Limits = limitWords(*c.Interval, known.Between, c.Unit)
	}
	if c.Provisional {
		r.Mark = provisionalMark()
		r.Status = strings.TrimPrefix(r.Status+", provisional", ", ")
	}
	r.Notes = d.rowNotes(b, name, c)
	return r
}

// limitWords says what limits leave of a number, where that is less than can be made.
func limitWords(left [2]float64, all vocab.Span, code string) string {
	low, high := left[0] > all.Lo, left[1] < all.Hi
	switch {
	case left[0] == left[1]:
		return ""
	case low && high:
		return "within " + span(left[0], left[1], code)
	case low:
		return "at least " + number(left[0], code)
	case high:
		return "at most " + number(left[1], code)
	}
	return ""
}

func (d *drawer) rowNotes(b bearer, name string, c *reason.Choice) []note {
	var out []note
	if len(c.Conflict) > 0 {
		out = append(out, note{statusMark(reason.Conflict), "cannot all hold:", d.ruleList(b, c.Conflict, "and")})
	}
	if c.Because != "" {
		n := note{Lead: "because:", Text: d.read(c.Because)}
		if c.Status != reason.LeftToClinician {
			n.Mark, n.Lead = statusMark(reason.LeftToClinician), "left to the clinician:"
		}
		out = append(out, n)
	}
	if len(c.Consider) > 0 {
		out = append(out, note{Lead: "weigh:", Text: strings.Join(d.readAll(c.Consider), "; ")})
	}
	if c.Provisional {
		var failed []string
		for _, f := range c.Failed {
			failed = append(failed, fmt.Sprintf("“%s”: %s", title(f.Rule), d.read(f.Why)))
		}
		out = append(out, d.provisional(b.Key, d.decidedBy(b, name), failed, c.CouldBecome, c.Explored, func(x reason.Could) string { return becomes(x, c.Unit) })...)
	}
	for _, n := range c.Numbers {
		if n.Off != nil && c.PlusMinus != nil && n.Off.PlusMinus == *c.PlusMinus {
			out = append(out, note{Lead: "could be off by:", Text: d.offWords(b.Key, n.Off, c.Unit)})
			break
		}
	}
	if c.Whatever {
		out = append(out, note{Lead: "whatever is missing:", Text: "the rules for it wait, and every completion brings the same"})
	}
	near := d.nearNotes(b, name, c.Unit)
	if near == nil && c.NearBoundary != nil && *c.NearBoundary {
		near = []note{{boundaryMark(), "close to a boundary:", "another value within measurement error would change this"}}
	}
	return append(out, near...)
}

// decidedBy lists the missing measures that decide a result, the one to take first leading.
func (d *drawer) decidedBy(b bearer, result string) []string {
	var out []string
	for _, m := range b.result.Missing {
		if slices.Contains(m.Decides, result) {
			out = append(out, d.label(b.Key, m.Measure))
		}
	}
	return out
}

// provisional says what a result waits for, what can't be worked out, and what it could become.
func (d *drawer) provisional(at string, waits, failed []string, could []reason.Could, x *reason.Explored, word func(reason.Could) string) []note {
	if d.o.Applies == "unknown" && len(waits)+len(could) == 0 {
		return nil // only as the whole is, which is said once
	}
	var out []note
	for _, why := range failed {
		out = append(out, note{provisionalMark(), "can't be worked out:", why})
	}
	switch {
	case len(waits) > 0:
		out = append(out, note{provisionalMark(), "waits for:", d.some(waits, maxWaits)})
	case len(failed) > 0:
		return out
	default:
		out = append(out, note{provisionalMark(), "provisional:", "completing the assessment can change it"})
	}
	shown := 0
	for _, c := range could {
		if d.full || shown < maxBecomes && len(c.When) <= maxWhen {
			out = append(out, note{Lead: "becomes", Text: word(c) + " " + d.under(at, c)})
			shown++
		}
	}
	if rest := len(could) - shown; rest > 0 {
		out = append(out, note{Lead: "or else:", Text: count(rest, "other possible result") + " with several values together"})
	}
	if x != nil && !x.Complete {
		out = append(out, note{Lead: "not exhaustive:", Text: triedWords(x)})
	}
	return out
}

// under says which values bring another result about: "if Swing: foot is lifts or “turns in”". Options
// of several words are quoted, for many are verbs.
func (d *drawer) under(at string, c reason.Could) string {
	if len(c.When) == 0 {
		return d.read(c.If) // whatever they are
	}
	parts := make([]string, len(c.When))
	for i, cell := range c.When {
		is, sampled := strings.CutSuffix(cell.Is, ", for example")
		_, name, _ := strings.Cut(cell.Measure, ".")
		if m := d.v.Measure(name); m != nil && m.Kind == vocab.Option {
			is = optionWords(is)
		}
		if sampled {
			is = "for example " + is
		}
		parts[i] = d.label(at, cell.Measure) + " is " + is
	}
	words := "if " + join(parts, "and")
	if c.OtherWays {
		words += " (one of several ways)"
	}
	return words
}

// optionWords writes options that stand in a sentence, "a_b or c, d", with those of several words quoted.
func optionWords(list string) string {
	options := strings.FieldsFunc(strings.ReplaceAll(list, " or ", ","), func(r rune) bool { return r == ',' })
	for i, o := range options {
		options[i] = plain(strings.TrimSpace(o))
		if strings.Contains(options[i], " ") {
			options[i] = "“" + options[i] + "”"
		}
	}
	return join(options, "or")
}

// triedWords says how far the completions of the missing values were tried.
func triedWords(x *reason.Explored) string {
	if len(x.Open) > 0 {
		return "what comes of " + join(quoted(x.Open), "and") + " is not known for all values, so more may be possible"
	}
	tried := fmt.Sprint(x.Tried)
	switch tried {
	case "0":
		return fmt.Sprintf("the %s combinations of the missing values are too many to try", grouped(x.Of))
	case x.Of:
		return "the missing values were sampled, so more may be possible"
	}
	return fmt.Sprintf("%s of %s combinations of the missing values were tried, so more may be possible", grouped(tried), grouped(x.Of))
}

// maxFormula is how much of a formula is shown.
const maxFormula = 60

func quoted(formulas []string) []string {
	var out []string
	for _, f := range formulas[:min(2, len(formulas))] {
		if r := []rune(f); len(r) > maxFormula {
			f = string(r[:maxFormula]) + "…"
		}
		out = append(out, "“"+f+"”")
	}
	if len(formulas) > 2 {
		out = append(out, "others")
	}
	return out
}

// becomes names another result of a choice.
func becomes(c reason.Could, code string) string {
	value := valueWords(c.Value, code)
	switch {
	case value == "":
		return statusWord(c.Status)
	case c.Status == reason.Settled || c.Status == reason.Default:
		return value
	}
	return statusWord(c.Status) + " (" + value + ")"
}

// refs gives the numbers of the reasons that speak of a choice: the limb's own and the person's; for
// the person, those of both limbs too.
func (d *drawer) refs(b bearer, choice string) []int {
	var out []int
	for _, x := range d.bearers {
		if x.Key != b.Key && x.Key != "person" && b.Key != "person" {
			continue
		}
		for name, r := range x.result.Rules {
			if n := d.numbers[x.Key+" "+name]; n > 0 && speaks(r, choice) {
				out = append(out, n)
			}
		}
	}
	slices.Sort(out)
	return out
}

// speaks reports whether a rule advises on a choice.
func speaks(r *reason.Rule, choice string) bool {
	if r.Trace == nil {
		return false
	}
	return slices.ContainsFunc(r.Trace.Advises, func(e reason.Effect) bool { return e.Choice == choice })
}

// ruleList names rules with the numbers of their reasons.
func (d *drawer) ruleList(b bearer, names []string, last string) string {
	out := make([]string, len(names))
	for i, name := range names {
		out[i] = "“" + within(title(name)) + "”"
		var refs []int
		for _, x := range d.bearers {
			if n := d.numbers[x.Key+" "+name]; n > 0 && (x.Key == b.Key || x.Key == "person" || b.Key == "person") {
				refs = append(refs, n)
			}
		}
		if refs != nil {
			out[i] += " " + refWords(refs)
		}
	}
	return join(out, last)
}

// refWords writes numbers of reasons: "(1, 3)".
func refWords(refs []int) string {
	if len(refs) == 0 {
		return ""
	}
	words := make([]string, len(refs))
	for i, n := range refs {
		words[i] = fmt.Sprint(n)
	}
	return "(" + strings.Join(words, ", ") + ")"
}
