# The clinic's own cautions, beside those of the safety ruleset.

caution "contracture_under_ground_reaction" {
  level = "contraindication"
  when  = "finding.crouch_contracted"
  says  = "Crouch with knee extension of ${limb.knee_extension} and hip extension of ${limb.hip_extension}: a ground-reaction device is not expected to straighten it."
  act   = "Surgical opinion before the cast. What else is advised for this leg waits for it."
  basis = "from_memory"
  cites = ["rogozinski_2009"]
}

caution "outside_the_trials" {
  level = "precaution"
  when  = "limb.ankle_dorsiflexion_knee_extended < deg(-10) || limb.knee_extension < deg(-10)"
  says  = "Dorsiflexion ${limb.ankle_dorsiflexion_knee_extended}, knee extension ${limb.knee_extension}: people more than 10 deg short at either were left out of a trial of stiff orthoses, so its findings don't cover this leg."
  act   = "Say so to the person, set a short trial and measure the result."
  basis = "published"
  cites = ["kerkum_2013"]
}

caution "weak_quadriceps_under_a_stop" {
  level = "precaution"
  when  = "limb.quadriceps_power < muscle_power('4')"
  says  = "Quadriceps of ${limb.quadriceps_power}: as weight comes on, a device that holds the ankle bends the knee (measured after stroke), and this knee may give way. The grade is a demonstration value."
  act   = "Cushioned or bevelled heel, less lean, and a trial walk with support at hand."
  basis = "published"
  cites = ["mulroy_2010"]
}

caution "sustained_clonus" {
  level = "precaution"
  when  = "limb.clonus_sustained"
  says  = "Clonus does not fade: a hinge or a soft spring can keep it going."
  act   = "Hold the ankle, and talk to whoever treats the tone."
  basis = "published"
  cites = ["appasamy_2015"]
}

caution "shoe_not_settled" {
  level = "precaution"
  when  = "limb.shoe_heel_varies || !limb.shoe_will_be_worn"
  says  = "The device will meet shoes of another heel than the one that was measured. Higher tips the shank forward, lower back."
  act   = "Settle on one heel height before casting, or show how to make up the difference."
  basis = "common_practice"
}

caution "catch_before_the_end" {
  level = "note"
  when  = "finding.spastic_calf && limb.ankle_dorsiflexion_knee_extended - limb.gastrocnemius_fast_angle >= deg(10)"
  says  = "On a fast stretch the calf catches at ${limb.gastrocnemius_fast_angle}, slowly it goes to ${limb.ankle_dorsiflexion_knee_extended}: much of the limit is reflex, not length. The 10 deg are from memory."
  act   = "Judge the range again after any treatment of tone; cast slowly."
  basis = "from_memory"
  cites = ["tardieu_angles"]
}

caution "knee_straight_counts" {
  level = "note"
  when  = "finding.gastrocnemius_short"
  says  = "With the knee bent the ankle goes to ${limb.ankle_dorsiflexion_knee_flexed}, with it straight only to ${limb.ankle_dorsiflexion_knee_extended}: the gastrocnemius is short."
  act   = "Keep the knee straight while casting; the range with the knee bent is not there at the end of stance."
  basis = "published"
  cites = ["digiovanni_2002", "baumbach_2014"]
}

caution "sides_differ" {
  level = "note"
  when  = "abs(quantity.side_difference) > deg(10)"
  says  = "Dorsiflexion is ${limb.ankle_dorsiflexion_knee_extended} here and ${other.ankle_dorsiflexion_knee_extended} on the opposite side. Healthy ankles differ by less than 6 deg; 10 allows for the error of two measurements, and is a demonstration value."
  act   = "Measure both again before casting."
  basis = "published"
  cites = ["baumbach_2016", "goniometry_ankle_children"]
}

caution "high_heel_raise" {
  level = "precaution"
  when  = "quantity.needed_block - quantity.shoe_drop > mm(20)"
  says  = "The heel needs ${quantity.needed_block} and the shoe gives ${quantity.shoe_drop}: so high a raise loads the forefoot, makes the shoe tip sideways and may not fit into it. The limit of 20 mm is a demonstration value."
  act   = "Try the raise in standing and in walking before the cast, look at the skin under the metatarsal heads, and ask whether range can be gained first."
  basis = "common_practice"
}

caution "falls" {
  level = "note"
  when  = "person.falls_last_year >= 1"
  says  = "Falls in the last year: ${person.falls_last_year}."
  act   = "Check the walking aid, think of a falls service, and look at balance again in the device."
  basis = "common_practice"
}

caution "driving" {
  level = "note"
  when  = "person.driving in ['automatic', 'manual']"
  says  = "The person drives (${person.driving}). Braces slowed the foot from pedal to pedal in healthy drivers, and driving takes the right ankle through about 35 deg."
  act   = "Don't assume that it is safe on a foot that works a pedal: licensing authority, insurer, adapted controls. The advice is common practice."
  basis = "published"
  cites = ["hofmann_2015", "latz_2019"]
}
