# Safety of skin and circulation under any device: what a clinic's own ruleset builds on. Demonstration only.

ruleset "demo_safety" {
  title            = "Skin and circulation under a device (demonstration)"
  version          = "1.1.0"
  status           = "draft"
  publisher        = "Demonstration clinic, invented"
  author           = ["senior orthotist"]
  reviewer         = ["podiatrist"]
  purpose          = "Shows how a small ruleset of cautions is built on by others. For the demonstration only; not for use with patients."
  last_review_date = "2026-07-13"
  review_by        = "2027-10-31"
  vocabulary       = "lower_limb@1"
  applies          = "person.age >= years(2)"
}

citation "contact_exclusions" {
  text     = "Children's hospital guideline 35 on serial casting, January 2009: broken skin, marked oedema and impaired circulation rule a cast out (opening read)"
  url      = "https://deploy.doczz.net/doc/6446525/serial-casting-target-users"
  standing = "read"
}

citation "sensation_by_missed_sites" {
  text     = "Loss of protective sensation as used in a study of 400 people: two or more missed applications at one site (PMC7950904)"
  url      = "https://pmc.ncbi.nlm.nih.gov/articles/PMC7950904"
  standing = "read"
}

finding "insensate" {
  holds   = "recorded(limb.protective_sensation) ? limb.protective_sensation in ['reduced', 'absent'] : [limb.monofilament_great_toe, limb.monofilament_first_metatarsal_head, limb.monofilament_fifth_metatarsal_head].exists(felt, !felt)"
  because = "The judgement over all sites counts where it was made; otherwise one missed site of the three is enough."
  cites   = ["monofilament_procedure", "sensation_by_missed_sites"]
}

finding "broken_skin" {
  holds   = <<-EOT
    limb.malleolar_skin == 'broken' || limb.heel_skin == 'broken' || limb.achilles_skin == 'broken'
    || limb.foot_dorsum_skin == 'broken' || limb.anterior_shin_skin == 'broken' || limb.posterior_calf_skin == 'broken'
  EOT
  because = "The six places that a foot shell or a shank shell always touches."
}

finding "marked_skin" {
  holds   = <<-EOT
    limb.malleolar_skin == 'red_after_pressure' || limb.heel_skin == 'red_after_pressure'
    || limb.achilles_skin == 'red_after_pressure' || limb.foot_dorsum_skin == 'red_after_pressure'
    || limb.anterior_shin_skin == 'red_after_pressure' || limb.posterior_calf_skin == 'red_after_pressure'
  EOT
  because = "A mark that stays means that something presses there already."
}

finding "poor_circulation" {
  holds   = <<-EOT
    person.arterial_disease == 'confirmed'
    || (limb.foot_pulses != 'both' || person.arterial_disease == 'suspected' || person.diabetes != 'none')
    && limb.ankle_brachial_pressure_index < ratio(0.9)
  EOT
  because = "Below 0.9 arterial disease is likely. The index is asked for where there is a reason to: a pulse that is not felt, a suspicion, diabetes."
  cites   = ["pressure_index_2020"]
}

quantity "swelling_share" {
  unit    = "%"
  value   = "limb.girth_change_through_day / limb.ankle_girth"
  because = "How much of the ankle's girth comes and goes through the day."
}

finding "swelling_marked" {
  holds   = "limb.fluctuating_oedema && quantity.swelling_share >= percent(5)"
  because = "Five per cent of the girth is a demonstration value."
}

rule "wound_care_first" {
  when     = "finding.broken_skin"
  because  = "The skin is broken where a shell would lie, so the wound is treated before anything new touches it."
  strength = "strong"
  basis    = "common_practice"
  cites    = ["contact_exclusions"]

  advise "device" {
    only   = ["refer_wound_care", "refer_vascular_opinion", "refer_foot_protection"]
    favour = "refer_wound_care"
  }
}

rule "vascular_opinion_first" {
  when     = "finding.poor_circulation"
  because  = "The circulation to this foot is doubtful, so a vascular opinion comes before any device that presses or corrects."
  strength = "strong"
  basis    = "common_practice"
  cites    = ["pressure_index_2020", "contact_exclusions"]

  advise "device" {
    only   = ["refer_wound_care", "refer_vascular_opinion", "refer_foot_protection"]
    favour = "refer_vascular_opinion"
  }
}

rule "foot_protection_first" {
  when     = "limb.hot_swollen_foot"
  because  = "A hot, swollen foot is not cast before it is known why: a foot protection service sees it first."
  strength = "strong"
  basis    = "common_practice"

  advise "device" {
    only   = ["refer_wound_care", "refer_vascular_opinion", "refer_foot_protection"]
    favour = "refer_foot_protection"
  }
}

