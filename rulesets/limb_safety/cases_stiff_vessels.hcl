# A pressure index that is too high to be believed. Invented people unless a source is named; worked out by hand.

case "index of 1.3 on the left and 1.31 on the right: from there two sources part" {
  basis = "published"
  cites = ["pressure_index_2020", "toe_pressure_guidance"]
  given {
    device_for = ["left", "right"]
    left { ankle_brachial_pressure_index = 1.3 }
    right { ankle_brachial_pressure_index = 1.31 }
  }
  expect "left" {
    findings = { index_high = false }
    silent   = ["index_limits_differ", "index_not_to_be_believed"]
  }
  expect "right" {
    findings = { index_high = true }
    cautions = ["index_limits_differ"]
    silent   = ["index_not_to_be_believed", "low_index"]
  }
}

case "index of 1.29: healthy by both sources" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left { ankle_brachial_pressure_index = 1.29 }
  }
  expect "left" {
    findings = {
      index_high = false
      index_low  = false
    }
    silent = ["index_limits_differ", "index_not_to_be_believed", "low_index", "severe_band"]
  }
}

case "index of 1.4 on the left and 1.41 on the right: above 1.4 no source believes it" {
  basis = "published"
  cites = ["pressure_index_2020"]
  given {
    device_for = ["left", "right"]
    left { ankle_brachial_pressure_index = 1.4 }
    right { ankle_brachial_pressure_index = 1.41 }
  }
  expect "left" {
    findings = { index_high = true }
    cautions = ["index_limits_differ"]
    silent   = ["index_not_to_be_believed"]
  }
  expect "right" {
    findings = { index_high = true }
    cautions = ["index_not_to_be_believed"]
    silent   = ["index_limits_differ"]
  }
}

case "index of 1.39: still between the two limits" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left { ankle_brachial_pressure_index = 1.39 }
  }
  expect "left" {
    cautions = ["index_limits_differ"]
    silent   = ["index_not_to_be_believed"]
  }
}

case "diabetes, index of 1.45, toe index of 0.74 on the left and 0.75 on the right: the toe decides" {
  basis = "published"
  cites = ["toe_pressure_guidance", "pressure_index_2020"]
  given {
    device_for = ["left", "right"]
    person {
      arterial_disease = "none_known"
      diabetes         = "type_2"
    }
    left {
      foot_pulses                   = "both"
      ankle_brachial_pressure_index = 1.45
      toe_brachial_pressure_index   = 0.74
    }
    right {
      foot_pulses                   = "both"
      ankle_brachial_pressure_index = 1.45
      toe_brachial_pressure_index   = 0.75
    }
  }
  expect "left" {
    choices  = { device = "refer_vascular_opinion" }
    findings = { poor_circulation = true }
    fires    = ["vascular_opinion_first"]
    cautions = ["index_not_to_be_believed", "poor_circulation"]
  }
  expect "right" {
    findings = { poor_circulation = false }
    cautions = ["index_not_to_be_believed"]
    silent   = ["vascular_opinion_first", "poor_circulation"]
  }
}

case "diabetes, index of 1.35, toe index of 0.76: poor flow largely shut out" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      arterial_disease = "none_known"
      diabetes         = "type_2"
    }
    left {
      foot_pulses                   = "both"
      ankle_brachial_pressure_index = 1.35
      toe_brachial_pressure_index   = 0.76
    }
  }
  expect "left" {
    findings = { poor_circulation = false }
    silent   = ["vascular_opinion_first"]
  }
}
