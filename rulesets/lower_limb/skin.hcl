# Skin, swelling, circulation and pain of the limb. Skin is looked at wherever a shell, strap or foot plate can bear.

# Skin, place by place. red_after_pressure: still red 20 minutes after pressure is off (limits in use run from 15 to 45
# minutes). fragile: thin, scarred, dry or macerated, grafted. broken: any open place.

measure "malleolar_skin" {
  of          = "limb"
  label       = "Skin, over the malleoli, the worse of the two"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Both prominences and their lower edges, after the shoe or device has been off for 20 minutes."
}

measure "malleolar_skin_side" {
  of          = "limb"
  label       = "Malleolus with the worse skin"
  one_of      = ["neither", "medial", "lateral", "both"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Which of the two malleoli the finding above is about."
}

measure "heel_skin" {
  of          = "limb"
  label       = "Skin, heel, back and underside"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Back of the heel, edges of the heel cup, underside."
}

measure "achilles_skin" {
  of          = "limb"
  label       = "Skin, over the Achilles tendon"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Where a posterior strut, shell edge or shoe counter runs."
}

measure "navicular_skin" {
  of          = "limb"
  label       = "Skin, over the navicular"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Medial prominence; look also at the talar head below a collapsed arch."
}

measure "first_metatarsal_head_skin" {
  of          = "limb"
  label       = "Skin, first metatarsal head"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Medial side and underside."
}

measure "fifth_metatarsal_head_skin" {
  of          = "limb"
  label       = "Skin, fifth metatarsal head"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Lateral side and underside."
}

measure "fifth_metatarsal_base_skin" {
  of          = "limb"
  label       = "Skin, base of the fifth metatarsal"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Lateral prominence and underside."
}

measure "plantar_forefoot_skin" {
  of          = "limb"
  label       = "Skin, underside of the forefoot"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Second to fourth metatarsal heads."
}

measure "plantar_midfoot_skin" {
  of          = "limb"
  label       = "Skin, underside of the midfoot"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Under the arch, where an arch support or a medial foot shell bears; in a collapsed foot the lowest point."
}

measure "toe_skin" {
  of          = "limb"
  label       = "Skin, toes"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Tops of clawed toes, tips, between the toes."
}

measure "foot_dorsum_skin" {
  of          = "limb"
  label       = "Skin, top of the foot"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Where a dorsal wrap or instep strap bears, and the instep crest."
}

measure "front_of_ankle_skin" {
  of          = "limb"
  label       = "Skin, front of the ankle"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Where an instep strap or the lower edge of an anterior shell bears."
}

measure "anterior_shin_skin" {
  of          = "limb"
  label       = "Skin, front of the shin"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Crest and both flat sides, where an anterior shell bears."
}

measure "posterior_calf_skin" {
  of          = "limb"
  label       = "Skin, back of the calf"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Where a posterior shell or calf band bears."
}

measure "medial_shank_skin" {
  of          = "limb"
  label       = "Skin, medial side of the shank"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Along the posterior border of the tibia, where a shell edge or medial strut runs."
}

measure "lateral_shank_skin" {
  of          = "limb"
  label       = "Skin, lateral side of the shank"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Over the fibula above the malleolus, where a shell edge or lateral strut runs."
}

measure "fibular_head_skin" {
  of          = "limb"
  label       = "Skin, over the fibular head"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "The head and the nerve just below it; tap for tingling."
}

measure "patellar_tendon_skin" {
  of          = "limb"
  label       = "Skin, patellar tendon and tibial tubercle"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Where a high anterior shell bears."
}

measure "popliteal_skin" {
  of          = "limb"
  label       = "Skin, behind the knee"
  one_of      = ["intact", "fragile", "red_after_pressure", "broken"]
  taken       = "lying"
  error_basis = "a judgement by eye; none is published that we know of"
  cites       = ["redness_leaflet"]
  how         = "Where the upper edge meets the bent knee."
}

measure "plantar_callus" {
  of    = "limb"
  label = "Callus under the foot"
  one_of = [
    "none", "first_metatarsal_head", "fifth_metatarsal_head", "lateral_border", "heel", "toes",
    "several",
  ]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "The place with the thickest callus shows where the foot is loaded."
}

measure "previous_foot_ulcer" {
  of          = "limb"
  label       = "Foot ulcer in the past"
  yes_no      = true
  taken       = "lying"
  error_basis = "a record of what is known, not a measurement"
  cites       = ["schaper_2020"]
  how         = "From the record and by looking for scars."
}

measure "foot_amputation" {
  of          = "limb"
  label       = "Amputation at the foot"
  one_of      = ["none", "toe", "ray", "midfoot"]
  taken       = "lying"
  error_basis = "seen, not measured"
  how         = "By looking."
}

measure "hot_swollen_foot" {
  of          = "limb"
  label       = "Hot, red, swollen foot without a wound"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Back of the hand on both feet, or a skin thermometer; in a foot without sensation it needs a specialist foot service the same day."
}

measure "foot_risk" {
  of          = "limb"
  label       = "Foot risk category, as recorded by the foot service"
  scale       = "iwgdf_risk"
  taken       = "lying"
  error_basis = "none is published that we know of"
  cites       = ["schaper_2020"]
  how         = "Copied from the record with its date, not worked out here: loss of sensation, arterial disease, deformity and history make it."
}

# Swelling and circulation

measure "fluctuating_oedema" {
  of          = "limb"
  label       = "Swelling that changes through the day"
  yes_no      = true
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Ask, and compare morning with evening girth or the mark of the sock; yes where the fit of a shell would change."
}

measure "pitting_depth" {
  of          = "limb"
  label       = "Pitting oedema"
  scale       = "pitting_oedema"
  taken       = "lying"
  error_basis = "none is published that we know of"
  cites       = ["pitting_depths"]
  how         = "Press over the shin above the ankle for five seconds and judge the depth of the pit. Sources differ on the time it takes to fill."
}

measure "girth_change_through_day" {
  of          = "limb"
  label       = "Change of ankle girth through the day"
  unit        = "mm"
  plausible   = [-20, 120]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Evening less morning, tape at the narrowest place above the malleoli, same tape pull."
}

measure "foot_pulses" {
  of          = "limb"
  label       = "Foot pulses"
  one_of      = ["both", "one", "none"]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "Dorsal and posterior tibial pulse by finger, with a Doppler where not felt."
}

measure "ankle_brachial_pressure_index" {
  of          = "limb"
  label       = "Ankle brachial pressure index"
  unit        = "1"
  plausible   = [0, 2.5]
  taken       = "lying"
  error       = 0.11
  error_basis = "Doppler limits of agreement 0.16 divided by the square root of 2; the standard error of 0.03 in the same abstract, 0.04 in diabetes, does not agree with them and is not used; with an oscillometer 0.16"
  cites       = ["pressure_index_2020", "pressure_index_oscillometer"]
  how         = "Lying ten minutes; Doppler; say which ankle pressure was used. Above 1.3 to 1.4 the vessels are stiff and the index is not healthy."
}

measure "ankle_systolic_pressure" {
  of          = "limb"
  label       = "Ankle systolic pressure"
  unit        = "mm[Hg]"
  plausible   = [0, 300]
  taken       = "lying"
  error_basis = "none is published that we know of"
  cites       = ["limb_ischaemia_bands"]
  how         = "Lying ten minutes; Doppler; the higher of the two ankle arteries."
}

measure "toe_brachial_pressure_index" {
  of          = "limb"
  label       = "Toe brachial pressure index"
  unit        = "1"
  plausible   = [0, 2]
  taken       = "lying"
  error_basis = "none is published that we know of"
  cites       = ["toe_pressure_guidance"]
  how         = "Lying ten minutes in a warm room; cuff on the great toe; used where ankle vessels are stiff."
}

# Pain

measure "foot_ankle_pain" {
  of          = "limb"
  label       = "Pain at foot or ankle on walking, 0 to 10"
  count       = true
  plausible   = [0, 10]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "The person names a number from 0 none to 10 the worst there can be, for an ordinary walk in the last week."
}

measure "knee_pain" {
  of          = "limb"
  label       = "Pain at the knee on walking, 0 to 10"
  count       = true
  plausible   = [0, 10]
  taken       = "lying"
  error_basis = "none is published that we know of"
  how         = "As for foot and ankle; note where and when in the step."
}

measure "pain_place" {
  of    = "limb"
  label = "Place of the pain"
  text  = true
  taken = "lying"
  how   = "Where, when in the step, what eases it."
}
