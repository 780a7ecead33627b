# Range, fixed shape and pain. Invented people unless a source is named; worked out by hand from the rules.

case "plantigrade on the left, 1 deg short on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      ankle_dorsiflexion_knee_extended = 0
      clonus_beats                     = 0
      clonus_sustained                 = false
    }
    right {
      ankle_dorsiflexion_knee_extended = -1
      clonus_beats                     = 0
      clonus_sustained                 = false
    }
  }
  expect "left" {
    choices = {
      articulation     = "left_to_clinician (not provisional)"
      cast_ankle_angle = "left_to_clinician (not provisional)"
    }
    findings = {
      equinus        = false
      equinus_severe = false
    }
    silent = ["never_cast_beyond_the_range", "no_free_joint_on_a_short_calf", "never_force_the_ankle"]
  }
  expect "right" {
    choices = {
      articulation     = "open: none, plantarflexion_stop, plantarflexion_resist, dorsiflexion_assist, dorsiflexion_stop, both_stops"
      cast_ankle_angle = "open: -60..-1 deg"
    }
    findings = {
      equinus        = true
      equinus_severe = false
    }
    fires    = ["never_cast_beyond_the_range", "no_free_joint_on_a_short_calf"]
    cautions = ["never_force_the_ankle"]
  }
}

case "1 deg past plantigrade" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left { ankle_dorsiflexion_knee_extended = 1 }
  }
  expect "left" {
    findings = { equinus = false }
    silent   = ["never_cast_beyond_the_range", "never_force_the_ankle", "tone_with_little_range"]
  }
}

case "10 deg short at ankle and knee on the left, 11 at the ankle on the right: the edge of a trial of stiff devices" {
  basis = "published"
  cites = ["kerkum_2013"]
  given {
    device_for = ["left", "right"]
    left {
      ankle_dorsiflexion_knee_extended = -10
      knee_extension                   = -10
    }
    right {
      ankle_dorsiflexion_knee_extended = -11
      knee_extension                   = 0
    }
  }
  expect "left" { silent = ["contracture_beyond_the_rigid_trial", "contracture_beyond_the_composite_trial"] }
  expect "right" {
    choices  = { cast_ankle_angle = "open: -60..-11 deg" }
    cautions = ["contracture_beyond_the_rigid_trial"]
  }
}

case "9 deg short at the ankle; knee 9 short on the left and 11 on the right" {
  basis = "published"
  cites = ["kerkum_2013"]
  given {
    device_for = ["left", "right"]
    left {
      ankle_dorsiflexion_knee_extended = -9
      knee_extension                   = -9
    }
    right {
      ankle_dorsiflexion_knee_extended = -9
      knee_extension                   = -11
    }
  }
  expect "left" { silent = ["contracture_beyond_the_rigid_trial"] }
  expect "right" { cautions = ["contracture_beyond_the_rigid_trial"] }
}

case "14 deg short on the left, 15 on the right: a trial of composite devices leaves out 15 and more" {
  basis = "published"
  cites = ["carbon_stroke_trial"]
  given {
    device_for = ["left", "right"]
    left { ankle_dorsiflexion_knee_extended = -14 }
    right { ankle_dorsiflexion_knee_extended = -15 }
  }
  expect "left" {
    cautions = ["contracture_beyond_the_rigid_trial"]
    silent   = ["contracture_beyond_the_composite_trial"]
  }
  expect "right" { cautions = ["contracture_beyond_the_composite_trial"] }
}

case "16 deg short" {
  basis = "published"
  cites = ["carbon_stroke_trial"]
  given {
    device_for = ["left"]
    left { ankle_dorsiflexion_knee_extended = -16 }
  }
  expect "left" {
    cautions = ["contracture_beyond_the_composite_trial"]
    silent   = ["equinus_severe"]
  }
}

case "20 deg short on the left, 21 on the right: beyond 20 an opinion comes first" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left { ankle_dorsiflexion_knee_extended = -20 }
    right { ankle_dorsiflexion_knee_extended = -21 }
  }
  expect "left" {
    findings = { equinus_severe = false }
    silent   = ["surgical_opinion_for_severe_equinus", "equinus_severe"]
  }
  expect "right" {
    choices = {
      device           = "refer_surgical_opinion"
      cast_ankle_angle = "open: -60..-21 deg"
    }
    findings = { equinus_severe = true }
    fires    = ["surgical_opinion_for_severe_equinus"]
    cautions = ["equinus_severe"]
  }
}

