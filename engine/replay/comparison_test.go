//go:build unix

package replay_test

import (
	"context"
	"fmt"
	"os"
	"slices"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"crus/engine/replay"
)

// used is the processor's time that the process has taken. It tells two ways of working apart even where the machine is
// busy with something else.
func used() time.Duration {
	var u syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &u); err != nil {
		return 0
	}
	return time.Duration(u.Utime.Nano() + u.Stime.Nano())
}

// peak is the most memory that the process has held so far, in MiB.
func peak() int {
	status, err := os.ReadFile("/proc/self/status")
	if err != nil {
		return 0
	}
	for line := range strings.Lines(string(status)) {
		if f := strings.Fields(line); len(f) > 1 && f[0] == "VmHWM:" {
			kib, _ := strconv.Atoi(f[1])
			return kib / 1024
		}
	}
	return 0
}

// contender is one of what is compared.
type contender struct {
	name  string
	cases int
	run   func()
	times []float64 // nanoseconds a case, of each turn
}

// BenchmarkComparison times replay against cel-go row by row, against the same with partial evaluation, and against the
// same conditions written by hand as Go over structs: in turn, on one core each, by the processor's time. The rivals work
// out the conditions alone, replay the whole: rules, cautions, choices, and what is provisional. Last it carries out a
// million cases on all cores.
func BenchmarkComparison(b *testing.B) {
	const million, turns = 1_000_000, 7
	s := benchSpace(b)
	p := replay.New(s)
	a := drawArchive(million, 5)
	for b.Loop() {
		run := func(cases, workers int) {
			if _, err := p.Run(context.Background(), a.source(cases), replay.Options{Workers: workers}, nil); err != nil {
				b.Fatal(err)
			}
		}
		run(50_000, 1)
		var rates []float64
		for range 5 {
			start := time.Now()
			run(million, 0)
			rates = append(rates, million/time.Since(start).Seconds())
		}
		memory := peak()

		whole, partial := newBareCEL(b, false), newBareCEL(b, true)
		full, some, hand := boxed(drawArchive(2000, 0), 2000), boxed(a, 2000), limbs(a, 20_000)
		var out [drawnRules]truth
		all := []*contender{
			{name: "replay, whole", cases: 200_000, run: func() { run(200_000, 1) }},
			{name: "Go by hand, conditions", cases: 10 * len(hand), run: func() {
				for range 10 {
					for i := range hand {
						hand[i].findings()
						hand[i].rules(&out)
					}
				}
			}},
			{name: "cel-go, conditions", cases: len(full), run: func() {
				for i := range full {
					whole.whole(b, full[i], &out)
				}
			}},
			{name: "cel-go partial, conditions", cases: len(some), run: func() {
				for i := range some {
					partial.partial(b, some[i], &out)
				}
			}},
		}
		for range turns {
			for _, c := range all {
				start := used()
				c.run()
				c.times = append(c.times, float64(used()-start)/float64(c.cases))
			}
		}
		fmt.Printf("\n| %-28s | %12s | %20s |\n|---|---|---|\n", fmt.Sprintf("%d rules, %d measures, 5 %% missing, one core", drawnRules, len(drawnMeasures())), "cases/s", "ns per rule and case")
		for _, c := range all {
			t := median(c.times)
			fmt.Printf("| %-28s | %12.0f | %20.2f |\n", c.name, 1e9/t, t/drawnRules)
		}
		times := func(c *contender) float64 {
			var out []float64
			for i := range c.times {
				out = append(out, c.times[i]/all[0].times[i])
			}
			return median(out)
		}
		rate := median(rates)
		fmt.Printf("ratio replay cel_partial=%.0f cel=%.0f go=%.1f cases_per_s=%.0f rss_mib=%d\n", times(all[3]), times(all[2]), times(all[1]), rate, memory)
		b.ReportMetric(rate, "cases/s")
	}
}

func median(x []float64) float64 {
	x = slices.Clone(x)
	slices.Sort(x)
	return x[len(x)/2]
}
