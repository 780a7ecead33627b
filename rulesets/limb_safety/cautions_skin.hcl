# Skin and sensation.

caution "skin_broken_at_hindfoot" {
  level = "contraindication"
  when  = "finding.skin_broken_at_hindfoot"
  says  = "Open skin at the hindfoot: malleoli ${limb.malleolar_skin}, heel ${limb.heel_skin}, Achilles tendon ${limb.achilles_skin}, navicular ${limb.navicular_skin}."
  act   = "No new device on it before the wound has been reviewed: ask for wound care. A device that is worn now and touches it stays off."
  basis = "common_practice"
  cites = ["contact_exclusions", "teaching_precautions"]
}

caution "skin_broken_at_midfoot" {
  level = "contraindication"
  when  = "finding.skin_broken_at_midfoot"
  says  = "Open skin at the midfoot: underside ${limb.plantar_midfoot_skin}, base of the fifth metatarsal ${limb.fifth_metatarsal_base_skin}, top of the foot ${limb.foot_dorsum_skin}."
  act   = "No new device on it before the wound has been reviewed: ask for wound care. A device that is worn now and touches it stays off."
  basis = "common_practice"
  cites = ["contact_exclusions", "teaching_precautions"]
}

caution "skin_broken_at_forefoot" {
  level = "contraindication"
  when  = "finding.skin_broken_at_forefoot"
  says  = "Open skin at the ball of the foot: first metatarsal head ${limb.first_metatarsal_head_skin}, fifth ${limb.fifth_metatarsal_head_skin}, underside between them ${limb.plantar_forefoot_skin}."
  act   = "No new device on it before the wound has been reviewed: ask for wound care. A device that is worn now and touches it stays off."
  basis = "common_practice"
  cites = ["contact_exclusions", "teaching_precautions"]
}

caution "skin_broken_at_shank" {
  level = "contraindication"
  when  = "finding.skin_broken_at_shank"
  says  = "Open skin where a shank shell bears: front of the shin ${limb.anterior_shin_skin}, back of the calf ${limb.posterior_calf_skin}."
  act   = "No new device on it before the wound has been reviewed: ask for wound care. A device that is worn now and touches it stays off."
  basis = "common_practice"
  cites = ["contact_exclusions", "teaching_precautions"]
}

caution "skin_broken_at_toes" {
  level = "contraindication"
  when  = "finding.skin_broken_at_toes"
  says  = "Open skin on the toes."
  act   = "Ask for wound care before a shoe or a foot plate is settled; nothing presses on the toes."
  basis = "common_practice"
  cites = ["contact_exclusions"]
}

caution "skin_broken_at_shank_sides" {
  level = "precaution"
  when  = "finding.skin_broken_at_shank_sides"
  says  = "Open skin beside the shank or at the front of the ankle: medial ${limb.medial_shank_skin}, lateral ${limb.lateral_shank_skin}, front of the ankle ${limb.front_of_ankle_skin}."
  act   = "Have the wound reviewed; keep strut, edge and strap clear of it, or wait."
  basis = "common_practice"
  cites = ["contact_exclusions"]
}

caution "skin_broken_at_knee" {
  level = "precaution"
  when  = "finding.skin_broken_at_knee"
  says  = "Open skin near the knee: fibular head ${limb.fibular_head_skin}, patellar tendon ${limb.patellar_tendon_skin}, behind the knee ${limb.popliteal_skin}."
  act   = "Have the wound reviewed; keep the upper edge well below it, or wait."
  basis = "common_practice"
  cites = ["contact_exclusions"]
}

caution "ulcer_under_an_insensate_foot" {
  level = "contraindication"
  when  = "person.diabetes != 'none' && finding.insensate && finding.ulcer_under_foot"
  says  = "Diabetes, protective sensation ${limb.protective_sensation}, and an ulcer under the foot."
  act   = "Send to the foot service for offloading. Say that falls (${person.falls_last_year} in the last year), infection and poor flow speak against an offloading device that can't be taken off."
  basis = "published"
  cites = ["australian_offloading_2021", "offloading_2023"]
}

caution "skin_red_at_hindfoot" {
  level = "precaution"
  when  = "finding.skin_red_at_hindfoot"
  says  = "Still red 20 minutes after pressure is off: malleoli ${limb.malleolar_skin}, heel ${limb.heel_skin}, Achilles tendon ${limb.achilles_skin}, navicular ${limb.navicular_skin}."
  act   = "Find what presses there and take it away before the cast; look again at the fitting and after the first wear."
  basis = "published"
  cites = ["redness_leaflet"]
}

caution "skin_red_at_midfoot" {
  level = "precaution"
  when  = "finding.skin_red_at_midfoot"
  says  = "Still red 20 minutes after pressure is off: underside of the midfoot ${limb.plantar_midfoot_skin}, base of the fifth metatarsal ${limb.fifth_metatarsal_base_skin}, top of the foot ${limb.foot_dorsum_skin}."
  act   = "Find what presses there and take it away before the cast; look again at the fitting and after the first wear."
  basis = "published"
  cites = ["redness_leaflet"]
}

caution "skin_red_at_forefoot" {
  level = "precaution"
  when  = "finding.skin_red_at_forefoot"
  says  = "Still red 20 minutes after pressure is off: first metatarsal head ${limb.first_metatarsal_head_skin}, fifth ${limb.fifth_metatarsal_head_skin}, underside between them ${limb.plantar_forefoot_skin}."
  act   = "Find what presses there and take it away before the cast; look again at the fitting and after the first wear."
  basis = "published"
  cites = ["redness_leaflet"]
}