case "19 deg short" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left { ankle_dorsiflexion_knee_extended = -19 }
  }
  expect "left" {
    findings = { equinus_severe = false }
    silent   = ["surgical_opinion_for_severe_equinus"]
  }
}

case "tone 3 and 25 deg short: tone management and a surgical opinion stand beside each other" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left {
      plantarflexor_tone               = "3"
      ankle_dorsiflexion_knee_extended = -25
    }
  }
  expect "left" {
    choices = { device = "open: refer_tone_management, refer_surgical_opinion" }
    fires   = ["tone_management_first", "surgical_opinion_for_severe_equinus"]
  }
}

case "hard end of dorsiflexion on the left, firm on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left { ankle_end_feel = "hard" }
    right { ankle_end_feel = "firm" }
  }
  expect "left" {
    findings = { ankle_blocked = true }
    fires    = ["no_casting_against_bone"]
    cautions = ["hard_end_feel"]
  }
  expect "right" {
    findings = { ankle_blocked = false }
    silent   = ["no_casting_against_bone", "hard_end_feel"]
  }
}

case "hindfoot that no hand corrects, and one that corrects in part" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left { hindfoot_corrects_by_hand = "not_at_all" }
    right { hindfoot_corrects_by_hand = "partly" }
  }
  expect "left" {
    choices  = { hindfoot_in_cast = "accommodated (not provisional)" }
    findings = { hindfoot_fixed = true }
    fires    = ["accommodate_a_fixed_hindfoot"]
    cautions = ["hindfoot_fixed"]
  }
  expect "right" {
    choices  = { hindfoot_in_cast = "left_to_clinician (not provisional)" }
    findings = { hindfoot_fixed = false }
    silent   = ["accommodate_a_fixed_hindfoot", "hindfoot_fixed"]
  }
}

case "forefoot that no hand corrects, and one that corrects fully" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left { forefoot_corrects_by_hand = "not_at_all" }
    right { forefoot_corrects_by_hand = "fully" }
  }
  expect "left" {
    findings = { forefoot_fixed = true }
    cautions = ["forefoot_fixed"]
  }
  expect "right" {
    findings = { forefoot_fixed = false }
    silent   = ["forefoot_fixed"]
  }
}

case "ankle loose to inversion, and to eversion: no open spring" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left { ankle_sideways_stability = "loose_inversion" }
    right { ankle_sideways_stability = "loose_eversion" }
  }
  expect "left" {
    findings = { ankle_loose_sideways = true }
    fires    = ["no_open_spring_on_a_loose_ankle"]
    cautions = ["ankle_loose_sideways"]
  }
  expect "right" {
    findings = { ankle_loose_sideways = true }
    fires    = ["no_open_spring_on_a_loose_ankle"]
  }
}

case "ankle loose both ways on the left, stable on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left { ankle_sideways_stability = "loose_both" }
    right { ankle_sideways_stability = "stable" }
  }
  expect "left" {
    findings = { ankle_loose_sideways = true }
    cautions = ["ankle_loose_sideways"]
  }
  expect "right" {
    findings = { ankle_loose_sideways = false }
    silent   = ["no_open_spring_on_a_loose_ankle", "ankle_loose_sideways"]
  }
}

case "no pain on the left, pain of 1 at the foot on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      foot_ankle_pain = 0
      knee_pain       = 0
    }
    right {
      foot_ankle_pain = 1
      knee_pain       = 0
    }
  }
  expect "left" { silent = ["pain_on_walking"] }
  expect "right" { cautions = ["pain_on_walking"] }
}

case "pain of 1 at the knee on the left; of 2 at both on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      foot_ankle_pain = 0
      knee_pain       = 1
    }
    right {
      foot_ankle_pain = 2
      knee_pain       = 2
    }
  }
  expect "left" { cautions = ["pain_on_walking"] }
  expect "right" { cautions = ["pain_on_walking"] }
}
