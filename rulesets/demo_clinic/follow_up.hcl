# Follow-up is decided once for the person.

rule "follow_up_adult" {
  when     = "person.age >= years(18)"
  because  = "Wear time is built up by a quarter of an hour a day, and the first review is six weeks after delivery. Six weeks is a demonstration value."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["wear_build_up"]

  advise "review_interval" { aim = "weeks(6)" }
  advise "wearing_in" { favour = "usual" }
}

rule "follow_up_child" {
  when     = "person.age < years(18)"
  because  = "A growing leg leaves its device behind: the fit is looked at within three months at most, and first after eight weeks. Wear time is built up by half an hour a day. Eight weeks is a demonstration value."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["wear_build_up"]

  advise "review_interval" {
    at_most = "weeks(13)"
    aim     = "weeks(8)"
  }
  advise "wearing_in" { favour = "usual" }
}

rule "review_soon_after_injection" {
  when     = "finding.spastic_calf && since(person.last_injection) < weeks(13)"
  because  = "The injection was on ${person.last_injection}, and the calf is still changing: what fits now may not in a month. Within four weeks is a demonstration value."
  strength = "strong"
  basis    = "common_practice"
  cites    = ["kerkum_2013"]

  advise "review_interval" { at_most = "weeks(4)" }
}

clinician_decides "skin_check" {
  because  = "Where sensation is intact no source says how often the skin is to be looked at."
  consider = ["Redness that stays for more than 20 minutes after the device comes off is reported", "Skin risk: ${person.skin_risk}", "Hands and eyes: ${person.hand_function}, help ${person.help_available}"]
}
