package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"crus/engine/biomech"
	"crus/engine/render"
)

func (a *app) cite() *cobra.Command {
	var asJSON, formulas bool
	c := &cobra.Command{
		Use:   "cite [RULESET ...]",
		Short: "Show what every rule rests on",
		Long: `Lists every rule and caution with its basis, its sources and how firmly it
stands: on what was read, on what another work reports, on memory, or on common
practice. With no RULESET, all that come with the program are listed, and the
formulas that conditions can call.

Written as Markdown. docs/evidence.md of this program is made by it.`,
		Example: "  crus cite stroke_afo\n  crus cite > evidence.md\n  crus cite my_ruleset --json",
		GroupID: groupReview,
		ValidArgsFunction: func(c *cobra.Command, _ []string, typed string) ([]string, cobra.ShellCompDirective) {
			return a.completeRuleset(c, nil, typed)
		},
		RunE: func(_ *cobra.Command, args []string) error {
			all := len(args) == 0
			if all {
				args = a.comesWith()
			}
			var es []*render.Evidence
			for _, name := range args {
				rs, diags := a.rules().Ruleset(name)
				if rs == nil {
					return diags
				}
				es = append(es, render.EvidenceOf(rs))
			}
			if asJSON {
				return a.json(es)
			}
			var fs []*biomech.Formula
			if all || formulas {
				fs = biomech.Formulas()
			}
			_, err := fmt.Fprint(a.out, render.EvidenceText(es, fs))
			return err
		},
	}
	c.Flags().BoolVar(&asJSON, "json", false, "as JSON")
	c.Flags().BoolVar(&formulas, "formulas", false, "list the formulas too")
	return c
}

// comesWith names the rulesets that come with the program.
func (a *app) comesWith() []string {
	var out []string
	for _, x := range a.about().Comes {
		if x.Kind == "ruleset" {
			out = append(out, x.Name)
		}
	}
	return out
}
