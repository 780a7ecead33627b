# Where there is more to it than the drop: range, tone, calf, position sense, clearance, weight.

case "just short of plantigrade: a swing device can't lift it; at plantigrade it can" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      body_mass       = "70 kg"
      diagnosis_group = "spinal_cord_lesion"
    }
    left {
      dorsiflexor_power                = "2"
      plantarflexor_power              = "5"
      plantarflexor_tone               = "0"
      ankle_dorsiflexion_knee_extended = -1
      ankle_sideways_stability         = "stable"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
    right {
      dorsiflexor_power                = "2"
      plantarflexor_power              = "5"
      plantarflexor_tone               = "0"
      ankle_dorsiflexion_knee_extended = 0
      ankle_sideways_stability         = "stable"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices  = { device = "open: composite, rigid" }
    findings = { isolated_drop_foot = true, calf_slightly_short = false }
    fires    = ["no_swing_device_on_a_stiff_ankle", "hold_a_drop_on_a_stiff_ankle"]
    cautions = ["stiff_ankle"]
    silent   = ["light_device_for_swing", "heel_wedge_for_a_slightly_short_calf"]
  }
  expect "right" {
    choices  = { device = "open: elastic_lifter, posterior_leaf_spring, composite, functional_stimulation" }
    findings = { calf_slightly_short = true }
    fires    = ["light_device_for_swing"]
    silent   = ["no_swing_device_on_a_stiff_ankle", "hold_a_drop_on_a_stiff_ankle", "stiff_ankle", "heel_wedge_for_a_slightly_short_calf"]
  }
}

case "a knee that goes back over a calf of 0 or 5 deg: wedges" {
  basis = "published"
  cites = ["foot_drop_table"]
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "stroke" }
    left {
      ankle_dorsiflexion_knee_extended = 0
      ankle_sideways_stability         = "stable"
      gait_midstance_knee              = "snaps_back"
      gait_swing_ankle                 = "lifts"
    }
    right {
      ankle_dorsiflexion_knee_extended = 5
      ankle_sideways_stability         = "stable"
      gait_midstance_knee              = "hyperextends_slowly"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    choices  = { device = "shoe_adaptation", heel_raise_place = "inside_shoe" }
    findings = { calf_slightly_short = true }
    fires    = ["heel_wedge_for_a_slightly_short_calf"]
  }
  expect "right" {
    findings = { calf_slightly_short = true }
    fires    = ["heel_wedge_for_a_slightly_short_calf"]
  }
}

case "1 and 4 deg are slightly short too; a loose ankle wants more than a wedge" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "stroke" }
    left {
      ankle_dorsiflexion_knee_extended = 1
      ankle_sideways_stability         = "stable"
      gait_midstance_knee              = "snaps_back"
      gait_swing_ankle                 = "lifts"
    }
    right {
      ankle_dorsiflexion_knee_extended = 4
      ankle_sideways_stability         = "loose_both"
      gait_midstance_knee              = "snaps_back"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" { fires = ["heel_wedge_for_a_slightly_short_calf"] }
  expect "right" {
    findings = { calf_slightly_short = true }
    silent   = ["heel_wedge_for_a_slightly_short_calf"]
  }
}

case "6 deg is not short, -1 deg is more than slightly short: no wedge from this rule" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "stroke" }
    left {
      ankle_dorsiflexion_knee_extended = 6
      ankle_sideways_stability         = "stable"
      gait_midstance_knee              = "snaps_back"
      gait_swing_ankle                 = "lifts"
    }
    right {
      ankle_dorsiflexion_knee_extended = -1
      ankle_sideways_stability         = "stable"
      gait_midstance_knee              = "snaps_back"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "left" {
    findings = { calf_slightly_short = false }
    silent   = ["heel_wedge_for_a_slightly_short_calf"]
  }
  expect "right" {
    findings = { calf_slightly_short = false }
    silent   = ["heel_wedge_for_a_slightly_short_calf"]
  }
}

case "dorsiflexors 4 are weak, 4+ are not" {
  basis = "published"
  cites = ["ankle_control_teaching"]
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "other_neuropathy" }
    left {
      dorsiflexor_power  = "4"
      plantarflexor_tone = "1"
      gait_swing_ankle   = "hangs"
    }
    right {
      dorsiflexor_power  = "4+"
      plantarflexor_tone = "1"
      gait_swing_ankle   = "hangs"
    }
  }
  expect "left" {
    choices  = { articulation = "dorsiflexion_assist" }
    findings = { dorsiflexors_weak = true, drop_foot = true, low_tone = true }
    fires    = ["assist_dorsiflexion"]
  }
  expect "right" {
    choices  = { articulation = "left_to_clinician" }
    findings = { dorsiflexors_weak = false, drop_foot = false }
    silent   = ["assist_dorsiflexion"]
  }
}

case "dorsiflexors 4- against tone of 1+: no light spring from here" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      body_mass       = "70 kg"
      diagnosis_group = "brain_injury"
    }
    right {
      dorsiflexor_power                = "4-"
      plantarflexor_power              = "5"
      plantarflexor_tone               = "1+"
      ankle_dorsiflexion_knee_extended = 8
      ankle_sideways_stability         = "stable"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "right" {
    choices  = { device = "left_to_clinician (provisional)", strut_stiffness = "left_to_clinician" }
    findings = { drop_foot = true, low_tone = false, isolated_drop_foot = false }
    cautions = ["tone_in_a_drop_foot"]
    silent   = ["light_device_for_swing", "assist_dorsiflexion", "resist_what_swing_asks"]
  }
}

