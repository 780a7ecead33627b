# A drop foot and nothing else. Invented people; what is expected was worked out by hand from the sources.

case "peroneal palsy, steady on a stable ankle: a leaf spring, for a time" {
  basis = "published"
  cites = ["foot_drop_table", "peroneal_palsy_teaching", "kobayashi_2017"]
  given {
    date       = "2026-10-02"
    device_for = ["left"]
    person {
      body_mass       = "100 kg"
      diagnosis_group = "nerve_injury"
      onset           = "2026-07-01"
      walking_aid     = "none"
    }
    left {
      dorsiflexor_power                = "2"
      plantarflexor_power              = "5"
      plantarflexor_tone               = "0"
      hip_flexor_power                 = "5"
      ankle_dorsiflexion_knee_extended = 8
      ankle_sideways_stability         = "stable"
      ankle_proprioception             = "intact"
      knee_proprioception              = "intact"
      gait_loading_foot                = "foot_slap"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
      gait_swing_clearance             = "with_compensation"
    }
  }
  expect "left" {
    choices = {
      device                  = "posterior_leaf_spring"
      articulation            = "dorsiflexion_assist"
      pressure_system         = "against_foot_drop"
      pressure_system_frontal = "left_to_clinician"
      strut_stiffness         = "open: 0.58..1.24 N.m/deg"
    }
    findings = { isolated_drop_foot = true, slap_only = false, calf_slightly_short = false }
    fires    = ["light_device_for_swing", "leaf_spring_after_peroneal_palsy", "assist_dorsiflexion", "resist_what_swing_asks", "no_stimulation_of_a_lost_nerve"]
    silent   = ["more_than_a_lifter_for_a_weak_calf", "ease_a_slapping_foot", "heel_wedge_for_a_slightly_short_calf", "leaf_spring_after_stroke", "sides_for_a_loose_ankle", "no_swing_device_on_a_stiff_ankle", "hold_a_foot_that_is_not_felt", "stop_dorsiflexion_of_a_weak_calf", "hold_against_inversion", "hold_against_eversion", "stiff_ankle", "tone_in_a_drop_foot", "position_sense_impaired", "toe_near_the_ground", "weight_on_a_weak_hip", "no_gain_in_multiple_sclerosis"]
  }
  expect "person" {
    choices  = { review_interval = "open: 1..13 wk" }
    findings = { palsy_under_a_year = true }
    fires    = ["review_a_recent_palsy"]
    cautions = ["nerve_may_recover"]
  }
}

case "multiple sclerosis with low tone: four light devices are level, and no gain is promised" {
  basis = "published"
  cites = ["foot_drop_table", "sheffler_2008"]
  given {
    device_for = ["right"]
    person {
      body_mass       = "70 kg"
      diagnosis_group = "multiple_sclerosis"
    }
    right {
      dorsiflexor_power                = "3"
      evertor_power                    = "4"
      plantarflexor_power              = "4+"
      plantarflexor_tone               = "1"
      ankle_dorsiflexion_knee_extended = 6
      ankle_sideways_stability         = "stable"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "turns_in"
    }
  }
  expect "right" {
    choices = {
      device          = "open: elastic_lifter, posterior_leaf_spring, composite, functional_stimulation"
      strut_stiffness = "open: 0.406..0.868 N.m/deg"
    }
    findings = { isolated_drop_foot = true }
    cautions = ["no_gain_in_multiple_sclerosis"]
    silent   = ["leaf_spring_after_peroneal_palsy", "leaf_spring_after_stroke", "no_stimulation_of_a_lost_nerve"]
  }
  expect "person" {
    findings = { palsy_under_a_year = false }
    silent   = ["review_a_recent_palsy", "nerve_may_recover"]
  }
}

case "multiple sclerosis: evertors 4- count as weak, 4+ do not" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "multiple_sclerosis" }
    left {
      dorsiflexor_power = "3"
      evertor_power     = "4-"
    }
    right {
      dorsiflexor_power = "3"
      evertor_power     = "4+"
    }
  }
  expect "left" { cautions = ["no_gain_in_multiple_sclerosis"] }
  expect "right" { silent = ["no_gain_in_multiple_sclerosis"] }
}

case "stroke, low tone: a leaf spring on a stable ankle, sides on a loose one" {
  basis = "from_memory"
  cites = ["stroke_statement_2009", "foot_drop_table"]
  given {
    device_for = ["left", "right"]
    person {
      body_mass       = "70 kg"
      diagnosis_group = "stroke"
    }
    left {
      dorsiflexor_power                = "3"
      plantarflexor_power              = "5"
      plantarflexor_tone               = "1"
      ankle_dorsiflexion_knee_extended = 6
      ankle_sideways_stability         = "stable"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
    right {
      dorsiflexor_power                = "3"
      plantarflexor_power              = "5"
      plantarflexor_tone               = "1"
      ankle_dorsiflexion_knee_extended = 6
      ankle_sideways_stability         = "loose_inversion"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "neutral"
      gait_swing_ankle                 = "hangs"
    }
  }
  expect "left" {
    choices = { device = "posterior_leaf_spring" }
    fires   = ["light_device_for_swing", "leaf_spring_after_stroke"]
  }
  expect "right" {
    choices  = { device = "open: composite, rigid", pressure_system_frontal = "against_varus" }
    findings = { isolated_drop_foot = true }
    fires    = ["sides_for_a_loose_ankle", "hold_against_inversion"]
    silent   = ["light_device_for_swing", "leaf_spring_after_stroke", "hold_against_eversion"]
  }
}

case "loose to the inner side: held the other way; loose with a foot that lifts: nothing" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "trauma_or_surgery" }
    left {
      dorsiflexor_power        = "1"
      ankle_sideways_stability = "loose_eversion"
      gait_swing_ankle         = "turns_out"
    }
    right {
      dorsiflexor_power        = "1"
      ankle_sideways_stability = "loose_eversion"
      gait_swing_ankle         = "lifts"
    }
  }
  expect "left" {
    choices = { pressure_system_frontal = "against_valgus" }
    fires   = ["sides_for_a_loose_ankle", "hold_against_eversion"]
    silent  = ["hold_against_inversion"]
  }
  expect "right" {
    findings = { dorsiflexors_weak = true, drop_foot = false }
    silent   = ["sides_for_a_loose_ankle", "hold_against_eversion", "hold_against_inversion"]
  }
}

