# Worked cases: toe walking without a known cause.

case "toe walking without a known cause, range there: a stiff plate before a brace" {
  basis = "published"
  cites = ["herrin_2016"]
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "idiopathic_toe_walking"
      age             = 7
    }
    left {
      ankle_dorsiflexion_knee_extended = 1
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices = {
      device               = "insole"
      foot_plate_stiffness = "rigid"
      pressure_system      = "left_to_clinician"
    }
    findings = { true_equinus = false, no_pattern = false }
    fires    = ["stiff_plate_before_a_brace"]
    silent   = ["range_before_a_brace_in_toe_walking", "spring_or_hinge_for_true_equinus", "stop_plantarflexion", "hold_the_ankle", "no_published_pattern"]
  }
  expect "person" {
    findings = { spastic = false }
    silent   = ["goal_and_talk", "patterns_from_cerebral_palsy"]
  }
}

case "toe walking, just plantigrade: still a stiff plate first" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "idiopathic_toe_walking"
      age             = 7
    }
    right {
      ankle_dorsiflexion_knee_extended = 0
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices = { device = "insole" }
    fires   = ["stiff_plate_before_a_brace"]
  }
}

case "toe walking, 1 deg short of plantigrade: range first" {
  basis = "published"
  cites = ["van_kuijk_2014"]
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "idiopathic_toe_walking"
      age             = 7
    }
    right {
      ankle_dorsiflexion_knee_extended = -1
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices = {
      device               = "open: refer_serial_casting, refer_surgical_opinion"
      foot_plate_stiffness = "left_to_clinician"
      cast_ankle_angle     = "-1 deg"
    }
    fires  = ["range_before_a_brace_in_toe_walking"]
    silent = ["stiff_plate_before_a_brace"]
  }
}

case "cerebral palsy on the toes with a short calf: not the way of toe walking without a cause" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 9
    }
    right {
      ankle_dorsiflexion_knee_extended = -1
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" { silent = ["range_before_a_brace_in_toe_walking", "stiff_plate_before_a_brace"] }
}

case "toe walking without a known cause that looks like jump: the spastic patterns are not used" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "idiopathic_toe_walking"
      distribution    = "both_legs"
      age             = 7
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
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "insole", pressure_system = "left_to_clinician" }
    findings = { jump = false }
  }
}

case "toe walking without a known cause that looks like apparent equinus: the spastic patterns are not used" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "idiopathic_toe_walking"
      distribution    = "both_legs"
      age             = 7
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
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "insole", pressure_system = "left_to_clinician" }
    findings = { apparent_equinus = false }
  }
}

case "toe walking without a known cause that looks like crouch: the spastic patterns are not used" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "idiopathic_toe_walking"
      distribution    = "both_legs"
      age             = 7
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
    }
  }
  expect "left" {
    choices  = { device = "insole", pressure_system = "left_to_clinician" }
    findings = { crouch = false }
  }
}

case "toe walking without a known cause that looks like a drop foot: the spastic patterns are not used" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "idiopathic_toe_walking"
      distribution    = "both_legs"
      age             = 7
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = 0
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices  = { device = "insole", pressure_system = "left_to_clinician" }
    findings = { drop_foot = false }
  }
}

case "toe walking without a known cause that looks like a knee that goes back: the spastic patterns are not used" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "idiopathic_toe_walking"
      distribution    = "both_legs"
      age             = 7
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      knee_extension                   = 0
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "snaps_back"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "insole", pressure_system = "left_to_clinician" }
    findings = { true_equinus = false }
  }
}

case "toe walking of one leg that looks like type 3: not used either" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "idiopathic_toe_walking"
      distribution    = "one_side"
      age             = 7
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices  = { device = "insole" }
    findings = { type_3 = false }
  }
}
