# Worked cases of a weak quadriceps under a knee that goes back, or gives way.

case "quadriceps 4- under a knee that goes back: a joint set in both directions, or a held ankle" {
  basis = "published"
  cites = ["appasamy_2015"]
  given {
    device_for = ["left"]
    person {
      age             = 59
      diagnosis_group = "stroke"
    }
    left {
      present_device                   = "soft_support"
      plantarflexor_tone               = "1"
      dorsiflexor_power                = "3"
      plantarflexor_power              = "4"
      quadriceps_power                 = "4-"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: articulated, rigid", articulation = "open: none, both_stops" }
    findings = { quadriceps_weak = true }
    fires    = ["two_way_joint_for_a_weak_quadriceps"]
    silent   = ["plantarflexion_stop_for_a_knee_that_goes_back", "leave_the_shank_free", "give_at_loading_for_a_weak_quadriceps"]
    cautions = ["weak_quadriceps_under_a_stop"]
  }
}

case "quadriceps 4 on the left and 4+ on the right: not called weak" {
  basis = "published"
  cites = ["appasamy_2015"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 59
      diagnosis_group = "stroke"
    }
    left {
      present_device                   = "soft_support"
      plantarflexor_tone               = "1"
      dorsiflexor_power                = "3"
      plantarflexor_power              = "4"
      quadriceps_power                 = "4"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
    right {
      present_device                   = "soft_support"
      plantarflexor_tone               = "1"
      dorsiflexor_power                = "3"
      plantarflexor_power              = "4"
      quadriceps_power                 = "4+"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    findings = { quadriceps_weak = false }
    fires    = ["plantarflexion_stop_for_a_knee_that_goes_back"]
    silent   = ["two_way_joint_for_a_weak_quadriceps", "weak_quadriceps_under_a_stop"]
  }
  expect "right" {
    findings = { quadriceps_weak = false }
    fires    = ["plantarflexion_stop_for_a_knee_that_goes_back"]
    silent   = ["two_way_joint_for_a_weak_quadriceps", "weak_quadriceps_under_a_stop"]
  }
}

case "quadriceps 3 under a knee that gives way: an ankle that gives at loading, a cushioned heel" {
  basis = "published"
  cites = ["mulroy_2010"]
  given {
    device_for = ["right"]
    person {
      age             = 59
      diagnosis_group = "stroke"
    }
    right {
      present_device                   = "soft_support"
      plantarflexor_tone               = "1"
      dorsiflexor_power                = "3"
      plantarflexor_power              = "4"
      quadriceps_power                 = "3"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "gives_way"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices  = { device = "rigid", articulation = "open: none, plantarflexion_resist", sole_profile = "cushioned_heel" }
    findings = { knee_goes_back = false, knee_unstable = true, shank_not_held = true }
    fires    = ["give_at_loading_for_a_weak_quadriceps", "rigid_device_at_once"]
    silent   = ["leave_the_shank_free", "stop_a_shank_that_comes_forward", "two_way_joint_for_a_weak_quadriceps", "painful_knee", "plantarflexion_stop_for_a_knee_that_goes_back"]
    cautions = ["weak_quadriceps_under_a_stop"]
  }
}
