# Circulation and swelling.

caution "hot_foot" {
  level = "contraindication"
  when  = "limb.hot_swollen_foot"
  says  = "A hot, red, swollen foot (protective sensation: ${limb.protective_sensation}). Where it can't feel, its joints can be breaking down; where it can, think of infection, a clot or a fracture."
  act   = "Don't cast. Send to the foot service the same day, or to a doctor where sensation is present."
  basis = "from_memory"
  cites = ["charcot_2023"]
}

caution "poor_circulation" {
  level = "precaution"
  when  = "finding.poor_circulation"
  says  = "The circulation is poor or likely to be: arterial disease ${person.arterial_disease}, foot pulses ${limb.foot_pulses}, pressure index ${limb.ankle_brachial_pressure_index}, toe index ${limb.toe_brachial_pressure_index}."
  act   = "Vascular opinion before any tight closure or correcting pressure."
  basis = "common_practice"
  cites = ["pressure_index_2020", "toe_pressure_guidance"]
}

caution "low_index" {
  level = "precaution"
  when  = "finding.index_low"
  says  = "The pressure index is ${limb.ankle_brachial_pressure_index}. Arterial disease is likely below 0.9 by one source, below 0.91 by another, whatever the pulses are like."
  act   = "Take it again, say which ankle pressure was used, and ask for a vascular opinion. The figures are published; acting on them this way is common practice."
  basis = "common_practice"
  cites = ["pressure_index_2020", "toe_pressure_guidance"]
}

caution "critical_circulation" {
  level = "contraindication"
  when  = "finding.critical_circulation"
  says  = "Pressure index ${limb.ankle_brachial_pressure_index}, ankle pressure ${limb.ankle_systolic_pressure}: an index of 0.3 or less, or an ankle pressure under 50 mmHg, is the critical band."
  act   = "Nothing presses on this foot. Vascular service without delay. The band is published; acting on it this way is common practice."
  basis = "common_practice"
  cites = ["limb_ischaemia_bands"]
}

caution "severe_band" {
  level = "contraindication"
  when  = "limb.ankle_brachial_pressure_index > ratio(0.3) && limb.ankle_brachial_pressure_index <= ratio(0.5)"
  says  = "The pressure index is ${limb.ankle_brachial_pressure_index}: over 0.3 and up to 0.5 is the severe band."
  act   = "Vascular opinion before any device that presses or holds, and before a cast. The band is published; acting on it this way is common practice."
  basis = "common_practice"
  cites = ["limb_ischaemia_bands"]
}

caution "index_not_to_be_believed" {
  level = "precaution"
  when  = "limb.ankle_brachial_pressure_index > ratio(1.4)"
  says  = "The pressure index is ${limb.ankle_brachial_pressure_index}: above 1.4 the ankle's vessels are too stiff to be pressed shut, and the index says nothing of the flow."
  act   = "Don't read it as healthy. Take the toe pressure (toe index recorded: ${limb.toe_brachial_pressure_index}; 0.75 or more largely excludes disease)."
  basis = "published"
  cites = ["pressure_index_2020", "toe_pressure_guidance"]
}

caution "index_limits_differ" {
  level = "note"
  when  = "finding.index_high && limb.ankle_brachial_pressure_index <= ratio(1.4)"
  says  = "The pressure index is ${limb.ankle_brachial_pressure_index}: healthy by one source, whose normal band goes to 1.4, not by another, whose band ends at 1.3."
  act   = "Take the toe pressure as well (toe index recorded: ${limb.toe_brachial_pressure_index})."
  basis = "published"
  cites = ["pressure_index_2020", "toe_pressure_guidance"]
}

caution "recent_thrombosis" {
  level = "contraindication"
  when  = "person.venous_disease == 'recent_thrombosis'"
  says  = "A thrombosis within three months."
  act   = "No cast and no tight closure before the treating doctor agrees; ask which leg it was. For casting this is a published exclusion, for a device it is common practice."
  basis = "common_practice"
  cites = ["contact_exclusions"]
}

caution "swelling_varies" {
  level = "precaution"
  when  = "finding.swelling_varies"
  says  = "The leg swells through the day, at the ankle by ${limb.girth_change_through_day}: a close shell that fits in the morning is tight at night."
  act   = "Have the swelling itself treated; cast late in the day; keep the closure adjustable."
  basis = "common_practice"
  cites = ["teaching_precautions"]
}

caution "swelling_sources_differ" {
  level = "note"
  when  = "finding.swelling_varies"
  says  = "Teaching disagrees on swelling that varies: one set of cards asks for a composite device, another calls swelling a precaution and asks for a jointed one. Neither rests on a study."
  act   = "Decide by how close the planned shells lie to the leg, and say so in the record."
  basis = "published"
  cites = ["teaching_utilisation", "teaching_precautions"]
}

caution "swelling_marked" {
  level = "precaution"
  when  = "finding.swelling_marked"
  says  = "Pitting of ${limb.pitting_depth}. Which depth is marked is a starting value without a source, for the clinic to set."
  act   = "Find the cause and have it treated before the cast; no serial casting."
  basis = "common_practice"
  cites = ["contact_exclusions"]
}
