# Worked cases: levels of gross motor function, and cut-offs of range.

case "level I with 5 deg: don't treat the angle alone" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group      = "cerebral_palsy"
      gross_motor_function = "I"
    }
    left { ankle_dorsiflexion_knee_extended = 5 }
  }
  expect "left" { cautions = ["range_decides_alone"] }
  expect "person" {
    findings = { stands_more_than_walks = false }
    silent   = ["hold_the_foot_for_standing"]
  }
}

case "level II with 5 deg: don't treat the angle alone" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group      = "cerebral_palsy"
      gross_motor_function = "II"
    }
    left { ankle_dorsiflexion_knee_extended = 5 }
  }
  expect "left" { cautions = ["range_decides_alone"] }
  expect "person" {
    findings = { stands_more_than_walks = false }
    silent   = ["hold_the_foot_for_standing"]
  }
}

case "level II with 6 deg: range does not ask for treatment" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group      = "cerebral_palsy"
      gross_motor_function = "II"
    }
    left { ankle_dorsiflexion_knee_extended = 6 }
  }
  expect "left" { silent = ["range_decides_alone"] }
  expect "person" {
    findings = { stands_more_than_walks = false }
    silent   = ["hold_the_foot_for_standing"]
  }
}

case "level III: walks with a device, not in that study" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group      = "cerebral_palsy"
      gross_motor_function = "III"
    }
    left { ankle_dorsiflexion_knee_extended = 5 }
  }
  expect "left" { silent = ["range_decides_alone"] }
  expect "person" {
    findings = { stands_more_than_walks = false }
    silent   = ["hold_the_foot_for_standing"]
  }
}

case "level IV: the foot is held for sitting, transfers and standing" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group      = "cerebral_palsy"
      gross_motor_function = "IV"
    }
    left { ankle_dorsiflexion_knee_extended = 5 }
  }
  expect "left" { silent = ["range_decides_alone"] }
  expect "person" {
    findings = { stands_more_than_walks = true }
    fires    = ["hold_the_foot_for_standing"]
  }
}

case "level V: the foot is held for sitting and supported standing" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group      = "cerebral_palsy"
      gross_motor_function = "V"
    }
    left { ankle_dorsiflexion_knee_extended = 5 }
  }
  expect "left" { silent = ["range_decides_alone"] }
  expect "person" {
    findings = { stands_more_than_walks = true }
    fires    = ["hold_the_foot_for_standing"]
  }
}

case "level V without any gait seen: rigid, for the position of the foot" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group      = "cerebral_palsy"
      age                  = 9
      gross_motor_function = "V"
      distribution         = "all_four_limbs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 2
      plantarflexor_tone               = "1"
      plantarflexor_power              = "2"
      midfoot_break                    = "none"
    }
  }
  expect "left" { choices = { device = "rigid (provisional)" } }
}

case "brain injury: levels of gross motor function are not asked for" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { diagnosis_group = "brain_injury" }
    left { ankle_dorsiflexion_knee_extended = 12 }
  }
  expect "person" {
    findings = { stands_more_than_walks = false }
    silent   = ["hold_the_foot_for_standing"]
  }
}

case "level II, 4 years, 3 deg, true equinus: a cast for the range stands beside the devices for the pattern" {
  basis = "published"
  cites = ["cottalorda_2000", "range_cut_offs"]
  given {
    device_for = ["left"]
    person {
      diagnosis_group      = "cerebral_palsy"
      age                  = 4
      distribution         = "both_legs"
      gross_motor_function = "II"
    }
    left {
      ankle_dorsiflexion_knee_extended = 3
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
  expect "left" {
    choices  = { device = "open: posterior_leaf_spring, articulated, rigid, refer_serial_casting" }
    fires    = ["cast_a_young_short_calf", "spring_or_hinge_for_true_equinus"]
    cautions = ["range_decides_alone"]
  }
}
