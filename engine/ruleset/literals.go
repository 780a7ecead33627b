package ruleset

import (
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/types"

	"crus/engine/biomech"
	"crus/engine/source"
	"crus/engine/vocab"
)

// literals checks the quoted words of a compiled condition, which to cel-go are any text: grades
// must be of their scale, and a measure with options is compared with its own options only.
func (s *scope) literals(e *Expr, checked *cel.Ast) {
	w := &literalWalk{scope: s, e: e}
	w.visit(checked.NativeRep().Expr())
}

type literalWalk struct {
	*scope
	e *Expr
}

func (w *literalWalk) visit(e ast.Expr) {
	switch e.Kind() {
	case ast.CallKind:
		w.call(e)
	case ast.ListKind:
		for _, item := range e.AsList().Elements() {
			w.visit(item)
		}
	case ast.ComprehensionKind:
		c := e.AsComprehension()
		w.visit(c.IterRange())
		w.visit(c.LoopCondition())
		w.visit(c.LoopStep())
		w.visit(c.Result())
	case ast.IdentKind, ast.SelectKind:
		if m := w.optionMeasure(e); m != nil {
			path, _ := dotted(e)
			w.fail(source.Errorf(w.e.Where(e.ID()), "option", "%s is one of a few words, and can only be compared with them.", path).
				Hinting("Write %s == '%s', or %s in ['%s', '%s'].", path, m.Options[0], path, m.Options[0], m.Options[1]))
		}
	}
}

func (w *literalWalk) call(e ast.Expr) {
	c := e.AsCall()
	args := c.Args()
	if sc := w.vocab.Scale(c.FunctionName()); sc != nil && len(args) == 1 {
		label, ok := quotedWord(args[0])
		if !ok {
			w.fail(source.Errorf(w.e.Where(args[0].ID()), "grade", "A grade of %s is written as a quoted word.", sc.Name).
				Hinting("For example %s('%s').", sc.Name, sc.Grades[0]))
		} else if _, ok := sc.Grade(label); !ok {
			w.fail(source.Errorf(w.e.Where(args[0].ID()), "grade", "%s has no grade '%s'.", sc.Name, label).
				Hinting("Its grades are %s.", source.And(sc.Grades)))
		}
		return
	}
	switch c.FunctionName() {
	case operators.Equals, operators.NotEquals:
		if w.compared(args[0], args[1]) || w.compared(args[1], args[0]) {
			return
		}
	case operators.In:
		if m := w.optionMeasure(args[0]); m != nil && args[1].Kind() == ast.ListKind {
			for _, item := range args[1].AsList().Elements() {
				w.option(m, item)
			}
			return
		}
	}
	if c.IsMemberFunction() {
		w.visit(c.Target())
	}
	formula := biomech.Named(c.FunctionName())
	for i, arg := range args {
		if formula != nil && i < len(formula.Params) && formula.Params[i].Kind == biomech.Word && w.optionMeasure(arg) != nil {
			continue // the formula takes the word as it was recorded
		}
		w.visit(arg)
	}
}

// compared checks an option measure against the other side; false if a is none.
func (w *literalWalk) compared(a, b ast.Expr) bool {
	m := w.optionMeasure(a)
	if m == nil {
		return false
	}
	if n := w.optionMeasure(b); n != nil {
		if strings.Join(m.Options, " ") != strings.Join(n.Options, " ") {
			w.fail(source.Errorf(w.e.Where(b.ID()), "option", "%s and %s do not have the same options.", m.Name, n.Name).
				Hinting("Compare each with a quoted word instead."))
		}
		return true
	}
	w.option(m, b)
	return true
}

func (w *literalWalk) option(m *vocab.Measure, e ast.Expr) {
	word, ok := quotedWord(e)
	if !ok {
		w.fail(source.Errorf(w.e.Where(e.ID()), "option", "%s is compared with its own words in quotes.", m.Name).
			Hinting("Its options are %s.", source.And(m.Options)))
		return
	}
	if !contains(m.Options, word) {
		w.fail(source.Errorf(w.e.Where(e.ID()), "option", "%s has no option '%s'.", m.Name, word).
			Hinting("%s", strings.TrimSpace(source.DidYouMean(word, m.Options, "")+" Its options are "+source.And(m.Options)+".")))
	}
}

// optionMeasure gives the measure with options that e names, or nil.
func (w *literalWalk) optionMeasure(e ast.Expr) *vocab.Measure {
	path, ok := dotted(e)
	if !ok {
		return nil
	}
	if m := measureAt(w.vocab, path); m != nil && m.Kind == vocab.Option {
		return m
	}
	return nil
}

// measureAt gives the measure at a path such as limb.x, or nil.
func measureAt(v *vocab.Vocabulary, path string) *vocab.Measure {
	root, name, _ := strings.Cut(path, ".")
	if root != "person" && root != "limb" && root != "other" {
		return nil
	}
	return v.Measure(name)
}

func quotedWord(e ast.Expr) (string, bool) {
	if e.Kind() != ast.LiteralKind {
		return "", false
	}
	s, ok := e.AsLiteral().(types.String)
	return string(s), ok
}
