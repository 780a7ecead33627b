# Worked cases of the foot that turns in, and of the two sides on what comes first.

case "equinovarus that corrects, tone 2, an insole until now: rigid, and a nerve block before the choice" {
  basis = "published"
  cites = ["foot_drop_table", "deltombe_2017", "varus_strap"]
  given {
    date       = "2026-10-05"
    device_for = ["right"]
    person {
      age             = 61
      diagnosis_group = "stroke"
      onset           = "2024-03-10"
      main_goal       = "balance"
    }
    right {
      present_device                   = "insole"
      plantarflexor_tone               = "2"
      quadriceps_power                 = "5"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 5
      hindfoot_corrects_by_hand        = "fully"
      gait_initial_contact             = "lateral_border"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "varus"
      gait_swing_ankle                 = "turns_in"
    }
  }
  expect "right" {
    choices = {
      device                  = "rigid"
      articulation            = "open: none, free, plantarflexion_stop, plantarflexion_resist, dorsiflexion_assist"
      pressure_system_frontal = "against_varus"
      ankle_strap             = "pull_from_lateral"
    }
    findings = { spastic_equinovarus = true, turns_in = true, rigid_is_advised = true }
    fires    = ["moulded_device_for_inversion", "treat_the_tone", "rigid_device_at_once", "pull_against_varus", "leave_the_shank_free", "offer_for_the_goal"]
    silent   = ["light_device_first", "light_or_rigid_first", "brace_the_weakness", "treat_the_length", "surgery_waits", "range_is_going"]
    cautions = ["nerve_block_first", "toxin_for_tone"]
  }
}

case "the same foot, no device before: light or rigid first stays open" {
  basis = "from_memory"
  given {
    device_for = ["right"]
    person {
      age             = 61
      diagnosis_group = "stroke"
    }
    right {
      present_device                   = "none"
      plantarflexor_tone               = "2"
      quadriceps_power                 = "5"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 5
      hindfoot_corrects_by_hand        = "not_at_all"
      gait_initial_contact             = "lateral_border"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "varus"
      gait_swing_ankle                 = "turns_in"
    }
  }
  expect "right" {
    choices  = { device = "open: composite, rigid" }
    fires    = ["light_device_first", "rigid_device_at_once", "moulded_device_for_inversion"]
    silent   = ["pull_against_varus"]
    cautions = ["light_or_rigid_first"]
  }
}

