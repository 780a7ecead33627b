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
