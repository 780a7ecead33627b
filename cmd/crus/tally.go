package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"iter"
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"sync/atomic"

	"github.com/spf13/cobra"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/render"
	"crus/engine/replay"
	"crus/engine/source"
	"crus/engine/vocab"
)

// maxRefused is of how many assessments that can't be read it is said what is wrong.
const maxRefused = 20

func (a *app) tally() *cobra.Command {
	var asJSON, all bool
	c := &cobra.Command{
		Use:   "tally RULESET ASSESSMENTS...",
		Short: "Count what a ruleset advises over many assessments",
		Long: `Carries a ruleset out on many assessments and counts: how often each rule fired,
was set aside or waits for what is missing, how often each caution was given,
and what became of each choice, with how much of this is provisional.

ASSESSMENTS are files that end in .jsonl (one JSON assessment a line), .csv (a
row a limb), .json or .hcl, or - for JSON lines on the standard input. JSON
lines are read as a stream, so there can be any number of them.

An assessment that can't be read is reported and left out. Ctrl-C ends the work
with what was counted so far.

Exit status: 0; 1 where the work was stopped before the end; 2 where the
ruleset, or some of the assessments, could not be read.`,
		Example: `  crus tally demo_clinic clinic.jsonl
  crus tally demo_clinic 2025.jsonl 2026.jsonl --json > counts.json`,
		GroupID: groupReview,
		Args:    needsSome("RULESET", "ASSESSMENTS"),
		ValidArgsFunction: func(c *cobra.Command, args []string, typed string) ([]string, cobra.ShellCompDirective) {
			if len(args) > 0 {
				return []string{"jsonl", "csv", "json", "hcl"}, cobra.ShellCompDirectiveFilterFileExt
			}
			return a.completeRuleset(c, args, typed)
		},
		RunE: func(c *cobra.Command, args []string) error {
			return a.tallyAll(c.Context(), args[0], args[1:], render.TallyOptions{All: all}, asJSON)
		},
	}
	c.Flags().BoolVar(&asJSON, "json", false, "as JSON")
	c.Flags().BoolVar(&all, "all", false, "list the rules and cautions that never fired, too")
	return c
}

func (a *app) tallyAll(ctx context.Context, name string, paths []string, o render.TallyOptions, asJSON bool) error {
	engine, err := a.engine(name)
	if err != nil {
		return err
	}
	space, err := cell.New(engine)
	if err != nil {
		return err
	}
	for _, path := range paths {
		if _, err := os.Stat(path); err != nil && path != "-" {
			return refusal{path + " can't be read: " + plainError(err) + ".", "Check the path of the assessments."}
		}
	}
	ctx, stop := signal.NotifyContext(ctx, os.Interrupt)
	defer stop()
	context.AfterFunc(ctx, stop) // a second Ctrl-C ends the program, should the input not end
	src := &files{app: a, space: space, paths: paths, size: sizeOf(paths)}
	defer src.close()
	bar := a.progress("Reading")
	program := replay.New(space)
	w := &outcomeWriter{app: a, engine: engine}
	refused := int64(0)
	tally, err := program.Run(ctx, src, replay.Options{Progress: func(cases int64) { bar.of(cases, src.expected(cases)) }}, func(r *replay.Result) error {
		for _, diags := range r.Block.Note.([]source.Diagnostics) {
			if refused++; refused > maxRefused {
				continue
			}
			bar.clear()
			if err := w.report(diags); err != nil {
				return err
			}
		}
		return nil
	})
	bar.end()
	partial := errors.Is(err, context.Canceled)
	if err != nil && !partial {
		return err
	}
	report := program.Report(tally)
	report.Partial, report.Refused = partial, refused
	if asJSON {
		err = a.json(report)
	} else {
		err = render.Tally(a.out, report, a.style(), o)
	}
	switch {
	case err != nil:
		return err
	case partial:
		return errFindings
	case refused > 0:
		return refusal{fmt.Sprintf("Not all assessments could be read; %s counted.", were(int(tally.Cases))), ""}
	}
	return nil
}