case "a calf of grade 4 is weak as well: assistance and a stop stand side by side" {
  basis = "published"
  cites = ["ankle_control_teaching"]
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "polio" }
    left {
      dorsiflexor_power       = "2"
      plantarflexor_power     = "4"
      plantarflexor_tone      = "0"
      gait_midstance_ankle    = "moves_forward_steadily"
      gait_midstance_knee     = "near_straight"
      gait_midstance_hindfoot = "neutral"
      gait_swing_ankle        = "hangs"
    }
    right {
      dorsiflexor_power       = "2"
      plantarflexor_power     = "4+"
      plantarflexor_tone      = "0"
      gait_midstance_ankle    = "moves_forward_steadily"
      gait_midstance_knee     = "near_straight"
      gait_midstance_hindfoot = "neutral"
      gait_swing_ankle        = "hangs"
    }
  }
  expect "left" {
    choices  = { device = "open: composite, rigid", articulation = "open: dorsiflexion_assist, dorsiflexion_stop", strut_stiffness = "left_to_clinician" }
    findings = { isolated_drop_foot = false, calf_needs_help = true }
    fires    = ["assist_dorsiflexion", "stop_dorsiflexion_of_a_weak_calf", "more_than_a_lifter_for_a_weak_calf"]
    silent   = ["no_stimulation_of_a_lost_nerve"]
  }
  expect "right" {
    choices  = { articulation = "dorsiflexion_assist" }
    findings = { isolated_drop_foot = true, calf_needs_help = false }
    fires    = ["no_stimulation_of_a_lost_nerve"]
    silent   = ["stop_dorsiflexion_of_a_weak_calf", "more_than_a_lifter_for_a_weak_calf"]
  }
}

case "a calf of grade 4-, and a strong one over which the shank falls forward" {
  basis = "published"
  cites = ["ankle_control_teaching"]
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "polio" }
    left {
      dorsiflexor_power    = "2"
      plantarflexor_power  = "4-"
      gait_midstance_ankle = "moves_forward_steadily"
      gait_swing_ankle     = "hangs"
    }
    right {
      dorsiflexor_power    = "2"
      plantarflexor_power  = "5"
      gait_midstance_ankle = "too_far_forward"
      gait_swing_ankle     = "hangs"
    }
  }
  expect "left" {
    findings = { isolated_drop_foot = false }
    fires    = ["stop_dorsiflexion_of_a_weak_calf"]
  }
  expect "right" { fires = ["stop_dorsiflexion_of_a_weak_calf"] }
}

case "the foot is not felt: held, by teaching; felt less: looked at" {
  basis = "from_memory"
  cites = ["ankle_control_teaching"]
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "diabetic_neuropathy" }
    left {
      dorsiflexor_power    = "2"
      ankle_proprioception = "absent"
      gait_swing_ankle     = "hangs"
    }
    right {
      dorsiflexor_power    = "2"
      ankle_proprioception = "intact"
      knee_proprioception  = "reduced"
      gait_swing_ankle     = "hangs"
    }
  }
  expect "left" {
    choices  = { device = "rigid (provisional)" }
    fires    = ["hold_a_foot_that_is_not_felt"]
    cautions = ["position_sense_impaired"]
  }
  expect "right" {
    cautions = ["position_sense_impaired"]
    silent   = ["hold_a_foot_that_is_not_felt"]
  }
}

case "a drop foot that drags, and a knee that goes back over a slightly short calf: not a wedge alone" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person { diagnosis_group = "multiple_sclerosis" }
    left {
      dorsiflexor_power                = "3"
      plantarflexor_power              = "4"
      plantarflexor_tone               = "1"
      ankle_dorsiflexion_knee_extended = 3
      ankle_sideways_stability         = "stable"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "hyperextends_slowly"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
      gait_swing_clearance             = "toe_drags"
    }
  }
  expect "left" {
    choices  = { device = "open: composite, rigid", heel_raise_place = "left_to_clinician" }
    findings = { calf_slightly_short = true, drop_foot = true }
    fires    = ["more_than_a_lifter_for_a_weak_calf"]
    silent   = ["heel_wedge_for_a_slightly_short_calf"]
    cautions = ["toe_near_the_ground"]
  }
}

case "the toe catches with 19 mm measured at best: 6.4 deg more and it drags" {
  basis = "published"
  cites = ["toe_clearance_range"]
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "motor_neurone_disease" }
    left {
      gait_swing_clearance = "toe_catches"
      toe_clearance        = "19 mm"
    }
    right { gait_swing_clearance = "clear" }
  }
  expect "left" {
    quantities = { drop_that_is_left = "6.37 deg +- 0.01" }
    cautions   = ["toe_near_the_ground"]
  }
  expect "right" { silent = ["toe_near_the_ground"] }
}

case "a hip flexor of 4- swings what hangs on the foot" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      body_mass       = "70 kg"
      diagnosis_group = "polio"
    }
    left {
      dorsiflexor_power   = "1"
      hip_flexor_power    = "4-"
      gait_swing_ankle    = "hangs"
      heel_to_ball_length = 180
      ankle_to_heel_back  = 40
    }
  }
  expect "left" {
    quantities = { ankle_to_foot_centre = "70 mm", pull_of_the_foot = "0.697 N.m +- 0.001", pull_of_100_grams = "0.0686 N.m +- 0.0002" }
    cautions   = ["weight_on_a_weak_hip"]
  }
}

case "hip flexors of 4 and 4+ are not called weak" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "polio" }
    left {
      dorsiflexor_power = "1"
      hip_flexor_power  = "4"
      gait_swing_ankle  = "hangs"
    }
    right {
      dorsiflexor_power = "1"
      hip_flexor_power  = "4+"
      gait_swing_ankle  = "hangs"
    }
  }
  expect "left" { silent = ["weight_on_a_weak_hip"] }
  expect "right" { silent = ["weight_on_a_weak_hip"] }
}
