package source

import (
	"strings"
	"testing"
)

func at(src, marked string) Range {
	i := strings.Index(src, marked)
	return Range{NewFile("rules.hcl", []byte(src)), i, i + len(marked)}
}

func TestDiagnosticText(t *testing.T) {
	long := strings.Repeat("limb.knee_extension < deg(0) && ", 8) + "limb.leg_length < 5" + strings.Repeat(" && person.skin_check_possible", 8)
	for _, test := range []struct {
		name string
		d    Diagnostic
		want string
	}{
		{"no place", Errorf(Range{}, "folder", "There is no folder %s.", "x").Hinting("Check the path."), "error: There is no folder x.\n      Check the path.\n"},
		{"a warning", Warnf(at("a = 5", "5"), "c", "W."), "rules.hcl:1:5: warning: W.\n    1 | a = 5\n      |     ^\n"},
		{"tabs and letters of two columns", Errorf(at("\ta = 日本x", "x"), "c", "M."), "rules.hcl:1:8: error: M.\n    1 |  a = 日本x\n      |          ^\n"},
		{"a mark of two columns", Errorf(at("日本x", "日本"), "c", "M."), "rules.hcl:1:1: error: M.\n    1 | 日本x\n      | ^^^^\n"},
		{"over several lines", Errorf(at("ab\ncd\nef", "b\ncd\ne"), "c", "M."), "rules.hcl:1:2: error: M.\n    1 | ab\n      |  ^\n"},
		{"at the end", Errorf(Range{NewFile("rules.hcl", []byte("ab")), 2, 2}, "c", "M."), "rules.hcl:1:3: error: M.\n    1 | ab\n      |   ^\n"},
		{"controls and directions", Errorf(at("a\x00\u202Eb\x1b[31m", "b"), "c", "M."), "rules.hcl:1:4: error: M.\n    1 | a??b?[31m\n      |    ^\n"},
		{"another place", Errorf(at("a\nb", "b"), "c", "M.").With("The first one is here.", at("a\nb", "a")).Hinting("H."),
			"rules.hcl:2:1: error: M.\n    2 | b\n      | ^\n  rules.hcl:1:1: The first one is here.\n    1 | a\n      | ^\n      H.\n"},
		{"a long line", Errorf(at(long, "limb.leg_length"), "c", "M."),
			"rules.hcl:1:257: error: M.\n    1 | …knee_extension < deg(0) && limb.leg_length < 5 && person.skin_check_po…\n      |                             ^^^^^^^^^^^^^^^\n"},
		{"a long name", Errorf(Range{}, "c", "There is no %s here.", strings.Repeat("é", 200)), "error: There is no " + strings.Repeat("é", 99) + "… here.\n"},
		{"a long hint", Errorf(Range{}, "c", "M.").Hinting("%s", strings.Repeat("word ", 20)),
			"error: M.\n      " + strings.TrimSpace(strings.Repeat("word ", 15)) + "\n      " + strings.TrimSpace(strings.Repeat("word ", 5)) + "\n"},
	} {
		if got := (Diagnostics{test.d}).Text(); got != test.want {
			t.Errorf("%s: got\n%s\nwant\n%s", test.name, got, test.want)
		}
	}
}

func TestDiagnosticStyle(t *testing.T) {
	style := Style{Error: func(s string) string { return "E(" + s + ")" }, Warning: func(s string) string { return "W(" + s + ")" },
		Mark: func(s string) string { return "M(" + s + ")" }, Faint: func(s string) string { return "F(" + s + ")" }}
	got := Diagnostics{Errorf(at("a", "a"), "c", "One."), Warnf(Range{}, "c", "Two.")}.Render(style)
	want := "rules.hcl:1:1: E(error): One.\nF(    1 |) a\nF(      |) M(^)\n\nW(warning): Two.\n"
	if got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

func TestSorted(t *testing.T) {
	a, b := NewFile("a.hcl", []byte("12345")), NewFile("b.hcl", []byte("12345"))
	ds := Diagnostics{
		Errorf(Range{b, 1, 2}, "c", "b1."), Errorf(Range{a, 3, 4}, "c", "a3."), Warnf(Range{a, 1, 2}, "c", "A warning."), Errorf(Range{a, 1, 2}, "c", "Z."),
		Errorf(Range{a, 1, 2}, "c", "Y."), Errorf(Range{}, "c", "Nowhere."), Errorf(Range{a, 1, 2}, "c", "Z."), Errorf(Range{a, 1, 3}, "c", "Z."),
	}
	var got []string
	for _, d := range ds.Sorted() {
		got = append(got, d.Message)
	}
	if s := strings.Join(got, " "); s != "Nowhere. Y. Z. Z. A warning. a3. b1." {
		t.Errorf("order %s", s)
	}
	if ds[0].Message != "b1." || len(ds) != 8 || ds.Errors() != 7 || !ds.HasErrors() || ds[2:3].HasErrors() {
		t.Error("the diagnostics themselves changed")
	}
}

// With must not write into the places of another diagnostic.
func TestWithLeavesTheOtherAlone(t *testing.T) {
	one := Errorf(Range{}, "c", "M.").With("first", Range{}).With("second", Range{})
	one.With("third", Range{})
	other := one.With("fourth", Range{})
	if len(one.Related) != 2 || other.Related[2].Message != "fourth" {
		t.Errorf("%+v, %+v", one, other)
	}
}

func TestNearest(t *testing.T) {
	names := []string{"limb.knee_extension", "limb.hip_extension", "limb.ankle_dorsiflexion", "person.age", "finding.safety.fragile", "deg", "mm", "cm"}
	for _, test := range []struct{ name, want string }{
		{"limb.knee_extensoin", "limb.knee_extension"},
		{"limb.kip_extension", "limb.hip_extension or limb.knee_extension"},
		{"LIMB.KNEE_EXTENSION", "limb.knee_extension"},
		{"limb.age", "person.age"},
		{"finding.fragile", "finding.safety.fragile"},
		{"degrees", "deg"},
		{"m", ""},
		{"mn", "mm"},
		{"zzzzzz", ""},
		{"", ""},
		{"°", ""},
		{strings.Repeat("limb.knee_extension", 20), ""},
	} {
		if got := Or(Nearest(test.name, names)); got != test.want {
			t.Errorf("%q: %q, want %q", test.name, got, test.want)
		}
	}
}

func TestLists(t *testing.T) {
	if Or(nil) != "" || Or([]string{"a"}) != "a" || Or([]string{"a", "b"}) != "a or b" || And([]string{"a", "b", "c"}) != "a, b and c" {
		t.Error("wrongly joined")
	}
	if got := DidYouMean("aple", []string{"apple"}, "Else."); got != "Did you mean apple?" {
		t.Error(got)
	}
	if got := DidYouMean("zzz", []string{"apple"}, "Else."); got != "Else." {
		t.Error(got)
	}
	if got := strings.Join(Wrap("one two  three\nfour", 7), "|"); got != "one two|three|four" {
		t.Error(got)
	}
}
