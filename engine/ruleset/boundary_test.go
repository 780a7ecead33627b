package ruleset

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/cel-go/common/types"
	"github.com/google/cel-go/common/types/ref"

	"crus/engine/clinical"
)

func TestBoundaries(t *testing.T) {
	for _, x := range []struct{ name, when, want string }{ // each boundary, and the sides that have room: b, o, a
		{"at most", "limb.ankle_dorsiflexion <= deg(5)", "limb.ankle_dorsiflexion <= 5° boa"},
		{"the constant first", "deg(-5) < limb.ankle_dorsiflexion", "limb.ankle_dorsiflexion > −5° boa"},
		{"the other limb", "other.knee_extension >= deg(0)", "other.knee_extension >= 0° boa"},
		{"the person, another unit", "person.body_mass > kg(100) || person.body_mass < g(20000)", "person.body_mass > 100 kg boa, person.body_mass < 20000 g boa"},
		{"not equal", "limb.leg_length != mm(800)", "limb.leg_length != 800 mm boa"},
		{"a count", "person.falls >= 2", "person.falls >= 2 boa"},
		{"nothing below none", "person.falls == 0", "person.falls == 0 oa"},
		{"the end of the range", "limb.knee_extension >= deg(30)", "limb.knee_extension >= 30° bo"},
		{"beyond the range", "limb.knee_extension >= deg(40)", "limb.knee_extension >= 40° b"},
		{"a grade", "limb.plantarflexor_tone >= modified_ashworth('1+')", "limb.plantarflexor_tone >= 1+ boa"},
		{"the lowest grade", "limb.plantarflexor_tone == modified_ashworth('0')", "limb.plantarflexor_tone == 0 oa"},
		{"the highest grade", "modified_ashworth('4') == limb.plantarflexor_tone", "limb.plantarflexor_tone == 4 bo"},
		{"grades in a list", "limb.plantarflexor_power in [muscle_power('0'), muscle_power('2')]", "limb.plantarflexor_power == 0 oa, limb.plantarflexor_power == 2 boa"},
		{"time since", "since(person.last_injection) < weeks(12)", "since(person.last_injection) < 12 weeks boa"},
		{"no time since", "since(person.last_injection) > days(0)", "since(person.last_injection) > 0 days oa"},
		{"a quantity", "quantity.drop > mm(10)", "quantity.drop > 10 mm boa"},
		{"one constant twice, in two units", "limb.leg_length > mm(800) && limb.leg_length <= cm(80)", "limb.leg_length > 800 mm boa"},
		{"the limbs apart", "limb.leg_length > mm(800) && other.leg_length > mm(800)", "limb.leg_length > 800 mm boa, other.leg_length > 800 mm boa"},
		{"within more", "!(limb.ankle_dorsiflexion < deg(5)) ? person.falls > 1 : false", "limb.ankle_dorsiflexion < 5° boa, person.falls > 1 boa"},
		{"options", "limb.malleolar_skin == 'broken' || person.diabetes in ['type_1', 'type_2']", ""},
		{"yes or no", "person.skin_check_possible == true || recorded(limb.leg_length)", ""},
		{"two measures", "limb.leg_length > other.leg_length", ""},
		{"a difference", "limb.leg_length - other.leg_length > mm(10)", ""},
		{"of a list", "[limb.ankle_dorsiflexion, limb.knee_extension].exists(x, x > deg(5))", ""},
	} {
		rs := read(t, map[string]string{"bad/r.hcl": headed("bad", "") +
			"quantity \"drop\" {\n  unit  = \"mm\"\n  value = \"limb.leg_length - mm(700)\"\n}\n" + ruled("one", x.when)})
		var got []string
		for _, b := range Boundaries(rs) {
			below, on, above := b.Room()
			room := map[bool]string{true: "b"}[below] + map[bool]string{true: "o"}[on] + map[bool]string{true: "a"}[above]
			got = append(got, fmt.Sprint(b, " ", room))
			if b.Of != "rule.one" || !strings.Contains(x.when, b.Where.Text()) || b.Where.Text() == "" {
				t.Errorf("%s: of %s, at %q", x.name, b.Of, b.Where.Text())
			}
		}
		if s := strings.Join(got, ", "); s != x.want {
			t.Errorf("%s: got  %s\nwant %s", x.name, s, x.want)
		}
	}
}

// A ruleset's own findings, rules and cautions are looked at in this order; what it builds on and its
// formulas are not.
func TestBoundariesOfTheRuleset(t *testing.T) {
	rs := read(t, map[string]string{"bad/r.hcl": headed("bad", `  builds_on  = ["safety@1"]`, `  applies    = "person.age > years(4)"`) + `
caution "stiff" {
  level = "note"
  when  = "limb.knee_extension < deg(-20) || limb.ankle_dorsiflexion < deg(0)"
  says  = "Stiff."
  basis = "common_practice"
}
` + ruled("one", "finding.low", `  unless   = "limb.knee_extension > deg(10)"`) + `
finding "low" { holds = "limb.ankle_dorsiflexion < deg(0)" }
quantity "drop" {
  unit  = "mm"
  value = "limb.leg_length > mm(500) ? limb.leg_length : mm(0)"
}
`})
	var got []string
	for _, b := range Boundaries(rs) {
		got = append(got, b.Of+" "+b.String())
	}
	want := "finding.low limb.ankle_dorsiflexion < 0°; rule.one limb.knee_extension > 10°; caution.stiff limb.knee_extension < −20°"
	if s := strings.Join(got, "; "); s != want {
		t.Errorf("got  %s\nwant %s", s, want)
	}
}

func TestBoundarySide(t *testing.T) {
	rs := read(t, map[string]string{"bad/r.hcl": headed("bad", "") + ruled("one",
		"limb.leg_length > mm(800) || limb.plantarflexor_tone > modified_ashworth('1+') || person.falls > 2 || since(person.last_injection) > weeks(2)")})
	of := func(number float64, unit string) ref.Val {
		u, _ := clinical.UnitByCode(unit)
		q, err := clinical.NewQuantity(number, u)
		if err != nil {
			t.Fatal(err)
		}
		return q
	}
	tone := func(grade string) ref.Val {
		g, _ := rs.Vocabulary.Scale("modified_ashworth").Grade(grade)
		return g
	}
	power, _ := rs.Vocabulary.Scale("muscle_power").Grade("2")
	all := Boundaries(rs)
	for _, x := range []struct {
		boundary int
		value    ref.Val
		side     int
		ok       bool
	}{
		{0, of(799.9, "mm"), -1, true}, {0, of(80, "cm"), 0, true}, {0, of(1, "m"), 1, true}, {0, of(800, "deg"), 0, false}, {0, types.Int(3), 0, false},
		{1, tone("1"), -1, true}, {1, tone("1+"), 0, true}, {1, tone("2"), 1, true}, {1, power, 0, false},
		{2, types.Int(1), -1, true}, {2, types.Int(2), 0, true}, {2, types.Int(3), 1, true}, {2, types.True, 0, false},
		{3, of(13, "d"), -1, true}, {3, of(14, "d"), 0, true}, {3, of(1, "mo"), 1, true},
	} {
		if side, ok := all[x.boundary].Side(x.value); side != x.side || ok != x.ok {
			t.Errorf("%v at %s: %d %v, want %d %v", x.value, all[x.boundary], side, ok, x.side, x.ok)
		}
	}
}
