# Worked cases of the force pattern. Invented people; the forces were worked out by hand from moment and lever.

case "tone with equinus: shells behind and in front, held over the instep" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 58
      body_mass   = 70
      walking_aid = "none"
    }
    left {
      ankle_dorsiflexion_knee_extended = -10
      heel_contact_standing            = "none"
      plantarflexor_tone               = "2"
      plantarflexor_resistance         = 10
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      heel_to_ball_length              = 170
      ankle_to_heel_back               = 50
      medial_malleolus_height          = 75
      lateral_malleolus_height         = 65
      shank_contact_height             = 370
      calf_girth                       = 314.15926535
      strap_width                      = 50
      shank_shell_height               = 150
      shank_shell_half_arc             = 90
      fibular_head_height              = 410
      hindfoot_resistance              = 0
      protective_sensation             = "present"
      midfoot_break                    = "none"
    }
  }
  expect "left" {
    choices    = { pressure_system = "against_equinus", shell_side = "posterior", closure = "anterior_shell", proximal_height = "below_fibular_head", shell_trimline = "in_front_of_malleoli", foot_shell = "dorsal", ankle_strap = "instep", pressure_system_frontal = "none" }
    findings   = { tone_with_little_range = true, foot_pulled_down = true, swing_only = false, shank_falls_forward = false }
    quantities = { moment_into_plantarflexion = "10 N.m", moment_into_dorsiflexion = "0 N.m", greater_moment = "10 N.m", shank_lever = "300 mm", forefoot_lever = "120 mm", force_at_calf = "33.333 N +- 0.001", force_at_instep = "94.975 N +- 0.001", force_at_shin = "0 N", force_at_heel = "0 N", force_under_forefoot = "83.333 N +- 0.001", force_at_shank_frontal = "0 N" }
    fires      = ["hold_the_foot_up", "shells_for_tone", "strap_over_the_instep", "no_force_on_a_heel_in_line"]
    silent     = ["hold_the_shank_back", "carry_the_foot_in_swing", "pad_a_shell_in_front", "no_ankle_strap_for_the_swing", "stop_the_knee_going_back", "no_narrow_strap_under_a_large_force", "pressure_that_may_hurt", "no_figure_for_skin_that_does_not_feel", "forces_on_the_shin_are_a_ceiling"]
    cautions   = ["nerve_under_a_high_edge", "forces_against_the_calf_are_a_floor"]
  }
}

case "tone 2 with 5 deg of range" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 58
      walking_aid = "none"
    }
    left {
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      plantarflexor_tone               = "2"
      gait_midstance_ankle             = "held_back"
    }
  }
  expect "left" {
    choices  = { shell_trimline = "settled: in_front_of_malleoli" }
    findings = { tone_with_little_range = true }
    fires    = ["shells_for_tone"]
    cautions = ["nerve_under_a_high_edge"]
  }
}

case "tone 2 with 4 deg of range" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 58
      walking_aid = "none"
    }
    left {
      ankle_dorsiflexion_knee_extended = 4
      heel_contact_standing            = "full"
      plantarflexor_tone               = "2"
      gait_midstance_ankle             = "held_back"
    }
  }
  expect "left" {
    choices  = { shell_trimline = "settled: in_front_of_malleoli" }
    findings = { tone_with_little_range = true }
    fires    = ["shells_for_tone"]
    cautions = ["nerve_under_a_high_edge"]
  }
}

case "tone 2 with 6 deg of range" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 58
      walking_aid = "none"
    }
    left {
      ankle_dorsiflexion_knee_extended = 6
      heel_contact_standing            = "full"
      plantarflexor_tone               = "2"
      gait_midstance_ankle             = "held_back"
    }
  }
  expect "left" {
    choices  = { shell_trimline = "default: through_malleoli" }
    findings = { tone_with_little_range = false }
    silent   = ["shells_for_tone"]
  }
}

case "tone 1+ with no more range: straps may do" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 58
      walking_aid = "none"
    }
    left {
      ankle_dorsiflexion_knee_extended = 4
      heel_contact_standing            = "full"
      plantarflexor_tone               = "1+"
      gait_midstance_ankle             = "held_back"
    }
  }
  expect "left" {
    choices  = { shell_trimline = "default: through_malleoli", closure = "left_to_clinician" }
    findings = { tone_with_little_range = false, spastic_calf = true, foot_pulled_down = false }
    silent   = ["shells_for_tone", "hold_the_foot_up", "nerve_under_a_high_edge"]
  }
}

