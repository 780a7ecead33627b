package replay_test

import (
	"fmt"
	"strings"
)

// drawnMeasures lists the 30 measures of the benchmarks.
func drawnMeasures() []measure {
	power := []string{"0", "1", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"}
	tone := []string{"0", "1", "1+", "2", "3", "4"}
	quantity := func(name, unit string, lo, hi int) measure {
		return measure{name: name, kind: "quantity", unit: unit, lo: lo, hi: hi}
	}
	grade := func(name, scale string, grades []string) measure {
		return measure{name: name, kind: "grade", unit: scale, words: grades}
	}
	option := func(name string, words ...string) measure {
		return measure{name: name, kind: "option", words: words}
	}
	return []measure{
		quantity("ankle_dorsiflexion", "deg", -40, 40), quantity("ankle_plantarflexion", "deg", 0, 80), quantity("knee_extension", "deg", -40, 16),
		quantity("knee_flexion", "deg", 0, 160), quantity("hip_extension", "deg", -40, 40), quantity("hip_flexion", "deg", 0, 144),
		quantity("subtalar_inversion", "deg", 0, 40), quantity("subtalar_eversion", "deg", 0, 40), quantity("tibial_torsion", "deg", -40, 56),
		quantity("popliteal_angle", "deg", 0, 120), quantity("leg_length", "mm", 400, 1200), quantity("foot_length", "mm", 160, 320),
		quantity("calf_girth", "mm", 200, 600), quantity("ankle_girth", "mm", 120, 400), quantity("limb_load", "kg", 0, 160),
		grade("plantarflexor_power", "muscle_power", power), grade("dorsiflexor_power", "muscle_power", power), grade("quadriceps_power", "muscle_power", power),
		grade("hip_extensor_power", "muscle_power", power), grade("plantarflexor_tone", "tone", tone), grade("hamstring_tone", "tone", tone),
		option("skin", "intact", "fragile", "broken"), option("sensation", "intact", "reduced", "absent"), option("foot_shape", "neutral", "planus", "cavus", "mixed"),
		option("swing_pattern", "usual", "drop", "circumduction", "vaulting", "steppage"),
		{name: "clonus", kind: "yes_no"}, {name: "oedema", kind: "yes_no"}, {name: "wound", kind: "yes_no"},
		{name: "heel_rises", kind: "count", lo: 0, hi: 32}, {name: "posture_total", kind: "count", lo: -12, hi: 12},
	}
}

// drawnChoice is a choice of the benchmarks.
type drawnChoice struct {
	name    string
	options []string
	unit    string
	lo, hi  int
}

func drawnChoices() []drawnChoice {
	return []drawnChoice{
		{name: "shell_side", options: []string{"anterior", "posterior", "both"}}, {name: "trimline", options: []string{"behind", "through", "in_front"}},
		{name: "strut_place", options: []string{"posterior", "lateral", "spiral", "medial"}}, {name: "articulation", options: []string{"none", "free", "stop", "spring"}},
		{name: "foot_plate", options: []string{"short", "to_ball", "full"}}, {name: "padding", options: []string{"none", "thin", "thick"}},
		{name: "closure", options: []string{"straps", "laces", "buckle", "none", "slip_on"}}, {name: "review", options: []string{"soon", "later"}},
		{name: "heel_raise", unit: "mm", lo: 0, hi: 60}, {name: "cast_angle", unit: "deg", lo: -20, hi: 10},
	}
}

func drawnVocabulary() string {
	var b strings.Builder
	b.WriteString("# Drawn once for the benchmarks of package replay; see draw_test.go.\n\nvocabulary \"measured\" {\n  title   = \"Measures for benchmarks\"\n  version = \"1.0.0\"\n}\n")
	scales := map[string]bool{}
	for _, m := range drawnMeasures() {
		if m.kind == "grade" && !scales[m.unit] {
			scales[m.unit] = true
			fmt.Fprintf(&b, "\nscale %q {\n  grades = [%s]\n}\n", m.unit, inQuotes(m.words))
		}
		fmt.Fprintf(&b, "\nmeasure %q {\n  of    = \"limb\"\n  label = %q\n", m.name, strings.ReplaceAll(m.name, "_", " "))
		switch m.kind {
		case "quantity":
			fmt.Fprintf(&b, "  unit  = %q\n  plausible = [%d, %d]\n", m.unit, m.lo, m.hi)
		case "count":
			fmt.Fprintf(&b, "  count = true\n  plausible = [%d, %d]\n", m.lo, m.hi)
		case "grade":
			fmt.Fprintf(&b, "  scale = %q\n", m.unit)
		case "option":
			fmt.Fprintf(&b, "  one_of = [%s]\n", inQuotes(m.words))
		default:
			b.WriteString("  yes_no = true\n")
		}
		b.WriteString("  error_basis = \"It was drawn.\"\n}\n")
	}
	for _, c := range drawnChoices() {
		fmt.Fprintf(&b, "\nchoice %q {\n  label    = %q\n  concerns = \"device\"\n", c.name, strings.ReplaceAll(c.name, "_", " "))
		if c.unit == "" {
			fmt.Fprintf(&b, "  options  = [%s]\n}\n", inQuotes(c.options))
			continue
		}
		fmt.Fprintf(&b, "  unit     = %q\n  between  = [%d, %d]\n  rounding = 1\n}\n", c.unit, c.lo, c.hi)
	}
	return b.String()
}

func inQuotes(words []string) string {
	return `"` + strings.Join(words, `", "`) + `"`
}