rule "daily_skin_check" {
  when     = "finding.insensate"
  because  = "The foot does not warn its owner, so eyes take the place of feeling: the skin is looked at every day, and wear time is built up slowly. The first review within two weeks is a demonstration value."
  strength = "strong"
  basis    = "published"
  cites    = ["wear_leaflet"]

  advise "skin_check" {
    at_least = "daily"
    favour   = "daily"
  }
  advise "wearing_in" {
    at_least = "slow"
    favour   = "slow"
  }
  advise "review_interval" { at_most = "weeks(2)" }
}

rule "line_insensate_skin" {
  when     = "finding.insensate"
  because  = "Skin that can't feel wants more area and fewer edges: no narrow strap, and a lining under every bony place at least."
  strength = "strong"
  basis    = "common_practice"

  advise "padding" {
    at_least = "at_bony_places"
    favour   = "whole_shell"
  }
  advise "closure" { never = "strap" }
  advise "device" { never = "elastic_lifter" }
}

rule "strap_for_swelling" {
  when     = "limb.fluctuating_oedema"
  because  = "The leg swells through the day, so what closes the device must let out and take in: a padded strap, not a second shell."
  strength = "strong"
  basis    = "common_practice"

  advise "closure" {
    never  = ["anterior_shell", "posterior_shell"]
    favour = "wide_padded_strap"
  }
}

clinician_decides "device" {
  because = "This ruleset says only what keeps a device away and who is asked first. Which device it is, the ruleset that builds on it says."
}

clinician_decides "closure" {
  because = "Only insensate skin and swelling have a say in the closure here."
}

clinician_decides "padding" {
  because = "Only insensate skin is lined by a rule here. On other skin no source says how much is lined."
}

clinician_decides "review_interval" {
  because = "Only insensate skin sets a time here, and that one is a demonstration value."
}

clinician_decides "wearing_in" {
  because = "Only insensate skin asks for slow wear here."
}

clinician_decides "skin_check" {
  because = "Where sensation is intact no source says how often the skin is to be looked at."
}

caution "broken_skin" {
  level = "contraindication"
  when  = "finding.broken_skin"
  says  = "The skin is broken where a foot or shank shell would lie."
  act   = "No new contact device until the wound has been reviewed; ask for wound care. What else is advised for this leg waits for that."
  basis = "common_practice"
  cites = ["contact_exclusions"]
}

caution "unchecked_skin" {
  level = "contraindication"
  when  = "finding.insensate && !person.skin_check_possible"
  says  = "Protective sensation is ${limb.protective_sensation}, and nobody can look at the skin every day."
  act   = "Arrange a daily skin check before any closed shell is supplied."
  basis = "from_memory"
}

caution "hot_foot" {
  level = "contraindication"
  when  = "limb.hot_swollen_foot"
  says  = "A hot, swollen foot (protective sensation: ${limb.protective_sensation}). Where it can't feel, its joints can be breaking down; where it can, think of infection, a clot or a fracture."
  act   = "Do not cast. Send to the foot protection service the same day, or to a doctor where sensation is present. What else is advised for this leg waits for that."
  basis = "from_memory"
}

caution "poor_circulation" {
  level = "precaution"
  when  = "finding.poor_circulation"
  says  = "The circulation is doubtful: arterial disease ${person.arterial_disease}, foot pulses ${limb.foot_pulses}, pressure index ${limb.ankle_brachial_pressure_index}."
  act   = "Vascular opinion before any tight closure or correcting pressure. What else is advised for this leg waits for it."
  basis = "common_practice"
  cites = ["pressure_index_2020"]
}

caution "insensate_skin" {
  level = "precaution"
  when  = "finding.insensate"
  says  = "Protective sensation is ${limb.protective_sensation}: pressure will not be felt."
  act   = "Show the person and whoever helps how to look at the skin, daily and after every wear."
  basis = "published"
  cites = ["wear_leaflet"]
}

caution "marked_skin" {
  level = "precaution"
  when  = "finding.marked_skin"
  says  = "Where a shell would lie, skin is still red 20 minutes after the shoe or device came off."
  act   = "Find what presses and take it away before the cast; look again at the fitting and after the first wear."
  basis = "common_practice"
}

caution "swelling" {
  level = "precaution"
  when  = "limb.fluctuating_oedema"
  says  = "The leg swells through the day, by ${quantity.swelling_share} of the ankle's girth: a shell that fits in the morning is tight at night."
  act   = "Cast late in the day, keep the closure adjustable, and have the swelling itself treated."
  basis = "common_practice"
}

caution "driving" {
  level = "note"
  when  = "person.driving in ['automatic', 'manual', 'adapted_controls']"
  says  = "The person drives."
  act   = "Ask which foot works which pedal, and give advice before supply."
  basis = "common_practice"
}
