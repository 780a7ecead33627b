package assess

import (
	"errors"
	"fmt"
	"io"
	"runtime"
	"strings"
	"testing"
	"testing/iotest"

	"crus/engine/source"
)

// collect reads a stream to its end.
func collect(t *testing.T, r io.Reader) (ids []string, all source.Diagnostics) {
	t.Helper()
	for a, diags := range Lines(r, "past.jsonl", vocabulary(t)) {
		if (a == nil) != diags.HasErrors() {
			t.Errorf("assessment %v with %s", a, diags.Text())
		}
		if a != nil {
			ids = append(ids, a.ID)
		}
		all = append(all, diags...)
	}
	return ids, all
}

func TestLinesGoOnAfterABrokenOne(t *testing.T) {
	text := "\ufeff" + compact(minimal("017", "1")) + "\r\n\n" +
		compact(left(`"tone": 2`)) + "\n" +
		`{"id": "` + strings.Repeat("é", MaxLineSize) + "\"}\n" +
		"\ufeff" + compact(minimal("017", "2")) + "\n" +
		compact(minimal("017", "3\xff")) + "\n" +
		compact(minimal("017", "4"))
	for name, r := range map[string]io.Reader{"whole": strings.NewReader(text), "by the byte": iotest.OneByteReader(strings.NewReader(text))} {
		t.Run(name, func(t *testing.T) {
			ids, diags := collect(t, r)
			if got := fmt.Sprint(ids); got != "[demo-1 demo-2 demo-4]" {
				t.Error(got)
			}
			golden(t, "stream", diags.Text())
		})
	}
}

// A stream and a file say the same of the same text.
func TestLinesAndReadAgree(t *testing.T) {
	for name, text := range broken() {
		if !strings.HasSuffix(name, ".jsonl") {
			continue
		}
		_, fromStream := collect(t, strings.NewReader(text))
		_, fromFile := Read(source.NewFile("past.jsonl", []byte(text)), vocabulary(t))
		if a, b := fromStream.Text(), fromFile.Text(); a != b {
			t.Errorf("%s\nstream: %s\nfile: %s", name, a, b)
		}
	}
}

func TestLinesStopWhenAsked(t *testing.T) {
	text := strings.Repeat(compact(minimal())+"\n", 5)
	n := 0
	for range Lines(strings.NewReader(text), "past.jsonl", vocabulary(t)) {
		if n++; n == 2 {
			break
		}
	}
	if n != 2 {
		t.Error(n)
	}
}

func TestLinesReportAStreamThatBreaksOff(t *testing.T) {
	text := compact(minimal("017", "1")) + "\n" + compact(minimal("017", "2")) + "\n"
	ids, diags := collect(t, io.MultiReader(strings.NewReader(text), iotest.ErrReader(errors.New("connection lost"))))
	if len(ids) != 2 || !strings.HasPrefix(diags.Text(), "past.jsonl:3:1: error: The stream can't be read on: connection lost.\n") {
		t.Errorf("%v %s", ids, diags.Text())
	}
}

// endless gives n bytes of one line.
type endless struct{ n int }

func (e *endless) Read(p []byte) (int, error) {
	if e.n == 0 {
		return 0, io.EOF
	}
	n := min(len(p), e.n)
	for i := range p[:n] {
		p[i] = 'x'
	}
	e.n -= n
	return n, nil
}

func TestALongLineIsNotHeldInMemory(t *testing.T) {
	const size = 200 << 20
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	_, diags := collect(t, &endless{size})
	runtime.ReadMemStats(&after)
	if want := fmt.Sprintf("This line has %d bytes;", size); !strings.Contains(diags.Text(), want) {
		t.Error(diags.Text())
	}
	if got := after.TotalAlloc - before.TotalAlloc; got > 32<<20 {
		t.Errorf("%d bytes were allocated for it", got)
	}
}
