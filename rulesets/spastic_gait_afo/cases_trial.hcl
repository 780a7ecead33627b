# Worked cases: the limits of the trial of stiff devices, on the limit and one degree to either side.

case "knee 9 deg short in jump: within the trial" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = -9
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "neutral"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { silent = ["outside_the_trial"] }
}

case "knee 10 deg short in jump: within the trial" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = -10
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "neutral"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { silent = ["outside_the_trial"] }
}

case "knee 11 deg short in jump: outside the trial" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = -11
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "neutral"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { cautions = ["outside_the_trial"] }
}

case "ankle 9 deg short of plantigrade in jump: within the trial" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = -9
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = 0
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "neutral"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { silent = ["outside_the_trial"] }
}

case "ankle 10 deg short of plantigrade in jump: within the trial" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = -10
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = 0
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "neutral"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { silent = ["outside_the_trial"] }
}

case "ankle 11 deg short of plantigrade in jump: outside the trial" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = -11
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = 0
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "neutral"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { cautions = ["outside_the_trial"] }
}

case "apparent equinus with a hip that turns in: outside the trial" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = 0
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "internal"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { cautions = ["outside_the_trial"] }
}

case "true equinus with a hip that turns in: not the gait of that trial" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = 0
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hip_rotation      = "internal"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { silent = ["outside_the_trial"] }
}
