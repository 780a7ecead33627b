# A ruleset that brings out every part of an outcome, for the golden file.
ruleset "full" {
  title      = "Every part of an outcome, for tests"
  version    = "1.2.0"
  status     = "draft"
  review_by  = "2026-09-30"
  vocabulary = "small@1"
  applies    = "person.age >= years(16)"
  builds_on  = ["base@1"]
}

citation "made_up_2001" {
  text     = "A made-up source for this test. Journal 2001;1:1-9."
  standing = "from_memory"
}

except "base.driving" {
  because = "The clinic gives this advice on its own sheet."
}

finding "marked_tone" {
  holds   = "limb.tone >= tone_scale('2')"
  because = "A grade of ${limb.tone} resists through most of the range."
  cites   = ["made_up_2001"]
}

finding "heel_up" {
  holds = "limb.p && limb.flex < deg(0)"
}

quantity "rise" {
  unit  = "mm"
  value = "limb.lift - limb.gap"
}

quantity "slope" {
  unit  = "1"
  value = "limb.lift / other.lift"
}

rule "block_for_range" {
  when     = "limb.flex < deg(0)"
  because  = "With ${limb.flex} the heel stands off by ${quantity.rise}."
  strength = "strong"
  basis    = "published"
  cites    = ["made_up_2001"]

  advise "height" {
    aim     = "quantity.rise * 2"
    at_most = "mm(15)"
  }
}

rule "high_for_tone" {
  when      = "finding.marked_tone"
  unless    = "finding.base.fragile"
  because   = "Tone of ${limb.tone}."
  strength  = "strong"
  basis     = "common_practice"
  overrides = ["low_for_comfort"]

  advise "trim" {
    at_least = "middle"
    favour   = "high"
  }
}

rule "low_for_comfort" {
  when     = "true"
  because  = "A low edge is easier to put on."
  strength = "conditional"
  basis    = "common_practice"

  advise "trim" { favour = "low" }
}

rule "shell_for_sign" {
  when     = "limb.q || limb.r && limb.s"
  because  = "The sign asks for it."
  strength = "conditional"
  basis    = "from_memory"

  advise "closure" { favour = "shell" }
  advise "shoe" { at_least = "deep" }
}

rule "no_strap" {
  when     = "limb.flex < deg(0)"
  because  = "Straps slip."
  strength = "conditional"
  basis    = "common_practice"

  advise "closure" { never = "strap" }
}

rule "own_shoe" {
  when     = "person.work == 'desk'"
  because  = "Work at a ${person.work}."
  strength = "conditional"
  basis    = "common_practice"

  advise "shoe" { only = "own" }
  advise "review" { aim = "weeks(6)" }
}

rule "soft" {
  when     = "limb.posture > 5"
  because  = "A posture of ${limb.posture}."
  strength = "conditional"
  basis    = "common_practice"

  advise "pad" { never = "none" }
}

rule "hard" {
  when     = "limb.posture > 6"
  because  = "A posture of ${limb.posture}."
  strength = "conditional"
  basis    = "common_practice"

  advise "pad" { never = "soft" }
}

caution "heel" {
  level = "contraindication"
  when  = "finding.heel_up"
  says  = "The heel stays up."
  act   = "Do not cast before it comes down."
  basis = "published"
  cites = ["made_up_2001"]
}

clinician_decides "angle" {
  because  = "No comparison is known."
  consider = ["walking", "standing"]
}
