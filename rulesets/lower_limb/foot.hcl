# Foot posture: the six items of the Foot Posture Index, and what corrects by hand and on standing. Corrected by
# hand and corrected on standing can disagree both ways, so each is recorded; common practice, no source.

# Foot Posture Index, standing relaxed on both feet. An item that cannot be seen is left out, not scored 0.

measure "fpi_talar_head" {
  of          = "limb"
  label       = "Foot Posture Index, talar head"
  scale       = "fpi_item"
  taken       = "standing"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["redmond_2005"]
  how         = "Feel the talar head at both sides: felt laterally only -2, equally 0, medially only +2."
}

measure "fpi_malleolar_curves" {
  of          = "limb"
  label       = "Foot Posture Index, curves at the lateral malleolus"
  scale       = "fpi_item"
  taken       = "standing"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["redmond_2005"]
  how         = "From behind: lower curve straight or convex -2, equal to the upper 0, much more concave +2."
}

measure "fpi_calcaneus" {
  of          = "limb"
  label       = "Foot Posture Index, heel"
  scale       = "fpi_item"
  taken       = "standing"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["redmond_2005"]
  how         = "From behind: more than about 5 deg inverted -2, vertical 0, more than about 5 deg everted +2."
}

measure "fpi_talonavicular" {
  of          = "limb"
  label       = "Foot Posture Index, talonavicular area"
  scale       = "fpi_item"
  taken       = "standing"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["redmond_2005"]
  how         = "From the medial side: markedly concave -2, flat 0, markedly bulging +2."
}

measure "fpi_medial_arch" {
  of          = "limb"
  label       = "Foot Posture Index, medial arch"
  scale       = "fpi_item"
  taken       = "standing"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["redmond_2005"]
  how         = "High and sharply angled towards the back -2, usual 0, very low and touching the ground +2."
}

measure "fpi_forefoot" {
  of          = "limb"
  label       = "Foot Posture Index, forefoot"
  scale       = "fpi_item"
  taken       = "standing"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["redmond_2005"]
  how         = "From behind: no lateral toes seen -2, equal on both sides 0, no medial toes seen +2."
}

measure "fpi6_total" {
  of          = "limb"
  label       = "Foot Posture Index, total of six"
  count       = true
  plausible   = [-12, 12]
  taken       = "standing"
  error       = 2
  error_basis = "our default of two points; weighted kappa 0.86 between raters in children; no standard error is published"
  cites       = ["redmond_2006", "redmond_2008", "fpi_agreement_children"]
  how         = "The sum of all six items, from -12 supinated to +12 pronated; left out where one of the six was not scored."
}

# Hindfoot and midfoot under load

measure "hindfoot_alignment" {
  of          = "limb"
  label       = "Hindfoot in standing"
  one_of      = ["varus", "neutral", "valgus"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  cites       = ["astrom_1995"]
  how         = "From behind, relaxed on both feet; the heel against the shank. A few degrees of valgus are usual."
}

measure "calcaneal_angle" {
  of          = "limb"
  label       = "Resting heel angle to the floor"
  unit        = "deg"
  plausible   = [-40, 40]
  taken       = "standing"
  error_basis = "none is published that we know of; agreement on class is moderate, weighted kappa 0.60"
  cites       = ["foot_class_agreement", "astrom_1995"]
  how         = "From behind, relaxed on both feet; line bisecting the heel against the vertical. Everted positive, inverted negative."
}

measure "block_test" {
  of          = "limb"
  label       = "Lateral block test of a varus heel"
  one_of      = ["corrects", "corrects_partly", "does_not_correct"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  cites       = ["block_test"]
  how         = "Standing with heel and lateral border on a 25 to 40 mm block, first to third rays hanging free; look at the heel from behind. Only where the heel is in varus."
}

measure "navicular_drop" {
  of          = "limb"
  label       = "Navicular drop"
  unit        = "mm"
  plausible   = [-10, 40]
  taken       = "standing"
  error_basis = "none is published that we know of; agreement on class is fair, weighted kappa 0.40"
  cites       = ["foot_class_agreement", "navicular_drop_norms"]
  how         = "Height of the navicular from the floor, sitting with the joint in neutral, less its height in relaxed standing."
}

measure "midfoot_break" {
  of          = "limb"
  label       = "Midfoot break"
  one_of      = ["none", "slight", "marked"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "From the side, leaning forward with the heel down: does the foot bend at the midfoot before the ankle moves?"
}

# What corrects. By hand is unloaded; on standing is under body weight, with the foot guided but not forced.

measure "hindfoot_corrects_by_hand" {
  of          = "limb"
  label       = "Hindfoot corrects by hand, unloaded"
  one_of      = ["none_needed", "fully", "partly", "not_at_all"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Prone or supine, knee bent to slacken the calf; bring the heel to the line of the shank."
}

measure "hindfoot_corrects_standing" {
  of          = "limb"
  label       = "Hindfoot corrects on standing"
  one_of      = ["none_needed", "fully", "partly", "not_at_all"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Standing on both feet; let weight come on and guide the heel; look from behind. Record what is reached and can be held for ten seconds."
}

measure "forefoot_corrects_by_hand" {
  of          = "limb"
  label       = "Forefoot corrects to the hindfoot by hand, unloaded"
  one_of      = ["none_needed", "fully", "partly", "not_at_all"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Heel held in line; bring the forefoot level with it."
}

measure "forefoot_corrects_standing" {
  of          = "limb"
  label       = "Forefoot corrects on standing"
  one_of      = ["none_needed", "fully", "partly", "not_at_all"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Heel guided into line; does the whole forefoot come to the floor, first and fifth rays?"
}

measure "arch_corrects_by_hand" {
  of          = "limb"
  label       = "Midfoot and arch correct by hand, unloaded"
  one_of      = ["none_needed", "fully", "partly", "not_at_all"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Raise or lower the arch with the heel held in line."
}

measure "arch_corrects_standing" {
  of          = "limb"
  label       = "Midfoot and arch correct on standing"
  one_of      = ["none_needed", "fully", "partly", "not_at_all"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Standing; extend the great toe and turn the shank outwards, watch the arch; guide, do not force."
}

measure "hindfoot_released" {
  of          = "limb"
  label       = "Hindfoot corrects with the release held"
  one_of      = ["none_needed", "fully", "partly", "not_at_all"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "As by hand, while the release that lowered tone is held. Beside the finding without it, not instead."
}
