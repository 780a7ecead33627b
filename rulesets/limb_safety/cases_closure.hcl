# What must not close a device: a narrow strap on marked skin, on poor flow or after a thrombosis. Invented people; worked out
# by hand.

case "red shin on the left, open calf on the right: no narrow strap on either" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { venous_disease = "none_known" }
    left {
      anterior_shin_skin  = "red_after_pressure"
      posterior_calf_skin = "intact"
    }
    right {
      anterior_shin_skin  = "intact"
      posterior_calf_skin = "broken"
    }
  }
  expect "left" {
    choices  = { closure = "open: wide_padded_strap, anterior_shell, posterior_shell (provisional)" }
    fires    = ["no_narrow_strap_on_marked_skin"]
    cautions = ["skin_red_at_shank"]
  }
  expect "right" {
    choices  = { closure = "open: wide_padded_strap, anterior_shell, posterior_shell (provisional)" }
    fires    = ["no_narrow_strap_on_marked_skin"]
    cautions = ["skin_broken_at_shank"]
  }
}

case "sound shank, good flow and no thrombosis: nothing is said of the strap" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      venous_disease   = "previous_thrombosis"
      arterial_disease = "none_known"
      diabetes         = "none"
    }
    left {
      anterior_shin_skin  = "intact"
      posterior_calf_skin = "intact"
      foot_pulses         = "both"
    }
  }
  expect "left" { silent = ["no_narrow_strap_on_marked_skin", "no_narrow_strap_on_poor_flow"] }
  expect "person" { silent = ["no_narrow_strap_after_thrombosis"] }
}

case "diabetes and an index of 0.45: severe, an opinion first, and no narrow strap" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { diabetes = "type_2" }
    right {
      foot_pulses                   = "both"
      ankle_brachial_pressure_index = 0.45
    }
  }
  expect "right" {
    choices  = { device = "refer_vascular_opinion", closure = "open: wide_padded_strap, anterior_shell, posterior_shell (provisional)" }
    fires    = ["vascular_opinion_first", "no_narrow_strap_on_poor_flow"]
    cautions = ["severe_band", "low_index", "poor_circulation"]
  }
}

case "no pulse, an ankle pressure of 45 mmHg and no index: critical, and no narrow strap" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { diabetes = "none" }
    left {
      foot_pulses             = "none"
      ankle_systolic_pressure = 45
    }
  }
  expect "left" {
    choices  = { closure = "open: wide_padded_strap, anterior_shell, posterior_shell (provisional)" }
    findings = { poor_circulation = "unknown", critical_circulation = true }
    fires    = ["no_narrow_strap_on_poor_flow", "no_shell_on_critical_circulation"]
    cautions = ["critical_circulation"]
  }
}

case "thrombosis within three months: no narrow strap on either leg" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { venous_disease = "recent_thrombosis" }
    left { foot_pulses = "both" }
  }
  expect "left" { choices = { closure = "open: wide_padded_strap, anterior_shell, posterior_shell (provisional)" } }
  expect "person" {
    fires    = ["no_narrow_strap_after_thrombosis", "no_casting_after_thrombosis"]
    cautions = ["recent_thrombosis"]
  }
}
