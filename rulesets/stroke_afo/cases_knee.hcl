# Worked cases of the knee that goes back, after the one series that describes what was done for whom.

case "knee snaps back, two beats of clonus, dorsiflexors 3: a hinge with a plantarflexion stop" {
  basis = "published"
  cites = ["appasamy_2015", "mulroy_2010"]
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
      quadriceps_power                 = "5"
      clonus_beats                     = 2
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "articulated", articulation = "plantarflexion_stop" }
    findings = { knee_goes_back = true, clonus = false, dorsiflexors_less_weak = true, ankle_very_weak = false, quadriceps_weak = false }
    fires    = ["plantarflexion_stop_for_a_knee_that_goes_back", "leave_the_shank_free", "rigid_device_at_once"]
    silent   = ["rigid_for_a_knee_that_goes_back", "two_way_joint_for_a_weak_quadriceps", "tone_first_for_a_knee_that_goes_back", "knee_brace_is_the_last_step", "give_at_loading_for_a_weak_quadriceps", "weak_quadriceps_under_a_stop"]
  }
}

case "three beats of clonus: the ankle is held, and tone is treated first or alongside" {
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
      quadriceps_power                 = "5"
      clonus_beats                     = 3
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "rigid", articulation = "none" }
    findings = { clonus = true }
    fires    = ["rigid_for_a_knee_that_goes_back", "tone_first_for_a_knee_that_goes_back"]
    silent   = ["plantarflexion_stop_for_a_knee_that_goes_back", "leave_the_shank_free"]
  }
}

case "four beats of clonus under a knee that goes back slowly" {
  basis = "published"
  cites = ["appasamy_2015"]
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
      quadriceps_power                 = "5"
      clonus_beats                     = 4
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "hyperextends_slowly"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices  = { device = "rigid", articulation = "none" }
    findings = { clonus = true, knee_goes_back = true }
    fires    = ["rigid_for_a_knee_that_goes_back", "tone_first_for_a_knee_that_goes_back"]
    silent   = ["plantarflexion_stop_for_a_knee_that_goes_back", "leave_the_shank_free"]
  }
}

case "both muscle groups just below 3 on the left; plantarflexors alone on the right" {
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
      dorsiflexor_power                = "3-"
      plantarflexor_power              = "3-"
      quadriceps_power                 = "5"
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
      plantarflexor_power              = "3-"
      quadriceps_power                 = "5"
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
    choices  = { device = "rigid" }
    findings = { ankle_very_weak = true, dorsiflexors_less_weak = false }
    fires    = ["rigid_for_a_knee_that_goes_back"]
    silent   = ["plantarflexion_stop_for_a_knee_that_goes_back", "tone_first_for_a_knee_that_goes_back"]
  }
  expect "right" {
    choices  = { device = "articulated" }
    findings = { ankle_very_weak = false, dorsiflexors_less_weak = true }
    fires    = ["plantarflexion_stop_for_a_knee_that_goes_back"]
    silent   = ["rigid_for_a_knee_that_goes_back"]
  }
}

case "dorsiflexors alone below 3 on the left, where the series says nothing; both at 3+ on the right" {
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
      dorsiflexor_power                = "3-"
      plantarflexor_power              = "3"
      quadriceps_power                 = "5"
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
      dorsiflexor_power                = "3+"
      plantarflexor_power              = "3+"
      quadriceps_power                 = "5"
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
    choices  = { device = "open: articulated, rigid" }
    findings = { ankle_very_weak = false, dorsiflexors_less_weak = false }
    silent   = ["rigid_for_a_knee_that_goes_back", "plantarflexion_stop_for_a_knee_that_goes_back"]
  }
  expect "right" {
    findings = { ankle_very_weak = false, dorsiflexors_less_weak = true }
    fires    = ["plantarflexion_stop_for_a_knee_that_goes_back"]
    silent   = ["rigid_for_a_knee_that_goes_back"]
  }
}

case "dorsiflexors at 5- are weak, at 5 they are not" {
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
      dorsiflexor_power                = "5-"
      plantarflexor_power              = "4"
      quadriceps_power                 = "5"
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
      dorsiflexor_power                = "5"
      plantarflexor_power              = "4"
      quadriceps_power                 = "5"
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
    findings = { dorsiflexors_less_weak = true }
    fires    = ["plantarflexion_stop_for_a_knee_that_goes_back"]
  }
  expect "right" {
    choices  = { device = "open: articulated, rigid" }
    findings = { dorsiflexors_less_weak = false }
    silent   = ["plantarflexion_stop_for_a_knee_that_goes_back"]
  }
}

case "tone 2 and no clonus under a knee that goes back: tone is treated first or alongside" {
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
      plantarflexor_tone               = "2"
      dorsiflexor_power                = "3"
      plantarflexor_power              = "4"
      quadriceps_power                 = "5"
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
    choices  = { device = "articulated", articulation = "plantarflexion_stop" }
    fires    = ["tone_first_for_a_knee_that_goes_back", "plantarflexion_stop_for_a_knee_that_goes_back", "rigid_device_at_once"]
    silent   = ["rigid_for_a_knee_that_goes_back"]
    cautions = ["toxin_for_tone"]
  }
}

case "the knee still snaps back in a leaf spring: that was no trial of an ankle-foot orthosis that holds, so no knee brace yet" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 59
      diagnosis_group = "stroke"
    }
    left {
      present_device      = "posterior_leaf_spring"
      gait_midstance_knee = "snaps_back"
      gait_seen_in        = "present_device"
    }
  }
  expect "left" {
    findings = { knee_goes_back = true }
    silent   = ["knee_brace_is_the_last_step"]
  }
}

case "the knee still snaps back in a rigid device: the knee is covered as the last step" {
  basis = "published"
  cites = ["appasamy_2015", "requier_2018"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 59
      diagnosis_group = "stroke"
    }
    left {
      present_device                   = "rigid"
      plantarflexor_tone               = "1"
      dorsiflexor_power                = "3"
      plantarflexor_power              = "4"
      quadriceps_power                 = "5"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
      gait_seen_in                     = "present_device"
      knee_pain                        = 1
    }
    right {
      present_device                   = "rigid"
      plantarflexor_tone               = "1"
      dorsiflexor_power                = "3"
      plantarflexor_power              = "4"
      quadriceps_power                 = "5"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
      gait_seen_in                     = "shoe"
      knee_pain                        = 0
    }
  }
  expect "left" {
    fires    = ["knee_brace_is_the_last_step"]
    cautions = ["painful_knee"]
  }
  expect "right" {
    silent = ["knee_brace_is_the_last_step", "painful_knee"]
  }
}

case "the knee goes back in a soft support, and hurts a little: no knee brace yet" {
  basis = "published"
  cites = ["requier_2018"]
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
      quadriceps_power                 = "5"
      clonus_beats                     = 0
      ankle_dorsiflexion_knee_extended = 4
      gait_initial_contact             = "heel"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "lifts"
      gait_seen_in                     = "present_device"
      knee_pain                        = 2
    }
  }
  expect "left" {
    silent   = ["knee_brace_is_the_last_step"]
    cautions = ["painful_knee"]
  }
}
