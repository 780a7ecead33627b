# For whom the ruleset speaks, and for whom it does not.

case "cerebral palsy: patterns of gait come first" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "cerebral_palsy"
      walking_aid     = "none"
    }
  }
  expect "person" { applies = "no" }
}

case "a nerve injury, in a wheelchair: nothing to lift in walking" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "nerve_injury"
      walking_aid     = "wheelchair"
    }
  }
  expect "person" { applies = "no" }
}

case "a nerve injury, walks without an aid" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "nerve_injury"
      walking_aid     = "none"
    }
  }
  expect "person" { applies = "yes" }
}

case "walking aid not recorded after a stroke" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "stroke"
    }
  }
  expect "person" { applies = "unknown" }
}
