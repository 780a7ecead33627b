package reason_test

import (
	"fmt"
	"strings"
	"testing"

	"crus/engine/reason"
)

// The operands of the tables below, by letter: t true, f false, u unknown, x failed. In a table each
// row is the first operand and each column the second, both in the order t f u x.
const operands = "tfux"

func operand(c byte, second bool) string {
	measures := map[byte]string{'t': "limb.p", 'f': "limb.q", 'u': "limb.r", 'x': "finding.fails"}
	if second && c == 'u' {
		return "limb.s"
	}
	return measures[c]
}

// letter gives the value of a finding as a letter.
func letter(t *testing.T, r *reason.Result, name string) byte {
	t.Helper()
	v, known := r.Findings[name]
	if !known {
		t.Fatalf("there is no finding %s", name)
	}
	trace := r.Traces["finding."+name].When.Value
	switch {
	case v != nil && *v:
		return 't'
	case v != nil:
		return 'f'
	case trace.Failed() != "":
		return 'x'
	}
	return 'u'
}

func TestTwoOperands(t *testing.T) {
	tables := []struct {
		form  string // %s and %s are the operands
		truth [4]string
	}{
		{"%s && %s", [4]string{"tfux", "ffff", "ufuu", "xfux"}},
		{"%s || %s", [4]string{"tttt", "tfux", "tuuu", "txux"}},
		{"!(%s && %s)", [4]string{"ftux", "tttt", "utuu", "xtux"}},
		{"!(%s || %s)", [4]string{"ffff", "ftux", "fuuu", "fxux"}},
		// What fails, fails whatever the other side is.
		{"%s == %s", [4]string{"tfux", "ftux", "uuux", "xxxx"}},
		{"%s != %s", [4]string{"ftux", "tfux", "uuux", "xxxx"}},
		{"%s ? true : %s", [4]string{"tttt", "tfux", "uuuu", "xxxx"}},
		{"%s ? %s : false", [4]string{"tfux", "ffff", "uuuu", "xxxx"}},
		{"true ? %s : %s", [4]string{"tttt", "ffff", "uuuu", "xxxx"}},
		{"false ? %s : %s", [4]string{"tfux", "tfux", "tfux", "tfux"}},
		// A list is looked through like a chain of || or &&.
		{"[%s, %s].exists(b, b)", [4]string{"tttt", "tfux", "tuuu", "txux"}},
		{"[%s, %s].all(b, b)", [4]string{"tfux", "ffff", "ufuu", "xfux"}},
		{"[%s, %s].exists(b, !b)", [4]string{"ftux", "tttt", "utuu", "xtux"}},
		{"[%s].exists(b, b && %s)", [4]string{"tfux", "ffff", "ufuu", "xfux"}},
		{"true in [%s, %s]", [4]string{"tttt", "tfux", "tuuu", "txux"}},
		{"%s in [false, %s]", [4]string{"tfux", "tttt", "uuuu", "xxxx"}},
		{"%s in [true, true] || %s", [4]string{"tttt", "tfux", "tuuu", "txux"}},
		{"[%s, %s].exists_one(b, b)", [4]string{"ftux", "tfux", "uuux", "xxxx"}},
	}
	var blocks []string
	name := func(i, a, b int) string { return fmt.Sprintf("n_%d_%d_%d", i, a, b) }
	blocks = append(blocks, finding("fails", "limb.lift / limb.gap > ratio(1)"))
	for i, table := range tables {
		for a := range operands {
			for b := range operands {
				blocks = append(blocks, finding(name(i, a, b), fmt.Sprintf(table.form, operand(operands[a], false), operand(operands[b], true))))
			}
		}
	}
	r := found(advise(t, "p=true q=false lift=10 gap=0", blocks...), "left")
	for i, table := range tables {
		for a := range operands {
			var got strings.Builder
			for b := range operands {
				got.WriteByte(letter(t, r, name(i, a, b)))
			}
			same(t, fmt.Sprintf("%s, first operand %c, second t f u x", table.form, operands[a]), got.String(), table.truth[a])
		}
	}
}

