package main

import (
	"bytes"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"crus/engine/ruleset"
	"crus/engine/source"
)

func (a *app) tidy() *cobra.Command {
	var show, checkOnly, asJSON bool
	c := &cobra.Command{
		Use:   "tidy RULESET",
		Short: "Lay out the files of a ruleset in the one usual way",
		Long: `Lays out the files of a ruleset or vocabulary in the one usual way, so that two
versions differ only where they say something else: indentation, equal signs
under each other, one blank line between blocks. Comments stay, and no word is
changed.

The files are rewritten, and those that changed are listed. If one of them can't
be read, none is touched. Exit status: 0; 1 where --check finds something to do;
2 where a file can't be read or written.`,
		Example:           "  crus tidy my_ruleset\n  crus tidy my_ruleset --diff",
		GroupID:           groupAuthor,
		Args:              needs("RULESET"),
		ValidArgsFunction: a.completeRuleset,
		RunE: func(_ *cobra.Command, args []string) error {
			files, embedded, diags := a.rules().Files(args[0])
			if diags.HasErrors() {
				return diags
			}
			write := !show && !checkOnly
			if embedded && write {
				return refusal{args[0] + " comes with the program and can't be rewritten.", "Copy it into a folder of your own, and name that."}
			}
			tidied, err := tidyAll(files)
			if err != nil {
				return err
			}
			if write {
				for _, t := range tidied {
					if err := t.write(); err != nil {
						return err
					}
				}
			}
			if err := a.showTidied(tidied, show, write, asJSON); err != nil {
				return err
			}
			if checkOnly && changed(tidied) > 0 {
				return errFindings
			}
			return nil
		},
	}
	c.Flags().BoolVar(&show, "diff", false, "show what would change, and write nothing")
	c.Flags().BoolVar(&checkOnly, "check", false, "write nothing; exit status 1 if something would change")
	c.Flags().BoolVar(&asJSON, "json", false, "list the files as JSON")
	return c
}

// tidiedFile is a file and how it should be laid out.
type tidiedFile struct {
	File    string `json:"file"`
	Changed bool   `json:"changed"`
	before  []byte
	after   []byte
}

// tidyAll lays out all files, or none if one can't be read.
func tidyAll(files []*source.File) ([]tidiedFile, error) {
	out := []tidiedFile{}
	var diags source.Diagnostics
	for _, f := range files {
		after, ds := ruleset.Tidy(f)
		diags = append(diags, ds...)
		out = append(out, tidiedFile{f.Name, !bytes.Equal(f.Src, after), f.Src, after})
	}
	if diags.HasErrors() {
		return nil, diags
	}
	return out, nil
}

func (t tidiedFile) write() error {
	if !t.Changed {
		return nil
	}
	return writeFile(t.File, func(w io.Writer) error {
		_, err := w.Write(t.after)
		return err
	})
}

func changed(files []tidiedFile) int {
	n := 0
	for _, t := range files {
		if t.Changed {
			n++
		}
	}
	return n
}

func (a *app) showTidied(files []tidiedFile, show, written, asJSON bool) error {
	if asJSON {
		return a.json(files)
	}
	for _, t := range files {
		switch {
		case !t.Changed:
		case show:
			writeDiff(a.out, t)
		default:
			fmt.Fprintln(a.out, t.File)
		}
	}
	n := changed(files)
	switch {
	case n == 0 && len(files) == 1:
		fmt.Fprintln(a.out, "The one file is tidy.")
	case n == 0:
		fmt.Fprintf(a.out, "All %d files are tidy.\n", len(files))
	case written:
		fmt.Fprintf(a.out, "%d of %s tidied.\n", n, count(len(files), "file"))
	default:
		fmt.Fprintf(a.out, "%d of %s would change.\n", n, count(len(files), "file"))
	}
	return nil
}