case "the foot slaps but lifts: a heel that touches further forward, or a simple device" {
  basis = "published"
  cites = ["foot_drop_table"]
  given {
    device_for = ["right"]
    person { diagnosis_group = "other_neuropathy" }
    right {
      dorsiflexor_power                = "4+"
      plantarflexor_power              = "5"
      plantarflexor_tone               = "0"
      ankle_dorsiflexion_knee_extended = 8
      ankle_sideways_stability         = "stable"
      ankle_proprioception             = "absent"
      gait_loading_foot                = "foot_slap"
      gait_midstance_ankle             = "moves_forward_steadily"
      gait_midstance_knee              = "near_straight"
      gait_midstance_hindfoot          = "valgus"
      gait_swing_ankle                 = "lifts"
    }
  }
  expect "right" {
    choices  = { device = "open: shoe_adaptation, posterior_leaf_spring", sole_profile = "bevelled_heel", strut_stiffness = "left_to_clinician", articulation = "left_to_clinician" }
    findings = { slap_only = true, drop_foot = false, dorsiflexors_weak = false, stance_steady = true }
    fires    = ["ease_a_slapping_foot"]
    silent   = ["light_device_for_swing", "assist_dorsiflexion", "hold_a_foot_that_is_not_felt", "position_sense_impaired", "resist_what_swing_asks"]
  }
}

case "the foot comes down in control: nothing for a slap" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person { diagnosis_group = "other_neuropathy" }
    right {
      gait_loading_foot = "controlled"
      gait_swing_ankle  = "lifts"
    }
  }
  expect "right" {
    findings = { slap_only = false }
    silent   = ["ease_a_slapping_foot"]
  }
}

case "stance is not steady: shank, knee or heel out of order" {
  basis = "published"
  cites = ["foot_drop_table"]
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "nerve_injury" }
    left {
      dorsiflexor_power       = "2"
      plantarflexor_power     = "5"
      plantarflexor_tone      = "0"
      gait_loading_foot       = "foot_slap"
      gait_midstance_ankle    = "moves_forward_steadily"
      gait_midstance_knee     = "near_straight"
      gait_midstance_hindfoot = "varus"
      gait_swing_ankle        = "hangs"
    }
    right {
      dorsiflexor_power    = "2"
      plantarflexor_power  = "5"
      plantarflexor_tone   = "0"
      gait_loading_foot    = "foot_slap"
      gait_midstance_ankle = "too_far_forward"
      gait_midstance_knee  = "too_flexed"
      gait_swing_ankle     = "lifts"
    }
  }
  expect "left" {
    findings = { drop_foot = true, stance_steady = false, isolated_drop_foot = false }
    silent   = ["light_device_for_swing", "leaf_spring_after_peroneal_palsy", "resist_what_swing_asks"]
  }
  expect "right" {
    findings = { stance_steady = false, slap_only = false }
    silent   = ["ease_a_slapping_foot", "stop_dorsiflexion_of_a_weak_calf"]
  }
}

case "outside or inside the year: 364 days after the palsy it is no longer recent" {
  basis = "published"
  cites = ["foot_drop_wiki"]
  given {
    date       = "2026-10-02"
    device_for = ["left"]
    person {
      diagnosis_group = "nerve_injury"
      onset           = "2025-10-03"
    }
  }
  expect "person" {
    findings = { palsy_under_a_year = false }
    silent   = ["review_a_recent_palsy", "nerve_may_recover"]
  }
}

case "363 days after the palsy it is recent" {
  basis = "published"
  cites = ["foot_drop_wiki"]
  given {
    date       = "2026-10-02"
    device_for = ["left"]
    person {
      diagnosis_group = "nerve_injury"
      onset           = "2025-10-04"
    }
  }
  expect "person" {
    fires    = ["review_a_recent_palsy"]
    cautions = ["nerve_may_recover"]
  }
}

case "365 days after the palsy it is not recent" {
  basis = "published"
  cites = ["foot_drop_wiki"]
  given {
    date       = "2026-10-02"
    device_for = ["right"]
    person {
      diagnosis_group = "nerve_injury"
      onset           = "2025-10-02"
    }
  }
  expect "person" { silent = ["review_a_recent_palsy", "nerve_may_recover"] }
}
