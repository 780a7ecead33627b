# Worked cases of foot drop with a steady stance. Invented people; expectations worked out by hand from the rules and their sources.

case "low-tone foot drop, wants to walk faster: light devices and stimulation are level" {
  basis = "published"
  cites = ["foot_drop_table", "prenton_2016", "johnston_2021"]
  given {
    device_for = ["left"]
    person {
      age             = 63
      diagnosis_group = "stroke"
      main_goal       = "walking_speed"
    }
    left {
      present_device                   = "none"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "5"
      ankle_dorsiflexion_knee_extended = 6
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices = {
      device       = "open: elastic_lifter, functional_stimulation, posterior_leaf_spring, composite"
      articulation = "none"
    }
    findings = {
      foot_drops           = true
      stance_steady        = true
      turns_in             = false
      knee_unstable        = false
      low_tone_drop        = true
      spastic_but_straight = false
      calf_spastic         = false
      contracture          = false
      rigid_is_advised     = false
      walking_trouble      = true
    }
    fires    = ["offer_for_the_goal", "light_device_for_low_tone_drop", "stimulation_does_as_well"]
    silent   = ["nothing_to_hold", "light_device_first", "rigid_device_at_once", "stiffer_spring_for_tone", "brace_the_weakness", "leave_the_shank_free", "light_or_rigid_first"]
    cautions = ["device_or_stimulation"]
  }
  expect "person" { silent = ["goal_with_less_evidence", "tone_is_no_goal_for_a_device"] }
}

case "tone 1 on the left, 1+ on the right: a spring on the left, a stiffer one on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 58
      diagnosis_group = "stroke"
    }
    left {
      plantarflexor_tone               = "1"
      ankle_dorsiflexion_knee_extended = 5
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
    right {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    findings = { calf_spastic = false, low_tone_drop = true, "limb_safety.tone_marked" = false }
    fires    = ["light_device_for_low_tone_drop"]
    silent   = ["stiffer_spring_for_tone"]
  }
  expect "right" {
    choices  = { device = "open: functional_stimulation, composite", articulation = "none" }
    findings = { calf_spastic = true, low_tone_drop = false, spastic_but_straight = true, rigid_is_advised = false }
    fires    = ["stiffer_spring_for_tone", "stimulation_does_as_well"]
    silent   = ["light_device_for_low_tone_drop", "rigid_device_at_once", "toxin_for_tone", "nerve_block_first"]
    cautions = ["device_or_stimulation"]
  }
}

case "tone 2, foot straight, no device before: stiffer spring, stimulation and rigid device are level" {
  basis = "published"
  cites = ["foot_drop_table"]
  given {
    device_for = ["right"]
    person {
      age             = 49
      diagnosis_group = "stroke"
      main_goal       = "mobility"
    }
    right {
      present_device                   = "none"
      plantarflexor_tone               = "2"
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "right" {
    choices  = { device = "open: functional_stimulation, composite, rigid" }
    findings = { spastic_but_straight = true, "limb_safety.tone_marked" = true, rigid_is_advised = true, spastic_equinovarus = false }
    fires    = ["stiffer_spring_for_tone", "rigid_device_at_once"]
    silent   = ["light_device_first", "moulded_device_for_inversion"]
    cautions = ["light_or_rigid_first", "toxin_for_tone"]
  }
}

case "an ankle that just reaches plantigrade, one that is a degree short, and one a degree past it" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 70
      diagnosis_group = "stroke"
    }
    left {
      present_device                   = "none"
      plantarflexor_tone               = "0"
      ankle_dorsiflexion_knee_extended = 0
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
    right {
      present_device                   = "none"
      plantarflexor_tone               = "0"
      ankle_dorsiflexion_knee_extended = -1
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    findings = { contracture = false, low_tone_drop = true }
    fires    = ["light_device_for_low_tone_drop"]
    silent   = ["hold_the_ankle_with_a_contracture", "light_device_first"]
  }
  expect "right" {
    choices  = { device = "open: posterior_leaf_spring, composite", articulation = "none" }
    findings = { contracture = true, low_tone_drop = false }
    fires    = ["hold_the_ankle_with_a_contracture", "light_device_first"]
    silent   = ["light_device_for_low_tone_drop", "range_is_going", "treat_the_length"]
  }
}

case "an ankle one degree past plantigrade has no contracture" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 18
      diagnosis_group = "stroke"
    }
    left {
      ankle_dorsiflexion_knee_extended = 1
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      quadriceps_power                 = "5"
      clonus_beats                     = 0
    }
  }
  expect "left" {
    choices  = { articulation = "open: free, plantarflexion_stop, plantarflexion_resist, dorsiflexion_assist" }
    findings = { contracture = false, stance_steady = false }
    fires    = ["leave_the_shank_free"]
    silent   = ["hold_the_ankle_with_a_contracture"]
  }
}

case "the foot comes up, comes down in order and stands steadily: nothing to brace, whatever the goal" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 55
      diagnosis_group = "stroke"
      main_goal       = "quality_of_life"
    }
    left {
      plantarflexor_tone               = "0"
      ankle_dorsiflexion_knee_extended = 8
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_loading_foot                = "controlled"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "no_device" }
    findings = { foot_drops = false, lands_badly = false, walking_trouble = false, low_tone_drop = false, slap_only = false }
    fires    = ["nothing_to_hold"]
    silent   = ["ease_a_slapping_foot", "offer_for_the_goal", "light_device_first", "stimulation_does_as_well", "device_or_stimulation"]
  }
  expect "person" { cautions = ["goal_with_less_evidence"] }
}

case "the goal is to lower tone: whoever treats tone is asked, beside what walking asks for" {
  basis = "published"
  cites = ["johnston_2021"]
  given {
    device_for = ["right"]
    person {
      age             = 44
      diagnosis_group = "stroke"
      main_goal       = "lower_tone"
    }
    right {
      present_device                   = "none"
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "right" {
    choices = { device = "open: functional_stimulation, composite, refer_tone_management" }
    fires   = ["stiffer_spring_for_tone", "stimulation_does_as_well"]
    silent  = ["offer_for_the_goal"]
  }
  expect "person" {
    fires  = ["tone_is_no_goal_for_a_device"]
    silent = ["goal_with_less_evidence"]
  }
}

case "a stroke and nothing else recorded: when to look again is left to the clinician" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 66
      diagnosis_group = "stroke"
    }
  }
  expect "person" { choices = { review_interval = "left_to_clinician" } }
}

case "tone not recorded: it is not known whether the spring has to be a stiff one" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 19
      diagnosis_group = "stroke"
    }
    left {
      present_device                   = "none"
      ankle_dorsiflexion_knee_extended = 5
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    findings = { calf_spastic = "unknown", low_tone_drop = "unknown", spastic_but_straight = "unknown" }
    silent   = ["light_device_for_low_tone_drop", "stiffer_spring_for_tone", "light_device_first"]
  }
}
