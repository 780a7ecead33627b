# Worked cases of the forces from behind and from above, of pressure, and of skin. Invented people; worked out by hand.

case "varus of 6 N·m: the three forces from behind" {
  basis = "published"
  cites = ["varus_strap"]
  given {
    device_for = ["left"]
    person {
      age         = 58
      walking_aid = "none"
    }
    left {
      gait_midstance_hindfoot          = "varus"
      hindfoot_corrects_standing       = "fully"
      hindfoot_corrects_by_hand        = "fully"
      hindfoot_resistance              = 6
      medial_malleolus_height          = 65
      lateral_malleolus_height         = 55
      shank_contact_height             = 310
      plantarflexor_tone               = "2"
      ankle_dorsiflexion_knee_extended = 10
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices    = { pressure_system_frontal = "against_varus", ankle_strap = "pull_from_lateral" }
    quantities = { force_at_ankle_lateral = "124 N", force_at_ankle_medial = "0 N", force_at_shank_frontal = "24 N", force_at_foot_frontal = "100 N" }
    fires      = ["hold_the_varus"]
    silent     = ["hold_the_valgus", "no_force_on_a_heel_in_line", "strap_over_the_instep", "no_ankle_strap_for_the_swing"]
  }
}

case "valgus of 3 N·m: the mirror image" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age         = 12
      walking_aid = "none"
    }
    right {
      gait_midstance_hindfoot    = "valgus"
      hindfoot_corrects_standing = "fully"
      hindfoot_corrects_by_hand  = "fully"
      hindfoot_resistance        = 3
      medial_malleolus_height    = 55
      lateral_malleolus_height   = 45
      shank_contact_height       = 250
    }
  }
  expect "right" {
    choices    = { pressure_system_frontal = "against_valgus", ankle_strap = "pull_from_medial" }
    quantities = { force_at_ankle_medial = "75 N", force_at_ankle_lateral = "0 N", force_at_shank_frontal = "15 N", force_at_foot_frontal = "60 N" }
    fires      = ["hold_the_valgus"]
    silent     = ["hold_the_varus"]
  }
}

case "exactly 13.7 kPa under strap and shell" {
  basis = "published"
  cites = ["kermavnar_2020"]
  given {
    device_for = ["left"]
    person {
      age         = 58
      walking_aid = "none"
    }
    left {
      plantarflexor_tone               = "2"
      ankle_dorsiflexion_knee_extended = 10
      heel_contact_standing            = "full"
      gait_midstance_ankle             = "held_back"
      plantarflexor_resistance         = 13.7
      medial_malleolus_height          = 85
      lateral_malleolus_height         = 75
      shank_contact_height             = 280
      calf_girth                       = 314.15926535
      strap_width                      = 50
      shank_shell_height               = 50
      shank_shell_half_arc             = 90
      protective_sensation             = "present"
    }
  }
  expect "left" {
    choices    = { closure = "open: strap, wide_padded_strap, anterior_shell" }
    quantities = { force_at_shank = "68.5 N", shank_radius = "50 mm", strap_mean_pressure = "13.7 kPa", shell_mean_pressure = "13.7 kPa" }
    silent     = ["no_narrow_strap_under_a_large_force", "pressure_that_may_hurt"]
  }
}

case "a shell that wraps more than half of the leg bears no more than one that wraps half" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      plantarflexor_tone               = "2"
      ankle_dorsiflexion_knee_extended = 10
      heel_contact_standing            = "full"
      gait_midstance_ankle             = "held_back"
      plantarflexor_resistance         = 13.8
      medial_malleolus_height          = 85
      lateral_malleolus_height         = 75
      shank_contact_height             = 280
      calf_girth                       = 314.15926535
      strap_width                      = 50
      shank_shell_height               = 50
      shank_shell_half_arc             = 150
    }
  }
  expect "left" {
    quantities = { shell_mean_pressure = "13.8 kPa" }
    cautions   = ["pressure_that_may_hurt"]
  }
}

case "less than 13.7 kPa under strap and shell" {
  basis = "published"
  cites = ["kermavnar_2020"]
  given {
    device_for = ["left"]
    person {
      age         = 58
      walking_aid = "none"
    }
    left {
      plantarflexor_tone               = "2"
      ankle_dorsiflexion_knee_extended = 10
      heel_contact_standing            = "full"
      gait_midstance_ankle             = "held_back"
      plantarflexor_resistance         = 13.6
      medial_malleolus_height          = 85
      lateral_malleolus_height         = 75
      shank_contact_height             = 280
      calf_girth                       = 314.15926535
      strap_width                      = 50
      shank_shell_height               = 50
      shank_shell_half_arc             = 90
      protective_sensation             = "present"
    }
  }
  expect "left" {
    choices    = { closure = "open: strap, wide_padded_strap, anterior_shell" }
    quantities = { force_at_shank = "68 N", shank_radius = "50 mm", strap_mean_pressure = "13.6 kPa", shell_mean_pressure = "13.6 kPa" }
    silent     = ["no_narrow_strap_under_a_large_force", "pressure_that_may_hurt"]
  }
}

