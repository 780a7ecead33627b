# Worked cases of a heel that tips: what the block test does for the cast, and what takes the place of a strap on skin that
# does not feel. Invented people.

case "a varus that comes straight on the block only, on skin that does not feel" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      gait_midstance_hindfoot    = "varus"
      hindfoot_corrects_by_hand  = "fully"
      hindfoot_corrects_standing = "partly"
      block_test                 = "corrects"
      protective_sensation       = "absent"
    }
  }
  expect "left" {
    choices  = { hindfoot_in_cast = "corrected (not provisional)", hindfoot_posting = "lateral", forefoot_posting = "first_ray_recess", pressure_system_frontal = "against_varus (not provisional)", foot_shell = "high_lateral" }
    findings = { forefoot_drives_the_varus = true }
    fires    = ["cast_straight_what_the_forefoot_tips", "wall_for_a_varus_that_does_not_feel", "hold_the_varus"]
    silent   = ["cast_the_hindfoot_as_far_as_it_goes", "cast_the_hindfoot_straight", "wall_for_a_valgus_that_does_not_feel"]
    cautions = ["load_changes_the_hindfoot"]
  }
}

case "a varus that comes part of the way, on the block too, and skin that feels" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      gait_midstance_hindfoot    = "varus"
      hindfoot_corrects_by_hand  = "partly"
      hindfoot_corrects_standing = "partly"
      block_test                 = "corrects_partly"
      protective_sensation       = "present"
    }
  }
  expect "left" {
    choices  = { hindfoot_in_cast = "partly_corrected (not provisional)", hindfoot_posting = "left_to_clinician", ankle_strap = "pull_from_lateral" }
    findings = { forefoot_drives_the_varus = false }
    fires    = ["cast_the_hindfoot_as_far_as_it_goes"]
    silent   = ["cast_straight_what_the_forefoot_tips", "wall_for_a_varus_that_does_not_feel", "load_changes_the_hindfoot"]
  }
}

case "a varus that comes part of the way, and no block test: the cast waits for it" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { walking_aid = "none" }
    left {
      gait_midstance_hindfoot    = "varus"
      hindfoot_corrects_standing = "partly"
    }
  }
  expect "left" {
    choices  = { hindfoot_in_cast = "left_to_clinician (provisional)" }
    findings = { forefoot_drives_the_varus = "unknown" }
  }
}

case "a valgus on skin that feels little: a wall instead of a strap" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { walking_aid = "none" }
    right {
      gait_midstance_hindfoot    = "valgus"
      hindfoot_corrects_by_hand  = "fully"
      hindfoot_corrects_standing = "fully"
      protective_sensation       = "reduced"
    }
  }
  expect "right" {
    choices  = { pressure_system_frontal = "against_valgus", foot_shell = "high_medial" }
    findings = { forefoot_drives_the_varus = false }
    fires    = ["wall_for_a_valgus_that_does_not_feel", "hold_the_valgus"]
    silent   = ["wall_for_a_varus_that_does_not_feel", "hold_the_varus"]
  }
}

case "a stiff heel on skin that does not feel: neither strap nor wall pushes at it" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { walking_aid = "none" }
    right {
      gait_midstance_hindfoot    = "varus"
      hindfoot_corrects_standing = "not_at_all"
      block_test                 = "corrects"
      protective_sensation       = "absent"
    }
  }
  expect "right" {
    choices  = { hindfoot_in_cast = "accommodated", hindfoot_posting = "none", pressure_system_frontal = "none" }
    findings = { hindfoot_comes_straight = false, forefoot_drives_the_varus = true }
    silent   = ["wall_for_a_varus_that_does_not_feel", "wall_for_a_valgus_that_does_not_feel", "hold_the_varus", "cast_straight_what_the_forefoot_tips"]
  }
}
