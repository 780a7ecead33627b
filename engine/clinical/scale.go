package clinical

import (
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/operators"
	"github.com/google/cel-go/common/stdlib"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"github.com/google/cel-go/common/types/traits"

	"crus/engine/source"
)

// Scale is an ordinal scale: grades in order, the lowest first. Grades can be compared, and nothing
// else; the distance between two of them means nothing. Make one with NewScale.
type Scale struct {
	Name   string   // an identifier, which is also the CEL function that makes a grade
	Grades []string // labels; not to be changed

	ranks map[string]int
	typ   *cel.Type
}

var identifier = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)

// NewScale makes a scale. It needs a name that CEL has no other use for, and at least two grades, no
// two alike. The error is a whole sentence.
func NewScale(name string, grades []string) (*Scale, error) {
	switch {
	case !identifier.MatchString(name):
		return nil, fmt.Errorf("The scale's name %s must have small letters, digits and underscores only, and begin with a letter.", quoted(name))
	case reserved(name):
		return nil, fmt.Errorf("A scale can't be called %s: the word has another meaning in a condition.", name)
	case len(grades) < 2:
		return nil, fmt.Errorf("The scale %s needs at least two grades.", name)
	}
	s := &Scale{Name: name, Grades: slices.Clone(grades), ranks: make(map[string]int, len(grades)),
		typ: cel.OpaqueType(scalePrefix + name).WithTraits(traits.ComparerType)}
	for i, g := range grades {
		if g == "" || strings.TrimSpace(g) != g {
			return nil, fmt.Errorf("The scale %s has the grade %s: a grade has a label, without spaces around it.", name, quoted(g))
		}
		if _, twice := s.ranks[g]; twice {
			return nil, fmt.Errorf("The scale %s has the grade %s twice.", name, quoted(g))
		}
		s.ranks[g] = i
	}
	return s, nil
}

const scalePrefix = "scale." // of the type names in CEL

// reserved reports whether CEL or this package has another use for a function of that name.
func reserved(name string) bool {
	switch name {
	case "as", "break", "const", "continue", "else", "false", "for", "function", "if", "import", "in", "let", "loop",
		"package", "namespace", "null", "return", "true", "var", "void", "while", // CEL's own, in its specification
		operators.Has, operators.All, operators.Exists, operators.ExistsOne, operators.Map, operators.Filter: // macros
		return true
	}
	for _, f := range stdlib.Functions() {
		if f.Name() == name {
			return true
		}
	}
	return slices.ContainsFunc(Functions(), func(f Function) bool { return f.Name == name })
}

// Grade finds a grade by its label; false if the scale has none of that label.
func (s *Scale) Grade(label string) (Grade, bool) {
	rank, ok := s.ranks[label]
	if !ok {
		return Grade{}, false
	}
	return Grade{s, rank}, true
}

// At gives the grade of a rank, counted from 0; false if the scale does not reach so far.
func (s *Scale) At(rank int) (Grade, bool) {
	if rank < 0 || rank >= len(s.Grades) {
		return Grade{}, false
	}
	return Grade{s, rank}, true
}

// CELType is the type of s's grades in a condition. Scales of one name have one type.
func (s *Scale) CELType() *cel.Type { return s.typ }

// EnvOptions declares the function named after the scale, which makes a grade of its label, and the
// comparisons of grades. A label that the scale lacks gives an error value when it is evaluated.
func (s *Scale) EnvOptions() []cel.EnvOption {
	id := scalePrefix + s.Name
	pair := []*cel.Type{s.typ, s.typ}
	out := []cel.EnvOption{cel.Function(s.Name, cel.Overload(id, []*cel.Type{cel.StringType}, s.typ, cel.UnaryBinding(s.make)))}
	for _, op := range orderings {
		out = append(out, cel.Function(op, cel.Overload(id+op, pair, cel.BoolType)))
	}
	return out
}

func (s *Scale) make(label ref.Val) ref.Val {
	text, ok := label.(types.String)
	if !ok {
		return types.MaybeNoSuchOverloadErr(label)
	}
	g, ok := s.Grade(string(text))
	if !ok {
		return types.NewErr("%s has no grade %s; its grades are %s.", s.Name, quoted(string(text)), source.And(s.Grades))
	}
	return g
}

// is reports whether s and other are one scale, perhaps read twice.
func (s *Scale) is(other *Scale) bool {
	return s == other || s != nil && other != nil && s.Name == other.Name && slices.Equal(s.Grades, other.Grades)
}

// Grade is one grade of a scale. The zero Grade is of no scale.
type Grade struct {
	Scale *Scale
	Rank  int // counted from 0, the lowest; never a value to calculate with
}

// String is the grade's label; empty for one that its scale lacks.
func (g Grade) String() string {
	if g.Scale == nil || g.Rank < 0 || g.Rank >= len(g.Scale.Grades) {
		return ""
	}
	return g.Scale.Grades[g.Rank]
}

// Compare orders g and another grade of its scale: −1, 0 or 1.
func (g Grade) Compare(other ref.Val) ref.Val {
	p, ok := other.(Grade)
	switch {
	case !ok || !g.Scale.is(p.Scale):
		return types.MaybeNoSuchOverloadErr(other)
	case g.Rank < p.Rank:
		return types.IntNegOne
	case g.Rank > p.Rank:
		return types.IntOne
	}
	return types.IntZero
}

// Equal reports whether other is the same grade of the same scale.
func (g Grade) Equal(other ref.Val) ref.Val {
	p, ok := other.(Grade)
	return types.Bool(ok && g.Rank == p.Rank && g.Scale.is(p.Scale))
}

// Type is the CEL type of the scale.
func (g Grade) Type() ref.Type {
	if g.Scale == nil {
		return types.ErrorType
	}
	return g.Scale.typ
}

// Value is g itself.
func (g Grade) Value() any { return g }

// ConvertToNative gives g itself where a Grade, or an interface that it satisfies, is wanted.
func (g Grade) ConvertToNative(t reflect.Type) (any, error) { return native(g, t) }

// ConvertToType gives g's label, its type, or g itself.
func (g Grade) ConvertToType(t ref.Type) ref.Val { return convert(g, t) }
