# Tone, lying, before the joints are stretched for range. The slow angle R2 of the Tardieu scale is the passive
# range taken slowly, so it is recorded once, under range: gastrocnemius = ankle_dorsiflexion_knee_extended,
# soleus = ankle_dorsiflexion_knee_flexed, hamstrings = popliteal_angle, rectus femoris = prone_knee_flexion,
# hip adductors = hip_abduction, invertors = hindfoot_eversion. Here stand the fast angle R1 and the quality of the
# reaction. The other groups are not stretched fast; common practice, no source.

# Modified Ashworth, one movement through the range in about one second. 0 no increase; 1 catch and release, or slight
# resistance at the end; 1+ catch, then slight resistance through less than half of the rest; 2 marked through most
# of the range, part still moves easily; 3 passive movement difficult; 4 rigid.

measure "hip_flexor_tone" {
  of          = "limb"
  label       = "Tone, hip flexors"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Supine with the leg over the edge or side-lying, pelvis held; carry the hip from flexion to extension in about one second."
}

measure "hip_adductor_tone" {
  of          = "limb"
  label       = "Tone, hip adductors"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Supine, knee straight, other leg held; carry the leg outwards in about one second."
}

measure "hamstring_tone" {
  of          = "limb"
  label       = "Tone, hamstrings"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Supine, hip at 90 deg; straighten the knee in about one second."
}

measure "quadriceps_tone" {
  of          = "limb"
  label       = "Tone, quadriceps"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Prone, or supine with the leg over the edge; bend the knee in about one second."
}

measure "plantarflexor_tone" {
  of          = "limb"
  label       = "Tone, plantarflexors, knee extended"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Supine, knee straight, foot held in slight supination; dorsiflex in about one second. Gastrocnemius and soleus together."
}

measure "soleus_tone" {
  of          = "limb"
  label       = "Tone, plantarflexors, knee flexed (soleus)"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Supine, knee bent to 90 deg, foot held in slight supination; dorsiflex in about one second."
}

measure "dorsiflexor_tone" {
  of          = "limb"
  label       = "Tone, dorsiflexors"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Supine, knee bent over a roll; plantarflex in about one second."
}

measure "invertor_tone" {
  of          = "limb"
  label       = "Tone, invertors (tibialis posterior)"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Supine, ankle in its resting position; evert and abduct the foot in about one second."
}

measure "evertor_tone" {
  of          = "limb"
  label       = "Tone, evertors"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Supine, ankle in its resting position; invert and adduct the foot in about one second."
}

measure "toe_flexor_tone" {
  of          = "limb"
  label       = "Tone, toe flexors"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Supine, ankle at the angle planned for the device; extend the toes in about one second."
}

measure "hallux_extensor_tone" {
  of          = "limb"
  label       = "Tone, long extensor of the great toe"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke", "ashworth_agreement_cerebral_palsy"]
  how         = "Supine, ankle in its resting position; flex the great toe in about one second."
}

# Tardieu: angle of catch R1 on the fastest stretch, and quality of the reaction. R1 cannot lie beyond R2.

measure "gastrocnemius_fast_angle" {
  of          = "limb"
  label       = "Fast angle (R1), plantarflexors, knee extended"
  unit        = "deg"
  plausible   = [-70, 45]
  taken       = "lying"
  error       = 10
  error_basis = "our default of 10 deg, under which a difference between slow and fast is not resolved; published mean absolute differences reach 10.7 deg, agreement on the difference is ICC 0.57 between raters and 0.40 within, and no standard error is published"
  cites       = ["tardieu_angles", "tardieu_end_angles", "tardieu_agreement_stroke"]
  how         = "Supine, knee straight, foot in slight supination; as fast as possible; ankle angle at the catch. Dorsiflexion positive. No catch: leave it out."
}

measure "soleus_fast_angle" {
  of          = "limb"
  label       = "Fast angle (R1), plantarflexors, knee flexed"
  unit        = "deg"
  plausible   = [-70, 50]
  taken       = "lying"
  error       = 10
  error_basis = "our default of 10 deg, under which a difference between slow and fast is not resolved; published mean absolute differences reach 10.7 deg, agreement on the difference is ICC 0.57 between raters and 0.40 within, and no standard error is published"
  cites       = ["tardieu_angles", "tardieu_end_angles", "tardieu_agreement_stroke"]
  how         = "Supine, knee at 90 deg, foot in slight supination; as fast as possible; ankle angle at the catch. Dorsiflexion positive. No catch: leave it out."
}

