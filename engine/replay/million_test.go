package replay_test

import (
	"context"
	"io"
	"math"
	"math/rand/v2"
	"os"
	"testing"

	"crus/engine/assess"
	"crus/engine/cell"
	"crus/engine/reason"
	"crus/engine/replay"
	"crus/engine/ruleset"
)

// archive is many drawn assessments of one limb each, kept as records are: whole half units, 2 bytes a value.
type archive struct {
	columns [][]int16 // of each measure

}

// notRecorded stands in a column for what is missing.
const notRecorded = math.MinInt16

// drawArchive draws assessments in which so many of a hundred values are missing.
func drawArchive(cases, missing int) *archive {
	a := &archive{}
	d := rand.New(rand.NewPCG(4, 4))
	for _, m := range drawnMeasures() {
		col := make([]int16, cases)
		for i := range col {
			lo, hi, step := m.lo, m.hi, 1
			switch m.kind {
			case "quantity":
				step = 2
			case "yes_no":
				lo, hi = 0, 1
			case "grade", "option":
				lo, hi = 0, len(m.words)-1
			}
			col[i] = int16(2*lo + 2/step*d.IntN(step*(hi-lo)+1))
			if d.IntN(100) < missing {
				col[i] = notRecorded
			}
		}
		a.columns = append(a.columns, col)
	}
	return a
}

func (a *archive) cases() int { return len(a.columns[0]) }

// value gives a recorded value; false where it is missing.
func (a *archive) value(measure, i int) (float64, bool) {
	v := a.columns[measure][i]
	return float64(v) / 2, v != notRecorded
}

// source gives the archive from its beginning, so many cases of it.
func (a *archive) source(cases int) *stretch { return &stretch{a: a, end: cases} }

type stretch struct {
	a   *archive
	at  int
	end int
}

func (s *stretch) Next() (replay.Fill, error) {
	if s.at == s.end {
		return nil, io.EOF
	}
	from := s.at
	n := min(replay.BlockRows, s.end-from)
	s.at += n
	return func(b *replay.Block) error {
		for i, col := range s.a.columns {
			to := b.Value[i][:n]
			for k, v := range col[from : from+n] {
				if to[k] = float64(v) / 2; v == notRecorded {
					to[k] = math.NaN()
				}
			}
		}
		b.Single(n)
		return nil
	}, nil
}

// benchSpace reads the ruleset of the benchmarks. Its measures' axes are in the order of drawnMeasures.
func benchSpace(t testing.TB) *cell.Space {
	t.Helper()
	rs, diags := ruleset.Library{Embedded: os.DirFS("testdata/bench")}.Ruleset("bench")
	if diags.HasErrors() {
		t.Fatal(diags.Text())
	}
	e, err := reason.New(rs)
	if err != nil {
		t.Fatal(err)
	}
	s, err := cell.New(e)
	if err != nil {
		t.Fatal(err)
	}
	for i, m := range drawnMeasures() {
		if s.Axes[i].Path != "limb."+m.name {
			t.Fatalf("axis %d is %s, not %s", i, s.Axes[i].Path, m.name)
		}
	}
	return s
}

// row gives one case of the archive as a row of the space.
func (a *archive) row(s *cell.Space, i int) cell.Row {
	r := s.Blank()
	for m := range a.columns {
		if x, ok := a.value(m, i); ok {
			r.Value[m], r.Recorded[m] = x, true
		}
	}
	return r
}

// The ruleset of the benchmarks comes out as the reference says.
func TestBenchAgrees(t *testing.T) {
	s := benchSpace(t)
	a := drawArchive(200, 5)
	p := replay.New(s)
	sharper := 0
	_, err := p.Run(context.Background(), a.source(a.cases()), replay.Options{}, func(r *replay.Result) error {
		for i := range r.Block.Cases {
			x, err := s.Assessment("drawn", "2026-10-02", map[assess.Side]cell.Row{assess.Left: a.row(s, i)})
			if err != nil {
				return err
			}
			for _, d := range onCase(s, r, i, x, &sharper) {
				t.Error(d)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if sharper > 0 {
		t.Errorf("%d results are settled that the reference leaves open", sharper)
	}
}

// BenchmarkReplay carries the whole ruleset out, choices and what is provisional included, on one core.
func BenchmarkReplay(b *testing.B) {
	s := benchSpace(b)
	p := replay.New(s)
	a := drawArchive(200_000, 5)
	n := 0
	for b.Loop() {
		t, err := p.Run(context.Background(), a.source(a.cases()), replay.Options{Workers: 1}, nil)
		if err != nil {
			b.Fatal(err)
		}
		n += int(t.Cases)
	}
	b.ReportMetric(float64(n)/b.Elapsed().Seconds(), "cases/s")
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(n)/drawnRules, "ns/rule")
}
