package clinical

import (
	"fmt"
	"reflect"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
	"github.com/google/cel-go/common/types/traits"
)

// Scale is an ordinal scale.
type Scale struct {
	Name   string
	Grades []string
	typ    *cel.Type
	rank   map[string]int
}

// NewScale makes one.
func NewScale(name string, grades []string) (*Scale, error) {
	if len(grades) < 2 {
		return nil, fmt.Errorf("The scale %s needs at least two grades.", name)
	}
	s := &Scale{Name: name, Grades: grades, typ: cel.OpaqueType("scale." + name).WithTraits(traits.ComparerType), rank: map[string]int{}}
	for i, g := range grades {
		s.rank[g] = i
	}
	return s, nil
}

// Grade finds a grade.
func (s *Scale) Grade(label string) (Grade, bool) { i, ok := s.rank[label]; return Grade{s, i}, ok }

// At gives the grade at a rank.
func (s *Scale) At(rank int) (Grade, bool) {
	return Grade{s, rank}, rank >= 0 && rank < len(s.Grades)
}

// CELType is its type.
func (s *Scale) CELType() *cel.Type { return s.typ }

// EnvOptions declares it.
func (s *Scale) EnvOptions() []cel.EnvOption {
	return []cel.EnvOption{cel.Function(s.Name, cel.Overload("scale_"+s.Name, []*cel.Type{cel.StringType}, s.typ, cel.UnaryBinding(func(v ref.Val) ref.Val {
		g, ok := s.Grade(string(v.(types.String)))
		if !ok {
			return types.NewErr("no such grade")
		}
		return g
	}))), cel.Function("_<_", cel.Overload("less_"+s.Name, []*cel.Type{s.typ, s.typ}, cel.BoolType)),
		cel.Function("_<=_", cel.Overload("less_equals_"+s.Name, []*cel.Type{s.typ, s.typ}, cel.BoolType)),
		cel.Function("_>_", cel.Overload("greater_"+s.Name, []*cel.Type{s.typ, s.typ}, cel.BoolType)),
		cel.Function("_>=_", cel.Overload("greater_equals_"+s.Name, []*cel.Type{s.typ, s.typ}, cel.BoolType))}
}

// Grade is one grade.
type Grade struct {
	Scale *Scale
	Rank  int
}

func (g Grade) String() string                              { return g.Scale.Grades[g.Rank] }
func (g Grade) ConvertToNative(t reflect.Type) (any, error) { return nil, fmt.Errorf("no") }
func (g Grade) ConvertToType(t ref.Type) ref.Val            { return types.NewErr("no") }
func (g Grade) Type() ref.Type                              { return g.Scale.typ }
func (g Grade) Value() any                                  { return g }
func (g Grade) Equal(o ref.Val) ref.Val {
	p, ok := o.(Grade)
	return types.Bool(ok && p == g)
}
func (g Grade) Compare(o ref.Val) ref.Val {
	p, ok := o.(Grade)
	if !ok {
		return types.MaybeNoSuchOverloadErr(o)
	}
	return types.Int(max(-1, min(1, g.Rank-p.Rank)))
}
