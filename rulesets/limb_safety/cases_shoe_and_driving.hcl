# Shoe and driving. Invented people; what is expected was worked out by hand from the rules.

case "the measured shoe will be worn on the left; shoes of other heels too on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      shoe_heel_varies  = false
      shoe_will_be_worn = true
    }
    right {
      shoe_heel_varies  = true
      shoe_will_be_worn = true
    }
  }
  expect "left" { silent = ["shoe_not_settled"] }
  expect "right" { cautions = ["shoe_not_settled"] }
}

case "the measured shoe is not the one that will be worn" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left {
      shoe_heel_varies  = false
      shoe_will_be_worn = false
    }
  }
  expect "left" { cautions = ["shoe_not_settled"] }
}

case "roomy shoe on the left, narrow opening on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      shoe_opening   = "to_toes"
      shoe_depth     = "extra"
      shoe_width_fit = "fits"
    }
    right {
      shoe_opening   = "narrow"
      shoe_depth     = "extra"
      shoe_width_fit = "fits"
    }
  }
  expect "left" { silent = ["shoe_too_tight_for_a_device"] }
  expect "right" { cautions = ["shoe_too_tight_for_a_device"] }
}

case "shallow shoe on the left, tight shoe on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      shoe_opening   = "to_instep"
      shoe_depth     = "shallow"
      shoe_width_fit = "fits"
    }
    right {
      shoe_opening   = "to_instep"
      shoe_depth     = "standard"
      shoe_width_fit = "tight"
    }
  }
  expect "left" { cautions = ["shoe_too_tight_for_a_device"] }
  expect "right" { cautions = ["shoe_too_tight_for_a_device"] }
}

case "drives with a clutch, device on the left: either foot works a pedal" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { driving = "manual" }
    left { foot_pulses = "both" }
  }
  expect "person" {
    cautions = ["drives_with_pedals_for_both_feet"]
    silent   = ["drives_with_pedals_for_the_right_foot", "drives_with_adapted_controls"]
  }
}

case "drives an automatic, device on the right" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { driving = "automatic" }
    right { foot_pulses = "both" }
  }
  expect "person" {
    cautions = ["drives_with_pedals_for_the_right_foot"]
    silent   = ["drives_with_pedals_for_both_feet", "drives_with_adapted_controls"]
  }
}

case "drives with adapted controls" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { driving = "adapted_controls" }
    right { foot_pulses = "both" }
  }
  expect "person" {
    cautions = ["drives_with_adapted_controls"]
    silent   = ["drives_with_pedals_for_both_feet", "drives_with_pedals_for_the_right_foot"]
  }
}

case "does not drive" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { driving = "does_not_drive" }
    right { foot_pulses = "both" }
  }
  expect "person" { silent = ["drives_with_pedals_for_both_feet", "drives_with_pedals_for_the_right_foot", "drives_with_adapted_controls"] }
}
