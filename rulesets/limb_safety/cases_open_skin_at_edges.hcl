# Open skin that a design can keep clear of, and ulcers under the foot. Invented people; worked out by hand from the rules.

case "open skin beside the shank: the strut goes elsewhere" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      medial_shank_skin   = "broken"
      lateral_shank_skin  = "intact"
      front_of_ankle_skin = "intact"
    }
    right {
      medial_shank_skin   = "intact"
      lateral_shank_skin  = "broken"
      front_of_ankle_skin = "intact"
    }
  }
  expect "left" {
    choices  = { strut_place = "open: posterior, lateral, anterior" }
    findings = { skin_broken_at_shank_sides = true }
    fires    = ["keep_the_strut_off_the_medial_side"]
    cautions = ["skin_broken_at_shank_sides"]
    silent   = ["keep_the_strut_off_the_lateral_side"]
  }
  expect "right" {
    choices  = { strut_place = "open: posterior, medial, anterior" }
    findings = { skin_broken_at_shank_sides = true }
    fires    = ["keep_the_strut_off_the_lateral_side"]
    cautions = ["skin_broken_at_shank_sides"]
    silent   = ["keep_the_strut_off_the_medial_side"]
  }
}

case "red at both sides of the shank: only a strut behind or in front is left, and no wound is spoken of" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left {
      medial_shank_skin   = "red_after_pressure"
      lateral_shank_skin  = "red_after_pressure"
      front_of_ankle_skin = "intact"
    }
  }
  expect "left" {
    choices  = { strut_place = "open: posterior, anterior (not provisional)" }
    findings = { skin_broken_at_shank_sides = false }
    fires    = ["keep_the_strut_off_the_medial_side", "keep_the_strut_off_the_lateral_side"]
    silent   = ["skin_broken_at_shank_sides"]
  }
}

case "open, and red, at the front of the ankle: no instep strap" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      medial_shank_skin   = "intact"
      lateral_shank_skin  = "intact"
      front_of_ankle_skin = "broken"
    }
    right {
      medial_shank_skin   = "intact"
      lateral_shank_skin  = "intact"
      front_of_ankle_skin = "red_after_pressure"
    }
  }
  expect "left" {
    choices  = { ankle_strap = "open: none, pull_from_lateral, pull_from_medial" }
    findings = { skin_broken_at_shank_sides = true }
    fires    = ["keep_the_strap_off_the_front_of_the_ankle"]
    cautions = ["skin_broken_at_shank_sides"]
  }
  expect "right" {
    choices = { ankle_strap = "open: none, pull_from_lateral, pull_from_medial (not provisional)" }
    fires   = ["keep_the_strap_off_the_front_of_the_ankle"]
    silent  = ["skin_broken_at_shank_sides"]
  }
}

case "open skin over the fibular head and the patellar tendon: the upper edge stays low" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      fibular_head_skin    = "broken"
      patellar_tendon_skin = "intact"
      popliteal_skin       = "intact"
    }
    right {
      fibular_head_skin    = "intact"
      patellar_tendon_skin = "broken"
      popliteal_skin       = "intact"
    }
  }
  expect "left" {
    choices  = { proximal_height = "open: lower_third, mid_calf" }
    findings = { skin_broken_at_knee = true }
    fires    = ["keep_the_edge_below_the_knee"]
    cautions = ["skin_broken_at_knee"]
    silent   = ["relieve_the_fibular_head"]
  }
  expect "right" {
    choices  = { proximal_height = "open: lower_third, mid_calf (not provisional)" }
    findings = { skin_broken_at_knee = true }
    cautions = ["skin_broken_at_knee"]
  }
}

case "open skin behind the knee, intact elsewhere: the device itself is not stopped" {
  basis = "common_practice"
  given {
    device_for = ["right"]
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
      fibular_head_skin          = "intact"
      patellar_tendon_skin       = "intact"
      popliteal_skin             = "broken"
    }
  }
  expect "right" {
    findings = {
      skin_broken_at_knee = true
      skin_broken         = false
    }
    fires    = ["keep_the_edge_below_the_knee"]
    cautions = ["skin_broken_at_knee"]
    silent   = ["wound_care_first"]
  }
}

case "diabetes, no protective sensation, ulcer under the ball of the foot: foot service and wound care stand beside each other" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      diabetes        = "type_2"
      falls_last_year = 3
    }
    left {
      protective_sensation       = "absent"
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "intact"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "broken"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
    }
    right {
      protective_sensation       = "present"
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "intact"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "broken"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
    }
  }
  expect "left" {
    choices = { device = "open: refer_wound_care, refer_foot_protection" }
    findings = {
      ulcer_under_foot = true
      insensate        = true
    }
    fires    = ["offloading_service_for_an_ulcer", "wound_care_first"]
    cautions = ["ulcer_under_an_insensate_foot", "skin_broken_at_forefoot"]
  }
  expect "right" {
    choices = { device = "refer_wound_care" }
    findings = {
      ulcer_under_foot = true
      insensate        = false
    }
    fires  = ["wound_care_first"]
    silent = ["offloading_service_for_an_ulcer", "ulcer_under_an_insensate_foot"]
  }
}

case "the same ulcer without diabetes: no rule for offloading in diabetes" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { diabetes = "none" }
    left {
      protective_sensation  = "absent"
      plantar_forefoot_skin = "broken"
    }
  }
  expect "left" {
    choices = { device = "refer_wound_care" }
    silent  = ["offloading_service_for_an_ulcer", "ulcer_under_an_insensate_foot"]
  }
}

case "fragile at the front of the ankle on the left, intact on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      front_of_ankle_skin = "fragile"
      foot_dorsum_skin    = "intact"
    }
    right {
      front_of_ankle_skin = "intact"
      foot_dorsum_skin    = "intact"
    }
  }
  expect "left" {
    choices = { ankle_strap = "open: none, pull_from_lateral, pull_from_medial (not provisional)" }
    fires   = ["keep_the_strap_off_the_front_of_the_ankle"]
    silent  = ["keep_the_strap_off_the_top_of_the_foot"]
  }
  expect "right" {
    choices = { ankle_strap = "left_to_clinician (not provisional)" }
    silent  = ["keep_the_strap_off_the_front_of_the_ankle", "keep_the_strap_off_the_top_of_the_foot"]
  }
}

case "red on top of the foot on the left, open on the right: no instep strap" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      front_of_ankle_skin = "intact"
      foot_dorsum_skin    = "red_after_pressure"
    }
    right {
      front_of_ankle_skin = "intact"
      foot_dorsum_skin    = "broken"
    }
  }
  expect "left" {
    choices  = { ankle_strap = "open: none, pull_from_lateral, pull_from_medial (not provisional)" }
    fires    = ["keep_the_strap_off_the_top_of_the_foot", "relieve_the_instep"]
    silent   = ["keep_the_strap_off_the_front_of_the_ankle"]
    cautions = ["skin_red_at_midfoot"]
  }
  expect "right" {
    choices  = { ankle_strap = "open: none, pull_from_lateral, pull_from_medial (not provisional)", device = "refer_wound_care" }
    fires    = ["keep_the_strap_off_the_top_of_the_foot"]
    cautions = ["skin_broken_at_midfoot"]
  }
}
