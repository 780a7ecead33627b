# The lightest device that lifts the foot, and what rules it out.

rule "ease_a_slapping_foot" {
  when     = "finding.slap_only"
  because  = "The foot lifts in swing and slaps down: what helps is a heel that touches the ground further forward, so that the dorsiflexors have less to brake, or a simple device."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = ["shoe_adaptation", "posterior_leaf_spring"] }
  advise "sole_profile" { favour = "bevelled_heel" }
}

rule "heel_wedge_for_a_slightly_short_calf" {
  when     = "finding.calf_slightly_short && limb.ankle_sideways_stability == 'stable' && limb.gait_midstance_knee in ['hyperextends_slowly', 'snaps_back']"
  unless   = "finding.drop_foot"
  because  = "The calf is slightly short (${limb.ankle_dorsiflexion_knee_extended}), the ankle stable, and the knee goes back: wedges under the heel in an ordinary shoe spare the knee, and a calf that is sore on the flat. A foot that drops as well needs more than a wedge."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = "shoe_adaptation" }
  advise "heel_raise_place" { favour = "inside_shoe" }
}

rule "light_device_for_swing" {
  when     = "finding.isolated_drop_foot"
  unless   = "finding.limb_safety.ankle_loose_sideways || finding.limb_safety.equinus"
  because  = "Only the swing needs help (dorsiflexors ${limb.dorsiflexor_power}, tone ${limb.plantarflexor_tone}, stance steady): an elastic lifter, a leaf spring, a light composite or stimulation will all do it. The table that says so ranks none of them."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = ["elastic_lifter", "posterior_leaf_spring", "composite", "functional_stimulation"] }
}

rule "leaf_spring_after_peroneal_palsy" {
  when     = "person.diagnosis_group == 'nerve_injury' && finding.isolated_drop_foot"
  because  = "A palsy of the nerve and nothing else: begin with a leaf spring, and step up only for tone, shortening or weakness beyond that nerve. Teaching, not a trial."
  strength = "conditional"
  basis    = "published"
  cites    = ["peroneal_palsy_teaching"]

  advise "device" { favour = "posterior_leaf_spring" }
}

rule "leaf_spring_after_stroke" {
  when     = "person.diagnosis_group == 'stroke' && finding.isolated_drop_foot && limb.ankle_sideways_stability == 'stable'"
  because  = "After a stroke, a foot that drops with low tone on a steady, stable leg is given a flexible leaf spring. From memory of a national statement."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["stroke_statement_2009"]

  advise "device" { favour = "posterior_leaf_spring" }
}

rule "no_stimulation_of_a_lost_nerve" {
  when     = "person.diagnosis_group in ['nerve_injury', 'other_neuropathy', 'diabetic_neuropathy', 'polio', 'motor_neurone_disease'] && finding.isolated_drop_foot"
  because  = "A muscle whose own nerve is lost does not answer to stimulation through the nerve. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { never = "functional_stimulation" }
}

rule "sides_for_a_loose_ankle" {
  when     = "finding.drop_foot && finding.limb_safety.ankle_loose_sideways"
  because  = "The foot drops and the ankle is ${limb.ankle_sideways_stability}: the device needs sides that hold it. A lifter has none. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" {
    never  = "elastic_lifter"
    favour = ["composite", "rigid"]
  }
}

rule "more_than_a_lifter_for_a_weak_calf" {
  when     = "finding.drop_foot && finding.low_tone && finding.calf_needs_help"
  because  = "The foot drops and the calf is weak as well (power ${limb.plantarflexor_power}, shank ${limb.gait_midstance_ankle}): the device has to lift the foot and hold the shank, which a lifter, a leaf spring or stimulation of the dorsiflexors does not. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { favour = ["composite", "rigid"] }
}

rule "no_swing_device_on_a_stiff_ankle" {
  when     = "finding.drop_foot && finding.limb_safety.equinus"
  because  = "By hand the ankle goes only to ${limb.ankle_dorsiflexion_knee_extended}, so it is not weakness alone that keeps the foot down, and what only lifts in swing can't lift it. That the passive range is tested first is published; plantigrade as the limit is a starting value."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_wiki"]

  advise "device" { never = ["elastic_lifter", "posterior_leaf_spring", "functional_stimulation"] }
}

rule "hold_a_drop_on_a_stiff_ankle" {
  when     = "finding.drop_foot && finding.limb_safety.equinus"
  because  = "The ankle stops at ${limb.ankle_dorsiflexion_knee_extended}: once it is known what holds it, a device that takes the foot where it stops and holds it there. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { favour = ["composite", "rigid"] }
}

rule "hold_a_foot_that_is_not_felt" {
  when     = "finding.drop_foot && limb.ankle_proprioception == 'absent'"
  because  = "Position sense at the ankle is gone, and the foot can't be placed: teaching goes to a device that holds the ankle. The end of its algorithm was not read."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["ankle_control_teaching"]

  advise "device" { favour = "rigid" }
}

clinician_decides "device" {
  because = "A drop foot with more to it than the drop is not what the published tables of light devices are about."
  consider = [
    "Tone ${limb.plantarflexor_tone}, calf ${limb.plantarflexor_power}, sideways ${limb.ankle_sideways_stability}",
    "Midstance: shank ${limb.gait_midstance_ankle}, knee ${limb.gait_midstance_knee}, hindfoot ${limb.gait_midstance_hindfoot}",
    "A ruleset for the condition that does the rest",
  ]
}
