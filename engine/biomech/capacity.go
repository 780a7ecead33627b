package biomech

import (
	"math"
	"slices"
	"strings"
)

// Interval is what is known of a quantity that cannot be told as one number: it lies from Least to Most, and
// nothing says where.
type Interval struct{ Least, Most float64 }

// hull is the smallest interval that holds both.
func (a Interval) hull(b Interval) Interval {
	return Interval{math.Min(a.Least, b.Least), math.Max(a.Most, b.Most)}
}

// ResidualByGrade is the share of a muscle's normal moment that is left, by its power grade: never one number,
// because a grade does not tell one. A ratio:
//
//	0, 1: 0 to 0.02 · 2: 0 to 0.05 · 3: 0.03 to 0.15 · 4: 0.10 to 0.75 · 5: 0.40 to 1
//
// A grade with plus or minus takes all from its own to its neighbour's interval: 3− is 2 or 3, so 0 to 0.15.
// Grades are "0", "1", then 2 to 5 with "-" and, but for 5, with "+"; any other is an error.
//
// It is for muscles graded against gravity and the hand, as dorsiflexors are. Plantarflexors are usually
// graded by heel rises on one leg, and the same digit then means another thing (3 may be one heel rise, 5
// five of them, or more than twenty, by scheme): ask how it was graded, and prefer [ResidualByHeelRises] or a
// dynamometer. Derived from knee and elbow: 0.03, 0.10 and 0.40 lie at or below what Dvir 1997, Sato 1999 and a
// study of grade 5 at the elbow found (abstracts read); 0.02, 0.05, 0.15 and 0.75 are choices of engineering. It
// is not for hip and shoulder, where grade 3 was found with up to 65 % of the greatest moment.
func ResidualByGrade(power string) (Interval, error) {
	grades := []string{"0", "1", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"}
	if !slices.Contains(grades, power) {
		return Interval{}, outside("There is no power grade %q; it is one of %s.", power, strings.Join(grades, ", "))
	}
	whole := [...]Interval{{0, 0.02}, {0, 0.02}, {0, 0.05}, {0.03, 0.15}, {0.10, 0.75}, {0.40, 1}}
	grade := int(power[0] - '0')
	switch power[1:] {
	case "-":
		return whole[grade-1].hull(whole[grade]), nil
	case "+":
		return whole[grade].hull(whole[grade+1]), nil
	}
	return whole[grade], nil
}

// HeelRiseMoment is the moment that the plantarflexors must give for a full heel rise on one leg:
//
//	m = M · g · l
//
// M is body mass, kg; l the distance from ankle to ball along the floor, mm; m in N·m, without sign. Slow rise,
// no support by the hands. Derived: the body's weight over the ball.
func HeelRiseMoment(bodyMass, ankleToBall float64) (float64, error) {
	if err := first(positive("body mass", bodyMass, "kg"), positive("distance from ankle to ball", ankleToBall, "mm")); err != nil {
		return 0, err
	}
	return small(bodyMass * Gravity * ankleToBall / 1000)
}

// ResidualByHeelRises is the share of the normal walking moment that is left, by full heel rises on one leg:
//
//	f = min(1, g · l / m₁)    no heel rise: 0 to f · one or more: f to 1
//
// l is the distance from ankle to ball along the floor, mm; m₁ the normal peak moment for each kilogram, N·m/kg
// ([PeakMoment1]); the share is a ratio. More than one heel rise tells of endurance, not of a larger moment.
// Derived: one heel rise takes [HeelRiseMoment].
func ResidualByHeelRises(peakPerKilogram float64, heelRises int, ankleToBall float64) (Interval, error) {
	if err := wholeNumber("number of heel rises", float64(heelRises), 0); err != nil {
		return Interval{}, err
	}
	perKilogram, err := HeelRiseMoment(1, ankleToBall)
	if err := first(err, positive("moment for each kilogram", peakPerKilogram, "N·m/kg")); err != nil {
		return Interval{}, err
	}
	f := math.Min(1, perKilogram/peakPerKilogram)
	if heelRises == 0 {
		return Interval{0, f}, nil
	}
	return Interval{f, 1}, nil
}

func capacity() []*Formula {
	const (
		dvir       = "Dvir 1997, Clin Rehabil 11:36 (abstract): grade 3 is 5 to 10 % of the greatest moment at knee and elbow, 4 to 65 % at hip and shoulder; grade 4 can be as low as 10 %"
		sato       = "Sato 1999 (abstract): knee extensors that hold against gravity have 5 % of the normal moment"
		five       = "PubMed 22854900 (abstract): half of elbow flexors of grade 5 had less than 42 % of the strength expected"
		heel       = "Plantarflexors are graded by heel rises in most schemes, so the same digit means another thing there: ask which scheme"
		byGrade    = "muscles graded against gravity and the hand (dorsiflexors), not those of hip and shoulder; plus and minus take all from the grade's to its neighbour's interval"
		writes     = "0, 1: 0 to 0.02; 2: 0 to 0.05; 3: 0.03 to 0.15; 4: 0.10 to 0.75; 5: 0.40 to 1"
		byHeel     = "full heel rises on one leg, slow, no support; l > 0"
		heelWrites = "f = min(1, g l/m₁), m₁ = 1.216 N·m/kg"
	)
	least := func(i Interval, err error) (Value, error) { return Value{Number: i.Least}, err }
	most := func(i Interval, err error) (Value, error) { return Value{Number: i.Most}, err }
	heelRises := func(in []Value, k []float64) (Interval, error) {
		if err := wholeNumber("number of heel rises", in[0].Number, 0); err != nil {
			return Interval{}, err
		}
		return ResidualByHeelRises(k[0], int(math.Min(in[0].Number, 1)), in[1].Number)
	}
	graded := []Param{{"power", GradeOf("muscle_power")}}
	counted := []Param{{"heel_rises", Count}, {"ankle_to_ball", length}}
	return []*Formula{{
		Name: "residual_least", Topic: "stiffness", Params: graded, Result: ratio,
		Doc:    "the least share of a muscle's normal moment that its power grade leaves; for plantarflexors graded by heel rises, use residual_least_by_heel_rises",
		Writes: writes, Domain: byGrade, Standing: Derived, Sources: []string{dvir, sato, five, heel},
		of: func(in []Value, _ []float64) (Value, error) { return least(ResidualByGrade(in[0].Word)) },
	}, {
		Name: "residual_most", Topic: "stiffness", Params: graded, Result: ratio,
		Doc:    "the largest share of a muscle's normal moment that its power grade leaves; for plantarflexors graded by heel rises, use residual_most_by_heel_rises",
		Writes: writes, Domain: byGrade, Standing: Derived, Sources: []string{dvir, sato, five, heel},
		of: func(in []Value, _ []float64) (Value, error) { return most(ResidualByGrade(in[0].Word)) },
	}, {
		Name: "residual_least_by_heel_rises", Topic: "stiffness", Params: counted, Result: ratio,
		Doc:    "the least share of the normal walking moment that the heel rises on one leg show",
		Writes: heelWrites + "; no heel rise: 0; one or more: f", Domain: byHeel, Standing: Derived, Sources: []string{schwartz}, Constants: []Constant{moment1()},
		of: func(in []Value, k []float64) (Value, error) { return least(heelRises(in, k)) },
	}, {
		Name: "residual_most_by_heel_rises", Topic: "stiffness", Params: counted, Result: ratio,
		Doc:    "the largest share of the normal walking moment that the heel rises on one leg leave open",
		Writes: heelWrites + "; no heel rise: f; one or more: 1", Domain: byHeel, Standing: Derived, Sources: []string{schwartz}, Constants: []Constant{moment1()},
		of: func(in []Value, k []float64) (Value, error) { return most(heelRises(in, k)) },
	}, {
		Name: "heel_rise_moment", Topic: "stiffness",
		Params: []Param{{"body_mass", mass}, {"ankle_to_ball", length}}, Result: moment,
		Doc:    "the plantarflexion moment that one full heel rise on one leg takes",
		Writes: "m = M g l", Domain: "M > 0, l > 0; slow, no support", Standing: Derived,
		of: two(HeelRiseMoment),
	}}
}
