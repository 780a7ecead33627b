package rulesets_test

import (
	"encoding/csv"
	"math"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"crus/engine/vocab"
	"crus/rulesets"
)

// published is one row of testdata/reference/clinical_measurement_error.csv: what one study says of how
// exact one measurement is. A number of sem or mdc with (D) was worked out from the other one.
type published struct{ key, sem, mdc, note, url string }

// from gives the error of one assessment that follows from a row: the half-width of a 95 % band.
type from func(published) float64

// sem is 1.96 standard errors, the largest where several are given.
func sem(p published) float64 { return 1.96 * largest(p.sem) }

// mdc is the smallest real change between two assessments, the largest where several are given, shared
// between the two.
func mdc(p published) float64 { return largest(p.mdc) / math.Sqrt2 }

// limits takes a number of the note as it stands: limits that a study gives for one reading.
func limits(words string) from { return noted(words, 1) }

// limitsOfTwo shares limits of agreement between the two readings.
func limitsOfTwo(words string) from { return noted(words, math.Sqrt2) }

// noted finds the number that ends some words of the row.
func noted(words string, share float64) from {
	return func(p published) float64 {
		if !strings.Contains(p.note, words) && !strings.Contains(p.mdc, words) {
			return math.NaN()
		}
		all := number.FindAllString(words, -1)
		return must(all[len(all)-1]) / share
	}
}

// ours is a default of this vocabulary where no study gives a figure; the row says that there is none.
func ours(size float64) from {
	return func(p published) float64 {
		if p.sem != "" || p.mdc != "" {
			return math.NaN()
		}
		return size
	}
}

var number = regexp.MustCompile(`[0-9]*\.?[0-9]+`)

func must(s string) float64 {
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		return math.NaN()
	}
	return x
}

func largest(s string) float64 {
	most := math.NaN()
	for _, n := range number.FindAllString(s, -1) {
		if x := must(n); math.IsNaN(most) || x > most {
			most = x
		}
	}
	return most
}

// use says what the vocabulary makes of a row: the measures whose error it gives, and the words that
// say in an error_basis why it gives none.
type use struct {
	row   string
	feeds string // names of measures, or "scale" and the name of a scale: every measure on it
	error from
	said  string // name of a measure (or scale), a colon and words of its error_basis
}

