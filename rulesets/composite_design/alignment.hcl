# Alignment: the ankle and the block in the cast, hind- and forefoot, the lean of the shank, and both heels.

# The ankle in the cast

rule "cast_at_a_right_angle" {
  when     = "quantity.usable_range >= deg(0)"
  because  = "With the knee extended the ankle comes to ${quantity.usable_range}, so it is cast at a right angle, on a block of the shoe's own differential, ${quantity.shoe_drop}. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "cast_ankle_angle" {
    at_most = "quantity.usable_range"
    aim     = "quantity.cast_angle"
  }
  advise "cast_block_height" { aim = "quantity.shoe_drop" }
}

rule "cast_where_the_ankle_stops" {
  when     = "finding.short_of_plantigrade"
  because  = "With the knee extended the ankle stops at ${quantity.usable_range}. Forced further, the midfoot breaks or the knee bends, so it is cast there, and the heel is built up."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["owen_2010"]

  advise "cast_ankle_angle" {
    at_most = "quantity.usable_range"
    aim     = "quantity.cast_angle"
  }
}

rule "block_under_a_short_ankle" {
  when     = "finding.short_of_plantigrade && !finding.block_beyond_reach"
  because  = "With the ankle at ${quantity.usable_range} it takes ${quantity.block_for_the_ankle} under the heel to support the foot with the shank upright; the shoe has ${quantity.shoe_drop}, and the higher of the two is taken. Worked out from the geometry; common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "cast_block_height" {
    at_least = "quantity.block_for_the_ankle"
    aim      = "greatest(quantity.shoe_drop, quantity.block_for_the_ankle)"
  }
}

rule "cast_under_load" {
  when      = "finding.flat_only_under_load"
  because   = "This foot only comes flat under body weight, and under body weight it will walk: the cast is taken with weight on it, and the range that counts is the one found so, ${limb.ankle_dorsiflexion_loaded_knee_extended}, not the one lying. Common practice, no source."
  strength  = "conditional"
  basis     = "common_practice"
  overrides = ["limb_safety.never_cast_beyond_the_range"]

  advise "cast_loading" {
    at_least = "partly_loaded"
    favour   = "loaded"
  }
  advise "cast_ankle_angle" { at_most = "limb.ankle_dorsiflexion_loaded_knee_extended" }
}

# Hindfoot and forefoot

rule "cast_the_hindfoot_straight" {
  when     = "limb.hindfoot_corrects_standing in ['none_needed', 'fully']"
  because  = "On standing the heel is in line or can be brought into it, so it is cast in line. Four children whose orthoses did not hold it so lost function."
  strength = "conditional"
  basis    = "published"
  cites    = ["subtalar_alignment_children"]

  advise "hindfoot_in_cast" { favour = "corrected" }
}

rule "cast_the_hindfoot_as_far_as_it_goes" {
  when     = "limb.hindfoot_corrects_standing == 'partly'"
  unless   = "finding.forefoot_drives_the_varus"
  because  = "On standing the heel comes part of the way, and the cast goes as far as the heel does."
  strength = "conditional"
  basis    = "common_practice"

  advise "hindfoot_in_cast" {
    at_most = "partly_corrected"
    favour  = "partly_corrected"
  }
}

rule "cast_straight_what_the_forefoot_tips" {
  when     = "limb.hindfoot_corrects_standing == 'partly' && finding.forefoot_drives_the_varus"
  because  = "With the whole foot on the floor the heel comes only part of the way, with the first ray hanging free of the block it comes straight. The device lets that ray down, so the heel is cast in line. The test is published, what follows for the cast is common practice, no source."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["block_test"]

  advise "hindfoot_in_cast" { favour = "corrected" }
}

