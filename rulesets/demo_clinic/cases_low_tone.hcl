# Worked cases without spasticity. Invented people; what is expected was worked out by hand from the rules.

case "flaccid foot drop, active: a light composite" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age              = 44
      diagnosis_group  = "nerve_injury"
      activity_demand  = "high"
      walking_aid      = "none"
      hand_function    = "both_hands"
      help_available   = "none"
      skin_risk        = "low"
      diabetes         = "none"
      arterial_disease = "none_known"
    }
    left {
      dorsiflexor_power                = "2"
      plantarflexor_power              = "5"
      heel_rises                       = 22
      quadriceps_power                 = "5"
      hip_extension                    = 10
      knee_extension                   = 0
      ankle_dorsiflexion_knee_extended = 12
      ankle_dorsiflexion_knee_flexed   = 20
      ankle_sideways_stability         = "stable"
      plantarflexor_tone               = "0"
      protective_sensation             = "present"
      malleolar_skin                   = "intact"
      heel_skin                        = "intact"
      achilles_skin                    = "intact"
      foot_dorsum_skin                 = "intact"
      anterior_shin_skin               = "intact"
      posterior_calf_skin              = "intact"
      hot_swollen_foot                 = false
      fluctuating_oedema               = false
      foot_pulses                      = "both"
      heel_contact_standing            = "full"
      hindfoot_corrects_standing       = "none_needed"
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
      heel_to_ball_length              = 180
      shoe_heel_height                 = 22
      shoe_forefoot_height             = 12
    }
  }
  expect "left" {
    choices = {
      device                   = "composite (not provisional)"
      articulation             = "left_to_clinician (not provisional)"
      cast_ankle_angle         = "0 deg (not provisional)"
      cast_block_height        = "10 mm (not provisional)"
      cast_loading             = "left_to_clinician"
      hindfoot_in_cast         = "corrected"
      shank_to_vertical_target = "left_to_clinician"
      strut_stiffness          = "left_to_clinician"
      strut_place              = "left_to_clinician"
      foot_plate_length        = "to_toe_bases"
      shell_side               = "posterior"
      closure                  = "strap"
      shell_trimline           = "settled: behind_malleoli"
      foot_shell               = "low"
      pressure_system          = "against_foot_drop"
    }
    findings   = { foot_drop = true, stance_steady = true, weak_calf = false, spastic_calf = false, equinus = false }
    quantities = { usable_range = "12 deg", shoe_drop = "10 mm", heel_gap = "0 mm", lean_in_own_shoe = "3.183 deg +- 0.001" }
    fires      = ["light_device_for_flaccid_drop", "composite_for_active_walker", "light_pattern_for_foot_drop"]
    silent     = ["hold_the_ankle", "hold_the_shank_back", "spring_device_for_weak_calf", "high_heel_raise"]
  }
  expect "person" {
    choices = { review_interval = "6 wk", wearing_in = "usual", skin_check = "left_to_clinician" }
    fires   = ["no_stimulation_of_a_lost_nerve", "follow_up_adult"]
    silent  = ["follow_up_child", "line_skin_at_risk", "low_foot_shell_for_one_hand"]
  }
}

case "flaccid foot drop after a stroke, little activity: four light devices are level" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 70
      diagnosis_group = "stroke"
      activity_demand = "low"
      walking_aid     = "one_stick"
    }
    right {
      dorsiflexor_power                = "3"
      ankle_dorsiflexion_knee_extended = 6
      ankle_sideways_stability         = "stable"
      plantarflexor_tone               = "1"
      heel_contact_standing            = "full"
      gait_swing_ankle                 = "hangs"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
    }
  }
  expect "right" {
    choices = {
      device       = "open: elastic_lifter, posterior_leaf_spring, composite, functional_stimulation"
      articulation = "none"
    }
    fires  = ["light_device_for_flaccid_drop", "hold_the_ankle"]
    silent = ["composite_for_active_walker", "stiffer_composite_for_spastic_drop"]
  }
  expect "person" { silent = ["no_stimulation_of_a_lost_nerve"] }
}

