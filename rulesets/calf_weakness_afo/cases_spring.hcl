# Spring devices: who they are for, how stiff, and what the ankle asks for. Invented people unless a source is named.

case "the people of the trials: weak calf, not spastic, shank falls forward" {
  basis = "published"
  cites = ["waterval_2019", "waterval_2020", "waterval_2021"]
  given {
    device_for = ["left"]
    person {
      age             = 52
      body_mass       = "75 kg"
      diagnosis_group = "other_neuropathy"
      activity_demand = "moderate"
      walking_aid     = "none"
    }
    left {
      heel_rises               = 0
      plantarflexor_power      = "3"
      plantarflexor_tone       = "0"
      quadriceps_power         = "5"
      hip_extensor_power       = "5"
      ankle_sideways_stability = "stable"
      gait_midstance_ankle     = "too_far_forward"
      gait_midstance_knee      = "too_flexed"
    }
  }
  expect "left" {
    choices = {
      device          = "composite"
      articulation    = "none"
      strut_place     = "posterior"
      strut_stiffness = "open: 3.9..5.1 N.m/deg"
      shell_side      = "anterior"
      pressure_system = "against_shank_advance"
    }
    findings = { calf_weak = true, calf_spastic = false, no_heel_rise = true, shank_falls_forward = true, spring_suits = true }
    fires    = ["spring_for_weak_calf", "stop_dorsiflexion", "shell_in_front_of_the_shank", "stiffness_by_body_mass", "softer_than_by_body_mass"]
    cautions = ["try_several_stiffnesses"]
    silent   = ["composite_after_limb_trauma", "hold_a_loose_ankle", "over_the_knee_after_polio", "load_in_front_of_the_knee", "over_the_knee_that_gives_way", "rigid_for_low_lumbar_level", "little_for_sacral_level", "knee_under_a_held_ankle", "equinus_that_locks_the_knee", "stiffness_outside_the_trial", "spastic_calf", "hand_stronger_than_heel_rises", "heel_rise_schemes_disagree", "level_above_the_ankle"]
  }
  expect "person" {
    findings   = { advised_apart = false }
    quantities = { stiffness_by_mass = "5.1 N.m/deg", softer_stiffness = "3.9 N.m/deg" }
    silent     = ["may_not_be_worn", "keep_it_light"]
  }
}

case "a full calf: nothing is advised for it, on a stable ankle or a loose one" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 40
      body_mass       = "75 kg"
      diagnosis_group = "trauma_or_surgery"
      activity_demand = "high"
    }
    left {
      heel_rises               = 30
      plantarflexor_power      = "5"
      ankle_sideways_stability = "loose_both"
    }
    right {
      heel_rises               = 30
      plantarflexor_power      = "5"
      plantarflexor_tone       = "2"
      quadriceps_power         = "3+"
      ankle_sideways_stability = "stable"
      gait_midstance_ankle     = "moves_forward_steadily"
    }
  }
  expect "left" {
    findings = { calf_weak = false }
    silent   = ["hold_a_loose_ankle", "composite_after_limb_trauma"]
  }
  expect "right" {
    choices  = { device = "left_to_clinician", articulation = "left_to_clinician", strut_stiffness = "left_to_clinician" }
    findings = { calf_weak = false, spring_suits = false, shank_falls_forward = false, no_heel_rise = false }
    silent   = ["spring_for_weak_calf", "composite_after_limb_trauma", "hold_a_loose_ankle", "stop_dorsiflexion", "shell_in_front_of_the_shank", "stiffness_by_body_mass", "softer_than_by_body_mass", "try_several_stiffnesses", "spastic_calf", "knee_under_a_held_ankle"]
  }
}

case "grade 5- is weak, grade 5 with as many heel rises is not" {
  basis = "published"
  cites = ["calf_weakness_trial"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 40
      diagnosis_group = "nerve_injury"
    }
    left {
      heel_rises          = 10
      plantarflexor_power = "5-"
    }
    right {
      heel_rises          = 10
      plantarflexor_power = "5"
    }
  }
  expect "left" { findings = { calf_weak = true } }
  expect "right" { findings = { calf_weak = false } }
}

case "three heel rises are a weak calf, four are not" {
  basis = "published"
  cites = ["calf_weakness_trial"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 40
      diagnosis_group = "nerve_injury"
    }
    left {
      heel_rises          = 3
      plantarflexor_power = "5"
    }
    right {
      heel_rises          = 4
      plantarflexor_power = "5"
    }
  }
  expect "left" {
    findings = { calf_weak = true, full_calf_by_4_rises = false }
    cautions = ["hand_stronger_than_heel_rises"]
    silent   = ["heel_rise_schemes_disagree"]
  }
  expect "right" {
    findings = { calf_weak = false, full_calf_by_4_rises = true }
    cautions = ["heel_rise_schemes_disagree"]
    silent   = ["hand_stronger_than_heel_rises"]
  }
}

case "two heel rises with full power against the hand, and with a grade less" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 40
      diagnosis_group = "nerve_injury"
    }
    left {
      heel_rises          = 2
      plantarflexor_power = "5"
    }
    right {
      heel_rises          = 2
      plantarflexor_power = "5-"
    }
  }
  expect "left" {
    findings = { calf_weak = true, no_heel_rise = false }
    cautions = ["hand_stronger_than_heel_rises"]
  }
  expect "right" {
    findings = { calf_weak = true }
    silent   = ["hand_stronger_than_heel_rises"]
  }
}