measure "hamstring_fast_angle" {
  of          = "limb"
  label       = "Fast angle (R1), hamstrings"
  unit        = "deg"
  plausible   = [0, 150]
  taken       = "lying"
  error       = 10
  error_basis = "our default of 10 deg, under which a difference between slow and fast is not resolved; published mean absolute differences reach 10.7 deg and no standard error is published"
  cites       = ["tardieu_angles", "tardieu_end_angles"]
  how         = "Supine, hip at 90 deg; straighten the knee as fast as possible; degrees short of straight at the catch, as for the popliteal angle."
}

measure "rectus_fast_angle" {
  of          = "limb"
  label       = "Fast angle (R1), rectus femoris"
  unit        = "deg"
  plausible   = [0, 160]
  taken       = "lying"
  error       = 10
  error_basis = "our default of 10 deg, under which a difference between slow and fast is not resolved; published mean absolute differences reach 10.7 deg and no standard error is published"
  cites       = ["tardieu_angles", "tardieu_end_angles"]
  how         = "Prone, pelvis held flat; bend the knee as fast as possible; knee flexion at the catch, straight is 0."
}

measure "hip_adductor_fast_angle" {
  of          = "limb"
  label       = "Fast angle (R1), hip adductors"
  unit        = "deg"
  plausible   = [-40, 80]
  taken       = "lying"
  error       = 10
  error_basis = "our default of 10 deg, under which a difference between slow and fast is not resolved; published mean absolute differences reach 10.7 deg and no standard error is published"
  cites       = ["tardieu_angles", "tardieu_end_angles"]
  how         = "Supine, knee straight, pelvis held; carry the leg outwards as fast as possible; hip abduction at the catch, negative short of the midline. No catch: leave it out."
}

measure "invertor_fast_angle" {
  of          = "limb"
  label       = "Fast angle (R1), invertors"
  unit        = "deg"
  plausible   = [-60, 50]
  taken       = "lying"
  error       = 10
  error_basis = "our default of 10 deg, under which a difference between slow and fast is not resolved; published mean absolute differences reach 10.7 deg and no standard error is published"
  cites       = ["tardieu_angles", "tardieu_end_angles"]
  how         = "Supine or prone, ankle in its resting position; evert the heel as fast as possible; heel against the line of the shank at the catch, everted positive. No catch: leave it out."
}

measure "gastrocnemius_tardieu_quality" {
  of          = "limb"
  label       = "Tardieu quality, plantarflexors, knee extended"
  scale       = "tardieu_quality"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["barnes_2008", "patrick_2006"]
  how         = "On the same fast stretch as the fast angle, pressure held. 0 no resistance, 1 slight without a catch, 2 catch and release, 3 clonus under 10 seconds, 4 clonus over 10 seconds, 5 joint will not move."
}

measure "soleus_tardieu_quality" {
  of          = "limb"
  label       = "Tardieu quality, plantarflexors, knee flexed"
  scale       = "tardieu_quality"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["barnes_2008", "patrick_2006"]
  how         = "On the same fast stretch as the fast angle, pressure held. 0 no resistance, 1 slight without a catch, 2 catch and release, 3 clonus under 10 seconds, 4 clonus over 10 seconds, 5 joint will not move."
}

measure "hamstring_tardieu_quality" {
  of          = "limb"
  label       = "Tardieu quality, hamstrings"
  scale       = "tardieu_quality"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["barnes_2008", "patrick_2006"]
  how         = "On the same fast stretch as the fast angle. 0 no resistance, 1 slight without a catch, 2 catch and release, 3 clonus under 10 seconds, 4 clonus over 10 seconds, 5 joint will not move."
}

measure "rectus_tardieu_quality" {
  of          = "limb"
  label       = "Tardieu quality, rectus femoris"
  scale       = "tardieu_quality"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["barnes_2008", "patrick_2006"]
  how         = "On the same fast stretch as the fast angle. 0 no resistance, 1 slight without a catch, 2 catch and release, 3 clonus under 10 seconds, 4 clonus over 10 seconds, 5 joint will not move."
}

