package clinical

import (
	"fmt"
	"reflect"
	"time"

	"github.com/google/cel-go/cel"
	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"
)

// Date is a calendar day, or never, and may know the day that it is seen from: the day of the
// assessment. Its only use in a condition is since(date). Values of the type can be compared with ==.
type Date struct {
	day   int64 // from 1970-01-01
	seen  int64 // the day that it is seen from
	known bool  // seen is known
	never bool  // the other fields are 0 then
}

// NeverWord is how a date is written of what never was.
const NeverWord = "never"

var dateType = cel.OpaqueType(typePrefix + "date")

// DateType is the type of a date in a condition.
func DateType() *cel.Type { return dateType }

// ParseDate reads year-month-day, "2026-10-02". The error is a sentence without its full stop.
func ParseDate(s string) (Date, error) {
	t, err := time.Parse(time.DateOnly, s)
	if err != nil {
		return Date{}, fmt.Errorf("%s is not a date: write year-month-day, for example 2026-10-02", quoted(s))
	}
	return Date{day: t.Unix() / day}, nil
}

// Never is the date of what never was. It is the same from whichever day it is seen, and the time since
// it is Forever.
func Never() Date { return Date{never: true} }

// AsOf gives d as it is seen from another day.
func (d Date) AsOf(ref Date) Date {
	if d.never {
		return d
	}
	d.seen, d.known = ref.day, true
	return d
}

// Before gives the day that is so many days before d.
func (d Date) Before(days int) Date {
	if d.never {
		return d
	}
	d.day -= int64(days)
	return d
}

// String is d as year-month-day, or NeverWord.
func (d Date) String() string {
	if d.never {
		return NeverWord
	}
	return time.Unix(d.day*day, 0).UTC().Format(time.DateOnly)
}

// Since is the time from d up to the day that it is seen from, in days; false where that is not known.
// It is Forever, and known, of what never was.
func (d Date) Since() (Quantity, bool) {
	q, ok := since(d).(Quantity)
	return q, ok
}

// since is the time from a date up to the day that it is seen from, in days; negative where it lies
// after that day. Since what never was it is Forever, from whichever day it is seen.
func since(v ref.Val) ref.Val {
	d, ok := v.(Date)
	switch {
	case !ok:
		return types.MaybeNoSuchOverloadErr(v)
	case d.never:
		return Forever()
	case !d.known:
		return types.NewErr("The assessment has no date, so the time since %s can't be told.", d)
	}
	days, _ := UnitByCode("d")
	return result(float64(d.seen-d.day)*day, days.id)
}

// Equal reports whether other is the same day, or never like d.
func (d Date) Equal(other ref.Val) ref.Val {
	p, ok := other.(Date)
	return types.Bool(ok && p.day == d.day && p.never == d.never)
}

// Type is DateType.
func (d Date) Type() ref.Type { return dateType }

// Value is d itself.
func (d Date) Value() any { return d }

// ConvertToNative gives d itself where a Date, or an interface that it satisfies, is wanted.
func (d Date) ConvertToNative(t reflect.Type) (any, error) { return native(d, t) }

// ConvertToType gives d's text, its type, or d itself.
func (d Date) ConvertToType(t ref.Type) ref.Val { return convert(d, t) }
