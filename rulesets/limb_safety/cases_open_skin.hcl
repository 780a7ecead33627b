# Open skin, place by place. Invented people; what is expected was worked out by hand from the rules.

case "intact skin everywhere: no wound, no mark, nothing to keep clear of" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      diabetes  = "none"
      skin_risk = "low"
    }
    right {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "intact"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
      toe_skin                   = "intact"
      medial_shank_skin          = "intact"
      lateral_shank_skin         = "intact"
      front_of_ankle_skin        = "intact"
      fibular_head_skin          = "intact"
      patellar_tendon_skin       = "intact"
      popliteal_skin             = "intact"
      protective_sensation       = "present"
      touch_oversensitive        = false
      previous_foot_ulcer        = false
      foot_amputation            = "none"
    }
  }
  expect "right" {
    choices = {
      relief          = "left_to_clinician (not provisional)"
      proximal_height = "left_to_clinician (not provisional)"
      strut_place     = "left_to_clinician (not provisional)"
      ankle_strap     = "left_to_clinician (not provisional)"
      padding         = "left_to_clinician (not provisional)"
    }
    findings = {
      skin_broken                = false
      skin_red                   = false
      skin_fragile               = false
      skin_needs_care            = false
      skin_broken_at_toes        = false
      skin_broken_at_shank_sides = false
      skin_broken_at_knee        = false
      ulcer_under_foot           = false
      skin_broken_at_hindfoot    = false
      skin_broken_at_midfoot     = false
      skin_broken_at_forefoot    = false
      skin_broken_at_shank       = false
      skin_red_at_hindfoot       = false
      skin_red_at_midfoot        = false
      skin_red_at_forefoot       = false
      skin_red_at_shank          = false
      skin_fragile_at_foot       = false
      skin_fragile_at_shank      = false
    }
    silent = ["wound_care_first", "offloading_service_for_an_ulcer", "line_skin_that_needs_care", "line_skin_that_hurts_to_touch", "keep_the_edge_below_the_knee", "keep_the_strut_off_the_medial_side", "keep_the_strut_off_the_lateral_side", "keep_the_strap_off_the_front_of_the_ankle", "skin_broken_at_hindfoot", "skin_broken_at_midfoot", "skin_broken_at_forefoot", "skin_broken_at_shank", "skin_broken_at_toes", "skin_broken_at_shank_sides", "skin_broken_at_knee", "ulcer_under_an_insensate_foot", "skin_fragile", "touch_hurts", "part_of_foot_missing", "daily_check_after_an_ulcer", "check_marked_foot_at_every_removal", "check_marked_ball_or_shank_at_every_removal", "redness_limit_of_twenty_minutes", "redness_limit_of_thirty_minutes", "redness_limits_differ", "skin_red_at_hindfoot", "skin_red_at_midfoot", "skin_red_at_forefoot", "skin_red_at_shank", "relieve_the_malleoli", "relieve_the_navicular", "relieve_the_first_metatarsal_head", "relieve_the_fifth_metatarsal_base", "relieve_the_fifth_metatarsal_head", "relieve_the_heel", "relieve_the_instep", "relieve_the_tibial_crest", "relieve_the_fibular_head"]
  }
}

case "open malleolus on the left, open heel on the right: wound care before a device" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      malleolar_skin = "broken"
      heel_skin      = "intact"
      achilles_skin  = "intact"
      navicular_skin = "intact"
    }
    right {
      malleolar_skin = "intact"
      heel_skin      = "broken"
      achilles_skin  = "intact"
      navicular_skin = "intact"
    }
  }
  expect "left" {
    choices = { device = "refer_wound_care" }
    findings = {
      skin_broken_at_hindfoot = true
      skin_broken             = true
    }
    fires    = ["wound_care_first"]
    cautions = ["skin_broken_at_hindfoot"]
    silent   = ["relieve_the_malleoli"]
  }
  expect "right" {
    choices = {
      device = "refer_wound_care"
      relief = "left_to_clinician (provisional)"
    }
    findings = {
      skin_broken_at_hindfoot = true
      skin_broken             = true
    }
    fires    = ["wound_care_first"]
    cautions = ["skin_broken_at_hindfoot"]
    silent   = ["relieve_the_heel"]
  }
}

case "open skin over the Achilles tendon and over the navicular: hindfoot" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      malleolar_skin = "intact"
      heel_skin      = "intact"
      achilles_skin  = "broken"
      navicular_skin = "intact"
    }
    right {
      malleolar_skin = "intact"
      heel_skin      = "intact"
      achilles_skin  = "intact"
      navicular_skin = "broken"
    }
  }
  expect "left" {
    findings = { skin_broken_at_hindfoot = true }
    cautions = ["skin_broken_at_hindfoot"]
  }
  expect "right" {
    findings = { skin_broken_at_hindfoot = true }
    cautions = ["skin_broken_at_hindfoot"]
    silent   = ["relieve_the_navicular"]
  }
}

case "open skin under the arch and at the base of the fifth metatarsal: midfoot" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "broken"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "intact"
    }
    right {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "broken"
      foot_dorsum_skin           = "intact"
    }
  }
  expect "left" {
    choices = { device = "refer_wound_care" }
    findings = {
      skin_broken_at_hindfoot = false
      skin_broken_at_midfoot  = true
      ulcer_under_foot        = true
    }
    cautions = ["skin_broken_at_midfoot"]
    silent   = ["skin_broken_at_hindfoot"]
  }
  expect "right" {
    findings = { skin_broken_at_midfoot = true }
    cautions = ["skin_broken_at_midfoot"]
  }
}

case "open skin on top of the foot: midfoot, and not an ulcer under the foot" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "broken"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
    }
  }
  expect "left" {
    findings = {
      skin_broken_at_midfoot  = true
      skin_broken_at_forefoot = false
      ulcer_under_foot        = false
    }
    cautions = ["skin_broken_at_midfoot"]
    silent   = ["skin_broken_at_forefoot", "relieve_the_instep"]
  }
}

case "open ball of the foot, at either side of it" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      first_metatarsal_head_skin = "broken"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
    }
    right {
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "broken"
      plantar_forefoot_skin      = "intact"
    }
  }
  expect "left" {
    choices = { device = "refer_wound_care" }
    findings = {
      skin_broken_at_forefoot = true
      ulcer_under_foot        = true
    }
    cautions = ["skin_broken_at_forefoot"]
  }
  expect "right" {
    findings = {
      skin_broken_at_forefoot = true
      ulcer_under_foot        = true
    }
    cautions = ["skin_broken_at_forefoot"]
  }
}

case "open shin on the left, open calf on the right: where a shank shell bears" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "intact"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "broken"
      posterior_calf_skin        = "intact"
    }
    right {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "intact"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "broken"
    }
  }
  expect "left" {
    choices = { device = "refer_wound_care" }
    findings = {
      skin_broken_at_shank   = true
      skin_broken            = true
      skin_broken_at_midfoot = false
    }
    fires    = ["wound_care_first"]
    cautions = ["skin_broken_at_shank"]
    silent   = ["relieve_the_tibial_crest", "skin_broken_at_midfoot"]
  }
  expect "right" {
    findings = {
      skin_broken_at_shank = true
      skin_broken          = true
    }
    cautions = ["skin_broken_at_shank"]
  }
}

case "open toe: asked for wound care, but the shells are not taken away for it" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "intact"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
      toe_skin                   = "broken"
    }
  }
  expect "left" {
    findings = {
      skin_broken         = false
      skin_broken_at_toes = true
    }
    cautions = ["skin_broken_at_toes"]
    silent   = ["wound_care_first"]
  }
}
