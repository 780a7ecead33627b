# Worked cases in which the stiffness is the clinician's or for the swing, and of foot plate, sole and strut. Invented people;
# worked out by hand.

case "1 heel rise: the calf is weak but lifts, and the stiffness is the clinician's" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age         = 52
      body_mass   = 70
      walking_aid = "none"
    }
    right {
      heel_rises          = 1
      plantarflexor_power = "5"
      plantarflexor_tone  = "0"
      gait_swing_ankle    = "lifts"
      heel_to_ball_length = 175
      ankle_to_heel_back  = 50
    }
  }
  expect "right" {
    choices  = { strut_stiffness = "left_to_clinician (not provisional)" }
    findings = { weak_calf = true, calf_cannot_lift = false }
    silent   = ["stiffness_that_the_calf_lacks", "stiffness_by_body_mass", "softer_than_by_body_mass", "mass_and_measured_best_disagree"]
  }
}

case "2 heel rises: the calf is weak but lifts, and the stiffness is the clinician's" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age         = 52
      body_mass   = 70
      walking_aid = "none"
    }
    right {
      heel_rises          = 2
      plantarflexor_power = "5"
      plantarflexor_tone  = "0"
      gait_swing_ankle    = "lifts"
      heel_to_ball_length = 175
      ankle_to_heel_back  = 50
    }
  }
  expect "right" {
    choices  = { strut_stiffness = "left_to_clinician (not provisional)" }
    findings = { weak_calf = true, calf_cannot_lift = false }
    silent   = ["stiffness_that_the_calf_lacks", "stiffness_by_body_mass", "softer_than_by_body_mass", "mass_and_measured_best_disagree"]
  }
}

case "3 heel rises: the calf is weak but lifts, and the stiffness is the clinician's" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age         = 52
      body_mass   = 70
      walking_aid = "none"
    }
    right {
      heel_rises          = 3
      plantarflexor_power = "5"
      plantarflexor_tone  = "0"
      gait_swing_ankle    = "lifts"
      heel_to_ball_length = 175
      ankle_to_heel_back  = 50
    }
  }
  expect "right" {
    choices  = { strut_stiffness = "left_to_clinician (not provisional)" }
    findings = { weak_calf = true, calf_cannot_lift = false }
    silent   = ["stiffness_that_the_calf_lacks", "stiffness_by_body_mass", "softer_than_by_body_mass", "mass_and_measured_best_disagree"]
  }
}

case "4 heel rises: the calf is not weak by the trial, and the stiffness is the clinician's" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age         = 52
      body_mass   = 70
      walking_aid = "none"
    }
    right {
      heel_rises          = 4
      plantarflexor_power = "5"
      plantarflexor_tone  = "0"
      gait_swing_ankle    = "lifts"
      heel_to_ball_length = 175
      ankle_to_heel_back  = 50
    }
  }
  expect "right" {
    choices  = { strut_stiffness = "left_to_clinician (not provisional)" }
    findings = { weak_calf = false, calf_cannot_lift = false }
    silent   = ["stiffness_that_the_calf_lacks", "stiffness_by_body_mass", "softer_than_by_body_mass", "mass_and_measured_best_disagree"]
  }
}

case "calf of grade 5- with ten heel rises" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 52
      body_mass   = 70
      walking_aid = "none"
    }
    left {
      heel_rises          = 10
      plantarflexor_power = "5-"
      plantarflexor_tone  = "0"
    }
  }
  expect "left" {
    findings = { weak_calf = true }
  }
}

case "calf of grade 5 with ten heel rises" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 52
      body_mass   = 70
      walking_aid = "none"
    }
    left {
      heel_rises          = 10
      plantarflexor_power = "5"
      plantarflexor_tone  = "0"
    }
  }
  expect "left" {
    findings = { weak_calf = false }
  }
}

case "no heel rise, tone 1+: the stiffness is the clinician's" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 52
      body_mass   = 70
      walking_aid = "none"
    }
    left {
      heel_rises           = 0
      plantarflexor_power  = "3"
      plantarflexor_tone   = "1+"
      plantarflexor_moment = 40
      heel_to_ball_length  = 175
      ankle_to_heel_back   = 50
    }
  }
  expect "left" {
    choices  = { strut_stiffness = "left_to_clinician (not provisional)" }
    findings = { spastic_calf = true, calf_cannot_lift = false }
    silent   = ["stiffness_that_the_calf_lacks", "stiffness_by_the_measured_deficit", "stiffness_for_the_swing"]
  }
}

