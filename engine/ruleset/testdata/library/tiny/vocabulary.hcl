vocabulary "tiny" {
  title   = "A small vocabulary for tests"
  version = "1.2.0"
}

citation "mrc_1976" {
  text     = "Medical Research Council. Aids to the examination of the peripheral nervous system. 1976."
  standing = "from_memory"
}

scale "muscle_power" {
  grades = ["0", "1", "2", "3", "3+", "4", "5"]
}

scale "modified_ashworth" {
  grades = ["0", "1", "1+", "2", "3", "4"]
}

measure "age" {
  of          = "person"
  label       = "Age"
  unit        = "a"
  plausible   = [0, 110]
  error_basis = "counted"
}

measure "body_mass" {
  of          = "person"
  label       = "Body mass"
  unit        = "kg"
  plausible   = [5, 250]
  error_basis = "none is published"
}

measure "falls" {
  of          = "person"
  label       = "Falls in the last year"
  count       = true
  plausible   = [0, 365]
  error_basis = "none is published"
}

measure "diabetes" {
  of          = "person"
  label       = "Diabetes"
  one_of      = ["none", "type_1", "type_2"]
  error_basis = "not a measurement"
}

measure "skin_check_possible" {
  of          = "person"
  label       = "Skin check possible"
  yes_no      = true
  error_basis = "not a measurement"
}

measure "last_injection" {
  of    = "person"
  label = "Last injection"
  date  = true
}

measure "goals" {
  of    = "person"
  label = "Goals"
  text  = true
}

measure "ankle_dorsiflexion" {
  of          = "limb"
  label       = "Ankle dorsiflexion, knee extended"
  unit        = "deg"
  plausible   = [-60, 45]
  error       = 5
  error_basis = "made up for tests"
}

measure "knee_extension" {
  of          = "limb"
  label       = "Knee extension"
  unit        = "deg"
  plausible   = [-60, 30]
  error_basis = "none is published"
}

measure "leg_length" {
  of          = "limb"
  label       = "Leg length"
  unit        = "mm"
  plausible   = [150, 1200]
  error_basis = "none is published"
}

measure "plantarflexor_tone" {
  of          = "limb"
  label       = "Plantarflexor tone"
  scale       = "modified_ashworth"
  error_basis = "none is published"
}

measure "plantarflexor_power" {
  of          = "limb"
  label       = "Plantarflexor power"
  scale       = "muscle_power"
  error_basis = "none is published"
}

measure "malleolar_skin" {
  of          = "limb"
  label       = "Skin over the malleoli"
  one_of      = ["intact", "fragile", "broken"]
  error_basis = "not a measurement"
}

choice "shell_side" {
  label   = "Shell side"
  options = ["anterior", "posterior"]
}

choice "shell_trimline" {
  label   = "Malleolar trim-line"
  options = ["behind_malleoli", "through_malleoli", "in_front_of_malleoli"]
  ordered = true
  default = "through_malleoli"
}

choice "heel_raise" {
  label    = "Heel raise"
  unit     = "mm"
  between  = [0, 60]
  rounding = 1
}

choice "review_interval" {
  of       = "person"
  label    = "Review"
  unit     = "wk"
  between  = [1, 52]
  rounding = 1
}
