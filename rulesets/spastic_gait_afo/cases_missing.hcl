# Worked cases: a label is not enough, and what is not seen stays unknown.

case "the label decides nothing: labelled crouch and seen as true equinus, advised as seen" {
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
      gait_pattern                     = "crouch"
    }
  }
  expect "left" {
    choices  = { device = "open: posterior_leaf_spring, articulated", pressure_system = "against_equinus" }
    silent   = ["ground_reaction_for_crouch"]
    cautions = ["label_disagrees"]
  }
}

case "a label and nothing else: no device, everything is still to be recorded" {
  basis = "published"
  cites = ["pattern_limits"]
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left { gait_pattern = "crouch" }
  }
  expect "left" {
    choices = {
      device          = "left_to_clinician (provisional)"
      articulation    = "left_to_clinician (provisional)"
      pressure_system = "left_to_clinician (provisional)"
    }
    findings = { crouch = "unknown", true_equinus = "unknown", no_pattern = "unknown" }
    silent   = ["label_disagrees", "ground_reaction_for_crouch"]
    cautions = ["label_is_not_enough"]
  }
}

case "ankle not seen: jump, apparent equinus and crouch are all still possible" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      gait_midstance_knee       = "too_flexed"
      gait_terminal_stance_knee = "extends"
      gait_terminal_stance_hip  = "does_not_extend"
    }
  }
  expect "left" {
    choices  = { device = "left_to_clinician (provisional)" }
    findings = { jump = "unknown", apparent_equinus = "unknown", crouch = "unknown", true_equinus = false, drop_foot = false, knee_and_hip_flexed = true }
  }
}