case "the same foot, loose sideways: the light devices are not advised" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 70
      diagnosis_group = "stroke"
      activity_demand = "low"
      walking_aid     = "one_stick"
    }
    right {
      dorsiflexor_power                = "3"
      ankle_dorsiflexion_knee_extended = 6
      ankle_sideways_stability         = "loose_inversion"
      plantarflexor_tone               = "1"
      heel_contact_standing            = "full"
      gait_swing_ankle                 = "hangs"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
    }
  }
  expect "right" {
    choices = { device = "left_to_clinician" }
    silent  = ["light_device_for_flaccid_drop"]
  }
}

case "weak calf, the knee gives way: a shell in front, the stiffness is tried" {
  basis = "published"
  cites = ["waterval_2019"]
  given {
    device_for = ["left"]
    person {
      age             = 34
      activity_demand = "high"
      walking_aid     = "none"
    }
    left {
      dorsiflexor_power                = "4"
      plantarflexor_power              = "3"
      heel_rises                       = 0
      quadriceps_power                 = "4+"
      ankle_dorsiflexion_knee_extended = 15
      plantarflexor_tone               = "0"
      protective_sensation             = "present"
      malleolar_skin                   = "intact"
      anterior_shin_skin               = "intact"
      fluctuating_oedema               = false
      heel_contact_standing            = "full"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "gives_way"
    }
  }
  expect "left" {
    choices = {
      device                   = "composite"
      articulation             = "none"
      shank_to_vertical_target = "11 deg (not provisional)"
      strut_stiffness          = "open: 2.8..6.6 N.m/deg (not provisional)"
      foot_plate_length        = "full_length"
      foot_plate_stiffness     = "open: firm, rigid"
      shell_side               = "anterior (not provisional)"
      closure                  = "wide_padded_strap"
      proximal_height          = "tibial_tubercle"
      shell_trimline           = "default: through_malleoli"
      pressure_system          = "against_shank_advance"
    }
    findings = { weak_calf = true, shank_falls_forward = true, crouch = false, foot_drop = false }
    fires    = ["spring_device_for_weak_calf", "hold_the_shank_back", "lean_the_shank"]
    silent   = ["light_pattern_for_foot_drop", "weak_quadriceps_under_a_stop"]
  }
}

case "weak calf, strong against the hand: heel rises show it" {
  basis = "published"
  cites = ["calf_weakness_trial"]
  given {
    device_for = ["left", "right"]
    person {
      age         = 50
      walking_aid = "none"
    }
    left {
      plantarflexor_power = "5"
      heel_rises          = 3
    }
    right {
      plantarflexor_power = "5"
      heel_rises          = 4
    }
  }
  expect "left" { findings = { weak_calf = true } }
  expect "right" { findings = { weak_calf = false } }
}

