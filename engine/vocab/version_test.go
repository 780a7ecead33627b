package vocab

import "testing"

func TestAccepts(t *testing.T) {
	for _, test := range []struct {
		want, version string
		ok            bool
	}{
		{"", "1.2.0", true}, {"1", "1.2.0", true}, {"1.2", "1.2.0", true}, {"1.2.0", "1.2.0", true},
		{"2", "1.2.0", false}, {"1.3", "1.2.0", false}, {"1.2.1", "1.2.0", false}, {"1", "10.0.0", false}, {"1.2", "1.20.0", false},
		{"10", "1.0.0", false}, {"1.2.0.0", "1.2.0", false}, {"1.", "1.2.0", false}, {"x", "1.2.0", false}, {"1", "", false},
	} {
		if got := Accepts(test.want, test.version); got != test.ok {
			t.Errorf("%q accepts %q: %v", test.want, test.version, got)
		}
	}
}

func TestIsVersion(t *testing.T) {
	for version, want := range map[string]bool{"1.0.0": true, "0.0.0": true, "10.20.30": true, "1.0": false, "1": false, "": false, "01.0.0": false, "1.0.0-beta": false, "v1.0.0": false, "1.0.0\n": false} {
		if got := IsVersion(version); got != want {
			t.Errorf("%q: %v", version, got)
		}
	}
}

func TestIsWanted(t *testing.T) {
	for name, want := range map[string]bool{"a": true, "a@1": true, "a@1.2": true, "a@1.2.0": true, "a@": false, "a@x": false, "a@1.": false, "a@1@2": false, "a@1.2.0.0": false, "a@01": false} {
		if got := IsWanted(name); got != want {
			t.Errorf("%q: %v", name, got)
		}
	}
}
