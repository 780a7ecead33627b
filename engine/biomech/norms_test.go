package biomech

import (
	"math"
	"slices"
	"strings"
	"testing"

	"crus/engine/clinical"
)

// The table that is built in is the published one.
func TestNormsAreThePublishedOnes(t *testing.T) {
	standings := map[string]Standing{"V": Read, "V2": SecondHand, "M": FromMemory}
	published := map[Norm]bool{}
	for _, row := range csvRows(t, "rom_norms.csv") {
		if !strings.HasPrefix(row[0], "Soucie 2011") {
			continue
		}
		number := func(i int) float64 { return leading(t, row[1], row[i]) }
		published[Norm{Motion: row[1], From: int(number(3)), To: int(number(4)), Sex: map[string]string{"F": "female", "M": "male"}[row[5]], People: int(number(6)),
			Mean: number(8), Low: number(9), High: number(10), SD: number(11), Standing: standings[row[13]]}] = true
	}
	if len(norms) != 48 || len(published) != 48 {
		t.Fatalf("%d norms, %d published", len(norms), len(published))
	}
	people, women := 0, 0
	for _, n := range norms {
		if !published[n] {
			t.Errorf("not published so: %+v", n)
		}
		if derived := (n.High - n.Low) / 2 / 1.96 * math.Sqrt(float64(n.People)); math.Abs(derived-n.SD) > 0.051 {
			t.Errorf("%+v: the interval gives a standard deviation of %.2f", n, derived)
		}
		if n.Low > n.Mean || n.Mean > n.High {
			t.Errorf("%+v: the mean is outside of its interval", n)
		}
		if n.Motion == "hip_extension" {
			people += n.People
			if n.Sex == "female" {
				women += n.People
			}
		}
	}
	if people != 674 || math.Abs(100*float64(women)/float64(people)-53.6) > 0.05 {
		t.Errorf("%d people, %d of them women", people, women)
	}
}

// Every completed year from 2 to 69 has one norm for each movement and sex, and no other year has.
func TestNormsCoverTheBands(t *testing.T) {
	for _, f := range comparing() {
		motion := strings.TrimSuffix(f.Name, "_z")
		for _, sex := range []string{"female", "male"} {
			for age := -1; age < 120; age++ {
				for _, part := range []float64{0, 0.5, 0.999} {
					years := float64(age) + part
					n, err := RangeNorm(motion, years, sex)
					switch within := age >= 2 && age <= 69; {
					case within != (err == nil):
						t.Errorf("%s at %v: %+v, %v", motion, years, n, err)
					case within && (n.From > age || n.To < age || n.Sex != sex || n.Motion != motion):
						t.Errorf("%s at %v: %+v", motion, years, n)
					}
				}
			}
		}
		if i := slices.IndexFunc(norms, func(n Norm) bool { return n.Motion == motion }); i < 0 {
			t.Errorf("no norm of %s", motion)
		}
	}
	for motion, sentence := range map[string]string{"hip_rotation": "There are no norms of hip rotation here."} {
		if _, err := RangeNorm(motion, 30, "male"); err == nil || err.Error() != sentence {
			t.Errorf("%s: %v", motion, err)
		}
	}
}

func TestYearIsClinicals(t *testing.T) {
	u, _ := clinical.UnitByCode("a")
	q, err := clinical.NewQuantity(9, u)
	if err != nil || q.Base() != 9*secondsInYear {
		t.Errorf("nine years are %v s, %v", q.Base(), err)
	}
}

// A z counts standard deviations between people; at the end of the interval of the mean it is small.
func TestRangeZ(t *testing.T) {
	for _, n := range norms {
		z := func(x float64) float64 { return must(t)(RangeZ(n.Motion, x, float64(n.From), n.Sex)) }
		if z(n.Mean) != 0 || !near(z(n.Mean+n.SD), 1) || !near(z(n.Mean-2*n.SD), -2) || z(n.High) > 0.4 {
			t.Errorf("%+v: %v, %v, %v, %v", n, z(n.Mean), z(n.Mean+n.SD), z(n.Mean-2*n.SD), z(n.High))
		}
	}
}