func TestThreeOperands(t *testing.T) {
	var blocks []string
	type row struct{ text, want string }
	rows := []row{
		{"limb.p && limb.r && limb.q", "f"},
		{"limb.r && limb.s && limb.p", "u"},
		{"limb.q || limb.r || limb.p", "t"},
		{"limb.p ? limb.r : limb.q", "u"},
		{"limb.q ? limb.r : limb.p", "t"},
		{"limb.r ? limb.p : limb.p", "u"}, // Kleene: what is unknown is not looked through
		{"!limb.r", "u"},
		{"!limb.p", "f"},
		{"!!limb.q", "f"},
		{"!finding.fails", "x"},
		{"limb.r || !limb.r", "u"},
		{"finding.fails && limb.r && limb.q", "f"},
		{"finding.fails || limb.r || limb.p", "t"},
		{"[limb.q, limb.r, limb.p].exists(b, b)", "t"},
		{"[limb.p, limb.r, limb.q].all(b, b)", "f"},
		{"recorded(limb.p)", "t"},
		{"recorded(limb.r)", "f"},
		{"!recorded(limb.r)", "t"},
		{"recorded(limb.p) && limb.p", "t"},
		{"recorded(limb.r) && limb.r", "f"},
		{"!recorded(limb.r) || limb.r", "t"},
		{"recorded(limb.r) || limb.r", "u"},
		{"recorded(other.p)", "f"},
		{"recorded(person.age) || limb.q", "f"},
	}
	blocks = append(blocks, finding("fails", "limb.lift / limb.gap > ratio(1)"))
	for i, x := range rows {
		blocks = append(blocks, finding(fmt.Sprintf("n%d", i), x.text))
	}
	r := found(advise(t, "p=true q=false lift=10 gap=0", blocks...), "left")
	for i, x := range rows {
		same(t, x.text, string(letter(t, r, fmt.Sprintf("n%d", i))), x.want)
	}
}

