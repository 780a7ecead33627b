package cell

import (
	"math"

	"crus/engine/biomech"
	"crus/engine/clinical"
)

// TermOp is what a term does.
type TermOp uint8

// The operations. All but Differ and Same come out as conditions work them out.
const (
	Number TermOp = iota // the constant X
	Read                 // the value of axis Axis
	Sum                  // A + B
	Less                 // A − B
	Minus                // −A
	Times                // A·B·Num/Den
	Over                 // (A·Num/Den)/B; not known where B is 0
	Size                 // the absolute value of A
	Least                // the least of Of
	Most                 // the greatest of Of
	Choose               // A where node Node is true, B where it is false
	Call                 // what Formula gives of Of
	Holds                // 1 where node Node is true, 0 where it is false
	Differ               // A − B exactly, to compare the two
	Asked                // what cel-go gives of unclear part X
	Same                 // 0 where A and B are equal, 1 where they are not
)

// Term is a number worked out of the values of axes, in the units that [Axis] describes. NaN stands for what is
// not known: because something is not recorded, or because it can't be worked out.
type Term struct {
	Op       TermOp
	Index    int     // its place in Space.Terms, after those of its parts
	X        float64 // see Op
	Num, Den float64 // see Op
	Axis     int
	Node     int
	A, B     *Term
	Of       []*Term
	Formula  *biomech.Formula
	Kept     bool               // of a quantity: rounded as quantities are, and too large a number is none
	Grades   [][]string         // of Formula: the labels of each input that is a grade, and the words of each that is one
	Result   map[string]float64 // of Formula: the rank of each grade that it can give
}

// values is what a term reads.
type values interface {
	axis(i int) float64
	recorded(i int) bool
	truth(node int) Truth
	term(t *Term) float64 // with what was worked out before
}

// work works a term out; its parts are asked for through v.
func (t *Term) work(s *Space, v values) float64 {
	switch t.Op {
	case Number:
		return t.X
	case Read:
		return v.axis(t.Axis)
	case Choose:
		switch v.truth(t.Node) {
		case Yes:
			return v.term(t.A)
		case No:
			return v.term(t.B)
		}
		return math.NaN()
	case Holds:
		switch v.truth(t.Node) {
		case Yes:
			return 1
		case No:
			return 0
		}
		return math.NaN()
	case Asked:
		if x, ok := onAxis(s.Unclear[int(t.X)].ask.run(s, v)); ok {
			return x
		}
		return math.NaN()
	case Least, Most, Call:
		in := make([]float64, len(t.Of))
		for i, x := range t.Of {
			in[i] = v.term(x)
		}
		return t.Apply(in)
	case Minus, Size:
		return t.Apply([]float64{v.term(t.A)})
	}
	return t.two(v.term(t.A), v.term(t.B))
}

// Apply works a term out of the values of its parts (A and B, or Of), for all operations but Number, Read, Choose,
// Holds and Asked.
func (t *Term) Apply(in []float64) float64 {
	switch t.Op {
	case Minus:
		if t.Kept && !clinical.Calculable(in[0]) {
			return math.NaN()
		}
		return 0 - in[0]
	case Size:
		return math.Abs(in[0])
	case Least, Most:
		best := in[0]
		for _, x := range in {
			switch {
			case math.IsNaN(x):
				return x
			case t.Op == Least && x < best, t.Op == Most && x > best:
				best = x
			}
		}
		return best
	case Call:
		return t.formula(in)
	}
	return t.two(in[0], in[1])
}

func (t *Term) two(a, b float64) float64 {
	switch t.Op {
	case Differ:
		return a - b
	case Same:
		switch {
		case math.IsNaN(a) || math.IsNaN(b):
			return math.NaN()
		case a == b:
			return 0
		}
		return 1
	}
	if t.Kept && (!clinical.Calculable(a) || !clinical.Calculable(b)) { // not of a length of time without end
		return math.NaN()
	}
	var x float64
	switch t.Op {
	case Sum:
		x = a + b
	case Less:
		x = a - b
	case Times:
		x = a * b * t.Num / t.Den
	case Over:
		if b == 0 {
			return math.NaN()
		}
		x = a * t.Num / t.Den / b
	}
	if t.Kept {
		x, _ = clinical.Kept(x)
	}
	return x
}

func (t *Term) formula(in []float64) float64 {
	given := make([]biomech.Value, len(in))
	for i, x := range in {
		if math.IsNaN(x) {
			return x
		}
		given[i].Number = x
		if words := t.Grades[i]; words != nil {
			if x < 0 || int(x) >= len(words) {
				return math.NaN()
			}
			given[i] = biomech.Value{Word: words[int(x)]}
		}
	}
	out, err := t.Formula.Of(given...)
	switch {
	case err != nil:
		return math.NaN()
	case t.Result != nil:
		if rank, ok := t.Result[out.Word]; ok {
			return rank
		}
		return math.NaN()
	case t.Formula.Result == biomech.Count:
		return math.Round(out.Number)
	case t.Formula.Result == biomech.YesNo:
		if out.Number != 0 {
			return 1
		}
		return 0
	}
	q, err := clinical.NewQuantity(out.Number, clinical.Dimension(t.Formula.Result).Base())
	if err != nil {
		return math.NaN()
	}
	return q.Base()
}
