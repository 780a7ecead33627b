# The person, the shoe and daily life.

caution "growing" {
  level = "note"
  when  = "finding.growing"
  says  = "A growing leg (${person.age})."
  act   = "Leave room for growth; tell the family the signs of a device that has become too small."
  basis = "common_practice"
}

caution "injected_lately" {
  level = "precaution"
  when  = "finding.injected_lately"
  says  = "Injected for tone on ${person.last_injection}, less than three months ago: a trial would wait, because the leg is still changing."
  act   = "Examine tone and range again when the effect has gone, and before anything is made for good."
  basis = "published"
  cites = ["kerkum_2013"]
}

caution "operated_lately" {
  level = "precaution"
  when  = "finding.operated_lately"
  says  = "Operated on ${person.last_surgery}, less than six months ago: a trial would wait, because the leg is still changing."
  act   = "Ask the surgeon what may be loaded and moved. After cutting of sensory roots that trial waited twelve months."
  basis = "published"
  cites = ["kerkum_2013"]
}

caution "cast_lately" {
  level = "precaution"
  when  = "finding.cast_lately"
  says  = "The last serial cast came off on ${person.last_serial_cast}: range gained was seen to last 6 weeks, or 12 after an injection."
  act   = "Measure the range again just before the cast for the device, and soon after."
  basis = "published"
  cites = ["lee_2011"]
}

caution "falls" {
  level = "precaution"
  when  = "finding.falls"
  says  = "Falls in the last year: ${person.falls_last_year}; standing balance: ${person.standing_balance}."
  act   = "Look at the walking aid, think of a falls service, and test balance and walking again in the device."
  basis = "common_practice"
}

caution "low_bone_density" {
  level = "precaution"
  when  = "person.low_bone_density"
  says  = "Low bone density or a fragility fracture."
  act   = "No forceful stretch and no serial casting; keep correcting forces low and spread; look at the risk of falls. The casting is published, the rest is common practice."
  basis = "published"
  cites = ["contact_exclusions"]
}

caution "cannot_put_it_on" {
  level = "precaution"
  when  = "finding.needs_help_to_put_on && person.help_available != 'each_time'"
  says  = "Hands: ${person.hand_function}; help with putting the device on: ${person.help_available}."
  act   = "Let the person try a sample device and shoe before it is ordered, and arrange help for the times at which it goes on and off."
  basis = "from_memory"
  cites = ["nice_stroke"]
}

caution "cannot_report" {
  level = "precaution"
  when  = "finding.cannot_report"
  says  = "The person can't follow and keep instructions, and may not say what hurts."
  act   = "Teach whoever helps (help available: ${person.help_available}); give wear and skin check in writing to them."
  basis = "common_practice"
}

caution "movement_marked" {
  level = "precaution"
  when  = "finding.movement_marked"
  says  = "Dystonia or other movement that is not meant is marked."
  act   = "A rigid device can bring discomfort and pressure injury here: watch it closely."
  basis = "published"
  cites = ["nice_cp_table"]
}

caution "load_on_the_laminate" {
  level = "precaution"
  when  = "person.body_mass > kg(100) || person.activity_demand == 'high'"
  says  = "Body mass ${person.body_mass}, activity ${person.activity_demand}. No general limit of mass is published; 100 kg is a starting value without a source, for the clinic to set."
  act   = "Have the maker of each part, and whoever lays up the laminate, confirm in writing that it bears this person. A cracked or split laminate is not worn."
  basis = "common_practice"
  cites = ["strength_of_orthoses"]
}

caution "shoe_not_settled" {
  level = "precaution"
  when  = "limb.shoe_heel_varies || !limb.shoe_will_be_worn"
  says  = "The device will meet a shoe of another heel than the one measured: a lower one pushes the knee back, a higher one makes it unsteady."
  act   = "Settle on one heel height, or check the lean of the shank again in each shoe. The device is worn in a shoe only."
  basis = "published"
  cites = ["heel_height_teaching", "wear_leaflet"]
}

caution "shoe_too_tight_for_a_device" {
  level = "precaution"
  when  = "limb.shoe_opening == 'narrow' || limb.shoe_depth == 'shallow' || limb.shoe_width_fit == 'tight'"
  says  = "The shoe has little room: opening ${limb.shoe_opening}, depth ${limb.shoe_depth}, width ${limb.shoe_width_fit}. A device in it presses on the foot."
  act   = "Find a roomier shoe before the cast."
  basis = "common_practice"
}

caution "drives_with_pedals_for_both_feet" {
  level = "precaution"
  when  = "person.driving == 'manual'"
  says  = "The person drives a car in which either foot works a pedal. Healthy drivers changed pedals more slowly in a brace and braked later in a boot; driving took the right ankle from 13 deg of plantarflexion to 22 deg of dorsiflexion."
  act   = "Don't assume that it is safe: licensing authority, insurer, adapted controls, before supply. The effects are published; this advice is common practice."
  basis = "published"
  cites = ["hofmann_2015", "braking_in_a_boot", "latz_2019"]
}

caution "drives_with_pedals_for_the_right_foot" {
  level = "precaution"
  when  = "person.driving == 'automatic'"
  says  = "The person drives a car in which the right foot works the pedals. Healthy drivers changed pedals more slowly in a brace and braked later in a boot; driving took the right ankle from 13 deg of plantarflexion to 22 deg of dorsiflexion."
  act   = "If the device is for the right leg, don't assume that it is safe: licensing authority, insurer, adapted controls, before supply. The effects are published; this advice is common practice."
  basis = "published"
  cites = ["hofmann_2015", "braking_in_a_boot", "latz_2019"]
}

caution "drives_with_adapted_controls" {
  level = "note"
  when  = "person.driving == 'adapted_controls'"
  says  = "The person drives with adapted controls."
  act   = "Ask which foot works what, and whether the device changes that."
  basis = "common_practice"
}
