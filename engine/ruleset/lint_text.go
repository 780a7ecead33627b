package ruleset

import (
	"regexp"

	"crus/engine/source"
)

// unfilled is a name in a text that looks as if its value were meant to stand there.
var unfilled = regexp.MustCompile(`(?:\$[({]?|\{+ ?)((?:person|limb|other|finding|quantity)(?:\.[a-z][a-z0-9_]*)+)(?: ?\}+|\))?`)

// texts looks for names in the texts of the own part that are not filled in.
func (l *linter) texts() {
	check := func(part *Part, texts ...source.Text) {
		if part != l.own {
			return
		}
		for _, t := range texts {
			for _, at := range unfilled.FindAllStringSubmatchIndex(t.S, -1) {
				if written := t.Range(at[0], at[1]); !filled(t, at[0]) && !escaped(written) {
					l.warn(written, "not_filled_in", "The name stands in the text as it is, and no value is filled in.", "A value is written ${"+t.S[at[2]:at[3]]+"}.")
				}
			}
		}
	}
	for _, f := range l.rs.Facts {
		check(f.Part, f.Because)
	}
	for _, r := range l.rs.Rules {
		check(r.Part, r.Because)
	}
	for _, c := range l.rs.Cautions {
		check(c.Part, c.Says, c.Act)
	}
	for _, o := range l.rs.Open {
		check(o.Part, o.Because)
		check(o.Part, o.Consider...)
	}
}

// filled reports whether a value is filled in at a byte of a text.
func filled(t source.Text, at int) bool {
	for _, r := range t.Refs {
		if r.Start <= at && at < r.End {
			return true
		}
	}
	return false
}

// escaped reports whether the author wrote $${, which stands for the two characters themselves.
func escaped(written source.Range) bool {
	s := written.Text()
	return len(s) > 1 && s[:2] == "$$"
}
