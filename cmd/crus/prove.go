package main

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"os"
	"os/signal"
	"path/filepath"

	"github.com/spf13/cobra"

	"crus/engine/cell"
	"crus/engine/prove"
	"crus/engine/render"
	"crus/engine/smtlib"
)

// proveOptions is what crus prove was asked for.
type proveOptions struct {
	asJSON            bool
	witnesses, smtlib string
}

func (a *app) prove() *cobra.Command {
	var o proveOptions
	c := &cobra.Command{
		Use:   "prove RULESET",
		Short: "Look for gaps, contradictions and dead rules in all assessments",
		Long: `Looks at all assessments that there can be, not at samples: every measure
recorded, within its plausible range. Only a measure of which a condition asks
whether it is recorded can also be missing. It says

  where limits can contradict each other, and where a choice that is advised on
  can stay unanswered although it is not declared with clinician_decides;
  which rules and cautions can never fire, which rules are always overridden,
  and which findings are always true or false: these are the faults;
  where several options can be level, which rules make no difference, and which
  cautions never stand without another: these are remarks;
  what could not be decided, and why; and what is proved.

What is found comes with a witness, and with the few of its measures that bring
it about. --witness writes each as an assessment that crus advise shows it on.
--smtlib writes all questions, in plain arithmetic and with the answers, so that
another solver can check them: z3 -smt2 FILE.

Exit status: 0 where there is no fault; 1 where there is one; 2 where the
ruleset could not be read, or a file not be written.`,
		Example: `  crus prove my_ruleset
  crus prove my_ruleset --witness faults
  crus advise my_ruleset faults/gap-closure.json`,
		GroupID:           groupAuthor,
		Args:              needs("RULESET"),
		ValidArgsFunction: a.completeRuleset,
		RunE: func(c *cobra.Command, args []string) error {
			return a.proveAll(c, args[0], o)
		},
	}
	c.Flags().BoolVar(&o.asJSON, "json", false, "as JSON")
	c.Flags().StringVar(&o.witnesses, "witness", "", "also write each witness, as an assessment, into `DIR`")
	c.Flags().StringVar(&o.smtlib, "smtlib", "", "also write what is asked, in SMT-LIB 2, into `FILE`")
	_ = c.MarkFlagDirname("witness") // the flag was defined just above
	complete(c, "smtlib", completeExt("smt2"))
	return c
}

func (a *app) proveAll(c *cobra.Command, name string, o proveOptions) error {
	engine, err := a.engine(name)
	if err != nil {
		return err
	}
	space, err := cell.New(engine)
	if err != nil {
		return err
	}
	ctx, stop := signal.NotifyContext(c.Context(), os.Interrupt)
	defer stop()
	bar := a.progress("Asking")
	report := prove.Prove(ctx, space, prove.Options{Progress: bar.at})
	bar.end()
	if ctx.Err() != nil {
		return refusal{"The work was stopped.", ""}
	}
	files := map[*prove.Verdict]string{}
	if o.witnesses != "" {
		if files, err = witnesses(report, o.witnesses); err != nil {
			return err
		}
	}
	if o.smtlib != "" {
		if err := writeFile(o.smtlib, func(w io.Writer) error { return smtlib.Write(w, space, report) }); err != nil {
			return err
		}
	}
	if o.asJSON {
		err = a.json(report)
	} else {
		err = render.Proof(a.out, report, engine.Ruleset(), a.style(), render.ProofOptions{Ruleset: name,
			Matters: func(v *prove.Verdict) []prove.Reading { return prove.Matters(space, v) },
			File:    func(v *prove.Verdict) string { return files[v] }})
	}
	if err == nil && len(report.Found(true)) > 0 {
		return errFindings
	}
	return err
}

// witnesses writes each witness of a report into a folder, and gives their files. A file of another content that is there
// already is kept, and refused before anything is written.
func witnesses(r *prove.Report, dir string) (map[*prove.Verdict]string, error) {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return nil, refusal{"The folder " + dir + " can't be made: " + plainError(err) + ".", "Check the path, and that you may write there."}
	}
	files, texts := map[*prove.Verdict]string{}, map[*prove.Verdict][]byte{}
	var fresh []*prove.Verdict
	for _, v := range r.Verdicts {
		if v.Assessment == nil {
			continue
		}
		text, err := v.Assessment.JSON()
		if err != nil {
			return nil, err
		}
		path := filepath.Join(dir, v.Witness+".json")
		files[v], texts[v] = path, text
		switch old, err := os.ReadFile(path); {
		case errors.Is(err, fs.ErrNotExist):
			fresh = append(fresh, v)
		case err != nil:
			return nil, refusal{path + " can't be read: " + plainError(err) + ".", "Name another folder."}
		case !bytes.Equal(old, text):
			return nil, refusal{path + " is there already, with other content.", "Name another folder, or remove the file."}
		}
	}
	for _, v := range fresh {
		if err := writeFile(files[v], func(w io.Writer) error {
			_, err := w.Write(texts[v])
			return err
		}); err != nil {
			return nil, err
		}
	}
	return files, nil
}
