package replay

// ref names a plane of a circuit under construction: the number of a gate, and in its lowest bit whether it is negated.
type ref int32

// The two constants.
const (
	never  ref = 0
	always ref = 1
)

func (r ref) not() ref    { return r ^ 1 }
func (r ref) gate() int32 { return int32(r >> 1) }
func (r ref) negated() bool {
	return r&1 == 1
}

type gateOp uint8

const (
	opNone   gateOp = iota // 0 everywhere
	opInput                // filled in from outside
	opNot                  // ^a
	opAnd                  // a & b
	opAndNot               // a &^ b
	opOr                   // a | b
	opXor                  // a ^ b
	opPool                 // a on a row, or on the other row of its case; on a case's first row only
)

// gate is one operation on planes, which are 64 rows to a word.
type gate struct {
	op   gateOp
	a, b int32 // gates; in a finished circuit slots of memory
	to   int32 // of a finished circuit: the slot of its result
}

// builder makes circuits: each gate once, constants folded, negations moved to where they cost nothing.
type builder struct {
	gates []gate
	at    map[gate]int32
}

func newBuilder() *builder {
	return &builder{gates: []gate{{op: opNone}}, at: map[gate]int32{}}
}

func (b *builder) gate(op gateOp, x, y int32) ref {
	g := gate{op: op, a: x, b: y}
	i, ok := b.at[g]
	if !ok {
		i = int32(len(b.gates))
		b.gates = append(b.gates, g)
		b.at[g] = i
	}
	return ref(i << 1)
}

// input adds a plane that is filled in from outside; inputs have the first slots, in the order in which they are added.
func (b *builder) input() ref {
	b.gates = append(b.gates, gate{op: opInput})
	return ref((len(b.gates) - 1) << 1)
}

func (b *builder) and(x, y ref) ref {
	switch {
	case x == never || y == never || x == y.not():
		return never
	case x == always || x == y:
		return y
	case y == always:
		return x
	}
	if x > y {
		x, y = y, x
	}
	switch {
	case x.negated() && y.negated():
		return b.gate(opOr, x.gate(), y.gate()).not()
	case x.negated():
		return b.gate(opAndNot, y.gate(), x.gate())
	case y.negated():
		return b.gate(opAndNot, x.gate(), y.gate())
	}
	return b.gate(opAnd, x.gate(), y.gate())
}

func (b *builder) or(x, y ref) ref { return b.and(x.not(), y.not()).not() }

func (b *builder) xor(x, y ref) ref {
	switch {
	case x == never:
		return y
	case y == never:
		return x
	case x == always:
		return y.not()
	case y == always:
		return x.not()
	case x == y:
		return never
	case x == y.not():
		return always
	}
	sign := (x ^ y) & 1
	return b.gate(opXor, min(x.gate(), y.gate()), max(x.gate(), y.gate())) ^ sign
}

// choose gives x where s is true, y where it is false.
func (b *builder) choose(s, x, y ref) ref {
	if x == y {
		return x
	}
	return b.or(b.and(s, x), b.and(s.not(), y))
}

func (b *builder) any(of []ref) ref {
	out := never
	for _, x := range of {
		out = b.or(out, x)
	}
	return out
}

// pool gives a plane that holds on the first row of a case where x holds on either of its rows. On a second row it
// means nothing.
func (b *builder) pool(x ref) ref {
	if x == never || x == always {
		return x
	}
	return b.gate(opPool, b.positive(x), 0)
}

// positive gives the gate of a plane, with a gate of its own where it is negated.
func (b *builder) positive(x ref) int32 {
	if x.negated() {
		return b.gate(opNot, x.gate(), 0).gate()
	}
	return x.gate()
}

// circuit is a straight line of gates over slots of memory. Slots are used again when nothing needs what they hold;
// those of the inputs and the results are not.
type circuit struct {
	gates  []gate
	inputs int    // slots 0 to inputs-1
	used   []bool // of each input: whether a gate or a result needs it
	slots  int
	out    []int32 // the slot of each result
}

