package reason

import "slices"

// alike groups, for each variable, the cells that make no difference to any table.
func (q *question) alike(ts []*table) {
	for _, v := range q.vars {
		n := len(q.c.vars[v].values)
		class := make([]int, n)
		var reps []int
		for k := range n {
			class[k] = -1
			for g, r := range reps {
				if equal(ts, v, k, r) {
					class[k] = g
					break
				}
			}
			if class[k] < 0 {
				class[k] = len(reps)
				reps = append(reps, k)
			}
		}
		q.classes = append(q.classes, reps)
		q.member = append(q.member, class)
	}
}

// live lists the variables that make any difference to what is undecided. Where there were too many
// completions to tell, all of them do.
func (q *question) live() []int {
	var out []int
	for i, v := range q.vars {
		if q.classes == nil || len(q.classes[i]) > 1 || q.sampled[v] {
			out = append(out, v)
		}
	}
	return out
}

// equal reports whether two cells of a variable give the same entries in every table.
func equal(ts []*table, v, a, b int) bool {
	for _, t := range ts {
		at := slices.Index(t.vars, v)
		if at < 0 {
			continue
		}
		a, b := t.group[at][a], t.group[at][b]
		if a == b {
			continue
		}
		stride := 1
		for _, k := range t.size[at+1:] {
			stride *= k
		}
		block := stride * t.size[at]
		for from := 0; from < t.entries(); from += block {
			for i := range stride {
				x, y := from+a*stride+i, from+b*stride+i
				if t.truth != nil && t.truth[x] != t.truth[y] || t.value != nil && (t.value[x] != t.value[y] || t.known[x] != t.known[y]) {
					return false
				}
			}
		}
	}
	return true
}
