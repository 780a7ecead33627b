ruleset "base" {
  title      = "Skin and sensation, for tests"
  version    = "1.0.0"
  status     = "active"
  vocabulary = "small@1"
  applies    = "person.age >= years(10)"
}

finding "fragile" {
  holds = "limb.skin in ['fragile', 'broken']"
}

caution "skin" {
  level = "precaution"
  when  = "finding.fragile"
  says  = "The skin is ${limb.skin}."
  act   = "Look at it daily."
  basis = "common_practice"
}

caution "driving" {
  level = "note"
  when  = "person.driver"
  says  = "Ask about driving."
  basis = "common_practice"
}
