package replay

import "golang.org/x/sys/cpu"

// wide is run on all words of blocks, [words] of them: with AVX2 where the processor has it, 256 rows to an operation.
func (c *circuit) wide(p planes, pairs []uint64) {
	if !cpu.X86.HasAVX2 || len(c.gates) == 0 {
		c.plainWide(p, pairs)
		return
	}
	_, _ = p.all[c.slots*words-1], pairs[words-1]
	wideAVX2(&c.gates[0], len(c.gates), &p.all[0], &pairs[0])
}

//go:noescape
func wideAVX2(gates *gate, n int, all, pairs *uint64)
