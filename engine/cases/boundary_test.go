package cases

import (
	"cmp"
	"strings"
	"testing"
)

// more is a rule on the other limb, one on a worked-out quantity, and one on the end of a range.
const more = `rule "other_heel" {
  when     = "other.heel >= mm(10)"
  unless   = "quantity.twice > mm(40)"
  because  = "Other."
  strength = "strong"
  basis    = "common_practice"
  advise "shell" { favour = "anterior" }
}
caution "old" {
  level = "note"
  when  = "person.age >= years(110) || since(person.injected) < weeks(2) || person.falls == 0"
  says  = "Old."
  basis = "common_practice"
}
`

// recorded is what one case gives.
type recorded struct{ left, right, person, date, device string }

// hcl writes the case; the person is 40 years old and the left limb gets a device, where nothing else is said.
func (r recorded) hcl(name string) string {
	lines := []string{"case \"" + name + "\" {", "given {", "device_for = [" + cmp.Or(r.device, `"left"`) + "]", r.date,
		"person {", cmp.Or(r.person, "age = 40"), "}", "left {", r.left, "}", "right {", r.right, "}", "}",
		"expect \"left\" {", `silent = ["never_any"]`, "}", "}", ""}
	return strings.Join(lines, "\n")
}

func TestBoundaries(t *testing.T) {
	const injected = "age = 40\n injected = \"2026-10-01\""
	for _, x := range []struct {
		name  string
		cases []recorded
		of    string // the boundary that is looked at: the beginning of its text
		want  string // what no case has shown; "" where it is not listed
	}{
		{"no case", nil, "limb.tone >= 3", "on below"},
		{"on it", []recorded{{left: `tone = "3"`}}, "limb.tone >= 3", "below"},
		{"below it", []recorded{{left: `tone = "2"`}}, "limb.tone >= 3", "on"},
		{"nothing is above the highest grade", []recorded{{left: `tone = "3"`}, {left: `tone = "0"`}}, "limb.tone >= 3", ""},
		{"on it and above", []recorded{{left: `tone = "3"`}, {left: `tone = "2"`}}, "limb.tone <= 2", "below"},
		{"all three", []recorded{{left: `tone = "3"`}, {left: `tone = "2"`}, {left: `tone = "1"`}}, "limb.tone <= 2", ""},
		{"another condition with the same boundary", nil, "limb.tone >= 2", ""},
		{"the limb without a device is not advised on", []recorded{{left: "heel = 1", right: `tone = "2"`}}, "limb.tone <= 2", "on below above"},
		{"nor is its quantity", []recorded{{left: "heel = 1", right: "heel = 20"}}, "quantity.twice > 40 mm", "on above"},
		{"this limb is not the other one", []recorded{{left: "heel = 20"}}, "other.heel >= 10 mm", "on below above"},
		{"the other one", []recorded{{left: "heel = 20", right: "heel = 9.9"}}, "other.heel >= 10 mm", "on above"},
		{"both are advised on", []recorded{{left: "heel = 20", right: "heel = 10", device: `"left", "right"`}}, "other.heel >= 10 mm", "below"},
		{"a quantity", []recorded{{left: "heel = 20"}, {left: "heel = 20.1"}, {left: "heel = 0"}}, "quantity.twice > 40 mm", ""},
		{"a quantity that is unknown", []recorded{{left: `tone = "3"`}}, "quantity.twice > 40 mm", "on below above"},
		{"another unit", []recorded{{left: `heel = "2 cm"`}}, "quantity.twice > 40 mm", "below above"},
		{"not recorded, with the reason", []recorded{{left: `tone = { not_recorded = "pain" }`}}, "limb.tone >= 3", "on below"},
		{"the person", []recorded{{left: "heel = 1"}}, "person.age >= 110 years", "on"},
		{"a count", []recorded{{person: "age = 40\n falls = 2"}}, "person.falls == 0", "on"},
		{"out of scope", []recorded{{left: `tone = "3"`, person: "age = 4"}}, "limb.tone >= 3", "on below"},
		{"the scope is unknown", []recorded{{left: `tone = "3"`, person: "falls = 2"}}, "limb.tone >= 3", "below"},
		{"since a date", []recorded{{person: injected, date: `date = "2026-10-15"`}}, "since(person.injected) < 2 weeks", "below above"},
		{"since a date, a day more", []recorded{{person: injected, date: `date = "2026-10-16"`}}, "since(person.injected) < 2 weeks", "on below"},
		{"since never, which needs no date", []recorded{{person: "age = 40\n injected = \"never\""}}, "since(person.injected) < 2 weeks", "on below"},
		{"no date of assessment", []recorded{{person: injected}}, "since(person.injected) < 2 weeks", "on below above"},
		{"an option has none", nil, "limb.skin", ""},
	} {
		t.Run(x.name, func(t *testing.T) {
			text := more
			for i, c := range x.cases {
				text += c.hcl(string(rune('a' + i)))
			}
			report, diags := Run(engine(t, text), today)
			if report == nil {
				t.Fatal(diags.Text())
			}
			var got string
			for _, b := range report.Boundaries {
				if strings.HasPrefix(b.Text, x.of) {
					got = strings.Join(b.Not, " ")
				}
			}
			if got != x.want {
				t.Errorf("%s is not shown %q, want %q", x.of, got, x.want)
			}
			if n := report.BoundariesShown + len(report.Boundaries); n != 7 {
				t.Errorf("%d boundaries", n)
			}
		})
	}
}

func TestBoundaryInWords(t *testing.T) {
	for _, x := range []struct{ not, want string }{
		{"on", "No case stands on limb.x <= 5° (r.hcl:1:2)."},
		{"on above", "No case stands on limb.x <= 5° (r.hcl:1:2), and none above it."},
		{"on below above", "No case stands on limb.x <= 5° (r.hcl:1:2), and none below or above it."},
		{"below", "No case stands below limb.x <= 5° (r.hcl:1:2)."},
		{"below above", "No case stands below or above limb.x <= 5° (r.hcl:1:2)."},
	} {
		if got := (Boundary{"rule.a", "limb.x <= 5°", "r.hcl:1:2", strings.Fields(x.not)}).String(); got != x.want {
			t.Errorf("got  %s\nwant %s", got, x.want)
		}
	}
}
