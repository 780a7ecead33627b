package clinical

import (
	"strings"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
)

// Function describes a function that this package adds to CEL.
type Function struct {
	Name      string
	Signature string // how it is written, by example: "deg(5)"
	Doc       string // what it gives, on one line
}

// Functions lists every function that this package adds to CEL, the operators and the scales apart.
func Functions() []Function {
	var out []Function
	for _, u := range units[1:] {
		f := Function{Name: u.literal, Signature: u.literal + "(5)", Doc: describeDimension(u.Dimension) + " in " + u.plural}
		switch {
		case u.literal == "":
			continue
		case u.plural == "":
			f.Signature, f.Doc = u.literal+"(0.9)", describeDimension(u.Dimension)
		}
		out = append(out, f)
	}
	return append(out,
		Function{"abs", "abs(limb.x)", "a quantity or number without its sign"},
		Function{"least", "least(limb.x, other.x)", "the smallest of two to six quantities of one dimension, or of numbers"},
		Function{"greatest", "greatest(limb.x, other.x)", "the largest of two to six quantities of one dimension, or of numbers"},
		Function{"since", "since(person.x)", "the time from a date up to the date of the assessment"})
}

func describeDimension(d Dimension) string {
	if strings.ContainsRune("aeiou", rune(d[0])) {
		return "an " + d.String()
	}
	return "a " + d.String()
}

// Describe names a CEL type for people: "an angle", "a grade of muscle_power", "a date", "yes or no",
// "a bare number", "text", "a list".
func Describe(t *cel.Type) string {
	if d, ok := DimensionOf(t); ok {
		return describeDimension(d)
	}
	if t == nil {
		return "something unknown"
	}
	if scale, ok := strings.CutPrefix(t.TypeName(), scalePrefix); ok {
		return "a grade of " + scale
	}
	if t.TypeName() == dateType.TypeName() {
		return "a date"
	}
	switch t.Kind() {
	case types.IntKind, types.DoubleKind, types.UintKind:
		return "a bare number"
	case types.BoolKind:
		return "yes or no"
	case types.StringKind:
		return "text"
	case types.ListKind:
		return "a list"
	case types.MapKind:
		return "a table of names and values"
	case types.NullTypeKind:
		return "nothing"
	case types.BytesKind:
		return "raw bytes"
	case types.TimestampKind:
		return "a point in time"
	case types.DurationKind:
		return "a bare length of time"
	case types.TypeKind:
		return "the name of a type"
	case types.DynKind, types.AnyKind:
		return "a value of any kind"
	}
	return t.String()
}
