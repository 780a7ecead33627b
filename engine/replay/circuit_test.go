package replay

import (
	"math/rand/v2"
	"slices"
	"testing"
	"unsafe"
)

// The ways of running a circuit come to the same.
func TestCircuitRunsAlike(t *testing.T) {
	if got := unsafe.Sizeof(gate{}); got != 16 {
		t.Fatalf("a gate has %d bytes; wide_amd64.s counts on 16", got)
	}
	r := rand.New(rand.NewPCG(1, 2))
	for range 50 {
		b := newBuilder()
		all := []ref{never, always}
		for range 6 {
			all = append(all, b.input())
		}
		one := func() ref { return all[r.IntN(len(all))] ^ ref(r.IntN(2)) }
		for range 200 {
			all = append(all, []func() ref{
				func() ref { return b.and(one(), one()) },
				func() ref { return b.or(one(), one()) },
				func() ref { return b.xor(one(), one()) },
				func() ref { return b.choose(one(), one(), one()) },
				func() ref { return b.pool(one()) },
			}[r.IntN(5)]())
		}
		c := b.finish(all)
		pairs := make([]uint64, words)
		first := c.memory(words)
		for i := range words {
			pairs[i] = r.Uint64() &^ (1 << 63)
		}
		for i := range c.inputs * words {
			first.all[i] = r.Uint64()
		}
		second, third := planes{words, slices.Clone(first.all)}, planes{words, slices.Clone(first.all)}
		c.run(first, words, pairs)
		c.wide(second, pairs)
		c.plainWide(third, pairs)
		for i, out := range c.out {
			want := naive(b, all[i], first, pairs)
			for k, p := range []planes{first, second, third} {
				if !slices.Equal(p.at(out), want) {
					t.Fatalf("result %d of way %d differs", i, k)
				}
			}
		}
	}
}

// naive works a plane out from the inputs alone.
func naive(b *builder, r ref, in planes, pairs []uint64) []uint64 {
	out := make([]uint64, words)
	g := b.gates[r.gate()]
	switch g.op {
	case opInput:
		copy(out, in.at(r.gate()-1))
	case opNone:
	default:
		x, y := naive(b, ref(g.a<<1), in, pairs), naive(b, ref(g.b<<1), in, pairs)
		for i := range out {
			out[i] = map[gateOp]uint64{opNot: ^x[i], opAnd: x[i] & y[i], opAndNot: x[i] &^ y[i], opOr: x[i] | y[i], opXor: x[i] ^ y[i], opPool: x[i] | x[i]>>1&pairs[i]}[g.op]
		}
	}
	if r.negated() {
		for i := range out {
			out[i] = ^out[i]
		}
	}
	return out
}