var uses = []use{
	{"ankle_df_nwb_gonio_cp", "ankle_dorsiflexion_knee_extended ankle_dorsiflexion_knee_flexed ankle_dorsiflexion_released", sem, ""},
	{"ankle_df_nwb_gonio_cp_days", "popliteal_angle", limits("+/-10-14"), "ankle_dorsiflexion_knee_extended: three therapists differ by 10 to 14 deg on one day and 18 to 28 on different days"},
	{"ankle_df_lunge_gonio", "", nil, "ankle_dorsiflexion_lunge: with a goniometer 5.5 deg"},
	{"ankle_df_lunge_inclin", "ankle_dorsiflexion_lunge ankle_dorsiflexion_loaded_knee_extended", sem, ""},
	{"ankle_df_lunge_tape", "", nil, "ankle_dorsiflexion_lunge: a tape from toe to wall, 1.2 cm, does not measure the angle"},
	{"ankle_pf_arom_gonio", "ankle_plantarflexion", sem, ""},
	{"knee_ext_intra", "", nil, "knee_extension: within one session 2.5 deg"},
	{"knee_ext_retest", "knee_extension", mdc, ""},
	{"knee_ext_inter", "", nil, "knee_extension: between raters 7.4"},
	{"knee_ext_inter_tka", "", nil, "knee_extension: 5.9 after knee replacement"},
	{"contracture_margin", "hip_extension", limits("6"), "knee_extension: the margin of 4 deg before a contracture is declared is no error of measurement"},
	{"contracture_margin", "", nil, "ankle_dorsiflexion_knee_extended: the margin of 8 deg before a contracture is declared is no error of measurement"},
	{"hip_ext_thomas", "", nil, "hip_extension: the one that is printed, 1 deg, is doubtful, and agreement between raters runs from ICC 0.30 to 0.92"},
	{"rect_fem_thomas", "prone_knee_flexion", sem, ""},
	{"tardieu_end_angle", "gastrocnemius_fast_angle soleus_fast_angle hamstring_fast_angle rectus_fast_angle hip_adductor_fast_angle invertor_fast_angle", ours(10), "hamstring_fast_angle: our default of 10 deg, under which a difference between slow and fast is not resolved; published mean absolute differences reach 10.7 deg"},
	{"tardieu_r2_r1", "", nil, "gastrocnemius_fast_angle: ICC 0.57 between raters and 0.40 within, and no standard error is published"},
	{"mas", "scale modified_ashworth", ours(1), "scale modified_ashworth: our default of one grade; no standard error is published"},
	{"mmt", "scale muscle_power", ours(1), "scale muscle_power: our default of one grade; no standard error is published; between two raters allow a whole grade"},
	{"mmt_4plus", "", nil, "scale muscle_power: raters agree less, 48 against 64 %, where 4+ is used"},
	{"heel_rise", "heel_rises", mdc, ""},
	{"fpi6", "fpi6_total", ours(2), "fpi6_total: our default of two points"},
	{"navicular_drop", "", nil, "navicular_drop: none is published that we know of; agreement on class is fair, weighted kappa 0.40"},
	{"rearfoot_angle", "", nil, "calcaneal_angle: none is published that we know of; agreement on class is moderate, weighted kappa 0.60"},
	{"rearfoot_angle", "", nil, "hindfoot_inversion: none is published that we know of; agreement between therapists at the end of range is poor, ICC 0.37"},
	{"rearfoot_angle", "", nil, "hindfoot_eversion: none is published that we know of; agreement between therapists at the end of range is poor, ICC 0.39"},
	{"gait_speed_slow", "", nil, "walking_speed: below 0.4 m/s 0.07"},
	{"gait_speed_mid", "", nil, "walking_speed: between 0.4 and 0.8 m/s 0.11"},
	{"gait_speed_fast", "walking_speed", mdc, "walking_speed: taken for every speed, because it is the largest"},
	{"tug", "timed_up_and_go", mdc, ""},
	{"fac", "functional_ambulation", ours(1), "functional_ambulation: our default of one grade; kappa 0.36"},
	{"evgs", "", nil, "gait_pattern: the change that matters in the total of the visual gait score, 2.4 points, says nothing of one observation"},
	{"video_angles", "gait_peak_dorsiflexion gait_swing_plantarflexion", limits("18/10/15"), "gait_initial_contact: limits of 18 deg at the hip, 10 at the knee, 15 at the ankle"},
	{"video_angles", "gait_midstance_knee_flexion", limits("limits 18/10"), ""},
	{"monofilament", "", nil, "monofilament_great_toe: none is published for one site; over 18 sites the smallest real change is 2.8 sites"},
	{"abpi", "ankle_brachial_pressure_index", limitsOfTwo("LOA +/-0.16"), "ankle_brachial_pressure_index: the standard error of 0.03 in the same abstract, 0.04 in diabetes, does not agree with them and is not used"},
	{"abpi_osc", "", nil, "ankle_brachial_pressure_index: with an oscillometer 0.16"},
	{"lld", "", nil, "leg_length: between observers ICC 0.477, mean error -5 mm, wrong side in 7 of 20"},
	{"lld", "", nil, "pelvis_levelling_block: between observers ICC 0.737, mean error 2 mm, wrong side in 1 of 20"},
}

// others are the errors that rest on no row: the measures, the size, and words of the error_basis.
var others = []struct {
	measures string
	error    float64
	said     string
}{
	// a single sensor on the front of the shank against 3D analysis, -0.7, SD 2.1 deg (citation shank_sensor)
	{"shank_to_vertical_barefoot shank_to_vertical_shod", 1.96 * 2.1, "1.96 times 2.1 deg"},
	{"scale fpi_item", 1, "our default of one grade; no standard error is published"},
	{"scale tardieu_quality", 1, "our default of one grade; no standard error is published"},
}