rule "take_a_stiff_hindfoot_as_it_is" {
  when     = "limb.hindfoot_corrects_standing == 'not_at_all'"
  because  = "The heel does not move towards the line under load. It is taken as it is: no wedge and no three-point force tries to move it."
  strength = "conditional"
  basis    = "published"
  cites    = ["fixed_deformity_teaching"]

  advise "hindfoot_in_cast" { only = "accommodated" }
  advise "hindfoot_posting" { only = "none" }
  advise "pressure_system_frontal" { only = "none" }
}

rule "no_post_under_a_straight_heel" {
  when     = "limb.hindfoot_corrects_standing == 'none_needed'"
  because  = "The heel stands in line: nothing is raised at either side."
  strength = "conditional"
  basis    = "common_practice"

  advise "hindfoot_posting" { favour = "none" }
}

rule "post_the_varus_that_the_forefoot_drives" {
  when     = "finding.forefoot_drives_the_varus"
  because  = "With the first ray hanging free of the block the heel comes straight, so the forefoot drives the varus: the lateral side is raised and the first ray let down. The test is published; the wedge is common practice, no source."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["block_test"]

  advise "hindfoot_posting" { favour = "lateral" }
  advise "forefoot_posting" { favour = "first_ray_recess" }
}

rule "post_the_valgus_that_comes_straight" {
  when     = "finding.valgus_in_stance && finding.hindfoot_comes_straight"
  because  = "The heel turns out under load and comes back (${limb.hindfoot_corrects_standing}), so the medial side is raised. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "hindfoot_posting" { favour = "medial" }
}

rule "let_a_stiff_first_ray_down" {
  when     = "limb.first_ray_position == 'plantarflexed' && limb.first_ray_corrects in ['partly', 'not_at_all']"
  because  = "The first ray stands low and does not come up to the others (${limb.first_ray_corrects}): on a flat plate it would tip the foot outwards, so it gets a recess. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "forefoot_posting" { favour = "first_ray_recess" }
}

rule "no_post_under_a_level_forefoot" {
  when     = "limb.forefoot_corrects_standing == 'none_needed' && limb.first_ray_position == 'level'"
  because  = "Forefoot and first ray are level with the heel: nothing is raised or let down."
  strength = "conditional"
  basis    = "common_practice"

  advise "forefoot_posting" { favour = "none" }
}

# The lean of the shank

rule "lean_the_shank" {
  when     = "finding.ankle_is_held && finding.lean_can_be_had"
  because  = "A device that works in stance sets the lean of the shank. Tuning starts at ${quantity.starting_lean} and stays from 7 to 15 deg: figures from memory, tuned on the person at the fitting."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["owen_2010"]

  advise "shank_to_vertical_target" {
    at_least = "deg(7)"
    at_most  = "deg(15)"
    aim      = "quantity.starting_lean"
  }
}

rule "lean_as_healthy_walkers_do" {
  when     = "finding.ankle_is_held && finding.lean_can_be_had"
  because  = "At ${person.walking_speed} with a height of ${person.height} a healthy shank leans ${quantity.lean_at_own_speed} at 30 % of the gait cycle, SD 2 to 3 deg. That is walking, not standing in a device."
  strength = "conditional"
  basis    = "published"
  cites    = ["bovi_2011"]

  advise "shank_to_vertical_target" { aim = "quantity.lean_at_own_speed" }
}

rule "no_more_lean_for_a_knee_that_bends" {
  when     = "finding.ankle_is_held && (finding.knee_bends_under_load || finding.weak_quadriceps)"
  because  = "The more the heel is raised, the more the knee bends and the harder the quadriceps works (${limb.quadriceps_power}; knee in midstance ${limb.gait_midstance_knee}). The lean stays at or below where tuning starts; that limit is a starting value without a source."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["kerkum_thesis"]

  advise "shank_to_vertical_target" { at_most = "quantity.starting_lean" }
}

