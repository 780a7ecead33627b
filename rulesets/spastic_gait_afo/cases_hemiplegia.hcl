# Worked cases: the types of hemiplegia.

case "type 1: the foot hangs, stance as usual; the sides differ, as they do in hemiplegia" {
  basis = "published"
  cites = ["winters_1987"]
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
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
    }
    right {
      gait_midstance_ankle      = "early_heel_rise"
      gait_midstance_knee       = "near_straight"
      gait_terminal_stance_knee = "extends"
      gait_terminal_stance_hip  = "extends"
      gait_swing_ankle          = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: posterior_leaf_spring, articulated" }
    findings = { drop_foot = true, type_2 = false, type_3 = false, type_4 = false }
    fires    = ["spring_or_hinge_for_drop_foot"]
    silent   = ["legs_differ", "hinge_for_type_2"]
  }
  expect "person" { findings = { one_sided = true, spastic = true } }
}

case "type 2a: foot hangs and calf holds it down in stance, knee straight, range there: a hinge" {
  basis = "published"
  cites = ["winters_1987", "pattern_teaching"]
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
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
      gait_swing_ankle                 = "hangs"
      gait_swing_knee                  = "bends_enough"
    }
  }
  expect "right" {
    choices = {
      device          = "articulated"
      articulation    = "plantarflexion_stop"
      pressure_system = "against_equinus"
    }
    findings = { type_2 = true, true_equinus = true, type_3 = false }
    fires    = ["hinge_for_type_2", "spring_or_hinge_for_true_equinus"]
    silent   = ["hold_where_a_hinge_is_disputed"]
  }
}

case "type 2b: the same with a knee that goes back" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
    }
    left {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "hyperextends_slowly"
      gait_terminal_stance_knee        = "hyperextends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "turns_in"
      gait_swing_knee                  = "bends_enough"
    }
  }
  expect "left" {
    choices  = { device = "articulated", pressure_system = "against_knee_hyperextension" }
    findings = { type_2 = true, knee_goes_back = true }
    fires    = ["hinge_for_type_2", "stop_the_knee_going_back"]
  }
}

case "type 2 with the range not there: no hinge before range is gained" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
    }
    right {
      ankle_dorsiflexion_knee_extended = 2
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
      gait_swing_knee                  = "bends_enough"
    }
  }
  expect "right" {
    choices  = { device = "open: posterior_leaf_spring, articulated, rigid", articulation = "open: none, plantarflexion_stop" }
    findings = { type_2 = true, dorsiflexion_may_be_free = false, range_to_be_gained = true }
    silent   = ["hinge_for_type_2"]
    cautions = ["hinge_or_hold"]
  }
}

case "one side, but the knee is stiff in swing: no longer type 2; by its stance still true equinus" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
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
      gait_swing_ankle                 = "hangs"
      gait_swing_knee                  = "stiff"
    }
  }
  expect "right" {
    choices  = { device = "open: posterior_leaf_spring, articulated" }
    findings = { type_2 = false, true_equinus = true }
    silent   = ["hinge_for_type_2"]
  }
}

case "equinus with a hanging foot on both sides: the types of hemiplegia are not for it" {
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
      gait_swing_ankle                 = "hangs"
      gait_swing_knee                  = "bends_enough"
    }
  }
  expect "right" {
    findings = { type_2 = false }
    silent   = ["hinge_for_type_2"]
  }
  expect "person" { findings = { one_sided = false } }
}

case "type 3: equinus and a bent knee, hip free, the knee straightens late in stance" {
  basis = "published"
  cites = ["winters_1987", "pattern_teaching"]
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
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
    choices  = { device = "articulated", articulation = "plantarflexion_stop" }
    findings = { type_3 = true, type_4 = false, jump = false, hinge_paired = true, no_pattern = false }
    fires    = ["hinge_for_type_3"]
    silent   = ["rigid_where_the_push_is_lost", "hold_where_a_hinge_is_disputed", "hold_the_ankle"]
  }
}

case "type 3 with a tight calf: a hinge by one source, held by another" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
    }
    left {
      ankle_dorsiflexion_knee_extended = 0
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
    choices  = { device = "open: articulated, rigid", articulation = "open: none, plantarflexion_stop" }
    findings = { hinge_disputed = true }
    fires    = ["hinge_for_type_3", "hold_where_a_hinge_is_disputed"]
    cautions = ["hinge_or_hold"]
  }
}

case "type 3 with the push of the calf lost: rigid" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
    }
    right {
      ankle_dorsiflexion_knee_extended = 12
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "right" {
    choices  = { device = "rigid", articulation = "none" }
    findings = { type_3 = true, hinge_paired = false }
    fires    = ["rigid_where_the_push_is_lost"]
    silent   = ["hinge_for_type_3"]
  }
}

case "equinus and a bent knee with the hip free, on both sides: none of the patterns" {
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
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "right" {
    choices  = { device = "left_to_clinician" }
    findings = { type_3 = false, no_pattern = true }
    silent   = ["hinge_for_type_3"]
    cautions = ["no_published_pattern"]
  }
}

case "type 4: ankle, knee and hip of one side" {
  basis = "published"
  cites = ["winters_1987", "pattern_teaching"]
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
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
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices  = { device = "open: rigid, anterior_shell_ground_reaction", articulation = "none" }
    findings = { type_4 = true, type_3 = false, jump = true }
    fires    = ["rigid_or_ground_reaction_for_type_4"]
    silent   = ["three_devices_for_jump", "free_dorsiflexion_in_jump", "hinge_for_type_3"]
  }
}

case "type 4 with the push of the calf lost: the same two devices" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
    }
    right {
      ankle_dorsiflexion_knee_extended = 12
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
    choices = { device = "open: rigid, anterior_shell_ground_reaction", articulation = "none" }
    fires   = ["rigid_or_ground_reaction_for_type_4"]
    silent  = ["rigid_where_the_push_is_lost"]
  }
}
