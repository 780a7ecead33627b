package ruleset

import (
	"regexp"
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"

	"crus/engine/clinical"
	"crus/engine/source"
)

var (
	overload = regexp.MustCompile(`^found no matching overload for '(.+)' applied to '(.*)'$`)
	expected = regexp.MustCompile(`^expected type '(.+)' but found '(.+)'$`)
)

// mismatches rewords what cel-go's checker reports: things that can't be compared or calculated
// with each other.
func (s *scope) mismatches(e *Expr, a *ast.AST, iss *cel.Issues) {
	nodes := map[int64]ast.Expr{}
	ast.PreOrderVisit(a.Expr(), ast.NewExprVisitor(func(x ast.Expr) { nodes[x.ID()] = x }))
	nested := false
	for _, err := range iss.Errors() {
		where := e.Where(err.ExprID)
		if m := overload.FindStringSubmatch(err.Message); m != nil {
			s.fail(s.mismatch(e, nodes[err.ExprID], where, m[1], m[2]))
			continue
		}
		if m := expected.FindStringSubmatch(err.Message); m != nil {
			s.fail(source.Errorf(where, "mismatch", "%s is expected here, and this is %s.", upper(s.describe(m[1])), s.describe(m[2])).
				Hinting("%s", wayOut(m[1])))
			continue
		}
		switch {
		case strings.Contains(err.Message, "comprehension"):
			if nested { // the inner ones are said with the outermost
				continue
			}
			nested = true
			s.fail(source.Errorf(where, "too_costly", "A list is gone through inside another one.").
				Hinting("Only one exists, all, filter or map can stand in a condition at a time; name the inner one as a finding."))
		case strings.Contains(err.Message, "field selection"):
			s.fail(source.Errorf(where, "unknown_name", "Nothing can follow the dot here.").Hinting("A measure has no parts: compare it as it is."))
		case strings.Contains(err.Message, "regex") || strings.Contains(err.Message, "invalid matches argument"):
			s.fail(source.Errorf(where, "regex", "The pattern can't be read.").Hinting("Compare with whole words instead: limb.x in ['a', 'b']."))
		default:
			s.fail(source.Errorf(where, "mismatch", "This does not fit together: %s.", err.Message).Hinting("Compare like with like."))
		}
	}
}

func upper(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

func wayOut(want string) string {
	if want == "bool" {
		return "Compare it with something, for example with < or ==."
	}
	return "Compare like with like."
}

func (s *scope) describe(celType string) string {
	if t, ok := s.types[celType]; ok {
		return clinical.Describe(t)
	}
	if strings.HasPrefix(celType, "list(") {
		return "a list"
	}
	return celType
}

// mismatch words "no matching overload" for one operator or function. args is "(type, type)",
// or "type.(type)" for a method.
func (s *scope) mismatch(e *Expr, node ast.Expr, where source.Range, name, args string) source.Diagnostic {
	types := splitTypes(args)
	words := make([]string, len(types))
	for i, t := range types {
		words[i] = s.describe(t)
	}
	sign := strings.Trim(name, "_")
	switch {
	case s.vocab.Scale(name) != nil:
		return source.Errorf(where, "mismatch", "A grade of %s is written as a quoted word.", name).
			Hinting("For example %s('%s').", name, s.vocab.Scale(name).Grades[0])
	case len(types) == 2 && strings.HasPrefix(name, "_") && strings.HasSuffix(name, "_"):
		verb := "can't be compared with"
		switch sign {
		case "+":
			verb = "can't be added to"
		case "-":
			verb = "can't be subtracted from each other:"
		case "*":
			verb = "can't be multiplied by"
		case "/":
			verb = "can't be divided by"
		case "&&", "||":
			return source.Errorf(where, "mismatch", "%s joins two conditions, and here it stands between %s and %s.", sign, words[0], words[1]).
				Hinting("Write a whole comparison on each side.")
		}
		message := upper(words[0]) + " " + verb + " " + words[1] + "."
		if sign == "-" {
			message = upper(words[1]) + " can't be subtracted from " + words[0] + "."
		}
		return source.Errorf(where, "mismatch", "%s", message).Hinting("%s", s.likeWithLike(e, node, types, sign))
	case name == "!_":
		return source.Errorf(where, "mismatch", "! denies a condition, and this is %s.", words[0]).Hinting("Put the whole comparison in brackets: !(limb.x < deg(5)).")
	case name == "-_":
		return source.Errorf(where, "mismatch", "%s has no negative.", upper(words[0])).Hinting("A minus stands before a number or a quantity.")
	case name == "_?_:_":
		return source.Errorf(where, "mismatch", "The two results of ? : are of different kinds.").Hinting("Make both the same, for example both mm(...).")
	case name == "@in" || name == "_in_":
		return source.Errorf(where, "mismatch", "%s can't be looked for in %s.", upper(words[0]), words[len(words)-1]).
			Hinting("All items of the list must be of its kind, for example limb.malleolar_skin in ['fragile', 'broken'].")
	}
	return source.Errorf(where, "mismatch", "%s can't be used with %s.", name, source.And(words)).Hinting("%s", s.signature(name))
}

// likeWithLike says how the one side is written so that it fits the other.
func (s *scope) likeWithLike(e *Expr, node ast.Expr, types []string, sign string) string {
	for i, t := range types {
		if typ := s.types[t]; typ != nil {
			other := types[1-i]
			if d, ok := clinical.DimensionOf(typ); ok && (other == "int" || other == "double") && sign != "*" && sign != "/" {
				written, unit := "5", d.Base()
				if node != nil && node.Kind() == ast.CallKind && len(node.AsCall().Args()) == 2 {
					args := node.AsCall().Args()
					if w := e.Written(args[1-i].ID()); w != "" {
						written = w
					}
					if path, ok := dotted(args[i]); ok { // the unit that the measure is recorded in
						if ref, d := s.resolve(path, source.Range{}); d == nil && ref.Measure != nil {
							unit = ref.Measure.Unit
						}
					}
				}
				return "Write its unit: " + clinical.LiteralFor(unit) + "(" + written + ")."
			}
		}
		for _, sc := range s.vocab.Scales {
			if sc.CELType().String() == t && types[1-i] != t {
				return "A grade is written " + sc.Name + "('" + sc.Grades[len(sc.Grades)/2] + "')."
			}
		}
	}
	return "Compare like with like."
}

func (s *scope) signature(name string) string {
	for _, f := range clinical.Functions() {
		if f.Name == name {
			return "It is written " + f.Signature + "."
		}
	}
	return "See the list of functions in docs/language.md."
}

// splitTypes cuts "(a, list(b, c))" or "a.(b)" at its outer commas.
func splitTypes(args string) []string {
	args = strings.Replace(args, ".(", ", ", 1)
	args = strings.TrimSuffix(strings.TrimPrefix(args, "("), ")")
	var out []string
	depth, from := 0, 0
	for i, c := range args {
		switch c {
		case '(':
			depth++
		case ')':
			depth--
		case ',':
			if depth == 0 {
				out = append(out, strings.TrimSpace(args[from:i]))
				from = i + 1
			}
		}
	}
	return append(out, strings.TrimSpace(args[from:]))
}
