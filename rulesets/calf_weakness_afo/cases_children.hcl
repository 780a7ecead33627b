# Duchenne dystrophy and spina bifida; and the counts of heel rises on which schemes disagree.

case "Duchenne dystrophy, walks alone: published views are level" {
  basis = "published"
  cites = ["townsend_2015", "stevens_2006", "duchenne_articulated"]
  given {
    device_for = ["left", "right"]
    person {
      age                   = 8
      body_mass             = "27 kg"
      diagnosis_group       = "muscle_disease"
      duchenne_dystrophy    = true
      functional_ambulation = "4"
    }
    left {
      heel_rises               = 1
      plantarflexor_power      = "4"
      plantarflexor_tone       = "0"
      quadriceps_power         = "3+"
      ankle_sideways_stability = "loose_inversion"
    }
    right {
      heel_rises          = 1
      plantarflexor_power = "4"
      plantarflexor_tone  = "0"
      quadriceps_power    = "3+"
    }
  }
  expect "left" {
    choices  = { device = "open: no_device, articulated", articulation = "left_to_clinician" }
    findings = { spring_suits = false }
    silent   = ["stop_dorsiflexion", "spring_for_weak_calf", "hold_a_loose_ankle", "try_several_stiffnesses", "stiffness_by_body_mass"]
  }
  expect "right" { choices = { device = "open: no_device, articulated" } }
  expect "person" {
    findings = { duchenne_walker = true, advised_apart = true }
    fires    = ["no_day_device_in_duchenne", "articulated_day_device_in_duchenne"]
    cautions = ["duchenne_views_differ"]
  }
}

case "Duchenne dystrophy, walks alone anywhere" {
  basis = "published"
  cites = ["townsend_2015", "duchenne_articulated"]
  given {
    device_for = ["right"]
    person {
      age                   = 6
      diagnosis_group       = "muscle_disease"
      duchenne_dystrophy    = true
      functional_ambulation = "5"
    }
    right { plantarflexor_power = "4+" }
  }
  expect "right" { choices = { device = "open: no_device, articulated" } }
  expect "person" { cautions = ["duchenne_views_differ"] }
}

case "Duchenne dystrophy, walks only with somebody beside: not what was studied" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age                   = 12
      diagnosis_group       = "muscle_disease"
      duchenne_dystrophy    = true
      functional_ambulation = "3"
    }
    right {
      heel_rises          = 0
      plantarflexor_power = "3"
      quadriceps_power    = "3"
    }
  }
  expect "right" {
    choices = { device = "left_to_clinician" }
    silent  = ["spring_for_weak_calf"]
  }
  expect "person" {
    findings = { duchenne_walker = false }
    silent   = ["no_day_device_in_duchenne", "articulated_day_device_in_duchenne", "duchenne_views_differ"]
  }
}

case "another muscle disease: advised as other weak calves are" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age                   = 47
      diagnosis_group       = "muscle_disease"
      duchenne_dystrophy    = false
      functional_ambulation = "5"
    }
    left {
      ankle_sideways_stability = "stable"
      heel_rises               = 2
      plantarflexor_power      = "4"
      plantarflexor_tone       = "0"
      quadriceps_power         = "4"
    }
  }
  expect "left" {
    choices = { device = "composite" }
  }
  expect "person" {
    findings = { advised_apart = false }
    silent   = ["no_day_device_in_duchenne", "articulated_day_device_in_duchenne", "duchenne_views_differ"]
  }
}

case "spina bifida, low lumbar left and sacral right" {
  basis = "published"
  cites = ["spina_bifida_review"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 9
      diagnosis_group = "spina_bifida"
    }
    left {
      spinal_motor_level  = "low_lumbar"
      heel_rises          = 0
      plantarflexor_power = "1"
      quadriceps_power    = "4"
    }
    right {
      spinal_motor_level  = "sacral"
      heel_rises          = 4
      plantarflexor_power = "4+"
      quadriceps_power    = "5"
    }
  }
  expect "left" {
    choices = { device = "rigid", articulation = "none" }
    fires   = ["rigid_for_low_lumbar_level", "stop_dorsiflexion"]
    silent  = ["little_for_sacral_level", "level_above_the_ankle", "spring_for_weak_calf"]
  }
  expect "right" {
    choices = { device = "open: no_device, insole" }
    fires   = ["little_for_sacral_level"]
    silent  = ["rigid_for_low_lumbar_level", "level_above_the_ankle"]
  }
  expect "person" {
    findings = { advised_apart = true }
  }
}