case "a knee that gives way, the shank too far forward: light, rigid and a shell in front are level, no free joint" {
  basis = "from_memory"
  given {
    device_for = ["left"]
    person {
      age             = 75
      diagnosis_group = "stroke"
    }
    left {
      present_device                   = "none"
      dorsiflexor_power                = "2"
      plantarflexor_power              = "4"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 5
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "gives_way"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices = {
      device          = "open: posterior_leaf_spring, composite, rigid, anterior_shell_ground_reaction"
      articulation    = "none"
      shell_side      = "anterior"
      pressure_system = "against_shank_advance"
    }
    findings = { knee_unstable = true, knee_goes_back = false, rigid_is_advised = true, shank_not_held = true }
    fires    = ["light_device_first", "rigid_device_at_once", "stop_a_shank_that_comes_forward", "shell_in_front_of_a_shank_that_comes_forward"]
    silent   = ["leave_the_shank_free", "light_device_for_low_tone_drop", "stimulation_does_as_well", "rigid_for_a_knee_that_goes_back"]
    cautions = ["light_or_rigid_first"]
  }
}

case "turned in and short, not spastic: length is gained before, or a rigid device" {
  basis = "published"
  cites = ["deltombe_2017", "mulroy_2010"]
  given {
    device_for = ["left"]
    person {
      age             = 52
      diagnosis_group = "stroke"
    }
    left {
      present_device                   = "footwear"
      plantarflexor_tone               = "1"
      quadriceps_power                 = "5"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = -8
      gait_initial_contact             = "lateral_border"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "turns_in"
    }
  }
  expect "left" {
    choices  = { device = "open: rigid, refer_serial_casting, refer_surgical_opinion", articulation = "none" }
    findings = { contracture = true, turns_in = true, spastic_equinovarus = false }
    fires    = ["treat_the_length", "hold_the_ankle_with_a_contracture", "rigid_device_at_once"]
    silent   = ["treat_the_tone", "moulded_device_for_inversion", "leave_the_shank_free", "nerve_block_first", "range_is_going"]
  }
}

case "turned in and weak, neither spastic nor short: a device that holds it" {
  basis = "published"
  cites = ["deltombe_2017"]
  given {
    device_for = ["left"]
    person {
      age             = 52
      diagnosis_group = "stroke"
    }
    left {
      present_device                   = "posterior_leaf_spring"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 6
      hindfoot_corrects_by_hand        = "none_needed"
      gait_initial_contact             = "lateral_border"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices  = { device = "rigid" }
    findings = { stance_steady = false, low_tone_drop = false }
    fires    = ["brace_the_weakness", "rigid_device_at_once"]
    silent   = ["pull_against_varus", "treat_the_tone", "treat_the_length"]
  }
}

case "turned in under a spastic calf that is short too: range is going" {
  basis = "published"
  cites = ["deltombe_2017"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 57
      diagnosis_group = "stroke"
    }
    left {
      plantarflexor_tone               = "3"
      ankle_dorsiflexion_knee_extended = -14
      gait_initial_contact             = "forefoot"
      gait_midstance_hindfoot          = "varus"
    }
    right {
      plantarflexor_tone               = "3"
      ankle_dorsiflexion_knee_extended = -15
      gait_initial_contact             = "forefoot"
      gait_midstance_hindfoot          = "neutral"
    }
  }
  expect "left" {
    findings = { spastic_equinovarus = true, contracture = true }
    fires    = ["treat_the_length", "moulded_device_for_inversion"]
    silent   = ["treat_the_tone"]
    cautions = ["range_is_going", "nerve_block_first", "toxin_for_tone"]
  }
  expect "right" {
    findings = { spastic_equinovarus = false, rigid_is_advised = true }
    fires    = ["rigid_device_at_once"]
    silent   = ["treat_the_length", "moulded_device_for_inversion", "nerve_block_first"]
    cautions = ["range_is_going"]
  }
}

case "a day less than 26 weeks after the stroke: surgery waits" {
  basis = "published"
  cites = ["equinovarus_surgery_text"]
  given {
    date       = "2026-10-05"
    device_for = ["left", "right"]
    person {
      age             = 68
      diagnosis_group = "stroke"
      onset           = "2026-04-07"
    }
    left {
      gait_initial_contact    = "lateral_border"
      gait_midstance_hindfoot = "varus"
    }
    right {
      gait_initial_contact    = "heel"
      gait_midstance_hindfoot = "neutral"
    }
  }
  expect "left" { cautions = ["surgery_waits"] }
  expect "right" {
    findings = { turns_in = false }
    silent   = ["surgery_waits"]
  }
}

case "26 weeks to the day after the stroke: the first half year is over" {
  basis = "published"
  cites = ["equinovarus_surgery_text"]
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person {
      age             = 68
      diagnosis_group = "stroke"
      onset           = "2026-04-06"
    }
    left {
      gait_initial_contact    = "lateral_border"
      gait_midstance_hindfoot = "varus"
    }
  }
  expect "left" { silent = ["surgery_waits"] }
}

case "a day more than 26 weeks after the stroke" {
  basis = "published"
  cites = ["equinovarus_surgery_text"]
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person {
      age             = 68
      diagnosis_group = "stroke"
      onset           = "2026-04-05"
    }
    left {
      gait_initial_contact    = "lateral_border"
      gait_midstance_hindfoot = "varus"
    }
  }
  expect "left" { silent = ["surgery_waits"] }
}
