package biomech

import "slices"

// WalkingClass is the class of walking that goes with a comfortable speed, in the words of the scale
// community_walking:
//
//	v < 0.4: household; 0.4 ≤ v ≤ 0.8: limited_community; v > 0.8: community
//
// v in m/s, more than 0: who does not walk has no speed, and the class none is recorded, not worked out. Second-hand:
// Perry 1995, Stroke 26:982, after stroke, as used by Schmid 2007; the classes rest on the opinion of clinicians.
// By counted steps the first limit was found at 0.49 (Fulk 2017).
func WalkingClass(speed float64) (string, error) {
	if err := positive("walking speed", speed, "m/s"); err != nil {
		return "", err
	}
	switch {
	case speed < 0.4:
		return "household", nil
	case speed <= 0.8:
		return "limited_community", nil
	}
	return "community", nil
}

// PressureIndexBands lists the bands of [PressureIndexBand], the gravest of narrowed arteries first.
func PressureIndexBands() []string {
	return []string{"critical", "severe", "moderate", "mild", "borderline", "normal", "raised"}
}

// PressureIndexBand is the band of an ankle-brachial pressure index i, without unit:
//
//	i ≤ 0.3: critical; ≤ 0.5: severe; ≤ 0.7: moderate; < 0.91: mild; < 1: borderline; ≤ 1.4: normal; > 1.4: raised
//
// Raised means arteries that the cuff cannot close: the index says nothing of the blood that flows. Holds for
// 0 ≤ i ≤ 5. Two published schemes meet here. From 0.91 it is that of diagnosis (J Foot Ankle Res 2020,
// s13047-020-00389-w, read: 0.91 to 0.99 borderline, 1.00 to 1.40 normal); below it is that of severity (BMJ,
// PMC1363917, table 7, read: 0.7 to 1 mild; 0.5 to 0.7 mild to moderate, called moderate here; 0.3 to 0.5 severe;
// 0.3 and less critical, as is an ankle pressure under 50 mmHg whatever the index). An edge that two bands claim
// goes to the graver.
func PressureIndexBand(index float64) (string, error) {
	if err := between("pressure index", index, 0, 5, ""); err != nil {
		return "", err
	}
	bands := PressureIndexBands()
	switch {
	case index <= 0.3:
		return bands[0], nil
	case index <= 0.5:
		return bands[1], nil
	case index <= 0.7:
		return bands[2], nil
	case index < 0.91:
		return bands[3], nil
	case index < 1:
		return bands[4], nil
	case index <= 1.4:
		return bands[5], nil
	}
	return bands[6], nil
}

// CalfShortnesses lists the grades of [CalfShortness].
func CalfShortnesses() []string {
	return []string{"none", "gastrocnemius", "gastrocnemius_and_soleus"}
}

// CalfShortness reads two ranges of ankle dorsiflexion, knee extended and knee flexed, by Silfverskiöld's logic:
//
//	R extended > 5°: none
//	R extended ≤ 5°, R flexed > 10°: gastrocnemius, the muscle that bending the knee slackens
//	R extended ≤ 5°, R flexed ≤ 10°: gastrocnemius_and_soleus; the joint itself may limit it too
//
// In deg, dorsiflexion positive, taken slowly, hindfoot held. Holds from −60° to 60°; a flexed range that is smaller
// than the extended one by more than 7.94° is a contradiction and an error. Read: the limit of 5° (DiGiovanni 2002,
// JBJS-A 84:962) and the logic (Baumbach 2014, BMC Musculoskelet Disord 15:246: 20° of bend is enough). From memory:
// the limit of 10° for the bent knee (DiGiovanni 2002), and that a quarter of healthy people meet the 5°. The same
// authors' other limit, 10° with the knee extended, is not used.
func CalfShortness(kneeExtended, kneeFlexed float64) (string, error) {
	if err := ankleRanges(kneeExtended, kneeFlexed); err != nil {
		return "", err
	}
	grades := CalfShortnesses()
	switch {
	case kneeExtended > 5:
		return grades[0], nil
	case kneeFlexed > 10:
		return grades[1], nil
	}
	return grades[2], nil
}

