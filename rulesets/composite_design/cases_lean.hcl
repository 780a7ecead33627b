# Worked cases of the lean of the shank. The published lean and the one from memory are both aims: within a degree they
# agree, and otherwise the choice stays open with both.

case "lean slower than 0.6 body heights a second" {
  basis = "published"
  cites = ["bovi_2011"]
  given {
    device_for = ["left"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.0
      walking_aid   = "none"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "11 deg" }
    findings = { ankle_is_held = true }
    fires    = ["lean_the_shank", "lean_as_healthy_walkers_do"]
    silent   = ["memory_and_walkers_disagree_on_the_lean"]
  }
  expect "person" {
    findings   = { walks_very_slowly = true, walks_slowly = true }
    quantities = { lean_at_own_speed = "10.69 deg", speed_in_heights = "0.5882 1 +- 0.0002" }
  }
}

case "lean at 0.6 body heights a second" {
  basis = "published"
  cites = ["bovi_2011"]
  given {
    device_for = ["left"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.02
      walking_aid   = "none"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "open: 11..12.05 deg" }
    findings = { ankle_is_held = true }
    fires    = ["lean_the_shank", "lean_as_healthy_walkers_do"]
    cautions = ["memory_and_walkers_disagree_on_the_lean"]
  }
  expect "person" {
    findings   = { walks_very_slowly = false, walks_slowly = true }
    quantities = { lean_at_own_speed = "12.05 deg", speed_in_heights = "0.6000 1 +- 0.0002" }
  }
}

case "lean a little faster than 0.6 body heights a second" {
  basis = "published"
  cites = ["bovi_2011"]
  given {
    device_for = ["left"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.1
      walking_aid   = "none"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "open: 11..12.05 deg" }
    findings = { ankle_is_held = true }
    fires    = ["lean_the_shank", "lean_as_healthy_walkers_do"]
    cautions = ["memory_and_walkers_disagree_on_the_lean"]
  }
  expect "person" {
    findings   = { walks_very_slowly = false, walks_slowly = true }
    quantities = { lean_at_own_speed = "12.05 deg", speed_in_heights = "0.6471 1 +- 0.0002" }
  }
}

case "lean slower than 0.8 body heights a second" {
  basis = "published"
  cites = ["bovi_2011"]
  given {
    device_for = ["left"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.3
      walking_aid   = "none"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "open: 11..12.05 deg" }
    findings = { ankle_is_held = true }
    fires    = ["lean_the_shank", "lean_as_healthy_walkers_do"]
    cautions = ["memory_and_walkers_disagree_on_the_lean"]
  }
  expect "person" {
    findings   = { walks_very_slowly = false, walks_slowly = true }
    quantities = { lean_at_own_speed = "12.05 deg", speed_in_heights = "0.7647 1 +- 0.0002" }
  }
}

case "lean at 0.8 body heights a second" {
  basis = "published"
  cites = ["bovi_2011"]
  given {
    device_for = ["left"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.36
      walking_aid   = "none"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "open: 11..12.56 deg" }
    findings = { ankle_is_held = true }
    fires    = ["lean_the_shank", "lean_as_healthy_walkers_do"]
    cautions = ["memory_and_walkers_disagree_on_the_lean"]
  }
  expect "person" {
    findings   = { walks_very_slowly = false, walks_slowly = false }
    quantities = { lean_at_own_speed = "12.56 deg", speed_in_heights = "0.8000 1 +- 0.0002" }
  }
}

case "lean faster than 0.8 body heights a second" {
  basis = "published"
  cites = ["bovi_2011"]
  given {
    device_for = ["left"]
    person {
      age           = 50
      height        = 170
      walking_speed = 1.45
      walking_aid   = "none"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "open: 11..12.56 deg" }
    findings = { ankle_is_held = true }
    fires    = ["lean_the_shank", "lean_as_healthy_walkers_do"]
    cautions = ["memory_and_walkers_disagree_on_the_lean"]
  }
  expect "person" {
    findings   = { walks_very_slowly = false, walks_slowly = false }
    quantities = { lean_at_own_speed = "12.56 deg", speed_in_heights = "0.8529 1 +- 0.0002" }
  }
}

case "lean at seventeen, slower than 0.6 body heights a second" {
  basis = "published"
  cites = ["bovi_2011"]
  given {
    device_for = ["left"]
    person {
      age           = 17
      height        = 170
      walking_speed = 1.0
      walking_aid   = "none"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "11 deg" }
    findings = { ankle_is_held = true }
    fires    = ["lean_the_shank", "lean_as_healthy_walkers_do"]
    silent   = ["memory_and_walkers_disagree_on_the_lean"]
  }
  expect "person" {
    findings   = { walks_very_slowly = true, walks_slowly = true }
    quantities = { lean_at_own_speed = "10.48 deg", speed_in_heights = "0.5882 1 +- 0.0002" }
  }
}

case "lean at seventeen, slower than 0.8 body heights a second" {
  basis = "published"
  cites = ["bovi_2011"]
  given {
    device_for = ["left"]
    person {
      age           = 17
      height        = 170
      walking_speed = 1.3
      walking_aid   = "none"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "open: 11..12.23 deg" }
    findings = { ankle_is_held = true }
    fires    = ["lean_the_shank", "lean_as_healthy_walkers_do"]
    cautions = ["memory_and_walkers_disagree_on_the_lean"]
  }
  expect "person" {
    findings   = { walks_very_slowly = false, walks_slowly = true }
    quantities = { lean_at_own_speed = "12.23 deg", speed_in_heights = "0.7647 1 +- 0.0002" }
  }
}

case "lean at seventeen, at a natural speed" {
  basis = "published"
  cites = ["bovi_2011"]
  given {
    device_for = ["left"]
    person {
      age           = 17
      height        = 170
      walking_speed = 1.45
      walking_aid   = "none"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "open: 11..13.14 deg" }
    findings = { ankle_is_held = true }
    fires    = ["lean_the_shank", "lean_as_healthy_walkers_do"]
    cautions = ["memory_and_walkers_disagree_on_the_lean"]
  }
  expect "person" {
    findings   = { walks_very_slowly = false, walks_slowly = false }
    quantities = { lean_at_own_speed = "13.14 deg", speed_in_heights = "0.8529 1 +- 0.0002" }
  }
}

case "lean just eighteen, slower than 0.6 body heights a second" {
  basis = "published"
  cites = ["bovi_2011"]
  given {
    device_for = ["left"]
    person {
      age           = 18
      height        = 170
      walking_speed = 1.0
      walking_aid   = "none"
    }
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
    }
  }
  expect "left" {
    choices  = { shank_to_vertical_target = "11 deg" }
    findings = { ankle_is_held = true }
    fires    = ["lean_the_shank", "lean_as_healthy_walkers_do"]
    silent   = ["memory_and_walkers_disagree_on_the_lean"]
  }
  expect "person" {
    findings   = { walks_very_slowly = true, walks_slowly = true }
    quantities = { lean_at_own_speed = "10.69 deg", speed_in_heights = "0.5882 1 +- 0.0002" }
  }
}
