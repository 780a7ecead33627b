ruleset "small_safety" {
  title      = "Safety"
  version    = "1.0.0"
  status     = "draft"
  vocabulary = "small_vocabulary@1"
}

finding "weak" {
  holds   = "limb.calf_power < power('2')"
  because = "Weak."
}

caution "skin" {
  level = "precaution"
  when  = "finding.weak && limb.skin == 'broken'"
  says  = "Skin: ${limb.remarks}"
  act   = "Wait."
  basis = "common_practice"
}