// DynamicRange is the part of a muscle's range that its reflex takes on a fast stretch, Tardieu's R2 − R1:
//
//	D = R2 − R1
//
// R2 is the end of the slow range, deg, R1 the catch on the fast stretch, deg, both positive in the direction of the
// stretch; D in deg, 0 where there is no catch before the end. Holds from −180° to 180° and R1 ≤ R2: a catch beyond
// the end of the range is a slip of the record and an error. Read: the definition (Archives of Physical Medicine
// and Rehabilitation, S0003-9993(13)00522-4). Angles differ by up to 10.7° between readings, so under 10° little is said.
func DynamicRange(slow, fast float64) (float64, error) {
	if err := first(between("slow range R2", slow, -180, 180, "°"), between("fast catch R1", fast, -180, 180, "°")); err != nil {
		return 0, err
	}
	if fast > slow {
		return 0, outside("The catch on the fast stretch is at %s, beyond the slow range of %s; it can't be. Look at both again.", shown(fast, "°"), shown(slow, "°"))
	}
	return slow - fast, nil
}

// word passes a grade on.
func word(w string, err error) (Value, error) { return Value{Word: w}, err }

func measurement() []*Formula { return slices.Concat(reading(), posture(), comparing()) }

func reading() []*Formula {
	return []*Formula{{
		Name: "walking_class", Topic: "measurement",
		Params: []Param{{"speed", speed}}, Result: GradeOf("community_walking"),
		Doc:    "the class of walking that goes with a comfortable speed",
		Writes: "v < 0.4: household; 0.4 ≤ v ≤ 0.8: limited_community; v > 0.8: community (m/s)", Domain: "more than 0 m/s; found after stroke",
		Standing: SecondHand, Sources: []string{"Perry 1995, Stroke 26:982, as used by Schmid 2007"},
		of: func(in []Value, _ []float64) (Value, error) { return word(WalkingClass(in[0].Number)) },
	}, {
		Name: "pressure_index_band", Topic: "measurement",
		Params: []Param{{"index", ratio}}, Result: GradeOf("pressure_index"),
		Doc:    "the band of an ankle-brachial pressure index",
		Writes: "≤ 0.3 critical; ≤ 0.5 severe; ≤ 0.7 moderate; < 0.91 mild; < 1 borderline; ≤ 1.4 normal; > 1.4 raised", Domain: "0 to 5; an ankle pressure under 50 mmHg is critical whatever the index",
		Standing: Read, Sources: []string{"J Foot Ankle Res 2020, s13047-020-00389-w: from 0.91", "BMJ, PMC1363917, table 7: below; its mild to moderate is called moderate"},
		of: func(in []Value, _ []float64) (Value, error) { return word(PressureIndexBand(in[0].Number)) },
	}, {
		Name: "calf_shortness", Topic: "measurement",
		Params: []Param{{"knee_extended", angle}, {"knee_flexed", angle}}, Result: GradeOf("short_calf"),
		Doc:    "what is short in the calf, by dorsiflexion with the knee extended and flexed",
		Writes: "R extended > 5°: none; else R flexed > 10°: gastrocnemius; else gastrocnemius_and_soleus", Domain: "ranges from −60° to 60°; the flexed one not smaller by more than 7.94°, what two readings may differ by",
		Standing: FromMemory, Sources: []string{"DiGiovanni 2002, JBJS-A 84:962: the 5° read, the 10° with the knee flexed from memory",
			"Baumbach 2014, BMC Musculoskelet Disord 15:246: the logic; 20° of knee bend frees the gastrocnemius"},
		of: func(in []Value, _ []float64) (Value, error) { return word(CalfShortness(in[0].Number, in[1].Number)) },
	}, {
		Name: "dynamic_range", Topic: "measurement",
		Params: []Param{{"slow", angle}, {"fast", angle}}, Result: angle,
		Doc:    "the part of the range that the reflex takes on a fast stretch, Tardieu's R2 less R1",
		Writes: "D = R2 − R1", Domain: "−180° to 180°, R1 ≤ R2", Standing: Read,
		Sources: []string{"Archives of Physical Medicine and Rehabilitation, S0003-9993(13)00522-4: definitions of R1 and R2"},
		of:      two(DynamicRange),
	}}
}
