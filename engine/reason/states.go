package reason

// overridden gives a rule's state: own is the truth of its own condition, over are the rules that
// override it, whose states are known. Overriding is followed from the top down, so that a rule
// that is itself set aside sets nothing aside.
func overridden(own truth, over []int, state []string) string {
	if own == no {
		return DidNotFire
	}
	doubt := own == unknown
	for _, o := range over {
		switch state[o] {
		case Fired:
			return SetAside
		case Pending:
			doubt = true
		}
	}
	if doubt {
		return Pending
	}
	return Fired
}

// topDown orders rules so that each comes after those that override it. The reader has refused
// circles.
func topDown(rules []*rule) []int {
	done := make([]bool, len(rules))
	out := make([]int, 0, len(rules))
	var visit func(i int)
	visit = func(i int) {
		if done[i] {
			return
		}
		done[i] = true
		for _, o := range rules[i].overriders {
			visit(o)
		}
		out = append(out, i)
	}
	for i := range rules {
		visit(i)
	}
	return out
}
