package assess

import (
	"strings"
	"testing"

	"crus/engine/source"
)

func TestHeadingsInAnyCapitals(t *testing.T) {
	a := only(t, "a.csv", "ID, Date ,Side,DEVICE,Body_Mass,Limb.Leg_Length [cm],Person.Age\ndemo-017,2026-10-02,Left,Yes,82,86.5,61\n")
	wantQuantity(t, a.Person["body_mass"], 82)
	wantQuantity(t, a.Left["leg_length"], 865)
	if a.ID != "demo-017" || a.Date != "2026-10-02" || len(a.DeviceFor) != 1 {
		t.Errorf("%+v", a)
	}
	_, diags := Read(source.NewFile("a.csv", []byte("id,ID,side,device\na,b,left,yes\n")), vocabulary(t))
	if len(diags) != 1 || diags[0].Code != "duplicate" {
		t.Errorf("a column named twice in different capitals: %s", diags.Text())
	}
}

// A row whose side is not known takes only its own assessment out.
func TestARowWithoutASideLeavesOthers(t *testing.T) {
	list, diags := Read(source.NewFile("a.csv", []byte("id,side,device\na,left,no\na,R,yes\nb,left,yes\n")), vocabulary(t))
	if len(list) != 1 || list[0].ID != "b" || len(diags) != 1 || diags[0].Code != "side" {
		t.Errorf("%d assessments, %s", len(list), diags.Text())
	}
}

func TestBareSlip(t *testing.T) {
	for _, test := range []struct{ src, want string }{ // the place is that of ^, which is taken out
		{"a = 54^,5", "Write 54.5, with a decimal point."},
		{"a = ^–5", "Write -5, with the keyboard's minus -."},
		{"a = ^−5,5 # x", "Write -5.5, with the keyboard's minus - and a decimal point."},
		{"[7,^–5]", "Write -5, with the keyboard's minus -."},
		{"–7^,5", "Write -7.5, with the keyboard's minus - and a decimal point."},
		{"a = 5^4,5", ""},
		{"a = 1^,2,3", ""},
		{"a = 5^, 6", ""},
		{"a = ^-5", ""},
		{"a = ^– x", ""},
		{"a = 5^", ""},
		{"^,", ""},
		{"^", ""},
	} {
		at := strings.Index(test.src, "^")
		if got := bareSlip([]byte(strings.Replace(test.src, "^", "", 1)), at); got != test.want {
			t.Errorf("%s: %q, want %q", test.src, got, test.want)
		}
	}
}
