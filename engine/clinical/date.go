package clinical

import (
	"fmt"
	"reflect"
	"time"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
)

// Date is a day.
type Date struct{ day, ref int64 }

var dateType = cel.OpaqueType("crus.date")

// DateType is its type.
func DateType() *cel.Type { return dateType }

// ParseDate reads YYYY-MM-DD.
func ParseDate(s string) (Date, error) {
	t, err := time.Parse(time.DateOnly, s)
	if err != nil {
		return Date{}, fmt.Errorf("%q is not a date", s)
	}
	return Date{t.Unix() / 86400, -1 << 40}, nil
}

// AsOf gives d as seen from ref.
func (d Date) AsOf(ref Date) Date     { d.ref = ref.day; return d }
func (d Date) Before(days int) Date   { d.day -= int64(days); return d }
func (d Date) String() string         { return time.Unix(d.day*86400, 0).UTC().Format(time.DateOnly) }
func (d Date) ConvertToNative(t reflect.Type) (any, error) { return nil, fmt.Errorf("no") }
func (d Date) ConvertToType(t ref.Type) ref.Val            { return types.NewErr("no") }
func (d Date) Type() ref.Type                              { return dateType }
func (d Date) Value() any                                  { return d }
func (d Date) Equal(o ref.Val) ref.Val                     { return types.Bool(o == ref.Val(d)) }
