# Worked cases: left and right, each by its own pattern.

case "each leg alone: true equinus on the left, crouch on the right" {
  basis = "published"
  cites = ["sagittal_patterns"]
  given {
    device_for = ["left", "right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
    right {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = -8
      hip_extension                    = -10
      midfoot_break                    = "none"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: posterior_leaf_spring, articulated", pressure_system = "against_equinus" }
    silent   = ["ground_reaction_for_crouch"]
    cautions = ["legs_differ"]
  }
  expect "right" {
    choices  = { device = "anterior_shell_ground_reaction", pressure_system = "against_shank_advance" }
    silent   = ["spring_or_hinge_for_true_equinus"]
    cautions = ["legs_differ"]
  }
}

case "both legs with the same ankle and knee: not called asymmetric" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "all_four_limbs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = -5
      hip_extension                    = -5
      midfoot_break                    = "none"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
    right {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = -8
      hip_extension                    = -10
      midfoot_break                    = "none"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices = { device = "anterior_shell_ground_reaction" }
    silent  = ["legs_differ"]
  }
  expect "right" {
    choices = { device = "anterior_shell_ground_reaction" }
    silent  = ["legs_differ"]
  }
}

case "all four limbs, device for one leg only: the other is still compared" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "all_four_limbs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
    right {
      gait_midstance_ankle      = "held_back"
      gait_midstance_knee       = "near_straight"
      gait_terminal_stance_knee = "extends"
      gait_terminal_stance_hip  = "extends"
      gait_swing_ankle          = "lifts"
    }
  }
  expect "left" {
    fires    = ["three_devices_for_jump"]
    cautions = ["legs_differ"]
  }
}
