# Worked cases of spastic gait that is not cerebral palsy: what the table on foot drop adds. Invented people; worked out by hand.

case "multiple sclerosis, spastic drop foot that is straight: a stiffer composite and stimulation stand beside spring and hinge" {
  basis = "published"
  cites = ["foot_drop_table", "sagittal_patterns"]
  given {
    device_for = ["left"]
    person {
      age             = 44
      diagnosis_group = "multiple_sclerosis"
      distribution    = "one_side"
    }
    left {
      ankle_dorsiflexion_knee_extended = 5
      plantarflexor_tone               = "1+"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "hangs"
      gait_swing_knee                  = "bends_enough"
    }
  }
  expect "left" {
    choices  = { device = "open: posterior_leaf_spring, articulated, composite, functional_stimulation" }
    findings = { drop_foot = true, calf_spastic = true, turns_in = false }
    fires    = ["spring_or_hinge_for_drop_foot", "stiffer_spring_or_stimulation_for_a_spastic_drop"]
    silent   = ["moulded_device_for_inversion"]
    cautions = ["device_or_stimulation"]
  }
  expect "person" {
    findings = { patterns_from_elsewhere = true }
    cautions = ["patterns_from_cerebral_palsy"]
  }
}

case "the same leg in cerebral palsy: the table on foot drop adds nothing" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 44
      diagnosis_group = "cerebral_palsy"
      distribution    = "one_side"
    }
    left {
      ankle_dorsiflexion_knee_extended = 5
      plantarflexor_tone               = "1+"
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices = { device = "open: posterior_leaf_spring, articulated" }
    silent  = ["stiffer_spring_or_stimulation_for_a_spastic_drop", "moulded_device_for_inversion", "device_or_stimulation"]
  }
  expect "person" { findings = { patterns_from_elsewhere = false } }
}

case "brain injury: tone of 2 and of 1 in a drop foot that is straight" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 31
      diagnosis_group = "brain_injury"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 5
      plantarflexor_tone               = "2"
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
    right {
      ankle_dorsiflexion_knee_extended = 5
      plantarflexor_tone               = "1"
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    findings = { calf_spastic = true }
    fires    = ["stiffer_spring_or_stimulation_for_a_spastic_drop"]
  }
  expect "right" {
    findings = { calf_spastic = false }
    silent   = ["stiffer_spring_or_stimulation_for_a_spastic_drop", "device_or_stimulation"]
  }
}

case "spinal cord lesion: the foot lands on its outer border on the left, stands in varus on the right: moulded" {
  basis = "published"
  cites = ["foot_drop_table"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 50
      diagnosis_group = "spinal_cord_lesion"
      distribution    = "both_legs"
    }
    left {
      ankle_dorsiflexion_knee_extended = 2
      plantarflexor_tone               = "2"
      plantarflexor_power              = "4"
      midfoot_break                    = "none"
      gait_initial_contact             = "lateral_border"
      gait_midstance_ankle             = "held_back"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_terminal_stance_knee        = "extends"
      gait_terminal_stance_hip         = "extends"
      gait_swing_ankle                 = "turns_in"
      gait_swing_knee                  = "bends_enough"
    }
    right {
      ankle_dorsiflexion_knee_extended = 5
      plantarflexor_tone               = "2"
      gait_initial_contact             = "flat_foot"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "varus"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices  = { device = "rigid" }
    findings = { turns_in = true, true_equinus = true }
    fires    = ["moulded_device_for_inversion", "spring_or_hinge_for_true_equinus", "hold_where_a_hinge_is_disputed"]
    silent   = ["stiffer_spring_or_stimulation_for_a_spastic_drop"]
  }
  expect "right" {
    choices  = { device = "open: posterior_leaf_spring, articulated, composite, rigid" }
    findings = { turns_in = true, drop_foot = true }
    fires    = ["moulded_device_for_inversion"]
    silent   = ["stiffer_spring_or_stimulation_for_a_spastic_drop", "device_or_stimulation"]
  }
}