caution "skin_red_at_shank" {
  level = "precaution"
  when  = "finding.skin_red_at_shank"
  says  = "Still red 20 minutes after pressure is off: front of the shin ${limb.anterior_shin_skin}, back of the calf ${limb.posterior_calf_skin}."
  act   = "Find what presses there and take it away before the cast; look again at the fitting and after the first wear."
  basis = "published"
  cites = ["redness_leaflet"]
}

caution "redness_limits_differ" {
  level = "note"
  when  = "finding.skin_red"
  says  = "How long redness may last is not agreed: leaflets of clinics say 15, 20, 30 or 45 minutes, and no study was found behind any of them."
  act   = "Write the clinic's own limit on the leaflet that goes with the device."
  basis = "published"
  cites = ["redness_leaflet", "wear_leaflet", "redness_limits"]
}

caution "skin_fragile" {
  level = "precaution"
  when  = "finding.skin_fragile"
  says  = "Fragile skin where a shell bears: malleoli ${limb.malleolar_skin}, heel ${limb.heel_skin}, navicular ${limb.navicular_skin}, top of the foot ${limb.foot_dorsum_skin}, Achilles tendon ${limb.achilles_skin}, shin ${limb.anterior_shin_skin}, calf ${limb.posterior_calf_skin}."
  act   = "Ask why it is fragile and whether it can be treated; line the shell, round its edges, and pull nothing across the skin."
  basis = "common_practice"
}

caution "skin_risk_high" {
  level = "precaution"
  when  = "person.skin_risk == 'high'"
  says  = "Skin has broken before under a device or shoe, or is at high risk for another reason."
  act   = "Find out where and under what; look at nutrition, moisture and medicines with whoever treats the person."
  basis = "common_practice"
}

caution "ulcer_before" {
  level = "precaution"
  when  = "limb.previous_foot_ulcer"
  says  = "There has been an ulcer on this foot."
  act   = "Keep pressure off the old place, and see that a foot service knows the foot. Category recorded: ${limb.foot_risk}."
  basis = "published"
  cites = ["schaper_2020"]
}

caution "ulcer_outside_the_categories" {
  level = "note"
  when  = "limb.previous_foot_ulcer && limb.protective_sensation == 'present' && person.arterial_disease == 'none_known'"
  says  = "An old ulcer with sensation present and no arterial disease known fits no row of the foot risk categories."
  act   = "Don't read it as category 0: ask the foot service."
  basis = "published"
  cites = ["schaper_2020"]
}

caution "part_of_foot_missing" {
  level = "precaution"
  when  = "limb.foot_amputation in ['toe', 'ray', 'midfoot']"
  says  = "Amputation at the foot: ${limb.foot_amputation}. What is left carries more."
  act   = "Fill and protect what is left, and see that a foot service knows the foot."
  basis = "common_practice"
  cites = ["schaper_2020"]
}

caution "foot_risk_review" {
  level = "note"
  when  = "limb.foot_risk >= iwgdf_risk('1')"
  says  = "Foot risk category ${limb.foot_risk}. Feet are seen every 6 to 12 months in category 1, 3 to 6 in category 2, 1 to 3 in category 3."
  act   = "See that the foot service's next date is set; the review of the device doesn't take its place."
  basis = "published"
  cites = ["schaper_2020"]
}

caution "risk_category_out_of_date" {
  level = "precaution"
  when  = "limb.foot_risk == iwgdf_risk('0') && finding.insensate"
  says  = "Recorded as foot risk category 0, yet protective sensation is ${limb.protective_sensation}: a foot without it is never category 0."
  act   = "Treat the foot as insensate, and ask for the category to be looked at again."
  basis = "published"
  cites = ["schaper_2020"]
}

caution "insensate" {
  level = "precaution"
  when  = "finding.insensate"
  says  = "Protective sensation is ${limb.protective_sensation}: pressure will not be felt in time."
  act   = "Show the person and whoever helps how to look at all of the foot and leg, daily and after each wear; round every edge."
  basis = "published"
  cites = ["wear_leaflet", "teaching_precautions"]
}

caution "skin_unchecked" {
  level = "contraindication"
  when  = "finding.skin_unchecked"
  says  = "Protective sensation is ${limb.protective_sensation}, and nobody can look at the skin every day."
  act   = "No closed shell before a daily look at the skin is arranged."
  basis = "from_memory"
}

caution "site_not_felt" {
  level = "precaution"
  when  = "finding.site_not_felt"
  says  = "One of the three sites was not felt (great toe felt: ${limb.monofilament_great_toe}, first metatarsal head: ${limb.monofilament_first_metatarsal_head}, fifth: ${limb.monofilament_fifth_metatarsal_head}); the judgement over all sites is ${limb.protective_sensation}."
  act   = "Test the site again away from callus and scar. If it stays unfelt, record protective sensation as reduced."
  basis = "published"
  cites = ["monofilament_procedure", "sensation_by_missed_sites"]
}

caution "touch_hurts" {
  level = "precaution"
  when  = "limb.touch_oversensitive"
  says  = "Touch or pressure is felt as pain."
  act   = "Try the lining and the strap on the skin before the cast; think of a referral for the pain."
  basis = "common_practice"
}