measure "hip_adductor_tardieu_quality" {
  of          = "limb"
  label       = "Tardieu quality, hip adductors"
  scale       = "tardieu_quality"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["barnes_2008", "patrick_2006"]
  how         = "On the same fast stretch as the fast angle. 0 no resistance, 1 slight without a catch, 2 catch and release, 3 clonus under 10 seconds, 4 clonus over 10 seconds, 5 joint will not move."
}

measure "invertor_tardieu_quality" {
  of          = "limb"
  label       = "Tardieu quality, invertors"
  scale       = "tardieu_quality"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["barnes_2008", "patrick_2006"]
  how         = "On the same fast stretch as the fast angle. 0 no resistance, 1 slight without a catch, 2 catch and release, 3 clonus under 10 seconds, 4 clonus over 10 seconds, 5 joint will not move."
}

# Clonus: ten beats take about two seconds, ten seconds are fifty beats or more; the two limits are not the same.

measure "clonus_beats" {
  of          = "limb"
  label       = "Clonus at the ankle, beats"
  count       = true
  plausible   = [0, 100]
  taken       = "lying"
  error_basis = "none is published that we know of"
  cites       = ["degowin_1987", "clonus_teaching"]
  how         = "Supine, knee slightly bent; dorsiflex briskly and hold. Count beats until they stop; none is 0; stop counting at 60."
}

measure "clonus_sustained" {
  of          = "limb"
  label       = "Clonus still beating after 10 seconds"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published that we know of"
  cites       = ["barnes_2008", "degowin_1987"]
  how         = "With the pressure held: yes where it has not faded after 10 seconds by the clock. It is not the limit of 10 beats; those are in the count."
}

# What standing and a local release change. What is found after a release (for example extending a lesser toe)
# stands beside the first finding, never instead of it. Common practice, no source.

measure "plantarflexor_tone_standing" {
  of          = "limb"
  label       = "Plantarflexor tone in standing, against lying"
  one_of      = ["less", "same", "more"]
  taken       = "standing"
  error_basis = "none is published that we know of"
  how         = "Standing on both feet, aid as needed; feel the calf and watch the heel as weight comes on. Compare with what was found lying."
}

measure "tone_release" {
  of    = "limb"
  label = "Release that lowered tone"
  one_of = [
    "none_tried", "no_effect", "lesser_toe_extended", "great_toe_extended",
    "hip_and_knee_flexed", "calf_pressed", "other",
  ]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "The local manoeuvre after which the foot could be moved further or more easily; repeat it once to be sure."
}

measure "plantarflexor_tone_released" {
  of          = "limb"
  label       = "Tone, plantarflexors, knee extended, with the release held"
  scale       = "modified_ashworth"
  taken       = "lying"
  error       = 1
  error_basis = "our default of one grade; no standard error is published"
  cites       = ["bohannon_1987", "ashworth_agreement_stroke"]
  how         = "As for the plantarflexor tone, while the release is held."
}

measure "ankle_dorsiflexion_released" {
  of          = "limb"
  label       = "Ankle dorsiflexion, knee extended, with the release held"
  unit        = "deg"
  plausible   = [-60, 45]
  taken       = "lying"
  error       = 5.6
  error_basis = "taken over from the same movement without a release: 1.96 times a standard error of 2.86 deg"
  cites       = ["goniometry_ankle_children"]
  how         = "As for ankle dorsiflexion with the knee extended, while the release is held. Dorsiflexion positive."
}

# What it takes to hold the foot where it is to be cast. Force times distance, as for any moment; own choice of
# how it is taken, no source.

measure "plantarflexor_resistance" {
  of          = "limb"
  label       = "Moment that holds the ankle where it is to be cast"
  unit        = "N.m"
  plausible   = [0, 150]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Supine, knee straight, person relaxed; bring the ankle slowly to the angle of the cast and hold it until the reading is steady; dynamometer under the metatarsal heads. Force times the distance from the axis through the malleoli to the pad. Tone and tightness together; 0 where the ankle stays there by itself."
}

measure "hindfoot_resistance" {
  of          = "limb"
  label       = "Moment that holds the hindfoot in line"
  unit        = "N.m"
  plausible   = [0, 60]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Prone or supine, ankle at the angle of the cast; bring the heel slowly into the line of the shank, or as near as it goes, and hold it; dynamometer at the side of the heel. Force times the height of the ankle's axis above the pad. 0 where the heel stays in line by itself."
}
