# What the clinic calls by a name: findings (yes or no) and quantities. Dorsiflexion is positive, plantarflexion negative.

finding "equinus" {
  holds   = "limb.ankle_dorsiflexion_knee_extended < deg(0)"
  because = "With the knee extended the foot does not come up to plantigrade."
}

finding "fixed_equinus" {
  holds   = "finding.equinus && limb.heel_contact_standing == 'none'"
  because = "Short lying down, and the heel stays off the ground even under body weight. Common practice, no source."
}

finding "flat_only_under_load" {
  holds   = "limb.heel_contact_standing == 'only_under_load'"
  because = "A foot that only comes flat under body weight is a different foot from one that never does. Common practice, no source."
}

finding "gastrocnemius_short" {
  holds   = "limb.ankle_dorsiflexion_knee_extended <= deg(5) && limb.ankle_dorsiflexion_knee_flexed > deg(10)"
  because = "Bending the knee frees the ankle, so it is the gastrocnemius that is short."
  cites   = ["digiovanni_2002", "baumbach_2014"]
}

finding "spastic_calf" {
  holds   = "limb.plantarflexor_tone >= modified_ashworth('1+')"
  because = "A catch and then resistance: the demonstration calls 1+ and above spastic."
  cites   = ["bohannon_1987"]
}

finding "marked_tone" {
  holds   = "limb.plantarflexor_tone >= modified_ashworth('2')"
  because = "Marked through most of the range."
  cites   = ["bohannon_1987"]
}

finding "weak_calf" {
  holds   = "limb.heel_rises <= 3 || limb.plantarflexor_power < muscle_power('4')"
  because = "A weak calf feels strong against a hand, so heel rises count as well. The limit of the grade is a demonstration value."
  cites   = ["calf_weakness_trial"]
}

finding "foot_drop" {
  holds   = "limb.dorsiflexor_power < muscle_power('4') && limb.gait_swing_ankle in ['hangs', 'turns_in', 'turns_out'] && !finding.fixed_equinus"
  because = "The dorsiflexors are weak and the foot is seen not to lift, though the ankle would let it."
}

finding "stance_steady" {
  holds   = "limb.gait_midstance_knee == 'near_straight' && limb.gait_midstance_ankle == 'moves_forward_steadily' && limb.gait_midstance_hindfoot != 'varus'"
  because = "Knee, ankle and heel are in order while the other leg passes."
}

finding "crouch" {
  holds   = "limb.gait_midstance_ankle == 'too_far_forward' && limb.gait_midstance_knee == 'too_flexed' && limb.gait_terminal_stance_hip == 'does_not_extend'"
  because = "Ankle too dorsiflexed, knee and hip too flexed in stance."
  cites   = ["sagittal_patterns"]
}

finding "crouch_contracted" {
  holds   = "finding.crouch && (limb.knee_extension <= deg(-15) || limb.hip_extension <= deg(-15))"
  because = "Knee or hip is fixed in flexion too far for the ground reaction to straighten it. The limit of 15 deg is from memory."
  cites   = ["rogozinski_2009"]
}

finding "shank_falls_forward" {
  holds   = "finding.crouch || finding.weak_calf && limb.gait_midstance_ankle == 'too_far_forward'"
  because = "Nothing holds the shank back over the foot: crouch, or a calf too weak for it."
}

finding "knee_thrown_back" {
  holds   = "limb.gait_midstance_knee in ['hyperextends_slowly', 'snaps_back']"
  because = "The knee goes past straight under load."
}

finding "varus_in_stance" {
  holds   = "limb.gait_midstance_hindfoot == 'varus' || limb.gait_initial_contact == 'lateral_border'"
  because = "The foot lands on or stays on its outer border."
}

quantity "usable_range" {
  unit    = "deg"
  value   = "limb.heel_contact_standing == 'only_under_load' ? limb.ankle_dorsiflexion_loaded_knee_extended : limb.ankle_dorsiflexion_knee_extended"
  because = "The dorsiflexion that a device can count on, knee extended. Where the foot only comes flat under body weight, what is found standing counts. Common practice, no source."
}

quantity "equinus_angle" {
  unit    = "deg"
  value   = "abs(least(deg(0), quantity.usable_range))"
  because = "How far the ankle stays short of plantigrade; none where it gets there."
}

quantity "shoe_drop" {
  unit    = "mm"
  value   = "limb.shoe_heel_height - limb.shoe_forefoot_height"
  because = "Heel-sole differential of the shoe that will be worn."
}

quantity "heel_gap" {
  unit    = "mm"
  value   = "limb.heel_to_ball_length * (quantity.equinus_angle / rad(1))"
  because = "How high the heel stands when the shank is upright and the ball is on the ground: foot length from heel to ball times the angle. Within 1 % of the exact figure up to 13 deg."
}

quantity "needed_block" {
  unit    = "mm"
  value   = "greatest(quantity.shoe_drop, quantity.heel_gap)"
  because = "The block takes the shoe's differential, or more where the heel stands higher than that."
}

quantity "lean_in_own_shoe" {
  unit    = "deg"
  value   = "-quantity.equinus_angle + rad(1) * (quantity.shoe_drop / limb.heel_to_ball_length)"
  because = "Shank to vertical in this shoe with nothing added: the pitch of the shoe, less what the ankle is short of plantigrade."
}

quantity "lift_of_this_side" {
  unit    = "mm"
  value   = "(quantity.needed_block - quantity.shoe_drop) * 0.7"
  because = "A foot that stays pointed carries the ankle higher, by about seven tenths of what is built up under the heel. Worked out from the geometry, not measured."
}

quantity "side_difference" {
  unit    = "deg"
  value   = "other.ankle_dorsiflexion_knee_extended - limb.ankle_dorsiflexion_knee_extended"
  because = "The opposite ankle, examined the same way, is the comparison."
}
