# Worked cases: the patterns of the sagittal plane. Invented people; what is expected was worked out by hand from the
# published table and from what each rule is for.

case "drop foot: the foot hangs in swing, stance as usual, a supple calf" {
  basis = "published"
  cites = ["sagittal_patterns"]
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
    }
  }
  expect "left" {
    choices = {
      device           = "open: posterior_leaf_spring, articulated"
      articulation     = "plantarflexion_stop"
      pressure_system  = "against_foot_drop"
      shell_side       = "left_to_clinician"
      cast_ankle_angle = "left_to_clinician"
    }
    findings = { drop_foot = true, foot_hangs_in_swing = true, true_equinus = false, equinus_in_stance = false, jump = false, apparent_equinus = false, crouch = false, dorsiflexion_may_be_free = true, no_pattern = false }
    fires    = ["spring_or_hinge_for_drop_foot", "lift_the_hanging_foot"]
    silent   = ["spring_or_hinge_for_true_equinus", "hold_the_ankle", "stop_plantarflexion", "stop_the_knee_going_back", "cast_where_the_calf_stops", "hinge_or_hold", "no_published_pattern"]
  }
}

case "true equinus: held back in stance over a straight knee, a supple calf" {
  basis = "published"
  cites = ["sagittal_patterns"]
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
    }
  }
  expect "right" {
    choices = {
      device          = "open: posterior_leaf_spring, articulated"
      articulation    = "plantarflexion_stop"
      pressure_system = "against_equinus"
      shell_side      = "posterior"
    }
    findings = { true_equinus = true, equinus_in_stance = true, drop_foot = false, foot_hangs_in_swing = false, knee_goes_back = false, knee_and_hip_flexed = false, hinge_paired = true, hinge_disputed = false, knee_or_hip_poorly_held = false, push_of_the_calf_lost = false, no_pattern = false }
    fires    = ["spring_or_hinge_for_true_equinus", "stop_plantarflexion"]
    silent   = ["spring_or_hinge_for_drop_foot", "hold_where_a_hinge_is_disputed", "hold_the_ankle", "hinge_for_type_2", "stop_the_knee_going_back", "lift_the_hanging_foot", "hinge_or_hold", "stiffness_by_trial"]
  }
}

case "equinus told by an early heel rise, and the knee snaps back" {
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
      gait_midstance_ankle             = "early_heel_rise"
      gait_midstance_knee              = "snaps_back"
      gait_terminal_stance_knee        = "hyperextends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices = {
      device          = "open: posterior_leaf_spring, articulated"
      pressure_system = "against_knee_hyperextension"
      shell_side      = "posterior"
    }
    findings = { true_equinus = true, equinus_in_stance = true, knee_goes_back = true }
    fires    = ["spring_or_hinge_for_true_equinus", "stop_the_knee_going_back"]
    silent   = ["stop_plantarflexion"]
  }
}

case "jump: equinus, knee and hip too flexed, the knee still straightens late in stance" {
  basis = "published"
  cites = ["sagittal_patterns"]
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
      knee_extension                   = -5
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices = {
      device          = "open: posterior_leaf_spring, articulated, rigid"
      articulation    = "plantarflexion_stop"
      pressure_system = "against_equinus"
    }
    findings = { jump = true, true_equinus = false, apparent_equinus = false, crouch = false, knee_and_hip_flexed = true, push_of_the_calf_lost = false, hinge_paired = false, type_4 = false, no_pattern = false }
    fires    = ["three_devices_for_jump", "free_dorsiflexion_in_jump", "stop_plantarflexion"]
    silent   = ["rigid_where_the_push_is_lost", "rigid_or_ground_reaction_for_type_4", "hold_the_ankle", "hold_where_a_hinge_is_disputed", "spring_or_hinge_for_true_equinus"]
    cautions = ["stiffness_by_trial"]
  }
}

