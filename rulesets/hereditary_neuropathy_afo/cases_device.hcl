# Worked cases of which device. Invented people; expectations worked out by hand from the rules and their sources.

case "child with a high arch and a little pain, steady on the feet: support inside the shoe" {
  basis = "published"
  cites = ["scheffers_2012"]
  given {
    device_for = ["left"]
    person {
      age              = 9
      diagnosis_group  = "hereditary_neuropathy"
      standing_balance = "eyes_closed"
    }
    left {
      fpi_medial_arch                  = "-1"
      foot_ankle_pain                  = 1
      heel_rise_height                 = "full"
      ankle_dorsiflexion_knee_extended = 5
      gait_swing_ankle                 = "lifts"
      gait_swing_clearance             = "clear"
    }
  }
  expect "left" {
    choices  = { device = "insole" }
    findings = { high_arch = true, walks_with_difficulty = false, child_needs_orthosis = false, foot_drops = false, calf_very_weak = false }
    fires    = ["insole_for_a_child"]
    silent   = ["orthosis_for_a_child", "composite_before_rigid_for_a_child", "no_stimulation_of_a_lost_nerve", "light_device_for_the_drop", "keep_it_light", "equinus_in_the_forefoot"]
  }
  expect "person" { findings = { balance_a_little_poor = false } }
}

case "no pain and good balance on the left: no insole; pain of 2 on the right: insole" {
  basis = "published"
  cites = ["scheffers_2012"]
  given {
    device_for = ["left", "right"]
    person {
      age              = 10
      diagnosis_group  = "hereditary_neuropathy"
      standing_balance = "eyes_closed"
    }
    left {
      fpi_medial_arch      = "-1"
      foot_ankle_pain      = 0
      gait_swing_clearance = "clear"
    }
    right {
      fpi_medial_arch      = "-2"
      foot_ankle_pain      = 2
      gait_swing_clearance = "clear"
    }
  }
  expect "left" { silent = ["insole_for_a_child"] }
  expect "right" {
    findings = { high_arch = true }
    fires    = ["insole_for_a_child"]
  }
}

case "stands with the eyes open only: insole under the high arch, none under the usual one" {
  basis = "published"
  cites = ["scheffers_2012"]
  given {
    device_for = ["left", "right"]
    person {
      age              = 14
      diagnosis_group  = "hereditary_neuropathy"
      standing_balance = "eyes_open"
    }
    left {
      fpi_medial_arch      = "-1"
      foot_ankle_pain      = 0
      gait_swing_clearance = "with_compensation"
    }
    right {
      fpi_medial_arch      = "0"
      foot_ankle_pain      = 3
      gait_swing_clearance = "clear"
    }
  }
  expect "left" {
    findings = { walks_with_difficulty = false }
    fires    = ["insole_for_a_child"]
  }
  expect "right" {
    findings = { high_arch = false }
    silent   = ["insole_for_a_child"]
  }
  expect "person" { findings = { balance_a_little_poor = true } }
}

case "child who trips over a dropped foot: an orthosis, composite on thin evidence, no stimulation" {
  basis = "published"
  cites = ["scheffers_2012", "borghi_2023", "foot_drop_table"]
  given {
    device_for = ["right"]
    person {
      age              = 12
      diagnosis_group  = "hereditary_neuropathy"
      standing_balance = "eyes_open"
    }
    right {
      fpi_medial_arch                  = "-2"
      foot_ankle_pain                  = 0
      heel_rise_height                 = "full"
      ankle_dorsiflexion_knee_extended = 5
      ankle_sideways_stability         = "stable"
      gait_loading_foot                = "foot_slap"
      gait_swing_ankle                 = "hangs"
      gait_swing_clearance             = "toe_catches"
    }
  }
  expect "right" {
    choices  = { device = "composite", articulation = "none" }
    findings = { foot_drops = true, only_the_drop = true, walks_with_difficulty = true, child_needs_orthosis = true, ankle_unsteady = false }
    fires    = ["orthosis_for_a_child", "composite_before_rigid_for_a_child", "light_device_for_the_drop", "no_stimulation_of_a_lost_nerve"]
    silent   = ["insole_for_a_child", "keep_it_light", "replace_the_calf"]
  }
}

