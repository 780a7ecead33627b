# For whom the ruleset speaks, and for whom it does not.

case "a youth of 17 with a stroke: the guidelines speak of adults" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 17
      diagnosis_group = "stroke"
    }
  }
  expect "person" { applies = "no" }
}

case "an adult with multiple sclerosis: not a stroke" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 50
      diagnosis_group = "multiple_sclerosis"
    }
  }
  expect "person" { applies = "no" }
}

case "eighteen years old, after a stroke" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age             = 18
      diagnosis_group = "stroke"
    }
  }
  expect "person" { applies = "yes" }
}

case "after a stroke, age not recorded" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "stroke"
    }
  }
  expect "person" { applies = "unknown" }
}
