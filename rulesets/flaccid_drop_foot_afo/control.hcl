# What the device does at the ankle, how stiffly, and the next review.

rule "assist_dorsiflexion" {
  when     = "finding.dorsiflexors_weak && finding.low_tone"
  because  = "Dorsiflexors of ${limb.dorsiflexor_power} with little tone against them: dorsiflexion is assisted, by a joint or by the spring of the shell. Teaching, not a trial."
  strength = "conditional"
  basis    = "published"
  cites    = ["ankle_control_teaching"]

  advise "articulation" { favour = "dorsiflexion_assist" }
  advise "pressure_system" { favour = "against_foot_drop" }
}

rule "stop_dorsiflexion_of_a_weak_calf" {
  when     = "finding.drop_foot && finding.calf_needs_help"
  because  = "The calf is weak as well (power ${limb.plantarflexor_power}, shank ${limb.gait_midstance_ankle}): dorsiflexion is stopped. Where assistance is advised too, the joint has to do both. Teaching, not a trial."
  strength = "conditional"
  basis    = "published"
  cites    = ["ankle_control_teaching"]

  advise "articulation" { favour = "dorsiflexion_stop" }
}

rule "hold_against_inversion" {
  when     = "finding.drop_foot && limb.ankle_sideways_stability == 'loose_inversion'"
  because  = "The ankle opens to the outer side: it is pressed from there towards the middle, against shank and foot from the inner side. Worked out from the geometry."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system_frontal" { favour = "against_varus" }
}

rule "hold_against_eversion" {
  when     = "finding.drop_foot && limb.ankle_sideways_stability == 'loose_eversion'"
  because  = "The ankle opens to the inner side: it is pressed from there outwards, against shank and foot from the outer side. Worked out from the geometry."
  strength = "conditional"
  basis    = "common_practice"

  advise "pressure_system_frontal" { favour = "against_valgus" }
}

rule "resist_what_swing_asks" {
  when     = "finding.isolated_drop_foot"
  because  = "To keep foot and knee in order a device had to resist with 0.029 to 0.062 N·m for each kilogram, three to six times what the foot's own weight asks, measured after stroke in articulated devices. For ${person.body_mass}, if it may give by 5 deg, that is the range here. The 5 deg are a starting value without a source; a plain spring is as stiff the other way."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["kobayashi_2017"]

  advise "strut_stiffness" {
    at_least = "swing_resistance_least(person.body_mass, deg(5))"
    at_most  = "swing_resistance_most(person.body_mass, deg(5))"
  }
}

rule "review_a_recent_palsy" {
  when     = "finding.palsy_under_a_year"
  because  = "The palsy is from ${person.onset}, and the nerve may still recover: the device is for a time. Looking again within 13 weeks is a starting value without a source."
  strength = "conditional"
  basis    = "common_practice"
  cites    = ["foot_drop_wiki"]

  advise "review_interval" { at_most = "weeks(13)" }
}

clinician_decides "strut_stiffness" {
  because = "How much the spring may give is a matter of trying, and only for a drop foot and nothing else is there a figure for what the swing asks."
  consider = [
    "The softest spring with which the toe stays clear at the end of a long walk",
    "Toe clearance ${limb.toe_clearance}, body mass ${person.body_mass}",
    "A ruleset for what else is wrong with this leg",
  ]
}
