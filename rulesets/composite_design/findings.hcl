# What is found at the leg, by name. A finding is a fact; dorsiflexion is positive. Limits that no source gives say so.

# Range and tone

finding "short_of_plantigrade" {
  holds   = "quantity.usable_range < deg(0)"
  because = "With the knee extended the foot does not come up to plantigrade."
}

finding "flat_only_under_load" {
  holds   = "limb.heel_contact_standing == 'only_under_load'"
  because = "A foot that only comes flat under body weight is a different foot from one that never does. Common practice, no source."
}

finding "lean_can_be_had" {
  holds   = "quantity.usable_range >= deg(-19)"
  because = "Up to 19 deg short of plantigrade a heel of half the length from heel to ball still leans the shank by 11 deg. Worked out from the geometry; beyond it no heel does."
}

finding "heel_beyond_reach" {
  holds   = "!finding.lean_can_be_had || quantity.heel_short_by > mm(60)"
  because = "The heel would have to be higher than half of the length from heel to ball, or more than 60 mm beyond the shoe's, the most that can be asked for. The 60 mm are a starting value without a source."
}

finding "block_beyond_reach" {
  holds   = "quantity.usable_range < deg(-30) || quantity.block_for_the_ankle > mm(60)"
  because = "The block would have to be higher than half of the length from heel to ball, or more than 60 mm. The 60 mm are a starting value without a source."
}

finding "spastic_calf" {
  holds   = "limb.plantarflexor_tone >= modified_ashworth('1+')"
  because = "A catch, and resistance after it. The grade is a starting value without a source; trials of calf weakness leave spasticity out."
  cites   = ["bohannon_1987"]
}

finding "tone_with_little_range" {
  holds   = "finding.limb_safety.tone_marked && quantity.usable_range <= deg(5)"
  because = "More tone with less range asks for more leverage and more contact. Common practice, no source; the 5 deg are those by which a gastrocnemius is called short."
  cites   = ["digiovanni_2002"]
}

finding "foot_pulled_down" {
  holds   = "finding.short_of_plantigrade || finding.limb_safety.tone_marked"
  because = "Length or tone of the calf holds the foot down."
}

# Power

finding "weak_calf" {
  holds   = "limb.heel_rises <= 3 || limb.plantarflexor_power < muscle_power('5')"
  because = "As a trial of calf weakness took it: a grade below 5, or no more than three heel rises."
  cites   = ["calf_weakness_trial"]
}

finding "calf_cannot_lift" {
  holds   = "limb.heel_rises == 0 && !finding.spastic_calf"
  because = "One full heel rise on one leg takes about the moment of walking's push-off; who can't do one has less. Worked out from statics; not for a spastic calf."
  cites   = ["schwartz_2008"]
}

finding "stiffer_than_published" {
  holds   = "quantity.demand_most > Nm_per_deg(8.17)"
  because = "More than the stiffest device of 25 studies had."
  cites   = ["totah_2019"]
}

finding "weak_quadriceps" {
  holds   = "limb.quadriceps_power < muscle_power('4')"
  because = "A knee that can't be relied on under load. The grade is a starting value without a source."
}

# Walking

finding "shank_falls_forward" {
  holds   = "limb.gait_midstance_ankle == 'too_far_forward'"
  because = "Nothing holds the shank back over the foot: a weak calf, or crouch."
}

finding "knee_goes_back" {
  holds   = "limb.gait_midstance_knee in ['hyperextends_slowly', 'snaps_back']"
  because = "The knee passes straight under load."
}

finding "knee_bends_under_load" {
  holds   = "limb.gait_midstance_knee in ['too_flexed', 'gives_way']"
  because = "The knee stays bent or gives way while the other leg passes."
}

finding "ankle_is_held" {
  holds   = "finding.foot_pulled_down || finding.spastic_calf || finding.weak_calf || finding.shank_falls_forward || finding.knee_goes_back"
  because = "The device has a task in stance, so that it sets the lean of the shank."
}

finding "swing_only" {
  holds   = "limb.gait_swing_ankle in ['hangs', 'turns_in', 'turns_out'] && !finding.ankle_is_held"
  because = "The foot hangs in swing, and stance needs nothing from the device."
}

finding "walks_very_slowly" {
  holds   = "quantity.speed_in_heights < ratio(0.6)"
  because = "Less than 0.6 body heights a second: the slowest group of the source."
  cites   = ["bovi_2011"]
}

finding "walks_slowly" {
  holds   = "quantity.speed_in_heights < ratio(0.8)"
  because = "Less than 0.8 body heights a second: the two slowest groups of the source."
  cites   = ["bovi_2011"]
}

# Foot

finding "varus_in_stance" {
  holds   = "limb.gait_midstance_hindfoot == 'varus'"
  because = "The heel turns in under load."
}

finding "valgus_in_stance" {
  holds   = "limb.gait_midstance_hindfoot == 'valgus'"
  because = "The heel turns out under load."
}

finding "forefoot_drives_the_varus" {
  holds   = "finding.varus_in_stance && limb.block_test == 'corrects'"
  because = "With the first ray hanging free of the block the heel comes straight."
  cites   = ["block_test"]
}

finding "hindfoot_comes_straight" {
  holds   = "limb.hindfoot_corrects_standing in ['fully', 'partly'] && !finding.limb_safety.hindfoot_fixed"
  because = "It can be brought towards the line where it counts, standing on it, and a hand moves it too. Common practice, no source."
}

finding "forefoot_abducted" {
  holds   = "limb.fpi_forefoot >= fpi_item('+1')"
  because = "More toes are seen on the outer side of the leg than on the inner."
  cites   = ["redmond_2005"]
}