// Comparisons of every kind of value: with each operand known, unknown and failed, on both sides.
func TestComparisons(t *testing.T) {
	type row struct{ text, want string }
	var rows []row
	// lift is 10 mm, gap 0 mm, quantity.fails fails, and other.lift is not recorded.
	order := map[string]string{"<": "tff", "<=": "ttf", ">": "fft", ">=": "ftt", "==": "ftf", "!=": "tft"} // limb.lift against 11, 10, 9
	for op, want := range order {
		for i, n := range []int{11, 10, 9} {
			rows = append(rows, row{fmt.Sprintf("limb.lift %s mm(%d)", op, n), want[i : i+1]})
			mirror := map[string]string{"<": ">", "<=": ">=", ">": "<", ">=": "<=", "==": "==", "!=": "!="}[op]
			rows = append(rows, row{fmt.Sprintf("mm(%d) %s limb.lift", n, mirror), want[i : i+1]})
		}
		for _, x := range []row{
			{"other.lift %s mm(5)", "u"}, {"mm(5) %s other.lift", "u"}, {"other.lift %s limb.lift", "u"}, {"limb.lift %s other.lift", "u"},
			{"other.lift %s other.gap", "u"}, {"quantity.fails %s mm(5)", "x"}, {"mm(5) %s quantity.fails", "x"},
			{"quantity.fails %s other.lift", "x"}, {"other.lift %s quantity.fails", "x"}, {"quantity.fails %s quantity.fails", "x"},
		} {
			rows = append(rows, row{fmt.Sprintf(x.text, op), x.want})
		}
	}
	rows = append(rows, []row{
		{"limb.tone == tone_scale('1+')", "t"}, {"limb.tone != tone_scale('1+')", "f"}, {"limb.tone > tone_scale('1')", "t"},
		{"limb.tone >= tone_scale('2')", "f"}, {"limb.tone < tone_scale('2')", "t"}, {"limb.tone <= tone_scale('1')", "f"},
		{"limb.tone in [tone_scale('0'), tone_scale('1+')]", "t"}, {"other.tone >= tone_scale('0')", "u"}, {"tone_scale('4') >= other.tone", "u"},
		{"limb.skin == 'fragile'", "t"}, {"limb.skin != 'fragile'", "f"}, {"limb.skin in ['intact', 'broken']", "f"},
		{"limb.skin in ['intact', 'fragile']", "t"}, {"other.skin == 'intact'", "u"}, {"'intact' != other.skin", "u"}, {"other.skin in ['intact', 'fragile', 'broken']", "u"},
		{"limb.posture < 0", "t"}, {"limb.posture == -3", "t"}, {"limb.posture in [1, -3]", "t"}, {"limb.posture + 5 >= 2", "t"}, {"other.posture > 0", "u"},
		{"limb.lift in [mm(5), mm(10)]", "t"}, {"limb.lift in [mm(5), limb.gap]", "f"}, {"limb.lift in [other.lift, mm(10)]", "t"},
		{"limb.lift in [other.lift, mm(5)]", "u"}, {"limb.lift in [quantity.fails, mm(10)]", "t"}, {"limb.lift in [quantity.fails, mm(5)]", "x"},
		{"limb.lift in [quantity.fails, other.lift]", "u"}, {"other.lift in [mm(5)]", "u"}, {"other.lift in []", "f"},
		{"limb.lift - limb.gap == mm(10)", "t"}, {"limb.lift + limb.lift == cm(2)", "t"}, {"limb.lift * 2 == mm(20)", "t"}, {"limb.lift / 2 == mm(5)", "t"},
		{"limb.lift / 0 == mm(5)", "x"}, {"limb.lift + other.lift > mm(5)", "u"}, {"limb.lift - quantity.fails > mm(5)", "x"}, {"-limb.flex == deg(5)", "t"},
		{"[limb.lift, other.lift].exists(x, x >= mm(10))", "t"}, {"[limb.lift, other.lift].all(x, x > mm(10))", "f"}, {"[limb.lift, other.lift].all(x, x >= mm(10))", "u"},
		{"since(person.injected) == days(30)", "t"}, {"since(person.injected) < weeks(4)", "f"}, {"days(10) > since(person.injected)", "f"},
		{"person.age >= years(18)", "u"}, {"person.work == 'desk'", "t"}, {"person.driver", "f"},
	}...)
	var blocks []string
	blocks = append(blocks, quantity("fails", "mm", "limb.lift * (limb.lift / limb.gap < ratio(1) ? 1 : 2)"))
	for i, x := range rows {
		blocks = append(blocks, finding(fmt.Sprintf("n%d", i), x.text))
	}
	o := advise(t, "lift=10 gap=0 tone=1+ skin=fragile posture=-3 flex=-5 work=desk driver=false injected=2026-09-02", blocks...)
	for i, x := range rows {
		r, name := o.Limbs["left"], fmt.Sprintf("n%d", i)
		if _, limb := r.Findings[name]; !limb {
			r = o.Person
		}
		same(t, x.text, string(letter(t, r, name)), x.want)
	}
}

// since() needs both dates: without the injection's it is unknown, without the assessment's it fails.
func TestSince(t *testing.T) {
	rule := rule("late", "since(person.injected) > weeks(12)", "pad favour soft")
	for _, x := range []struct{ given, states, value string }{
		{"injected=2026-07-01", "late fired", `true`},
		{"injected=2026-09-20", "late did_not_fire", `false`},
		{"", "late pending(person.injected)", `null`},
		{"injected=2026-07-01 date=", "late pending", `{"failed":"The assessment has no date, so the time since 2026-07-01 can't be told."}`},
	} {
		o := advise(t, x.given, rule)
		same(t, x.given, states(o, "left"), x.states)
		v, err := o.Person.Rules["late"].Trace.When.Value.MarshalJSON()
		if err != nil {
			t.Fatal(err)
		}
		same(t, x.given+": value", string(v), x.value)
	}
}
