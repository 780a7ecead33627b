# Standing without device or shoe unless said: how the limb takes weight.

measure "heel_contact_standing" {
  of          = "limb"
  label       = "Heel contact in standing"
  one_of      = ["full", "only_under_load", "none"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "From the side and behind, weight shared. only_under_load: the heel comes down only when full weight is on this leg. A foot like that differs from one whose heel never comes down."
}

measure "knee_position_standing" {
  of          = "limb"
  label       = "Knee position in standing"
  one_of      = ["hyperextended", "straight", "flexed"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "From the side, weight shared, heel as it is; hyperextended past straight, flexed where it cannot or does not straighten."
}

measure "knee_frontal_standing" {
  of          = "limb"
  label       = "Knee from the front in standing"
  one_of      = ["varus", "straight", "valgus"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "From the front, patellae forward, weight shared."
}

measure "hip_position_standing" {
  of          = "limb"
  label       = "Hip position in standing"
  one_of      = ["extended", "flexed"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "From the side; flexed where pelvis and trunk tip forward over the hip."
}

measure "pelvis_level_standing" {
  of          = "limb"
  label       = "Pelvis in standing, at this side"
  one_of      = ["level", "low", "high"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Hands on both iliac crests, knees as straight as they go."
}

measure "pelvis_levelling_block" {
  of          = "limb"
  label       = "Block under this foot that levels the pelvis"
  unit        = "mm"
  plausible   = [0, 120]
  taken       = "standing"
  error_basis = "none is published that we know of; between observers ICC 0.737, mean error 2 mm, wrong side in 1 of 20"
  cites       = ["leg_length_tape", "leg_length_blocks"]
  how         = "Add blocks under the shorter side until the iliac crests are level; 0 on the longer side. Preferred to the tape for a difference in leg length."
}

measure "weight_taken" {
  of          = "limb"
  label       = "Weight taken on this limb"
  one_of      = ["equal", "less", "little"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Standing relaxed with usual support; on two scales, or by feel with a hand under each heel."
}

measure "single_leg_stance" {
  of          = "limb"
  label       = "Standing on this limb alone"
  unit        = "s"
  plausible   = [0, 60]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Eyes open, no aid, best of three, stop at 30 s."
}

measure "shank_to_vertical_barefoot" {
  of          = "limb"
  label       = "Shank to vertical, standing barefoot"
  unit        = "deg"
  plausible   = [-30, 45]
  taken       = "standing"
  error       = 4.1
  error_basis = "1.96 times 2.1 deg, the spread of a sensor on the front of the shank against 3D analysis"
  cites       = ["shank_sensor", "eddison_2017"]
  how         = "Standing relaxed; inclinometer on the front of the shank. Leaning forward positive, back negative."
}

measure "shank_to_vertical_shod" {
  of          = "limb"
  label       = "Shank to vertical, standing in shoe and present device"
  unit        = "deg"
  plausible   = [-30, 45]
  taken       = "shoe"
  error       = 4.1
  error_basis = "1.96 times 2.1 deg, the spread of a sensor on the front of the shank against 3D analysis"
  cites       = ["shank_sensor", "eddison_2017"]
  how         = "Standing relaxed in the shoe, with the present device if there is one; inclinometer on the front of the shank or shell. Leaning forward positive."
}

measure "toe_clawing_standing" {
  of          = "limb"
  label       = "Toes on standing"
  one_of      = ["relaxed", "claw_under_load", "clawed"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Watch as weight comes on; claw_under_load where they were straight in lying."
}