case "more than 13.7 kPa under strap and shell" {
  basis = "published"
  cites = ["kermavnar_2020"]
  given {
    device_for = ["left"]
    person {
      age         = 58
      walking_aid = "none"
    }
    left {
      plantarflexor_tone               = "2"
      ankle_dorsiflexion_knee_extended = 10
      heel_contact_standing            = "full"
      gait_midstance_ankle             = "held_back"
      plantarflexor_resistance         = 13.8
      medial_malleolus_height          = 85
      lateral_malleolus_height         = 75
      shank_contact_height             = 280
      calf_girth                       = 314.15926535
      strap_width                      = 50
      shank_shell_height               = 50
      shank_shell_half_arc             = 90
      protective_sensation             = "present"
    }
  }
  expect "left" {
    choices    = { closure = "open: wide_padded_strap, anterior_shell" }
    quantities = { force_at_shank = "69 N", shank_radius = "50 mm", strap_mean_pressure = "13.8 kPa", shell_mean_pressure = "13.8 kPa" }
    fires      = ["no_narrow_strap_under_a_large_force"]
    cautions   = ["pressure_that_may_hurt"]
  }
}

case "skin at risk that feels: bony places at least are lined" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 70
      skin_risk   = "raised"
      walking_aid = "none"
    }
    left {
      protective_sensation = "present"
      malleolar_skin       = "intact"
      heel_skin            = "intact"
      navicular_skin       = "intact"
      foot_dorsum_skin     = "intact"
      achilles_skin        = "intact"
      anterior_shin_skin   = "intact"
      posterior_calf_skin  = "intact"
      touch_oversensitive  = false
    }
  }
  expect "left" {
    choices = { padding = "at_bony_places (not provisional)" }
    fires   = ["line_skin_at_risk"]
    silent  = ["no_figure_for_skin_that_does_not_feel"]
  }
}

case "skin at risk that does not feel: the safety ruleset lines it" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 70
      skin_risk   = "high"
      walking_aid = "none"
    }
    left {
      protective_sensation = "absent"
      malleolar_skin       = "intact"
      heel_skin            = "intact"
      navicular_skin       = "intact"
      foot_dorsum_skin     = "intact"
      achilles_skin        = "intact"
      anterior_shin_skin   = "intact"
      posterior_calf_skin  = "intact"
      touch_oversensitive  = false
    }
  }
  expect "left" {
    choices  = { padding = "whole_shell (not provisional)" }
    silent   = ["line_skin_at_risk"]
    cautions = ["no_figure_for_skin_that_does_not_feel"]
  }
}

case "forefoot turned in that comes straight, midfoot that breaks" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 9
      walking_aid = "none"
    }
    left {
      forefoot_adduction_corrects      = "partly"
      midfoot_break                    = "slight"
      fpi_forefoot                     = "-1"
      forefoot_corrects_standing       = "partly"
      ankle_dorsiflexion_knee_extended = 10
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { pressure_system_transverse = "against_forefoot_adduction", foot_shell = "open: high_medial, dorsal" }
    findings = { forefoot_abducted = false }
    fires    = ["hold_forefoot_adduction", "wrap_a_midfoot_that_breaks"]
    silent   = ["hold_forefoot_abduction", "take_a_stiff_forefoot_as_it_is", "no_force_on_a_straight_forefoot"]
  }
}

case "forefoot turned in that does not come straight" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 9
      walking_aid = "none"
    }
    left {
      forefoot_adduction_corrects = "not_at_all"
      fpi_forefoot                = "-2"
      forefoot_corrects_standing  = "not_at_all"
    }
  }
  expect "left" {
    choices = { pressure_system_transverse = "none" }
    fires   = ["take_a_stiff_forefoot_as_it_is"]
    silent  = ["hold_forefoot_adduction", "no_force_on_a_straight_forefoot"]
  }
}

case "forefoot of 0 in the posture index" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 9
      walking_aid = "none"
    }
    left {
      forefoot_adduction_corrects = "none_needed"
      fpi_forefoot                = "0"
      forefoot_corrects_standing  = "fully"
    }
  }
  expect "left" {
    choices  = { pressure_system_transverse = "none" }
    findings = { forefoot_abducted = false }
    fires    = ["no_force_on_a_straight_forefoot"]
    silent   = ["hold_forefoot_abduction"]
  }
}

case "forefoot of +1 in the posture index" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 9
      walking_aid = "none"
    }
    left {
      forefoot_adduction_corrects = "none_needed"
      fpi_forefoot                = "+1"
      forefoot_corrects_standing  = "fully"
    }
  }
  expect "left" {
    choices  = { pressure_system_transverse = "against_forefoot_abduction" }
    findings = { forefoot_abducted = true }
    fires    = ["hold_forefoot_abduction"]
    silent   = ["no_force_on_a_straight_forefoot"]
  }
}

case "forefoot of +2 in the posture index" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 9
      walking_aid = "none"
    }
    left {
      forefoot_adduction_corrects = "none_needed"
      fpi_forefoot                = "+2"
      forefoot_corrects_standing  = "fully"
    }
  }
  expect "left" {
    choices  = { pressure_system_transverse = "against_forefoot_abduction" }
    findings = { forefoot_abducted = true }
    fires    = ["hold_forefoot_abduction"]
    silent   = ["no_force_on_a_straight_forefoot"]
  }
}