// finish lays out the gates that some results need, in their order.
func (b *builder) finish(results []ref) *circuit {
	c := &circuit{}
	outs := make([]int32, len(results))
	for i, r := range results {
		outs[i] = b.positive(r)
	}
	last := make([]int32, len(b.gates)) // the last gate that needs each; 0: none does
	pinned, needed := make([]bool, len(b.gates)), make([]bool, len(b.gates))
	for _, o := range outs {
		pinned[o], needed[o] = true, true
	}
	for i := len(b.gates) - 1; i >= 0; i-- {
		g := b.gates[i]
		if g.op == opInput {
			pinned[i] = true
			c.inputs++
		}
		if !pinned[i] && last[i] == 0 || g.op <= opInput {
			continue
		}
		last[g.a] = max(last[g.a], int32(i))
		if g.op >= opAnd && g.op <= opXor {
			last[g.b] = max(last[g.b], int32(i))
		}
	}
	slot := make([]int32, len(b.gates))
	c.slots = c.inputs
	var free []int32
	take := func() int32 {
		if n := len(free); n > 0 {
			s := free[n-1]
			free = free[:n-1]
			return s
		}
		c.slots++
		return int32(c.slots - 1)
	}
	given := int32(0)
	for i, g := range b.gates {
		switch {
		case g.op == opInput:
			slot[i] = given
			given++
			c.used = append(c.used, last[i] > 0 || needed[i])
			continue
		case !pinned[i] && last[i] == 0:
			continue
		}
		two := g.op >= opAnd && g.op <= opXor
		out := gate{op: g.op, a: slot[g.a]}
		if two {
			out.b = slot[g.b]
		}
		if g.op != opNone {
			if !pinned[g.a] && last[g.a] == int32(i) {
				free = append(free, slot[g.a])
			}
			if two && g.b != g.a && !pinned[g.b] && last[g.b] == int32(i) {
				free = append(free, slot[g.b])
			}
		}
		slot[i] = take()
		out.to = slot[i]
		c.gates = append(c.gates, out)
	}
	for _, o := range outs {
		c.out = append(c.out, slot[o])
	}
	return c
}

// planes is the memory of a circuit: so many words for each slot.
type planes struct {
	words int
	all   []uint64
}

func (c *circuit) memory(words int) planes {
	return planes{words, make([]uint64, c.slots*words)}
}

// at gives the words of a slot.
func (p planes) at(slot int32) []uint64 {
	return p.all[int(slot)*p.words:][:p.words:p.words]
}

// bit gives a row's bit of a slot.
func (p planes) bit(slot int32, row int) bool {
	return p.all[int(slot)*p.words+row/64]>>(row%64)&1 == 1
}

// run works the circuit out on the first n words of each plane. pairs marks the first row of each case with two rows,
// which never lie in two words; it is only needed where there is something to pool.
func (c *circuit) run(p planes, n int, pairs []uint64) {
	w := p.words
	if w == 1 && pairs == nil {
		c.narrow(p.all)
		return
	}
	for i := range c.gates {
		g := &c.gates[i]
		to := p.all[int(g.to)*w:][:n]
		a := p.all[int(g.a)*w:][:n]
		b := p.all[int(g.b)*w:][:n]
		switch g.op {
		case opAnd:
			for j := range to {
				to[j] = a[j] & b[j]
			}
		case opAndNot:
			for j := range to {
				to[j] = a[j] &^ b[j]
			}
		case opOr:
			for j := range to {
				to[j] = a[j] | b[j]
			}
		case opXor:
			for j := range to {
				to[j] = a[j] ^ b[j]
			}
		default:
			g.one(to, a, pairs)
		}
	}
}

// one works out a gate with one input, or none.
func (g *gate) one(to, a, pairs []uint64) {
	switch g.op {
	case opNot:
		for j := range to {
			to[j] = ^a[j]
		}
	case opPool:
		for j := range to {
			to[j] = a[j] | a[j]>>1&pairs[j]
		}
	case opNone:
		clear(to)
	}
}

// narrow is run on planes of one word, without anything to pool.
func (c *circuit) narrow(all []uint64) {
	for i := range c.gates {
		g := &c.gates[i]
		switch a, b := all[g.a], all[g.b]; g.op {
		case opAnd:
			all[g.to] = a & b
		case opAndNot:
			all[g.to] = a &^ b
		case opOr:
			all[g.to] = a | b
		case opXor:
			all[g.to] = a ^ b
		case opNot:
			all[g.to] = ^a
		default:
			all[g.to] = 0
		}
	}
}
