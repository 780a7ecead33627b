# The person, the shoe, wearing in and review. Invented people; expectations worked out by hand.

case "17 years old: a growing leg, seen after 13 weeks" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age = 17
    }
    left {
      foot_pulses = "both"
    }
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
    person {
      age = 18
    }
    left {
      foot_pulses = "both"
    }
  }
  expect "person" {
    choices = {
      review_interval = "unanswered"
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
    person {
      age = 19
    }
    right {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    person {
      last_injection = "2026-07-05"
    }
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    person {
      last_surgery = "2026-04-06"
    }
    left {
      foot_pulses = "both"
    }
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
    person {
      last_surgery = "2026-04-05"
    }
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    person {
      last_serial_cast = "2026-07-13"
    }
    left {
      foot_pulses = "both"
    }
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
    person {
      last_serial_cast = "2026-07-12"
    }
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
  }
  expect "person" {
    choices = { review_interval = "12 wk" }
    fires   = ["recheck_a_growing_leg", "review_after_casting"]
  }
}

case "no fall and free standing" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      falls_last_year  = 0
      standing_balance = "eyes_open"
    }
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    person {
      falls_last_year = 2
    }
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    person {
      low_bone_density = true
    }
    left {
      foot_pulses = "both"
    }
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
    person {
      low_bone_density = false
    }
    left {
      foot_pulses = "both"
    }
  }
  expect "person" {
    silent = ["no_casting_of_brittle_bone", "low_bone_density"]
  }
}

case "one hand and help only sometimes: who puts it on?" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      hand_function  = "one_hand"
      help_available = "sometimes"
    }
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    left {
      protective_sensation = "present"
    }
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
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
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
    left {
      foot_pulses = "both"
    }
  }
  expect "person" {
    silent = ["load_on_the_laminate"]
  }
}

case "100 kg: the starting value itself is not over it" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      body_mass       = 100
      activity_demand = "low"
    }
    left {
      foot_pulses = "both"
    }
  }
  expect "person" {
    silent = ["load_on_the_laminate"]
  }
}

case "101 kg: parts and laminate are confirmed by their makers" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      body_mass       = 101
      activity_demand = "low"
    }
    left {
      foot_pulses = "both"
    }
  }
  expect "person" {
    cautions = ["load_on_the_laminate"]
  }
}

case "70 kg, but load carrying at work" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      body_mass       = 70
      activity_demand = "high"
    }
    left {
      foot_pulses = "both"
    }
  }
  expect "person" {
    cautions = ["load_on_the_laminate"]
  }
}

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
  expect "left" {
    silent = ["shoe_not_settled"]
  }
  expect "right" {
    cautions = ["shoe_not_settled"]
  }
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
  expect "left" {
    cautions = ["shoe_not_settled"]
  }
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
  expect "left" {
    silent = ["shoe_too_tight_for_a_device"]
  }
  expect "right" {
    cautions = ["shoe_too_tight_for_a_device"]
  }
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
  expect "left" {
    cautions = ["shoe_too_tight_for_a_device"]
  }
  expect "right" {
    cautions = ["shoe_too_tight_for_a_device"]
  }
}

case "drives with a clutch, device on the left: either foot works a pedal" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      driving = "manual"
    }
    left {
      foot_pulses = "both"
    }
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
    person {
      driving = "automatic"
    }
    right {
      foot_pulses = "both"
    }
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
    person {
      driving = "adapted_controls"
    }
    right {
      foot_pulses = "both"
    }
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
    person {
      driving = "does_not_drive"
    }
    right {
      foot_pulses = "both"
    }
  }
  expect "person" {
    silent = ["drives_with_pedals_for_both_feet", "drives_with_pedals_for_the_right_foot", "drives_with_adapted_controls"]
  }
}
