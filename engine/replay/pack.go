package replay

import (
	"math"

	"crus/engine/cell"
	"crus/engine/vocab"
)

// missing is the byte of what is not known; the others are numbers of cells.
const missing = 0x80

// packer turns the values of an axis into the bits of the numbers of their cells, and into whether they are known.
// Quantities go through a grid so fine that at most two cuts lie in each of its steps: x < 5 and x <= 5 are two.
type packer struct {
	axis   *cell.Axis
	width  int
	lo     float64
	scale  float64
	steps  []step
	end    float64 // how many steps
	direct []uint8 // of a whole number less lo
}

// step is a stretch of a grid: the cell at its beginning, and where the next two begin, if they do in the stretch.
type step struct {
	cuts [2]float64
	cell uint8
}

// newPacker makes the packer of an axis.
func newPacker(a *cell.Axis) *packer {
	p := &packer{axis: a, width: width(a), scale: 1}
	if a.Measure == nil || p.width > 7 {
		return p
	}
	lo, hi := a.Range()
	if !(hi > lo) || hi-lo > 1<<40 {
		return p
	}
	switch a.Measure.Kind {
	case vocab.Quantity:
		for n := 32; n <= 4096 && p.steps == nil; n *= 2 {
			p.grid(lo, hi, n)
		}
	case vocab.Grade, vocab.Option, vocab.YesNo, vocab.Count:
		p.lo = lo
		if hi-lo > 4096 {
			return p
		}
		for x := lo; x <= hi; x++ {
			p.direct = append(p.direct, uint8(a.Cell(x)))
		}
	}
	return p
}

// grid lays n stretches from lo to hi, unless three cuts fall into one. Where a value lies on the grid is worked out alike for
// cuts and for values, and never falls where values rise; so rounding does no harm.
func (p *packer) grid(lo, hi float64, n int) {
	p.lo, p.scale = lo, float64(n)/(hi-lo)
	steps := make([]step, n)
	for i := range steps {
		steps[i].cuts = [2]float64{math.Inf(1), math.Inf(1)}
	}
	now := 0 // the cell at the beginning of the grid
	for _, c := range p.axis.Cuts {
		at := c.At
		if c.Below {
			at = math.Nextafter(at, math.Inf(1))
		}
		y := (at - p.lo) * p.scale
		switch {
		case at <= lo:
			now++
			continue
		case y >= float64(n): // it lies beyond the grid
			continue
		}
		s := &steps[int(y)]
		switch {
		case math.IsInf(s.cuts[0], 1):
			s.cuts[0] = at
		case math.IsInf(s.cuts[1], 1):
			s.cuts[1] = at
		default:
			return
		}
	}
	for i := range steps {
		steps[i].cell = uint8(now)
		for _, at := range steps[i].cuts {
			if !math.IsInf(at, 1) {
				now++
			}
		}
	}
	p.steps, p.end = steps, float64(n)
}

// slow gives the byte of any value.
func (p *packer) slow(x float64) uint8 {
	if math.IsNaN(x) {
		return missing
	}
	if c := p.axis.Cell(x); c >= 0 {
		return uint8(c)
	}
	return missing
}

// The bits of eight bytes, once each is brought to its lowest place.
const (
	ones   = 0x0101010101010101
	gather = 0x0102040810204080
)

// packed are the planes of up to 64 values: the bits of the numbers of their cells, the lowest first; and whether they are
// known.
type packed struct {
	bits  [maxWidth]uint64
	known uint64
}

// maxWidth is the most bits that the number of a cell has: conditions have fewer than 2²⁴ constants.
const maxWidth = 24

// pack packs up to 64 values.
func (p *packer) pack(values []float64, out *packed) {
	if p.width > 7 {
		p.packWide(values, out)
		return
	}
	for k := range p.width {
		out.bits[k] = 0
	}
	lost := uint64(0)
	for g := 0; g < len(values); g += 8 {
		var bytes uint64
		if len(values)-g >= 8 {
			bytes = p.bytes((*[8]float64)(values[g:]))
		} else {
			var last [8]float64
			copy(last[:], values[g:])
			bytes = p.bytes(&last)
		}
		for k := range p.width {
			out.bits[k] |= (bytes >> k & ones) * gather >> 56 << g
		}
		lost |= (bytes >> 7 & ones) * gather >> 56 << g
	}
	out.known = ^lost
	if n := len(values); n < 64 { // what lies behind them is no row
		out.known &= 1<<n - 1
	}
}

// bytes gives the bytes of eight values, the first one lowest.
func (p *packer) bytes(values *[8]float64) (out uint64) {
	switch {
	case p.steps != nil:
		lo, scale, end, steps := p.lo, p.scale, p.end, p.steps
		for _, x := range values {
			var c uint8
			if y := (x - lo) * scale; x >= lo && y < end {
				s := &steps[int(y)]
				c = s.cell + above(x, s.cuts[0]) + above(x, s.cuts[1])
			} else {
				c = p.slow(x)
			}
			out = out>>8 | uint64(c)<<56
		}
	case p.direct != nil:
		lo, direct := p.lo, p.direct
		for _, x := range values {
			var c uint8
			if at := int(x - lo); uint(at) < uint(len(direct)) {
				c = direct[at]
			} else {
				c = p.slow(x)
			}
			out = out>>8 | uint64(c)<<56
		}
	default:
		for _, x := range values {
			out = out>>8 | uint64(p.slow(x))<<56
		}
	}
	return out
}

// packWide packs the values of an axis with more than 128 cells.
func (p *packer) packWide(values []float64, out *packed) {
	*out = packed{}
	for i, x := range values {
		if math.IsNaN(x) {
			continue
		}
		c := p.axis.Cell(x)
		if c < 0 {
			continue
		}
		out.known |= 1 << i
		for k := range p.width {
			out.bits[k] |= uint64(c>>k&1) << i
		}
	}
}

// above is 1 where x is at least cut, without a branch.
func above(x, cut float64) uint8 {
	var n uint8
	if x >= cut {
		n = 1
	}
	return n
}
