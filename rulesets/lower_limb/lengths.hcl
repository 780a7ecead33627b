# Lengths, heights, widths and girths, for geometry and for making. Bare skin, metal tape without pull for lengths,
# cloth tape with light pull for girths. Heights are from the floor, standing, weight shared.

# Lengths

measure "leg_length" {
  of          = "limb"
  label       = "Leg length"
  unit        = "mm"
  plausible   = [150, 1200]
  taken       = "lying"
  error_basis = "none is published that we know of; between observers ICC 0.477, mean error -5 mm, wrong side in 7 of 20"
  cites       = ["leg_length_tape", "jarvis_2012"]
  how         = "Supine, pelvis square; tape from the front spine of the pelvis to the tip of the medial malleolus."
}

measure "foot_length" {
  of          = "limb"
  label       = "Foot length"
  unit        = "mm"
  plausible   = [60, 360]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Back of the heel to the tip of the longest toe, on a measuring board, weight shared."
}

measure "heel_to_ball_length" {
  of          = "limb"
  label       = "Heel to ball"
  unit        = "mm"
  plausible   = [40, 270]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Back of the heel to the first metatarsal head, along the sole, on a measuring board. Measured, never taken as a part of the foot length."
}

measure "heel_to_fifth_metatarsal_head" {
  of          = "limb"
  label       = "Heel to fifth metatarsal head"
  unit        = "mm"
  plausible   = [35, 250]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Back of the heel to the fifth metatarsal head, along the lateral border."
}

measure "ankle_to_heel_back" {
  of          = "limb"
  label       = "Ankle centre to back of the heel"
  unit        = "mm"
  plausible   = [15, 110]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Level of the medial malleolus, horizontal, with a set square."
}

# Heights

measure "medial_malleolus_height" {
  of          = "limb"
  label       = "Height of the medial malleolus"
  unit        = "mm"
  plausible   = [20, 140]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Floor to the middle of the prominence."
}

measure "lateral_malleolus_height" {
  of          = "limb"
  label       = "Height of the lateral malleolus"
  unit        = "mm"
  plausible   = [15, 130]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Floor to the middle of the prominence."
}

measure "navicular_height" {
  of          = "limb"
  label       = "Height of the navicular"
  unit        = "mm"
  plausible   = [0, 90]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Floor to the lower edge of the prominence, relaxed standing."
}

measure "calf_height" {
  of          = "limb"
  label       = "Height of the greatest calf girth"
  unit        = "mm"
  plausible   = [60, 450]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Floor to the level of the greatest girth."
}

measure "fibular_head_height" {
  of          = "limb"
  label       = "Height of the fibular head"
  unit        = "mm"
  plausible   = [100, 560]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Floor to the tip of the head; the nerve runs just below it."
}

measure "knee_height" {
  of          = "limb"
  label       = "Height of the knee joint line"
  unit        = "mm"
  plausible   = [110, 600]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Floor to the medial joint line."
}

# Widths and girths

measure "foot_width" {
  of          = "limb"
  label       = "Foot width at the ball"
  unit        = "mm"
  plausible   = [30, 140]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Across first and fifth metatarsal heads, callipers or board, weight shared."
}

measure "heel_width" {
  of          = "limb"
  label       = "Heel width"
  unit        = "mm"
  plausible   = [20, 100]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Greatest width of the heel, callipers, weight shared."
}

measure "malleolar_width" {
  of          = "limb"
  label       = "Width across the malleoli"
  unit        = "mm"
  plausible   = [25, 110]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Callipers on both prominences, light contact."
}

measure "knee_width" {
  of          = "limb"
  label       = "Width across the knee"
  unit        = "mm"
  plausible   = [40, 170]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Callipers across both condyles, light contact."
}

measure "ball_girth" {
  of          = "limb"
  label       = "Girth at the ball"
  unit        = "mm"
  plausible   = [80, 340]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Round first and fifth metatarsal heads."
}

measure "instep_girth" {
  of          = "limb"
  label       = "Girth at the instep"
  unit        = "mm"
  plausible   = [80, 360]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Round the highest part of the instep."
}

measure "heel_instep_girth" {
  of          = "limb"
  label       = "Girth round heel and instep"
  unit        = "mm"
  plausible   = [110, 480]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Round the back of the heel and over the bend of the ankle; the device must let it through."
}

measure "ankle_girth" {
  of          = "limb"
  label       = "Girth above the malleoli"
  unit        = "mm"
  plausible   = [80, 420]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Narrowest place above the malleoli; say the time of day where swelling changes."
}

measure "calf_girth" {
  of          = "limb"
  label       = "Girth of the calf"
  unit        = "mm"
  plausible   = [90, 650]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Greatest girth; say the time of day where swelling changes."
}

measure "below_knee_girth" {
  of          = "limb"
  label       = "Girth below the fibular head"
  unit        = "mm"
  plausible   = [90, 600]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "20 mm below the tip of the fibular head."
}