// Every row of the reference is used or said, and every error that the vocabulary states follows from a
// row, or from what is named above.
func TestErrorsFollowFromPublished(t *testing.T) {
	v, diags := vocab.Read(rulesets.FS, "lower_limb", "lower_limb")
	if v == nil {
		t.Fatal(diags.Text())
	}
	rows := reference(t)
	stated := map[*vocab.Measure]bool{}
	for _, m := range v.Measures {
		if m.Error > 0 {
			stated[m] = true
		}
	}
	handled := map[string]bool{}
	for _, u := range uses {
		i := slices.IndexFunc(rows, func(p published) bool { return p.key == u.row })
		if i < 0 {
			t.Errorf("%s is no row of the reference", u.row)
			continue
		}
		handled[u.row] = true
		for _, m := range measures(t, v, u.feeds) {
			delete(stated, m)
			if want := rounded(m, u.error(rows[i])); m.Error != want {
				t.Errorf("%s: the error is %v, and %v follows from %s", m.Name, m.Error, want, u.row)
			}
			if rows[i].url != "" && !cited(v, m, rows[i].url) {
				t.Errorf("%s cites nothing of %s", m.Name, rows[i].url)
			}
		}
		name, words, _ := strings.Cut(u.said, ": ")
		for _, m := range measures(t, v, name) {
			if !strings.Contains(m.ErrorBasis, words) {
				t.Errorf("%s: %s must be said, %q, in %q", m.Name, u.row, words, m.ErrorBasis)
			}
		}
		if u.feeds == "" && words == "" {
			t.Errorf("%s is neither used nor said", u.row)
		}
	}
	for _, p := range rows {
		if !handled[p.key] {
			t.Errorf("nobody handles the row %s", p.key)
		}
	}
	for _, o := range others {
		for _, m := range measures(t, v, o.measures) {
			delete(stated, m)
			if want := rounded(m, o.error); m.Error != want || !strings.Contains(m.ErrorBasis, o.said) {
				t.Errorf("%s: the error is %v (%s), want %v (%s)", m.Name, m.Error, m.ErrorBasis, want, o.said)
			}
		}
	}
	for m := range stated {
		t.Errorf("%s states an error of %v that follows from nothing here", m.Name, m.Error)
	}
}

// rounded gives an error with the decimals that the vocabulary writes.
func rounded(m *vocab.Measure, e float64) float64 {
	steps := 10.0
	if m.Unit.Code == "m/s" || m.Unit.Code == "1" {
		steps = 100
	}
	return math.Round(e*steps) / steps
}

// measures finds measures by their names, or by "scale" and the name of theirs.
func measures(t *testing.T, v *vocab.Vocabulary, names string) []*vocab.Measure {
	t.Helper()
	var out []*vocab.Measure
	if scale, ok := strings.CutPrefix(names, "scale "); ok {
		for _, m := range v.Measures {
			if m.Kind == vocab.Grade && m.Scale.Name == scale {
				out = append(out, m)
			}
		}
		if out == nil {
			t.Errorf("nothing is measured on the scale %s", scale)
		}
		return out
	}
	for _, name := range strings.Fields(names) {
		if m := v.Measure(name); m != nil {
			out = append(out, m)
		} else {
			t.Errorf("there is no measure %s", name)
		}
	}
	return out
}

// cited reports whether a measure cites one of the addresses of a row.
func cited(v *vocab.Vocabulary, m *vocab.Measure, urls string) bool {
	return slices.ContainsFunc(v.Citations, func(c *vocab.Citation) bool {
		return c.URL != "" && slices.Contains(m.Cites, c.Key) && strings.Contains(urls, c.URL)
	})
}

// reference reads the rows; "as above" is the address of the row before.
func reference(t *testing.T) []published {
	t.Helper()
	f, err := os.Open("../testdata/reference/clinical_measurement_error.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	lines, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var out []published
	for _, l := range lines[1:] {
		p := published{key: l[0], sem: l[3], mdc: l[4], note: l[5], url: l[7]}
		if p.url == "as above" {
			p.url = out[len(out)-1].url
		}
		out = append(out, p)
	}
	return out
}
