# The pattern of each leg, worked out from what is seen of ankle, knee and hip. The recorded label (gait_pattern) is
# never read here: it is compared in the cautions. Dorsiflexion and extension are positive.

# What is seen

finding "spastic" {
  holds   = "person.diagnosis_group != 'idiopathic_toe_walking'"
  because = "The published patterns are of spastic gait; toe walking without a known cause goes its own way."
}

finding "patterns_from_elsewhere" {
  holds   = "person.diagnosis_group in ['brain_injury', 'spinal_cord_lesion', 'multiple_sclerosis']"
  because = "The patterns and their devices were published for cerebral palsy; the table on foot drop is for neurology in general."
  cites   = ["foot_drop_table"]
}

finding "one_sided" {
  holds   = "person.distribution == 'one_side'"
  because = "The types of hemiplegia are for one side."
  cites   = ["winters_1987"]
}

finding "equinus_in_stance" {
  holds   = "limb.gait_midstance_ankle in ['held_back', 'early_heel_rise']"
  because = "The shank doesn't come forward over the foot, or the heel is off too early."
}

finding "knee_goes_back" {
  holds   = "limb.gait_midstance_knee in ['hyperextends_slowly', 'snaps_back']"
  because = "The knee goes past straight as the other leg passes."
}

finding "knee_and_hip_flexed" {
  holds   = "limb.gait_midstance_knee == 'too_flexed' && limb.gait_terminal_stance_hip == 'does_not_extend'"
  because = "Knee and hip stay bent in stance."
}

finding "foot_hangs_in_swing" {
  holds   = "limb.gait_swing_ankle != 'lifts'"
  because = "The foot is not lifted in swing; turned in or out counts too."
}

finding "turns_in" {
  holds   = "limb.gait_initial_contact == 'lateral_border' || limb.gait_midstance_hindfoot == 'varus'"
  because = "The foot lands on its outer border, or stands on it."
}

# What is measured

finding "calf_spastic" {
  holds   = "limb.plantarflexor_tone >= modified_ashworth('1+')"
  because = "A catch and then resistance. The table on foot drop gives no grade; 1+ is a starting value without a source."
}

finding "range_to_be_gained" {
  holds   = "limb.ankle_dorsiflexion_knee_extended <= deg(5)"
  because = "The range at which children were cast in one small study, up to 5 deg; a trial of night splints gains range first below 5 deg."
  cites   = ["cottalorda_2000", "maas_2012"]
}

finding "dorsiflexion_may_be_free" {
  holds   = "limb.ankle_dorsiflexion_knee_extended >= deg(10) && limb.plantarflexor_tone <= modified_ashworth('1') && limb.plantarflexor_power >= muscle_power('4') && limb.midfoot_break == 'none'"
  because = "Length for the end of stance with the knee straight, a calf without much tone that can hold the shank, and a foot that stays in line. The four conditions and the 10 deg are from memory; the grades are starting values without a source."
  cites   = ["owen_2014"]
}

finding "push_of_the_calf_lost" {
  holds   = "limb.gait_terminal_stance_knee == 'stays_flexed' || limb.midfoot_break == 'marked'"
  because = "The calf should straighten the knee through the forefoot late in stance. It doesn't where the knee stays bent, and it can't where the foot bends in the middle. How this is told by eye is common practice, no source."
}

finding "knee_or_hip_poorly_held" {
  holds   = "limb.gait_terminal_stance_knee == 'stays_flexed' || limb.gait_terminal_stance_hip == 'does_not_extend'"
  because = "Poor control of knee or hip extension, which a guideline asks about. How this is told by eye is common practice, no source."
  cites   = ["nice_spasticity"]
}

# The patterns from the side

finding "drop_foot" {
  holds   = "finding.spastic && finding.foot_hangs_in_swing && limb.gait_midstance_ankle == 'moves_forward_steadily' && limb.gait_midstance_knee == 'near_straight' && !finding.limb_safety.equinus"
  because = "The foot hangs in swing, stance is as usual and the calf is not short: also type 1 of hemiplegia."
  cites   = ["sagittal_patterns", "winters_1987"]
}

