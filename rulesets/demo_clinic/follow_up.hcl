# Follow-up is decided once for the person.

rule "review_adult" {
  when     = "person.age >= years(18)"
  because  = "The first review is six weeks after delivery, when wear time is built up. A demonstration value."
  strength = "conditional"
  basis    = "common_practice"

  advise "review_interval" { aim = "weeks(6)" }
}

rule "review_child" {
  when     = "person.age < years(18)"
  because  = "A growing leg leaves its device behind: the fit is looked at within three months at most, and first after eight weeks. Common practice, no source; eight weeks is a demonstration value."
  strength = "conditional"
  basis    = "common_practice"

  advise "review_interval" {
    at_most = "weeks(13)"
    aim     = "weeks(8)"
  }
}

rule "review_soon_after_injection" {
  when     = "finding.spastic_calf && since(person.last_injection) < months(3)"
  because  = "The injection was on ${person.last_injection}, and the calf is still changing: what fits now may not in a month. Within four weeks is a demonstration value."
  strength = "strong"
  basis    = "common_practice"
  cites    = ["kerkum_2013"]

  advise "review_interval" { at_most = "weeks(4)" }
}
