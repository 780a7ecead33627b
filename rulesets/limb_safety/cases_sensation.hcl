# Sensation, old ulcers and the foot risk category. Invented people; what is expected was worked out by hand.

case "sensation reduced on the left, present on the right: the insensate leg decides for the person" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age                  = 66
      skin_check_possible  = true
      skin_risk            = "low"
      involuntary_movement = "none"
      follows_instructions = "alone"
    }
    left {
      protective_sensation = "reduced"
      previous_foot_ulcer  = false
    }
    right {
      protective_sensation = "present"
      previous_foot_ulcer  = false
    }
  }
  expect "left" {
    choices = { padding = "whole_shell" }
    findings = {
      insensate       = true
      skin_unchecked  = false
      skin_needs_care = true
    }
    fires    = ["daily_check_of_insensate_skin", "wear_in_insensate_skin_slowly", "line_skin_that_needs_care"]
    cautions = ["insensate"]
    silent   = ["skin_unchecked"]
  }
  expect "right" {
    findings = { insensate = false }
    silent   = ["daily_check_of_insensate_skin", "wear_in_insensate_skin_slowly", "insensate"]
  }
  expect "person" {
    choices = {
      skin_check = "daily"
      wearing_in = "slow (not provisional)"
    }
  }
}

case "sensation absent and nobody to look at the skin: no closed shell before that is arranged" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { skin_check_possible = false }
    left { protective_sensation = "absent" }
    right { protective_sensation = "present" }
  }
  expect "left" {
    findings = {
      insensate      = true
      skin_unchecked = true
    }
    cautions = ["skin_unchecked", "insensate"]
  }
  expect "right" {
    findings = {
      insensate      = false
      skin_unchecked = false
    }
    silent = ["skin_unchecked", "insensate"]
  }
}

case "all three sites felt: nothing missed" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      skin_risk            = "low"
      involuntary_movement = "none"
    }
    left {
      monofilament_great_toe             = true
      monofilament_first_metatarsal_head = true
      monofilament_fifth_metatarsal_head = true
      protective_sensation               = "present"
      previous_foot_ulcer                = false
    }
  }
  expect "left" {
    findings = { site_not_felt = false }
    silent   = ["daily_check_after_a_missed_site", "site_not_felt", "daily_check_after_an_ulcer"]
  }
}

case "great toe not felt on the left, first metatarsal head on the right, though sensation was called present" {
  basis = "published"
  cites = ["monofilament_procedure", "sensation_by_missed_sites"]
  given {
    device_for = ["left", "right"]
    person {
      skin_risk            = "low"
      involuntary_movement = "none"
    }
    left {
      monofilament_great_toe             = false
      monofilament_first_metatarsal_head = true
      monofilament_fifth_metatarsal_head = true
      protective_sensation               = "present"
      previous_foot_ulcer                = false
    }
    right {
      monofilament_great_toe             = true
      monofilament_first_metatarsal_head = false
      monofilament_fifth_metatarsal_head = true
      protective_sensation               = "present"
      previous_foot_ulcer                = false
    }
  }
  expect "left" {
    findings = {
      site_not_felt = true
      insensate     = false
    }
    fires    = ["daily_check_after_a_missed_site"]
    cautions = ["site_not_felt"]
    silent   = ["insensate"]
  }
  expect "right" {
    findings = {
      site_not_felt = true
      insensate     = false
    }
    cautions = ["site_not_felt"]
  }
  expect "person" { choices = { skin_check = "open: daily, every_removal" } }
}

case "fifth metatarsal head not felt and no judgement over all sites: missing is not present" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    right {
      monofilament_great_toe             = true
      monofilament_first_metatarsal_head = true
      monofilament_fifth_metatarsal_head = false
    }
  }
  expect "right" {
    findings = {
      site_not_felt = true
      insensate     = "unknown"
    }
    fires    = ["daily_check_after_a_missed_site"]
    cautions = ["site_not_felt"]
    silent   = ["insensate"]
  }
}

case "skin risk high, no ulcer before" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { skin_risk = "high" }
    left { previous_foot_ulcer = false }
  }
  expect "left" {
    fires  = ["daily_check_after_an_ulcer"]
    silent = ["ulcer_before", "ulcer_outside_the_categories"]
  }
  expect "person" {
    choices  = { skin_check = "daily" }
    cautions = ["skin_risk_high"]
  }
}

