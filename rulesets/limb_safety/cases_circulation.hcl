# Circulation. Invented people unless a source is named; expectations worked out by hand.

case "pulses felt, nothing known, no diabetes: circulation is not called poor, and no index is waited for" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      arterial_disease = "none_known"
      diabetes         = "none"
      venous_disease   = "none_known"
    }
    left {
      foot_pulses      = "both"
      hot_swollen_foot = false
    }
  }
  expect "left" {
    findings = {
      circulation_in_question = false
      poor_circulation        = false
    }
    silent = ["vascular_opinion_first", "no_shell_on_critical_circulation", "poor_circulation", "foot_protection_first", "hot_foot"]
  }
  expect "person" { silent = ["recent_thrombosis", "no_casting_after_thrombosis"] }
}

case "one pulse felt and no index: not known, not normal" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      arterial_disease = "none_known"
      diabetes         = "none"
    }
    left { foot_pulses = "one" }
  }
  expect "left" {
    choices = { device = "left_to_clinician (provisional)" }
    findings = {
      circulation_in_question = true
      poor_circulation        = "unknown"
    }
    silent = ["vascular_opinion_first", "poor_circulation"]
  }
}

case "arterial disease confirmed: no index is needed" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { arterial_disease = "confirmed" }
    left { foot_pulses = "both" }
  }
  expect "left" {
    choices  = { device = "refer_vascular_opinion" }
    findings = { poor_circulation = true }
    fires    = ["vascular_opinion_first"]
    cautions = ["poor_circulation"]
  }
}

case "arterial disease suspected, index 0.9 on the left and 0.91 on the right: 0.9 counts as low, the safer of two limits" {
  basis = "published"
  cites = ["pressure_index_2020", "toe_pressure_guidance"]
  given {
    device_for = ["left", "right"]
    person {
      arterial_disease = "suspected"
      diabetes         = "none"
    }
    left {
      foot_pulses                   = "both"
      ankle_brachial_pressure_index = 0.9
    }
    right {
      foot_pulses                   = "both"
      ankle_brachial_pressure_index = 0.91
    }
  }
  expect "left" {
    choices = { device = "refer_vascular_opinion" }
    findings = {
      index_low        = true
      poor_circulation = true
    }
    fires    = ["vascular_opinion_first"]
    cautions = ["low_index", "poor_circulation"]
  }
  expect "right" {
    findings = {
      index_low               = false
      index_high              = false
      poor_circulation        = false
      circulation_in_question = true
    }
    silent = ["vascular_opinion_first", "low_index", "poor_circulation"]
  }
}

case "diabetes and an index of 0.89: a vascular opinion first" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      arterial_disease = "none_known"
      diabetes         = "type_1"
    }
    right {
      foot_pulses                   = "both"
      ankle_brachial_pressure_index = 0.89
    }
  }
  expect "right" {
    choices = { device = "refer_vascular_opinion" }
    findings = {
      index_low        = true
      poor_circulation = true
    }
    cautions = ["low_index"]
  }
}

case "an index of 0.8 where nothing gave a reason to take it: the caution speaks, no referral is decided" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      arterial_disease = "none_known"
      diabetes         = "none"
    }
    left {
      foot_pulses                   = "both"
      ankle_brachial_pressure_index = 0.8
    }
  }
  expect "left" {
    findings = {
      index_low        = true
      poor_circulation = false
    }
    cautions = ["low_index"]
    silent   = ["vascular_opinion_first", "poor_circulation"]
  }
}

case "index of 0.31 and of 0.4, no pulse felt: severe, not yet critical" {
  basis = "published"
  cites = ["limb_ischaemia_bands"]
  given {
    device_for = ["left", "right"]
    person { arterial_disease = "suspected" }
    left {
      foot_pulses                   = "none"
      ankle_brachial_pressure_index = 0.31
      ankle_systolic_pressure       = 60
    }
    right {
      foot_pulses                   = "none"
      ankle_brachial_pressure_index = 0.4
      ankle_systolic_pressure       = 55
    }
  }
  expect "left" {
    choices  = { device = "refer_vascular_opinion" }
    findings = { critical_circulation = false }
    cautions = ["severe_band"]
    silent   = ["critical_circulation", "no_shell_on_critical_circulation"]
  }
  expect "right" {
    cautions = ["severe_band"]
    silent   = ["critical_circulation"]
  }
}

