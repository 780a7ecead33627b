package biomech

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Norm is the passive range of one joint movement in healthy people of one sex and age: Soucie 2011, Haemophilia
// 17:500-507, by goniometer, n = 674. Degrees are counted in the direction of the movement; extension of the
// knee is positive past straight.
type Norm struct {
	Motion    string // "hip_extension"
	From, To  int    // completed years of age, both included
	Sex       string // "female" or "male"
	People    int    // in this group; from memory
	Mean      float64
	Low, High float64 // 95 % confidence interval of the mean: no normal range, a healthy person may well lie outside of it
	// SD is the standard deviation between people, derived from that interval and People:
	// (High − Low) / 2 / 1.96 · √People.
	SD       float64
	Standing Standing // of the mean; the group sizes, and all intervals outside of 2 to 8 years, are from memory
}

//go:embed norms.csv
var normsText string

var norms = readNorms(normsText)

// readNorms reads the table; a row that can't be read is left out, which a test would see.
func readNorms(text string) []Norm {
	r := csv.NewReader(strings.NewReader(text))
	r.Comment = '#'
	rows, _ := r.ReadAll()
	var out []Norm
	for _, row := range rows {
		n := Norm{Motion: row[0], Sex: row[3], Standing: Standing(row[9])}
		var err error
		whole := func(s string) int { i, e := strconv.Atoi(s); err = first(err, e); return i }
		real := func(s string) float64 { x, e := strconv.ParseFloat(s, 64); err = first(err, e); return x }
		n.From, n.To, n.People = whole(row[1]), whole(row[2]), whole(row[4])
		n.Mean, n.Low, n.High, n.SD = real(row[5]), real(row[6]), real(row[7]), real(row[8])
		if err == nil {
			out = append(out, n)
		}
	}
	return out
}

// RangeNorm finds the norm of a movement (hip_extension, hip_flexion, knee_extension, knee_flexion,
// ankle_dorsiflexion, ankle_plantarflexion) at an age in years, for the sex "female" or "male". The bands are 2 to
// 8, 9 to 19, 20 to 44 and 45 to 69 completed years. Outside of them, and for another sex, there is none.
func RangeNorm(motion string, years float64, sex string) (Norm, error) {
	if err := finite("age", years); err != nil {
		return Norm{}, err
	}
	words := strings.ReplaceAll(motion, "_", " ")
	var ofMotion, ofSex bool
	for _, n := range norms {
		ofMotion = ofMotion || n.Motion == motion
		ofSex = ofSex || n.Motion == motion && n.Sex == sex
		if n.Motion == motion && n.Sex == sex && float64(n.From) <= math.Floor(years) && math.Floor(years) <= float64(n.To) {
			return n, nil
		}
	}
	switch {
	case !ofMotion:
		return Norm{}, outside("There are no norms of %s here.", words)
	case !ofSex:
		return Norm{}, outside("The norms of %s are of women and of men apart; there are none for the sex %q.", words, sex)
	}
	return Norm{}, outside("The norms of %s are for 2 to 69 years; there are none at %s.", words, shown(years, "years"))
}

// RangeZ is how many standard deviations a range lies above the mean of healthy people of that age and sex:
//
//	z = (R − mean) / SD
//
// R is the passive range, deg, counted in the direction of the movement; years the age. SD is that between
// people ([Norm]), never the confidence interval of the mean. Holds for 2 to 69 years, female and male, and −180°
// ≤ R ≤ 180°. From memory for the most part: 10 of 48 means were read, 7 read second-hand; the standard
// deviations are derived with group sizes from memory. A z beyond ±2 is unusual, no more.
func RangeZ(motion string, degrees, years float64, sex string) (float64, error) {
	if err := between(strings.ReplaceAll(motion, "_", " "), degrees, -180, 180, "°"); err != nil {
		return 0, err
	}
	n, err := RangeNorm(motion, years, sex)
	if err != nil {
		return 0, err
	}
	return (degrees - n.Mean) / n.SD, nil
}

const secondsInYear = 365.25 * 24 * 3600 // the year of clinical

func comparing() []*Formula {
	var out []*Formula
	for _, motion := range []string{"hip_extension", "hip_flexion", "knee_extension", "knee_flexion", "ankle_dorsiflexion", "ankle_plantarflexion"} {
		out = append(out, &Formula{
			Name: motion + "_z", Topic: "measurement",
			Params: []Param{{"range", angle}, {"age", duration}, {"sex", Word}}, Result: ratio,
			Doc:    fmt.Sprintf("how many standard deviations a passive range of %s lies above the mean of healthy people of that age and sex", strings.ReplaceAll(motion, "_", " ")),
			Writes: "z = (R − mean) / SD", Domain: "2 to 69 years, female or male; SD between people, derived from a confidence interval and group sizes from memory",
			Standing: FromMemory, Sources: []string{"Soucie 2011, Haemophilia 17:500-507, goniometer, n = 674: 10 of 48 means read, 7 second-hand, the others, the group sizes and most intervals from memory"},
			of: func(in []Value, _ []float64) (Value, error) {
				return number(RangeZ(motion, in[0].Number, in[1].Number/secondsInYear, in[2].Word))
			},
		})
	}
	return out
}
