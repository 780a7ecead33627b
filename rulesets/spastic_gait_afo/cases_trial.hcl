# Worked cases: who was left out of the trial of stiff devices.

case "crouch with a hip that turns in: outside the trial" {
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
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "internal"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { cautions = ["hip_turned_in"] }
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
  expect "left" { cautions = ["hip_turned_in"] }
}

case "jump with a hip that turns in: outside the trial" {
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
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "internal"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { cautions = ["hip_turned_in"] }
}

case "jump with a hip that does not turn" {
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
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "neutral"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { silent = ["hip_turned_in"] }
}

case "jump with a hip that turns out" {
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
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "external"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { silent = ["hip_turned_in"] }
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
  expect "left" { silent = ["hip_turned_in"] }
}

case "jump with the ankle 11 deg short of plantigrade: the safety of the limb names the trial" {
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
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_midstance_hip_rotation      = "neutral"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    silent   = ["hip_turned_in"]
    cautions = ["limb_safety.contracture_beyond_the_rigid_trial"]
  }
}
