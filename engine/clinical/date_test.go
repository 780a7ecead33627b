package clinical

import (
	"testing"

	"github.com/google/cel-go/common/types"
)

func TestParseDate(t *testing.T) {
	for _, s := range []string{"2026-10-02", "1970-01-01", "1969-12-31", "2024-02-29", "0001-01-01", "9999-12-31"} {
		if got, err := ParseDate(s); err != nil || got.String() != s {
			t.Errorf("%s is read as %v, %v", s, got, err)
		}
	}
	for _, s := range []string{"", "2026-2-3", "2026-02-30", "2025-02-29", "02.10.2026", "2026-10-02T00:00:00Z", "2026-10-02 ", "20261002", "yesterday", "-2026-01-01", "12026-01-01"} {
		want := quoted(s) + " is not a date: write year-month-day, for example 2026-10-02"
		if got, err := ParseDate(s); err == nil || err.Error() != want || got != (Date{}) {
			t.Errorf("%q is read as %v, %v", s, got, err)
		}
	}
}

func TestSince(t *testing.T) {
	env := environment(t)
	assessed := date(t, "2026-10-02")
	for _, c := range []struct {
		day, expr string
		want      types.Bool
	}{
		{"2026-10-02", "since(day) == days(0)", true},
		{"2026-10-01", "since(day) == days(1)", true},
		{"2026-07-10", "since(day) == weeks(12)", true},
		{"2026-07-10", "since(day) < weeks(12)", false},
		{"2026-07-11", "since(day) < weeks(12)", true},
		{"2024-02-29", "since(day) == days(946)", true}, // over a leap day: 1 March 2024 to 2 October 2026 is 945 days
		{"1966-10-02", "since(day) > years(59.9) && since(day) < years(60.1)", true},
		{"2026-10-03", "since(day) == days(-1)", true},
	} {
		if got := eval(t, env, c.expr, map[string]any{"day": date(t, c.day).AsOf(assessed)}); got != c.want {
			t.Errorf("%s for %s is %v", c.expr, c.day, got)
		}
	}
	if got := eval(t, env, "since(day)", map[string]any{"day": date(t, "2026-09-30").AsOf(assessed)}); got.(Quantity).String() != "2 days" {
		t.Errorf("two days are shown as %v", got)
	}
	if got := assessed.Before(34); got.String() != "2026-08-29" || got.Before(-34) != assessed {
		t.Errorf("34 days before 2026-10-02 is %v", got)
	}
	if d := date(t, "2026-07-10"); d.AsOf(assessed).Equal(d) != types.True || d.Equal(assessed) != types.False || d.Equal(types.String("2026-07-10")) != types.False {
		t.Error("dates are equal by their day alone")
	}
	for _, expr := range []string{"day < undated", "day > '2026-10-02'", "day - undated", "since('2026-10-02')", "since(n)", "day + days(3)", "day == '2026-10-02'"} {
		if _, iss := env.Compile(expr); iss.Err() == nil {
			t.Errorf("%s compiles", expr)
		}
	}
}

// Since says the same to a program as since(...) says to a condition.
func TestSinceOfDate(t *testing.T) {
	day := date(t, "2026-10-02")
	if _, known := day.Since(); known {
		t.Error("the time since a date is known without a day to see it from")
	}
	for seen, want := range map[string]string{"2026-10-16": "14 days", "2026-10-02": "0 days", "2026-10-01": "−1 day", "2027-10-02": "365 days"} {
		if got, known := day.AsOf(date(t, seen)).Since(); !known || got.String() != want {
			t.Errorf("from %s: %v %v, want %s", seen, got, known, want)
		}
	}
}

