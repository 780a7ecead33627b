# Worked cases: crouch with contracture, where published advice disagrees. Limits are tried on the limit and one degree to
# either side.

case "crouch, knee 14 deg short of straight: below the disputed limit" {
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
      knee_extension                   = -14
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
    choices  = { device = "anterior_shell_ground_reaction" }
    findings = { crouch = true, crouch_contracted = false, knee_beyond_reports = false }
    fires    = ["ground_reaction_for_crouch"]
    silent   = ["surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture", "contracture_limit_disputed", "contracture_beyond_reports"]
  }
}

case "crouch, knee 15 deg short: one study rules the device out, another does not" {
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
      knee_extension                   = -15
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
    choices  = { device = "open: anterior_shell_ground_reaction, refer_surgical_opinion" }
    findings = { crouch = true, crouch_contracted = true, knee_beyond_reports = false }
    fires    = ["surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture"]
    silent   = ["ground_reaction_for_crouch", "contracture_beyond_reports"]
    cautions = ["contracture_limit_disputed"]
  }
}

case "crouch, knee 16 deg short: disputed" {
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
      knee_extension                   = -16
      hip_extension                    = 0
      midfoot_break                    = "none"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices  = { device = "open: anterior_shell_ground_reaction, refer_surgical_opinion" }
    findings = { crouch = true, crouch_contracted = true, knee_beyond_reports = false }
    fires    = ["surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture"]
    silent   = ["ground_reaction_for_crouch", "contracture_beyond_reports"]
    cautions = ["contracture_limit_disputed"]
  }
}

case "crouch, hip 14 deg short: below the disputed limit" {
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
      hip_extension                    = -14
      midfoot_break                    = "none"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices  = { device = "anterior_shell_ground_reaction" }
    findings = { crouch = true, crouch_contracted = false, knee_beyond_reports = false }
    fires    = ["ground_reaction_for_crouch"]
    silent   = ["surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture", "contracture_limit_disputed", "contracture_beyond_reports"]
  }
}

case "crouch, hip 15 deg short: disputed" {
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
      hip_extension                    = -15
      midfoot_break                    = "none"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: anterior_shell_ground_reaction, refer_surgical_opinion" }
    findings = { crouch = true, crouch_contracted = true, knee_beyond_reports = false }
    fires    = ["surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture"]
    silent   = ["ground_reaction_for_crouch", "contracture_beyond_reports"]
    cautions = ["contracture_limit_disputed"]
  }
}

case "crouch, hip 16 deg short: disputed" {
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
      hip_extension                    = -16
      midfoot_break                    = "none"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: anterior_shell_ground_reaction, refer_surgical_opinion" }
    findings = { crouch = true, crouch_contracted = true, knee_beyond_reports = false }
    fires    = ["surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture"]
    silent   = ["ground_reaction_for_crouch", "contracture_beyond_reports"]
    cautions = ["contracture_limit_disputed"]
  }
}

case "crouch, knee 19 deg short: disputed" {
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
      knee_extension                   = -19
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
    choices  = { device = "open: anterior_shell_ground_reaction, refer_surgical_opinion" }
    findings = { crouch = true, crouch_contracted = true, knee_beyond_reports = false }
    fires    = ["surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture"]
    silent   = ["ground_reaction_for_crouch", "contracture_beyond_reports"]
    cautions = ["contracture_limit_disputed"]
  }
}

case "both knees contracted by 20 deg, as in the person of whom a case was reported" {
  basis = "published"
  cites = ["contracted_knees_case"]
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
      knee_extension                   = -20
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
      knee_extension                   = -20
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
    choices  = { device = "open: anterior_shell_ground_reaction, refer_surgical_opinion" }
    findings = { knee_beyond_reports = false }
    fires    = ["surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture"]
    silent   = ["contracture_beyond_reports"]
    cautions = ["contracture_limit_disputed", "limb_safety.contracture_beyond_the_rigid_trial"]
  }
  expect "right" {
    choices  = { device = "open: anterior_shell_ground_reaction, refer_surgical_opinion" }
    findings = { knee_beyond_reports = false }
    fires    = ["surgical_opinion_for_contracted_crouch", "ground_reaction_in_spite_of_contracture"]
    silent   = ["contracture_beyond_reports"]
    cautions = ["contracture_limit_disputed", "limb_safety.contracture_beyond_the_rigid_trial"]
  }
}

case "crouch, knee 21 deg short: beyond anything reported, a surgical opinion first" {
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
      knee_extension                   = -21
      hip_extension                    = -5
      midfoot_break                    = "none"
      gait_midstance_ankle             = "too_far_forward"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "stays_flexed"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices  = { device = "refer_surgical_opinion" }
    findings = { crouch = true, crouch_contracted = true, knee_beyond_reports = true }
    fires    = ["surgical_opinion_for_contracted_crouch"]
    silent   = ["ground_reaction_for_crouch", "ground_reaction_in_spite_of_contracture", "contracture_limit_disputed"]
    cautions = ["contracture_beyond_reports"]
  }
}

case "knee 25 deg short, but no crouch: the limits of the ground-reaction device are not asked" {
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
      knee_extension                   = -25
      hip_extension                    = -20
      midfoot_break                    = "none"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "too_flexed"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "does_not_extend"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    findings = { crouch = false, crouch_contracted = false, knee_beyond_reports = true }
    silent   = ["contracture_beyond_reports", "surgical_opinion_for_contracted_crouch", "contracture_limit_disputed"]
    cautions = ["limb_safety.contracture_beyond_the_rigid_trial"]
  }
}

case "crouch in an adult after a brain injury: the same leg, without the note on trials in cerebral palsy" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "brain_injury"
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
    }
  }
  expect "right" {
    choices  = { device = "anterior_shell_ground_reaction" }
    silent   = ["stiffness_by_trial"]
    cautions = ["crouch_may_be_past_injections"]
  }
}
