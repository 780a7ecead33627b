# Worked cases of how the foot comes down, and of a foot that turns out in swing. Invented people; expectations worked out by
# hand from the rules and their sources.

case "the foot lifts but slaps down: a heel that touches further forward, or a simple device" {
  basis = "published"
  cites = ["foot_drop_table"]
  given {
    device_for = ["left"]
    person {
      age             = 61
      diagnosis_group = "stroke"
      main_goal       = "mobility"
    }
    left {
      present_device                   = "none"
      plantarflexor_tone               = "1"
      ankle_dorsiflexion_knee_extended = 8
      gait_initial_contact             = "heel"
      gait_loading_foot                = "foot_slap"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: shoe_adaptation, posterior_leaf_spring", sole_profile = "bevelled_heel" }
    findings = { foot_drops = false, lands_badly = true, slap_only = true, walking_trouble = true, spastic_but_straight = false }
    fires    = ["ease_a_slapping_foot", "offer_for_the_goal"]
    silent   = ["nothing_to_hold", "light_device_first", "light_device_for_low_tone_drop"]
  }
}

case "a spastic calf: toes first with a foot that lifts on the left, nothing to be seen of it on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 54
      diagnosis_group = "stroke"
    }
    left {
      present_device                   = "none"
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 3
      gait_initial_contact             = "forefoot"
      gait_loading_foot                = "toes_first"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
    right {
      present_device                   = "none"
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 3
      gait_initial_contact             = "heel"
      gait_loading_foot                = "controlled"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: functional_stimulation, composite" }
    findings = { lands_badly = true, slap_only = false, spastic_but_straight = true }
    fires    = ["stiffer_spring_for_tone", "stimulation_does_as_well"]
    silent   = ["nothing_to_hold", "ease_a_slapping_foot"]
  }
  expect "right" {
    choices  = { device = "no_device" }
    findings = { walking_trouble = false, spastic_but_straight = false }
    fires    = ["nothing_to_hold"]
    silent   = ["stiffer_spring_for_tone", "stimulation_does_as_well", "light_device_first"]
  }
}

case "the foot turns out in swing on a steady leg: a foot drop too" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 68
      diagnosis_group = "stroke"
    }
    right {
      plantarflexor_tone               = "0"
      ankle_dorsiflexion_knee_extended = 6
      gait_initial_contact             = "medial_border"
      gait_loading_foot                = "controlled"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "turns_out"
    }
  }
  expect "right" {
    findings = { foot_drops = true, low_tone_drop = true }
    fires    = ["light_device_for_low_tone_drop"]
    silent   = ["nothing_to_hold"]
  }
}

case "the shank comes too far forward over a knee that stays bent: stopped, with a shell in front" {
  basis = "published"
  cites = ["ankle_control_teaching"]
  given {
    device_for = ["left"]
    person {
      age             = 71
      diagnosis_group = "stroke"
    }
    left {
      present_device                   = "articulated"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "4"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 12
      gait_initial_contact             = "heel"
      gait_loading_foot                = "controlled"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices = {
      device          = "anterior_shell_ground_reaction"
      articulation    = "open: none, dorsiflexion_stop, both_stops"
      shell_side      = "anterior"
      pressure_system = "against_shank_advance"
    }
    findings = { shank_not_held = true, knee_unstable = false, contracture = false }
    fires    = ["stop_a_shank_that_comes_forward", "shell_in_front_of_a_shank_that_comes_forward"]
    silent   = ["leave_the_shank_free", "nothing_to_hold", "light_device_first", "rigid_device_at_once"]
  }
}

case "how the foot comes down not recorded: it is not known whether there is anything to brace" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 55
      diagnosis_group = "stroke"
    }
    left {
      plantarflexor_tone      = "0"
      gait_initial_contact    = "heel"
      gait_midstance_ankle    = "moves_forward_steadily"
      gait_midstance_knee     = "near_straight"
      gait_midstance_hindfoot = "neutral"
      gait_swing_ankle        = "lifts"
    }
  }
  expect "left" {
    findings = { lands_badly = "unknown", walking_trouble = "unknown", slap_only = "unknown" }
    silent   = ["nothing_to_hold", "ease_a_slapping_foot"]
  }
}
