package main

import (
	"errors"
	"flag"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/testscript"
	"github.com/spf13/cobra"
)

var update = flag.Bool("update", false, "write what the commands print into the scripts")

func TestMain(m *testing.M) { testscript.Main(m, map[string]func(){"crus": main}) }

// Each script in testdata/script calls the program as a person would, and compares what it prints.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Cmds:                map[string]func(*testscript.TestScript, bool, []string){"exits": exits},
	})
}

// exits runs a command and demands its exit status: exits 2 crus check nowhere.
func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exits STATUS COMMAND ...")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	err = ts.Exec(args[1], args[2:]...)
	var ended *exec.ExitError
	switch {
	case errors.As(err, &ended):
		got = ended.ExitCode()
	default:
		ts.Check(err)
	}
	if got != want {
		ts.Fatalf("exit status %d, want %d", got, want)
	}
}

// Every help text fits on a terminal of 80 columns and says how the command is called.
func TestHelpFitsTheScreen(t *testing.T) {
	var out, errs strings.Builder
	a := newApp(strings.NewReader(""), &out, &errs)
	var visit func(c *cobra.Command)
	visit = func(c *cobra.Command) {
		if c.Runnable() && (c.Short == "" || c.Long == "") {
			t.Errorf("%s does not explain itself", c.CommandPath())
		}
		out.Reset()
		if err := c.Help(); err != nil {
			t.Fatal(err)
		}
		if err := a.out.Flush(); err != nil {
			t.Fatal(err)
		}
		for _, line := range strings.Split(out.String(), "\n") {
			if len(line) > 80 && !(c.HasParent() && c.Parent().Name() == "completion") { // those texts are the library's
				t.Errorf("%s: %d columns: %s", c.CommandPath(), len(line), line)
			}
		}
		for _, sub := range c.Commands() {
			visit(sub)
		}
	}
	visit(a.root())
}

// A file is written as a whole or not at all.
func TestWriteFile(t *testing.T) {
	path := filepath.Join(t.TempDir(), "x.txt")
	put := func(text string) error {
		return writeFile(path, func(w io.Writer) error {
			_, err := io.WriteString(w, text)
			return err
		})
	}
	want := func(text string) {
		t.Helper()
		got, err := os.ReadFile(path)
		if err != nil || string(got) != text {
			t.Errorf("%q, %v; want %q", got, err, text)
		}
		entries, err := os.ReadDir(filepath.Dir(path))
		if err != nil || len(entries) > 2 {
			t.Errorf("left behind: %v, %v", entries, err)
		}
	}
	if err := put("first"); err != nil {
		t.Fatal(err)
	}
	want("first")
	if err := os.Chmod(path, 0o600); err != nil {
		t.Fatal(err)
	}
	half := writeFile(path, func(w io.Writer) error {
		_, _ = io.WriteString(w, "half")
		return io.ErrShortWrite
	})
	if half == nil {
		t.Error("an error of the writer is lost")
	}
	want("first")
	link := filepath.Join(filepath.Dir(path), "link")
	if err := os.Symlink(path, link); err != nil {
		t.Fatal(err)
	}
	if err := writeFile(link, func(w io.Writer) error { _, err := io.WriteString(w, "second"); return err }); err != nil {
		t.Fatal(err)
	}
	want("second")
	info, err := os.Lstat(link)
	if err != nil || info.Mode()&os.ModeSymlink == 0 {
		t.Errorf("the link was replaced: %v, %v", info, err)
	}
	if info, err := os.Stat(path); err != nil || info.Mode().Perm() != 0o600 {
		t.Errorf("the permissions changed: %v, %v", info, err)
	}
}

// A result that can't be written is said to be so, with status 2.
func TestWriteErrors(t *testing.T) {
	var errs strings.Builder
	if got := run([]string{"version"}, strings.NewReader(""), brokenPipe{}, &errs); got != failed {
		t.Errorf("status %d", got)
	}
	if want := "crus: The result could not be written: io: read/write on closed pipe.\n"; errs.String() != want {
		t.Errorf("%q, want %q", errs.String(), want)
	}
}

type brokenPipe struct{}

func (brokenPipe) Write([]byte) (int, error) { return 0, io.ErrClosedPipe }

func TestDiffLines(t *testing.T) {
	for _, test := range []struct{ before, after, want string }{
		{"a\nb\n", "a\nb\n", " 1a  2b"},
		{"a\nb\nc\n", "a\nx\nc\n", " 1a -2b +3x  3c"},
		{"a", "a\n", "-1a +2a"},
		{"", "a\n", "+1a"},
	} {
		var got []string
		for _, l := range diffLines(test.before, test.after) {
			got = append(got, fmt.Sprintf("%c%d%s", l.sign, l.number, strings.TrimSpace(l.text)))
		}
		if joined := strings.Join(got, " "); joined != test.want {
			t.Errorf("%q to %q: %q, want %q", test.before, test.after, joined, test.want)
		}
	}
}

// The day on which a review date is judged: the one that was named, else that of the assessment.
func TestDay(t *testing.T) {
	var d day
	if got := d.or("2026-10-02").Format(time.DateOnly); got != "2026-10-02" {
		t.Error(got)
	}
	if got := d.or(""); time.Since(got) < 0 || time.Since(got) > 48*time.Hour {
		t.Error(got)
	}
	if err := d.Set("2027-01-31"); err != nil {
		t.Fatal(err)
	}
	if got := d.or("2026-10-02").Format(time.DateOnly); got != "2027-01-31" {
		t.Error(got)
	}
}
