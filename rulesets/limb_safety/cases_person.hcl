# Falls, bone, help, movement and load. Invented people; what is expected was worked out by hand.

case "no fall and free standing" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      falls_last_year  = 0
      standing_balance = "eyes_open"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { falls = false }
    silent   = ["falls"]
  }
}

case "one fall in the last year" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      falls_last_year  = 1
      standing_balance = "eyes_closed"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { falls = true }
    cautions = ["falls"]
  }
}

case "two falls in the last year" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { falls_last_year = 2 }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { falls = true }
    cautions = ["falls"]
  }
}

case "no fall, but standing only with support" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      falls_last_year  = 0
      standing_balance = "with_support"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { falls = true }
    cautions = ["falls"]
  }
}

case "no fall, but unable to stand alone" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      falls_last_year  = 0
      standing_balance = "unable"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { falls = true }
    cautions = ["falls"]
  }
}

case "low bone density: no serial cast" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { low_bone_density = true }
    left { foot_pulses = "both" }
  }
  expect "person" {
    fires    = ["no_casting_of_brittle_bone"]
    cautions = ["low_bone_density"]
  }
}

case "bone density not known to be low" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { low_bone_density = false }
    left { foot_pulses = "both" }
  }
  expect "person" { silent = ["no_casting_of_brittle_bone", "low_bone_density"] }
}

case "one hand and help only sometimes: who puts it on?" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      hand_function  = "one_hand"
      help_available = "sometimes"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { needs_help_to_put_on = true }
    cautions = ["cannot_put_it_on"]
  }
}

case "weak grip and no help" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      hand_function  = "weak_grip"
      help_available = "none"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { needs_help_to_put_on = true }
    cautions = ["cannot_put_it_on"]
  }
}

case "no hand function, help each time: no caution" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      hand_function  = "none"
      help_available = "each_time"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { needs_help_to_put_on = true }
    silent   = ["cannot_put_it_on"]
  }
}

case "two hands that pull, and no help: no caution" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      hand_function  = "both_hands"
      help_available = "none"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { needs_help_to_put_on = false }
    silent   = ["cannot_put_it_on"]
  }
}

case "cannot keep instructions, help only sometimes: worn in under someone's eyes" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age                  = 71
      follows_instructions = "no"
      help_available       = "sometimes"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    choices  = { wearing_in = "supervised" }
    findings = { cannot_report = true }
    fires    = ["supervise_who_cannot_report"]
    cautions = ["cannot_report"]
  }
}

case "cannot keep instructions, help each time: usual wearing in, the helper is taught" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age                  = 71
      follows_instructions = "no"
      help_available       = "each_time"
      involuntary_movement = "none"
    }
    left { protective_sensation = "present" }
  }
  expect "person" {
    choices  = { wearing_in = "usual (not provisional)" }
    findings = { cannot_report = true }
    cautions = ["cannot_report"]
    silent   = ["supervise_who_cannot_report"]
  }
}

case "keeps instructions with reminders" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age                  = 71
      follows_instructions = "with_reminders"
      help_available       = "none"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { cannot_report = false }
    silent   = ["supervise_who_cannot_report", "cannot_report"]
  }
}

case "marked dystonia in a child: worn in slowly, skin looked at daily or more often" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age                  = 8
      involuntary_movement = "marked"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    choices = {
      wearing_in = "slow"
      skin_check = "open: daily, every_removal"
    }
    findings = { movement_marked = true }
    fires    = ["watch_a_limb_that_moves"]
    cautions = ["movement_marked"]
  }
}

case "mild involuntary movement" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age                  = 8
      involuntary_movement = "mild"
    }
    left { foot_pulses = "both" }
  }
  expect "person" {
    findings = { movement_marked = false }
    silent   = ["watch_a_limb_that_moves", "movement_marked"]
  }
}

case "99 kg, moderate activity" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      body_mass       = 99
      activity_demand = "moderate"
    }
    left { foot_pulses = "both" }
  }
  expect "person" { silent = ["load_on_the_laminate"] }
}

case "100 kg: the starting value itself is not over it" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      body_mass       = 100
      activity_demand = "low"
    }
    left { foot_pulses = "both" }
  }
  expect "person" { silent = ["load_on_the_laminate"] }
}

case "101 kg: parts and laminate are confirmed by their makers" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      body_mass       = 101
      activity_demand = "low"
    }
    left { foot_pulses = "both" }
  }
  expect "person" { cautions = ["load_on_the_laminate"] }
}

case "70 kg, but load carrying at work" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      body_mass       = 70
      activity_demand = "high"
    }
    left { foot_pulses = "both" }
  }
  expect "person" { cautions = ["load_on_the_laminate"] }
}
