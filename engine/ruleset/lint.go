package ruleset

import (
	"strings"
	"time"

	"crus/engine/source"
	"crus/engine/vocab"
)

// Lint gives what an author would want to know of a ruleset that can be read: what nothing uses,
// comparisons that never or always hold, advice that cancels itself, dates that have passed on the day
// today. Only its own part is looked at, but for the dates. All are warnings, sorted by place.
func Lint(rs *Ruleset, today time.Time) source.Diagnostics {
	l := &linter{rs: rs, own: rs.Parts[len(rs.Parts)-1]}
	for _, p := range rs.Parts {
		l.dates(p, today)
	}
	l.answers()
	l.unused()
	l.standing()
	l.texts()
	for _, e := range l.conditions() {
		l.comparisons(e)
	}
	for _, r := range rs.Rules {
		if r.Part == l.own {
			l.advice(r)
			l.overriding(r)
		}
	}
	l.open()
	l.cases()
	return l.diags.Sorted()
}

type linter struct {
	rs    *Ruleset
	own   *Part
	diags source.Diagnostics
}

func (l *linter) warn(where source.Range, code, message, hint string) {
	l.diags = append(l.diags, source.Warnf(where, code, "%s", message).Hinting("%s", hint))
}

// conditions gives every condition and formula of the own part.
func (l *linter) conditions() []*Expr {
	var out []*Expr
	add := func(es ...*Expr) {
		for _, e := range es {
			if e != nil && e.Part == l.own {
				out = append(out, e)
			}
		}
	}
	add(l.own.Applies)
	for _, f := range l.rs.Facts {
		add(f.Expr)
	}
	for _, r := range l.rs.Rules {
		add(r.When, r.Unless)
		for _, a := range r.Advise {
			add(a.Formula)
		}
	}
	for _, c := range l.rs.Cautions {
		add(c.When)
	}
	return out
}

func (l *linter) dates(p *Part, today time.Time) {
	if p.Overdue(today) {
		l.warn(p.place("review_by"), "overdue", "The review date of "+p.Name+", "+p.ReviewBy+", has passed.",
			"Review it and set a new date; until then every report says that it is overdue.")
	}
	if end, err := time.Parse(time.DateOnly, p.EffectivePeriod[1]); err == nil && !today.Before(end.AddDate(0, 0, 1)) {
		l.warn(p.place("effective_period"), "overdue", "The period in which "+p.Name+" is in force ended on "+p.EffectivePeriod[1]+".",
			`Extend the period, or set status = "retired".`)
	}
}

// answers looks for what an active ruleset owes to those who rely on it.
func (l *linter) answers() {
	if l.own.Status != "active" {
		return
	}
	var missing []string
	for _, x := range []struct {
		name  string
		there bool
	}{{"publisher", l.own.Publisher != ""}, {"approval_date", l.own.ApprovalDate != ""}, {"reviewer", len(l.own.Reviewer) > 0}} {
		if !x.there {
			missing = append(missing, x.name)
		}
	}
	if len(missing) > 0 {
		l.warn(l.own.Where, "unanswered", "The ruleset is active and has no "+source.Or(missing)+".",
			`Say who answers for it, when it was approved and who reviewed it, or set status = "draft".`)
	}
}

// standing looks for published bases whose every citation was recalled and not looked up.
func (l *linter) standing() {
	standing := map[string]string{}
	for _, list := range [][]*vocab.Citation{l.rs.Vocabulary.Citations, l.own.Citations} {
		for _, c := range list {
			standing[c.Key] = c.Standing
		}
	}
	check := func(part *Part, where source.Range, what, name, basis string, cites []string) {
		if part != l.own || basis != "published" {
			return
		}
		for _, key := range cites {
			if standing[key] != "from_memory" {
				return
			}
		}
		l.warn(where, "standing", "The "+what+" "+name+" has the basis published, and what it cites was only recalled ("+source.And(cites)+").",
			`Look the source up and set its standing, or write basis = "from_memory".`)
	}
	for _, r := range l.rs.Rules {
		check(r.Part, r.Where, "rule", r.Name, r.Basis, r.Cites)
	}
	for _, c := range l.rs.Cautions {
		check(c.Part, c.Where, "caution", c.Name, c.Basis, c.Cites)
	}
}

// open looks for choices that are left to the clinician to no effect.
func (l *linter) open() {
	for _, o := range l.rs.Open {
		if o.Part == l.own && o.Choice.HasDefault {
			l.warn(o.Where, "no_effect", o.Choice.Name+" has a default in the vocabulary, so it is never left to the clinician.",
				"Take the block out, or have the default taken out of the vocabulary.")
		}
	}
}

// cases looks for expectations that no outcome can meet.
func (l *linter) cases() {
	for _, c := range l.rs.Cases {
		for _, e := range c.Expect {
			for _, silent := range e.Silent {
				for _, t := range append(e.Fires[:len(e.Fires):len(e.Fires)], e.Cautions...) {
					if strings.TrimSpace(t.S) == strings.TrimSpace(silent.S) {
						l.warn(silent.All(), "contradiction", silent.S+" is expected both to fire and to be silent.", "Keep one of the two.")
					}
				}
			}
		}
	}
}
