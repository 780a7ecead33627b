# Worked cases of the heel in varus, of time and of hands. Invented people; expectations worked out by hand.

case "a varus heel that comes straight on the block and tips: posted, with a strap from the lateral side" {
  basis = "published"
  cites = ["block_test", "varus_strap"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 28
      diagnosis_group = "hereditary_neuropathy"
    }
    left {
      fpi_medial_arch           = "-2"
      hindfoot_alignment        = "varus"
      hindfoot_corrects_by_hand = "fully"
      block_test                = "corrects"
      protective_sensation      = "present"
      ankle_proprioception      = "intact"
      ankle_sideways_stability  = "loose_inversion"
    }
    right {
      fpi_medial_arch          = "0"
      hindfoot_alignment       = "neutral"
      protective_sensation     = "present"
      ankle_proprioception     = "reduced"
      ankle_sideways_stability = "loose_inversion"
    }
  }
  expect "left" {
    choices = {
      hindfoot_in_cast        = "corrected"
      hindfoot_posting        = "lateral"
      forefoot_posting        = "first_ray_recess"
      pressure_system_frontal = "against_varus"
      ankle_strap             = "pull_from_lateral"
    }
    findings = { varus_heel = true, varus_corrects = true, varus_stiff = false, varus_gives = true }
    fires    = ["post_a_varus_that_corrects", "pull_against_varus"]
    silent   = ["take_part_of_a_varus", "take_a_stiff_varus_as_it_is", "wrap_insensate_varus", "stiff_cavovarus", "insensate_high_arch", "position_sense_is_part_of_it"]
    cautions = ["steps_for_adults"]
  }
  expect "right" {
    findings = { varus_heel = false, varus_corrects = false, varus_stiff = false, varus_gives = false }
    silent   = ["post_a_varus_that_corrects", "take_part_of_a_varus", "pull_against_varus", "wrap_insensate_varus", "take_a_stiff_varus_as_it_is", "steps_for_adults"]
    cautions = ["position_sense_is_part_of_it"]
  }
}

case "partly corrected, tipping and without feeling: a lateral wall in place of the strap" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 51
      diagnosis_group = "hereditary_neuropathy"
    }
    right {
      fpi_medial_arch           = "-1"
      hindfoot_alignment        = "varus"
      hindfoot_corrects_by_hand = "partly"
      block_test                = "corrects_partly"
      protective_sensation      = "absent"
      ankle_proprioception      = "absent"
      ankle_sideways_stability  = "stable"
      gait_loading_foot         = "rolls_outwards"
    }
  }
  expect "right" {
    choices = {
      hindfoot_in_cast        = "partly_corrected"
      pressure_system_frontal = "against_varus"
      foot_shell              = "high_lateral"
      ankle_strap             = "open: none, instep"
    }
    findings = { varus_corrects = false, varus_gives = true, "limb_safety.insensate" = true }
    fires    = ["take_part_of_a_varus", "wrap_insensate_varus"]
    silent   = ["pull_against_varus", "post_a_varus_that_corrects", "stiff_cavovarus"]
    cautions = ["insensate_high_arch", "position_sense_is_part_of_it"]
  }
}

case "a heel that stays in varus on the block is taken as it stands; in a child without the word on adults" {
  basis = "published"
  cites = ["block_test"]
  given {
    device_for = ["left"]
    person {
      age             = 16
      diagnosis_group = "hereditary_neuropathy"
    }
    left {
      fpi_medial_arch          = "0"
      hindfoot_alignment       = "varus"
      block_test               = "does_not_correct"
      protective_sensation     = "reduced"
      ankle_sideways_stability = "loose_both"
    }
  }
  expect "left" {
    choices  = { hindfoot_in_cast = "accommodated" }
    findings = { varus_stiff = true, varus_gives = false }
    fires    = ["take_a_stiff_varus_as_it_is"]
    silent   = ["take_part_of_a_varus", "wrap_insensate_varus", "steps_for_adults", "insensate_high_arch"]
    cautions = ["stiff_cavovarus"]
  }
}

case "a varus heel that corrects and does not tip: posted, without a pull" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 40
      diagnosis_group = "hereditary_neuropathy"
    }
    left {
      hindfoot_alignment       = "varus"
      block_test               = "corrects"
      protective_sensation     = "reduced"
      ankle_sideways_stability = "stable"
      gait_loading_foot        = "controlled"
    }
  }
  expect "left" {
    findings = { varus_gives = false, ankle_unsteady = false }
    fires    = ["post_a_varus_that_corrects"]
    silent   = ["pull_against_varus", "wrap_insensate_varus"]
  }
}

case "block test not done: how the heel is taken is not known" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 40
      diagnosis_group = "hereditary_neuropathy"
    }
    left {
      hindfoot_alignment        = "varus"
      hindfoot_corrects_by_hand = "partly"
      block_test                = { not_recorded = "cannot stand on the block" }
      ankle_sideways_stability  = "stable"
      gait_loading_foot         = "rolls_outwards"
    }
  }
  expect "left" {
    choices  = { hindfoot_in_cast = "left_to_clinician (provisional)" }
    findings = { varus_corrects = "unknown", varus_stiff = "unknown", varus_gives = "unknown" }
    silent   = ["post_a_varus_that_corrects", "stiff_cavovarus"]
  }
}

case "progressive, weak hands and no help: review within half a year, a low foot shell" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 60
      diagnosis_group = "hereditary_neuropathy"
      progression     = "progressive"
      hand_function   = "weak_grip"
      help_available  = "none"
    }
  }
  expect "right" {
    choices = { foot_shell = "low" }
  }
  expect "person" {
    choices  = { review_interval = "open: 1..26 wk" }
    findings = { hands_weak = true }
    fires    = ["review_while_it_progresses", "easy_to_put_on"]
    cautions = ["it_goes_on"]
  }
}

case "weak hands and a wall against varus: low and high shell are level, and the clinician weighs them" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 60
      diagnosis_group = "hereditary_neuropathy"
      hand_function   = "none"
      help_available  = "sometimes"
    }
    right {
      hindfoot_alignment       = "varus"
      block_test               = "corrects"
      protective_sensation     = "absent"
      ankle_sideways_stability = "loose_inversion"
    }
  }
  expect "right" {
    choices = { foot_shell = "open: low, high_lateral" }
    fires   = ["wrap_insensate_varus"]
  }
  expect "person" { fires = ["easy_to_put_on"] }
}

case "stable for years, somebody helps each time" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 60
      diagnosis_group = "hereditary_neuropathy"
      progression     = "stable"
      hand_function   = "weak_grip"
      help_available  = "each_time"
    }
  }
  expect "person" { silent = ["review_while_it_progresses", "it_goes_on", "easy_to_put_on"] }
}

case "both hands pull: nothing is made easier to put on" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 22
      diagnosis_group = "hereditary_neuropathy"
      hand_function   = "both_hands"
      help_available  = "none"
    }
  }
  expect "person" {
    findings = { hands_weak = false }
    silent   = ["easy_to_put_on"]
  }
}
