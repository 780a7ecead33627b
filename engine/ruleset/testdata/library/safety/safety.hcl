ruleset "safety" {
  title      = "Safety, for tests"
  version    = "1.0.3"
  status     = "draft"
  vocabulary = "tiny@1"
}

finding "fragile" {
  holds = "limb.malleolar_skin in ['fragile', 'broken']"
}

rule "spare_the_malleoli" {
  when     = "finding.fragile"
  because  = "The skin over the malleoli is ${limb.malleolar_skin}."
  strength = "strong"
  basis    = "common_practice"
  advise "shell_trimline" { only = ["behind_malleoli", "in_front_of_malleoli"] }
}

caution "skin" {
  level = "precaution"
  when  = "finding.fragile"
  says  = "The skin is fragile."
  basis = "common_practice"
}