rule "no_less_lean_for_a_knee_that_goes_back" {
  when     = "finding.knee_goes_back && finding.lean_can_be_had"
  unless   = "finding.weak_quadriceps"
  because  = "A shank that leans bends the knee that passes straight now (${limb.gait_midstance_knee}). The lean does not go below where tuning starts; that limit is a starting value without a source."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["kerkum_thesis"]

  advise "shank_to_vertical_target" { at_least = "quantity.starting_lean" }
}

# Under both heels

rule "build_up_the_heel" {
  when     = "!finding.heel_beyond_reach && quantity.heel_short_by > mm(0)"
  because  = "With the ankle at ${quantity.cast_angle} the shoe's ${quantity.shoe_drop} leave the shank short of ${quantity.starting_lean}: ${quantity.heel_raise_wanted} more stand it there. Worked out from the geometry; wedges at the fitting settle it."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["owen_2010"]

  advise "heel_raise" { aim = "quantity.heel_raise_wanted" }
}

rule "leave_the_heel" {
  when     = "!finding.heel_beyond_reach && quantity.heel_short_by <= mm(0)"
  because  = "The shoe's ${quantity.shoe_drop} are enough: either they stand the shank where tuning starts, or stance needs nothing from the device."
  strength = "conditional"
  basis    = "common_practice"

  advise "heel_raise" { aim = "mm(0)" }
  advise "heel_raise_place" { favour = "none" }
}

rule "raise_under_a_shallow_shoe" {
  when     = "!finding.heel_beyond_reach && quantity.heel_short_by > mm(0) && limb.shoe_depth == 'shallow'"
  because  = "A shallow shoe has no room for a raise: inside, it lifts the heel out of the counter. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "heel_raise_place" { favour = "under_sole" }
}

rule "high_raise_under_the_sole" {
  when     = "!finding.heel_beyond_reach && quantity.heel_short_by > mm(10)"
  because  = "A raise of ${quantity.heel_raise_wanted} inside would lift the heel out of the counter of any shoe, so it goes under the sole; as much as the shoe holds can still go inside. Common practice; the limit of 10 mm is a starting value without a source."
  strength = "conditional"
  basis    = "common_practice"

  advise "heel_raise_place" { favour = "under_sole" }
}

rule "raise_inside_a_deep_shoe" {
  when     = "!finding.heel_beyond_reach && quantity.heel_short_by > mm(0) && quantity.heel_short_by <= mm(10) && limb.shoe_depth == 'extra'"
  because  = "A deep shoe takes a raise of ${quantity.heel_raise_wanted} in the foot shell, where the foot can't slide off it. Common practice; the limit of 10 mm is a starting value without a source."
  strength = "conditional"
  basis    = "common_practice"

  advise "heel_raise_place" { favour = "in_foot_shell" }
}

rule "raise_the_other_side" {
  when     = "!finding.heel_beyond_reach && quantity.opposite_side_lower_by > mm(0) && other.device_thickness_under_ball == mm(0)"
  because  = "The raise lifts this ankle by ${quantity.ankle_rise_of_heel_raise} and the device by ${limb.device_thickness_under_ball}; less what the blocks show this leg to be short, the other side needs ${quantity.opposite_side_lower_by} under its whole sole, because under the heel alone about three tenths would be lost. Worked out from the geometry; that the other side takes the device's thickness is reported from one small study."
  strength = "conditional"
  basis    = "published"
  cites    = ["sound_side_insert", "leg_length_blocks"]

  advise "heel_raise_opposite" { aim = "quantity.opposite_side_lower_by" }
  advise "heel_raise_opposite_place" { favour = "whole_sole" }
}

rule "leave_the_other_side" {
  when     = "!finding.heel_beyond_reach && quantity.opposite_side_lower_by <= mm(0) && other.device_thickness_under_ball == mm(0)"
  because  = "Device and raise make up for no more than what this leg is short: the other side is left."
  strength = "conditional"
  basis    = "published"
  cites    = ["leg_length_blocks"]

  advise "heel_raise_opposite" { aim = "mm(0)" }
  advise "heel_raise_opposite_place" { favour = "none" }
}