finding "true_equinus" {
  holds   = "finding.spastic && finding.equinus_in_stance && (limb.gait_midstance_knee == 'near_straight' || finding.knee_goes_back)"
  because = "Equinus in stance over a knee that is straight or goes back."
  cites   = ["sagittal_patterns"]
}

finding "jump" {
  holds   = "finding.spastic && finding.equinus_in_stance && finding.knee_and_hip_flexed"
  because = "Equinus in stance, and knee and hip too flexed. The pelvis, tipped forward in the published pattern, is not asked for."
  cites   = ["sagittal_patterns"]
}

finding "apparent_equinus" {
  holds   = "finding.spastic && limb.gait_midstance_ankle == 'moves_forward_steadily' && finding.knee_and_hip_flexed"
  because = "The ankle moves as usual; the heel is off the ground because knee and hip are too flexed."
  cites   = ["sagittal_patterns"]
}

finding "crouch" {
  holds   = "finding.spastic && limb.gait_midstance_ankle == 'too_far_forward' && finding.knee_and_hip_flexed"
  because = "Ankle too dorsiflexed, knee and hip too flexed."
  cites   = ["sagittal_patterns"]
}

# The types of hemiplegia beyond type 1

finding "type_2" {
  holds   = "finding.one_sided && finding.true_equinus && finding.foot_hangs_in_swing && limb.gait_swing_knee != 'stiff'"
  because = "A foot that hangs in swing, and equinus in stance, with the knee free: straight is 2a, going back is 2b."
  cites   = ["winters_1987"]
}

finding "type_3" {
  holds   = "finding.spastic && finding.one_sided && finding.equinus_in_stance && limb.gait_midstance_knee == 'too_flexed' && limb.gait_terminal_stance_hip == 'extends'"
  because = "Equinus and a knee that stays bent, with the hip free. A knee that is only stiff in swing is type 3 too by the definition; for the device it goes by its stance."
  cites   = ["winters_1987"]
}

finding "type_4" {
  holds   = "finding.one_sided && finding.jump"
  because = "Equinus, and knee and hip too flexed, of one side. The turning of hip and pelvis that goes with it is not asked for."
  cites   = ["winters_1987"]
}

# What decides within a pattern

finding "hinge_paired" {
  holds   = "finding.true_equinus || finding.type_3 && !finding.push_of_the_calf_lost"
  because = "Patterns for which a hinge is among the published devices and the ankle is at fault."
  cites   = ["sagittal_patterns", "pattern_teaching"]
}

finding "hinge_disputed" {
  holds   = "finding.hinge_paired && !finding.dorsiflexion_may_be_free || finding.true_equinus && finding.knee_or_hip_poorly_held"
  because = "One source pairs the pattern with a hinge; by another the ankle is to be held."
  cites   = ["sagittal_patterns", "owen_2014", "nice_spasticity"]
}

finding "crouch_contracted" {
  holds   = "finding.crouch && (limb.knee_extension <= deg(-15) || limb.hip_extension <= deg(-15))"
  because = "Knee or hip fixed in flexion by 15 deg or more: the limit of one study, from memory."
  cites   = ["rogozinski_2009"]
}

finding "knee_beyond_reports" {
  holds   = "limb.knee_extension < deg(-20)"
  because = "Nothing that was read reports a ground-reaction device on a knee contracted by more than 20 deg."
  cites   = ["contracted_knees_case"]
}

finding "stands_more_than_walks" {
  holds   = "person.diagnosis_group == 'cerebral_palsy' && person.gross_motor_function >= gross_motor_function('IV')"
  because = "Gross motor function level IV or V: sitting, transfers and supported standing more than walking."
  cites   = ["gross_motor_levels"]
}

finding "young_child_to_cast" {
  holds   = "person.diagnosis_group == 'cerebral_palsy' && person.age < years(6) && finding.range_to_be_gained"
  because = "A child with cerebral palsy of an age and range like those who were cast in one small study. They were 3.1 years old on average; the limit of 6 years is a starting value."
  cites   = ["cottalorda_2000"]
}

finding "no_pattern" {
  holds   = "finding.spastic && !finding.drop_foot && !finding.true_equinus && !finding.jump && !finding.apparent_equinus && !finding.crouch && !finding.type_3"
  because = "What was seen fits none of the patterns."
}
