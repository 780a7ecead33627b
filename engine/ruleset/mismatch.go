package ruleset

import (
	"regexp"
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"

	"crus/engine/biomech"
	"crus/engine/clinical"
	"crus/engine/source"
)

var (
	overload = regexp.MustCompile(`^found no matching overload for '(.+)' applied to '(.*)'$`)
	expected = regexp.MustCompile(`^expected type '(.+)' but found '(.+)'$`)
	noRange  = regexp.MustCompile(`^expression of type '(.+)' cannot be range`)
)

// mismatches rewords what cel-go's checker reports: things that can't be compared or calculated
// with each other.
func (s *scope) mismatches(e *Expr, a *ast.AST, iss *cel.Issues) {
	m := &mismatcher{scope: s, e: e, nodes: map[int64]ast.Expr{}}
	ast.PreOrderVisit(a.Expr(), ast.NewExprVisitor(func(x ast.Expr) { m.nodes[x.ID()] = x }))
	nested := false
	for _, err := range iss.Errors() {
		if strings.Contains(err.Message, "!error!") { // follows from one that is said already
			continue
		}
		inner := strings.Contains(err.Message, "comprehension exceeds nesting limit")
		if !inner || !nested { // the inner ones are said with the outermost
			s.fail(m.word(err.ExprID, err.Message))
		}
		nested = nested || inner
	}
}

type mismatcher struct {
	*scope
	e     *Expr
	nodes map[int64]ast.Expr
}

// word gives one error of cel-go in the words of the trade.
func (m *mismatcher) word(id int64, message string) source.Diagnostic {
	where := m.e.Where(id)
	if x := overload.FindStringSubmatch(message); x != nil {
		problem, hint := m.overload(m.nodes[id], x[1], splitTypes(x[2]))
		return source.Errorf(where, "mismatch", "%s", problem).Hinting("%s", hint)
	}
	if x := expected.FindStringSubmatch(message); x != nil {
		found := m.side(m.nodes[id], x[2])
		if x[1] == "bool" {
			return source.Errorf(where, "mismatch", "A condition is expected here, and %s.", found.is()).Hinting("Compare it with something, for example with < or ==.")
		}
		return source.Errorf(where, "mismatch", "%s, and the items before it are %s.", upper(found.is()), m.plural(x[1])).
			Hinting("All items of a list are of one kind.")
	}
	if x := noRange.FindStringSubmatch(message); x != nil {
		return source.Errorf(where, "mismatch", "exists, all, filter and map go through a list, and %s.", m.side(m.nodes[id], x[1]).is()).
			Hinting("For example [deg(0), deg(5)].exists(x, limb.knee_extension < x).")
	}
	switch {
	case strings.Contains(message, "comprehension exceeds nesting limit"):
		return source.Errorf(where, "too_costly", "A list is gone through inside another one.").
			Hinting("Only one exists, all, filter or map can stand in a condition at a time; name the inner one as a finding.")
	case strings.Contains(message, "field selection"):
		return source.Errorf(where, "unknown_name", "Nothing can follow the dot here.").Hinting("A measure has no parts: compare it as it is.")
	case strings.Contains(message, "matches"):
		return source.Errorf(where, "regex", "The pattern can't be read, or is too large.").Hinting("Compare with whole words instead: limb.x in ['a', 'b'].")
	}
	return source.Errorf(where, "mismatch", "This can't be worked out: its parts do not go together.").Hinting("Compare like with like.")
}

// overload words "no matching overload" for one operator or function.
func (m *mismatcher) overload(node ast.Expr, name string, types []string) (message, hint string) {
	sides := make([]side, len(types))
	for i, t := range types {
		sides[i] = m.side(argument(node, i), t)
	}
	switch {
	case name == operators.In && len(sides) == 2:
		return m.lookup(sides[0], sides[1])
	case name == operators.LogicalNot && len(sides) == 1:
		return "! denies a condition, and " + sides[0].is() + ".", "Put the whole comparison in brackets: !(limb.x < deg(5))."
	case name == operators.Negate && len(sides) == 1:
		return upper(sides[0].amid()) + " has no negative.", "A minus stands before a number or a quantity."
	case name == operators.Index && len(sides) == 2:
		return "Square brackets can't follow " + sides[0].phrase() + ".", "A list stands alone: limb.malleolar_skin in ['fragile', 'broken']."
	case name == operators.Conditional && len(sides) == 3:
		if sides[0].typ != "bool" {
			return "Before the ? stands a condition, and " + sides[0].is() + ".", "Compare it with something, for example with < or ==."
		}
		return "The two results of ? : are of different kinds: " + sides[1].phrase() + "; " + sides[2].phrase() + ".", "Make both the same kind."
	case len(sides) == 2 && strings.HasPrefix(name, "_"):
		return m.binary(strings.Trim(name, "_"), sides[0], sides[1])
	}
	return m.function(name, sides)
}

// argument gives the i-th thing that an operator or function is used on; the target of a method is
// the first. It is nil where there is none.
func argument(node ast.Expr, i int) ast.Expr {
	if node == nil || node.Kind() != ast.CallKind {
		return nil
	}
	args := node.AsCall().Args()
	if node.AsCall().IsMemberFunction() {
		args = append([]ast.Expr{node.AsCall().Target()}, args...)
	}
	if i >= len(args) {
		return nil
	}
	return args[i]
}