case "spina bifida, thoracic left and high lumbar right: more than an ankle-foot orthosis" {
  basis = "published"
  cites = ["spina_bifida_review"]
  given {
    device_for = ["left", "right"]
    person {
      age             = 5
      diagnosis_group = "spina_bifida"
      walking_aid     = "parallel_bars"
    }
    left { spinal_motor_level = "thoracic" }
    right { spinal_motor_level = "high_lumbar" }
  }
  expect "left" {
    cautions = ["level_above_the_ankle"]
    silent   = ["rigid_for_low_lumbar_level", "little_for_sacral_level"]
  }
  expect "right" { cautions = ["level_above_the_ankle"] }
}

# Heel rises and the schemes that grade them

case "five heel rises: full by the short scheme alone" {
  basis = "published"
  cites = ["heel_rise_short_scheme", "jan_2005"]
  given {
    device_for = ["left"]
    person { diagnosis_group = "nerve_injury" }
    left { heel_rises = 5 }
  }
  expect "left" {
    findings = { full_calf_by_4_rises = true, full_calf_by_20_rises = false, full_calf_by_25_rises = false }
    cautions = ["heel_rise_schemes_disagree"]
  }
}

case "nineteen heel rises left, twenty right" {
  basis = "published"
  cites = ["jan_2005"]
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "nerve_injury" }
    left { heel_rises = 19 }
    right { heel_rises = 20 }
  }
  expect "left" {
    findings = { full_calf_by_20_rises = false }
    cautions = ["heel_rise_schemes_disagree"]
  }
  expect "right" {
    findings = { full_calf_by_20_rises = true, full_calf_by_25_rises = false }
    cautions = ["heel_rise_schemes_disagree"]
  }
}

case "twenty-two heel rises: full by twenty, not by twenty-five" {
  basis = "published"
  cites = ["jan_2005", "hislop_montgomery"]
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "nerve_injury" }
    left { heel_rises = 22 }
    right { heel_rises = 21 }
  }
  expect "left" {
    findings = { full_calf_by_20_rises = true, full_calf_by_25_rises = false }
    cautions = ["heel_rise_schemes_disagree"]
  }
  expect "right" { findings = { full_calf_by_20_rises = true } }
}

case "twenty-four heel rises left, twenty-five right" {
  basis = "from_memory"
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "nerve_injury" }
    left { heel_rises = 24 }
    right { heel_rises = 25 }
  }
  expect "left" { cautions = ["heel_rise_schemes_disagree"] }
  expect "right" {
    findings = { full_calf_by_25_rises = true }
    silent   = ["heel_rise_schemes_disagree"]
  }
}

case "twenty-seven heel rises left and twenty-six right: full by every scheme" {
  basis = "from_memory"
  cites = ["lunsford_1995", "hislop_montgomery"]
  given {
    device_for = ["left", "right"]
    person { diagnosis_group = "nerve_injury" }
    left { heel_rises = 27 }
    right { heel_rises = 26 }
  }
  expect "left" {
    findings = { full_calf_by_4_rises = true, full_calf_by_20_rises = true, full_calf_by_25_rises = true }
    silent   = ["heel_rise_schemes_disagree"]
  }
  expect "right" { findings = { full_calf_by_25_rises = true } }
}

case "one heel rise: a weak calf by every scheme" {
  basis = "from_memory"
  cites = ["hislop_montgomery", "heel_rise_short_scheme"]
  given {
    device_for = ["right"]
    person { diagnosis_group = "nerve_injury" }
    right { heel_rises = 1 }
  }
  expect "right" {
    findings = { calf_weak = true, no_heel_rise = false, full_calf_by_4_rises = false }
    silent   = ["heel_rise_schemes_disagree"]
  }
}
