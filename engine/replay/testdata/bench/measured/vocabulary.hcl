# Drawn once for the benchmarks of package replay; see draw_test.go.

vocabulary "measured" {
  title   = "Measures for benchmarks"
  version = "1.0.0"
}

measure "ankle_dorsiflexion" {
  of    = "limb"
  label = "ankle dorsiflexion"
  unit  = "deg"
  plausible = [-40, 40]
  error_basis = "It was drawn."
}

measure "ankle_plantarflexion" {
  of    = "limb"
  label = "ankle plantarflexion"
  unit  = "deg"
  plausible = [0, 80]
  error_basis = "It was drawn."
}

measure "knee_extension" {
  of    = "limb"
  label = "knee extension"
  unit  = "deg"
  plausible = [-40, 16]
  error_basis = "It was drawn."
}

measure "knee_flexion" {
  of    = "limb"
  label = "knee flexion"
  unit  = "deg"
  plausible = [0, 160]
  error_basis = "It was drawn."
}

measure "hip_extension" {
  of    = "limb"
  label = "hip extension"
  unit  = "deg"
  plausible = [-40, 40]
  error_basis = "It was drawn."
}

measure "hip_flexion" {
  of    = "limb"
  label = "hip flexion"
  unit  = "deg"
  plausible = [0, 144]
  error_basis = "It was drawn."
}

measure "subtalar_inversion" {
  of    = "limb"
  label = "subtalar inversion"
  unit  = "deg"
  plausible = [0, 40]
  error_basis = "It was drawn."
}

measure "subtalar_eversion" {
  of    = "limb"
  label = "subtalar eversion"
  unit  = "deg"
  plausible = [0, 40]
  error_basis = "It was drawn."
}

measure "tibial_torsion" {
  of    = "limb"
  label = "tibial torsion"
  unit  = "deg"
  plausible = [-40, 56]
  error_basis = "It was drawn."
}

measure "popliteal_angle" {
  of    = "limb"
  label = "popliteal angle"
  unit  = "deg"
  plausible = [0, 120]
  error_basis = "It was drawn."
}

measure "leg_length" {
  of    = "limb"
  label = "leg length"
  unit  = "mm"
  plausible = [400, 1200]
  error_basis = "It was drawn."
}

measure "foot_length" {
  of    = "limb"
  label = "foot length"
  unit  = "mm"
  plausible = [160, 320]
  error_basis = "It was drawn."
}

measure "calf_girth" {
  of    = "limb"
  label = "calf girth"
  unit  = "mm"
  plausible = [200, 600]
  error_basis = "It was drawn."
}

measure "ankle_girth" {
  of    = "limb"
  label = "ankle girth"
  unit  = "mm"
  plausible = [120, 400]
  error_basis = "It was drawn."
}

measure "limb_load" {
  of    = "limb"
  label = "limb load"
  unit  = "kg"
  plausible = [0, 160]
  error_basis = "It was drawn."
}

scale "muscle_power" {
  grades = ["0", "1", "2-", "2", "2+", "3-", "3", "3+", "4-", "4", "4+", "5-", "5"]
}

measure "plantarflexor_power" {
  of    = "limb"
  label = "plantarflexor power"
  scale = "muscle_power"
  error_basis = "It was drawn."
}

measure "dorsiflexor_power" {
  of    = "limb"
  label = "dorsiflexor power"
  scale = "muscle_power"
  error_basis = "It was drawn."
}

measure "quadriceps_power" {
  of    = "limb"
  label = "quadriceps power"
  scale = "muscle_power"
  error_basis = "It was drawn."
}

measure "hip_extensor_power" {
  of    = "limb"
  label = "hip extensor power"
  scale = "muscle_power"
  error_basis = "It was drawn."
}

scale "tone" {
  grades = ["0", "1", "1+", "2", "3", "4"]
}

measure "plantarflexor_tone" {
  of    = "limb"
  label = "plantarflexor tone"
  scale = "tone"
  error_basis = "It was drawn."
}

measure "hamstring_tone" {
  of    = "limb"
  label = "hamstring tone"
  scale = "tone"
  error_basis = "It was drawn."
}

measure "skin" {
  of    = "limb"
  label = "skin"
  one_of = ["intact", "fragile", "broken"]
  error_basis = "It was drawn."
}

measure "sensation" {
  of    = "limb"
  label = "sensation"
  one_of = ["intact", "reduced", "absent"]
  error_basis = "It was drawn."
}

measure "foot_shape" {
  of    = "limb"
  label = "foot shape"
  one_of = ["neutral", "planus", "cavus", "mixed"]
  error_basis = "It was drawn."
}

measure "swing_pattern" {
  of    = "limb"
  label = "swing pattern"
  one_of = ["usual", "drop", "circumduction", "vaulting", "steppage"]
  error_basis = "It was drawn."
}

measure "clonus" {
  of    = "limb"
  label = "clonus"
  yes_no = true
  error_basis = "It was drawn."
}

measure "oedema" {
  of    = "limb"
  label = "oedema"
  yes_no = true
  error_basis = "It was drawn."
}

measure "wound" {
  of    = "limb"
  label = "wound"
  yes_no = true
  error_basis = "It was drawn."
}

measure "heel_rises" {
  of    = "limb"
  label = "heel rises"
  count = true
  plausible = [0, 32]
  error_basis = "It was drawn."
}

measure "posture_total" {
  of    = "limb"
  label = "posture total"
  count = true
  plausible = [-12, 12]
  error_basis = "It was drawn."
}

choice "shell_side" {
  label    = "shell side"
  concerns = "device"
  options  = ["anterior", "posterior", "both"]
}

choice "trimline" {
  label    = "trimline"
  concerns = "device"
  options  = ["behind", "through", "in_front"]
}

choice "strut_place" {
  label    = "strut place"
  concerns = "device"
  options  = ["posterior", "lateral", "spiral", "medial"]
}

choice "articulation" {
  label    = "articulation"
  concerns = "device"
  options  = ["none", "free", "stop", "spring"]
}

choice "foot_plate" {
  label    = "foot plate"
  concerns = "device"
  options  = ["short", "to_ball", "full"]
}

choice "padding" {
  label    = "padding"
  concerns = "device"
  options  = ["none", "thin", "thick"]
}

choice "closure" {
  label    = "closure"
  concerns = "device"
  options  = ["straps", "laces", "buckle", "none", "slip_on"]
}

choice "review" {
  label    = "review"
  concerns = "device"
  options  = ["soon", "later"]
}

choice "heel_raise" {
  label    = "heel raise"
  concerns = "device"
  unit     = "mm"
  between  = [0, 60]
  rounding = 1
}

choice "cast_angle" {
  label    = "cast angle"
  concerns = "device"
  unit     = "deg"
  between  = [-20, 10]
  rounding = 1
}
