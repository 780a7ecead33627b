# Worked cases of the knee above the device: the lean that it bears, and what stands against a device at the ankle. Invented
# people; worked out by hand.

case "a knee that stays bent: no more than where tuning starts" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.45
      walking_aid   = "none"
    }
    right {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      quadriceps_power                 = "5"
      gait_midstance_knee              = "too_flexed"
    }
  }
  expect "right" {
    choices  = { shank_to_vertical_target = "11 deg (not provisional)" }
    findings = { knee_bends_under_load = true, knee_goes_back = false, weak_quadriceps = false }
    fires    = ["no_more_lean_for_a_knee_that_bends"]
    silent   = ["no_less_lean_for_a_knee_that_goes_back", "weak_quadriceps_in_a_lean"]
  }
}

case "a knee that goes back: no less than where tuning starts" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.45
      walking_aid   = "none"
    }
    right {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      quadriceps_power                 = "5"
      gait_midstance_knee              = "snaps_back"
    }
  }
  expect "right" {
    choices  = { shank_to_vertical_target = "open: 11..12.56 deg" }
    findings = { knee_goes_back = true, knee_bends_under_load = false }
    fires    = ["no_less_lean_for_a_knee_that_goes_back"]
    silent   = ["no_more_lean_for_a_knee_that_bends"]
  }
}

case "quadriceps 3+: weak, so no more lean, and a soft heel" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.45
      walking_aid   = "none"
    }
    right {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      quadriceps_power                 = "3+"
      gait_midstance_knee              = "near_straight"
    }
  }
  expect "right" {
    choices  = { shank_to_vertical_target = "11 deg (not provisional)" }
    cautions = ["weak_quadriceps_in_a_lean"]
    findings = { weak_quadriceps = true }
    fires    = ["no_more_lean_for_a_knee_that_bends", "cushion_the_heel_for_a_weak_knee"]
    silent   = ["no_less_lean_for_a_knee_that_goes_back"]
  }
}

case "quadriceps 4: the lean is not limited" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.45
      walking_aid   = "none"
    }
    right {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      quadriceps_power                 = "4"
      gait_midstance_knee              = "near_straight"
    }
  }
  expect "right" {
    choices  = { shank_to_vertical_target = "open: 11..12.56 deg" }
    findings = { weak_quadriceps = false }
    fires    = ["lean_the_shank"]
    silent   = ["no_more_lean_for_a_knee_that_bends", "cushion_the_heel_for_a_weak_knee", "weak_quadriceps_in_a_lean"]
  }
}

case "quadriceps 4+: the lean is not limited" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.45
      walking_aid   = "none"
    }
    right {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      quadriceps_power                 = "4+"
      gait_midstance_knee              = "near_straight"
    }
  }
  expect "right" {
    choices  = { shank_to_vertical_target = "open: 11..12.56 deg" }
    findings = { weak_quadriceps = false }
    fires    = ["lean_the_shank"]
    silent   = ["no_more_lean_for_a_knee_that_bends", "cushion_the_heel_for_a_weak_knee", "weak_quadriceps_in_a_lean"]
  }
}

case "a weak knee that goes back: the lean is not held at 11 deg or more" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age           = 50
      height        = 170
      walking_speed = 0.6
      walking_aid   = "one_stick"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      quadriceps_power                 = "2"
      hip_extensor_power               = "2"
      gait_midstance_knee              = "snaps_back"
      gait_midstance_ankle             = "held_back"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "11 deg (not provisional)" }
    findings = { knee_goes_back = true, weak_quadriceps = true }
    fires    = ["no_more_lean_for_a_knee_that_bends"]
    silent   = ["no_less_lean_for_a_knee_that_goes_back"]
    cautions = ["knee_held_by_going_back", "knee_beyond_an_ankle_device", "weak_quadriceps_in_a_lean"]
  }
}

case "quadriceps and hip extensors of grade 3, and one of them below" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      quadriceps_power    = "3"
      hip_extensor_power  = "3-"
      gait_midstance_knee = "near_straight"
    }
    right {
      quadriceps_power    = "3-"
      hip_extensor_power  = "3"
      gait_midstance_knee = "near_straight"
    }
  }
  expect "left" { silent = ["knee_beyond_an_ankle_device", "knee_held_by_going_back"] }
  expect "right" { silent = ["knee_beyond_an_ankle_device", "knee_held_by_going_back"] }
}

case "quadriceps and hip extensors both of 3-, and both of 3+" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      quadriceps_power   = "3-"
      hip_extensor_power = "3-"
    }
    right {
      quadriceps_power   = "3+"
      hip_extensor_power = "3+"
    }
  }
  expect "left" { cautions = ["knee_beyond_an_ankle_device"] }
  expect "right" { silent = ["knee_beyond_an_ankle_device"] }
}

case "a knee that goes back on quadriceps of 5: nothing stands against the lean" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      quadriceps_power    = "5"
      hip_extensor_power  = "5"
      gait_midstance_knee = "snaps_back"
    }
  }
  expect "left" { silent = ["knee_held_by_going_back", "knee_beyond_an_ankle_device"] }
}
