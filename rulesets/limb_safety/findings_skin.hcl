# Skin by region. skin_broken, skin_red and skin_fragile are about the twelve places that almost every device touches;
# the edge places are those that a design can keep clear of.

finding "skin_broken_at_hindfoot" {
  holds   = "limb.malleolar_skin == 'broken' || limb.heel_skin == 'broken' || limb.achilles_skin == 'broken' || limb.navicular_skin == 'broken'"
  because = "An open place at the ankle, the heel or the navicular."
}

finding "skin_broken_at_midfoot" {
  holds   = "limb.plantar_midfoot_skin == 'broken' || limb.fifth_metatarsal_base_skin == 'broken' || limb.foot_dorsum_skin == 'broken'"
  because = "An open place at the middle of the foot."
}

finding "skin_broken_at_forefoot" {
  holds   = "limb.first_metatarsal_head_skin == 'broken' || limb.fifth_metatarsal_head_skin == 'broken' || limb.plantar_forefoot_skin == 'broken'"
  because = "An open place at the ball of the foot."
}

finding "skin_broken_at_shank" {
  holds   = "limb.anterior_shin_skin == 'broken' || limb.posterior_calf_skin == 'broken'"
  because = "An open place where a shank shell bears."
}

finding "skin_broken" {
  holds   = "finding.skin_broken_at_hindfoot || finding.skin_broken_at_midfoot || finding.skin_broken_at_forefoot || finding.skin_broken_at_shank"
  because = "An open place where almost every device touches."
}

finding "skin_broken_at_toes" {
  holds   = "limb.toe_skin == 'broken'"
  because = "An open place on the toes, which the shoe touches if not the device."
}

finding "skin_broken_at_shank_sides" {
  holds   = "limb.medial_shank_skin == 'broken' || limb.lateral_shank_skin == 'broken' || limb.front_of_ankle_skin == 'broken'"
  because = "An open place where a strut, an edge or a strap can run, or be kept away."
}

finding "skin_broken_at_knee" {
  holds   = "limb.fibular_head_skin == 'broken' || limb.patellar_tendon_skin == 'broken' || limb.popliteal_skin == 'broken'"
  because = "An open place that only a high upper edge touches."
}

finding "skin_red_at_hindfoot" {
  holds   = "limb.malleolar_skin == 'red_after_pressure' || limb.heel_skin == 'red_after_pressure' || limb.achilles_skin == 'red_after_pressure' || limb.navicular_skin == 'red_after_pressure'"
  because = "Still red 20 minutes after pressure is off, at the ankle, the heel or the navicular."
  cites   = ["redness_leaflet"]
}

finding "skin_red_at_midfoot" {
  holds   = "limb.plantar_midfoot_skin == 'red_after_pressure' || limb.fifth_metatarsal_base_skin == 'red_after_pressure' || limb.foot_dorsum_skin == 'red_after_pressure'"
  because = "Still red 20 minutes after pressure is off, at the middle of the foot."
  cites   = ["redness_leaflet"]
}

finding "skin_red_at_forefoot" {
  holds   = "limb.first_metatarsal_head_skin == 'red_after_pressure' || limb.fifth_metatarsal_head_skin == 'red_after_pressure' || limb.plantar_forefoot_skin == 'red_after_pressure'"
  because = "Still red 20 minutes after pressure is off, at the ball of the foot."
  cites   = ["redness_leaflet"]
}

finding "skin_red_at_shank" {
  holds   = "limb.anterior_shin_skin == 'red_after_pressure' || limb.posterior_calf_skin == 'red_after_pressure'"
  because = "Still red 20 minutes after pressure is off, where a shank shell bears."
  cites   = ["redness_leaflet"]
}

finding "skin_red" {
  holds   = "finding.skin_red_at_hindfoot || finding.skin_red_at_midfoot || finding.skin_red_at_forefoot || finding.skin_red_at_shank"
  because = "Something presses already, at one of the places that almost every device touches."
  cites   = ["redness_leaflet"]
}

finding "skin_fragile_at_foot" {
  holds   = "limb.malleolar_skin == 'fragile' || limb.heel_skin == 'fragile' || limb.navicular_skin == 'fragile' || limb.foot_dorsum_skin == 'fragile'"
  because = "Thin, scarred or grafted skin under a foot shell."
}

finding "skin_fragile_at_shank" {
  holds   = "limb.achilles_skin == 'fragile' || limb.anterior_shin_skin == 'fragile' || limb.posterior_calf_skin == 'fragile'"
  because = "Thin, scarred or grafted skin under a shank shell."
}

finding "skin_fragile" {
  holds   = "finding.skin_fragile_at_foot || finding.skin_fragile_at_shank"
  because = "Thin, scarred or grafted skin where a shell bears."
}

finding "ulcer_under_foot" {
  holds   = "limb.plantar_forefoot_skin == 'broken' || limb.plantar_midfoot_skin == 'broken' || limb.first_metatarsal_head_skin == 'broken' || limb.fifth_metatarsal_head_skin == 'broken'"
  because = "An open place under the ball or the middle of the foot."
}

finding "skin_needs_care" {
  holds   = "finding.insensate || finding.skin_fragile"
  because = "Skin that can't feel, or that is thin, scarred or grafted where a shell bears."
}