// sizeOf gives how large some files are together, in bytes; 0 where that can't be known.
func sizeOf(paths []string) (size int64) {
	for _, path := range paths {
		info, err := os.Stat(path)
		if err != nil || !info.Mode().IsRegular() {
			return 0
		}
		size += info.Size()
	}
	return size
}

// files gives the assessments of some files as blocks. The lines of a stream are taken one after the other, and
// understood by several goroutines at once.
type files struct {
	app   *app
	space *cell.Space
	paths []string
	size  int64        // of all of them, in bytes; 0: not known
	taken atomic.Int64 // bytes
	next  func() (unread, bool)
	stop  func()
}

// unread is an assessment that was taken and not read yet.
type unread func(v *vocab.Vocabulary) (*assess.Assessment, source.Diagnostics)

// expected is how many assessments there will be, if those to come are as long as those so far; -1 where it can't be said.
func (f *files) expected(cases int64) int64 {
	taken := f.taken.Load()
	if f.size == 0 || taken == 0 {
		return -1
	}
	return max(cases, int64(float64(cases)*float64(f.size)/float64(taken)))
}

func (f *files) close() {
	if f.stop != nil {
		f.stop()
	}
}

// Next takes as many assessments as surely find room in a block.
func (f *files) Next() (replay.Fill, error) {
	var chunk []unread
	for len(chunk) < replay.BlockCases {
		if f.next == nil {
			if len(f.paths) == 0 {
				break
			}
			each, err := f.open(f.paths[0])
			if err != nil {
				return nil, err
			}
			f.paths = f.paths[1:]
			f.next, f.stop = iter.Pull(each)
		}
		x, ok := f.next()
		if !ok {
			f.next = nil
			continue
		}
		chunk = append(chunk, x)
	}
	if len(chunk) == 0 {
		return nil, io.EOF
	}
	return func(b *replay.Block) error {
		var refused []source.Diagnostics
		for _, read := range chunk {
			x, diags := read(f.space.Ruleset.Vocabulary)
			if x == nil {
				refused = append(refused, diags)
				continue
			}
			b.Add(f.space, x)
		}
		b.Note = refused
		return nil
	}, nil
}

// open gives the assessments of a file, or of the standard input for "-".
func (f *files) open(path string) (iter.Seq[unread], error) {
	if path == "-" {
		return f.lines(f.app.in, "standard input", func() {}), nil
	}
	if strings.ToLower(filepath.Ext(path)) == ".jsonl" {
		file, err := os.Open(path)
		if err != nil {
			return nil, refusal{path + " can't be read: " + plainError(err) + ".", "Check the path of the assessments."}
		}
		return f.lines(file, filepath.ToSlash(path), func() { _ = file.Close() }), nil // it was only read
	}
	in, err := f.app.assessments(path, f.space.Ruleset.Vocabulary)
	if err != nil {
		return nil, err
	}
	return func(yield func(unread) bool) {
		defer in.close()
		for x, diags := range in.each {
			if !yield(func(*vocab.Vocabulary) (*assess.Assessment, source.Diagnostics) { return x, diags }) {
				return
			}
		}
		f.taken.Add(sizeOf([]string{path}))
	}, nil
}

// lines gives the lines of a stream.
func (f *files) lines(r io.Reader, name string, done func()) iter.Seq[unread] {
	return func(yield func(unread) bool) {
		defer done()
		for l := range assess.Unread(&countedBytes{r, &f.taken}, name) {
			if !yield(l.Read) {
				return
			}
		}
	}
}

// countedBytes counts the bytes that are read.
type countedBytes struct {
	io.Reader
	n *atomic.Int64
}

func (c *countedBytes) Read(p []byte) (int, error) {
	n, err := c.Reader.Read(p)
	c.n.Add(int64(n))
	return n, err
}
