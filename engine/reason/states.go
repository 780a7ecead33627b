package reason

// force is what became of a rule.
type force int8

const (
	didNotFire force = iota
	pending
	setAside
	fired
)

// String is the state as an outcome names it.
func (f force) String() string { return [...]string{DidNotFire, Pending, SetAside, Fired}[f] }

// overridden gives a rule's state: own is the truth of its own condition, over are the rules that
// override it, whose states are known. Overriding is followed from the top down, so that a rule
// that is itself set aside sets nothing aside.
func overridden(own truth, over []int, state []force) force {
	if own == no {
		return didNotFire
	}
	doubt := own == unknown
	for _, o := range over {
		switch state[o] {
		case fired:
			return setAside
		case pending:
			doubt = true
		}
	}
	if doubt {
		return pending
	}
	return fired
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
