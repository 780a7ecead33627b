# The foot that points down and turns in: what causes it decides what is done. Causes are often mixed.

rule "treat_the_tone" {
  when     = "finding.spastic_equinovarus && !finding.contracture"
  because  = "The foot turns in under a spastic calf (${limb.plantarflexor_tone}) that is not short (${limb.ankle_dorsiflexion_knee_extended}). Where tone is the cause it is treated by injection or surgery of the nerve, and a device alone is not enough."
  strength = "conditional"
  basis    = "published"
  cites    = ["deltombe_2017"]

  advise "device" { favour = "refer_tone_management" }
}

rule "treat_the_length" {
  when     = "finding.turns_in && finding.contracture"
  because  = "The foot turns in and the calf is short: ${limb.ankle_dorsiflexion_knee_extended} with the knee straight. Length is gained by stretching or lengthening, not by a device."
  strength = "conditional"
  basis    = "published"
  cites    = ["deltombe_2017"]

  advise "device" { favour = ["refer_serial_casting", "refer_surgical_opinion"] }
}

rule "brace_the_weakness" {
  when     = "finding.turns_in && finding.foot_drops && !finding.calf_spastic && !finding.contracture"
  because  = "The foot drops and turns in, and the calf is neither tight (${limb.plantarflexor_tone}) nor short (${limb.ankle_dorsiflexion_knee_extended}): weak or unequal muscles. That is what an orthosis or stimulation is for; a tendon transfer is the surgeon's answer. Which orthosis, the guidance does not say; one that holds the foot sideways is common practice."
  strength = "conditional"
  basis    = "published"
  cites    = ["deltombe_2017"]

  advise "device" { favour = ["composite", "rigid", "functional_stimulation"] }
}

rule "pull_against_varus" {
  when     = "finding.turns_in && limb.hindfoot_corrects_by_hand in ['fully', 'partly']"
  because  = "The foot turns in and the heel corrects by hand ${limb.hindfoot_corrects_by_hand}: three points against varus, with a strap that pulls from the lateral side."
  strength = "conditional"
  basis    = "published"
  cites    = ["varus_strap"]

  advise "pressure_system_frontal" { favour = "against_varus" }
  advise "ankle_strap" { favour = "pull_from_lateral" }
}
