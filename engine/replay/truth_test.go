package replay_test

// What the conditions that are written by hand stand on: values that may not be known, and three truths.

type truth int8

const (
	no truth = iota
	unknown
	yes
)

func and(a, b truth) truth { return min(a, b) }
func or(a, b truth) truth  { return max(a, b) }
func not(a truth) truth    { return yes - a }

// number is a quantity or a count.
type number struct {
	value float64
	known bool
}

func (n number) less(x float64) truth    { return answer(n.known, n.value < x) }
func (n number) atMost(x float64) truth  { return answer(n.known, n.value <= x) }
func (n number) more(x float64) truth    { return answer(n.known, n.value > x) }
func (n number) atLeast(x float64) truth { return answer(n.known, n.value >= x) }

// step is the rank of a grade, or the place of an option.
type step struct {
	rank  int8
	known bool
}

func (s step) less(x int8) truth    { return answer(s.known, s.rank < x) }
func (s step) atMost(x int8) truth  { return answer(s.known, s.rank <= x) }
func (s step) more(x int8) truth    { return answer(s.known, s.rank > x) }
func (s step) atLeast(x int8) truth { return answer(s.known, s.rank >= x) }
func (s step) is(x int8) truth      { return answer(s.known, s.rank == x) }

func answer(known, holds bool) truth {
	if !known {
		return unknown
	}
	if holds {
		return yes
	}
	return no
}
