# What the ankle does under load: loose sideways, or short of plantigrade. Invented people.

case "a weak calf on a loose ankle, the shank falls forward: held sideways as well, no open spring" {
  basis = "from_memory"
  given {
    device_for = ["left"]
    person {
      age             = 35
      body_mass       = "75 kg"
      diagnosis_group = "nerve_injury"
      walking_aid     = "none"
    }
    left {
      heel_rises               = 0
      plantarflexor_power      = "3"
      plantarflexor_tone       = "0"
      quadriceps_power         = "5"
      ankle_sideways_stability = "loose_inversion"
      gait_midstance_ankle     = "too_far_forward"
      gait_midstance_knee      = "too_flexed"
    }
  }
  expect "left" {
    choices  = { device = "open: composite, anterior_shell_ground_reaction, rigid", strut_place = "left_to_clinician (provisional)" }
    findings = { spring_suits = true }
    fires    = ["hold_a_loose_ankle", "shell_in_front_of_the_shank"]
    silent   = ["spring_for_weak_calf"]
  }
}

case "a degree short of plantigrade in standing: outside the trial; plantigrade is not" {
  basis = "published"
  cites = ["calf_weakness_trial"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 52
      diagnosis_group = "other_neuropathy"
    }
    left {
      heel_rises                              = 0
      plantarflexor_power                     = "3"
      plantarflexor_tone                      = "0"
      quadriceps_power                        = "5"
      ankle_dorsiflexion_loaded_knee_extended = -1
    }
    right {
      heel_rises                              = 0
      plantarflexor_power                     = "3"
      plantarflexor_tone                      = "0"
      quadriceps_power                        = "5"
      ankle_dorsiflexion_loaded_knee_extended = 0
    }
  }
  expect "left" { cautions = ["equinus_outside_the_trial"] }
  expect "right" { silent = ["equinus_outside_the_trial"] }
}

case "a degree past plantigrade in standing; and a short ankle under a full calf" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 52
      diagnosis_group = "other_neuropathy"
    }
    left {
      heel_rises                              = 0
      plantarflexor_power                     = "3"
      plantarflexor_tone                      = "0"
      quadriceps_power                        = "5"
      ankle_dorsiflexion_loaded_knee_extended = 1
    }
    right {
      heel_rises                              = 27
      plantarflexor_power                     = "5"
      plantarflexor_tone                      = "0"
      quadriceps_power                        = "5"
      ankle_dorsiflexion_loaded_knee_extended = -4
    }
  }
  expect "left" { silent = ["equinus_outside_the_trial"] }
  expect "right" {
    findings = { spring_suits = false }
    silent   = ["equinus_outside_the_trial"]
  }
}
