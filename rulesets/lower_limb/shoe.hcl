# The shoe that will be worn with the device, measured before casting: the underside of the device repeats the
# shape of the shoe's inside. Common practice, no source. Recorded for each side; a raise or wear may differ.

measure "shoe_will_be_worn" {
  of          = "limb"
  label       = "This is the shoe that will be worn"
  yes_no      = true
  taken       = "shoe"
  error_basis = "a record of what is known, not a measurement"
  how         = "Ask; where it is still to be bought, measure one of the same heel."
}

measure "shoe_heel_height" {
  of          = "limb"
  label       = "Heel height of the shoe"
  unit        = "mm"
  plausible   = [0, 120]
  taken       = "shoe"
  error_basis = "none is published that we know of"
  how         = "Depth gauge or callipers from the floor to the inside under the middle of the heel, insole in or out as it will be worn."
}

measure "shoe_forefoot_height" {
  of          = "limb"
  label       = "Forefoot height of the shoe"
  unit        = "mm"
  plausible   = [0, 80]
  taken       = "shoe"
  error_basis = "none is published that we know of"
  how         = "Depth gauge or callipers from the floor to the inside under the ball, insole in or out as it will be worn."
}

measure "shoe_toe_spring" {
  of          = "limb"
  label       = "Toe spring"
  unit        = "mm"
  plausible   = [0, 60]
  taken       = "shoe"
  error_basis = "none is published that we know of"
  how         = "Gap between floor and sole under the tip of the toes, shoe flat on the table."
}

measure "shoe_heel_varies" {
  of          = "limb"
  label       = "Shoes of different heel height are worn"
  yes_no      = true
  taken       = "shoe"
  error_basis = "a record of what is known, not a measurement"
  how         = "Ask for all shoes that the device must go into; a device is set for one difference between heel and forefoot."
}

measure "shoe_fastening" {
  of          = "limb"
  label       = "Fastening"
  one_of      = ["laces", "hook_and_loop", "straps", "zip", "elastic", "slip_on"]
  taken       = "shoe"
  error_basis = "seen, not measured"
  how         = "As worn, and whether the hands manage it."
}

measure "shoe_opening" {
  of          = "limb"
  label       = "How far the shoe opens"
  one_of      = ["to_toes", "to_instep", "narrow"]
  taken       = "shoe"
  error_basis = "seen, not measured"
  how         = "Open it fully; the device with the foot in it must slide in."
}

measure "shoe_depth" {
  of          = "limb"
  label       = "Depth of the shoe"
  one_of      = ["shallow", "standard", "extra"]
  taken       = "shoe"
  error_basis = "none is published that we know of"
  how         = "With the foot in and the insole out: room for a foot plate and a foot shell over the instep?"
}

measure "shoe_upper_height" {
  of          = "limb"
  label       = "Height of the upper"
  one_of      = ["below_ankle", "ankle", "above_ankle"]
  taken       = "shoe"
  error_basis = "seen, not measured"
  how         = "Against the malleoli."
}

measure "shoe_removable_insole" {
  of          = "limb"
  label       = "Insole can be taken out"
  yes_no      = true
  taken       = "shoe"
  error_basis = "seen, not measured"
  how         = "Lift it; glued insoles count as not removable."
}

measure "shoe_insole_thickness" {
  of          = "limb"
  label       = "Thickness of the removable insole at the heel"
  unit        = "mm"
  plausible   = [0, 25]
  taken       = "shoe"
  error_basis = "none is published that we know of"
  how         = "Callipers under the heel; it is the room that the foot plate gains."
}

measure "shoe_inside_length" {
  of          = "limb"
  label       = "Inside length of the shoe"
  unit        = "mm"
  plausible   = [70, 400]
  taken       = "shoe"
  error_basis = "none is published that we know of"
  how         = "Measuring slide inside, insole as it will be worn."
}

measure "shoe_width_fit" {
  of          = "limb"
  label       = "Width of the shoe on the foot"
  one_of      = ["tight", "fits", "loose"]
  taken       = "shoe"
  error_basis = "none is published that we know of"
  how         = "Standing in the shoe, at the ball; a foot shell adds to it."
}

measure "shoe_counter" {
  of          = "limb"
  label       = "Heel counter"
  one_of      = ["none", "soft", "firm"]
  taken       = "shoe"
  error_basis = "none is published that we know of"
  how         = "Press it from behind between finger and thumb."
}

measure "shoe_sole" {
  of          = "limb"
  label       = "Sole at the ball"
  one_of      = ["bends_easily", "firm", "rocker"]
  taken       = "shoe"
  error_basis = "none is published that we know of"
  how         = "Bend it by hand at the ball."
}

measure "shoe_heel_shape" {
  of          = "limb"
  label       = "Heel of the shoe"
  one_of      = ["square", "bevelled", "flared", "narrow", "cushioned"]
  taken       = "shoe"
  error_basis = "seen, not measured"
  how         = "From the side and behind."
}

measure "shoe_wear" {
  of    = "limb"
  label = "Wear of the sole"
  one_of = [
    "even", "lateral_heel", "medial_heel", "lateral_forefoot", "medial_forefoot", "toe_tip",
  ]
  taken       = "shoe"
  error_basis = "seen, not measured"
  how         = "Turn the shoe over; the most worn place."
}

measure "shoe_raise_present" {
  of          = "limb"
  label       = "Raise already on or in the shoe"
  unit        = "mm"
  plausible   = [0, 120]
  taken       = "shoe"
  error_basis = "none is published that we know of"
  how         = "Thickness under the heel added to the shoe as sold, inside and outside together."
}
