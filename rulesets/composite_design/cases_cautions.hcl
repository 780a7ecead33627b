# Worked cases of what the other cases don't show.

case "hands that manage, shoes that change" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      walking_aid    = "none"
      hand_function  = "one_hand"
      help_available = "each_time"
    }
    left {
      shoe_heel_varies  = true
      shoe_will_be_worn = true
    }
    right {
      shoe_heel_varies  = false
      shoe_will_be_worn = true
    }
  }
  expect "left" { cautions = ["other_shoes"] }
  expect "right" { silent = ["other_shoes"] }
  expect "person" { silent = ["low_foot_shell_for_hands_without_help"] }
}

case "the shoe that was measured will not be worn" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { walking_aid = "none" }
    right {
      shoe_heel_varies  = false
      shoe_will_be_worn = false
    }
  }
  expect "right" { cautions = ["other_shoes"] }
}

case "two hands, and a hindfoot that only load brings in line" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      walking_aid    = "none"
      hand_function  = "both_hands"
      help_available = "none"
    }
    left {
      hindfoot_corrects_by_hand  = "partly"
      hindfoot_corrects_standing = "fully"
    }
  }
  expect "left" {
    choices  = { hindfoot_in_cast = "corrected" }
    cautions = ["load_changes_the_hindfoot"]
  }
  expect "person" { silent = ["low_foot_shell_for_hands_without_help"] }
}

case "sits in a wheelchair: the design is for walking" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "wheelchair" }
    left { plantarflexor_tone = "2" }
  }
  expect "person" { applies = "no" }
}

case "no word on walking aids: whether it applies is not known" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { age = 40 }
    left { hindfoot_corrects_standing = "not_at_all" }
  }
  expect "person" { applies = "unknown" }
  expect "left" { choices = { hindfoot_in_cast = "accommodated (provisional)" } }
}

case "flat only under load, and the midfoot bends: part of the loaded range may not be the ankle's" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended        = -15
      ankle_dorsiflexion_loaded_knee_extended = -2
      heel_contact_standing                   = "only_under_load"
      midfoot_break                           = "marked"
    }
  }
  expect "left" {
    choices  = { cast_ankle_angle = "-2 deg" }
    cautions = ["midfoot_may_hide_equinus"]
  }
}

case "a heel that no hand moves and standing brings in line: nothing pushes at it" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      gait_midstance_hindfoot    = "varus"
      hindfoot_corrects_by_hand  = "not_at_all"
      hindfoot_corrects_standing = "fully"
      block_test                 = "does_not_correct"
      protective_sensation       = "present"
    }
  }
  expect "left" {
    choices  = { hindfoot_in_cast = "accommodated (not provisional)", pressure_system_frontal = "left_to_clinician (not provisional)", hindfoot_posting = "left_to_clinician (not provisional)" }
    findings = { hindfoot_comes_straight = false }
    silent   = ["hold_the_varus"]
    cautions = ["load_changes_the_hindfoot", "limb_safety.hindfoot_fixed"]
  }
}

case "equinus on an instep that does not feel: a wrap, no strap" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { walking_aid = "none" }
    right {
      ankle_dorsiflexion_knee_extended = -5
      heel_contact_standing            = "none"
      plantarflexor_tone               = "0"
      gait_midstance_hindfoot          = "neutral"
      protective_sensation             = "reduced"
    }
  }
  expect "right" {
    choices = { ankle_strap = "none", foot_shell = "dorsal" }
    fires   = ["wrap_for_a_foot_that_does_not_feel", "strap_over_the_instep"]
  }
}

case "nothing that sets a date, and skin that is not at risk: review and skin check are the clinician's" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 40
      walking_aid = "none"
      skin_risk   = "low"
    }
    left {
      protective_sensation = "present"
      previous_foot_ulcer  = false
    }
  }
  expect "person" { choices = { review_interval = "left_to_clinician", skin_check = "left_to_clinician" } }
}
