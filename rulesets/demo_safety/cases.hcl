# Worked cases of the safety ruleset. Invented people.

case "one missed site and no overall judgement: insensate" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age                 = 66
      skin_check_possible = true
    }
    right {
      monofilament_great_toe             = false
      monofilament_first_metatarsal_head = true
      monofilament_fifth_metatarsal_head = true
    }
  }
  expect "right" {
    choices  = { padding = "whole_shell" }
    findings = { insensate = true }
    fires    = ["daily_skin_check", "line_insensate_skin"]
    cautions = ["insensate_skin"]
    silent   = ["unchecked_skin"]
  }
  expect "person" {
    choices = {
      skin_check      = "daily"
      wearing_in      = "slow"
      review_interval = "open: 1..2 wk"
    }
  }
}

case "wound and doubtful circulation: both opinions are open, no device" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age              = 72
      arterial_disease = "suspected"
    }
    left {
      heel_skin                     = "broken"
      hot_swollen_foot              = false
      foot_pulses                   = "one"
      ankle_brachial_pressure_index = 0.62
    }
  }
  expect "left" {
    choices  = { device = "open: refer_vascular_opinion, refer_wound_care (not provisional)" }
    findings = { broken_skin = true, poor_circulation = true }
    cautions = ["broken_skin", "poor_circulation"]
  }
}

case "no reason to take the index: circulation is not called poor" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age              = 51
      arterial_disease = "none_known"
      diabetes         = "none"
    }
    left { foot_pulses = "both" }
    right { foot_pulses = "one" }
  }
  expect "left" {
    findings = { poor_circulation = false, insensate = "unknown" }
    silent   = ["vascular_opinion_first", "poor_circulation"]
  }
  expect "right" {
    choices  = { device = "left_to_clinician (provisional)" }
    findings = { poor_circulation = "unknown" }
    silent   = ["vascular_opinion_first", "poor_circulation"]
  }
}

case "diabetes, pulses felt: the index counts, above and below 0.9" {
  basis = "published"
  cites = ["pressure_index_2020"]
  given {
    device_for = ["left", "right"]
    person {
      age              = 64
      arterial_disease = "none_known"
      diabetes         = "type_2"
    }
    left {
      foot_pulses                   = "both"
      ankle_brachial_pressure_index = 0.9
    }
    right {
      foot_pulses                   = "both"
      ankle_brachial_pressure_index = 0.89
    }
  }
  expect "left" { findings = { poor_circulation = false } }
  expect "right" {
    choices  = { device = "refer_vascular_opinion" }
    cautions = ["poor_circulation"]
  }
}

case "the judgement over all sites counts before single sites" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age                 = 60
      skin_check_possible = false
    }
    left {
      protective_sensation   = "reduced"
      monofilament_great_toe = true
      hot_swollen_foot       = true
    }
    right {
      protective_sensation   = "present"
      monofilament_great_toe = false
      hot_swollen_foot       = true
      heel_skin              = "red_after_pressure"
      malleolar_skin         = "intact"
      achilles_skin          = "intact"
      foot_dorsum_skin       = "intact"
      anterior_shin_skin     = "fragile"
      posterior_calf_skin    = "intact"
      fluctuating_oedema     = false
    }
  }
  expect "left" {
    choices  = { device = "refer_foot_protection (provisional)" }
    findings = { insensate = true }
    cautions = ["hot_foot", "unchecked_skin", "insensate_skin"]
  }
  expect "right" {
    choices  = { device = "refer_foot_protection (provisional)" }
    findings = { insensate = false, broken_skin = false, marked_skin = true, swelling_marked = false }
    cautions = ["hot_foot", "marked_skin"]
    silent   = ["unchecked_skin", "insensate_skin", "broken_skin", "swelling", "wound_care_first"]
  }
}

case "all three sites felt and no overall judgement: sensation is not called lost" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { age = 30 }
    right {
      monofilament_great_toe             = true
      monofilament_first_metatarsal_head = true
      monofilament_fifth_metatarsal_head = true
      hot_swollen_foot                   = false
      malleolar_skin                     = "intact"
      heel_skin                          = "fragile"
      achilles_skin                      = "intact"
      foot_dorsum_skin                   = "intact"
      anterior_shin_skin                 = "broken"
      posterior_calf_skin                = "intact"
    }
  }
  expect "right" {
    findings = { insensate = false, broken_skin = true, marked_skin = false }
    silent   = ["hot_foot", "foot_protection_first", "marked_skin"]
  }
}

case "one site missed and another not tested: insensate all the same" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { age = 30 }
    right {
      monofilament_great_toe             = { not_recorded = "toe amputated" }
      monofilament_first_metatarsal_head = true
      monofilament_fifth_metatarsal_head = false
    }
  }
  expect "right" {
    findings = { insensate = true }
  }
}

case "arterial disease confirmed: no index is needed" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age              = 77
      arterial_disease = "confirmed"
      driving          = "adapted_controls"
    }
    left { foot_pulses = "both" }
  }
  expect "left" {
    findings = { poor_circulation = true }
    fires    = ["vascular_opinion_first"]
  }
  expect "person" { cautions = ["driving"] }
}

case "swelling is measured against the girth" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { age = 58 }
    left {
      fluctuating_oedema       = true
      girth_change_through_day = 8
      ankle_girth              = "25 cm"
    }
    right {
      fluctuating_oedema       = true
      girth_change_through_day = "1.5 cm"
      ankle_girth              = 250
    }
  }
  expect "left" {
    findings   = { swelling_marked = false }
    quantities = { swelling_share = "3.2 % +- 0.01" }
    choices    = { closure = "wide_padded_strap" }
  }
  expect "right" {
    findings   = { swelling_marked = true }
    quantities = { swelling_share = "6 % +- 0.01" }
    cautions   = ["swelling"]
  }
}
