# What to watch, and what the evidence does not say.

caution "nerve_may_recover" {
  level = "note"
  when  = "finding.palsy_under_a_year"
  says  = "A recent palsy of the nerve (${person.onset}). Of peroneal palsies about two thirds are said to recover within a year; nothing was read on a nerve that was cut, or on another nerve."
  act   = "Say that the device is for a time, test the dorsiflexors at each review, and step down as they return."
  basis = "published"
  cites = ["foot_drop_wiki"]
}

caution "no_gain_in_multiple_sclerosis" {
  level = "note"
  when  = "person.diagnosis_group == 'multiple_sclerosis' && finding.dorsiflexors_weak && limb.evertor_power <= muscle_power('4')"
  says  = "Dorsiflexors of ${limb.dorsiflexor_power} and evertors of ${limb.evertor_power} in multiple sclerosis: in fifteen people a device gave no significant gain in timed tasks. The grade that counts as weak is a starting value."
  act   = "Do not promise speed; time the person's own task with and without, and go by that."
  basis = "published"
  cites = ["sheffler_2008"]
}

caution "stiff_ankle" {
  level = "precaution"
  when  = "finding.drop_foot && finding.limb_safety.equinus"
  says  = "The foot drops, but the ankle does not reach plantigrade by hand either (${limb.ankle_dorsiflexion_knee_extended})."
  act   = "Find out what holds it, muscle, capsule or bone, before a device for the swing is chosen."
  basis = "published"
  cites = ["foot_drop_wiki"]
}

caution "tone_in_a_drop_foot" {
  level = "precaution"
  when  = "finding.drop_foot && !finding.low_tone"
  says  = "The foot drops against a tone of ${limb.plantarflexor_tone}: what is advised here is for low or normal tone, and a light spring can lose to it."
  act   = "Use a ruleset for spastic gait or stroke where one applies; in a condition without spasticity ask why tone is raised."
  basis = "common_practice"
  cites = ["foot_drop_table"]
}

caution "position_sense_impaired" {
  level = "precaution"
  when  = "finding.drop_foot && (limb.ankle_proprioception in ['reduced', 'absent'] || limb.knee_proprioception in ['reduced', 'absent'])"
  says  = "Position sense: ankle ${limb.ankle_proprioception}, knee ${limb.knee_proprioception}. Teaching takes this as a reason to control the ankle, not only to lift the foot."
  act   = "Look at foot placement with eyes forward before settling on a device that only lifts."
  basis = "published"
  cites = ["ankle_control_teaching"]
}

caution "toe_near_the_ground" {
  level = "precaution"
  when  = "limb.gait_swing_clearance in ['toe_catches', 'toe_drags']"
  says  = "The toe meets the ground in swing. Each degree of plantarflexion takes about 3 mm of clearance, of some 19 mm in healthy legs. Measured clearance: ${limb.toe_clearance}; further drop that would use it up: ${quantity.drop_that_is_left}."
  act   = "Check clearance in shoe and device at the end of a longer walk, and the front edge of the sole for catching."
  basis = "published"
  cites = ["toe_clearance_range"]
}

caution "weight_on_a_weak_hip" {
  level = "note"
  when  = "finding.drop_foot && limb.hip_flexor_power < muscle_power('4')"
  says  = "Hip flexors of ${limb.hip_flexor_power} swing whatever hangs on this foot. Pull of the foot itself: ${quantity.pull_of_the_foot}; added by every 100 g on it: ${quantity.pull_of_100_grams}. That mass costs energy is published for polio; the grade is a starting value."
  act   = "Weigh shoe and device together, and take the lighter of two that do the task."
  basis = "published"
  cites = ["kelley_2007"]
}
