# Worked cases: the recorded label against what was seen.

case "label drop_foot, and drop foot was seen: agreed" {
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
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
      gait_pattern                     = "drop_foot"
    }
  }
  expect "left" {
    silent   = ["label_disagrees"]
    cautions = ["label_is_not_enough"]
  }
}

case "label drop_foot, and true equinus was seen: the label is wrong" {
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
      gait_pattern                     = "drop_foot"
    }
  }
  expect "left" { cautions = ["label_disagrees", "label_is_not_enough"] }
}

case "label drop_foot_with_tight_calf, and a foot that hangs and a calf that holds it down was seen: agreed" {
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
      gait_swing_ankle                 = "hangs"
      gait_swing_knee                  = "bends_enough"
      gait_pattern                     = "drop_foot_with_tight_calf"
    }
  }
  expect "left" {
    silent   = ["label_disagrees"]
    cautions = ["label_is_not_enough"]
  }
}

case "label drop_foot_with_tight_calf, and drop foot was seen: the label is wrong" {
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
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
      gait_pattern                     = "drop_foot_with_tight_calf"
    }
  }
  expect "right" { cautions = ["label_disagrees", "label_is_not_enough"] }
}

case "label drop_foot_with_tight_calf, and true equinus was seen: the label is wrong" {
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
      gait_pattern                     = "drop_foot_with_tight_calf"
    }
  }
  expect "left" { cautions = ["label_disagrees", "label_is_not_enough"] }
}

case "label true_equinus, and true equinus was seen: agreed" {
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
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
      gait_pattern                     = "true_equinus"
    }
  }
  expect "right" {
    silent   = ["label_disagrees"]
    cautions = ["label_is_not_enough"]
  }
}

case "label true_equinus, and jump was seen: the label is wrong" {
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
      gait_pattern                     = "true_equinus"
    }
  }
  expect "left" { cautions = ["label_disagrees", "label_is_not_enough"] }
}
