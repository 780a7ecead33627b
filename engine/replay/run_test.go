package replay_test

import (
	"context"
	"errors"
	"io"
	"reflect"
	"runtime"
	"testing"

	"crus/engine/replay"
)

// Several goroutines count what one counts, and results come in the order of the source.
func TestRunInOrder(t *testing.T) {
	p := replay.New(benchSpace(t))
	a := drawArchive(20_000, 5)
	run := func(workers int) (*replay.Tally, []float64) {
		var firsts []float64
		tally, err := p.Run(context.Background(), a.source(a.cases()), replay.Options{Workers: workers}, func(r *replay.Result) error {
			firsts = append(firsts, r.Block.Value[10][0])
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
		return tally, firsts
	}
	one, order := run(1)
	if one.Cases != 20_000 || one.Limbs != 20_000 {
		t.Fatalf("%d cases, %d limbs", one.Cases, one.Limbs)
	}
	for i, at := range order {
		if x, ok := a.value(10, i*replay.BlockRows); ok && x != at {
			t.Fatalf("block %d begins with %v, not %v", i, at, x)
		}
	}
	four, _ := run(4)
	if !reflect.DeepEqual(one, four) {
		t.Error("four goroutines count otherwise than one")
	}
}

// A run that is stopped gives what it counted, and says how many assessments that is.
func TestRunStops(t *testing.T) {
	p := replay.New(benchSpace(t))
	a := drawArchive(50_000, 5)
	ctx, stop := context.WithCancel(context.Background())
	defer stop()
	collected := int64(0)
	part, err := p.Run(ctx, a.source(a.cases()), replay.Options{Workers: 3}, func(r *replay.Result) error {
		if collected += int64(r.Block.Cases); collected >= 5*replay.BlockRows {
			stop()
		}
		return nil
	})
	if !errors.Is(err, context.Canceled) || part.Cases != collected || collected >= 50_000 || part.Rules[0].Of != collected {
		t.Fatalf("%v after %d of %d collected", err, part.Cases, collected)
	}
	whole, err := p.Run(context.Background(), a.source(int(collected)), replay.Options{}, nil)
	if err != nil || !reflect.DeepEqual(part, whole) {
		t.Errorf("what was counted is not what the first %d give (%v)", collected, err)
	}
}

// failing is a source that fails when a block is filled, or taken.
type failing struct {
	stretch
	atFill int
	at     int
}

var errBroken = errors.New("broken")

func (f *failing) Next() (replay.Fill, error) {
	f.at++
	fill, err := f.stretch.Next()
	switch {
	case err != nil:
		return nil, err
	case f.at == f.atFill:
		return func(*replay.Block) error { return errBroken }, nil
	}
	return fill, nil
}

// What goes wrong with a source, or with the results, ends the run, and what came before is counted.
func TestRunFails(t *testing.T) {
	p := replay.New(benchSpace(t))
	a := drawArchive(20_000, 5)
	for _, workers := range []int{1, 3} {
		tally, err := p.Run(context.Background(), &failing{stretch: *a.source(a.cases()), atFill: 4}, replay.Options{Workers: workers}, nil)
		if !errors.Is(err, errBroken) || tally.Cases != 3*replay.BlockRows {
			t.Errorf("a source that fails in its fourth block: %v after %d", err, tally.Cases)
		}
		n := 0
		tally, err = p.Run(context.Background(), a.source(a.cases()), replay.Options{Workers: workers}, func(*replay.Result) error {
			if n++; n == 3 {
				return errBroken
			}
			return nil
		})
		if !errors.Is(err, errBroken) || tally.Cases != 2*replay.BlockRows {
			t.Errorf("results that can't be taken: %v after %d", err, tally.Cases)
		}
	}
	if tally, err := p.Run(context.Background(), a.source(0), replay.Options{}, nil); err != nil || tally.Cases != 0 {
		t.Errorf("nothing: %v, %d", err, tally.Cases)
	}
	if _, err := (&failing{}).Next(); err != io.EOF {
		t.Errorf("an empty source gives %v", err)
	}
}

// Memory does not grow with the number of assessments.
func TestRunMemory(t *testing.T) {
	p := replay.New(benchSpace(t))
	a := drawArchive(2000, 5)
	allocated := func(times int) uint64 {
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		if _, err := p.Run(context.Background(), &again{a: a, times: times}, replay.Options{Workers: 2}, nil); err != nil {
			t.Fatal(err)
		}
		runtime.ReadMemStats(&after)
		return after.TotalAlloc - before.TotalAlloc
	}
	allocated(1)
	few, many := allocated(10), allocated(100)
	if perCase := (float64(many) - float64(few)) / (90 * 2000); perCase > 16 {
		t.Errorf("%.0f bytes are allocated for each further assessment", perCase)
	}
}

// again gives an archive several times.
type again struct {
	a     *archive
	now   *stretch
	times int
}

func (s *again) Next() (replay.Fill, error) {
	for {
		if s.now != nil {
			if fill, err := s.now.Next(); err == nil {
				return fill, nil
			}
		}
		if s.times == 0 {
			return nil, io.EOF
		}
		s.times--
		s.now = s.a.source(s.a.cases())
	}
}
