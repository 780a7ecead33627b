package ruleset

import "crus/engine/source"

// unused looks for findings, quantities and citations of the own part that nothing refers to.
func (l *linter) unused() {
	used := l.usedFacts()
	for _, f := range l.rs.Facts {
		if f.Part == l.own && !used[f] {
			what := "finding"
			if f.Quantity != nil {
				what = "quantity"
			}
			l.warn(f.Where, "unused", "Nothing uses the "+what+" "+f.Name+".",
				"Use it in a condition, a text or a worked case, or delete it. Leave it where another ruleset builds on it.")
		}
	}
	cited := map[string]bool{}
	cite := func(part *Part, keys []string) {
		for _, k := range keys {
			if part == l.own {
				cited[k] = true
			}
		}
	}
	for _, f := range l.rs.Facts {
		cite(f.Part, f.Cites)
	}
	for _, r := range l.rs.Rules {
		cite(r.Part, r.Cites)
	}
	for _, c := range l.rs.Cautions {
		cite(c.Part, c.Cites)
	}
	for _, c := range l.rs.Cases {
		cite(l.own, c.Cites)
	}
	for _, c := range l.own.Citations {
		if !cited[c.Key] {
			l.warn(c.Where, "unused", "Nothing cites "+c.Key+".", "Name it in the cites of what it supports, or delete it.")
		}
	}
}

// usedFacts gives the facts that a condition reads, a text names or a worked case expects.
func (l *linter) usedFacts() map[*Fact]bool {
	used := map[*Fact]bool{}
	for _, e := range l.conditions() {
		for _, r := range e.Reads {
			used[r.Fact] = true
		}
	}
	byPath := map[string]*Fact{}
	for _, f := range l.rs.Facts {
		byPath[f.Path()] = f
	}
	named := func(but *Fact, texts ...source.Text) {
		for _, t := range texts {
			for _, n := range t.Refs {
				if f := byPath[n.Name]; f != but {
					used[f] = true
				}
			}
		}
	}
	for _, f := range l.rs.Facts {
		named(f, f.Because)
	}
	for _, r := range l.rs.Rules {
		named(nil, r.Because)
	}
	for _, c := range l.rs.Cautions {
		named(nil, c.Says, c.Act)
	}
	for _, o := range l.rs.Open {
		named(nil, o.Because)
		named(nil, o.Consider...)
	}
	for _, c := range l.rs.Cases {
		for _, e := range c.Expect {
			for _, x := range e.Findings {
				used[byPath["finding."+x.Name]] = true
			}
			for _, x := range e.Quantities {
				used[byPath["quantity."+x.Name]] = true
			}
		}
	}
	return used
}
