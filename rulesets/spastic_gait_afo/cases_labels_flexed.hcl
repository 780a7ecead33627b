# Worked cases: the recorded label against what was seen, where knee and hip are flexed, and the descriptive labels.

case "label jump, and jump was seen: agreed" {
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
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
      gait_pattern                     = "jump"
    }
  }
  expect "left" {
    silent   = ["label_disagrees"]
    cautions = ["label_is_not_enough"]
  }
}

case "label jump, and apparent equinus was seen: the label is wrong" {
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
      midfoot_break                    = "none"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
      gait_pattern                     = "jump"
    }
  }
  expect "left" { cautions = ["label_disagrees", "label_is_not_enough"] }
}

case "label apparent_equinus, and apparent equinus was seen: agreed" {
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
      midfoot_break                    = "none"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
      gait_pattern                     = "apparent_equinus"
    }
  }
  expect "left" {
    silent   = ["label_disagrees"]
    cautions = ["label_is_not_enough"]
  }
}

case "label apparent_equinus, and crouch was seen: the label is wrong" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    right {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = 0
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
      gait_pattern                     = "apparent_equinus"
    }
  }
  expect "right" { cautions = ["label_disagrees", "label_is_not_enough"] }
}

case "label crouch, and crouch was seen: agreed" {
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
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
      gait_pattern                     = "crouch"
    }
  }
  expect "left" {
    silent   = ["label_disagrees"]
    cautions = ["label_is_not_enough"]
  }
}

case "label crouch, and jump was seen: the label is wrong" {
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
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
      gait_pattern                     = "crouch"
    }
  }
  expect "left" { cautions = ["label_disagrees", "label_is_not_enough"] }
}

case "label stiff_knee, and the knee is stiff in swing: agreed" {
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
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
      gait_swing_knee                  = "stiff"
      gait_pattern                     = "stiff_knee"
    }
  }
  expect "left" { silent = ["label_disagrees"] }
}

case "label stiff_knee, and the knee bends in swing: the label is wrong" {
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
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
      gait_swing_knee                  = "bends_enough"
      gait_pattern                     = "stiff_knee"
    }
  }
  expect "left" { cautions = ["label_disagrees"] }
}

case "label recurvatum, and the knee snaps back: agreed" {
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
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
      gait_pattern                     = "recurvatum"
    }
  }
  expect "left" { silent = ["label_disagrees"] }
}

case "label recurvatum, and the knee is straight: the label is wrong" {
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
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
      gait_pattern                     = "recurvatum"
    }
  }
  expect "left" { cautions = ["label_disagrees"] }
}

case "no label: nothing to compare" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    right {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
      gait_pattern                     = "no_label"
    }
  }
  expect "right" { silent = ["label_disagrees", "label_is_not_enough"] }
}
