package ruleset

import (
	"strings"

	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/types"

	"crus/engine/source"
	"crus/engine/vocab"
)

// names checks every name in a parsed condition against the vocabulary and the facts, before cel-go
// does: its message would name the root only. What is read is collected in e.Reads. It is false where
// the condition reads something that is defined with an error of its own.
func (s *scope) names(e *Expr, a *ast.AST) bool {
	w := &nameWalk{scope: s, e: e, info: a.SourceInfo(), seen: map[string]bool{}}
	w.visit(a.Expr(), nil)
	return !w.unknowable
}

type nameWalk struct {
	*scope
	e    *Expr
	info *ast.SourceInfo
	seen map[string]bool

	unknowable bool
	failed     int
}

// maxNames is how many wrong names of one condition are reported.
const maxNames = 20

func (w *nameWalk) fail(d source.Diagnostic) {
	if w.failed++; w.failed <= maxNames {
		w.scope.fail(d)
	}
}

func (w *nameWalk) visit(e ast.Expr, bound []string) {
	switch e.Kind() {
	case ast.IdentKind:
		w.ident(e, bound)
	case ast.SelectKind:
		w.sel(e, bound)
	case ast.CallKind:
		w.call(e, bound)
	case ast.LiteralKind:
		if e.AsLiteral() == types.NullValue {
			w.fail(source.Errorf(w.e.Where(e.ID()), "unknown_name", "There is no null in a condition: a missing value is unknown by itself.").
				Hinting("Write recorded(limb.knee_extension) to ask whether something was recorded."))
		}
	case ast.ListKind:
		for _, item := range e.AsList().Elements() {
			w.visit(item, bound)
		}
	case ast.MapKind, ast.StructKind:
		w.fail(source.Errorf(w.e.Where(e.ID()), "expression", "A group of fields in braces does not belong in a condition.").
			Hinting("Conditions compare measures, for example limb.knee_extension < deg(0)."))
	case ast.ComprehensionKind:
		c := e.AsComprehension()
		w.visit(c.IterRange(), bound)
		for _, v := range []string{c.IterVar(), c.IterVar2()} {
			if isRoot(v) {
				w.fail(source.Errorf(w.e.Where(e.ID()), "reserved", "%s can't be the name of a list's item here: it has a meaning of its own.", v).
					Hinting("Choose another letter or word, for example x."))
			}
		}
		in := append(append([]string(nil), bound...), c.IterVar(), c.IterVar2(), c.AccuVar())
		w.visit(c.AccuInit(), bound)
		w.visit(c.LoopCondition(), in)
		w.visit(c.LoopStep(), in)
		w.visit(c.Result(), in)
	}
}

func isRoot(s string) bool {
	switch s {
	case "person", "limb", "other", "finding", "quantity", "recorded":
		return true
	}
	return false
}

func (w *nameWalk) ident(e ast.Expr, bound []string) {
	name := e.AsIdent()
	if path, ok := strings.CutPrefix(name, "recorded."); ok {
		id := e.ID()
		if call, ok := w.info.GetMacroCall(id); ok {
			id = call.AsCall().Args()[0].ID()
		}
		w.read(id, path, true)
		return
	}
	for _, b := range bound {
		if b == name {
			return
		}
	}
	where := w.e.Where(e.ID())
	if isRoot(name) {
		w.fail(source.Errorf(where, "unknown_name", "%s alone says nothing.", name).
			Hinting("A name follows it, for example %s.", w.example(name)))
		return
	}
	hint := source.DidYouMean(name, w.paths, "Names begin with person., limb., other., finding. or quantity.")
	if f := source.Nearest(name, w.funcs); len(f) > 0 && f[0] == name {
		hint = name + " is a function: write " + name + "(...)."
	} else if near := w.bare(name); near != "" {
		hint = "Did you mean " + near + "?"
	}
	if w.isOption(name) {
		hint = "A word to compare with stands in single quotes: '" + name + "'."
	}
	switch strings.ToLower(name) {
	case "unknown", "missing", "undefined", "none", "nil":
		if !w.isOption(name) {
			hint = "Whether something is known is asked with recorded(limb.x), or !recorded(limb.x)."
		}
	case "yes", "true":
		hint = "What is a yes or no stands alone in a condition: finding.x"
	case "no", "false":
		hint = "What is a yes or no stands alone in a condition, denied with ! before it: !finding.x"
	}
	if w.vocab.Choice(name) != nil {
		hint = name + " is a choice, not a measure: it is advised, and not read."
	}
	w.fail(source.Errorf(where, "unknown_name", "There is nothing called %s.", name).Hinting("%s", hint))
}

// bare finds the path that ends in just this name.
func (w *nameWalk) bare(name string) string {
	for _, p := range w.paths {
		if strings.HasSuffix(p, "."+name) {
			return p
		}
	}
	return ""
}

