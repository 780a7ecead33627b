package biomech

import (
	"math"
	"strings"
	"testing"
)

// What is no number is refused by every formula in every place, with a sentence, and no result with it.
func TestNoFormulaTakesWhatIsNoNumber(t *testing.T) {
	for _, f := range Formulas() {
		for place, p := range f.Params {
			if p.Kind == Word || p.Kind == YesNo || strings.HasPrefix(string(p.Kind), "scale ") {
				continue
			}
			for _, bad := range []float64{math.NaN(), math.Inf(1), math.Inf(-1)} {
				in := make([]Value, len(f.Params))
				for i, other := range f.Params {
					in[i] = Value{Number: 1, Word: map[bool]string{true: "male"}[other.Kind == Word]}
				}
				in[place].Number = bad
				v, err := f.Of(in...)
				if err == nil || v != (Value{}) || !strings.HasSuffix(err.Error(), ".") {
					t.Errorf("%s with %v for %s is %v, %v", f.Name, bad, p.Name, v, err)
				}
			}
		}
	}
}

// A formula that is shown to a clinician says what it gives, what it holds for and how it is known.
func TestFormulasSayWhatTheyAre(t *testing.T) {
	standings := map[Standing]bool{Read: true, SecondHand: true, FromMemory: true, Derived: true, Common: true}
	seen := map[string]bool{}
	for _, f := range Formulas() {
		if seen[f.Name] || f.Doc == "" || strings.HasSuffix(f.Doc, ".") || f.Writes == "" || f.Domain == "" || !standings[f.Standing] || f.Topic == "" {
			t.Errorf("%s is said badly or twice: %+v", f.Name, f)
		}
		seen[f.Name] = true
		if f.Standing != Derived && f.Standing != Common && len(f.Sources) == 0 {
			t.Errorf("%s has no source", f.Name)
		}
		for _, k := range f.Constants {
			if k.Name == "" || k.Source == "" || k.Value == 0 || k.U < 0 {
				t.Errorf("%s rests on %+v", f.Name, k)
			}
		}
		if _, err := f.Of(); err == nil {
			t.Errorf("%s takes nothing", f.Name)
		}
	}
}