case "index of 0.3 on the left and 0.28 on the right: critical, nothing presses on the foot" {
  basis = "published"
  cites = ["limb_ischaemia_bands"]
  given {
    device_for = ["left", "right"]
    person { arterial_disease = "suspected" }
    left {
      foot_pulses                   = "none"
      ankle_brachial_pressure_index = 0.3
      ankle_systolic_pressure       = 52
    }
    right {
      foot_pulses                   = "none"
      ankle_brachial_pressure_index = 0.28
    }
  }
  expect "left" {
    choices  = { device = "refer_vascular_opinion" }
    findings = { critical_circulation = true }
    fires    = ["no_shell_on_critical_circulation", "vascular_opinion_first"]
    cautions = ["critical_circulation"]
    silent   = ["severe_band"]
  }
  expect "right" {
    findings = { critical_circulation = true }
    fires    = ["no_shell_on_critical_circulation"]
    cautions = ["critical_circulation"]
    silent   = ["severe_band"]
  }
}

case "index of 0.29 and an open heel: the danger to the foot comes before the wound" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { arterial_disease = "confirmed" }
    left {
      foot_pulses                   = "none"
      ankle_brachial_pressure_index = 0.29
      heel_skin                     = "broken"
    }
  }
  expect "left" {
    choices  = { device = "refer_vascular_opinion" }
    fires    = ["no_shell_on_critical_circulation", "vascular_opinion_first", "wound_care_first"]
    cautions = ["critical_circulation", "skin_broken_at_hindfoot"]
  }
}

case "arterial disease confirmed and an open heel: both opinions stand beside each other" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      arterial_disease = "confirmed"
      diabetes         = "none"
    }
    left {
      foot_pulses                   = "one"
      ankle_brachial_pressure_index = 0.7
      ankle_systolic_pressure       = 95
      heel_skin                     = "broken"
    }
  }
  expect "left" {
    choices = { device = "open: refer_vascular_opinion, refer_wound_care" }
    fires   = ["vascular_opinion_first", "wound_care_first"]
    silent  = ["no_shell_on_critical_circulation", "critical_circulation"]
  }
}

case "ankle pressure of 50 mmHg on the left and 49 on the right, index not taken" {
  basis = "published"
  cites = ["limb_ischaemia_bands"]
  given {
    device_for = ["left", "right"]
    person { diabetes = "type_2" }
    left {
      foot_pulses             = "none"
      ankle_systolic_pressure = 50
    }
    right {
      foot_pulses             = "none"
      ankle_systolic_pressure = 49
    }
  }
  expect "left" {
    findings = { critical_circulation = "unknown" }
    silent   = ["critical_circulation", "no_shell_on_critical_circulation"]
  }
  expect "right" {
    choices  = { device = "refer_vascular_opinion" }
    findings = { critical_circulation = true }
    fires    = ["no_shell_on_critical_circulation"]
    cautions = ["critical_circulation"]
  }
}

case "ankle pressure of 51 mmHg with an index of 0.45: severe" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left {
      ankle_systolic_pressure       = 51
      ankle_brachial_pressure_index = 0.45
    }
  }
  expect "left" {
    findings = { critical_circulation = false }
    cautions = ["severe_band"]
    silent   = ["critical_circulation"]
  }
}

case "index of 0.5 on the left and 0.51 on the right: the end of the severe band" {
  basis = "published"
  cites = ["limb_ischaemia_bands"]
  given {
    device_for = ["left", "right"]
    left { ankle_brachial_pressure_index = 0.5 }
    right { ankle_brachial_pressure_index = 0.51 }
  }
  expect "left" { cautions = ["severe_band", "low_index"] }
  expect "right" {
    cautions = ["low_index"]
    silent   = ["severe_band"]
  }
}

case "index of 0.49: severe" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left { ankle_brachial_pressure_index = 0.49 }
  }
  expect "left" { cautions = ["severe_band"] }
}