case "skin risk raised only, no ulcer before: no daily check is asked for on that ground" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { skin_risk = "raised" }
    left { previous_foot_ulcer = false }
  }
  expect "left" { silent = ["daily_check_after_an_ulcer"] }
  expect "person" { silent = ["skin_risk_high"] }
}

case "an old ulcer with sensation present and no arterial disease fits no category; on the right sensation is lost and it does" {
  basis = "published"
  cites = ["schaper_2020"]
  given {
    device_for = ["left", "right"]
    person { arterial_disease = "none_known" }
    left {
      previous_foot_ulcer  = true
      protective_sensation = "present"
    }
    right {
      previous_foot_ulcer  = true
      protective_sensation = "absent"
    }
  }
  expect "left" {
    fires    = ["daily_check_after_an_ulcer"]
    cautions = ["ulcer_before", "ulcer_outside_the_categories"]
  }
  expect "right" {
    cautions = ["ulcer_before"]
    silent   = ["ulcer_outside_the_categories"]
  }
}

case "an old ulcer with arterial disease suspected: not called unclassifiable" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { arterial_disease = "suspected" }
    left {
      previous_foot_ulcer  = true
      protective_sensation = "present"
    }
  }
  expect "left" {
    cautions = ["ulcer_before"]
    silent   = ["ulcer_outside_the_categories"]
  }
}

case "foot risk category 0: no foot service date is asked for; with sensation reduced the category cannot be right" {
  basis = "published"
  cites = ["schaper_2020"]
  given {
    device_for = ["left", "right"]
    left {
      foot_risk            = "0"
      protective_sensation = "present"
    }
    right {
      foot_risk            = "0"
      protective_sensation = "reduced"
    }
  }
  expect "left" { silent = ["foot_risk_review", "review_foot_risk_two", "review_foot_risk_three", "risk_category_out_of_date"] }
  expect "right" {
    cautions = ["risk_category_out_of_date"]
    silent   = ["foot_risk_review"]
  }
}

case "foot risk category 1: every 6 to 12 months, no limit below a year" {
  basis = "published"
  cites = ["schaper_2020"]
  given {
    device_for = ["left"]
    left {
      foot_risk            = "1"
      protective_sensation = "reduced"
    }
  }
  expect "left" {
    cautions = ["foot_risk_review"]
    silent   = ["review_foot_risk_two", "review_foot_risk_three", "risk_category_out_of_date"]
  }
}

case "foot risk category 2: within half a year" {
  basis = "published"
  cites = ["schaper_2020"]
  given {
    device_for = ["left"]
    person { age = 60 }
    left { foot_risk = "2" }
  }
  expect "left" {
    fires    = ["review_foot_risk_two"]
    cautions = ["foot_risk_review"]
    silent   = ["review_foot_risk_three"]
  }
  expect "person" { choices = { review_interval = "open: 1..26 wk" } }
}

case "foot risk category 3 on the left and 2 on the right: the stricter leg decides" {
  basis = "published"
  cites = ["schaper_2020"]
  given {
    device_for = ["left", "right"]
    person { age = 60 }
    left { foot_risk = "3" }
    right { foot_risk = "2" }
  }
  expect "left" {
    fires    = ["review_foot_risk_three"]
    cautions = ["foot_risk_review"]
    silent   = ["review_foot_risk_two"]
  }
  expect "right" { fires = ["review_foot_risk_two"] }
  expect "person" { choices = { review_interval = "open: 1..13 wk" } }
}

case "a toe, a ray and a midfoot amputated: what is left carries more" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left { foot_amputation = "toe" }
    right { foot_amputation = "ray" }
  }
  expect "left" { cautions = ["part_of_foot_missing"] }
  expect "right" { cautions = ["part_of_foot_missing"] }
}

case "midfoot amputated on the left, nothing on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left { foot_amputation = "midfoot" }
    right { foot_amputation = "none" }
  }
  expect "left" { cautions = ["part_of_foot_missing"] }
  expect "right" { silent = ["part_of_foot_missing"] }
}
