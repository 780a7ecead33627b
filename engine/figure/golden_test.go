package figure

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"testing"
)

var update = flag.Bool("update", false, "write the golden files anew")

// adult and child are invented legs, as recorded.
var (
	adult = Leg{FootLength: 262, HeelToBall: 190, AnkleToHeelBack: 62, AnkleHeight: 75, KneeHeight: 485, AnkleDepth: 72, CalfDepth: 112}
	child = Leg{FootLength: 168, HeelToBall: 120, AnkleToHeelBack: 41, AnkleHeight: 48, KneeHeight: 290, AnkleDepth: 52, CalfDepth: 74}
)

func ptr[T any](x T) *T { return &x }

// poses are what the golden files show: a foot flat on the ground, an equinus on its block, and a shank that is
// held back, with all three pictures.
func poses() map[string]Drawing {
	return map[string]Drawing{
		"plantigrade": {Leg: adult, Side: []View{{Title: "In the cast"}}},
		"equinus": {Leg: adult, Side: []View{
			{Title: "In the cast", Angle: -20, Under: []Layer{{"block", 55}}, Block: true},
			{Title: "In shoe and device", Notes: []string{"provisional: strut place"}, Angle: -20, Under: []Layer{{"shoe", 16}, {"raise", 50}}, Lean: ptr(8.0),
				Device: &Device{Shell: Posterior, ShellTop: 380, Strut: Posterior, Plate: 215, FootShell: 30, Dorsal: true},
				Forces: []Force{{At: Calf, Newtons: 43}, {At: Instep, Newtons: 102, PlusMinus: 12}, {At: Forefoot, Newtons: 80, PlusMinus: 9}}},
		}},
		"crouch": {Leg: child,
			Side: []View{{Title: "In shoe and device", Under: []Layer{{"shoe", 10}, {"raise", 19}},
				Device: &Device{Shell: Anterior, ShellTop: 265, Strut: "beside", Plate: 168, FootShell: 20},
				Forces: []Force{{At: Shin, Newtons: 146, PlusMinus: 71}, {At: Heel, Newtons: 313, PlusMinus: 151}, {At: Floor, Newtons: 277, PlusMinus: 134}}}},
			Behind: &Behind{Title: "From behind, left", Under: []Layer{{"shoe", 10}, {"raise", 19}},
				Forces: []Force{{At: AnkleMedial, Newtons: 45}, {At: Shank, Newtons: 10}, {At: Foot, Newtons: 35}}}},
	}
}

func TestGolden(t *testing.T) {
	for name, d := range poses() {
		path, got := filepath.Join("testdata", name+".svg"), []byte(d.SVG(d.Fit(186, 100)))
		if *update {
			if err := os.WriteFile(path, got, 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(path)
		if err != nil {
			t.Fatalf("%v; write it with: go test ./engine/figure -update", err)
		}
		if !bytes.Equal(got, want) {
			t.Errorf("%s differs; look at it with: go test ./engine/figure -update && git diff", path)
		}
	}
}
