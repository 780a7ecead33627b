//go:build !amd64

package replay

// wide is run on all words of blocks, [words] of them.
func (c *circuit) wide(p planes, pairs []uint64) { c.plainWide(p, pairs) }
