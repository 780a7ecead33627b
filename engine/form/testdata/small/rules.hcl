ruleset "small" {
  title      = "A small ruleset"
  version    = "0.1.0"
  status     = "draft"
  vocabulary = "small_vocabulary@1"
  applies    = "person.age >= years(16)"
  builds_on  = ["small_safety@1"]
}

rule "strap" {
  when     = "limb.heel_down || other.dorsiflexion < deg(0) || person.falls > 2"
  unless   = "recorded(person.injected) && since(person.injected) < weeks(6)"
  because  = "Walks ${person.walking_class}."
  strength = "strong"
  basis    = "common_practice"

  advise "closure" { favour = "strap" }
}
