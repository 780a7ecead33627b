# Tone, range, fixed shape and pain.

caution "tone_hard_to_move" {
  level = "precaution"
  when  = "finding.tone_hard_to_move"
  says  = "Calf tone of grade ${limb.plantarflexor_tone}: passive movement is difficult."
  act   = "Talk to whoever treats tone before the cast, and examine again afterwards."
  basis = "common_practice"
}

caution "inversion_tone" {
  level = "precaution"
  when  = "finding.inversion_tone_hard_to_move"
  says  = "Tone of the invertors of grade ${limb.invertor_tone}: the foot will turn in the shell and press on its outer border and the lateral malleolus."
  act   = "Ask for treatment of tone; more wrap and an even hold rather than one strong strap."
  basis = "from_memory"
}

caution "tone_with_little_range" {
  level = "note"
  when  = "finding.tone_marked && finding.equinus"
  says  = "Calf tone of ${limb.plantarflexor_tone} and dorsiflexion of only ${limb.ankle_dorsiflexion_knee_extended}."
  act   = "More tone with less range asks for more leverage and more contact: higher edges, more wrap, shells rather than straps."
  basis = "common_practice"
}

caution "clonus_does_not_fade" {
  level = "precaution"
  when  = "finding.clonus_does_not_fade"
  says  = "Clonus does not fade (beats: ${limb.clonus_beats})."
  act   = "A quick stretch inside the device can set it off: hold the ankle, and talk to whoever treats the tone."
  basis = "published"
  cites = ["appasamy_2015", "degowin_1987"]
}

caution "clonus_limits_differ" {
  level = "note"
  when  = "limb.clonus_beats >= 3 && limb.clonus_beats < 10"
  says  = "${limb.clonus_beats} beats. One source calls 3 beats abnormal and 10 sustained, others call 5 sustained, another lets a few beats that fade pass as normal, and a scale of tone counts 10 seconds instead of beats."
  act   = "Write down the count and the time, and which limit the clinic uses."
  basis = "published"
  cites = ["degowin_1987", "clonus_five_beats", "clonus_teaching", "barnes_2008"]
}

caution "equinus_severe" {
  level = "precaution"
  when  = "finding.equinus_severe"
  says  = "Dorsiflexion of ${limb.ankle_dorsiflexion_knee_extended} with the knee straight: more than 20 deg short."
  act   = "Refer for what can be gained. Until then a device can only accommodate, with the heel built up."
  basis = "common_practice"
}

caution "contracture_beyond_the_composite_trial" {
  level = "precaution"
  when  = "limb.ankle_dorsiflexion_knee_extended <= deg(-15)"
  says  = "Dorsiflexion of ${limb.ankle_dorsiflexion_knee_extended}: 15 deg or more of plantarflexion contracture is left out of a trial of composite devices after stroke."
  act   = "Its findings won't speak for this leg: say so, try for a short time and measure the result."
  basis = "published"
  cites = ["carbon_stroke_trial"]
}

caution "contracture_beyond_the_rigid_trial" {
  level = "precaution"
  when  = "limb.ankle_dorsiflexion_knee_extended < deg(-10) || limb.knee_extension < deg(-10)"
  says  = "Dorsiflexion ${limb.ankle_dorsiflexion_knee_extended}, knee extension ${limb.knee_extension}: more than 10 deg short at ankle or knee was left out of a trial of stiff devices in children."
  act   = "Its findings don't speak for this leg: say so, try for a short time and measure the result."
  basis = "published"
  cites = ["kerkum_2013"]
}

caution "never_force_the_ankle" {
  level = "precaution"
  when  = "finding.equinus"
  says  = "The ankle stops at ${limb.ankle_dorsiflexion_knee_extended} with the knee straight. In a small study of serial casts on such feet 11.5 % had ulcers."
  act   = "Cast in the position that it reaches and build up the heel; forcing it breaks the midfoot or the skin. Look under the heel and at the malleoli after the first wear."
  basis = "published"
  cites = ["lee_2011"]
}

caution "hard_end_feel" {
  level = "contraindication"
  when  = "finding.ankle_blocked"
  says  = "The end of dorsiflexion is hard: bone stops it."
  act   = "No stretching and no serial casting. Ask for an X-ray and a surgical opinion; a device only accommodates."
  basis = "published"
  cites = ["contact_exclusions"]
}

caution "hindfoot_fixed" {
  level = "precaution"
  when  = "finding.hindfoot_fixed"
  says  = "The heel can't be brought under the shank by hand."
  act   = "Don't correct it with the device: take it as it is, fill in under it, and ask for a surgical opinion if the foot can't be stood on."
  basis = "published"
  cites = ["teaching_precautions", "block_test"]
}

caution "forefoot_fixed" {
  level = "precaution"
  when  = "finding.forefoot_fixed"
  says  = "The forefoot can't be brought level with the heel by hand."
  act   = "Take it as it is in the cast and fill in under it."
  basis = "published"
  cites = ["teaching_precautions"]
}

caution "ankle_loose_sideways" {
  level = "precaution"
  when  = "finding.ankle_loose_sideways"
  says  = "The ankle is loose sideways."
  act   = "No light open spring: hold heel and malleoli from both sides."
  basis = "published"
  cites = ["teaching_utilisation"]
}

caution "pain_on_walking" {
  level = "note"
  when  = "limb.foot_ankle_pain >= 1 || limb.knee_pain >= 1"
  says  = "Pain on walking: foot and ankle ${limb.foot_ankle_pain}, knee ${limb.knee_pain} of 10. ${limb.pain_place}"
  act   = "Find its cause first. Tell the person that a device whose pain is not eased by shifting it or its straps comes off, and to report it."
  basis = "from_memory"
  cites = ["nice_cp"]
}
