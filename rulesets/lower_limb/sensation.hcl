# Sensation of the limb, with the person's eyes closed.

# 10 g monofilament: about 2 s, two touches and one sham; felt where two of three answers are right. Avoid ulcer,
# callus and scar. The first three are the guideline's sites.

measure "monofilament_great_toe" {
  of          = "limb"
  label       = "Monofilament felt, great toe"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement", "monofilament_sites"]
  how         = "Pulp of the great toe, underside."
}

measure "monofilament_first_metatarsal_head" {
  of          = "limb"
  label       = "Monofilament felt, first metatarsal head"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement", "monofilament_sites"]
  how         = "Underside of the first metatarsal head."
}

measure "monofilament_fifth_metatarsal_head" {
  of          = "limb"
  label       = "Monofilament felt, fifth metatarsal head"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement", "monofilament_sites"]
  how         = "Underside of the fifth metatarsal head."
}

# Further sites

measure "monofilament_third_toe" {
  of          = "limb"
  label       = "Monofilament felt, third toe"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "Pulp of the third toe, underside."
}

measure "monofilament_fifth_toe" {
  of          = "limb"
  label       = "Monofilament felt, fifth toe"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "Pulp of the fifth toe, underside."
}

measure "monofilament_third_metatarsal_head" {
  of          = "limb"
  label       = "Monofilament felt, third metatarsal head"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "Underside of the third metatarsal head."
}

measure "monofilament_medial_midfoot" {
  of          = "limb"
  label       = "Monofilament felt, medial midfoot"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "Underside of the medial arch."
}

measure "monofilament_lateral_midfoot" {
  of          = "limb"
  label       = "Monofilament felt, lateral midfoot"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "Underside of the lateral border, base of the fifth metatarsal."
}

measure "monofilament_heel" {
  of          = "limb"
  label       = "Monofilament felt, heel"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "Underside of the heel, away from thick skin."
}

measure "monofilament_foot_dorsum" {
  of          = "limb"
  label       = "Monofilament felt, top of the foot"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "Between the first and second metatarsals."
}

measure "monofilament_medial_malleolus" {
  of          = "limb"
  label       = "Monofilament felt, medial malleolus"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "On the prominence."
}

measure "monofilament_lateral_malleolus" {
  of          = "limb"
  label       = "Monofilament felt, lateral malleolus"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "On the prominence."
}

measure "monofilament_anterior_shin" {
  of          = "limb"
  label       = "Monofilament felt, front of the shin"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "On the crest, middle third."
}

measure "monofilament_posterior_calf" {
  of          = "limb"
  label       = "Monofilament felt, back of the calf"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published for one site; over 18 sites the smallest real change is 2.8 sites"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "Over the muscle, widest part."
}

measure "protective_sensation" {
  of          = "limb"
  label       = "Protective sensation of foot and ankle, overall"
  one_of      = ["present", "reduced", "absent"]
  taken       = "lying"
  error_basis = "none is published that we know of; agreement between raters over 10 sites is moderate, kappa 0.54"
  cites       = ["monofilament_procedure", "monofilament_agreement"]
  how         = "The judgement over all sites: reduced where some are missed, absent where none, or none of the three guideline sites, is felt."
}

measure "ankle_proprioception" {
  of          = "limb"
  label       = "Joint position sense, ankle"
  one_of      = ["intact", "reduced", "absent"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Eyes closed; move the ankle a little up or down, ten times, held at the sides: 8 or more right intact, 5 or fewer absent. The numbers are common practice, no source."
}

measure "knee_proprioception" {
  of          = "limb"
  label       = "Joint position sense, knee"
  one_of      = ["intact", "reduced", "absent"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Eyes closed; copy the position of the knee with the other leg, or name up and down, ten times."
}

measure "vibration_sense" {
  of          = "limb"
  label       = "Vibration sense, great toe"
  one_of      = ["present", "reduced", "absent"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "128 Hz tuning fork on the tip of the great toe; reduced where felt only at the malleolus."
}

measure "touch_oversensitive" {
  of          = "limb"
  label       = "Touch or pressure is felt as pain"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Stroke and press the places where shell and straps would bear."
}
