# Worked cases of contracture under a shell in front: where the sources part, and where they end. Invented people; worked out
# by hand.

case "knee 14 deg short on the left, 15 on the right: from there the sources part" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      gait_midstance_ankle = "too_far_forward"
      knee_extension       = -14
      hip_extension        = 0
    }
    right {
      gait_midstance_ankle = "too_far_forward"
      knee_extension       = -15
      hip_extension        = 0
    }
  }
  expect "left" {
    silent = ["contracture_under_an_anterior_shell", "knee_beyond_reports"]
  }
  expect "right" {
    cautions = ["contracture_under_an_anterior_shell"]
    silent   = ["knee_beyond_reports"]
  }
}

case "knee 16 deg short on the left; hip 14 deg short on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      gait_midstance_ankle = "too_far_forward"
      knee_extension       = -16
      hip_extension        = 0
    }
    right {
      gait_midstance_ankle = "too_far_forward"
      knee_extension       = 0
      hip_extension        = -14
    }
  }
  expect "left" {
    cautions = ["contracture_under_an_anterior_shell"]
    silent   = ["knee_beyond_reports"]
  }
  expect "right" {
    silent = ["contracture_under_an_anterior_shell", "knee_beyond_reports"]
  }
}

case "hip 15 deg short on the left, 16 on the right" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      gait_midstance_ankle = "too_far_forward"
      knee_extension       = 0
      hip_extension        = -15
    }
    right {
      gait_midstance_ankle = "too_far_forward"
      knee_extension       = 0
      hip_extension        = -16
    }
  }
  expect "left" {
    cautions = ["contracture_under_an_anterior_shell"]
    silent   = ["knee_beyond_reports"]
  }
  expect "right" {
    cautions = ["contracture_under_an_anterior_shell"]
    silent   = ["knee_beyond_reports"]
  }
}

case "knee 20 deg short on the left, as in the one report; 21 on the right, beyond it" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      gait_midstance_ankle = "too_far_forward"
      knee_extension       = -20
      hip_extension        = 0
    }
    right {
      gait_midstance_ankle = "too_far_forward"
      knee_extension       = -21
      hip_extension        = 0
    }
  }
  expect "left" {
    cautions = ["contracture_under_an_anterior_shell"]
    silent   = ["knee_beyond_reports"]
  }
  expect "right" {
    cautions = ["contracture_under_an_anterior_shell", "knee_beyond_reports"]
  }
}

case "knee 19 deg short under a shank that falls forward; 25 deg under one that does not" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { walking_aid = "none" }
    left {
      gait_midstance_ankle = "too_far_forward"
      knee_extension       = -19
      hip_extension        = 0
    }
    right {
      gait_midstance_ankle = "held_back"
      knee_extension       = -25
      hip_extension        = -20
    }
  }
  expect "left" {
    cautions = ["contracture_under_an_anterior_shell"]
    silent   = ["knee_beyond_reports"]
  }
  expect "right" {
    silent = ["contracture_under_an_anterior_shell", "knee_beyond_reports"]
  }
}
