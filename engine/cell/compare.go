package cell

import (
	"fmt"
	"slices"
	"sort"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
	"crus/engine/ruleset"
	"crus/engine/vocab"
)

// asking is what a question asks of its axis: how the value compares with a constant, or whether it is one of some.
type asking struct {
	axis int
	op   string // Less, LessEquals or Equals of operators; "" for one of the values
	at   float64
	of   string // the values, as text in order: it tells askings apart
	set  []float64
}

// holds answers for a value.
func (q asking) holds(x float64) bool {
	switch q.op {
	case operators.Less:
		return x < q.at
	case operators.LessEquals:
		return x <= q.at
	case operators.Equals:
		return x == q.at
	}
	return slices.Contains(q.set, x)
}

// ask gives the node of a question, each question once.
func (c *compiler) ask(q asking) int {
	key := fmt.Sprint(q.axis, q.op, q.at, q.of)
	i, ok := c.asked[key]
	if !ok {
		i = len(c.asks)
		c.asked[key] = i
		c.asks = append(c.asks, q)
	}
	return c.add(Node{Op: Ask, X: i})
}

// compare gives the node of a comparison.
func (c *compiler) compare(a, b place, op string, whole place) (int, bool) {
	switch op { // three of the six are the negations of the others
	case operators.NotEquals:
		n, ok := c.compare(a, b, operators.Equals, whole)
		return c.not(n), ok
	case operators.Greater:
		return c.compare(b, a, operators.Less, whole)
	case operators.GreaterEquals:
		return c.compare(b, a, operators.LessEquals, whole)
	}
	if a.typ() == cel.BoolType {
		x, ok := c.node(a)
		y, also := c.node(b)
		if op == operators.Equals {
			return c.or(c.and(x, y), c.and(c.not(x), c.not(y))), ok && also
		}
		return 0, false
	}
	if b.constant(c.vocab) != nil {
		return c.against(a, b.constant(c.vocab), op)
	}
	if a.constant(c.vocab) != nil { // 5 < x is not x <= 5, 5 <= x is not x < 5
		switch op {
		case operators.Less:
			n, ok := c.against(b, a.constant(c.vocab), operators.LessEquals)
			return c.not(n), ok
		case operators.LessEquals:
			n, ok := c.against(b, a.constant(c.vocab), operators.Less)
			return c.not(n), ok
		}
		return c.against(b, a.constant(c.vocab), op)
	}
	x, ok := c.term(a)
	y, also := c.term(b)
	if !ok || !also || a.typ() == cel.StringType && op != operators.Equals {
		return 0, false
	}
	t := Term{Op: Differ, A: x, B: y}
	if a.typ() == cel.StringType {
		if !c.sameWords(x, y) {
			return 0, false
		}
		t.Op = Same
	}
	return c.ask(asking{axis: c.formula(c.make(t), whole), op: op}), true
}

// sameWords reports whether two texts are options of measures with the same list.
func (c *compiler) sameWords(x, y *Term) bool {
	return x.Op == Read && y.Op == Read && slices.Equal(c.Axes[x.Axis].Measure.Options, c.Axes[y.Axis].Measure.Options)
}

// against gives the node of a comparison with a constant.
func (c *compiler) against(a place, v ref.Val, op string) (int, bool) {
	t, ok := c.term(a)
	if !ok {
		return 0, false
	}
	axis := c.formula(t, a)
	if word, text := v.(types.String); text {
		m := c.Axes[axis].Measure
		if m == nil || op != operators.Equals {
			return 0, false
		}
		return c.ask(asking{axis: axis, op: op, at: float64(slices.Index(m.Options, string(word)))}), true
	}
	at, ok := onAxis(v)
	return c.ask(asking{axis: axis, op: op, at: at}), ok
}

// set gives what x in [5, 6] asks where the list has constants only.
func (c *compiler) set(item, list place) (asking, bool) {
	var values []float64
	words := item.typ() == cel.StringType
	t, ok := c.term(item)
	if !ok || t.Op == Number || words && t.Op != Read {
		return asking{}, false
	}
	for _, x := range list.e.AsList().Elements() {
		v := list.at(x).constant(c.vocab)
		if v == nil {
			return asking{}, false
		}
		at, ok := onAxis(v)
		if words {
			at = float64(slices.Index(c.Axes[t.Axis].Measure.Options, string(v.(types.String))))
		} else if !ok {
			return asking{}, false
		}
		values = append(values, at)
	}
	return oneOf(c.formula(t, item), values), true
}

// oneOf asks whether a value is one of some.
func oneOf(axis int, values []float64) asking {
	sort.Float64s(values)
	values = slices.Compact(values)
	return asking{axis: axis, of: fmt.Sprint(values), set: values}
}

// constant gives the value of a plain constant; nil for everything else.
func (p place) constant(v *vocab.Vocabulary) ref.Val {
	if p.e.Kind() == ast.IdentKind {
		if item, ok := p.items[p.e.AsIdent()]; ok {
			return ruleset.Constant(v, item)
		}
	}
	return ruleset.Constant(v, p.e)
}

// onAxis gives the number that stands for a value on an axis; false for a text.
func onAxis(v ref.Val) (float64, bool) {
	switch v := v.(type) {
	case clinical.Quantity:
		return v.Base(), true
	case clinical.Grade:
		return float64(v.Rank), true
	case types.Int:
		return float64(v), true
	case types.Double:
		return float64(v), true
	case types.Bool:
		if v {
			return 1, true
		}
		return 0, true
	}
	return 0, false
}
