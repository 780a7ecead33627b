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

case "pulses felt, no index taken: circulation is not called poor" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age              = 51
      arterial_disease = "none_known"
    }
    left { foot_pulses = "both" }
  }
  expect "left" {
    findings = { poor_circulation = false, insensate = "unknown" }
    silent   = ["vascular_opinion_first", "poor_circulation"]
  }
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
