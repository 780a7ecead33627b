package cell

import (
	"math"
	"strings"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/reason"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// asker has cel-go answer a part of a condition or formula.
type asker struct {
	piece *reason.Piece
	reads []reading // in the order of the piece's names
}

// reading is what one name stands for.
type reading struct {
	axis     int // of a measure
	recorded bool
	fact     int // -1 of a measure
}

// reading finds what a name in an expression stands for.
func (c *compiler) reading(x *ruleset.Expr, name string) reading {
	path, recorded := strings.CutPrefix(name, "recorded.")
	for _, r := range x.Reads {
		if r.Path != path {
			continue
		}
		if r.Fact != nil {
			return reading{fact: c.facts[r.Fact]}
		}
		return reading{axis: c.axis(r.Measure, r.Other), recorded: recorded, fact: -1}
	}
	return reading{fact: -1}
}

// run answers, with what is read taken from v. The result may be unknown or an error.
func (a *asker) run(s *Space, v values) ref.Val {
	in := make([]ref.Val, len(a.reads))
	for i, r := range a.reads {
		switch {
		case r.fact < 0 && r.recorded:
			in[i] = types.Bool(v.recorded(r.axis))
		case r.fact < 0:
			in[i] = s.Axes[r.axis].celValue(v.axis(r.axis))
		case s.Facts[r.fact].Term != nil:
			in[i] = quantity(v.term(s.Facts[r.fact].Term), *s.Facts[r.fact].Quantity)
		default:
			switch v.truth(s.Facts[r.fact].Node) {
			case Yes:
				in[i] = types.True
			case No:
				in[i] = types.False
			}
		}
	}
	return a.piece.Run(in)
}

// quantity gives a base number as conditions see it; nil where it is not known.
func quantity(base float64, u clinical.Unit) ref.Val {
	if q, ok := clinical.OfBase(base, u); ok {
		return q
	}
	return nil
}

// celValue gives a value of a measure's axis as conditions see it; nil where it is not known.
func (a *Axis) celValue(x float64) ref.Val {
	if math.IsNaN(x) {
		return nil
	}
	switch m := a.Measure; m.Kind {
	case vocab.Quantity:
		return quantity(x, m.Unit)
	case vocab.Grade:
		if g, ok := m.Scale.At(int(x)); ok {
			return g
		}
	case vocab.Option:
		if i := int(x); i >= 0 && i < len(m.Options) {
			return types.String(m.Options[i])
		}
	case vocab.YesNo:
		return types.Bool(x == 1)
	case vocab.Count:
		return types.Int(x)
	case vocab.Date:
		return dateBefore(clinical.Date{}, x)
	}
	return nil
}

// secondsADay turns the time since a date into days.
const secondsADay = 86400

// dateBefore gives the day that lies so many seconds before another, as it is seen from there.
func dateBefore(day clinical.Date, seconds float64) clinical.Date {
	if !clinical.Calculable(seconds) {
		return clinical.Never()
	}
	return day.Before(int(math.Round(seconds / secondsADay))).AsOf(day)
}

// tabulate asks an unclear part of a single measure with few values about each of them.
func (c *compiler) tabulate(u *Unclear) (asking, bool) {
	if len(u.ask.reads) != 1 || u.ask.reads[0].fact >= 0 || u.ask.reads[0].recorded {
		return asking{}, false
	}
	a := c.Axes[u.ask.reads[0].axis]
	n := 0
	switch a.Measure.Kind {
	case vocab.Option:
		n = len(a.Measure.Options)
	case vocab.YesNo:
		n = 2
	case vocab.Grade:
		n = len(a.Measure.Scale.Grades)
	default:
		return asking{}, false
	}
	var yes []float64
	for x := range n {
		switch u.ask.piece.Run([]ref.Val{a.celValue(float64(x))}) {
		case types.True:
			yes = append(yes, float64(x))
		case types.False:
		default:
			return asking{}, false
		}
	}
	return oneOf(a.Index, yes), true
}

// unclearTerm makes a term of a formula that cel-go has to work out.
func (c *compiler) unclearTerm(p place) *Term {
	u := c.newUnclear(p)
	if u == nil {
		return c.make(Term{Op: Number, X: math.NaN()})
	}
	return c.make(Term{Op: Asked, X: float64(c.keep(u))})
}

// newUnclear prepares a part for cel-go; nil where that can't be, which is a fault of the program.
func (c *compiler) newUnclear(p place) *Unclear {
	piece, err := reason.NewPiece(p.x, p.e)
	if err != nil {
		c.failure = err
		return nil
	}
	u := &Unclear{Expr: p.x, ID: p.e.ID(), ask: &asker{piece: piece}}
	inputs := map[int]bool{}
	for _, name := range piece.Names {
		n := c.reading(p.x, name)
		u.ask.reads = append(u.ask.reads, n)
		c.inputsOf(n, inputs)
	}
	u.Inputs = sorted(inputs)
	for _, i := range u.Inputs {
		u.Limb = u.Limb || c.Axes[i].Limb
	}
	return u
}

// keep notes an unclear part and gives its number.
func (c *compiler) keep(u *Unclear) int {
	c.Unclear = append(c.Unclear, u)
	return len(c.Unclear) - 1
}
