package main

import (
	"github.com/spf13/cobra"

	"crus/engine/cases"
	"crus/engine/render"
)

func (a *app) cases() *cobra.Command {
	var asJSON, all, ready bool
	var today day
	c := &cobra.Command{
		Use:   "cases RULESET",
		Short: "Try a ruleset on its own worked cases",
		Long: `Carries a ruleset out on each of its worked cases and says where it advises
something else than the case expects. Then it lists the conditions that no case
has shown both true and false, and the boundaries on which, or on one side of
which, no case stands: a mistake in those would not be seen. Last come the
questions (the smallest yes/no parts of conditions) that the cases have not
shown to decide: by two cases that differ in that question only, one in which
the condition holds and one in which it does not. --ready writes worked cases
for them, to be confirmed by hand and pasted.

Exit status: 0 where all cases pass; 1 where one fails; 2 where they could not
be run.`,
		Example:           "  crus cases my_ruleset\n  crus cases my_ruleset --all\n  crus cases my_ruleset --ready > more_cases.hcl",
		GroupID:           groupAuthor,
		Args:              needs("RULESET"),
		ValidArgsFunction: a.completeRuleset,
		RunE: func(_ *cobra.Command, args []string) error {
			if ready && (asJSON || all) {
				return refusal{"--ready writes worked cases and nothing else.", "Leave --json and --all out."}
			}
			engine, err := a.engine(args[0])
			if err != nil {
				return err
			}
			report, diags := cases.Run(engine, today.or(""))
			if diags.HasErrors() {
				return diags
			}
			switch {
			case asJSON:
				err = a.json(report)
			case ready:
				err = render.Ready(a.out, report)
			default:
				err = render.Cases(a.out, report, a.style(), render.CasesOptions{All: all})
			}
			if err == nil && report.Failed > 0 {
				return errFindings
			}
			return err
		},
	}
	c.Flags().BoolVar(&asJSON, "json", false, "as JSON")
	c.Flags().BoolVar(&ready, "ready", false, "write worked cases for the questions not shown, as HCL blocks")
	c.Flags().BoolVar(&all, "all", false, "list the cases that passed, and everything that is not shown")
	c.Flags().Var(&today, "today", "the `DAY` of the run, as 2027-01-31 (default: today)")
	return c
}
