# Wearing in, skin check and review. They are decided once for the person; what one leg asks for counts.

# Skin check

rule "daily_check_of_insensate_skin" {
  when     = "finding.insensate"
  because  = "Protective sensation is ${limb.protective_sensation}: eyes take the place of feeling, and the skin is looked at every day."
  strength = "conditional"
  basis    = "published"
  cites    = ["wear_leaflet"]

  advise "skin_check" {
    at_least = "daily"
    favour   = "daily"
  }
}

rule "daily_check_after_a_missed_site" {
  when     = "finding.site_not_felt"
  because  = "A site of the monofilament test was not felt. Until that is cleared up the skin is looked at every day."
  strength = "conditional"
  basis    = "published"
  cites    = ["sensation_by_missed_sites", "wear_leaflet"]

  advise "skin_check" { at_least = "daily" }
}

rule "daily_check_after_an_ulcer" {
  when     = "limb.previous_foot_ulcer || person.skin_risk == 'high'"
  because  = "Skin has broken here before, or is at high risk: it is looked at every day. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "skin_check" {
    at_least = "daily"
    favour   = "daily"
  }
}

# Two rules, so that a rule looks at few places.

rule "check_marked_foot_at_every_removal" {
  when     = "(finding.insensate || limb.previous_foot_ulcer || person.skin_risk == 'high') && (finding.skin_red_at_hindfoot || finding.skin_red_at_midfoot)"
  because  = "A foot that can't feel, has had an ulcer or is at high risk, and is already marked by pressure at the hindfoot or midfoot: the skin is looked at each time the device comes off. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "skin_check" { only = "every_removal" }
}

rule "check_marked_ball_or_shank_at_every_removal" {
  when     = "(finding.insensate || limb.previous_foot_ulcer || person.skin_risk == 'high') && (finding.skin_red_at_forefoot || finding.skin_red_at_shank)"
  because  = "A foot that can't feel, has had an ulcer or is at high risk, and skin already marked by pressure at the ball of the foot or the shank: it is looked at each time the device comes off. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "skin_check" { only = "every_removal" }
}

# Leaflets disagree on how long redness may last: both sides stand here, level.

rule "redness_limit_of_twenty_minutes" {
  when     = "finding.skin_red"
  because  = "Skin is still red after 20 minutes. One hospital's limit is 20 minutes, so this is already something to report, and the skin is looked at each time the device comes off."
  strength = "conditional"
  basis    = "published"
  cites    = ["redness_leaflet"]

  advise "skin_check" { favour = "every_removal" }
}

rule "redness_limit_of_thirty_minutes" {
  when     = "finding.skin_red"
  because  = "Skin is still red after 20 minutes. Another hospital's limit is 30 minutes, which may not be passed, and the daily look that it asks for where feeling is reduced would do here."
  strength = "conditional"
  basis    = "published"
  cites    = ["wear_leaflet", "redness_limits"]

  advise "skin_check" { favour = "daily" }
}

# Wearing in

rule "wear_in_as_an_adult" {
  when     = "!finding.growing"
  because  = "At ${person.age} wear starts with 30 minutes and grows by 15 minutes a day, always in the shoe."
  strength = "conditional"
  basis    = "published"
  cites    = ["wear_build_up_adult", "wear_leaflet"]

  advise "wearing_in" { favour = "usual" }
}

rule "wear_in_as_a_child" {
  when     = "finding.growing"
  because  = "At ${person.age} wear starts with 30 minutes and grows by 30 minutes a day to the full day, always in the shoe."
  strength = "conditional"
  basis    = "published"
  cites    = ["wear_build_up_child", "wear_leaflet"]

  advise "wearing_in" { favour = "usual" }
}

rule "wear_in_insensate_skin_slowly" {
  when     = "finding.insensate"
  because  = "Protective sensation is ${limb.protective_sensation}, so wear time grows more slowly than usual. How much more slowly is the clinic's to say; common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "wearing_in" {
    at_least = "slow"
    favour   = "slow"
  }
}

rule "watch_a_limb_that_moves" {
  when     = "finding.movement_marked"
  because  = "Movement that is not meant is marked: in a rigid device it brings discomfort and pressure injury, and wear is watched closely. How closely is common practice."
  strength = "conditional"
  basis    = "published"
  cites    = ["nice_cp_table"]

  advise "wearing_in" {
    at_least = "slow"
    favour   = "slow"
  }
  advise "skin_check" { at_least = "daily" }
}

rule "supervise_who_cannot_report" {
  when     = "finding.cannot_report && person.help_available != 'each_time'"
  because  = "The person can't keep what is agreed and nobody is there each time: wearing in is done under someone's eyes. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "wearing_in" { only = "supervised" }
}

# Review

rule "recheck_a_growing_leg" {
  when     = "finding.growing"
  because  = "At ${person.age} a leg outgrows its device: the fit is looked at every three to six months. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "review_interval" {
    at_most = "weeks(26)"
    aim     = "weeks(13)"
  }
}

rule "review_after_an_injection" {
  when     = "finding.injected_lately"
  because  = "Injected on ${person.last_injection}: tone is still changing, and is looked at again by three months, the time that a trial waits. Using that time as the limit is common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["kerkum_2013"]

  advise "review_interval" { at_most = "weeks(13)" }
}

rule "review_after_surgery" {
  when     = "finding.operated_lately"
  because  = "Operated on ${person.last_surgery}: the leg is still changing, and is looked at again by six months, the time that a trial waits. Using that time as the limit is common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["kerkum_2013"]

  advise "review_interval" { at_most = "weeks(26)" }
}

rule "review_after_casting" {
  when     = "finding.cast_lately"
  because  = "The last cast came off on ${person.last_serial_cast}: what it gained was seen to last 6 weeks, or 12 after an injection, so range is measured again by 12 weeks. Using that time as the limit is common practice."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["lee_2011"]

  advise "review_interval" { at_most = "weeks(12)" }
}

rule "review_foot_risk_two" {
  when     = "limb.foot_risk == iwgdf_risk('2')"
  because  = "Foot risk category ${limb.foot_risk}: the foot is seen every 3 to 6 months."
  strength = "strong"
  basis    = "published"
  cites    = ["schaper_2020"]

  advise "review_interval" { at_most = "weeks(26)" }
}

rule "review_foot_risk_three" {
  when     = "limb.foot_risk == iwgdf_risk('3')"
  because  = "Foot risk category ${limb.foot_risk}: the foot is seen every 1 to 3 months."
  strength = "strong"
  basis    = "published"
  cites    = ["schaper_2020"]

  advise "review_interval" { at_most = "weeks(13)" }
}
