# Which family of device. No guideline was found that parts ankle-foot orthoses from those that reach over the knee by a
# grade of power; the grades used here are common practice.

rule "spring_for_weak_calf" {
  when     = "finding.spring_suits"
  unless   = "finding.limb_safety.ankle_loose_sideways"
  because  = "The calf is weak (power ${limb.plantarflexor_power}, heel rises ${limb.heel_rises}) and not spastic. In people like this four kinds of device, taken together, added about 0.18 m/s, saved 0.70 J/kg/m and held dorsiflexion back by 3 deg; a spring behind the ankle, without a joint, is the kind whose stiffness was tried. A loose ankle needs more."
  strength = "conditional"
  basis    = "published"
  cites    = ["waterval_2019", "waterval_2020"]

  advise "device" { favour = "composite" }
  advise "articulation" { favour = "none" }
  advise "strut_place" { favour = "posterior" }
}

rule "composite_after_limb_trauma" {
  when     = "person.diagnosis_group == 'trauma_or_surgery' && finding.calf_weak && person.activity_demand == 'high'"
  unless   = "finding.calf_spastic || finding.quadriceps_weak"
  because  = "After trauma with high demands, carbon devices were studied together with a rehabilitation programme: plan both. They cut motion and push-off of the ankle against no device, so say so beforehand."
  strength = "conditional"
  basis    = "published"
  cites    = ["limb_trauma_composites"]

  advise "device" { favour = "composite" }
}

rule "hold_a_loose_ankle" {
  when     = "finding.calf_weak && finding.limb_safety.ankle_loose_sideways && !finding.advised_apart"
  because  = "The calf is weak and the ankle is “${limb.ankle_sideways_stability}”: the device takes the calf's place and holds the ankle sideways too, which an open spring does not. That a very weak calf on such an ankle needs it is published; that a less weak one does, and which device, is from memory."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["ground_reaction_standing"]

  advise "device" { favour = ["composite", "anterior_shell_ground_reaction", "rigid"] }
}

rule "over_the_knee_after_polio" {
  when     = "person.diagnosis_group == 'polio' && finding.quadriceps_weak"
  because  = "Quadriceps of grade ${limb.quadriceps_power} after polio: a device over the knee is what is usually given."
  strength = "conditional"
  basis    = "published"
  cites    = ["fengler_2011"]

  advise "device" { favour = "knee_ankle_foot" }
}

rule "load_in_front_of_the_knee" {
  when     = "person.diagnosis_group == 'polio' && finding.quadriceps_weak && limb.gait_midstance_knee in ['near_straight', 'hyperextends_slowly']"
  because  = "The quadriceps are of grade ${limb.quadriceps_power}, yet the knee stands (${limb.gait_midstance_knee}) because the load runs in front of it. Where a device over the knee has failed or is refused, an anterior shell, or a shoe that brings the load forward, can keep it there. One published case."
  strength = "conditional"
  basis    = "published"
  cites    = ["fengler_2011"]

  advise "device" { favour = ["anterior_shell_ground_reaction", "shoe_adaptation"] }
}

rule "over_the_knee_that_gives_way" {
  when     = "finding.quadriceps_weak && limb.hip_extensor_power < muscle_power('3') && finding.knee_gives_way"
  because  = "Neither quadriceps (${limb.quadriceps_power}) nor hip extensors (${limb.hip_extensor_power}) hold this knee, and it gives way: the ankle alone will not do. Common practice, no source for the grades."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { favour = "knee_ankle_foot" }
}

# Duchenne dystrophy, while the person walks alone: two published views, level on purpose.

rule "no_day_device_in_duchenne" {
  when     = "finding.duchenne_walker"
  because  = "Three boys who walked alone were slower over 10 m and went 25 m less far in six minutes in a daytime dynamic-response device, and two of them fell more; a review finds that devices are often kept to the night while walking lasts."
  strength = "conditional"
  basis    = "published"
  cites    = ["townsend_2015", "stevens_2006"]

  advise "device" { favour = "no_device" }
}

rule "articulated_day_device_in_duchenne" {
  when     = "finding.duchenne_walker"
  because  = "In a study of twenty people in three groups an articulated device by day changed how they moved, and its authors recommend devices early, day and night."
  strength = "conditional"
  basis    = "published"
  cites    = ["duchenne_articulated"]

  advise "device" { favour = "articulated" }
}

# Spina bifida, by the motor level of the limb

rule "rigid_for_low_lumbar_level" {
  when     = "person.diagnosis_group == 'spina_bifida' && limb.spinal_motor_level == 'low_lumbar'"
  because  = "At a low lumbar level hip extensors and both sides of the ankle are weak: a rigid device steadies the ankle and helps the knee to straighten in stance."
  strength = "conditional"
  basis    = "published"
  cites    = ["spina_bifida_review"]

  advise "device" { favour = "rigid" }
  advise "articulation" { favour = "none" }
}

rule "little_for_sacral_level" {
  when     = "person.diagnosis_group == 'spina_bifida' && limb.spinal_motor_level == 'sacral'"
  because  = "At a sacral level no device or one for the foot is usually enough."
  strength = "conditional"
  basis    = "published"
  cites    = ["spina_bifida_review"]

  advise "device" { favour = ["no_device", "insole"] }
}

clinician_decides "device" {
  because = "No published grade of power parts an ankle-foot orthosis from one that reaches over the knee, and calf weakness in children without spina bifida or Duchenne dystrophy was not found in the trials read."
  consider = [
    "Calf: power ${limb.plantarflexor_power}, heel rises ${limb.heel_rises}, midstance ${limb.gait_midstance_ankle}",
    "Knee: quadriceps ${limb.quadriceps_power}, midstance ${limb.gait_midstance_knee}",
    "What the person does in a day, and what they wore until now: ${limb.present_device}",
  ]
}