case "child who cannot stand freely: equinus on the left, a weak calf on the right, either asks for an orthosis" {
  basis = "published"
  cites = ["scheffers_2012", "cavovarus_equinus_2015"]
  given {
    device_for = ["left", "right"]
    person {
      age              = 8
      diagnosis_group  = "hereditary_neuropathy"
      standing_balance = "with_support"
    }
    left {
      fpi_medial_arch                  = "-2"
      heel_rise_height                 = "full"
      ankle_dorsiflexion_knee_extended = -3
      gait_swing_ankle                 = "lifts"
    }
    right {
      fpi_medial_arch                  = "-2"
      heel_rise_height                 = "part"
      ankle_dorsiflexion_knee_extended = 5
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "composite" }
    findings = { child_needs_orthosis = true, calf_very_weak = false }
    fires    = ["orthosis_for_a_child"]
    silent   = ["light_device_for_the_drop", "keep_it_light", "no_stimulation_of_a_lost_nerve"]
    cautions = ["equinus_in_the_forefoot"]
  }
  expect "right" {
    choices  = { device = "composite" }
    findings = { child_needs_orthosis = true, calf_very_weak = true }
    fires    = ["composite_before_rigid_for_a_child"]
    silent   = ["keep_it_light", "equinus_in_the_forefoot"]
  }
}

case "child who cannot stand freely, with neither drop nor weak calf nor equinus: the device is left to the clinician" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age              = 8
      diagnosis_group  = "hereditary_neuropathy"
      standing_balance = "unable"
    }
    left {
      fpi_medial_arch                  = "-1"
      foot_ankle_pain                  = 4
      heel_rise_height                 = "full"
      ankle_dorsiflexion_knee_extended = 5
      gait_swing_ankle                 = "lifts"
      gait_swing_clearance             = "clear"
    }
  }
  expect "left" {
    choices  = { device = "left_to_clinician" }
    findings = { child_needs_orthosis = false, walks_with_difficulty = true }
    silent   = ["insole_for_a_child", "orthosis_for_a_child"]
  }
}

