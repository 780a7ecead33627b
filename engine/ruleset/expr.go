package ruleset

import (
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/ast"

	"crus/engine/biomech"
	"crus/engine/clinical"
	"crus/engine/source"
	"crus/engine/vocab"
)

// Expr is a condition or formula that compiled.
type Expr struct {
	Text  source.Text
	AST   *cel.Ast
	Env   *cel.Env // makes programs of AST
	Part  *Part
	Reads []Ref // each name once, in the order of the text
	spans map[int64]span
	runes []int // byte offset in Text.S of each code point, and of the end
}

// Ref is one name that a condition, formula or text reads.
type Ref struct {
	Path     string         // as written: limb.x, person.x, other.x, finding.x, quantity.part.x
	Measure  *vocab.Measure // nil for a fact
	Other    bool           // of the opposite limb
	Recorded bool           // whether it is recorded, not its value
	Fact     *Fact          // nil for a measure
	Where    source.Range
}

// Where gives the place in the file of the node with an id.
func (e *Expr) Where(id int64) source.Range {
	s, ok := e.spans[id]
	if !ok || s.start < 0 {
		return e.Text.All()
	}
	return e.Text.Range(e.runes[min(s.start, len(e.runes)-1)], e.runes[min(s.end, len(e.runes)-1)])
}

// Written gives the text of the node with an id, or "" for what a macro made.
func (e *Expr) Written(id int64) string {
	s, ok := e.spans[id]
	if !ok || s.start < 0 {
		return ""
	}
	return e.Text.S[e.runes[min(s.start, len(e.runes)-1)]:e.runes[min(s.end, len(e.runes)-1)]]
}

// maxText is the longest condition, in code points. A long real one has a few hundred.
const maxText = 8000

// scope is what the conditions of one part can name, and how they are compiled.
type scope struct {
	part  *Part
	vocab *vocab.Vocabulary
	facts map[string]*Fact // by path as written in this part
	paths []string         // every name that can stand in a condition, for hints
	funcs []string         // every function
	env   *cel.Env
	types map[string]*cel.Type // by the name that cel's messages use
	lost  map[string]bool      // see partReader
	diags *source.Diagnostics
}

func newScope(part *Part, v *vocab.Vocabulary, facts map[string]*Fact, lost map[string]bool, diags *source.Diagnostics) (*scope, error) {
	s := &scope{part: part, vocab: v, facts: facts, lost: lost, diags: diags, types: map[string]*cel.Type{}}
	opts := clinical.EnvOptions()
	for _, d := range clinical.Dimensions() {
		s.types[d.CELType().String()] = d.CELType()
	}
	for _, t := range []*cel.Type{clinical.DateType(), cel.IntType, cel.UintType, cel.DoubleType, cel.StringType, cel.BoolType, cel.BytesType, cel.DynType} {
		s.types[t.String()] = t
	}
	s.types["timestamp"], s.types["duration"] = cel.TimestampType, cel.DurationType // as messages call them
	for _, sc := range v.Scales {
		opts = append(opts, sc.EnvOptions()...)
		s.types[sc.CELType().String()] = sc.CELType()
		s.funcs = append(s.funcs, sc.Name)
	}
	opts = append(opts, biomech.EnvOptions(v.Scales)...)
	declare := func(path string, t *cel.Type) {
		opts = append(opts, cel.Variable(path, t))
		s.paths = append(s.paths, path)
	}
	for _, m := range v.Measures {
		t := m.CELType()
		for _, root := range roots(m) {
			path := root + "." + m.Name
			if t != nil {
				declare(path, t)
			}
			opts = append(opts, cel.Variable("recorded."+path, cel.BoolType))
		}
	}
	for path, f := range facts {
		t := cel.BoolType
		if f.Quantity != nil {
			t = f.Quantity.Dimension.CELType()
		}
		declare(path, t)
	}
	opts = append(opts,
		cel.Macros(recordedMacro()),
		cel.EnableMacroCallTracking(),
		cel.ParserExpressionSizeLimit(maxText),
		cel.ParserRecursionLimit(60),
		cel.ExpressionNodeLimit(5000),
		cel.ASTValidators(cel.ValidateComprehensionNestingLimit(1), cel.ValidateRegexLiterals(), cel.ValidateHomogeneousAggregateLiterals(),
			cel.ValidateDurationLiterals(), cel.ValidateTimestampLiterals()))
	env, err := cel.NewCustomEnv(opts...)
	if err != nil {
		return nil, err
	}
	s.env = env
	for _, f := range s.functions() {
		s.funcs = append(s.funcs, f.Name)
	}
	s.funcs = append(s.funcs, "recorded", "size", "startsWith", "endsWith", "contains", "matches", "exists", "all", "exists_one", "filter", "map")
	return s, nil
}

