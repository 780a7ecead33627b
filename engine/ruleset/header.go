package ruleset

import (
	"fmt"
	"strings"
	"time"

	"crus/engine/source"
	"crus/engine/vocab"
)

// header reads the ruleset block and finds the vocabulary. It gives the block, or nil where there
// is none to go on with; the text of applies; and what is built on.
func (p *partReader) header(files []*source.File, want string, from source.Range) (*source.Block, source.Text, []source.Text) {
	var b *source.Block
	for _, x := range p.blocks {
		if x.Type != "ruleset" {
			continue
		}
		if b != nil {
			p.fail(source.Errorf(x.Where, "duplicate", "There is a second ruleset block.").
				Hinting("One folder is one ruleset: keep one of the two.").With("The first one is here.", b.Where))
			continue
		}
		b = x
	}
	if b == nil {
		d := source.Errorf(source.Range{File: files[0]}, "missing", "The folder has no ruleset block.").
			Hinting("Add one:\nruleset \"name\" {\ntitle = \"...\"\nversion = \"1.0.0\"\nstatus = \"draft\"\nvocabulary = \"lower_limb@1\"\n}")
		for _, x := range p.blocks {
			switch {
			case x.Type != "vocabulary":
			case from.Known():
				d = source.Errorf(from, "builds_on", "%s is a vocabulary, and only rulesets are built on.", x.Label0().Text).
					Hinting("Take it out; the vocabulary is named with vocabulary = \"...\".")
			default:
				d = source.Errorf(x.Where, "not_a_ruleset", "This folder is a vocabulary, not a ruleset.").Hinting("Name the folder of a ruleset.")
			}
		}
		p.fail(d)
		return nil, source.Text{}, nil
	}
	h := &p.p.Header
	h.Where = b.Where
	p.p.places = map[string]source.Range{}
	for _, a := range b.Attrs {
		p.p.places[a.Name] = a.Value.Where
	}
	h.Name = b.Named(&p.diags, "stroke_afo")
	f := b.Fields(&p.diags)
	h.Title = f.Required("title", `"Ankle-foot orthosis after stroke"`)
	h.Version = f.Required("version", `"1.0.0"`)
	if h.Version != "" && !vocab.IsVersion(h.Version) {
		p.fail(source.Errorf(f.Where("version"), "version", "%q is not a version.", h.Version).Hinting(`A version has three numbers: "1.0.0".`))
	}
	h.Status = f.OneOf("status", "draft", "active", "retired")
	f.Needs("status", `"draft", or "active", or "retired"`)
	h.Publisher, h.Purpose = f.String("publisher"), f.String("purpose")
	h.Author, h.Reviewer, h.Endorser = words(f.Texts("author")), words(f.Texts("reviewer")), words(f.Texts("endorser"))
	h.ApprovalDate, h.LastReviewDate, h.ReviewBy = p.date(f, "approval_date"), p.date(f, "last_review_date"), p.date(f, "review_by")
	p.period(f)
	applies, _ := f.Text("applies")
	built := f.Texts("builds_on")
	vocabulary, ok := f.RequiredText("vocabulary", `"lower_limb@1"`)
	f.Done()
	if from.Known() && !vocab.Accepts(want, h.Version) {
		p.fail(source.Errorf(from, "version", "%s is version %s, which is not the version asked for.", h.Name, h.Version).
			Hinting("Name the version that is there, or add the folder of the other one with --library.").With("Its version stands here.", f.Where("version")))
	} else if !from.Known() && !vocab.Accepts(want, h.Version) {
		p.fail(source.Errorf(f.Where("version"), "version", "%s is version %s, and version %s is asked for.", h.Name, h.Version, want).
			Hinting("Name the version that is there."))
	}
	if ok {
		p.vocabulary(vocabulary, from)
	}
	return b, applies, built
}

func words(ts []source.Text) []string {
	var out []string
	for _, t := range ts {
		out = append(out, strings.TrimSpace(t.S))
	}
	return out
}

func (p *partReader) date(f *source.Fields, name string) string {
	t, ok := f.Text(name)
	if !ok {
		return ""
	}
	return p.day(t)
}

func (p *partReader) day(t source.Text) string {
	if _, err := time.Parse(time.DateOnly, t.S); err != nil {
		p.fail(source.Errorf(t.All(), "date", "%q is not a date.", t.S).Hinting(`A date is written "2027-01-31": year, month, day.`))
		return ""
	}
	return t.S
}

func (p *partReader) period(f *source.Fields) {
	ts := f.Texts("effective_period")
	if len(ts) == 0 {
		return
	}
	if len(ts) != 2 {
		p.fail(source.Errorf(f.Where("effective_period"), "date", "effective_period takes two dates.").Hinting(`For example: effective_period = ["2027-01-01", "2028-12-31"]`))
		return
	}
	from, to := p.day(ts[0]), p.day(ts[1])
	if from > to && to != "" {
		p.fail(source.Errorf(f.Where("effective_period"), "date", "The period ends before it begins.").Hinting("Write the earlier date first."))
	}
	p.p.EffectivePeriod = [2]string{from, to}
}

// vocabulary reads the vocabulary once; all parts must agree on it. from is where another ruleset
// builds on this one.
func (p *partReader) vocabulary(t source.Text, from source.Range) {
	if !p.wanted(t) {
		return
	}
	f, want, ok := p.lib.find(p.folder, t.S)
	if !ok {
		p.fail(source.Errorf(t.All(), "unknown_name", "There is no vocabulary %s.", t.S).
			Hinting("%s", p.lib.lookedFor(t.S)))
		return
	}
	if v := p.rs.Vocabulary; v != nil {
		name, _, _ := strings.Cut(t.S, "@")
		if v.Name != name || !vocab.Accepts(want, v.Version) {
			p.fail(source.Errorf(from, "vocabulary", "%s is written for the vocabulary %s, and this ruleset for %s@%s.", p.p.Name, t.S, v.Name, v.Version).
				Hinting("Rulesets that are in force together use one vocabulary.").With("Its vocabulary stands here.", t.All()))
		}
		return
	}
	v, diags := vocab.Read(f.fsys, f.dir, f.show)
	if len(diags) == 1 && diags[0].Code == vocab.NotAVocabulary {
		p.fail(source.Errorf(t.All(), "not_a_vocabulary", "%s is a ruleset, not a vocabulary.", t.S).Hinting("Rulesets that this one builds on stand in builds_on."))
		return
	}
	p.diags = append(p.diags, diags...)
	if v == nil {
		return
	}
	if !vocab.Accepts(want, v.Version) {
		p.fail(source.Errorf(t.All(), "version", "%s is version %s, and %s is asked for.", v.Name, v.Version, t.S).
			Hinting("Name the version that is there: %s", fmt.Sprintf("%q", v.Name+"@"+v.Version)))
		return
	}
	p.rs.Vocabulary = v
}