// isOption reports whether any measure has this option.
func (w *nameWalk) isOption(name string) bool {
	for _, m := range w.vocab.Measures {
		if contains(m.Options, name) {
			return true
		}
	}
	return false
}

// example gives the first name below a root.
func (w *nameWalk) example(root string) string {
	for _, p := range w.paths {
		if strings.HasPrefix(p, root+".") {
			return p
		}
	}
	return root + ".name"
}

func (w *nameWalk) sel(e ast.Expr, bound []string) {
	sel := e.AsSelect()
	path, plain := dotted(e)
	root, _, _ := strings.Cut(path, ".")
	for _, b := range bound {
		plain = plain && b != root
	}
	if sel.IsTestOnly() {
		if inner, ok := dotted(sel.Operand()); ok {
			w.fail(source.Errorf(w.e.Where(e.ID()), "unknown_function", "has(...) does not say whether something is recorded.").
				Hinting("Write recorded(%s.%s).", inner, sel.FieldName()))
			return
		}
	}
	if plain && isRoot(root) && root != "recorded" {
		w.read(e.ID(), path, false)
		return
	}
	if plain && !contains(bound, root) {
		w.fail(source.Errorf(w.e.Where(e.ID()), "unknown_name", "There is nothing called %s.", path).
			Hinting("%s", source.DidYouMean(path, w.paths, "Names begin with person., limb., other., finding. or quantity.")))
		return
	}
	w.visit(sel.Operand(), bound)
}

func contains(list []string, s string) bool {
	for _, x := range list {
		if x == s {
			return true
		}
	}
	return false
}

// read resolves a path below one of the roots and notes it as read.
func (w *nameWalk) read(id int64, path string, recorded bool) {
	where := w.e.Where(id)
	if w.isLost(path) {
		w.unknowable = true
		return
	}
	ref, d := w.resolve(path, where)
	if d != nil {
		w.fail(*d)
		return
	}
	ref.Recorded = recorded
	if ref.Measure != nil && ref.Measure.Kind == vocab.Text && !recorded {
		w.fail(source.Errorf(where, "text_measure", "%s is free text: it is shown, never tested.", path).
			Hinting("Test a measure that has grades, options or a unit; recorded(%s) asks whether anything was written.", path))
		return
	}
	key := path
	if recorded {
		key = "recorded " + path
	}
	if !w.seen[key] {
		w.seen[key] = true
		w.e.Reads = append(w.e.Reads, ref)
	}
}

// isLost reports whether a path names something that is defined with an error of its own.
func (s *scope) isLost(path string) bool {
	parts := strings.SplitN(path, ".", 3)
	return s.lost[path] || len(parts) == 3 && (parts[0] == "finding" || parts[0] == "quantity") && s.lost[parts[1]]
}

// resolve finds what a path such as limb.x or finding.part.x stands for.
func (s *scope) resolve(path string, where source.Range) (Ref, *source.Diagnostic) {
	ref := Ref{Path: path, Where: where}
	root, name, _ := strings.Cut(path, ".")
	failed := func(message, otherwise string) (Ref, *source.Diagnostic) {
		d := source.Errorf(where, "unknown_name", "%s", message).Hinting("%s", s.nearest(path, otherwise))
		return ref, &d
	}
	switch root {
	case "finding", "quantity":
		if f, ok := s.facts[path]; ok {
			ref.Fact = f
			return ref, nil
		}
		if strings.Contains(name, ".") {
			return failed("There is no "+root+" "+name+".", "What another ruleset defines can be used when that ruleset stands in builds_on.")
		}
		return failed("There is no "+root+" "+name+".", "Define it in a block "+root+" \""+name+"\" { ... }")
	case "person", "limb", "other":
	default:
		return failed("There is nothing called "+path+".", "Names begin with person., limb., other., finding. or quantity.")
	}
	m := s.vocab.Measure(name)
	if m == nil && s.vocab.Choice(name) != nil {
		d := source.Errorf(where, "unknown_name", "%s is a choice, not a measure: it is advised, and not read.", name).
			Hinting("Ask what the choice depends on, with a measure or a finding.")
		return ref, &d
	}
	if m == nil {
		return failed("There is no measure "+path+".", "The vocabulary lists the measures: see crus form.")
	}
	if right := roots(m); root != right[0] && (len(right) < 2 || root != right[1]) {
		d := source.Errorf(where, "unknown_name", "%s is recorded of the %s, not of the %s.", name, m.Of, bearer(root)).
			Hinting("Write %s.%s.", right[0], name)
		return ref, &d
	}
	ref.Measure, ref.Other = m, root == "other"
	return ref, nil
}

func bearer(root string) string {
	if root == "person" {
		return "person"
	}
	return "limb"
}

