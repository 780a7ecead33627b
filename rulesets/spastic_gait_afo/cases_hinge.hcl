# Worked cases: may dorsiflexion be free? Each of the four conditions on its limit and to either side of it.

case "dorsiflexion 9 with the knee straight: too little for a free hinge" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 9
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
    choices  = { device = "open: posterior_leaf_spring, articulated, rigid", articulation = "open: none, plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = false, hinge_disputed = true }
    fires    = ["hold_where_a_hinge_is_disputed", "spring_or_hinge_for_true_equinus"]
    cautions = ["hinge_or_hold"]
  }
}

case "dorsiflexion 10 with the knee straight: just enough for a free hinge" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 10
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
    choices  = { device = "open: posterior_leaf_spring, articulated", articulation = "plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = true, hinge_disputed = false }
    silent   = ["hold_where_a_hinge_is_disputed", "hinge_or_hold"]
  }
}

case "dorsiflexion 11 with the knee straight: enough for a free hinge" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 11
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
    choices  = { device = "open: posterior_leaf_spring, articulated", articulation = "plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = true, hinge_disputed = false }
    silent   = ["hold_where_a_hinge_is_disputed", "hinge_or_hold"]
  }
}

case "no tone in the calf: a free hinge" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "0"
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
    choices  = { device = "open: posterior_leaf_spring, articulated", articulation = "plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = true, hinge_disputed = false }
    silent   = ["hold_where_a_hinge_is_disputed", "hinge_or_hold"]
  }
}

case "tone 1: still a free hinge" {
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
    }
  }
  expect "left" {
    choices  = { device = "open: posterior_leaf_spring, articulated", articulation = "plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = true, hinge_disputed = false }
    silent   = ["hold_where_a_hinge_is_disputed", "hinge_or_hold"]
  }
}

case "tone 1+: the ankle is held by one source" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1+"
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
    choices  = { device = "open: posterior_leaf_spring, articulated, rigid", articulation = "open: none, plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = false, hinge_disputed = true }
    fires    = ["hold_where_a_hinge_is_disputed", "spring_or_hinge_for_true_equinus"]
    cautions = ["hinge_or_hold"]
  }
}

case "calf power 4-: too weak to hold the shank at a free hinge" {
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
      plantarflexor_power              = "4-"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: posterior_leaf_spring, articulated, rigid", articulation = "open: none, plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = false, hinge_disputed = true }
    fires    = ["hold_where_a_hinge_is_disputed", "spring_or_hinge_for_true_equinus"]
    cautions = ["hinge_or_hold"]
  }
}

case "calf power 4: strong enough for a free hinge" {
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
    }
  }
  expect "left" {
    choices  = { device = "open: posterior_leaf_spring, articulated", articulation = "plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = true, hinge_disputed = false }
    silent   = ["hold_where_a_hinge_is_disputed", "hinge_or_hold"]
  }
}

case "calf power 4+: strong enough for a free hinge" {
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
      plantarflexor_power              = "4+"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: posterior_leaf_spring, articulated", articulation = "plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = true, hinge_disputed = false }
    silent   = ["hold_where_a_hinge_is_disputed", "hinge_or_hold"]
  }
}

case "a slight midfoot break: the ankle is held by one source" {
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
      midfoot_break                    = "slight"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: posterior_leaf_spring, articulated, rigid", articulation = "open: none, plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = false, hinge_disputed = true }
    fires    = ["hold_where_a_hinge_is_disputed", "spring_or_hinge_for_true_equinus"]
    cautions = ["hinge_or_hold"]
  }
}

case "all four conditions are met, but the hip does not extend late in stance: disputed all the same" {
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
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices  = { device = "open: posterior_leaf_spring, articulated, rigid", articulation = "open: none, plantarflexion_stop" }
    findings = { dorsiflexion_may_be_free = true, knee_or_hip_poorly_held = true, hinge_disputed = true, knee_and_hip_flexed = false }
    fires    = ["hold_where_a_hinge_is_disputed"]
    cautions = ["hinge_or_hold"]
  }
}

case "all four conditions are met, but the knee stays bent late in stance: disputed all the same" {
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
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    findings = { knee_or_hip_poorly_held = true, hinge_disputed = true }
    fires    = ["hold_where_a_hinge_is_disputed"]
  }
}

case "drop foot with a calf of 6 deg: a hinge by the table, held by the four conditions" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 6
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
    choices  = { device = "open: posterior_leaf_spring, articulated", articulation = "open: none, plantarflexion_stop" }
    findings = { drop_foot = true, hinge_disputed = false, dorsiflexion_may_be_free = false }
    fires    = ["spring_or_hinge_for_drop_foot", "hold_the_ankle"]
    cautions = ["hinge_or_hold"]
  }
}
