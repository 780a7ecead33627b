# Passive range, lying, slow stretch, without device or shoe. Dorsiflexion is positive. Extension of hip and
# knee is negative when short of straight and positive past it. Hold each end of range before it is read.

# Hip

measure "hip_extension" {
  of          = "limb"
  label       = "Hip extension (Thomas test)"
  unit        = "deg"
  plausible   = [-60, 40]
  taken       = "lying"
  error       = 6
  error_basis = "the margin of 6 deg that one study allows before it calls a hip contracted, taken in place of a standard error: the one that is printed, 1 deg, is doubtful, and agreement between raters runs from ICC 0.30 to 0.92"
  cites       = ["contracture_margins", "vigotsky_2016", "thomas_agreement"]
  how         = "Supine, other hip flexed until the lumbar spine is flat and the pelvis is held there; thigh against the table. 0 is straight; negative is short of straight."
}

measure "hip_flexion" {
  of          = "limb"
  label       = "Hip flexion"
  unit        = "deg"
  plausible   = [0, 160]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Supine, knee free to bend, pelvis held; thigh against the trunk line."
}

measure "hip_abduction" {
  of          = "limb"
  label       = "Hip abduction, knee extended"
  unit        = "deg"
  plausible   = [-30, 80]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Supine, pelvis level and held; thigh against the line through both front spines of the pelvis. Negative short of the midline."
}

measure "hip_internal_rotation" {
  of          = "limb"
  label       = "Hip internal rotation"
  unit        = "deg"
  plausible   = [-40, 100]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Prone, knee at 90 deg, pelvis flat; shank against the vertical. Negative short of neutral."
}

measure "hip_external_rotation" {
  of          = "limb"
  label       = "Hip external rotation"
  unit        = "deg"
  plausible   = [-40, 100]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Prone, knee at 90 deg, pelvis flat; shank against the vertical. Negative short of neutral."
}

# Knee

measure "knee_extension" {
  of          = "limb"
  label       = "Knee extension"
  unit        = "deg"
  plausible   = [-90, 30]
  taken       = "lying"
  error       = 3.8
  error_basis = "the larger smallest real change of one rater, 5.4 deg between two tests, divided by the square root of 2, after knee ligament injury; within one session 2.5 deg; between raters 7.4, and 5.9 after knee replacement; the margin of 4 deg before a contracture is declared is no error of measurement"
  cites       = ["knee_extension_reliability", "knee_replacement_goniometry", "contracture_margins"]
  how         = "Supine, heel on a small block, hip straight; goniometer on trochanter, lateral epicondyle and malleolus. 0 is straight; negative is short of straight; positive is past it."
}

measure "knee_flexion" {
  of          = "limb"
  label       = "Knee flexion"
  unit        = "deg"
  plausible   = [0, 170]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Supine, hip flexed; goniometer on trochanter, lateral epicondyle and malleolus."
}

measure "popliteal_angle" {
  of          = "limb"
  label       = "Popliteal angle (hamstrings, slow stretch R2)"
  unit        = "deg"
  plausible   = [0, 130]
  taken       = "lying"
  error       = 14
  error_basis = "the wider of the published same-day limits of three therapists, 10 to 14 deg, children with cerebral palsy; 18 to 28 deg on different days"
  cites       = ["mcdowell_2000", "katz_1992"]
  how         = "Supine, hip at 90 deg, other leg flat; straighten the knee slowly. Degrees short of straight: 0 is straight."
}

measure "prone_knee_flexion" {
  of          = "limb"
  label       = "Knee flexion prone (rectus femoris, slow stretch R2)"
  unit        = "deg"
  plausible   = [0, 160]
  taken       = "lying"
  error       = 13.7
  error_basis = "taken over from the knee angle in the modified Thomas test, 1.96 times a standard error of 7 deg; none is published for the prone test that we know of"
  cites       = ["thomas_knee_angle"]
  how         = "Prone, pelvis held flat; bend the knee slowly until the pelvis begins to lift. Straight is 0."
}

# Ankle, unloaded and loaded. The two can differ either way; the loaded one matters for a device that is walked in.

