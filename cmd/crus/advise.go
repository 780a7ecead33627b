package main

import (
	"bytes"
	"io"

	"github.com/spf13/cobra"

	"crus/engine/reason"
	"crus/engine/render"
	"crus/engine/whatif"
)

// adviseOptions is what crus advise was asked for.
type adviseOptions struct {
	asJSON, full bool
	page         string
	today        day
	instead      []string
}

func (a *app) advise() *cobra.Command {
	var o adviseOptions
	c := &cobra.Command{
		Use:   "advise RULESET ASSESSMENT",
		Short: "Recommend a device for an assessment, with the reasons",
		Long: `Carries a ruleset out on an assessment and shows the recommendation: cautions
first, then what is advised, what is missing and what it would decide, the
reasons with the recorded values, and why the alternatives were not picked.

ASSESSMENT is a file that ends in .json or .hcl (one assessment), .csv (a row a
limb) or .jsonl (one JSON assessment a line), or - for one JSON assessment on
the standard input. With --json, one assessment gives one object, a table gives
a list, and JSON lines give one outcome a line.

Whether the review date of the ruleset has passed is judged on the date of the
assessment, or today where it has none, so that the same files always give the
same result; --today judges it on another day.

A result that hangs on what is missing is provisional, and one that another
value within measurement error would change is close to a boundary. --instead
asks for the fewest and smallest changes of the limb's measures that would give
another option (or number); left. or right. before it names one limb. What is
recorded of the person stays.

Exit status: 0; 1 where rules contradict each other about a choice; 2 where an
assessment or the ruleset could not be read.`,
		Example: `  crus advise demo_clinic assessment.json
  crus advise demo_clinic assessment.hcl --full --html report.html
  crus advise demo_clinic assessment.json --instead device=rigid
  crus advise demo_clinic clinic.jsonl --json > outcomes.jsonl`,
		GroupID: groupClinic,
		Args:    needs("RULESET", "ASSESSMENT"),
		ValidArgsFunction: func(c *cobra.Command, args []string, typed string) ([]string, cobra.ShellCompDirective) {
			if len(args) == 1 {
				return []string{"json", "hcl", "csv", "jsonl"}, cobra.ShellCompDirectiveFilterFileExt
			}
			return a.completeRuleset(c, args, typed)
		},
		RunE: func(_ *cobra.Command, args []string) error {
			engine, err := a.engine(args[0])
			if err != nil {
				return err
			}
			return a.adviseAll(engine, args[1], o)
		},
	}
	c.Flags().BoolVar(&o.full, "full", false, "show every rule, finding and quantity step by step")
	c.Flags().BoolVar(&o.asJSON, "json", false, "as JSON")
	c.Flags().StringVar(&o.page, "html", "", "also write a page to read or print into `FILE`")
	c.Flags().StringArrayVar(&o.instead, "instead", nil, "say what would have to change for another `CHOICE=OPTION`")
	c.Flags().Var(&o.today, "today", "judge the review date on this `DAY`, as 2027-01-31")
	complete(c, "html", completeExt("html"))
	return c
}

// engine makes a ruleset ready that has no errors. Its warnings are for crus check.
func (a *app) engine(name string) (*reason.Engine, error) {
	rs, diags := a.rules().Ruleset(name)
	if rs == nil {
		return nil, diags
	}
	return reason.New(rs)
}

// adviseAll carries the ruleset out on all assessments of a file. An assessment that can't be read
// is reported, and the others are gone on with.
func (a *app) adviseAll(e *reason.Engine, path string, o adviseOptions) error {
	asked, err := wishes(o.instead, e.Ruleset().Vocabulary)
	if err != nil {
		return err
	}
	in, err := a.assessments(path, e.Ruleset().Vocabulary)
	if err != nil {
		return err
	}
	defer in.close()
	if in.many && o.page != "" {
		return refusal{"A page shows one assessment, and " + path + " holds several.", "Give them one by one, or leave --html out."}
	}
	adviser, err := whatif.New(e)
	if err != nil {
		return err
	}
	w := &outcomeWriter{app: a, engine: e, options: o, kind: in.kind}
	conflict, refused := false, false
	for x, diags := range in.each {
		if err := w.report(diags); err != nil {
			return err
		}
		if x == nil {
			refused = true
			continue
		}
		if err := w.report(sides(x)); err != nil {
			return err
		}
		outcome := adviser.Advise(x, o.today.or(x.Date))
		if outcome.Person != nil {
			for _, wish := range onSides(asked, x) {
				outcome.Instead = append(outcome.Instead, adviser.Instead(x, wish, o.today.or(x.Date)))
			}
		}
		conflict = conflict || conflicts(outcome)
		if err := w.write(outcome); err != nil {
			return err
		}
		if o.page != "" {
			if err := a.page(e, outcome, o.page); err != nil {
				return err
			}
		}
	}
	switch err := w.end(); {
	case err != nil:
		return err
	case refused && in.many:
		return refusal{"Not all assessments could be read; " + were(w.written) + " advised on.", ""}
	case refused:
		return errSaid
	case conflict:
		return errFindings
	}
	return nil
}

// page draws an outcome as a page, all of it before the file is touched.
func (a *app) page(e *reason.Engine, o *reason.Outcome, path string) error {
	var b bytes.Buffer
	rs := e.Ruleset()
	if err := render.HTML(&b, o, rs.Vocabulary, render.HTMLOptions{Cites: render.Citations(rs)}); err != nil {
		return err
	}
	return writeFile(path, func(f io.Writer) error {
		_, err := f.Write(b.Bytes())
		return err
	})
}

// conflicts reports whether rules contradict each other about a choice.
func conflicts(o *reason.Outcome) bool {
	results := []*reason.Result{o.Person}
	for _, r := range o.Limbs {
		results = append(results, r)
	}
	for _, r := range results {
		if r == nil { // where the ruleset does not apply
			continue
		}
		for _, c := range r.Choices {
			if c.Status == reason.Conflict {
				return true
			}
		}
	}
	return false
}