// nearest makes the hint for a path: the nearest names under the same root come first, then those
// that have all its words, then any.
func (s *scope) nearest(path, otherwise string) string {
	root, name, ok := strings.Cut(path, ".")
	if !ok {
		root, name = "", path
	}
	var same []string
	for _, p := range s.paths {
		if rest, ok := strings.CutPrefix(p, root+"."); ok {
			same = append(same, rest)
		}
	}
	near := source.Nearest(name, same)
	if len(near) == 0 {
		near = withWords(name, same)
	}
	if len(near) > 0 {
		for i, n := range near {
			near[i] = root + "." + n
		}
		return "Did you mean " + source.Or(near) + "?"
	}
	var names []string
	full := map[string]string{}
	for _, p := range s.paths {
		other, rest, _ := strings.Cut(p, ".")
		if _, twice := full[rest]; !twice && other != root {
			full[rest] = p
			names = append(names, rest)
		}
	}
	for _, n := range source.Nearest(name, names) {
		near = append(near, full[n])
	}
	if len(near) > 0 {
		return "Did you mean " + source.Or(near) + "?"
	}
	return otherwise
}

// withWords gives at most three candidates that have every word of a name, as tone has a place in
// plantarflexor_tone.
func withWords(name string, candidates []string) []string {
	var out []string
	for _, c := range candidates {
		words := strings.FieldsFunc(c, func(r rune) bool { return r == '_' || r == '.' })
		all := true
		for _, w := range strings.FieldsFunc(name, func(r rune) bool { return r == '_' || r == '.' }) {
			all = all && contains(words, w)
		}
		if all && len(out) < 3 {
			out = append(out, c)
		}
	}
	return out
}

// call checks a function, and what it is called on.
func (w *nameWalk) call(e ast.Expr, bound []string) {
	c := e.AsCall()
	name, where := c.FunctionName(), w.e.Where(e.ID())
	if w.elsewhere(e, c, bound) {
		return
	}
	if c.IsMemberFunction() {
		if path, ok := dotted(c.Target()); ok && !contains(bound, path) {
			if measureAt(w.vocab, path+"."+name) != nil || w.facts[path+"."+name] != nil {
				w.fail(source.Errorf(where, "unknown_function", "%s.%s is no function.", path, name).Hinting("Take the brackets out."))
				return
			}
		}
		w.visit(c.Target(), bound)
	}
	switch name {
	case "exists", "all", "exists_one", "filter", "map": // else it was a macro
		w.fail(source.Errorf(where, "unknown_function", "%s(...) stands behind a list, and takes a name for its items and what is asked of each.", name).
			Hinting("For example [deg(0), deg(5)].exists(x, limb.knee_extension < x)."))
		return
	}
	if name == "recorded" {
		w.fail(source.Errorf(where, "unknown_function", "recorded(...) takes the name of one measure.").Hinting("For example recorded(limb.knee_extension)."))
		return
	}
	for _, arg := range c.Args() {
		w.visit(arg, bound)
	}
	if w.env.HasFunction(name) && name != "dyn" && name != "type" { // operators too
		return
	}
	w.fail(source.Errorf(where, "unknown_function", "There is no function %s.", name).Hinting("%s", w.functionLike(name)))
}

// elsewhere reports a call such as math.ceil(x) on a word that means nothing here.
func (w *nameWalk) elsewhere(e ast.Expr, c ast.CallExpr, bound []string) bool {
	if !c.IsMemberFunction() || c.Target().Kind() != ast.IdentKind {
		return false
	}
	word := c.Target().AsIdent()
	if isRoot(word) || contains(bound, word) || strings.HasPrefix(word, "recorded.") {
		return false
	}
	w.fail(source.Errorf(w.e.Where(e.ID()), "unknown_function", "There is no function %s.%s.", word, c.FunctionName()).Hinting("%s", w.functionLike(c.FunctionName())))
	return true
}

// functionKinds is the hint where no function is near.
const functionKinds = "Functions are units such as deg(5), scales such as muscle_power('3'), recorded, since, abs, least, greatest, and the formulas that crus cite --formulas lists."

// functionLike makes the hint for a function that does not exist.
func (w *nameWalk) functionLike(name string) string {
	switch strings.ToLower(name) {
	case "and", "or", "not":
		return "Write && for and, || for or, ! for not."
	case "if":
		return "Write condition ? one : other."
	case "dyn", "type":
		return "Compare the measure itself."
	case "min", "minimum", "lowest":
		return "The smaller of some is least(a, b)."
	case "max", "maximum", "highest":
		return "The greater of some is greatest(a, b)."
	case "today", "now", "date", "age":
		return "How long ago a date is, on the day of the assessment, is asked with since(person.x) > weeks(12)."
	case "has", "exists":
		return "Write recorded(limb.x) to ask whether x was recorded."
	}
	return source.DidYouMean(name, w.funcs, functionKinds)
}
