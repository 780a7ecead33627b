package whatif

import (
	"math"

	"crus/engine/cell"
	"crus/engine/reason"
)

// maxLoose is how many rules that are not known are combined freely, as package reason does.
const maxLoose = 12

// freely gives the verdict on a choice that comes out however the rules whose own truth is not known do, each free to hold
// or not; false where it is not always the same, or a number is not known.
func (s *scene) freely(t *cell.Topic, rows []int) (reason.Verdict, bool) {
	type loose struct{ row, rule int }
	var open []loose
	own := map[loose]cell.Truth{}
	for _, row := range rows {
		r := s.rows[row]
		for _, i := range t.Bears {
			if x := s.w.Rules[i]; !(r.Alone && x.Limb) {
				k := loose{row, i}
				if own[k] = r.c.Truth[x.Own]; own[k] == cell.Unknown {
					open = append(open, k)
				}
			}
		}
	}
	if len(open) > maxLoose {
		return reason.Verdict{}, false
	}
	var first reason.Verdict
	force := map[loose]bool{}
	for b := range 1 << len(open) {
		for i, k := range open {
			own[k] = truthOf(b>>i&1 == 1)
		}
		for _, row := range rows { // each rule after those that override it
			for _, i := range t.Bears {
				k := loose{row, i}
				force[k] = own[k] == cell.Yes
				for _, o := range s.w.Rules[i].Overriders {
					force[k] = force[k] && !force[loose{row, o}]
				}
			}
		}
		var said []reason.Said
		for i := range t.Says {
			say := &t.Says[i]
			alike := say.Advice.Term == nil || !say.Rule.Limb
			once := false
			for _, row := range rows {
				if !force[loose{row, say.Rule.Index}] || alike && once {
					continue
				}
				once = true
				at := say.Advice.At
				if say.Advice.Term != nil && !say.Advice.Fixed {
					x := s.rows[row].c.Of(say.Advice.Term)
					if math.IsNaN(x) {
						return reason.Verdict{}, false
					}
					at = reason.InUnit(x, t.Choice)
				}
				said = append(said, reason.Said{Rule: say.Rule.Index, Advice: say.Place, Value: at})
			}
		}
		switch v := s.w.Engine.Decide(t.Choice, said); {
		case b == 0:
			first = v
		case !v.Same(first):
			return reason.Verdict{}, false
		}
	}
	return first, true
}
