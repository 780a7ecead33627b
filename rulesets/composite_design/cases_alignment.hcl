# Worked cases of the alignment. Invented people; what is expected was worked out by hand from the rules and the geometry.

# The ankle in the cast

case "the ankle just reaches plantigrade: cast at a right angle on the shoe's block" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = 0
      ankle_dorsiflexion_knee_flexed   = 10
      heel_contact_standing            = "full"
      heel_to_ball_length              = 180
      shoe_heel_height                 = 22
      shoe_forefoot_height             = 12
      midfoot_break                    = "slight"
      plantarflexor_tone               = "0"
    }
  }
  expect "left" {
    choices    = { cast_ankle_angle = "0 deg (not provisional)", cast_block_height = "10 mm (not provisional)" }
    findings   = { short_of_plantigrade = false, flat_only_under_load = false, tone_with_little_range = false }
    quantities = { usable_range = "0 deg", cast_angle = "0 deg", block_for_the_ankle = "0 mm", shoe_drop = "10 mm" }
    fires      = ["cast_at_a_right_angle", "wrap_a_midfoot_that_breaks"]
    silent     = ["cast_where_the_ankle_stops", "cast_under_load", "only_the_bent_knee_gets_there"]
    cautions   = ["midfoot_may_hide_equinus"]
  }
  expect "person" { quantities = { starting_lean = "11 deg" } }
}

case "one degree on either side of plantigrade" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = 1
      heel_contact_standing            = "full"
      heel_to_ball_length              = 180
      shoe_heel_height                 = 22
      shoe_forefoot_height             = 12
      midfoot_break                    = "marked"
    }
    right {
      ankle_dorsiflexion_knee_extended = -1
      ankle_dorsiflexion_knee_flexed   = 8
      heel_contact_standing            = "full"
      heel_to_ball_length              = 180
      shoe_heel_height                 = 22
      shoe_forefoot_height             = 12
      midfoot_break                    = "marked"
    }
  }
  expect "left" {
    choices  = { cast_ankle_angle = "0 deg", cast_block_height = "10 mm" }
    findings = { short_of_plantigrade = false }
    fires    = ["cast_at_a_right_angle"]
    silent   = ["cast_where_the_ankle_stops"]
    cautions = ["midfoot_may_hide_equinus"]
  }
  expect "right" {
    choices    = { cast_ankle_angle = "-1 deg", cast_block_height = "10 mm" }
    findings   = { short_of_plantigrade = true, foot_pulled_down = true }
    quantities = { block_for_the_ankle = "3.141 mm +- 0.001" }
    fires      = ["cast_where_the_ankle_stops"]
    silent     = ["cast_at_a_right_angle", "midfoot_may_hide_equinus"]
    cautions   = ["only_the_bent_knee_gets_there"]
  }
}

case "equinus of 12 deg: cast there on its block, and the heel built up" {
  basis = "from_memory"
  given {
    device_for = ["right"]
    person { walking_aid = "none" }
    right {
      ankle_dorsiflexion_knee_extended = -12
      ankle_dorsiflexion_knee_flexed   = -11
      heel_contact_standing            = "none"
      heel_to_ball_length              = "17 cm"
      shoe_heel_height                 = "2.4 cm"
      shoe_forefoot_height             = 14
      shoe_depth                       = "standard"
      midfoot_break                    = "none"
    }
  }
  expect "right" {
    choices    = { cast_ankle_angle = "-12 deg (not provisional)", cast_block_height = "36 mm (not provisional)", heel_raise = "56 mm (not provisional)", heel_raise_place = "under_sole" }
    findings   = { short_of_plantigrade = true, ankle_is_held = true }
    quantities = { block_for_the_ankle = "35.345 mm +- 0.001", heel_raise_wanted = "56.424 mm +- 0.001", sole_pitch = "23 deg +- 0.001", device_shank_to_vertical = "11 deg +- 0.001" }
    fires      = ["cast_where_the_ankle_stops", "build_up_the_heel", "high_raise_under_the_sole"]
    silent     = ["cast_at_a_right_angle", "leave_the_heel", "raise_under_a_shallow_shoe", "raise_inside_a_deep_shoe", "only_the_bent_knee_gets_there", "wrap_a_midfoot_that_breaks"]
    cautions   = ["high_heel_raise", "standing_is_not_walking"]
  }
}

case "short lying down, flat under load: what is found standing counts" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "one_stick" }
    left {
      ankle_dorsiflexion_knee_extended        = -6
      ankle_dorsiflexion_loaded_knee_extended = 2
      heel_contact_standing                   = "only_under_load"
      heel_to_ball_length                     = 180
      shoe_heel_height                        = 22
      shoe_forefoot_height                    = 12
    }
  }
  expect "left" {
    choices    = { cast_ankle_angle = "0 deg (not provisional)", cast_loading = "loaded (not provisional)" }
    findings   = { flat_only_under_load = true, short_of_plantigrade = false }
    quantities = { usable_range = "2 deg" }
    fires      = ["cast_under_load", "cast_at_a_right_angle"]
    silent     = ["limb_safety.never_cast_beyond_the_range"]
  }
}