case "no heel rise, tone 2: the stiffness is the clinician's" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 52
      body_mass   = 70
      walking_aid = "none"
    }
    left {
      heel_rises           = 0
      plantarflexor_power  = "3"
      plantarflexor_tone   = "2"
      plantarflexor_moment = 40
      heel_to_ball_length  = 175
      ankle_to_heel_back   = 50
    }
  }
  expect "left" {
    choices  = { strut_stiffness = "left_to_clinician (not provisional)" }
    findings = { spastic_calf = true, calf_cannot_lift = false }
    silent   = ["stiffness_that_the_calf_lacks", "stiffness_by_the_measured_deficit", "stiffness_for_the_swing"]
  }
}

case "foot that only hangs: from the published moments over the usual clearance" {
  basis = "published"
  cites = ["kobayashi_2017"]
  given {
    device_for = ["left"]
    person {
      age         = 60
      body_mass   = 70
      walking_aid = "none"
    }
    left {
      heel_rises                       = 20
      plantarflexor_power              = "5"
      plantarflexor_tone               = "0"
      ankle_dorsiflexion_knee_extended = 10
      heel_contact_standing            = "full"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
      gait_loading_foot                = "foot_slap"
    }
  }
  expect "left" {
    choices  = { strut_stiffness = "open: 0.318872..0.681726 N.m/deg", sole_profile = "bevelled_heel", foot_plate_length = "left_to_clinician", foot_plate_stiffness = "left_to_clinician" }
    findings = { swing_only = true, ankle_is_held = false }
    fires    = ["stiffness_for_the_swing", "bevel_the_heel_for_a_slap"]
    silent   = ["stiffness_that_the_calf_lacks", "long_stiff_plate_to_hold_the_shank", "plate_that_gives_for_a_knee_that_goes_back", "cushion_the_heel_for_a_weak_knee"]
  }
  expect "person" {
    quantities = { plantarflexion_that_clears = "6.366 deg +- 0.001", swing_stiffness_least = "0.3189 N.m/deg +- 0.0001", swing_stiffness_most = "0.6817 N.m/deg +- 0.0001" }
  }
}

case "shank that falls forward: a long stiff plate" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 30
      walking_aid = "none"
    }
    left {
      gait_midstance_ankle = "too_far_forward"
      gait_midstance_knee  = "hyperextends_slowly"
      gait_loading_foot    = "controlled"
    }
  }
  expect "left" {
    choices  = { foot_plate_length = "full_length", foot_plate_stiffness = "rigid" }
    findings = { shank_falls_forward = true, knee_goes_back = true }
    fires    = ["long_stiff_plate_to_hold_the_shank"]
    silent   = ["plate_that_gives_for_a_knee_that_goes_back", "bevel_the_heel_for_a_slap", "stop_the_knee_going_back"]
  }
}

case "knee that goes back: a plate that gives" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 30
      walking_aid = "none"
    }
    left {
      gait_midstance_ankle = "held_back"
      gait_midstance_knee  = "hyperextends_slowly"
    }
  }
  expect "left" {
    choices  = { foot_plate_length = "left_to_clinician", foot_plate_stiffness = "flexible" }
    findings = { shank_falls_forward = false }
    fires    = ["plate_that_gives_for_a_knee_that_goes_back"]
    silent   = ["long_stiff_plate_to_hold_the_shank"]
  }
}

case "strut measured in the workshop, stiffness from a formula: strain, and a figure without a bench" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 30
      walking_aid = "none"
    }
    left {
      strut_length    = 200
      strut_width     = 40
      strut_thickness = 4
      strut_modulus   = 60
      bench_stiffness = 1.1
      bench_method    = "worked_out"
    }
  }
  expect "left" {
    quantities = { strain_of_strut = "0.2234 % +- 0.0001", stress_of_strut = "134.04 MPa +- 0.01" }
    cautions   = ["strain_of_the_strut", "stiffness_without_its_bench"]
  }
}

case "a block of laminate, too short to be a strut, tested in a fixture" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 30
      walking_aid = "none"
    }
    left {
      strut_length    = 40
      strut_thickness = 4
      bench_stiffness = 4.0
      bench_method    = "motor_in_fixture"
    }
  }
  expect "left" {
    quantities = { strain_of_strut = "unknown" }
    silent     = ["strain_of_the_strut", "stiffness_without_its_bench"]
  }
}
