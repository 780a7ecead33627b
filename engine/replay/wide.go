package replay

// plainWide is run on all words of blocks, [words] of them, which lie in one stretch for each plane. It is written out word by
// word because the compiler then has nothing to check and nothing to count: this loop is where replay spends its time.
func (c *circuit) plainWide(p planes, pairs []uint64) {
	for i := range c.gates {
		g := &c.gates[i]
		to := (*[words]uint64)(p.all[int(g.to)*words:])
		a := (*[words]uint64)(p.all[int(g.a)*words:])
		b := (*[words]uint64)(p.all[int(g.b)*words:])
		switch g.op {
		case opAnd:
			to[0] = a[0] & b[0]
			to[1] = a[1] & b[1]
			to[2] = a[2] & b[2]
			to[3] = a[3] & b[3]
			to[4] = a[4] & b[4]
			to[5] = a[5] & b[5]
			to[6] = a[6] & b[6]
			to[7] = a[7] & b[7]
			to[8] = a[8] & b[8]
			to[9] = a[9] & b[9]
			to[10] = a[10] & b[10]
			to[11] = a[11] & b[11]
			to[12] = a[12] & b[12]
			to[13] = a[13] & b[13]
			to[14] = a[14] & b[14]
			to[15] = a[15] & b[15]
		case opAndNot:
			to[0] = a[0] &^ b[0]
			to[1] = a[1] &^ b[1]
			to[2] = a[2] &^ b[2]
			to[3] = a[3] &^ b[3]
			to[4] = a[4] &^ b[4]
			to[5] = a[5] &^ b[5]
			to[6] = a[6] &^ b[6]
			to[7] = a[7] &^ b[7]
			to[8] = a[8] &^ b[8]
			to[9] = a[9] &^ b[9]
			to[10] = a[10] &^ b[10]
			to[11] = a[11] &^ b[11]
			to[12] = a[12] &^ b[12]
			to[13] = a[13] &^ b[13]
			to[14] = a[14] &^ b[14]
			to[15] = a[15] &^ b[15]
		case opOr:
			to[0] = a[0] | b[0]
			to[1] = a[1] | b[1]
			to[2] = a[2] | b[2]
			to[3] = a[3] | b[3]
			to[4] = a[4] | b[4]
			to[5] = a[5] | b[5]
			to[6] = a[6] | b[6]
			to[7] = a[7] | b[7]
			to[8] = a[8] | b[8]
			to[9] = a[9] | b[9]
			to[10] = a[10] | b[10]
			to[11] = a[11] | b[11]
			to[12] = a[12] | b[12]
			to[13] = a[13] | b[13]
			to[14] = a[14] | b[14]
			to[15] = a[15] | b[15]
		case opXor:
			to[0] = a[0] ^ b[0]
			to[1] = a[1] ^ b[1]
			to[2] = a[2] ^ b[2]
			to[3] = a[3] ^ b[3]
			to[4] = a[4] ^ b[4]
			to[5] = a[5] ^ b[5]
			to[6] = a[6] ^ b[6]
			to[7] = a[7] ^ b[7]
			to[8] = a[8] ^ b[8]
			to[9] = a[9] ^ b[9]
			to[10] = a[10] ^ b[10]
			to[11] = a[11] ^ b[11]
			to[12] = a[12] ^ b[12]
			to[13] = a[13] ^ b[13]
			to[14] = a[14] ^ b[14]
			to[15] = a[15] ^ b[15]
		default:
			g.one(to[:], a[:], pairs)
		}
	}
}
