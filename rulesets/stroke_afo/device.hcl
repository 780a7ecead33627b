# Which family of device, and whether there is anything to brace.

rule "offer_for_the_goal" {
  when     = "finding.walking_trouble && person.main_goal in ['walking_speed', 'mobility', 'balance']"
  because  = "The main goal is ${person.main_goal}. For that the guideline finds strong evidence, early and late after a stroke, so a device or stimulation is offered."
  strength = "strong"
  basis    = "published"
  cites    = ["johnston_2021"]

  advise "device" { never = "no_device" }
}

rule "nothing_to_hold" {
  when     = "!finding.walking_trouble"
  because  = "The foot comes up in swing, comes down in order and stands steadily: there is nothing for a device to hold. Common practice, no source."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { favour = "no_device" }
}

rule "tone_is_no_goal_for_a_device" {
  when     = "person.main_goal == 'lower_tone'"
  because  = "The main goal is to lower the calf's tone. The guideline says that neither an orthosis nor stimulation is used for that; whoever treats tone is asked. The referral is ours, so it does not outweigh what walking asks for."
  strength = "conditional"
  basis    = "published"
  cites    = ["johnston_2021"]

  advise "device" { favour = "refer_tone_management" }
}

rule "ease_a_slapping_foot" {
  when     = "finding.slap_only"
  because  = "The foot lifts in swing (${limb.gait_swing_ankle}) and only slaps down: what helps is a heel that touches the ground further forward, so that the dorsiflexors have less to brake, or a simple device."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = ["shoe_adaptation", "posterior_leaf_spring"] }
  advise "sole_profile" { favour = "bevelled_heel" }
}

rule "light_device_for_low_tone_drop" {
  when     = "finding.low_tone_drop"
  because  = "Only the swing is at fault: the foot ${limb.gait_swing_ankle}, tone is ${limb.plantarflexor_tone}, the ankle goes to ${limb.ankle_dorsiflexion_knee_extended} and stance is steady. The lightest device that lifts the foot will do, and it needs no joint."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = ["elastic_lifter", "posterior_leaf_spring", "composite"] }
  advise "articulation" { favour = "none" }
}

rule "stiffer_spring_for_tone" {
  when     = "finding.spastic_but_straight"
  because  = "The calf's tone (${limb.plantarflexor_tone}) pulls the foot down without turning it in, and it is hardly short (${limb.ankle_dorsiflexion_knee_extended}): a composite spring that is stiffer than the tone, without a joint."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = "composite" }
  advise "articulation" { favour = "none" }
}

rule "stimulation_does_as_well" {
  when     = "finding.low_tone_drop || finding.spastic_but_straight"
  because  = "Where stance is steady, stimulation of the nerve does as much for walking as an orthosis: neither won when they were compared after stroke, so neither is put first here."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table", "prenton_2016", "johnston_2021"]

  advise "device" { favour = "functional_stimulation" }
}

rule "moulded_device_for_inversion" {
  when     = "finding.spastic_equinovarus"
  because  = "The calf is spastic (${limb.plantarflexor_tone}) and the foot turns in, so its contact is unsure: a moulded device holds it in the best position that it reaches and makes up the lost range. The table does not say of what it is made."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = ["composite", "rigid"] }
}

# Two sides of one question: what comes first. Neither text could be read, so neither is weighed above the other.

rule "light_device_first" {
  when     = "finding.walking_trouble && limb.present_device == 'none'"
  unless   = "finding.low_tone_drop || finding.spastic_but_straight || finding.slap_only"
  because  = "No device was worn before. One guideline offers a light, flexible device first and judges it before anything is worn for long. Where the foot-drop table already names light devices this adds nothing."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["uk_stroke_guideline"]

  advise "device" { favour = ["posterior_leaf_spring", "composite"] }
}

rule "rigid_device_at_once" {
  when     = "finding.rigid_is_advised"
  because  = "Tone ${limb.plantarflexor_tone}, hindfoot in stance ${limb.gait_midstance_hindfoot}, knee ${limb.gait_midstance_knee}: for moderate to severe tone, a foot that turns in or an unstable knee two older texts ask for a rigid device made to measure and tuned."
  strength = "conditional"
  basis    = "from_memory"
  cites    = ["best_practice_2009", "consensus_2003"]

  advise "device" { favour = "rigid" }
  advise "articulation" { favour = "none" }
}
