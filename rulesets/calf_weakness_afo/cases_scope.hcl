# For whom the ruleset speaks, and for whom it does not.

case "cerebral palsy: a spastic calf is another matter" {
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

case "muscle disease, in a wheelchair: not for walking in" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "muscle_disease"
      walking_aid     = "wheelchair"
    }
  }
  expect "person" { applies = "no" }
}

case "after an injury to a nerve, walks without an aid" {
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

case "after polio, walking aid not recorded" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "polio"
    }
  }
  expect "person" { applies = "unknown" }
}
