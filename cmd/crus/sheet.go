package main

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"

	"github.com/spf13/cobra"

	"crus/engine/render"
	"crus/engine/render/pdf"
	"crus/engine/whatif"
)

// sheetOptions is what crus sheet was asked for.
type sheetOptions struct {
	asJSON             bool
	page, pdf, drawing string
	side               string
	today              day
}

func (a *app) sheet() *cobra.Command {
	var o sheetOptions
	c := &cobra.Command{
		Use:   "sheet RULESET ASSESSMENT",
		Short: "Write the prescription for the workshop, with a drawing to scale",
		Long: `Carries a ruleset out on one assessment and writes the prescription for the
workshop: one sheet of A4 for each leg, with what is prescribed, what is still
to be decided, the leg in its device drawn to scale with angles, heights and
forces, the cautions, and the lines that a custom-made device is signed on. What
one sheet cannot hold runs on over another.

The page goes to the standard output, or into the file that --html names. --pdf
prints it with the Chromium or Chrome that is installed. --drawing writes the
drawing alone, as SVG that measures itself in millimetres of paper.

A ruleset decides what it has rules for: composite_design covers everything that
the workshop asks. What is drawn by proportion because it was not recorded is
named below the drawing.

Exit status: 0; 1 where rules contradict each other about a choice; 2 where it
could not be written.`,
		Example: `  crus sheet composite_design assessment.json --pdf prescription.pdf
  crus sheet composite_design assessment.json --html prescription.html
  crus sheet composite_design assessment.json --drawing leg.svg --side left`,
		GroupID:           groupClinic,
		Args:              needs("RULESET", "ASSESSMENT"),
		ValidArgsFunction: a.completeSheet,
		RunE:              func(_ *cobra.Command, args []string) error { return a.writeSheet(args[0], args[1], o) },
	}
	c.Flags().BoolVar(&o.asJSON, "json", false, "as JSON")
	c.Flags().StringVar(&o.page, "html", "", "write the page into `FILE`")
	c.Flags().StringVar(&o.pdf, "pdf", "", "print the page into `FILE`")
	c.Flags().StringVar(&o.drawing, "drawing", "", "write the drawing alone into `FILE`, as SVG")
	c.Flags().StringVar(&o.side, "side", "", "only this leg: `left` or right")
	c.Flags().Var(&o.today, "today", "judge the review date on this `DAY`, as 2027-01-31")
	complete(c, "html", completeExt("html"))
	complete(c, "pdf", completeExt("pdf"))
	complete(c, "drawing", completeExt("svg"))
	return c
}

func (a *app) completeSheet(c *cobra.Command, args []string, typed string) ([]string, cobra.ShellCompDirective) {
	if len(args) == 1 {
		return []string{"json", "hcl"}, cobra.ShellCompDirectiveFilterFileExt
	}
	return a.completeRuleset(c, args, typed)
}

func (a *app) writeSheet(ruleset, path string, o sheetOptions) error {
	if o.side != "" && o.side != "left" && o.side != "right" {
		return refusal{"A leg is left or right, not " + o.side + ".", "For example --side left."}
	}
	engine, err := a.engine(ruleset)
	if err != nil {
		return err
	}
	x, err := a.one(engine, path)
	if err != nil {
		return err
	}
	adviser, err := whatif.New(engine)
	if err != nil {
		return err
	}
	outcome := engine.Advise(x, o.today.or(x.Date))
	adviser.Settle(outcome, x, o.today.or(x.Date)) // as crus advise does
	legs := render.Prescriptions(outcome, x, engine.Ruleset().Vocabulary)
	if o.side != "" {
		legs = only(legs, o.side)
	}
	if len(legs) == 0 {
		return a.noLeg(outcome.Applies, o.side)
	}
	var page bytes.Buffer
	if err := render.PrescriptionPage(&page, legs, "Prescription "+x.ID); err != nil {
		return err
	}
	if err := a.putSheet(page.Bytes(), legs, o); err != nil {
		return err
	}
	if conflicts(outcome) {
		return errFindings
	}
	return nil
}

// putSheet writes what was asked for, the printed page first: it is what can fail.
func (a *app) putSheet(page []byte, legs []*render.Prescription, o sheetOptions) error {
	if o.drawing != "" && len(legs) > 1 {
		return refusal{"A drawing shows one leg, and this assessment asks for a device on both.", "Name one with --side left or --side right."}
	}
	if o.pdf != "" {
		printed, err := pdf.Print(page)
		switch {
		case errors.Is(err, pdf.ErrNoBrowser):
			return refusal{"To print a PDF, Chromium or Chrome must be installed.", "On Debian: apt-get install chromium. Or write the page with --html, and print it from a browser."}
		case err != nil:
			return refusal{"The browser could not print the page: " + err.Error() + ".", "Write it with --html, and print it from a browser."}
		}
		if err := writeBytes(o.pdf, printed); err != nil {
			return err
		}
	}
	if o.drawing != "" {
		if err := writeBytes(o.drawing, []byte(legs[0].Drawing)); err != nil {
			return err
		}
	}
	if o.page != "" {
		if err := writeBytes(o.page, page); err != nil {
			return err
		}
	}
	switch {
	case o.asJSON:
		e := json.NewEncoder(a.out)
		e.SetIndent("", "  ")
		e.SetEscapeHTML(false)
		return e.Encode(legs)
	case o.page == "" && o.pdf == "" && o.drawing == "":
		_, err := a.out.Write(page)
		return err
	}
	return nil
}

func only(legs []*render.Prescription, side string) []*render.Prescription {
	for _, p := range legs {
		if p.Side == side {
			return []*render.Prescription{p}
		}
	}
	return nil
}

func (a *app) noLeg(applies, side string) error {
	switch {
	case applies == "no":
		return refusal{"This ruleset does not apply to this person, so it prescribes nothing.", "crus advise says why."}
	case side != "":
		return refusal{"The assessment asks for no device on the " + side + " leg.", `Name the leg in device_for, or leave --side out.`}
	}
	return refusal{"The assessment does not say for which leg a device is wanted.", `Add device_for = ["left"], ["right"] or both.`}
}

func writeBytes(path string, b []byte) error {
	return writeFile(path, func(f io.Writer) error {
		_, err := f.Write(b)
		return err
	})
}