case "shank that falls forward: a shell in front, high up" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 30
      body_mass   = 70
      walking_aid = "none"
    }
    left {
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hindfoot          = "neutral"
      ankle_dorsiflexion_knee_extended = 10
      heel_contact_standing            = "full"
      plantarflexor_tone               = "0"
      plantarflexor_moment             = 40.12
      heel_to_ball_length              = 170
      ankle_to_heel_back               = 50
      medial_malleolus_height          = 75
      lateral_malleolus_height         = 65
      shank_contact_height             = 350
      calf_girth                       = 314.15926535
      strap_width                      = 50
      shank_shell_height               = 150
      shank_shell_half_arc             = 90
      protective_sensation             = "present"
    }
  }
  expect "left" {
    choices    = { pressure_system = "against_shank_advance", shell_side = "anterior", closure = "wide_padded_strap", proximal_height = "tibial_tubercle" }
    quantities = { moment_into_dorsiflexion = "45 N.m", moment_into_plantarflexion = "0 N.m", shank_lever = "280 mm", force_at_shin = "160.714 N +- 0.001", force_at_heel = "407.988 N +- 0.001", force_under_forefoot = "375 N", force_at_calf = "0 N", force_at_instep = "0 N", strap_mean_pressure = "32.143 kPa +- 0.001", shell_mean_pressure = "10.714 kPa +- 0.001" }
    fires      = ["hold_the_shank_back", "pad_a_shell_in_front", "no_narrow_strap_under_a_large_force"]
    silent     = ["hold_the_foot_up", "shells_for_tone", "strap_over_the_instep", "pressure_that_may_hurt", "no_ankle_strap_for_the_swing", "forces_against_the_calf_are_a_floor"]
    cautions   = ["nerve_under_a_high_edge", "forces_on_the_shin_are_a_ceiling"]
  }
}

case "shank that falls forward over a short tight calf: a shell all round" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 30
      body_mass   = 70
      walking_aid = "none"
    }
    left {
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      ankle_dorsiflexion_knee_extended = -3
      heel_contact_standing            = "full"
      plantarflexor_tone               = "2"
    }
  }
  expect "left" {
    choices = { shell_side = "circumferential", pressure_system = "open: against_equinus, against_shank_advance", closure = "open: strap, wide_padded_strap" }
    fires   = ["hold_the_shank_back", "hold_the_foot_up", "shells_for_tone"]
    silent  = ["pad_a_shell_in_front"]
  }
}

case "knee that goes back without a tight calf: the shell behind" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 30
      walking_aid = "none"
    }
    left {
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      ankle_dorsiflexion_knee_extended = 8
      heel_contact_standing            = "full"
      plantarflexor_tone               = "0"
      plantarflexor_resistance         = 2
    }
  }
  expect "left" {
    choices    = { pressure_system = "against_knee_hyperextension", shell_side = "posterior" }
    quantities = { moment_into_plantarflexion = "2 N.m" }
    fires      = ["stop_the_knee_going_back"]
    silent     = ["hold_the_foot_up", "hold_the_shank_back"]
  }
}

case "foot that only hangs: a light hold" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age            = 60
      body_mass      = 70
      hand_function  = "one_hand"
      help_available = "none"
      skin_risk      = "low"
      walking_aid    = "none"
    }
    right {
      heel_rises                       = 20
      plantarflexor_power              = "5"
      plantarflexor_tone               = "0"
      ankle_dorsiflexion_knee_extended = 10
      heel_contact_standing            = "full"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "turns_out"
      medial_malleolus_height          = 75
      lateral_malleolus_height         = 65
      shank_contact_height             = 270
      protective_sensation             = "present"
      quadriceps_power                 = "5"
    }
  }
  expect "right" {
    choices    = { pressure_system = "against_foot_drop", closure = "strap", foot_shell = "low", ankle_strap = "none", shell_side = "left_to_clinician", shank_to_vertical_target = "left_to_clinician" }
    quantities = { moment_into_plantarflexion = "4.34 N.m", force_at_calf = "21.7 N" }
    fires      = ["carry_the_foot_in_swing", "no_ankle_strap_for_the_swing"]
    silent     = ["hold_the_foot_up", "hold_the_shank_back", "line_skin_at_risk", "stop_the_knee_going_back", "strap_over_the_instep", "no_narrow_strap_under_a_large_force", "standing_is_not_walking", "nerve_under_a_high_edge", "weak_quadriceps_in_a_lean", "pressure_that_may_hurt"]
  }
  expect "person" {
    fires = ["low_foot_shell_for_hands_without_help"]
  }
}
