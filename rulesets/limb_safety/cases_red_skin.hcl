# Skin that stays red: relief, and how often it is looked at. Invented people; what is expected was worked out by hand from the rules.

case "red malleolus: leaflets disagree on the limit, and both are named" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age                  = 48
      skin_risk            = "low"
      involuntary_movement = "none"
    }
    left {
      malleolar_skin                     = "red_after_pressure"
      heel_skin                          = "intact"
      achilles_skin                      = "intact"
      navicular_skin                     = "intact"
      plantar_midfoot_skin               = "intact"
      fifth_metatarsal_base_skin         = "intact"
      foot_dorsum_skin                   = "intact"
      first_metatarsal_head_skin         = "intact"
      fifth_metatarsal_head_skin         = "intact"
      plantar_forefoot_skin              = "intact"
      anterior_shin_skin                 = "intact"
      posterior_calf_skin                = "intact"
      protective_sensation               = "present"
      previous_foot_ulcer                = false
      monofilament_great_toe             = true
      monofilament_first_metatarsal_head = true
      monofilament_fifth_metatarsal_head = true
    }
  }
  expect "left" {
    choices = { relief = "malleoli" }
    findings = {
      skin_red_at_hindfoot = true
      skin_red             = true
      skin_red_at_midfoot  = false
    }
    fires    = ["redness_limit_of_twenty_minutes", "redness_limit_of_thirty_minutes", "relieve_the_malleoli"]
    cautions = ["skin_red_at_hindfoot", "redness_limits_differ"]
    silent   = ["check_marked_foot_at_every_removal", "check_marked_ball_or_shank_at_every_removal", "skin_red_at_midfoot", "skin_broken_at_hindfoot", "wound_care_first"]
  }
  expect "person" { choices = { skin_check = "open: daily, every_removal (not provisional)" } }
}

case "red heel on the left, red over the Achilles tendon on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      malleolar_skin = "intact"
      heel_skin      = "red_after_pressure"
      achilles_skin  = "intact"
      navicular_skin = "intact"
    }
    right {
      malleolar_skin = "intact"
      heel_skin      = "intact"
      achilles_skin  = "red_after_pressure"
      navicular_skin = "intact"
    }
  }
  expect "left" {
    choices  = { relief = "heel" }
    findings = { skin_red_at_hindfoot = true }
    fires    = ["relieve_the_heel"]
    cautions = ["skin_red_at_hindfoot"]
  }
  expect "right" {
    findings = {
      skin_red_at_hindfoot = true
      skin_red             = true
    }
    cautions = ["skin_red_at_hindfoot"]
    silent   = ["relieve_the_heel", "relieve_the_malleoli", "relieve_the_navicular"]
  }
}

case "red over the navicular on the left, under the arch on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      malleolar_skin = "intact"
      heel_skin      = "intact"
      achilles_skin  = "intact"
      navicular_skin = "red_after_pressure"
    }
    right {
      plantar_midfoot_skin       = "red_after_pressure"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "intact"
    }
  }
  expect "left" {
    choices  = { relief = "navicular" }
    findings = { skin_red_at_hindfoot = true }
    fires    = ["relieve_the_navicular"]
  }
  expect "right" {
    findings = {
      skin_red_at_midfoot = true
      skin_red            = true
    }
    cautions = ["skin_red_at_midfoot", "redness_limits_differ"]
    silent   = ["relieve_the_instep", "relieve_the_fifth_metatarsal_base"]
  }
}

case "red at the base of the fifth metatarsal on the left, on top of the foot on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "red_after_pressure"
      foot_dorsum_skin           = "intact"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
    }
    right {
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "red_after_pressure"
    }
  }
  expect "left" {
    choices = { relief = "fifth_metatarsal_base" }
    findings = {
      skin_red_at_midfoot  = true
      skin_red_at_hindfoot = false
      skin_red_at_forefoot = false
    }
    fires    = ["relieve_the_fifth_metatarsal_base"]
    cautions = ["skin_red_at_midfoot"]
    silent   = ["skin_red_at_hindfoot", "skin_red_at_forefoot"]
  }
  expect "right" {
    choices  = { relief = "instep" }
    findings = { skin_red_at_midfoot = true }
    fires    = ["relieve_the_instep"]
  }
}

