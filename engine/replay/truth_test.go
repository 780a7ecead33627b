package replay_test

// What the conditions that are written by hand stand on: values that may not be known, and three truths. It is written
// for speed: a truth is two bits, true and false, and there are no branches, since what is measured of a limb can't be
// foreseen. (With an enumeration and min and max, which the compiler makes branches of, it takes several times as long.)

type truth uint8

const (
	unknown truth = 0
	yes     truth = 1
	no      truth = 2
	either        = yes | no
)

func and(a, b truth) truth { return a&b&yes | (a|b)&no }
func or(a, b truth) truth  { return (a|b)&yes | a&b&no }
func not(a truth) truth    { return a>>1 | a<<1&no }

// answer is yes or no where the value is known: known is either there, and 0 elsewhere.
func answer(known truth, holds bool) truth {
	var b truth
	if holds {
		b = 1
	}
	return (no - b) & known
}

// number is a quantity or a count.
type number struct {
	value float64
	known truth
}

func (n number) less(x float64) truth    { return answer(n.known, n.value < x) }
func (n number) atMost(x float64) truth  { return answer(n.known, n.value <= x) }
func (n number) more(x float64) truth    { return answer(n.known, n.value > x) }
func (n number) atLeast(x float64) truth { return answer(n.known, n.value >= x) }

// step is the rank of a grade, or the place of an option.
type step struct {
	rank  int8
	known truth
}

func (s step) less(x int8) truth    { return answer(s.known, s.rank < x) }
func (s step) atMost(x int8) truth  { return answer(s.known, s.rank <= x) }
func (s step) more(x int8) truth    { return answer(s.known, s.rank > x) }
func (s step) atLeast(x int8) truth { return answer(s.known, s.rank >= x) }
func (s step) is(x int8) truth      { return answer(s.known, s.rank == x) }