case "no word on the heel in standing: the range that counts is not known" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left { ankle_dorsiflexion_knee_extended = 4 }
  }
  expect "left" {
    choices    = { cast_ankle_angle = "left_to_clinician (provisional)" }
    findings   = { short_of_plantigrade = "unknown" }
    quantities = { usable_range = "unknown" }
    silent     = ["cast_at_a_right_angle", "cast_where_the_ankle_stops"]
  }
}

# Hindfoot and forefoot

case "hindfoot in line, or part of the way" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      hindfoot_corrects_by_hand  = "fully"
      hindfoot_corrects_standing = "none_needed"
      gait_midstance_hindfoot    = "neutral"
      first_ray_position         = "level"
      forefoot_corrects_standing = "none_needed"
      first_ray_corrects         = "none_needed"
    }
    right {
      hindfoot_corrects_by_hand  = "fully"
      hindfoot_corrects_standing = "partly"
      gait_midstance_hindfoot    = "valgus"
      first_ray_position         = "plantarflexed"
      first_ray_corrects         = "fully"
      forefoot_corrects_standing = "partly"
    }
  }
  expect "left" {
    choices  = { hindfoot_in_cast = "corrected", hindfoot_posting = "none", pressure_system_frontal = "none", forefoot_posting = "none" }
    findings = { hindfoot_comes_straight = false, valgus_in_stance = false }
    fires    = ["cast_the_hindfoot_straight", "no_post_under_a_straight_heel", "no_force_on_a_heel_in_line", "no_post_under_a_level_forefoot"]
    silent   = ["cast_the_hindfoot_as_far_as_it_goes", "hold_the_valgus", "post_the_valgus_that_comes_straight", "load_changes_the_hindfoot", "let_a_stiff_first_ray_down"]
  }
  expect "right" {
    choices  = { hindfoot_in_cast = "partly_corrected", hindfoot_posting = "medial", pressure_system_frontal = "against_valgus", ankle_strap = "pull_from_medial", forefoot_posting = "left_to_clinician" }
    findings = { hindfoot_comes_straight = true, valgus_in_stance = true, varus_in_stance = false }
    fires    = ["cast_the_hindfoot_as_far_as_it_goes", "post_the_valgus_that_comes_straight", "hold_the_valgus"]
    silent   = ["cast_the_hindfoot_straight", "no_post_under_a_straight_heel", "let_a_stiff_first_ray_down", "no_post_under_a_level_forefoot", "no_force_on_a_heel_in_line"]
    cautions = ["load_changes_the_hindfoot"]
  }
}

case "varus that the forefoot drives, and varus that is stiff" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      hindfoot_corrects_by_hand  = "fully"
      hindfoot_corrects_standing = "fully"
      gait_midstance_hindfoot    = "varus"
      block_test                 = "corrects"
      first_ray_position         = "plantarflexed"
      first_ray_corrects         = "partly"
    }
    right {
      hindfoot_corrects_by_hand  = "not_at_all"
      hindfoot_corrects_standing = "not_at_all"
      gait_midstance_hindfoot    = "varus"
      block_test                 = "does_not_correct"
    }
  }
  expect "left" {
    choices  = { hindfoot_in_cast = "corrected", hindfoot_posting = "lateral", forefoot_posting = "first_ray_recess", pressure_system_frontal = "against_varus", ankle_strap = "pull_from_lateral" }
    findings = { varus_in_stance = true }
    fires    = ["post_the_varus_that_the_forefoot_drives", "hold_the_varus", "let_a_stiff_first_ray_down"]
    silent   = ["take_a_stiff_hindfoot_as_it_is", "hold_the_valgus"]
  }
  expect "right" {
    choices  = { hindfoot_in_cast = "accommodated", hindfoot_posting = "none", pressure_system_frontal = "none" }
    findings = { hindfoot_comes_straight = false }
    fires    = ["take_a_stiff_hindfoot_as_it_is"]
    silent   = ["post_the_varus_that_the_forefoot_drives", "hold_the_varus", "cast_the_hindfoot_straight"]
  }
}

# Under both heels

case "a raise of exactly 20 mm: not yet high, and the other side raised by what it lifts" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      plantarflexor_tone               = "1+"
      heel_to_ball_length              = 180
      ankle_to_heel_back               = 50
      medial_malleolus_height          = 75
      lateral_malleolus_height         = 65
      shoe_heel_height                 = 24.345619168
      shoe_forefoot_height             = 10
      shoe_depth                       = "shallow"
      device_thickness_under_ball      = 6
      pelvis_levelling_block           = 0
    }
    right {
      shoe_forefoot_height        = 10
      device_thickness_under_ball = 0
      pelvis_levelling_block      = 0
    }
  }
  expect "left" {
    choices    = { heel_raise = "20 mm (not provisional)", heel_raise_place = "under_sole", heel_raise_opposite = "20 mm (not provisional)", heel_raise_opposite_place = "whole_sole" }
    quantities = { heel_raise_wanted = "20 mm", ankle_axis_height = "70 mm", forefoot_lever = "130 mm", ankle_rise_of_heel_raise = "14.011 mm +- 0.001", opposite_side_lower_by = "20.011 mm +- 0.001" }
    fires      = ["build_up_the_heel", "raise_under_a_shallow_shoe", "raise_the_other_side"]
    silent     = ["high_heel_raise", "leave_the_heel", "leave_the_other_side", "raise_inside_a_deep_shoe"]
    cautions   = ["opposite_raise_by_blocks"]
  }
}

