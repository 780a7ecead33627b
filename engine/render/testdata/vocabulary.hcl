# A small vocabulary for the tests of how outcomes are shown.

vocabulary "small" {
  title   = "Small vocabulary for tests"
  version = "1.0.0"
}

scale "modified_ashworth" {
  grades = ["0", "1", "1+", "2", "3", "4"]
}

measure "age" {
  of          = "person"
  label       = "Age"
  unit        = "a"
  plausible   = [0, 110]
  taken       = "person"
  error_basis = "none"
}

measure "plantarflexor_tone" {
  of          = "limb"
  label       = "Tone, plantarflexors, knee extended"
  scale       = "modified_ashworth"
  taken       = "lying"
  error_basis = "none"
}

measure "ankle_dorsiflexion_knee_extended" {
  of          = "limb"
  label       = "Ankle dorsiflexion, knee extended"
  unit        = "deg"
  plausible   = [-60, 45]
  taken       = "lying"
  error_basis = "none"
}

measure "protective_sensation" {
  of          = "limb"
  label       = "Protective sensation"
  one_of      = ["present", "reduced", "absent"]
  taken       = "lying"
  error_basis = "none"
}

measure "heel_down" {
  of          = "limb"
  label       = "Heel down in standing"
  yes_no      = true
  taken       = "standing"
  error_basis = "none"
}

measure "hip_extension" {
  of          = "limb"
  label       = "Hip extension"
  unit        = "deg"
  plausible   = [-40, 40]
  taken       = "lying"
  error_basis = "none"
}

choice "device" {
  label    = "Device or referral"
  concerns = "device"
  options  = ["no_device", "composite", "rigid", "refer_wound_care"]
}

choice "cast_ankle_angle" {
  label    = "Ankle angle in the cast"
  concerns = "alignment"
  unit     = "deg"
  between  = [-45, 20]
  rounding = 1
}

choice "cast_block_height" {
  label    = "Block under the heel in the cast"
  concerns = "alignment"
  unit     = "mm"
  between  = [0, 60]
  rounding = 1
}

choice "strut_stiffness" {
  label    = "Stiffness about the ankle"
  concerns = "stiffness"
  unit     = "N.m/deg"
  between  = [0, 10]
  rounding = 0.1
}

choice "strut_place" {
  label    = "Place of the strut"
  concerns = "stiffness"
  options  = ["posterior", "medial", "lateral"]
}

choice "foot_plate_length" {
  label    = "Foot plate length"
  concerns = "stiffness"
  options  = ["behind_metatarsal_heads", "to_toe_bases", "full_length"]
  ordered  = true
  default  = "full_length"
}

choice "shell_side" {
  label    = "Side of the shank shell"
  concerns = "force_pattern"
  options  = ["anterior", "posterior", "circumferential"]
}

choice "closure" {
  label    = "Closure"
  concerns = "force_pattern"
  options  = ["strap", "wide_padded_strap", "anterior_shell"]
}

choice "shell_trimline" {
  label    = "Malleolar trim-line"
  concerns = "force_pattern"
  options  = ["behind_malleoli", "through_malleoli", "in_front_of_malleoli"]
  ordered  = true
}

choice "padding" {
  label    = "Padding"
  concerns = "force_pattern"
  options  = ["none", "thin", "thick"]
}

choice "review_interval" {
  of       = "person"
  label    = "First review after"
  concerns = "follow_up"
  unit     = "wk"
  between  = [1, 52]
  rounding = 1
  default  = 6
}
