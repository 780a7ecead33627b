package replay

import (
	"context"
	"errors"
	"io"
	"runtime"
	"sync"
)

// Source gives blocks of assessments. Next is called by one goroutine at a time and says how the next block is filled,
// which is then done by several goroutines at once: so what has to be done in order, such as reading lines, belongs in
// Next, and what takes long, such as understanding them, in Fill. At the end Next gives io.EOF.
type Source interface {
	Next() (Fill, error)
}

// Fill fills a block, which is empty.
type Fill func(b *Block) error

// Options of a run; the zero value is fine.
type Options struct {
	Workers  int               // goroutines; 0: one for each processor
	Progress func(cases int64) // called after each block with the number of cases so far, by one goroutine at a time
}

// Run carries the program out on all assessments of a source and gives the results of each block to collect, in the order
// of the source; collect may be nil. Memory does not grow with the number of assessments. The tally counts what was
// carried out and collected, also where an error ended the run: that of the source, of collect, or of ctx.
func (p *Program) Run(ctx context.Context, src Source, o Options, collect func(*Result) error) (*Tally, error) {
	n := o.Workers
	if n == 0 {
		n = runtime.GOMAXPROCS(0)
	}
	r := &run{p: p, ctx: ctx, src: src, o: o, collect: collect, tally: p.newTally()}
	r.turn = sync.NewCond(&r.mu)
	var all sync.WaitGroup
	for range n {
		all.Go(r.work)
	}
	all.Wait()
	if errors.Is(r.err, io.EOF) {
		return r.tally, nil
	}
	return r.tally, r.err
}

type run struct {
	p       *Program
	ctx     context.Context
	src     Source
	o       Options
	collect func(*Result) error
	tally   *Tally

	mu    sync.Mutex
	turn  *sync.Cond
	next  int   // the number of the next block to be taken
	ready int   // the number of the next block to be collected
	err   error // what ended the taking of blocks
	last  int   // where err is set: blocks from this number on are not collected
}

// work takes blocks until there are none.
func (r *run) work() {
	w, b, t := r.p.newWorker(), NewBlock(r.p.space), r.p.newTally()
	for {
		i, fill := r.take()
		if fill == nil {
			break
		}
		b.Reset()
		err := fill(b)
		if err == nil {
			if err = r.ctx.Err(); err == nil {
				w.work(b)
			}
		}
		if !r.give(i, w.result, t, err) {
			break
		}
	}
	r.mu.Lock()
	defer r.mu.Unlock()
	r.tally.add(t)
}

// take gives the next block to be filled, and its number; nil where there is none.
func (r *run) take() (int, Fill) {
	r.mu.Lock()
	defer r.mu.Unlock()
	if r.err != nil {
		return 0, nil
	}
	fill, err := r.src.Next()
	if err == nil {
		err = r.ctx.Err()
	}
	if err != nil {
		r.end(err, r.next)
		return 0, nil
	}
	r.next++
	return r.next - 1, fill
}

// end notes what ends the run, from a block on: of several, the first block counts.
func (r *run) end(err error, from int) {
	if r.err == nil || from < r.last {
		r.err, r.last = err, from
	}
}

// give waits for a block's turn and gives its results away; false where it comes too late.
func (r *run) give(i int, result *Result, t *Tally, err error) bool {
	r.mu.Lock()
	defer r.mu.Unlock()
	for r.ready != i {
		r.turn.Wait()
	}
	defer r.turn.Broadcast()
	r.ready++
	if r.err != nil && i >= r.last {
		return false
	}
	if err == nil && r.collect != nil {
		err = r.collect(result)
	}
	if err != nil {
		r.end(err, i)
		return false
	}
	t.count(result)
	r.tally.Cases += int64(result.Block.Cases)
	if r.o.Progress != nil {
		r.o.Progress(r.tally.Cases)
	}
	return true
}