case "a raise of a little more and a little less than 20 mm; devices on both legs" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      plantarflexor_tone               = "1+"
      heel_to_ball_length              = 180
      ankle_to_heel_back               = 50
      medial_malleolus_height          = 75
      lateral_malleolus_height         = 65
      shoe_heel_height                 = 23
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
      device_thickness_under_ball      = 6
      pelvis_levelling_block           = 0
    }
    right {
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      plantarflexor_tone               = "1+"
      heel_to_ball_length              = 180
      ankle_to_heel_back               = 50
      medial_malleolus_height          = 75
      lateral_malleolus_height         = 65
      shoe_heel_height                 = 25
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
      device_thickness_under_ball      = 6
      pelvis_levelling_block           = 0
    }
  }
  expect "left" {
    choices    = { heel_raise = "21 mm", heel_raise_place = "under_sole", heel_raise_opposite = "left_to_clinician", heel_raise_opposite_place = "left_to_clinician" }
    quantities = { heel_raise_wanted = "21.346 mm +- 0.001" }
    fires      = ["high_raise_under_the_sole"]
    silent     = ["raise_the_other_side", "leave_the_other_side", "opposite_raise_by_blocks", "raise_under_a_shallow_shoe", "raise_inside_a_deep_shoe"]
    cautions   = ["high_heel_raise"]
  }
  expect "right" {
    choices    = { heel_raise = "19 mm" }
    quantities = { heel_raise_wanted = "19.346 mm +- 0.001" }
    silent     = ["high_heel_raise"]
  }
}

case "nothing for the stance to do: no raise, and the short leg is left short of none" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = 10
      heel_contact_standing            = "full"
      plantarflexor_tone               = "0"
      heel_rises                       = 20
      plantarflexor_power              = "5"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
      heel_to_ball_length              = 180
      ankle_to_heel_back               = 50
      medial_malleolus_height          = 75
      lateral_malleolus_height         = 65
      shoe_heel_height                 = 20
      shoe_forefoot_height             = 10
      shoe_depth                       = "shallow"
      device_thickness_under_ball      = 4
      pelvis_levelling_block           = 15
    }
    right {
      shoe_forefoot_height        = 10
      device_thickness_under_ball = 0
      pelvis_levelling_block      = 0
    }
  }
  expect "left" {
    choices    = { heel_raise = "0 mm (not provisional)", heel_raise_place = "none", heel_raise_opposite = "0 mm (not provisional)", heel_raise_opposite_place = "none", shank_to_vertical_target = "left_to_clinician" }
    findings   = { ankle_is_held = false, swing_only = true, weak_calf = false }
    quantities = { heel_raise_wanted = "0 mm", ankle_rise_of_heel_raise = "0 mm", opposite_side_lower_by = "-11 mm", sole_pitch = "3.185 deg +- 0.001", device_shank_to_vertical = "3.185 deg +- 0.001" }
    fires      = ["leave_the_heel", "leave_the_other_side"]
    silent     = ["build_up_the_heel", "raise_the_other_side", "raise_under_a_shallow_shoe", "raise_inside_a_deep_shoe", "lean_the_shank", "lean_as_healthy_walkers_do", "opposite_raise_by_blocks", "high_heel_raise", "standing_is_not_walking"]
  }
}

case "the shoe gives more than is wanted; both sides just level" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      plantarflexor_tone               = "2"
      heel_to_ball_length              = 180
      ankle_to_heel_back               = 50
      medial_malleolus_height          = 75
      lateral_malleolus_height         = 65
      shoe_heel_height                 = 60
      shoe_forefoot_height             = 20
      device_thickness_under_ball      = 6
      pelvis_levelling_block           = 6
    }
    right {
      shoe_forefoot_height        = 20
      device_thickness_under_ball = 0
      pelvis_levelling_block      = 0
    }
  }
  expect "left" {
    choices    = { heel_raise = "0 mm (not provisional)", heel_raise_place = "none", heel_raise_opposite = "0 mm", heel_raise_opposite_place = "none" }
    quantities = { heel_short_by = "-5.654 mm +- 0.001", heel_raise_wanted = "0 mm", opposite_side_lower_by = "0 mm", sole_pitch = "12.84 deg +- 0.001" }
    fires      = ["leave_the_heel", "leave_the_other_side"]
    silent     = ["build_up_the_heel", "raise_the_other_side", "opposite_raise_by_blocks"]
  }
}
