# Worked cases of what can't be built: a heel, a block, a strut. Invented people; worked out by hand: length from heel to
# ball times the sine of 11 deg and the equinus together, less the shoe; 0.068 N·m/° for each kilogram.

case "equinus of 19 deg on a short foot: the heel is just within reach; of 20 deg: no heel gives the lean" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = -19
      heel_contact_standing            = "none"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      gait_midstance_knee              = "near_straight"
      gait_midstance_ankle             = "held_back"
      heel_to_ball_length              = 150
      shoe_heel_height                 = 25
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
    right {
      ankle_dorsiflexion_knee_extended = -20
      heel_contact_standing            = "none"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      gait_midstance_knee              = "near_straight"
      gait_midstance_ankle             = "held_back"
      heel_to_ball_length              = 150
      shoe_heel_height                 = 25
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
  }
  expect "left" {
    choices    = { heel_raise = "60 mm (not provisional)", heel_raise_place = "under_sole (not provisional)" }
    findings   = { lean_can_be_had = true, heel_beyond_reach = false, block_beyond_reach = false }
    quantities = { heel_short_by = "60 mm" }
    fires      = ["lean_the_shank", "build_up_the_heel", "high_raise_under_the_sole"]
    silent     = ["heel_beyond_reach"]
    cautions   = ["high_heel_raise", "standing_is_not_walking"]
  }
  expect "right" {
    choices  = { heel_raise = "left_to_clinician (not provisional)", heel_raise_place = "left_to_clinician (not provisional)", heel_raise_opposite = "left_to_clinician", heel_raise_opposite_place = "left_to_clinician", shank_to_vertical_target = "left_to_clinician (not provisional)", cast_ankle_angle = "-20 deg", cast_block_height = "52 mm" }
    findings = { lean_can_be_had = false, heel_beyond_reach = true }
    silent   = ["build_up_the_heel", "leave_the_heel", "high_raise_under_the_sole", "raise_inside_a_deep_shoe", "raise_under_a_shallow_shoe", "raise_the_other_side", "leave_the_other_side", "high_heel_raise", "opposite_raise_by_blocks", "lean_the_shank", "lean_as_healthy_walkers_do", "standing_is_not_walking", "memory_and_walkers_disagree_on_the_lean"]
    cautions = ["heel_beyond_reach"]
  }
}

case "equinus of 18 deg: within reach; of 19 deg in a shoe that gives 1 mm less: beyond it" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = -18
      heel_contact_standing            = "none"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      gait_midstance_knee              = "near_straight"
      gait_midstance_ankle             = "held_back"
      heel_to_ball_length              = 150
      shoe_heel_height                 = 25
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
    right {
      ankle_dorsiflexion_knee_extended = -19
      heel_contact_standing            = "none"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      gait_midstance_knee              = "near_straight"
      gait_midstance_ankle             = "held_back"
      heel_to_ball_length              = 150
      shoe_heel_height                 = 24
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
  }
  expect "left" {
    choices    = { heel_raise = "58 mm (not provisional)" }
    findings   = { lean_can_be_had = true, heel_beyond_reach = false }
    quantities = { heel_short_by = "57.721 mm +- 0.001" }
    silent     = ["heel_beyond_reach"]
  }
  expect "right" {
    choices  = { heel_raise = "left_to_clinician (not provisional)", heel_raise_place = "left_to_clinician (not provisional)", heel_raise_opposite = "left_to_clinician", heel_raise_opposite_place = "left_to_clinician" }
    findings = { lean_can_be_had = true, heel_beyond_reach = true }
    silent   = ["build_up_the_heel", "leave_the_heel", "high_raise_under_the_sole", "raise_inside_a_deep_shoe", "raise_under_a_shallow_shoe", "raise_the_other_side", "leave_the_other_side", "high_heel_raise", "opposite_raise_by_blocks"]
    cautions = ["heel_beyond_reach"]
  }
}

case "equinus of 30 deg on a foot of 120 mm: the block is just within reach; of 31 deg: beyond it" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = -30
      heel_contact_standing            = "none"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      gait_midstance_knee              = "near_straight"
      gait_midstance_ankle             = "held_back"
      heel_to_ball_length              = 120
      shoe_heel_height                 = 20
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
    right {
      ankle_dorsiflexion_knee_extended = -31
      heel_contact_standing            = "none"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      gait_midstance_knee              = "near_straight"
      gait_midstance_ankle             = "held_back"
      heel_to_ball_length              = 120
      shoe_heel_height                 = 20
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
  }
  expect "left" {
    choices    = { cast_block_height = "60 mm (not provisional)", cast_ankle_angle = "-30 deg" }
    findings   = { block_beyond_reach = false }
    quantities = { block_for_the_ankle = "60 mm" }
    fires      = ["block_under_a_short_ankle", "cast_where_the_ankle_stops"]
  }
  expect "right" {
    choices  = { cast_block_height = "left_to_clinician (not provisional)", cast_ankle_angle = "-31 deg" }
    findings = { block_beyond_reach = true }
    fires    = ["cast_where_the_ankle_stops"]
    silent   = ["block_under_a_short_ankle"]
  }
}