measure "ankle_dorsiflexion_knee_extended" {
  of          = "limb"
  label       = "Ankle dorsiflexion, knee extended, unloaded (slow stretch R2)"
  unit        = "deg"
  plausible   = [-60, 45]
  taken       = "lying"
  error       = 5.6
  error_basis = "1.96 times a standard error of 2.86 deg, children with cerebral palsy; three therapists differ by 10 to 14 deg on one day and 18 to 28 on different days; the margin of 8 deg before a contracture is declared is no error of measurement; none is published for adults that we know of"
  cites = [
    "goniometry_ankle_children", "mcdowell_2000", "jarvis_2012", "dorsiflexion_in_supination", "contracture_margins",
  ]
  how = "Supine, knee straight, hindfoot held in neutral or slight supination so that the midfoot does not give; fibula line against the lateral border of the foot. Dorsiflexion positive."
}

measure "ankle_dorsiflexion_knee_flexed" {
  of          = "limb"
  label       = "Ankle dorsiflexion, knee flexed, unloaded (slow stretch R2)"
  unit        = "deg"
  plausible   = [-60, 55]
  taken       = "lying"
  error       = 5.6
  error_basis = "taken over from ankle dorsiflexion in children with cerebral palsy, 1.96 times a standard error of 2.86 deg; none is published for the flexed knee that we know of"
  cites       = ["goniometry_ankle_children", "baumbach_2014", "dorsiflexion_in_supination"]
  how         = "As with the knee extended, knee bent to 90 deg; at least 20 deg of bend frees the gastrocnemius. Dorsiflexion positive."
}

measure "ankle_plantarflexion" {
  of          = "limb"
  label       = "Ankle plantarflexion"
  unit        = "deg"
  plausible   = [-20, 95]
  taken       = "lying"
  error       = 7.1
  error_basis = "taken over from active plantarflexion in healthy people, 1.96 times the larger standard error of 3.6 deg"
  cites       = ["plantarflexion_goniometry"]
  how         = "Supine, knee straight; fibula line against the lateral border of the foot. Plantarflexion counts positive here; negative where plantigrade is not reached."
}

measure "ankle_dorsiflexion_loaded_knee_extended" {
  of          = "limb"
  label       = "Ankle dorsiflexion, knee extended, loaded"
  unit        = "deg"
  plausible   = [-45, 60]
  taken       = "standing"
  error       = 2.7
  error_basis = "taken over from the lunge with the knee bent: 1.96 times a standard error of 1.4 deg"
  cites       = ["lunge_reliability"]
  how         = "Standing, this leg behind, heel down, knee straight, foot straight ahead, arch held up; inclinometer on the front of the shank. Dorsiflexion positive."
}

measure "ankle_dorsiflexion_lunge" {
  of          = "limb"
  label       = "Ankle dorsiflexion, knee flexed, loaded (lunge)"
  unit        = "deg"
  plausible   = [-45, 65]
  taken       = "standing"
  error       = 2.7
  error_basis = "1.96 times the larger standard error with an inclinometer, 1.4 deg, healthy people; with a goniometer 5.5 deg; a tape from toe to wall, 1.2 cm, does not measure the angle"
  cites       = ["lunge_reliability"]
  how         = "Standing in a lunge, heel down, knee over the second toe; inclinometer on the front of the shank. Dorsiflexion positive."
}

