# What this ruleset calls by a name.

finding "dorsiflexors_weak" {
  holds   = "limb.dorsiflexor_power <= muscle_power('4')"
  because = "Grade 4 or less, as a teaching algorithm has it."
  cites   = ["ankle_control_teaching"]
}

finding "drop_foot" {
  holds   = "finding.dorsiflexors_weak && limb.gait_swing_ankle in ['hangs', 'turns_in', 'turns_out']"
  because = "The dorsiflexors are weak, and the foot is seen not to lift."
}

finding "low_tone" {
  holds   = "limb.plantarflexor_tone <= modified_ashworth('1')"
  because = "No more than a slight catch. The grade is a starting value without a source."
  cites   = ["bohannon_1987"]
}

finding "stance_steady" {
  holds   = "limb.gait_midstance_ankle == 'moves_forward_steadily' && limb.gait_midstance_knee == 'near_straight' && limb.gait_midstance_hindfoot != 'varus'"
  because = "Shank, knee and heel are in order while the other leg passes."
}

finding "calf_needs_help" {
  holds   = "limb.plantarflexor_power <= muscle_power('4') || limb.gait_midstance_ankle == 'too_far_forward'"
  because = "Plantarflexors of grade 4 or less, or a shank that comes too far forward, as a teaching algorithm has it."
  cites   = ["ankle_control_teaching"]
}

finding "isolated_drop_foot" {
  holds   = "finding.drop_foot && finding.low_tone && finding.stance_steady && limb.plantarflexor_power > muscle_power('4')"
  because = "The foot drops and nothing else is wrong: low tone, steady stance, and a calf that needs no help."
  cites   = ["foot_drop_table"]
}

finding "slap_only" {
  holds   = "limb.gait_loading_foot == 'foot_slap' && limb.gait_swing_ankle == 'lifts' && finding.stance_steady"
  because = "The foot clears the ground and stance is steady; it only comes down too fast."
  cites   = ["foot_drop_table"]
}

finding "calf_slightly_short" {
  holds   = "limb.ankle_dorsiflexion_knee_extended >= deg(0) && limb.ankle_dorsiflexion_knee_extended <= deg(5)"
  because = "Reaches plantigrade with the knee straight, but not beyond the 5 deg at which a study calls the gastrocnemius short. That this is what is meant by minor shortening is a starting value."
  cites   = ["digiovanni_2002"]
}

finding "palsy_under_a_year" {
  holds   = "person.diagnosis_group == 'nerve_injury' && since(person.onset) < weeks(52)"
  because = "Recovery is expected in about two thirds within a year."
  cites   = ["foot_drop_wiki"]
}

quantity "ankle_to_foot_centre" {
  unit    = "mm"
  value   = "(limb.heel_to_ball_length - limb.ankle_to_heel_back) * 0.5"
  because = "The weight of the bare foot acts about half way from the ankle to the ball."
}

quantity "pull_of_the_foot" {
  unit    = "N.m"
  value   = "foot_moment(person.body_mass, kg(0), quantity.ankle_to_foot_centre)"
  because = "The moment with which the foot's own weight lets it drop."
}

quantity "pull_of_100_grams" {
  unit    = "N.m"
  value   = "foot_moment(person.body_mass, g(100), quantity.ankle_to_foot_centre) - quantity.pull_of_the_foot"
  because = "What 100 g of shoe or device add, where they lie over the middle of the foot."
}

quantity "drop_that_is_left" {
  unit    = "deg"
  value   = "clearance_lost_at(limb.toe_clearance)"
  because = "How much further the ankle can drop before the toe touches. From the geometry of healthy legs; what hip and trunk do about it is not in it."
  cites   = ["toe_clearance_range"]
}
