# Where the knee decides: polio and other weakness of the quadriceps. Invented people unless a source is named.

case "polio, quadriceps 2, knee held by the load: over the knee, or the load kept in front" {
  basis = "published"
  cites = ["fengler_2011"]
  given {
    device_for = ["left"]
    person {
      age               = 61
      diagnosis_group   = "polio"
      activity_demand   = "moderate"
      community_walking = "household"
    }
    left {
      heel_rises                       = 0
      plantarflexor_power              = "1"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "2"
      hip_extensor_power               = "4"
      ankle_sideways_stability         = "stable"
      ankle_dorsiflexion_knee_extended = -1
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "hyperextends_slowly"
    }
  }
  expect "left" {
    choices  = { device = "open: shoe_adaptation, anterior_shell_ground_reaction, knee_ankle_foot" }
    findings = { quadriceps_weak = true, spring_suits = false, knee_gives_way = false }
    fires    = ["over_the_knee_after_polio", "load_in_front_of_the_knee"]
    cautions = ["equinus_that_locks_the_knee", "knee_under_a_held_ankle"]
    silent   = ["over_the_knee_that_gives_way", "spring_for_weak_calf", "shell_in_front_of_the_shank"]
  }
  expect "person" {
    cautions = ["keep_it_light"]
    silent   = ["may_not_be_worn"]
  }
}

case "polio, quadriceps 2 and weak hip, knee gives way: over the knee" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age               = 58
      diagnosis_group   = "polio"
      community_walking = "limited_community"
    }
    right {
      heel_rises                       = 0
      plantarflexor_power              = "1"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "2"
      hip_extensor_power               = "3-"
      ankle_sideways_stability         = "loose_inversion"
      ankle_dorsiflexion_knee_extended = 0
      gait_midstance_knee              = "gives_way"
    }
  }
  expect "right" {
    choices  = { device = "knee_ankle_foot" }
    findings = { knee_gives_way = true }
    fires    = ["over_the_knee_after_polio", "over_the_knee_that_gives_way", "hold_a_loose_ankle"]
    silent   = ["load_in_front_of_the_knee", "equinus_that_locks_the_knee"]
  }
}

case "quadriceps 3- but 1 deg of dorsiflexion and hip extensors 3: the ankle may do" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 58
      diagnosis_group = "muscle_disease"
      activity_demand = "low"
    }
    left {
      heel_rises                       = 0
      plantarflexor_power              = "3"
      quadriceps_power                 = "3-"
      hip_extensor_power               = "3"
      ankle_dorsiflexion_knee_extended = 1
      gait_midstance_knee              = "gives_way"
    }
    right {
      heel_rises                       = 0
      plantarflexor_power              = "3"
      quadriceps_power                 = "3-"
      hip_extensor_power               = "3+"
      ankle_dorsiflexion_knee_extended = -5
      gait_midstance_knee              = "near_straight"
    }
  }
  expect "left" {
    choices  = { device = "left_to_clinician (provisional)" }
    findings = { quadriceps_weak = true }
    silent   = ["over_the_knee_after_polio", "over_the_knee_that_gives_way", "equinus_that_locks_the_knee", "load_in_front_of_the_knee"]
  }
  expect "right" {
    cautions = ["equinus_that_locks_the_knee"]
    silent   = ["over_the_knee_that_gives_way", "load_in_front_of_the_knee"]
  }
}

case "quadriceps 3 and 3+: not called weak, but watched under a held ankle" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age               = 58
      diagnosis_group   = "polio"
      community_walking = "community"
    }
    left {
      ankle_sideways_stability         = "stable"
      heel_rises                       = 0
      plantarflexor_power              = "3"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "3"
      hip_extensor_power               = "2"
      ankle_dorsiflexion_knee_extended = -5
      gait_midstance_knee              = "gives_way"
    }
    right {
      ankle_sideways_stability         = "stable"
      heel_rises                       = 0
      plantarflexor_power              = "3"
      plantarflexor_tone               = "0"
      quadriceps_power                 = "3+"
      hip_extensor_power               = "2"
      ankle_dorsiflexion_knee_extended = -5
      gait_midstance_knee              = "near_straight"
    }
  }
  expect "left" {
    choices  = { device = "composite" }
    findings = { quadriceps_weak = false, spring_suits = true }
    cautions = ["knee_under_a_held_ankle"]
    silent   = ["over_the_knee_after_polio", "over_the_knee_that_gives_way", "equinus_that_locks_the_knee"]
  }
  expect "right" {
    findings = { quadriceps_weak = false }
    cautions = ["knee_under_a_held_ankle"]
    silent   = ["load_in_front_of_the_knee", "over_the_knee_after_polio"]
  }
  expect "person" { cautions = ["may_not_be_worn", "keep_it_light"] }
}

case "after limb trauma, high demands: a composite with a programme, not with a knee that can't be held" {
  basis = "published"
  cites = ["limb_trauma_composites"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 29
      diagnosis_group = "trauma_or_surgery"
      activity_demand = "high"
    }
    left {
      heel_rises               = 2
      plantarflexor_power      = "4"
      plantarflexor_tone       = "0"
      quadriceps_power         = "5"
      ankle_sideways_stability = "loose_inversion"
    }
    right {
      heel_rises          = 2
      plantarflexor_power = "4"
      plantarflexor_tone  = "0"
      quadriceps_power    = "2"
    }
  }
  expect "left" {
    choices = { device = "composite" }
    fires   = ["composite_after_limb_trauma", "hold_a_loose_ankle"]
    silent  = ["spring_for_weak_calf"]
  }
  expect "right" { silent = ["spring_for_weak_calf", "composite_after_limb_trauma"] }
}

case "after limb trauma, low demands: no special word for trauma" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 29
      diagnosis_group = "trauma_or_surgery"
      activity_demand = "low"
    }
    left {
      ankle_sideways_stability = "stable"
      heel_rises               = 2
      plantarflexor_power      = "4"
      plantarflexor_tone       = "0"
      quadriceps_power         = "5"
    }
  }
  expect "left" {
    choices = { device = "composite" }
    silent  = ["composite_after_limb_trauma"]
  }
}