measure "ankle_end_feel" {
  of          = "limb"
  label       = "End feel of ankle dorsiflexion"
  one_of      = ["soft", "firm", "springy", "hard"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "At the end of slow dorsiflexion: soft muscle, firm tendon or capsule, springy block, hard bone."
}

measure "ankle_sideways_stability" {
  of          = "limb"
  label       = "Ankle stability sideways"
  one_of      = ["stable", "loose_inversion", "loose_eversion", "loose_both"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Supine, ankle as near plantigrade as it goes; tilt and draw the foot and compare with the other side."
}

# Hindfoot, forefoot, rays

measure "hindfoot_inversion" {
  of          = "limb"
  label       = "Hindfoot inversion"
  unit        = "deg"
  plausible   = [-30, 70]
  taken       = "lying"
  error_basis = "none is published that we know of; agreement between therapists at the end of range is poor, ICC 0.37"
  cites       = ["subtalar_agreement"]
  how         = "Prone, ankle as near plantigrade as it goes; line of the heel against the line of the shank. Negative where neutral is not reached."
}

measure "hindfoot_eversion" {
  of          = "limb"
  label       = "Hindfoot eversion"
  unit        = "deg"
  plausible   = [-40, 50]
  taken       = "lying"
  error_basis = "none is published that we know of; agreement between therapists at the end of range is poor, ICC 0.39"
  cites       = ["subtalar_agreement"]
  how         = "Prone, ankle as near plantigrade as it goes; line of the heel against the line of the shank. Negative where neutral is not reached."
}

measure "forefoot_inversion" {
  of          = "limb"
  label       = "Forefoot inversion on the hindfoot"
  unit        = "deg"
  plausible   = [-30, 70]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Prone, heel held in neutral; turn the forefoot inwards; plane of the metatarsal heads against the heel. Negative where neutral is not reached."
}

measure "forefoot_eversion" {
  of          = "limb"
  label       = "Forefoot eversion on the hindfoot"
  unit        = "deg"
  plausible   = [-40, 60]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Prone, heel held in neutral; turn the forefoot outwards; plane of the metatarsal heads against the heel. Negative where neutral is not reached."
}

measure "forefoot_to_hindfoot_angle" {
  of          = "limb"
  label       = "Resting forefoot angle to the hindfoot"
  unit        = "deg"
  plausible   = [-40, 40]
  taken       = "lying"
  error_basis = "none is published that we know of"
  cites       = ["astrom_1995"]
  how         = "Prone, subtalar joint in neutral, lateral forefoot loaded to first resistance. Varus (inverted) positive, valgus negative."
}

measure "forefoot_adduction_corrects" {
  of          = "limb"
  label       = "Forefoot adduction corrects"
  one_of      = ["none_needed", "fully", "partly", "not_at_all"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Heel held in neutral; bring the forefoot straight on the hindfoot with one hand."
}

measure "midfoot_mobility" {
  of          = "limb"
  label       = "Midfoot mobility"
  one_of      = ["stiff", "usual", "loose"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Heel held, ankle at the end of dorsiflexion; press up under the metatarsal heads and watch whether the midfoot bends."
}

measure "first_ray_position" {
  of          = "limb"
  label       = "First ray position"
  one_of      = ["level", "plantarflexed", "dorsiflexed"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Prone or supine, subtalar joint in neutral; first metatarsal head against the plane of the second to fourth."
}

measure "first_ray_corrects" {
  of          = "limb"
  label       = "First ray corrects to the level of the others"
  one_of      = ["none_needed", "fully", "partly", "not_at_all"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Press under (or on) the first metatarsal head. It decides whether the forefoot is posted or accommodated; common practice, no source."
}

measure "hallux_extension" {
  of          = "limb"
  label       = "Extension of the great toe"
  unit        = "deg"
  plausible   = [-60, 110]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Supine, ankle at plantigrade or as near as it goes, first metatarsal held; proximal phalanx against the metatarsal. Negative short of straight."
}

measure "great_toe_position" {
  of          = "limb"
  label       = "Great toe"
  one_of      = ["straight", "valgus_flexible", "valgus_fixed", "clawed", "stiff"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Lying, then confirmed in standing; flexible where a finger straightens it; stiff where extension is nearly lost."
}

measure "lesser_toe_position" {
  of          = "limb"
  label       = "Lesser toes"
  one_of      = ["straight", "clawed_flexible", "clawed_fixed"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Lying with the ankle at plantigrade, then in standing; the worst toe counts."
}

# Turning of the limb. External is positive.

measure "thigh_foot_angle" {
  of          = "limb"
  label       = "Thigh-foot angle"
  unit        = "deg"
  plausible   = [-60, 80]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Prone, knee at 90 deg, foot plantigrade and not turned by hand; line of the foot against the line of the thigh. External positive."
}

measure "transmalleolar_angle" {
  of          = "limb"
  label       = "Tibial torsion (line through the malleoli)"
  unit        = "deg"
  plausible   = [-60, 80]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Prone, knee at 90 deg; square to the line through both malleoli against the line of the thigh. External positive; not changed by the foot."
}

measure "knee_ligaments" {
  of          = "limb"
  label       = "Knee ligaments"
  one_of      = ["stable", "loose_valgus", "loose_varus", "loose_behind", "loose_several"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Supine; stress the knee sideways straight and slightly bent, and draw it to and fro; compare with the other side."
}