case "one heel rise: a spring, but its stiffness is left to the clinician" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 19
      body_mass       = "75 kg"
      diagnosis_group = "nerve_injury"
    }
    left {
      ankle_sideways_stability = "stable"
      heel_rises               = 1
      plantarflexor_power      = "4"
      plantarflexor_tone       = "0"
      quadriceps_power         = "4"
    }
    right {
      ankle_sideways_stability = "stable"
      heel_rises               = 0
      plantarflexor_power      = "4"
      plantarflexor_tone       = "1"
      quadriceps_power         = "4-"
    }
  }
  expect "left" {
    choices  = { device = "composite", strut_stiffness = "left_to_clinician" }
    findings = { spring_suits = true, no_heel_rise = false }
    cautions = ["try_several_stiffnesses"]
    silent   = ["stiffness_by_body_mass", "softer_than_by_body_mass", "knee_under_a_held_ankle"]
  }
  expect "right" {
    choices  = { device = "composite", strut_stiffness = "open: 3.9..5.1 N.m/deg" }
    findings = { spring_suits = true, no_heel_rise = true, calf_spastic = false }
    cautions = ["knee_under_a_held_ankle"]
  }
}

case "a catch and resistance make the calf spastic, and the spring is not advised" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 45
      body_mass       = "75 kg"
      diagnosis_group = "trauma_or_surgery"
      activity_demand = "high"
    }
    left {
      heel_rises          = 0
      plantarflexor_power = "4-"
      plantarflexor_tone  = "1+"
      quadriceps_power    = "4+"
    }
    right {
      heel_rises          = 0
      plantarflexor_power = "4+"
      plantarflexor_tone  = "2"
      quadriceps_power    = "5"
    }
  }
  expect "left" {
    choices  = { device = "left_to_clinician (provisional)" }
    findings = { calf_spastic = true, spring_suits = false }
    cautions = ["spastic_calf"]
    silent   = ["spring_for_weak_calf", "composite_after_limb_trauma", "try_several_stiffnesses", "knee_under_a_held_ankle"]
  }
  expect "right" {
    findings = { calf_spastic = true, calf_weak = true }
    cautions = ["spastic_calf"]
  }
}

case "grade 4 asks for a stop, 4+ does not, unless the shank falls forward" {
  basis = "published"
  cites = ["ankle_control_teaching"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 16
      diagnosis_group = "nerve_injury"
    }
    left {
      plantarflexor_power  = "4"
      gait_midstance_ankle = "moves_forward_steadily"
    }
    right {
      plantarflexor_power  = "4+"
      gait_midstance_ankle = "moves_forward_steadily"
    }
  }
  expect "left" {
    choices = { articulation = "open: none, dorsiflexion_stop", shell_side = "left_to_clinician" }
    fires   = ["stop_dorsiflexion"]
    silent  = ["shell_in_front_of_the_shank"]
  }
  expect "right" {
    choices = { articulation = "left_to_clinician" }
    silent  = ["stop_dorsiflexion"]
  }
}

case "grade 4- and 4+ with a shank that falls forward" {
  basis = "published"
  cites = ["ankle_control_teaching"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 16
      diagnosis_group = "nerve_injury"
    }
    left {
      plantarflexor_power  = "4-"
      gait_midstance_ankle = "moves_forward_steadily"
    }
    right {
      plantarflexor_power  = "4+"
      gait_midstance_ankle = "too_far_forward"
    }
  }
  expect "left" { fires = ["stop_dorsiflexion"] }
  expect "right" {
    choices = { shell_side = "anterior" }
    fires   = ["stop_dorsiflexion", "shell_in_front_of_the_shank"]
  }
}

case "seventeen years old: the trials of springs do not reach so young" {
  basis = "from_memory"
  given {
    device_for = ["left"]
    person {
      age             = 17
      body_mass       = "60 kg"
      diagnosis_group = "nerve_injury"
    }
    left {
      heel_rises               = 0
      plantarflexor_power      = "2"
      plantarflexor_tone       = "0"
      quadriceps_power         = "5"
      ankle_sideways_stability = "stable"
    }
  }
  expect "left" {
    choices  = { device = "left_to_clinician", strut_stiffness = "left_to_clinician" }
    findings = { spring_suits = false }
    silent   = ["spring_for_weak_calf", "stiffness_by_body_mass"]
  }
}

case "eighteen years old, 58 kg: a spring, its softer figure below what was tried" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 18
      body_mass       = "58 kg"
      diagnosis_group = "nerve_injury"
    }
    left {
      ankle_sideways_stability = "stable"
      heel_rises               = 0
      plantarflexor_power      = "2"
      plantarflexor_tone       = "0"
      quadriceps_power         = "5"
    }
  }
  expect "left" {
    choices  = { device = "composite" }
    findings = { spring_suits = true }
    cautions = ["stiffness_outside_the_trial"]
  }
  expect "person" {
    quantities = { stiffness_by_mass = "3.944 N.m/deg", softer_stiffness = "2.744 N.m/deg" }
  }
}
