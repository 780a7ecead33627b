package reason

import (
	"github.com/google/cel-go/cel"
)

// Condition is one yes/no part of a ruleset's own conditions, as a trace shows it.
type Condition struct {
	Of    string `json:"of"` // finding.x, rule.x, caution.x or applies
	Text  string `json:"text"`
	Place string `json:"place"`
}

// Conditions lists the yes/no parts of the ruleset's own conditions (not of what it builds on):
// the whole ones and those that are joined in them, in the order of the text. Text and Place are
// those of the steps in a trace.
func (e *Engine) Conditions() []Condition {
	var out []Condition
	add := func(of string, p *program) {
		if p == nil || !p.expr.Part.Root {
			return
		}
		seen := map[string]bool{}
		var visit func(n *node)
		visit = func(n *node) {
			if p.expr.AST.NativeRep().GetType(n.id) == cel.BoolType && !seen[n.written.Place+n.written.Text] {
				seen[n.written.Place+n.written.Text] = true
				out = append(out, Condition{of, n.written.Text, n.written.Place})
			}
			for _, k := range n.kids {
				visit(k)
			}
		}
		visit(p.nodes[0])
	}
	for _, p := range e.rs.Parts {
		add("applies", e.applies[p])
	}
	for _, f := range e.facts {
		if f.Quantity == nil {
			add(f.Path(), f.prog)
		}
	}
	for _, r := range e.rules {
		add("rule."+r.Name, r.when)
		add("rule."+r.Name, r.unless)
	}
	for _, c := range e.cautions {
		add("caution."+c.Name, c.when)
	}
	return out
}
