# Swelling, thrombosis and the hot foot. Invented people; what is expected was worked out by hand from the rules.

case "hot swollen foot without sensation: foot service the same day, no cast" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      hot_swollen_foot     = true
      protective_sensation = "absent"
    }
    right { hot_swollen_foot = false }
  }
  expect "left" {
    choices  = { device = "refer_foot_protection" }
    fires    = ["foot_protection_first"]
    cautions = ["hot_foot"]
  }
  expect "right" { silent = ["foot_protection_first", "hot_foot"] }
}

case "thrombosis within three months: no tight closure, no serial cast, on either leg" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { venous_disease = "recent_thrombosis" }
    left { foot_pulses = "both" }
  }
  expect "person" {
    fires    = ["no_casting_after_thrombosis"]
    cautions = ["recent_thrombosis"]
  }
}

case "a thrombosis long ago does not stop a cast" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { venous_disease = "previous_thrombosis" }
    left { foot_pulses = "both" }
  }
  expect "person" { silent = ["no_casting_after_thrombosis", "recent_thrombosis"] }
}

case "swelling that varies: teaching disagrees, and composite and jointed device stay level" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      fluctuating_oedema       = true
      girth_change_through_day = 12
    }
    right { fluctuating_oedema = false }
  }
  expect "left" {
    choices = {
      device  = "open: composite, articulated"
      closure = "wide_padded_strap"
    }
    findings = { swelling_varies = true }
    fires    = ["composite_for_a_leg_that_swells", "jointed_device_for_a_leg_that_swells", "strap_that_lets_out"]
    cautions = ["swelling_varies", "swelling_sources_differ"]
  }
  expect "right" {
    choices  = { closure = "left_to_clinician" }
    findings = { swelling_varies = false }
    silent   = ["composite_for_a_leg_that_swells", "jointed_device_for_a_leg_that_swells", "strap_that_lets_out", "swelling_varies", "swelling_sources_differ"]
  }
}

case "pitting 2+ on the left, 3+ on the right: marked from 3+" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left { pitting_depth = "2+" }
    right { pitting_depth = "3+" }
  }
  expect "left" {
    findings = { swelling_marked = false }
    silent   = ["no_casting_with_marked_swelling", "swelling_marked"]
  }
  expect "right" {
    findings = { swelling_marked = true }
    fires    = ["no_casting_with_marked_swelling"]
    cautions = ["swelling_marked"]
  }
}

case "pitting 4+: marked" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    right { pitting_depth = "4+" }
  }
  expect "right" {
    findings = { swelling_marked = true }
    fires    = ["no_casting_with_marked_swelling"]
    cautions = ["swelling_marked"]
  }
}
