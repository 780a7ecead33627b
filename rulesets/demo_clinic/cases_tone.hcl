# Worked cases with spasticity or crouch. Invented people; what is expected was worked out by hand from the rules.

case "equinovarus that comes straight only on standing: cast loaded, shells and a dorsal wrap" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["right"]
    person {
      age             = 61
      diagnosis_group = "stroke"
      activity_demand = "moderate"
      walking_aid     = "one_stick"
      hand_function   = "one_hand"
      help_available  = "none"
      last_injection  = "2026-08-24"
    }
    right {
      dorsiflexor_power                       = "2"
      plantarflexor_power                     = "4"
      quadriceps_power                        = "4"
      ankle_dorsiflexion_knee_extended        = -6
      ankle_dorsiflexion_knee_flexed          = 12
      ankle_dorsiflexion_loaded_knee_extended = 2
      knee_extension                          = 0
      plantarflexor_tone                      = "2"
      gastrocnemius_fast_angle                = -20
      clonus_sustained                        = false
      malleolar_skin                          = "intact"
      anterior_shin_skin                      = "intact"
      fluctuating_oedema                      = false
      heel_contact_standing                   = "only_under_load"
      hindfoot_corrects_by_hand               = "partly"
      hindfoot_corrects_standing              = "fully"
      gait_initial_contact                    = "lateral_border"
      gait_midstance_ankle                    = "held_back"
      gait_midstance_knee                     = "near_straight"
      gait_midstance_hindfoot                 = "varus"
      gait_swing_ankle                        = "turns_in"
      heel_to_ball_length                     = 190
      shoe_heel_height                        = 28
      shoe_forefoot_height                    = 14
    }
  }
  expect "right" {
    choices = {
      device                   = "composite"
      articulation             = "none"
      cast_ankle_angle         = "0 deg (not provisional)"
      cast_block_height        = "14 mm"
      cast_loading             = "loaded"
      hindfoot_in_cast         = "corrected"
      shank_to_vertical_target = "11 deg"
      heel_raise               = "left_to_clinician"
      shell_side               = "posterior"
      closure                  = "anterior_shell"
      proximal_height          = "below_fibular_head"
      shell_trimline           = "in_front_of_malleoli"
      foot_shell               = "dorsal"
      pressure_system          = "against_equinus"
      pressure_system_frontal  = "against_varus"
      ankle_strap              = "pull_from_lateral"
    }
    findings   = { equinus = true, fixed_equinus = false, flat_only_under_load = true, gastrocnemius_short = true, varus_in_stance = true, marked_tone = true }
    quantities = { usable_range = "2 deg", equinus_angle = "0 deg" }
    cautions   = ["catch_before_the_end", "knee_straight_counts"]
    fires      = ["moulded_device_for_spastic_varus", "cast_under_load", "raise_trimline_for_tone", "more_contact_for_tone", "review_soon_after_injection"]
    silent     = ["low_trimline_for_foot_drop", "cast_where_the_ankle_stops", "build_up_the_heel", "outside_the_trials"]
  }
  expect "person" {
    choices = { review_interval = "4 wk" }
    fires   = ["low_foot_shell_for_one_hand"]
  }
}

case "spastic foot drop, foot straight and stance steady: a stiffer composite" {
  basis = "published"
  cites = ["foot_drop_table"]
  given {
    device_for = ["left"]
    person {
      age             = 52
      diagnosis_group = "multiple_sclerosis"
      activity_demand = "low"
      walking_aid     = "one_stick"
    }
    left {
      dorsiflexor_power                = "3+"
      ankle_dorsiflexion_knee_extended = 4
      plantarflexor_tone               = "1+"
      heel_contact_standing            = "full"
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices  = { device = "composite", shell_trimline = "behind_malleoli" }
    findings = { spastic_calf = true, marked_tone = false }
    fires    = ["stiffer_composite_for_spastic_drop", "low_trimline_for_foot_drop"]
    silent   = ["moulded_device_for_spastic_varus", "raise_trimline_for_tone", "light_device_for_flaccid_drop"]
  }
}

case "a chain: the broken malleolus sets tone's trim-line aside, and the low one counts again" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 66
      walking_aid = "frame"
    }
    left {
      dorsiflexor_power                = "2"
      ankle_dorsiflexion_knee_extended = 2
      plantarflexor_tone               = "2"
      malleolar_skin                   = "broken"
      heel_contact_standing            = "full"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices = {
      shell_trimline = "behind_malleoli (not provisional)"
      relief         = "malleoli"
      device         = "refer_wound_care"
    }
    cautions = ["demo_safety.broken_skin"]
    fires    = ["stay_behind_a_broken_malleolus", "low_trimline_for_foot_drop", "spare_the_malleoli", "demo_safety.wound_care_first"]
    silent   = ["raise_trimline_for_tone"]
  }
}

