package render

import (
	"testing"

	"crus/engine/reason"
)

// What another result hangs on reads as a sentence, whatever the words of the options are.
func TestUnder(t *testing.T) {
	v := small(t)
	d := &drawer{v: v, o: &reason.Outcome{}}
	d.naming = d.replacer()
	var option, number string
	for _, m := range v.Measures {
		switch {
		case len(m.Options) > 0:
			option = m.Name
		case m.Unit.Code == "deg":
			number = m.Name
		}
	}
	label := func(name string) string { return v.Measure(name).Label }
	for _, x := range []struct {
		could reason.Could
		want  string
	}{
		{reason.Could{If: "whatever the missing values are"}, "whatever the missing values are"},
		{reason.Could{When: []reason.Cell{{Measure: "limb." + number, Is: "−70°, for example"}}}, "if " + label(number) + " is for example −70°"},
		{reason.Could{When: []reason.Cell{{Measure: "limb." + number, Is: "5° or more"}}, OtherWays: true}, "if " + label(number) + " is 5° or more (one of several ways)"},
		{reason.Could{When: []reason.Cell{{Measure: "limb." + option, Is: "moves_on or held_back, stiff or gives_way"}, {Measure: "limb." + number, Is: "less than 5°"}}},
			"if " + label(option) + " is “moves on”, “held back”, stiff or “gives way” and " + label(number) + " is less than 5°"},
	} {
		if got := d.under("left", x.could); got != x.want {
			t.Errorf("%v\ngot  %s\nwant %s", x.could.When, got, x.want)
		}
	}
}