case "adult of 37 with foot drop alone: three light devices are level" {
  basis = "published"
  cites = ["menotti_2014", "foot_drop_table"]
  given {
    device_for = ["left", "right"]
    person {
      age              = 37
      diagnosis_group  = "hereditary_neuropathy"
      standing_balance = "eyes_open"
    }
    left {
      fpi_medial_arch                  = "-1"
      foot_ankle_pain                  = 3
      heel_rise_height                 = "full"
      ankle_dorsiflexion_knee_extended = 0
      ankle_sideways_stability         = "stable"
      gait_loading_foot                = "foot_slap"
      gait_swing_ankle                 = "hangs"
      gait_swing_clearance             = "toe_drags"
    }
    right {
      heel_rise_height                 = "full"
      ankle_dorsiflexion_knee_extended = -1
      ankle_sideways_stability         = "stable"
      gait_loading_foot                = "foot_slap"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices  = { device = "open: elastic_lifter, posterior_leaf_spring, composite", articulation = "none" }
    findings = { only_the_drop = true, child_needs_orthosis = false }
    fires    = ["light_device_for_the_drop", "no_stimulation_of_a_lost_nerve"]
    silent   = ["insole_for_a_child", "orthosis_for_a_child", "composite_before_rigid_for_a_child", "hold_a_drop_on_a_stiff_ankle", "sides_for_a_drop_that_tips"]
  }
  expect "right" {
    choices  = { device = "open: composite, rigid" }
    findings = { only_the_drop = false, "limb_safety.equinus" = true }
    fires    = ["hold_a_drop_on_a_stiff_ankle"]
    silent   = ["light_device_for_the_drop", "sides_for_a_drop_that_tips"]
  }
}

case "adult, weak up and down on a loose ankle, shank falls forward: light composite, shell in front" {
  basis = "common_practice"
  cites = ["foot_drop_table", "kelley_2007"]
  given {
    device_for = ["left"]
    person {
      age             = 46
      diagnosis_group = "hereditary_neuropathy"
    }
    left {
      heel_rise_height                 = "none"
      ankle_dorsiflexion_knee_extended = 3
      ankle_sideways_stability         = "loose_inversion"
      gait_loading_foot                = "foot_slap"
      gait_midstance_ankle             = "too_far_forward"
      gait_swing_ankle                 = "turns_in"
    }
  }
  expect "left" {
    choices  = { device = "composite", shell_side = "anterior", pressure_system = "against_shank_advance" }
    findings = { calf_very_weak = true, ankle_unsteady = true, only_the_drop = false }
    fires    = ["replace_the_calf", "keep_it_light", "shell_in_front_for_a_weak_calf", "no_stimulation_of_a_lost_nerve"]
    silent   = ["sides_for_a_drop_that_tips", "light_device_for_the_drop"]
  }
}

case "weak calf without a drop: on a foot that tips the calf is replaced, on a steady one nothing is said" {
  basis = "from_memory"
  cites = ["foot_drop_table"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 33
      diagnosis_group = "hereditary_neuropathy"
    }
    left {
      heel_rise_height                 = "part"
      ankle_dorsiflexion_knee_extended = 6
      ankle_sideways_stability         = "stable"
      gait_loading_foot                = "rolls_outwards"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_swing_ankle                 = "lifts"
    }
    right {
      heel_rise_height                 = "part"
      ankle_dorsiflexion_knee_extended = 6
      ankle_sideways_stability         = "stable"
      gait_loading_foot                = "controlled"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "open: composite, anterior_shell_ground_reaction" }
    findings = { ankle_unsteady = true }
    fires    = ["replace_the_calf"]
    silent   = ["keep_it_light", "shell_in_front_for_a_weak_calf"]
  }
  expect "right" {
    choices  = { device = "left_to_clinician" }
    findings = { ankle_unsteady = false }
    silent   = ["replace_the_calf"]
  }
}

case "adult whose foot drops and whose ankle tips, the calf still strong: held from both sides, no lifter and no open spring" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 38
      diagnosis_group = "hereditary_neuropathy"
    }
    left {
      heel_rise_height                 = "full"
      ankle_dorsiflexion_knee_extended = 3
      ankle_sideways_stability         = "loose_inversion"
      gait_loading_foot                = "foot_slap"
      gait_swing_ankle                 = "hangs"
    }
    right {
      heel_rise_height                 = "full"
      ankle_dorsiflexion_knee_extended = 3
      ankle_sideways_stability         = "stable"
      gait_loading_foot                = "rolls_outwards"
      gait_swing_ankle                 = "turns_out"
    }
  }
  expect "left" {
    choices  = { device = "open: composite, rigid" }
    findings = { ankle_unsteady = true, only_the_drop = false }
    fires    = ["sides_for_a_drop_that_tips", "no_stimulation_of_a_lost_nerve"]
    silent   = ["hold_a_drop_on_a_stiff_ankle", "light_device_for_the_drop", "replace_the_calf"]
  }
  expect "right" {
    choices  = { device = "open: composite, rigid" }
    findings = { foot_drops = true, ankle_unsteady = true }
    fires    = ["sides_for_a_drop_that_tips"]
  }
}

case "ankle tips but the foot lifts: nothing about a drop" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 29
      diagnosis_group = "hereditary_neuropathy"
    }
    left {
      heel_rise_height                 = "full"
      ankle_dorsiflexion_knee_extended = -2
      ankle_sideways_stability         = "loose_inversion"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    silent = ["sides_for_a_drop_that_tips", "hold_a_drop_on_a_stiff_ankle", "no_stimulation_of_a_lost_nerve"]
  }
}