// functions lists what the conditions of this part can call besides CEL's own functions and the scales.
func (s *scope) functions() []clinical.Function {
	return append(clinical.Functions(), biomech.Functions(s.vocab.Scales)...)
}

// roots are the words that a measure's name can follow in a condition.
func roots(m *vocab.Measure) []string {
	if m.Of == vocab.Person {
		return []string{"person"}
	}
	return []string{"limb", "other"}
}

// recordedMacro turns recorded(limb.x) into the yes/no name recorded.limb.x, which is never unknown.
func recordedMacro() cel.Macro {
	return cel.GlobalMacro("recorded", 1, func(f cel.MacroExprFactory, _ ast.Expr, args []ast.Expr) (ast.Expr, *cel.Error) {
		path, ok := dotted(args[0])
		if root, _, _ := strings.Cut(path, "."); !ok || root != "person" && root != "limb" && root != "other" {
			return nil, nil // stays a call, which names reports
		}
		return f.NewIdent("recorded." + path), nil
	})
}

// dotted gives the path of a plain chain of names such as limb.x.
func dotted(e ast.Expr) (string, bool) {
	switch e.Kind() {
	case ast.IdentKind:
		return e.AsIdent(), true
	case ast.SelectKind:
		sel := e.AsSelect()
		base, ok := dotted(sel.Operand())
		return base + "." + sel.FieldName(), ok && !sel.IsTestOnly()
	}
	return "", false
}

// condition compiles a text that must answer yes or no; what is it in a sentence ("The condition").
func (s *scope) condition(t source.Text) *Expr {
	e, typ := s.compile(t)
	if e == nil {
		return nil
	}
	if typ != cel.BoolType {
		s.fail(source.Errorf(t.All(), "not_yes_no", "A condition answers yes or no, and this is %s.", clinical.Describe(typ)).
			Hinting("Compare it with something, for example with < or ==."))
		return nil
	}
	return e
}

// formula compiles a text that must be a quantity in a dimension.
func (s *scope) formula(t source.Text, unit clinical.Unit) *Expr {
	e, typ := s.compile(t)
	if e == nil {
		return nil
	}
	if d, ok := clinical.DimensionOf(typ); !ok || d != unit.Dimension {
		want := clinical.Describe(unit.Dimension.CELType())
		hint := "It stands for a value in " + unit.Code + "."
		if number, ok := literalNumber(e.AST.NativeRep().Expr()); ok {
			hint = "For example " + clinical.LiteralFor(unit) + "(" + e.Written(number) + ")."
		}
		if typ == cel.IntType || typ == cel.DoubleType {
			hint = "A quantity says its unit, for example " + clinical.LiteralFor(unit) + "(10)."
		}
		s.fail(source.Errorf(t.All(), "dimension", "The formula must give %s, and this is %s.", want, clinical.Describe(typ)).Hinting("%s", hint))
		return nil
	}
	return e
}

// literalNumber gives the id of the number in a quantity that is written plainly, as 10 in deg(10).
func literalNumber(e ast.Expr) (id int64, ok bool) {
	if e.Kind() != ast.CallKind || len(e.AsCall().Args()) != 1 || literalFor(e.AsCall().FunctionName()) == "" {
		return 0, false
	}
	number := e.AsCall().Args()[0]
	return number.ID(), number.Kind() == ast.LiteralKind
}

func (s *scope) fail(d source.Diagnostic) { *s.diags = append(*s.diags, d) }

func (s *scope) compile(t source.Text) (*Expr, *cel.Type) {
	e := &Expr{Text: t, Env: s.env, Part: s.part}
	for i := range t.S {
		e.runes = append(e.runes, i)
	}
	e.runes = append(e.runes, len(t.S))
	if len(e.runes) > maxText {
		s.fail(source.Errorf(t.All(), "too_large", "The condition is longer than %d characters.", maxText).
			Hinting("Divide it into findings that each say one thing."))
		return nil, nil
	}
	if !s.spelling(t) {
		return nil, nil
	}
	parsed, iss := s.env.Parse(t.S)
	if iss.Err() != nil {
		s.syntax(e, iss)
		return nil, nil
	}
	e.spans = spans(t.S, parsed.NativeRep())
	before := s.diags.Errors()
	known := s.names(e, parsed.NativeRep())
	if !known || s.diags.Errors() > before {
		return nil, nil
	}
	checked, iss := s.env.Check(parsed)
	if iss.Err() != nil {
		s.mismatches(e, parsed.NativeRep(), iss)
		return nil, nil
	}
	e.AST = checked
	s.literals(e, checked)
	s.meaningless(e, checked)
	s.cost(e, checked)
	if s.diags.Errors() > before {
		return nil, nil
	}
	return e, checked.OutputType()
}
