# Worked cases of where the raise goes. Invented people; worked out by hand: 180 mm × sin 11° = 34.345619168 mm, less
# what the shoe has.

case "a raise of exactly 10 mm goes into the foot shell of a deep shoe, one of a little more under the sole" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      plantarflexor_tone               = "1+"
      heel_to_ball_length              = 180
      shoe_heel_height                 = 34.345619168
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
    right {
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      plantarflexor_tone               = "1+"
      heel_to_ball_length              = 180
      shoe_heel_height                 = 33
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
  }
  expect "left" {
    choices    = { heel_raise = "10 mm (not provisional)", heel_raise_place = "in_foot_shell (not provisional)" }
    quantities = { heel_short_by = "10 mm" }
    fires      = ["raise_inside_a_deep_shoe"]
    silent     = ["high_raise_under_the_sole", "raise_under_a_shallow_shoe"]
  }
  expect "right" {
    choices    = { heel_raise = "11 mm (not provisional)", heel_raise_place = "under_sole (not provisional)" }
    quantities = { heel_short_by = "11.346 mm +- 0.001" }
    fires      = ["high_raise_under_the_sole"]
    silent     = ["raise_inside_a_deep_shoe", "raise_under_a_shallow_shoe"]
  }
}

case "a raise of 8 mm: in the foot shell of a deep shoe, yours to place in a usual one" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      plantarflexor_tone               = "1+"
      heel_to_ball_length              = 180
      shoe_heel_height                 = 36
      shoe_forefoot_height             = 10
      shoe_depth                       = "extra"
    }
    right {
      ankle_dorsiflexion_knee_extended = 5
      heel_contact_standing            = "full"
      plantarflexor_tone               = "1+"
      heel_to_ball_length              = 180
      shoe_heel_height                 = 36
      shoe_forefoot_height             = 10
      shoe_depth                       = "standard"
    }
  }
  expect "left" {
    choices    = { heel_raise = "8 mm (not provisional)", heel_raise_place = "in_foot_shell (not provisional)" }
    quantities = { heel_short_by = "8.346 mm +- 0.001" }
    fires      = ["raise_inside_a_deep_shoe"]
    silent     = ["high_raise_under_the_sole"]
  }
  expect "right" {
    choices = { heel_raise = "8 mm (not provisional)", heel_raise_place = "left_to_clinician" }
    silent  = ["raise_inside_a_deep_shoe", "high_raise_under_the_sole", "raise_under_a_shallow_shoe"]
  }
}
