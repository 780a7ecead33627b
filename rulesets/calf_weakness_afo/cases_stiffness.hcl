# Where the range of stiffness leaves what was tried: 0.068 N·m/(kg·deg) times the body mass reaches 6.6 at
# 97.0588 kg, and less 1.2 reaches 2.8 at 58.8235 kg.

case "59 kg: the softer figure is within what was tried" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 33
      body_mass       = "59 kg"
      diagnosis_group = "nerve_injury"
    }
    right {
      heel_rises          = 0
      plantarflexor_power = "2"
      plantarflexor_tone  = "0"
      quadriceps_power    = "5"
    }
  }
  expect "right" {
    silent = ["stiffness_outside_the_trial"]
  }
  expect "person" {
    quantities = { softer_stiffness = "2.812 N.m/deg" }
  }
}

case "58.8235 kg: the softer figure is the softest that was tried" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 33
      body_mass       = "58.823529412 kg"
      diagnosis_group = "nerve_injury"
    }
    right {
      heel_rises          = 0
      plantarflexor_power = "2"
      plantarflexor_tone  = "0"
      quadriceps_power    = "5"
    }
  }
  expect "right" {
    silent = ["stiffness_outside_the_trial"]
  }
  expect "person" {
    quantities = { softer_stiffness = "2.8 N.m/deg" }
  }
}

case "97 kg: the stiffer figure is within what was tried" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 33
      body_mass       = "97 kg"
      diagnosis_group = "nerve_injury"
    }
    right {
      heel_rises          = 0
      plantarflexor_power = "2"
      plantarflexor_tone  = "0"
      quadriceps_power    = "5"
    }
  }
  expect "right" {
    silent = ["stiffness_outside_the_trial"]
  }
  expect "person" {
    quantities = { stiffness_by_mass = "6.596 N.m/deg" }
  }
}

case "97.0588 kg: the stiffer figure is the stiffest that was tried" {
  basis = "common_practice"
  given {
    device_for = ["right"]
    person {
      age             = 33
      body_mass       = "97.058823529 kg"
      diagnosis_group = "nerve_injury"
    }
    right {
      heel_rises          = 0
      plantarflexor_power = "2"
      plantarflexor_tone  = "0"
      quadriceps_power    = "5"
    }
  }
  expect "right" {
    silent = ["stiffness_outside_the_trial"]
  }
  expect "person" {
    quantities = { stiffness_by_mass = "6.6 N.m/deg" }
  }
}

case "98 kg: the stiffer figure is beyond what was tried, but not with one heel rise left" {
  basis = "common_practice"
  given {
    device_for = ["left", "right"]
    person {
      age             = 33
      body_mass       = "98 kg"
      diagnosis_group = "nerve_injury"
    }
    left {
      heel_rises          = 1
      plantarflexor_power = "2"
      plantarflexor_tone  = "0"
      quadriceps_power    = "5"
    }
    right {
      heel_rises          = 0
      plantarflexor_power = "2"
      plantarflexor_tone  = "0"
      quadriceps_power    = "5"
    }
  }
  expect "left" { silent = ["stiffness_outside_the_trial"] }
  expect "right" {
    cautions = ["stiffness_outside_the_trial"]
  }
  expect "person" {
    quantities = { stiffness_by_mass = "6.664 N.m/deg" }
  }
}
