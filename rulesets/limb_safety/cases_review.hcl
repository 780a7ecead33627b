# Growth, recent treatment and review. Invented people; expectations worked out by hand.

case "17 years old: a growing leg, seen after 13 weeks" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { age = 17 }
    left { foot_pulses = "both" }
  }
  expect "person" {
    choices = {
      review_interval = "13 wk"
      wearing_in      = "usual"
    }
    findings = { growing = true }
    fires    = ["recheck_a_growing_leg", "wear_in_as_a_child"]
    cautions = ["growing"]
    silent   = ["wear_in_as_an_adult"]
  }
}

case "18 years old: an adult" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { age = 18 }
    left { foot_pulses = "both" }
  }
  expect "person" {
    choices = {
      review_interval = "left_to_clinician"
      wearing_in      = "usual"
    }
    findings = { growing = false }
    fires    = ["wear_in_as_an_adult"]
    silent   = ["recheck_a_growing_leg", "wear_in_as_a_child", "growing"]
  }
}

case "19 years old: an adult" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { age = 19 }
    right { foot_pulses = "both" }
  }
  expect "person" {
    findings = { growing = false }
    fires    = ["wear_in_as_an_adult"]
    silent   = ["growing"]
  }
}

case "injected 90 days ago: still changing, seen by 13 weeks" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person {
      age            = 50
      last_injection = "2026-07-07"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    choices  = { review_interval = "open: 1..13 wk" }
    findings = { injected_lately = true }
    fires    = ["review_after_an_injection"]
    cautions = ["injected_lately"]
  }
}

case "injected 91 days ago: 13 weeks are over" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person {
      age            = 50
      last_injection = "2026-07-06"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { injected_lately = false }
    silent   = ["review_after_an_injection", "injected_lately"]
  }
}

case "injected 92 days ago" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person { last_injection = "2026-07-05" }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { injected_lately = false }
    silent   = ["injected_lately"]
  }
}

case "operated on 181 days ago: still changing, seen by half a year" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person {
      age          = 50
      last_surgery = "2026-04-07"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    choices  = { review_interval = "open: 1..26 wk" }
    findings = { operated_lately = true }
    fires    = ["review_after_surgery"]
    cautions = ["operated_lately"]
  }
}

case "operated on 182 days ago: 26 weeks are over" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person { last_surgery = "2026-04-06" }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { operated_lately = false }
    silent   = ["review_after_surgery", "operated_lately"]
  }
}

case "operated on 183 days ago" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person { last_surgery = "2026-04-05" }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { operated_lately = false }
    silent   = ["operated_lately"]
  }
}

case "last cast off 83 days ago: range may still go back" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person {
      age              = 50
      last_serial_cast = "2026-07-14"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    choices  = { review_interval = "open: 1..12 wk" }
    findings = { cast_lately = true }
    fires    = ["review_after_casting"]
    cautions = ["cast_lately"]
  }
}

case "last cast off 84 days ago: 12 weeks are over" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person { last_serial_cast = "2026-07-13" }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { cast_lately = false }
    silent   = ["review_after_casting", "cast_lately"]
  }
}

case "last cast off 85 days ago" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person { last_serial_cast = "2026-07-12" }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { cast_lately = false }
    silent   = ["cast_lately"]
  }
}

case "a child of 9 cast four weeks ago: the cast asks for 12 weeks where growth alone asks for 13" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person {
      age              = 9
      last_serial_cast = "2026-09-07"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    choices = { review_interval = "12 wk" }
    fires   = ["recheck_a_growing_leg", "review_after_casting"]
  }
}

case "never injected, operated on or cast: nothing of it is awaited" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person {
      age              = 50
      last_injection   = "never"
      last_surgery     = "never"
      last_serial_cast = "never"
    }
    left {
      foot_pulses = "both"
      foot_risk   = "0"
    }
  }
  expect "person" {
    choices  = { review_interval = "left_to_clinician (not provisional)" }
    findings = { injected_lately = false, operated_lately = false, cast_lately = false }
    silent   = ["review_after_an_injection", "review_after_surgery", "review_after_casting", "injected_lately", "operated_lately", "cast_lately"]
  }
}

case "never injected or cast, and nobody asked about operations: that one is awaited" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person {
      age              = 50
      last_injection   = "never"
      last_serial_cast = "never"
    }
    left {
      foot_pulses = "both"
      foot_risk   = "0"
    }
  }
  expect "person" {
    choices  = { review_interval = "left_to_clinician (provisional)" }
    findings = { injected_lately = false, operated_lately = "unknown", cast_lately = false }
    silent   = ["review_after_an_injection", "review_after_casting", "injected_lately", "cast_lately"]
  }
}

case "never operated on or cast, and injected four weeks ago" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left"]
    person {
      age              = 50
      last_injection   = "2026-09-07"
      last_surgery     = "never"
      last_serial_cast = "never"
    }
    left {
      foot_pulses = "both"
      foot_risk   = "0"
    }
  }
  expect "person" {
    choices  = { review_interval = "open: 1..13 wk (not provisional)" }
    findings = { injected_lately = true, operated_lately = false, cast_lately = false }
    fires    = ["review_after_an_injection"]
    cautions = ["injected_lately"]
    silent   = ["review_after_surgery", "review_after_casting", "operated_lately", "cast_lately"]
  }
}
