package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"crus/engine/assess"
	"crus/engine/form"
)

func (a *app) form() *cobra.Command {
	var vocabulary, page string
	var asJSON bool
	format, side := oneOf("hcl", "json", "csv"), oneOf("both", "left", "right")
	c := &cobra.Command{
		Use:   "form [RULESET]",
		Short: "Write a blank assessment",
		Long: `Writes a blank assessment: just what a ruleset reads, or, without a ruleset,
everything that the vocabulary can record. Measures stand in the order of an
examination. What stays blank is not recorded.

As HCL each measure comes with a note on how it is taken; JSON is for programs,
CSV for a spreadsheet, and --html writes a sheet to print and fill in by hand.`,
		Example: `  crus form demo_clinic > assessment.hcl
  crus form demo_clinic --side left --html sheet.html
  crus form --vocabulary lower_limb --format csv > table.csv`,
		GroupID:           groupClinic,
		Args:              atMost(1),
		ValidArgsFunction: a.completeRuleset,
		RunE: func(c *cobra.Command, args []string) error {
			if len(args) == 1 && c.Flags().Changed("vocabulary") {
				return refusal{"A form is either for a ruleset or for a whole vocabulary.", "Leave out one of the two."}
			}
			if asJSON {
				format.value = "json"
			}
			f, err := a.blank(args, vocabulary, side.value)
			if err != nil {
				return err
			}
			if page != "" {
				if err := writeFile(page, f.HTML); err != nil {
					return err
				}
				if !asJSON && !c.Flags().Changed("format") {
					fmt.Fprintf(a.out, "Wrote %s: %s.\n", page, count(f.Count(), "measure"))
					return nil
				}
			}
			_, err = a.out.Write(map[string]func() []byte{"hcl": f.HCL, "json": f.JSON, "csv": f.CSV}[format.value]())
			return err
		},
	}
	c.Flags().StringVar(&vocabulary, "vocabulary", "lower_limb", "the vocabulary `NAME` as a whole, without a ruleset")
	c.Flags().Var(&side, "side", "the `LIMB` that gets a device: left, right or both")
	c.Flags().Var(&format, "format", "write it as `KIND`: hcl, json or csv")
	c.Flags().BoolVar(&asJSON, "json", false, "the same as --format json")
	c.Flags().StringVar(&page, "html", "", "write a sheet to print into `FILE` instead")
	complete(c, "vocabulary", func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return a.names("vocabulary"), cobra.ShellCompDirectiveDefault
	})
	complete(c, "side", side.complete)
	complete(c, "format", format.complete)
	complete(c, "html", completeExt("html"))
	return c
}

// blank makes the form that was asked for.
func (a *app) blank(args []string, vocabulary, side string) (*form.Form, error) {
	sides := assess.Sides()
	if side != "both" {
		sides = []assess.Side{assess.Side(side)}
	}
	if len(args) == 1 {
		rs, diags := a.rules().Ruleset(args[0])
		if rs == nil {
			return nil, diags
		}
		return form.ForRuleset(rs, sides), nil
	}
	v, diags := a.rules().Vocabulary(vocabulary)
	if v == nil {
		return nil, diags
	}
	return form.ForVocabulary(v, sides), nil
}

// completeExt completes names of files with some endings.
func completeExt(endings ...string) cobra.CompletionFunc {
	return func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return endings, cobra.ShellCompDirectiveFilterFileExt
	}
}