case "swelling under tone: a little is taken up by shells, much asks for a strap" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age         = 59
      walking_aid = "one_stick"
    }
    left {
      ankle_dorsiflexion_knee_extended = 0
      plantarflexor_tone               = "2"
      anterior_shin_skin               = "intact"
      protective_sensation             = "present"
      fluctuating_oedema               = true
      girth_change_through_day         = 8
      ankle_girth                      = "25 cm"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
    }
    right {
      ankle_dorsiflexion_knee_extended = 0
      plantarflexor_tone               = "2"
      anterior_shin_skin               = "intact"
      protective_sensation             = "present"
      fluctuating_oedema               = true
      girth_change_through_day         = 15
      ankle_girth                      = "25 cm"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
    }
  }
  expect "left" {
    choices  = { closure = "anterior_shell" }
    cautions = ["demo_safety.swelling"]
    fires    = ["more_contact_for_tone"]
    silent   = ["demo_safety.strap_for_swelling"]
  }
  expect "right" {
    choices  = { closure = "wide_padded_strap" }
    findings = { "demo_safety.swelling_marked" = true }
    fires    = ["demo_safety.strap_for_swelling"]
    silent   = ["more_contact_for_tone"]
  }
}

case "knee thrown back by an equinus, quadriceps weak: two patterns are level, the lean is 10 deg" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 63
      diagnosis_group = "stroke"
      activity_demand = "low"
      walking_aid     = "one_stick"
    }
    left {
      quadriceps_power                 = "3"
      plantarflexor_power              = "4"
      heel_rises                       = 5
      ankle_dorsiflexion_knee_extended = -4
      plantarflexor_tone               = "1"
      clonus_sustained                 = true
      heel_contact_standing            = "full"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
    }
  }
  expect "left" {
    choices = {
      shank_to_vertical_target = "settled: 10 deg (not provisional)"
      shell_side               = "posterior"
      pressure_system          = "open: against_equinus, against_knee_hyperextension"
    }
    cautions = ["weak_quadriceps_under_a_stop", "sustained_clonus"]
    fires    = ["lean_the_shank", "less_lean_for_weak_quadriceps", "stop_the_knee_going_back", "hold_the_equinus"]
    silent   = ["hold_the_shank_back"]
  }
}

case "tone of 3: its treatment comes first" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 47
      activity_demand = "moderate"
      walking_aid     = "one_stick"
    }
    right { plantarflexor_tone = "3" }
  }
  expect "right" {
    choices = { device = "refer_tone_management (provisional)" }
    fires   = ["tone_management_first"]
  }
}

case "crouch on both sides, one shin broken: a shell in front on the left, wound care on the right" {
  basis = "published"
  cites = ["sagittal_patterns"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 11
      diagnosis_group = "cerebral_palsy"
      activity_demand = "moderate"
      walking_aid     = "rollator"
    }
    left {
      hip_extension            = -6
      knee_extension           = -8
      anterior_shin_skin       = "intact"
      gait_midstance_ankle     = "too_far_forward"
      gait_midstance_knee      = "too_flexed"
      gait_terminal_stance_hip = "does_not_extend"
    }
    right {
      hip_extension            = -12
      knee_extension           = -14
      anterior_shin_skin       = "broken"
      gait_midstance_ankle     = "too_far_forward"
      gait_midstance_knee      = "too_flexed"
      gait_terminal_stance_hip = "does_not_extend"
    }
  }
  expect "left" {
    choices  = { device = "anterior_shell_ground_reaction", shell_side = "anterior (not provisional)" }
    findings = { crouch = true, shank_falls_forward = true }
    fires    = ["ground_reaction_for_crouch"]
    silent   = ["composite_for_active_walker", "contracture_under_ground_reaction", "spring_device_for_weak_calf"]
  }
  expect "right" {
    choices  = { device = "refer_wound_care", shell_side = "left_to_clinician", closure = "open: strap, wide_padded_strap, posterior_shell (provisional)" }
    findings = { crouch_contracted = false }
    cautions = ["outside_the_trials", "demo_safety.broken_skin"]
    fires    = ["no_side_until_the_shin_heals"]
    silent   = ["no_ground_reaction_with_contracture", "contracture_under_ground_reaction"]
  }
  expect "person" {
    choices = { review_interval = "8 wk", wearing_in = "usual (provisional)" }
    fires   = ["follow_up_child"]
  }
}

case "crouch with contracture, skin whole: a surgical opinion" {
  basis = "from_memory"
  cites = ["rogozinski_2009"]
  given {
    device_for = ["left"]
    person {
      age             = 13
      diagnosis_group = "cerebral_palsy"
      walking_aid     = "crutches"
    }
    left {
      hip_extension              = -15
      knee_extension             = -10
      hindfoot_corrects_standing = "partly"
      gait_midstance_ankle       = "too_far_forward"
      gait_midstance_knee        = "too_flexed"
      gait_terminal_stance_hip   = "does_not_extend"
    }
  }
  expect "left" {
    choices  = { device = "refer_surgical_opinion", hindfoot_in_cast = "partly_corrected", shell_side = "left_to_clinician" }
    findings = { crouch_contracted = true }
    cautions = ["contracture_under_ground_reaction"]
    fires    = ["no_ground_reaction_with_contracture", "ground_reaction_for_crouch"]
    silent   = ["outside_the_trials", "hold_the_shank_back"]
  }
}