case "equinus of 29 deg on a foot of 120 mm, and of 30 deg on one of 121 mm" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = -29
      heel_contact_standing            = "none"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      gait_midstance_knee              = "near_straight"
      gait_midstance_ankle             = "held_back"
      heel_to_ball_length              = 120
      shoe_heel_height                 = 20
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
    right {
      ankle_dorsiflexion_knee_extended = -30
      heel_contact_standing            = "none"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      gait_midstance_knee              = "near_straight"
      gait_midstance_ankle             = "held_back"
      heel_to_ball_length              = 121
      shoe_heel_height                 = 20
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
  }
  expect "left" {
    choices    = { cast_block_height = "59 mm (not provisional)" }
    findings   = { block_beyond_reach = false }
    quantities = { block_for_the_ankle = "58.177 mm +- 0.001" }
    fires      = ["block_under_a_short_ankle"]
  }
  expect "right" {
    choices    = { cast_block_height = "left_to_clinician (not provisional)" }
    findings   = { block_beyond_reach = true }
    quantities = { block_for_the_ankle = "60.5 mm" }
    silent     = ["block_under_a_short_ankle"]
  }
}

case "a body mass that asks for just what the stiffest published device had" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 40
      body_mass   = 120.147058824
      walking_aid = "none"
    }
    left {
      heel_rises           = 0
      plantarflexor_tone   = "0"
      plantarflexor_moment = 200
      heel_to_ball_length  = 175
      ankle_to_heel_back   = 50
    }
  }
  expect "left" {
    choices    = { strut_stiffness = "open: 6.97..8.17 N.m/deg" }
    findings   = { stiffer_than_published = false }
    quantities = { demand_most = "8.17 N.m/deg" }
    fires      = ["stiffness_by_body_mass", "softer_than_by_body_mass"]
    silent     = ["stiffer_than_any_device"]
  }
}

case "120 kg: a little less than that" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 40
      body_mass   = 120
      walking_aid = "none"
    }
    left {
      heel_rises           = 0
      plantarflexor_tone   = "0"
      plantarflexor_moment = 200
      heel_to_ball_length  = 175
      ankle_to_heel_back   = 50
    }
  }
  expect "left" {
    choices    = { strut_stiffness = "open: 6.96..8.16 N.m/deg" }
    findings   = { stiffer_than_published = false }
    quantities = { demand_most = "8.16 N.m/deg" }
    silent     = ["stiffer_than_any_device"]
  }
}

case "140 kg: stiffer than any published device, so no figure is aimed at" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 40
      body_mass   = 140
      walking_aid = "none"
    }
    left {
      heel_rises           = 0
      plantarflexor_tone   = "0"
      plantarflexor_moment = 40
      heel_to_ball_length  = 175
      ankle_to_heel_back   = 50
    }
  }
  expect "left" {
    choices    = { strut_stiffness = "open: 0..9.52 N.m/deg (not provisional)" }
    findings   = { stiffer_than_published = true }
    quantities = { demand_most = "9.52 N.m/deg" }
    fires      = ["stiffness_that_the_calf_lacks"]
    silent     = ["stiffness_by_body_mass", "softer_than_by_body_mass", "stiffness_by_the_measured_deficit"]
    cautions   = ["stiffer_than_any_device", "outside_the_tried_stiffness"]
  }
}

case "180 kg: the end of the scale is not taken for an answer" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 40
      body_mass   = 180
      walking_aid = "none"
    }
    left {
      heel_rises           = 0
      plantarflexor_tone   = "0"
      plantarflexor_moment = 40
      heel_to_ball_length  = 175
      ankle_to_heel_back   = 50
    }
  }
  expect "left" {
    choices    = { strut_stiffness = "open: 0..12.24 N.m/deg (not provisional)" }
    quantities = { demand_most = "12.24 N.m/deg" }
    silent     = ["stiffness_by_body_mass", "softer_than_by_body_mass", "stiffness_by_the_measured_deficit"]
    cautions   = ["stiffer_than_any_device"]
  }
}
