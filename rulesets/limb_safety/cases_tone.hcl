# Tone and clonus. Invented people unless a source is named; expectations worked out by hand.

case "calf tone 1+ on the left, 2 on the right: marked from 2" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = -3
    }
    right {
      plantarflexor_tone               = "2"
      ankle_dorsiflexion_knee_extended = -3
    }
  }
  expect "left" {
    findings = {
      tone_marked       = false
      tone_hard_to_move = false
    }
    silent = ["tone_management_first", "tone_hard_to_move", "tone_with_little_range"]
  }
  expect "right" {
    findings = {
      tone_marked       = true
      tone_hard_to_move = false
    }
    cautions = ["tone_with_little_range"]
    silent   = ["tone_management_first", "tone_hard_to_move"]
  }
}

case "calf tone 3 on the left, 4 on the right: those who treat tone come first" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      plantarflexor_tone               = "3"
      ankle_dorsiflexion_knee_extended = 4
    }
    right {
      plantarflexor_tone               = "4"
      ankle_dorsiflexion_knee_extended = -6
    }
  }
  expect "left" {
    choices = { device = "refer_tone_management" }
    findings = {
      tone_marked       = true
      tone_hard_to_move = true
    }
    fires    = ["tone_management_first"]
    cautions = ["tone_hard_to_move"]
    silent   = ["tone_with_little_range"]
  }
  expect "right" {
    choices  = { device = "refer_tone_management" }
    findings = { tone_hard_to_move = true }
    fires    = ["tone_management_first"]
    cautions = ["tone_hard_to_move", "tone_with_little_range"]
  }
}

case "invertor tone 2 on the left, 3 on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left { invertor_tone = "2" }
    right { invertor_tone = "3" }
  }
  expect "left" {
    findings = { inversion_tone_hard_to_move = false }
    silent   = ["inversion_tone"]
  }
  expect "right" {
    findings = { inversion_tone_hard_to_move = true }
    cautions = ["inversion_tone"]
  }
}

case "invertor tone 4" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    left { invertor_tone = "4" }
  }
  expect "left" {
    findings = { inversion_tone_hard_to_move = true }
    cautions = ["inversion_tone"]
  }
}

case "2 beats on the left, 3 on the right: abnormal from 3 by one source" {
  basis = "published"
  cites = ["degowin_1987", "clonus_teaching"]
  given {
    device_for = ["left", "right"]
    left {
      clonus_beats     = 2
      clonus_sustained = false
    }
    right {
      clonus_beats     = 3
      clonus_sustained = false
    }
  }
  expect "left" {
    findings = {
      clonus_in_dispute    = false
      clonus_does_not_fade = false
    }
    silent = ["clonus_limits_differ", "clonus_does_not_fade", "hold_the_ankle_from_five_beats"]
  }
  expect "right" {
    choices  = { articulation = "left_to_clinician" }
    findings = { clonus_in_dispute = false }
    cautions = ["clonus_limits_differ"]
    silent   = ["clonus_does_not_fade", "hold_the_ankle_from_five_beats", "joint_with_stop_up_to_ten_beats"]
  }
}

case "4 beats that stop, range to plantigrade: abnormal, not sustained by any source" {
  basis = "published"
  cites = ["degowin_1987"]
  given {
    device_for = ["left"]
    left {
      clonus_beats                     = 4
      clonus_sustained                 = false
      ankle_dorsiflexion_knee_extended = 2
    }
  }
  expect "left" {
    choices = { articulation = "left_to_clinician (not provisional)" }
    findings = {
      clonus_in_dispute    = false
      clonus_does_not_fade = false
    }
    cautions = ["clonus_limits_differ"]
    silent   = ["no_free_joint_on_lasting_clonus"]
  }
}

case "5 beats on the left, 6 on the right: sustained by five, not by ten, and the joint stays open" {
  basis = "published"
  cites = ["degowin_1987", "clonus_five_beats"]
  given {
    device_for = ["left", "right"]
    left {
      clonus_beats                     = 5
      clonus_sustained                 = false
      ankle_dorsiflexion_knee_extended = 2
    }
    right {
      clonus_beats     = 6
      clonus_sustained = false
    }
  }
  expect "left" {
    choices = { articulation = "open: none, plantarflexion_stop (not provisional)" }
    findings = {
      clonus_in_dispute    = true
      clonus_does_not_fade = false
    }
    fires    = ["hold_the_ankle_from_five_beats", "joint_with_stop_up_to_ten_beats"]
    cautions = ["clonus_limits_differ"]
    silent   = ["no_free_joint_on_lasting_clonus"]
  }
  expect "right" {
    choices  = { articulation = "open: none, plantarflexion_stop" }
    findings = { clonus_in_dispute = true }
    fires    = ["hold_the_ankle_from_five_beats", "joint_with_stop_up_to_ten_beats"]
    cautions = ["clonus_limits_differ"]
  }
}

case "9 beats on the left, 10 on the right: from ten all agree" {
  basis = "published"
  cites = ["degowin_1987"]
  given {
    device_for = ["left", "right"]
    left {
      clonus_beats     = 9
      clonus_sustained = false
    }
    right {
      clonus_beats                     = 10
      clonus_sustained                 = false
      ankle_dorsiflexion_knee_extended = 0
    }
  }
  expect "left" {
    choices = { articulation = "open: none, plantarflexion_stop" }
    findings = {
      clonus_in_dispute    = true
      clonus_does_not_fade = false
    }
    cautions = ["clonus_limits_differ"]
    silent   = ["clonus_does_not_fade"]
  }
  expect "right" {
    choices = { articulation = "none (not provisional)" }
    findings = {
      clonus_in_dispute    = false
      clonus_does_not_fade = true
    }
    fires    = ["no_free_joint_on_lasting_clonus"]
    cautions = ["clonus_does_not_fade"]
    silent   = ["clonus_limits_differ", "hold_the_ankle_from_five_beats"]
  }
}

case "11 beats; and 7 that still beat after ten seconds: both sustained" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    left {
      clonus_beats     = 11
      clonus_sustained = false
    }
    right {
      clonus_beats     = 7
      clonus_sustained = true
    }
  }
  expect "left" {
    choices  = { articulation = "none" }
    findings = { clonus_does_not_fade = true }
    fires    = ["no_free_joint_on_lasting_clonus"]
  }
  expect "right" {
    choices = { articulation = "none" }
    findings = {
      clonus_does_not_fade = true
      clonus_in_dispute    = false
    }
    fires  = ["no_free_joint_on_lasting_clonus"]
    silent = ["hold_the_ankle_from_five_beats", "joint_with_stop_up_to_ten_beats"]
  }
}
