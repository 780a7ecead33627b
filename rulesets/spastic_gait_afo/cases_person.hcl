# Worked cases: the foot, the goal, the age, the diagnosis.

case "the foot points outwards in crouch: the lever is short" {
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
      gait_foot_progression            = "out_toeing_marked"
      thigh_foot_angle                 = 32
    }
  }
  expect "right" { cautions = ["foot_turned_out"] }
}

case "the foot points as usual" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diagnosis_group = "cerebral_palsy"
      distribution    = "both_legs"
    }
    right { gait_foot_progression = "usual" }
  }
  expect "right" { silent = ["foot_turned_out"] }
}

case "a slight midfoot break: it hides an equinus" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { diagnosis_group = "cerebral_palsy" }
    left {
      midfoot_break        = "slight"
      gait_midstance_ankle = "moves_forward_steadily"
    }
  }
  expect "left" { cautions = ["midfoot_hides_equinus"] }
}

case "no break by hand, but the midfoot gives in midstance" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { diagnosis_group = "cerebral_palsy" }
    left {
      midfoot_break        = "none"
      gait_midstance_ankle = "midfoot_gives"
    }
  }
  expect "left" { cautions = ["midfoot_hides_equinus"] }
}

case "a midfoot that holds" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { diagnosis_group = "cerebral_palsy" }
    left {
      midfoot_break        = "none"
      gait_midstance_ankle = "held_back"
    }
  }
  expect "left" { silent = ["midfoot_hides_equinus"] }
}

case "the heel stands in valgus and corrects by hand" {
  basis = "published"
  cites = ["carmick_2012"]
  given {
    device_for = ["left"]
    person { diagnosis_group = "cerebral_palsy" }
    left {
      hindfoot_alignment        = "valgus"
      hindfoot_corrects_by_hand = "fully"
    }
  }
  expect "left" { cautions = ["heel_out_of_line"] }
}

case "the heel stands in varus" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { diagnosis_group = "cerebral_palsy" }
    right { hindfoot_alignment = "varus" }
  }
  expect "right" { cautions = ["heel_out_of_line"] }
}

case "the heel stands straight" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { diagnosis_group = "cerebral_palsy" }
    right { hindfoot_alignment = "neutral" }
  }
  expect "right" { silent = ["heel_out_of_line"] }
}

case "18 years: the guideline for under 19s asks for a goal and a talk" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 18
    }
    left { ankle_dorsiflexion_knee_extended = 12 }
  }
  expect "person" { cautions = ["goal_and_talk"] }
}

case "19 years: past that guideline" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 19
    }
    left { ankle_dorsiflexion_knee_extended = 12 }
  }
  expect "person" { silent = ["goal_and_talk"] }
}

case "20 years: past that guideline" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 20
    }
    left { ankle_dorsiflexion_knee_extended = 12 }
  }
  expect "person" { silent = ["goal_and_talk"] }
}

case "the goal is to keep range: long hours, and unproven in the long run" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 10
      main_goal       = "keep_range"
    }
    left { ankle_dorsiflexion_knee_extended = 3 }
  }
  expect "person" { cautions = ["stretch_needs_hours", "goal_and_talk"] }
}

case "the goal is mobility: worn for walking" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 30
      main_goal       = "mobility"
    }
    left { ankle_dorsiflexion_knee_extended = 3 }
  }
  expect "person" { silent = ["stretch_needs_hours"] }
}

case "an adult with a brain injury: the patterns are not published for that" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "brain_injury"
      age             = 44
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
  expect "left" { fires = ["spring_or_hinge_for_true_equinus"] }
  expect "person" { cautions = ["patterns_from_cerebral_palsy"] }
}

case "an adult with a spinal cord lesion: the patterns are not published for that" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "spinal_cord_lesion"
      age             = 44
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
  expect "left" { fires = ["spring_or_hinge_for_true_equinus"] }
  expect "person" { cautions = ["patterns_from_cerebral_palsy"] }
}

case "an adult with multiple sclerosis: the patterns are not published for that" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "multiple_sclerosis"
      age             = 44
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
  expect "left" { fires = ["spring_or_hinge_for_true_equinus"] }
  expect "person" { cautions = ["patterns_from_cerebral_palsy"] }
}

case "an adult with cerebral palsy: the patterns are published for that" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      age             = 44
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
  expect "left" { fires = ["spring_or_hinge_for_true_equinus"] }
  expect "person" { silent = ["patterns_from_cerebral_palsy"] }
}

case "marked involuntary movement: the safety of the limb slows wearing in" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group      = "cerebral_palsy"
      age                  = 12
      involuntary_movement = "marked"
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
  expect "person" { fires = ["limb_safety.watch_a_limb_that_moves"] }
}

case "foot drop after a stroke: another ruleset is for that" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { diagnosis_group = "stroke" }
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
  expect "person" { applies = "no" }
}
