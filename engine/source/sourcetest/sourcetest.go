// Package sourcetest runs tables of broken input. Each case is one txtar archive:
//
//	What is wrong, for whoever reads the table.
//	at bad/rules.hcl:3:12
//	-- rules.hcl --
//	the broken file
//	-- want --
//	the diagnostics, word for word
//
// The places are written by hand, one line for each diagnostic in their order (or "nowhere"), so that
// rewriting the golden text cannot move a mark unseen.
package sourcetest

import (
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"
	"golang.org/x/tools/txtar"

	"crus/engine/source"
)

// Folder is where the files of a case stand whose names have no folder.
const Folder = "bad"

// Limit is the most of the processor's time that a case may take, whatever it holds. Time on the wall
// would depend on what else the machine does.
const Limit = time.Second

// Used gives the processor's time that this process has taken.
func Used(t testing.TB) time.Duration {
	t.Helper()
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		t.Fatal(err)
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

// Made gives the files of cases that cannot be written down as text: too large, not UTF-8, and so on.
type Made map[string]func() fstest.MapFS

// Run runs every archive of a folder: read gives the diagnostics of the files. With update the golden
// texts are written anew.
func Run(t *testing.T, dir string, update bool, made Made, read func(files fstest.MapFS) source.Diagnostics) {
	t.Helper()
	names, err := filepath.Glob(filepath.Join(dir, "*.txtar"))
	if err != nil || len(names) == 0 {
		t.Fatalf("cases %v, error %v", names, err)
	}
	for _, name := range names {
		short := strings.TrimSuffix(filepath.Base(name), ".txtar")
		t.Run(short, func(t *testing.T) {
			src, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			ar := txtar.Parse(src)
			files, want := split(ar)
			if make, ok := made[short]; ok {
				files = make()
			}
			began := Used(t)
			diags := read(files)
			got := diags.Text()
			if took := Used(t) - began; took > Limit {
				t.Errorf("took %s", took)
			}
			if diff := cmp.Diff(places(ar.Comment), marks(diags)); diff != "" {
				t.Errorf("places (- written, + given):\n%s", diff)
			}
			if update {
				ar.Files = append(ar.Files[:want:want], txtar.File{Name: "want", Data: []byte(got)})
				if err := os.WriteFile(name, txtar.Format(ar), 0o644); err != nil {
					t.Fatal(err)
				}
				return
			}
			if want == len(ar.Files) {
				t.Fatal("the archive has no want")
			}
			if diff := cmp.Diff(string(ar.Files[want].Data), got); diff != "" {
				t.Errorf("text (- wanted, + given):\n%s", diff)
			}
		})
	}
	for name := range made {
		if _, err := os.Stat(filepath.Join(dir, name+".txtar")); err != nil {
			t.Errorf("%s has no archive", name)
		}
	}
}

// split gives the files of a case and where its golden text stands among them.
func split(ar *txtar.Archive) (fstest.MapFS, int) {
	files, want := fstest.MapFS{}, len(ar.Files)
	for i, f := range ar.Files {
		switch {
		case f.Name == "want":
			want = i
		case strings.Contains(f.Name, "/"):
			files[f.Name] = &fstest.MapFile{Data: f.Data}
		default:
			files[Folder+"/"+f.Name] = &fstest.MapFile{Data: f.Data}
		}
	}
	return files, want
}

// places takes the "at" lines of a comment.
func places(comment []byte) []string {
	out := []string{}
	for line := range strings.Lines(string(comment)) {
		line = strings.TrimSpace(line)
		if at, ok := strings.CutPrefix(line, "at "); ok {
			out = append(out, at)
		} else if line == "nowhere" {
			out = append(out, line)
		}
	}
	return out
}

func marks(diags source.Diagnostics) []string {
	out := []string{}
	for _, d := range diags {
		if d.Where.Known() {
			out = append(out, d.Where.String())
		} else {
			out = append(out, "nowhere")
		}
	}
	return out
}
