# What else has to be said after a stroke.

caution "light_or_rigid_first" {
  level = "note"
  when  = "finding.rigid_is_advised && limb.present_device == 'none'"
  says  = "Advice disagrees on the first device: a national guideline offers a light, flexible one first; a best practice statement and a consensus conference ask for a rigid one where tone is raised, the foot turns in or the knee is unstable. All three are from memory, so both sides stand."
  act   = "Decide with the person, write down why, and compare both in a walk if you can."
  basis = "from_memory"
  cites = ["uk_stroke_guideline", "best_practice_2009", "consensus_2003"]
}

caution "device_or_stimulation" {
  level = "note"
  when  = "finding.low_tone_drop || finding.spastic_but_straight"
  says  = "Orthosis and stimulation came out equal in five trials with 815 people after stroke. One man with multiple sclerosis reached 0.45 m/s at a fast pace with an orthosis and 0.35 m/s with stimulation. An orthosis may compensate more, stimulation may train more."
  act   = "Let the person try both where both can be had; skin, hands, upkeep and cost decide."
  basis = "published"
  cites = ["prenton_2016", "johnston_2021", "sclerosis_case_2018"]
}

caution "nerve_block_first" {
  level = "precaution"
  when  = "finding.spastic_equinovarus"
  says  = "A spastic foot that turns in (tone ${limb.plantarflexor_tone}): only a diagnostic nerve block tells tone from shortening and from weakness. The guidance of one expert group makes it a mandatory step before any treatment is chosen."
  act   = "Ask for the block, or say in the record why the choice is made without it."
  basis = "published"
  cites = ["deltombe_2017"]
}

caution "surgery_waits" {
  level = "note"
  when  = "finding.turns_in && since(person.onset) < weeks(26)"
  says  = "The stroke was on ${person.onset}, less than half a year ago, and the foot can still change."
  act   = "Device and therapy for now; a surgeon's opinion may be asked, an operation on tendons waits."
  basis = "published"
  cites = ["equinovarus_surgery_text"]
}

caution "weak_quadriceps_under_a_stop" {
  level = "precaution"
  when  = "finding.quadriceps_weak"
  says  = "Quadriceps ${limb.quadriceps_power}: a rigid device and a stop against plantarflexion both bent the knee more as weight came on, and this knee may give way."
  act   = "Try it first between bars or with a hand at the belt; let the ankle give at loading or soften the heel."
  basis = "published"
  cites = ["mulroy_2010"]
}

caution "goal_with_less_evidence" {
  level = "note"
  when  = "person.main_goal in ['quality_of_life', 'endurance', 'muscle_activation', 'gait_appearance']"
  says  = "The main goal is ${person.main_goal}. Evidence that an orthosis or stimulation helps is moderate for quality of life, endurance and muscle activation, and weak for the look of walking."
  act   = "A device may be offered; say what is to be expected, and set a measure of success."
  basis = "published"
  cites = ["johnston_2021"]
}

caution "painful_knee" {
  level = "note"
  when  = "finding.knee_goes_back && limb.knee_pain >= 1"
  says  = "The knee ${limb.gait_midstance_knee} and hurts (${limb.knee_pain} of 10). In 27 people with such a knee, of any diagnosis, a knee-ankle-foot orthosis brought the median pain from 85 to 25 of 100."
  act   = "If the pain stays in an ankle-foot orthosis, don't wait long with the next step."
  basis = "published"
  cites = ["requier_2018"]
}

caution "toxin_for_tone" {
  level = "note"
  when  = "finding.limb_safety.tone_marked"
  says  = "Tone is ${limb.plantarflexor_tone}. A guideline suggests toxin for focal spasticity, weakly; only a summary of it was read."
  act   = "Ask whoever treats tone whether and when, so that the cast is not taken just before."
  basis = "published"
  cites = ["toxin_summary_2024"]
}

caution "range_is_going" {
  level = "note"
  when  = "finding.contracture && finding.calf_spastic"
  says  = "The calf is spastic (${limb.plantarflexor_tone}) and already short (${limb.ankle_dorsiflexion_knee_extended}). A guideline allows a resting splint at night or in standing, on weak grounds."
  act   = "Consider a resting splint beside the walking device."
  basis = "from_memory"
  cites = ["winstein_2016"]
}