case "red at the first metatarsal head on the left, at the fifth on the right" {
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
      first_metatarsal_head_skin = "red_after_pressure"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
    }
    right {
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "red_after_pressure"
      plantar_forefoot_skin      = "intact"
    }
  }
  expect "left" {
    choices = { relief = "first_metatarsal_head" }
    findings = {
      skin_red_at_forefoot = true
      skin_red_at_midfoot  = false
      skin_red_at_shank    = false
    }
    fires    = ["relieve_the_first_metatarsal_head"]
    cautions = ["skin_red_at_forefoot"]
    silent   = ["skin_red_at_midfoot", "skin_red_at_shank"]
  }
  expect "right" {
    choices  = { relief = "fifth_metatarsal_head" }
    findings = { skin_red_at_forefoot = true }
    fires    = ["relieve_the_fifth_metatarsal_head"]
    cautions = ["skin_red_at_forefoot"]
  }
}

case "red under the ball of the foot on the left, at the back of the calf on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "red_after_pressure"
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
      posterior_calf_skin        = "red_after_pressure"
    }
  }
  expect "left" {
    findings = {
      skin_red_at_forefoot = true
      skin_red             = true
    }
    cautions = ["skin_red_at_forefoot"]
  }
  expect "right" {
    findings = {
      skin_red_at_shank = true
      skin_red          = true
    }
    cautions = ["skin_red_at_shank"]
    silent   = ["relieve_the_tibial_crest"]
  }
}

case "red shin and red fibular head on one leg: two places of relief are named" {
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
      anterior_shin_skin         = "red_after_pressure"
      posterior_calf_skin        = "intact"
      fibular_head_skin          = "red_after_pressure"
    }
  }
  expect "left" {
    choices  = { relief = "open: tibial_crest, fibular_head (not provisional)" }
    findings = { skin_red_at_shank = true }
    fires    = ["relieve_the_tibial_crest", "relieve_the_fibular_head"]
    cautions = ["skin_red_at_shank"]
  }
}

case "an insensate foot that is red at the heel: looked at each time the device comes off, no longer open" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age                 = 59
      skin_check_possible = true
    }
    left {
      malleolar_skin             = "intact"
      heel_skin                  = "red_after_pressure"
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
      protective_sensation       = "reduced"
      previous_foot_ulcer        = false
    }
  }
  expect "left" {
    fires  = ["check_marked_foot_at_every_removal", "redness_limit_of_twenty_minutes", "redness_limit_of_thirty_minutes", "daily_check_of_insensate_skin"]
    silent = ["check_marked_ball_or_shank_at_every_removal"]
  }
  expect "person" { choices = { skin_check = "every_removal (not provisional)" } }
}

case "an old ulcer and red skin at the ball of the foot: looked at each time the device comes off" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { age = 66 }
    right {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "intact"
      first_metatarsal_head_skin = "red_after_pressure"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
      protective_sensation       = "present"
      previous_foot_ulcer        = true
    }
  }
  expect "right" {
    fires    = ["check_marked_ball_or_shank_at_every_removal", "daily_check_after_an_ulcer"]
    cautions = ["ulcer_before", "skin_red_at_forefoot"]
    silent   = ["check_marked_foot_at_every_removal"]
  }
  expect "person" { choices = { skin_check = "every_removal" } }
}

case "skin risk high, red shin on the left and red instep on the right: looked at each time the device comes off" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age       = 66
      skin_risk = "high"
    }
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
      anterior_shin_skin         = "red_after_pressure"
      posterior_calf_skin        = "intact"
      protective_sensation       = "present"
      previous_foot_ulcer        = false
    }
    right {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "red_after_pressure"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
      protective_sensation       = "present"
      previous_foot_ulcer        = false
    }
  }
  expect "left" {
    fires  = ["check_marked_ball_or_shank_at_every_removal"]
    silent = ["check_marked_foot_at_every_removal"]
  }
  expect "right" {
    fires  = ["check_marked_foot_at_every_removal"]
    silent = ["check_marked_ball_or_shank_at_every_removal"]
  }
  expect "person" { choices = { skin_check = "every_removal (not provisional)" } }
}