// What never was is longer ago than any limit, from whichever day it is seen, and nothing is worked out from it.
func TestNever(t *testing.T) {
	env := environment(t)
	assessed := date(t, "2026-10-02")
	const refused = "The time since what never was can be compared, and nothing can be worked out from it."
	for _, c := range []struct {
		expr string
		want any
	}{
		{"since(day) < weeks(13)", types.False}, {"since(day) <= weeks(13)", types.False}, {"since(day) == weeks(13)", types.False},
		{"since(day) > weeks(13)", types.True}, {"since(day) >= weeks(13)", types.True}, {"since(day) != weeks(13)", types.True},
		{"weeks(13) < since(day)", types.True}, {"since(day) > years(1000000000000)", types.True},
		{"since(day) > years(1000000000000) * 30", types.True}, // close to the largest result of a calculation
		{"since(day) > since(undated)", types.True}, {"since(day) == since(day)", types.True},
		{"least(since(day), since(undated)) == days(10)", types.True}, {"greatest(since(day), since(undated)) == since(day)", types.True},
		{"abs(since(day)) == since(day)", types.True},
		{"since(day) - since(undated)", refused}, {"since(undated) - since(day)", refused}, {"since(day) - since(day)", refused}, {"since(day) + days(1)", refused}, {"days(1) + since(day)", refused},
		{"-since(day)", refused}, {"since(day) * 0", refused}, {"0.5 * since(day)", refused}, {"since(day) * ratio(0)", refused}, {"ratio(0) * since(day)", refused},
		{"since(day) / 1000000", refused}, {"since(day) / since(day)", refused}, {"days(1) / since(day)", refused}, {"since(day) * m_per_s(1)", refused}, {"m_per_s(1) * since(day)", refused},
		{"m(1) / since(day)", refused}, {"least(since(day), since(undated)) - days(1) == days(9)", types.True},
	} {
		for _, never := range []Date{Never(), Never().AsOf(assessed), Never().Before(30)} {
			got := eval(t, env, c.expr, map[string]any{"day": never, "undated": date(t, "2026-09-22").AsOf(assessed)})
			if e, failed := got.(*types.Err); failed && e.Error() == c.want || got == c.want {
				continue
			}
			t.Errorf("%s is %v, want %v", c.expr, got, c.want)
		}
	}
	q, known := Never().Since()
	if !known || q != Forever() || q.Dimension() != Time {
		t.Errorf("the time since what never was: %v %v", q, known)
	}
	weeks, _ := UnitByCode("wk")
	for _, text := range []string{q.String(), q.Short(), q.Brief(), q.WithUnit(weeks).String()} {
		if text != "longer than any limit" {
			t.Errorf("it is shown as %s", text)
		}
	}
	if Never().String() != NeverWord || Never().Equal(Never().AsOf(assessed)) != types.True || Never().Equal(date(t, "1970-01-01")) != types.False || date(t, "1970-01-01").Equal(Never()) != types.False {
		t.Error("never is a date like others, or is not like itself")
	}
	if d, err := ParseDate(NeverWord); err == nil {
		t.Errorf("never is read as %v", d) // only some measures have it: see assess
	}
}

// A number that was taken of a quantity gives the quantity back, also of the longest time.
func TestRestored(t *testing.T) {
	for _, u := range Units() {
		if u.Dimension == Time {
			if at, ok := Forever().In(u); !ok {
				t.Errorf("no number in %s", u.Code)
			} else if got, err := Restored(at, u); err != nil || got.Equal(Forever()) != types.True || got.Unit() != u {
				t.Errorf("%g %s is %v, %v", at, u.Code, got, err)
			}
		}
		want := q(t, 12.5, u.Code)
		if got, err := Restored(12.5, u); err != nil || got != want {
			t.Errorf("12.5 %s is %v, %v", u.Code, got, err)
		}
		if got, err := Restored(2e12, u); err == nil {
			t.Errorf("2e12 %s is %v", u.Code, got)
		}
	}
	days, _ := UnitByCode("d")
	if at, _ := Forever().In(days); at != 1e18 {
		t.Errorf("the longest time has %g days", at)
	}
}
