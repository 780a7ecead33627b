package main

import (
	"bufio"
	"errors"
	"io"
	"os"

	"golang.org/x/term"

	"crus/engine/render"
	"crus/engine/ruleset"
	"crus/engine/source"
	"crus/rulesets"
)

// The exit statuses.
const (
	fine     = 0
	findings = 1
	failed   = 2
)

// app is what the commands share: where they read and write, and the options that all of them have.
type app struct {
	in     io.Reader
	out    *bufio.Writer // flushed by finish, so that no write error is lost
	errors io.Writer

	outTerminal, errTerminal bool
	colour                   word
	library                  []string
}

func newApp(in io.Reader, out, errors io.Writer) *app {
	return &app{
		in: in, out: bufio.NewWriter(out), errors: errors,
		outTerminal: terminal(out), errTerminal: terminal(errors),
		colour: oneOf("auto", "always", "never"),
	}
}

// terminal reports whether a person sits at the other end.
func terminal(w io.Writer) bool {
	f, ok := w.(*os.File)
	return ok && term.IsTerminal(int(f.Fd()))
}

// style is how the output is shown.
func (a *app) style() render.Style { return a.styleFor(a.outTerminal) }

func (a *app) styleFor(terminal bool) render.Style {
	auto := terminal && os.Getenv("NO_COLOR") == "" && os.Getenv("TERM") != "dumb"
	if a.colour.value == "always" || a.colour.value == "auto" && auto {
		return render.Coloured()
	}
	return render.Plain
}

// rules is where names of rulesets and vocabularies are looked for.
func (a *app) rules() ruleset.Library {
	return ruleset.Library{Dirs: a.library, Embedded: rulesets.FS}
}

// errFindings ends a command that ran and has said what it found.
var errFindings = errors.New("findings")

// errSaid ends a command that could not run and has said why.
var errSaid = errors.New("could not run")

// refusal is why a command could not run: one sentence, and the way out.
type refusal struct{ message, hint string }

func (r refusal) Error() string { return r.message }

// finish says why a command could not run, and gives the exit status.
func (a *app) finish(err error) int {
	if flush := a.out.Flush(); flush != nil && (err == nil || err == errFindings) {
		err = refusal{"The result could not be written: " + plainError(flush) + ".", ""}
	}
	var diags source.Diagnostics
	switch {
	case err == nil:
		return fine
	case err == errFindings:
		return findings
	case err == errSaid:
	case errors.As(err, &diags):
		_ = render.Diagnostics(a.errors, diags, a.styleFor(a.errTerminal)) // nowhere left to report to
	default:
		a.refuse(err)
	}
	return failed
}

func (a *app) refuse(err error) {
	text := "crus: " + err.Error() + "\n"
	var r refusal
	if errors.As(err, &r) && r.hint != "" {
		for _, line := range source.Wrap(r.hint, 74) {
			text += "      " + line + "\n"
		}
	}
	_, _ = io.WriteString(a.errors, text) // nowhere left to report to
}

// plainError gives an error of the operating system without the call and path that it repeats.
func plainError(err error) string {
	var path *os.PathError
	if errors.As(err, &path) {
		return path.Err.Error()
	}
	return err.Error()
}
