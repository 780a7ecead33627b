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
