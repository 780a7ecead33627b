# Facts of the limb that other rulesets read too, as finding.limb_safety.name. Skin is in findings_skin.hcl.

# Sensation

finding "insensate" {
  holds   = "limb.protective_sensation in ['reduced', 'absent']"
  because = "The judgement over all sites: pressure is felt too little or not at all."
  cites   = ["monofilament_procedure"]
}

finding "site_not_felt" {
  holds   = "!limb.monofilament_great_toe || !limb.monofilament_first_metatarsal_head || !limb.monofilament_fifth_metatarsal_head"
  because = "One of the three sites of the guideline was missed; a study of 400 people called that a loss of protective sensation."
  cites   = ["monofilament_procedure", "sensation_by_missed_sites"]
}

finding "skin_unchecked" {
  holds   = "finding.insensate && !person.skin_check_possible"
  because = "The foot does not warn, and nobody can look at it every day."
}

# Circulation

finding "circulation_in_question" {
  holds   = "limb.foot_pulses != 'both' || person.arterial_disease != 'none_known' || person.diabetes != 'none'"
  because = "There is a reason to take pressures: a pulse that is not felt, arterial disease suspected or known, diabetes. Common practice, no source."
}

finding "index_low" {
  holds   = "limb.ankle_brachial_pressure_index <= ratio(0.9)"
  because = "One source calls the index low below 0.9, another below 0.91. 0.9 itself counts, as the safer reading."
  cites   = ["pressure_index_2020", "toe_pressure_guidance"]
}

finding "index_high" {
  holds   = "limb.ankle_brachial_pressure_index > ratio(1.3)"
  because = "A vessel too stiff to be pressed shut gives a high index that says nothing of the flow. Sources put the limit at 1.3 or at 1.4."
  cites   = ["pressure_index_2020", "toe_pressure_guidance"]
}

finding "poor_circulation" {
  holds   = <<-EOT
    person.arterial_disease == 'confirmed'
    || finding.circulation_in_question && (finding.index_low || finding.index_high && limb.toe_brachial_pressure_index < ratio(0.75))
  EOT
  because = "Arterial disease is known or likely. Pressures count where there is a reason to take them; the toe counts where the ankle's index is too high to be believed."
  cites   = ["pressure_index_2020", "toe_pressure_guidance"]
}

finding "critical_circulation" {
  holds   = "limb.ankle_brachial_pressure_index <= ratio(0.3) || limb.ankle_systolic_pressure < mmHg(50)"
  because = "The band in which the foot itself is in danger."
  cites   = ["limb_ischaemia_bands"]
}

# Swelling

finding "swelling_varies" {
  holds   = "limb.fluctuating_oedema"
  because = "The fit of a shell changes through the day."
}

finding "swelling_marked" {
  holds   = "limb.pitting_depth >= pitting_oedema('3+')"
  because = "A pit of 5 mm or more. Which depth counts as marked is a starting value without a source, for the clinic to set."
  cites   = ["pitting_depths"]
}

# Tone

finding "tone_marked" {
  holds   = "limb.plantarflexor_tone >= modified_ashworth('2')"
  because = "More tone through most of the calf's range."
  cites   = ["bohannon_1987"]
}

finding "tone_hard_to_move" {
  holds   = "limb.plantarflexor_tone >= modified_ashworth('3')"
  because = "The calf is hard to move at all."
  cites   = ["bohannon_1987"]
}

finding "inversion_tone_hard_to_move" {
  holds   = "limb.invertor_tone >= modified_ashworth('3')"
  because = "The invertors are hard to move at all."
  cites   = ["bohannon_1987"]
}

finding "clonus_does_not_fade" {
  holds   = "limb.clonus_sustained || limb.clonus_beats >= 10"
  because = "Sustained by the clock or by ten beats: every source calls it sustained."
  cites   = ["degowin_1987", "barnes_2008"]
}

finding "clonus_in_dispute" {
  holds   = "limb.clonus_beats >= 5 && limb.clonus_beats < 10 && !limb.clonus_sustained"
  because = "Sustained where five beats are the limit, not sustained where ten are."
  cites   = ["degowin_1987", "clonus_five_beats"]
}

# Range and fixed shape

finding "equinus" {
  holds   = "limb.ankle_dorsiflexion_knee_extended < deg(0)"
  because = "With the knee straight the foot does not come up to plantigrade."
}

finding "equinus_severe" {
  holds   = "limb.ankle_dorsiflexion_knee_extended < deg(-20)"
  because = "More than 20 deg short of plantigrade. The limit is common practice, no source."
}

finding "ankle_blocked" {
  holds   = "limb.ankle_end_feel == 'hard'"
  because = "Bone meets bone at the end of dorsiflexion."
}

finding "hindfoot_fixed" {
  holds   = "limb.hindfoot_corrects_by_hand == 'not_at_all'"
  because = "No hand brings the heel under the shank."
}

finding "forefoot_fixed" {
  holds   = "limb.forefoot_corrects_by_hand == 'not_at_all'"
  because = "No hand brings the forefoot level with the heel."
}

finding "ankle_loose_sideways" {
  holds   = "limb.ankle_sideways_stability in ['loose_inversion', 'loose_eversion', 'loose_both']"
  because = "The ankle tilts further than the other."
}

# The person

finding "growing" {
  holds   = "person.age < years(18)"
  because = "A child or young person, whose leg outgrows its device. 18 years is common practice, no source."
}

finding "injected_lately" {
  holds   = "since(person.last_injection) < weeks(13)"
  because = "Less than three months, the time that a trial waits after an injection."
  cites   = ["kerkum_2013"]
}

finding "operated_lately" {
  holds   = "since(person.last_surgery) < weeks(26)"
  because = "Less than six months, the time that a trial waits after an operation."
  cites   = ["kerkum_2013"]
}

finding "cast_lately" {
  holds   = "since(person.last_serial_cast) < weeks(12)"
  because = "The longest that range gained by casting was seen to last in a small study: 12 weeks after an injection, 6 without."
  cites   = ["lee_2011"]
}

finding "falls" {
  holds   = "person.falls_last_year >= 1 || person.standing_balance in ['unable', 'with_support']"
  because = "A fall in the last year, or no free standing. Common practice, no source."
}

finding "needs_help_to_put_on" {
  holds   = "person.hand_function in ['one_hand', 'weak_grip', 'none']"
  because = "The hands are not two that can pull. Common practice, no source."
}

finding "cannot_report" {
  holds   = "person.follows_instructions == 'no'"
  because = "The person will not keep what is agreed on wear and skin, and may not say what hurts."
}

finding "movement_marked" {
  holds   = "person.involuntary_movement == 'marked'"
  because = "Movement that is not meant works the foot against the device."
}
