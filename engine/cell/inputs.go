package cell

// inputsOfNode gathers the measures' axes that a node reads.
func (c *compiler) inputsOfNode(n int, out map[int]bool) {
	seen := map[int]bool{}
	var visit func(n int)
	visit = func(n int) {
		if seen[n] {
			return
		}
		seen[n] = true
		switch x := c.list[n]; x.Op {
		case Ask:
			c.inputsOfAxis(c.asks[x.X].axis, out)
		case Recorded:
			out[x.X] = true
		case Opaque:
			for _, i := range c.Unclear[x.X].Inputs {
				out[i] = true
			}
		case Not:
			visit(x.A)
		case And, Or:
			visit(x.A)
			visit(x.B)
		case If:
			visit(x.A)
			visit(x.B)
			visit(x.C)
		}
	}
	visit(n)
}

func (c *compiler) inputsOfAxis(i int, out map[int]bool) {
	if a := c.Axes[i]; a.Measure == nil {
		for _, j := range a.Inputs {
			out[j] = true
		}
		return
	}
	out[i] = true
}

// inputsOf gathers the measures' axes that a name stands for.
func (c *compiler) inputsOf(r reading, out map[int]bool) {
	switch {
	case r.fact < 0:
		out[r.axis] = true
	case c.Facts[r.fact].Term != nil:
		c.inputs(c.Facts[r.fact].Term, out)
	default:
		c.inputsOfNode(c.Facts[r.fact].Node, out)
	}
}