// binary words an operator between two sides that do not go together.
func (m *mismatcher) binary(sign string, a, b side) (message, hint string) {
	switch sign {
	case "+":
		message = upper(a.amid()) + " and " + b.amid() + " can't be added."
	case "-":
		message = upper(b.amid()) + " can't be subtracted from " + a.phrase() + "."
	case "*":
		message = upper(a.amid()) + " can't be multiplied by " + b.phrase() + "."
	case "/":
		message = upper(a.amid()) + " can't be divided by " + b.phrase() + "."
	case "%":
		return "% takes what is left over of a division, of whole numbers only.", "A percentage is written percent(50)."
	default:
		if x, y, ok := m.chained(a); ok && b.text != "" {
			return "A comparison has two sides, and this has three.",
				"Write both with && between: " + x + " && " + y + " " + sign + " " + b.text + "."
		}
		message = upper(a.amid()) + " can't be compared with " + b.phrase() + "."
	}
	if hint = m.wayOut(sign, a, b); hint == "" {
		hint = m.wayOut(sign, b, a)
	}
	if hint == "" {
		hint = "Compare like with like."
	}
	return message, hint
}

// chained takes a comparison apart that stands on the left of another: 0 < x, and x.
func (m *mismatcher) chained(a side) (whole, right string, ok bool) {
	if a.node == nil || a.node.Kind() != ast.CallKind || a.text == "" {
		return "", "", false
	}
	if _, compares := mirror(a.node.AsCall().FunctionName()); !compares {
		return "", "", false
	}
	right = m.e.Written(a.node.AsCall().Args()[1].ID())
	return a.text, right, right != ""
}

// lookup words in.
func (m *mismatcher) lookup(a, list side) (message, hint string) {
	item, isList := strings.CutPrefix(list.typ, "list(")
	if !isList {
		return "Behind in stands a list, and " + list.is() + ".", "Write a list in square brackets: limb.malleolar_skin in ['fragile', 'broken']."
	}
	item = strings.TrimSuffix(item, ")")
	hint = "All items of the list must be of its kind."
	if sc := m.scaleOf(a.typ); sc != nil {
		hint = "Write each item as a grade, for example " + sc.Name + "('" + sc.Grades[len(sc.Grades)/2] + "')."
	} else if d, ok := clinical.DimensionOf(m.types[a.typ]); ok {
		hint = "Write the unit of each item, for example " + m.literal(a, d) + "(5)."
	}
	return upper(a.amid()) + " can't be looked for among " + m.plural(item) + ".", hint
}

// function words a function that was given what it does not take.
func (m *mismatcher) function(name string, sides []side) (message, hint string) {
	var given []string
	for i, s := range sides {
		if i < len(sides)-1 {
			given = append(given, s.amid())
		} else {
			given = append(given, s.phrase())
		}
	}
	if sc := m.vocab.Scale(name); sc != nil {
		return "A grade of " + name + " is written as one quoted word.", "For example " + name + "('" + sc.Grades[len(sc.Grades)/2] + "')."
	}
	for _, u := range clinical.Units() {
		if clinical.LiteralFor(u) != name {
			continue
		}
		switch {
		case len(sides) == 2 && sides[0].typ == "int" && sides[1].typ == "int" && sides[0].text != "" && sides[1].text != "":
			return name + "(...) takes one number.", "The decimal sign is a point: " + name + "(" + sides[0].text + "." + sides[1].text + ")."
		case len(sides) == 1:
			return name + "(...) takes a bare number, and " + sides[0].is() + ".", "For example " + name + "(5)."
		}
		return name + "(...) takes one number.", "For example " + name + "(5)."
	}
	if f := biomech.Named(name); f != nil {
		return name + " can't be used on " + source.And(given) + ".", f.Signature() + " takes " + source.And(f.Takes()) + "."
	}
	for _, f := range clinical.Functions() {
		if f.Name == name {
			hint = "For example " + f.Signature + ": " + f.Doc + "."
		}
	}
	switch {
	case name == "since" && len(sides) == 1:
		return "since(...) takes a date, and " + sides[0].is() + ".", hint
	case len(sides) == 0:
		return name + "(...) takes something between its brackets.", hint
	case hint == "":
		hint = functionKinds
	}
	return name + " can't be used on " + source.And(given) + ".", hint
}

func upper(s string) string {
	if s == "" || strings.ContainsAny(strings.SplitN(s, " ", 2)[0], "._(") { // begins with something written, not a sentence
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// splitTypes cuts "(a, list(b, c))" or "a.(b)" at its outer commas.
func splitTypes(args string) []string {
	args = strings.Replace(args, ".(", ", ", 1)
	args = strings.TrimSuffix(strings.TrimPrefix(args, "("), ")")
	var out []string
	add := func(name string) {
		if name = strings.TrimSpace(name); name != "" {
			out = append(out, name)
		}
	}
	depth, from := 0, 0
	for i, c := range args {
		switch c {
		case '(':
			depth++
		case ')':
			depth--
		case ',':
			if depth == 0 {
				add(args[from:i])
				from = i + 1
			}
		}
	}
	add(args[from:])
	return out
}
