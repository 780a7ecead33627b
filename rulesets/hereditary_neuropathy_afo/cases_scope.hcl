# For whom the ruleset speaks, and for whom it does not.

case "diabetic neuropathy: not inherited" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "diabetic_neuropathy"
    }
  }
  expect "person" { applies = "no" }
}

case "an inherited neuropathy" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      diagnosis_group = "hereditary_neuropathy"
    }
  }
  expect "person" { applies = "yes" }
}

case "no diagnosis recorded: it is not known whether this is meant" {
  basis = "common_practice"
  given {
    device_for = ["left"]
    person {
      age = 30
    }
  }
  expect "person" { applies = "unknown" }
}
