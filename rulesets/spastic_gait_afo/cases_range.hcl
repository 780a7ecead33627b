# Worked cases: the short calf, and casting of young children.

case "ankle 1 deg short of plantigrade with the knee straight: cast there; and no longer a plain drop foot" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = -1
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices  = { cast_ankle_angle = "-1 deg", device = "left_to_clinician" }
    findings = { "limb_safety.equinus" = true, drop_foot = false }
    fires    = ["cast_where_the_calf_stops"]
    silent   = ["spring_or_hinge_for_drop_foot"]
    cautions = ["no_published_pattern"]
  }
}

case "ankle just plantigrade with the knee straight: no limit to the cast from the calf" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 0
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices  = { cast_ankle_angle = "left_to_clinician" }
    findings = { "limb_safety.equinus" = false, drop_foot = true }
    fires    = ["spring_or_hinge_for_drop_foot"]
    silent   = ["cast_where_the_calf_stops"]
  }
}

case "equinus of 12 deg with tone and a weak calf: cast at its range, both sides of the dispute named" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    right {
      ankle_dorsiflexion_knee_extended = -12
      plantarflexor_tone               = "2"
      plantarflexor_power              = "3"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices = {
      cast_ankle_angle = "-12 deg"
      device           = "open: posterior_leaf_spring, articulated, rigid"
      articulation     = "open: none, plantarflexion_stop"
    }
    fires    = ["cast_where_the_calf_stops"]
    cautions = ["hinge_or_hold"]
  }
}

case "true equinus at 3 years with 3 deg, like the children of the casting trial" {
  basis = "published"
  cites = ["cottalorda_2000"]
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 3
      distribution    = "both_legs"
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
    findings = { young_child_to_cast = true, range_to_be_gained = true }
    fires    = ["cast_a_young_short_calf"]
  }
}

case "true equinus at 5 years with 4 deg: serial casting is named beside the devices" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 5
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 4
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
    findings = { young_child_to_cast = true, range_to_be_gained = true }
    fires    = ["cast_a_young_short_calf"]
  }
}

case "true equinus at 5 years with 5 deg: serial casting is named" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 5
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 5
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
    findings = { young_child_to_cast = true, range_to_be_gained = true }
    fires    = ["cast_a_young_short_calf"]
  }
}

case "true equinus at 5 years with 6 deg: it is not" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 5
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 6
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
    choices  = { device = "open: posterior_leaf_spring, articulated, rigid" }
    findings = { young_child_to_cast = false, range_to_be_gained = false }
    silent   = ["cast_a_young_short_calf"]
  }
}

case "true equinus at 6 years with 5 deg: past the age of that trial" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 6
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 5
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
    choices  = { device = "open: posterior_leaf_spring, articulated, rigid" }
    findings = { young_child_to_cast = false, range_to_be_gained = true }
    silent   = ["cast_a_young_short_calf"]
  }
}

case "true equinus at 7 years with 5 deg: past the age of that trial" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 7
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 5
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
    choices  = { device = "open: posterior_leaf_spring, articulated, rigid" }
    findings = { young_child_to_cast = false, range_to_be_gained = true }
    silent   = ["cast_a_young_short_calf"]
  }
}

case "a young child in jump with the push lost: a rigid device or casts" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 4
      distribution    = "both_legs"
    }
    right {
      ankle_dorsiflexion_knee_extended = 0
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices = { device = "open: rigid, refer_serial_casting" }
    fires   = ["cast_a_young_short_calf", "rigid_where_the_push_is_lost"]
  }
}

case "a young child with a drop foot and 3 deg: not the gait that was cast" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 4
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 3
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    findings = { young_child_to_cast = true }
    silent   = ["cast_a_young_short_calf"]
  }
}

case "low bone density: the safety of the limb takes casting away" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group  = "cerebral_palsy"
      age              = 4
      distribution     = "both_legs"
      low_bone_density = true
    }
    left {
      ankle_dorsiflexion_knee_extended = 0
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
    choices = { device = "open: posterior_leaf_spring, articulated, rigid" }
    fires   = ["cast_a_young_short_calf"]
  }
  expect "person" { fires = ["limb_safety.no_casting_of_brittle_bone"] }
}

case "a short calf after a spinal cord lesion at 5 years: the casting trial was in cerebral palsy" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "spinal_cord_lesion"
      age             = 5
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 0
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
    findings = { young_child_to_cast = false }
    silent   = ["cast_a_young_short_calf", "range_decides_alone"]
  }
}

case "injected six weeks ago: the safety of the limb asks for an early review" {
  basis = "common_practice"
  given {
    date       = "2026-11-20"
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 8
      last_injection  = "2026-10-09"
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
  }
  expect "person" {
    findings = { "limb_safety.injected_lately" = true }
    fires    = ["limb_safety.review_after_an_injection"]
  }
}
