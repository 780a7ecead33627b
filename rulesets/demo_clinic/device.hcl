# Which family of device, or which opinion first.

rule "light_device_for_flaccid_drop" {
  when     = "finding.foot_drop && finding.stance_steady && !finding.spastic_calf && !finding.equinus"
  unless   = "limb.ankle_sideways_stability in ['loose_inversion', 'loose_both']"
  because  = "The foot drops in swing (dorsiflexors ${limb.dorsiflexor_power}), tone is low (${limb.plantarflexor_tone}) and stance is steady, so only the swing needs help and the lightest device that gives it will do."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = ["elastic_lifter", "posterior_leaf_spring", "composite", "functional_stimulation"] }
}

rule "no_stimulation_of_a_lost_nerve" {
  when     = "person.diagnosis_group in ['nerve_injury', 'hereditary_neuropathy', 'diabetic_neuropathy', 'other_neuropathy', 'polio']"
  because  = "A muscle whose own nerve is lost does not answer to stimulation."
  strength = "strong"
  basis    = "common_practice"

  advise "device" { never = "functional_stimulation" }
}

rule "stiffer_composite_for_spastic_drop" {
  when     = "finding.spastic_calf && finding.foot_drop && finding.stance_steady && !finding.varus_in_stance && !finding.equinus"
  because  = "The calf's tone (${limb.plantarflexor_tone}) pulls the foot down without turning it in, and stance is steady, so the spring has to be stiffer than the tone."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = "composite" }
}

rule "moulded_device_for_spastic_varus" {
  when     = "finding.spastic_calf && finding.varus_in_stance"
  because  = "A tight calf (${limb.plantarflexor_tone}) and a foot that turns in make the contact unsure, so the foot is held in the best position it can reach by a moulded device. The table does not say of what it is made."
  strength = "conditional"
  basis    = "published"
  cites    = ["foot_drop_table"]

  advise "device" { favour = ["composite", "rigid"] }
}

rule "spring_device_for_weak_calf" {
  when     = "finding.weak_calf && !finding.spastic_calf && person.age >= years(18)"
  unless   = "finding.crouch"
  because  = "The calf is weak (power ${limb.plantarflexor_power}, ${limb.heel_rises} heel rises) without spasticity: a spring takes its place. Which stiffness is best differs from person to person; from 2.8 to 6.6 N·m/° was tried, and the clinic stays within that."
  strength = "conditional"
  basis    = "published"
  cites    = ["waterval_2019", "waterval_2021"]

  advise "device" { favour = "composite" }
  advise "strut_stiffness" {
    at_least = "Nm_per_deg(2.8)"
    at_most  = "Nm_per_deg(6.6)"
  }
}

rule "composite_for_active_walker" {
  when     = "person.activity_demand in ['moderate', 'high']"
  unless   = "finding.crouch"
  because  = "Somebody who walks outdoors every day gains most from a light device that gives energy back."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { favour = "composite" }
}

rule "ground_reaction_for_crouch" {
  when     = "finding.crouch && person.diagnosis_group == 'cerebral_palsy'"
  because  = "In crouch the shank has to be kept from coming forward, which a shell in front of it does through the ground reaction. The source gives this as an option, not as a finding of trials."
  strength = "conditional"
  basis    = "published"
  cites    = ["sagittal_patterns"]

  advise "device" { favour = "anterior_shell_ground_reaction" }
}

rule "no_ground_reaction_with_contracture" {
  when     = "finding.crouch_contracted"
  because  = "Crouch with knee extension of ${limb.knee_extension} and hip extension of ${limb.hip_extension}: a shell in front can't straighten what is fixed in flexion. The limit of 15 deg is from memory, and a published case improved at 20."
  strength = "strong"
  basis    = "from_memory"
  cites    = ["rogozinski_2009"]

  advise "device" {
    never  = "anterior_shell_ground_reaction"
    favour = "refer_surgical_opinion"
  }
}

rule "accommodate_fixed_equinus" {
  when     = "finding.fixed_equinus"
  because  = "The equinus is fixed (${limb.ankle_dorsiflexion_knee_extended}, heel never down), so the device takes the foot as it is and does not try to correct it."
  strength = "conditional"
  basis    = "common_practice"

  advise "device" { favour = ["composite", "rigid"] }
}

rule "surgical_opinion_for_far_equinus" {
  when     = "finding.fixed_equinus && limb.ankle_dorsiflexion_knee_extended < deg(-20)"
  because  = "A fixed equinus of ${limb.ankle_dorsiflexion_knee_extended} is more than a shoe can take up. The limit of 20 deg is a demonstration value."
  strength = "strong"
  basis    = "common_practice"

  advise "device" { favour = "refer_surgical_opinion" }
}

rule "tone_management_first" {
  when     = "limb.plantarflexor_tone >= modified_ashworth('3')"
  because  = "With tone of ${limb.plantarflexor_tone} a shell would fight the muscle all day: tone is treated before the cast, or together with it."
  strength = "strong"
  basis    = "common_practice"

  advise "device" { favour = "refer_tone_management" }
}

rule "hold_the_ankle" {
  when     = "limb.ankle_dorsiflexion_knee_extended < deg(10) || finding.spastic_calf || finding.weak_calf"
  because  = "A free hinge asks for 10 deg of dorsiflexion with the knee extended, a calf without tone and a calf strong enough to hold the shank; otherwise the motion comes from the midfoot or the knee. Here: ${limb.ankle_dorsiflexion_knee_extended}, tone ${limb.plantarflexor_tone}, calf ${limb.plantarflexor_power}."
  strength = "strong"
  basis    = "from_memory"
  cites    = ["owen_2010"]

  advise "articulation" { only = "none" }
}