case "jump with the push of the calf lost: the knee stays bent late in stance" {
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
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices  = { device = "rigid", articulation = "none" }
    findings = { jump = true, push_of_the_calf_lost = true }
    fires    = ["rigid_where_the_push_is_lost"]
    silent   = ["three_devices_for_jump", "free_dorsiflexion_in_jump"]
  }
}

case "jump with a midfoot that breaks: the push of the calf is lost there" {
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
      midfoot_break                    = "marked"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices  = { device = "rigid", articulation = "none" }
    findings = { push_of_the_calf_lost = true, dorsiflexion_may_be_free = false }
    fires    = ["rigid_where_the_push_is_lost", "hold_the_ankle"]
    cautions = ["midfoot_hides_equinus"]
  }
}

case "jump with the push kept, and a calf too tight for free dorsiflexion: the ankle is held" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 3
      plantarflexor_tone               = "1"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices = { device = "open: posterior_leaf_spring, articulated, rigid", articulation = "none" }
    fires   = ["three_devices_for_jump", "hold_the_ankle"]
    silent  = ["free_dorsiflexion_in_jump"]
  }
}

case "apparent equinus: the ankle moves as usual, knee and hip are too flexed" {
  basis = "published"
  cites = ["sagittal_patterns"]
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
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices = {
      device          = "open: posterior_leaf_spring, rigid, anterior_shell_ground_reaction"
      articulation    = "none"
      pressure_system = "left_to_clinician"
    }
    findings = { apparent_equinus = true, jump = false, crouch = false, drop_foot = false, true_equinus = false, no_pattern = false }
    fires    = ["no_hinge_for_apparent_equinus"]
    silent   = ["three_devices_for_jump", "ground_reaction_for_crouch", "stop_plantarflexion", "keep_the_shank_back", "crouch_may_be_past_injections", "no_free_dorsiflexion_in_crouch"]
    cautions = ["leave_the_calf_strong", "stiffness_by_trial"]
  }
}

case "crouch: ankle too far forward, knee and hip too flexed, little contracture" {
  basis = "published"
  cites = ["sagittal_patterns"]
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
      knee_extension                   = -5
      hip_extension                    = -5
      midfoot_break                    = "none"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices = {
      device          = "anterior_shell_ground_reaction"
      articulation    = "none"
      pressure_system = "against_shank_advance"
      shell_side      = "anterior"
    }
    findings = { crouch = true, jump = false, apparent_equinus = false, crouch_contracted = false, knee_beyond_reports = false, no_pattern = false }
    fires    = ["ground_reaction_for_crouch", "no_free_dorsiflexion_in_crouch", "keep_the_shank_back"]
    silent   = ["no_hinge_for_apparent_equinus", "surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture", "hold_the_ankle", "limb_safety.contracture_beyond_the_rigid_trial", "contracture_limit_disputed", "contracture_beyond_reports", "leave_the_calf_strong"]
    cautions = ["crouch_may_be_past_injections", "stiffness_by_trial"]
  }
}

case "none of the patterns: a knee that goes back over an ankle that moves as usual" {
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
      gait_midstance_knee              = "hyperextends_slowly"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "left_to_clinician", pressure_system = "against_knee_hyperextension" }
    findings = { no_pattern = true, true_equinus = false, drop_foot = false, knee_goes_back = true }
    fires    = ["stop_the_knee_going_back"]
    silent   = ["spring_or_hinge_for_true_equinus"]
    cautions = ["no_published_pattern"]
  }
}

case "walks as usual on this leg: no pattern, and nothing is advised" {
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
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices = {
      device          = "left_to_clinician"
      articulation    = "left_to_clinician"
      pressure_system = "left_to_clinician"
    }
    findings = { no_pattern = true, foot_hangs_in_swing = false, drop_foot = false }
    silent   = ["spring_or_hinge_for_drop_foot", "lift_the_hanging_foot"]
    cautions = ["no_published_pattern"]
  }
}
