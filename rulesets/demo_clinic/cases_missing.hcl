# Worked cases in which something is missing. What is unknown is never taken for no.

case "range not recorded: no angle and no block" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age         = 55
      walking_aid = "none"
    }
    left {
      ankle_dorsiflexion_knee_extended = { not_recorded = "pain on movement" }
      heel_contact_standing            = "full"
      plantarflexor_tone               = "0"
      shoe_heel_height                 = 20
      shoe_forefoot_height             = 10
    }
  }
  expect "left" {
    choices = {
      cast_ankle_angle  = "unanswered (provisional)"
      cast_block_height = "left_to_clinician (provisional)"
    }
    findings   = { equinus = "unknown", fixed_equinus = false }
    quantities = { usable_range = "unknown", shoe_drop = "10 mm" }
    silent     = ["cast_within_reach", "cast_for_the_shoe", "cast_where_the_ankle_stops"]
  }
}

case "walking aid not recorded: it is not known whether the protocol applies, so all is provisional" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { age = 55 }
    left { hindfoot_corrects_standing = "not_at_all" }
  }
  expect "left" {
    choices = { hindfoot_in_cast = "accommodated (provisional)" }
    fires   = ["hindfoot_stays"]
  }
  expect "person" {
    choices = { review_interval = "6 wk (provisional)" }
  }
}

case "no pulse felt, no index taken: the circulation is an open question" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age              = 71
      activity_demand  = "moderate"
      walking_aid      = "one_stick"
      diabetes         = "none"
      arterial_disease = "none_known"
    }
    right {
      malleolar_skin           = "intact"
      heel_skin                = "intact"
      achilles_skin            = "intact"
      foot_dorsum_skin         = "intact"
      anterior_shin_skin       = "intact"
      posterior_calf_skin      = "intact"
      foot_pulses              = "none"
      gait_midstance_ankle     = "moves_forward_steadily"
      protective_sensation     = "present"
      plantarflexor_tone       = "0"
      plantarflexor_power      = "5"
      heel_rises               = 12
      dorsiflexor_power        = "5"
      heel_contact_standing    = "full"
      gait_initial_contact     = "heel"
      gait_midstance_knee      = "near_straight"
      gait_terminal_stance_hip = "extends"
    }
  }
  expect "right" {
    choices  = { device = "composite (provisional)" }
    findings = { "demo_safety.poor_circulation" = "unknown", "demo_safety.broken_skin" = false }
    silent   = ["demo_safety.vascular_opinion_first", "demo_safety.poor_circulation"]
  }
}

case "driver who falls, shoes of several heels, injection long ago: what is only worth a word" {
  basis = "common_practice"
  given {
    date       = "2026-10-05"
    device_for = ["left", "right"]
    person {
      age             = 48
      walking_aid     = "none"
      driving         = "manual"
      falls_last_year = 1
      hand_function   = "one_hand"
      help_available  = "each_time"
      last_injection  = "2026-06-01"
    }
    left {
      ankle_dorsiflexion_knee_extended = 22
      plantarflexor_tone               = "1+"
      gastrocnemius_fast_angle         = 15
      protective_sensation             = "present"
      heel_contact_standing            = "full"
      shoe_heel_varies                 = false
      shoe_will_be_worn                = true
    }
    right {
      ankle_dorsiflexion_knee_extended = 14
      plantarflexor_tone               = "0"
      protective_sensation             = "present"
      heel_contact_standing            = "full"
      shoe_heel_varies                 = true
      shoe_will_be_worn                = true
    }
  }
  expect "left" {
    choices = { cast_ankle_angle = "0 deg" }
    silent  = ["shoe_not_settled", "catch_before_the_end", "sides_differ", "cast_within_reach"]
  }
  expect "right" {
    cautions = ["shoe_not_settled"]
    fires    = ["cast_within_reach"]
  }
  expect "person" {
    choices  = { review_interval = "6 wk (not provisional)" }
    cautions = ["driving", "falls"]
    silent   = ["low_foot_shell_for_one_hand"]
  }
}

case "passenger who does not fall" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 81
      walking_aid     = "frame"
      driving         = "does_not_drive"
      falls_last_year = 0
      skin_risk       = "raised"
    }
    left {
      dorsiflexor_power = "3"
      gait_swing_ankle  = "lifts"
      foot_pulses       = "both"
    }
  }
  expect "left" {
    choices  = { padding = "at_bony_places" }
    findings = { foot_drop = false }
  }
  expect "person" {
    silent = ["driving", "falls"]
    fires  = ["line_skin_at_risk"]
  }
}
