package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"crus/engine/assess"
	"crus/engine/cases"
	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/render"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/engine/vocab"
)

func (a *app) check() *cobra.Command {
	var asJSON, strict bool
	var today day
	c := &cobra.Command{
		Use:   "check RULESET",
		Short: "Read a ruleset and say everything that is wrong with it",
		Long: `Reads a ruleset with its worked cases, or a vocabulary, and says everything
that is wrong with it in one go: each with its place, a sentence, and the way
out. The ruleset is only read; crus cases tries it on its worked cases.

Exit status: 0 where there are no errors; 1 where there are (with --strict also
where there are warnings); 2 where it could not be read.`,
		Example:           "  crus check my_ruleset\n  crus check my_ruleset --json",
		GroupID:           groupAuthor,
		Args:              needs("RULESET"),
		ValidArgsFunction: a.completeRuleset,
		RunE: func(_ *cobra.Command, args []string) error {
			r, err := a.checked(args[0], today)
			if err != nil {
				return err
			}
			if diags := unreadable(r.diags); diags != nil {
				return diags
			}
			if asJSON {
				if err := a.json(r.json()); err != nil {
					return err
				}
			} else if err := r.write(a); err != nil {
				return err
			}
			if r.diags.HasErrors() || strict && len(r.diags) > 0 {
				return errFindings
			}
			return nil
		},
	}
	c.Flags().BoolVar(&asJSON, "json", false, "as JSON")
	c.Flags().BoolVar(&strict, "strict", false, "exit status 1 for warnings too")
	c.Flags().Var(&today, "today", "the `DAY` on which the review date is looked at, as 2027-01-31 (default: today)")
	return c
}

// checkResult is what a check found; without errors there is a ruleset or a vocabulary.
type checkResult struct {
	kind, name string // ruleset | vocabulary, as the user named it
	ruleset    *ruleset.Ruleset
	vocabulary *vocab.Vocabulary
	unclear    []*cell.Unclear // of a ruleset without errors
	diags      source.Diagnostics
}

func (a *app) checked(name string, today day) (checkResult, error) {
	lib := a.rules()
	rs, diags := lib.Ruleset(name)
	for _, d := range diags {
		if d.Code == "not_a_ruleset" {
			v, diags := lib.Vocabulary(name)
			return checkResult{kind: "vocabulary", name: name, vocabulary: v, diags: diags.Sorted()}, nil
		}
	}
	if rs == nil { // its rules can't be read, but the assessments of its worked cases may be
		given, v := lib.Given(name)
		for _, b := range given {
			_, ds := assess.Given(b, v)
			diags = append(diags, ds...)
		}
		return checkResult{kind: "ruleset", name: name, diags: diags.Sorted()}, nil
	}
	diags = append(diags, cases.Check(rs)...)
	diags = append(diags, ruleset.Lint(rs, today.or(""))...)
	unclear, err := unclear(rs)
	return checkResult{kind: "ruleset", name: name, ruleset: rs, unclear: unclear, diags: diags.Sorted()}, err
}

// unclear lists what no cells can express of a ruleset.
func unclear(rs *ruleset.Ruleset) ([]*cell.Unclear, error) {
	e, err := reason.New(rs)
	if err != nil {
		return nil, err
	}
	s, err := cell.New(e)
	if err != nil {
		return nil, err
	}
	return s.Unclear, nil
}

// write says what was found, and what was read.
func (r checkResult) write(a *app) error {
	if err := render.Diagnostics(a.out, r.diags, a.style()); err != nil {
		return err
	}
	if r.diags.HasErrors() {
		return nil
	}
	for _, line := range render.Wrap(r.summary(), render.Columns) {
		fmt.Fprintln(a.out, line)
	}
	if len(r.unclear) == 0 {
		return nil
	}
	fmt.Fprintln(a.out)
	for _, line := range render.Wrap(unclearSays(len(r.unclear)), render.Columns) {
		fmt.Fprintln(a.out, line)
	}
	for _, u := range r.unclear {
		for i, line := range render.Wrap(u.String(), render.Columns-4) {
			fmt.Fprintln(a.out, map[bool]string{true: "  ", false: "    "}[i == 0]+line)
		}
	}
	return nil
}

// unclearSays tells an author what it means that cells can't express something.
func unclearSays(n int) string {
	what, it := "1 part of a condition or formula is", "it"
	if n > 1 {
		what, it = fmt.Sprintf("%d parts of conditions and formulas are", n), "them"
	}
	return what + " not made of comparisons, lists written out and known formulas. crus advise works " + it +
		" out like the rest; crus prove can't look inside, so some of what rests on " + it + " may stay undecided:"
}

// summary is one sentence about what was read.
func (r checkResult) summary() string {
	if v := r.vocabulary; v != nil {
		return fmt.Sprintf("%s %s, a vocabulary: %s, %s and %s. No errors.", v.Name, v.Version,
			count(len(v.Measures), "measure"), count(len(v.Choices), "choice"), count(len(v.Scales), "scale"))
	}
	rs := r.ruleset
	built := ""
	for _, p := range rs.Parts {
		if !p.Root {
			built += fmt.Sprintf(", with %s %s", p.Name, p.Version)
		}
	}
	var parts []string
	for _, n := range r.read() {
		parts = append(parts, count(n.n, n.what))
	}
	return fmt.Sprintf("%s %s (%s)%s: %s; measures of %s %s. No errors.",
		rs.Name, rs.Version, rs.Status, built, source.And(parts), rs.Vocabulary.Name, rs.Vocabulary.Version)
}

type counted struct {
	what string
	n    int
}

// read counts what is in force.
func (r checkResult) read() []counted {
	findings, quantities := 0, 0
	for _, f := range r.ruleset.Facts {
		if f.Quantity != nil {
			quantities++
		} else {
			findings++
		}
	}
	return []counted{{"rule", len(r.ruleset.Rules)}, {"caution", len(r.ruleset.Cautions)}, {"finding", findings},
		{"quantity", quantities}, {"worked case", len(r.ruleset.Cases)}}
}

// count writes "1 rule", "2 rules", "no quantities".
func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	plural := what + "s"
	if stem, ok := strings.CutSuffix(what, "y"); ok {
		plural = stem + "ies"
	}
	if n == 0 {
		return "no " + plural
	}
	return fmt.Sprintf("%d %s", n, plural)
}
