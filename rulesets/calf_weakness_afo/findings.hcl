# What this ruleset calls by a name.

finding "calf_weak" {
  holds   = "limb.heel_rises <= 3 || limb.plantarflexor_power < muscle_power('5')"
  because = "As a trial in calf weakness took people in: a grade below 5, or not more than 3 heel rises."
  cites   = ["calf_weakness_trial"]
}

finding "calf_spastic" {
  holds   = "limb.plantarflexor_tone >= modified_ashworth('1+')"
  because = "A catch and then resistance. The grade is a starting value without a source; the trials took people without spasticity and name no grade."
  cites   = ["bohannon_1987"]
}

finding "no_heel_rise" {
  holds   = "limb.heel_rises < 1"
  because = "One full heel rise asks of the calf about the peak moment of walking, so a calf that can't do one has less than walking takes. Worked out from the geometry."
}

finding "shank_falls_forward" {
  holds   = "limb.gait_midstance_ankle == 'too_far_forward'"
  because = "The shank goes too far over the foot while the other leg passes."
}

finding "quadriceps_weak" {
  holds   = "limb.quadriceps_power < muscle_power('3')"
  because = "Can't straighten the knee against gravity. No guideline gives a grade; common practice, no source."
}

finding "knee_gives_way" {
  holds   = "limb.gait_midstance_knee == 'gives_way'"
  because = "What is done at the ankle has not made this knee steady."
}

finding "advised_apart" {
  holds   = "person.diagnosis_group == 'spina_bifida' || person.diagnosis_group == 'muscle_disease' && person.duchenne_dystrophy"
  because = "Spina bifida and Duchenne dystrophy have advice of their own, and were not what the trials of spring devices were about."
}

finding "spring_suits" {
  holds   = "finding.calf_weak && !finding.calf_spastic && !finding.quadriceps_weak && !finding.advised_apart && person.age >= years(18)"
  because = "An adult with a weak calf, no spasticity and a knee that the quadriceps can hold: the people of the trials of spring devices, one of which took in ages from 18 to 80."
  cites   = ["calf_weakness_trial", "waterval_2019", "waterval_2020"]
}

finding "duchenne_walker" {
  holds   = "person.diagnosis_group == 'muscle_disease' && person.duchenne_dystrophy && person.functional_ambulation >= functional_ambulation('4')"
  because = "Walks without anybody's help: what the sources call independently ambulant, taken as alone on level ground or anywhere."
}

finding "full_calf_by_4_rises" {
  holds   = "limb.heel_rises >= 4"
  because = "A short scheme calls four or five heel rises a full calf."
  cites   = ["heel_rise_short_scheme", "lunsford_1995"]
}

finding "full_calf_by_20_rises" {
  holds   = "limb.heel_rises >= 20"
  because = "A common convention calls twenty a full calf, whatever the age."
  cites   = ["jan_2005"]
}

finding "full_calf_by_25_rises" {
  holds   = "limb.heel_rises >= 25"
  because = "A newer scheme asks for twenty-five. Its limit is from memory; the mean of its source was 27.9."
  cites   = ["hislop_montgomery", "lunsford_1995"]
}

quantity "stiffness_by_mass" {
  unit    = "N.m/deg"
  value   = "normal_stiffness(person.body_mass)"
  because = "What a healthy ankle of this body mass does in walking, moment for each degree: where a calf that gives nothing is replaced in full."
}

quantity "softer_stiffness" {
  unit    = "N.m/deg"
  value   = "quantity.stiffness_by_mass - Nm_per_deg(1.2)"
  because = "Softer by the mean by which recommendations by mass and activity were too stiff. Its standard deviation, 1.3, is as large as itself."
  cites   = ["waterval_2021"]
}