case "fixed equinus of 12 deg: cast there, built up, the other side raised" {
  basis = "from_memory"
  given {
    device_for = ["right"]
    person {
      age             = 57
      activity_demand = "low"
      walking_aid     = "none"
    }
    right {
      dorsiflexor_power                = "3"
      ankle_dorsiflexion_knee_extended = -12
      ankle_dorsiflexion_knee_flexed   = -11
      knee_extension                   = 0
      anterior_shin_skin               = "intact"
      plantarflexor_tone               = "0"
      heel_contact_standing            = "none"
      hindfoot_corrects_standing       = "not_at_all"
      gait_midstance_knee              = "near_straight"
      gait_swing_ankle                 = "hangs"
      heel_to_ball_length              = "17 cm"
      shoe_heel_height                 = "2.4 cm"
      shoe_forefoot_height             = 14
    }
    left {
      ankle_dorsiflexion_knee_extended = 8
      pelvis_levelling_block           = 0
    }
  }
  expect "right" {
    choices = {
      device              = "open: composite, rigid"
      cast_ankle_angle    = "-12 deg (not provisional)"
      cast_block_height   = "36 mm (not provisional)"
      hindfoot_in_cast    = "accommodated"
      heel_raise_opposite = "18 mm (not provisional)"
      pressure_system     = "against_equinus"
    }
    findings   = { equinus = true, fixed_equinus = true, foot_drop = false, gastrocnemius_short = false }
    quantities = { equinus_angle = "12 deg", heel_gap = "35.605 mm +- 0.001", needed_block = "35.605 mm +- 0.001", lift_of_this_side = "17.923 mm +- 0.001", side_difference = "20 deg" }
    cautions   = ["outside_the_trials", "sides_differ", "high_heel_raise"]
    fires      = ["accommodate_fixed_equinus", "cast_where_the_ankle_stops", "block_under_a_short_ankle", "build_up_the_heel", "hold_the_equinus"]
    silent     = ["cast_for_the_shoe", "level_with_blocks", "surgical_opinion_for_far_equinus", "low_trimline_for_foot_drop", "knee_straight_counts"]
  }
}

case "fixed equinus of 25 deg: more than a block can hold, and surgery is asked" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 39
      activity_demand = "moderate"
      walking_aid     = "crutches"
    }
    left {
      ankle_dorsiflexion_knee_extended = -25
      plantarflexor_tone               = "0"
      heel_contact_standing            = "none"
      heel_to_ball_length              = 180
      shoe_heel_height                 = 30
      shoe_forefoot_height             = 15
    }
    right { pelvis_levelling_block = "3 cm" }
  }
  expect "left" {
    choices = {
      device              = "refer_surgical_opinion"
      cast_ankle_angle    = "-25 deg"
      cast_block_height   = "left_to_clinician (not provisional)"
      heel_raise          = "left_to_clinician (not provisional)"
      heel_raise_opposite = "30 mm"
    }
    quantities = { heel_gap = "78.540 mm +- 0.001" }
    fires      = ["surgical_opinion_for_far_equinus", "level_with_blocks", "cast_where_the_ankle_stops"]
    silent     = ["block_under_a_short_ankle", "build_up_the_heel"]
  }
}

case "insensate foot, skin at risk: lined, no narrow strap, looked at every day" {
  basis = "published"
  cites = ["wear_leaflet"]
  given {
    device_for = ["right"]
    person {
      age                 = 68
      diagnosis_group     = "diabetic_neuropathy"
      activity_demand     = "low"
      walking_aid         = "rollator"
      skin_risk           = "high"
      skin_check_possible = false
    }
    right {
      dorsiflexor_power                = "2"
      plantarflexor_power              = "4+"
      heel_rises                       = 6
      ankle_dorsiflexion_knee_extended = 3
      ankle_sideways_stability         = "stable"
      plantarflexor_tone               = "0"
      protective_sensation             = "absent"
      fluctuating_oedema               = false
      hot_swollen_foot                 = false
      heel_contact_standing            = "full"
      gait_swing_ankle                 = "hangs"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
    }
  }
  expect "right" {
    choices = {
      device  = "open: posterior_leaf_spring, composite"
      padding = "whole_shell"
      closure = "open: wide_padded_strap, anterior_shell, posterior_shell"
    }
    findings = { "demo_safety.insensate" = true }
    cautions = ["demo_safety.unchecked_skin", "demo_safety.insensate_skin"]
    fires    = ["demo_safety.line_insensate_skin", "light_pattern_for_foot_drop"]
    silent   = ["demo_safety.hot_foot", "demo_safety.strap_for_swelling"]
  }
  expect "person" {
    choices = { skin_check = "daily", wearing_in = "slow", review_interval = "2 wk" }
    fires   = ["line_skin_at_risk"]
  }
}
