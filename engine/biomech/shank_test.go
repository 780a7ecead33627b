package biomech

import (
	"math"
	"strings"
	"testing"
)

// normalShank gives the lean of the shank of healthy people in walking, and its standard deviation, at a part of
// the gait cycle: Bovi 2011, Gait Posture 33:6, supplement. who is "adult" or "young"; speed is "natural",
// "very_slow", "slow", "medium" or "fast".
func normalShank(t *testing.T, who, speed string, part float64) (mean, sd float64) {
	t.Helper()
	class := map[string]string{"natural": "natural", "very_slow": "XS_v/h<0.6", "slow": "S_0.6-0.8", "medium": "M_0.8-1.0", "fast": "L_>=1.0"}[speed]
	for _, row := range csvRows(t, "biomech_shank_inclination.csv") {
		if strings.HasPrefix(row[1], who) && row[2] == class && math.Abs(leading(t, who, row[3])-part) < 0.001 {
			return leading(t, who, row[4]), leading(t, who, row[5])
		}
	}
	t.Fatalf("no shank of %s at %s, %v", who, speed, part)
	return 0, 0
}

// The lean to aim at is held against measured walking, not against what is remembered of it.
func TestShankTarget(t *testing.T) {
	for _, who := range []string{"adult", "young"} {
		for _, speed := range []string{"natural", "slow"} {
			mean, sd := normalShank(t, who, speed, 0.30)
			within := func(x, times float64) bool { return math.Abs(x-mean) <= times*sd }
			if !within(ShankTarget, 1) || !within(ShankTargetMost, 2) {
				t.Errorf("%s %s: 11° or 15° is far from %.2f ± %.2f", who, speed, mean, sd)
			}
			// 7° is unusual in walking, as the documentation of the constant says.
			if usual := within(ShankTargetLeast, 2); usual != (who == "adult" && speed == "slow") {
				t.Errorf("%s %s: 7° against %.2f ± %.2f: %v", who, speed, mean, sd, usual)
			}
		}
	}
}

// Adults at natural speed pass 10° at 25 % of the cycle and 12° at 29 %.
func TestShankPassesTheTarget(t *testing.T) {
	for at, angle := range map[int]float64{25: 10, 29: 12} {
		before, _ := normalShank(t, "adult", "natural", float64(at-1)/100)
		after, _ := normalShank(t, "adult", "natural", float64(at)/100)
		if before >= angle || after < angle {
			t.Errorf("%v° is not passed at %d %%: %.2f°, then %.2f°", angle, at, before, after)
		}
	}
}
