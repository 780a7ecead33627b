package biomech

import "strconv"

// FootPostureTotal is the Foot Posture Index: the sum of its six items, each from −2 (supinated) to +2 (pronated),
// so from −12 to +12. An item that could not be seen leaves no total. Second-hand: Redmond 2005, manual, that the
// items are six and run from −2 to 2.
func FootPostureTotal(items [6]int) (int, error) {
	total := 0
	for _, item := range items {
		if item < -2 || item > 2 {
			return 0, outside("An item of the Foot Posture Index is %s; each runs from −2 to +2.", show(float64(item)))
		}
		total += item
	}
	return total, nil
}

// FootPostureBands lists the bands of [FootPostureBand], supinated first.
func FootPostureBands() []string {
	return []string{"highly_supinated", "supinated", "neutral", "pronated", "highly_pronated"}
}

// FootPostureBand is the band of a total of the Foot Posture Index:
//
//	−12 to −5: highly_supinated; −4 to −1: supinated; 0 to 5: neutral; 6 to 9: pronated; 10 to 12: highly_pronated
//
// Holds for −12 to 12. From memory, corroborated second-hand: Redmond 2005 and 2006, Clin Biomech 21:89. At 6 sources
// differ: the abstract of a study of children (BMJ Open 2019, e023341) counts it as normal and as pronated.
func FootPostureBand(total int) (string, error) {
	bands := FootPostureBands()
	switch {
	case total < -12 || total > 12:
		return "", outside("The total of the Foot Posture Index is %s; it runs from −12 to +12.", show(float64(total)))
	case total <= -5:
		return bands[0], nil
	case total <= -1:
		return bands[1], nil
	case total <= 5:
		return bands[2], nil
	case total <= 9:
		return bands[3], nil
	}
	return bands[4], nil
}

func posture() []*Formula {
	item := GradeOf("fpi_item")
	return []*Formula{{
		Name: "foot_posture_total", Topic: "measurement",
		Params: []Param{{"talar_head", item}, {"malleolar_curves", item}, {"calcaneus", item}, {"talonavicular", item}, {"medial_arch", item}, {"forefoot", item}},
		Result: Count,
		Doc:    "the Foot Posture Index, the sum of its six items",
		Writes: "sum of six items, each −2 to +2", Domain: "all six scored", Standing: SecondHand, Sources: []string{"Redmond 2005, Foot Posture Index manual"},
		of: func(in []Value, _ []float64) (Value, error) {
			var items [6]int
			for i, v := range in {
				n, err := strconv.Atoi(v.Word)
				if err != nil {
					return Value{}, outside("An item of the Foot Posture Index is %q; each runs from −2 to +2.", v.Word)
				}
				items[i] = n
			}
			total, err := FootPostureTotal(items)
			return number(float64(total), err)
		},
	}, {
		Name: "foot_posture_band", Topic: "measurement",
		Params: []Param{{"total", Count}}, Result: GradeOf("foot_posture"),
		Doc:    "the band of a total of the Foot Posture Index",
		Writes: "≤ −5 highly_supinated; ≤ −1 supinated; ≤ 5 neutral; ≤ 9 pronated; else highly_pronated", Domain: "−12 to 12",
		Standing: FromMemory, Sources: []string{"Redmond 2005 and 2006, Clin Biomech 21:89: bands from memory, corroborated second-hand"},
		of: func(in []Value, _ []float64) (Value, error) {
			total := in[0].Number
			if err := between("total of the Foot Posture Index", total, -12, 12, ""); err != nil {
				return Value{}, err
			}
			return word(FootPostureBand(int(total)))
		},
	}}
}
