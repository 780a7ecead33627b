# Fragile skin: padding and relief. Invented people; what is expected was worked out by hand from the rules.

case "fragile malleoli on the left, fragile heel on the right: lined, and relieved there" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      malleolar_skin             = "fragile"
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
    }
    right {
      malleolar_skin             = "intact"
      heel_skin                  = "fragile"
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
    }
  }
  expect "left" {
    choices = {
      padding = "whole_shell"
      closure = "open: wide_padded_strap, anterior_shell, posterior_shell"
      relief  = "malleoli"
    }
    findings = {
      skin_fragile_at_foot  = true
      skin_fragile          = true
      skin_needs_care       = true
      skin_fragile_at_shank = false
    }
    fires    = ["line_skin_that_needs_care", "relieve_the_malleoli"]
    cautions = ["skin_fragile"]
    silent   = ["skin_red_at_hindfoot", "skin_broken_at_hindfoot"]
  }
  expect "right" {
    choices = {
      padding = "whole_shell"
      relief  = "heel"
    }
    findings = { skin_fragile_at_foot = true }
    fires    = ["line_skin_that_needs_care", "relieve_the_heel"]
    cautions = ["skin_fragile"]
  }
}

case "fragile navicular on the left, fragile top of the foot on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "fragile"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "intact"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
    }
    right {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "intact"
      foot_dorsum_skin           = "fragile"
      first_metatarsal_head_skin = "intact"
      fifth_metatarsal_head_skin = "intact"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
    }
  }
  expect "left" {
    choices  = { relief = "navicular" }
    findings = { skin_fragile_at_foot = true }
    cautions = ["skin_fragile"]
  }
  expect "right" {
    choices  = { relief = "instep" }
    findings = { skin_fragile_at_foot = true }
    cautions = ["skin_fragile"]
  }
}

case "fragile over the Achilles tendon on the left, over the calf on the right: lined, no place of relief" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "fragile"
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
      posterior_calf_skin        = "fragile"
    }
  }
  expect "left" {
    choices = {
      padding = "whole_shell"
      relief  = "left_to_clinician (not provisional)"
    }
    findings = {
      skin_fragile_at_shank = true
      skin_fragile_at_foot  = false
      skin_fragile          = true
    }
    cautions = ["skin_fragile"]
  }
  expect "right" {
    choices  = { padding = "whole_shell" }
    findings = { skin_fragile_at_shank = true }
    cautions = ["skin_fragile"]
  }
}

case "fragile shin on the left; fragile metatarsal heads and fibular head on the right, each relieved" {
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
      anterior_shin_skin         = "fragile"
      posterior_calf_skin        = "intact"
    }
    right {
      malleolar_skin             = "intact"
      heel_skin                  = "intact"
      achilles_skin              = "intact"
      navicular_skin             = "intact"
      plantar_midfoot_skin       = "intact"
      fifth_metatarsal_base_skin = "fragile"
      foot_dorsum_skin           = "intact"
      first_metatarsal_head_skin = "fragile"
      fifth_metatarsal_head_skin = "fragile"
      plantar_forefoot_skin      = "intact"
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
      fibular_head_skin          = "fragile"
      protective_sensation       = "present"
    }
  }
  expect "left" {
    choices  = { relief = "tibial_crest" }
    findings = { skin_fragile_at_shank = true }
    fires    = ["relieve_the_tibial_crest", "line_skin_that_needs_care"]
  }
  expect "right" {
    choices = { relief = "open: first_metatarsal_head, fifth_metatarsal_base, fifth_metatarsal_head, fibular_head" }
    findings = {
      skin_fragile    = false
      skin_needs_care = false
    }
    silent = ["line_skin_that_needs_care", "skin_fragile"]
  }
}

case "touch felt as pain: every bony place is lined, and no more than that is asked" {
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
      anterior_shin_skin         = "intact"
      posterior_calf_skin        = "intact"
      touch_oversensitive        = true
      protective_sensation       = "present"
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
      touch_oversensitive        = false
      protective_sensation       = "present"
    }
  }
  expect "left" {
    choices  = { padding = "open: at_bony_places, whole_shell (not provisional)" }
    fires    = ["line_skin_that_hurts_to_touch"]
    cautions = ["touch_hurts"]
  }
  expect "right" {
    choices = { padding = "left_to_clinician (not provisional)" }
    silent  = ["line_skin_that_hurts_to_touch", "touch_hurts"]
  }
}
