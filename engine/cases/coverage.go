package cases

import (
	"strconv"
	"strings"

	"crus/engine/assess"
	"crus/engine/cell"
)

// Coverage is how far the worked cases have shown that each question of each condition decides something: that the
// condition comes out true for one answer and false for the other while all its other questions are answered alike
// (unique-cause MC/DC). Where questions hang together so that this can't be (two limits on one measure), it is enough
// that the question decides on either side whatever the others are answered (masking MC/DC).
type Coverage struct {
	Conditions int        `json:"conditions"`
	Questions  int        `json:"questions"`
	Unique     int        `json:"shown_alone"`       // by two cases that differ in this question only
	Masking    []Question `json:"shown_with_others"` // by two in which others differ too, since they hang together
	Unsure     []Question `json:"perhaps_alone"`     // likewise, where it is not certain that they hang together
	Never      []Question `json:"never_decide"`      // whatever is recorded
	Unshown    []Question `json:"not_shown"`
}

// Question is a question of a condition: the smallest part with a yes or no.
type Question struct {
	Of    string `json:"of"`    // finding.x, rule.x, caution.x or applies
	Field string `json:"field"` // holds, when, unless or applies
	Text  string `json:"text"`
	Place string `json:"place"`
	Lacks string `json:"lacks,omitempty"` // what no case shows: the question deciding with "yes", "no", "both"; "pair": with both, the others alike
	Ready string `json:"ready,omitempty"` // worked cases that show it, to paste and to confirm; "" where none was found
	Note  string `json:"note,omitempty"`  // why there is none
}

// run is a limb of a worked case, or its person, as one condition sees it.
type run struct {
	a      *assess.Assessment
	side   assess.Side
	row    cell.Row
	answer []cell.Truth // of each question
	truth  cell.Truth
}

// study is a condition with all that is known of it.
type study struct {
	*coverer
	cell.Condition
	questions []*cell.Part
	plan      []int
	reads     []int // the measures' axes that it rests on
	runs      []run
	world     *world // what could be; made when it is asked for
}

// coverer works coverage out.
type coverer struct {
	*cell.Space
	c *cell.Case
}

// cover works out how far some assessments show what decides.
func cover(s *cell.Space, all []*assess.Assessment) *Coverage {
	c := &coverer{s, s.NewCase()}
	out := &Coverage{Conditions: len(s.Conditions), Masking: []Question{}, Unsure: []Question{}, Never: []Question{}, Unshown: []Question{}}
	names := map[string]bool{}
	for _, k := range s.Ruleset.Cases {
		names[k.Name] = true
	}
	for _, x := range s.Conditions {
		st := c.study(x, all)
		out.Questions += len(st.questions)
		for i := range st.questions {
			if st.alone(i) {
				out.Unique++
				continue
			}
			st.note(out, i, st.lacks(i), names)
		}
	}
	return out
}

// study gathers what the assessments show of a condition.
func (c *coverer) study(x cell.Condition, all []*assess.Assessment) *study {
	st := &study{coverer: c, Condition: x, questions: x.Questions()}
	nodes := []int{x.Node, c.Applies}
	for _, q := range st.questions {
		nodes = append(nodes, q.Node)
	}
	st.plan = c.Plan(nodes...)
	st.reads = c.Reads(st.plan)
	for _, a := range all {
		sides := a.DeviceFor
		if !x.Limb {
			sides = []assess.Side{""}
		}
		for _, side := range sides {
			if r, ok := st.run(a, side, c.Row(a, side)); ok {
				st.runs = append(st.runs, r)
			}
		}
	}
	return st
}

// run works the condition out on a row; false where the ruleset does not apply.
func (st *study) run(a *assess.Assessment, side assess.Side, row cell.Row) (run, bool) {
	st.WorkOn(st.c, row, st.plan)
	if st.c.Truth[st.Applies] == cell.No && st.Of != "applies" {
		return run{}, false
	}
	r := run{a: a, side: side, row: row, truth: st.c.Truth[st.Node]}
	for _, q := range st.questions {
		r.answer = append(r.answer, st.c.Truth[q.Node])
	}
	return r, true
}

// alone reports whether two runs differ in question i only, and in the result.
func (st *study) alone(i int) bool {
	seen := map[string]cell.Truth{}
	for _, r := range st.runs {
		if r.answer[i] == cell.Unknown || r.truth == cell.Unknown {
			continue
		}
		key := r.key(i)
		other, met := seen[key+not(r.answer[i])]
		if met && other != r.truth {
			return true
		}
		seen[key+is(r.answer[i])] = r.truth
	}
	return false
}

func is(t cell.Truth) string  { return strconv.Itoa(int(t)) }
func not(t cell.Truth) string { return strconv.Itoa(int(cell.Yes - t)) }

// key is the answers to all questions but i.
func (r run) key(i int) string {
	out := make([]byte, len(r.answer))
	for j, t := range r.answer {
		out[j] = '0' + byte(t)
	}
	out[i] = '-'
	return string(out)
}

// decides reports whether the result would be another if question i were answered otherwise, the others alike.
func (st *study) decides(r run, i int) bool {
	if r.answer[i] == cell.Unknown || r.truth == cell.Unknown {
		return false
	}
	truth := map[int]cell.Truth{}
	for j, q := range st.questions {
		truth[q.Node] = r.answer[j]
	}
	truth[st.questions[i].Node] = cell.Yes - r.answer[i]
	turned := st.Answer(truth)
	return turned != cell.Unknown && turned != r.truth
}

// lacks says on which side no run shows that question i decides: "yes", "no", "both", or "" where both are shown.
func (st *study) lacks(i int) string {
	sides := map[cell.Truth]bool{}
	for _, r := range st.runs {
		if st.decides(r, i) {
			sides[r.answer[i]] = true
		}
	}
	switch {
	case sides[cell.Yes] && sides[cell.No]:
		return ""
	case sides[cell.Yes]:
		return "no"
	case sides[cell.No]:
		return "yes"
	}
	return "both"
}

// note adds a question that is not shown alone.
func (st *study) note(out *Coverage, i int, lacks string, names map[string]bool) {
	q := st.questions[i]
	x := Question{Of: st.Of, Field: st.field(), Text: st.Expr.Written(q.ID), Place: st.Expr.Where(q.ID).String(), Lacks: lacks}
	pair := st.pair(i)
	switch {
	case lacks == "" && pair.alone:
		x.Lacks = "pair"
	case lacks == "" && st.all().complete:
		out.Masking = append(out.Masking, x)
		return
	case lacks == "":
		out.Unsure = append(out.Unsure, x)
		return
	case pair.runs == nil && st.all().complete:
		x.Lacks, x.Note = "", "No assessment within the plausible ranges makes it decide."
		out.Never = append(out.Never, x)
		return
	}
	if pair.runs == nil {
		x.Note = "No assessment was found that shows it."
	} else {
		x.Ready = st.ready(pair.runs, i, names)
	}
	out.Unshown = append(out.Unshown, x)
}

// field names the attribute that the condition is written in.
func (st *study) field() string {
	switch {
	case st.Of == "applies":
		return "applies"
	case st.Unless:
		return "unless"
	case strings.HasPrefix(st.Of, "finding."):
		return "holds"
	}
	return "when"
}
