# What to watch, and where published advice disagrees.

caution "try_several_stiffnesses" {
  level = "note"
  when  = "finding.spring_suits"
  says  = "Sources disagree on stiffness. By body mass and activity was right in 8 of 34 people; in a group no stiffness was best, while single people differed by about 11 % in energy from their worst to their best. From 2.8 to 6.6 N·m/° each further N·m/° cost about 1.1 deg of dorsiflexion and 0.09 W/kg of push-off."
  act   = "Let the person walk in two or three stiffnesses about the range that is advised before the device is finished, and write down which was chosen and why."
  basis = "published"
  cites = ["waterval_2019", "waterval_2021"]
}

caution "stiffness_outside_the_trial" {
  level = "precaution"
  when  = "finding.spring_suits && finding.no_heel_rise && (quantity.stiffness_by_mass > Nm_per_deg(6.6) || quantity.softer_stiffness < Nm_per_deg(2.8))"
  says  = "For ${person.body_mass} the range runs from ${quantity.softer_stiffness} to ${quantity.stiffness_by_mass}, beyond the 2.8 to 6.6 N·m/° that were tried in people."
  act   = "Let the workshop confirm that the laminate bears it, and try it under supervision."
  basis = "published"
  cites = ["waterval_2019"]
}

caution "equinus_outside_the_trial" {
  level = "precaution"
  when  = "finding.spring_suits && limb.ankle_dorsiflexion_loaded_knee_extended < deg(0)"
  says  = "Standing, the ankle does not come to plantigrade (${limb.ankle_dorsiflexion_loaded_knee_extended}): a trial of springs for the weak calf left such feet out."
  act   = "Its findings don't speak for this leg. Build up the heel to what the ankle reaches, try the spring for a short time and measure the result."
  basis = "published"
  cites = ["calf_weakness_trial"]
}

caution "knee_under_a_held_ankle" {
  level = "precaution"
  when  = "finding.calf_weak && limb.quadriceps_power < muscle_power('4')"
  says  = "Quadriceps of ${limb.quadriceps_power}: as weight comes on, a device that holds the ankle bends the knee (measured after stroke). The grade is a starting value without a source."
  act   = "Cushioned or bevelled heel, and the first steps with support at hand."
  basis = "published"
  cites = ["mulroy_2010"]
}

caution "equinus_that_locks_the_knee" {
  level = "precaution"
  when  = "finding.quadriceps_weak && limb.ankle_dorsiflexion_knee_extended < deg(0)"
  says  = "The quadriceps are of grade ${limb.quadriceps_power} and the ankle stops at ${limb.ankle_dorsiflexion_knee_extended}: the pointed foot may be what keeps the load in front of this knee."
  act   = "Do not take it away before the knee is held otherwise; try heel heights in standing first."
  basis = "from_memory"
}

caution "spastic_calf" {
  level = "precaution"
  when  = "finding.calf_weak && finding.calf_spastic"
  says  = "The calf is weak, and its tone is ${limb.plantarflexor_tone}: what is advised here is for a calf without spasticity."
  act   = "Use a ruleset for spastic gait where one applies, and ask why tone is raised in this condition."
  basis = "common_practice"
}

caution "may_not_be_worn" {
  level = "note"
  when  = "person.diagnosis_group == 'polio' && person.community_walking == community_walking('community')"
  says  = "Walks in the community as it is. After polio, 74 % of those asked used their device, and users were the ones who were more limited without it."
  act   = "It is likely to end in a cupboard: agree on what it should make better, and lend one before one is made."
  basis = "published"
  cites = ["polio_device_use"]
}

caution "keep_it_light" {
  level = "note"
  when  = "person.diagnosis_group == 'polio'"
  says  = "After polio the mass of a device bears on the energy of walking; over the knee, a total-contact carbon device took 8 % less energy than the usual one."
  act   = "Choose the lightest construction that does the task, and weigh the finished device."
  basis = "published"
  cites = ["kelley_2007", "brehm_2007"]
}

caution "duchenne_views_differ" {
  level = "note"
  when  = "finding.duchenne_walker"
  says  = "Published views on a device by day disagree: three boys did worse in one, and a review finds that devices are often kept to the night; in a study of twenty people an articulated one changed how they moved, and its authors want it early."
  act   = "Decide with the neuromuscular team; if a device is tried by day, count falls and time 10 m with and without."
  basis = "published"
  cites = ["townsend_2015", "stevens_2006", "duchenne_articulated"]
}

caution "level_above_the_ankle" {
  level = "precaution"
  when  = "person.diagnosis_group == 'spina_bifida' && limb.spinal_motor_level in ['thoracic', 'high_lumbar']"
  says  = "A ${limb.spinal_motor_level} level asks for more than an ankle-foot orthosis: a standing frame, or a device that reaches over the hip."
  act   = "Send to the spina bifida service before anything is cast."
  basis = "published"
  cites = ["spina_bifida_review"]
}

caution "hand_stronger_than_heel_rises" {
  level = "note"
  when  = "limb.plantarflexor_power >= muscle_power('5') && limb.heel_rises <= 3"
  says  = "Against the hand the calf is ${limb.plantarflexor_power}, standing it does ${limb.heel_rises} heel rises. A weak calf feels strong against a hand, so it counts as weak here."
  act   = "Trust the heel rises, unless pain, balance or range stopped them."
  basis = "common_practice"
}

caution "heel_rise_schemes_disagree" {
  level = "note"
  when  = "finding.full_calf_by_4_rises && !finding.full_calf_by_25_rises"
  says  = "${limb.heel_rises} heel rises are a full calf by one scheme and not by another: full from 4 or 5 (yes), from 20 (${finding.full_calf_by_20_rises}), from 25 (no). The limit of 25 is from memory, and none allows for age and sex."
  act   = "Record the count and the other leg's, not a grade made from it."
  basis = "published"
  cites = ["heel_rise_short_scheme", "jan_2005", "lunsford_1995", "hislop_montgomery"]
}
